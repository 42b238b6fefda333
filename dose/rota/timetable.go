package rota

import (
	"cmp"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/week"
	"example.org/posology/units/evidence"
)

// timetable tells a solution in the order of the class.
func (p *problem) timetable(s solution) Timetable {
	seconds, name, longest := p.slotSeconds()
	slots := len(s.rows)
	t := Timetable{
		Clients: make([]ClientTurns, len(p.order)), Slots: slots, Seconds: seconds, Change: week.ChangeSeconds,
		Minutes: (slots*seconds + (slots-1)*week.ChangeSeconds + 59) / 60,
		Waiting: s.cost.waiting, Turned: s.cost.turned,
		Proof: s.proof, WaitingBound: s.least.waiting, SlotsBound: s.least.slots,
	}
	todo := p.all()
	for at, i := range p.order {
		t.Clients[i].Name = p.class.Clients[i].Name
		t.Clients[i].Turns = make([]Turn, 0, len(p.loads[at]))
	}
	for slot, row := range s.rows {
		loads, with := p.made(row)
		for client, item := range row {
			turns := &t.Clients[p.order[client]]
			if item >= 0 {
				turns.Turns = append(turns.Turns, p.turn(client, item, slot+1, todo[client], loads[client]))
				turns.Turns[len(turns.Turns)-1].With = with[client]
				todo[client] &^= 1 << item
			} else if todo[client] != 0 && (p.together || len(turns.Turns) > 0) {
				turns.Waits = append(turns.Waits, slot+1)
			}
		}
	}
	t.Reasons = p.reasons(t, name, longest)
	return t
}

// turn tells one exercise of a client, of whose items those in todo are left.
func (p *problem) turn(client int, item int8, slot int, todo uint32, load equipment.Load) Turn {
	items := p.class.Clients[p.order[client]].Items
	t := Turn{Slot: slot, Item: int(item), Exercise: items[item].Exercise, Load: load}
	prescribed := items[item].Load
	t.Remade = len(prescribed.Parts()) > 0 && !prescribed.Equal(load)
	for i := range item {
		if todo&(1<<i) != 0 {
			t.AheadOf = append(t.AheadOf, items[i].Exercise)
		}
	}
	return t
}

// made puts the loads of a slot together, as many as can be as prescribed; a
// client without a load has the zero one. It says too who shares one with whom.
func (p *problem) made(row []int8) (loads []equipment.Load, with []string) {
	kind := func(client int) int { return p.loads[client][row[client]] }
	clients, partner := p.holders(row)
	var kinds, preferred []int
	for _, client := range clients {
		prescribed := p.class.Clients[p.order[client]].Items[row[client]].Load
		same := slices.IndexFunc(p.kinds[kind(client)].ways, func(w equipment.Way) bool { return w.Load.Equal(prescribed) })
		kinds, preferred = append(kinds, kind(client)), append(preferred, max(0, same))
	}
	var ways []int
	for others := 0; ways == nil && others < len(kinds); others++ {
		ways = p.fits.choose(kinds, preferred, others)
	}
	if ways == nil { // as when the kit was found to suffice
		ways = p.fits.choose(kinds, nil, len(kinds))
	}
	loads, with = make([]equipment.Load, len(row)), make([]string, len(row))
	for i, client := range clients {
		loads[client] = p.kinds[kinds[i]].ways[ways[i]].Load
		if other, shares := partner[client]; shares {
			loads[other] = loads[client]
			with[client], with[other] = p.class.Clients[p.order[other]].Name, p.class.Clients[p.order[client]].Name
		}
	}
	return loads, with
}

// reasons say what the rota rests on and what it had to give up.
func (p *problem) reasons(t Timetable, name string, longest dose.Prescription) []evidence.Reason {
	rests := "with the rests between its sets"
	if p.class.RestApart {
		rests = "without the rests between its sets"
	}
	list := []evidence.Reason{evidence.Because("rota.slot", factSlots, factChange, factPace).With(
		evidence.Seconds("seconds", t.Seconds), evidence.Term("exercise", cmp.Or(longest.Name, string(longest.Exercise))), evidence.Text("name", name), evidence.Text("rests", rests), evidence.Seconds("change", t.Change))}
	if t.Waiting == 0 {
		list = append(list, evidence.Because("rota.no-waiting"))
	} else {
		list = append(list, evidence.Because("rota.waiting", factSlots).With(evidence.Count("waiting", t.Waiting)))
	}
	switch t.Proof {
	case BestOfAll:
		list = append(list, evidence.Because("rota.best"))
	case LeastWaiting:
		list = append(list, evidence.Because("rota.least-waiting"))
	default:
		list = append(list, evidence.Because("rota.best-found", factSlots).With(evidence.Count("waiting", t.WaitingBound), evidence.Count("slots", t.SlotsBound)))
	}
	if t.Turned > 0 {
		list = append(list, evidence.Because("rota.order").With(evidence.Count("pairs", t.Turned)))
	}
	if n := t.count(func(t Turn) bool { return t.With != "" }); n > 0 {
		list = append(list, evidence.Because("rota.shared", factShare).With(evidence.Count("pairs", n/mostShare)))
	}
	if n := t.count(func(t Turn) bool { return t.Remade }); n > 0 {
		list = append(list, evidence.Because("rota.remade").With(evidence.Count("turns", n)))
	}
	if p.class.stepsUp() {
		list = append(list, evidence.Because("rota.finding", factSteps))
	}
	return list
}

// count counts the turns of which something holds.
func (t Timetable) count(holds func(Turn) bool) int {
	n := 0
	for _, c := range t.Clients {
		for _, turn := range c.Turns {
			if holds(turn) {
				n++
			}
		}
	}
	return n
}

// stepsUp reports whether anybody looks for a load.
func (c Class) stepsUp() bool {
	return slices.ContainsFunc(c.Clients, func(client Client) bool {
		return slices.ContainsFunc(client.Items, func(item dose.Prescription) bool { return item.Finding != nil && item.Finding.MaxSteps > 0 })
	})
}

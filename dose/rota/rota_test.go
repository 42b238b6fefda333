package rota_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// takenBy reads what a load takes out of the kit off its parts.
func takenBy(t failer, k equipment.Kit, l equipment.Load, all taken) {
	t.Helper()
	n := l.Hold().Implements()
	for _, p := range l.Parts() {
		switch p.Kind {
		case equipment.PartDumbbell:
			all["dumbbell "+p.Mass.Mass.String()] += n
		case equipment.PartHandle:
			i := slices.IndexFunc(k.Handles, func(h equipment.Handle) bool { return h.Name == p.Name })
			all[fmt.Sprint("handle ", i)] += n
		case equipment.PartBar:
			all["bar 0"]++
		case equipment.PartPin:
			all["stack 0"]++
		case equipment.PartPlate:
			all["plate "+p.Mass.Mass.String()] += 2 * n * p.Count
		}
	}
	if err := l.Validate(); err != nil && len(l.Parts()) > 0 {
		t.Fatalf("%s: %v", l, err)
	}
}

// checkRota checks everything that a rota promises but that it is the best.
func checkRota(t failer, c rota.Class, table rota.Timetable) {
	t.Helper()
	inSlot := make([]taken, table.Slots+1)
	for slot := range inSlot {
		inSlot[slot] = taken{}
	}
	waiting, turned, sequential := 0, 0, 0
	busy := map[int]bool{}
	for i, client := range c.Clients {
		turns := table.Clients[i]
		waits, out := checkTurns(t, c, client, turns)
		for _, turn := range turns.Turns {
			if turn.With == "" || client.Name < turn.With {
				takenBy(t, c.Kit, turn.Load, inSlot[turn.Slot])
			}
			busy[turn.Slot] = true
		}
		waiting, turned, sequential = waiting+waits, turned+out, sequential+len(client.Items)
	}
	if len(busy) != table.Slots || busy[0] || waiting != table.Waiting || turned != table.Turned {
		t.Fatalf("%d busy slots of %d, waiting %d, stated %d, turned %d, stated %d", len(busy), table.Slots, waiting, table.Waiting, turned, table.Turned)
	}
	stock := stockOf(c.Kit)
	for slot, all := range inSlot {
		for thing, n := range all {
			if n > stock[thing] {
				t.Fatalf("slot %d takes %d of %s, there are %d", slot, n, thing, stock[thing])
			}
		}
	}
	if table.WaitingBound > table.Waiting || table.SlotsBound > table.Slots {
		t.Fatalf("bounds: %+v", table)
	}
	if most := oneByOneWaiting(c); table.Waiting > most || table.Waiting == most && table.Slots > sequential {
		t.Fatalf("waiting %d in %d slots, one by one %d in %d", table.Waiting, table.Slots, most, sequential)
	}
}

// checkTurns checks one client's turns and counts waits and turned pairs.
func checkTurns(t failer, c rota.Class, client rota.Client, turns rota.ClientTurns) (waits, turned int) {
	t.Helper()
	if turns.Name != client.Name || len(turns.Turns) != len(client.Items) {
		t.Fatalf("%s has %d turns for %d items", turns.Name, len(turns.Turns), len(client.Items))
	}
	done, last := map[int]bool{}, 0
	for i, turn := range turns.Turns {
		item := client.Items[turn.Item]
		if done[turn.Item] || turn.Slot <= last || turn.Exercise != item.Exercise {
			t.Fatalf("%s, turn %d: %+v", client.Name, i, turn)
		}
		if turn.Load.Each() != item.Load.Each() || item.Hold != body.Unloaded && turn.Load.Hold() != item.Hold {
			t.Fatalf("%s does %s with %s instead of %s", client.Name, turn.Exercise, turn.Load, item.Load)
		}
		if turn.Remade != (len(item.Load.Parts()) > 0 && !turn.Load.Equal(item.Load)) {
			t.Fatalf("remade %v: %s for %s", turn.Remade, turn.Load, item.Load)
		}
		if i > 0 || !c.Staggered {
			for slot := last + 1; slot < turn.Slot; slot++ {
				if waits >= len(turns.Waits) || turns.Waits[waits] != slot {
					t.Fatalf("%s waits in %v, not in %d", client.Name, turns.Waits, slot)
				}
				waits++
			}
		}
		var ahead []exercise.ID
		for earlier := range turn.Item {
			if !done[earlier] {
				ahead = append(ahead, client.Items[earlier].Exercise)
			}
		}
		if !slices.Equal(ahead, turn.AheadOf) {
			t.Fatalf("%s comes ahead of %v, stated %v", turn.Exercise, ahead, turn.AheadOf)
		}
		done[turn.Item], last, turned = true, turn.Slot, turned+len(ahead)
	}
	if waits != len(turns.Waits) {
		t.Fatalf("%s waits in %v, counted %d", client.Name, turns.Waits, waits)
	}
	return waits, turned
}

// oneByOneWaiting is the waiting if one client after the other, by name, does
// everything.
func oneByOneWaiting(c rota.Class) int {
	if c.Staggered {
		return 0
	}
	clients := slices.Clone(c.Clients)
	slices.SortFunc(clients, func(a, b rota.Client) int { return strings.Compare(a.Name, b.Name) })
	waiting, before := 0, 0
	for _, client := range clients {
		waiting += before
		before += len(client.Items)
	}
	return waiting
}

// Nothing clashes, everything is done once, and it is no worse than one by one.
func TestPlanKeepsItsPromises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawClass(t, 7, 5)
		checkRota(t, c, plan(t, c))
	})
}

func TestPlanOfEight(t *testing.T) {
	for _, staggered := range []bool{false, true} {
		c := eight(rack())
		c.Staggered = staggered
		table := plan(t, c)
		checkRota(t, c, table)
		if table.Waiting != 0 || table.Slots != 8 || table.Proof != rota.LeastWaiting || !has(table.Reasons, "rota.least-waiting") {
			t.Errorf("rack, staggered %v: %d waiting, %d slots, %s; want none in 8, proven", staggered, table.Waiting, table.Slots, table.Proof)
		}
		c.Kit = scarce()
		table = plan(t, c)
		checkRota(t, c, table)
		if table.Proof != rota.BestFound || !has(table.Reasons, "rota.best-found") || has(table.Reasons, "rota.waiting") == staggered {
			t.Errorf("no handles, staggered %v: %s, %v", staggered, table.Proof, table.Reasons)
		}
	}
}

// Eight clients who all take the same weights go round in a circle: every one
// of 8 weights is in use in every slot. With nine clients somebody waits: of
// the nine uses of any weight one is in slot 9.
func TestPlanGoesRound(t *testing.T) {
	items := oneHanded(1, 2, 3, 4, 5, 6, 7, 8)
	c := classOf(singles(1, 2, 3, 4, 5, 6, 7, 8), items, items, items, items, items, items, items, items)
	table := plan(t, c)
	checkRota(t, c, table)
	if table.Waiting != 0 || table.Slots != 8 || table.Proof == rota.BestFound || !has(table.Reasons, "rota.no-waiting") {
		t.Errorf("waiting %d, %d slots, %s", table.Waiting, table.Slots, table.Proof)
	}
	if table.Turned == 0 || !has(table.Reasons, "rota.order") {
		t.Errorf("%d pairs turned, %v", table.Turned, table.Reasons)
	}
	c.Clients = append(c.Clients, rota.Client{Name: "late", Items: items})
	table = plan(t, c)
	checkRota(t, c, table)
	if table.Waiting == 0 || table.WaitingBound == 0 || table.SlotsBound != 9 {
		t.Errorf("nine clients: waiting %d, bound %d, %d slots", table.Waiting, table.WaitingBound, table.Slots)
	}
}

// Small cases whose best is plain.
func TestPlanByHand(t *testing.T) {
	bug := []dose.Prescription{turnOf("bug", body.Unloaded, 0)}
	tests := []struct {
		name  string
		class rota.Class
		want  costOf
	}{
		{"alone, in the usual order", classOf(singles(1, 2, 3), oneHanded(3, 1, 2)), costOf{0, 3, 0}},
		{"room for both", classOf(pairs(1, 2), oneHanded(1, 2), oneHanded(1, 2)), costOf{0, 2, 0}},
		{"one has to turn round", classOf(singles(1, 2), oneHanded(1, 2), oneHanded(1, 2)), costOf{0, 2, 1}},
		{"one has to wait", classOf(singles(1), oneHanded(1), oneHanded(1)), costOf{1, 2, 0}},
		{"three at one weight", classOf(singles(1), oneHanded(1), oneHanded(1), oneHanded(1)), costOf{3, 3, 0}},
		{"a pair and a single", classOf(pairs(4), []dose.Prescription{turnOf("squat", body.OneEachHand, 4)}, oneHanded(4)), costOf{1, 2, 0}},
		{"two singles of a pair", classOf(pairs(4), oneHanded(4), oneHanded(4)), costOf{0, 1, 0}},
		{"without load", classOf(equipment.Kit{}, bug, bug), costOf{0, 1, 0}},
	}
	for _, tt := range tests {
		table := plan(t, tt.class)
		checkRota(t, tt.class, table)
		if got := (costOf{table.Waiting, table.Slots, table.Turned}); got != tt.want || table.Proof != rota.BestOfAll {
			t.Errorf("%s: waiting, slots, turned %v, %s; want %v", tt.name, got, table.Proof, tt.want)
		}
	}
	late := classOf(singles(1), oneHanded(1), oneHanded(1))
	late.Staggered = true
	if table := plan(t, late); table.Waiting != 0 || table.Slots != 2 || table.Clients[0].Turns[0].Slot != 1 {
		t.Errorf("staggered: %+v", table)
	}
}

// The plates of one handle are not on another, and a ready-made dumbbell of the
// same mass stands in where that frees a clash, and not else.
func TestPlanPutsLoadsTogether(t *testing.T) {
	k := singles(4)
	k.Handles = []equipment.Handle{{Name: "h", Mass: marked(2), Count: 2}}
	k.Plates = []equipment.Plate{{Mass: marked(1), Count: 2}}
	ready := plan(t, classOf(k, oneHanded(4), oneHanded(4)))
	if ready.Waiting != 0 || ready.Clients[0].Turns[0].Load.String() == ready.Clients[1].Turns[0].Load.String() {
		t.Errorf("4 kg twice: %v", ready.Clients)
	}
	if three := plan(t, classOf(k, oneHanded(4), oneHanded(4), oneHanded(4))); three.Waiting != 1 {
		t.Errorf("4 kg three times with plates for one handle: waiting %d", three.Waiting)
	}
	ways, _, err := k.Ways(marked(4).Mass, body.OneHand)
	if err != nil || len(ways) != 2 {
		t.Fatalf("ways: %v, %v", ways, err)
	}
	onHandle := oneHanded(4)
	onHandle[0].Load = ways[1].Load
	alone := plan(t, classOf(k, onHandle))
	if turn := alone.Clients[0].Turns[0]; !turn.Load.Equal(ways[1].Load) || turn.Remade || has(alone.Reasons, "rota.remade") {
		t.Errorf("as prescribed: %s, remade %v", turn.Load, turn.Remade)
	}
	c := classOf(k, onHandle, onHandle)
	both := plan(t, c)
	checkRota(t, c, both)
	if both.Waiting != 0 || both.Clients[0].Turns[0].Remade || !both.Clients[1].Turns[0].Remade || !has(both.Reasons, "rota.remade") {
		t.Errorf("the handle twice: %+v", both)
	}
}

// Of the ways out of a clash, the one that remakes fewest loads is taken: one pair
// of dumbbells leaves the handles to two others.
func TestPlanRemakesFewest(t *testing.T) {
	k := equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{Mass: marked(3), Count: 2}, {Mass: marked(4), Count: 2}},
		Handles:   []equipment.Handle{{Name: "h", Mass: marked(2), Count: 2}},
		Plates:    []equipment.Plate{{Mass: marked(0.5), Count: 4}, {Mass: marked(1), Count: 4}},
	}
	onHandles := func(kg float64, h body.Hold) []dose.Prescription {
		ways, _, err := k.Ways(marked(kg).Mass, h)
		if err != nil || len(ways) < 2 {
			t.Fatalf("%v kg: %v, %v", kg, ways, err)
		}
		item := turnOf("x", h, kg)
		item.Load = ways[1].Load
		return []dose.Prescription{item}
	}
	c := classOf(k, onHandles(4, body.OneEachHand), onHandles(3, body.OneHand), onHandles(3, body.OneHand))
	table := plan(t, c)
	checkRota(t, c, table)
	remade := []bool{true, false, false}
	for i, client := range table.Clients {
		if client.Turns[0].Remade != remade[i] || table.Waiting != 0 {
			t.Errorf("%s: %s, remade %v", client.Name, client.Turns[0].Load, client.Turns[0].Remade)
		}
	}
}

func TestPlanSlotLength(t *testing.T) {
	long := turnOf("plank", body.Unloaded, 0)
	long.Measure, long.Count, long.Sets, long.Rest = exercise.Seconds, 30, 2, units.Must(units.Between(61, 120))
	c := classOf(singles(1), oneHanded(1), []dose.Prescription{long, turnOf("bug", body.Unloaded, 0)})
	// Two sets of 30 s and one rest of 61 s; two slots with 120 s between: 362 s.
	table := plan(t, c)
	if table.Seconds != 121 || table.Change != 120 || table.Minutes != 7 {
		t.Errorf("%d s, change %d s, %d min", table.Seconds, table.Change, table.Minutes)
	}
	c.RestApart = true
	if table := plan(t, c); table.Seconds != 60 || table.Minutes != 4 {
		t.Errorf("rests apart: %d s, %d min", table.Seconds, table.Minutes)
	}
	c.Clients[1].Items[0].Measure, c.Clients[1].Items[0].Sets = exercise.Metres, 1
	if table := plan(t, c); table.Seconds != 60 {
		t.Errorf("30 m at 0.5 m/s: %d s", table.Seconds)
	}
	c.Clients[0].Items[0].OneSided = true
	if table := plan(t, c); table.Seconds != 80 {
		t.Errorf("ten of 4 s on each side: %d s", table.Seconds)
	}
}

func TestPlanSaysThatStepsAreNotKept(t *testing.T) {
	c := classOf(singles(1), oneHanded(1))
	if has(plan(t, c).Reasons, "rota.finding") {
		t.Error("says so though nobody looks for a load")
	}
	c.Clients[0].Items[0].Finding = &dose.Search{MaxSteps: 2}
	if !has(plan(t, c).Reasons, "rota.finding") {
		t.Error("does not say that steps up are not kept free")
	}
}

// Neither the order of the clients nor chance decides.
func TestPlanIsDeterministic(t *testing.T) {
	c := eight(scarce())
	first := plan(t, c)
	if diff := cmp.Diff(first, plan(t, c)); diff != "" {
		t.Errorf("twice:\n%s", diff)
	}
	slices.Reverse(c.Clients)
	back := plan(t, c)
	slices.Reverse(back.Clients)
	if diff := cmp.Diff(first, back); diff != "" {
		t.Errorf("clients the other way round:\n%s", diff)
	}
}

// A class of the largest size ends in good time and keeps its promises.
func TestPlanOfTheLargestClass(t *testing.T) {
	c := rota.Class{Kit: pairs(1, 2, 3)}
	for i := range 50 {
		c.Clients = append(c.Clients, rota.Client{Name: fmt.Sprint(i), Items: oneHanded(slices.Repeat([]float64{1, 2, 3}, 10)...)})
	}
	checkRota(t, c, plan(t, c))
}

// Where the ways to make a load are too many to list, nothing is said to be proven.
func TestPlanWithTooManyWays(t *testing.T) {
	k := equipment.Kit{Handles: []equipment.Handle{{Name: "h", Mass: marked(2), Count: 1}}}
	for _, kg := range []float64{0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 5} {
		k.Plates = append(k.Plates, equipment.Plate{Mass: marked(kg), Count: 20})
	}
	c := classOf(k, oneHanded(22), oneHanded(22))
	table := plan(t, c)
	checkRota(t, c, table)
	if table.Proof != rota.BestFound || table.Waiting != 1 || table.WaitingBound != 0 {
		t.Errorf("%s, waiting %d, at least %d", table.Proof, table.Waiting, table.WaitingBound)
	}
}

// Every reason of a rota has words.
func TestPlanReasonsHaveWords(t *testing.T) {
	words := rota.Words().Copy()
	for _, c := range []rota.Class{eight(rack()), eight(scarce()), classOf(singles(1), oneHanded(1), oneHanded(1))} {
		for _, r := range plan(t, c).Reasons {
			if text := words.Clinician(r); words[r.Code] == (evidence.Wording{}) || strings.Contains(text, "{") {
				t.Errorf("%s: %q", r.Code, text)
			}
		}
	}
}

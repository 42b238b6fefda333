package beside

import (
	"fmt"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Happened is what came of an item since it was last decided on, on a visit or in a week.
type Happened struct {
	Days int `json:"days"` // on which it was done
	// Least is the least of what a step measures, over all tries of all those days:
	// seconds held, movements, impacts or rises of a set, minutes of a bout.
	Least int `json:"least"`
	// MoreHands: more support was used than asked for.
	MoreHands bool      `json:"more_hands,omitzero"`
	Troubles  []Trouble `json:"troubles,omitempty"`
	Missed    int       `json:"missed,omitzero"` // days since it was last done
}

// Validate returns every bad field of h at once.
func (h Happened) Validate() error {
	var bad field.Errors
	for _, n := range [...]struct {
		path string
		n    int
	}{{"/days", h.Days}, {"/least", h.Least}, {"/missed", h.Missed}} {
		bad.Refuse(n.n < 0, n.path, n.n, "0 or more", field.ErrOutOfRange)
	}
	for i, t := range h.Troubles {
		bad.Add(placeOf("/troubles", i), troubles.Check("", t))
	}
	return bad.Err()
}

func placeOf(list string, i int) string { return fmt.Sprintf("%s/%d", list, i) }

// back to the first step, and not at all until somebody looked.
const (
	toFirst = 1000
	toStop  = 2 * toFirst
)

// loses are the steps that a trouble costs. Any trouble keeps the item from getting harder.
var loses = map[ItemKind]map[Trouble]int{
	Balance: {Hurt: 1, Swayed: toFirst, Dizzied: toFirst, Tumbled: toStop},
	Aerobic: {SoreNextDay: 1, OutOfBreath: 1, Hurt: 1, Swayed: toFirst, Dizzied: toFirst, Tumbled: toStop},
	Impact:  {SoreNextDay: 1, OutOfBreath: 1, Hurt: toStop, Leaked: toStop, Swayed: toStop, Dizzied: toStop, Tumbled: toStop},
	Power:   {SoreNextDay: 1, OutOfBreath: 1, Hurt: toFirst, Leaked: toFirst, Swayed: toStop, Dizzied: toStop, Tumbled: toStop},
}

// Next returns the item after what happened: a step harder when all that was asked was
// done on enough days, the same, easier, or paused. A paused item stays so: [Start]
// begins it anew once somebody looked. The limits of the situation bind as in Start.
// The error is [field.Errors] for bad fields.
func Next(item Item, h Happened, s Situation) (Item, error) {
	var bad field.Errors
	bad.Add("/item", item.validate())
	bad.Add("/happened", h.Validate())
	bad.Add("/situation", s.validate())
	if err := bad.Err(); err != nil {
		return Item{}, err
	}
	s.Screening = s.Screening.Tightest()
	return s.next(trackOf(item.Track), item, h), nil
}

// next is Next of what is valid.
func (s *Situation) next(t *track, item Item, h Happened) Item {
	most, why := s.ceiling(t)
	lost := h.lost(t, t.steps[item.Step-1])
	switch {
	case item.Paused || lost >= toStop:
		return s.pause(t, item.Step, evidence.Because("beside.paused", factTrouble))
	case most == 0:
		return s.pause(t, item.Step, *why)
	}
	at, met, code := item.Step, 0, evidence.ReasonCode("beside.same")
	switch {
	case lost > 0:
		at, code = max(1, at-lost), "beside.easier"
	case h.reached(t.steps[at-1]):
		met = item.Met + h.Days
		if met >= t.days && at < len(t.steps) {
			at, met, code = at+1, 0, "beside.harder"
		}
	}
	if at > most {
		at, met = most, 0
		if item.Step > most {
			code = "beside.easier"
		} else {
			code = "beside.same"
		}
	}
	said := evidence.Because(code, factMoveOn, factTrouble).With(evidence.Count("met", met), evidence.Count("days", t.days))
	return s.make(t, at, met, said)
}

// asked returns what a step measures.
func (s step) asked() int {
	if s.seconds+s.count == 0 {
		return s.minutes
	}
	return s.seconds + s.count
}

// reached reports whether all that was asked was done and nothing spoke against it.
func (h Happened) reached(s step) bool {
	return h.Days > 0 && h.Least >= s.asked() && len(h.Troubles) == 0
}

// lost returns the steps that what happened costs: for the worst trouble; one where less
// than half was done or more support was needed; one for each two weeks missed.
func (h Happened) lost(t *track, s step) int {
	lost := 0
	for _, trouble := range h.Troubles {
		lost = max(lost, loses[t.kind][trouble])
	}
	if h.Days > 0 && (h.MoreHands || 2*h.Least < s.asked()) {
		lost = max(lost, 1)
	}
	return max(lost, min(h.Missed/missedDays, toFirst))
}

package programme

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Maintenance is with how much, at the load that there is, strength was kept.
type Maintenance struct {
	Who   string           `json:"who"`
	Days  int              `json:"days"`           // sessions a week
	Sets  units.Range[int] `json:"sets"`           // of each exercise
	Weeks int              `json:"weeks,omitzero"` // for so long; 0 is not stated
	Basis evidence.Basis   `json:"basis"`
	Fact  evidence.FactID  `json:"fact"`
}

const (
	youngDays  = 1  // sessions a week
	youngSets  = 1  // of each exercise
	youngWeeks = 32 // up to
)

// maintenances returns what is remembered of keeping strength (Spiering 2021),
// older people first, in a list of the caller's own. The load is kept in both.
// Doses follow the line of older people, which asks for more; that of the young
// is for information. Both are from memory.
func maintenances() []Maintenance {
	days, sets, fact := dose.MaintenanceDose()
	return []Maintenance{
		{Who: "older people", Days: days, Sets: sets, Basis: evidence.FromMemory, Fact: fact},
		{Who: "young people", Days: youngDays, Sets: units.Exactly(youngSets), Weeks: youngWeeks, Basis: evidence.FromMemory, Fact: factMaintainYoung},
	}
}

// A Discharge is what a person takes along at the end of a programme. It is no
// phase and doses nothing.
type Discharge struct {
	Maintain Maintenance `json:"maintain"` // how to go on alone
	// Weeks without training, beyond which the person comes back first: the
	// length of the ladder of [rule.ReturnAfter].
	Weeks int `json:"weeks"`
	// ComeBack are the happenings after which the person comes back first.
	ComeBack []HappeningKind   `json:"come_back"`
	Reasons  []evidence.Reason `json:"reasons"` // of each, and the signs to stop at
}

// TakeAlong returns what a person takes along at the end of a programme: the
// remembered maintenance dose of older people with the load kept; the signs to
// stop and ask at, by the reason that every week carries; and what to come back
// for first, which is this module's design: more than 8 weeks without training,
// and everything that [Happenings.Review] would have looked at.
func TakeAlong() Discharge {
	d := Discharge{Maintain: maintenances()[0], Weeks: rule.LongestBreak() / given.Week}
	var names []string
	for k := range happeningKinds.All() {
		if k != OtherHappening {
			d.ComeBack = append(d.ComeBack, k)
			names = append(names, k.String())
		}
	}
	d.Reasons = []evidence.Reason{
		evidence.Because("progression.discharge", factDischarge),
		evidence.Because("progression.discharge-maintain", d.Maintain.Fact).With(evidence.Days("days", d.Maintain.Days), evidence.Count("sets", d.Maintain.Sets)),
		evidence.Because("dose.stop-and-ask"),
		evidence.Because("progression.discharge-weeks", factDischarge, factNoLadder).With(evidence.Count("weeks", d.Weeks)),
		evidence.Because("progression.discharge-happened", factDischarge, factEventsEnd).With(evidence.Terms("what", names...)),
	}
	return d
}

func youngText() string {
	return fmt.Sprintf("young people keep strength with %d session a week and %d set, the load kept, for up to %d weeks", youngDays, youngSets, youngWeeks)
}

package visittest

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Gates returns the gates of a visit that has to be valid.
func Gates(t fieldtest.T, v visit.Visit) visit.GateReport {
	t.Helper()
	r, err := visit.Gates(v)
	if err != nil {
		t.Fatalf("Gates: %v", err)
	}
	return r
}

// Signs lists the codes of what ends an exercise that a moment may name.
func Signs() []screening.Code {
	var list []screening.Code
	for _, r := range screening.StopRows() {
		list = append(list, r.Code)
	}
	return slices.DeleteFunc(list, func(c screening.Code) bool { return (screening.Moment{Signs: []screening.Code{c}}).Validate() != nil })
}

// Good is an invented visit of two sets of each side at the top of a
// range of 8 to 12, with nothing against more load.
func Good() visit.Visit {
	set := setlog.Set{
		Exercise: "one-arm-dumbbell-row", Side: body.Left, Hold: body.OneHand, Load: 4 * units.Kilogram, Reps: 12, Effort: units.Must(units.InReserve(3)),
	}
	right := set
	right.Side = body.Right
	return visit.Visit{
		Plan: dose.Prescription{
			Exercise: set.Exercise, Hold: set.Hold, Side: body.Both, OneSided: true, Load: units.Must(equipment.NewLoad(set.Load, set.Hold)),
			Sets: 2, Measure: exercise.Repetitions, Count: 10, Span: units.Must(units.Between(8, 12)), Reserve: dose.Reserve{Least: 3, Countable: true},
		},
		Sets:      []setlog.Set{set, set, right, right},
		Moment:    &screening.Moment{},
		Pain:      &screening.Pain{Kind: screening.OrdinaryPain, Usual: Score(1), During: Score(2), After: Score(1), NextMorning: Score(1), WeeklyTrend: screening.StablePain},
		RangeLost: screening.No,
		FormLost:  screening.No,
		Observer:  dose.Observation{Who: "a colleague", Day: 739950},
	}
}

// Score is a score of pain that was told.
func Score(v float64) *float64 { return &v }

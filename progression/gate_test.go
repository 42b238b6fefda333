package progression_test

import (
	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/internal/visittest"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var (
	gatesOf   = visittest.Gates
	signCodes = visittest.Signs
)

func score(v float64) *float64 { return &v }

// goodVisit is an invented visit of two sets of each side at the top of a
// range of 8 to 12, with nothing against more load.
func goodVisit() progression.Visit {
	set := setlog.Set{
		Exercise: "one-arm-dumbbell-row", Side: body.Left, Hold: body.OneHand, Load: 4 * units.Kilogram, Reps: 12, Effort: units.Must(units.InReserve(3)),
	}
	right := set
	right.Side = body.Right
	return progression.Visit{
		Plan: dose.Prescription{
			Exercise: set.Exercise, Hold: set.Hold, Side: body.Both, OneSided: true, Load: units.Must(equipment.NewLoad(set.Load, set.Hold)),
			Sets: 2, Measure: exercise.Repetitions, Count: 10, Span: units.Must(units.Between(8, 12)), Reserve: dose.Reserve{Least: 3, Countable: true},
		},
		Sets:      []setlog.Set{set, set, right, right},
		Moment:    &screening.Moment{},
		Pain:      &screening.Pain{Kind: screening.OrdinaryPain, Usual: score(1), During: score(2), After: score(1), NextMorning: score(1), WeeklyTrend: screening.StablePain},
		RangeLost: screening.No,
		FormLost:  screening.No,
		Observer:  dose.Observation{Who: "a colleague", Day: 739950},
	}
}

type failer = fieldtest.T

package visit_test

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An invented visit after which nothing was asked about the technique: more
// repetitions, but no more load.
func ExampleGates() {
	set := setlog.Set{
		Exercise: "one-arm-dumbbell-row", Side: body.Left, Hold: body.OneHand, Load: 4 * units.Kilogram, Reps: 12, Effort: units.Must(units.InReserve(3)),
	}
	right, fewer := set, set
	right.Side, fewer.Reps = body.Right, 11
	load, err := equipment.NewLoad(set.Load, set.Hold)
	if err != nil {
		fmt.Println(err)
		return
	}
	little := 1.0
	v := visit.Visit{
		Plan: dose.Prescription{
			Exercise: set.Exercise, Hold: set.Hold, Side: body.Both, OneSided: true, Load: load, Sets: 2, Measure: exercise.Repetitions,
			Count: 10, Span: units.Must(units.Between(8, 12)), Reserve: dose.Reserve{Least: 3, Countable: true},
		},
		Sets:   []setlog.Set{set, fewer, right, right},
		Moment: &screening.Moment{}, RangeLost: screening.No,
		Pain: &screening.Pain{Kind: screening.OrdinaryPain, Usual: &little, During: &little, After: &little, NextMorning: &little, WeeklyTrend: screening.StablePain},
	}
	fmt.Println("below what was asked:", v.Below())
	r, err := visit.Gates(v)
	if err != nil {
		fmt.Println(err)
		return
	}
	words := visit.Words()
	for _, g := range r.Gates {
		fmt.Println(g.Advice, "-", words.Clinician(g.Reasons[0]))
	}
	fmt.Println(r.Advice, "- aim at", r.Aim)
	// Output:
	// below what was asked: false
	// raise - Nothing against more load from: events.
	// raise - Nothing against more load from: pain.
	// raise - Nothing against more load from: range.
	// keep - Not recorded, or not enough: technique. What is not known keeps the load.
	// raise - Nothing against more load from: effort.
	// raise - Nothing against more load from: repetitions.
	// keep - aim at 12
}

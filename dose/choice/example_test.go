package choice_test

import (
	"fmt"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A man of 66 who wants to climb stairs, two years after his hip was replaced. The person
// is invented.
func ExampleChoose() {
	outcome, err := screening.Assess(screening.Profile{
		Day: units.Must(units.ParseDay("2026-11-30")), Age: 66, Sex: body.Male, Setting: screening.InGroup, Training: body.Novice,
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(),
		Conditions: screening.AskedFor("total_hip_replacement"),
		Events:     []screening.Event{{Code: "total_hip_replacement", Day: units.Must(units.ParseDay("2024-11-04"))}},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	c := choice.Choose(choice.Wish{Tasks: []choice.Task{choice.Stairs}, Goal: guideline.Strength, Screening: outcome})
	for _, w := range c.Wanted[:4] {
		for _, why := range w.Reasons {
			fmt.Println(choice.Words().Clinician(why))
		}
	}
	for _, k := range c.Tests {
		fmt.Println(choice.Words().Clinician(k.Reasons[0]))
	}
	// Output:
	// supported-step-up: chosen for climbing stairs.
	// supported-step-up: chosen with regard to hip.
	// supported-step-up rather than dumbbell-step-up, with regard to hip.
	// standing-leg-out: chosen for climbing stairs.
	// standing-leg-out: chosen with regard to hip.
	// one-arm-dumbbell-row: chosen so that the whole body is trained.
	// dumbbell-sit-to-stand: chosen for climbing stairs.
	// dumbbell-sit-to-stand: chosen with regard to hip.
	// dumbbell-sit-to-stand rather than goblet-squat, with regard to hip.
	// For climbing stairs: time up and down the same stairs.
	// For climbing stairs: 30-s chair stand.
}

// What has come of the tests of somebody who wants to climb stairs, six weeks on. The
// person is invented.
func ExampleChosen_Results() {
	who := body.Person{Age: 72, Sex: body.Female, Training: body.Novice}
	day := units.Must(units.ParseDay("2026-11-30"))
	c := choice.Choose(choice.Wish{Tasks: []choice.Task{choice.Stairs}, Named: true, Screening: screening.Waived("an example", who, screening.InGroup, day)})
	stood := func(day units.Day, value string) choice.Tried {
		return choice.Tried{Result: function.Result{Test: function.ChairStand30, Day: day, How: function.Done, Value: units.Must(function.ParseAmount(value)), Protocol: "seat 45 cm"}}
	}
	all, err := c.Results([]choice.Tried{stood(day, "9 reps"), stood(day+42, "13 reps")}, who)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, k := range all {
		fmt.Println(choice.Words().Clinician(k.Reasons[0]))
		if k.Change != nil {
			fmt.Println(k.Change.Difference, k.Change.Shown, k.Change.Direction)
		}
	}
	// Output:
	// time up and down the same stairs: no result is kept yet. It belongs to the start and to each review.
	// 30-s chair stand: 9 reps on 2026-11-30, 13 reps on 2027-01-11.
	// 4 reps real better
}

package choice_test

import (
	"fmt"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
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

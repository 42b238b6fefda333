package simulate_test

import (
	"fmt"
	"math/rand/v2"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/progression"
	"example.org/posology/progression/simulate"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A virtual beginner who could curl 5 kg in each hand once, at a home with
// dumbbells of 1, 2, 3 and 4 kg. Everything is invented.
func ExampleRun() {
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		fmt.Println(err)
		return
	}
	setup := simulate.Setup{
		Request: dose.Request{
			Screening: screening.Waived("a simulation", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, screening.WithHelper, firstDay-1),
			Exercise:  curl, Side: body.Both, Goal: guideline.Strength,
			Kit: dumbbells(1, 2, 3, 4), Technique: dose.Observation{Who: "a colleague", Day: firstDay - 1},
		},
		Policy: progression.Policy{KeepExercise: true}, Start: firstDay, Weeks: 16, Days: []int{0, 3}, Familiarise: 2,
	}
	visits, err := simulate.Run(simulate.Typical(10*units.Kilogram), setup, rand.NewPCG(1, 1))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, v := range visits {
		if v.Week == 1 || v.Week%5 == 0 {
			fmt.Printf("week %d: %d × %d with %v\n", v.Week, v.Done.Plan.Sets, v.Done.Plan.Count, v.Done.Plan.Load)
		}
	}
	// Output:
	// week 1: 1 × 10 with 1 kg dumbbell in each hand
	// week 1: 1 × 7 with 3 kg dumbbell in each hand
	// week 5: 3 × 18 with 3 kg dumbbell in each hand
	// week 5: 3 × 16 with 3 kg dumbbell in each hand
	// week 10: 3 × 7 with 4 kg dumbbell in each hand
	// week 10: 3 × 6 with 4 kg dumbbell in each hand
	// week 15: 3 × 9 with 4 kg dumbbell in each hand
	// week 15: 3 × 11 with 4 kg dumbbell in each hand
}

package simulate_test

import (
	"fmt"
	"math/rand/v2"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
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
	day := units.Must(units.NewDay(2026, 11, 30))
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		fmt.Println(err)
		return
	}
	var kit equipment.Kit
	for _, mass := range []string{"1 kg", "2 kg", "3 kg", "4 kg"} {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Must(units.ParseMarked(mass)), Count: 2})
	}
	setup := simulate.Setup{
		Request: dose.Request{
			Screening: screening.Waived("a simulation", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, screening.WithHelper, day-1),
			Exercise:  curl, Side: body.Both, Goal: guideline.Strength,
			Kit: kit, Technique: dose.Observation{Who: "a colleague", Day: day - 1},
		},
		Policy: progression.Policy{KeepExercise: true}, Start: day, Weeks: 16, Days: []int{0, 3}, Familiarise: 2,
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
	gain, rate, err := simulate.FirstYear().At(26)
	fmt.Printf("many people, after half a year: %.0f %%, and %.1f %% a week %v\n", gain, rate, err)
	// Output:
	// week 1: 1 × 10 with 1 kg dumbbell in each hand
	// week 1: 1 × 10 with 3 kg dumbbell in each hand
	// week 5: 3 × 14 with 3 kg dumbbell in each hand
	// week 5: 3 × 14 with 3 kg dumbbell in each hand
	// week 10: 3 × 6 with 4 kg dumbbell in each hand
	// week 10: 3 × 6 with 4 kg dumbbell in each hand
	// week 15: 3 × 9 with 4 kg dumbbell in each hand
	// week 15: 3 × 11 with 4 kg dumbbell in each hand
	// many people, after half a year: 33 %, and 0.4 % a week <nil>
}

// What policies make of ten invented people who differ, with few dumbbells: visits that
// work, and weights that nobody could lift.
func ExampleJudge() {
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		fmt.Println(err)
		return
	}
	day := units.Must(units.NewDay(2026, 11, 30))
	setup := simulate.Setup{
		Request: dose.Request{
			Screening: screening.Waived("a simulation", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, screening.WithHelper, day-1),
			Exercise:  curl, Side: body.Both, Goal: guideline.Strength, Technique: dose.Observation{Who: "a colleague", Day: day - 1},
			Kit: equipment.Kit{Dumbbells: []equipment.Dumbbell{
				{Mass: units.Must(units.ParseMarked("2 kg")), Count: 2}, {Mass: units.Must(units.ParseMarked("4 kg")), Count: 2},
			}},
		},
		Start: day, Weeks: 12, Days: []int{0, 3}, Familiarise: 2,
	}
	for _, policy := range []struct {
		name   string
		choose simulate.Chooser
	}{
		{"own", simulate.Own}, {"repetitions, then load", simulate.ByRepsThenLoad}, {"two for two", simulate.ByTwoForTwo},
		{"every two weeks", simulate.ByWeeks}, {"knows the truth", simulate.Informed},
	} {
		setup.Choose = policy.choose
		var fates []simulate.Fate
		for n := range uint64(10) {
			src := rand.NewPCG(n, 1)
			who := simulate.Mixed(12*units.Kilogram, src)
			if n%2 == 1 {
				who = simulate.AtHome(simulate.TrueTelling(12*units.Kilogram), src)
			}
			run, err := simulate.Run(who, setup, src)
			if err != nil {
				fmt.Println(err)
				return
			}
			fate, err := simulate.Judge(who, setup, run, 0)
			if err != nil {
				fmt.Println(err)
				return
			}
			fates = append(fates, fate)
		}
		fmt.Printf("%s: %.0f %% of the visits work\n", policy.name, simulate.Sum(fates).Working)
	}
	first, err := simulate.FirstEstimate(simulate.Typical(12*units.Kilogram), setup, rand.NewPCG(1, 1))
	fmt.Printf("a test would say %.1f kg %v\n", first.OneRM.Kilograms(), err)
	// Output:
	// own: 41 % of the visits work
	// repetitions, then load: 50 % of the visits work
	// two for two: 51 % of the visits work
	// every two weeks: 51 % of the visits work
	// knows the truth: 60 % of the visits work
	// a test would say 5.5 kg <nil>
}

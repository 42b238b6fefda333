package fit_test

import (
	"fmt"
	"log"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/units"
)

// Two sets of a dumbbell press, on different days, make a curve of one's own.
func ExampleFit() {
	first, _ := units.ParseDay("2026-11-02")
	second, _ := units.ParseDay("2026-11-05")
	curve, err := fit.Fit([]fit.Point{
		{Load: 12 * units.Kilogram, Reps: 6, Day: first},
		{Load: 10 * units.Kilogram, Reps: 11, Day: second},
	}, fit.Options{Form: onerm.Hyperbola})
	if err != nil {
		fmt.Println(err)
		return
	}
	within, _ := fit.OneRMWithin(curve, 0.9)
	low, _ := within.Min()
	high, _ := within.Max()
	reps, _ := curve.RepsAt(11 * units.Kilogram)
	fmt.Printf("1RM %.1f kg, 90 %%: %.1f to %.1f kg\n", curve.OneRM().Kilograms(), low.Kilograms(), high.Kilograms())
	fmt.Printf("11 kg: %.1f repetitions to failure\n", reps)
	fmt.Println("sets of", curve.Studied(), "repetitions")
	// Output:
	// 1RM 13.7 kg, 90 %: 11.8 to 16.0 kg
	// 11 kg: 8.3 repetitions to failure
	// sets of 6 to 11 repetitions
}

// Without the population prior the sets must be enough by themselves.
func ExampleFit_alone() {
	_, err := fit.Fit([]fit.Point{
		{Load: 12 * units.Kilogram, Reps: 6},
		{Load: 10 * units.Kilogram, Reps: 11},
	}, fit.Options{Form: onerm.Hyperbola, Alone: true})
	fmt.Println(err)
	// Output:
	// fit: too few sets for the form: out of range: /points = 2 sets, allowed: at least 3 sets at 2 different repetition counts
}

// Intervals around one's own curve.
func ExampleLoadWithin() {
	curve, err := fit.Fit([]fit.Point{{Load: 12 * units.Kilogram, Reps: 6}, {Load: 10 * units.Kilogram, Reps: 11}}, fit.Options{Form: onerm.Hyperbola})
	if err != nil {
		fmt.Println(err)
		return
	}
	loads, err := fit.LoadWithin(curve, 8, 0.9)
	low, _ := loads.Min()
	high, _ := loads.Max()
	fmt.Printf("8 to failure: %.1f to %.1f kg %v\n", low.Kilograms(), high.Kilograms(), err)
	reps, err := fit.RepsWithin(curve, 11*units.Kilogram, 0.9)
	least, _ := reps.Min()
	most, _ := reps.Max()
	fmt.Printf("11 kg: %.0f to %.0f times %v\n", least, most, err)
	// Output:
	// 8 to failure: 10.0 to 12.3 kg <nil>
	// 11 kg: 5 to 13 times <nil>
}

// A practised person of 25 bench-pressed 90 kg five times and 80 kg nine times, to failure.
func ExampleForPractised() {
	c, err := fit.ForPractised([]fit.Point{
		{Load: 90 * units.Kilogram, Reps: 5},
		{Load: 80 * units.Kilogram, Reps: 9},
	}, onerm.Hyperbola)
	if err != nil {
		log.Fatal(err)
	}
	within, err := fit.OneRMWithin(c, 0.9)
	if err != nil {
		log.Fatal(err)
	}
	low, _ := within.Min()
	high, _ := within.Max()
	fmt.Println(c.OneRM().Short(units.Nearest), "from", low.Short(units.Down), "to", high.Short(units.Up))
	// Output: 100 kg from 94.4 kg to 105.9 kg
}

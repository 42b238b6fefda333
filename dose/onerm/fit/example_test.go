package fit_test

import (
	"fmt"

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
	// fit: too few sets for the form: /points = 2 sets, allowed: at least 3 sets at 2 different repetition counts
}

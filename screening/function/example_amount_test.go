package function_test

import (
	"fmt"

	"example.org/posology/screening/function"
)

// Three trials of a grip: the best one counts, in the test's own unit.
func ExampleBest() {
	first, err := function.NewAmount(24.5, function.Kilograms)
	if err != nil {
		fmt.Println(err)
	}
	second, err := function.ParseAmount("26 kg")
	if err != nil {
		fmt.Println(err)
	}
	best, err := function.Best(function.Grip, first, second)
	fmt.Println(best, err)
	for _, s := range function.Statistics()[:3] {
		fmt.Println(s, "–", s.Kind(), "–", s.Words())
	}
	// Output:
	// 26 kg <nil>
	// below_average_if_less_than – cut-off – below average under
	// ci95_high – figure – upper end of the 95 % interval of the mean
	// ci95_low – figure – lower end of the 95 % interval of the mean
}

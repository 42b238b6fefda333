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
	// Output:
	// 26 kg <nil>
}

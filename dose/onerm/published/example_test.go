package published_test

import (
	"fmt"

	"example.org/posology/dose/onerm/published"
)

// A published table has no values between its rows unless they are asked for.
func ExampleChart() {
	for _, c := range []published.Chart{published.NSCALoadChart, published.NSCATextbook} {
		share, _ := c.Fraction(12)
		fmt.Printf("%v: %v at 12 repetitions\n", c, share)
	}
	_, err := published.NSCALoadChart.Fraction(11)
	fmt.Println(err != nil)
	share, _ := published.NSCALoadChart.Interpolated().Fraction(11)
	fmt.Println(share)
	// Output:
	// nsca-load-chart: 70 % at 12 repetitions
	// nsca-textbook: 67 % at 12 repetitions
	// true
	// 72.5 %
}

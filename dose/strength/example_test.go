package strength_test

import (
	"fmt"

	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Three visits of an invented beginner, and what the next may ask for: a weight is
// worth as many repetitions as the stated chance allows.
func ExampleAbility() {
	const asked = 3 // repetitions in reserve
	var known strength.Ability
	for _, visit := range []struct {
		load       units.Mass
		reps, told int
	}{{4, 8, 8}, {5, 10, 5}, {5, 11, 5}} {
		set := setlog.Set{
			Exercise: "one-arm-dumbbell-row", Side: body.Right, Hold: body.OneHand, Load: visit.load * units.Kilogram,
			Reps: visit.reps, Effort: units.Must(units.InReserve(float64(visit.told))),
		}
		known = known.Seen(2, asked, set, set)
		oneRM, _ := known.OneRM()
		fmt.Printf("%d of %v kg, %d left: 1RM %.1f kg, at least: %v\n", visit.reps, set.Load.Kilograms(), visit.told, oneRM.Kilograms(), known.AtLeast)
	}
	chance := strength.StandardChance()
	fmt.Println(chance)
	for _, load := range []units.Mass{4, 5, 6, 8} {
		n, _ := known.Most(strength.Prospect{Load: load * units.Kilogram, Last: 5 * units.Kilogram, Reserve: asked}, chance)
		fmt.Printf("%d kg: up to %d with %d left\n", load, n, asked)
	}
	// Output:
	// 8 of 4 kg, 8 left: 1RM 6.0 kg, at least: true
	// 10 of 5 kg, 5 left: 1RM 7.7 kg, at least: false
	// 11 of 5 kg, 5 left: 1RM 7.7 kg, at least: false
	// at most 10 % below the reserve less one, at most 5 % without one more than the count
	// 4 kg: up to 21 with 3 left
	// 5 kg: up to 11 with 3 left
	// 6 kg: up to 3 with 3 left
	// 8 kg: up to 0 with 3 left
}

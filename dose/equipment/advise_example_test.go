package equipment_test

import (
	"fmt"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Three steps of an invented hall are too large: the next weight is a third
// more, or there is none, and a tenth or one kilogram is wanted.
func ExampleAdvise() {
	kit := equipment.Kit{Dumbbells: []equipment.Dumbbell{
		{Mass: units.Marked{Mass: 4 * units.Kilogram, Unit: units.KG}, Count: 2},
		{Mass: units.Marked{Mass: 6 * units.Kilogram, Unit: units.KG}, Count: 2},
		{Mass: units.Marked{Mass: 8 * units.Kilogram, Unit: units.KG}, Count: 2},
	}}
	stalls := []equipment.Stall{
		{Hold: body.OneEachHand, Present: 6 * units.Kilogram, Share: 0.1},
		{Hold: body.OneHand, Present: 6 * units.Kilogram, Wanted: 7 * units.Kilogram},
		{Hold: body.OneHand, Present: 8 * units.Kilogram, Share: 0.1},
	}
	advice, err := equipment.Advise(kit, stalls, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, a := range advice[:3] {
		fmt.Println(a.Purchase, a.Removes)
	}
	// Output:
	// 2 × 6.5 kg dumbbell [0 1]
	// 1 × 6.5 kg dumbbell [1]
	// 1 × 7 kg dumbbell [1]
}

// Candidates to buy that are more of the same; Advise adds those in between.
func ExampleMore() {
	kit := equipment.Kit{Dumbbells: []equipment.Dumbbell{
		{Mass: units.Must(units.ParseMarked("4 kg")), Count: 2}, {Mass: units.Must(units.ParseMarked("6 kg")), Count: 2},
	}}
	fmt.Println(equipment.More(kit))
	// Output:
	// [1 × 4 kg dumbbell 2 × 4 kg dumbbell 1 × 6 kg dumbbell 2 × 6 kg dumbbell]
}

// A load that somebody lifted elsewhere, of which no parts are known.
func ExampleNewLoad() {
	l, err := equipment.NewLoad(7500*units.Gram, body.OneEachHand)
	fmt.Println(l, "–", l.Total(), "in all", err)
	_, err = equipment.NewLoad(-units.Kilogram, body.OneHand)
	fmt.Println(err)
	// Output:
	// 7.5 kg in each hand – 15 kg in all <nil>
	// out of range: /each = -1 kg, allowed: 0 kg or more, 0 kg if unloaded or on a band
}

package equipment_test

import (
	"errors"
	"fmt"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func ExampleKit_Compile() {
	var k equipment.Kit
	err := field.Decode([]byte(`{
		"dumbbells": [{"mass": "4 kg", "count": 2}, {"mass": "10 lb", "count": 1}],
		"handles":   [{"mass": "2 kg", "count": 2}],
		"plates":    [{"mass": "1.25 kg", "count": 4}, {"mass": "2.5 lb", "count": 4}]
	}`), &k, field.Strict)
	if err != nil {
		fmt.Println(err)
		return
	}
	table, err := k.Compile(body.OneEachHand)
	if err != nil {
		fmt.Println(err)
		return
	}
	for l := range table.Loads() {
		fmt.Printf("%s in all: %s\n", l.Total(), l)
	}
	// Output:
	// 4 kg in all: handle 2 kg, in each hand
	// 8 kg in all: 4 kg dumbbell in each hand
	// 8.5359237 kg in all: handle 2 kg + 1 × 2.5 lb on each end, in each hand
	// 9 kg in all: handle 2 kg + 1 × 1.25 kg on each end, in each hand
	// 13.5359237 kg in all: handle 2 kg + 1 × 1.25 kg + 1 × 2.5 lb on each end, in each hand
}

func ExampleTable_Nearest() {
	k := equipment.Kit{Dumbbells: []equipment.Dumbbell{
		{Mass: units.Marked{Mass: 2 * units.Kilogram, Unit: units.KG}, Count: 2},
		{Mass: units.Marked{Mass: 10 * units.Pound, Unit: units.LB}, Count: 2},
	}}
	table, err := k.Compile(body.OneHand)
	if err != nil {
		fmt.Println(err)
		return
	}
	target := 4500 * units.Gram
	fmt.Println(table.Nearest(target, equipment.RoundingRule{}))
	fmt.Println(table.Nearest(target, equipment.RoundingRule{Direction: units.Nearest, Ceiling: 5 * units.Kilogram}))

	_, err = table.Nearest(units.Kilogram, equipment.RoundingRule{})
	var heavy *equipment.TooHeavyError
	if errors.As(err, &heavy) {
		fmt.Println("too heavy:", heavy.Lightest)
	}
	// Output:
	// 2 kg dumbbell in one hand <nil>
	// 10 lb dumbbell in one hand <nil>
	// too heavy: 2 kg dumbbell in one hand
}

func ExampleTable_Next() {
	k := equipment.Kit{Dumbbells: []equipment.Dumbbell{
		{Mass: units.Marked{Mass: 2 * units.Kilogram, Unit: units.KG}, Count: 2},
		{Mass: units.Marked{Mass: 3 * units.Kilogram, Unit: units.KG}, Count: 2},
	}}
	table, err := k.Compile(body.OneEachHand)
	if err != nil {
		fmt.Println(err)
		return
	}
	gap, ok := table.Next(2 * units.Kilogram)
	fmt.Println(gap.To, gap.Step, gap.Share, ok)
	// Output: 3 kg dumbbell in each hand 1 kg 50 % true
}

// So many kinds make millions of loads: too many to list, and not to look one up.
func ExampleKit_Nearest() {
	k := equipment.Kit{Bars: []equipment.Bar{{Mass: units.Must(units.ParseMarked("20 kg"))}}}
	for _, mass := range []string{"20 kg", "15 kg", "10 kg", "5 kg", "2.5 kg", "1.25 kg", "1 kg", "750 g", "333 g", "250 g", "135 g"} {
		k.Plates = append(k.Plates, equipment.Plate{Mass: units.Must(units.ParseMarked(mass)), Count: 60})
	}
	_, err := k.Compile(body.OnBar)
	fmt.Println(err)
	fmt.Println(k.Nearest(85*units.Kilogram+937*units.Gram, body.OnBar, equipment.RoundingRule{}))
	// Output:
	// equipment: too many loads: over 262144, on a bar
	// bar 20 kg + 1 × 20 kg + 1 × 10 kg + 1 × 2.5 kg + 1 × 333 g + 1 × 135 g on each end <nil>
}

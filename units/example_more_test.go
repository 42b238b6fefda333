package units_test

import (
	"fmt"

	"example.org/posology/units"
)

// Masses are exact, and a number without a unit is refused.
func ExampleKilograms() {
	kg, err := units.Kilograms(2.5)
	if err != nil {
		fmt.Println(err)
	}
	lb, err := units.Pounds(5)
	if err != nil {
		fmt.Println(err)
	}
	sum, err := kg.Add(lb)
	fmt.Println(kg, lb, sum, err)
	unit, err := units.ParseMassUnit("lb")
	fmt.Println(kg.Text(unit), err)
	_, err = units.ParseMass("2.5")
	fmt.Println(err)
	// Output:
	// 2.5 kg 2.26796185 kg 4.76796185 kg <nil>
	// 5.511556554622 lb <nil>
	// not given: value = "2.5", allowed: a decimal number and a unit, such as "12.5 kg" or "25 lb"
}

// The same set, as it feels on three scales; only two of them count a reserve.
func ExampleNewEffort() {
	left, err := units.InReserve(2)
	if err != nil {
		fmt.Println(err)
	}
	rating, err := units.RPE(8)
	if err != nil {
		fmt.Println(err)
	}
	omni, err := units.NewEffort(units.ScaleOMNI, 7)
	if err != nil {
		fmt.Println(err)
	}
	same, err := units.OMNI(7)
	fmt.Println(same == omni, err)
	for _, e := range []units.Effort{left, rating, omni} {
		r, err := e.RIR()
		fmt.Println(e, "leaves", r, err)
	}
	// Output:
	// true <nil>
	// rir 2 leaves 2 <nil>
	// rpe 8 leaves 2 <nil>
	// omni 7 leaves not stated rating has no value in repetitions in reserve: value = omni 7, allowed: a rating on the scales rir or rpe
}

// Ranges with one end, or none apart; a day of the calendar.
func ExampleAtLeast() {
	for _, r := range []units.Range[int]{units.AtLeast(8), units.AtMost(12), units.Exactly(10)} {
		fmt.Println(r, r.Contains(10), r.Contains(13))
	}
	day, err := units.ParseDay("2026-11-30")
	fmt.Println(day+7, day.Weekday(), err)
	// Output:
	// at least 8 true true
	// at most 12 true false
	// 10 true false
	// 2026-12-07 Monday <nil>
}

package units_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Masses in different units add without error.
func Example() {
	bar := 20 * units.Kilogram
	plates := 2 * 25 * units.Pound
	loaded, err := bar.Add(plates)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(loaded)
	fmt.Println(plates.Text(units.LB))
	// Output:
	// 42.6796185 kg
	// 50 lb
}

// Rounding never goes further than asked, and down unless asked.
func ExampleMass_Scale() {
	max := 100 * units.Pound
	down, _ := max.Scale(0.7, units.Down)
	up, _ := max.Scale(0.7, units.Up)
	fmt.Println(down, "or", up)
	fmt.Println(up-down == 1) // one nanogram: 0.7 is no exact float64
	// Output:
	// 31.751465899999 kg or 31.7514659 kg
	// true
}

func ExampleParseMass() {
	for _, s := range []string{"12,5 kg", "27.5 lb", "12.5", "1e3 kg"} {
		m, err := units.ParseMass(s)
		switch {
		case errors.Is(err, field.ErrMissing):
			fmt.Println("no unit")
		case err != nil:
			fmt.Println(err)
		default:
			fmt.Println(m)
		}
	}
	// Output:
	// 12.5 kg
	// 12.473790175 kg
	// no unit
	// malformed: value = "1e3 kg", allowed: a decimal number and a unit, such as "12.5 kg" or "25 lb"
}

// A thing keeps the unit that is marked on it.
func ExampleMarked() {
	dumbbell, err := units.ParseMarked("25 lb")
	fmt.Println(dumbbell, err)
	fmt.Println(dumbbell.Mass)
	// Output:
	// 25 lb <nil>
	// 11.33980925 kg
}

func ExampleEffort_RIR() {
	rpe, _ := units.RPE(8.5)
	left, _ := rpe.RIR()
	fmt.Println(rpe, "leaves", left, "in reserve")

	omni, _ := units.OMNI(6)
	_, err := omni.RIR()
	fmt.Println(errors.Is(err, units.ErrNoRIR))
	// Output:
	// rpe 8.5 leaves 1 to 2 in reserve
	// true
}

func ExampleDay() {
	start, _ := units.NewDay(2026, time.November, 25)
	end, _ := start.Plus(6 * 7)
	year, week := end.ISOWeek()
	fmt.Println(start, "to", end)
	fmt.Println("week", week, "of", year)
	// Output:
	// 2026-11-25 to 2027-01-06
	// week 1 of 2027
}

func ExampleRange() {
	reps, _ := units.Between(8, 12)
	both, ok := reps.Intersect(units.AtMost(10))
	data, _ := json.Marshal(both)
	fmt.Println(both, ok, string(data))
	// Output:
	// 8 to 10 true {"min":8,"max":10}
}

// Every bad field is named at once.

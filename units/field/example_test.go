package field_test

import (
	"fmt"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

func ExampleDecode() {
	type set struct {
		Reps uint8      `json:"reps"`
		Load units.Mass `json:"load"`
	}
	var sets []set
	err := field.Decode([]byte(`[
		{"reps": 5, "load": "100 kg"},
		{"reps": 5.5, "load": "100", "Load": "100 kg"}
	]`), &sets, field.Strict)
	fmt.Println(err)
	// Output:
	// malformed: /1/reps = 5.5, allowed: a whole number from 0 to 255 (line 3, column 12)
	// not given: /1/load = "100", allowed: a decimal number and a unit, such as "12.5 kg" or "25 lb" (line 3, column 25)
	// unknown: /1/Load = "100 kg", allowed: the names: reps, load (line 3, column 40)
}

// What a caller's own code finds wrong is added in one call.
func ExampleErrors_Refuse() {
	minutes, weeks := 2000, 12
	var bad field.Errors
	bad.Refuse(minutes < 0 || minutes > 1440, "/minutes", minutes, "0 to 1440 minutes", field.ErrOutOfRange)
	bad.Refuse(weeks < 1, "/weeks", weeks, "1 week or more", field.ErrOutOfRange)
	fmt.Println(bad.Err())
	// Output:
	// out of range: /minutes = 2000, allowed: 0 to 1440 minutes
}

// A function that checks several fields gathers what is wrong.
func ExampleErrors_Add() {
	var bad field.Errors
	bad.Add("/day", units.Day(0).Check())
	_, err := units.Between(12, 8)
	bad.Add("/reps", err)
	_, err = units.RPE(8)
	bad.Add("/rpe", err) // nil: nothing is added
	fmt.Println(bad.Err())
	// Output:
	// not given: /day, allowed: a day from 0001-01-01 to 9999-12-31
	// out of range: /reps = 12 to 8, allowed: a lower end at or below the upper end
}

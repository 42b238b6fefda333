package field_test

import (
	"fmt"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// What a database is handed, as arguments of a query are: text, or NULL for what is
// not given, and never the number behind it. Whatever has no text of its own is kept
// as JSON in a [field.Column], by which it is scanned too.
func ExampleColumn() {
	reserve := units.Must(units.InReserve(2))
	fmt.Println(units.Must(units.NewDay(2026, 11, 25)).Value())
	fmt.Println((6 * units.Kilogram).Value())
	fmt.Println(reserve.Value())
	fmt.Println(body.Left.Value())
	fmt.Println(body.Side(0).Value())
	who := field.Column[body.Person]{V: body.Person{Age: 66, Training: body.Novice}}
	fmt.Println(who.Value())

	var side body.Side
	fmt.Println(side.Scan("left"), side)
	fmt.Println(side.Scan(int64(2)))
	fmt.Println(who.Scan(`{"age": 66, "training": "novice", "trained": true}`))
	// Output:
	// 2026-11-25 <nil>
	// 6 kg <nil>
	// rir 2 <nil>
	// left <nil>
	// <nil> <nil>
	// {"age":66,"training":"novice"} <nil>
	// <nil> left
	// malformed: value = int64 2, allowed: the text that was stored, not a number
	// unknown: /trained = true, allowed: the names: age, sex, training (line 1, column 46)
}

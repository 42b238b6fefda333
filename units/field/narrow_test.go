package field_test

import (
	"testing"

	"example.org/posology/units/field"
)

// aged is a form with numbers whose types allow more than people have.
type aged struct {
	Age   uint8  `json:"age"`
	Beats int    `json:"beats"`
	Steps uint64 `json:"steps"`
	Spare int8   `json:"spare"`
}

func (a aged) Validate() error {
	var bad field.Errors
	if a.Age < 18 || a.Age > 120 {
		bad.Add("/age", field.Bad(a.Age, "18 to 120 years", field.ErrOutOfRange))
	}
	if a.Beats < 20 || a.Beats > 250 {
		bad.Add("/beats", field.Bad(a.Beats, "20 to 250 beats a minute", field.ErrOutOfRange))
	}
	if a.Spare > 100 {
		bad.Add("/spare", field.Bad(nil, "", field.ErrConflict)) // says nothing of what is allowed
	}
	return bad.Err()
}

// What a type allows is the business of machines: the check says what people have.
func TestRangesAreThoseOfTheCheck(t *testing.T) {
	for text, want := range map[string]string{
		`{"age":300,"beats":60}`:                  "out of range: /age = 300, allowed: a whole number, 18 to 120 years (line 1, column 8)",
		`{"age":-66,"beats":60}`:                  "out of range: /age = -66, allowed: a whole number, 18 to 120 years (line 1, column 8)",
		`{"age":66.5,"beats":60}`:                 "malformed: /age = 66.5, allowed: a whole number, 18 to 120 years (line 1, column 8)",
		`{"age":"old","beats":60}`:                `malformed: /age = "old", allowed: a whole number, 18 to 120 years (line 1, column 8)`,
		`{"age":66,"beats":1e3}`:                  "malformed: /beats = 1e3, allowed: a whole number, 20 to 250 beats a minute (line 1, column 19)",
		`{"age":66,"beats":99999999999999999999}`: "out of range: /beats = 99999999999999999999, allowed: a whole number, 20 to 250 beats a minute (line 1, column 19)",
		`{"age":300,"beats":1.5}`: "out of range: /age = 300, allowed: a whole number, 18 to 120 years (line 1, column 8)\n" +
			"malformed: /beats = 1.5, allowed: a whole number, 20 to 250 beats a minute (line 1, column 20)",
		`{"age":66,"beats":60,"spare":500}`: "overflow: /spare = 500, allowed: a whole number from -128 to 127 (line 1, column 30)",
		`{"age":130,"beats":60}`:            "out of range: /age = 130, allowed: 18 to 120 years (line 1, column 8)",
		`{"age":66,"beats":60,"steps":-1}`:  "overflow: /steps = -1, allowed: a whole number of 0 or more that fits 64 bits (line 1, column 30)",
		`{"age":66,"beats":60,"spare":200}`: "overflow: /spare = 200, allowed: a whole number from -128 to 127 (line 1, column 30)",
	} {
		var got aged
		err := field.DecodeChecked([]byte(text), &got, field.Strict, aged.Validate)
		if err == nil || err.Error() != want || got != (aged{}) {
			t.Errorf("%s: %v\nwant %s", text, err, want)
		}
	}
}

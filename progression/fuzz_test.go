package progression_test

import (
	"encoding/json"
	"testing"

	"example.org/posology/progression"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Whatever a course is read from, Next decides or says what is wrong, and a
// decision reads back.
func FuzzNext(f *testing.F) {
	for _, tt := range nextRows {
		c := rowCourse(f, 2, 4, 4.25, 6)
		tt.spoil(&c)
		f.Add(units.Must(json.Marshal(c)))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var c progression.Course
		if field.Decode(data, &c, field.Strict) != nil {
			return
		}
		d, err := progression.Next(c)
		if err != nil {
			return
		}
		text, err := json.Marshal(d)
		if err != nil {
			t.Fatal(err)
		}
		var back progression.Decision
		if err := field.Decode(text, &back, field.Strict); err != nil {
			t.Fatalf("%v\n%s", err, text)
		}
	})
}

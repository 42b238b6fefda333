package record_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A second reading of glucose stands in the check of the day once more: what was decided on
// the first stays as it was, and is worked out again from it.
func TestMeasuredAgain(t *testing.T) {
	r := read(t, review)
	day, first := r.Review, &r.Checks[len(r.Checks)-1]
	first.Glucose, first.InsulinOrSecretagogue, first.SevereLow, first.Setting = units.Must(screening.ParseGlucose("60 mg/dL")), screening.Yes, screening.No, screening.InClinic
	decide := func() (doses int) {
		entry, err := r.Decide(day)
		if err != nil {
			t.Fatal(err)
		}
		r.Entries = append(r.Entries, entry)
		for _, item := range entry.Items {
			if item.Decision.Next != nil {
				doses++
			}
		}
		return doses
	}
	if n := decide(); n > 0 {
		t.Errorf("%d doses at 60 mg/dL", n)
	}
	again := *first
	again.GlucoseAgain = units.Must(screening.ParseGlucose("105 mg/dL"))
	r.Checks = append(r.Checks, again)
	if n := decide(); n == 0 {
		t.Error("no dose at 105 mg/dL after sugar")
	}
	sameAnswers(t, r)
	for name, change := range map[string]func(c *screening.Check){
		"nothing":        func(c *screening.Check) { c.GlucoseAgain = screening.Glucose{} },
		"something else": func(c *screening.Check) { c.Febrile = screening.Unknown },
		"after no low":   func(c *screening.Check) { r.Checks = append(r.Checks, *c) },
		"after one that ends the day": func(c *screening.Check) {
			r.Checks = append(r.Checks, *c)
			c.GlucoseAgain = units.Must(screening.ParseGlucose("45 mg/dL"))
		},
	} {
		was := slices.Clone(r.Checks)
		change(&r.Checks[len(r.Checks)-1])
		if err := r.Validate(); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s: %v", name, err)
		}
		r.Checks = was
	}
	still := again
	still.GlucoseAgain = units.Must(screening.ParseGlucose("66 mg/dL"))
	r.Checks = slices.Insert(r.Checks, len(r.Checks)-1, still)
	r.Entries = nil
	if err := r.Validate(); err != nil {
		t.Errorf("treated twice: %v", err)
	}
	for i := range r.Checks { // one event, and not two
		r.Checks[i].Events = []screening.Event{{Code: "fall", Day: day}}
	}
	if stands, err := r.Alarms(day); err != nil || len(stands) != 1 {
		t.Errorf("%+v, %v", stands, err)
	}
}

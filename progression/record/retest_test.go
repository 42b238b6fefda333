package record_test

import (
	"testing"

	"example.org/posology/units"
)

// The next test of strength is due 21 days (dose.retest, design) after the last one under the
// plan in force, and after the first session where there was none since: one before the plan,
// or after the day that is looked back on, moves nothing.
func TestRetestFromTheLast(t *testing.T) {
	r := read(t, review)
	day, began := r.LastDay(), r.Days[0]
	for _, tt := range []struct{ tested, due units.Day }{
		{began - 3, began + 21}, {began, began + 21}, {began + 10, began + 31}, {day, day + 21}, {day + 1, began + 21},
	} {
		is := r
		set := r.Done[0]
		set.Day = tt.tested
		is.Tests = append(is.Tests[:len(is.Tests):len(is.Tests)], set)
		re, err := is.Assess(day)
		if err != nil || re.InForce.Retest != tt.due {
			t.Errorf("tested on %s: due on %s, want %s; %v", tt.tested, re.InForce.Retest, tt.due, err)
		}
		late := false
		for _, o := range re.Overdue {
			late = late || o.Code == "dose.overdue-retest"
		}
		if late != (day > tt.due) {
			t.Errorf("tested on %s: overdue %v on %s", tt.tested, late, day)
		}
	}
}

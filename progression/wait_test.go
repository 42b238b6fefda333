package progression_test

import (
	"slices"
	"testing"

	"example.org/posology/progression"
)

// Of loads that may all rise two do, those that did not for longest, though the step of
// another is smaller; of those alike the smallest steps. Once a row waited at six decisions
// running, seven weeks with one weight.
func TestNextAllTakesTurns(t *testing.T) {
	waits := func(rose ...bool) []int {
		courses := []progression.Course{rowCourse(t, 3.75, 4, 4.5), rowCourse(t, 3.75, 4, 4.25), rowCourse(t, 3.75, 4, 4.25)}
		for i := range courses {
			done(&courses[i], 4*kilo, 16, 3)
			span(&courses[i], 16, 16)
			repeat(&courses[i], 3)
			if rose[i] {
				courses[i].Log[0].Plan.Load, courses[i].Log[1].Plan.Load = held(4*kilo-kilo/4), held(4*kilo-kilo/4)
			}
		}
		list, err := progression.NextAll(courses)
		if err != nil {
			t.Fatal(err)
		}
		return places(list, func(d progression.Decision) bool { return hasReason(d, "progression.two-rise") })
	}
	for i, tt := range []struct {
		rose []bool // at the last visit
		wait int
	}{
		{[]bool{false, false, false}, 0}, {[]bool{false, true, true}, 2}, {[]bool{false, true, false}, 1},
		{[]bool{false, false, true}, 2}, {[]bool{true, true, false}, 0}, {[]bool{true, true, true}, 0},
	} {
		if got := waits(tt.rose...); !slices.Equal(got, []int{tt.wait}) {
			t.Errorf("case %d: %v wait, want %d", i, got, tt.wait)
		}
	}
}

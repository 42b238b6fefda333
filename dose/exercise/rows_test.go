package exercise

import (
	"strings"
	"testing"
)

// A table that cannot be read is an error here, so that it never is one for a caller.
func TestReadLadders(t *testing.T) {
	all, err := readLadders(laddersText)
	if err != nil || len(all) != 86 {
		t.Fatalf("%d ladders, want 86: %v", len(all), err)
	}
	good := "# A table.\nladder beyond: sit\n\nexercise: rise\nname: rise\npattern: squat\nhold: one hand\nwith: dumbbell; kettlebell\n" +
		"is: one-sided; by turns\ndemands: firm grip; overhead\ncounts: held\nbegins: hinge\nwarns: hinge pain\nfacts: heaviest\n"
	list, err := readLadders(good)
	if err != nil || len(list) != 1 || list[0].below != "sit" || len(list[0].rungs) != 1 {
		t.Fatalf("%+v, %v", list, err)
	}
	if r := list[0].rungs[0]; r.id != "rise" || len(r.with) != 2 || !r.oneSided || !r.turns || r.demands.String() != "firm grip, overhead" && r.demands.String() != "overhead, firm grip" ||
		r.count != held || r.first != hingeFirst || r.warn[0] != hingePain || r.facts[0] != factHeaviest {
		t.Errorf("%+v", r)
	}
	for name, change := range map[string][2]string{
		"no ladder": {"ladder beyond: sit", ""}, "no exercise": {"exercise: rise", ""}, "a line": {"name: ", "nam: "}, "pattern": {"squat", "squats"},
		"hold": {"one hand", "one foot"}, "with": {"; kettlebell", "; kettle"}, "is": {"by turns", "in turns"}, "demands": {"overhead", "underfoot"},
		"counts": {"held", "felt"}, "begins": {"hinge\n", "hinges\n"}, "warns": {"hinge pain", "pain"}, "facts": {"heaviest", "lightest"},
	} {
		if _, err := readLadders(strings.Replace(good, change[0], change[1], 1)); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

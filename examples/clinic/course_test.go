package main

import (
	"fmt"
	"strings"
	"testing"
)

// What the first course of a man who lives alone showed: a visit is logged once, one visit
// is no plural, and of the work beside lifting there are no more days than there were.
func TestAfterOneVisit(t *testing.T) {
	f := begun(t)
	step := func(want int, day, step, lines string, args ...string) string {
		t.Helper()
		status, out, errs := calls("", append([]string{"-dir", string(f), step, "hall", "-day", day, "-answers", answers(t, "# invented\n"+lines)}, args...)...)
		if status != want {
			t.Fatalf("%s: %d, %s", step, status, errs)
		}
		return strings.Join(strings.Fields(out+errs), " ")
	}
	step(0, "2027-01-06", "log", "goblet-squat: 10@9\npain: no\n", "-yes")
	for _, day := range []string{"2027-01-05", "2027-01-06"} {
		if said := step(1, day, "log", "goblet-squat: 10@9\npain: no\n"); !strings.Contains(said, "the visit of 2027-01-06 is logged already") {
			t.Errorf("%s: %s", day, said)
		}
	}
	for reader, want := range map[string]string{"client": "You have trained once, on Wednesday 6 January 2027.", "doctor": "who joins a class: one visit, on Wednesday 6 January 2027."} {
		if said := step(0, "2027-01-07", "review", "new: none\n", "-for", reader); !strings.Contains(said, want) {
			t.Errorf("%s: no %q in %s", reader, want, said)
		}
	}
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	track := p.Record.Beside.InForce[0].Track
	for days, want := range map[int]int{3: 0, 4: 0, 5: 1, 9: 1} { // from the day of the plan on
		said := step(want, "2027-01-07", "review", fmt.Sprintf("new: none\nbeside_%s: %d days, least 10\n", track, days))
		if refused := strings.Contains(said, fmt.Sprintf("%d days since it was looked at last are too many", days)); refused != (want == 1) {
			t.Errorf("%d days: %s", days, said)
		}
	}
}

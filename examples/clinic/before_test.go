package main

import (
	"strings"
	"testing"

	"example.org/posology/examples/internal/folder"
	"example.org/posology/examples/internal/letter"
	"example.org/posology/progression"
)

// What showed is said before the next question, and a decision that does not know of it is not
// shown: else they would go on with the list while somebody has pain in the chest.
func TestSaidAtOnce(t *testing.T) {
	w := tryer{t, begun(t)}
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-06", "review", "new: none\n")
	typed := "10@9\n" + strings.Repeat("none\n", len(inForce(recordOf(t, w.folder), 1<<20))-1) + "chest symptom\nno\nno\n\nno\nyes\n"
	_, out, _ := calls(typed, "-dir", string(w.folder), "log", "hall", "-day", "2027-01-08")
	if before, _, _ := strings.Cut(out, "Did the technique give way"); !strings.Contains(before, "CALL FOR HELP NOW") {
		t.Errorf("not at once:\n%.3000s", out)
	}
	w.says(w.step(1, "2027-01-08", "show", ""), "CALL FOR HELP NOW", "Next: review")
}

// Before the first visit no plan is made, or begun, of who fainted.
func TestNothingBeginsWhileSomethingStands(t *testing.T) {
	w := tryer{t, folder.Folder(t.TempDir())}
	w.step(0, "2027-01-04", "new", walkers[0].new)
	w.step(0, "2027-01-04", "visit", walkers[0].visit+"days: 2027-01-05 2027-01-08\n")
	w.step(0, "2027-01-04", "review", "new: faint\n")
	for _, one := range []string{"week", "visit"} {
		w.says(w.step(1, "2027-01-04", one, ""), "TO BE SEEN TODAY: faint", "Next: review")
	}
	w = tryer{t, begun(t)} // once the week was begun, too
	w.step(0, "2027-01-04", "review", "new: faint\n")
	w.says(w.step(1, "2027-01-04", "week", ""), "TO BE SEEN TODAY: faint", "Next: review")
}

// Found since a decision, limits alone stop it too: who has osteoporosis since would bend with
// the load that was asked for.
func TestLimitsAfterDecision(t *testing.T) {
	w := tryer{t, newlyFound(t)}
	for _, one := range []string{"show", "log"} {
		w.says(w.step(1, "2027-01-09", one, "goblet-squat: all@6\n"), "The assessment of 2027-01-09 says", "Next: review")
	}
}

// What was asked for and never done comes back with a second decision for the same visit, and
// would else be gone.
func TestNeverDoneComesBackTwice(t *testing.T) {
	w := tryer{t, begun(t)}
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-06", "review", "new: none\n")
	w.step(0, "2027-01-07", "ask", asked)
	w.step(0, "2027-01-07", "review", "new: none\n")
	if a := inForceOf(t, w.folder, "one-arm-dumbbell-row"); a.From.String() != "2027-01-08" || a.Until != 0 {
		t.Errorf("%+v", a)
	}
}

// A doubtful set is asked about with the day on which it was done.
func TestQueryHasItsDay(t *testing.T) {
	w := tryer{t, begun(t)}
	w.step(0, "2027-01-05", "log", strings.Replace(calm, "goblet-squat: 10@9", "goblet-squat: 7 kg 10@9", 1))
	w.step(0, "2027-01-06", "review", "new: none\n")
	w.step(0, "2027-01-08", "log", calm)
	w.says(w.step(0, "2027-01-09", "review", "new: none\n", "-for", "client"), "About the goblet squat on Tuesday 5 January 2027")
}

// With osteoporosis new pain of the back brings the doctor the question whether a bone broke.
func TestBackPainAsksForAnImage(t *testing.T) {
	w := tryer{t, newlyFound(t)}
	w.step(0, "2027-01-09", "review", "new: none\n")
	w.step(0, "2027-01-12", "log", "goblet-squat: 10@9\npain: yes\npain_kind: ordinary\npain_site: lower back\npain_usual: 0\npain_during: 6\npain_after: 5\npain_next_morning: 5\npain_in: goblet-squat\n")
	w.says(w.step(0, "2027-01-13", "review", "new: none\n", "-for", "doctor"), letter.OfSpine)
}

// A stopped exercise is not tested: whoever has a knee that swelled would lift their most with it.
func TestNothingStoppedIsTested(t *testing.T) {
	w := tryer{t, begun(t)}
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-06", "review", "new: none\n")
	p, err := w.folder.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	for i := range p.Record.Entries[1].Items {
		if item := &p.Record.Entries[1].Items[i]; item.Exercise == "goblet-squat" {
			item.Decision = progression.Decision{Action: progression.StopExercise}
		}
	}
	if c, err := p.Change(); err != nil || w.folder.Write(c) != nil {
		t.Fatal(err)
	}
	w.says(w.step(1, "2027-01-07", "test", "tests: goblet-squat 2 kg 8@2\n"), "goblet-squat is stopped")
}

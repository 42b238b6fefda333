package house_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// steps take an invented person through the clinic until something was decided at a
// review, and something has happened since.
var steps = []struct{ call, answers string }{
	{"new ann -day 2027-01-04", `note: an invented person: nobody of this kind exists
client: Client V, 64, a woman
task: lift the grandchild
tasks: lifting a grandchild
goal: strength
sex: female
training: novice
age: 64
setting: 3
signs: none
symptoms: none
more_signs: none
back_at_all: no
diseases: none
areas: none
wanted: moderate
activity: 0
blood_pressure: 126/80
pulse: 70
today: no
`},
	{"visit ann -day 2027-01-04", "kit: 2 x 1 kg, 2 x 2 kg, 2 x 4 kg\ndays: 2027-01-05 2027-01-08\nexercises: goblet-squat, one-arm-dumbbell-row\n"},
	{"week ann -day 2027-01-04", ""},
	{"log ann -day 2027-01-05", "goblet-squat: 10@9\none-arm-dumbbell-row: left 10@8 right 10@8\npain: no\nshowed: none\nobserver: Physiotherapist E\n"},
	{"review ann -day 2027-01-06", "new: none\n"},
	{"log ann -day 2027-01-08", "goblet-squat: 10@9\npain: no\nshowed: none\n"},
}

// The other programs read what the clinic keeps, at every step: the plan and the
// review that were decided on last.
func TestOthersReadTheFolder(t *testing.T) {
	folder, people := built(t), t.TempDir()
	says := map[string][]string{"firstvisit": {"visit", "RECORD OF A FIRST VISIT: Client V"}, "week": {"visit", "A WEEK OF TRAINING"}, "review": {"review", "decided for the visit of Friday 8 January 2027"}}
	done := map[string]bool{}
	for _, s := range steps {
		answers := filepath.Join(t.TempDir(), "answers.txt")
		if err := os.WriteFile(answers, []byte(s.answers), 0o600); err != nil {
			t.Fatal(err)
		}
		args := append([]string{"-dir", people, "-answers", answers, "-yes"}, strings.Fields(s.call)...)
		if _, errs, status := called(t, folder, "clinic", args...); status != 0 || errs != "" {
			t.Fatalf("%s: %d, %s", s.call, status, errs)
		}
		step, _, _ := strings.Cut(s.call, " ")
		done[step] = true
		for program, want := range says {
			out, errs, status := called(t, folder, program, "-case", filepath.Join(people, "ann.json"))
			if done[want[0]] && (status != 0 || errs != "" || !strings.Contains(out, want[1])) {
				t.Errorf("%s after %s: %d, %s\n%s", program, s.call, status, errs, out)
			}
		}
	}
}

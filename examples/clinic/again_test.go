package main

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// What was told on the same day stands, and an empty line takes it, but not a second reading
// beside another first one, nor what came before a session; a check of the day stays whole.
func TestAskedTwiceADay(t *testing.T) {
	f := begun(t)
	ask := func(day, lines string) record.Record {
		t.Helper()
		status, _, errs := calls("", "-dir", string(f), "ask", "hall", "-day", day, "-yes", "-answers", answers(t, "# invented\n"+lines))
		p, err := f.Read("hall")
		if status != 0 || errs != "" || err != nil {
			t.Fatalf("%q: %d, %s, %v", lines, status, errs, err)
		}
		return p.Record
	}
	if p := ask("2027-01-04", "").Profile; p.BP == nil || p.BP.Systolic != 138 || p.RestingPulse != 68 || !p.Symptoms.Asked {
		t.Errorf("typed twice: %+v", p)
	}
	for _, step := range []string{"ask", "check"} {
		if _, out, _ := calls(strings.Repeat("\n", 40), "-dir", string(f), step, "hall", "-day", "2027-01-04"); !strings.Contains(out, "nothing: as before, 138/82)") || step == "check" && strings.Contains(out, "How old") {
			t.Errorf("%s:\n%s", step, out)
		}
	}
	if p := ask("2027-01-04", "blood_pressure: 190/100\nblood_pressure_again: 150/90\n").Profile; p.BPAgain == nil {
		t.Errorf("%+v", p)
	}
	if p := ask("2027-01-04", "").Profile; p.BP.Systolic != 190 || p.BPAgain == nil {
		t.Errorf("the second reading is typed twice: %+v", p)
	}
	if p := ask("2027-01-04", "blood_pressure: 192/100\n").Profile; p.BPAgain != nil {
		t.Errorf("a second reading of another first one: %+v", p)
	}
	r := ask("2027-01-04", "blood_pressure: 130/80\ndiseases: diabetes_t2\ninsulin_or_secretagogue: yes\ntoday: yes\nhurt: no\nglucose: 140 mg/dL\nsevere_low_24h: no\n")
	if c := r.Checks[len(r.Checks)-1]; c.Glucose.IsZero() || c.SevereLow != screening.No {
		t.Errorf("%+v", c)
	}
	r = ask("2027-01-04", "")
	if c := r.Checks[len(r.Checks)-1]; c.Glucose.IsZero() || c.SevereLow != screening.No || c.BP.Systolic != 130 || len(r.Checks) != 1 {
		t.Errorf("the check of the day is another one: %+v", c)
	}
	ask("2027-01-04", "diseases: none\nno_longer: diabetes_t2\nblood_pressure: 138/82\n")
	if status, _, errs := calls("", "-dir", string(f), "log", "hall", "-day", "2027-01-05", "-yes", "-answers", answers(t, "goblet-squat: 10@9\n")); status != 0 {
		t.Fatal(errs)
	}
	if p := ask("2027-01-05", "").Profile; p.BP != nil || p.Symptoms.Asked {
		t.Errorf("of another day: %+v", p)
	}
	ask("2027-01-06", well+"blood_pressure: 130/80\n")
	if status, _, errs := calls("", "-dir", string(f), "log", "hall", "-day", "2027-01-06", "-yes", "-answers", answers(t, "goblet-squat: 10@9\n")); status != 0 {
		t.Fatal(errs)
	}
	if p := ask("2027-01-06", "").Profile; p.BP != nil {
		t.Errorf("of before the session: %+v", p)
	}
}

// Whoever stops at a question behind the paper of a review is asked no other.
func TestStopEndsAReview(t *testing.T) {
	f := newlyFound(t)
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	s := session{Desk: asking.Typed(strings.NewReader(strings.Repeat("\n", 40)), &out), folder: f, person: p, day: units.Must(units.ParseDay("2027-01-09")), wanted: command.ForFile, out: &out, said: &out}
	s.r = &s.person.Record
	err = s.decide(func(record.Review) error { return asking.ErrStopped })
	if !errors.Is(err, asking.ErrStopped) || !strings.Contains(out.String(), "RECORD OF A REVIEW") || strings.Contains(out.String(), "which one begins") {
		t.Errorf("%v\n%s", err, out.String())
	}
}

// A low that is treated is measured again, and both readings stand; what a lower one stopped
// stays stopped, whatever is measured or asked after it.
func TestSugarMeasuredAgain(t *testing.T) {
	f := begun(t)
	if status, _, errs := calls("", "-dir", string(f), "log", "hall", "-day", "2027-01-05", "-yes", "-answers", answers(t, "goblet-squat: 10@9\npain: no\n")); status != 0 {
		t.Fatal(errs)
	}
	step := func(want int, step, lines string, more ...string) string {
		t.Helper()
		status, out, errs := calls("", append([]string{"-dir", string(f), step, "hall", "-day", "2027-01-08", "-yes", "-answers", answers(t, "# invented\n"+lines)}, more...)...)
		if status != want {
			t.Fatalf("%s %q: %d, %s", step, lines, status, errs)
		}
		return strings.Join(strings.Fields(out+errs), " ")
	}
	const asked = "signs: none\nsymptoms: none\nmore_signs: none\nback_at_all: no\nblood_pressure: 130/80\ndiseases: diabetes_t2\ninsulin_or_secretagogue: yes\nretinopathy_moderate_or_worse: no\nclearance: no\n"
	step(0, "ask", asked+"today: no\n")
	step(0, "check", "hurt: no\nfebrile: no\nglucose: 60 mg/dL\nsevere_low_24h: no\n")
	if said := step(0, "ask", asked+"today: yes\nhurt: no\nfebrile: no\nglucose: 140 mg/dL\nsevere_low_24h: no\n"); !strings.Contains(said, "stays as it is") {
		t.Error(said)
	}
	for _, reading := range []string{"64 mg/dL", "5.6 mmol/L"} {
		step(0, "check", "glucose_again: "+reading+"\n")
	}
	r := recordOf(t, f)
	if n := len(r.Checks); n != 3 || r.Checks[2].Glucose.String() != "60 mg/dL" || r.Checks[1].GlucoseAgain.String() != "64 mg/dL" || r.Checks[2].GlucoseAgain.String() != "5.6 mmol/L" {
		t.Fatalf("%+v", r.Checks)
	}
	if said := step(1, "check", "glucose_again: 120 mg/dL\n"); !strings.Contains(said, "is kept already") {
		t.Error(said)
	}
	step(0, "review", "new: none\n")
	if said := step(0, "show", "", "-for", "doctor"); !strings.Contains(said, "glucose 60 mg/dL; then, after sugar, 5.6 mmol/L") {
		t.Error(said)
	}
}

// Oxygen that is low is read again after a rest, once, before the day is lost: the second
// reading counts, and both are kept.
func TestOxygenMeasuredAgain(t *testing.T) {
	f := begun(t)
	step := func(want int, step, lines string) string {
		t.Helper()
		status, out, errs := calls("", "-dir", string(f), step, "hall", "-day", "2027-01-08", "-yes", "-answers", answers(t, "# invented\n"+lines))
		if status != want {
			t.Fatalf("%s %q: %d, %s", step, lines, status, errs)
		}
		return strings.Join(strings.Fields(out+errs), " ")
	}
	step(0, "ask", "signs: none\nsymptoms: none\nmore_signs: none\nback_at_all: no\nblood_pressure: 130/80\nno_longer: hypertension_treated\nareas: lungs\nlungs: lung_disease\nclearance: no\ntoday: no\n")
	if said := step(0, "check", "hurt: no\nfebrile: no\noxygen_saturation: 86 %\n"); !strings.Contains(said, "86 %: rest and measure again") {
		t.Error(said)
	}
	step(1, "check", "oxygen_saturation_again: low\n")
	step(1, "check", "oxygen_saturation_again: 0\n")
	step(1, "check", "# nothing\n")
	if said := step(0, "check", "oxygen_saturation_again: 93 %\n"); strings.Contains(said, "below 89 %") {
		t.Error(said)
	}
	if r := recordOf(t, f); len(r.Checks) != 2 || r.Checks[0].SpO2Again != 0 || r.Checks[1].SpO2 != 86 || r.Checks[1].SpO2Again != 93 {
		t.Fatalf("%+v", r.Checks)
	}
	if said := step(1, "check", "oxygen_saturation_again: 95 %\n"); !strings.Contains(said, "is kept already") {
		t.Error(said)
	}
}

// A pressure and a pulse that ask for a second reading are read again with check, once, until the
// session; what cannot be a reading is asked for again, and nothing stays of it.
func TestPressureMeasuredAgain(t *testing.T) {
	w := copied(t, begun(t))
	day := "signs: none\nsymptoms: none\nmore_signs: none\nhurt: no\nunwell: no\nfebrile: no\n"
	w.step(0, "2027-01-05", "check", day+"blood_pressure: 184/96\npulse: 124\n")
	w.says(w.step(1, "2027-01-05", "log", trained), "meanwhile nothing")
	w.says(w.step(0, "2027-01-05", "list", ""), "check takes a second reading")
	for _, lines := range []string{"", "blood_pressure_again: high\n", "blood_pressure_again: 142\n", "blood_pressure_again: 12/8\n", "resting_pulse_again: 900\n", "glucose_again: 90 mg/dL\n"} {
		w.step(1, "2027-01-05", "check", lines)
	}
	said, r := typedIn(t, w.folder, "check", "2027-01-05", "142\n140/84\n88\ny\n")
	if n := len(r.Checks); n != 2 || r.Checks[1].BPAgain == nil || *r.Checks[1].BPAgain != (screening.BloodPressure{Systolic: 140, Diastolic: 84}) || r.Checks[1].RestingPulseAgain != 88 || r.Checks[0].BPAgain != nil {
		t.Fatalf("%+v\n%s", r.Checks, said)
	}
	w.says(w.step(1, "2027-01-05", "check", "blood_pressure_again: 120/80\n"), "is kept already")
	w.step(0, "2027-01-05", "log", trained)
}

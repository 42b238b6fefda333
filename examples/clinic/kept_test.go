package main

import (
	"fmt"
	"os"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// lasting is a folder with an invented woman who has told of what cannot go away.
func lasting(t *testing.T) folder.Folder {
	t.Helper()
	f := begun(t)
	told := strings.Replace(well, "lasting_signs: none", "lasting_signs: cancer_history", 1)
	told = strings.Replace(told, "diseases: none", "diseases: diabetes_t2", 1) + "insulin_or_secretagogue: yes\nretinopathy_moderate_or_worse: no\n" +
		"no_longer: hypertension_treated\nareas: bones belly\nbones: osteoporosis vertebral_fracture\nvertebral_fracture_day: 2024-01\nfloor_and_up: no\nbelly: hernia\nhernia_symptomatic_or_large: no\n" +
		"blood_pressure: 130/80\npulse: 66\nclearance: yes\nclearance_who: doctor A\nclearance_when: 2027-01-02\nclearance_scope: diabetes_t2\nclearance_effort: moderate\ntoday: no\n"
	if status, _, errs := calls("", "-dir", string(f), "ask", "hall", "-day", "2027-01-05", "-yes", "-answers", answers(t, told)); status != 0 {
		t.Fatal(errs)
	}
	return f
}

// typedIn types lines into a step, and returns what is said and the record after it.
func typedIn(t *testing.T, f folder.Folder, step, day, lines string) (string, record.Record) {
	t.Helper()
	_, out, errs := calls(lines, "-dir", string(f), step, "hall", "-day", day, "-yes")
	return strings.Join(strings.Fields(out+errs), " "), recordOf(t, f)
}

// What was told once is offered as before; a no is asked back about, and only a plain yes
// takes it away.
func TestToldStays(t *testing.T) {
	for back, isKept := range map[string]bool{"no": true, "": true, "perhaps": true, "yes": false} {
		f := lasting(t)
		said, r := typedIn(t, f, "ask", "2027-01-07", "\n\nnone\nnone\nnone\n\n\n\n\nnone\n"+strings.Repeat(back+"\n", 3)+strings.Repeat("\n", 30)+"stop\n")
		p := r.Profile
		if p.Conditions.Of("osteoporosis") == screening.Yes != isKept || p.Conditions.Of("hernia") == screening.Yes != isKept || p.RedFlags.Of("cancer_history") != screening.Yes || p.Diseases.Of("diabetes_t2") != screening.Yes {
			t.Errorf("%q: %+v, %+v", back, p.Conditions, p.RedFlags)
		}
		for _, want := range []string{"This stood in the assessment of 2027-01-05: osteoporosis.", "nothing: as before, cancer_history)"} {
			if !strings.Contains(said, want) {
				t.Errorf("%q: no %q in %s", back, want, said)
			}
		}
	}
	f := lasting(t)
	for _, tt := range []struct {
		lines string
		want  string
	}{{"areas: none\n", `line 1, areas: osteoporosis stood in the assessment of 2027-01-05; the line "no_longer: osteoporosis"`}, {"lasting_signs: none\nno_longer: cancer_history\n", "- /profile/red_flags"}} {
		_, out, errs := calls("", "-dir", string(f), "ask", "hall", "-day", "2027-01-07", "-answers", answers(t, tt.lines+"symptoms: none\nsigns: none\nmore_signs: none\n"))
		if !strings.Contains(out+errs, tt.want) {
			t.Errorf("%q: %s\n%s", tt.lines, errs, out)
		}
	}
}

// Whoever stops, and whatever ends an interview at once, leaves the rest as it stood.
func TestStoppedInterviewKeeps(t *testing.T) {
	f := lasting(t)
	was := recordOf(t, f).Profile
	said, r := typedIn(t, f, "ask", "2027-03-09", "\nstop\n")
	if !strings.Contains(said, "Nothing is to be written.") || r.Profile.Day != was.Day || !strings.Contains(said, "They stay as answered, and so does all else that stood in the assessment of 2027-01-05: setting: in a group;") {
		t.Errorf("%+v\n%s", r.Profile, said)
	}
	_, r = typedIn(t, f, "ask", "2027-03-09", "\n\n7\nstop\n")
	if got := r.Profile; got.RedFlags.Of("hot_swollen_joint") != screening.Yes || got.RedFlags.Of("cancer_history") != screening.Yes || got.Day != was.Day || !reflect.DeepEqual(got.Conditions, was.Conditions) || !reflect.DeepEqual(got.Clearances, was.Clearances) {
		t.Errorf("%+v", got)
	}
	_, r = typedIn(t, f, "ask", "2027-03-09", "\n\n1\n")
	if o, err := screening.Assess(r.Profile); err != nil || o.Route != screening.Emergency || r.Profile.Diseases.Of("diabetes_t2") != screening.Yes || r.Profile.Day.String() != "2027-03-09" {
		t.Errorf("%v, %v, %+v", o.Route, err, r.Profile)
	}
	// The next time everything is there to be taken as before.
	if said, _ = typedIn(t, f, "ask", "2027-03-10", strings.Repeat("\n", 9)); !strings.Contains(said, "as before, in a group)") && !strings.Contains(said, "as before, 3)") {
		t.Error(said)
	}
	if said, r = typedIn(t, f, "ask", "2027-03-01", ""); !strings.Contains(said, "the last assessment is of 2027-03-09") || r.Profile.Day.String() != "2027-03-09" {
		t.Error(said)
	}
}

// What is told at the day's check counts that day: a sign that nobody knew, one that ends it
// at once, an illness without fever, and less company than the assessment was for.
func TestCheckHears(t *testing.T) {
	for lines, want := range map[string]string{
		"signs: none\nsymptoms: dyspnoea_rest_or_mild_exertion\nmore_signs: unexplained_weight_loss\n": "Route: ask first. Meanwhile: nothing.",
		"signs: stroke_signs\n": "Route: emergency.",
		"signs: none\nsymptoms: none\nmore_signs: none\nunwell: yes\n":          "- a lighter session: no more weight than last time, 1 set fewer, 2 more in",
		"signs: none\nsymptoms: none\nmore_signs: none\nsetting_today: alone\n": `~ /profile/setting: "in a group" -> "alone"`,
	} {
		f := begun(t)
		status, out, errs := calls("", "-dir", string(f), "check", "hall", "-day", "2027-01-05", "-yes", "-answers", answers(t, lines+"blood_pressure: 130/80\npulse: 66\nhurt: no\nfebrile: no\n"))
		r := recordOf(t, f)
		if status != 0 || !strings.Contains(out, want) || len(r.Checks) != 1 {
			t.Fatalf("%q: %d, %s\n%s", lines, status, errs, out)
		}
		c := r.Checks[0]
		for _, code := range []screening.Code{"dyspnoea_rest_or_mild_exertion", "unexplained_weight_loss", "stroke_signs"} {
			if strings.Contains(lines, string(code)) != slices.Contains(c.New.Present, code) {
				t.Errorf("%q: %+v", lines, c.New)
			}
		}
		if _, err := screening.Assess(r.Profile); err != nil || r.Profile.BP == nil {
			t.Errorf("%q: %v", lines, err)
		}
	}
	f := begun(t)
	if said, r := typedIn(t, f, "check", "2027-01-05", "none\nstop\n"); len(r.Checks) > 0 || !strings.Contains(said, "nothing is written") {
		t.Error(said)
	}
}

// Between digits a comma is a decimal one; what may be two sets is asked back about, and
// so is what is likely to be a slip.
func TestTypedSets(t *testing.T) {
	ex, _ := exercise.Standard().Lookup("goblet-squat")
	for text, want := range map[string]string{
		"4,5 kg 10@3": "4.5 kg 10", "4,5 kg 10@3, 9@2": "4.5 kg 10 4.5 kg 9", "4.5kg 10;9": "4.5 kg 10 4.5 kg 9", "5 kg 10, 9": "5 kg 10 5 kg 9",
		"10,9": "", "10@3,9": "", "10@3,9@2": "", "4,5": "",
	} {
		sets, err := readSets(text, blank(ex, 739950), ex)
		var got []string
		for _, s := range sets {
			got = append(got, s.Load.String(), strconv.Itoa(s.Reps))
		}
		if (err == nil) != (want != "") || strings.Join(got, " ") != want {
			t.Errorf("%q: %v, %v", text, got, err)
		}
	}
	row, _ := exercise.Standard().Lookup("one-arm-dumbbell-row")
	begin := blank(row, 739950)
	begin.Load = 2 * units.Kilogram // as asked for: the other side's weight is none of this one's
	for text, want := range map[string]string{
		"left 8 3 kg 8 right 8 3 kg 8": "left 2 left 3 right 2 right 3", "left 3 kg 8 right 8": "left 3 right 2", "left 8 right 3 kg 8": "left 2 right 3",
		"3 kg left 8 right 8": "left 3 right 3", "left 8 3 kg right 8": "left 2 right 3", "3 kg left 8 4 kg 8 right 8": "left 3 left 4 right 3",
	} {
		sets, err := readSets(text, begin, row)
		var got []string
		for _, s := range sets {
			got = append(got, fmt.Sprintf("%s %v", s.Side, s.Load.Kilograms()))
		}
		if err != nil || strings.Join(got, " ") != want {
			t.Errorf("%q: %v, %v", text, got, err)
		}
	}
	f := begun(t)
	for line, want := range map[string]string{
		"100 kg 10@3": "100 kg is heavier than what is there, 8 kg at most. If it is so, write sure behind it", "1000@3": "ten times as many", "100 kg 10@3 sure": `"load":"100 kg","reps":10`,
	} {
		_, out, errs := calls("", "-dir", string(f), "log", "hall", "-day", "2027-01-05", "-answers", answers(t, "goblet-squat: "+line+"\npain: no\n"))
		if !strings.Contains(out+errs, want) {
			t.Errorf("%q: %s\n%s", line, errs, out)
		}
	}
}

// Why something was not done is asked of whoever did not come for more than a week, and of what
// was asked for and not done; not of what was stopped by somebody who comes.
func TestAbsenceIsAskedWhereSomethingWasMissed(t *testing.T) {
	const row, squat exercise.ID = "one-arm-dumbbell-row", "goblet-squat"
	r := record.Record{Asked: []record.Asked{{From: 100, Exercise: row, Count: 8, Sets: 1}, {From: 100, Exercise: squat, Count: 8, Sets: 1}}, Visits: []record.TrainingDay{{Day: 100}, {Day: 108}},
		Done: []setlog.Set{{Day: 100, Exercise: row}, {Day: 100, Exercise: squat}, {Day: 108, Exercise: squat}}}
	s := session{r: &r}
	if !s.isMissed(111) {
		t.Error("a row that was asked for and not done is no matter")
	}
	r.Entries = []record.Entry{{Day: 105, Items: []record.Decided{{Exercise: row}, {Exercise: squat, Decision: progression.Decision{Next: new(dose.Prescription)}}}, Rests: record.Lengths{Asked: 2}}}
	if s.isMissed(111) {
		t.Error("a row that is stopped is asked about")
	}
	if !s.isMissed(116) {
		t.Error("eight days without a visit are not asked about")
	}
	base := copied(t, begun(t))
	base.step(0, "2027-01-05", "log", "goblet-squat: all@5\npain: no\n")
	for lines, want := range map[string]struct {
		absence screening.Answer
		text    string
	}{
		"\nno\n":       {screening.No, "please answer yes, no or don't know"},
		"don't know\n": {screening.Yes, "not known: it counts as a medical cause"},
	} {
		said, r := typedIn(t, copied(t, base.folder).folder, "review", "2027-01-25", "none\n"+strings.Repeat("\n", 6)+lines)
		if !strings.Contains(said, want.text) || r.Absence != want.absence || len(r.Entries) != 2 {
			t.Errorf("%q: %s", lines, said)
		}
	}
}

// Pain is told of several exercises by the names that are printed; a visit that was logged
// wrongly is logged again from the record before it.
func TestLogged(t *testing.T) {
	f := begun(t)
	call := []string{"-dir", string(f), "log", "hall", "-day", "2027-01-05", "-yes", "-answers"}
	lines := "goblet-squat: all@5\none-arm-dumbbell-row: all@5\npain: yes\npain_kind: 1\npain_site: knee\npain_during: 2,5\npain_in: "
	for _, in := range []string{"goblet squat, goblet-squat\n", "bench press\n"} {
		if status, _, errs := calls("", append(call, answers(t, lines+in))...); status != 1 {
			t.Errorf("%q: %s", in, errs)
		}
	}
	if status, _, errs := calls("", append(call, answers(t, lines+"Goblet squat, one-arm dumbbell row\n"))...); status != 0 {
		t.Fatal(errs)
	}
	if v := recordOf(t, f).Visits[0]; len(v.But) != 2 || *v.But[1].Pain.During != 2.5 || !v.PainFree {
		t.Errorf("%+v", v)
	}
	_, _, errs := calls("", append(call, answers(t, "goblet-squat: all@5\n"))...)
	_, name, _ := strings.Cut(errs, "gunzip -c ")
	name, _, _ = strings.Cut(name, " ")
	if _, err := os.Stat(name); err != nil || !strings.Contains(errs, "logged wrongly") {
		t.Error(errs)
	}
}

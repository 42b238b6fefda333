package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A process that is to be killed runs the program, and dies at the change of the disk
// that the environment names.
func TestMain(m *testing.M) {
	programtest.Killable(m, &folder.Reached, func() int {
		return run(strings.Split(os.Getenv("CALLED"), " "), nil, os.Stdout, os.Stderr)
	})
}

// calls runs the program with lines that are typed.
func calls(typed string, args ...string) (status int, out, errs string) {
	var stdout, stderr bytes.Buffer
	status = run(args, strings.NewReader(typed), &stdout, &stderr)
	return status, stdout.String(), stderr.String()
}

// answers writes a file of answers.
func answers(t *testing.T, text string) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "answers.txt")
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

// begun is a folder in which the week of an invented woman has begun.
func begun(t *testing.T) folder.Folder {
	t.Helper()
	f := folder.Folder(t.TempDir())
	w := walkers[0]
	for _, one := range [][2]string{{"new", w.new}, {"visit", w.visit + "days: 2027-01-05 2027-01-08\n"}, {"week", ""}} {
		if status, _, errs := calls("", "-dir", string(f), one[0], "hall", "-day", "2027-01-04", "-answers", answers(t, one[1]), "-yes"); status != 0 || errs != "" {
			t.Fatalf("%s: %d, %s", one[0], status, errs)
		}
	}
	return f
}

// Killed at any change of the disk of a step that writes record and interview, or record
// and papers, the record is the old one or the new one, every paper is whole, and the step
// can be taken again.
func TestKilledAtAnyWrite(t *testing.T) {
	from := begun(t)
	asks := []string{"ask", "hall", "-day", "2027-01-07", "-answers", answers(t, well+"blood_pressure: 140/84\npulse: 70\ntoday: no\n"), "-yes"}
	killedAtEach(t, from, asks, func(r record.Record) bool { return r.Profile.BP.Systolic == 140 })
	if status, _, errs := calls("", "-dir", string(from), "log", "hall", "-day", "2027-01-05", "-yes", "-answers", answers(t, "goblet-squat: 10@9\npain: no\n")); status != 0 {
		t.Fatal(errs)
	}
	reviews := []string{"review", "hall", "-day", "2027-01-06", "-answers", answers(t, "new: none\n"), "-yes", "-html"}
	killedAtEach(t, from, reviews, func(r record.Record) bool { return len(r.Entries) == 2 })
}

// killedAtEach takes a step once for each change of the disk, and kills it there.
func killedAtEach(t *testing.T, from folder.Folder, step []string, isNew func(record.Record) bool) {
	t.Helper()
	old, err := os.ReadFile(from.File("hall"))
	if err != nil {
		t.Fatal(err)
	}
	killed, olds, news, pages := 0, 0, 0, 0
	for at := 1; ; at++ {
		f := folder.Folder(filepath.Join(t.TempDir(), "hall"))
		if err := os.CopyFS(string(f), os.DirFS(string(from))); err != nil {
			t.Fatal(err)
		}
		call := append([]string{"-dir", string(f)}, step...)
		ended := programtest.Killed(t, at, "CALLED="+strings.Join(call, " ")).Run()
		p, err := f.Read("hall")
		if err != nil {
			t.Fatalf("killed at change %d: %v", at, err)
		}
		is, _ := os.ReadFile(f.File("hall"))
		switch {
		case isNew(p.Record):
			news++
		case bytes.Equal(is, old):
			olds++
		default:
			t.Errorf("killed at change %d: neither the old record nor the new one", at)
		}
		papers, _ := filepath.Glob(filepath.Join(string(f), "papers", "*.html"))
		for _, name := range papers {
			pages++
			if text, err := os.ReadFile(name); err != nil || !strings.HasSuffix(strings.TrimSpace(string(text)), "</html>") || !isNew(p.Record) {
				t.Errorf("killed at change %d: %s is not whole, or of no decision", at, name)
			}
		}
		if ended == nil {
			break
		}
		if status, _, errs := calls("", call...); status != 0 && !strings.Contains(errs, "was decided for already") {
			t.Errorf("after a kill at change %d: %d, %s", at, status, errs)
		}
		killed++
	}
	if t.Logf("%s: killed at %d changes: %d times the old record, %d times the new one, %d papers", step[0], killed, olds, news, pages); killed < 8 || olds < 5 || news < 2 || step[0] == "review" && pages < 3 {
		t.Errorf("%s: killed at %d changes: %d times the old record, %d times the new one, %d papers", step[0], killed, olds, news, pages)
	}
}

// Before a session only what is new is asked, and the review decides for that day.
func TestCheck(t *testing.T) {
	f := begun(t)
	if status, _, errs := calls("", "-dir", string(f), "log", "hall", "-day", "2027-01-05", "-yes", "-answers",
		answers(t, "goblet-squat: 10@9\nshowed: none\nrange_lost: no\nform_lost: no\npain: no\n")); status != 0 || errs != "" {
		t.Fatalf("%d, %s", status, errs)
	}
	status, out, errs := calls("none\nnone\nnone\n142/86\n70\n\nno\nno\nno\nyes\n", "-dir", string(f), "check", "hall", "-day", "2027-01-08", "-for", "client")
	if status != 0 || errs != "" || strings.Contains(out, "How old are you?") || !strings.Contains(out, `+ /checks/0: {"day":"2027-01-08","new":{"asked":true}`) || strings.Contains(out, "/profile") {
		t.Fatalf("%d, %s\n%s", status, errs, out)
	}
	// What was never done is asked for again, without a decision; a second review for the same day is refused.
	review := []string{"-dir", string(f), "review", "hall", "-day", "2027-01-08", "-yes", "-answers", answers(t, "new: none\n")}
	status, out, errs = calls("", review...)
	if status != 0 || errs != "" || !strings.Contains(out, "decided for the visit of Friday 8 January 2027") || !strings.Contains(out, `"from":"2027-01-08","exercise":"one-arm-dumbbell-row"`) {
		t.Fatalf("%d, %s\n%s", status, errs, out)
	}
	if status, _, errs = calls("", review...); status != 1 || !strings.Contains(errs, "log comes first: that of 2027-01-08") {
		t.Errorf("%d, %s", status, errs)
	}
	if status, out, errs = calls("", "-dir", string(f), "replay", "hall"); status != 0 || strings.Count(out, "the same") != 2 {
		t.Errorf("%d, %s\n%s", status, errs, out)
	}
	// What nobody has looked at yet holds the decision; an event ends the plan.
	for _, tt := range []struct{ answers, want string }{
		{"new: injury\n", "TO BE LOOKED AT FIRST: injury"}, {"new: fall\n", "TO BE ASSESSED AGAIN: fall"},
		{"new: injury\nlooked: Physiotherapist E\nlooked_by: the physiotherapist\n", "RECORD OF A REVIEW"},
	} {
		if status, out, errs := calls("", "-dir", string(f), "review", "hall", "-day", "2027-01-09", "-answers", answers(t, tt.answers)); status != 0 || errs != "" || !strings.Contains(out, tt.want) {
			t.Errorf("%q: %d, %s\n%s", tt.answers, status, errs, out)
		}
	}
}

// Who is held at first comes back with an answer: asked again for what changed, and
// planned for again without being asked anything twice.
func TestHeldAtFirst(t *testing.T) {
	f := folder.Folder(t.TempDir())
	step := func(day, step, lines, want string, status int) string {
		t.Helper()
		got, out, errs := calls("", "-dir", string(f), step, "held", "-day", day, "-yes", "-for", "client", "-answers", answers(t, "# invented\n"+lines))
		if got != status || !strings.Contains(out+errs, want) {
			t.Fatalf("%s: %d, %s\n%s", step, got, errs, out)
		}
		return out
	}
	held := strings.Replace(walkers[1].new, "symptoms: none", "symptoms: dyspnoea_rest_or_mild_exertion", 1)
	step("2027-01-04", "new", held, "no exercise until this is settled", 0)
	step("2027-01-04", "visit", walkers[1].visit+"days: 2027-01-05 2027-01-08\n", "FOR NOW", 0)
	step("2027-01-04", "week", "", "there is no week to begin", 1)
	step("2027-02-01", "ask", "signs: none\nsymptoms: none\nno_longer: dyspnoea_rest_or_mild_exertion\nmore_signs: none\nblood_pressure: 130/82\npulse: 70\ntoday: no\n", "within what stands here", 0)
	step("2027-02-01", "week", "", "visit comes again", 1)
	step("2027-02-01", "visit", "days: 2027-02-02 2027-02-05\n", "WHAT YOU DO EACH TIME", 0)
	step("2027-02-01", "week", "", "+ /phase: \"familiarise\"", 0)
	step("2027-02-02", "log", "goblet-squat: all@8\none-arm-dumbbell-row: all\npain: no\nshowed: none\n", `"reps":10,"effort":"rir 8"`, 0)
	p, err := f.Read("held")
	if err != nil || len(p.Record.Done) != 3 || p.Record.Done[2].Side != body.Right || !p.Record.Done[2].Effort.IsZero() {
		t.Errorf("%v, %+v", err, p.Record.Done)
	}
}

// What is typed is written once somebody has seen it and said yes; a slip is asked
// again, and whoever stops has written nothing.
func TestTyped(t *testing.T) {
	f := begun(t)
	asked := 10
	lines := "2 kg 10@x\n10@9 ten\n2 kg 10@9\n" + strings.Repeat("none\n", asked-1) + "none\nno\nno\nPhysiotherapist E\nno\n"
	call := []string{"-dir", string(f), "log", "hall", "-day", "2027-01-05"}
	before, _ := os.ReadFile(f.File("hall"))
	for _, end := range []string{"", "stop\n", "perhaps\nno\n"} {
		status, out, errs := calls(lines+end, call...)
		after, _ := os.ReadFile(f.File("hall"))
		if status != 1 || !strings.Contains(errs, "nothing is written") || !bytes.Equal(before, after) {
			t.Errorf("%q: %d, %s", end, status, errs)
		}
		for _, want := range []string{`"x" says not how many were left, 0 to 10`, `"ten" is no set`, "TO BE WRITTEN", `+ /done/0: {"day":"2027-01-05","exercise":"goblet-squat"`, "+ /visits/0:"} {
			if !strings.Contains(out, want) {
				t.Errorf("no %q in\n%s", want, out)
			}
		}
	}
	if status, out, errs := calls(lines+"yes\n", call...); status != 0 || !strings.Contains(out, "Written.") {
		t.Errorf("%d, %s", status, errs)
	}
	p, err := f.Read("hall")
	if err != nil || len(p.Record.Visits) != 1 || len(p.Record.Done) != 1 || len(p.Record.Seen) != 2 {
		t.Errorf("%v, %+v", err, p.Record.Visits)
	}
}

// An answer of before is taken with an empty line, but not what is asked anew.
func TestAskedAgain(t *testing.T) {
	f := begun(t)
	typed := "\n\nnone\nnone\nnone\n\n\n\n\n\n\n\n\n\n\n\n\n150/88\n74\n\n\n\nno\nyes\n"
	status, out, errs := calls(typed, "-dir", string(f), "ask", "hall", "-day", "2027-02-04")
	p, err := f.Read("hall")
	if err != nil || status != 0 {
		t.Fatalf("%d, %v, %s\n%s", status, err, errs, out)
	}
	r := p.Record
	if r.Profile.Age != 68 || r.Profile.BP.Systolic != 150 || r.Profile.Day.String() != "2027-02-04" || r.Profile.Sex == 0 || !strings.Contains(out, "nothing: as before, 68)") {
		t.Errorf("%+v\n%s", r.Profile, out)
	}
	if _, out, _ := calls("stop\n", "-dir", string(f), "ask", "hall", "-day", "2028-02-04"); strings.Contains(out, "as before, 68") {
		t.Error("an age of a year ago is taken for that of today")
	}
	if strings.Contains(out, "as before, 138/82") {
		t.Error("a pressure of another day is taken for one of today")
	}
}

// The rules are joined as the record says in every step: the older list holds diabetes
// in somebody active that the newer one lets go on.
func TestJoinedAsTheRecordSays(t *testing.T) {
	said := map[string]bool{}
	for _, list := range []screening.ListChoice{screening.NewerList, screening.OlderList} {
		f := begun(t)
		p, err := f.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		p.Record.Join = screening.JoinPolicy{RiskFactors: list}
		if c, err := p.Change(); err != nil || f.Write(c) != nil {
			t.Fatal(err)
		}
		status, out, errs := calls("", "-dir", string(f), "ask", "hall", "-day", "2027-01-07", "-yes", "-answers",
			answers(t, strings.Replace(well, "diseases: none", "diseases: diabetes_t2\ninsulin_or_secretagogue: no\nretinopathy_moderate_or_worse: no", 1)+"blood_pressure: 130/82\npulse: 70\ntoday: no\n"))
		if p, err = f.Read("hall"); status != 0 || err != nil {
			t.Fatalf("%d, %s, %v", status, errs, err)
		}
		o, err := screening.Assess(p.Record.Profile, p.Record.Join)
		if err != nil {
			t.Fatal(err)
		}
		var want strings.Builder
		if asking.TellClinician(&want, o); !strings.Contains(out, want.String()) {
			t.Errorf("list %d: it says\n%s\nand not\n%s", list, out, want.String())
		}
		said[want.String()] = true
	}
	if len(said) != 2 {
		t.Error("both lists say the same")
	}
}

// The other programs read what lies in the folder.
func TestOthersReadIt(t *testing.T) {
	f := begun(t)
	data, err := os.ReadFile(f.File("hall"))
	if err != nil {
		t.Fatal(err)
	}
	r, err := record.Decode(data, field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	plan, err := r.Start(r.LastDay())
	if err != nil || plan.Week == nil {
		t.Errorf("%v, %v", plan.Week, err)
	}
	for _, args := range [][]string{{"show"}, {"show", "-for", "client"}, {"show", "-json"}, {"replay"}} {
		status, out, errs := calls("", append([]string{"-dir", string(f), args[0], "hall"}, args[1:]...)...)
		if status != 0 || errs != "" || out == "" {
			t.Errorf("%v: %d, %s", args, status, errs)
		}
	}
}

// Steps that cannot be taken say why and what comes first; nothing is written.
func TestSteps(t *testing.T) {
	f := begun(t)
	if c, err := (folder.Person{Name: "asked", Record: programtest.Decoded(t, demo.VillageHall())}).Change(); err != nil || f.Write(c) != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ args, answers, want string }{
		{"new hall", "", "is there already"},
		{"ask nobody", "", "there is no"},
		{"new Bob", "", `"Bob" cannot name a record`},
		{"new bob", "client: Client B\ntask: walk\n", "goal: \"\" is none of 1 strength"},
		{"new bob", "client: Client B\ntask: walk\ngoal: strength\ntraining: novice\n", "we begin with the age"},
		{"new bob", "task: walk\n", "client: this is needed"},
		{"week hall", "", "the week was begun already"},
		{"week asked", "", "visit comes first"},
		{"log asked", "", "nothing is asked for on 2027-01-05"},
		{"log hall", "goblet-squat: 10@9@9\n", "line 1, goblet-squat"},
		{"log hall", "one-arm-dumbbell-row: 10@9\n", "which side?"},
		{"log hall", "goblet-squat: left 10@9 right 10@9\n", "line 1, goblet-squat: goblet-squat is done with both sides: leave out left"},
		{"visit hall", "tests: goblet-squat right 4 kg 8@2\n", "goblet-squat is done with both sides: leave out right"},
		{"log hall", "goblet-squat: none\n", "nothing was done"},
		{"log hall", "gobletsquat: 10\n", "gobletsquat: nothing made this question necessary"},
		{"test hall", "test: goblet-squat 4 kg 8@2\n", "test: nothing made this question necessary"},
		{"log hall", "goblet-squat: 10\npain: yes\npain_in: sofa\n", `"sofa" was not asked for`},
		{"log hall", "goblet-squat: 10\npain: yes\npain_during: 99\n", `pain_during: "99" is no number from 0 to 10`},
		{"log hall", "goblet-squat: 10\npain: yes\npain_after: NaN\n", `"NaN" is no number from 0 to 10`},
		{"log hall", "goblet-squat: 6 kg\ntoe-raise: 10\n", `behind "6kg" no set is told`},
		{"log hall", "one-arm-dumbbell-row: left 10 right\n", `behind "right" no set is told`},
		{"log hall", "goblet-squat: 10 8 kg\n", `behind "8kg" no set is told`},
		{"test hall", "", "no test was given"},
		{"test hall", "tests: sofa 4 kg 8@2\n", "sofa"},
		{"end hall", "", "/visits"},
		{"show asked", "", "nothing was decided yet"},
		{"visit hall", "tests: one-arm-dumbbell-row 4 kg 8@2\n", "which side?"},
		{"visit hall", "tests: one-arm-dumbbell-row left 4 kg 8@2; goblet-squat\n", "goblet-squat: no set is told"},
		{"visit asked", "days: 2027-01-08 2027-01-04\n", "2027-01-04 is over"},
		{"visit asked", "days: 2027-01-13 2027-01-06\n", "2027-01-13 is not in one week with 2027-01-06"},
		{"visit asked", "days: 2027-01-06 2027-01-06\n", "a day stands there twice"},
		{"visit asked", "days: 2027-01-06\nminutes: forty\n", `"forty" is no number from 0 to 1440`},
		{"visit asked", "days: 2027-01-06\nminutes: -40\n", `"-40" is no number from 0 to 1440`},
		{"visit asked", "body_mass: heavy\ndays: 2027-01-06\n", "line 1, body_mass"},
	} {
		before, _ := os.ReadFile(f.File("hall"))
		args := append([]string{"-dir", string(f), "-day", "2027-01-05", "-yes", "-answers", answers(t, "# invented\n"+tt.answers)}, strings.Fields(tt.args)...)
		status, _, errs := calls("", args...)
		after, _ := os.ReadFile(f.File("hall"))
		want := strings.Replace(tt.want, "line 1", "line 2", 1)
		if status != 1 || !strings.Contains(errs, want) || !bytes.Equal(before, after) {
			t.Errorf("%s, %q: status %d, %q; want 1 and %s", tt.args, tt.answers, status, errs, want)
		}
	}
	if status, out, errs := calls("", "-dir", string(f), "test", "hall", "-day", "2027-01-05", "-answers", answers(t, "tests: one-arm-dumbbell-row left 6 kg 9@2 right 6 kg 9@2\n")); status != 0 || errs != "" || !strings.Contains(out, "-yes writes it") || !strings.Contains(out, "one-arm-dumbbell-row, left, on 2027-01-05") {
		t.Errorf("%d, %s\n%s", status, errs, out)
	}
}

// Whoever stops is asked nothing more.
func TestStopEnds(t *testing.T) {
	f := begun(t)
	for _, step := range []string{"visit", "test"} {
		status, out, errs := calls("stop\n10\n10\n", "-dir", string(f), step, "hall", "-day", "2027-01-04")
		if status != 1 || !strings.Contains(errs, "stopped: nothing is written") || strings.Count(out, "> ") != 1 {
			t.Errorf("%s: %d, %s\n%s", step, status, errs, out)
		}
	}
}

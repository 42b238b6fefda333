package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/examples/internal/folder"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
)

// A diary that was typed in is logged, and decided on; one of other days is refused.
func TestDiary(t *testing.T) {
	f := begun(t)
	typed := func(lines string) (status int, out, errs string) {
		return calls("", "-dir", string(f), "log", "hall", "-day", "2027-01-09", "-yes", "-diary", answers(t, "day,row,weight,done,more\n"+lines), "-answers", answers(t, "# invented\npain_kind: ordinary\npain_site: knee\n"))
	}
	for _, tt := range [][2]string{
		{"2027-01-04,1,,10,6\n", "2027-01-04 is no day of this sheet"}, {"2027-01-10,1,,10,6\n", "is no day of this sheet"},
		{"2027-01-05,99,,10,6\n", "/2/row"}, {"", "nothing was done"},
	} {
		if status, _, errs := typed(tt[0]); status != 1 || !strings.Contains(errs, tt[1]) {
			t.Errorf("%q: %d, %s", tt[0], status, errs)
		}
	}
	status, out, errs := typed("2027-01-05,1,,10,6\n2027-01-05,no pain,,yes,\n2027-01-08,1,2 kg,8,4\n2027-01-08,pain,,4,\n")
	p, err := f.Read("hall")
	if status != 0 || errs != "" || err != nil || len(p.Record.Visits) != 2 || len(p.Record.Done) != 2 {
		t.Fatalf("%d, %s, %v\n%s", status, errs, err, out)
	}
	if v := p.Record.Visits; !v[0].PainFree || v[1].Pain == nil || v[1].Pain.Kind != screening.OrdinaryPain || *v[1].Pain.During != 4 {
		t.Errorf("%+v", v)
	}
	f = begun(t) // pain that nobody told how much is pain
	if status, _, errs := typed("2027-01-05,1,,10,6\n2027-01-05,no pain,,no,\n"); status != 0 || errs != "" {
		t.Fatal(errs)
	}
	if v := recordOf(t, f).Visits[0]; v.PainFree || v.Pain == nil || v.Pain.Site == 0 {
		t.Errorf("%+v", v)
	}
	if status, _, errs := calls("", "-dir", string(f), "review", "hall", "-day", "2027-01-10", "-yes", "-answers", answers(t, "new: none\n")); status != 0 {
		t.Errorf("%s", errs)
	}
	if status, out, _ := calls("", "-dir", string(f), "replay", "hall"); status != 0 {
		t.Errorf("%s", out)
	}
}

// Of a day in a diary is asked what its sheet has no row for, so that who trains by it gets on;
// a digit too many is asked about as at a visit.
func TestDiaryIsAskedAbout(t *testing.T) {
	w := copied(t, begun(t))
	diary := func(status int, day, lines, more string) string {
		return w.step(status, "2027-01-09", "log", "showed: none\nrange_lost: no\nform_lost: no\n"+more, "-diary", answers(t, "day,row,weight,done,more\n"+strings.ReplaceAll(lines, "DAY", day)))
	}
	const slip = "100 is ten times as many as the 10 that were asked for"
	w.says(diary(1, "2027-01-05", "DAY,1,,100,6\n", ""), slip)
	w.says(diary(1, "2027-01-05", "DAY,1,40 kg,10,6\n", ""), "40 kg is heavier than what is there")
	so := copied(t, w.folder)
	so.step(0, "2027-01-09", "log", "diary_right: yes\n", "-diary", answers(t, "day,row,weight,done,more\n2027-01-05,1,,100,6\n"))
	diary(0, "2027-01-05", "DAY,3,,10,9\nDAY,4,,10,9\nDAY,no pain,,yes,\n", "")
	v := recordOf(t, w.folder).Visits[0]
	if v.Moment == nil || v.RangeLost != screening.No || v.FormLost != screening.No || v.Observer != "" {
		t.Fatalf("%+v", v)
	}
	was := len(recordOf(t, w.folder).Asked)
	w.step(0, "2027-01-09", "review", "new: none\n")
	if now := recordOf(t, w.folder).Asked[was:]; !slices.ContainsFunc(now, func(a record.Asked) bool { return a.Exercise == "step-up" && a.Count > 10 }) {
		t.Errorf("nobody who trains by a diary gets on: %+v", now)
	}
}

// newlyFound is a folder in which osteoporosis was found in a woman after her second visit.
func newlyFound(t *testing.T) folder.Folder {
	t.Helper()
	f := begun(t)
	for _, one := range [][3]string{
		{"2027-01-05", "log", "goblet-squat: 10@9\npain: no\n"}, {"2027-01-06", "review", "new: none\n"}, {"2027-01-08", "log", "goblet-squat: 10@9\npain: no\n"},
		{"2027-01-09", "ask", strings.Replace(well, "areas: none\n", "", 1) + "no_longer: hypertension_treated\nareas: bones\nbones: osteoporosis\nvertebral_fracture: no\nblood_pressure: 130/80\npulse: 66\ntoday: no\n"},
	} {
		status, out, errs := calls("", "-dir", string(f), one[1], "hall", "-day", one[0], "-yes", "-answers", answers(t, "# invented\n"+one[2]))
		if status != 0 || errs != "" {
			t.Fatalf("%s: %d, %s", one[1], status, errs)
		}
		if strings.Contains(out, "goes on without") {
			t.Errorf("%s: nothing was found, and the plan goes on without something:\n%s", one[1], out)
		}
	}
	return f
}

// After new findings the plan says what it goes on without.
func TestNewFindings(t *testing.T) {
	f := newlyFound(t)
	asked := func() int {
		p, err := f.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		return len(inForce(p.Record, 1<<15))
	}
	before := asked()
	status, out, errs := calls("", "-dir", string(f), "review", "hall", "-day", "2027-01-09", "-yes", "-answers", answers(t, "new: none\n"))
	if status != 0 || errs != "" || !strings.Contains(out, "goes on without what would be chosen") || asked() != before {
		t.Errorf("%d, %s: %d exercises, then %d:\n%s", status, errs, before, asked(), out)
	}
}

// How a test of function went is typed once: what has to be alike is that of last time.
func TestFunction(t *testing.T) {
	f := begun(t)
	for i, lines := range []string{
		"30-s_chair_stand: used arms, seat 45 cm\ngrip: right dominant 24 kg, handle 2; left non-dominant 22 kg, handle 2\ntime_up_and_down_the_same_stairs: stopped, 12 steps\n",
		"30-s_chair_stand: 6 reps\ngrip: right dominant 25 kg\ntime_up_and_down_the_same_stairs: unable\n",
	} {
		if status, _, errs := calls("", "-dir", string(f), "test", "hall", "-day", fmt.Sprintf("2027-01-1%d", i), "-yes", "-answers", answers(t, lines)); status != 0 || errs != "" {
			t.Fatalf("%d, %s", status, errs)
		}
	}
	p, err := f.Read("hall")
	if err != nil || len(p.Record.Function) != 7 {
		t.Fatalf("%v, %+v", err, p.Record.Function)
	}
	for i, want := range []string{"grip, right 24 kg, handle 2, 1", "grip, left 22 kg, handle 2, 1", " stopped, 12 steps, 0", "30-s chair stand used arms, seat 45 cm, 1", "grip, right 25 kg, handle 2, 2", " unable, 12 steps, 0", "30-s chair stand 6 reps, seat 45 cm, 2"} {
		one := p.Record.Function[i]
		got := one.Test.String()
		if one.Side != 0 {
			got += ", " + one.Side.String()
		}
		how := one.How.String()
		if one.How == function.Done {
			how = one.Value.String()
		}
		if got += fmt.Sprintf(" %s, %s, %d", how, one.Protocol, one.Try); got != want {
			t.Errorf("%d: %q, want %q", i, got, want)
		}
	}
	_, out, _ := calls("none\n\n\n\n", "-dir", string(f), "test", "hall", "-day", "2027-01-15")
	if out = strings.Join(strings.Fields(out), " "); !strings.Contains(out, "grip? Last time, on 2027-01-11: right 25 kg, handle 2; on 2027-01-10: left 22 kg, handle 2.") {
		t.Errorf("it is not said what has to be alike:\n%s", out)
	}
	for _, bad := range []string{"30-s_chair_stand: many", "30-s_chair_stand: 6 kg", "grip: 24 s", "time_up_and_down_the_same_stairs: used arms"} {
		if status, _, errs := calls("", "-dir", string(f), "test", "hall", "-day", "2027-01-15", "-yes", "-answers", answers(t, bad+"\n")); status != 1 || !strings.Contains(errs, "line 1") {
			t.Errorf("%s: %d, %s", bad, status, errs)
		}
	}
}

// Work that waits for somebody to have looked begins once the first visit or a review is told so:
// impact with osteoporosis, and the stances of one leg.
func TestLooks(t *testing.T) {
	lines := strings.NewReplacer("areas: pressure\npressure: hypertension_treated\n", "areas: bones\nbones: osteoporosis\nvertebral_fracture: no\n", "goal: strength", "goal: bone").Replace(walkers[0].new)
	for _, tt := range []struct{ told, want, not string }{
		{"", "impact, not begun", "impact: stamping"},
		{"spine_fracture: yes\n", "impact, not begun", "impact: stamping"},
		{"spine_fracture: don't know\n", "impact, not begun", "impact: stamping"},
		{"spine_fracture: no\nstances_held: 3\n", "impact: stamp", "not begun"},
	} {
		f := folder.Folder(t.TempDir())
		step := func(day, step, lines string) string {
			t.Helper()
			status, out, errs := calls("", "-dir", string(f), step, "hall", "-day", day, "-yes", "-answers", answers(t, lines+"# invented\n"))
			if status != 0 || errs != "" {
				t.Fatalf("%s: %d, %s", step, status, errs)
			}
			return out
		}
		step("2027-01-04", "new", lines)
		out := step("2027-01-04", "visit", walkers[0].visit+"days: 2027-01-05 2027-01-08\n"+tt.told)
		if !strings.Contains(out, tt.want) || strings.Contains(out, tt.not) {
			t.Errorf("%q: want %q, not %q in\n%s", tt.told, tt.want, tt.not, out[strings.Index(out, "BESIDE"):])
		}
		step("2027-01-04", "week", "")
		step("2027-01-05", "log", "goblet-squat: 10@9\npain: no\n")
		if tt.told == "" {
			if out = step("2027-01-06", "review", "new: none\nspine_fracture: no\n"); !strings.Contains(out, "impact: stamp") {
				t.Errorf("told at a review, impact does not begin:\n%s", out)
			}
		}
	}
	f := begun(t)
	if status, _, errs := calls("", "-dir", string(f), "visit", "hall", "-day", "2027-01-04", "-answers", answers(t, "stances_held: 5\n")); status != 1 || !strings.Contains(errs, `"5" is no number from 0 to 4`) {
		t.Errorf("%d, %s", status, errs)
	}
}

// What the test of balance says of the stances held is not typed again: its time of the
// third stance tells of the two before. What it leaves open is asked, and all may be changed.
func TestStancesByTest(t *testing.T) {
	for _, tt := range []struct{ was, test, typed, want string }{
		{"", "6 s", "", "2"}, {"", "9.99 s", "", "2"}, {"", "10 s", "", "3"}, {"", "12 s", "4", "4"}, {"", "6 s", "1", "1"},
		{"", "0 s", "", ""}, {"", "unable", "", ""}, {"", "unable", "1", "1"}, {"", "stopped", "", ""}, {"", "refused", "", ""}, {"", "", "", ""},
		{"4", "6 s", "", "2"}, {"4", "10 s", "", "4"}, {"1", "10 s", "", "3"}, {"4", "unable", "", ""}, {"1", "unable", "", "1"}, {"4", "refused", "", "4"}, {"4", "", "", "4"},
	} {
		f := begun(t)
		p, err := f.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		p.Record.Profile.Falls = &screening.FallsScreen{Fell: screening.Yes, Unsteady: screening.Yes}
		p.Record.Profile.Conditions.Present = append(p.Record.Profile.Conditions.Present, "falls_risk")
		if n, err := strconv.Atoi(tt.was); err == nil {
			p.Record.Beside.Stands = &n
		}
		if c, err := p.Change(); err != nil || f.Write(c) != nil {
			t.Fatal(err)
		}
		lines := "30-s_chair_stand: 10 reps\n"
		if tt.test != "" {
			lines += "four-stage_balance: " + tt.test + "\n"
		}
		if tt.typed != "" {
			lines += "stances_held: " + tt.typed + "\n"
		}
		if status, _, errs := calls("", "-dir", string(f), "test", "hall", "-day", "2027-01-06", "-yes", "-answers", answers(t, lines)); status != 0 || errs != "" {
			t.Fatalf("%d, %s", status, errs)
		}
		if p, err = f.Read("hall"); err != nil {
			t.Fatal(err)
		}
		got := ""
		if n := p.Record.Beside.Stands; n != nil {
			got = fmt.Sprint(*n)
		}
		if got != tt.want {
			t.Errorf("%q before, %q tested, %q typed: %q held, want %q", tt.was, tt.test, tt.typed, got, tt.want)
		}
	}
	f := begun(t)
	_, out, _ := calls("none\n", "-dir", string(f), "test", "hall", "-day", "2027-01-06")
	if strings.Contains(out, "stances") {
		t.Errorf("asked of somebody whose balance was not tested:\n%s", out)
	}
}

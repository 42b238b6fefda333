package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/reviewpaper"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

const refer = "../internal/demo/home-review-refer.json"

// printed runs the program, which has to end well, and returns what it prints.
func printed(t *testing.T, args ...string) string {
	t.Helper()
	status, out, errs := programtest.Run(run, args...)
	if status != 0 || errs != "" {
		t.Fatalf("%v: status %d, %s", args, status, errs)
	}
	return out
}

// flat undoes the wrapping of lines.
func flat(text string) string { return strings.Join(strings.Fields(text), " ") }

func reviewed(t *testing.T, data []byte) record.Review {
	t.Helper()
	c, err := record.Decode(data, field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	r, err := c.Assess(c.Review)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// That the kit has nothing heavier is said of the weight that is asked for, and not of
// another exercise that comes in its place with its lightest.
func TestNothingHeavierIsOfTheKit(t *testing.T) {
	c, err := record.Decode(demo.HomeReview(), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	seven := 7.
	for i := len(c.Visits) - 2; i < len(c.Visits); i++ { // twice above 5 of 10
		c.Visits[i].But = []record.Exception{{Exercise: "one-arm-dumbbell-row", Noted: record.Noted{Pain: &screening.Pain{Kind: screening.OrdinaryPain, During: &seven}}}}
	}
	re, err := c.Assess(c.Review)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := reviewpaper.For(command.ForFile, &out, re); err != nil {
		t.Fatal(err)
	}
	_, of, _ := strings.Cut(out.String(), "ONE-ARM DUMBBELL ROW: ")
	of, _, _ = strings.Cut(flat(of), " gates ")
	if !strings.Contains(of, "seated one-arm row in its place") || strings.Contains(of, "the kit has nothing heavier") {
		t.Error(of)
	}
}

func TestPapers(t *testing.T) {
	unkind := []string{"safe", "cleared", "failed", "frail", "non-responder", "%"}
	for _, args := range [][]string{nil, {"-case", refer}} {
		for _, reader := range []string{"client", "file", "doctor"} {
			got := printed(t, append([]string{"-for", reader}, args...)...)
			for _, want := range []string{"invented", "no medical device", "local rules and a licensed clinician decide"} {
				if !strings.Contains(flat(got), want) {
					t.Errorf("%v -for %s: no %q in\n%s", args, reader, want, got)
				}
			}
			for i, line := range strings.Split(got, "\n") {
				if len([]rune(line)) > page.Width+14 || strings.ContainsAny(line, "{}") {
					t.Errorf("%v -for %s line %d: %q", args, reader, i+1, line)
				}
			}
			for _, word := range unkind {
				if reader == "client" && strings.Contains(strings.ToLower(got), word) {
					t.Errorf("%v: the client reads %q", args, word)
				}
			}
		}
		if printed(t, args...) != printed(t, append([]string{"-for", "file"}, args...)...) {
			t.Error("without -for the paper for the file is not printed")
		}
	}
}

// What the invented case is there to show.
func TestDemo(t *testing.T) {
	r := reviewed(t, demo.HomeReview())
	want := []struct {
		action  progression.Action
		change  progression.Change
		queries int
	}{
		{progression.Progress, progression.MoreLoad, 0},
		{progression.HoldDose, progression.NoChange, 0},
		{progression.EaseOff, progression.NoChange, 0},
		{progression.HoldDose, progression.NoChange, 2},
		{progression.HoldDose, progression.NoChange, 0},
	}
	if len(r.Items) != len(want) {
		t.Fatalf("%d exercises", len(r.Items))
	}
	for i, w := range want {
		d := r.Items[i].Decision
		if d.Action != w.action || d.Change != w.change || len(d.Queries) != w.queries || d.Next == nil {
			t.Errorf("%s: %s, %s, %d queries", r.Items[i].Name, d.Action, d.Change, len(d.Queries))
		}
	}
	if step := r.Items[0].Decision.Rise; step == nil || step.Within || step.Moved == 0 || step.Moved > 0.1 {
		t.Errorf("the load that rises is to be far for the hand and near for the body: %+v", step)
	}
	if a := r.Attended; len(a.Sessions) != 10 || len(a.Done) != 9 || len(a.Missed) != 1 || len(a.Short) != 1 {
		t.Errorf("attended: %+v", a)
	}
}

func TestPapersSayWhatMatters(t *testing.T) {
	for _, tt := range []struct {
		args []string
		want []string
	}{
		{[]string{"-for", "client"}, []string{"Take 10 kg dumbbell in both hands", "This weight for now: when the sets end easier there will be more.", "We go by how it feels", "About the seated hammer curl on Friday 5 March 2027: Please tell us which weight you used.", "by Tuesday 16 March 2027", "30-s chair stand: 12 reps on Thursday 28 January 2027, 17 reps on Tuesday 9 March 2027. You did clearly better than before."}},
		{[]string{"-for", "file"}, []string{"6 kg to 10 kg: 66.7 % of the weight held, 6.1 % of all that is moved", "published guidance is 2 to 10 %", "missed: Friday 12 February 2027", "Logged with 4 kg where 2 kg was planned", "during 6", "up to 9 of it in the reserve asked for", "6 kg at most 11 repetitions", "Review by Tuesday 16 March 2027", "SOURCES", "a difference of 5 reps (2.5 reps to 7.5 reps) against a detectable change of 2.5 reps (Gill 2022, published): real, for the better", "stopped before, done now (better)", "Track stance, step 17 of 18"}},
		{[]string{"-for", "doctor"}, []string{"Treated hypertension", "during 6", "training does not wait for an answer", "Training goes on within the limits named", "in their own words: “carry a full watering can"}},
		{[]string{"-for", "client", "-case", refer}, []string{"Somebody has to look at what came up first. No exercise until then."}},
		{[]string{"-for", "file", "-case", refer}, []string{"NO FURTHER DAYS", "the day's check was not made here", "pain (spreading)", "before anything else (sit-to-stand holding a dumbbell, hip hinge with one dumbbell, dumbbell floor press)"}},
		{[]string{"-for", "doctor", "-case", refer}, []string{"pain (spreading)", "before this person goes on with training", "Until I hear from you: no exercise."}},
	} {
		got := flat(printed(t, tt.args...))
		for _, want := range tt.want {
			if !strings.Contains(got, want) {
				t.Errorf("%v: no %q in\n%s", tt.args, want, got)
			}
		}
	}
	if got := printed(t, "-for", "client", "-case", refer); strings.Contains(got, "YOUR DAYS") || strings.Contains(got, "Take ") {
		t.Errorf("somebody has to look first, and the client gets days or weights:\n%s", got)
	}
}

// Every reason of a decision and of its dose stands in the paper for the file,
// and so does every fact behind it.
func TestFileHasEveryReason(t *testing.T) {
	words, err := record.Words()
	if err != nil {
		t.Fatal(err)
	}
	for name, data := range map[string][]byte{"demo": demo.HomeReview(), "refer": demo.HomeReviewRefer()} {
		r := reviewed(t, data)
		var out bytes.Buffer
		if err := reviewpaper.For(command.ForFile, &out, r); err != nil {
			t.Fatal(err)
		}
		got := flat(out.String())
		for _, reason := range r.Reasons() {
			if reason.Code == "progression.gate-passed" && strings.Contains(got, "gates nothing against more load from: ") {
				continue // gates that were passed share a line
			}
			if text := words.Clinician(reason); words.Copy()[reason.Code].Clinician == "" || !strings.Contains(got, flat(text)) {
				t.Errorf("%s: %s is not in the file: %q", name, reason.Code, text)
			}
			for _, id := range reason.Facts {
				if !strings.Contains(got, "- "+string(id)+": ") {
					t.Errorf("%s: the fact %s is not listed", name, id)
				}
			}
		}
		for _, item := range r.Items {
			if len(item.Decision.Reasons)+len(item.Decision.Gates) == 0 {
				t.Errorf("%s: %s is decided without a reason", name, item.Name)
			}
		}
	}
}

// The JSON decodes into the result and encodes to the same bytes.
func TestJSONRoundTrip(t *testing.T) {
	for _, args := range [][]string{{"-json"}, {"-json", "-case", refer}} {
		first := printed(t, args...)
		var result record.Review
		if err := field.Decode([]byte(first), &result, field.Strict); err != nil {
			t.Fatal(err)
		}
		var second bytes.Buffer
		if err := command.JSON(&second, result); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(first, second.String()); diff != "" {
			t.Error(diff)
		}
	}
}

func TestBadCases(t *testing.T) {
	const (
		squat  = `"from": "2027-02-02", "exercise": "goblet-squat"`
		review = `"review": "2027-03-09"`
	)
	tests := []struct{ name, old, new, want string }{
		{"an unknown exercise", squat, `"from": "2027-02-02", "exercise": "goblet-squad"`, `/asked/0/exercise = "goblet-squad", allowed: did you mean goblet-squat`},
		{"no review", review, `"absence": "no"`, "/review"},
		{"a key twice", review, review + ", " + review, "/review"},
		{"no days", `"days": ["2027-02-02", "2027-02-05"]`, `"days": []`, "/days"},
	}
	for _, tt := range tests {
		status, out, errs := programtest.Run(run, "-case", programtest.Edited(t, "case.json", demo.HomeReview(), tt.old, tt.new))
		if status != 1 || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %q; want 1 and %s", tt.name, status, errs, tt.want)
		}
	}
	if status, _, _ := programtest.Run(run, "-case", "testdata/nothing.json"); status != 1 {
		t.Errorf("no such file: status %d, want 1", status)
	}
	for _, args := range [][]string{{"-for", "nobody"}, {"-nonsense"}, {"extra"}} {
		if status, _, errs := programtest.Run(run, args...); status != 2 || errs == "" {
			t.Errorf("%v: status %d, %q; want 2 and a word why", args, status, errs)
		}
	}
}

// After more than a week the reason of the absence is asked for, once; with it
// nothing is made harder.
func TestAbsence(t *testing.T) {
	const march9, march16 = "2027-03-09", "2027-03-16"
	late := programtest.Edited(t, "case.json", []byte(strings.ReplaceAll(string(demo.HomeReview()), march9, march16)), march16, march16)
	status, out, errs := programtest.Run(run, "-case", late)
	if status != 1 || out != "" || strings.Count(errs, "/absence") != 1 || !strings.Contains(errs, "11 days") {
		t.Errorf("status %d, %q", status, errs)
	}
	answered := strings.ReplaceAll(string(demo.HomeReview()), march9, march16)
	answered = strings.Replace(answered, `"minutes": 45`, `"minutes": 45, "absence": "no"`, 1)
	for _, item := range reviewed(t, []byte(answered)).Items {
		if item.Decision.Action == progression.Progress {
			t.Errorf("%s: %s after 11 days away", item.Name, item.Decision.Change)
		}
	}
	ill := strings.Replace(answered, `"absence": "no"`, `"absence": "yes"`, 1)
	for _, item := range reviewed(t, []byte(ill)).Items {
		if item.Decision.Action != progression.StopAndRefer {
			t.Errorf("%s: %s after an absence with a medical cause", item.Name, item.Decision.Action)
		}
	}
}

// A sign that ends a session, and pain of a kind that the pain model is never
// used for, hold up every exercise and not only the one in which they showed.
func TestGraveThingsAreOfThePerson(t *testing.T) {
	const form = `"form_lost": "yes"`
	for _, instead := range []string{`"moment": {"signs": ["dizzy_or_swaying"]}`, `"pain": {"kind": "chest", "during": 2}`} {
		file := strings.Replace(string(demo.HomeReview()), form, instead, 1)
		for _, item := range reviewed(t, []byte(file)).Items {
			if item.Decision.Action != progression.StopAndRefer || item.Decision.Next != nil {
				t.Errorf("%s: %s: %s", instead, item.Name, item.Decision.Action)
			}
		}
	}
}

// The simulated weeks are those of the seed, and say what they are.
func TestSimulate(t *testing.T) {
	got := printed(t, "-simulate")
	for _, want := range []string{"16 WEEKS OF A SIMULATED BEGINNER", "invented", "arithmetic, not a person", "GOBLET SQUAT", "search", "no medical device"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q", want)
		}
	}
	if again := printed(t, "-simulate"); again != got {
		t.Error("another run differs")
	}
	for _, line := range strings.Split(got, "\n") {
		if len([]rune(line)) > page.Width {
			t.Errorf("wider than the page: %q", line)
		}
	}
	var ahead weeks
	if err := field.Decode([]byte(printed(t, "-simulate", "-json")), &ahead, field.Strict); err != nil {
		t.Fatal(err)
	}
	for _, p := range ahead.Exercises {
		if rows := strings.Count(got, "\n"); len(p.Visits) < 30 || rows < 32*len(ahead.Exercises) {
			t.Errorf("%s: %d visits, %d lines", p.Exercise, len(p.Visits), rows)
		}
	}
	for _, change := range []struct{ from, to, want string }{
		{`"one_rm": "11 kg"`, `"one_rm": "0 kg"`, "/exercises/0/trainee/one_rm"},
		{`"exercise": "goblet-squat"`, `"exercise": "goblet-sqat"`, "/exercises/1/exercise"},
		{`"weeks": 16`, `"weeks": 0`, "/exercises/0/setup/weeks"},
		{`"seed": 7`, `"sead": 7`, "sead"},
		{`"age": 66`, `"age": 6`, "/profile/age"},
	} {
		status, _, errs := programtest.Run(run, "-simulate", "-case", programtest.Edited(t, "beginner.json", demo.Beginner(), change.from, change.to))
		if status != 1 || !strings.Contains(errs, change.want) {
			t.Errorf("%s: status %d, %s", change.to, status, errs)
		}
	}
}

// The file says whose answer is waited for, which days are not counted and why, and that a
// check of the day comes before the visit only where one is needed.
func TestFileSaysWhose(t *testing.T) {
	r := reviewed(t, demo.HomeReview())
	file := func() string {
		var out bytes.Buffer
		if err := reviewpaper.For(command.ForFile, &out, r); err != nil {
			t.Fatal(err)
		}
		return flat(out.String())
	}
	if got := file(); strings.Contains(got, "not counted:") || !strings.Contains(got, "; checked on ") {
		t.Error(got)
	}
	r.Attended.Away, r.Screening.Today = r.Attended.Done[:1], 0
	if got := file(); !strings.Contains(got, "- not counted: 1 day away as told, ill or stopped") || !strings.Contains(got, "the day's check was not made here. ") {
		t.Error(got)
	}
	r.Screening.EachDay = []screening.Code{"glucose"}
	p := r.Profile
	p.Symptoms.Unsure = []screening.Code{"orthopnoea_or_pnd"}
	r.Screening.Findings = units.Must(screening.Assess(p)).Findings
	if got := file(); !strings.Contains(got, "was not made here and comes before the visit. ") || !strings.Contains(got, "- the person, with an answer (ask first): ") || strings.Contains(got, "the doctor (ask first)") {
		t.Error(got)
	}
}

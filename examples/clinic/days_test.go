package main

import (
	"fmt"
	"strings"
	"testing"

	"example.org/posology/examples/internal/folder"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
)

// recordOf reads the record of the woman of [begun].
func recordOf(t *testing.T, f folder.Folder) record.Record {
	t.Helper()
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	return p.Record
}

func without(t *testing.T, text string, nots ...string) {
	t.Helper()
	for _, not := range nots {
		if strings.Contains(text, not) {
			t.Errorf("%q in %s", not, text)
		}
	}
}

// A check changes a day that was decided on before: the session is not shown or logged
// until it was decided again, nothing is asked for then, and both decisions come out again.
func TestCheckAfterDecision(t *testing.T) {
	const fever = well + "blood_pressure: 134/82\npulse: 70\ntoday: yes\nfebrile: yes\n"
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", "goblet-squat: all@6\nseated-hammer-curl: all@6\npain: no\n")
	step(0, "2027-01-06", "review", "new: none\n")
	was := recordOf(t, f)
	if said := step(1, "2027-01-08", "review", "new: none\n"); !strings.Contains(said, "decided for already") {
		t.Error(said)
	}
	step(0, "2027-01-08", "check", fever)
	for _, one := range []string{"show", "log"} {
		if said := step(1, "2027-01-08", one, "goblet-squat: all@6\n"); !strings.Contains(said, "meanwhile nothing") || !strings.Contains(said, "Next: review.") {
			t.Errorf("%s: %s", one, said)
		}
	}
	if said := step(0, "2027-01-08", "review", "new: none\n"); !strings.Contains(said, "Friday 8 January 2027; decided for the visit of Friday 8 January 2027") || !strings.Contains(said, "Doses none") {
		t.Error(said)
	}
	r := recordOf(t, f)
	last := r.Entries[len(r.Entries)-1]
	for _, item := range last.Items {
		if item.Decision.Next != nil || item.Decision.Action != progression.StopAndRefer && item.Decision.Action != progression.HoldDose {
			t.Errorf("%s: %s", item.Name, item.Decision.Action)
		}
	}
	if len(r.Entries) != len(was.Entries)+1 || last.Day != was.Entries[len(was.Entries)-1].Day || len(r.Asked) >= len(was.Asked) {
		t.Errorf("%d decisions after %d, %d lines after %d", len(r.Entries), len(was.Entries), len(r.Asked), len(was.Asked))
	}
	step(0, "2027-01-08", "show", "", "-for", "doctor")
	without(t, step(1, "2027-01-08", "log", "\n"), "asked for 1")
	if said := step(1, "2027-01-08", "check", fever); !strings.Contains(said, "a check of 2027-01-08 is kept already") {
		t.Error(said)
	}
	step(0, "2027-01-08", "replay", "")
	step(0, "2027-01-11", "review", "new: none\n") // of another day it goes on
	if r = recordOf(t, f); r.Entries[len(r.Entries)-1].Items[0].Decision.Next == nil {
		t.Error("nothing is asked for on another day")
	}
}

// What an assessment stops since a decision is neither shown nor logged; before the first
// visit too, and whatever it is that stops.
func TestAssessmentAfterDecision(t *testing.T) {
	const (
		breathless = "symptoms: dyspnoea_rest_or_mild_exertion\nblood_pressure: 134/82\npulse: 70\ntoday: no\n"
		sugar      = "diseases: diabetes_t2\nsymptoms: none\nmoment: none\ninsulin_or_secretagogue: yes\nblood_pressure: 134/82\npulse: 70\ntoday: yes\nhurt: no\nglucose: 55 mg/dL\nsevere_low_24h: no\n"
	)
	for what, tt := range map[string]struct {
		trained           bool
		step, lines, next string
	}{
		"a symptom, before the first visit":      {false, "ask", breathless, "Next: visit."},
		"a symptom, later":                       {true, "ask", breathless, "Next: review."},
		"sugar of the day, before the first one": {false, "ask", sugar, "Next: visit."},
	} {
		f := begun(t)
		step, day := tryer{t, f}.step, "2027-01-05"
		if tt.trained {
			step(0, day, "log", calm)
			step(0, "2027-01-06", "review", "new: none\n")
			day = "2027-01-08"
		}
		step(0, day, tt.step, tt.lines)
		for _, one := range []string{"show", "log"} {
			if said := step(1, day, one, "goblet-squat: all@6\n"); !strings.Contains(said, "meanwhile nothing") || !strings.Contains(said, tt.next) {
				t.Errorf("%s, %s: %s", what, one, said)
			}
		}
	}
}

// A visit asked about again on a day on which nobody trains any more keeps its check.
func TestCheckOutlastsTheDay(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "check", well+"blood_pressure: 134/82\npulse: 70\ntoday: yes\nhurt: no\nfebrile: no\n")
	step(0, "2027-01-05", "ask", asked)
	if r := recordOf(t, f); len(r.Checks) != 1 || r.Checks[0].Day != r.Profile.Day {
		t.Errorf("%+v", r.Checks)
	}
}

// A goodbye while something stands says that first, to everybody.
func TestGoodbyeWithAnAlarm(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", trained+"showed: chest symptom\n")
	step(0, "2027-01-06", "end", "reached: no\n")
	for reader, want := range map[string]string{"client": "emergency services", "doctor": lately, "file": lately} {
		said := step(0, "2027-01-06", "show", "", "-for", reader)
		if at := strings.Index(said, want); at < 0 || at > 600 {
			t.Errorf("%s, %q at %d: %.900s", reader, want, at, said)
		}
	}
}

// A check on which nothing changes asks for no second decision.
func TestCheckThatChangesNothing(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", "goblet-squat: all@6\npain: no\n")
	step(0, "2027-01-06", "review", "new: none\n")
	step(0, "2027-01-08", "check", well+"blood_pressure: 134/82\npulse: 70\ntoday: yes\nhurt: no\nfebrile: no\n")
	step(0, "2027-01-08", "log", "goblet-squat: all@6\npain: no\n")
}

// Every paper bears the day on which it was decided, and the dates of the plan are the same
// on each of them and in the list; one visit and one day are no plural.
func TestDaysOnPapers(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", "goblet-squat: all@6\npain: no\n")
	const dates = "Review by Tuesday 19 January 2027; test strength again by Tuesday 26 January 2027; follow the plan no longer than Tuesday 2 March 2027."
	for _, one := range []string{"review", "show"} {
		said := step(0, "2027-01-06", one, "new: none\n")
		if !strings.Contains(said, "Wednesday 6 January 2027; decided for the visit of Friday 8 January 2027") || !strings.Contains(said, dates) || !strings.Contains(said, "1 day planned, 1 visit.") {
			t.Errorf("%s: %s", one, said)
		}
	}
	for _, reader := range []string{"client", "doctor"} {
		if said := step(0, "2027-01-07", "show", "", "-for", reader); !strings.Contains(said[:80], "Wednesday 6 January 2027") {
			t.Errorf("%s: %s", reader, said[:80])
		}
	}
	if _, out, _ := calls("", "-dir", string(f), "-day", "2027-01-07"); !strings.Contains(strings.Join(strings.Fields(out), " "), "1 visit, the last on 2027-01-05; review by 2027-01-19.") {
		t.Error(out)
	}
	step(0, "2027-01-08", "log", "goblet-squat: all@6\npain: no\n")
	if said := step(0, "2027-01-09", "review", "new: none\n"); !strings.Contains(said, dates) {
		t.Errorf("the dates moved: %s", said)
	}
}

// After the goodbye nothing is asked for, listed or logged, what was decided for a later
// day neither; its papers bear its own day.
func TestEndIsTheEnd(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", "goblet-squat: all@6\npain: no\n")
	step(0, "2027-01-05", "review", "new: none\n")
	letter := func(day, one string) string {
		text, _, _ := strings.Cut(step(0, day, one, ""), "FOR THE FILE")
		return text
	}
	papers := letter("2027-01-06", "end")
	if !strings.Contains(papers[:60], "Wednesday 6 January 2027") {
		t.Error(papers)
	}
	for _, day := range []string{"2027-01-06", "2027-01-07", "2027-01-08"} {
		if _, out, _ := calls("", "-dir", string(f), "-day", day); !strings.Contains(out, "Ended on 2027-01-06.") {
			t.Errorf("%s: %s", day, out)
		}
	}
	for _, one := range []string{"ask", "visit", "log", "week", "check", "review", "test"} {
		if said := step(1, "2027-01-08", one, "goblet-squat: all@6\n"); !strings.Contains(said, "Ended on 2027-01-06.") {
			t.Errorf("%s: %s", one, said)
		}
	}
	step(0, "2027-01-08", "replay", "")
	for _, one := range []string{"show", "end"} {
		if said := letter("2027-02-08", one); said != papers {
			t.Errorf("%s prints other papers: %s", one, said)
		}
	}
}

// Pain that changes no dose stands in the letter, once for all exercises that had it.
func TestPainInTheLetter(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", "goblet-squat: all@6\ntoe-raise: all@6\npain: yes\npain_kind: 1\npain_site: knee\npain_usual: 1\npain_during: 2\npain_after: 1\npain_next_morning: 1\npain_trend: stable\n")
	said := step(0, "2027-01-06", "review", "new: none\n", "-for", "doctor")
	if strings.Count(said, "usual 1, during 2, after 1, next morning 1") != 1 || !strings.Contains(said, "goblet squat, toe raise, on Tuesday 5 January 2027: Recorded: pain") {
		t.Error(said)
	}
	without(t, said, "nothing in what was recorded")
}

// What is walked is told with how hard it was, never as what is left of
// repetitions, and its weight rises once it was rated as easy; rated as hard or not at all
// it does not.
func TestRatedCarry(t *testing.T) {
	for _, tt := range []struct {
		rating string
		rises  bool
	}{{"4", true}, {"9", false}, {"", false}} {
		f := begun(t)
		step := tryer{t, f}.step
		first := inForceOf(t, f, "farmers-carry")
		mark := ""
		if tt.rating != "" {
			mark = "@" + tt.rating + "/10"
		}
		for _, bad := range []string{"all@9", "10@9", "10@11/10", "10@x/10"} {
			step(1, "2027-01-05", "log", "farmers-carry: "+bad+"\n")
		}
		step(1, "2027-01-05", "log", "goblet-squat: 10@4/10\n")
		for _, days := range [][2]string{{"2027-01-05", "2027-01-06"}, {"2027-01-08", "2027-01-09"}, {"2027-01-12", "2027-01-13"}} {
			done := "all" + mark
			if a := inForceOf(t, f, "farmers-carry"); a.Finding != nil && a.Finding.MaxSteps > 0 { // the next weight may be tried
				done = fmt.Sprintf("%d%s 2 kg %d%s", a.Count, mark, a.Count, mark)
			}
			step(0, days[0], "log", "farmers-carry: "+done+"\ngoblet-squat: all@6\nshowed: none\nrange_lost: no\nform_lost: no\nobserver: Physiotherapist E\npain: no\n")
			step(0, days[1], "review", "new: none\n")
		}
		last := inForceOf(t, f, "farmers-carry")
		if rose := last.Load > first.Load; rose != tt.rises {
			t.Errorf("rated %q: %+v after %+v", tt.rating, last, first)
		}
	}
}

func inForceOf(t *testing.T, f folder.Folder, id string) record.Asked {
	t.Helper()
	for _, a := range inForce(recordOf(t, f), 1<<20) {
		if string(a.Exercise) == id {
			return a
		}
	}
	t.Fatalf("nothing is asked for of %s", id)
	return record.Asked{}
}

// Who takes insulin and goes on alone takes the page on sugar along, and what it asks for.
func TestGoodbyeOnInsulin(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", "goblet-squat: all@6\npain: no\n")
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	p.Record.Profile.Answers = map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.Yes}
	p.Record.Profile.Conditions.Present = append(p.Record.Profile.Conditions.Present, "anticoagulant")
	p.Record.Phase = 2
	if c, err := p.Change(); err != nil || f.Write(c) != nil {
		t.Fatal(err)
	}
	said := step(0, "2027-01-06", "end", "reached: yes\n", "-for", "client")
	for _, want := range []string{"With your medicine the sugar can drop", "You bruise more easily with a blood thinner", "YOUR SUGAR AND TRAINING", "You train alone: ask your diabetes team first", "Only while somebody is near: "} {
		if !strings.Contains(said, want) {
			t.Errorf("no %q in %s", want, said)
		}
	}
}

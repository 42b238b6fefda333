package beside_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestItemsSurviveJSON(t *testing.T) {
	for _, id := range trackIDs {
		for _, i := range steps(t, id) {
			first, err := json.Marshal(i)
			if err != nil {
				t.Fatal(err)
			}
			var back beside.Item
			if err := field.Decode(first, &back, field.Strict); err != nil {
				t.Fatal(err)
			}
			if second, _ := json.Marshal(back); string(first) != string(second) {
				t.Errorf("%s\n%s", first, second)
			}
		}
	}
	var s, back beside.Situation
	s = free(t)
	s.Known.InForce = []beside.Item{steps(t, "stance")[3]}
	text, err := json.Marshal(s)
	if err != nil || field.Decode(text, &back, field.Strict) != nil {
		t.Fatalf("%v: %s", err, text)
	}
	if on, _ := start(t, back); on["stance"].Step != 4 {
		t.Errorf("in force: %+v", on["stance"])
	}
}

// What was edited in an item by hand changes nothing but its place on the track.
func TestStoredDosesAreWorkedOutAnew(t *testing.T) {
	s := free(t)
	i := steps(t, "impact")[1]
	forged := i
	forged.Height, forged.Sets, forged.Count, forged.Hands = 40, 9, 99, beside.HandsNear
	want, _ := beside.Next(i, well(i), s)
	got, err := beside.Next(forged, beside.Happened{Days: 7, Least: 99}, s)
	if diff := cmp.Diff(fmt.Sprint(want), fmt.Sprint(got)); err != nil || diff != "" {
		t.Errorf("%v, %s", err, diff)
	}
}

func TestPausedWaitsForSomebody(t *testing.T) {
	s := free(t)
	i := steps(t, "impact")[3]
	paused, err := beside.Next(i, beside.Happened{Days: 1, Least: 10, Troubles: []beside.Trouble{beside.Leaked}}, s)
	if err != nil || !paused.Paused || paused.Dosed() || paused.WeeklyMinutes()+paused.BriskMinutes()+paused.SecondsFree() != 0 || len(paused.Reasons) < 2 {
		t.Fatalf("%+v, %v", paused, err)
	}
	if again, _ := beside.Next(paused, well(i), s); !again.Paused {
		t.Error("goes on by itself")
	}
	s.Known.InForce = []beside.Item{paused}
	if on, _ := start(t, s); !on["impact"].Paused {
		t.Error("Start goes on by itself")
	}
	s.Known.InForce = nil
	if on, _ := start(t, s); on["impact"].Step != 1 {
		t.Error("is not begun anew")
	}
	s.Screening.Limits.LowImpact = true
	if barred, _ := beside.Next(i, well(i), s); !barred.Paused || barred.Reasons[0].Code != "beside.low-impact" {
		t.Errorf("%+v", barred)
	}
	old := beside.Item{Kind: beside.Balance}
	if old.Dosed() {
		t.Error("a kind alone is a dose")
	}
}

func TestBadFields(t *testing.T) {
	paths := func(err error) (list []string) {
		var all field.Errors
		if !errors.As(err, &all) {
			t.Fatal(err)
		}
		for _, f := range all {
			list = append(list, f.Path)
		}
		return list
	}
	_, err := beside.Next(beside.Item{Track: "rope", Met: -1}, beside.Happened{Days: -1, Least: -1, Missed: -1, Troubles: []beside.Trouble{99}}, beside.Situation{})
	want := []string{"/item/track", "/item/met", "/happened/days", "/happened/least", "/happened/missed", "/happened/troubles/0", "/situation/day"}
	if got := paths(err); !slices.Equal(got[:7], want) {
		t.Errorf("%v", got)
	}
	s := free(t)
	i := steps(t, "stance")[0]
	wrong, far := i, i
	wrong.Kind, far.Step = beside.Power, 99
	s.Known = beside.Known{Stands: new(5), Brisk: new(-1), Easy: new(10081), InForce: []beside.Item{i, i, wrong, far}}
	_, _, err = beside.Start(s)
	want = []string{"/known/stands", "/known/brisk", "/known/easy", "/known/in_force/1/track", "/known/in_force/2/kind", "/known/in_force/2/track", "/known/in_force/3/step", "/known/in_force/3/track"}
	if diff := cmp.Diff(want, paths(err)); diff != "" {
		t.Error(diff)
	}
}

// Each step tells the client what to do, how much, with which support, and when to stop; and
// what it says of numbers is filled in.
func TestWordsOfSteps(t *testing.T) {
	words := beside.Words()
	for _, id := range trackIDs {
		for _, i := range steps(t, id) {
			var said []string
			for _, r := range i.Reasons {
				w, known := words.Wording(r.Code)
				if !known || w.Clinician == "" {
					t.Errorf("%s: no words for %s", id, r.Code)
				}
				said = append(said, words.Client(r), words.Clinician(r))
			}
			text := strings.Join(said, "\n")
			for _, want := range map[beside.ItemKind][]string{
				beside.Balance: {"hand", "counter", "dizzy", "days a week", "times", "about 5 minutes"},
				beside.Impact:  {"Stop and tell us", "days a week", "for the bones the two belong together", "Nothing is promised"},
				beside.Power:   {"as fast as you can", "slower", "days a week", "Neither the chance", "it ends by speed"},
				beside.Aerobic: {"minutes", "sing", "speak a whole sentence"},
			}[i.Kind] {
				if !strings.Contains(text, want) {
					t.Errorf("%s, step %d does not say %q:\n%s", id, i.Step, want, text)
				}
			}
			for _, r := range i.Reasons { // what tells to stop offers nothing
				if said := words.Client(r); strings.HasPrefix(string(r.Code), "beside.stop-") && (!strings.Contains(strings.ToLower(said), "stop") || strings.Contains(said, "then") || strings.Contains(said, "harder")) {
					t.Errorf("%s: %q", r.Code, said)
				}
			}
			if strings.ContainsAny(text, "{}") {
				t.Errorf("%s, step %d: %s", id, i.Step, text)
			}
		}
	}
}

func TestVocabularies(t *testing.T) {
	if got := fmt.Sprint(slices.Collect(beside.ItemKinds()), slices.Collect(beside.Holdings()), slices.Collect(beside.Troubles())); got !=
		"[balance aerobic impact power] [hands free one hand both hands] [sore next day out of breath pain leak or heaviness nearly fell dizzy fell]" {
		t.Error(got)
	}
	for _, v := range []interface {
		MarshalText() ([]byte, error)
	}{beside.ItemKind(9), beside.Holding(9), beside.Trouble(99)} {
		if text, err := v.MarshalText(); err == nil {
			t.Errorf("%q", text)
		}
	}
}

func TestFactsMakeALedger(t *testing.T) {
	// what they rest on stands in other packages
	for f := range beside.Facts() {
		f.From = nil
		if _, err := evidence.NewLedger(func(yield func(evidence.Fact) bool) { yield(f) }); err != nil {
			t.Error(err)
		}
	}
}

// Nothing that is said offers a step that something stands against.
func TestNoMoreIsOffered(t *testing.T) {
	offers := 0
	rapid.Check(t, func(rt *rapid.T) {
		p, s := drawSituation(rt)
		s = assess(rt, p, s)
		on, _ := start(t, s)
		for id, i := range on {
			if i.Paused {
				continue
			}
			offered := slices.ContainsFunc(i.Reasons, func(r evidence.Reason) bool { return strings.HasPrefix(string(r.Code), "beside.harder-") })
			next, err := beside.Next(i, well(i), s)
			if err != nil {
				rt.Fatal(err)
			}
			if rises := next.Step > i.Step; rises != offered {
				rt.Fatalf("%s, step %d: offered %v, rises %v", id, i.Step, offered, rises)
			}
			if offered {
				offers++
			}
		}
	})
	if offers == 0 {
		t.Error("nothing was offered")
	}
}

// The codes of findings that impact goes by are those of the screening.
func TestFindingsOfImpact(t *testing.T) {
	for code, want := range map[screening.Code]evidence.ReasonCode{
		"osteoporosis": "beside.spine-first", "osteoporosis_uk": "beside.spine-first", "osteoporosis_essa": "beside.spine-first", "osteoporosis_essa_dose": "beside.spine-first",
		"recent_fracture": "beside.fracture", "vertebral_fracture": "beside.fracture", "osteoporosis_with_vertebral_fracture": "beside.fracture", "pelvic_organ_prolapse": "beside.pelvic-floor",
	} {
		p := invented()
		p.Conditions = screening.AskedFor(code)
		found := assessed(t, p).Findings
		at := slices.IndexFunc(found, func(f screening.Finding) bool { return f.Code == code })
		if at < 0 {
			t.Fatalf("the screening finds no %s", code)
		}
		s := free(t)
		s.Known.SpineFracture, s.Known.Leaks = 0, 0
		s.Screening.Findings = []screening.Finding{{Code: code, Known: found[at].Known, Route: screening.NoRoute, Meanwhile: screening.WithinLimits}}
		on, off := start(t, s)
		if b := off["impact"]; on["impact"].Kind != 0 || len(b.Reasons) == 0 || b.Reasons[0].Code != want {
			t.Errorf("%s: %+v, %+v", code, on["impact"], b)
		}
	}
}

// A limit to low impact rests on the row of the broken spine only where that was found.
func TestLowImpactCitesTheSpine(t *testing.T) {
	for code, want := range map[screening.Code]bool{"osteoporosis_with_vertebral_fracture": true, "total_hip_replacement": false} {
		s := free(t)
		finding(code)(&s)
		s.Screening.Limits.LowImpact = true
		_, off := start(t, s)
		why := off["impact"].Reasons
		if len(why) != 1 || why[0].Code != "beside.low-impact" || slices.Contains(why[0].Facts, "beside.brittle-spine") != want {
			t.Errorf("%s: %+v", code, why)
		}
	}
}

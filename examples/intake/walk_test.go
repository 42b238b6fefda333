package main

import (
	"fmt"
	"io"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
)

var visit = units.Must(units.ParseDay("2026-11-25"))

// walk answers every question by the given function until none is left, and
// returns the keys in the order of asking.
func walk(t *testing.T, answer func(q *question) string) (*person, []string) {
	t.Helper()
	p := newPerson(visit)
	var keys []string
	for q := p.next(); q != nil; q = p.next() {
		if len(keys) > 200 {
			t.Fatalf("no end: %v", keys)
		}
		after, err := p.with(q, answer(q))
		if err != nil {
			t.Fatalf("%s: %q: %v", q.key, answer(q), err)
		}
		if slices.Contains(keys, q.key) {
			t.Fatalf("%s is asked twice", q.key)
		}
		keys = append(keys, q.key)
		p = after
	}
	return p, keys
}

// well answers as somebody with nothing to tell, save the answers given.
func well(own map[string]string) func(q *question) string {
	return func(q *question) string {
		switch {
		case own[q.key] != "":
			return own[q.key]
		case q.key == "age":
			return "66"
		case q.hint == yesNoHint:
			return "no"
		case q.hint == pickHint:
			return "none"
		case q.key == "activity":
			return "0"
		case q.key == "blood_pressure":
			return "128/78"
		case q.key == "pulse":
			return "66"
		}
		return "don't know"
	}
}

// Somebody well is asked this and nothing more.
func TestOnlyWhatIsTriggered(t *testing.T) {
	p, keys := walk(t, well(map[string]string{"setting": "3", "wanted": "moderate", "today": "yes"}))
	want := []string{"age", "setting", "signs", "symptoms", "more_signs", "back_at_all", "diseases", "areas", "wanted", "activity", "blood_pressure", "pulse", "falls", "falls_unsteady", "falls_afraid", "today", "hurt", "febrile"}
	for _, key := range keys {
		if !slices.Contains(want, key) && !strings.HasPrefix(key, "other_") {
			t.Errorf("%s is asked of somebody well", key)
		}
	}
	for _, key := range want {
		if !slices.Contains(keys, key) {
			t.Errorf("%s is not asked", key)
		}
	}
	o, err := p.outcome()
	if err != nil || o.Route != screening.NoRoute || len(o.Missing) > 0 {
		t.Errorf("%v, %v, %+v", err, o.Route, o.Missing)
	}
}

// The choices by number are the library's own values.
func TestChoices(t *testing.T) {
	p, _ := walk(t, well(map[string]string{"setting": "3", "wanted": "2", "activity": "3", "activity_minutes": "30", "activity_months": "6", "activity_effort": "vigorous"}))
	if p.profile.Setting != screening.InGroup || p.profile.Wanted != screening.Moderate {
		t.Errorf("%v, %v; want in a group, moderate", p.profile.Setting, p.profile.Wanted)
	}
	want := screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Vigorous, Months: 6}
	if a := p.profile.Activity; a == nil || *a != want {
		t.Errorf("%+v, want %+v", a, want)
	}
	p, _ = walk(t, well(map[string]string{"activity": "3", "activity_minutes": "30", "activity_effort": "vigorous"}))
	if p.profile.Activity != nil {
		t.Errorf("half a record counts: %+v", p.profile.Activity)
	}
}

// Nobody is asked when something was that may not have been; who is not sure of
// a gate goes through it.
func TestNotSure(t *testing.T) {
	_, keys := walk(t, well(map[string]string{"back_at_all": "don't know", "areas": "bones", "bones": "osteoporosis", "vertebral_fracture": "don't know"}))
	if !slices.Contains(keys, "back") || !slices.Contains(keys, "vertebral_fracture") || slices.Contains(keys, "vertebral_fracture_day") {
		t.Errorf("asked %v", keys)
	}
	_, keys = walk(t, well(map[string]string{"areas": "joints", "joints": "rotator_cuff_repair?"}))
	if slices.Contains(keys, "rotator_cuff_repair_day") {
		t.Errorf("asked %v", keys)
	}
	_, keys = walk(t, well(map[string]string{"areas": "bones", "bones": "osteoporosis", "vertebral_fracture": "yes"}))
	if !slices.Contains(keys, "vertebral_fracture_day") {
		t.Errorf("asked %v", keys)
	}
}

// Who is held and could be let go on by a doctor's word is asked for it, and the
// answer counts.
func TestClearanceIsAccepted(t *testing.T) {
	for _, tt := range []struct{ area, group, code string }{
		{"heart", "heart", "pacemaker"}, {"", "symptoms", "ankle_oedema"}, {"heart", "heart", "major_chd_risk_factors"}, {"joints", "joints", "total_hip_replacement"},
	} {
		own := map[string]string{tt.group: tt.code, "clearance": "yes", "clearance_who": "doctor A", "clearance_when": "2026-11-01", "clearance_scope": tt.code, "clearance_effort": "2"}
		if tt.area != "" {
			own["areas"] = tt.area
		}
		p, keys := walk(t, well(own))
		o, err := p.outcome()
		if err != nil || !slices.Contains(keys, "clearance_scope") {
			t.Fatalf("%s: asked %v, %v", tt.code, keys, err)
		}
		if o.Route > screening.Tell || o.Meanwhile != screening.WithinLimits {
			t.Errorf("%s, with a doctor's agreement: %v, %v", tt.code, o.Route, o.Meanwhile)
		}
	}
}

func TestReadHaemoglobin(t *testing.T) {
	for text, want := range map[string]int{"135 g/L": 135, "13.5 g/dL": 135, "10,3 G/DL": 103, "9.99 g/dL": 99, "135": 0, "13.5": 0, "g/L": 0, "NaN g/L": 0, "9e99 g/L": 0, "-9 g/dL": 0} {
		got, err := readHaemoglobin(text)
		if got != want || (err == nil) != (want > 0) {
			t.Errorf("%s: %d, %v; want %d", text, got, err, want)
		}
	}
}

// withCode answers a group by the one code, and opens what leads to it.
func withCode(g group, code screening.Code) map[string]string {
	own := map[string]string{g.key: string(code), g.key + "_at_all": "yes"}
	if g.area != "" {
		own["areas"] = g.key
	}
	return own
}

// Every question of the library that a code triggers is asked of those who have
// the code, and of nobody else.
func TestTriggers(t *testing.T) {
	asked := 0
	for _, g := range groups() {
		for _, code := range g.codes {
			own := withCode(g, code)
			p, keys := walk(t, well(own))
			if o, err := p.outcome(); err != nil || o.Route == screening.Emergency {
				continue // ends at once
			}
			for _, prompt := range prompts {
				if len(prompt.Triggers) == 0 || !prompt.YesNo && fields[prompt.Code] == nil && !strings.HasSuffix(string(prompt.Code), "_day") {
					continue
				}
				is, triggered := slices.Contains(keys, string(prompt.Code)), slices.Contains(prompt.Triggers, code)
				if is && !triggered {
					t.Errorf("%s makes %s necessary, which it does not trigger", code, prompt.Code)
				}
				if is {
					asked++
				}
			}
		}
	}
	for _, prompt := range prompts {
		if slices.ContainsFunc(groups(), func(g group) bool { return g.gated == prompt.Code }) {
			continue // answered before the group
		}
		for _, code := range prompt.Triggers {
			g := slices.IndexFunc(groups(), func(g group) bool { return slices.Contains(g.codes, code) })
			if g < 0 || !prompt.YesNo && fields[prompt.Code] == nil {
				continue
			}
			p, keys := walk(t, well(withCode(groups()[g], code)))
			if o, _ := p.outcome(); o.Route < screening.Emergency && !slices.Contains(keys, string(prompt.Code)) {
				t.Errorf("%s does not lead to %s", code, prompt.Code)
			}
		}
	}
	if asked < 20 {
		t.Errorf("only %d triggered questions were asked", asked)
	}
}

func TestEveryCodeIsAskedOnce(t *testing.T) {
	seen := map[screening.Code]int{}
	for _, g := range groups() {
		for _, code := range g.codes {
			seen[code]++
			if term, ok := screening.LookUp(code); !ok || term.Kind != g.kind {
				t.Errorf("%s: %s is no %s", g.key, code, g.kind)
			}
			if inWords(code) == "" {
				t.Errorf("no words for %s", code)
			}
		}
	}
	for term := range screening.Codes() {
		listed := term.Kind == screening.Disease || term.Kind == screening.Symptom || term.Kind == screening.Condition || term.Kind == screening.RedFlag
		instead := through[term.Code]
		if listed && seen[term.Code]+seen[instead] != 1 && !strings.HasPrefix(string(term.Code), rated) {
			t.Errorf("%s is asked %d times, through %q %d times", term.Code, seen[term.Code], instead, seen[instead])
		}
	}
	for code := range plain {
		if _, ok := screening.LookUp(code); !ok {
			t.Errorf("words for %s, which is no code", code)
		}
	}
}

// A client never reads these (this project's own rule).
func TestPlainWords(t *testing.T) {
	for _, table := range []map[screening.Code]string{plain, ownWords} {
		for code, text := range table {
			for _, banned := range []string{"safe", "cleared", "failed", "frail", "non-responder", "thin bones"} {
				if strings.Contains(strings.ToLower(text), banned) {
					t.Errorf("%s says %q to a client", code, text)
				}
			}
		}
	}
}

// A code that is asked through another leads no further than that one.
func TestThrough(t *testing.T) {
	for code, other := range through {
		for _, listed := range []screening.Code{code, other} {
			if term, ok := screening.LookUp(listed); !ok || term.Kind != screening.Condition {
				t.Errorf("%s is no condition", listed)
			}
		}
		outcome := func(code screening.Code) screening.Outcome {
			p := newPerson(visit).profile
			p.Age, p.Symptoms, p.RedFlags, p.Diseases = 66, screening.AskedFor(), screening.AskedFor(), screening.AskedFor()
			p.Conditions = screening.AskedFor(code)
			o, err := screening.Assess(p)
			if err != nil {
				t.Fatal(err)
			}
			return o
		}
		a, b := outcome(code), outcome(other)
		if a.Meanwhile > b.Meanwhile || a.Route > b.Route || !b.Limits.AsTightAs(a.Limits) {
			t.Errorf("%s leads to more than %s: %v %v %+v, %v %v %+v", code, other, a.Route, a.Meanwhile, a.Limits, b.Route, b.Meanwhile, b.Limits)
		}
	}
}

// anything answers by chance, mostly sensibly.
func anything(r *rand.Rand) func(q *question) string {
	return func(q *question) string {
		switch {
		case q.key == "age":
			return fmt.Sprint(18 + r.IntN(103))
		case q.hint == yesNoHint:
			return []string{"yes", "no", "don't know"}[r.IntN(3)]
		case q.hint == pickHint && len(q.options) > 0 && r.IntN(3) > 0:
			return fmt.Sprintf("%d%s", 1+r.IntN(len(q.options)), []string{"", "?"}[r.IntN(2)])
		case q.hint == pickHint:
			return []string{"none", "don't know"}[r.IntN(2)]
		case len(q.options) > 0:
			return fmt.Sprint(1 + r.IntN(len(q.options)))
		case q.hint == dayHint:
			return "2026-05"
		case q.key == "activity":
			return fmt.Sprint(r.IntN(8))
		case q.key == "glucose":
			return []string{"60 mg/dL", "5.4 mmol/L", "290 mg/dL", "don't know"}[r.IntN(4)]
		}
		return "don't know"
	}
}

// Whatever is answered, the interview ends and the outcome can be told.
func TestWalks(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 1))
	for range 100 {
		p, keys := walk(t, anything(r))
		o, err := p.outcome()
		if err != nil || !o.Screened() {
			t.Fatalf("%v: %v", keys, err)
		}
		tellClient(io.Discard, o)
		tellClinician(io.Discard, o)
	}
}

// Who stops before the lists are through does nothing meanwhile.
func TestStoppingEarlyForbids(t *testing.T) {
	_, keys := walk(t, well(map[string]string{"today": "yes"}))
	answer := well(map[string]string{"today": "yes"})
	p := newPerson(visit)
	for i := range keys {
		q := p.next()
		if i > 0 {
			o, err := p.outcome()
			if err != nil {
				t.Fatal(err)
			}
			if asked := slices.Index(keys, "areas"); i <= asked && o.Meanwhile != screening.Nothing {
				t.Errorf("stopped before %s: %v", q.key, o.Meanwhile)
			}
		}
		after, err := p.with(q, answer(q))
		if err != nil {
			t.Fatal(err)
		}
		p = after
	}
}

// Back leads to the question before, as it was.
func TestBack(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 2))
	for range 12 {
		var all []given
		p, answer := newPerson(visit), anything(r)
		for q := p.next(); q != nil; q = p.next() {
			text := answer(q)
			after, err := p.with(q, text)
			if err != nil {
				t.Fatal(err)
			}
			if again := replay(visit, all).next(); again == nil || again.key != q.key || !slices.Equal(again.options, q.options) {
				t.Fatalf("back does not lead to %s", q.key)
			}
			all = append(all, given{q.key, text})
			p = after
		}
	}
}

func TestReadDay(t *testing.T) {
	for text, want := range map[string]string{
		"2026-03-14": "2026-03-14", "2026-03": "2026-03-31", "2024-02": "2024-02-29", "2026-11": "2026-11-25", "2025-12": "2025-12-31", "9999-12": "9999-12-31",
		"2027-01": "2027-01-31", // after the visit: the library refuses it
	} {
		if got, err := readDay(text, visit); err != nil || got.String() != want {
			t.Errorf("%s: %v, %v; want %s", text, got, err, want)
		}
	}
	for _, text := range []string{"", "March", "2026", "2026-13", "2026-02-30", "14.3.2026"} {
		if got, err := readDay(text, visit); err == nil {
			t.Errorf("%q gives %v", text, got)
		}
	}
}

func TestPick(t *testing.T) {
	codes := []screening.Code{"cardiac", "renal", "diabetes_t1"}
	for text, want := range map[string]string{
		"none": "[] []", "NO": "[] []", "0": "[] []", "1, 3": "[cardiac diabetes_t1] []", "2?": "[] [renal]", "renal 1?": "[renal] [cardiac]",
		"4": "", "0 1": "", "none 1": "", "1 1": "", "1 1?": "", ",": "", "-1": "", "1.5": "", "??": "",
	} {
		present, unsure, err := pick(text, codes)
		if got := fmt.Sprint(present, unsure); (err == nil) != (want != "") || err == nil && got != want {
			t.Errorf("%q: %s, %v; want %s", text, got, err, want)
		}
	}
}

func FuzzInterview(f *testing.F) {
	f.Add("70\n3\nnone\nnone\nnone\nno\nnone\nnone\n1\n0\nyes\nno\nno\n")
	f.Add("70\nback\nback\n?\nstop\n")
	f.Add("64\nalone\nnone\nnone\nnone\nyes\n1?\n4 5\n1 2 3 4 5\n")
	f.Fuzz(func(t *testing.T, typed string) {
		p, err := interview(visit, strings.NewReader(typed), io.Discard)
		if err != nil {
			return // a line too long to read
		}
		if p.profile.Age == 0 {
			return
		}
		if o, err := p.outcome(); err != nil || !o.Screened() {
			t.Errorf("%v", err)
		}
	})
}

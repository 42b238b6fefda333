package interview

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
)

func TestEveryCodeIsAskedOnce(t *testing.T) {
	seen := map[screening.Code]int{}
	for _, g := range groups() {
		for _, code := range g.codes {
			seen[code]++
			if term, ok := screening.LookUp(code); !ok || term.Kind != g.kind {
				t.Errorf("%s: %s is no %s", g.key, code, g.kind)
			}
		}
	}
	for term := range screening.Codes() {
		instead := through[term.Code]
		if listOf[term.Kind] != "" && seen[term.Code]+seen[instead] != 1 && !strings.HasPrefix(string(term.Code), rated) {
			t.Errorf("%s is asked %d times, through %q %d times", term.Code, seen[term.Code], instead, seen[instead])
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
			o, err := screening.Assess(screening.Profile{
				Day: visit, Age: 66, Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Diseases: screening.AskedFor(), Conditions: screening.AskedFor(code),
			})
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

// A client never reads these (this project's own rule).
func TestPlainWords(t *testing.T) {
	var texts []string
	for _, text := range ownWords {
		texts = append(texts, text)
	}
	for _, g := range groups() {
		texts = append(texts, g.text, g.gate, g.area)
	}
	for _, text := range slices.Concat(texts, settingTexts, effortTexts, ketoneTexts, painTexts, trendTexts) {
		for _, banned := range []string{"safe", "cleared", "failed", "frail", "non-responder", "thin bones"} {
			if strings.Contains(strings.ToLower(text), banned) {
				t.Errorf("a client reads %q", text)
			}
		}
	}
	for code := range ownWords {
		if _, ok := prompts()[code]; !ok {
			t.Errorf("own words for %s, which is no question", code)
		}
	}
}

// Whoever is asked for a day reads first what it is the day of.
func TestDaysNameWhatTheyAreOf(t *testing.T) {
	for code, want := range map[screening.Code]string{
		"pacemaker":             "A pacemaker. When was that?",
		"total_hip_replacement": "A replaced hip. When was that?",
	} {
		if got := dayOf(string(code)+"_day", code, "When was that?").Client; got != want {
			t.Errorf("%s: %q, want %q", code, got, want)
		}
	}
}

func TestForms(t *testing.T) {
	n := 0
	for f := range ReplyForms() {
		var back ReplyForm
		if data, err := f.MarshalText(); err != nil || back.UnmarshalText(data) != nil || back != f || string(data) != f.String() {
			t.Errorf("%d: %q, %v", f, data, err)
		}
		n++
	}
	if n != int(FreeText) {
		t.Errorf("%d forms", n)
	}
}

// Replies are what a form stores between two pages.
func TestReplyJSON(t *testing.T) {
	for text, r := range map[string]Reply{
		`{}`:                 {},
		`{"yes_no":"no"}`:    {YesNo: screening.No},
		`{"choice":"alone"}`: {Choice: "alone"},
		`{"text":"146/84"}`:  {Text: "146/84"},
		`{"list":{"asked":true,"unsure":["renal"]}}`: {List: screening.Checklist{Asked: true, Unsure: []screening.Code{"renal"}}},
	} {
		data, err := json.Marshal(r)
		var back Reply
		if err != nil || string(data) != text || json.Unmarshal(data, &back) != nil || back.IsZero() != (text == "{}") {
			t.Errorf("%s, want %s, %v", data, text, err)
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
	for text, want := range map[string]string{"2026-03": "2026-03-01", "2026-03-14": "2026-03-14"} {
		if got, err := readEarly(text); err != nil || got.String() != want {
			t.Errorf("%s: %v, %v; want %s", text, got, err, want)
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

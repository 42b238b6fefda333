package screening_test

import (
	"encoding/json"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/posology/screening"
)

// suffixes are what variants add to the codes of reasons.
var suffixes = map[screening.Variant]string{
	0: "", screening.FirstReading: ".again", screening.LongAgo: ".later", screening.Agreed: ".clearance", screening.ForVigorous: ".vigorous",
	screening.LookedAt: ".looked-at", screening.LookedAtLater: ".looked-at.later", screening.LookedAtPast: ".looked-at.long-after", screening.LongPast: ".long-after",
	screening.ByNewerList: ".newer-list", screening.ItsPlace: ".place", screening.Lesser: ".lesser",
}

// ofRules are the codes of findings that no list, question or branch has.
var ofRules = []screening.Code{"diabetes-start", "flags-together", "flags-chronic", "flags-chronic-past", "flags-chronic-followed", "clearance-counted", "clearance-not-counted", "restriction", "restriction-ended", "assessment-lapsed", "nothing-found"}

// TestFindingsSayWhatTheyAreOf holds code, known and variant against the code of
// the reason, over random visits: nobody has to take that apart.
func TestFindingsSayWhatTheyAreOf(t *testing.T) {
	known := map[screening.Code]bool{}
	for term := range screening.Codes() {
		known[term.Code] = true
	}
	for prompt := range screening.Prompts() {
		known[prompt.Code] = true
	}
	for _, code := range ofRules {
		known[code] = true
	}
	r := rand.New(rand.NewPCG(50, 13))
	for range usualCases / 8 {
		o := assess(t, randomProfile(r))
		o = mustToday(t, checkFor(r, o), o)
		for _, f := range o.Findings {
			reason := strings.TrimSuffix(strings.TrimPrefix(string(f.Reason.Code), "screening."), ".held")
			want, branch := string(f.Code)+suffixes[f.Variant], f.Branch() != 0
			switch {
			case branch:
				if want = "branch." + want; !f.Known {
					want += ".unsure"
				}
			case strings.HasPrefix(reason, "not-asked."):
				want = "not-asked." + want
			case reason == "happened":
				want = reason
			case !f.Known:
				want += ".unsure"
			}
			if reason != want && !strings.HasPrefix(reason, "flags-") || !branch && !known[f.Code] {
				t.Fatalf("%s: %q, known %v, %v", f.Reason.Code, f.Code, f.Known, f.Variant)
			}
			if !f.Known && !f.Open && !branch {
				t.Fatalf("%s is not known, and nothing may lift it", f.Reason.Code)
			}
		}
		for _, q := range o.Missing {
			if !known[q.Code] || q.Unsure != strings.HasSuffix(string(q.Reason.Code), ".unsure") || (q.Because != "") != (len(q.Reason.Args) > 0) {
				t.Fatalf("%+v", q)
			}
		}
	}
}

// A branch that rests on what is not known says so.
func TestBranchKnown(t *testing.T) {
	p := screening.Profile{Day: visit, Age: 66, Setting: screening.InGroup, Activity: &screening.Activity{Intensity: screening.Idle}, Diseases: screening.AskedFor(), Symptoms: screening.AskedFor("ankle_oedema")}
	for _, tt := range []struct {
		symptoms screening.Checklist
		known    bool
	}{
		{screening.AskedFor("ankle_oedema"), true}, {screening.AskedFor(), true}, {screening.Checklist{}, false},
		{screening.Checklist{Asked: true, Unsure: []screening.Code{"orthopnoea_or_pnd"}}, false},
	} {
		p.Symptoms = tt.symptoms
		for _, f := range assess(t, p).Findings {
			if f.Branch() != 0 && f.Known != tt.known {
				t.Errorf("%+v: branch %s, known %v", tt.symptoms, f.Code, f.Known)
			}
		}
	}
}

// What was stored before findings had codes is read as before.
func TestFindingWithoutCode(t *testing.T) {
	var f screening.Finding
	old := `{"reason":{"code":"screening.renal"},"route":"tell","meanwhile":"within limits"}`
	if err := json.Unmarshal([]byte(old), &f); err != nil || f.Code != "" || f.Route != screening.Tell || f.Branch() != 0 {
		t.Errorf("%+v, %v", f, err)
	}
	if data, err := json.Marshal(f); err != nil || string(data) != old {
		t.Errorf("%s, %v", data, err)
	}
}

// TestOptions holds that every code has words for a list, and that they keep
// this project's rule of what a client never reads.
func TestOptions(t *testing.T) {
	for term := range screening.Codes() {
		text := screening.Option(term.Code)
		if text == "" {
			t.Errorf("no words for %s", term.Code)
		}
		for _, banned := range []string{"safe", "cleared", "failed", "frail", "non-responder", "thin bones"} {
			if text != term.Meaning && strings.Contains(strings.ToLower(text), banned) {
				t.Errorf("%s says %q to a client", term.Code, text)
			}
		}
	}
	if screening.Option("no such code") != "" || screening.Option("cardiac") == screening.Option("renal") {
		t.Error("options are not by code")
	}
}

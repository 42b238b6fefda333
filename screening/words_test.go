package screening_test

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// silent are the reasons of which a client need read nothing: they say what was
// counted, or are never given without another that speaks of the same.
var silent = []evidence.ReasonCode{
	"screening.diabetes-start", "screening.clearance-counted", "screening.clearance-not-counted",
	"screening.hypertension_gt_180_110.again", "screening.systolic_gt_170_untreated.held", "screening.systolic_gt_170_untreated.again.held",
	"screening.branch.N1.held", "screening.branch.A1.held", "screening.branch.N2.clearance.held", "screening.branch.N3.clearance.held", "screening.branch.A3.clearance.held",
	"screening.branch.N2.clearance.unsure.held", "screening.branch.N3.clearance.unsure.held", "screening.branch.A3.clearance.unsure.held",
	"screening.stop_bp_gt_260_or_115", "screening.stop_bp_gt_250_or_120",
	// Topics are only ever missing, never found.
	"screening.blood_pressure", "screening.glucose", "screening.ketones", "screening.oxygen_saturation", "screening.weight_gain", "screening.resting_pulse", "screening.blood_counts", "screening.pain_kind",
}

// TestNoGaps lists every reason without words for the client, or a sentence
// that a client with several findings would read twice.
func TestNoGaps(t *testing.T) {
	said := map[string]evidence.ReasonCode{}
	for code, w := range screening.Words().All() {
		if w.Clinician == "" {
			t.Errorf("%s has no words for the clinician", code)
		}
		if (w.Client == "") != slices.Contains(silent, code) {
			t.Errorf("%s says to the client %q", code, w.Client)
		}
		if strings.Contains(w.Client, "about .") || strings.Contains(w.Client, "  ") {
			t.Errorf("%s says to the client %q", code, w.Client)
		}
		if other, twice := said[w.Client]; twice && w.Client != "" && !strings.HasSuffix(string(code), ".unsure") && !strings.HasSuffix(string(code), ".clearance") && !strings.HasSuffix(string(code), ".held") && !strings.HasSuffix(string(other), ".held") {
			t.Errorf("%s and %s both say %q", code, other, w.Client)
		}
		said[w.Client] = code
	}
}

// TestNoEffortAboveALimit holds that no sentence to a client promises an effort: a limit of its
// own, as with a clearance for light effort alone, may be tighter than what the sentence is about.
func TestNoEffortAboveALimit(t *testing.T) {
	for code, w := range screening.Words().All() {
		for _, effort := range []string{"moderate", "vigorous"} {
			if at := strings.Index(w.Client, effort); at >= 0 && !strings.Contains(w.Client[at:], " at most") && !strings.HasSuffix(w.Client[:at], "weights ") {
				t.Errorf("%s says to the client %q", code, w.Client)
			}
		}
	}
}

// TestNobodyReadsTwice reads to random clients what they would be told.
func TestNobodyReadsTwice(t *testing.T) {
	r, words := rand.New(rand.NewPCG(50, 3)), screening.Words().Copy()
	for range usualCases / 8 {
		o := assess(t, randomProfile(r))
		o = mustToday(t, checkFor(r, o), o)
		told := map[string]evidence.ReasonCode{}
		for _, f := range o.Findings {
			if len(f.Reason.Facts) == 0 && f.Reason.Code != "screening.nothing-found" {
				t.Fatalf("%s rests on no fact", f.Reason.Code)
			}
			text := words.Client(f.Reason)
			// An answer at the visit and one on the day may be of the same code.
			if other, twice := told[text]; twice && text != "" && other != f.Reason.Code && !strings.HasSuffix(string(other), ".unsure") && !strings.HasSuffix(string(other), ".clearance") && !strings.HasSuffix(string(other), ".held") {
				t.Fatalf("%s and %s both say %q", other, f.Reason.Code, text)
			}
			told[text] = f.Reason.Code
		}
	}
}

// TestWordsFitTheRoute holds what a client reads of one thing that a physiotherapist looks
// at, or that a cuff settles, to where it is sent.
func TestWordsFitTheRoute(t *testing.T) {
	words, looked := screening.Words(), 0
	for term := range screening.Codes() {
		if term.Kind != screening.RedFlag && term.Kind != screening.Condition {
			continue
		}
		for _, sure := range []bool{true, false} {
			p := lived(everyday{}, true, screening.InGroup)
			if has(term.Code)(&p); !sure {
				p = lived(everyday{}, true, screening.InGroup)
				unsure(term.Code)(&p)
			}
			o, err := screening.Assess(p)
			if err != nil || o.Route != screening.PhysioLooks {
				continue
			}
			for _, f := range o.Findings {
				if text := words.Client(f.Reason); f.Code == term.Code && f.Route == o.Route {
					if looked++; strings.Contains(text, "octor") {
						t.Errorf("%s, sure %v: the physiotherapist looks, and the client reads %q", f.Code, sure, text)
					}
				}
			}
		}
	}
	if looked < 8 {
		t.Errorf("%d findings are looked at", looked)
	}
	p := lived(everyday{is: and{has("hypertension_treated"), unmeasured}}, false, screening.InGroup)
	for _, f := range assess(t, p).Findings {
		if text := words.Client(f.Reason); f.Code == "pressure_not_measured" && !strings.Contains(text, "within two weeks") {
			t.Errorf("a pressure that was not taken reads %q", text)
		}
	}
}

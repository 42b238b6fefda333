package screening_test

import (
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// digest is the part of screening.json that this package rests on.
type digest struct {
	Preparticipation struct {
		Inputs struct {
			Active struct {
				Minutes   int    `json:"minutes_min"`
				Intensity string `json:"intensity_min"`
				Days      int    `json:"days_per_week_min"`
				Months    int    `json:"months_min"`
				Known     string `json:"known"`
			} `json:"regularly_active"`
			Diseases     []string `json:"disease_any_of"`
			DiseaseKnown string   `json:"disease_known"`
		} `json:"inputs"`
		Symptoms []struct{ Code, Known string } `json:"signs_symptoms"`
		Table    []struct {
			Branch    string `json:"branch"`
			Active    bool   `json:"active"`
			Disease   any    `json:"disease"`
			Symptoms  bool   `json:"symptoms"`
			Clearance string `json:"clearance"`
			Known     string `json:"known"`
			Months    int    `json:"clearance_valid_months"`
		} `json:"table"`
	} `json:"acsm2015"`
	AHA struct {
		Absolute []struct{ Code, Known string } `json:"absolute"`
		Relative []struct{ Code, Known string } `json:"relative"`
	} `json:"aha_contraindications"`
	SessionDay []struct{ Code, Rule, Known string } `json:"session_day"`
	Glucose    struct {
		Rows []struct {
			Lo   *int   `json:"lo"`
			Hi   *int   `json:"hi"`
			Mmol string `json:"mmol"`
		} `json:"rows"`
	} `json:"glucose_start_of_session"`
	Conditions []struct{ Code, Known string } `json:"conditions"`
	Sources    map[string]struct {
		Citation string `json:"citation"`
	} `json:"sources"`
}

func readDigest(t *testing.T) digest {
	t.Helper()
	data, err := os.ReadFile("../testdata/published/screening.json")
	if err != nil {
		t.Fatal(err)
	}
	var d digest
	if err := json.Unmarshal(data, &d); err != nil {
		t.Fatal(err)
	}
	return d
}

func ledger(t *testing.T) *evidence.Ledger {
	t.Helper()
	l, err := evidence.NewLedger(screening.Facts())
	if err != nil {
		t.Fatal(err)
	}
	return l
}

var basisWords = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory}

// notRaised fails if the fact's basis is better than any that known mentions.
func notRaised(t *testing.T, l *evidence.Ledger, id evidence.FactID, known string) {
	t.Helper()
	f, ok := l.Fact(id)
	if !ok {
		t.Errorf("no fact %s", id)
		return
	}
	best := evidence.Basis(0)
	for word, b := range basisWords {
		if strings.Contains(known, word) && evidence.Weaker(b, best) == best {
			best = b
		}
	}
	if first := strings.FieldsFunc(known, func(r rune) bool { return r == ' ' || r == ';' }); best == 0 || len(first) == 0 {
		t.Fatalf("%s: cannot read %q", id, known)
	}
	if evidence.Weaker(f.Basis, best) != f.Basis {
		t.Errorf("%s has basis %v, better than %q", id, f.Basis, known)
	}
}

func codeFact(t *testing.T, code string, kind screening.Kind) evidence.FactID {
	t.Helper()
	term, ok := screening.LookUp(screening.Code(code))
	if !ok {
		t.Errorf("code %q of screening.json is not known", code)
	} else if term.Kind != kind {
		t.Errorf("%q is a %v, want %v", code, term.Kind, kind)
	}
	return term.Fact
}

func TestBasesNotRaised(t *testing.T) {
	d, l := readDigest(t), ledger(t)
	for _, code := range d.Preparticipation.Inputs.Diseases {
		notRaised(t, l, codeFact(t, code, screening.Disease), d.Preparticipation.Inputs.DiseaseKnown)
	}
	for _, s := range d.Preparticipation.Symptoms {
		notRaised(t, l, codeFact(t, s.Code, screening.Symptom), s.Known)
	}
	for _, s := range slices.Concat(d.AHA.Absolute, d.AHA.Relative, d.Conditions) {
		notRaised(t, l, codeFact(t, s.Code, screening.Condition), s.Known)
	}
	for _, row := range d.Preparticipation.Table {
		notRaised(t, l, evidence.FactID("screening.branch."+row.Branch), row.Known)
	}
	notRaised(t, l, "screening.regularly-active", d.Preparticipation.Inputs.Active.Known)
	// Where the digest calls a row by another name than the check it makes.
	day := map[string]evidence.FactID{
		"unstable_or_uncontrolled": "screening.unstable_or_uncontrolled",
		"orthostatic_lying":        "screening.orthostatic-lying",
		"orthostatic_sitting":      "screening.orthostatic_hypotension",
		"bp_ge_180_or_100":         "screening.bp_ge_180_or_100",
		"hr_gt_100":                "screening.hr_gt_100",
		"febrile":                  "screening.febrile",
	}
	met := 0
	for _, row := range d.SessionDay {
		if id, ours := day[row.Code]; ours {
			met++
			notRaised(t, l, id, row.Known)
		}
	}
	if met != len(day) {
		t.Errorf("%d session-day rows found, want %d", met, len(day))
	}
	for _, id := range []evidence.FactID{"screening.pain_gt_5_reduce", "screening.pain_not_settled_reduce", "screening.pain_rising_week_on_week_reduce", "screening.pressure-high-intensity", "screening.light-load"} {
		notRaised(t, l, id, "memory")
	}
}

// TestTables holds the thresholds of screening.json against the facts, which
// are printed from the constants that the code uses.
func TestTables(t *testing.T) {
	d, l := readDigest(t), ledger(t)
	says := func(id evidence.FactID, parts ...string) {
		t.Helper()
		f, _ := l.Fact(id)
		for _, part := range parts {
			if !strings.Contains(f.Value, part) {
				t.Errorf("%s = %q, want it to say %q", id, f.Value, part)
			}
		}
	}
	a := d.Preparticipation.Inputs.Active
	says("screening.regularly-active", fmt.Sprintf("%d days", a.Days), fmt.Sprintf("%d minutes", a.Minutes), a.Intensity, fmt.Sprintf("%d months", a.Months))
	says("screening.branch.A2", fmt.Sprintf("%d months", d.Preparticipation.Table[4].Months))
	for _, row := range d.Glucose.Rows {
		id := map[bool]evidence.FactID{true: "screening.glucose_lt_90_carbohydrate_first"}[row.Lo == nil]
		if row.Lo != nil && *row.Lo == 250 {
			id = "screening.glucose_250_349_ketone_test_no_intense"
		}
		if row.Lo != nil && *row.Lo == 350 {
			id = "screening.glucose_ge_350_ketone_test"
		}
		if id == "" {
			continue // rows that change nothing in the session
		}
		for _, end := range []*int{row.Lo, row.Hi} {
			if end != nil {
				says(id, fmt.Sprintf("%d mg/dL", *end))
			}
		}
		for _, mmol := range strings.FieldsFunc(row.Mmol, func(r rune) bool { return !strings.ContainsRune("0123456789.", r) }) {
			says(id, mmol+" mmol/L")
		}
	}
	for key := range d.Sources {
		if slices.Contains([]string{"paluch2024", "giangregorio2015", "monteroodasso2022"}, key) {
			continue // no fact here rests on them
		}
		if s, ok := evidence.LookUp(evidence.SourceID(key)); !ok || s.Citation == "" {
			t.Errorf("source %s of screening.json is not listed", key)
		}
	}
}

// TestPreparticipationTable walks the published table itself.
func TestPreparticipationTable(t *testing.T) {
	for _, row := range readDigest(t).Preparticipation.Table {
		for _, disease := range []bool{false, true} {
			if want, fixed := row.Disease.(bool); fixed && want != disease {
				continue
			}
			p := blank()
			if row.Active {
				p.Activity = busy()
			}
			if disease {
				p.Diseases = screening.AskedFor("renal")
			}
			if row.Symptoms {
				p.Symptoms = screening.AskedFor("ankle_oedema")
			}
			got := screening.Preparticipation(p)
			if got.Branch.String() != row.Branch {
				t.Errorf("branch %v, want %s", got.Branch, row.Branch)
			}
			if clearance := got.Clearance.String(); !strings.Contains(row.Clearance, clearance) {
				t.Errorf("branch %s: %s, want %s", row.Branch, clearance, row.Clearance)
			}
		}
	}
}

// TestWords holds that every fact that a reason may name exists and that every
// code has words, in the tone that clients are spoken to.
func TestWords(t *testing.T) {
	l, words := ledger(t), screening.Words().Copy()
	for term := range screening.Codes() {
		if _, ok := l.Fact(term.Fact); !ok {
			t.Errorf("%s: no fact %s", term.Code, term.Fact)
		}
		if term.Meaning == "" || words[evidence.ReasonCode("screening."+term.Code)].Clinician == "" {
			t.Errorf("%s has no words", term.Code)
		}
	}
	for q := range screening.Prompts() {
		if w := words[evidence.ReasonCode("screening.ask."+q.Code)]; w.Client == "" || w.Clinician == "" {
			t.Errorf("question %s has no words", q.Code)
		}
	}
	for code, w := range words {
		for _, banned := range []string{"safe", "cleared", "failed", "frail", "non-responder", "thin bone", "weak heart"} {
			if strings.Contains(strings.ToLower(w.Client), banned) {
				t.Errorf("%s says %q to a client", code, banned)
			}
		}
		if len(w.Client) > 240 {
			t.Errorf("%s is too long for a client: %q", code, w.Client)
		}
		for _, banned := range []string{" safe", "cleared"} {
			if strings.Contains(w.Clinician, banned) {
				t.Errorf("%s says %q", code, banned)
			}
		}
	}
}

func TestIteratorsStop(t *testing.T) {
	count := 0
	for range screening.Facts() {
		count++
		if count == 3 {
			break
		}
	}
	for range screening.Codes() {
		count++
		break
	}
	for range screening.Prompts() {
		count++
		break
	}
	if count != 5 {
		t.Errorf("%d steps, want 5", count)
	}
	total := 0
	for range screening.Facts() {
		total++
	}
	for stop := 1; stop <= total; stop++ {
		n := 0
		for range screening.Facts() {
			if n++; n == stop {
				break
			}
		}
		if n != stop {
			t.Fatalf("stopped at %d, want %d", n, stop)
		}
	}
}

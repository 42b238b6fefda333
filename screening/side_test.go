package screening_test

import (
	"encoding/json"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/units/evidence"
)

// A sideRow is one row of the evidence with the facts that stand for it.
type sideRow struct {
	code, says, source, known string
	facts                     []evidence.FactID
}

// besides are facts that carry a part of a row, by its code.
var besides = map[string][]evidence.FactID{
	"unstable_or_uncontrolled":             {"screening.unstable_or_acute_hf"},
	"hf_supine_hr":                         {"screening.mi_within_3_weeks"},
	"spo2_low":                             {"screening.spo2_lt_89", "screening.spo2_lt_90"},
	"blood_counts":                         {"screening.platelets_lt_50", "screening.haemoglobin_lt_100"},
	"orthostatic_lying":                    {"screening.orthostatic-lying"},
	"orthostatic_supine_hypertension":      {"screening.orthostatic-high-lying"},
	"orthostatic_sitting":                  {"screening.orthostatic_hypotension"},
	"uncontrolled_hypertension":            {"screening.hypertension_gt_180_110", "screening.hypertension_gt_160_100"},
	"retinopathy_high_intensity":           {"screening.below-high-intensity"},
	"glaucoma":                             {"screening.glaucoma_breathing"},
	"total_knee_replacement":               {"screening.recent-replacement"},
	"diabetic_retinopathy_severe":          {"screening.nephropathy"},
	"osteoporosis_with_vertebral_fracture": {"screening.vertebral_fracture"},
	"osteoporosis_uk":                      {"screening.vertebral_fracture"},
	"parkinsons":                           {"screening.parkinsons-timing"},
}

// untold are numbers of a row that are no threshold of the rule.
var untold = map[string][]string{
	"febrile":                     {"38"},                   // of one protocol only
	"spo2_low":                    {"1", "6", "2"},          // minutes and litres of the definition; SpO2
	"blood_counts":                {"9"},                    // of the unit
	"orthostatic_sitting":         {"80.2", "88.9", "87.2"}, // how well the threshold tells
	"rotator_cuff_repair":         {"0"},                    // the operation
	"pelvic_organ_prolapse":       {"1"},                    // a level of evidence
	"glaucoma":                    {"5", "30", "21"},        // how many rose by more than 5 mmHg
	"diabetic_retinopathy_severe": {"4254543", "4", "20"},   // an article's number; a pressure that is not watched
	"retinopathy_high_intensity":  {"100"},                  // the whole of the 1RM
}

var number = regexp.MustCompile(`\d+(\.\d+)?`)

func readSide(t *testing.T) []sideRow {
	t.Helper()
	data, err := os.ReadFile("../testdata/published/screening.json")
	if err != nil {
		t.Fatal(err)
	}
	type row struct{ Code, Rule, Modify, Threshold, Source, Known string }
	var d struct {
		AHA struct {
			Source             string
			Absolute, Relative []row
		} `json:"aha_contraindications"`
		SessionDay []row `json:"session_day"`
		Conditions []row
	}
	if err := json.Unmarshal(data, &d); err != nil {
		t.Fatal(err)
	}
	var rows []sideRow
	for _, r := range slices.Concat(d.AHA.Absolute, d.AHA.Relative, d.SessionDay, d.Conditions) {
		source := r.Source
		if r.Modify == "" && r.Rule == "" {
			source = d.AHA.Source
		}
		facts := append([]evidence.FactID{evidence.FactID("screening." + r.Code)}, besides[r.Code]...)
		rows = append(rows, sideRow{r.Code, r.Rule + r.Modify + r.Threshold, source, r.Known, facts})
	}
	return rows
}

// TestSideBySide prints each row of the evidence beside the facts that the code
// is made from, and fails where the source, a number or how it is known differs.
func TestSideBySide(t *testing.T) {
	l := ledger(t)
	for _, row := range readSide(t) {
		var told []string
		sources := map[evidence.SourceID]bool{}
		found := 0
		for _, id := range row.facts {
			f, ok := l.Fact(id)
			if !ok {
				continue
			}
			found++
			told = append(told, number.FindAllString(f.Value, -1)...)
			sources[f.Source] = true
			if f.Source == evidence.SourceID(row.source) {
				notRaised(t, l, id, row.known)
			}
			t.Logf("%-34s | %s | %s, %s || %s | %s, %v", row.code, row.says, row.source, row.known, f.Value, f.Source, f.Basis)
		}
		if found == 0 {
			t.Errorf("%s has no fact", row.code)
		}
		if row.source != "" && !sources[evidence.SourceID(row.source)] {
			t.Errorf("%s: sources %v, want %q", row.code, sources, row.source)
		}
		for _, n := range number.FindAllString(row.says, -1) {
			if !slices.Contains(told, n) && !slices.Contains(untold[row.code], n) {
				t.Errorf("%s: the evidence says %s in %q, the facts say %v", row.code, n, row.says, told)
			}
		}
	}
}

// TestStopRowsSideBySide compares the reasons to end a set with the evidence:
// every source with its own numbers.
func TestStopRowsSideBySide(t *testing.T) {
	data, err := os.ReadFile("../testdata/published/screening.json")
	if err != nil {
		t.Fatal(err)
	}
	var d struct {
		Stop []struct{ Rule, Source, Known string } `json:"stop_during"`
	}
	if err := json.Unmarshal(data, &d); err != nil {
		t.Fatal(err)
	}
	l := ledger(t)
	byRule := map[string][]string{
		"pain in the chest": {"chest_symptom"}, "SBP >=": {"stop_bp_ge_250_or_115", "stop_bp_gt_260_or_115", "stop_bp_gt_250_or_120"},
		"SBP falls": {"stop_systolic_fall_gt_10"}, "dizzy": {"dizzy_or_swaying", "pale_bluish_or_clammy", "feels_sick"}, "confused": {"confused_or_uncoordinated"},
		"far more": {"breathless_or_wheezing", "leg_cramp", "exhausted"}, "a heart rhythm": {"rhythm_disturbed"}, "the person asks": {"asks_to_stop", "monitor_stopped"},
		"sudden weakness": {"stroke_signs"},
	}
	for _, row := range d.Stop {
		matched := 0
		for begins, codes := range byRule {
			if !strings.HasPrefix(row.Rule, begins) {
				continue
			}
			matched++
			told := ""
			for _, code := range codes {
				f, _ := l.Fact(evidence.FactID("screening." + code))
				told += f.Value + " "
				if f.Source != evidence.SourceID(row.Source) && !strings.Contains(row.Rule, string(f.Source)) {
					t.Errorf("%s: source %s, want %s", code, f.Source, row.Source)
				}
				notRaised(t, l, f.ID, row.Known)
			}
			for _, n := range number.FindAllString(regexp.MustCompile(`\([^)]*\)`).ReplaceAllString(row.Rule, ""), -1) {
				if !strings.Contains(told, n) {
					t.Errorf("%q: %s is not in %q", row.Rule, n, told)
				}
			}
			t.Logf("%s | %s | %s || %s", row.Rule, row.Source, row.Known, told)
		}
		if matched != 1 {
			t.Errorf("%q is met by %d rows of the code", row.Rule, matched)
		}
	}
}

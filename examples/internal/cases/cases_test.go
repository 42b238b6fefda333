package cases_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/examples/internal/cases"
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

func TestPublishedIsTheCopyOfTestdata(t *testing.T) {
	want, err := os.ReadFile("../../../testdata/published/screening-cases.csv")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(cases.Published(), want) {
		t.Error("screening-cases.csv here differs from testdata/published: copy it again")
	}
}

func TestPublishedAgrees(t *testing.T) {
	table, err := cases.Read(cases.Published())
	if err != nil || len(table) != 26 {
		t.Fatalf("%d cases, %v; want 26", len(table), err)
	}
	for _, c := range table {
		compared, found := c.Compare()
		if compared != 8 {
			t.Errorf("%s: %d answers compared, want 8", c.ID, compared)
		}
		for _, d := range found {
			t.Errorf("%s (%s)", d, c.Source)
		}
	}
}

// one is a table of one row.
func one(inputs, expected string) []byte {
	quoted := func(s string) string { return `"` + strings.ReplaceAll(s, `"`, `""`) + `"` }
	return []byte("# invented\nid,inputs,expected,source\nX1," + quoted(inputs) + "," + quoted(expected) + ",invented\n")
}

// Every code that the published file names can stand in the list it belongs to.
func TestEveryPublishedCodeIsAccepted(t *testing.T) {
	data, err := os.ReadFile("../../../testdata/published/screening.json")
	if err != nil {
		t.Fatal(err)
	}
	type coded []struct{ Code string }
	var file struct {
		ACSM struct {
			Inputs struct {
				Diseases []string `json:"disease_any_of"`
			}
			Signs coded `json:"signs_symptoms"`
		} `json:"acsm2015"`
		AHA        struct{ Absolute, Relative coded } `json:"aha_contraindications"`
		Conditions coded
	}
	if err := json.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	lists := map[string][]string{"known_disease": file.ACSM.Inputs.Diseases}
	for which, list := range map[string]coded{"symptoms": file.ACSM.Signs, "conditions": append(append(file.AHA.Absolute, file.AHA.Relative...), file.Conditions...)} {
		for _, c := range list {
			lists[which] = append(lists[which], c.Code)
		}
	}
	lists["conditions"] = append(lists["conditions"], "hypertension_treated", "npdr_moderate_or_worse", "vertebral_fracture",
		"major_chd_risk_factors", "pacemaker", "copd_asymptomatic", "decompensated_hf") // named by the format beside them
	for level := 1; level <= 9; level++ {
		lists["conditions"] = append(lists["conditions"], "cfs_level_"+strconv.Itoa(level))
	}
	lists["red_flags"] = []string{"saddle_numbness", "new_bladder_or_bowel_dysfunction", "cancer_history_with_new_unremitting_back_pain",
		"fever_with_severe_back_pain", "fracture_after_minor_trauma_with_osteoporosis"}
	seen := 0
	for which, codes := range lists {
		for _, code := range codes {
			seen++
			if _, err := cases.Read(one(`{"`+which+`":["`+code+`"]}`, `{}`)); err != nil {
				t.Errorf("%s: %v", code, err)
			}
		}
	}
	if len(lists["symptoms"]) != 9 || len(lists["known_disease"]) != 6 || seen < 70 {
		t.Errorf("%d codes looked at, %d symptoms, %d diseases", seen, len(lists["symptoms"]), len(lists["known_disease"]))
	}
}

// Every code of the library that a list may hold is accepted too, the wider
// list's among them.
func TestEveryListedCodeIsAccepted(t *testing.T) {
	which := map[screening.Kind]string{
		screening.Disease: "known_disease", screening.Symptom: "symptoms",
		screening.Condition: "conditions", screening.RedFlag: "red_flags",
	}
	seen := 0
	for term := range screening.Codes() {
		name, listed := which[term.Kind]
		if !listed {
			continue
		}
		seen++
		if _, err := cases.Read(one(`{"`+name+`":["`+string(term.Code)+`"]}`, `{}`)); err != nil {
			t.Errorf("%s: %v", term.Code, err)
		}
	}
	if seen < 100 {
		t.Errorf("only %d codes", seen)
	}
}

func TestBadRowsAreNamed(t *testing.T) {
	tests := []struct {
		inputs, expected, path string
		category               error
	}{
		{`{"conditions":["osteoporosis","osteoporoses"]}`, `{}`, "/X1/inputs/conditions/1", field.ErrUnknown},
		{`{"known_disease":["heart"]}`, `{}`, "/X1/inputs/known_disease/0", field.ErrUnknown},
		{`{"symptoms":["cough"],"clearance_months_ago":3}`, `{}`, "/X1/inputs/symptoms/0", field.ErrUnknown},
		{`{"known_disease":["heart"],"clearance_months_ago":3}`, `{}`, "/X1/inputs/known_disease/0", field.ErrUnknown},
		{`{"red_flags":["osteoporosis"]}`, `{}`, "/X1/inputs/red_flags/0", field.ErrUnknown},
		{`{"conditions":["icd","icd"]}`, `{}`, "/X1/inputs/conditions/1", field.ErrDuplicate},
		{`{"weight":80}`, `{}`, "/X1/inputs/weight", field.ErrUnknown},
		{`{"age":12}`, `{}`, "/X1/inputs/age", field.ErrOutOfRange},
		{`{"sex":"X"}`, `{}`, "/X1/inputs/sex", field.ErrUnknown},
		{`{"bp":[400,90]}`, `{}`, "/X1/inputs/bp/0", field.ErrOutOfRange},
		{`{"bp":[120,130]}`, `{}`, "/X1/inputs/bp/1", field.ErrConflict},
		{`{"bp":[120]}`, `{}`, "/X1/inputs/bp", field.ErrSyntax},
		{`{"hr_rest":0}`, `{}`, "/X1/inputs/hr_rest", field.ErrOutOfRange},
		{`{"hr_rest":300}`, `{}`, "/X1/inputs/hr_rest", field.ErrOutOfRange},
		{`{"desired_intensity":"none"}`, `{}`, "/X1/inputs/desired_intensity", field.ErrOutOfRange},
		{`{"activity":{"days_per_week":9}}`, `{}`, "/X1/inputs/activity/days_per_week", field.ErrOutOfRange},
		{`{"planned_pct_1rm":101}`, `{}`, "/X1/inputs/planned_pct_1rm", field.ErrOutOfRange},
		{`{"capacity_mets":-1}`, `{}`, "/X1/inputs/capacity_mets", field.ErrOutOfRange},
		{`{"mean_pap_mmHg":0}`, `{}`, "/X1/inputs/mean_pap_mmHg", field.ErrOutOfRange},
		{`{"glucose_mg_dl":4.6}`, `{}`, "/X1/inputs/glucose_mg_dl", field.ErrOutOfRange},
		{`{"ketones":"some"}`, `{}`, "/X1/inputs/ketones", field.ErrUnknown},
		{`{"orthostatic_drop":{"sys":20}}`, `{}`, "/X1/inputs/orthostatic_drop/from", field.ErrMissing},
		{`{"orthostatic_drop":{"from":"lying","sys":2000}}`, `{}`, "/X1/inputs/orthostatic_drop/sys", field.ErrOutOfRange},
		{`{"pain":{"during":11}}`, `{}`, "/X1/inputs/pain/during", field.ErrOutOfRange},
		{`{"clearance_months_ago":-1}`, `{}`, "/X1/inputs/clearance_months_ago", field.ErrOutOfRange},
		{`{"weeks_post_op":-1}`, `{}`, "/X1/inputs/weeks_post_op", field.ErrOutOfRange},
		{`{`, `{}`, "/X1/inputs", field.ErrSyntax},
		{`{}`, `{"acsm_branch":"N4"}`, "/X1/expected/acsm_branch", field.ErrUnknown},
		{`{}`, `{"verdict":"fine"}`, "/X1/expected/verdict", field.ErrUnknown},
	}
	for _, tt := range tests {
		table, err := cases.Read(one(tt.inputs, tt.expected))
		var all field.Errors
		if !errors.As(err, &all) || all[0].Path != tt.path || !errors.Is(all[0], tt.category) {
			t.Errorf("%s %s: %v; want %v at %s", tt.inputs, tt.expected, err, tt.category, tt.path)
		}
		if len(table) != 0 {
			t.Errorf("%s %s: the row is kept", tt.inputs, tt.expected)
		}
	}
}

func TestEveryBadFieldAtOnce(t *testing.T) {
	_, err := cases.Read(one(`{"age":12,"bp":[400,90],"conditions":["x"],"pain":{"after":-1},"weeks_post_op":-1}`, `{"red_flag":"x"}`))
	var all field.Errors
	if !errors.As(err, &all) || len(all) != 6 {
		t.Errorf("%v; want six fields", err)
	}
}

const header = "id,inputs,expected,source\n"

func TestWhatIsNoTable(t *testing.T) {
	for name, text := range map[string]string{
		"nothing":         "",
		"comments only":   "# nothing\n",
		"header only":     header,
		"another header":  "id,in,out,source\nA,{},{},\n",
		"a column less":   header + "A,{},{}\n",
		"a broken quote":  header + "A,\"{},{},\n",
		"no id":           header + ",{},{},\n",
		"an id of spaces": header + "  ,{},{},\n",
	} {
		if table, err := cases.Read([]byte(text)); err == nil || table != nil {
			t.Errorf("%s: %d cases and %v, want an error", name, len(table), err)
		}
	}
}

// A bad row does not hide the others, and an id that stands twice is one bad row.
func TestGoodRowsAreKept(t *testing.T) {
	table, err := cases.Read([]byte("\ufeff" + header + "A,{},{},\nB,[],{},\nA,{},{},\nC,{},{},\n"))
	var all field.Errors
	if len(table) != 2 || table[0].ID != "A" || table[1].ID != "C" {
		t.Errorf("%d cases kept, want A and C", len(table))
	}
	if !errors.As(err, &all) || len(all) != 2 || all[0].Path != "/B/inputs" || all[1].Path != "/A/id" {
		t.Errorf("%v", err)
	}
}

func TestCompare(t *testing.T) {
	tests := []struct {
		inputs, expected string
		compared         int
		found            string
	}{
		{`{}`, `{}`, 0, ""},
		{`{}`, `{"acsm_branch":null}`, 0, ""},
		{`{}`, `{"acsm_branch":"N2"}`, 1, "X1: acsm_branch: got N1, want N2"},
		{`{"conditions":["glaucoma","beta_blocker"]}`, `{"cautions":["use_rpe_not_heart_rate","no_breath_holding"]}`, 1, ""},
		{`{"conditions":["glaucoma"]}`, `{"cautions":[]}`, 1, "X1: cautions: got [no_breath_holding], want []"},
		{`{"activity":{"days_per_week":4,"minutes":40,"intensity":"moderate","months":12},"known_disease":["renal"]}`, `{"acsm_clearance":"not_needed"}`, 1,
			"X1: acsm_clearance: got (no answer), want not_needed"},
	}
	for _, tt := range tests {
		table, err := cases.Read(one(tt.inputs, tt.expected))
		if err != nil {
			t.Fatal(err)
		}
		compared, found := table[0].Compare()
		var said string
		for _, d := range found {
			said += d.String()
		}
		if compared != tt.compared || said != tt.found {
			t.Errorf("%s %s: %d compared, %q; want %d, %q", tt.inputs, tt.expected, compared, said, tt.compared, tt.found)
		}
	}
}

// Weeks date the operation wherever it stands in the list, and no other condition.
func TestWeeksDateTheOperation(t *testing.T) {
	for weeks, want := range map[int]int{11: 1, 12: 0} {
		table, err := cases.Read(one(`{"conditions":["vertebral_fracture","rotator_cuff_repair"],"weeks_post_op":`+strconv.Itoa(weeks)+`}`, `{}`))
		if err != nil {
			t.Fatal(err)
		}
		p := table[0].Profile
		if len(p.Events) != 1 || p.Events[0].Code != "rotator_cuff_repair" {
			t.Errorf("events %+v", p.Events)
		}
		if got := len(screening.Cautions(p)) - 3; got != want {
			t.Errorf("week %d: %d cautions beside the fracture's, want %d", weeks, got, want)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add(cases.Published())
	f.Add(one(`{"age":60,"bp":[120,80]}`, `{"acsm_branch":"N1"}`))
	f.Add(one(`{"weeks_post_op":3,"conditions":["hernia"],"glucose_mg_dl":1e9}`, `{"cautions":["x"]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		table, err := cases.Read(data)
		if err == nil && len(table) == 0 {
			t.Error("neither a case nor an error")
		}
		for _, c := range table {
			if compared, found := c.Compare(); len(found) > compared || compared > 8 {
				t.Errorf("%s: %d of %d", c.ID, len(found), compared)
			}
		}
	})
}

package guideline_test

import (
	"encoding/json"
	"os"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"github.com/google/go-cmp/cmp"
)

// published reads testdata/published/guidelines.json: each row as it stands.
func published(t testing.TB) []map[string]any {
	t.Helper()
	data, err := os.ReadFile("../../testdata/published/guidelines.json")
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]any
	if err := json.Unmarshal(data, &rows); err != nil {
		t.Fatal(err)
	}
	if len(rows) != 31 {
		t.Fatalf("%d published rows, want 31", len(rows))
	}
	return rows
}

// A column ties a published column to the JSON field that carries it.
type column struct {
	field   string
	percent bool // printed in percent, carried as a share
}

// columns are the published columns that hold what a row states.
var columns = map[string]column{
	"population": {field: "population"}, "age_min": {field: "age_min"},
	"frequency_per_week": {field: "days"}, "sets": {field: "sets"}, "reps": {field: "reps"},
	"rm": {field: "rm"}, "rm_emphasis": {field: "rm_emphasis"},
	"intensity_pct_1rm":       {"load", true},
	"intensity_pct_1rm_upper": {"load_upper", true},
	"intensity_pct_1rm_lower": {"load_lower", true},
	"intensity_start_pct_1rm": {"load_start", true},
	"load_increment_pct":      {"load_step", true},
	"load_increment_rule":     {field: "load_rule"},
	"rpe":                     {field: "effort"},
	"rest_s":                  {field: "rest"}, "rest_s_assistance": {field: "rest_assisting"}, "rest_between_reps_s": {field: "rest_in_set"},
	"rep_duration_s": {field: "rep_seconds"}, "concentric_s": {field: "lift_seconds"}, "eccentric_s": {field: "lower_seconds"},
	"min_hours_between_sessions_same_muscles": {field: "hours_between"},
	"balance_days_per_week":                   {field: "balance_days"},
	"exercises":                               {field: "exercises"},
	"exercises_per_muscle_group":              {field: "per_muscle"},
	"session_min":                             {field: "session_minutes"},
	"impacts_per_session":                     {field: "impacts"},
	"period_weeks":                            {field: "weeks"},
	"effect":                                  {field: "effects"},
}

// whole are the columns about the row itself; TestRowsPublished checks each.
var whole = []string{"id", "body", "year", "goal", "training_status", "source", "doi", "via", "known", "known_fields", "notes"}

// own are the JSON fields that no published column carries or that
// TestRowsPublished checks by hand.
var own = []string{"id", "body", "year", "goal", "training", "source", "via", "basis", "bases", "notes", "clinical", "superseded_by"}

var basisOf = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory}

// carried brings a published value into the form of our JSON.
func (c column) carried(v any) any {
	switch v := v.(type) {
	case float64:
		if c.percent {
			return v / 100
		}
	case map[string]any:
		switch c.field {
		case "effort":
			return carriedEffort(v)
		case "effects":
			list := []any{}
			for name, smd := range v {
				list = append(list, map[string]any{"of": name, "smd": smd})
			}
			return list
		}
		ends := map[string]any{}
		for name, end := range v {
			ends[name] = c.carried(end)
		}
		return ends
	}
	return v
}

func carriedEffort(v map[string]any) any {
	ends := map[string]any{}
	for _, end := range []string{"min", "max"} {
		if n, ok := v[end]; ok {
			ends[end] = n
		}
	}
	effort := map[string]any{"ends": v["scale"], "range": ends}
	if v["scale"] == "Borg 6-20" {
		effort["scale"] = "borg"
	}
	return effort
}

// TestRowsPublished holds every field of every row against the published one,
// the absent ones too.
func TestRowsPublished(t *testing.T) {
	var ids []guideline.ID
	for _, row := range published(t) {
		id := guideline.ID(row["id"].(string))
		ids = append(ids, id)
		r, err := guideline.Get(id)
		if err != nil {
			t.Error(err)
			continue
		}
		checkStated(t, r, row)
		checkWhole(t, r, row)
		checkBases(t, r, row)
	}
	for r := range guideline.All() {
		if !slices.Contains(ids, r.ID) {
			t.Errorf("%s is not among the published rows", r.ID)
		}
	}
}

func checkStated(t *testing.T, r guideline.Recommendation, row map[string]any) {
	t.Helper()
	text, err := json.Marshal(r)
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]any{}
	if err := json.Unmarshal(text, &got); err != nil {
		t.Fatal(err)
	}
	want := map[string]any{}
	for name, v := range row {
		if c, known := columns[name]; known {
			want[c.field] = c.carried(v)
		} else if !slices.Contains(whole, name) {
			t.Errorf("%s: column %s is not checked", r.ID, name)
		}
	}
	if _, rule := want["load_rule"]; rule && got["load_rule"] != nil {
		got["load_rule"] = want["load_rule"] // in our own words
	}
	for _, name := range own {
		delete(got, name)
	}
	byName := func(list any) {
		if effects, ok := list.([]any); ok {
			slices.SortFunc(effects, func(a, b any) int {
				return strings.Compare(a.(map[string]any)["of"].(string), b.(map[string]any)["of"].(string))
			})
		}
	}
	byName(got["effects"])
	byName(want["effects"])
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("%s (-published +here): %s", r.ID, diff)
	}
}

func checkWhole(t *testing.T, r guideline.Recommendation, row map[string]any) {
	t.Helper()
	var training []body.Training
	if s := row["training_status"].(string); s != "any" {
		for name := range strings.SplitSeq(s, "|") {
			var status body.Training
			if err := status.UnmarshalText([]byte(name)); err != nil {
				t.Error(err)
			}
			training = append(training, status)
		}
	}
	via, _ := row["via"].(string)
	if r.Body != row["body"] || float64(r.Year) != row["year"] || r.Goal.String() != row["goal"] ||
		!slices.Equal(r.Training, training) || r.Via != via || r.Basis != basisOf[row["known"].(string)] {
		t.Errorf("%s: %s %d %s %v %s via %q, want %v", r.ID, r.Body, r.Year, r.Goal, r.Training, r.Basis, r.Via, row)
	}
	source, known := evidence.LookUp(r.Source)
	if doi, printed := row["doi"]; !known || printed && source.DOI != doi || !printed && source.Citation != row["source"] {
		t.Errorf("%s: source %v, want %v, doi %v", r.ID, source, row["source"], row["doi"])
	}
	if _, noted := row["notes"]; noted != (r.Notes != "") {
		t.Errorf("%s: notes %q, published with notes: %v", r.ID, r.Notes, noted)
	}
}

// checkBases holds the basis of each field, and of its fact, against known and
// known_fields.
func checkBases(t *testing.T, r guideline.Recommendation, row map[string]any) {
	t.Helper()
	facts := ledger(t)
	otherwise, _ := row["known_fields"].(map[string]any)
	for name, c := range columns {
		var f guideline.Field
		if err := f.UnmarshalText([]byte(c.field)); err != nil {
			t.Fatal(err)
		}
		want := evidence.BasisUnknown
		if _, stated := row[name]; stated {
			want = basisOf[row["known"].(string)]
			if known, ok := otherwise[name]; ok {
				want = basisOf[known.(string)]
			}
		}
		if got := r.BasisOf(f); got != want {
			t.Errorf("%s: %s is %q, want %q", r.ID, f, got, want)
		}
		id, stated := r.Fact(f)
		fact, listed := facts.Fact(id)
		if stated != (want != 0) || listed != stated || stated && (fact.Basis != want || fact.Source != r.Source) {
			t.Errorf("%s: fact of %s is %v (%v, %v), want basis %q", r.ID, f, fact, stated, listed, want)
		}
	}
	for name := range otherwise {
		if _, known := columns[name]; !known {
			t.Errorf("%s: known_fields names %s, which is not checked", r.ID, name)
		}
	}
}

func ledger(t testing.TB) *evidence.Ledger {
	t.Helper()
	l, err := evidence.NewLedger(guideline.Facts())
	if err != nil {
		t.Fatal(err)
	}
	return l
}

package guideline_test

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// published reads rows as they stand.
func published(t testing.TB, path string) []map[string]any {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]any
	if err := field.Decode(data, &rows, field.Strict); err != nil {
		t.Fatal(err)
	}
	return rows
}

// TestRowsAreTheFile holds the rows as they were checked: a change of one byte
// must be made in two places.
func TestRowsAreTheFile(t *testing.T) {
	data, err := os.ReadFile("rows.json")
	if err != nil {
		t.Fatal(err)
	}
	sum, err := os.ReadFile("testdata/rows.json.sha256")
	if got := fmt.Sprintf("%x  rows.json\n", sha256.Sum256(data)); err != nil || got != string(sum) {
		t.Errorf("the rows have %q, want %q (%v)", got, sum, err)
	}
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
	"aerobic_min_per_week":                    {field: "aerobic_minutes"},
	"weekly_sets_per_muscle":                  {field: "weekly_sets"},
	"rir":                                     {field: "reserve"},
	"rest_between_exercises_s":                {field: "rest_between"},
	"sessions_per_day":                        {field: "sessions_per_day"},
}

// whole are the columns about the row itself; checkWhole checks each, but what is
// our own.
var whole = []string{"id", "body", "year", "goal", "training_status", "source", "doi", "via", "known", "known_fields", "notes", "here"}

// own are the JSON fields that no published column carries or that
// other tests check by hand.
var own = []string{"id", "body", "year", "goal", "training", "source", "via", "basis", "bases", "notes", "conditions", "age_max", "superseded_by"}

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
			for name, value := range v {
				list = append(list, map[string]any{"of": name, "value": value, "unit": effectUnit(name)})
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

// effectUnit reads the unit off the published name of an effect. The two names
// without one are the ends of an interval in kilograms.
func effectUnit(name string) string {
	switch {
	case strings.HasSuffix(name, "_pct"):
		return "%"
	case strings.Contains(name, "kg"), strings.HasPrefix(name, "ci_"):
		return "kg"
	case strings.HasSuffix(name, "_es"):
		return "effect size"
	}
	return "SMD"
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

// TestRowsAgain holds every field of rows against the collection, from which
// testdata/again.json was taken a second time, the notes left out: it is never
// to be made from rows.json. The absent fields are held too.
func TestRowsAgain(t *testing.T) {
	again := published(t, "testdata/again.json")
	if len(again) < 30 {
		t.Errorf("%d rows, want 30 or more", len(again))
	}
	checkRows(t, again)
}

// TestRowsRead holds that every field of the file was read as it stands there.
func TestRowsRead(t *testing.T) {
	all := published(t, "rows.json")
	if n := len(slices.Collect(guideline.All())); len(all) != 77 || n != 77 {
		t.Errorf("%d rows in the file, %d here, want 77", len(all), n)
	}
	checkRows(t, all)
	for _, row := range all {
		r, _ := guideline.Get(guideline.ID(row["id"].(string)))
		if _, noted := row["notes"]; noted != (r.Notes != "") {
			t.Errorf("%s: notes %q, noted in the collection: %v", r.ID, r.Notes, noted)
		}
	}
}

func checkRows(t *testing.T, rows []map[string]any) {
	t.Helper()
	facts := ledger(t)
	for _, row := range rows {
		r, err := guideline.Get(guideline.ID(row["id"].(string)))
		if err != nil {
			t.Error(err)
			continue
		}
		checkStated(t, r, row)
		checkWhole(t, r, row)
		checkBases(t, facts, r, row)
	}
}

func checkStated(t *testing.T, r guideline.Recommendation, row map[string]any) {
	t.Helper()
	text, err := json.Marshal(r)
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]any{}
	if err := field.Decode(text, &got, field.Strict); err != nil {
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
	if via == "" && slices.Contains(slices.Collect(maps.Values(knownFields(row))), any("secondary")) {
		via = "a publication that was not noted"
	}
	if r.Body != row["body"] || float64(r.Year) != row["year"] || r.Goal.String() != row["goal"] ||
		!slices.Equal(r.Training, training) || r.Via != via || r.Basis != basisOf[row["known"].(string)] {
		t.Errorf("%s: %s %d %s %v %s via %q, want %v", r.ID, r.Body, r.Year, r.Goal, r.Training, r.Basis, r.Via, row)
	}
	source, known := evidence.LookUp(r.Source)
	if doi, printed := row["doi"]; !known || printed && source.DOI != doi || !printed && source.Citation != row["source"] {
		t.Errorf("%s: source %v, want %v, doi %v", r.ID, source, row["source"], row["doi"])
	}
}

// knownFields says which columns are known otherwise than the row.
func knownFields(row map[string]any) map[string]any {
	otherwise, _ := row["known_fields"].(map[string]any)
	return otherwise
}

// checkBases holds the basis of each field, and of its fact, against known and
// known_fields.
func checkBases(t *testing.T, facts *evidence.Ledger, r guideline.Recommendation, row map[string]any) {
	t.Helper()
	otherwise := knownFields(row)
	for name, c := range columns {
		var f guideline.Field
		if err := f.UnmarshalText([]byte(c.field)); err != nil {
			t.Fatal(err)
		}
		want := evidence.Basis(0)
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
		if _, known := columns[name]; !known && !noted(r, name) {
			t.Errorf("%s: known_fields names %s, which is not checked", r.ID, name)
		}
	}
}

// noted reports whether the note says how what no column holds is known.
func noted(r guideline.Recommendation, name string) bool {
	return name == "volume_effect" && strings.Contains(r.Notes, "more volume") && strings.Contains(r.Notes, "from memory")
}

// agesIn finds an upper age in the words for a population.
var agesIn = regexp.MustCompile(`^(?:adults|young trained men) (\d+)-(\d+)$`)

// conditionsIn are the words in a population that name a condition.
var conditionsIn = map[string][]guideline.Condition{
	"cardiac": {guideline.HeartDisease}, "frail": {guideline.Frailty}, "osteoporosis": {guideline.Osteoporosis},
	"vertebral fracture": {guideline.VertebralFracture}, "risk of falls": {guideline.FallsRisk}, "sarcopeni": {guideline.Sarcopenia},
	"knee osteoarthritis": {guideline.Osteoarthritis}, "inflammatory arthritis": {guideline.InflammatoryArthritis},
	"with diabetes": {guideline.Diabetes}, "risk of type 2 diabetes": {guideline.DiabetesRisk}, "cancer": {guideline.Cancer},
	"Achilles": {guideline.AchillesTendinopathy},
}

// TestPopulations holds conditions and upper ages against the population's words.
func TestPopulations(t *testing.T) {
	for r := range guideline.All() {
		var want []guideline.Condition
		for words, c := range conditionsIn {
			if strings.Contains(r.Population, words) {
				want = append(want, c...)
			}
		}
		slices.Sort(want)
		if !slices.Equal(r.Conditions, want) {
			t.Errorf("%s: for %v; %q names %v", r.ID, r.Conditions, r.Population, want)
		}
		most := ""
		if m := agesIn.FindStringSubmatch(r.Population); m != nil {
			most = m[2]
		}
		if got := fmt.Sprint(r.AgeMax); got != most && (most != "" || r.AgeMax != 0) {
			t.Errorf("%s: up to %s years; %q", r.ID, got, r.Population)
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

package progression_test

import (
	"encoding/json"
	"iter"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/simulate"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A check is a row of the published checks.
type check struct {
	*testing.T
	id, rule, inputs, expected, known string
}

func publishedRows(t *testing.T) []check {
	t.Helper()
	_, rows := fieldtest.Table(t, "../testdata/published/progression-checks.csv", ',')
	if len(rows) != 126 {
		t.Fatalf("%d rows", len(rows))
	}
	var all []check
	for _, row := range rows {
		all = append(all, check{T: t, id: row[0], rule: row[1], inputs: row[2], expected: row[3], known: row[7]})
	}
	return all
}

// decode reads a column of a row.
func decode[T any](c check, column string) (v T) {
	c.Helper()
	if err := json.Unmarshal([]byte(column), &v); err != nil {
		c.Fatalf("%s: %v", c.id, err)
	}
	return v
}

// same compares with half a unit of the last of the digits that were printed.
func (c check) same(got, want, tolerance float64) {
	c.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		c.Errorf("%s (%s): got %v, want %v", c.id, c.rule, got, want)
	}
}

var bases = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory, "computed": evidence.Computed}

// allFacts are those of this package and of its rooms.
func allFacts() iter.Seq[evidence.Fact] {
	all := slices.Collect(progression.Facts())
	for _, facts := range []iter.Seq[evidence.Fact]{rule.Facts(), programme.Facts(), simulate.Facts(), visit.Facts()} {
		all = slices.AppendSeq(all, facts)
	}
	return slices.Values(all)
}

// allWords are those of this package and of the rooms whose reasons it passes on.
func allWords() evidence.Words {
	return units.Must(evidence.NewLexicon(progression.Words().Copy(), rule.Words().Copy(), programme.Words().Copy(), visit.Words().Copy())).Copy()
}

// basis holds that a fact behind the answer is known as the row is, and none better.
func (c check) basis(reasons ...evidence.Reason) {
	c.Helper()
	var ids []evidence.FactID
	for _, r := range reasons {
		ids = append(ids, r.Facts...)
	}
	c.basisOf(ids...)
}

func (c check) basisOf(ids ...evidence.FactID) {
	c.Helper()
	found := false
	for f := range allFacts() {
		found = found || slices.Contains(ids, f.ID) && f.Basis == bases[c.known]
	}
	if !found {
		c.Errorf("%s (%s): none of the facts %v is known as %q", c.id, c.rule, ids, c.known)
	}
}

// elsewhere lists the rules whose rows are not checked here.
var elsewhere = map[string]string{
	"delorme_sets":                         "checked in progression/protocol",
	"oxford_sets_three":                    "checked in progression/protocol",
	"dapre_sets":                           "checked in progression/protocol",
	"dapre_set4_adjustment":                "checked in progression/protocol",
	"dapre_next_session_adjustment":        "checked in progression/protocol",
	"apre_sets":                            "checked in progression/protocol",
	"apre_adjustment":                      "checked in progression/protocol",
	"linear_regression":                    "NIST: checked in dose/onerm/fit",
	"regression_through_origin":            "NIST: checked in dose/onerm/fit",
	"quadratic_regression":                 "NIST: checked in dose/onerm/fit",
	"multiple_regression":                  "NIST: checked in dose/onerm/fit",
	"nonlinear_least_squares":              "NIST: checked in dose/onerm/fit",
	"sem_and_mdc95":                        "checked in progression/track",
	"mdc95_percent_from_cv":                "checked in progression/track",
	"mdc95_percent_log_scale":              "checked in progression/track",
	"mdc95_of_means":                       "checked in progression/track",
	"typical_error_from_sd_of_differences": "checked in progression/track",
	"smallest_worthwhile_change":           "checked in progression/track",
	"mann_kendall":                         "checked in progression/track",
	"sen_slope":                            "checked in progression/track",
	"ols_slope":                            "checked in progression/track",
	"local_level_mle":                      "checked in progression/track",
	"local_level_diffuse_loglik":           "checked in progression/track",
	"local_level_loglik_vague_prior":       "checked in progression/track",
	"local_level_steady_state":             "checked in progression/track",
	"local_level_diagnostics":              "checked in progression/track",
	"local_level_concentrated_loglik_path": "checked in progression/track",
	"local_level_filter_smoother":          "checked in progression/track",
	"local_level_missing_values":           "checked in progression/track",
	"local_level_forecast":                 "checked in progression/track",
	"local_linear_trend_filter":            "checked in progression/track",
}

// here are the checks of the other rows, by rule.
var here = map[string]func(check){
	"percent_jump":                    checkPercentJump,
	"reps_needed_before_jump":         checkBridge,
	"acsm_2_10_percent":               checkOverTarget,
	"two_for_two":                     checkTwoForTwo,
	"nsca_load_increment":             checkStep,
	"small_increment_progression":     checkTrialStep,
	"load_vs_rep_progression":         checkRepsOrLoad,
	"older_adult_omni_progression":    checkOMNI,
	"simplify_after_underperformance": checkSimplify,
	"pain_zone":                       checkZone,
	"pain_gate_for_load_increase":     checkPainGate,
	"set_to_set_load_change_kg":       checkSetToSetKg,
	"set_to_set_load_change_percent":  checkSetToSetPercent,
	"omni_res_to_percent_1rm":         checkOMNIMap,
	"omni_linear_slope":               checkSlope,
	"cr10_to_percent_1rm":             checkCR10,
	"cr10_drift":                      checkDrift,
	"percent_1rm_to_borg_6_20":        checkBorg,
	"cardiac_stage_rpe":               checkCardiac,
	"return_after_illness":            checkCovid,
	"deload_practice":                 checkDeload,
	"mean_strength_gain_older":        checkMeanGain,
	"individual_range_of_gain":        checkGainRange,
	"gain_rate":                       checkGainRate,
	"log_time_growth":                 checkLogGrowth,
	"log_time_marginal":               checkLogRate,
}

// Every row is checked here or listed with the reason why not.
func TestPublishedChecks(t *testing.T) {
	used := map[string]bool{}
	for _, row := range publishedRows(t) {
		used[row.rule] = true
		run, checked := here[row.rule]
		reason, listed := elsewhere[row.rule]
		switch {
		case checked == listed || listed && reason == "":
			t.Errorf("%s: the rule %s must stand in one of the two tables", row.id, row.rule)
		case checked:
			run(row)
		}
	}
	for rule := range here {
		if !used[rule] {
			t.Errorf("no row for the check of %s", rule)
		}
	}
	for rule := range elsewhere {
		if !used[rule] {
			t.Errorf("no row for %s, which is listed as checked elsewhere", rule)
		}
	}
}

func kg(v float64) units.Mass { return units.Must(units.Kilograms(v)) }

type jumpRow struct {
	From  float64 `json:"from_kg"`
	Step  float64 `json:"increment_kg"`
	To    float64 `json:"to_kg"`
	Lands int     `json:"reps_at_new_load"`
}

func (r jumpRow) jump(c check) progression.Jump {
	c.Helper()
	from, to := kg(r.From), kg(max(r.To, r.From+r.Step))
	jump, ok, err := progression.NextJump(pairs(c.T, from, to), from, 0)
	if err != nil || !ok {
		c.Fatalf("%s: %v, %v", c.id, ok, err)
	}
	return jump
}

func checkPercentJump(c check) {
	c.same(decode[jumpRow](c, c.inputs).jump(c).External.Percent(), decode[float64](c, c.expected), 0.00005)
}

func checkBridge(c check) {
	in := decode[jumpRow](c, c.inputs)
	got, reason, err := rule.RepsBeforeJump(in.Lands, in.jump(c).External)
	if err != nil {
		c.Fatal(err)
	}
	c.same(got, decode[float64](c, c.expected), 0.00005)
	c.basis(reason)
}

func checkOverTarget(c check) {
	in := decode[struct {
		Target int     `json:"target_reps"`
		Done   int     `json:"reps_done"`
		Load   float64 `json:"load_kg"`
	}](c, c.inputs)
	want := decode[struct {
		Action string
		Load   []float64 `json:"load_kg"`
	}](c, c.expected)
	a, err := rule.OverTarget(kg(in.Load), in.Target, in.Done)
	if err != nil || (a.Advice == rule.Raise) != (want.Action == "increase") || (a.Advice == rule.Keep) != (want.Action == "hold") {
		c.Errorf("%s: %+v, %v, want %s", c.id, a, err, want.Action)
	}
	if want.Load != nil && a.Load != units.Must(units.Between(kg(want.Load[0]), kg(want.Load[1]))) {
		c.Errorf("%s: load %v, want %v", c.id, a.Load, want.Load)
	}
	c.basis(a.Reasons...)
}

// raises reads the expectation of a rule that says whether to raise.
func (c check) raises(a rule.Ruling, err error) {
	c.Helper()
	want := decode[struct{ Increase bool }](c, c.expected).Increase
	if err != nil || (a.Advice == rule.Raise) != want || (a.Advice == rule.Keep) == want {
		c.Errorf("%s (%s): %+v, %v, want %v", c.id, c.rule, a, err, want)
	}
	c.basis(a.Reasons...)
}

func checkTwoForTwo(c check) {
	in := decode[struct {
		Goal int   `json:"goal_reps"`
		Last []int `json:"last_set_reps"`
	}](c, c.inputs)
	c.raises(rule.TwoForTwo(in.Goal, in.Last))
}

func checkStep(c check) {
	in := decode[struct{ Person, Region string }](c, c.inputs)
	training := map[string]body.Training{"newcomer": body.Novice, "experienced": body.Advanced}[in.Person]
	pattern := map[string]exercise.Pattern{"upper": exercise.Row, "lower": exercise.Squat}[in.Region]
	want := decode[map[string][2]float64](c, c.expected)
	for unit, ends := range want {
		u := units.Must(units.ParseMassUnit(unit))
		s, err := rule.StepFor(training, pattern, u)
		if err != nil || s.OrMore != (training == body.Advanced) {
			c.Fatalf("%s: %+v, %v", c.id, s, err)
		}
		for i, end := range []units.Marked{s.Low, s.High} {
			if end != (units.Marked{Mass: units.Must(u.Mass().Scale(units.Fraction(ends[i]), units.Nearest)), Unit: u}) {
				c.Errorf("%s: %v to %v, want %v %s", c.id, s.Low, s.High, ends, unit)
			}
		}
		c.basis(s.Reasons...)
	}
}

func checkTrialStep(c check) {
	in := decode[struct {
		Reps         int `json:"reps_final_set"`
		Scheme, Lift string
	}](c, c.inputs)
	by := rule.NameSmallSteps
	if in.Scheme == "traditional" && in.Lift == "bench press" {
		by = rule.NameBenchSteps
	}
	a, err := rule.TrialStep(by, kg(10), in.Reps)
	if err != nil || a.Load != units.Exactly(kg(10)+kg(decode[float64](c, c.expected))) || a.Advice != rule.Raise {
		c.Errorf("%s: %+v, %v, want 10 kg and %s", c.id, a, err, c.expected)
	}
	c.basis(a.Reasons...)
}

// checkRepsOrLoad holds the numbers of the trial that the fact prints.
func checkRepsOrLoad(c check) {
	in := decode[struct {
		Pre  float64 `json:"pre_kg"`
		Post float64 `json:"post_kg"`
	}](c, c.inputs)
	c.same(100*(in.Post-in.Pre)/in.Pre, decode[float64](c, c.expected), 0.00005)
	found := false
	for f := range allFacts() {
		found = found || f.ID == "progression.reps-or-load" && strings.Contains(f.Value, "52.90 to 69.05")
	}
	if !found {
		c.Errorf("%s: the fact prints other numbers", c.id)
	}
}

func checkOMNI(c check) {
	in := decode[map[string]float64](c, c.inputs)
	c.raises(rule.OMNIBelow8(units.Must(units.OMNI(in["omni_0_10"]))))
}

func checkSimplify(c check) {
	in := decode[map[string]int](c, c.inputs)
	a, err := rule.Simplify(in["consecutive_sessions_below_dose"])
	if want := decode[map[string]bool](c, c.expected)["regress"]; err != nil || (a.Advice == rule.Ease) != want {
		c.Errorf("%s: %+v, %v, want regress %v", c.id, a, err, want)
	}
	c.basis(a.Reasons...)
}

func checkZone(c check) {
	after := decode[map[string]float64](c, c.inputs)["pain_0_10"]
	if got := screening.PainModel(screening.Pain{After: &after}).Zone.String(); got != c.expected {
		c.Errorf("%s: %s, want %s", c.id, got, c.expected)
	}
	c.basisOf("progression.pain-zones")
}

func checkPainGate(c check) {
	in := decode[struct {
		Pain   float64 `json:"pain_0_10"`
		Full   bool    `json:"full_range"`
		Target bool    `json:"target_reps_met"`
	}](c, c.inputs)
	not := map[bool]screening.Answer{true: screening.No, false: screening.Yes}
	c.raises(rule.PainGate(in.Pain, not[in.Full], not[in.Target]))
}

type ratingRow struct {
	Target   float64 `json:"target_rpe"`
	Reported float64 `json:"reported_rpe"`
	Load     float64 `json:"load_kg"`
}

func checkSetToSetKg(c check) {
	in := decode[ratingRow](c, c.inputs)
	a, err := rule.SetToSetKg(units.Must(units.RPE(in.Reported)))
	if err != nil || a.Target.Number() != in.Target || a.Change != kg(decode[float64](c, c.expected)) {
		c.Errorf("%s: %+v, %v, want %s", c.id, a, err, c.expected)
	}
	c.basis(a.Reasons...)
}

func checkSetToSetPercent(c check) {
	in := decode[ratingRow](c, c.inputs)
	a, err := rule.SetToSetPercent(kg(in.Load), units.Must(units.RPE(in.Target)), units.Must(units.RPE(in.Reported)))
	if err != nil || kg(in.Load)+a.Change != kg(decode[float64](c, c.expected)) {
		c.Errorf("%s: %+v, %v, want %s", c.id, a, err, c.expected)
	}
	c.basis(a.Reasons...)
}

package guideline_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// auditSets is the days and sets of a small week.
type auditSets struct {
	day   int // from Monday
	id    exercise.ID
	side  body.Side
	n     int // sets
	reps  int
	reser float64
}

func auditTally(t testing.TB, kind volume.TallyKind, sets ...auditSets) volume.Totals {
	t.Helper()
	c, err := volume.NewCounter(exercise.Standard(), volume.Options{Kind: kind, OneRM: map[volume.Lift]units.Mass{
		{Exercise: "goblet-squat", Side: body.Both, Hold: body.BothHandsOnOne}:      20 * units.Kilogram,
		{Exercise: "dumbbell-bench-press", Side: body.Both, Hold: body.OneEachHand}: 15 * units.Kilogram,
	}})
	if err != nil {
		t.Fatal(err)
	}
	monday := units.Must(units.ParseDay("2026-12-28"))
	tally := c.NewTally()
	for _, s := range sets {
		e, known := exercise.Standard().Get(s.id)
		if !known {
			t.Fatalf("no exercise %s", s.id)
		}
		one := setlog.Set{Day: monday + units.Day(s.day), Exercise: s.id, Side: s.side, Hold: e.Hold, Stated: body.Total, Reps: s.reps,
			Effort: units.Must(units.InReserve(s.reser))}
		if e.Hold.Implements() > 0 {
			one.Load = 12 * units.Kilogram
		}
		for range s.n {
			if err := tally.Add(one); err != nil {
				t.Fatal(err)
			}
		}
	}
	return tally.Totals(units.Must(volume.ISOWeekOf(monday)))
}

func found(r guideline.Report, i guideline.Field, of string) []guideline.AuditLine {
	var list []guideline.AuditLine
	for _, f := range r.Findings {
		if f.Item == i && (of == "*" || f.Of == of) {
			list = append(list, f)
		}
	}
	return list
}

func verdictsOf(list []guideline.AuditLine) string {
	var all []string
	for _, f := range list {
		all = append(all, f.Verdict.String())
	}
	return strings.Join(all, ", ")
}

func audited(t testing.TB, w guideline.AuditedWeek, id guideline.ID) guideline.Report {
	t.Helper()
	r, err := guideline.Get(id)
	if err != nil {
		t.Fatal(err)
	}
	report, err := guideline.Audit(w, r)
	if err != nil {
		t.Fatal(err)
	}
	return report
}

// twoDays is squats, presses and one-sided rows on Monday and Thursday.
func twoDays(t testing.TB) volume.Totals {
	t.Helper()
	var sets []auditSets
	for _, day := range []int{0, 3} {
		sets = append(sets, auditSets{day, "goblet-squat", body.Both, 2, 10, 3},
			auditSets{day, "dumbbell-bench-press", body.Both, 3, 13, 3},
			auditSets{day, "one-arm-dumbbell-row", body.Left, 2, 10, 3}, auditSets{day, "one-arm-dumbbell-row", body.Right, 2, 10, 3})
	}
	return auditTally(t, volume.Performed, sets...)
}

// TestAuditWeek: the numbers of a week against bounds that rows of this
// package state.
func TestAuditWeek(t *testing.T) {
	one := 1
	w := guideline.AuditedWeek{Totals: twoDays(t), Minutes: []float64{30, 35}, BalanceDays: &one}
	tests := []struct {
		row  guideline.ID
		item guideline.Field
		of   string
		want string
	}{
		{"who2020-older", guideline.FieldDays, "", "met"},
		{"who2020-older", guideline.FieldBalanceDays, "", "short"}, // 1 of 3
		{"who2020-older", guideline.FieldSets, "", "not stated"},
		{"who2020-older", guideline.FieldAerobic, "", "not recorded"},
		{"ukcmo2019-older", guideline.FieldAerobic, "", "not stated"},
		{"ukcmo2019-older", guideline.FieldBalanceDays, "", "short"},
		{"acsm2009-strength-novice", guideline.FieldSets, "goblet-squat", "met"},
		{"acsm2009-strength-novice", guideline.FieldReps, "goblet-squat", "met"},
		{"acsm2009-strength-novice", guideline.FieldReps, "dumbbell-bench-press", "over"},
		{"acsm2009-strength-novice", guideline.FieldLoad, "goblet-squat", "met"},           // 12 of 20 kg
		{"acsm2009-strength-novice", guideline.FieldLoad, "dumbbell-bench-press", "short"}, // 6 of 15 kg
		{"acsm2009-strength-novice", guideline.FieldLoad, "one-arm-dumbbell-row", "not recorded"},
		{"aha2007-initial-older-or-cardiac", guideline.FieldLoad, "goblet-squat", "met"},         // 50 to 60 % for the legs
		{"aha2007-initial-older-or-cardiac", guideline.FieldLoad, "dumbbell-bench-press", "met"}, // 30 to 40 % for the arms
		{"acsm2009-strength-novice", guideline.FieldRest, "", "not recorded"},
		{"acsm2009-strength-novice", guideline.FieldRM, "", "not recorded"},
		{"acsm2009-strength-novice", guideline.FieldBalanceDays, "", "not stated"},
		{"acsm2011-strength-novice-intermediate", guideline.FieldHoursBetween, "*", "met"},
		{"acsmaha2007-older-strengthening", guideline.FieldExercises, "", "short"}, // 3 of 8
		{"acsmaha2007-older-strengthening", guideline.FieldEffort, "goblet-squat", "not comparable"},
		{"brookewavell2022-osteoporosis", guideline.FieldImpacts, "", "not recorded"},
		{"giangregorio2014-osteoporosis", guideline.FieldPerMuscle, "quadriceps", "met"},
		{"acsm2026-hypertrophy", guideline.FieldWeeklySets, "quadriceps", "not comparable"},
	}
	for _, tt := range tests {
		list := found(audited(t, w, tt.row), tt.item, tt.of)
		if got := verdictsOf(list); got != tt.want {
			t.Errorf("%s, %v of %q: %q, want %q\n%+v", tt.row, tt.item, tt.of, got, tt.want, list)
		}
	}
}

// TestAuditConventions: a bound whose convention is not said is compared only
// in the caller's, and is marked.
func TestAuditConventions(t *testing.T) {
	var sets []auditSets
	for _, day := range []int{0, 2, 4} {
		sets = append(sets, auditSets{day, "dumbbell-bench-press", body.Both, 4, 8, 2})
	}
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, sets...)}
	silent := found(audited(t, w, "bazvalle2022-hypertrophy-trained"), guideline.FieldWeeklySets, "triceps_brachii")
	if len(silent) != 1 || silent[0].Verdict != guideline.NotComparable || !silent[0].Found.IsZero() || silent[0].Assumed {
		t.Errorf("%+v", silent)
	}
	var shown []string
	for _, s := range silent[0].Sets {
		shown = append(shown, s.String())
	}
	if diff := cmp.Diff([]string{"0 direct", "6 fractional", "12 total"}, shown); diff != "" {
		t.Error(diff)
	}
	for c, want := range map[volume.Convention]string{volume.DirectSets: "short", volume.FractionalSets: "short", volume.TotalSets: "met"} {
		w.Assume = c
		list := found(audited(t, w, "bazvalle2022-hypertrophy-trained"), guideline.FieldWeeklySets, "triceps_brachii")
		if verdictsOf(list) != want || list[0].Convention != c || !list[0].Assumed || list[0].Bound != units.Must(units.Between(12.0, 20.0)) {
			t.Errorf("%v: %+v, want %s", c, list, want)
		}
	}
	w.Totals = auditTally(t, volume.Performed, slices.Concat(sets, sets)...)
	w.Assume = volume.TotalSets
	if got := verdictsOf(found(audited(t, w, "bazvalle2022-hypertrophy-trained"), guideline.FieldWeeklySets, "triceps_brachii")); got != "over" {
		t.Errorf("24 sets: %s", got)
	}
}

// TestAuditBalance: one of two opposed movements without the other, and uneven
// sides.
func TestAuditBalance(t *testing.T) {
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Prescribed,
		auditSets{0, "goblet-squat", body.Both, 2, 10, 3},
		auditSets{0, "one-arm-dumbbell-row", body.Left, 3, 10, 3}, auditSets{0, "one-arm-dumbbell-row", body.Right, 1, 10, 3},
		auditSets{2, "goblet-squat", body.Both, 4, 10, 3}, auditSets{3, "goblet-squat", body.Both, 4, 10, 3})}
	r := audited(t, w, "acsm2011-strength-novice-intermediate")
	if r.Kind != volume.Prescribed || r.Week.String() != "2026-W53" {
		t.Errorf("%v of %v", r.Kind, r.Week)
	}
	for _, tt := range []struct {
		item     guideline.Field
		of, want string
	}{
		{guideline.FieldPushPull, "push", "short"}, {guideline.FieldPushPull, "pull", "not stated"},
		{guideline.FieldSquatHinge, "squat", "not stated"}, {guideline.FieldSquatHinge, "hinge", "short"},
		{guideline.FieldSides, "right, one-arm-dumbbell-row", "short"}, {guideline.FieldSides, "", ""},
		{guideline.FieldHoursBetween, "*", "short"}, // Wednesday and Thursday
		{guideline.FieldSets, "goblet-squat", "met"}, {guideline.FieldSets, "one-arm-dumbbell-row", "short"},
	} {
		if got := verdictsOf(found(r, tt.item, tt.of)); got != tt.want {
			t.Errorf("%v of %q: %q, want %q", tt.item, tt.of, got, tt.want)
		}
	}
	hours := found(r, guideline.FieldHoursBetween, "*")[0]
	if hours.Found != units.Exactly(24.0) || hours.Bound != units.AtLeast(48.0) || hours.Basis == 0 {
		t.Errorf("%+v", hours)
	}
	if !slices.Contains(r.Untrained, body.PectoralisMajor) || slices.Contains(r.Untrained, body.Quadriceps) {
		t.Errorf("untrained: %v", r.Untrained)
	}
	even := audited(t, guideline.AuditedWeek{Totals: twoDays(t)}, "acsm2026-health")
	if got := verdictsOf(found(even, guideline.FieldSides, "*")); got != "met" {
		t.Errorf("even sides: %s", got)
	}
}

// TestAuditTempo: six seconds a repetition, from those repetitions whose
// length is known.
func TestAuditTempo(t *testing.T) {
	totals := twoDays(t)
	for i := range totals.Exercises {
		totals.Exercises[i].TimedReps, totals.Exercises[i].Tension = 10, 60
		if i == 0 {
			totals.Exercises[i].Tension = 59
		}
	}
	list := found(audited(t, guideline.AuditedWeek{Totals: totals}, "borde2015-strength"), guideline.FieldRepSeconds, "*")
	if got := verdictsOf(list); got != "short, met, met" || list[0].Found != units.Exactly(5.9) {
		t.Errorf("%s: %+v", got, list)
	}
}

// TestAuditBoth: a range that varies beyond both ends is short and over.
func TestAuditBoth(t *testing.T) {
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed,
		auditSets{0, "goblet-squat", body.Both, 1, 5, 3}, auditSets{3, "goblet-squat", body.Both, 5, 20, 3})}
	r := audited(t, w, "acsm2011-strength-novice-intermediate")
	for _, i := range []guideline.Field{guideline.FieldSets, guideline.FieldReps} {
		list := found(r, i, "goblet-squat")
		if verdictsOf(list) != "short, over" {
			t.Errorf("%v: %+v", i, list)
		}
	}
}

func TestAuditRefuses(t *testing.T) {
	eight, minus, many := 8, -1, 10081
	bad := guideline.AuditedWeek{Minutes: []float64{1440, math.NaN(), -1, 1441}, Rest: units.AtMost(60.0), BalanceDays: &eight, AerobicMinutes: &many, Impacts: &minus, Assume: 9, Proposed: []guideline.Field{guideline.FieldImpacts, guideline.FieldSets}}
	_, err := guideline.Audit(bad, guideline.Recommendation{})
	var all field.Errors
	if !errors.As(err, &all) {
		t.Fatal(err)
	}
	var got []string
	for _, f := range all {
		got = append(got, f.Path)
	}
	want := []string{"/totals/week", "/totals/kind", "/minutes/1", "/minutes/2", "/minutes/3", "/rest", "/balance_days", "/aerobic_minutes", "/impacts", "/proposed/1", "/assume"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	seven, most := 7, 10080
	good := guideline.AuditedWeek{Totals: twoDays(t), Minutes: []float64{0, 1440}, BalanceDays: &seven, AerobicMinutes: &most, Assume: volume.DirectSets}
	if err := good.Validate(); err != nil {
		t.Error(err)
	}
	for rest, fine := range map[units.Range[float64]]bool{
		units.Must(units.Between(0.0, 3600.0)): true, units.AtLeast(3600.0): true,
		units.AtLeast(-1.0): false, units.AtLeast(3601.0): false, units.Must(units.Between(60.0, 3601.0)): false,
		units.AtLeast(math.Inf(1)): false, units.AtLeast(math.Inf(-1)): false,
	} {
		good.Rest = rest
		if err := good.Validate(); (err == nil) != fine {
			t.Errorf("rest %v: %v", rest, err)
		}
	}
}

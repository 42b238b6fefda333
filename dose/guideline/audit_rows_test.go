package guideline_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// auditOrder is the order of the findings: of the week, of exercises, of effort, of
// time, and of what lifting alone does not give.
var auditOrder = []guideline.Field{guideline.FieldDays, guideline.FieldSessionsPerDay, guideline.FieldExercises, guideline.FieldSets,
	guideline.FieldWeeklySets, guideline.FieldPerMuscle, guideline.FieldReps, guideline.FieldLoad, guideline.FieldRM, guideline.FieldReserve,
	guideline.FieldEffort, guideline.FieldRepSeconds, guideline.FieldLiftSeconds, guideline.FieldLowerSeconds, guideline.FieldRest,
	guideline.FieldRestBetween, guideline.FieldRestInSet, guideline.FieldHoursBetween, guideline.FieldMinutes, guideline.FieldBalanceDays,
	guideline.FieldAerobic, guideline.FieldImpacts, guideline.FieldPushPull, guideline.FieldSquatHinge, guideline.FieldSides}

// TestAuditEveryRow: each row gives each item at least once; what is stated has
// a bound, a basis and a fact, and what is not has none of them; findings come
// in order; the report comes back from JSON.
func TestAuditEveryRow(t *testing.T) {
	facts := map[evidence.FactID]evidence.Fact{}
	for f := range guideline.Facts() {
		facts[f.ID] = f
	}
	zero := 0
	weeks := []guideline.AuditedWeek{{Totals: twoDays(t), Minutes: []float64{20}, BalanceDays: &zero, Impacts: &zero, AerobicMinutes: &zero, Assume: volume.TotalSets},
		{Totals: twoDays(t)}, {Totals: auditTally(t, volume.Prescribed)}}
	for r := range guideline.All() {
		for _, w := range weeks {
			report, err := guideline.Audit(w, r)
			if err != nil {
				t.Fatal(err)
			}
			seen := map[guideline.Field]bool{}
			for _, f := range report.Findings {
				seen[f.Item] = true
				checkFinding(t, r, f, facts)
			}
			for _, i := range auditOrder[:len(auditOrder)-1] { // the last only where there is an exercise
				if !seen[i] {
					t.Errorf("%s says nothing of %v", r.ID, i)
				}
			}
			place := func(l guideline.AuditLine) int { return slices.Index(auditOrder, l.Item) }
			if !slices.IsSortedFunc(report.Findings, func(a, b guideline.AuditLine) int { return place(a) - place(b) }) || place(report.Findings[0]) != 0 {
				t.Errorf("%s: findings out of order", r.ID)
			}
			text, err := json.Marshal(report)
			if err != nil {
				t.Fatal(err)
			}
			var back guideline.Report
			if err := field.Decode(text, &back, field.Strict); err != nil {
				t.Fatalf("%s: %v", r.ID, err)
			}
			if diff := cmp.Diff(report, back, cmp.AllowUnexported(units.Range[float64]{}, volume.Sets{})); diff != "" {
				t.Errorf("%s: %s", r.ID, diff)
			}
		}
	}
}

func checkFinding(t *testing.T, r guideline.Recommendation, f guideline.AuditLine, facts map[evidence.FactID]evidence.Fact) {
	t.Helper()
	own := f.Item >= guideline.FieldPushPull || f.Fact == "volume.lifting-alone"
	fact, known := facts[f.Fact]
	stated := f.Verdict != guideline.NotStated
	switch {
	case f.Population != r.Population || f.Unit == "":
		t.Errorf("%s, %v: %+v", r.ID, f.Item, f)
	case stated && (f.Basis == 0 || f.Fact == ""):
		t.Errorf("%s, %v: stated without basis or fact: %+v", r.ID, f.Item, f)
	case !own && stated != known:
		t.Errorf("%s, %v is %v, but its fact %q is known: %v", r.ID, f.Item, f.Verdict, f.Fact, known)
	case !own && stated && fact.Basis != f.Basis:
		t.Errorf("%s, %v: basis %v, but that of %s is %v", r.ID, f.Item, f.Basis, f.Fact, fact.Basis)
	case !stated && (!f.Bound.IsZero() || f.Basis != 0):
		t.Errorf("%s, %v: not stated with a bound: %+v", r.ID, f.Item, f)
	case (f.Verdict == guideline.Met || f.Verdict == guideline.Short || f.Verdict == guideline.Over) && f.Found.IsZero() && f.Item != guideline.FieldHoursBetween:
		t.Errorf("%s, %v: %v without a number", r.ID, f.Item, f.Verdict)
	}
}

// TestAuditVerdicts: a finding is short, over or met by what its own numbers say.
func TestAuditVerdicts(t *testing.T) {
	ids := []exercise.ID{"goblet-squat", "dumbbell-bench-press", "plank", "one-arm-dumbbell-row", "sit-to-stand"}
	rows := slices.Collect(guideline.All())
	rapid.Check(t, func(rt *rapid.T) {
		var sets []auditSets
		for range rapid.IntRange(0, 8).Draw(rt, "sets") {
			sets = append(sets, auditSets{rapid.IntRange(0, 6).Draw(rt, "day"), rapid.SampledFrom(ids).Draw(rt, "id"),
				rapid.SampledFrom([]body.Side{body.Left, body.Right, body.Both}).Draw(rt, "side"),
				rapid.IntRange(1, 5).Draw(rt, "n"), rapid.IntRange(1, 20).Draw(rt, "reps"), 2})
		}
		w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, sets...), Assume: rapid.SampledFrom([]volume.Convention{0, volume.DirectSets, volume.TotalSets}).Draw(rt, "assume")}
		r, err := guideline.Audit(w, rapid.SampledFrom(rows).Draw(rt, "row"))
		if err != nil {
			rt.Fatal(err)
		}
		for _, f := range r.Findings {
			low, hasLow := f.Found.Min()
			high, _ := f.Found.Max()
			want := f.Bound.Contains(low) && f.Bound.Contains(high)
			if compared := f.Verdict == guideline.Met || f.Verdict == guideline.Short || f.Verdict == guideline.Over; compared && hasLow && want != (f.Verdict == guideline.Met) {
				rt.Fatalf("%v: %v against %v is %v", f.Item, f.Found, f.Bound, f.Verdict)
			}
			if f.Verdict == guideline.NotComparable && w.Assume != 0 && f.Item == guideline.FieldWeeklySets {
				rt.Fatalf("not comparable though assumed: %+v", f)
			}
		}
	})
}

func TestAuditVocabularies(t *testing.T) {
	for i := range uint8(40) {
		v, item := guideline.Verdict(i), guideline.Field(i)
		text, err := v.MarshalText()
		if err == nil && string(text) != v.String() {
			t.Errorf("%q and %v", text, v)
		}
		var back guideline.Verdict
		if valid := v <= guideline.Proposed; valid != (err == nil) || valid && (back.UnmarshalText(text) != nil || back != v) {
			t.Errorf("verdict %v: %q, %v", v, text, err)
		}
		text, err = item.MarshalText()
		if err == nil && string(text) != item.String() {
			t.Errorf("%q and %v", text, item)
		}
		var same guideline.Field
		if valid := item <= guideline.FieldSides; valid != (err == nil) || valid && (same.UnmarshalText(text) != nil || same != item) {
			t.Errorf("item %v: %q, %v", item, text, err)
		}
	}
	if err := field.Decode([]byte(`{"weeks":1}`), new(guideline.AuditedWeek), field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("unknown field: %v", err)
	}
	if err := field.Decode([]byte(`{"balance_days":2,"assume":"total","minutes":[30]}`), new(guideline.AuditedWeek), field.Strict); err != nil {
		t.Error(err)
	}
}

// Two days of lifting against what the World Health Organization asks of
// people over 65: the strength days are there, the balance days are not.
func ExampleAudit() {
	c, err := volume.NewCounter(exercise.Standard(), volume.Options{Kind: volume.Performed})
	if err != nil {
		fmt.Println(err)
		return
	}
	tally := c.NewTally()
	for _, text := range []string{"2026-12-28", "2026-12-31"} {
		day, _ := units.ParseDay(text)
		s := setlog.Set{Day: day, Exercise: "goblet-squat", Side: body.Both, Hold: body.BothHandsOnOne, Load: 8 * units.Kilogram, Reps: 10}
		if err := tally.Add(s); err != nil {
			fmt.Println(err)
		}
	}
	row, _ := guideline.Get("who2020-older")
	balance := 1
	for totals := range tally.All() {
		report, err := guideline.Audit(guideline.AuditedWeek{Totals: totals, BalanceDays: &balance}, row)
		if err != nil {
			fmt.Println(err)
			return
		}
		for _, f := range report.Findings {
			if f.Verdict == guideline.Met || f.Verdict == guideline.Short {
				fmt.Printf("%s%s: %v; found %v, wanted %v (%v)\n", f.Item, map[bool]string{true: ", " + f.Of}[f.Of != ""], f.Verdict, f.Found, f.Bound, f.Basis)
			}
		}
	}
	// Output:
	// days: met; found 2, wanted at least 2 (secondary)
	// balance_days: short; found 1, wanted at least 3 (secondary)
	// squat_and_hinge, hinge: short; found 0, wanted at least 1 (design)
	// left_and_right: met; found 0, wanted 0 (common practice)
}

func BenchmarkAudit(b *testing.B) {
	w := guideline.AuditedWeek{Totals: twoDays(b)}
	r, err := guideline.Get("acsm2009-strength-novice")
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := guideline.Audit(w, r); err != nil {
			b.Fatal(err)
		}
	}
}

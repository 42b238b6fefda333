package guideline_test

import (
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// TestAuditFound: every number that is found, beside its bound. A verdict alone
// would be as right of many other numbers.
func TestAuditFound(t *testing.T) {
	two, fifty, minutes := 2, 50, 90
	sets := []auditSets{
		{0, "goblet-squat", body.Both, 2, 10, 3}, {3, "goblet-squat", body.Both, 3, 12, 3},
		{0, "dumbbell-bench-press", body.Both, 3, 13, 3},
		{0, "one-arm-dumbbell-row", body.Left, 3, 10, 3}, {0, "one-arm-dumbbell-row", body.Right, 1, 10, 3},
	}
	w := guideline.AuditedWeek{
		Totals: auditTally(t, volume.Performed, sets...), Minutes: []float64{25, 40},
		Rest: units.Must(units.Between(60.0, 90.0)), BalanceDays: &two, Impacts: &fifty, AerobicMinutes: &minutes, Assume: volume.TotalSets,
	}
	exactly := units.Exactly[float64]
	from := func(low, high float64) units.Range[float64] { return units.Must(units.Between(low, high)) }
	for _, tt := range []struct {
		item        guideline.Field
		of          string
		found, want units.Range[float64]
		verdict     guideline.Verdict
		row         guideline.Recommendation
	}{
		{guideline.FieldDays, "", exactly(2), exactly(3), guideline.Short, guideline.Recommendation{Days: units.Exactly(3)}},
		{guideline.FieldMinutes, "", from(25, 40), from(20, 40), guideline.Met, guideline.Recommendation{Minutes: units.Must(units.Between(20, 40))}},
		{guideline.FieldRest, "", from(60, 90), units.AtLeast(60.0), guideline.Met, guideline.Recommendation{Rest: units.AtLeast(60)}},
		{guideline.FieldSets, "goblet-squat", from(2, 3), from(2, 3), guideline.Met, guideline.Recommendation{Sets: units.Must(units.Between(2, 3))}},
		{guideline.FieldSets, "one-arm-dumbbell-row", exactly(1), from(2, 3), guideline.Short, guideline.Recommendation{Sets: units.Must(units.Between(2, 3))}},
		{guideline.FieldReps, "goblet-squat", from(10, 12), from(8, 12), guideline.Met, guideline.Recommendation{Reps: units.Must(units.Between(8, 12))}},
		{guideline.FieldLoad, "goblet-squat", exactly(.6), from(.6, .7), guideline.Met, guideline.Recommendation{Load: units.Must(units.Between(units.Fraction(.6), .7))}},
		{guideline.FieldReserve, "goblet-squat", exactly(3), from(1, 3), guideline.Met, guideline.Recommendation{Reserve: units.Must(units.Between(units.RIR(1), 3))}},
		{guideline.FieldBalanceDays, "", exactly(2), exactly(3), guideline.Short, guideline.Recommendation{BalanceDays: units.Exactly(3)}},
		{guideline.FieldImpacts, "", exactly(50), exactly(50), guideline.Met, guideline.Recommendation{Impacts: units.Exactly(50)}},
		{guideline.FieldAerobic, "", exactly(90), units.Range[float64]{}, guideline.NotStated, guideline.Recommendation{}},
		{guideline.FieldAerobic, "", exactly(90), from(60, 90), guideline.Met, guideline.Recommendation{Aerobic: units.Must(units.Between(60, 90))}},
		{guideline.FieldSides, "right, one-arm-dumbbell-row", exactly(1), exactly(3), guideline.Short, guideline.Recommendation{}},
		{guideline.FieldPushPull, "push", exactly(3), units.Range[float64]{}, guideline.NotStated, guideline.Recommendation{}},
		{guideline.FieldWeeklySets, "quadriceps", exactly(5), units.AtLeast(5.0), guideline.Met, guideline.Recommendation{WeeklySets: units.AtLeast(5)}},
		{guideline.FieldPerMuscle, "quadriceps", exactly(1), exactly(1), guideline.Met, guideline.Recommendation{PerMuscle: units.Exactly(1)}},
	} {
		tt.row.ID, tt.row.Population = "made-up", "nobody"
		report, err := guideline.Audit(w, tt.row)
		if err != nil {
			t.Fatal(err)
		}
		list := found(report, tt.item, tt.of)
		if len(list) != 1 || list[0].Found != tt.found || list[0].Bound != tt.want || list[0].Verdict != tt.verdict {
			t.Errorf("%v of %q: %+v, want %v against %v, %v", tt.item, tt.of, list, tt.found, tt.want, tt.verdict)
		}
	}
}

// TestAuditPartsOfTheBody: the load of legs and of arms is held against the bound of
// its own part, and names the fact of that field (AHA 2007, for beginners who are
// older or have heart disease).
func TestAuditPartsOfTheBody(t *testing.T) {
	report := audited(t, guideline.AuditedWeek{Totals: twoDays(t)}, "aha2007-initial-older-or-cardiac")
	row, err := guideline.Get("aha2007-initial-older-or-cardiac")
	if err != nil {
		t.Fatal(err)
	}
	for of, want := range map[string]struct {
		field       guideline.Field
		least, most float64
	}{"goblet-squat": {guideline.FieldLoadLower, .5, .6}, "dumbbell-bench-press": {guideline.FieldLoadUpper, .3, .4}} {
		fact, _ := row.Fact(want.field)
		list := found(report, guideline.FieldLoad, of)
		if len(list) != 1 || list[0].Fact != fact || list[0].Bound != units.Must(units.Between(want.least, want.most)) {
			t.Errorf("%s: %+v, want the fact %s", of, list, fact)
		}
	}
}

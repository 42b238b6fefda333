package main

import (
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func demoRecord(t *testing.T) record.Record {
	t.Helper()
	r, err := command.Record("", demo.VillageHallBuild())
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func auditedWeek(t *testing.T, r record.Record) result {
	t.Helper()
	week, err := audited(r)
	if err != nil {
		t.Fatal(err)
	}
	return week
}

func TestAudited(t *testing.T) {
	r := demoRecord(t)
	week := auditedWeek(t, r)
	if week.Visit.Week.Phase != dose.Build || week.Prescribed.Totals.Kind != volume.Prescribed || len(week.Columns) != shown {
		t.Errorf("phase %v, %v sets, %d columns", week.Visit.Week.Phase, week.Prescribed.Totals.Kind, len(week.Columns))
	}
	for _, column := range week.Columns {
		if column.Plan.Recommendation != column.Guideline || column.Alone.Recommendation != column.Guideline {
			t.Errorf("%s: reports on %s and %s", column.Guideline, column.Plan.Recommendation, column.Alone.Recommendation)
		}
	}
	r.Seen = nil
	if week := auditedWeek(t, r); week.Visit.Week.Phase != dose.Familiarise {
		t.Errorf("technique not seen, and the phase is %v", week.Visit.Week.Phase)
	}
}

// But for what the plan follows and leads to, columns are in force and read.
func TestColumnsAreInForce(t *testing.T) {
	for _, c := range auditedWeek(t, demoRecord(t)).Columns[2:] {
		row, err := guideline.Get(c.Guideline)
		if err != nil || len(row.SupersededBy) > 0 || row.Basis == evidence.FromMemory {
			t.Errorf("%s: %v, superseded by %v, %v", c.Guideline, err, row.SupersededBy, row.Basis)
		}
	}
}

func TestConditionsAreScreened(t *testing.T) {
	for code := range conditions {
		if _, ok := screening.LookUp(code); !ok {
			t.Errorf("screening has no %s", code)
		}
	}
}

func TestClassed(t *testing.T) {
	var c classCase
	if err := field.Decode(demo.Class(), &c, field.Strict); err != nil {
		t.Fatal(err)
	}
	r, err := classed(c)
	if err != nil {
		t.Fatal(err)
	}
	if len(r.Members) != 8 || len(r.Rota.Clients) != 8 || r.Rota.Waiting != 0 || r.Rota.Minutes+r.WarmUp > c.Minutes {
		t.Errorf("%d members, %d in the rota, %d waiting, %d of %d minutes", len(r.Members), len(r.Rota.Clients), r.Rota.Waiting, r.Rota.Minutes, r.Whole)
	}
	for _, b := range r.Buy {
		for _, n := range b.Nearer {
			if n.To <= n.From || n.Now > 0 && n.To >= n.Now || n.To != b.Purchase.Dumbbell.Mass.Mass || n.From == units.Kilogram && n.Exercise == "hip hinge with one dumbbell" {
				t.Errorf("%s: %+v", b.Purchase, n)
			}
		}
	}
	if len(r.Buy) == 0 {
		t.Error("nothing to buy first")
	}
	c.Minutes = 6
	if _, err := classed(c); err == nil || !strings.Contains(err.Error(), "/minutes") {
		t.Errorf("a class of 6 minutes: %v", err)
	}
	c.Minutes = 45
	for i := range c.Clients {
		c.Clients[i].Profile.Diseases = screening.Checklist{}
		c.Clients[i].Profile.Symptoms = screening.AskedFor("ischaemic_chest_neck_jaw_arm_pain")
	}
	if r, err := classed(c); err == nil && r.Rota != nil {
		t.Error("nobody may train, and there is a rota")
	}
}

package progression_test

import (
	"math"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// While the load is looked for: on from the heaviest weight that ended as it
// should, on looking while it is clearly easy, and back from one that was too much.
func TestNextFinds(t *testing.T) {
	c := rowCourse(t, 2, 3, 4, 5, 6)
	v := last(&c)
	v.Plan.Finding, v.Plan.Sets, v.Plan.Count = &dose.Finding{MaxSteps: 2}, 1, 10
	trial := func(four, five float64) progression.Decision {
		v.Sets = nil
		for _, s := range goodVisit().Sets[1:3] {
			for i, left := range []float64{8, four, five} {
				s.Load, s.Reps, s.Effort = units.Mass(3+i)*kilo, 10, units.Must(units.InReserve(left))
				v.Sets = append(v.Sets, s)
			}
		}
		v.Plan.Load = equipment.Load{Each: 3 * kilo}
		return nextOf(t, c)
	}
	for _, tt := range []struct {
		four, five float64
		load       units.Mass
		finding    bool
	}{{8, 7, 5 * kilo, true}, {8, 4, 5 * kilo, false}, {8, 2, 4 * kilo, false}, {4, 4, 5 * kilo, false}, {2, 2, 3 * kilo, false}} {
		d := trial(tt.four, tt.five)
		if d.Next.Load.Each != tt.load || (d.Next.Finding != nil) != tt.finding {
			t.Errorf("left %v with 4 kg, %v with 5 kg: %v, %+v, %v", tt.four, tt.five, d.Next.Load.Each, d.Next.Finding, d.Change)
		}
	}
	v.FormLost = screening.Yes
	if d := trial(8, 7); d.Next.Load.Each != 3*kilo {
		t.Errorf("with technique lost: %v", d.Next.Load.Each)
	}
}

// A person of 70 kg moves at least 56 kg of their own in a squat: from 4 to 6 kg is
// 50 % more in the hands and 3 % more to lift.
func TestNextCountsTheBody(t *testing.T) {
	ex, err := exercise.Standard().Lookup("goblet-squat")
	if err != nil {
		t.Fatal(err)
	}
	c := rowCourse(t, 4, 6)
	c.Request.Exercise = ex
	v := last(&c)
	v.Plan.Exercise, v.Plan.Hold, v.Plan.OneSided = ex.ID, ex.Hold, false
	v.Sets = v.Sets[:3]
	for i := range v.Sets {
		v.Sets[i].Exercise, v.Sets[i].Hold, v.Sets[i].Side = ex.ID, ex.Hold, body.Both
	}
	if d := nextOf(t, c); d.Change == progression.MoreLoad || d.Jump.Moved != 0 {
		t.Errorf("body mass not known: %v, %+v", d.Change, d.Jump)
	}
	c.BodyMass = 70 * kilo
	d := nextOf(t, c)
	if d.Change != progression.MoreLoad || d.Step.External != 0.5 || math.Abs(float64(d.Step.Moved)-2.0/60) > 1e-9 || !hasReason(d, "progression.large-step") {
		t.Errorf("%v, %+v", d.Change, d.Step)
	}
}

func TestNextByRule(t *testing.T) {
	omni := func(v float64) units.Effort { return units.Must(units.OMNI(v)) }
	for _, tt := range []struct {
		rule   progression.Rule
		reps   int
		effort units.Effort
		before int // repetitions of the visit before
		rises  bool
	}{
		{progression.RuleOverTarget, 13, units.Must(units.InReserve(3)), 0, true},
		{progression.RuleOverTarget, 12, units.Must(units.InReserve(3)), 0, false},
		{progression.RuleRepsThenLoad, 13, units.Must(units.InReserve(3)), 0, true},
		{progression.RuleRepsThenLoad, 12, units.Must(units.InReserve(3)), 0, false},
		{progression.RuleTwoForTwo, 14, units.Must(units.InReserve(3)), 14, true},
		{progression.RuleTwoForTwo, 14, units.Must(units.InReserve(3)), 13, false},
		{progression.RuleTopOfRange, 12, units.Must(units.InReserve(3)), 0, true},
		{progression.RuleTopOfRange, 11, units.Must(units.InReserve(3)), 0, false},
		{progression.RuleOMNIBelow8, 14, omni(7), 0, true},
		{progression.RuleOMNIBelow8, 12, omni(7), 0, false}, // no reserve is known, and 12 do not show it
		{progression.RuleOMNIBelow8, 12, omni(8), 0, false},
		{progression.RuleOMNIBelow8, 12, units.Must(units.InReserve(3)), 0, false},
	} {
		c := rowCourse(t, 4, 4.25)
		c.Policy.Rule = tt.rule
		v := last(&c)
		v.Plan.Span = units.Must(units.Between(8, 14))
		done(&c, 4*kilo, tt.reps, 3)
		for i := range v.Sets {
			v.Sets[i].Effort = tt.effort
		}
		if tt.before > 0 {
			earlier := *v
			earlier.Day -= 3
			earlier.Sets = slices.Clone(v.Sets)
			for i := range earlier.Sets {
				earlier.Sets[i].Reps = tt.before
			}
			c.Log = []progression.Visit{earlier, *v}
		}
		d := nextOf(t, c)
		if (d.Change == progression.MoreLoad) != tt.rises {
			t.Errorf("%v, %d, %v: %v, %+v", tt.rule, tt.reps, tt.effort, d.Change, d.Gates)
		}
	}
}

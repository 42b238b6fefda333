package progression_test

import (
	"errors"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Three sets of 12 are worked towards where the guideline's range ends sooner, by as
// many as the chance allows.
func TestNextTopOfRangeInPower(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	c.Policy.Rule = rule.NameTopOfRange
	c.Request.Phase = dose.Power
	last(&c).Plan.Span = units.Must(units.Between(6, 10))
	done(&c, 4*kilo, 10, 10)
	repeat(&c, 4)
	if d := nextOf(t, c); d.Change != progression.MoreReps || d.Next.Count != 11 {
		t.Errorf("%v, %d, %+v", d.Change, d.Next.Count, d.Reasons)
	}
}

// A plan that no dose can go on from is refused where it stands, and not with the
// path of a field that the caller never wrote.
func TestNextRefusesPlans(t *testing.T) {
	for path, spoil := range map[string]func(*dose.Prescription){
		"/log/0/plan/sets":           func(p *dose.Prescription) { p.Sets = 101 },
		"/log/0/plan/tempo/lowering": func(p *dose.Prescription) { p.Tempo.Lowering = 12 },
		"/log/0/plan/tempo/pausing":  func(p *dose.Prescription) { p.Tempo.Pausing = -1 },
		"/log/0/plan/load/each":      func(p *dose.Prescription) { p.Load = lighterThanNothing(t) },
	} {
		c := rowCourse(t, 2, 4, 6)
		spoil(&last(&c).Plan)
		_, err := progression.Next(c)
		var bad field.Errors
		if !errors.As(err, &bad) || bad[0].Path != path {
			t.Errorf("%s: %v", path, err)
		}
	}
}

package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
)

// What is like an exercise that hurt is made no harder than it was asked for, whoever the
// person and whatever the policy; and that is all that it costs (this module's design).
func TestNextAfterPainInAnother(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, ok := drawToday(t)
		if !ok {
			return false
		}
		c.Log = cloneLog(c.Log)
		was, errBefore := progression.Next(c)
		last(&c).HurtElsewhere = []string{"dumbbell shoulder press"}
		d, err := progression.Next(c)
		if err != nil || errBefore != nil {
			if (err == nil) != (errBefore == nil) {
				t.Fatalf("%v, without pain %v", err, errBefore)
			}
			return false
		}
		harder := was.Action == progression.Progress || was.Change == progression.HarderVariant
		searched := last(&c).Plan.Finding != nil || last(&c).Plan.Feel != nil // of which the heavier sets then do not count
		if !searched && (harder && d.Action > progression.EaseOff || !harder && d.Action != was.Action) {
			t.Fatalf("%s\nwithout pain %s", tell(d), tell(was))
		}
		if d.Change != progression.NoChange || d.Action == progression.Progress {
			t.Fatalf("harder: %s", tell(d))
		}
		if d.Next == nil || d.Instead != "" {
			return false
		}
		a, b := last(&c).Plan, *d.Next
		if b.Load.Each() > a.Load.Each() || b.Sets > a.Sets || b.Count > a.Count && b.Load.Each() == a.Load.Each() || b.Reserve.Least < a.Reserve.Least || b.Finding != nil && d.Action != progression.EaseOff || b.Feel != nil {
			t.Fatalf("more than %v × %d × %d, reserve %v: %s", a.Load.Each(), a.Sets, a.Count, a.Reserve, tell(d))
		}
		return was.Action == progression.Progress
	})
}

// After a trial the dose from before it, which had more repetitions, does not come back
// while another exercise hurt.
func TestNoResumeAfterPainInAnother(t *testing.T) {
	c := rowCourse(t, 4, 8)
	plan := last(&c).Plan
	plan.Load, plan.Sets, plan.Count, plan.Finding = held(4*kilo), 1, 12, nil
	trial := plan
	trial.Count, trial.Finding = 8, &dose.Search{MaxSteps: 1}
	c.Log = []progression.Visit{asAsked(plan, firstDay, 5), asAsked(trial, firstDay+3, 5)}
	c.Day = firstDay + 6
	was := nextOf(t, c)
	last(&c).HurtElsewhere = []string{"dumbbell shoulder press"}
	if is := nextOf(t, c); was.Next == nil || was.Next.Count <= 8 || is.Next == nil || is.Next.Load.Each() != 4*kilo || is.Next.Count > 8 {
		t.Errorf("%s\nwithout pain %s", tell(is), tell(was))
	}
}

// A policy that lets ordinary pain be does not let this be.
func TestPainPolicyAndPainInAnother(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	done(&c, 4*kilo, 12, 6)
	c.Policy.Pain = rule.NamePainGate
	p := *last(&c).Pain
	p.During = score(4)
	last(&c).Pain = &p
	if d := nextOf(t, c); d.Action != progression.Progress {
		t.Fatalf("without: %s", tell(d))
	}
	last(&c).HurtElsewhere = []string{"dumbbell shoulder press"}
	d := nextOf(t, c)
	if pain := d.Gates[visit.GatePain-1]; d.Action != progression.HoldDose || pain.Advice != rule.Keep || pain.Reasons[0].Code != "progression.hurt-in-another" {
		t.Errorf("%s\n%+v", tell(d), d.Gates)
	}
}

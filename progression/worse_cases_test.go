package progression_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// Where more is to be left than was, no set comes in place of a weight that this
// puts out of reach.
func TestNextBridgesNothingWithMoreReserve(t *testing.T) {
	for _, reserve := range []units.RIR{3, 4, 6} {
		c := rowCourse(t, 4, 5.25)
		c.Policy.KeepExercise, c.Policy.Without = true, []string{"feel"}
		c.Request.Guideline = "acsm2011-strength-novice-intermediate" // two to four sets
		v := last(&c)
		v.Plan.Span, v.Plan.Count = units.Must(units.Between(8, 20)), 20
		v.Plan.Tempo = dose.Tempo{Lowering: 4, Pausing: 2, Lifting: 2}
		done(&c, 4*kilo, 20, 3)
		c.Request.Screening.Limits.MinReserve = reserve
		if d := nextOf(t, c); d.Action != progression.HoldDose || d.Next.Sets != 3 {
			t.Errorf("reserve %v: %v, %v × %d", reserve, d.Change, d.Next.Sets, d.Next.Count)
		}
	}
}

// A weight that comes down for more reserve brings no repetitions with it: below the
// range the count stays as it was, as where a limit brings the weight down.
func TestNextLighterWithoutMore(t *testing.T) {
	for _, reserve := range []units.RIR{3, 5} {
		c := rowCourse(t, 2, 4, 6)
		last(&c).Plan.Count = 6
		done(&c, 4*kilo, 6, 3)
		c.Request.Screening.Limits.MinReserve = reserve
		c.Request.Screening.Limits.Masses = []screening.MassLimit{{Max: 3 * kilo, Author: "a surgeon"}}
		if d := nextOf(t, c); d.Next.Load.Each() != 2*kilo || d.Next.Count != 6 {
			t.Errorf("reserve %v: %v × %d", reserve, d.Next.Load.Each(), d.Next.Count)
		}
	}
}

// Nothing done is no better than the dose just done: with more to be left than was
// planned the weight goes down alike, once fewer than five of it are allowed. Of eight
// with three left six stay with five to be left, and four would with seven.
func TestNextNothingDoneWithMoreReserve(t *testing.T) {
	for i, want := range []units.Mass{4 * kilo, 4 * kilo, 2 * kilo, 2 * kilo} {
		something, reserve := i%2 == 0, units.RIR(5+i/2*2)
		c := rowCourse(t, 2, 4, 6)
		last(&c).Plan.Count = 8
		done(&c, 4*kilo, 8, 3)
		if !something {
			last(&c).Sets = nil
		}
		c.Request.Screening.Limits.MinReserve = reserve
		if d := nextOf(t, c); d.Next.Load.Each() != want {
			t.Errorf("anything done: %v: %v × %d in reserve %v", something, d.Next.Load.Each(), d.Next.Count, d.Next.Reserve)
		}
	}
}

// After two visits below the dose a third at which nothing was done is below it too.
func TestNextNothingDoneIsBelow(t *testing.T) {
	for _, sets := range []int{2, 0} {
		c := rowCourse(t, 2, 4, 6)
		done(&c, 4*kilo, 10, 3)
		one := *last(&c)
		one.Sets = one.Sets[:4]
		c.Log = nil
		for i := range 3 {
			one.Day = firstDay + units.Day(2*i)
			c.Log = append(c.Log, one)
		}
		last(&c).Sets = last(&c).Sets[:sets]
		c.Day = last(&c).Day + 2
		if d := nextOf(t, c); d.Action != progression.EaseOff || d.Next.Load.Each() != 2*kilo {
			t.Errorf("%d sets at last: %v, %v", sets, d.Action, d.Next.Load.Each())
		}
	}
}

// Light and supervised work has one set. That no set is still to come then makes
// nothing else harder.
func TestNextHoldsUntilAsked(t *testing.T) {
	for _, tt := range []struct {
		meanwhile screening.Meanwhile
		change    progression.Change
	}{{screening.WithinLimits, progression.MoreSets}, {screening.LightSupervised, progression.NoChange}} {
		c := rowCourse(t, 4, 4.25)
		last(&c).Plan.Sets, last(&c).Sets = 1, last(&c).Sets[1:3]
		c.Request.Screening.Meanwhile = tt.meanwhile
		if d := nextOf(t, c); d.Change != tt.change || d.Next.Load.Each() != 4*kilo {
			t.Errorf("%v: %v, %v × %d", tt.meanwhile, d.Change, d.Next.Load.Each(), d.Next.Count)
		}
	}
}

// That the next weight was done before keeps nobody from a further one that is
// shown too, which would be taken had it not been.
func TestNextRecallsNoLess(t *testing.T) {
	for _, before := range []bool{false, true} {
		c := rowCourse(t, 4, 4.1, 4.2)
		done(&c, 4*kilo, 12, 6)
		if before {
			c.Log = []progression.Visit{pastVisit(c, 9, 4100*units.Gram, 10, 4), pastVisit(c, 3, 4*kilo, 12, 6), *last(&c)}
		}
		if d := nextOf(t, c); d.Change != progression.MoreLoad || d.Next.Load.Each() != 4200*units.Gram {
			t.Errorf("done before %v: %v, %v", before, d.Change, d.Next.Load.Each())
		}
	}
}

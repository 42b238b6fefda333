package progression_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// Where today more is to be left than was left last time, the count comes down
// and no repetition is added: 10 with 3 left show 9 in a reserve of 4.
func TestNextAddsNoRepetitionWithMoreReserve(t *testing.T) {
	for _, tt := range []struct {
		reserve units.RIR
		action  progression.Action
		count   int
	}{{3, progression.Progress, 11}, {4, progression.HoldDose, 9}, {5, progression.HoldDose, 8}} {
		c := rowCourse(t, 2, 4, 6, 10)
		done(&c, 4*kilo, 10, 3)
		c.Request.Screening.Limits.MinReserve = tt.reserve
		d := nextOf(t, c)
		if d.Action != tt.action || d.Next.Count != tt.count || d.Next.Load.Each() != 4*kilo {
			t.Errorf("reserve %v: %v, %v × %d, want %v × %d", tt.reserve, d.Action, d.Next.Load.Each(), d.Next.Count, tt.action, tt.count)
		}
	}
}

// Where more is to be left than was, no set comes in place of a weight that this
// puts out of reach.
func TestNextBridgesNothingWithMoreReserve(t *testing.T) {
	for _, reserve := range []units.RIR{3, 4, 6} {
		c := rowCourse(t, 4, 5.25)
		c.Policy.KeepExercise = true
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

// After missed days more repetitions at the last visit never leave less of the dose,
// not even where one of the equations ends.
func TestNextMissedAfterMany(t *testing.T) {
	load, count := units.Mass(0), 0
	for reps := 1; reps <= 60; reps++ {
		c := rowCourse(t, 2, 3, 4, 6)
		done(&c, 4*kilo, reps, 5)
		c.Day, c.Absence = firstDay+10, screening.No
		n := nextOf(t, c).Next
		if n.Load.Each() < load || n.Load.Each() == load && n.Count < count {
			t.Errorf("%d repetitions: %v × %d, after %v × %d for one fewer", reps, n.Load.Each(), n.Count, load, count)
		}
		load, count = n.Load.Each(), n.Count
	}
	if load != 4*kilo {
		t.Errorf("the load stays at no number of repetitions: %v", load)
	}
}

// Nothing done is no better than the dose just done: with more to be left than was
// planned, the weight goes down nevertheless.
func TestNextNothingDoneWithMoreReserve(t *testing.T) {
	for _, something := range []bool{true, false} {
		c := rowCourse(t, 2, 4, 6)
		last(&c).Plan.Count = 8
		done(&c, 4*kilo, 8, 3)
		if !something {
			last(&c).Sets = nil
		}
		c.Request.Screening.Limits.MinReserve = 5
		if d := nextOf(t, c); d.Next.Load.Each() != 2*kilo {
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

// What was too much stays too much if it hurt besides, and a visit at which
// nothing was done is not calm.
func TestNextRecallsTheWorse(t *testing.T) {
	c := rowCourse(t, 4, 6)
	v := last(&c)
	v.Plan.Span, v.Plan.Count = units.Must(units.Between(8, 20)), 8
	done(&c, 4*kilo, 14, 6)
	vain := pastVisit(c, 6, 6*kilo, 4, 3)
	vain.FormLost = screening.Yes
	c.Log = slices.Insert(c.Log, 0, vain)
	if d := nextOf(t, c); d.Change == progression.FindLoad {
		t.Errorf("tried again: %+v", d.Reasons)
	}
	c = rowCourse(t, 4, 6)
	done(&c, 4*kilo, 10, 3)
	shown, idle := pastVisit(c, 6, 6*kilo, 10, 3), pastVisit(c, 3, 4*kilo, 10, 3)
	idle.Sets = nil
	c.Log = slices.Insert(c.Log, 0, shown, idle)
	if d := nextOf(t, c); d.Change == progression.MoreLoad {
		t.Errorf("one calm visit was enough: %+v", d.Reasons)
	}
}

// Slower lowering begins at the bottom of the range, and no higher than the plan
// was: one thing is made harder.
func TestNextBridgesOneThing(t *testing.T) {
	c := rowCourse(t, 4, 10)
	v := last(&c)
	v.Plan.Span, v.Plan.Count = units.Must(units.Between(8, 20)), 6
	v.Plan.Tempo = dose.Tempo{Lowering: 2, Lifting: 2}
	done(&c, 4*kilo, 20, 3)
	if d := nextOf(t, c); d.Change != progression.SlowerLowering || d.Next.Count != 6 {
		t.Errorf("%v, %d", d.Change, d.Next.Count)
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

// An extra set comes only where no reserve, left or asked for, would let the next
// weight be shown or tried: it never stands in place of a weight.
func TestNextNoSetForAWeight(t *testing.T) {
	for _, tt := range []struct {
		to    float64
		extra bool
	}{{5.25, false}, {6, false}, {6.7, false}, {6.8, true}, {10, true}} { // 20 and 4 surely: twice at most 68.75 % more
		c := rowCourse(t, 4, tt.to)
		c.Policy.KeepExercise = true
		c.Request.Guideline = "acsm2011-strength-novice-intermediate" // two to four sets
		v := last(&c)
		v.Plan.Span, v.Plan.Count = units.Must(units.Between(8, 20)), 20
		v.Plan.Tempo = dose.Tempo{Lowering: 4, Pausing: 2, Lifting: 2}
		done(&c, 4*kilo, 20, 3)
		c.Request.Screening.Limits.MinReserve = 3
		if d := nextOf(t, c); (d.Change == progression.ExtraSet) != tt.extra {
			t.Errorf("4 to %v kg: %v, %v × %d", tt.to, d.Change, d.Next.Load.Each(), d.Next.Sets)
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

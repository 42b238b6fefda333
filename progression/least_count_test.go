package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// The least count of screening binds every dose: the first, the next, its stand-in, and
// those of a whole visit.
func TestLeastCountBinds(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, ok := drawToday(t)
		if !ok {
			return false
		}
		least := rapid.SampledFrom([]int{8, 10, 12, 25}).Draw(t, "least count")
		c.Request.Screening.Limits = c.Request.Screening.Limits.Join(screening.Limits{LeastCount: least})
		if seldom(t, "a lighter day", 4) {
			c.Request.Screening.Limits = c.Request.Screening.Limits.Join(screening.LighterSession())
		}
		first := c.Request
		first.Day = c.Day
		p, err := dose.Prescribe(first)
		if err == nil {
			holdsLeast(t, p, least)
		}
		list, err := progression.NextAll([]progression.Course{c, c, c})
		if err != nil {
			return false
		}
		d, err := progression.Next(c)
		for _, d := range append(list, d) {
			if d.Next != nil {
				holdsLeast(t, *d.Next, least)
			}
		}
		if last(&c).Plan.Count >= least { // else the limit is new, and the lighter weight comes with more
			for _, what := range notOneThing(c, d) {
				t.Fatalf("%s: %s", what, tell(d))
			}
		}
		return err == nil && d.Next != nil && d.Next.Measure == exercise.Repetitions
	})
}

func holdsLeast(t *rapid.T, p dose.Prescription, least int) {
	if p.Measure != exercise.Repetitions {
		return
	}
	if low, some := p.Span.Min(); p.Count < least || some && low < least {
		t.Fatalf("%s %v: %d × %d of %v, sets of at least %d: %+v", p.Exercise, p.Load.Each(), p.Sets, p.Count, p.Span, least, p.Reasons)
	}
	if p.Feel != nil {
		t.Fatalf("%s %v: felt %d times, sets of at least %d", p.Exercise, p.Load.Each(), p.Feel.Count, least)
	}
}

// Four left where more than can be counted was asked brings no fewer than the least count,
// and at it the dose stays; with two left, less than a novice begins with, another
// exercise comes. A row of ten once went to 6, 4 and 3, a step-up to 6.
func TestLeastCountOverVisits(t *testing.T) {
	for _, id := range []exercise.ID{"one-arm-dumbbell-row", "supported-step-up", "dumbbell-calf-raise", "back-extension", "dumbbell-sit-to-stand"} {
		for _, left := range []float64{4, 2} {
			c := beginner(t, id, 2, 4)
			c.Request.Screening.Limits.LeastCount = 8
			c.Log[0] = asAsked(c.Log[0].Plan, firstDay, left)
			list := goesOn(t, &c, 16, left)
			for _, d := range list {
				if d.Next != nil && d.Instead == "" && d.Next.Count < 8 {
					t.Errorf("%s, %v left: %s", id, left, trail(list))
					break
				}
			}
			if kept := list[len(list)-1].Instead == "" && list[len(list)-1].Next != nil; kept != (left == 4) {
				t.Errorf("%s, %v left: %s", id, left, trail(list))
			}
		}
	}
}

// After two weeks away four left of ten with more asked keep eight. After eight weeks, with
// a fifth of the strength gone, eight of a row would leave none, and another exercise comes,
// as it does anew. Of a step-up nothing is known but the days: one set of eight stays, as it
// begins anew; a chair rise once went altogether after eight days and came back after 57.
func TestLeastCountAfterDaysMissed(t *testing.T) {
	for id, from := range map[exercise.ID]units.Day{"one-arm-dumbbell-row": 29, "supported-step-up": 101} {
		for _, days := range []units.Day{8, 14, 29, 56, 57, 100} {
			c := beginner(t, id, 2, 4)
			c.Request.Screening.Limits.LeastCount = 8
			c.Log[0] = asAsked(c.Log[0].Plan, firstDay, 4)
			c.Day, c.Absence = firstDay+days, screening.No
			if d := nextOf(t, c); (days < from) != (d.Instead == "" && d.Next != nil && d.Next.Count == 8 && (days < 29 || d.Next.Sets == 1)) {
				t.Errorf("%s, %d days: %s", id, days, tell(d))
			}
		}
	}
}

// Where one set takes the place of the repetitions that a cut would take, the page says so: the
// ladder's share of the sets is another one.
func TestOneSetInPlaceIsSaid(t *testing.T) {
	c := beginner(t, "supported-step-up", 2, 4)
	c.Request.Screening.Limits.LeastCount = 8
	plan := c.Log[0].Plan
	plan.Sets, plan.Count, plan.Reserve = 3, 8, dose.Reserve{Least: 3, Countable: true}
	c.Request.Phase, c.Absence = dose.Build, screening.No
	for sets, said := range map[int]bool{3: true, 1: false} {
		plan.Sets = sets
		c.Log = []progression.Visit{asAsked(plan, firstDay, 3)}
		c.Day = firstDay + 10
		d := nextOf(t, c)
		if d.Next == nil || d.Instead != "" || d.Next.Sets != 1 || d.Next.Count != 8 || hasReason(d, "progression.set-for-load") != said {
			t.Errorf("%d sets: %s", sets, tell(d))
		}
	}
}

// No weight is felt with fewer than the least count.
func TestLeastCountFeelsNothing(t *testing.T) {
	for least, feels := range map[int]bool{0: true, 8: false} {
		c := rowCourse(t, 4, 6)
		done(&c, 4*kilo, 14, 6)
		c.Request.Screening.Limits.LeastCount = least
		if d := nextOf(t, c); feels != (d.Next.Feel != nil) {
			t.Errorf("least count %d: %s", least, tell(d))
		}
	}
}

// Nothing done, on a day that asks for more in reserve than was asked, shows no more than
// what was asked: six with three left leave too few with five, whether they were done so or
// not at all. Nothing done once kept 2 kg, where all of it done brought half a kilogram.
func TestNothingDoneShowsNoMoreThanWasAsked(t *testing.T) {
	c := rowCourse(t, 0.5, 2)
	plan := last(&c).Plan
	plan.Load, plan.Sets, plan.Count, plan.Reserve = held(2*units.Kilogram), 2, 6, dose.Reserve{Least: 3, Countable: true}
	strong := asAsked(plan, firstDay, 3)
	for i := range strong.Sets {
		strong.Sets[i].Reps = 20
	}
	c.Log = []progression.Visit{strong, asAsked(plan, firstDay+2, 3), asAsked(plan, firstDay+4, 3)}
	c.Day, c.Request.Screening.Limits.MinReserve = firstDay+6, 5
	was := nextOf(t, c)
	last(&c).Sets = nil
	if is := nextOf(t, c); was.Next == nil || was.Next.Load.Each() != units.Kilogram/2 || is.Next == nil || is.Next.Load.Each() > was.Next.Load.Each() {
		t.Errorf("done: %s\nnot done: %s", tell(was), tell(is))
	}
}

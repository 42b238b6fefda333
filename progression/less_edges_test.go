package progression_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// reserve asks for so many left undone today.
func reserve(c *progression.Course, least units.RIR) {
	c.Request.Screening.Limits.MinReserve = least
}

// unrated takes away how the sets of the last visit ended.
func unrated(c *progression.Course) {
	for i := range last(c).Sets {
		last(c).Sets[i].Effort = units.Effort{}
	}
}

// away is a course ten days on, without a medical cause: 5 % less load and three
// quarters of the sets.
func away(c *progression.Course) { c.Day, c.Absence = firstDay+10, screening.No }

// repeat makes the log of the last visit, so often, three days apart.
func repeat(c *progression.Course, times int) {
	one := *last(c)
	for range times - 1 {
		one.Day += 3
		c.Log, c.Day = append(c.Log, one), one.Day+3
	}
}

// Beginning again, one step up may be tried, to no more than the last rung of the ladder, if
// somebody saw that the technique holds and nothing speaks for less.
func TestNextAnewMayTryOneStep(t *testing.T) {
	walk(t, func() progression.Course {
		c := rowCourse(t, 1, 2, 4, 4.25, 6)
		away(&c)
		c.Day = firstDay + 63
		return c
	}, []edge{
		{"all is well", func(*progression.Course) {}, "ease, none: 1 × 10 × 1 to 15, 1 up", "progression.return-anew"},
		{"nobody watched", seenLongAgo, "ease, none: 1 × 10 × 1 to 15", "progression.return-anew"},
		{"technique lost", func(c *progression.Course) { last(c).FormLost = screening.Yes }, "ease, none: 1 × 10 × 1 to 15", "progression.return-anew"},
		{"pain of 3", func(c *progression.Course) { last(c).Pain.During = score(3) }, "ease, none: 1 × 10 × 1 to 15, 1 up", "progression.return-anew"},
		{"pain of 6", func(c *progression.Course) { last(c).Pain.During = score(6) }, "ease, none: 1 × 10 × 1 to 15", "progression.return-anew"},
		{"a lighter day", func(c *progression.Course) { c.Request.Screening.Limits = screening.LighterSession() }, "ease, none: 1 × 10 × 1 to 15", "progression.return-anew"},
		{"the next weight is past the rung", func(c *progression.Course) { c.Request.Kit = rowCourse(t, 2, 4).Request.Kit }, "ease, none: 1 × 8 × 2 to 15", "progression.return-anew"},
	})
}

// What counts as a visit below its dose, three times in a row.
func TestNextBelowThree(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(c *progression.Course)
		below bool
	}{
		"as planned":                          {func(*progression.Course) {}, false},
		"below the range":                     {func(c *progression.Course) { done(c, 4*kilo, 7, 2) }, true},
		"below the range, by reserve":         {func(c *progression.Course) { done(c, 4*kilo, 7, 3) }, false},
		"fewer than a set is worth":           {func(c *progression.Course) { done(c, 4*kilo, 4, 3) }, true},
		"below the range, not told":           {func(c *progression.Course) { done(c, 4*kilo, 7, 3); unrated(c) }, true},
		"the bottom of the range, planned 10": {func(c *progression.Course) { done(c, 4*kilo, 8, 3) }, false},
		"all of a plan below the range":       {func(c *progression.Course) { last(c).Plan.Count = 6; done(c, 4*kilo, 6, 3) }, false},
		"a plan below the range, by reserve":  {func(c *progression.Course) { last(c).Plan.Count = 6; done(c, 4*kilo, 5, 3) }, false},
		"fewer than a plan below the range":   {func(c *progression.Course) { last(c).Plan.Count = 6; done(c, 4*kilo, 4, 4) }, true},
		"a set fewer on one side":             {func(c *progression.Course) { last(c).Sets = last(c).Sets[:5] }, true},
		"not told":                            {unrated, false},
		"nothing done":                        {func(c *progression.Course) { last(c).Sets = nil }, true},
		"while the load was looked for":       {func(c *progression.Course) { last(c).Plan.Finding = &dose.Search{MaxSteps: 1}; done(c, 4*kilo, 5, 3) }, false},
	} {
		c := rowCourse(t, 2, 4, 4.25)
		tt.spoil(&c)
		repeat(&c, 3)
		c.Absence = screening.No // where nothing was done, days were missed
		d := nextOf(t, c)
		if hasReason(d, "progression.below-three") != tt.below {
			t.Errorf("%s: %s", name, told(d))
		}
		if want := fmt.Sprintf("ease, none: 3 × %d × 2 to ", min(8, last(&c).Plan.Count)); tt.below && len(last(&c).Sets) > 0 && !strings.HasPrefix(told(d), want) {
			t.Errorf("%s: %s, want the next lighter weight at the bottom of the range, no oftener than before", name, told(d))
		}
	}
}

// What was made easier, and a visit below its dose for a slip alone, begin anew: else whoever
// mends would be given less once more.
func TestNextBelowThreeOfOneDose(t *testing.T) {
	for name, spoil := range map[string]func(v *progression.Visit){
		"another weight": func(v *progression.Visit) {
			v.Plan.Load = held(2 * kilo)
			for i := range v.Sets {
				v.Sets[i].Load = 2 * kilo
			}
		},
		"more sets": func(v *progression.Visit) { v.Plan.Sets = 4 },
		"a slip":    func(v *progression.Visit) { v.Sets[0].Load = 7 * kilo },
	} {
		for at, below := range []bool{false, false, true} { // on the fourth visit, whichever of the first three it was
			c := rowCourse(t, 2, 4, 6)
			last(&c).Sets = last(&c).Sets[:5]
			repeat(&c, 3)
			c.Log[2-at].Sets = slices.Clone(c.Log[2-at].Sets)
			if spoil(&c.Log[2-at]); at == 2 {
				repeat(&c, 2)
			}
			if d := nextOf(t, c); hasReason(d, "progression.below-three") != below {
				t.Errorf("%s, %d visits ago: %s", name, at, told(d))
			}
		}
	}
}

// Where sets only ended nearer to failure than asked, fewer repetitions come before a
// lighter weight, as long as a set stays worth it.
func TestNextBelowThreeByCount(t *testing.T) {
	thrice := func(reps, planned int, left float64) func(*progression.Course) {
		return func(c *progression.Course) {
			last(c).Plan.Count = planned
			done(c, 4*kilo, reps, left)
			repeat(c, 3)
		}
	}
	walk(t, func() progression.Course { return rowCourse(t, 2, 4, 6) }, []edge{
		{"by what the chance allows", thrice(10, 10, 2), "ease, none: 3 × 7 × 4 to 25", "progression.fewer-reps"},
		{"down to what was held of it", thrice(8, 8, 2), "ease, none: 3 × 6 × 4 to 25", "progression.fewer-reps"},
		{"four are not", thrice(6, 6, 1), "ease, none: 3 × 6 × 2 to 25", "progression.below-three"},
		{"too few done as well", thrice(6, 10, 2), "ease, none: 3 × 8 × 2 to 25", "progression.below-three"},
	})
}

// At the lightest weight a set is left out, down to one, and pain on top does not
// keep the exercise.
func TestNextBelowThreeAtTheLightest(t *testing.T) {
	at := func(sets int) progression.Course {
		c := rowCourse(t, 2, 4)
		last(&c).Plan.Sets = sets
		done(&c, 2*kilo, 6, 2)
		last(&c).Sets = slices.Concat(slices.Repeat(last(&c).Sets[:1], sets), slices.Repeat(last(&c).Sets[2:3], sets))
		repeat(&c, 3)
		return c
	}
	if d := nextOf(t, at(2)); d.Action != progression.EaseOff || d.Next.Sets != 1 || d.Next.Load.Each() != 2*kilo {
		t.Errorf("two sets: %s", told(d))
	}
	c := at(1)
	pain := *last(&c).Pain
	pain.During = score(7)
	last(&c).Pain = &pain
	if d := nextOf(t, c); d.Action != progression.ChangeVariant || !hasReason(d, "progression.eased") {
		t.Errorf("one set, and it hurts: %s", told(d))
	}
	// It is the visit before that makes two in a row, and not the last one alone.
	c = rowCourse(t, 2, 4, 4.25)
	repeat(&c, 2)
	last(&c).Pain = &pain
	if d := nextOf(t, c); d.Action != progression.EaseOff || !hasReason(d, "progression.eased") {
		t.Errorf("hurt once: %s", told(d))
	}
	// Where the kit lacks what was planned, the next lighter one of it is taken,
	// and nothing is asked about.
	c = rowCourse(t, 2, 3.8, 6)
	if d := nextOf(t, c); len(d.Queries) != 0 || d.Next.Load.Each() > 4*kilo {
		t.Errorf("%s, %+v", told(d), d.Queries)
	}
	// To settle first is about the person; a kit without a weight is not.
	c = rowCourse(t, 2, 4)
	c.Request.Screening.Plan, c.Request.Kit = screening.SettleFirst, dumbbells()
	c.Catalogue = units.Must(exercise.Catalogue{}.With(alone(c.Request.Exercise)))
	if d := nextOf(t, c); d.Action != progression.StopExercise || hasReason(d, "progression.settle-first") {
		t.Errorf("without a kit: %s, %+v", told(d), d.Reasons)
	}
}

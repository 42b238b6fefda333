package progression_test

import (
	"slices"
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

// More left undone than was planned is made room for, in repetitions as long as
// they stay in the range, in load where they do not; and nothing is made harder.
func TestNextEdgesOfReserve(t *testing.T) {
	walk(t, func() progression.Course { return rowCourse(t, 2, 4, 4.25, 6) }, []edge{
		{"one more, and what was planned has room", func(c *progression.Course) { reserve(c, 4); done(c, 4*kilo, 11, 3) }, "hold, none: 3 × 10 × 4 to 12", "progression.hold"},
		{"one more", func(c *progression.Course) { reserve(c, 4); done(c, 4*kilo, 10, 3) }, "hold, none: 3 × 9 × 4 to 12", "progression.hold"},
		{"one more, and one more was left", func(c *progression.Course) { reserve(c, 4); done(c, 4*kilo, 10, 4) }, "progress, repetitions: 3 × 11 × 4 to 12", "progression.more-reps"},
		{"two more: the bottom of the range", func(c *progression.Course) { reserve(c, 5); done(c, 4*kilo, 10, 3) }, "hold, none: 3 × 8 × 4 to 12", "progression.hold"},
		{"three more: a lighter weight", func(c *progression.Course) { reserve(c, 6); done(c, 4*kilo, 10, 3) }, "hold, none: 3 × 8 × 2 to 13", "progression.hold"},
		{"three more, and none is lighter", func(c *progression.Course) {
			reserve(c, 6)
			c.Request.Kit = dumbbells(4, 6)
			done(c, 4*kilo, 10, 3)
		}, "hold, none: 3 × 7 × 4 to 20", "progression.hold"},
		{"more than was ever shown", func(c *progression.Course) {
			reserve(c, 7)
			c.Request.Kit = dumbbells(4, 6)
			done(c, 4*kilo, 3, 3)
		}, "change variant", "progression.too-much"},
		{"not told how the sets ended: as planned", func(c *progression.Course) { reserve(c, 4); done(c, 4*kilo, 10, 3); unrated(c) }, "hold, none: 3 × 9 × 4 to 12", "progression.hold"},
		{"as planned, and fewer than the range begins with", func(c *progression.Course) { done(c, 4*kilo, 6, 3) }, "hold, none: 3 × 8 × 4 to 12", "progression.hold"},
		{"as planned, and fewer than a plan below the range", func(c *progression.Course) {
			last(c).Plan.Count = 7
			done(c, 4*kilo, 6, 3)
		}, "hold, none: 3 × 7 × 4 to 12", "progression.hold"},
		{"nearer to failure than planned", func(c *progression.Course) { done(c, 4*kilo, 10, 2) }, "hold, none: 3 × 9 × 4 to 12", "progression.hold"},
		// A lighter session leaves two more undone, and asks for one set fewer.
		{"nothing done, and a lighter day: from what was planned", func(c *progression.Course) {
			last(c).Sets = nil
			c.Request.Screening.Limits = screening.LighterSession()
		}, "ease, none: 2 × 8 × 4 to 12", "progression.lighter-day"},
		{"a lighter weight after three visits is not cut again", func(c *progression.Course) {
			reserve(c, 4)
			done(c, 4*kilo, 6, 3)
			repeat(c, 3)
		}, "ease, none: 3 × 8 × 2 to 12", "progression.below-three"},
		{"one set with a lighter weight, from which the step is a third", func(c *progression.Course) {
			c.Request.Kit = dumbbells(3, 4, 4.25)
			last(c).Sets[0].Load = 3 * kilo // the others were as planned
		}, "hold, none: 3 × 8 × 3 to 20", "progression.hold"},
		{"with more than was planned", func(c *progression.Course) {
			done(c, 6*kilo, 12, 3)
			last(c).Plan.Load = held(4 * kilo)
		}, "hold, none: 3 × 10 × 4 to 12", "progression.hold"},
	})
}

// repeat makes the log of the last visit, so often, three days apart.
func repeat(c *progression.Course, times int) {
	one := *last(c)
	for range times - 1 {
		one.Day += 3
		c.Log, c.Day = append(c.Log, one), one.Day+3
	}
}

// What has to hold for 95 % of the strength: 12 repetitions with three in reserve
// are 15 to failure, of which 12.7 are left on Epley's side, and 9 in reserve.
func TestNextEdgesOfReturning(t *testing.T) {
	walk(t, func() progression.Course {
		c := rowCourse(t, 2, 4, 4.25, 6)
		away(&c)
		return c
	}, []edge{
		{"12 with 3 left", func(*progression.Course) {}, "ease, none: 2 × 9 × 4 to 12", "progression.return"},
		{"11 are 14: 11.8 are left, the bottom of the range", func(c *progression.Course) { done(c, 4*kilo, 11, 3) }, "ease, none: 2 × 8 × 4 to 12", "progression.return"},
		{"10 are 13: 10.9 are left, so the load falls", func(c *progression.Course) { done(c, 4*kilo, 10, 3) }, "ease, none: 2 × 8 × 2 to 12", "progression.return"},
		{"12 with 5 are 17: 14.6 are left, no more than planned", func(c *progression.Course) { done(c, 4*kilo, 12, 5) }, "ease, none: 2 × 10 × 4 to 12", "progression.return"},
		{"16 with 3 are 19, and still no more than planned", func(c *progression.Course) { done(c, 4*kilo, 16, 3) }, "ease, none: 2 × 10 × 4 to 12", "progression.return"},
		{"one to failure is none any more", func(c *progression.Course) { done(c, 4*kilo, 1, 0) }, "ease, none: 2 × 8 × 2 to 12", "progression.return"},
		{"more than 5 left count as 5", func(c *progression.Course) { done(c, 4*kilo, 10, 8) }, "ease, none: 2 × 9 × 4 to 12", "progression.return"},
		{"not told: as planned", unrated, "ease, none: 2 × 9 × 4 to 12", "progression.return"},
		{"not told, and planned beyond counting: 5", func(c *progression.Course) {
			done(c, 4*kilo, 10, 3)
			unrated(c)
			last(c).Plan.Reserve.Least = 8
		}, "ease, none: 2 × 9 × 4 to 12", "progression.return"},
		{"the next lighter one is within the cut", func(c *progression.Course) { c.Request.Kit = dumbbells(2, 3.8, 4, 4.25) }, "ease, none: 2 × 8 × 3.8 to 12", "progression.return"},
		{"and of a plan below the range no more are asked for", func(c *progression.Course) {
			c.Request.Kit = dumbbells(2, 3.8, 4, 4.25)
			last(c).Plan.Count = 6
		}, "ease, none: 2 × 6 × 3.8 to 12", "progression.return"},
		{"nothing is lighter: the lightest stays, with as many as are left", func(c *progression.Course) {
			c.Request.Kit = dumbbells(4, 6)
			done(c, 4*kilo, 10, 3)
		}, "ease, none: 2 × 7 × 4 to 20", "progression.return"},
		{"a kit that has become heavier does not make the dose so", func(c *progression.Course) {
			c.Request.Kit = dumbbells(4, 6)
			done(c, 2*kilo, 12, 3)
		}, "change variant", "progression.return"},
		{"nor after so long that all begins anew", func(c *progression.Course) {
			c.Day, c.Request.Kit = firstDay+63, dumbbells(4, 6)
			done(c, 2*kilo, 12, 3)
		}, "change variant", "progression.return-anew"},
		{"assessed since, and no medical cause: the ladder", func(c *progression.Course) { c.Request.Screening.Day = firstDay + 9 }, "ease, none: 2 × 9 × 4 to 12", "progression.return"},
		{"a medical cause, assessed on the day of the last visit: before it", func(c *progression.Course) {
			c.Absence, c.Request.Screening.Day = screening.Yes, firstDay
		}, "stop and refer, none", "progression.medical-absence"},
		{"a visit at which nothing was done is no training", func(c *progression.Course) {
			c.Absence = screening.No
			v := *last(c)
			v.Day, v.Sets = firstDay+7, nil
			c.Log = append(c.Log, v)
		}, "ease, none: 2 × 8 × 2 to 12", "progression.return"},
	})
	c := rowCourse(t, 2, 4, 4.25)
	v := *last(&c)
	v.Day, v.Sets = firstDay+7, v.Sets[:1]
	c.Log, c.Day = append(c.Log, v), firstDay+10
	if d := nextOf(t, c); hasReason(d, "progression.return") {
		t.Errorf("one set is training: %s", told(d))
	}
}

// Beginning again, one step up may be tried, if somebody saw that the technique
// holds and nothing speaks for less.
func TestNextAnewMayTryOneStep(t *testing.T) {
	walk(t, func() progression.Course {
		c := rowCourse(t, 2, 4, 4.25, 6)
		away(&c)
		c.Day = firstDay + 63
		return c
	}, []edge{
		{"all is well", func(*progression.Course) {}, "ease, none: 1 × 10 × 2 to 15, 1 up", "progression.return-anew"},
		{"nobody watched", seenLongAgo, "ease, none: 1 × 10 × 2 to 15", "progression.return-anew"},
		{"technique lost", func(c *progression.Course) { last(c).FormLost = screening.Yes }, "ease, none: 1 × 10 × 2 to 15", "progression.return-anew"},
		{"pain of 3", func(c *progression.Course) { last(c).Pain.During = score(3) }, "ease, none: 1 × 10 × 2 to 15, 1 up", "progression.return-anew"},
		{"pain of 6", func(c *progression.Course) { last(c).Pain.During = score(6) }, "ease, none: 1 × 10 × 2 to 15", "progression.return-anew"},
		{"a lighter day", func(c *progression.Course) { c.Request.Screening.Limits = screening.LighterSession() }, "ease, none: 1 × 10 × 2 to 15", "progression.return-anew"},
	})
}

// What counts as a visit below its dose, three times in a row.
func TestNextBelowThree(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(c *progression.Course)
		below bool
	}{
		"as planned":                          {func(*progression.Course) {}, false},
		"below the range":                     {func(c *progression.Course) { done(c, 4*kilo, 7, 3) }, true},
		"the bottom of the range, planned 10": {func(c *progression.Course) { done(c, 4*kilo, 8, 3) }, false},
		"all of a plan below the range":       {func(c *progression.Course) { last(c).Plan.Count = 6; done(c, 4*kilo, 6, 3) }, false},
		"fewer than a plan below the range":   {func(c *progression.Course) { last(c).Plan.Count = 6; done(c, 4*kilo, 5, 3) }, true},
		"a set fewer on one side":             {func(c *progression.Course) { last(c).Sets = last(c).Sets[:5] }, true},
		"nearer to failure":                   {func(c *progression.Course) { done(c, 4*kilo, 12, 2) }, true},
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
		if tt.below && len(last(&c).Sets) > 0 && told(d) != "ease, none: 3 × 8 × 2 to 12" {
			t.Errorf("%s: %s, want the next lighter weight at the bottom of the range", name, told(d))
		}
	}
}

// At the lightest weight a set is left out, down to one, and pain on top does not
// keep the exercise.
func TestNextBelowThreeAtTheLightest(t *testing.T) {
	at := func(sets int) progression.Course {
		c := rowCourse(t, 2, 4)
		last(&c).Plan.Sets = sets
		done(&c, 2*kilo, 6, 3)
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

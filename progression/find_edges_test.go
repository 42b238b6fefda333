package progression_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A try is what was done with one weight, on each side.
type try struct {
	kg   float64
	reps int
	left float64
}

// looked makes the last visit one in which the load was looked for, from the
// first weight on.
func looked(c *progression.Course, count int, tries ...try) {
	v := last(c)
	v.Plan.Finding, v.Plan.Count, v.Sets = &dose.Search{MaxSteps: 2}, count, nil
	for i, tr := range tries {
		each := units.Must(units.Kilograms(tr.kg))
		if i == 0 {
			v.Plan.Load = held(each)
		}
		for _, s := range goodVisit().Sets[1:3] {
			s.Load, s.Reps, s.Effort = each, tr.reps, units.Must(units.InReserve(tr.left))
			v.Sets = append(v.Sets, s)
		}
	}
}

// One step from 4 kg to 4.25 is shown within reach by any set, two of them, or one
// to 6 kg, by 14 repetitions with more than can be counted left.
func TestNextEdgesOfFinding(t *testing.T) {
	walk(t, func() progression.Course { return rowCourse(t, 2, 4, 4.25, 6) }, []edge{
		{"on, below the top of the range", func(c *progression.Course) { looked(c, 10, try{4, 10, 8}) }, "progress, load: 3 × 7 × 4.25 to 12", "progression.shown"},
		{"on, two steps up and no third", func(c *progression.Course) {
			c.Request.Kit = dumbbells(4, 4.25, 4.5, 4.75, 5)
			looked(c, 10, try{4, 10, 8})
		}, "progress, load: 3 × 7 × 4.25 to 12", "progression.shown"},
		// From 4 to 5 kg is a quarter: two lifts are 10 with 4 kg, less four 6.
		{"the second step counts from the first weight", func(c *progression.Course) {
			c.Request.Kit = dumbbells(4, 4.5, 5)
			looked(c, 5, try{4, 5, 8})
		}, "progress, finding the load: 3 × 5 × 4 to 12, 2 up", "progression.find-on"},
		{"and is within reach with one repetition more", func(c *progression.Course) {
			c.Request.Kit = dumbbells(4, 4.5, 5)
			looked(c, 6, try{4, 6, 8})
		}, "progress, finding the load: 3 × 6 × 4 to 12, 2 up", "progression.find-on"},
		{"no further where it can be counted", func(c *progression.Course) { looked(c, 10, try{4, 10, 4}) }, "hold, none: 3 × 7 × 4 to 20", "progression.as-allowed"},
		{"no further with fewer than asked for", func(c *progression.Course) { looked(c, 10, try{4, 9, 8}) }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"no further with technique lost", func(c *progression.Course) {
			looked(c, 10, try{4, 10, 8})
			last(c).FormLost = screening.Yes
		}, "hold, none: 3 × 10 × 4 to 12", "progression.hold"},
		{"no further while nobody watched", func(c *progression.Course) {
			looked(c, 10, try{4, 10, 8})
			seenLongAgo(c)
		}, "hold, none: 3 × 10 × 4 to 12", "progression.show-technique"},
		{"no further with less left than was asked for", func(c *progression.Course) {
			looked(c, 10, try{4, 10, 6})
			reserve(c, 7)
			last(c).Plan.Reserve.Least = 7
		}, "hold, none: 3 × 6 × 4 to 20", "progression.hold"},
		{"not beyond a limit", func(c *progression.Course) {
			looked(c, 10, try{4, 10, 8})
			most(c, 4)
		}, "hold, none: 3 × 10 × 4 to 12", "progression.limit"},
		{"up to a limit", func(c *progression.Course) {
			looked(c, 10, try{4, 10, 8})
			most(c, 4.25)
		}, "progress, load: 3 × 7 × 4.25 to 12", "progression.shown"},
		{"shown before it is found", func(c *progression.Course) { looked(c, 10, try{4, 12, 4}) }, "progress, load: 3 × 7 × 4.25 to 12", "progression.shown"},
		{"a first dose leaves more than is asked for today", func(c *progression.Course) {
			looked(c, 10, try{4, 12, 4})
			last(c).Plan.Reserve.Least = 5
		}, "progress, load: 3 × 7 × 4.25 to 12", "progression.shown"},
		// With five in reserve 4.25 kg is shown by 15.7 to failure; 12 with three
		// that surely remain are 15.
		{"more is asked for today than then", func(c *progression.Course) {
			looked(c, 10, try{4, 12, 4})
			reserve(c, 5)
		}, "hold, none: 3 × 7 × 4 to 20", "progression.as-allowed"},
		{"found: the bottom of the range", func(c *progression.Course) { looked(c, 10, try{2, 10, 8}, try{4, 10, 4}) }, "progress, finding the load: 3 × 7 × 4 to 20", "progression.found"},
		{"found: no more repetitions than were done", func(c *progression.Course) { looked(c, 6, try{2, 6, 8}, try{4, 6, 4}) }, "progress, repetitions: 3 × 11 × 2 to 20", "progression.more-reps"},
		{"found: with just what is asked for left", func(c *progression.Course) { looked(c, 10, try{2, 10, 8}, try{4, 10, 3}) }, "progress, finding the load: 3 × 6 × 4 to 20", "progression.found"},
		{"not found with fewer than asked for", func(c *progression.Course) { looked(c, 10, try{2, 10, 4}, try{4, 9, 4}) }, "progress, finding the load: 3 × 6 × 4 to 20", "progression.found"},
		{"not found on one side alone", func(c *progression.Course) {
			looked(c, 10, try{2, 10, 4}, try{4, 10, 4})
			last(c).Sets = last(c).Sets[:3]
		}, "hold, none: 3 × 7 × 2 to 20", "progression.as-allowed"},
		{"too heavy: the weight that ended well is kept", func(c *progression.Course) { looked(c, 10, try{4, 12, 3}, try{4.25, 12, 2}) }, "progress, finding the load: 3 × 7 × 4.25 to 25", "progression.found"},
		{"too heavy, and repetitions are left to add", func(c *progression.Course) { looked(c, 10, try{4, 10, 3}, try{4.25, 10, 2}) }, "progress, finding the load: 3 × 6 × 4.25 to 25", "progression.found"},
		{"nothing counts while the range was not looked at", func(c *progression.Course) {
			looked(c, 10, try{2, 10, 8}, try{4, 10, 4})
			last(c).RangeLost = screening.Unknown
		}, "hold, none: 3 × 10 × 2 to 12", "progression.hold"},
		{"on one side alone nothing is known", func(c *progression.Course) {
			looked(c, 10, try{4, 10, 8})
			last(c).Sets = last(c).Sets[:1]
		}, "hold, none: 3 × 6 × 4 to 20", "progression.hold"},
	})
}

// By the policy that goes by rating, below 8 on the scale omni a weight that was
// tried is one that was found; without it a scale without reserve tells nothing.
func TestNextFindsByRating(t *testing.T) {
	for name, tt := range map[string]struct {
		rule    rule.Name
		ratings [2]float64 // of the two sides, with 4 kg
		load    units.Mass
	}{
		"below 8":           {rule.NameOMNIBelow8, [2]float64{7, 7}, 4 * kilo},
		"8":                 {rule.NameOMNIBelow8, [2]float64{8, 8}, 2 * kilo},
		"8 on one side":     {rule.NameOMNIBelow8, [2]float64{7, 8}, 2 * kilo},
		"without that rule": {0, [2]float64{7, 7}, 2 * kilo},
	} {
		c := rowCourse(t, 2, 4, 4.25, 6)
		c.Policy.Rule = tt.rule
		looked(&c, 10, try{2, 10, 8}, try{4, 10, 8})
		rate := func(set int, v float64) { last(&c).Sets[set].Effort = units.Must(units.OMNI(v)) }
		rate(0, 5)
		rate(1, 5)
		rate(2, tt.ratings[0])
		rate(3, tt.ratings[1])
		if d := nextOf(t, c); d.Next.Load.Each() != tt.load {
			t.Errorf("%s: %s", name, told(d))
		}
		last(&c).Sets[3].Effort = units.Effort{}
		if d := nextOf(t, c); d.Next.Load.Each() != 2*kilo {
			t.Errorf("%s, one side not rated: %s", name, told(d))
		}
	}
}

// One rated set of both sides is enough.
func TestNextFindsByOneRating(t *testing.T) {
	c := squatCourse(t, 4, 6)
	c.Policy.Rule, last(&c).Plan.Finding = rule.NameOMNIBelow8, &dose.Search{MaxSteps: 1}
	last(&c).Sets = last(&c).Sets[:2]
	last(&c).Sets[1].Load = 6 * kilo
	rate(&c, 5, 7)
	if d := nextOf(t, c); d.Next.Load.Each() != 6*kilo || !hasReason(d, "progression.found") {
		t.Errorf("%s", told(d))
	}
}

// squatCourse is rowCourse with three sets of a goblet squat.
func squatCourse(t failer, kg ...float64) progression.Course {
	t.Helper()
	return courseOf(t, "goblet-squat", kg...)
}

// courseOf is rowCourse with another exercise, three sets on each side that it has.
func courseOf(t failer, id string, kg ...float64) progression.Course {
	t.Helper()
	ex, err := exercise.Standard().Lookup(id)
	if err != nil {
		t.Fatalf("%v", err)
	}
	c := rowCourse(t, kg...)
	c.Request.Exercise = ex
	v := last(&c)
	v.Plan.Exercise, v.Plan.Hold, v.Plan.OneSided, v.Plan.Measure = ex.ID, ex.Hold, ex.OneSided, ex.Measure
	v.Sets = slices.Clone(v.Sets)
	if !ex.OneSided {
		v.Sets = v.Sets[:3]
	}
	for i := range v.Sets {
		v.Sets[i].Exercise, v.Sets[i].Hold = ex.ID, ex.Hold
		if !ex.OneSided {
			v.Sets[i].Side = body.Both
		}
	}
	return c
}

// carried is a carry of so many metres, 10 to 30, in three sets on each side.
func carried(t failer, metres int, kg ...float64) progression.Course {
	t.Helper()
	c := courseOf(t, "suitcase-carry", kg...)
	v := last(&c)
	v.Plan.Span, v.Plan.Count, v.Plan.Reserve = units.Must(units.Between(10, 30)), 10, dose.Reserve{}
	done(&c, 4*kilo, metres, 3)
	for i := range v.Sets {
		v.Sets[i].Effort = units.Must(units.OMNI(5))
	}
	return c
}

// What is not counted in repetitions has neither curve nor reserve: it goes metre
// by metre to the end of its range, and then a weight is tried, one step.
func TestNextEdgesOfCarrying(t *testing.T) {
	walk(t, func() progression.Course { return carried(t, 12, 4, 6) }, []edge{
		{"five metres more", func(*progression.Course) {}, "progress, repetitions: 3 × 17 × 4 to 30", "progression.more-of-it"},
		{"no further than the range", func(c *progression.Course) { *c = carried(t, 30, 4, 10) }, "progress, finding the load: 3 × 10 × 4 to 30, 1 up", "progression.find-on"},
		{"however small the steps", func(c *progression.Course) { *c = carried(t, 30, 4, 4.25, 4.5) }, "progress, finding the load: 3 × 10 × 4 to 30, 1 up", "progression.find-on"},
		{"one set of one side is enough", func(c *progression.Course) {
			*c = carried(t, 30, 4, 10)
			c.Request.Side, last(c).Plan.Side, last(c).Plan.Finding = body.Left, body.Left, &dose.Search{MaxSteps: 1}
			last(c).Sets = last(c).Sets[:1]
		}, "progress, finding the load: 3 × 10 × 4 to 30, 1 up", "progression.find-on"},
		{"a reserve that was told is none to fall below", func(c *progression.Course) {
			last(c).Plan.Reserve.Least = 4
			repeat(c, 3)
		}, "progress, repetitions: 3 × 17 × 4 to 30", "progression.more-of-it"},
		{"at the top of the kit a set, and no other pace", func(c *progression.Course) {
			*c = carried(t, 30, 4)
			c.Request.Guideline = "acsm2011-strength-novice-intermediate"
		}, "progress, an extra set: 4 × 10 × 4 to 30", "progression.extra-set"},
		{"tried and not far enough", func(c *progression.Course) {
			*c = carried(t, 12, 4, 6)
			c.Log = append([]progression.Visit{pastVisit(*c, 9, 6*kilo, 9, 3), pastVisit(*c, 3, 4*kilo, 12, 3)}, c.Log...)
		}, "progress, repetitions: 3 × 17 × 4 to 30", "progression.more-of-it"},
		{"done far enough before", func(c *progression.Course) {
			*c = carried(t, 12, 4, 6)
			c.Log = append([]progression.Visit{pastVisit(*c, 9, 6*kilo, 10, 3), pastVisit(*c, 3, 4*kilo, 12, 3)}, c.Log...)
		}, "progress, repetitions: 3 × 17 × 4 to 30", "progression.more-of-it"},
		{"a reserve that is not counted cuts nothing", func(c *progression.Course) {
			reserve(c, 6)
			last(c).FormLost = screening.Yes
		}, "hold, none: 3 × 10 × 4 to 30", "progression.hold"},
		{"a heavier one needs no reserve to be found", func(c *progression.Course) {
			last(c).Plan.Finding = &dose.Search{MaxSteps: 1}
			for _, i := range []int{1, 3} {
				last(c).Sets[i].Load, last(c).Sets[i].Effort = 6*kilo, units.Effort{}
			}
		}, "progress, finding the load: 3 × 10 × 6 to 30", "progression.found"},
	})
	if d := nextOf(t, carried(t, 12, 4, 6)); d.RepsBefore != 0 || d.Jump == nil {
		t.Errorf("%d, %+v: no number of metres shows a weight", d.RepsBefore, d.Jump)
	}
}

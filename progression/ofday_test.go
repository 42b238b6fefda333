package progression_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// onDay is a course whose day's check joins limits to the outcome of the assessment.
func onDay(c progression.Course, l screening.Limits) progression.Course {
	usual := c.Request.Screening
	c.Usual, c.Request.Screening.Limits = &usual, usual.Limits.Join(l)
	return c
}

// unloaded lets only practice without weights go on.
func unloaded(c progression.Course) progression.Course {
	c = onDay(c, screening.Limits{})
	c.Request.Screening.Meanwhile = screening.UnloadedPractice
	return c
}

// kept adds what was done of a decision, as whoever keeps a course does: on a day whose check asks for
// less that goes into the log as such, also where nothing of the exercise was done.
func kept(c *progression.Course, d progression.Decision, left float64) {
	v := progression.Visit{Day: c.Day, Plan: last(c).Plan}
	if d.Next != nil && d.Instead == "" {
		v = asAsked(*d.Next, c.Day, left)
	}
	v.After = d.After
	c.Log = append(slices.Clone(c.Log), v)
	c.Day += 3
}

// fiveOf is somebody who does five of the only weight, well.
func fiveOf(t failer) progression.Course {
	c := rowCourse(t, 10)
	last(&c).Plan.Load, last(&c).Plan.Count = held(10*kilo), 5
	done(&c, 10*kilo, 5, 3)
	return c
}

// Whoever does five of the only weight well does not lose it to one lighter day.
func TestLighterDayTakesNoExerciseForGood(t *testing.T) {
	for _, what := range []struct {
		name string
		day  func(progression.Course) progression.Course
	}{
		{"a lighter session", func(c progression.Course) progression.Course { return onDay(c, screening.LighterSession()) }},
		{"practice without weights", unloaded},
	} {
		t.Run(what.name, func(t *testing.T) {
			c := fiveOf(t)
			usual := nextOf(t, c)
			d := nextOf(t, what.day(c))
			if usual.Next == nil || usual.Next.Load.Each() != 10*kilo || usual.After != nil {
				t.Fatalf("without the check: %s", tell(usual))
			}
			if d.After == nil || d.Instead == "" && d.Next != nil || d.Action == progression.StopExercise || !hasReason(d, "progression.of-the-day") {
				t.Fatalf("on the day: %s, of the day %v", tell(d), d.After != nil)
			}
			kept(&c, d, 0)
			is := nextOf(t, c)
			if is.Next == nil || is.Instead != "" || is.Next.Load.Each() != 10*kilo || is.Next.Sets != last(&c).Plan.Sets || is.Next.Count != 5 || !hasReason(is, "progression.goes-on") {
				t.Errorf("after it: %s", tell(is))
			}
		})
	}
}

// lighterDay is a course of three sets of ten after which the day's check asked for a lighter session.
func lighterDay(t failer, left float64) (c progression.Course, d progression.Decision) {
	c = rowCourse(t, 4, 4.25)
	done(&c, 4*kilo, 10, 6)
	last(&c).Plan.Count = 10
	d = nextOf(t, onDay(c, screening.LighterSession()))
	if d.After == nil || d.Instead != "" || d.Next == nil || d.Next.Sets >= 3 {
		t.Fatalf("on the day: %s", tell(d))
	}
	kept(&c, d, left)
	return c, d
}

// A lighter session done as asked leaves no trace: the sets are back, and nothing is made harder.
func TestOnFromBeforeTheDay(t *testing.T) {
	c, _ := lighterDay(t, 8)
	is := nextOf(t, c)
	if is.Action != progression.HoldDose || is.Next == nil || is.Next.Sets != 3 || is.Next.Load.Each() != 4*kilo || is.Next.Count != 10 {
		t.Errorf("after it: %s", tell(is))
	}
	c.Day += 7
	c.Absence = screening.No
	if is = nextOf(t, c); !hasReason(is, "progression.return") {
		t.Errorf("ten days after it: %s", tell(is))
	}
	kept(&c, is, 4) // and another day after that is lighter than the one before it
}

// Where more repetitions were due the course goes on from as many as were asked for before the day.
func TestNoRiseBehindTheDay(t *testing.T) {
	c := rowCourse(t, 4, 6)
	done(&c, 4*kilo, 11, 7)
	last(&c).Plan.Count = 8
	usual, d := nextOf(t, c), nextOf(t, onDay(c, screening.LighterSession()))
	if usual.Next == nil || usual.Next.Load.Each() != 4*kilo || usual.Next.Count <= 8 {
		t.Fatalf("without the check: %s", tell(usual))
	}
	if d.After == nil || more(*d.After, last(&c).Plan) {
		t.Errorf("after the day: %+v", d.After)
	}
}

// What went badly on the day counts.
func TestTroubleOnTheDayCounts(t *testing.T) {
	for name, spoil := range map[string]func(v *progression.Visit){
		"pain": func(v *progression.Visit) { p := *v.Pain; p.During = score(7); v.Pain = &p },
		"failed": func(v *progression.Visit) {
			v.Sets = v.Sets[:1]
			v.Sets[0].Reps = 2
			v.Sets[0].Effort = units.Must(units.InReserve(0))
		},
	} {
		c, d := lighterDay(t, 8)
		spoil(last(&c))
		is := nextOf(t, c)
		c.Log[len(c.Log)-1].After = nil
		was := nextOf(t, c)
		if tell(is) != tell(was) || hasReason(is, "progression.goes-on") || is.Next != nil && is.Instead == "" && is.Next.Sets > d.Next.Sets {
			t.Errorf("%s: %s\nas a dose of its own %s", name, tell(is), tell(was))
		}
	}
}

// A third day running is nobody's day alone: the change stays, and is for somebody to look at.
func TestThreeDaysRunning(t *testing.T) {
	for name, day := range map[string]func(progression.Course) progression.Course{
		"lighter":  func(c progression.Course) progression.Course { return onDay(c, screening.LighterSession()) },
		"unloaded": unloaded,
	} {
		c := fiveOf(t)
		c.Absence = screening.No
		for visit := range 3 {
			d := nextOf(t, day(c))
			if (d.After != nil) != (visit < 2) || hasReason(d, "progression.days-running") == (d.After != nil) {
				t.Errorf("%s, visit %d: %s, of the day %v", name, visit, tell(d), d.After != nil)
			}
			kept(&c, d, 0)
		}
	}
}

// What is somebody else's to look at is no day's alone, and neither is what would be so without the check.
func TestNotOfTheDay(t *testing.T) {
	c := onDay(fiveOf(t), screening.LighterSession())
	c.Request.Screening.Ended = []screening.Code{"fall"}
	if d := nextOf(t, c); d.After != nil || d.Action != progression.StopAndRefer {
		t.Errorf("a fall told today: %s, %v", tell(d), d.After != nil)
	}
	c = rowCourse(t, 4, 4.25)
	done(&c, 4*kilo, 2, 0)
	was := nextOf(t, c)
	if d := nextOf(t, onDay(c, screening.LighterSession())); d.After != nil || was.Instead == "" || d.Instead != was.Instead {
		t.Errorf("too heavy in any case: %s, %v\nwithout the check %s", tell(d), d.After != nil, tell(was))
	}
	c = fiveOf(t)
	c.Usual = new(c.Request.Screening)
	c.Usual.Day++
	if _, err := progression.Next(c); err == nil {
		t.Error("the outcome of another assessment is taken")
	}
}

// daysWorse are limits of a day's check.
var daysWorse = []screening.Limits{
	screening.LighterSession(), {MinReserve: 5}, {NoBreathHolding: true}, {MaxFraction: .4}, {MaxIntensity: screening.Light},
	{Avoid: body.DemandSet(body.Overhead, body.FreeStanding)}, {LeastCount: 10}, {Masses: []screening.MassLimit{{Max: kilo, Author: "a doctor"}}},
}

// The law over a day: a check that is worse brings no harder day, and no harder visit after it, whatever the
// course before, for a person who can do the same.
func TestDayMonotone(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		p := drawClient(t)
		if !p.drawLog(t) {
			return false
		}
		better, err := p.today()
		if err != nil {
			t.Fatal(err)
		}
		better.Request.Screening.Day = min(better.Request.Screening.Day, better.Day)
		worse := onDay(better, rapid.SampledFrom(daysWorse).Draw(t, "limits"))
		if seldom(t, "without weights", 4) {
			worse = unloaded(better)
		}
		was, errBefore := progression.Next(better)
		is, errAfter := progression.Next(worse)
		if errBefore != nil || errAfter != nil || was.Next == nil || was.Instead != "" || is.Action == progression.StopAndRefer || is.After == nil {
			return false
		}
		for _, what := range breaches(better, was, is) {
			t.Fatalf("on the day: %s\nbetter %s\nworse  %s", what, tell(was), tell(is))
		}
		extra := float64(between(t, "easier", 1, 4))
		left := min(10, float64(was.Next.Reserve.Least)+extra)
		worse.Usual, worse.Request.Screening = nil, better.Request.Screening
		kept(&better, was, left)
		if is.Next != nil {
			left = ableTo(*was.Next, left, *is.Next)
		}
		kept(&worse, is, left)
		gap := units.Day(between(t, "more days", 0, 4)) // a week at most
		better.Day, worse.Day = better.Day+gap, worse.Day+gap
		better.Request.Estimates, better.Request.Performed, worse.Request.Estimates, worse.Request.Performed = nil, nil, nil, nil
		after, errBefore := progression.Next(better)
		other, errAfter := progression.Next(worse)
		if errBefore != nil || errAfter != nil {
			return false
		}
		if n := other.Next; hasReason(other, "progression.goes-on") && n != nil && other.Instead == "" && more(*n, *is.After) {
			t.Fatalf("more than before the day\nworse  %s\non the day %s", tell(other), tell(is))
		}
		if after.Action == progression.EaseOff || after.Instead != "" {
			return false // what was done without the check asks for less, and nobody knows of it with it
		}
		for _, what := range breaches(better, after, other) {
			t.Fatalf("after the day: %s\nbetter %s\nworse  %s\non the day\nbetter %s\nworse  %s", what, tell(after), tell(other), tell(was), tell(is))
		}
		return after.Next != nil && other.Next != nil
	})
}

// ableTo is what is left of a dose by who has so many left of another, by Epley.
func ableTo(p dose.Prescription, left float64, q dose.Prescription) float64 {
	most := float64(p.Count) + left
	if a, b := float64(p.Load.Each()), float64(q.Load.Each()); a > 0 && b > 0 {
		most = (a/b)*(30+most) - 30
	}
	return max(0, min(10, math.Floor(most-float64(q.Count))))
}

// more reports whether a dose asks for more than another in anything.
func more(p, q dose.Prescription) bool {
	a, b := p.Load.Each(), q.Load.Each()
	return a > b || p.Sets > q.Sets || p.Reserve.Least < q.Reserve.Least || a == b && p.Count > q.Count || p.Finding != nil || p.Feel != nil
}

package progression_test

import (
	"encoding/json"
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// longCourse is the row with visits every three days, assessed again three weeks ago.
func longCourse(t failer, visits int) progression.Course {
	t.Helper()
	c := rowCourse(t, 2, 4, 6, 10)
	one := c.Log[0]
	c.Log = nil
	for i := range visits {
		v := one
		v.Day = firstDay + units.Day(3*i)
		v.Observer.Day = v.Day
		v.Sets = slices.Clone(one.Sets)
		for j := range v.Sets {
			v.Sets[j].Day = v.Day
		}
		c.Log = append(c.Log, v)
	}
	c.Day = firstDay + units.Day(3*visits)
	c.Request.Screening = screening.Waived("a test", c.Request.Screening.Who, screening.InGroup, c.Day-21)
	return c
}

func written(t *testing.T, d progression.Decision) string {
	t.Helper()
	text, err := json.Marshal(d)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// named reports whether an error names the field at path.
func named(err error, path string) bool {
	var bad field.Errors
	bad.Add("", err)
	return slices.ContainsFunc(bad, func(f *field.Error) bool { return f.Path == path })
}

// What lies beyond reach is not looked at, good or bad; the order of the
// days is.
func TestNextLooksNoFurther(t *testing.T) {
	want := nextOf(t, longCourse(t, 40))
	old := longCourse(t, 200)
	got := nextOf(t, old)
	if diff := cmp.Diff(written(t, want), written(t, got)); diff != "" {
		t.Errorf("after 200 visits and after 40: %s", diff)
	}
	old.Log[3].Plan.Sets, old.Log[3].Sets[0].Load = -1, -1
	if diff := cmp.Diff(written(t, got), written(t, nextOf(t, old))); diff != "" {
		t.Errorf("with a bad visit of years ago: %s", diff)
	}
	if err := old.Validate(); err == nil {
		t.Error("Validate takes it")
	}
	old.Log[3].Day = old.Log[2].Day - 1
	if _, err := progression.Next(old); !named(err, "/log/3/day") {
		t.Errorf("out of order: %v", err)
	}
	late := longCourse(t, 200)
	late.Log[190].Plan.Sets = -1
	if _, err := progression.Next(late); !named(err, "/log/190/plan/sets") {
		t.Errorf("a bad visit of last month: %v", err)
	}
}

// A doubtful set is named by its place in the whole log.
func TestQueriesOfALongLog(t *testing.T) {
	c := longCourse(t, 200)
	last(&c).Sets[0].Load = 5 * kilo
	if d := nextOf(t, c); len(d.Queries) != 1 || d.Queries[0].Visit != 199 || d.Queries[0].Set != 0 {
		t.Errorf("%+v", d.Queries)
	}
}

// Next refuses what of another person stands in its log or among its tests, and
// the check of another day.
func TestNextRefusesAnother(t *testing.T) {
	for path, spoil := range map[string]func(c *progression.Course){
		"/log/0/sets/1/key": func(c *progression.Course) { c.Log[0].Sets[1].Key = "p2" },
		"/request/done/0/key": func(c *progression.Course) {
			c.Request.Done = []setlog.Set{c.Log[0].Sets[0]}
			c.Request.Done[0].Key = "p2"
		},
		"/request/screening/today":     func(c *progression.Course) { c.Request.Screening.Today = c.Day - 1 },
		"/request/estimates/0/key":     func(c *progression.Course) { c.Request.Estimates[0].Key = "p2" },
		"/request/screening/day":       func(c *progression.Course) { c.Request.Screening.Day = 0 },
		"/request/screening/review_by": func(c *progression.Course) { c.Request.Screening.ReviewBy = 0 },
	} {
		c := rowCourse(t, 4, 4.25)
		c.Request.Screening.Key = "p1"
		set := c.Log[0].Sets[0]
		set.Day, set.Side, set.Effort, set.Reps = firstDay, body.Both, units.Must(units.InReserve(2)), 8
		e, err := onerm.FromSet(set, c.Request.Exercise, c.Request.Screening.Who)
		if err != nil {
			t.Fatal(err)
		}
		c.Request.Estimates = []onerm.Estimate{e}
		nextOf(t, c)
		spoil(&c)
		if _, err := progression.Next(c); !named(err, path) {
			t.Errorf("%v, want %s", err, path)
		}
	}
}

// The plan, Prescribe and Next rest on the same of several tests, and list the others.
func TestNextChoosesTheTest(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	var tests []onerm.Estimate
	for side, kg := range map[body.Side]units.Mass{body.Left: 7 * kilo, body.Right: 8 * kilo} {
		set := setlog.Set{Day: firstDay, Exercise: c.Request.Exercise.ID, Side: side, Hold: c.Request.Exercise.Hold, Load: kg, Reps: 8, Effort: units.Must(units.InReserve(2))}
		e, err := onerm.FromSet(set, c.Request.Exercise, c.Request.Screening.Who)
		if err != nil {
			t.Fatal(err)
		}
		old := e
		old.Day -= 200
		tests = append(tests, e, old)
	}
	c.Request.Estimates = tests
	d := nextOf(t, c)
	v, least := last(&c), units.MaxMass // the tests, then the visit, in which both sides did the same
	for _, e := range []onerm.Estimate{tests[0], tests[2]} {
		one, _ := strength.Ability{}.Tested(e).Seen(v.Plan.Sets, v.Plan.Reserve.Least, v.Sets[:2]...).OneRM()
		least = min(least, one)
	}
	share, err := d.Next.Load.Each().Share(least)
	if err != nil || d.Next.Share != share || len(d.Next.Unused) != 2 {
		t.Errorf("%v of the weaker side, want %v; unused %+v", d.Next.Share, share, d.Next.Unused)
	}
}

// A test made since the last visit is known on the day itself: a low one makes the
// weight a larger share, a high one a smaller one.
func TestNextKnowsATestSinceTheLastVisit(t *testing.T) {
	for kg, larger := range map[units.Mass]bool{3 * kilo: true, 12 * kilo: false} {
		c := rowCourse(t, 4, 4.25)
		without := nextOf(t, c).Next
		set := setlog.Set{Day: c.Day, Exercise: c.Request.Exercise.ID, Side: body.Both, Hold: c.Request.Exercise.Hold, Load: kg, Reps: 8, Effort: units.Must(units.InReserve(2))}
		e, err := onerm.FromSet(set, c.Request.Exercise, c.Request.Screening.Who)
		if err != nil {
			t.Fatal(err)
		}
		c.Request.Estimates = []onerm.Estimate{e}
		with := nextOf(t, c).Next
		if c.Day <= last(&c).Day || with.Load.Each() != without.Load.Each() && larger != (with.Load.Each() < without.Load.Each()) || with.Load.Each() == without.Load.Each() && larger != (with.Share > without.Share) {
			t.Errorf("%v: %v of %v, was %v of %v", kg, with.Share, with.Load.Each(), without.Share, without.Load.Each())
		}
	}
}

func TestDecisionRepeatsAWaiver(t *testing.T) {
	c := rowCourse(t, 4)
	if d := nextOf(t, c); !hasReason(d, "dose.waived") {
		t.Errorf("%+v", d.Reasons)
	}
	c.Request.Screening.ReviewBy = c.Day - 1
	if d := nextOf(t, c); d.Next != nil || !hasReason(d, "dose.waived") {
		t.Errorf("%+v", d.Reasons)
	}
}

func BenchmarkNextLongLog(b *testing.B) {
	for _, visits := range []int{20, 200, 2000} {
		b.Run(fmt.Sprint(visits), func(b *testing.B) {
			c := longCourse(b, visits)
			b.ReportAllocs()
			for b.Loop() {
				nextOf(b, c)
			}
		})
	}
}

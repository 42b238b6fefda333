package progression_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// sessions are planned twice a week up to the day before c.Day, of which the first
// so many were done.
func sessions(c progression.Course, planned, done int) []programme.PlannedSession {
	var list []programme.PlannedSession
	for i := range planned {
		s := programme.PlannedSession{Day: c.Day - 1 - units.Day(3*i), Missed: screening.Yes}
		if i < done {
			s.Missed = screening.No
		}
		list = append(list, s)
	}
	return list
}

// Half of the sessions or fewer: a set fewer than the three that the plan builds up to,
// once, and nothing harder.
func TestNextSimplifiesForLowAttendance(t *testing.T) {
	for _, tt := range []struct {
		planned, done, sets int // sets of the last plan
		want                int
		action              progression.Action
	}{
		{8, 8, 3, 3, progression.Progress}, {8, 5, 3, 3, progression.Progress}, {8, 4, 3, 2, progression.EaseOff}, {8, 0, 2, 2, progression.EaseOff},
		{8, 0, 1, 1, progression.EaseOff}, {3, 0, 3, 3, progression.Progress}, {4, 2, 3, 2, progression.EaseOff}, {0, 0, 3, 3, progression.Progress},
	} {
		c := rowCourse(t, 4, 4.25)
		last(&c).Plan.Sets = tt.sets
		last(&c).Sets = last(&c).Sets[:2*tt.sets]
		c.Sessions = sessions(c, tt.planned, tt.done)
		d := nextOf(t, c)
		said := 0
		for _, r := range d.Reasons {
			if r.Code == "progression.attendance-low" {
				said++
			}
		}
		low := tt.action == progression.EaseOff
		if d.Action != tt.action || d.Next.Sets != tt.want || d.Next.Load.Each() > 4*kilo && low || (said == 1) != low || said > 1 {
			t.Errorf("%d of %d, %d sets: %v, %v × %d, said %d times", tt.done, tt.planned, tt.sets, d.Action, d.Next.Load.Each(), d.Next.Sets, said)
		}
	}
}

// With one set of few repetitions nothing is left to take: the dose is held, and says why.
func TestNextHoldsOneSetForLowAttendance(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	last(&c).Plan.Sets, last(&c).Plan.Count, last(&c).Sets = 1, 6, last(&c).Sets[1:3]
	done(&c, 4*kilo, 6, 8)
	c.Sessions = sessions(c, 8, 0)
	if d := nextOf(t, c); d.Action != progression.HoldDose || d.Next.Sets != 1 || d.Next.Count != 6 || !hasReason(d, "progression.attendance-low") {
		t.Errorf("%v, %d × %d, %+v", d.Action, d.Next.Sets, d.Next.Count, d.Reasons)
	}
}

// What else takes sets away does not do so twice.
func TestNextTakesOneSetForTwoReasons(t *testing.T) {
	for name, spoil := range map[string]func(c *progression.Course){
		"it hurts":      func(c *progression.Course) { last(c).Pain.During = score(7) },
		"a lighter day": func(c *progression.Course) { c.Request.Screening.Limits = screening.LighterSession() },
		"ten days away": func(c *progression.Course) { c.Day, c.Absence = firstDay+10, screening.No },
	} {
		for sets := 3; sets <= 4; sets++ { // a fourth one came when all else was at its end
			c := rowCourse(t, 4, 4.25)
			c.Request.Guideline = "acsm2011-strength-novice-intermediate"
			v := last(&c)
			v.Plan.Sets, v.Sets = sets, slices.Concat(slices.Repeat(v.Sets[:1], sets), slices.Repeat(v.Sets[5:], sets))
			spoil(&c)
			c.Sessions = sessions(c, 8, 2)
			if d := nextOf(t, c); d.Action != progression.EaseOff || d.Next.Sets != 2 || !hasReason(d, "progression.attendance-low") {
				t.Errorf("%s, %d sets: %v, %d sets", name, sets, d.Action, d.Next.Sets)
			}
		}
	}
}

func TestCourseRefusesSessions(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	c.Sessions = []programme.PlannedSession{{Day: c.Day + 1}, {Day: c.Day - 1}, {Day: c.Day - 1}, {}}
	_, err := progression.Next(c)
	if got, want := pathsOf(err), []string{"/sessions/0/day", "/sessions/2/day", "/sessions/3/day"}; !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}

// Fewer sessions done never give more.
func TestFewerSessionsNeverMore(t *testing.T) {
	neverMore(t, func(*rapid.T, *client) {}, func(t *rapid.T, p *client) (string, bool) {
		p.course.Sessions = slices.Clone(p.course.Sessions)
		for i := range p.course.Sessions {
			if s := &p.course.Sessions[i]; s.Missed == screening.No && seldom(t, "missed", 2) {
				s.Missed = notNo(t)
			}
		}
		return "fewer sessions", len(p.course.Sessions) > 0
	})
}

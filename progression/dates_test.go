package progression_test

import (
	"errors"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// refused reports whether err has the conflict at the path.
func refused(err error, path string) bool {
	var bad field.Errors
	bad.Add("", err)
	return slices.ContainsFunc(bad, func(f *field.Error) bool { return f.Path == path && errors.Is(f, field.ErrConflict) })
}

// A slip in a date is an error, and never silences what happened: a visit with
// chest pain before an assessment of a later day than today's least of all.
func TestNextRefusesDatesOfTheFuture(t *testing.T) {
	for _, days := range []units.Day{1, 3, 4, 400} {
		for what, tt := range map[string]struct {
			path  string
			spoil func(c *progression.Course)
		}{
			"an assessment":     {"/request/screening/day", func(c *progression.Course) { c.Request.Screening.Day, last(c).LookedAt = c.Day+days, lookedAt }},
			"a day's check":     {"/request/screening/today", func(c *progression.Course) { c.Request.Screening.Today = c.Day + days }},
			"a visit":           {"/day", func(c *progression.Course) { last(c).Day = c.Day + days }},
			"a look":            {"/request/technique/day", func(c *progression.Course) { c.Request.Technique.Day = c.Day + days }},
			"a look of the log": {"/log/0/observer/day", func(c *progression.Course) { last(c).Observer.Day = last(c).Day + days }},
			"who looked at it":  {"/log/0/looked_at/day", func(c *progression.Course) { last(c).LookedAt = dose.Observation{Who: "Doctor M", Day: c.Day + days} }},
		} {
			for _, pain := range []screening.PainKind{screening.OrdinaryPain, screening.ChestPain} {
				c := rowCourse(t, 4, 4.25)
				last(&c).Pain.Kind = pain
				tt.spoil(&c)
				if d, err := progression.Next(c); !refused(err, tt.path) && (pain != screening.ChestPain || d.Action != progression.StopAndRefer) {
					t.Errorf("%s, %d days after, %v: %v, %v", what, days, pain, d.Action, err)
				}
				if what == "an assessment" {
					if _, err := progression.Next(c); !refused(err, tt.path) {
						t.Errorf("%s, %d days after, %v: %v", what, days, pain, err)
					}
				}
				if list, err := progression.NextAll([]progression.Course{rowCourse(t, 4), c}); !refused(err, "/1"+tt.path) && (pain != screening.ChestPain || list[0].Action != progression.StopAndRefer) {
					t.Errorf("session: %s, %d days after, %v: %v", what, days, pain, err)
				}
			}
		}
	}
}

// A test of strength that is too old is refused by name.
func TestNextRefusesAStaleTest(t *testing.T) {
	for days, want := range map[units.Day]bool{84: false, 85: true, 400: true} {
		c := rowCourse(t, 4, 4.25)
		set := setlog.Set{Day: c.Day - days, Exercise: c.Request.Exercise.ID, Side: body.Both, Hold: c.Request.Exercise.Hold, Load: 6 * kilo, Reps: 8, Effort: units.Must(units.InReserve(2))}
		e, err := onerm.FromSet(set, c.Request.Exercise, body.Person{Age: 66, Sex: body.Female, Training: body.Novice})
		if err != nil {
			t.Fatal(err)
		}
		c.Request.Estimates = []onerm.Estimate{e}
		_, err = progression.Next(c)
		_, all := progression.NextAll([]progression.Course{c})
		if got := refused(err, "/request/estimates/0/day"); got != want || refused(all, "/0/request/estimates/0/day") != want {
			t.Errorf("%d days old: %v, %v", days, err, all)
		}
	}
}

// Past its review an assessment is made again, by whoever made it: nothing is
// prescribed, and nobody is sent on for it.
func TestNextAssessesAnew(t *testing.T) {
	for over, want := range map[units.Day]progression.Action{0: progression.Progress, 1: progression.HoldDose, 400: progression.HoldDose} {
		c := rowCourse(t, 4, 4.25)
		c.Request.Screening.ReviewBy = c.Day - over
		if over > 100 {
			c.Request.Screening.Day = c.Day - over - 30
		}
		d := nextOf(t, c)
		if d.Action != want || (d.Next == nil) != (over > 0) || hasReason(d, "progression.assess-anew") != (over > 0) {
			t.Errorf("%d days over: %v, %+v", over, d.Action, d.Reasons)
		}
		hurt := rowCourse(t, 4, 4.25)
		hurt.Request.Screening = c.Request.Screening
		last(&hurt).Pain.Kind = screening.ChestPain
		list, err := progression.NextAll([]progression.Course{c, hurt})
		if err != nil || list[0].Action != progression.StopAndRefer {
			t.Errorf("chest pain beside it: %v, %v", list[0].Action, err)
		}
	}
}

// Nor does a review that is over hide that somebody has to be seen.
func TestNextRefersPastTheReview(t *testing.T) {
	for _, route := range []screening.Route{screening.SameDay, screening.Emergency} {
		c := rowCourse(t, 4, 4.25)
		c.Request.Screening.ReviewBy, c.Request.Screening.Route = c.Day-1, route
		if d := nextOf(t, c); d.Action != progression.StopAndRefer || d.Next != nil || hasReason(d, "progression.assess-anew") {
			t.Errorf("%v: %v, %+v", route, d.Action, d.Reasons)
		}
	}
}

// A plan that is over is followed no further: nothing is made harder, and what is
// overdue stands first. What speaks for less does so nevertheless.
func TestNextKeepsToThePlansDates(t *testing.T) {
	const day = firstDay + 3
	for _, tt := range []struct {
		dates  week.Dates
		action progression.Action
		first  []evidence.ReasonCode
	}{
		{week.Dates{}, progression.Progress, nil},
		{week.Dates{Review: day + 1, Retest: day + 1, Expires: day}, progression.Progress, nil},
		{week.Dates{Review: day, Retest: day + 1, Expires: day}, progression.Progress, []evidence.ReasonCode{"progression.review-due"}},
		{week.Dates{Review: day - 9, Retest: day - 9, Expires: day - 1}, progression.HoldDose, []evidence.ReasonCode{"progression.review-due", "progression.retest-due", "progression.plan-expired"}},
	} {
		for _, hurts := range []bool{false, true} {
			c := rowCourse(t, 4, 4.25)
			c.Plan = tt.dates
			want := tt.action
			if hurts {
				last(&c).Pain.During = score(7)
				want = progression.EaseOff
			}
			d := nextOf(t, c)
			var codes []evidence.ReasonCode
			for _, r := range d.Reasons {
				codes = append(codes, r.Code)
			}
			if d.Action != want || len(codes) < len(tt.first) || !slices.Equal(codes[:len(tt.first)], tt.first) {
				t.Errorf("%+v, hurts %v: %v, %v", tt.dates, hurts, d.Action, codes)
			}
		}
	}
	c := rowCourse(t, 4, 4.25)
	c.Plan.Review = -1
	if _, err := progression.Next(c); !errors.Is(err, field.ErrOutOfRange) || !slices.Contains(pathsOf(err), "/plan/review") {
		t.Errorf("%v", err)
	}
}

func pathsOf(err error) []string {
	var bad field.Errors
	bad.Add("", err)
	var list []string
	for _, f := range bad {
		list = append(list, fmt.Sprint(f.Path))
	}
	return list
}

// A visit decided on years ahead is refused by its day, from the first on that a dose
// would refuse by the days missed.
func TestNextRefusesADayYearsAhead(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	c.Absence = screening.No
	for _, tt := range []struct {
		after units.Day
		path  string
	}{{7 + 3650, ""}, {7 + 3651, "/day"}, {36540, "/day"}} {
		c.Day = last(&c).Day + tt.after
		c.Request.Screening.Day, c.Request.Screening.ReviewBy, c.Request.Estimates = c.Day, c.Day, nil
		if _, err := progression.Next(c); paths(err) != tt.path || err != nil && !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("%d days on: %v, want %q", tt.after, err, tt.path)
		}
	}
}

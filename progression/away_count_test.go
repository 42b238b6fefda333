package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// The lightest weight after days missed: of ten with five to be left, which six left showed,
// 5 % of strength take three (Epley), 10 % five, 20 % nine; no fewer than the lightest is
// worked with. Once 17 days without one exercise brought a set of one.
func TestNextCountAfterDaysMissed(t *testing.T) {
	for days, want := range map[units.Day]int{8: 7, 14: 7, 15: 5, 28: 5, 29: 3, 56: 3} {
		for _, id := range []exercise.ID{"one-arm-dumbbell-row", "seated-hammer-curl"} {
			c := beginner(t, id, 1, 2)
			c.Log[0] = asAsked(c.Log[0].Plan, firstDay, 6)
			goesOn(t, &c, 2, 6)
			last(&c).Plan.Count = 10
			*last(&c) = asAsked(last(&c).Plan, last(&c).Day, 6)
			c.Day, c.Absence = last(&c).Day+days, screening.No
			if d := nextOf(t, c); d.Next == nil || d.Next.Load.Each() != kilo || d.Next.Count != want {
				t.Errorf("%s, %d days: %s, want %d", id, days, tell(d), want)
			}
		}
	}
}

// More days missed never bring more repetitions of the same weight, up to where it begins
// anew, nor so few that no set is worth it.
func TestNextCountNeverMoreAfterMoreDays(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, ok := drawToday(t)
		if !ok {
			return false
		}
		c.Absence, c.Sessions, c.Request.Estimates, c.Request.Performed = screening.No, nil, nil, nil
		dayAfter := func(days int) (progression.Decision, bool) {
			c.Day = last(&c).Day + units.Day(days)
			c.Request.Screening.Day, c.Request.Screening.ReviewBy = c.Day, c.Day+100
			d, err := progression.Next(c)
			return d, err == nil && d.Next != nil && d.Instead == ""
		}
		few := between(t, "few days", 8, rule.LongestBreak()-1)
		was, some := dayAfter(few)
		is, more := dayAfter(between(t, "more days", few+1, rule.LongestBreak()))
		if !some || !more || was.Next.Measure != exercise.Repetitions {
			return false
		}
		if a, b := was.Next, is.Next; b.Load.Each() == a.Load.Each() && b.Reserve == a.Reserve && b.Phase == a.Phase && b.Count > a.Count && !hasReason(is, "progression.return-anew") && b.Load.Each() == heaviestDone(*last(&c)) {
			t.Fatalf("%d days\nbefore %s\nafter  %s", few, tell(was), tell(is))
		}
		if p := is.Next; p.Phase != dose.Familiarise && p.Count < min(3, fewestPlanned(c.Log)) {
			t.Fatalf("so few: %s", tell(is))
		}
		return true
	})
}

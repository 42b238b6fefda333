package progression_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
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

// Beginning anew is never more than the ladder's last rung: no more weight, no more sets, no
// more repetitions of the same weight, no search past that weight, and nothing where the rung
// gives nothing; an absence with a medical cause that was assessed since begins no higher.
func TestNextAnewNeverMoreThanLastRung(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, ok := drawToday(t)
		if !ok {
			return false
		}
		c.Sessions, c.Request.Estimates, c.Request.Performed = nil, nil, nil
		dayAfter := func(days int, medical screening.Answer) (progression.Decision, bool) {
			c.Day, c.Absence = last(&c).Day+units.Day(days), medical
			c.Request.Screening.Day, c.Request.Screening.ReviewBy = c.Day, c.Day+100
			d, err := progression.Next(c)
			return d, err == nil
		}
		few := between(t, "few days", 8, rule.LongestBreak())
		was, some := dayAfter(few, screening.No)
		days, medical := few, screening.Yes
		if rapid.Bool().Draw(t, "long") {
			days, medical = between(t, "days", rule.LongestBreak()+1, 200), screening.No
		}
		is, more := dayAfter(days, medical)
		lighter := slices.ContainsFunc([]evidence.ReasonCode{"progression.below-three", "progression.too-much", "progression.above-limit", "progression.few-for-limit"}, func(why evidence.ReasonCode) bool {
			return hasReason(was, why) // of a heavier weight
		})
		if !some || !more || is.Next == nil || is.Instead != "" || lighter {
			return false
		}
		what := ""
		switch a, b := was.Next, is.Next; {
		case a == nil || was.Instead != "":
			what = "a dose where there was none"
		case b.Load.Each() > a.Load.Each():
			what = "more load"
		case b.Sets > a.Sets:
			what = "more sets"
		case b.Load.Each() == a.Load.Each() && b.Load.Each() == last(&c).Plan.Load.Each() && b.Count > a.Count: // of a lighter one they are not ordered
			what = "more repetitions"
		case b.Finding != nil && reached(c.Request.Kit, *b) > a.Load.Each() && (a.Finding == nil || reached(c.Request.Kit, *b) > reached(c.Request.Kit, *a)):
			what = "a search past the last rung"
		}
		if what != "" {
			t.Fatalf("%s: after %d days\nbefore %s\nafter  %s", what, few, tell(was), tell(is))
		}
		return true
	})
}

package record_test

import (
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/units/evidence"
)

// minutesSaid are the minutes that a review says a session takes, and whether that is too
// long.
func minutesSaid(re record.Review) (minutes int, over bool) {
	for _, r := range re.Coming.Reasons {
		for _, a := range r.Args {
			if a.Name == "minutes" && r.Code == "dose.minutes" {
				_, _ = fmt.Sscan(a.Value(), &minutes)
			}
		}
		over = over || r.Code == "dose.minutes-over"
	}
	return minutes, over
}

// The minutes of a review are those of its doses, by the same sum as a plan's; where they
// are more than were given it says so, and no set is added while they are.
func TestMinutesOfAReview(t *testing.T) {
	r := read(t, review)
	for i := range r.Asked {
		r.Asked[i].Sets = 1 // so that there are some to come
	}
	free, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	adds := 0
	for _, item := range free.Items {
		if c := item.Decision.Change; c == progression.MoreSets || c == progression.ExtraSet {
			adds++
		}
	}
	whole, over := minutesSaid(free)
	var doses []dose.Prescription
	for _, item := range free.Items {
		doses = append(doses, *item.Decision.Next)
	}
	if sum := 5 + week.MinutesOf(doses); float64(whole) < sum || float64(whole) >= sum+1 || over || adds == 0 {
		t.Fatalf("%d minutes are said, too long: %v; the doses take %v, %d sets are added", whole, over, sum, adds)
	}
	for minutes := 1; minutes <= whole; minutes++ {
		r.Minutes = minutes
		re, err := r.Assess(r.Review)
		if err != nil {
			t.Fatal(err)
		}
		now, over := minutesSaid(re)
		if over != (now > minutes) || minutes >= whole && encodedItems(t, re.Items) != encodedItems(t, free.Items) {
			t.Errorf("%d minutes given, %d needed, too long: %v", minutes, now, over)
		}
		for i, item := range re.Items {
			held := slices.ContainsFunc(item.Decision.Reasons, func(r evidence.Reason) bool { return r.Code == "dose.fewer-sets" })
			if was := item.Log[len(item.Log)-1].Plan.Sets; over && item.Decision.Next.Sets > was || held != (item.Decision.Next.Sets < free.Items[i].Decision.Next.Sets) {
				t.Errorf("%d minutes: %s, %d sets after %d, %s", minutes, item.Name, item.Decision.Next.Sets, was, item.Decision.Change)
			}
		}
	}
}

// A review moves neither its own next day nor the last one of the plan.
func TestReviewMovesNoDates(t *testing.T) {
	r := read(t, review)
	was, err := r.Dates(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	for day := r.Review; day < r.Review+40; day += 6 {
		re, err := r.Assess(day)
		if err != nil {
			if r.Absence = 1 + r.Absence; r.Absence > 2 {
				t.Fatal(err)
			}
			continue
		}
		if re.InForce != was || re.Expired != (day > was.Expires) {
			t.Errorf("on %s: %+v, before %+v", day, re.InForce, was)
		}
	}
}

package week_test

import (
	"testing"

	"example.org/posology/dose/week"
	"example.org/posology/units/evidence"
)

// The numbers in the text of each fact are those that the code goes by, so that neither
// changes without the other.
func TestFactsFollowConstants(t *testing.T) {
	want := map[evidence.FactID]string{
		"dose.familiarise-two-weeks":    "two weeks of familiarisation come first; then a review, and one every six weeks",
		"dose.retest":                   "an estimate is made anew after three weeks",
		"dose.expiry":                   "a plan expires after eight weeks, or when a clearance that it rests on lapses",
		"dose.warm-up":                  "five minutes of easy movement before a session",
		"dose.change-between-exercises": "two minutes from one exercise to the next, for the length of a session",
		"dose.sets-first":               "where the row asks for two sets or more and nothing is learnt any more, exercises that together train legs, hips, back, abdomen, chest, shoulders, arms get those sets before any other exercise is added; while learning one set is enough, and with a row that names one set each exercise has one first",
		"dose.one-side":                 "what one arm or leg is limited to, or kept from, leaves its work to the other side; where it is kept from it, only in exercises that let it rest: it holds nothing, bears no weight and is not lain on",
		"dose.days-between":             "at least two days from one session to the next",
	}
	for f := range week.Facts() {
		if f.Value != want[f.ID] {
			t.Errorf("%s: %q, want %q", f.ID, f.Value, want[f.ID])
		}
		delete(want, f.ID)
	}
	if len(want) > 0 {
		t.Errorf("missing: %v", want)
	}
}

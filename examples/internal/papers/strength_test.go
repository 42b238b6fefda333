package papers_test

import (
	"math"
	"strings"
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
)

func tracksOf(t *testing.T, r record.Record) map[string]papers.Strength {
	t.Helper()
	review, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	list, err := papers.Strengths(review.Items, review.Screening.Who)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]papers.Strength{}
	for _, s := range list {
		all[s.Name] = s
	}
	return all
}

// What is lifted with the body is not followed, nor a weight that nobody planned, nor a visit
// that shows a lower bound; each side is followed alone.
func TestStrengths(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	all := tracksOf(t, r)
	for name, days := range map[string]int{"one-arm dumbbell row, left": 8, "one-arm dumbbell row, right": 8, "dumbbell floor press": 8, "seated hammer curl": 8} {
		s, ok := all[name]
		if !ok {
			t.Errorf("no %s", name)
			continue
		}
		if len(s.Readings) != days {
			t.Errorf("%s: %d days, want %d", name, len(s.Readings), days)
		}
	}
	if len(all) != 4 {
		t.Errorf("%d are followed, want 4", len(all))
	}
	// Epley, one repetition more than told: 6 kg, 15 done on the last day, told 4 in reserve.
	row := all["one-arm dumbbell row, left"].Readings
	if got, want := row[len(row)-1].Value, math.Log(6*(1+20.0/30)); math.Abs(got-want) > 1e-9 {
		t.Errorf("read %v, want %v", got, want)
	}
	// A novice's first visit is read 6.6 % higher, as the second would be: 2 kg, 8 done, told 5.
	curl := all["seated hammer curl"].Readings[0]
	if want := math.Log(2*(1+14.0/30)) + math.Log(1.066); math.Abs(curl.Value-want) > 1e-9 || curl.Variance < 0.036*0.036+0.06*0.06 {
		t.Errorf("read %v give or take %v, want %v", curl.Value, curl.Variance, want)
	}
}

// The line of the client says what the clinician's says, and nothing beside what holds;
// whoever never changes reads of no change.
func TestStrengthIsSaid(t *testing.T) {
	client, letter := lastDay(t, programtest.Decoded(t, demo.HomeReview()))
	if !strings.Contains(client, ": No clear change yet.") || !strings.Contains(letter, "Strength by all visits") {
		t.Errorf("%s\n%s", client, letter)
	}
	for word, want := range map[string]string{"rising": "You are getting stronger.", "no clear change": "No clear change yet."} {
		if strings.Contains(letter, word+":") != strings.Contains(client, want) {
			t.Errorf("%s: %s\n%s", word, client, letter)
		}
	}
	if held, _ := lastDay(t, programtest.Decoded(t, demo.HomeReviewRefer())); strings.Contains(held, "Your strength, by all") {
		t.Error(held)
	}
	same := programtest.Decoded(t, demo.HomeReview())
	for i := range same.Done {
		if s := &same.Done[i]; s.Exercise == "one-arm-dumbbell-row" && s.Day > same.Done[0].Day {
			s.Load, s.Reps, s.Effort = 6*units.Kilogram, 10, units.Must(units.InReserve(4))
		}
	}
	for name, s := range tracksOf(t, same) {
		if s.Odds.Rose >= 0.5 && strings.Contains(name, "row") {
			t.Errorf("%s: %s", name, s.Clinician())
		}
	}
}

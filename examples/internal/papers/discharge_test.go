package papers_test

import (
	"strings"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
)

// lastDay returns both papers of a last day, as text without its line breaks.
func lastDay(t *testing.T, r record.Record, results ...function.Result) (client, letter string) {
	t.Helper()
	r.Function = nil
	for _, one := range results {
		r.Function = append(r.Function, choice.Tried{Result: one})
	}
	review, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	all, err := papers.Discharge(r, review)
	if err != nil {
		t.Fatal(err)
	}
	var texts []string
	for _, p := range all {
		var out strings.Builder
		if err := p.Text(&out); err != nil {
			t.Fatal(err)
		}
		texts = append(texts, strings.Join(strings.Fields(out.String()), " "))
	}
	return texts[0], texts[1]
}

func stood(day units.Day, value string, try uint8) function.Result {
	return function.Result{Test: function.ChairStand30, Day: day, How: function.Done, Value: units.Must(function.ParseAmount(value)), Try: try}
}

// What was reached, what goes on, and nothing that is new; a change is called real only
// where the library can tell.
func TestDischarge(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	first := r.Visits[0].Day
	client, letter := lastDay(t, r, stood(first, "10 reps", 1), stood(r.Review, "17 reps", 2))
	for _, want := range []string{"WHAT YOU HAVE REACHED", "Goblet squat", "WHAT TO KEEP DOING", "WHEN IT HURTS", "above 5 of 10", "AFTER A BREAK", "WHEN TO COME BACK", "more than 8 weeks", "10 reps", "17 reps", "no medical device"} {
		if !strings.Contains(client, want) {
			t.Errorf("no %q in\n%s", want, client)
		}
	}
	for _, want := range []string{"START AND END", "Tests of function", "goes on alone", "9 visits since Tuesday 2 February 2027; planned: 10."} {
		if !strings.Contains(letter, want) {
			t.Errorf("no %q in\n%s", want, letter)
		}
	}
	if strings.Contains(client, "10 kg dumbbell in both hands") {
		t.Error("a weight that was never lifted goes home")
	}
}

// Where somebody is to look first nobody is sent off alone.
func TestDischargeHeld(t *testing.T) {
	client, letter := lastDay(t, programtest.Decoded(t, demo.HomeReviewRefer()))
	if !strings.Contains(client, "Please do not go on alone") || strings.Contains(client, "WHAT TO KEEP DOING") || strings.Contains(letter, "goes on alone") {
		t.Errorf("%s\n%s", client, letter)
	}
}

// Of results that cannot be compared no change is told.
func TestDischargeNotAlike(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	start, end := stood(r.Visits[0].Day, "10 reps", 1), stood(r.Review, "17 reps", 2)
	start.Protocol, end.Protocol = "seat 50 cm", "seat 45 cm"
	if _, letter := lastDay(t, r, start, end); strings.Contains(letter, "Tests of function") {
		t.Errorf("%s", letter)
	}
}

// What showed in several exercises of a day stands once below what the letter begins with,
// with their names, apart from what hurt in one of them.
func TestSignsOnce(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReviewRefer())
	r.Visits[len(r.Visits)-1].Moment = &screening.Moment{Signs: []screening.Code{"dizzy_or_swaying"}}
	_, letter := lastDay(t, r)
	for text, want := range map[string]int{"dizzy or swaying": 2, "spreading": 2, "sit-to-stand holding a dumbbell, hip hinge with one dumbbell, on Friday 23 April 2027: During the sets: dizzy": 1} {
		if n := strings.Count(letter, text); n != want {
			t.Errorf("%q %d times, want %d, in\n%s", text, n, want, letter)
		}
	}
}

// What is for company alone is what the planner has no dose of for who trains alone: it lets somebody who
// may fall stand up from a chair that stands behind, and the page says nothing else.
func TestDischargeAlone(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	r.Profile.Setting, r.Checks = screening.InGroup, nil
	r.Profile.Falls = &screening.FallsScreen{Fell: screening.Yes}
	for i := range r.Asked {
		if r.Asked[i].Exercise == "goblet-squat" {
			r.Asked[i].Exercise = "dumbbell-sit-to-stand"
		}
	}
	for i := range r.Done {
		if r.Done[i].Exercise == "goblet-squat" {
			r.Done[i].Exercise = "dumbbell-sit-to-stand"
		}
	}
	client, _ := lastDay(t, r)
	if !strings.Contains(client, "Only while somebody is near: hip hinge with one dumbbell.") || !strings.Contains(client, "1. SIT-TO-STAND HOLDING A DUMBBELL") {
		t.Errorf("%s", client)
	}
}

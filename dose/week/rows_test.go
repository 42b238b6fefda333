package week_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/week"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func TestSameEasierExerciseStandsOnce(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"goblet-squat", "dumbbell-squat", "sit-to-stand"}
	r.Screening.Limits.Avoid = body.DemandSet(body.SpinalCompression)
	w := firstWeek(t, r)
	if len(w.Sessions[0].Items) != 1 || len(w.LeftOut) != 2 {
		t.Errorf("%d exercises, %d replaced", len(w.Sessions[0].Items), len(w.LeftOut))
	}
}

func TestOrderWanted(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"standing-calf-raise", "one-arm-dumbbell-row", "goblet-squat", "suitcase-carry", "dead-bug"}
	var got []exercise.ID
	for _, item := range firstWeek(t, r).Sessions[0].Items {
		got = append(got, item.Exercise)
	}
	want := []exercise.ID{"goblet-squat", "one-arm-dumbbell-row", "standing-calf-raise", "dead-bug", "suitcase-carry"}
	if !slices.Equal(got, want) {
		t.Errorf("order %v, want %v", got, want)
	}
}

func TestFewDaysAreSaid(t *testing.T) {
	if w := firstWeek(t, weekOf(0)); !has(w.Reasons, "dose.too-few-days") {
		t.Errorf("one day a week goes unsaid: %v", w.Reasons)
	}
}

func TestRequestJSON(t *testing.T) {
	r := weekOf(0, 2)
	data, err := json.Marshal(r)
	if err != nil {
		t.Fatal(err)
	}
	var back week.Request
	if err := field.Decode(data, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	first, second := firstWeek(t, r), firstWeek(t, back)
	if a, b := units.Must(json.Marshal(first)), units.Must(json.Marshal(second)); string(a) != string(b) {
		t.Errorf("a request read back gives another week:\n%s\n%s", a, b)
	}
	if err := field.Decode([]byte(`{"days": [], "days": []}`), &back, field.Strict); !errors.Is(err, field.ErrDuplicate) {
		t.Errorf("a key twice: %v", err)
	}
}

func TestBothSidesTestedPicksTheWeakerEitherWay(t *testing.T) {
	for _, leftKg := range []float64{4, 9} {
		r := weekOf(0)
		r.Exercises = []exercise.ID{"one-arm-dumbbell-row"}
		q := row(t)
		right := estimateOf(t, q, 6, 8, 2)
		q.Side = body.Left
		left := estimateOf(t, q, leftKg, 8, 2)
		q.Side = body.Right
		r.Estimates = []onerm.Estimate{left, right, estimateOf(t, q, 10, 8, 2)} // a later, better test of the right
		item := firstWeek(t, r).Sessions[0].Items[0]
		weaker := min(dosetest.LowEnd(left), dosetest.LowEnd(right))
		if most := units.Must(weaker.Scale(0.5, units.Down)); item.Load.Each() > most {
			t.Errorf("left %v kg: %v, want at most %v", leftKg, item.Load.Each(), most)
		}
	}
	r := weekOf(0)
	r.Exercises = []exercise.ID{"biceps-curl"}
	q := row(t)
	q.Exercise, q.Side = exerciseOf(t, "biceps-curl"), body.Both
	r.Estimates = []onerm.Estimate{estimateOf(t, q, 3, 8, 2)}
	if item := firstWeek(t, r).Sessions[0].Items[0]; item.Share == 0 {
		t.Errorf("an estimate for both sides is not used: %+v", item)
	}
}

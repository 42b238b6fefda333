package volume_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// No text is "not given", also where something was given before.
func TestNoTextTakesSetsBack(t *testing.T) {
	s := units.Must(volume.NewSets(9, volume.DirectSets))
	if err := s.UnmarshalText(nil); err != nil || !s.IsZero() {
		t.Errorf("%v, %v", s, err)
	}
}

// What is not given is missing; it contradicts nothing.
func TestNotGivenIsMissing(t *testing.T) {
	if _, err := volume.SessionLoad(units.Effort{}, 30); !errors.Is(err, field.ErrMissing) {
		t.Errorf("no rating: %v", err)
	}
	nine := units.Must(volume.NewSets(9, volume.DirectSets))
	if _, err := (volume.Sets{}).Compare(nine); !errors.Is(err, field.ErrMissing) {
		t.Errorf("no sets: %v", err)
	}
	if _, err := nine.Compare(volume.Sets{}); !errors.Is(err, field.ErrMissing) {
		t.Errorf("against no sets: %v", err)
	}
}

// An exercise all of whose sets the rule leaves out trains no muscle, also not
// beside one whose sets count; muscles that help have their day and no exercise.
func TestExercisesThatCount(t *testing.T) {
	rule := volume.Rule{Source: "a trial", Reserve: units.AtMost[units.RIR](2)}
	tally := counter(t, volume.Options{Rule: rule}).NewTally()
	sets := func(s setlog.Set, n int, reserve float64, day units.Day) {
		s.Effort, s.Day = units.Must(units.InReserve(reserve)), day
		add(t, tally, n, s)
	}
	sets(set("leg-press", body.OnStack, 20*units.Kilogram, 8), 2, 5, monday)
	sets(set("squat", body.BothHandsOnOne, 20*units.Kilogram, 8), 3, 1, monday+2)
	sets(set("dip-press", body.OnBar, 20*units.Kilogram, 8), 1, 2, monday+3)
	got := week(t, tally)
	for m, want := range map[body.Muscle]struct {
		exercises int
		days      []units.Day
	}{
		body.Quadriceps:     {1, []units.Day{monday + 2}},
		body.TricepsBrachii: {0, []units.Day{monday + 3}},
		body.Soleus:         {0, nil},
	} {
		if has := muscle(got, m); has.Exercises != want.exercises || !slices.Equal(has.Days, want.days) {
			t.Errorf("%v: %+v, want %+v", m, has, want)
		}
	}
	if diff := cmp.Diff([]volume.DaySets{{Day: monday + 2, Left: 3, Right: 3}}, ex(got, "squat").Daily); diff != "" {
		t.Error(diff)
	}
}

// A set of one repetition is the least of a week, in whichever order it came.
func TestSpanBeginsAtOne(t *testing.T) {
	for _, reps := range [][]int{{1, 5}, {5, 1}} {
		tally := counter(t, volume.Options{}).NewTally()
		for _, n := range reps {
			add(t, tally, 1, set("press", body.OneEachHand, 20*units.Kilogram, n))
		}
		if got := ex(week(t, tally), "press").Span; got != units.Must(units.Between(1, 5)) {
			t.Errorf("sets of %v: %v", reps, got)
		}
	}
}

// The classes as printed: below 5, 5 to 9, 10 or more (Schoenfeld 2017); below 12,
// 12 to 20, above 20 (Baz-Valle 2022). Sets go by halves.
func TestBandsAsPrinted(t *testing.T) {
	want := map[string][]units.Range[float64]{
		"schoenfeld2017": {units.AtMost(4.5), units.Must(units.Between(5.0, 9.0)), units.AtLeast(10.0)},
		"bazvalle2022":   {units.AtMost(11.5), units.Must(units.Between(12.0, 20.0)), units.AtLeast(20.5)},
	}
	for s := range volume.Classifications() {
		var got []units.Range[float64]
		for _, b := range s.Bands {
			got = append(got, b.Sets)
		}
		if !slices.Equal(got, want[s.ID]) {
			t.Errorf("%s: %v, want %v", s.ID, got, want[s.ID])
		}
	}
}

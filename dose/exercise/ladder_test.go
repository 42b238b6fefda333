package exercise_test

import (
	"errors"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

// TestInstead: never anything harder, nothing but bodies and dumbbells off the
// ladder, and everything that fits.
func TestInstead(t *testing.T) {
	c := exercise.Standard()
	for e := range c.All() {
		ladder := c.Ladder(e.ID)
		height := slices.IndexFunc(ladder, func(s exercise.Exercise) bool { return s.ID == e.ID })
		var want []exercise.ID
		for i := height - 1; i >= 0; i-- {
			want = append(want, ladder[i].ID)
		}
		for other := range c.All() {
			steps := slices.IndexFunc(c.Ladder(other.ID), func(s exercise.Exercise) bool { return s.ID == other.ID })
			byHand := slices.Contains(other.Implements, exercise.Bodyweight) || slices.Contains(other.Implements, exercise.Dumbbell)
			if other.Pattern == e.Pattern && other.ID != e.ID && steps <= height && byHand && !slices.Contains(want[:height], other.ID) {
				want = append(want, other.ID)
			}
		}
		var got []exercise.ID
		for s := range c.Instead(e.ID) {
			got = append(got, s.ID)
		}
		if !slices.Equal(got, want) {
			t.Errorf("Instead(%s) = %v, want %v", e.ID, got, want)
		}
	}
	for s := range c.Instead("dumbbell-romanian-deadlift") {
		if s.ID == "kettlebell-swing" || s.ID == "conventional-deadlift" || s.ID == "single-leg-romanian-deadlift" {
			t.Errorf("%s stands in for an easier hinge", s.ID)
		}
	}
	if got := slices.Collect(c.Instead("no-such")); got != nil {
		t.Errorf("Instead of an unknown ID = %v", got)
	}
	own, err := c.With(plain("own-box-squat", "", ""))
	if err != nil {
		t.Fatal(err)
	}
	if !slices.ContainsFunc(slices.Collect(own.Instead("goblet-squat")), func(s exercise.Exercise) bool { return s.ID == "own-box-squat" }) {
		t.Error("an exercise of one's own, which says nothing of implements, does not stand in")
	}
}

// TestRings compares the search for rings with walking every way up.
func TestRings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 6).Draw(t, "n")
		pick := rapid.IntRange(-1, n-1)
		id := func(i int) exercise.ID {
			if i < 0 {
				return ""
			}
			return exercise.ID(fmt.Sprintf("x%d", i))
		}
		var list []exercise.Exercise
		up := make([][]int, n)
		for i := range n {
			easier, harder := pick.Draw(t, "easier"), pick.Draw(t, "harder")
			list = append(list, plain(id(i), id(easier), id(harder)))
			if easier >= 0 {
				up[easier] = append(up[easier], i)
			}
			if harder >= 0 {
				up[i] = append(up[i], harder)
			}
		}
		ring := false
		for i := range n {
			ring = ring || reaches(up, i, i, n)
		}
		c, err := exercise.Catalogue{}.With(list...)
		if got := errors.Is(err, field.ErrConflict); got != ring {
			t.Fatalf("With(%v): %v, want a ring: %v", up, err, ring)
		}
		if !ring {
			for i := range n {
				if got := len(c.Ladder(id(i))); got < 1 || got > n {
					t.Fatalf("ladder of %d steps among %d", got, n)
				}
			}
		}
	})
}

// reaches reports whether a way of 1 to steps steps leads from one to another.
func reaches(up [][]int, from, to, steps int) bool {
	for _, next := range up[from] {
		if next == to || steps > 1 && reaches(up, next, to, steps-1) {
			return true
		}
	}
	return false
}

package exercise_test

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func ExampleExercise_Lacks() {
	step, err := exercise.Standard().Lookup("supported-step-up")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(step.Needs)
	fmt.Println(step.Lacks(exercise.Chair, exercise.Worktop))
	fmt.Println(step.Lacks(exercise.Staircase)) // a step and a rail
	// Output:
	// [counter step]
	// [step]
	// []
}

// The user's order of the bands is all that is known of them.
func ExampleCatalogue_WithBands() {
	catalogue, err := exercise.Standard().WithBands("soft", "wide")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range catalogue.Ladder("band-row-wide") {
		fmt.Println(e.ID)
	}
	// Output:
	// elbow-draw-back
	// band-row-soft
	// band-row-wide
}

func ExampleThings() {
	fmt.Println(slices.Collect(exercise.Things()))
	// Output: [chair chair with arms counter step stairs bench firm bed fixed bar anchor]
}

// named are words of an exercise's line that name a thing, which it then needs.
var named = map[string]exercise.Thing{
	"chair": exercise.Chair, "Sit ": exercise.Chair, "counter": exercise.Worktop, " table": exercise.Worktop, "the rail": exercise.Worktop, "low step": exercise.LowStep, "onto a step": exercise.LowStep,
	"bench": exercise.Bench, "firm bed": exercise.FirmBed, "fixed bar": exercise.FixedBar, "band fixed": exercise.Anchor, "band is fixed": exercise.Anchor,
}

// What the line for the client names has to be there. The seats of machines are their
// own, and where a line leaves a choice the other thing is asked for.
func TestNeedsFollowTheLines(t *testing.T) {
	for e := range exercise.Standard().All() {
		if e.Hold == body.OnStack {
			continue
		}
		how := strings.ReplaceAll(e.How, "bench or table", "table")
		how = strings.ReplaceAll(strings.ReplaceAll(how, "Sit or stand", "Stand"), "Sit back on a bench", "bench")
		how = strings.ReplaceAll(how, "chair with arms", "")
		if e.ID == "chair-arm-press" {
			how = ""
		}
		for word, thing := range named {
			if strings.Contains(how, word) && !slices.Contains(e.Needs, thing) {
				t.Errorf("%s names %q and does not need a %s: %q", e.ID, word, thing, e.How)
			}
		}
	}
}

// More things never lack more, and with all of them nothing lacks.
func TestMoreThingsLackNoMore(t *testing.T) {
	all := slices.Collect(exercise.Things())
	rapid.Check(t, func(t *rapid.T) {
		some := rapid.SliceOfDistinct(rapid.SampledFrom(all), rapid.ID[exercise.Thing]).Draw(t, "things")
		more := append(slices.Clone(some), rapid.SampledFrom(all).Draw(t, "one more"))
		for e := range exercise.Standard().All() {
			for _, thing := range e.Lacks(more...) {
				if !slices.Contains(e.Lacks(some...), thing) {
					t.Fatalf("%s lacks %s only with more things", e.ID, thing)
				}
			}
			if lacks := e.Lacks(all...); len(lacks) > 0 {
				t.Fatalf("%s lacks %v", e.ID, lacks)
			}
			if slices.ContainsFunc(e.Lacks(some...), func(w exercise.Thing) bool { return slices.Contains(some, w) }) {
				t.Fatalf("%s lacks what is there", e.ID)
			}
		}
	})
}

func TestBadNeedsAndBands(t *testing.T) {
	row, _ := exercise.Standard().Get("band-row")
	squat, _ := exercise.Standard().Get("goblet-squat")
	row.Needs = []exercise.Thing{exercise.Chair, exercise.Chair, 0, 99}
	squat.Band = "soft"
	for path, err := range map[string]error{"/needs/1": row.Validate(), "/needs/2": row.Validate(), "/needs/3": row.Validate(), "/band": squat.Validate()} {
		var all field.Errors
		if !errors.As(err, &all) || !slices.ContainsFunc(all, func(e *field.Error) bool { return e.Path == path }) {
			t.Errorf("%s: %v", path, err)
		}
	}
	for _, names := range [][]string{{"Soft"}, {"soft", "soft"}} {
		if _, err := exercise.Standard().WithBands(names...); err == nil {
			t.Errorf("%v are taken for bands", names)
		}
	}
}

// However the bands are called and however many they are: the ladder goes from the weakest
// to the strongest, begins where the exercise without a named band stood, and nothing
// without a band changes but what stood above it.
func TestBandsInTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bands := rapid.SliceOfNDistinct(rapid.StringMatching("[a-z0-9]{1,6}"), 1, 5, rapid.ID[string]).Draw(t, "bands")
		c, err := exercise.Standard().WithBands(bands...)
		if err != nil {
			t.Fatal(err)
		}
		if again, err := c.WithBands(bands...); err != nil || again.Len() != c.Len() {
			t.Fatalf("a second time: %v", err)
		}
		for e := range exercise.Standard().All() {
			if e.Hold != body.OnBand {
				if now, _ := c.Get(e.ID); now.Harder != e.Harder && now.Harder != e.Harder+"-"+exercise.ID(bands[0]) {
					t.Fatalf("%s leads to %s", e.ID, now.Harder)
				}
				continue
			}
			down := e.Easier
			if below, _ := exercise.Standard().Get(down); below.Hold == body.OnBand {
				down += "-" + exercise.ID(bands[0])
			}
			for i, band := range bands {
				b, ok := c.Get(e.ID + "-" + exercise.ID(band))
				if !ok || b.Band != band || b.Easier != down || !slices.Equal(b.Needs, e.Needs) || b.Demands != e.Demands {
					t.Fatalf("%s with %s: %+v", e.ID, band, b)
				}
				if last := i == len(bands)-1; last != (b.Harder == "") {
					t.Fatalf("%s leads to %q", b.ID, b.Harder)
				}
				down = b.ID
			}
		}
	})
}

// From the highest seat down, and from the lowest step up.
func ExampleCatalogue_WithHeights() {
	catalogue, err := exercise.Standard().WithHeights([]int{42, 48}, []int{10, 15, 20})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, id := range []exercise.ID{"sit-to-stand", "step-up"} {
		for e, _ := catalogue.Get(id); e.ID != ""; e, _ = catalogue.Get(e.Harder) {
			fmt.Print(" ", e.ID)
		}
		fmt.Println()
	}
	// Output:
	//  sit-to-stand sit-to-stand-42 dumbbell-sit-to-stand goblet-squat dumbbell-squat dumbbell-split-squat
	//  step-up step-up-15 step-up-20 dumbbell-step-up dumbbell-reverse-lunge
}

// Whatever the heights: the ladder goes up by them, each is once, and nothing else changes
// but what stands above the exercise.
func TestHeightsInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		heights := rapid.SliceOfNDistinct(rapid.IntRange(1, 100), 0, 5, rapid.ID[int])
		seats, steps := heights.Draw(t, "seats"), heights.Draw(t, "steps")
		c, err := exercise.Standard().WithHeights(seats, steps)
		if err != nil {
			t.Fatal(err)
		}
		if again, err := c.WithHeights(seats, steps); err != nil || again.Len() != c.Len() {
			t.Fatalf("a second time: %v", err)
		}
		if want := exercise.Standard().Len() + max(0, len(seats)-1) + 3*max(0, len(steps)-1); c.Len() != want {
			t.Fatalf("%d exercises, want %d", c.Len(), want)
		}
		for e := range exercise.Standard().All() {
			now, _ := c.Get(e.ID)
			if now.Easier != e.Easier {
				t.Fatalf("%s leads down to %s", e.ID, now.Easier)
			}
			last := 0
			for up, _ := c.Get(now.Harder); up.Height > 0; up, _ = c.Get(up.Harder) {
				if falls := slices.Contains(e.Needs, exercise.Chair); last > 0 && falls != (up.Height < last) {
					t.Fatalf("%s after %d", up.ID, last)
				}
				if last = up.Height; !up.Demands.Has(body.DeepKneeBend) || up.Demands.Both(e.Demands) != e.Demands {
					t.Fatalf("%s demands %s", up.ID, up.Demands)
				}
				if next, _ := c.Get(up.Harder); next.Height == 0 && next.ID != e.Harder {
					t.Fatalf("%s leads to %s, not to %s", up.ID, next.ID, e.Harder)
				}
			}
		}
	})
}

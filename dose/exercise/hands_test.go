package exercise_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/body"
)

// holdsOn are the exercises whose line for the client speaks of hands, arms or
// elbows and yet leaves a hand to hold on with, or has one hold on already
// (common practice).
var holdsOn = []exercise.ID{
	"supported-sit-to-stand", "supported-step-up", "supported-march", "standing-leg-back", "standing-leg-out", "standing-knee-bend",
	"standing-calf-raise", "single-leg-heel-raise", "heel-drop-knee-straight", "heel-drop-knee-bent",
	"dumbbell-calf-raise", "dumbbell-single-leg-heel-raise", "loaded-heel-drop-knee-straight", "loaded-heel-drop-knee-bent",
	"single-leg-romanian-deadlift", "one-arm-dumbbell-row", "one-arm-shoulder-press", "triceps-kickback", "dumbbell-external-rotation",
	"forearm-out", "forearm-in", "elbow-straightening", "wrist-bend", "wrist-curl", "wrist-lift", "wrist-extension",
	"seated-calf-raise", "side-plank",
}

// Every exercise whose line puts the hands somewhere says so, where its hold
// does not; hands on the thighs and a hand on something firm is one too many.
func TestHandsBusy(t *testing.T) {
	for e := range exercise.Standard().All() {
		how := strings.ToLower(e.How)
		puts := strings.Contains(how, "hand") || strings.Contains(how, "arm") || strings.Contains(how, "elbow")
		leaves := (e.Hold == body.Unloaded || e.Hold == body.OneHand) && e.Measure != exercise.Metres
		switch {
		case !leaves && e.HandsBusy:
			t.Errorf("%s: held %s, %s, which says so already", e.ID, e.Hold, e.Measure)
		case leaves && puts && e.HandsBusy == slices.Contains(holdsOn, e.ID):
			t.Errorf("%s: hands busy %v: %s", e.ID, e.HandsBusy, e.How)
		}
	}
	for id, free := range map[exercise.ID]bool{
		"hip-hinge-practice": false, "sit-to-stand": false, "supported-sit-to-stand": true, "suitcase-carry": false,
		"goblet-squat": false, "one-arm-dumbbell-row": true, "step-up": true, "chin-up": false,
	} {
		if e, ok := exercise.Standard().Get(id); !ok || e.HandFree() != free {
			t.Errorf("%s leaves a hand: %v, want %v", id, e.HandFree(), free)
		}
	}
}

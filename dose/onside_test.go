package dose_test

import (
	"errors"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/demand"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

var ofALimb = []body.Demand{
	body.Overhead, body.OverFace, body.FirmGrip, body.ShoulderResisted, body.ElbowResisted, body.WristResisted, body.HipResisted, body.KneeResisted, body.AnkleResisted,
}

// What one side is kept from rules out no more than what both are, and no less of work of
// that side, of both, and of any in which the other arm or leg does not rest.
func TestOneSideAvoided(t *testing.T) {
	freed, resting := 0, slices.DeleteFunc(slices.Clone(exercises), func(e exercise.Exercise) bool { return !e.OtherRests })
	rapid.Check(t, func(t *rapid.T) {
		ex := rapid.SampledFrom(rapid.SampledFrom([][]exercise.Exercise{exercises, resting}).Draw(t, "of")).Draw(t, "exercise")
		avoid := body.DemandSet(rapid.SliceOfN(rapid.SampledFrom(ofALimb), 0, len(ofALimb)).Draw(t, "avoid")...)
		clashes := func(l screening.Limits, side body.Side) body.Demands {
			o := waived(body.Novice)
			o.Limits = l
			return demand.Clashes(&o, &ex, side)
		}
		all := screening.Limits{Avoid: avoid}
		for own, one := range map[body.Side]screening.Limits{body.Left: {AvoidLeft: avoid}, body.Right: {AvoidRight: avoid}} {
			for side := range body.Sides() {
				is, both := clashes(one, side), clashes(all, side)
				if side == own || side == body.Both || !ex.OtherRests {
					if is != both {
						t.Fatalf("%s, %v: %v, of both sides %v", ex.ID, side, is, both)
					}
				} else if is != 0 {
					t.Fatalf("%s, %v: %v, of which the %v side is kept", ex.ID, side, is, own)
				} else if both != 0 {
					freed++
				}
			}
		}
	})
	if freed == 0 {
		t.Error("nothing was ever left to the other side")
	}
}

// A limit on mass on one side binds no more than one on both, and no less where both work.
func TestOneSideLimited(t *testing.T) {
	for _, ex := range exercises {
		for region := range body.Regions() {
			both := screening.MassLimit{Region: region, Side: body.Both}
			for _, own := range []body.Side{body.Left, body.Right} {
				one := screening.MassLimit{Region: region, Side: own}
				for side := range body.Sides() {
					is, want := demand.Binds(one, &ex, side), demand.Binds(both, &ex, side)
					if is && !want || (side == own || side == body.Both) && is != want {
						t.Errorf("%s, %v, a limit of the %v %s: binds %v, of both %v", ex.ID, side, own, region, is, want)
					}
				}
			}
		}
	}
}

// The exercises in which the other arm or leg rests: it holds nothing, bears no weight and is
// not lain on; of whatever stands, leans or lies on the other side none.
func TestTheOtherRests(t *testing.T) {
	want := []exercise.ID{
		"seated-calf-raise", "seated-one-arm-row", "one-arm-shoulder-press", "suitcase-carry", "ankle-weight-knee-extension", "straight-leg-raise",
		"ankle-weight-straight-leg-raise", "band-external-rotation", "cable-external-rotation", "band-internal-rotation", "cable-internal-rotation",
		"wrist-curl", "wrist-extension",
	}
	var is []exercise.ID
	for _, ex := range exercises {
		if ex.OtherRests {
			is = append(is, ex.ID)
		}
	}
	if slices.Sort(is); !slices.Equal(is, slices.Sorted(slices.Values(want))) {
		t.Errorf("%v", is)
	}
	two := exerciseOf(t, "goblet-squat")
	two.OtherRests = true
	if got := paths(two.Validate()); !slices.Equal(got, []string{"/other_rests"}) {
		t.Errorf("work of both sides with one that rests: %v", got)
	}
}

// The press of the right arm goes on beside a left shoulder that is kept from overhead work,
// with no weight above it, and the left arm gets none.
func TestTheSoundArmGoesOn(t *testing.T) {
	r := row(t)
	r.Exercise, r.Estimates = exerciseOf(t, "one-arm-shoulder-press"), nil
	r.Screening.Limits.AvoidLeft = body.DemandSet(body.Overhead)
	for side, works := range map[body.Side]bool{body.Left: false, body.Right: true, body.Both: false} {
		r.Side = side
		if _, err := dose.Prescribe(r); (err == nil) != works || !works && !errors.Is(err, dose.ErrDemand) {
			t.Errorf("%v: %v", side, err)
		}
	}
}

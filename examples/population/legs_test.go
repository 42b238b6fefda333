package main

import (
	"errors"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// withoutLegs returns, of so many drawn people whom a helper or better watches, how
// many may train within limits, and how many of those get no squat, step, lunge or
// hinge with a dumbbell, on the feet, seated or lying.
func withoutLegs(t *testing.T, people int, setting screening.Setting) (within, without int) {
	t.Helper()
	kit := upTo10()
	d := draws(1, 1)
	for range people {
		p := d.person()
		p.Setting, p.Training = setting, body.Novice
		o, err := screening.Assess(p)
		if err != nil {
			t.Fatal(err)
		}
		if o.Meanwhile != screening.WithinLimits {
			continue
		}
		within++
		if !legsWithLoad(t, o, kit) {
			without++
		}
	}
	return within, without
}

// upTo10 are pairs of dumbbells of 1 to 10 kg.
func upTo10() equipment.Kit {
	kit := equipment.Kit{}
	for kg := range units.Mass(10) {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: (kg + 1) * units.Kilogram, Unit: units.KG}, Count: 2})
	}
	return kit.Once(kit)
}

// working are the loaded exercises of hips and knees, on the feet or not; a calf raise
// alone is not enough.
func working(yield func(exercise.Exercise) bool) {
	for ex := range exercise.Standard().All() {
		if ex.Pattern.Legs() && ex.Pattern != exercise.Calf && ex.Hold != body.Unloaded && !yield(ex) {
			return
		}
	}
}

func legsWithLoad(t *testing.T, o screening.Outcome, kit equipment.Kit) bool {
	t.Helper()
	for ex := range working {
		p, err := dose.Prescribe(dose.Request{
			Day: visit, Screening: o, Exercise: ex, Side: body.Both, Goal: guideline.Strength, Kit: kit,
			Technique: dose.Observation{Who: "an invented colleague", Day: visit},
		})
		var barred *dose.ConstraintError
		if err != nil && !errors.As(err, &barred) {
			t.Fatal(err)
		}
		if err == nil && p.Load.Each() > 0 {
			return true
		}
	}
	return false
}

// Of those who may train within limits under 3 % get no loaded exercise of hips or knees where
// somebody is there. Alone, whoever may faint gets none.
func TestLegsAreLoaded(t *testing.T) {
	for _, setting := range []screening.Setting{screening.Alone, screening.WithHelper, screening.InGroup, screening.InClinic} {
		within, without := withoutLegs(t, 1500, setting)
		share, most := float64(without)/float64(within), 0.03
		if setting == screening.Alone {
			most = 0.12
		}
		if t.Logf("%v: %d within limits, %.1f %% without", setting, within, 100*share); share > most {
			t.Errorf("%v: %d of %d get no loaded leg exercise", setting, without, within)
		}
	}
}

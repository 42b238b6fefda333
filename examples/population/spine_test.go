package main

import (
	"errors"
	"math/rand/v2"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/progression/simulate"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// oldFracture is an invented person near 74, watched, with osteoporosis and a fractured
// vertebra of long ago.
func oldFracture(rng *rand.Rand) screening.Profile {
	bone := screening.Code("osteoporosis_with_vertebral_fracture")
	p := screening.Profile{
		Day: visit, Age: body.Age(72 + rng.IntN(5)), Sex: body.Female, Training: body.Novice, Wanted: screening.Moderate,
		Setting:  []screening.Setting{screening.WithHelper, screening.InGroup, screening.InClinic}[rng.IntN(3)],
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 40, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(bone),
		BP: &screening.BloodPressure{Systolic: 120, Diastolic: 80}, RestingPulse: 66,
		Events: []screening.Event{{Code: bone, Day: visit - units.Day(400+rng.IntN(2000))}},
		Falls:  &screening.FallsScreen{Afraid: screening.No, Fell: screening.No, Unsteady: screening.No},
		Answers: map[screening.Code]screening.Answer{
			"vertebral_fracture": screening.No, "floor_and_up": screening.No, "retinopathy_moderate_or_worse": screening.No, "insulin_or_secretagogue": screening.No,
		},
	}
	if rng.IntN(4) == 0 {
		p.Sex = body.Male
	}
	return p
}

const ofBody = 62 * units.Kilogram

// worksBySix reports whether one visit of the first six weeks works, of two a week.
func worksBySix(t *testing.T, r dose.Request, mixed simulate.Trainee, src rand.Source) bool {
	t.Helper()
	run, err := simulate.Run(mixed, simulate.Setup{Request: r, BodyMass: ofBody, Start: visit, Weeks: 6, Days: []int{0, 3}, Familiarise: 2}, src)
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range run {
		if l.Works() {
			return true
		}
	}
	return false
}

// Of 200 draws around a watched 74-year-old with an old vertebral fracture nine in ten
// are at a working dose of some leg exercise by week 6 (a goal of ours; nobody measured it).
// Their strength is invented: once they lift 1.15 to 1.8 times the part of the body that
// an exercise moves, or 15 to 45 kg where it moves none.
func TestOldFractureReachesAWorkingDose(t *testing.T) {
	rng, works, kit := rand.New(rand.NewPCG(74, 6)), map[exercise.ID]int{}, upTo10()
	reached := 0
	const people = 200
	for n := range uint64(people) {
		o, err := screening.Assess(oldFracture(rng))
		if err != nil || o.Meanwhile != screening.WithinLimits {
			t.Fatalf("person %d: %v, %v", n, o.Meanwhile, err)
		}
		over, free, any := units.Fraction(1.15+0.65*rng.Float64()), units.Mass(15+rng.IntN(31))*units.Kilogram, false
		for ex := range working {
			r := dose.Request{
				Day: visit, Screening: o, Exercise: ex, Side: body.Both, Goal: guideline.Strength, Kit: kit,
				Technique: dose.Observation{Who: "an invented colleague", Day: visit},
			}
			p, err := dose.Prescribe(r)
			var barred *dose.ConstraintError
			if err != nil && !errors.As(err, &barred) {
				t.Fatal(err)
			}
			if err != nil || p.Load.Each() == 0 {
				continue
			}
			oneRM := free
			if share, ok := ex.MovedShare.Min(); ok && ex.MovesBody {
				oneRM = units.Must(ofBody.Scale(share*over, units.Down))
			}
			if worksBySix(t, r, simulate.Mixed(oneRM, rand.NewPCG(n, 1)), rand.NewPCG(n, 2)) {
				works[ex.ID]++
				any = true
			}
		}
		if any {
			reached++
		}
	}
	if t.Logf("%d of %d; by exercise %v", reached, people, works); reached < people*9/10 {
		t.Errorf("%d of %d reach a working dose", reached, people)
	}
}

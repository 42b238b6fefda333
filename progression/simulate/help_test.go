package simulate_test

import (
	"flag"
	"math/rand/v2"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/simulate"
	"example.org/posology/screening"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var dumbbells = dosetest.Pairs

var long = flag.Bool("long", false, "run the long versions of the random tests")

const firstDay units.Day = 739950 // Monday 2026-11-30

func exerciseOf(t testing.TB, id string) exercise.Exercise {
	t.Helper()
	ex, err := exercise.Standard().Lookup(id)
	if err != nil {
		t.Fatal(err)
	}
	return ex
}

// beginner is the setup of a novice of 66 who was screened without a caution,
// for 16 weeks of two days.
func beginner(t testing.TB, id string, kit equipment.Kit) simulate.Setup {
	return simulate.Setup{
		Request: dose.Request{
			Screening: screening.Waived("a test", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, screening.InGroup, firstDay-1),
			Exercise:  exerciseOf(t, id), Side: body.Both, Goal: guideline.Strength,
			Kit: kit, Technique: dose.Observation{Who: "a colleague", Day: firstDay - 1},
		},
		Start: firstDay, Weeks: 16, Days: []int{0, 3}, Familiarise: 2, Policy: progression.Policy{KeepExercise: true},
	}
}

func runOf(t testing.TB, tr simulate.Trainee, s simulate.Setup, seed uint64) []simulate.Lived {
	t.Helper()
	visits, err := simulate.Run(tr, s, rand.NewPCG(seed, 1))
	if err != nil {
		t.Fatalf("Run: %v", err)
	}
	return visits
}

// A draw is a source of invented cases.
type draw struct{ *rand.Rand }

func (d draw) chance(p float64) bool { return d.Float64() < p }

func (d draw) one(list ...units.Fraction) units.Fraction { return list[d.IntN(len(list))] }

// alike is an error of telling that is the same at every distance from failure.
func alike(more, sd float64) simulate.Misjudged {
	one := simulate.Misjudgement{More: more, SD: sd}
	return simulate.Misjudged{Near: one, Midway: one, Far: one}
}

var simulated = []string{
	"one-arm-dumbbell-row", "goblet-squat", "dumbbell-floor-press", "lateral-raise", "suitcase-carry", "biceps-curl",
	"standing-calf-raise", "dumbbell-shoulder-press", "dead-bug", "dumbbell-romanian-deadlift",
}

func (d draw) kit() equipment.Kit {
	var masses []float64
	m := 0.0
	n, step := 1+d.IntN(9), 8
	if d.chance(0.3) { // a long rack
		n, step = 15+d.IntN(15), 2
	}
	for range n {
		m += float64(1+d.IntN(step)) / 2
		masses = append(masses, m)
	}
	return dumbbells(masses...)
}

func (d draw) trainee() simulate.Trainee {
	curves := []onerm.Relation{nil, onerm.Brzycki, onerm.Lombardi, onerm.Mayhew, onerm.OConner}
	t := simulate.Trainee{
		OneRM: units.Must(units.Kilograms(3 + 57*d.Float64())), Curve: curves[d.IntN(len(curves))], DaySD: units.Fraction(0.1 * d.Float64()),
		Reserve: alike(-1+3*d.Float64(), 2*d.Float64()), Stubborn: d.chance(0.2), Tires: d.chance(0.5),
		Missed: d.one(0, .1, .5, .9), Slips: d.one(0, 0, .1), Pain: d.one(0, 0, .05, .3), Signs: d.one(0, 0, 0, .02),
		Unseen: d.one(0, 0, .5), FormLost: d.one(0, 0, .2),
	}
	if d.chance(0.9) {
		t.Gain = simulate.LogGain{Percent: 100 * d.Float64(), Weeks: 52}
	}
	return t
}

func (d draw) policy() progression.Policy {
	rules := []rule.Name{
		0, 0, rule.NameOverTarget, rule.NameTwoForTwo, rule.NameRepsThenLoad, rule.NameOMNIBelow8, rule.NameTopOfRange,
	}
	return progression.Policy{Rule: rules[d.IntN(len(rules))], MostReps: []int{0, 0, 12, 15}[d.IntN(4)], KeepExercise: d.chance(0.7)}
}

func (d draw) limits() screening.Limits {
	var l screening.Limits
	if d.chance(0.3) {
		l.Masses = []screening.MassLimit{{Author: "a surgeon", Region: bindsAll, Max: units.Mass(1+d.IntN(20)) * units.Kilogram / 2}}
	}
	l.MaxFraction = d.one(0, 0, .5, .7)
	l.MinReserve = units.RIR([]int{0, 0, 0, 4, 5}[d.IntN(5)])
	if d.chance(0.05) {
		l.Lighten = screening.LighterSession().Lighten
	}
	return l
}

// bindsAll is a region whose limit on mass binds all that is held, since no
// demand is told for it.
const bindsAll = body.WholeBody

type setOf = setlog.Set

const countsReps = exercise.Repetitions

func (d draw) setup(t testing.TB) simulate.Setup {
	s := beginner(t, simulated[d.IntN(len(simulated))], d.kit())
	s.Policy, s.Familiarise, s.Weeks = d.policy(), d.IntN(4), 4+d.IntN(40)
	r := &s.Request
	r.Screening.Limits = d.limits()
	r.Screening.Who.Training = body.Training(1 + d.IntN(3))
	r.Goal = guideline.Goal(1 + d.IntN(7))
	r.Screening.Who.Age = body.Age(45 + d.IntN(45))
	if d.chance(0.5) {
		s.BodyMass = units.Must(units.Kilograms(50 + 50*d.Float64()))
	}
	if d.chance(0.1) {
		r.Guideline = "acsm2011-strength-novice-intermediate"
	}
	if d.chance(0.1) {
		r.Technique = dose.Observation{}
	}
	if d.chance(0.2) {
		r.Screening.Setting = screening.Alone
	}
	if d.chance(0.1) {
		r.Screening.Meanwhile, r.Screening.Setting = screening.LightSupervised, screening.InClinic
	}
	return s
}

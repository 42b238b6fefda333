package main

import (
	"errors"
	"math/rand/v2"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/progression/simulate"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A kit is what there is to lift, and how strong those are who lift it.
type kit struct {
	name        string
	kg          []float64
	least, most float64        // 1RM at the start, kg
	slack       units.Fraction // up to which a heavier weight counts as the same
}

var kits = []kit{
	{"1 kg steps, 1 to 20 kg", upTo(20), 6, 20, 0.12},
	{"2, 4, 6, 10 kg", []float64{2, 4, 6, 10}, 5, 11, 0},
	{"2.5, 5, 7.5, 10 kg", []float64{2.5, 5, 7.5, 10}, 5, 11, 0},
	{"one dumbbell of 3 kg", []float64{3}, 3 / 0.85, 3 / 0.5, 0},
}

func upTo(n int) (list []float64) {
	for kg := range n {
		list = append(list, float64(kg+1))
	}
	return list
}

func (k kit) equipment() (e equipment.Kit) {
	for _, kg := range k.kg {
		e.Dumbbells = append(e.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: units.Must(units.Kilograms(kg)), Unit: units.KG}, Count: 2})
	}
	return e
}

// A population is a kind of people.
type population struct {
	name string
	draw func(units.Mass, rand.Source) simulate.Trainee
}

var populations = []population{
	{"typical", func(m units.Mass, _ rand.Source) simulate.Trainee { return simulate.Typical(m) }},
	{"mixed", simulate.Mixed},
	{"true-telling", func(m units.Mass, _ rand.Source) simulate.Trainee { return simulate.TrueTelling(m) }},
	{"stubborn", func(m units.Mass, _ rand.Source) simulate.Trainee { return stubborn(simulate.Typical(m)) }},
	{"stubborn mixed", func(m units.Mass, src rand.Source) simulate.Trainee { return stubborn(simulate.Mixed(m, src)) }},
}

func stubborn(t simulate.Trainee) simulate.Trainee {
	t.Stubborn = true
	return t
}

// A policy is how doses are chosen.
type policy struct {
	name   string
	choose simulate.Chooser
	bound  bool // of what could be reached: for the table, not for its curves
}

var policies = []policy{
	{name: "the module's own", choose: simulate.Own},
	{name: "two for two", choose: simulate.ByTwoForTwo},
	{name: "reps then load", choose: simulate.ByRepsThenLoad},
	{name: "linear", choose: simulate.ByWeeks},
	{name: "knows the truth", choose: simulate.Informed},
	{name: "truth by chance", choose: byChance, bound: true},
}

// A place is where people train, and who sees them.
type place uint8

const (
	watched place = iota // somebody is there
	visited              // at home, and one visit in eight is watched: a look counts for four weeks
	unseen               // at home, and nobody ever looks
	places  = iota
)

// heading is what a table says of the place.
var heading = [places]string{"somebody there", "alone, two thirds of the visits; the first and one in eight watched", "alone and unseen, two thirds of the visits"}

const unwatched = 7. / 8 // of the visits of whoever trains at home and is looked at now and then

// A scene is under what people train.
type scene struct {
	kit       kit
	estimated bool // a 1RM estimate is given
	place     place
	weeks     int
}

const firstDay units.Day = 739950 // Monday 2026-11-30

func (s scene) setup(choose simulate.Chooser) simulate.Setup {
	setting, seen := screening.InGroup, dose.Observation{Who: "a simulated colleague", Day: firstDay - 1}
	if s.place != watched {
		setting = screening.Alone
	}
	if s.place == unseen {
		seen = dose.Observation{}
	}
	return simulate.Setup{
		Request: dose.Request{
			Screening: screening.Waived("a simulation", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, setting, firstDay-1),
			Exercise:  units.Must(exercise.Standard().Lookup("one-arm-dumbbell-row")), Side: body.Right, Goal: guideline.Strength,
			Kit: s.kit.equipment(), Technique: seen,
		},
		Policy: progression.Policy{KeepExercise: true}, Start: firstDay, Weeks: s.weeks, Days: []int{0, 3}, Familiarise: 2, Choose: choose,
	}
}

// Which of a person's sources of chance is for what.
const (
	forPerson = iota + 1
	forHome
	forRun
)

// fate lets one person train, and says what became of them.
func (s scene) fate(seed uint64, p population, choose simulate.Chooser) (simulate.Fate, error) {
	t, setup, lived, err := s.live(seed, p, choose)
	if err != nil {
		return simulate.Fate{}, err
	}
	return simulate.Judge(t, setup, lived, s.kit.slack)
}

// live lets one person train; no day is lived where the first dose is barred.
func (s scene) live(seed uint64, p population, choose simulate.Chooser) (t simulate.Trainee, setup simulate.Setup, lived []simulate.Lived, err error) {
	src := rand.NewPCG(seed, forPerson)
	kg := s.kit.least + float64((s.kit.most-s.kit.least)*rand.New(src).Float64())
	t = p.draw(units.Must(units.Kilograms(kg)), src)
	if s.place != watched {
		t = simulate.AtHome(t, rand.NewPCG(seed, forHome))
	}
	if s.place == visited {
		t.Unseen = unwatched
	}
	setup = s.setup(choose)
	if s.estimated {
		e, err := simulate.FirstEstimate(t, setup, rand.NewPCG(seed, forRun))
		switch {
		case err == nil:
			setup.Request.Estimates = []onerm.Estimate{e}
		case !errors.Is(err, onerm.ErrNotStudied): // else no test told anything, and they train without
			return t, setup, nil, err
		}
	}
	lived, err = simulate.Run(t, setup, rand.NewPCG(seed, forRun))
	var barred *dose.ConstraintError
	if errors.As(err, &barred) {
		err = nil
	}
	return t, setup, lived, err
}

package simulate

import (
	"errors"
	"math"
	"math/rand/v2"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/units"
)

// Of the set that an estimate rests on.
const (
	testShare = 0.75
	testCount = 8
	testLeft  = 2
	testSteps = 2    // of the weights, to the kilogram
	testTries = 10   // weights
	testDay   = 9999 // where its draws lie, beyond all planned days
)

// FirstEstimate returns the estimate from a set on the day before the first visit, where
// weights of every half kilogram are at hand: the one nearest three quarters of the
// true 1RM, eight times at most, until two seem to be left. While it was too easy to
// tell anything, the next weight is taken. Day, telling and curve are those of the
// trainee; src is that of the run.
//
// The errors are those of [Run] and of [onerm.FromSet]; [onerm.ErrNotStudied] where no
// weight gave a set that tells anything.
func FirstEstimate(t Trainee, s Setup, src rand.Source) (onerm.Estimate, error) {
	r, err := begin(t, s, src)
	if err != nil {
		return onerm.Estimate{}, err
	}
	r.planned = testDay
	ex, kg := s.Request.Exercise, t.OneRM.Kilograms()
	v := progression.Visit{Day: s.Start - 1, Plan: dose.Prescription{
		Exercise: ex.ID, Hold: ex.Hold, Side: s.Request.Side, Measure: ex.Measure, Count: testCount, Reserve: dose.Reserve{Least: testLeft, Countable: true},
	}}
	today := kg * math.Exp(float64(r.of(ofDay, testDay, 0).NormFloat64()*float64(t.DaySD)))
	halves := max(1, math.Round(testSteps*testShare*kg/float64(max(1, ex.Hold.Implements()))))
	var estimate onerm.Estimate
	err = onerm.ErrNotStudied
	for try := 0; try < testTries && errors.Is(err, onerm.ErrNotStudied); try++ {
		each, _ := units.Kilograms((halves + float64(try)) / testSteps)
		set, _ := r.set(&v, v.Plan, s.Request.Side, each, try, today, 0)
		if set.Reps < 1 {
			break // too heavy, and the ones before were told as too easy
		}
		estimate, err = onerm.FromSet(set, ex, s.Request.Screening.Who)
	}
	return estimate, err
}

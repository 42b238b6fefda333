package week_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

const firstDay = dosetest.FirstDay

type failer = fieldtest.T

var (
	hall       = dosetest.Hall
	pairs      = dosetest.Pairs
	exerciseOf = dosetest.Exercise
	waived     = dosetest.Waived
	assessed   = dosetest.Assessed
	row        = dosetest.Row
	squatAfter = dosetest.SquatAfter
	estimateOf = dosetest.Estimate
	doneSet    = dosetest.DoneSet
	doneBy     = dosetest.DoneBy
	prescribe  = dosetest.Prescribe
	barred     = dosetest.Barred
	has        = dosetest.Has
	paths      = fieldtest.Paths

	exercises = slices.Collect(exercise.Standard().All())
)

func left(t *testing.T) dose.Request {
	r := row(t)
	r.Side = body.Left
	return r
}

// checked is the outcome of a quiet day's check.
func checked(t failer, day units.Day) screening.Outcome {
	t.Helper()
	o, err := screening.Today(screening.Check{Day: day, Setting: screening.InGroup, New: screening.AskedFor(), Febrile: screening.No}, assessed(t, firstDay-30))
	if err != nil {
		t.Fatalf("Today: %v", err)
	}
	return o
}

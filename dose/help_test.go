package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/testdata/screentest"
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
	codesOf    = screentest.Codes
)

// tested gives the request an estimate from a set of reps at kg with reserve.
func tested(t testing.TB, r dose.Request, kg float64, reps int, reserve float64) dose.Request {
	t.Helper()
	r.Estimates = []onerm.Estimate{estimateOf(t, r, kg, reps, reserve)}
	return r
}

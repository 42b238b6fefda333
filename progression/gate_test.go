package progression_test

import (
	"example.org/posology/progression/internal/visittest"
	"example.org/posology/testdata/fieldtest"
)

var (
	gatesOf   = visittest.Gates
	signCodes = visittest.Signs
	goodVisit = visittest.Good
	score     = visittest.Score
)

type failer = fieldtest.T

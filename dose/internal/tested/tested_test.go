package tested_test

import (
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/tested"
	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// What is of no side is no test of one.
func TestNoSuchSide(t *testing.T) {
	row, err := exercise.Standard().Lookup("one-arm-dumbbell-row")
	if err != nil {
		t.Fatal(err)
	}
	bad := tested.Lists{Estimates: []onerm.Estimate{{Exercise: row.ID, Side: 9, Hold: row.Hold, OneRM: units.Kilogram}}}
	for _, tests := range []tested.Lists{{}, bad} {
		for _, side := range []body.Side{0, body.Both, 9} {
			if e, why := tests.Test(row, side); e != nil || len(why) > 0 {
				t.Errorf("%s: %+v, %v", side, e, why)
			}
		}
	}
}

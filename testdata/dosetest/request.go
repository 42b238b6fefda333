package dosetest

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// FirstDay is a Monday.
const FirstDay units.Day = 739950 // 2026-11-30

// Hall is a kit of pairs.
var Hall = Pairs(0.5, 1, 2, 3, 4, 5, 6, 8, 10)

// Pairs is a kit with a pair of dumbbells of each mass, in kilograms.
func Pairs(kg ...float64) equipment.Kit {
	var k equipment.Kit
	for _, m := range kg {
		mass := units.Must(units.Kilograms(m))
		k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: mass, Unit: units.KG}, Count: 2})
	}
	return k
}

// Table compiles a kit with a pair of dumbbells of each mass, one in each hand.
func Table(t fieldtest.T, masses ...units.Mass) *equipment.Table {
	t.Helper()
	var kit equipment.Kit
	for _, m := range masses {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: m}, Count: 2})
	}
	table, err := kit.Compile(body.OneEachHand)
	if err != nil {
		t.Fatalf("Compile: %v", err)
	}
	return table
}

// Exercise looks an exercise up in the standard catalogue.
func Exercise(t fieldtest.T, id exercise.ID) exercise.Exercise {
	t.Helper()
	ex, err := exercise.Standard().Lookup(string(id))
	if err != nil {
		t.Fatalf("Lookup: %v", err)
	}
	return ex
}

// Row is a loaded request for the one-arm row of a novice of 66 who was screened
// without a caution.
func Row(t fieldtest.T) dose.Request {
	t.Helper()
	return dose.Request{
		Day:       FirstDay,
		Screening: Waived(body.Novice), Exercise: Exercise(t, "one-arm-dumbbell-row"), Side: body.Right,
		Goal: guideline.Strength, Kit: Hall,
	}
}

// SquatAfter is a request for a goblet squat, after a set of reps at kg with reserve.
func SquatAfter(t fieldtest.T, kg float64, reps int, reserve float64) dose.Request {
	t.Helper()
	ex := Exercise(t, "goblet-squat")
	return dose.Request{
		Day:       FirstDay,
		Screening: Waived(body.Intermediate), Exercise: ex, Side: body.Both,
		Goal: guideline.Strength, Kit: Hall,
		Performed: &setlog.Set{Day: FirstDay, Exercise: ex.ID, Side: body.Both, Hold: ex.Hold,
			Load: units.Must(units.Kilograms(kg)), Reps: reps, Effort: units.Must(units.InReserve(reserve))},
	}
}

// Estimate is one from a set of the request's exercise.
func Estimate(t fieldtest.T, r dose.Request, kg float64, reps int, reserve float64) onerm.Estimate {
	t.Helper()
	set := setlog.Set{
		Day: FirstDay, Exercise: r.Exercise.ID, Side: r.Side, Hold: r.Exercise.Hold,
		Load: units.Must(units.Kilograms(kg)), Reps: reps, Effort: units.Must(units.InReserve(reserve)),
	}
	if set.Hold == body.OneEachHand {
		set.Stated = body.PerHand
	}
	e, err := onerm.FromSet(set, r.Exercise, body.Person{Age: r.Screening.Who.Age, Sex: body.Female, Training: r.Screening.Who.Training})
	if err != nil {
		t.Fatalf("FromSet: %v", err)
	}
	return e
}

// LowEnd is the low end of an estimate's interval.
func LowEnd(e onerm.Estimate) units.Mass {
	low, _ := e.Interval.Min()
	return low
}

// DoneSet is a set of the row.
func DoneSet(kg float64, reps int, effort units.Effort) setlog.Set {
	return setlog.Set{
		Day: FirstDay, Exercise: "one-arm-dumbbell-row", Side: body.Right, Hold: body.OneHand,
		Load: units.Must(units.Kilograms(kg)), Reps: reps, Effort: effort,
	}
}

// DoneBy is a set of the request's exercise that somebody did.
func DoneBy(key body.Key, r dose.Request) setlog.Set {
	return setlog.Set{Key: key, Day: FirstDay, Exercise: r.Exercise.ID, Side: r.Side, Hold: r.Exercise.Hold, Load: units.Kilogram, Reps: 8}
}

// Prescribe returns a dose that has to be given.
func Prescribe(t fieldtest.T, r dose.Request) dose.Prescription {
	t.Helper()
	p, err := dose.Prescribe(r)
	if err != nil {
		t.Fatalf("Prescribe: %v", err)
	}
	return p
}

// Barred returns the constraint that Prescribe reports, of the given category.
func Barred(t fieldtest.T, r dose.Request, category error) *dose.ConstraintError {
	t.Helper()
	p, err := dose.Prescribe(r)
	var c *dose.ConstraintError
	if !errors.Is(err, category) || !errors.As(err, &c) {
		t.Fatalf("Prescribe = %v, %v; want a ConstraintError, %v", p.Load, err, category)
	}
	return c
}

// Has reports whether one of the reasons has the code.
func Has(reasons []evidence.Reason, code evidence.ReasonCode) bool {
	for _, r := range reasons {
		if r.Code == code {
			return true
		}
	}
	return false
}

package week_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// failer is what a test and a rapid check have in common.
type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

// row is a loaded request for the one-arm row of a novice of 66 who was
// screened without a caution.
func row(t testing.TB) dose.Request {
	t.Helper()
	return dose.Request{
		Day:       firstDay,
		Screening: waived(body.Novice), Exercise: exerciseOf(t, "one-arm-dumbbell-row"), Side: body.Right,
		Goal: guideline.Strength, Kit: hall,
	}
}

func estimateOf(t failer, r dose.Request, kg float64, reps int, reserve float64) onerm.Estimate {
	t.Helper()
	set := setlog.Set{
		Day: firstDay, Exercise: r.Exercise.ID, Side: r.Side, Hold: r.Exercise.Hold,
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

func has(reasons []evidence.Reason, code evidence.ReasonCode) bool {
	for _, r := range reasons {
		if r.Code == code {
			return true
		}
	}
	return false
}

const firstDay units.Day = 739950 // Monday 2026-11-30

// paths lists the fields that an error names.
func paths(err error) []string {
	var all field.Errors
	all.Add("", err)
	var list []string
	for _, f := range all {
		list = append(list, f.Path)
	}
	return list
}

// barred returns the constraint that Prescribe reports, of the given category.
func barred(t testing.TB, r dose.Request, category error) *dose.ConstraintError {
	t.Helper()
	p, err := dose.Prescribe(r)
	var c *dose.ConstraintError
	if !errors.Is(err, category) || !errors.As(err, &c) {
		t.Fatalf("Prescribe = %v, %v; want a ConstraintError, %v", p.Load, err, category)
	}
	return c
}

func left(t *testing.T) dose.Request {
	r := row(t)
	r.Side = body.Left
	return r
}

// pairs is a kit with a pair of dumbbells of each mass, in kilograms.
func pairs(kg ...float64) equipment.Kit {
	var k equipment.Kit
	for _, m := range kg {
		mass := units.Must(units.Kilograms(m))
		k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: mass, Unit: units.KG}, Count: 2})
	}
	return k
}

func doneSet(kg float64, reps int, effort units.Effort) setlog.Set {
	return setlog.Set{
		Day: firstDay, Exercise: "one-arm-dumbbell-row", Side: body.Right, Hold: body.OneHand,
		Load: units.Must(units.Kilograms(kg)), Reps: reps, Effort: effort,
	}
}

// squat is a request for a goblet squat, after a set of reps at kg with reserve.
func squatAfter(t failer, kg float64, reps int, reserve float64) dose.Request {
	t.Helper()
	ex, _ := exercise.Standard().Get("goblet-squat")
	return dose.Request{
		Day:       firstDay,
		Screening: waived(body.Intermediate), Exercise: ex, Side: body.Both,
		Goal: guideline.Strength, Kit: hall,
		Performed: &setlog.Set{Day: firstDay, Exercise: ex.ID, Side: body.Both, Hold: ex.Hold,
			Load: units.Must(units.Kilograms(kg)), Reps: reps, Effort: units.Must(units.InReserve(reserve))},
	}
}

// waived is an outcome without a caution of a person of 66 in a group.
func waived(training body.Training) screening.Outcome {
	return screening.Waived("a test", body.Person{Age: 66, Sex: body.Female, Training: training}, screening.InGroup, firstDay)
}

func exerciseOf(t testing.TB, id exercise.ID) exercise.Exercise {
	t.Helper()
	ex, err := exercise.Standard().Lookup(string(id))
	if err != nil {
		t.Fatal(err)
	}
	return ex
}

var hall = pairs(0.5, 1, 2, 3, 4, 5, 6, 8, 10)

func doneBy(key body.Key, r dose.Request) setlog.Set {
	return setlog.Set{Key: key, Day: firstDay, Exercise: r.Exercise.ID, Side: r.Side, Hold: r.Exercise.Hold, Load: units.Kilogram, Reps: 8}
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

func prescribe(t testing.TB, r dose.Request) dose.Prescription {
	t.Helper()
	p, err := dose.Prescribe(r)
	if err != nil {
		t.Fatalf("Prescribe: %v", err)
	}
	return p
}

// assessed is the outcome of an assessment in a group of a person with a key.
func assessed(t failer, day units.Day) screening.Outcome {
	t.Helper()
	o, err := screening.Assess(screening.Profile{
		Key: "p1", Day: day, Age: 66, Sex: body.Female, Training: body.Novice, Setting: screening.InGroup, Wanted: screening.Moderate,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		t.Fatalf("Assess: %v", err)
	}
	return o
}

var exercises = slices.Collect(exercise.Standard().All())

package lifttest

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Day is the day of every set.
const Day units.Day = 739945 // 2026-11-25

// Man is practised.
var Man = body.Person{Age: 66, Sex: body.Male, Training: body.Intermediate}

// Press is an exercise held in the given way.
func Press(h body.Hold) exercise.Exercise {
	return exercise.Exercise{
		ID: "press", Name: "press", Pattern: exercise.HorizontalPush, Hold: h, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.PectoralisMajor, Role: exercise.Prime}},
	}
}

// Set is a set of the press: 20 kg on a stack.
func Set(reps int, reserve float64) setlog.Set {
	return setlog.Set{
		Day: Day, Exercise: "press", Side: body.Both, Hold: body.OnStack, Load: 20 * units.Kilogram,
		Stated: body.Total, Reps: reps, Effort: units.Must(units.InReserve(reserve)),
	}
}

// Everyone is somebody of each training, sex, and side of the ages that equations tell apart.
func Everyone() []body.Person {
	var list []body.Person
	for _, training := range []body.Training{body.Novice, body.Intermediate, body.Advanced} {
		for _, sex := range []body.Sex{0, body.Female, body.Male} {
			for _, age := range []body.Age{54, 55, 80} {
				list = append(list, body.Person{Age: age, Sex: sex, Training: training})
			}
		}
	}
	return list
}

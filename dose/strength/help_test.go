package strength_test

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var day = units.Must(units.NewDay(2026, 11, 25))

// press is an exercise held in the given way.
func press(h body.Hold) exercise.Exercise {
	return exercise.Exercise{
		ID: "press", Name: "press", Pattern: exercise.HorizontalPush, Hold: h, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.PectoralisMajor, Role: exercise.Prime}},
	}
}

// set is a set of the press: 20 kg on a stack.
func set(reps int, reserve float64) setlog.Set {
	return setlog.Set{
		Day: day, Exercise: "press", Side: body.Both, Hold: body.OnStack, Load: 20 * units.Kilogram,
		Stated: body.Total, Reps: reps, Effort: units.Must(units.InReserve(reserve)),
	}
}

var man = body.Person{Age: 66, Sex: body.Male, Training: body.Intermediate}

func everyone() []body.Person {
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

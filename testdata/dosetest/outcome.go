package dosetest

import (
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Waived is an outcome without a caution of a person of 66 in a group.
func Waived(training body.Training) screening.Outcome {
	return screening.Waived("a test", body.Person{Age: 66, Sex: body.Female, Training: training}, screening.InGroup, FirstDay)
}

// Assessed is the outcome of an assessment in a group of a person with the key p1, of
// whom everything was asked and nothing found.
func Assessed(t fieldtest.T, day units.Day) screening.Outcome {
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

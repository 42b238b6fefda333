package progression_test

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Three sets of 12 curls with 4 kg, three left in reserve, at a home with dumbbells
// of 4 and 6 kg: the next one is 50 % heavier, so repetitions come first. The
// person, the log and the kit are invented.
func ExampleNext() {
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		fmt.Println(err)
		return
	}
	outcome, err := screening.Assess(screening.Profile{
		Day: firstDay - 1, Age: 66, Sex: body.Female, Training: body.Intermediate, Setting: screening.WithHelper, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	request := dose.Request{
		Day:       firstDay,
		Screening: outcome, Exercise: curl, Side: body.Both, Goal: guideline.Strength, Kit: dumbbells(4, 6),
	}
	frame, err := dose.NewFrame(request)
	if err != nil {
		fmt.Println(err)
		return
	}
	plan, err := frame.Continue(dose.Step{Load: 4 * units.Kilogram, Last: 4 * units.Kilogram, Count: 12, Sets: 3})
	if err != nil {
		fmt.Println(err)
		return
	}
	set := setlog.Set{
		Day: firstDay, Exercise: curl.ID, Side: body.Both, Hold: curl.Hold, Load: 4 * units.Kilogram, Stated: body.PerHand,
		Reps: 12, Effort: units.Must(units.InReserve(3)),
	}
	none := 0.0
	visit := progression.Visit{
		Day: firstDay, Plan: plan, Sets: []setlog.Set{set, set, set},
		Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No, Observer: dose.Observation{Who: "a colleague", Day: firstDay},
		Pain: &screening.Pain{Kind: screening.OrdinaryPain, Usual: &none, During: &none, After: &none, NextMorning: &none, WeeklyTrend: screening.StablePain},
	}
	request.Day = firstDay + 3
	d, err := progression.Next(progression.Course{Request: request, Log: []progression.Visit{visit}, Day: firstDay + 3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(d.Action, "by", d.Change, "to", d.Next.Count, "with", d.Next.Load)
	fmt.Println("the next weight:", d.Jump.To, d.Jump.External, "more")
	for _, r := range d.Reasons {
		fmt.Println(allWords().Clinician(r))
	}
	// Output:
	// hold by none to 8 with 4 kg dumbbell in each hand
	// the next weight: 6 kg dumbbell in each hand 50 % more
	// The chance that doses are kept to allows 8 of 4 kg each, and no more of either yet: the dose stays until sets end with more in reserve.
	// 8 repetitions, so that the reserve asked for remains: at least 2.
	// The next weight after 4 kg is 6 kg, a step of 50 %; published guidance is 2 to 10 %.
}

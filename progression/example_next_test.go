package progression_test

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
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
	day := units.Must(units.NewDay(2026, 11, 30))
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		fmt.Println(err)
		return
	}
	outcome, err := screening.Assess(screening.Profile{
		Day: day - 1, Age: 66, Sex: body.Female, Training: body.Intermediate, Setting: screening.WithHelper, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	request := dose.Request{
		Day:       day,
		Screening: outcome, Exercise: curl, Side: body.Both, Goal: guideline.Strength, Kit: equipment.Kit{Dumbbells: []equipment.Dumbbell{
			{Mass: units.Must(units.ParseMarked("4 kg")), Count: 2}, {Mass: units.Must(units.ParseMarked("6 kg")), Count: 2},
		}},
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
		Day: day, Exercise: curl.ID, Side: body.Both, Hold: curl.Hold, Load: 4 * units.Kilogram, Stated: body.PerHand,
		Reps: 12, Effort: units.Must(units.InReserve(3)),
	}
	none := 0.0
	visit := progression.Visit{
		Day: day, Plan: plan, Sets: []setlog.Set{set, set, set},
		Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No, Observer: dose.Observation{Who: "a colleague", Day: day},
		Pain: &screening.Pain{Kind: screening.OrdinaryPain, Usual: &none, During: &none, After: &none, NextMorning: &none, WeeklyTrend: screening.StablePain},
	}
	request.Day = day + 3
	course := progression.Course{Request: request, Log: []progression.Visit{visit}, Day: day + 3}
	d, err := progression.Next(course)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(d.Action, "by", d.Change, "to", d.Next.Count, "with", d.Next.Load)
	fmt.Println("the next weight:", d.Jump.To, d.Jump.External, "more")
	words := progression.Words()
	for _, r := range d.Reasons {
		fmt.Println(words.Clinician(r))
	}
	all, err := progression.NextAll([]progression.Course{course}) // of a visit with several exercises
	fmt.Println(len(all), "decided", all[0].Change == d.Change, err)
	// Output:
	// hold by none to 8 with 4 kg dumbbell in each hand
	// the next weight: 6 kg dumbbell in each hand 50 % more
	// The chance that doses are kept to allows 8 of 4 kg each: no more of either until sets end with more in reserve.
	// Repetitions: 8, so that the reserve asked for remains: at least 2.
	// The next weight after 4 kg is 6 kg, a step of 50 %; published guidance is 2 to 10 %.
	// 1 decided true <nil>
}

// The step to the next weight, of the weight held and of all that is moved.
func ExampleNextJump() {
	kit := equipment.Kit{Dumbbells: []equipment.Dumbbell{
		{Mass: units.Must(units.ParseMarked("4 kg")), Count: 2}, {Mass: units.Must(units.ParseMarked("6 kg")), Count: 2},
	}}
	table, err := kit.Compile(body.BothHandsOnOne)
	if err != nil {
		fmt.Println(err)
		return
	}
	jump, ok, err := progression.NextJump(table, 4*units.Kilogram, 60*units.Kilogram)
	fmt.Println(jump.External, "of the weight,", jump.Moved, "of all that is moved", ok, err)
	// Output: 50 % of the weight, 3.1 % of all that is moved true <nil>
}

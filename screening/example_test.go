package screening_test

import (
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/units"
)

func ExampleAssess() {
	day, _ := units.ParseDay("2026-11-25")
	p := screening.Profile{
		Day: day, Age: 71, Wanted: screening.Light, Setting: screening.InGroup,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor("diabetes_t2"),
		Symptoms: screening.AskedFor(), Conditions: screening.AskedFor(), RedFlags: screening.AskedFor(),
		Answers: map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.No, "clearance": screening.No},
		BP:      &screening.BloodPressure{Systolic: 134, Diastolic: 80}, RestingPulse: 68,
		Falls: &screening.FallsScreen{Fell: screening.No, Unsteady: screening.No, Afraid: screening.No},
	}
	o, err := screening.Assess(p)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(o.Route, "–", o.Meanwhile)
	fmt.Println("ACSM 2015:", o.Rules.Preparticipation.Branch, o.Rules.Preparticipation.Clearance)
	fmt.Println("ADA 2016:", o.Rules.DiabetesStart)
	fmt.Println("AHA 2007:", o.Rules.Contraindications.Level, o.Rules.Contraindications.Reasons)
	for _, q := range o.Missing {
		fmt.Println("ask:", screening.Words().Client(q.Reason))
	}
	// Output:
	// ask first – unloaded practice
	// ACSM 2015: N2 clearance_before_any
	// ADA 2016: not_needed
	// AHA 2007: relative [diabetes]
	// ask: What did your last eye check show?
}

func ExampleToday() {
	day, _ := units.ParseDay("2026-11-25")
	o, _ := screening.Assess(screening.Profile{
		Day: day, Age: 66, Wanted: screening.Moderate, Setting: screening.InClinic, Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), Conditions: screening.AskedFor(), RedFlags: screening.AskedFor(),
	})
	today, _ := screening.Today(screening.Check{
		Day: day, Setting: screening.InClinic, New: screening.AskedFor(), Febrile: screening.No,
		BP: &screening.BloodPressure{Systolic: 172, Diastolic: 104},
	}, o)
	fmt.Println(today.Rules.SessionDay.Plan, today.Rules.SessionDay.Reasons)
	fmt.Println(screening.Words().Client(today.Findings[0].Reason))
	// Output:
	// not_today [bp_ge_180_or_100]
	// Your blood pressure is up. Please rest; we will measure again.
}

// SC21 of the published cases: a fall of 24/6 mmHg from lying (Freeman 2011).
func ExampleSessionDay_freeman2011() {
	c := screening.Check{Orthostatic: &screening.OrthostaticDrop{From: screening.Lying, Systolic: 24, Diastolic: 6}}
	fmt.Println(screening.SessionDay(c, screening.Profile{}).Plan)
	// Output: lighter
}

package screening_test

import (
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// What each published rule says of one invented person, side by side: they disagree,
// and the joined outcome of [screening.Assess] takes the most cautious.
func ExamplePreparticipation() {
	p := screening.Profile{
		Day: units.Must(units.NewDay(2026, 11, 25)), Age: 71, Wanted: screening.Light,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor("diabetes_t2"), Symptoms: screening.AskedFor(), Conditions: screening.AskedFor("osteoporosis"),
		RedFlags: screening.AskedFor("saddle_numbness"),
		Falls:    &screening.FallsScreen{Fell: screening.Yes, Unsteady: screening.No, Afraid: screening.No},
	}
	fmt.Println("ACSM 2015:", screening.Preparticipation(p))
	fmt.Println("AHA 2007:", screening.Contraindications(p))
	fmt.Println("red flags:", screening.RedFlags(p))
	fmt.Println("falls:", screening.Falls(p).Positive, screening.Falls(p).FollowUp, "days")
	fmt.Println("cautions:", screening.Cautions(p))
	// Output:
	// ACSM 2015: {N2 clearance_before_any}
	// AHA 2007: {relative [diabetes]}
	// red flags: emergency
	// falls: yes 30 to 90 days
	// cautions: [avoid_loaded_or_end_range_spinal_flexion]
}

// Pain of 4 during the session that was gone the next morning.
func ExamplePainModel() {
	during, after := 4.0, 2.0
	a := screening.PainModel(screening.Pain{
		Kind: screening.OrdinaryPain, During: &during, After: &after, SettledNextMorning: screening.Yes, WeeklyTrend: screening.StablePain,
	})
	fmt.Println(a.Zone, "–", a.Plan, "– more load:", a.MayProgress)
	fmt.Println("sore for 2 days:", screening.SorenessLasts(2), "– for 5:", screening.SorenessLasts(5))
	fmt.Printf("%+v\n", screening.LighterSession().Lighten)
	// Output:
	// pain_over_2_to_5 – as_planned – more load: false
	// sore for 2 days: false – for 5: true
	// {AtMostLast:true FewerSets:1 MoreReserve:2}
}

// Codes are what is stored; each has a meaning for a clinician, and those on a list
// to choose from a short one for the person.
func ExampleLookUp() {
	term, ok := screening.LookUp("saddle_numbness")
	fmt.Println(term.Kind, "–", term.Meaning, "–", ok)
	fmt.Println(screening.Option("saddle_numbness"))
	code, err := screening.FrailtyLevel(5)
	fmt.Println(code, err)
	for _, row := range screening.StopRows()[:2] {
		fmt.Println(row.Code, "–", row.Action)
	}
	// Output:
	// red flag – numb saddle area – true
	// numbness where a saddle would touch you
	// cfs_level_5 <nil>
	// chest_symptom – help now
	// dizzy_or_swaying – stop for today
}

// A reading keeps its unit.
func ExampleParseGlucose() {
	g, err := screening.ParseGlucose("4,6 mmol/L")
	fmt.Println(g, err)
	_, err = screening.ParseGlucose("82")
	fmt.Println(err)
	// Output:
	// 4.6 mmol/L <nil>
	// not given: value = "82", allowed: a reading with its unit, such as "82 mg/dL" (10 to 2000) or "4.6 mmol/L" (0.5 to 111), to two decimals at most
}

// For an analysis of data, never for a person: every dose repeats the reason.
func ExampleWaived() {
	o := screening.Waived("re-analysis of open data", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, screening.InClinic, units.Must(units.NewDay(2026, 11, 25)))
	fmt.Println(o.Waived, "–", o.Meanwhile, o.Screened())
	fmt.Println("without a reason:", screening.Waived("", o.Who, screening.InClinic, o.Day).Meanwhile == 0)
	// Output:
	// re-analysis of open data – within limits true
	// without a reason: true
}

package dose_test

import (
	"fmt"
	"log"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An invented woman of 66 who has never trained, a test set of 8 rows with
// 6 kg and two left in reserve, and six pairs of dumbbells.
func Example() {
	row, err := exercise.Standard().Lookup("one-arm-dumbbell-row")
	if err != nil {
		log.Fatal(err)
	}
	day := units.Must(units.ParseDay("2026-11-30"))
	outcome, err := screening.Assess(screening.Profile{
		Day: day, Age: 66, Sex: body.Female, Training: body.Novice, Setting: screening.InGroup, Wanted: screening.Moderate,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(),
		RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		log.Fatal(err)
	}
	set := setlog.Set{
		Day: day, Exercise: row.ID, Side: body.Right, Hold: row.Hold,
		Load: 6 * units.Kilogram, Reps: 8, Effort: units.Must(units.InReserve(2)),
	}
	estimate, err := onerm.FromSet(set, row, outcome.Who)
	if err != nil {
		log.Fatal(err)
	}
	var kit equipment.Kit
	for _, kg := range []units.Mass{1, 2, 3, 4, 6, 8} {
		mass := units.Marked{Mass: kg * units.Kilogram, Unit: units.KG}
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: mass, Count: 2})
	}
	p, err := dose.Prescribe(dose.Request{
		Day: day, Screening: outcome, Exercise: row, Side: body.Right,
		Goal: guideline.Strength, Estimates: []onerm.Estimate{estimate}, Kit: kit,
	})
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("route %s, meanwhile %s\n", outcome.Route, outcome.Meanwhile)
	fmt.Printf("1RM %.1f kg, in %v\n", estimate.OneRM.Kilograms(), estimate.Interval)
	fmt.Printf("%s: %d set of %d, reserve %s\n", p.Load, p.Sets, p.Count, p.Reserve)
	fmt.Printf("%s, %.0f %% of what is known: %v\n", p.Mode, p.Share.Percent(), p.Flags)
	// Output:
	// route none, meanwhile within limits
	// 1RM 8.0 kg, in 6.8 kg to 10 kg
	// 4 kg dumbbell in one hand: 1 set of 15, reserve more than 5, not countable
	// from the band, 49 % of what is known: [below effective dose]
}

// A frame is what binds every dose of one exercise: a step is granted within it.
func ExampleNewFrame() {
	day := units.Must(units.NewDay(2026, 11, 30))
	outcome, err := screening.Assess(screening.Profile{
		Day: day, Age: 66, Sex: body.Female, Training: body.Intermediate, Setting: screening.WithHelper, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		log.Fatal(err)
	}
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		log.Fatal(err)
	}
	frame, err := dose.NewFrame(dose.Request{
		Day: day, Screening: outcome, Exercise: curl, Side: body.Both, Goal: guideline.Strength,
		Kit: equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("4 kg")), Count: 2}}},
	})
	if err != nil {
		log.Fatal(err)
	}
	plan, err := frame.Continue(dose.Step{Load: 4 * units.Kilogram, Last: 4 * units.Kilogram, Count: 12, Sets: 3})
	fmt.Printf("%d × %d with %s %v\n", plan.Sets, plan.Count, plan.Load, err)
	plan, err = frame.Continue(dose.Step{Load: 5 * units.Kilogram, Last: 4 * units.Kilogram, Count: 12, Sets: 3}) // no such weight
	fmt.Printf("%d × %d with %s %v\n", plan.Sets, plan.Count, plan.Load, err)
	// Output:
	// 3 × 12 with 4 kg dumbbell in each hand <nil>
	// 3 × 12 with 4 kg dumbbell in each hand <nil>
}

// What keeps older people's strength, at the load that they have.
func ExampleMaintenanceDose() {
	days, sets, fact := dose.MaintenanceDose()
	fmt.Printf("%d days, %s sets (%s)\n", days, sets, fact)
	// Output: 2 days, 2 to 3 sets (dose.maintain)
}

// One request, in a frame that keeps it.
func ExampleFrameOf() {
	day := units.Must(units.NewDay(2026, 11, 30))
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		log.Fatal(err)
	}
	request := dose.Request{
		Day: day, Exercise: curl, Side: body.Both, Goal: guideline.Strength,
		Screening: screening.Waived("an example", body.Person{Age: 66, Sex: body.Female, Training: body.Intermediate}, screening.WithHelper, day),
		Kit:       equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("4 kg")), Count: 2}}},
	}
	frame, err := dose.FrameOf(&request)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(frame.Table().Heaviest(), frame.Outline().Span)
	// Output:
	// 4 kg dumbbell in each hand 8 to 12
}

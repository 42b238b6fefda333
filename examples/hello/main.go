// Command hello meets the library in the order in which a newcomer does: what is
// known of a person, the screening, a test set, an estimate, a dose and the
// reasons for it. The README shows what stands between the two marks. The person,
// the set and the dumbbells are invented.
package main

import (
	_ "embed"
	"fmt"
	"log"
	"os"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/command"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

func main() {
	if _, status, goOn := command.New(source).Parse(os.Args[1:], os.Stdout, os.Stderr); !goOn {
		os.Exit(status)
	}
	hello()
}

//go:embed main.go
var source string

func hello() {
	// README: from here
	fmt.Println("An invented woman of 66, who has never trained.")
	day := units.Must(units.NewDay(2026, 11, 30))
	outcome, err := screening.Assess(screening.Profile{
		Day: day, Age: 66, Sex: body.Female, Training: body.Novice, Setting: screening.InGroup, Wanted: screening.Moderate,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), // all were asked for, none was found
		RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		log.Fatal(err)
	}
	row, err := exercise.Standard().Lookup("one-arm-dumbbell-row")
	if err != nil {
		log.Fatal(err)
	}
	estimate, err := onerm.FromSet(setlog.Set{
		Day: day, Exercise: row.ID, Side: body.Right, Hold: row.Hold,
		Load: 6 * units.Kilogram, Reps: 8, Effort: units.Must(units.InReserve(2)),
	}, row, outcome.Who)
	if err != nil {
		log.Fatal(err)
	}
	var kit equipment.Kit
	for _, mass := range []string{"1 kg", "2 kg", "3 kg", "4 kg", "6 kg", "8 kg"} {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Must(units.ParseMarked(mass)), Count: 2})
	}
	p, err := dose.Prescribe(dose.Request{
		Day: day, Screening: outcome, Exercise: row, Side: body.Right,
		Goal: guideline.Strength, Estimates: []onerm.Estimate{estimate}, Kit: kit,
	})
	if err != nil {
		log.Fatal(err) // no dose where the outcome does not allow one
	}
	fmt.Println("Whom to ask first:", outcome.Route, "– meanwhile:", outcome.Meanwhile)
	fmt.Printf("%s: %d set of %d with a %s\n", p.Name, p.Sets, p.Count, p.Load)
	words, err := record.Words()
	if err != nil {
		log.Fatal(err)
	}
	for _, r := range slices.Concat(p.Cautions, p.Reasons) {
		fmt.Println("-", words.Clinician(r))
	}
	fmt.Println("No medical device: local rules and a licensed clinician decide.")
	// README: to here
}

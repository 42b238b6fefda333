// Command stranger uses the library from a module of its own, as .ci/consumer
// builds it.
package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"log"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

func main() {
	log.SetFlags(0)
	if err := run(); err != nil {
		log.Fatal(err)
	}
}

func run() error {
	load, err := units.ParseMass("20 kg")
	if err != nil {
		return err
	}
	oneRM, err := onerm.Epley.OneRM(load, 8)
	if err != nil {
		return err
	}
	fmt.Printf("%s lifted 8 times: one-repetition maximum %.3f kg\n", load, oneRM.Kilograms())

	var kit equipment.Kit
	err = json.Unmarshal([]byte(`{"dumbbells":[{"mass":"4 kg","count":2},{"mass":"6 kg","count":2}]}`), &kit)
	if err != nil {
		return err
	}
	table, err := kit.Compile(body.BothHandsOnOne)
	if err != nil {
		return err
	}
	jump, more, err := progression.NextJump(table, 4*units.Kilogram, 0)
	if err != nil {
		return err
	}
	fmt.Println("from 4 kg to", jump.To.Each(), "by", jump.External, more)

	if _, err = dose.Prescribe(dose.Request{}); !errors.Is(err, dose.ErrNotScreened) {
		return fmt.Errorf("a dose without screening: %w", err)
	}
	if err := prescribe(kit); err != nil {
		return err
	}
	if err := job(); err != nil {
		return err
	}
	return both()
}

func prescribe(kit equipment.Kit) error {
	squat, err := exercise.Standard().Lookup("goblet squat")
	if err != nil {
		return err
	}
	p, err := dose.Prescribe(dose.Request{
		Day: 739945, Screening: screening.Waived("a check of the library", body.Person{Age: 67, Training: body.Novice}, screening.InGroup, 739945),
		Exercise: squat, Side: body.Both, Goal: guideline.Strength, Kit: kit,
	})
	if err != nil {
		return err
	}
	text, err := json.Marshal(p)
	if err != nil {
		return err
	}
	var back dose.Prescription
	if err := json.Unmarshal(text, &back); err != nil {
		return err
	}
	fmt.Println("a dose of", back.Exercise, "with", back.Load.Each(), "and reasons:", len(back.Reasons) > 0)
	return nil
}

package rota_test

import (
	"fmt"
	"log"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// hall is an invented class of three who share a few dumbbells: each does the same
// three exercises. No such people, hall or class exists.
func hall(masses ...string) rota.Class {
	var class rota.Class
	for _, mass := range masses {
		class.Kit.Dumbbells = append(class.Kit.Dumbbells, equipment.Dumbbell{Mass: units.Must(units.ParseMarked(mass)), Count: 1})
	}
	for _, name := range []string{"A", "B", "C"} {
		client := rota.Client{Name: name}
		for id, kg := range []units.Mass{4, 4, 6} {
			client.Items = append(client.Items, dose.Prescription{
				Exercise: []exercise.ID{"one-arm-dumbbell-row", "goblet-squat", "suitcase-carry"}[id], Hold: body.OneHand,
				Load: units.Must(equipment.NewLoad(kg*units.Kilogram, body.OneHand)), Sets: 1, Count: 10,
				Measure: exercise.Repetitions, Tempo: dose.Tempo{Lowering: 2, Lifting: 2},
			})
		}
		class.Clients = append(class.Clients, client)
	}
	return class
}

// With two dumbbells of 4 kg and one of 6 kg nobody waits.
func ExampleSchedule() {
	table, err := rota.Schedule(hall("4 kg", "4 kg", "6 kg"))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%d slots of %d s, %d min in all; slots spent waiting: %d; proof: %s\n",
		table.Slots, table.Seconds, table.Minutes, table.Waiting, table.Proof)
	for _, turn := range table.Clients[2].Turns {
		fmt.Printf("%d %s: %s\n", turn.Slot, turn.Exercise, turn.Load)
	}
	// Output:
	// 3 slots of 40 s, 6 min in all; slots spent waiting: 0; proof: best of all
	// 1 suitcase-carry: 6 kg dumbbell in one hand
	// 2 one-arm-dumbbell-row: 4 kg dumbbell in one hand
	// 3 goblet-squat: 4 kg dumbbell in one hand
}

// With one of each they wait, and a purchase helps.
func ExampleAdviseClass() {
	advice, err := rota.AdviseClass(hall("4 kg", "6 kg"), nil)
	if err != nil {
		log.Fatal(err)
	}
	for _, a := range advice[:2] {
		fmt.Printf("%s: %d slots of waiting fewer, %d left\n", a.Purchase, a.Removed, a.Waiting)
	}
	// Output:
	// 1 × 4 kg dumbbell: 4 slots of waiting fewer, 0 left
	// 2 × 4 kg dumbbell: 4 slots of waiting fewer, 0 left
}

// In five minutes there is time for two slots: each leaves out one exercise, so that
// nobody waits for a weight.
func ExampleWithin() {
	class := hall("4 kg", "4 kg", "6 kg")
	fitted, err := rota.Within(class, 5)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%d min, slots spent waiting: %d, at most %d set; proven: %v\n", fitted.Timetable.Minutes, fitted.Timetable.Waiting, fitted.Sets, fitted.Proven)
	for _, client := range fitted.LeftOut {
		for _, turn := range client.Turns {
			fmt.Println(client.Name, "leaves out", turn.Exercise)
		}
	}
	// Output:
	// 4 min, slots spent waiting: 0, at most 1 set; proven: true
	// A leaves out suitcase-carry
	// B leaves out goblet-squat
	// C leaves out goblet-squat
}

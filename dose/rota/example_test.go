package rota_test

import (
	"fmt"
	"log"

	"example.org/posology/dose/rota"
)

// An invented class of eight with one shared rack: a pair of dumbbells of each
// mass, two handles and some plates. No such people, hall or class exists.
func ExampleSchedule() {
	table, err := rota.Schedule(eight(rack()))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%d slots of %d s, %d min in all; slots spent waiting: %d; proof: %s\n",
		table.Slots, table.Seconds, table.Minutes, table.Waiting, table.Proof)
	for _, turn := range table.Clients[7].Turns {
		fmt.Printf("%d %s: %s\n", turn.Slot, turn.Exercise, turn.Load)
	}
	// Output:
	// 8 slots of 40 s, 20 min in all; slots spent waiting: 0; proof: least waiting
	// 1 dumbbell-romanian-deadlift: 6 kg dumbbell in each hand
	// 2 dumbbell-floor-press: 3 kg dumbbell in each hand
	// 3 dumbbell-shoulder-press: 2 kg dumbbell in each hand
	// 4 one-arm-dumbbell-row: 4 kg dumbbell in one hand
	// 5 goblet-squat: 5 kg dumbbell in both hands
	// 6 lateral-raise: 2 kg dumbbell in each hand
	// 7 suitcase-carry: 6 kg dumbbell in one hand
	// 8 standing-calf-raise: 5 kg dumbbell in each hand
}

// The invented class with dumbbells alone has to wait; one purchase helps most.
func ExampleAdvise() {
	advice, err := rota.AdviseClass(eight(scarce()), nil)
	if err != nil {
		log.Fatal(err)
	}
	for _, a := range advice[:3] {
		fmt.Printf("%s: %d slots of waiting fewer, %d left\n", a.Purchase, a.Removed, a.Waiting)
	}
	// Output:
	// 1 × 5 kg dumbbell: 3 slots of waiting fewer, 2 left
	// 2 × 5 kg dumbbell: 3 slots of waiting fewer, 2 left
	// 1 × 3 kg dumbbell: 2 slots of waiting fewer, 3 left
}

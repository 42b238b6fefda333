package rota

import (
	"math"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Effort counts looks, not time: a slot costs a look at each need for each client, so that a
// search ends at the same place on every machine.
func TestASlotCostsItsLooks(t *testing.T) {
	load := units.Must(equipment.NewLoad(4*units.Kilogram, body.OneHand))
	item := dose.Prescription{Exercise: "a", Hold: body.OneHand, Load: load, Sets: 1, Count: 10, Measure: exercise.Repetitions, Tempo: dose.Tempo{Lowering: 2, Lifting: 2}}
	c := Class{Kit: equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Marked{Mass: load.Each()}, Count: 1}}}}
	for _, name := range []string{"A", "B", "C"} {
		c.Clients = append(c.Clients, Client{Name: name, Items: []dose.Prescription{item}})
	}
	p := units.Must(newRotaProblem(c))
	if len(p.needs) == 0 {
		t.Fatal("no needs")
	}
	const effort = 1000
	s := p.search(true, price{math.MaxInt, math.MaxInt, math.MaxInt}, false, effort)
	clear(s.todo) // nothing is left: one slot is looked at, and none is filled
	if ended := s.run(); !ended || effort-s.effort != len(p.needs)*len(c.Clients) {
		t.Errorf("ended %v, %d looks; want one at each of %d needs for each of %d clients", ended, effort-s.effort, len(p.needs), len(c.Clients))
	}
	s = p.search(true, price{math.MaxInt, math.MaxInt, math.MaxInt}, false, len(p.needs)*len(c.Clients)-1)
	if clear(s.todo); s.run() {
		t.Error("a look too many ends by itself")
	}
}

// Climbing tries so many amounts and no more, raises the bound by each that it rules out,
// and does not try what is there already.
func TestClimbingEnds(t *testing.T) {
	p := units.Must(newRotaProblem(Class{Clients: []Client{{Name: "A", Items: []dose.Prescription{{Exercise: "a", Hold: body.Unloaded, Sets: 1, Count: 10, Measure: exercise.Repetitions, Tempo: dose.Tempo{Lowering: 2, Lifting: 2}}}}}}))
	for have, want := range map[int]int{0: 0, 3: 3, provingTries: provingTries, 100: provingTries} {
		least, tries := 0, 0
		p.climb(&solution{}, &least, &have, func(int) price { tries++; return price{-1, -1, -1} }) // within which nothing is
		if tries != want || least != want {
			t.Errorf("towards %d: %d tries, a bound of %d; want %d of each", have, tries, least, want)
		}
	}
}

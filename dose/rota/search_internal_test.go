package rota

import (
	"math"
	"math/rand/v2"
	"slices"
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

// What is left of a class has the same bounds as if it were made anew.
func TestOutlinesAreProblems(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	shared := 0
	for range 15 {
		c := classByLot(r)
		var o outlines
		o.begin(c)
		for set := range 1 << 9 {
			var out []spot
			for bit := range 9 {
				if set&(1<<bit) != 0 {
					out = append(out, spot{bit / 3, bit % 3})
				}
			}
			p, err := newRotaProblem(c.without(out))
			if err != nil {
				continue // somebody has nothing left
			}
			seconds, _, _ := p.slotSeconds()
			late, last := p.bound(p.all())
			todo := o.without(out)
			q, long := o.of(todo)
			if mostLate, mostLast := q.bound(todo); mostLate != late || mostLast != last || long != seconds || q.partial != p.partial {
				t.Fatalf("without %v: %d, %d in %d s; anew %d, %d in %d s", out, mostLate, mostLast, long, late, last, seconds)
			}
			if slices.Max(append(p.shares, 0)) == mostShare {
				shared++
			}
		}
	}
	if shared == 0 {
		t.Error("nothing was shared")
	}
}

// classByLot is a class of three with three exercises each.
func classByLot(r *rand.Rand) Class {
	mass := func(kg int) units.Marked { return units.Marked{Mass: units.Mass(kg) * units.Kilogram, Unit: units.KG} }
	c := Class{Staggered: r.IntN(2) == 0, Shared: r.IntN(2) == 0}
	c.Kit = equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{Mass: mass(2), Count: 1 + r.IntN(3)}, {Mass: mass(4), Count: 1 + r.IntN(2)}},
		Handles:   []equipment.Handle{{Name: "h", Mass: mass(2), Count: 1 + r.IntN(2)}},
		Plates:    []equipment.Plate{{Mass: mass(1), Count: 2 + 2*r.IntN(3)}, {Mass: mass(2), Count: 4}},
	}
	loads := []equipment.Load{units.Must(equipment.NewLoad(0, body.Unloaded))}
	for _, h := range []body.Hold{body.OneHand, body.OneEachHand} {
		if table, err := c.Kit.Compile(h); err == nil {
			loads = slices.AppendSeq(loads, table.Loads())
		}
	}
	for _, name := range []string{"C", "A", "B"} {
		client := Client{Name: name}
		for j := range 3 {
			l := loads[r.IntN(len(loads))]
			client.Items = append(client.Items, dose.Prescription{Exercise: exercise.ID(rune('a' + j)), Hold: l.Hold(), Load: l, Sets: 1 + r.IntN(3), Count: 5 + 10*r.IntN(3),
				Measure: exercise.Repetitions, Tempo: dose.Tempo{Lowering: 2, Lifting: 2}, Rest: units.Exactly(30 + 60*r.IntN(2))})
		}
		c.Clients = append(c.Clients, client)
	}
	return c
}

// Without anything left to spend the search gives up, says that it ruled nothing out, and
// one exercise of each client, the shortest, is kept.
func TestWithinGivesUp(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 20 {
		c, work := classByLot(r), 0
		f := &fitting{class: c, minutes: 60, sets: 3, open: never, work: &work}
		if got := f.fewest(nil); got != nil || f.open != (gave{}) {
			t.Fatalf("%+v, %+v", got, f.open)
		}
		got := f.shortestOnly()
		if got == nil || got.class.items() != 3 || len(got.out) != 6 {
			t.Fatalf("%+v", got)
		}
		for i, client := range got.class.Clients {
			for _, item := range c.Clients[i].Items {
				if c.length(item) < c.length(client.Items[0]) {
					t.Errorf("%s is shorter", item.Exercise)
				}
			}
		}
		work = withinEffort
		if f.try(nil, 0); work == withinEffort {
			t.Error("a try costs nothing")
		}
	}
}

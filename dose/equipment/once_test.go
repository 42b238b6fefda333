package equipment_test

import (
	"fmt"
	"slices"
	"sync"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"pgregory.net/rapid"
)

// A kit that is compiled once gives what it gives otherwise, errors too.
func TestOnceIsTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		if rapid.Bool().Draw(t, "bad") {
			k.Plates = append(k.Plates, equipment.Plate{Count: -1})
		}
		once := k.Once(equipment.Kit{})
		for _, h := range append(slices.Collect(body.Holds()), body.Hold(0), body.Unloaded+1) {
			want, wantErr := k.Compile(h)
			for range 2 {
				got, err := once.Compile(h)
				if fmt.Sprint(err) != fmt.Sprint(wantErr) || !slices.EqualFunc(slices.Collect(got.Loads()), slices.Collect(want.Loads()), equipment.Load.Equal) {
					t.Fatalf("%s: %v, %v; want %v, %v", h, got, err, want, wantErr)
				}
			}
		}
	})
}

// kitChanges are one change of each list of a kit.
var kitChanges = []func(*equipment.Kit){
	func(k *equipment.Kit) { k.Dumbbells[0].Mass = kg(5) },
	func(k *equipment.Kit) { k.Dumbbells = k.Dumbbells[:1] },
	func(k *equipment.Kit) { k.Handles[0].Count = 1 },
	func(k *equipment.Kit) { k.Bars[0].Name = "short" },
	func(k *equipment.Kit) { k.Plates[0].Count = 2 },
	func(k *equipment.Kit) { k.Stacks[0].Name = "pulley" },
	func(k *equipment.Kit) { k.Stacks[0].Pins[1] = kg(7) },
	func(k *equipment.Kit) { k.Stacks[0].AddOns[0].Mass = kg(2) },
	func(k *equipment.Kit) { k.Stacks = nil },
}

func fullKit() equipment.Kit {
	return equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{Mass: kg(2), Count: 2}, {Mass: kg(4), Count: 2}},
		Handles:   []equipment.Handle{{Mass: kg(2), Count: 2}},
		Bars:      []equipment.Bar{{Mass: kg(8)}},
		Plates:    []equipment.Plate{{Mass: kg(1), Count: 8}},
		Stacks:    []equipment.Stack{{Pins: []units.Marked{kg(5), kg(10)}, AddOns: []equipment.Plate{{Mass: kg(1), Count: 1}}}},
	}
}

// Tables are shared by copies and by kits of the same things, and by no others; a
// list that is changed afterwards changes what is made, whoever shares it.
func TestOnceShares(t *testing.T) {
	once := fullKit().Once(equipment.Kit{})
	again, latest := fullKit().Once(once), fullKit().Once(equipment.Kit{})
	for h := range body.Holds() {
		a, _ := once.Compile(h)
		b, _ := again.Compile(h)
		c, _ := latest.Compile(h)
		if a != b || a != c {
			t.Errorf("%s: not shared", h)
		}
	}
	for i, change := range kitChanges {
		other := fullKit()
		change(&other)
		if apart := other.Once(once); apart.Equal(once) || !apart.Equal(other) {
			t.Errorf("change %d: equal", i)
		}
		mine := fullKit()
		mine = mine.Once(mine)
		for h := range body.Holds() {
			_, _ = mine.Compile(h)
		}
		change(&mine)
		for h := range body.Holds() {
			want, wantErr := other.Compile(h)
			for _, k := range []equipment.Kit{mine, other.Once(once), other.Once(mine)} {
				got, err := k.Compile(h)
				if fmt.Sprint(err) != fmt.Sprint(wantErr) || !slices.EqualFunc(slices.Collect(got.Loads()), slices.Collect(want.Loads()), equipment.Load.Equal) {
					t.Errorf("change %d, %s: %v, want %v", i, h, slices.Collect(got.Loads()), slices.Collect(want.Loads()))
				}
			}
		}
	}
}

func TestOnceFromSeveralGoroutines(t *testing.T) {
	once := fullKit().Once(equipment.Kit{})
	tables := make([]*equipment.Table, 8)
	var all sync.WaitGroup
	for i := range tables {
		all.Go(func() { tables[i], _ = once.Compile(body.OneEachHand) })
	}
	all.Wait()
	for _, table := range tables {
		if table == nil || table != tables[0] {
			t.Error("two tables of one kit")
		}
	}
}

func TestOnceDoesNotAllocate(t *testing.T) {
	once := fullKit().Once(equipment.Kit{})
	_, _ = once.Compile(body.OnBar)
	if n := testing.AllocsPerRun(100, func() { _, _ = once.Compile(body.OnBar) }); n != 0 {
		t.Errorf("%v allocations, want 0", n)
	}
}

package rota_test

import (
	"fmt"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/rota"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var (
	has   = dosetest.Has
	pairs = dosetest.Pairs
	paths = fieldtest.Paths
)

// marked is a mass marked in kilograms.
func marked(kg float64) units.Marked {
	return units.Marked{Mass: units.Must(units.Kilograms(kg)), Unit: units.KG}
}

// singles is a kit with one dumbbell of each mass.
func singles(kg ...float64) equipment.Kit {
	var k equipment.Kit
	for _, m := range kg {
		k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: marked(m), Count: 1})
	}
	return k
}

// turnOf is a prescription of one set of ten with so much in each implement.
func turnOf(id exercise.ID, h body.Hold, kg float64) dose.Prescription {
	each := marked(kg).Mass
	return dose.Prescription{
		Exercise: id, Hold: h, Load: units.Must(equipment.NewLoad(each, h)),
		Sets: 1, Count: 10, Measure: exercise.Repetitions, Tempo: dose.Tempo{Lowering: 2, Lifting: 2},
	}
}

// oneHanded lists one exercise for each mass, with names a, b, c, ….
func oneHanded(kg ...float64) []dose.Prescription {
	var items []dose.Prescription
	for i, m := range kg {
		items = append(items, turnOf(exercise.ID('a'+rune(i)), body.OneHand, m))
	}
	return items
}

// classOf gives clients of the names A, B, C, … the sessions.
func classOf(k equipment.Kit, sessions ...[]dose.Prescription) rota.Class {
	c := rota.Class{Kit: k}
	for i, items := range sessions {
		c.Clients = append(c.Clients, rota.Client{Name: string('A' + rune(i)), Items: items})
	}
	return c
}

func plan(t failer, c rota.Class) rota.Timetable {
	t.Helper()
	table, err := rota.Schedule(c)
	if err != nil {
		t.Fatalf("Plan: %v", err)
	}
	return table
}

// rack is an invented hall's one rack: pairs, a pair of handles, some plates.
func rack() equipment.Kit {
	k := pairs(1, 2, 3, 4, 5, 6, 8, 10)
	k.Handles = []equipment.Handle{{Name: "short", Mass: marked(1.5), Collars: marked(0.5), Count: 2, PlatesPerEnd: 4}}
	k.Plates = []equipment.Plate{{Mass: marked(0.5), Count: 8}, {Mass: marked(1.25), Count: 4}, {Mass: marked(2), Count: 4}}
	return k
}

// scarce is the rack without handles and plates.
func scarce() equipment.Kit { return pairs(1, 2, 3, 4, 5, 6, 8, 10) }

// eight is an invented class: eight clients, named 1 to 8, with eight exercises
// each. Three levels of weights repeat among them.
func eight(k equipment.Kit) rota.Class {
	exercises := []struct {
		id   exercise.ID
		hold body.Hold
		kg   [3]float64
	}{
		{"goblet-squat", body.BothHandsOnOne, [3]float64{4, 5, 6}},
		{"dumbbell-romanian-deadlift", body.OneEachHand, [3]float64{5, 6, 8}},
		{"dumbbell-floor-press", body.OneEachHand, [3]float64{2, 3, 4}},
		{"one-arm-dumbbell-row", body.OneHand, [3]float64{3, 4, 5}},
		{"dumbbell-shoulder-press", body.OneEachHand, [3]float64{1, 2, 3}},
		{"lateral-raise", body.OneEachHand, [3]float64{1, 2, 3}},
		{"standing-calf-raise", body.OneEachHand, [3]float64{4, 5, 6}},
		{"suitcase-carry", body.OneHand, [3]float64{5, 6, 8}},
	}
	c := rota.Class{Kit: k}
	for i := range 8 {
		var items []dose.Prescription
		for _, ex := range exercises {
			items = append(items, turnOf(ex.id, ex.hold, ex.kg[i%3]))
		}
		c.Clients = append(c.Clients, rota.Client{Name: fmt.Sprint(i + 1), Items: items})
	}
	return c
}

// drawSharedKit draws a kit of few masses, so that much clashes.
func drawSharedKit(t *rapid.T) equipment.Kit {
	var k equipment.Kit
	for _, kg := range []float64{2, 3, 4} {
		if n := rapid.IntRange(0, 2).Draw(t, "dumbbells"); n > 0 {
			k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: marked(kg), Count: n})
		}
	}
	for i := range rapid.IntRange(0, 2).Draw(t, "handles") {
		k.Handles = append(k.Handles, equipment.Handle{
			Name: fmt.Sprint(i), Mass: marked(1), Count: rapid.IntRange(1, 2).Draw(t, "count"), PlatesPerEnd: rapid.IntRange(0, 2).Draw(t, "ends"),
		})
	}
	k.Plates = []equipment.Plate{{Mass: marked(0.5), Count: rapid.IntRange(1, 6).Draw(t, "half")}, {Mass: marked(1), Count: rapid.IntRange(1, 4).Draw(t, "one")}}
	if rapid.Bool().Draw(t, "bar") {
		k.Bars = []equipment.Bar{{Mass: marked(5)}}
	}
	if rapid.Bool().Draw(t, "stack") {
		k.Stacks = []equipment.Stack{{Pins: []units.Marked{marked(5), marked(10)}}}
	}
	return k
}

// drawClass draws a class of at most so many clients and items, with loads that
// the kit makes.
func drawClass(t *rapid.T, clients, items int) rota.Class {
	k := drawSharedKit(t)
	loads := []equipment.Load{units.Must(equipment.NewLoad(0, body.Unloaded))}
	for _, h := range []body.Hold{body.OneHand, body.OneEachHand, body.OnBar, body.OnStack} {
		table, err := k.Compile(h)
		if err != nil {
			continue
		}
		for l := range table.Loads() {
			loads = append(loads, l)
		}
	}
	c := rota.Class{Kit: k, Staggered: rapid.Bool().Draw(t, "staggered"), Shared: rapid.Bool().Draw(t, "shared")}
	few := rapid.IntRange(1, len(loads)).Draw(t, "kinds")
	for i := range rapid.IntRange(1, clients).Draw(t, "clients") {
		client := rota.Client{Name: string('A' + rune(i))}
		for j := range rapid.IntRange(1, items).Draw(t, "items") {
			l := loads[len(loads)-1-rapid.IntRange(0, few-1).Draw(t, "load")]
			item := turnOf(exercise.ID('a'+rune(j)), body.Unloaded, 0)
			item.Hold, item.Load = l.Hold(), l
			if c.Shared { // of some slots a part is left to the other
				item.Sets, item.Count = rapid.IntRange(1, 3).Draw(t, "sets"), rapid.SampledFrom([]int{5, 12, 25}).Draw(t, "count")
				item.Rest = units.Exactly(rapid.SampledFrom([]int{30, 90}).Draw(t, "rest"))
			}
			client.Items = append(client.Items, item)
		}
		c.Clients = append(c.Clients, client)
	}
	return c
}

type failer = fieldtest.T

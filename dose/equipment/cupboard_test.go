package equipment_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func ExampleKit_CompileFor() {
	var k equipment.Kit
	err := field.Decode([]byte(`{
		"dumbbells":     [{"mass": "4 kg", "count": 2}],
		"kettlebells":   [{"mass": "8 kg", "count": 1}],
		"ankle_weights": [{"mass": "1 kg", "count": 2}]
	}`), &k, field.Strict)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, id := range []exercise.ID{"goblet-squat", "one-arm-shoulder-press", "kettlebell-swing", "ankle-weight-leg-curl"} {
		ex, _ := exercise.Standard().Get(id)
		table, err := k.CompileFor(ex)
		if err != nil {
			fmt.Println(err)
			return
		}
		for l := range table.Loads() {
			fmt.Printf("%s: %s\n", id, l)
		}
	}
	// Output:
	// goblet-squat: 4 kg dumbbell in both hands
	// goblet-squat: 8 kg kettlebell in both hands
	// one-arm-shoulder-press: 4 kg dumbbell in one hand
	// kettlebell-swing: 8 kg kettlebell in both hands
	// ankle-weight-leg-curl: 1 kg ankle weight
}

func drawReady(t *rapid.T, name string) []equipment.Dumbbell {
	var list []equipment.Dumbbell
	for range rapid.IntRange(0, 4).Draw(t, name) {
		list = append(list, equipment.Dumbbell{
			Mass:  units.Marked{Mass: units.Mass(rapid.IntRange(1, 12).Draw(t, "half kilograms")) * units.Kilogram / 2, Unit: units.KG},
			Count: rapid.IntRange(1, 3).Draw(t, "count"),
		})
	}
	return list
}

func drawCupboard(t *rapid.T) equipment.Kit {
	k := equipment.Kit{
		Dumbbells: drawReady(t, "dumbbells"), Kettlebells: drawReady(t, "kettlebells"), AnkleWeights: drawReady(t, "ankle weights"),
		Bands: rapid.SliceOfNDistinct(rapid.StringMatching("[a-z]{1,4}"), 0, 3, rapid.ID[string]).Draw(t, "bands"),
	}
	if rapid.Bool().Draw(t, "asked") {
		k.Things = append([]exercise.Thing{}, rapid.SliceOfDistinct(rapid.SampledFrom(slices.Collect(exercise.Things())), rapid.ID[exercise.Thing]).Draw(t, "things")...)
	}
	return k
}

// Whatever the order of the lists: for an exercise the kit makes what its implements
// are, each mass that exists often enough, rising and once.
func TestReadyMade(t *testing.T) {
	all := slices.Collect(exercise.Standard().All())
	rapid.Check(t, func(t *rapid.T) {
		k, ex := drawCupboard(t), rapid.SampledFrom(all).Draw(t, "exercise")
		if ex.Hold == body.OnBar || ex.Hold == body.OnStack || ex.Hold == body.Unloaded || ex.Hold == body.OnBand {
			return
		}
		want := map[units.Mass]bool{}
		for _, of := range []struct {
			list []equipment.Dumbbell
			with exercise.Implement
		}{{k.Dumbbells, exercise.Dumbbell}, {k.Kettlebells, exercise.Kettlebell}, {k.AnkleWeights, exercise.AnkleWeight}} {
			count := map[units.Mass]int{}
			for _, d := range of.list {
				if slices.Contains(ex.Implements, of.with) {
					count[d.Mass.Mass] += d.Count
				}
			}
			for m, n := range count {
				if n >= ex.Hold.Implements() {
					want[m] = true
				}
			}
		}
		for _, k := range []equipment.Kit{k, k.Once(k)} {
			table, err := k.CompileFor(ex)
			if len(want) == 0 {
				if !errors.Is(err, equipment.ErrEmptyKit) {
					t.Fatalf("%s: %v", ex.ID, err)
				}
				continue
			}
			if err != nil || table.Len() != len(want) {
				t.Fatalf("%s: %d loads, want %v, %v", ex.ID, table.Len(), want, err)
			}
			before := units.Mass(0)
			for l := range table.Loads() {
				if !want[l.Each()] || l.Each() <= before || l.Validate() != nil || l.Hold() != ex.Hold {
					t.Fatalf("%s: %s", ex.ID, l)
				}
				before = l.Each()
			}
		}
	})
}

// A kit reads back as it was, and so do its loads; nobody asked is not nothing there.
func TestCupboardRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawCupboard(t)
		data, err := json.Marshal(k)
		var back equipment.Kit
		if err != nil || field.Decode(data, &back, field.Strict) != nil || !back.Equal(k) || (back.Things == nil) != (k.Things == nil) {
			t.Fatalf("%s: %+v, %v", data, back, err)
		}
		for h := range body.Holds() {
			table, err := k.Compile(h)
			if err != nil {
				continue
			}
			for l := range table.Loads() {
				data, err := json.Marshal(l)
				var again equipment.Load
				if err != nil || json.Unmarshal(data, &again) != nil || !again.Equal(l) {
					t.Fatalf("%s: %v", data, err)
				}
			}
		}
	})
}

// An exercise with a band needs that very band; one that names none is not dosed.
func TestBandsOfTheKit(t *testing.T) {
	c, err := exercise.Standard().WithBands("soft", "wide")
	if err != nil {
		t.Fatal(err)
	}
	k := equipment.Kit{Bands: []string{"wide"}}
	for id, there := range map[exercise.ID]bool{"band-row": false, "band-row-soft": false, "band-row-wide": true} {
		ex, _ := c.Get(id)
		table, err := k.CompileFor(ex)
		if there != (err == nil) || !there && !errors.Is(err, equipment.ErrEmptyKit) {
			t.Errorf("%s: %v", id, err)
		}
		if there && (table.Len() != 1 || table.Lightest().Each() != 0 || table.Lightest().Hold() != body.OnBand) {
			t.Errorf("%s: %s", id, table.Lightest())
		}
	}
}

func TestBadCupboard(t *testing.T) {
	k := equipment.Kit{
		Bands: []string{"", "Soft", "soft", "soft"}, Things: []exercise.Thing{0, 99, exercise.Chair, exercise.Chair},
		Kettlebells: []equipment.Dumbbell{{Count: 1}}, AnkleWeights: []equipment.Dumbbell{{Mass: units.Marked{Mass: units.Kilogram}}},
	}
	k.Seats, k.Steps = []int{45, 0, 45, 101}, []int{10}
	var all field.Errors
	if !errors.As(k.Validate(), &all) {
		t.Fatal("nothing is wrong with it")
	}
	var paths []string
	for _, e := range all {
		paths = append(paths, e.Path)
	}
	want := []string{"/kettlebells/0/mass", "/ankle_weights/0/count", "/bands/0", "/bands/1", "/bands/3", "/things/0", "/things/1", "/things/3",
		"/seats_cm/1", "/seats_cm/2", "/seats_cm/3", "/steps_cm"}
	if !slices.Equal(paths, want) {
		t.Errorf("%v, want %v", paths, want)
	}
}

// What depends on the kit: an exercise for each band, lower seat and higher step.
func ExampleKit_Fit() {
	k := equipment.Kit{Bands: []string{"soft", "wide"}, Seats: []int{48, 42}}
	catalogue, err := k.Fit(exercise.Standard())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, id := range []exercise.ID{"band-row-wide", "sit-to-stand-42"} {
		ex, _ := catalogue.Get(id)
		fmt.Printf("%s: %s, harder than %s\n", ex.ID, ex.Name, ex.Easier)
	}
	_, err = equipment.Kit{Bands: []string{"soft", "soft"}}.Fit(exercise.Standard())
	fmt.Println(err)
	// Output:
	// band-row-wide: band row: wide, harder than band-row-soft
	// sit-to-stand-42: sit-to-stand, 42 cm, harder than sit-to-stand
	// given twice: /bands/1 = "soft", allowed: a name of its own
}

// The first way to make a load of the cupboard is the one that Compile takes, and the kit
// has all that a way takes.
func TestWaysOfTheCupboard(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawCupboard(t)
		for h := range body.Holds() {
			table, err := k.Compile(h)
			if err != nil {
				if ways, _, err := k.Ways(0, h); err != nil || len(ways) > 0 {
					t.Fatalf("%s: %v, %v", h, ways, err)
				}
				continue
			}
			for l := range table.Loads() {
				ways, _, err := k.Ways(l.Each(), h)
				if err != nil || len(ways) == 0 || !ways[0].Load.Equal(l) {
					t.Fatalf("%s: %v, %v", l, ways, err)
				}
				for _, w := range ways {
					for _, u := range w.Uses {
						if u.Count != h.Implements() || k.Stock(u) < u.Count {
							t.Fatalf("%s: %+v of %d", w.Load, u, k.Stock(u))
						}
					}
				}
			}
		}
	})
}

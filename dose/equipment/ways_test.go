package equipment_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Every way that trying everything finds is listed, and the first is the one
// that Compile takes. Stacks are listed once each.
func TestWaysAgainstEverything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		h := rapid.SampledFrom(slices.Collect(body.Holds())).Draw(t, "hold")
		table, err := k.Compile(h)
		if err != nil {
			return
		}
		loads := slices.Collect(table.Loads())
		l := loads[rapid.IntRange(0, len(loads)-1).Draw(t, "load")]
		ways, all, err := k.Ways(l.Each(), h)
		if err != nil || len(ways) == 0 || !ways[0].Load.Equal(l) {
			t.Fatalf("%s: %v, %v", l, ways, err)
		}
		var got, want []string
		for _, w := range ways {
			checkWay(t, k, w)
			got = append(got, fmt.Sprint(w.Load.Parts()))
		}
		for _, w := range everyWay(k, h) {
			if w.mass == l.Each() {
				want = append(want, fmt.Sprint(w.parts))
			}
		}
		got, want = each(got), each(want)
		if h == body.OnStack {
			if len(got) > len(k.Stacks) || slices.ContainsFunc(got, func(way string) bool { return !slices.Contains(want, way) }) {
				t.Fatalf("%d ways on %d stacks", len(got), len(k.Stacks))
			}
		} else if all && !slices.Equal(got, want) {
			t.Fatalf("%s: ways %v, all ways %v", l, got, want)
		}
	})
}

// each sorts the texts and keeps each once: like entries make like parts.
func each(texts []string) []string {
	slices.Sort(texts)
	return slices.Compact(texts)
}

// checkWay holds the uses against the parts and the stock.
func checkWay(t *rapid.T, k equipment.Kit, w equipment.Way) {
	if err := w.Load.Validate(); err != nil {
		t.Fatalf("%s: %v", w.Load, err)
	}
	plates := 0
	for _, u := range w.Uses {
		if n := k.Stock(u); u.Count < 1 || u.Count > n {
			t.Fatalf("%s uses %+v of %d", w.Load, u, n)
		}
		if u.Kind == equipment.PartPlate {
			plates += u.Count
		}
	}
	if w.Load.Hold() != body.OnStack && plates != w.Load.Plates() {
		t.Fatalf("%s: uses %+v", w.Load, w.Uses)
	}
}

func TestWaysByHand(t *testing.T) {
	k := equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{Mass: kg(4), Count: 1}, {Mass: kg(3), Count: 1}, {Mass: kg(4), Count: 1}},
		Handles:   []equipment.Handle{{Name: "h", Mass: kg(1), Collars: kg(1), Count: 2, PlatesPerEnd: 2}},
		Plates:    []equipment.Plate{{Mass: kg(0.5), Count: 8}, {Mass: kg(1), Count: 4}},
	}
	ways, all, err := k.Ways(4*kilo, body.OneEachHand)
	if err != nil || !all {
		t.Fatal(all, err)
	}
	want := "[{4 kg dumbbell in each hand [{dumbbell 0 2}]} " +
		"{h 1 kg with collars 1 kg + 1 × 1 kg on each end, in each hand [{handle 0 2} {plate 1 4}]} " +
		"{h 1 kg with collars 1 kg + 2 × 0.5 kg on each end, in each hand [{handle 0 2} {plate 0 8}]}]"
	if got := fmt.Sprint(ways); got != want {
		t.Errorf("ways %s\nwant %s", got, want)
	}
	if ways, all, err := k.Ways(3500*units.Gram, body.OneEachHand); len(ways) != 0 || !all || err != nil {
		t.Errorf("not made: %v, %v, %v", ways, all, err)
	}
	var back equipment.Way
	if err := field.Decode(units.Must(json.Marshal(ways[1])), &back, field.Strict); err != nil || !back.Load.Equal(ways[1].Load) || !slices.Equal(back.Uses, ways[1].Uses) {
		t.Errorf("%v came back as %v, %v", ways[1], back, err)
	}
	if n := k.Stock(equipment.Use{Kind: equipment.PartDumbbell, Entry: 2}); n != 2 {
		t.Errorf("%d of 4 kg", n)
	}
	for _, u := range []equipment.Use{
		{Kind: equipment.PartDumbbell, Entry: 3}, {Kind: equipment.PartHandle, Entry: -1}, {}, {Kind: equipment.PartBar},
		{Kind: equipment.PartPin}, {Kind: equipment.PartPlate, Entry: 9}, {Kind: equipment.PartCollars},
	} {
		if n := k.Stock(u); n != 0 {
			t.Errorf("%+v: %d in stock", u, n)
		}
	}
}

// One handle is no pair, and what two ends cannot share is not made.
func TestWaysThatThereAreNot(t *testing.T) {
	k := homeKit()
	if ways, all, err := k.Ways(2*kilo, body.OneEachHand); len(ways) != 1 || !all || err != nil {
		t.Errorf("a pair of 2 kg beside one handle: %v, %v, %v", ways, all, err)
	}
	if ways, all, err := k.Ways(2*kilo+1, body.OneHand); len(ways) != 0 || !all || err != nil {
		t.Errorf("a nanogram on two ends: %v, %v, %v", ways, all, err)
	}
}

func TestWaysAreCutShort(t *testing.T) {
	k := equipment.Kit{Handles: []equipment.Handle{{Name: "h", Mass: kg(2), Count: 1}}}
	for _, m := range []float64{0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 5} {
		k.Plates = append(k.Plates, equipment.Plate{Mass: kg(m), Count: 20})
	}
	if ways, all, err := k.Ways(22*kilo, body.OneHand); len(ways) != equipment.MaxWays || all || err != nil {
		t.Errorf("%d ways, all %v, %v", len(ways), all, err)
	}
}

// Where a stock of plates has too many ways, the list says that it is not whole.
func TestWaysOfAHugeStock(t *testing.T) {
	ways, all, err := bigKit().Ways(202*kilo, body.OneHand)
	if err != nil || all || len(ways) == 0 || len(ways) > equipment.MaxWays {
		t.Errorf("%d ways, all %v, %v", len(ways), all, err)
	}
}

func TestWaysErrors(t *testing.T) {
	var all field.Errors
	if _, _, err := (equipment.Kit{Plates: []equipment.Plate{{}}}).Ways(-1, 0); !errors.As(err, &all) || len(all) != 4 {
		t.Errorf("%v", err)
	}
	stack := equipment.Stack{Pins: []units.Marked{kg(5)}}
	for i := range 20 {
		stack.AddOns = append(stack.AddOns, equipment.Plate{Mass: units.Marked{Mass: units.Gram + 1<<i}, Count: 1})
	}
	if _, _, err := (equipment.Kit{Stacks: []equipment.Stack{stack}}).Ways(5*kilo, body.OnStack); !errors.Is(err, equipment.ErrTooManyLoads) {
		t.Errorf("a stack of too many loads: %v", err)
	}
	if ways, all, err := (equipment.Kit{}).Ways(units.MaxMass, body.OneEachHand); len(ways) != 0 || !all || err != nil {
		t.Errorf("the largest mass: %v, %v, %v", ways, all, err)
	}
}

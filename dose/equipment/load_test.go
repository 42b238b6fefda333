package equipment_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	gocmp "github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestLoadString(t *testing.T) {
	k := equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{lb(25), 2}, {units.Marked{Mass: 4 * kilo}, 2}}, // the second without a unit
		Handles:   []equipment.Handle{{Mass: kg(2), Count: 2}},
		Bars:      []equipment.Bar{{Name: "long bar", Mass: kg(20), Collars: lb(5)}},
		Plates:    []equipment.Plate{{kg(1.25), 8}, {lb(2.5), 4}},
		Stacks: []equipment.Stack{
			{Pins: []units.Marked{kg(5), kg(10)}, AddOns: []equipment.Plate{{kg(1.25), 2}}},
			{Name: "pulley", Pins: []units.Marked{lb(10), lb(33)}},
		},
	}
	tests := []struct {
		hold  body.Hold
		index int
		want  string
		mark  string
	}{
		{body.OneHand, 1, "4 kg dumbbell in one hand", "4 kg"},
		{body.OneEachHand, 1, "4 kg dumbbell in each hand", "4 kg"},
		{body.BothHandsOnOne, 1, "4 kg dumbbell in both hands", "4 kg"},
		{body.OneHand, 0, "handle 2 kg, in one hand", "2 kg"},
		{body.OneEachHand, 3, "handle 2 kg + 1 × 1.25 kg on each end, in each hand", "4.5 kg"},
		{body.OneHand, 6, "handle 2 kg + 2 × 1.25 kg on each end, in one hand", "7 kg"},
		{body.OnBar, 0, "long bar 20 kg with collars 5 lb", "22.26796185 kg"},
		{body.OnBar, 4, "long bar 20 kg with collars 5 lb + 1 × 1.25 kg + 1 × 2.5 lb on each end", "27.0359237 kg"},
		{body.OnStack, 0, "pulley at 10 lb", "10 lb"},
		{body.OnStack, 2, "stack at 5 kg + 1 × 1.25 kg", "6.25 kg"},
		{body.OnStack, 4, "stack at 10 kg", "10 kg"},
		{body.Unloaded, 0, "no weight", "0 kg"},
	}
	for _, test := range tests {
		loads := slices.Collect(units.Must(k.Compile(test.hold)).Loads())
		l := loads[test.index]
		if l.String() != test.want || l.Marked().String() != test.mark {
			t.Errorf("%s, load %d: %q, each %s; want %q, each %s", test.hold, test.index, l, l.Marked(), test.want, test.mark)
		}
	}
}

// The pound is exact: two dumbbells of 25 lb are 50 lb and no nanogram else.
func TestPounds(t *testing.T) {
	k := equipment.Kit{Dumbbells: []equipment.Dumbbell{{lb(25), 2}}}
	l := units.Must(k.Compile(body.OneEachHand)).Lightest()
	if l.Total() != 50*units.Pound || l.Total().Text(l.Marked().Unit) != "50 lb" || l.Marked() != lb(25) {
		t.Errorf("%s: each %s, total %s; want 25 lb and 50 lb", l, l.Marked(), l.Total().Text(units.LB))
	}
}

// Two singles of the same mass make a pair, whatever is marked on them.
func TestPairOfSingles(t *testing.T) {
	k := equipment.Kit{Dumbbells: []equipment.Dumbbell{{lb(1), 1}, {kg(2), 1}, {kg(0.45359237), 1}}}
	table := units.Must(k.Compile(body.OneEachHand))
	if l := table.Lightest(); table.Len() != 1 || l.String() != "1 lb dumbbell in each hand" {
		t.Errorf("%d loads, lightest %s; want the pair of 1 lb alone", table.Len(), l)
	}
}

func TestLoadWithoutParts(t *testing.T) {
	tests := []struct {
		load equipment.Load
		want string
	}{
		{units.Must(equipment.NewLoad(4*kilo, body.OneHand)), "4 kg in one hand"},
		{units.Must(equipment.NewLoad(4*kilo, body.OneEachHand)), "4 kg in each hand"},
		{units.Must(equipment.NewLoad(4*kilo, body.BothHandsOnOne)), "4 kg in both hands"},
		{units.Must(equipment.NewLoad(30*kilo, body.OnBar)), "30 kg on a bar"},
		{units.Must(equipment.NewLoad(30*kilo, body.OnStack)), "30 kg on a stack"},
		{units.Must(equipment.NewLoad(2*kilo, body.OnLimb)), "2 kg on a limb"},
		{units.Must(equipment.NewLoad(0, body.OnBand)), "a band"},
		{units.Must(equipment.NewLoad(0, body.Unloaded)), "no weight"},
		{equipment.Load{}, "0 kg"},
	}
	for _, test := range tests {
		if got := test.load.String(); got != test.want {
			t.Errorf("%+v prints %q, want %q", test.load, got, test.want)
		}
		if err := test.load.Validate(); (err == nil) != (test.load.Hold() != 0) {
			t.Errorf("%s: Validate = %v", test.want, err)
		}
	}
}

func TestLoadJSON(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		for l := range drawTable(t).Loads() {
			text := units.Must(json.Marshal(l))
			var back equipment.Load
			if err := field.Decode(text, &back, field.Strict); err != nil {
				t.Fatalf("%s: %v", text, err)
			}
			if diff := gocmp.Diff(l, back); diff != "" || back.String() != l.String() || back.Plates() != l.Plates() {
				t.Fatalf("%s came back as %s:\n%s", l, back, diff)
			}
			if err := back.Validate(); err != nil {
				t.Fatalf("%s: %v", back, err)
			}
		}
	})
}

func TestLoadJSONForm(t *testing.T) {
	k := equipment.Kit{Handles: []equipment.Handle{{Name: "short", Mass: lb(5), Count: 2}}, Plates: []equipment.Plate{{kg(1.25), 4}}}
	l := units.Must(k.Compile(body.OneEachHand)).Heaviest()
	const want = `{"each":"4.76796185 kg","total":"9.5359237 kg","hold":"one in each hand",` +
		`"parts":[{"kind":"handle","name":"short","mass":"5 lb","count":1},{"kind":"plate","mass":"1.25 kg","count":1}]}`
	if got, err := json.Marshal(l); err != nil || string(got) != want {
		t.Errorf("Marshal = %s, %v\nwant %s", got, err, want)
	}
	if err := field.Decode([]byte(`{"each":"1 kg","grip":"firm"}`), &l, field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("unknown name: %v", err)
	}
}

func TestLoadValidate(t *testing.T) {
	tests := []struct {
		text string
		want []string
	}{
		{`{"hold":"one hand","each":"4 kg","total":"4 kg","parts":[{"kind":"dumbbell","mass":"4 kg","count":1}]}`, nil},
		{`{"hold":"one hand","each":"4 kg","total":"8 kg"}`, []string{"/total: contradiction"}},
		{`{"hold":"one in each hand","each":"4 kg","total":"4 kg"}`, []string{"/total: contradiction"}},
		{`{"hold":"unloaded","each":"1 kg","total":"1 kg"}`, []string{"/each: out of range"}},
		{`{"hold":"one hand","each":"-1 kg","total":"-1 kg"}`, []string{"/each: out of range"}},
		{`{"hold":"one in each hand","each":"9000000 kg","total":"1 kg"}`, []string{"/each: overflow"}},
		{`{"hold":"one hand","each":"4 kg","total":"4 kg","parts":[{"kind":"handle","mass":"2 kg","count":1},{"kind":"plate","mass":"2 kg","count":1}]}`,
			[]string{"/parts: contradiction"}}, // 2 kg on each end are 4 kg
		{`{"hold":"","each":"4 kg","total":"4 kg","parts":[{"kind":"","mass":"-2 kg","count":0}]}`,
			[]string{"/hold: not given", "/parts/0/kind: not given", "/parts/0/mass: out of range", "/parts/0/count: not given"}},
	}
	for _, test := range tests {
		var l equipment.Load
		if err := field.Decode([]byte(test.text), &l, field.Strict); err != nil {
			t.Fatalf("%s: %v", test.text, err)
		}
		if diff := gocmp.Diff(test.want, paths(t, l.Validate())); diff != "" {
			t.Errorf("%s: errors differ (-want +got):\n%s", test.text, diff)
		}
	}
	var l equipment.Load
	parts := slices.Repeat([]equipment.Part{{Kind: equipment.PartPlate, Mass: kg(1000), Count: 500}}, 10)
	text := units.Must(json.Marshal(map[string]any{"each": "1 kg", "total": "1 kg", "hold": "on a bar", "parts": parts}))
	if err := field.Decode(text, &l, field.Strict); err != nil {
		t.Fatal(err)
	}
	if err := l.Validate(); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("ten million kilograms of plates: %v, want ErrOverflow", err)
	}
}

func TestPartKindText(t *testing.T) {
	n := 0
	for k := range equipment.PartKinds() {
		var back equipment.PartKind
		if err := back.UnmarshalText(units.Must(k.MarshalText())); err != nil || back != k {
			t.Errorf("%s came back as %s, %v", k, back, err)
		}
		n++
	}
	if n != int(equipment.PartAnkleWeight) {
		t.Errorf("%d kinds, want %d", n, equipment.PartAnkleWeight)
	}
}

// A load of which no more is known than its mass and hold is one that holds together.
func TestNewLoad(t *testing.T) {
	for h := range body.Holds() {
		for _, each := range []units.Mass{0, 1, 4 * kilo, -1, units.MaxMass} {
			l, err := equipment.NewLoad(each, h)
			total, over := h.Total(each)
			if good := each >= 0 && over == nil && (each == 0 || h != body.Unloaded && h != body.OnBand); good != (err == nil) {
				t.Errorf("%s %s: %v", each, h, err)
			} else if good && (l.Validate() != nil || l.Each() != each || l.Total() != total || l.Hold() != h || l.Parts() != nil) {
				t.Errorf("%s %s: %v, total %s", each, h, l, l.Total())
			} else if !good && !l.Equal(equipment.Load{}) {
				t.Errorf("%s %s: %v beside an error", each, h, l)
			}
		}
	}
	if _, err := equipment.NewLoad(kilo, body.Hold(0)); !errors.Is(err, field.ErrMissing) {
		t.Errorf("no hold: %v", err)
	}
}

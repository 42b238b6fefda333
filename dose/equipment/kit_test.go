package equipment_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	gocmp "github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// paths lists "path: category" of every field error, in order.
func paths(t *testing.T, err error) []string {
	t.Helper()
	var many field.Errors
	if err != nil && !errors.As(err, &many) {
		t.Fatalf("%v is not a list of field errors", err)
	}
	var list []string
	for _, f := range many {
		list = append(list, fmt.Sprintf("%s: %v", f.Path, f.Err))
	}
	return list
}

func heavier(m units.Marked) units.Marked { m.Mass++; return m }

func TestValidate(t *testing.T) {
	pin := func(ms ...units.Marked) []equipment.Stack { return []equipment.Stack{{Pins: ms}} }
	tests := []struct {
		name string
		kit  equipment.Kit
		want []string
	}{
		{"empty", equipment.Kit{}, nil},
		{"clinic", clinicKit(), nil},
		{"largest", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{kg(1000), 500}},
			Handles:   []equipment.Handle{{strings.Repeat("n", 100), kg(1000), kg(1000), 500, 500}},
			Bars:      []equipment.Bar{{"n", kg(1000), kg(1000), 500}},
			Plates:    []equipment.Plate{{kg(100), 500}},
			Stacks:    []equipment.Stack{{"n", []units.Marked{kg(1000)}, []equipment.Plate{{kg(100), 500}}}},
		}, nil},
		{"smallest", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{units.Marked{Mass: 1}, 1}},
			Handles:   []equipment.Handle{{"", units.Marked{Mass: 1}, units.Marked{Mass: 1}, 1, 0}},
			Plates:    []equipment.Plate{{units.Marked{Mass: 1}, 1}},
			Stacks:    []equipment.Stack{{"", []units.Marked{{Mass: 1}, {Mass: 2}}, nil}},
		}, nil},
		{"nothing given", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{}}, Handles: []equipment.Handle{{}}, Bars: []equipment.Bar{{}},
			Plates: []equipment.Plate{{}}, Stacks: []equipment.Stack{{}},
		}, []string{
			"/dumbbells/0/mass: not given", "/dumbbells/0/count: not given",
			"/handles/0/mass: not given", "/handles/0/count: not given",
			"/bars/0/mass: not given",
			"/plates/0/mass: not given", "/plates/0/count: not given",
			"/stacks/0/pins: not given",
		}},
		{"nought", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{kg(0), 1}}, Stacks: pin(kg(0)),
		}, []string{"/dumbbells/0/mass: out of range", "/stacks/0/pins/0: out of range"}},
		{"negative", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{kg(-1), -1}},
			Handles:   []equipment.Handle{{"", kg(-1), kg(-1), -1, -1}},
			Bars:      []equipment.Bar{{"", kg(-1), kg(-1), -1}},
			Plates:    []equipment.Plate{{kg(-1), -1}},
			Stacks:    []equipment.Stack{{"", []units.Marked{kg(-1)}, []equipment.Plate{{kg(-1), -1}}}},
		}, []string{
			"/dumbbells/0/mass: out of range", "/dumbbells/0/count: out of range",
			"/handles/0/mass: out of range", "/handles/0/collars: out of range", "/handles/0/count: out of range", "/handles/0/plates_per_end: out of range",
			"/bars/0/mass: out of range", "/bars/0/collars: out of range", "/bars/0/plates_per_end: out of range",
			"/plates/0/mass: out of range", "/plates/0/count: out of range",
			"/stacks/0/pins/0: out of range", "/stacks/0/add_ons/0/mass: out of range", "/stacks/0/add_ons/0/count: out of range",
		}},
		{"just over", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{heavier(kg(1000)), 501}},
			Handles:   []equipment.Handle{{strings.Repeat("n", 101), heavier(kg(1000)), heavier(kg(1000)), 501, 501}},
			Plates:    []equipment.Plate{{heavier(kg(100)), 501}},
			Stacks:    pin(heavier(kg(1000))),
		}, []string{
			"/dumbbells/0/mass: out of range", "/dumbbells/0/count: out of range",
			"/handles/0/name: malformed", "/handles/0/mass: out of range", "/handles/0/collars: out of range", "/handles/0/count: out of range", "/handles/0/plates_per_end: out of range",
			"/plates/0/mass: out of range", "/plates/0/count: out of range",
			"/stacks/0/pins/0: out of range",
		}},
		{"twice", equipment.Kit{
			Dumbbells: []equipment.Dumbbell{{kg(4), 1}, {kg(4), 1}}, // singles, bought one by one
			Handles:   []equipment.Handle{{Name: "a", Mass: kg(1), Count: 1}, {Name: "a", Mass: kg(2), Count: 1}},
			Bars:      []equipment.Bar{{Mass: kg(8)}, {Mass: kg(8)}},
			Plates:    []equipment.Plate{{kg(0.45359237), 1}, {kg(1), 1}, {lb(1), 1}},
			Stacks:    []equipment.Stack{{"s", []units.Marked{kg(5)}, nil}, {"s", []units.Marked{kg(5)}, []equipment.Plate{{kg(1), 1}, {kg(1), 2}}}},
		}, []string{
			"/handles/1/name: given twice", "/plates/2/mass: given twice",
			"/stacks/1/name: given twice", "/stacks/1/add_ons/1/mass: given twice",
		}},
		{"pins", equipment.Kit{Stacks: pin(kg(5), kg(5), kg(4), kg(10))}, []string{
			"/stacks/0/pins/1: out of range", "/stacks/0/pins/2: out of range",
		}},
		{"names", equipment.Kit{Bars: []equipment.Bar{{Name: "a\nb", Mass: kg(8)}, {Name: "a\xff", Mass: kg(8)}, {Name: "Stange für 20 kg", Mass: kg(20)}}}, []string{
			"/bars/0/name: malformed", "/bars/1/name: malformed",
		}},
		{"hundred", equipment.Kit{Dumbbells: slices.Repeat([]equipment.Dumbbell{{kg(1), 1}}, 100)}, nil},
		{"hundred and one", equipment.Kit{Dumbbells: slices.Repeat([]equipment.Dumbbell{{}}, 101), Bars: make([]equipment.Bar, 101)}, []string{
			"/dumbbells: out of range", "/bars: out of range",
		}},
	}
	for _, test := range tests {
		err := test.kit.Validate()
		if diff := gocmp.Diff(test.want, paths(t, err)); diff != "" {
			t.Errorf("%s: errors differ (-want +got):\n%s", test.name, diff)
		}
		if _, compiled := test.kit.Compile(body.Unloaded); (compiled == nil) != (err == nil) {
			t.Errorf("%s: Compile: %v, Validate: %v", test.name, compiled, err)
		}
	}
}

func TestFieldErrorTexts(t *testing.T) {
	err := equipment.Kit{Dumbbells: []equipment.Dumbbell{{lb(-25), 0}}, Stacks: []equipment.Stack{{Pins: []units.Marked{kg(5), kg(4)}}}}.Validate()
	want := `out of range: /dumbbells/0/mass = -25 lb, allowed: above 0 kg, at most 1000 kg
not given: /dumbbells/0/count, allowed: 1 to 500
out of range: /stacks/0/pins/1 = 4 kg, allowed: more than the pin before, 5 kg`
	if err == nil || err.Error() != want {
		t.Errorf("errors\n%v\nwant\n%s", err, want)
	}
}

func TestKitJSON(t *testing.T) {
	const text = `{"dumbbells":[{"mass":"25 lb","count":2}],` +
		`"handles":[{"name":"short","mass":"2 kg","collars":"0.5 kg","count":2,"plates_per_end":4}],` +
		`"bars":[{"mass":"20 kg"}],"plates":[{"mass":"1.25 kg","count":8}],` +
		`"stacks":[{"pins":["5 kg","10 kg"],"add_ons":[{"mass":"2.5 lb","count":1}]}]}`
	var k equipment.Kit
	if err := field.Decode([]byte(text), &k, field.Strict); err != nil {
		t.Fatal(err)
	}
	want := equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{lb(25), 2}},
		Handles:   []equipment.Handle{{"short", kg(2), kg(0.5), 2, 4}},
		Bars:      []equipment.Bar{{Mass: kg(20)}},
		Plates:    []equipment.Plate{{kg(1.25), 8}},
		Stacks:    []equipment.Stack{{"", []units.Marked{kg(5), kg(10)}, []equipment.Plate{{lb(2.5), 1}}}},
	}
	if diff := gocmp.Diff(want, k); diff != "" {
		t.Errorf("decoded kit differs (-want +got):\n%s", diff)
	}
	if got, err := json.Marshal(k); err != nil || string(got) != text {
		t.Errorf("Marshal = %s, %v\nwant %s", got, err, text)
	}
}

func TestKitJSONRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		text := units.Must(json.Marshal(k))
		var back equipment.Kit
		if err := field.Decode(text, &back, field.Strict); err != nil {
			t.Fatal(err)
		}
		if again := units.Must(json.Marshal(back)); string(again) != string(text) {
			t.Fatalf("%s\ncame back as\n%s", text, again)
		}
	})
}

func TestKitJSONStrict(t *testing.T) {
	tests := []struct {
		text string
		want []string
	}{
		{`{"dumbbell":[]}`, []string{"/dumbbell: unknown"}},
		{`{"plates":[{"mass":"1 kg","count":2,"count":4,"colour":"red"}]}`,
			[]string{"/plates/0/count: given twice", "/plates/0/colour: unknown"}},
		{`{"plates":[{"mass":1,"count":2},{"mass":"1","count":2.5}]}`,
			[]string{"/plates/0/mass: malformed", "/plates/1/mass: not given", "/plates/1/count: malformed"}},
		{`{"dumbbells":[{"mass":"1e300 kg","count":1}]}`, []string{"/dumbbells/0/mass: malformed"}},
		{`{"bars":[{"mass":"99999999 kg"}]}`, []string{"/bars/0/mass: overflow"}},
	}
	for _, test := range tests {
		k := clinicKit()
		if diff := gocmp.Diff(test.want, paths(t, field.Decode([]byte(test.text), &k, field.Strict))); diff != "" {
			t.Errorf("%s: errors differ (-want +got):\n%s", test.text, diff)
		}
	}
}

func TestCompileErrors(t *testing.T) {
	_, err := equipment.Kit{Plates: []equipment.Plate{{kg(1), -1}}}.Compile(0)
	want := []string{"/plates/0/count: out of range", "/hold: not given"}
	if diff := gocmp.Diff(want, paths(t, err)); diff != "" {
		t.Errorf("errors differ (-want +got):\n%s", diff)
	}
	if _, err := clinicKit().Compile(body.Hold(99)); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("hold 99: %v", err)
	}
	_, err = equipment.Kit{Dumbbells: []equipment.Dumbbell{{kg(4), 1}}}.Compile(body.OneEachHand)
	if want := "equipment: nothing to hold one in each hand"; err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
}

// Weights of 1, 2, 4, … make every sum once: the number of loads is known.
func TestTooManyLoads(t *testing.T) {
	doubling := func(kinds, from int) []equipment.Plate {
		var list []equipment.Plate
		for i := range kinds {
			list = append(list, equipment.Plate{Mass: units.Marked{Mass: units.Gram / 8 << (from + i), Unit: units.G}, Count: 2})
		}
		return list
	}
	handle := equipment.Kit{Handles: []equipment.Handle{{Mass: kg(1), Count: 1}}, Plates: doubling(18, 0)}
	stack := equipment.Kit{Stacks: []equipment.Stack{{Pins: []units.Marked{kg(1)}, AddOns: doubling(17, 0)}}}
	for i := range stack.Stacks[0].AddOns {
		stack.Stacks[0].AddOns[i].Count = 1
	}
	stack.Stacks[0].AddOns = append(stack.Stacks[0].AddOns, equipment.Plate{Mass: kg(99), Count: 1})
	for _, test := range []struct {
		hold body.Hold
		kit  equipment.Kit
	}{{body.OneHand, handle}, {body.OnStack, stack}} {
		table, err := test.kit.Compile(test.hold)
		if err != nil || table.Len() != equipment.MaxLoads {
			t.Fatalf("%s: %d loads, %v; want %d", test.hold, table.Len(), err, equipment.MaxLoads)
		}
		more := test.kit // one load more, which merging finds
		more.Dumbbells = []equipment.Dumbbell{{kg(0.9), 1}}
		more.Stacks = append(slices.Clone(more.Stacks), equipment.Stack{Name: "light", Pins: []units.Marked{kg(0.9)}})
		if _, err := more.Compile(test.hold); !errors.Is(err, equipment.ErrTooManyLoads) {
			t.Errorf("%s: one load more: %v", test.hold, err)
		}
		most := test.kit // twice the loads, which adding plates finds
		most.Plates = append(slices.Clone(most.Plates), equipment.Plate{Mass: kg(100), Count: 2})
		most.Stacks = slices.Clone(most.Stacks)
		for i := range most.Stacks {
			most.Stacks[i].AddOns = append(slices.Clone(most.Stacks[i].AddOns), equipment.Plate{Mass: kg(98), Count: 1})
		}
		_, err = most.Compile(test.hold)
		if want := fmt.Sprintf("equipment: too many loads: over 262144, %s", test.hold); err == nil || err.Error() != want {
			t.Errorf("twice the loads: %v, want %s", err, want)
		}
	}
}

// Full stocks of the heaviest plates add up without overflow.
func TestHeaviestKit(t *testing.T) {
	k := equipment.Kit{Handles: []equipment.Handle{{Mass: kg(1000), Collars: kg(1000), Count: 2}}}
	for i := range 5 {
		k.Plates = append(k.Plates, equipment.Plate{Mass: kg(100 - float64(i)), Count: 500})
	}
	table, err := k.Compile(body.OneEachHand)
	if err != nil {
		t.Fatal(err)
	}
	want := 2000 * units.Kilogram
	for _, p := range k.Plates {
		want += 250 * p.Mass.Mass
	}
	l := table.Heaviest()
	if l.Each() != want || l.Total() != 2*want || l.Plates() != 2500 || l.Validate() != nil {
		t.Errorf("%s in all, %d plates, %v; want %s, 2500 plates", l.Total(), l.Plates(), l.Validate(), 2*want)
	}
}

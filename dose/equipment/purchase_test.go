package equipment_test

import (
	"errors"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Handles that differ in anything are different handles: a pair of them cannot
// be made up.
func TestWithAnotherHandle(t *testing.T) {
	plain := equipment.Handle{Mass: kg(2), Collars: kg(0.5), Count: 1, PlatesPerEnd: 3}
	for name, change := range map[string]func(h *equipment.Handle){
		"collars": func(h *equipment.Handle) { h.Collars = kg(1) },
		"mass":    func(h *equipment.Handle) { h.Mass = kg(3) },
		"plates":  func(h *equipment.Handle) { h.PlatesPerEnd = 4 },
		"name":    func(h *equipment.Handle) { h.Name = "g" },
	} {
		other := plain
		change(&other)
		k, err := (equipment.Kit{Handles: []equipment.Handle{plain}}).With(equipment.Purchase{Handle: other})
		if err != nil || len(k.Handles) != 2 || k.Handles[0].Count != 1 || k.Handles[1].Count != 1 {
			t.Errorf("another handle by its %s: %+v, %v", name, k.Handles, err)
		}
	}
}

// One thing is bought at a time, whichever two or three are given.
func TestPurchaseOfSeveralThings(t *testing.T) {
	dumbbell, plate := equipment.Dumbbell{Mass: kg(1), Count: 1}, equipment.Plate{Mass: kg(1), Count: 1}
	handle := equipment.Handle{Name: "h", Mass: kg(2), Count: 1}
	for _, p := range []equipment.Purchase{
		{Dumbbell: dumbbell, Handle: handle}, {Dumbbell: dumbbell, Plate: plate}, {Handle: handle, Plate: plate},
		{Dumbbell: dumbbell, Handle: handle, Plate: plate},
	} {
		if err := p.Validate(); !errors.Is(err, field.ErrConflict) || p.Mass() != 0 {
			t.Errorf("%+v: %v, %v", p, err, p.Mass())
		}
	}
}

// Plates are proposed where a handle or a bar takes them.
func TestPlatesNeedAHandleOrABar(t *testing.T) {
	plates := []equipment.Plate{{Mass: kg(2), Count: 4}}
	tests := []struct {
		name string
		kit  equipment.Kit
		want int
	}{
		{"plates alone", equipment.Kit{Plates: plates}, 0},
		{"a bar", equipment.Kit{Plates: plates, Bars: []equipment.Bar{{Name: "b", Mass: kg(7)}}}, 1},
		{"a handle", equipment.Kit{Plates: plates, Handles: []equipment.Handle{{Name: "h", Mass: kg(2), Count: 1}}}, 1},
		{"no plates", equipment.Kit{Bars: []equipment.Bar{{Name: "b", Mass: kg(7)}}}, 0},
	}
	for _, tt := range tests {
		between, more := plateMasses(equipment.InBetween(tt.kit)), plateMasses(equipment.More(tt.kit))
		if len(between) != tt.want || len(more) != tt.want {
			t.Errorf("%s: %v and %v, want %d", tt.name, between, more, tt.want)
		}
		if tt.want > 0 && (between[0] != kilo || more[0] != 2*kilo) {
			t.Errorf("%s: %v and %v, want half of 2 kg and 2 kg", tt.name, between, more)
		}
	}
}

func plateMasses(list []equipment.Purchase) (masses []units.Mass) {
	for _, p := range list {
		if p.Plate != (equipment.Plate{}) {
			masses = append(masses, p.Plate.Mass.Mass)
		}
	}
	return masses
}

// The same dumbbell in one hand and in both is not the same load.
func TestLoadsOfTwoHoldsDiffer(t *testing.T) {
	k := equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: kg(10), Count: 1}}}
	one, both := units.Must(k.Compile(body.OneHand)).Lightest(), units.Must(k.Compile(body.BothHandsOnOne)).Lightest()
	if one.Each() != both.Each() || one.Total() != both.Total() || one.Equal(both) || !one.Equal(one) {
		t.Errorf("%v and %v", one, both)
	}
}

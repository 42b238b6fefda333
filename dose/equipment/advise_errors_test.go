package equipment_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func TestAdviseErrors(t *testing.T) {
	full := func() equipment.Stall {
		return equipment.Stall{Hold: body.OneHand, Present: kilo, Wanted: 2 * kilo}
	}
	tests := []struct {
		name, path string
		category   error
		spoil      func(s *equipment.Stall)
	}{
		{"no hold", "/stalls/1/hold", field.ErrMissing, func(s *equipment.Stall) { s.Hold = 0 }},
		{"unloaded", "/stalls/1/hold", field.ErrConflict, func(s *equipment.Stall) { s.Hold = body.Unloaded }},
		{"negative", "/stalls/1/present", field.ErrOutOfRange, func(s *equipment.Stall) { s.Present = -1 }},
		{"ceiling", "/stalls/1/ceiling", field.ErrOutOfRange, func(s *equipment.Stall) { s.Ceiling = -1 }},
		{"nothing wanted", "/stalls/1/wanted", field.ErrMissing, func(s *equipment.Stall) { s.Wanted = 0 }},
		{"wanted as it is", "/stalls/1/wanted", field.ErrOutOfRange, func(s *equipment.Stall) { s.Wanted = kilo }},
		{"both", "/stalls/1/share", field.ErrConflict, func(s *equipment.Stall) { s.Share = 0.1 }},
		{"share of nothing", "/stalls/1/share", field.ErrConflict, func(s *equipment.Stall) { *s = equipment.Stall{Hold: body.OneHand, Share: 0.1} }},
		{"percent", "/stalls/1/share", field.ErrOutOfRange, func(s *equipment.Stall) { s.Wanted, s.Share = 0, 10.1 }},
		{"negative share", "/stalls/1/share", field.ErrOutOfRange, func(s *equipment.Stall) { s.Wanted, s.Share = 0, -0.1 }},
		{"not a number", "/stalls/1/share", field.ErrOutOfRange, func(s *equipment.Stall) { s.Wanted, s.Share = 0, units.Fraction(math.NaN()) }},
	}
	for _, tt := range tests {
		s := full()
		tt.spoil(&s)
		_, err := equipment.Advise(homeKit(), []equipment.Stall{full(), s}, nil)
		var f *field.Error
		if !errors.As(err, &f) || f.Path != tt.path || f.Err != tt.category {
			t.Errorf("%s: %v, want %v at %s", tt.name, err, tt.category, tt.path)
		}
		if err := s.Validate(); !errors.Is(err, tt.category) {
			t.Errorf("%s: In: %v", tt.name, err)
		}
	}
}

func TestPurchaseErrors(t *testing.T) {
	two := buyDumbbells(kg(1), 1)
	two.Plate = equipment.Plate{Mass: kg(1), Count: 1}
	var all field.Errors
	_, err := equipment.Advise(equipment.Kit{Plates: []equipment.Plate{{}}}, nil, []equipment.Purchase{{}, two, buyDumbbells(kg(1), 501), buyHandles("\n", kg(0), -1)})
	if !errors.As(err, &all) || len(all) != 8 {
		t.Errorf("all at once: %v", err)
	}
	if _, err := homeKit().With(equipment.Purchase{}); !errors.Is(err, field.ErrMissing) {
		t.Errorf("nothing bought: %v", err)
	}
	list, err := equipment.Advise(homeKit(), nil, []equipment.Purchase{buyHandles("h", kg(3), 1)})
	if !errors.Is(err, field.ErrDuplicate) || list != nil {
		t.Errorf("another handle of the name: %v", err)
	}
}

func TestAdviseWithTooManyLoads(t *testing.T) {
	big := bigKit(equipment.Plate{Mass: kg(0.333), Count: 60}, equipment.Plate{Mass: kg(0.7), Count: 60})
	s := equipment.Stall{Hold: body.OneEachHand, Present: kilo, Wanted: 2 * kilo}
	if _, err := equipment.Advise(big, []equipment.Stall{s}, nil); !errors.Is(err, equipment.ErrTooManyLoads) {
		t.Errorf("Advise: %v", err)
	}
}

func TestAdviseJSON(t *testing.T) {
	stall := equipment.Stall{Hold: body.OneHand, Present: 2 * kilo, Ceiling: 9 * kilo, Share: 0.5}
	list, err := equipment.Advise(homeKit(), []equipment.Stall{stall}, nil)
	if err != nil || len(list) == 0 {
		t.Fatal(list, err)
	}
	var back []equipment.Advice
	if err := field.Decode(units.Must(json.Marshal(list)), &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := gocmp.Diff(list, back); diff != "" {
		t.Errorf("advice (-want +got):\n%s", diff)
	}
	var s equipment.Stall
	if err := field.Decode(units.Must(json.Marshal(stall)), &s, field.Strict); err != nil || s != stall {
		t.Errorf("stall: %+v, %v", s, err)
	}
	for _, v := range []any{&s, new(equipment.Purchase), new(equipment.Advice), new(equipment.Way)} {
		if err := field.Decode([]byte(`{"price":3}`), v, field.Strict); !errors.Is(err, field.ErrUnknown) {
			t.Errorf("%T: an unknown field gives %v", v, err)
		}
	}
}

// What is proposed for a kit that is full is what there is room for; what the caller names
// and is too much stays an error.
func TestAdviseForAFullKit(t *testing.T) {
	heavy := func(n int) units.Marked { return units.Marked{Mass: units.Mass(n) * units.Kilogram, Unit: units.KG} }
	stall := equipment.Stall{Hold: body.OneHand, Present: 10 * units.Kilogram, Wanted: 10*units.Kilogram + 500*units.Gram}
	many := equipment.Kit{}
	for i := range 100 {
		many.Dumbbells = append(many.Dumbbells, equipment.Dumbbell{Mass: heavy(i + 1), Count: 2})
	}
	for name, k := range map[string]equipment.Kit{"kinds": many, "count": {Dumbbells: []equipment.Dumbbell{{Mass: heavy(10), Count: 500}}}} {
		if err := k.Validate(); err != nil {
			t.Fatal(err)
		}
		list, err := equipment.Advise(k, []equipment.Stall{stall}, nil)
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		for _, a := range list {
			if larger, err := k.With(a.Purchase); err != nil || larger.Validate() != nil {
				t.Errorf("%s: %v, %v", name, a.Purchase, err)
			}
		}
	}
	one := equipment.Purchase{Dumbbell: equipment.Dumbbell{Mass: heavy(10), Count: 500}}
	if _, err := equipment.Advise(many, []equipment.Stall{stall}, []equipment.Purchase{one}); err == nil {
		t.Error("502 of one were taken")
	}
}

package equipment_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

// drawRule draws any good rule.
func drawRule(t *rapid.T) equipment.RoundingRule {
	p := equipment.RoundingRule{Direction: rapid.SampledFrom([]units.Rounding{units.Down, units.Nearest, units.Up}).Draw(t, "direction")}
	if p.Direction != units.Down || rapid.Bool().Draw(t, "ceiling") {
		p.Ceiling = units.Mass(rapid.Int64Range(1, int64(60*kilo)).Draw(t, "ceiling"))
	}
	return p
}

// sameAsTable says that a kit answers without a table as with one: the same load, of the
// same parts, or the same error.
func sameAsTable(t *rapid.T, k equipment.Kit, h body.Hold) {
	table, err := k.Compile(h)
	p := drawRule(t)
	target := units.Mass(rapid.Int64Range(0, int64(60*kilo)).Draw(t, "target"))
	if loads := slices.Collect(table.Loads()); len(loads) > 0 && rapid.IntRange(0, 3).Draw(t, "near a load") > 0 {
		near := func(label string) units.Mass {
			i := rapid.IntRange(0, len(loads)-1).Draw(t, label)
			m := loads[i].Each()
			if i > 0 && rapid.Bool().Draw(t, "between") {
				m = (m + loads[i-1].Each()) / 2
			}
			return max(0, m+units.Mass(rapid.IntRange(-1, 1).Draw(t, "off")))
		}
		target = near("target")
		if p.Ceiling > 0 {
			p.Ceiling = rapid.SampledFrom([]units.Mass{units.MaxMass, max(1, near("ceiling"))}).Draw(t, "ceiling")
		}
	}
	var want equipment.Load
	if err == nil {
		want, err = table.Nearest(target, p)
	}
	got, direct := k.Nearest(target, h, p)
	if !got.Equal(want) || (err == nil) != (direct == nil) || err != nil && err.Error() != direct.Error() {
		t.Fatalf("%+v, %s, to %s by %+v: %s, %v; by a table %s, %v", k, h, target, p, got, direct, want, err)
	}
	if err == nil && (got.Validate() != nil || got.String() != want.String() || got.Plates() != want.Plates()) {
		t.Fatalf("%s, %v, by a table %s", got, got.Validate(), want)
	}
	var heavy, heavyDirect *equipment.TooHeavyError
	if errors.As(err, &heavy) && errors.As(direct, &heavyDirect) && !heavy.Lightest.Equal(heavyDirect.Lightest) {
		t.Fatalf("the lightest is %s, by a table %s", heavyDirect.Lightest, heavy.Lightest)
	}
}

func TestKitNearestAsTable(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sameAsTable(t, drawKit(t), rapid.SampledFrom(slices.Collect(body.Holds())).Draw(t, "hold"))
	})
}

// With more plates sums are kept as bits, and the fewest plates are searched for.
func TestKitNearestOfManyAsTable(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := equipment.Kit{Bars: []equipment.Bar{
			{Name: "a", Mass: kg(7), PlatesPerEnd: rapid.IntRange(0, 20).Draw(t, "limit")}, {Name: "b", Mass: kg(8.5), Collars: kg(0.5)}}}
		kinds := rapid.SliceOfNDistinct(rapid.SampledFrom([]float64{0.25, 0.333, 0.5, 0.7, 1, 1.134, 1.25, 2, 2.5, 5}), 3, 6, rapid.ID).Draw(t, "kinds")
		for _, m := range kinds {
			k.Plates = append(k.Plates, equipment.Plate{Mass: kg(m), Count: rapid.IntRange(2, 30).Draw(t, "count")})
		}
		stack := equipment.Stack{Pins: []units.Marked{kg(5), kg(10), kg(17.5)}, AddOns: k.Plates}
		k.Stacks = []equipment.Stack{stack}
		sameAsTable(t, k, rapid.SampledFrom([]body.Hold{body.OnBar, body.OnStack}).Draw(t, "hold"))
	})
}

func TestKitNearestBadInput(t *testing.T) {
	_, err := equipment.Kit{Bars: []equipment.Bar{{}}}.Nearest(-1, 0, equipment.RoundingRule{Direction: units.Up})
	if got := paths(t, err); len(got) != 4 {
		t.Errorf("errors %v", got)
	}
	if _, err := (equipment.Kit{}).Nearest(kilo, body.OnBar, equipment.RoundingRule{}); !errors.Is(err, equipment.ErrEmptyKit) {
		t.Errorf("%v", err)
	}
	if _, err := (equipment.Kit{}).Nearest(kilo, body.Unloaded, equipment.RoundingRule{}); err != nil {
		t.Errorf("%v", err)
	}
	if !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("%v", err)
	}
}

// Kilograms and pounds in masses that have a nanogram in common, of a hundred kinds.
func TestKitNearestTooMany(t *testing.T) {
	k := equipment.Kit{Bars: []equipment.Bar{{Mass: kg(20)}}}
	for i := range 100 {
		k.Plates = append(k.Plates, equipment.Plate{Mass: units.Marked{Mass: units.Pound*units.Mass(i+1)/7 + units.Mass(i)}, Count: 500})
	}
	if _, err := k.Nearest(500*kilo, body.OnBar, equipment.RoundingRule{}); !errors.Is(err, equipment.ErrTooManyLoads) {
		t.Errorf("%v", err)
	}
}

// A nanogram above a load the next one is due.
func TestKitNearestJustAbove(t *testing.T) {
	k := equipment.Kit{Bars: []equipment.Bar{{Mass: kg(20)}}, Plates: []equipment.Plate{{Mass: kg(1.25), Count: 4}}}
	for target, want := range map[units.Mass]units.Mass{0: 20 * kilo, 20 * kilo: 20 * kilo, 20*kilo + 1: 22500 * gram, 22500 * gram: 22500 * gram,
		22500*gram + 1: 25 * kilo, 25*kilo + 1: 25 * kilo} {
		l, err := k.Nearest(target, body.OnBar, equipment.RoundingRule{Direction: units.Up, Ceiling: 100 * kilo})
		if err != nil || l.Each() != want {
			t.Errorf("%s: %s, %v, want %s", target, l, err, want)
		}
	}
}

package equipment_test

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	gocmp "github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

const gram, kilo = units.Gram, units.Kilogram

// rack makes one-hand loads of 2, 4, 8 and 10 kg.
func rack(t testing.TB) *equipment.Table {
	t.Helper()
	var k equipment.Kit
	for _, m := range []float64{8, 2, 10, 4} {
		k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: kg(m), Count: 1})
	}
	return units.Must(k.Compile(body.OneHand))
}

func TestNearest(t *testing.T) {
	table := rack(t)
	tests := []struct {
		target    units.Mass
		direction units.Rounding
		ceiling   units.Mass
		want      units.Mass // 0: too heavy
	}{
		{2*kilo - 1, units.Down, 0, 0},
		{2 * kilo, units.Down, 0, 2 * kilo},
		{4*kilo - 1, units.Down, 0, 2 * kilo},
		{4 * kilo, units.Down, 0, 4 * kilo},
		{4*kilo + 1, units.Down, 0, 4 * kilo},
		{units.MaxMass, units.Down, 0, 10 * kilo},
		{10 * kilo, units.Down, 8*kilo - 1, 4 * kilo},
		{10 * kilo, units.Down, 2*kilo - 1, 0},
		{0, units.Up, 2 * kilo, 2 * kilo},
		{0, units.Up, 2*kilo - 1, 0},
		{4 * kilo, units.Up, 20 * kilo, 4 * kilo},
		{4*kilo + 1, units.Up, 20 * kilo, 8 * kilo},
		{4*kilo + 1, units.Up, 8*kilo - 1, 4 * kilo},   // nothing above within the ceiling
		{11 * kilo, units.Up, 20 * kilo, 10 * kilo},    // nothing above in the kit
		{6 * kilo, units.Nearest, 20 * kilo, 4 * kilo}, // ties go down
		{6*kilo + 1, units.Nearest, 20 * kilo, 8 * kilo},
		{6*kilo + 1, units.Nearest, 8*kilo - 1, 4 * kilo},
		{9*kilo + 1, units.Nearest, 9*kilo + 500*gram, 8 * kilo},
		{0, units.Nearest, 2 * kilo, 2 * kilo},
		{0, units.Nearest, 2*kilo - 1, 0},
		{units.MaxMass, units.Nearest, units.MaxMass, 10 * kilo},
	}
	for _, test := range tests {
		l, err := table.Nearest(test.target, equipment.RoundingRule{Direction: test.direction, Ceiling: test.ceiling})
		var heavy *equipment.TooHeavyError
		switch {
		case test.want > 0 && (err != nil || l.Each() != test.want):
			t.Errorf("Nearest(%s, %d, ceiling %s) = %s, %v; want %s", test.target, test.direction, test.ceiling, l, err, test.want)
		case test.want == 0 && (!errors.As(err, &heavy)):
			t.Errorf("Nearest(%s, %d, ceiling %s) = %s, %v; want a TooHeavyError", test.target, test.direction, test.ceiling, l, err)
		case test.want == 0:
			if heavy.Lightest.Each() != 2*kilo || heavy.Target != test.target || heavy.Ceiling != test.ceiling {
				t.Errorf("Nearest(%s): error holds %+v", test.target, heavy)
			}
		}
	}
}

func TestTooHeavyText(t *testing.T) {
	_, err := rack(t).Nearest(1500*gram, equipment.RoundingRule{})
	if want := "equipment: lightest load too heavy: 2 kg dumbbell in one hand, target 1.5 kg"; err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
	_, err = rack(t).Nearest(3*kilo, equipment.RoundingRule{Direction: units.Up, Ceiling: kilo})
	if want := "equipment: lightest load too heavy: 2 kg dumbbell in one hand, target 3 kg, ceiling 1 kg"; err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
}

func TestNearestBadInput(t *testing.T) {
	tests := []struct {
		target units.Mass
		policy equipment.RoundingRule
		want   []string
	}{
		{kilo, equipment.RoundingRule{Direction: units.Up}, []string{"/ceiling: not given"}},
		{kilo, equipment.RoundingRule{Direction: units.Nearest}, []string{"/ceiling: not given"}},
		{kilo, equipment.RoundingRule{Ceiling: -1}, []string{"/ceiling: out of range"}},
		{-1, equipment.RoundingRule{}, []string{"/target: out of range"}},
		{-1, equipment.RoundingRule{Direction: 3, Ceiling: math.MinInt64}, []string{
			"/target: out of range", "/direction: out of range", "/ceiling: out of range"}},
	}
	for _, test := range tests {
		_, err := rack(t).Nearest(test.target, test.policy)
		if diff := gocmp.Diff(test.want, paths(t, err)); diff != "" {
			t.Errorf("Nearest(%s, %+v): errors differ (-want +got):\n%s", test.target, test.policy, diff)
		}
	}
}

// drawTable draws a table that has loads.
func drawTable(t *rapid.T) *equipment.Table {
	k := drawKit(t)
	h := rapid.SampledFrom(slices.Collect(body.Holds())).Draw(t, "hold")
	table, err := k.Compile(h)
	if err != nil {
		return units.Must(k.Compile(body.Unloaded))
	}
	return table
}

// drawMass draws a mass on, beside or between loads.
func drawMass(t *rapid.T, label string, table *equipment.Table) units.Mass {
	loads := slices.Collect(table.Loads())
	m := rapid.SampledFrom(loads).Draw(t, label).Each() + units.Mass(rapid.IntRange(-1, 1).Draw(t, label))
	if rapid.Bool().Draw(t, label) {
		m = units.Mass(rapid.Int64Range(0, int64(40*kilo)).Draw(t, label))
	}
	return max(m, 0)
}

// nearestPlain looks at every load in turn.
func nearestPlain(table *equipment.Table, target units.Mass, p equipment.RoundingRule) (units.Mass, bool) {
	better := func(a, b units.Mass) bool { // a over b
		distance := func(m units.Mass) units.Mass { return max(m-target, target-m) }
		switch {
		case p.Direction == units.Nearest && distance(a) != distance(b):
			return distance(a) < distance(b)
		case p.Direction == units.Nearest:
			return a < b
		case p.Direction == units.Up && a >= target && b >= target:
			return a < b
		}
		return a > b
	}
	best, found := units.Mass(0), false
	for l := range table.Loads() {
		fits := p.Ceiling == 0 || l.Each() <= p.Ceiling
		fits = fits && (p.Direction != units.Down || l.Each() <= target)
		if fits && (!found || better(l.Each(), best)) {
			best, found = l.Each(), true
		}
	}
	return best, found
}

func TestNearestProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := drawTable(t)
		target := drawMass(t, "target", table)
		p := equipment.RoundingRule{
			Direction: rapid.SampledFrom([]units.Rounding{units.Down, units.Up, units.Nearest}).Draw(t, "direction"),
			Ceiling:   drawMass(t, "ceiling", table),
		}
		if p.Direction != units.Down {
			p.Ceiling = max(p.Ceiling, 1)
		}
		l, err := table.Nearest(target, p)
		want, found := nearestPlain(table, target, p)
		switch {
		case found && (err != nil || l.Each() != want):
			t.Fatalf("Nearest(%s, %+v) = %s, %v; want %s", target, p, l, err, want)
		case !found && !errors.As(err, new(*equipment.TooHeavyError)):
			t.Fatalf("Nearest(%s, %+v) = %s, %v; want a TooHeavyError", target, p, l, err)
		case !found:
			return
		}
		if p.Ceiling > 0 && l.Each() > p.Ceiling || p.Direction == units.Down && l.Each() > target {
			t.Fatalf("Nearest(%s, %+v) = %s, too heavy", target, p, l)
		}
		more := target + drawMass(t, "more", table)
		if m, err := table.Nearest(more, p); err != nil || m.Each() < l.Each() {
			t.Fatalf("Nearest(%s) = %s but Nearest(%s) = %s, %v", target, l, more, m, err)
		}
	})
}

func TestFindAndNext(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := drawTable(t)
		each := drawMass(t, "each", table)
		var want, next equipment.Load
		found, more := false, false
		for l := range table.Loads() {
			if l.Each() == each {
				want, found = l, true
			}
			if l.Each() > each && !more {
				next, more = l, true
			}
		}
		if l, ok := table.Find(each); ok != found || !l.Equal(want) {
			t.Fatalf("Find(%s) = %s, %t; want %s, %t", each, l, ok, want, found)
		}
		g, ok := table.Next(each)
		if ok != more || !g.To.Equal(next) || ok && (g.From != each || g.From+g.Step != g.To.Each() || g.Step <= 0) {
			t.Fatalf("Next(%s) = %+v, %t; want %s, %t", each, g, ok, next, more)
		}
		if share := units.Fraction(float64(g.Step) / float64(max(each, 1))); each > 0 && g.Share != share || each == 0 && g.Share != 0 {
			t.Fatalf("Next(%s): share %s, want %s", each, g.Share, share)
		}
	})
}

func TestNextEnds(t *testing.T) {
	table := rack(t)
	for _, each := range []units.Mass{-1, math.MinInt64, 10 * kilo, units.MaxMass} {
		if g, ok := table.Next(each); ok {
			t.Errorf("Next(%s) = %+v, want none", each, g)
		}
	}
}

// A table that was not compiled has no loads, and says so.
func TestZeroTable(t *testing.T) {
	for _, table := range []*equipment.Table{nil, {}} {
		if _, err := table.Nearest(kilo, equipment.RoundingRule{}); !errors.Is(err, equipment.ErrEmptyKit) {
			t.Errorf("Nearest: %v, want ErrEmptyKit", err)
		}
		_, found := table.Find(0)
		_, more := table.Next(0)
		loads := slices.Collect(table.Loads())
		if found || more || len(loads) > 0 || table.Len() != 0 {
			t.Errorf("found %t, more %t, loads %v, length %d; want none", found, more, loads, table.Len())
		}
		if !table.Lightest().Equal(equipment.Load{}) || !table.Heaviest().Equal(equipment.Load{}) {
			t.Errorf("lightest %s, heaviest %s; want zero loads", table.Lightest(), table.Heaviest())
		}
	}
}

func TestLoadsStops(t *testing.T) {
	n := 0
	for range rack(t).Loads() {
		n++
		break
	}
	if n != 1 {
		t.Errorf("%d loads before the break, want 1", n)
	}
}

func TestNearestDoesNotAllocate(t *testing.T) {
	table := rack(t)
	p := equipment.RoundingRule{Direction: units.Nearest, Ceiling: 9 * kilo}
	if n := testing.AllocsPerRun(100, func() { _, _ = table.Nearest(7*kilo, p) }); n != 0 {
		t.Errorf("%v allocations, want 0", n)
	}
}

func TestGapJSON(t *testing.T) {
	g, _ := units.Must(clinicKit().Compile(body.OneEachHand)).Next(4 * kilo)
	text := units.Must(json.Marshal(g))
	var back equipment.Gap
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := gocmp.Diff(g, back); diff != "" {
		t.Errorf("gap differs (-want +got):\n%s", diff)
	}
	if err := field.Decode([]byte(`{"from":"1 kg","form":"1 kg"}`), &back, field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("unknown name: %v", err)
	}
}

package units_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

func TestRounded(t *testing.T) {
	const kg, g = units.Kilogram, units.Gram
	tests := []struct {
		m, to units.Mass
		r     units.Rounding
		want  units.Mass
	}{
		{6799 * g, 100 * g, units.Down, 6700 * g},
		{6799 * g, 100 * g, units.Nearest, 6800 * g},
		{6701 * g, 100 * g, units.Up, 6800 * g},
		{6750 * g, 100 * g, units.Nearest, 6800 * g}, // halves away from zero
		{-6750 * g, 100 * g, units.Nearest, -6800 * g},
		{-6701 * g, 100 * g, units.Down, -6800 * g}, // towards less mass, below zero too
		{-6799 * g, 100 * g, units.Up, -6700 * g},
		{3 * kg, kg, units.Up, 3 * kg},
		{0, kg, units.Up, 0},
		{5 * kg, units.Pound, units.Down, 11 * units.Pound}, // 11.02 lb
		{math.MinInt64, 2, units.Down, math.MinInt64},
		{units.MaxMass, units.MaxMass, units.Up, units.MaxMass},
	}
	for _, tt := range tests {
		if got, err := tt.m.Rounded(tt.to, tt.r); err != nil || got != tt.want {
			t.Errorf("%v to %v, %v: %v, %v; want %v", tt.m, tt.to, tt.r, got, err, tt.want)
		}
	}
	for _, to := range []units.Mass{0, -1, math.MinInt64} {
		if _, err := kg.Rounded(to, units.Down); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("to %v: %v", to, err)
		}
	}
	if _, err := units.MaxMass.Rounded(kg, units.Up); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("beyond the largest mass: %v", err)
	}
	if _, err := units.Mass(math.MinInt64).Rounded(kg, units.Down); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("beyond the least mass: %v", err)
	}
}

func TestRoundedOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := units.Mass(rapid.Int64Range(-1e18, 1e18).Draw(t, "mass"))
		to := units.Mass(rapid.Int64Range(1, 1e15).Draw(t, "to"))
		down, near, up := units.Must(m.Rounded(to, units.Down)), units.Must(m.Rounded(to, units.Nearest)), units.Must(m.Rounded(to, units.Up))
		if down%to != 0 || up%to != 0 || down > m || up < m || up-down > to || near != down && near != up {
			t.Fatalf("%v to %v: %v, %v, %v", m, to, down, near, up)
		}
		if far := max(m-near, near-m); far > max(m-down, down-m) || far > max(up-m, m-up) {
			t.Fatalf("%v to %v: %v is not the nearest", m, to, near)
		}
	})
}

func TestShort(t *testing.T) {
	tests := []struct {
		m    units.Mass
		r    units.Rounding
		want string
	}{
		{2_266_666_666_666, units.Down, "2.2 kg"}, // a ceiling is never printed above itself
		{2_266_666_666_666, units.Nearest, "2.3 kg"},
		{2_266_666_666_666, units.Up, "2.3 kg"},
		{6_800 * units.Gram, units.Down, "6.8 kg"},
		{1250 * units.Gram, units.Up, "1.25 kg"}, // as weights are made
		{750 * units.Gram, units.Down, "0.75 kg"},
		{25 * units.Pound, units.Down, "11.3 kg"},
		{25 * units.Pound, units.Up, "11.4 kg"},
		{40 * units.Gram, units.Down, "0.04 kg"}, // lighter than what the tenth can say
		{66_666_666_666, units.Down, "0.066 kg"},
		{-40 * units.Gram, units.Up, "-0.04 kg"},
		{-2_266_666_666_666, units.Down, "-2.3 kg"},
		{0, units.Up, "0 kg"},
		{12 * units.Kilogram, units.Nearest, "12 kg"},
		{units.MaxMass, units.Up, "9223372.036854775807 kg"},
	}
	for _, tt := range tests {
		if got := tt.m.Short(tt.r); got != tt.want {
			t.Errorf("%v, %v: %q, want %q", tt.m, tt.r, got, tt.want)
		}
	}
}

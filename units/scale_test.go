package units_test

import (
	"errors"
	"math"
	"math/big"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func TestScaleEdges(t *testing.T) {
	const least = units.Mass(math.MinInt64)
	if _, err := least.Scale(-1, units.Down); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("least mass scaled by -1: %v, want %v", err, field.ErrOverflow)
	}
	if got, err := least.Scale(1, units.Up); got != least || err != nil {
		t.Errorf("least mass scaled by 1 = %d, %v", got, err)
	}
	if got, err := units.MaxMass.Scale(-1, units.Down); got != -units.MaxMass || err != nil {
		t.Errorf("MaxMass scaled by -1 = %d, %v", got, err)
	}
	if got, err := units.Mass(-3).Scale(0.5, units.Rounding(9)); got != -2 || err != nil {
		t.Errorf("an unknown rounding = %d, %v, want -2 as Down gives", got, err)
	}
}

// Shifts of every kind: whole numbers of more than 53 bits, products that fit
// or not, and products far below a nanogram.
func TestScaleShifts(t *testing.T) {
	for _, m := range corners {
		for exp := -130; exp <= 130; exp++ {
			checkScale(t, m, units.Fraction(math.Ldexp(1, exp)), units.Nearest)
			checkScale(t, m, units.Fraction(math.Ldexp(-1.75, exp)), units.Up)
		}
		for _, f := range []units.Fraction{math.SmallestNonzeroFloat64, 0x1p-1022, math.MaxFloat64} {
			checkScale(t, m, f, units.Up)
		}
	}
}

// Products a fraction of a nanogram from 2^63 and 2^64, found by search:
// rounding must neither wrap round nor refuse what fits.
func TestScaleAtTheEdge(t *testing.T) {
	for _, size := range []uint{63, 64} {
		m, f := justBelow(t, size)
		for _, r := range roundings {
			checkScale(t, m, f, r)
			checkScale(t, -m, f, r)
			checkScale(t, m, -f, r)
		}
	}
}

// justBelow finds m and f with 2^size - 1 < m·f < 2^size.
func justBelow(t *testing.T, size uint) (units.Mass, units.Fraction) {
	t.Helper()
	const shift = 51 // f = a / 2^51, from 2 to 4
	top := new(big.Int).Lsh(big.NewInt(1), size+shift)
	for a := int64(1<<52 + 1); a < 1<<52+1000; a += 2 {
		m := new(big.Int).Sub(top, big.NewInt(1))
		m.Quo(m, big.NewInt(a))
		short := new(big.Int).Mul(m, big.NewInt(a))
		short.Sub(top, short)
		if m.IsInt64() && short.BitLen() <= shift {
			return units.Mass(m.Int64()), units.Fraction(math.Ldexp(float64(a), -shift))
		}
	}
	t.Fatal("no such pair among those tried")
	return 0, 0
}

var roundings = []units.Rounding{units.Down, units.Nearest, units.Up}

func anyFraction() *rapid.Generator[units.Fraction] {
	return rapid.Map(rapid.OneOf(
		rapid.Float64Range(-2, 2),
		rapid.Float64(),
		rapid.SampledFrom([]float64{0, 0.5, 1, -1, 0.7, 1.5, 1e-12, math.SmallestNonzeroFloat64, math.MaxFloat64, 0x1p-63, 0x1p-64, 0x1p-65, 0x1p63, 0x1p64}),
		rapid.Map(rapid.Uint64(), math.Float64frombits),
	), func(f float64) units.Fraction { return units.Fraction(f) })
}

func TestScaleAgainstRat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, f := anyMass().Draw(t, "m"), anyFraction().Draw(t, "f")
		for _, r := range roundings {
			checkScale(t, m, f, r)
		}
	})
}

// checkScale compares Scale with rational arithmetic.
func checkScale(t rapid.TB, m units.Mass, f units.Fraction, r units.Rounding) {
	t.Helper()
	got, err := m.Scale(f, r)
	exact := new(big.Rat).SetFloat64(float64(f))
	if exact == nil {
		if !errors.Is(err, field.ErrOutOfRange) {
			t.Fatalf("Scale(%v) = %d, %v, want %v", f, got, err, field.ErrOutOfRange)
		}
		return
	}
	want := roundRat(exact.Mul(exact, new(big.Rat).SetInt64(int64(m))), r)
	switch {
	case !want.IsInt64():
		if !errors.Is(err, field.ErrOverflow) {
			t.Fatalf("Mass(%d).Scale(%v, %d) = %d, %v, want %v", m, f, r, got, err, field.ErrOverflow)
		}
	case err != nil || want.Int64() != int64(got):
		t.Fatalf("Mass(%d).Scale(%v, %d) = %d, %v, want %v", m, f, r, got, err, want)
	}
}

// roundRat rounds x by another route than the code does: floor and ceiling.
func roundRat(x *big.Rat, r units.Rounding) *big.Int {
	floor := new(big.Int).Div(x.Num(), x.Denom()) // Euclidean: the floor, as the denominator is above 0
	switch {
	case r == units.Down || x.IsInt():
		return floor
	case r == units.Up:
		return floor.Add(floor, big.NewInt(1))
	}
	above := new(big.Rat).Sub(x, new(big.Rat).SetInt(floor)).Cmp(big.NewRat(1, 2))
	if above > 0 || above == 0 && x.Sign() > 0 {
		floor.Add(floor, big.NewInt(1))
	}
	return floor
}

func TestScaleHalves(t *testing.T) {
	tests := []struct {
		m    units.Mass
		r    units.Rounding
		want units.Mass
	}{
		{3, units.Down, 1}, {3, units.Nearest, 2}, {3, units.Up, 2},
		{-3, units.Down, -2}, {-3, units.Nearest, -2}, {-3, units.Up, -1},
		{4, units.Down, 2}, {4, units.Nearest, 2}, {4, units.Up, 2},
	}
	for _, tt := range tests {
		if got, err := tt.m.Scale(0.5, tt.r); got != tt.want || err != nil {
			t.Errorf("Mass(%d).Scale(0.5, %d) = %d, %v, want %d", tt.m, tt.r, got, err, tt.want)
		}
	}
}

package units_test

import (
	"math"
	"testing"

	"example.org/posology/units"
)

var massSeeds = []string{
	"12.5 kg", "12,5 kg", "-250 g", "27.5 [lb_av]", "0.5oz", "12.5", "1.000,5 kg", "1e3 kg",
	"9223372.036854775807 kg", "-9223372.036854775808 kg", "0.0000000000005 kg", " 5\u00a0kg ", "\xff kg",
}

func FuzzParseMass(f *testing.F) {
	for _, s := range massSeeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		m, err := units.ParseMass(s)
		if err != nil {
			return
		}
		for _, u := range allUnits {
			if back, err := units.ParseMass(m.Text(u)); back != m || err != nil {
				t.Errorf("%q is %d ng, printed %q, read back %d, %v", s, m, m.Text(u), back, err)
			}
		}
	})
}

func FuzzParseMarked(f *testing.F) {
	for _, s := range massSeeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		m, err := units.ParseMarked(s)
		mass, massErr := units.ParseMass(s)
		if mass != m.Mass || (err == nil) != (massErr == nil) {
			t.Errorf("%q: ParseMarked %v, %v; ParseMass %v, %v", s, m, err, mass, massErr)
		}
		if err != nil {
			return
		}
		if back, err := units.ParseMarked(m.String()); back != m || err != nil {
			t.Errorf("%q is %+v, printed %q, read back %+v, %v", s, m, m, back, err)
		}
	})
}

func FuzzParseDay(f *testing.F) {
	for _, s := range []string{"2026-11-25", "0001-01-01", "9999-12-31", "2026-02-29", "0000-00-00", "2026-1-1", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		d, err := units.ParseDay(s)
		if err == nil && (d.String() != s || d.Check() != nil) {
			t.Errorf("%q is %v, %v", s, d, d.Check())
		}
	})
}

func FuzzEffortText(f *testing.F) {
	for _, s := range []string{"rpe 8.5", "rir 2", "rir -0", "borg 20", "omni 6", "cr10 0.3", "rpe 8.25", "rir 0x1p-2", "rir NaN", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		var e, back units.Effort
		if e.UnmarshalText([]byte(s)) != nil {
			return
		}
		if err := back.UnmarshalText([]byte(e.String())); err != nil || back != e || back.String() != e.String() {
			t.Errorf("%q is %v, read back %v, %v", s, e, back, err)
		}
		if rir, err := e.RIR(); (err == nil) == rir.IsZero() {
			t.Errorf("%v is %v in reserve, %v", e, rir, err)
		}
	})
}

// What DecodeJSON takes, encoding/json takes too and with the same result; and
// the result survives another round.

func FuzzScale(f *testing.F) {
	for _, m := range corners {
		for _, x := range []float64{0, 0.5, -1, 1.25, 0x1p-63, 0x1p-1074, 1e300, math.NaN(), math.Inf(1)} {
			f.Add(int64(m), x)
		}
	}
	f.Fuzz(func(t *testing.T, m int64, x float64) {
		for _, r := range roundings {
			checkScale(t, units.Mass(m), units.Fraction(x), r)
		}
	})
}

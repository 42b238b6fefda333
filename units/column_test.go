package units_test

import (
	"database/sql/driver"
	"errors"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// What is stored of a day, a mass or an effort is the text that MarshalText
// writes, and reads back to the same value.
func TestStoredIsTheText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		day := units.Day(rapid.Int32Range(0, 3652059).Draw(t, "day"))
		mass := units.Mass(rapid.Int64().Draw(t, "mass"))
		effort := units.Must(units.InReserve(rapid.Float64Range(0, 10).Draw(t, "reserve")))
		var d units.Day
		var m units.Mass
		var e units.Effort
		stored(t, day, &d)
		stored(t, mass, &m)
		stored(t, effort, &e)
		if d != day || m != mass || e != effort {
			t.Fatalf("%v, %v, %v read back as %v, %v, %v", day, mass, effort, d, m, e)
		}
	})
}

type column interface {
	driver.Valuer
	MarshalText() ([]byte, error)
}

func stored(t *rapid.T, v column, into interface{ Scan(any) error }) {
	got, err := v.Value()
	if err != nil {
		t.Fatal(err)
	}
	text, _ := v.MarshalText()
	if s, ok := got.(string); len(text) > 0 && (!ok || s != string(text)) || len(text) == 0 && got != nil {
		t.Fatalf("%v is stored as %#v, its text is %q", v, got, text)
	}
	if err := into.Scan(got); err != nil {
		t.Fatal(err)
	}
}

// Nought is a mass and is stored as one; a day or an effort that was not given is NULL.
func TestStoredZero(t *testing.T) {
	for _, tt := range []struct {
		v    driver.Valuer
		want driver.Value
	}{
		{units.Mass(0), "0 kg"}, {units.Day(0), nil}, {units.Effort{}, nil}, {units.Scale(0), nil}, {units.MassUnit(0), nil},
		{units.Day(739945), "2026-11-25"}, {6 * units.Kilogram, "6 kg"}, {units.Must(units.RPE(8.5)), "rpe 8.5"},
		{units.Must(units.ParseMarked("25 lb")), "25 lb"},
	} {
		if got, err := tt.v.Value(); err != nil || got != tt.want {
			t.Errorf("%#v: %#v, %v, want %#v", tt.v, got, err, tt.want)
		}
	}
}

// A bare number is nobody's mass, day or effort; NULL is no mass.
func TestScanRefusesNumbers(t *testing.T) {
	day, mass, effort := units.Day(739945), units.Kilogram, units.Must(units.InReserve(2))
	for _, tt := range []struct {
		into     interface{ Scan(any) error }
		src      any
		category error
	}{
		{&day, int64(739945), field.ErrSyntax}, {&day, "739945", field.ErrSyntax}, {&day, "2026-02-30", field.ErrOutOfRange},
		{&day, time.Date(2026, 11, 25, 13, 0, 0, 0, time.UTC), field.ErrSyntax},
		{&day, time.Date(2026, 11, 25, 0, 0, 0, 1, time.UTC), field.ErrSyntax},
		{&day, time.Date(0, 1, 1, 0, 0, 0, 0, time.UTC), field.ErrOutOfRange},
		{&mass, int64(6), field.ErrSyntax}, {&mass, 6.0, field.ErrSyntax}, {&mass, "6", field.ErrMissing}, {&mass, nil, field.ErrMissing},
		{&effort, int64(2), field.ErrSyntax}, {&effort, "2", field.ErrSyntax}, {&effort, "rpe 11", field.ErrOutOfRange},
	} {
		var bad *field.Error
		if err := tt.into.Scan(tt.src); !errors.As(err, &bad) || !errors.Is(err, tt.category) {
			t.Errorf("%T from %#v: %v, want %v", tt.into, tt.src, err, tt.category)
		}
	}
	if day != 739945 || mass != units.Kilogram || effort.Number() != 2 {
		t.Errorf("changed: %v, %v, %v", day, mass, effort)
	}
	if err := errors.Join(day.Scan(nil), effort.Scan(nil)); err != nil || day != 0 || !effort.IsZero() {
		t.Errorf("NULL: %v, %v, %v", day, effort, err)
	}
}

// Some drivers make a time of a column of dates, in whatever zone.
func TestScanDayFromTime(t *testing.T) {
	for _, zone := range []*time.Location{time.UTC, time.FixedZone("", -11*3600), time.FixedZone("", 14*3600)} {
		var day units.Day
		if err := day.Scan(time.Date(2026, 11, 25, 0, 0, 0, 0, zone)); err != nil || day.String() != "2026-11-25" {
			t.Errorf("%v: %v, %v", zone, day, err)
		}
	}
}

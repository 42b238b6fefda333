package field_test

import (
	"database/sql/driver"
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/units/field"
)

// A colour is an enumeration as packages make them.
type colour uint8

const (
	noColour colour = iota
	red
	green
)

var colours = field.NewVocabulary[colour]("colour", "", "red", "green")

func (c colour) MarshalText() ([]byte, error)     { return colours.Marshal(c) }
func (c *colour) UnmarshalText(text []byte) error { return colours.Unmarshal(text, c) }
func (c colour) Value() (driver.Value, error)     { return field.Value(c) }
func (c *colour) Scan(src any) error              { return field.Scan(src, c) }

// A paint has no "not given": its zero value has a text.
type paint uint8

var paints = field.NewVocabulary[paint]("paint", "none", "oil")

func (p paint) MarshalText() ([]byte, error)     { return paints.Marshal(p) }
func (p *paint) UnmarshalText(text []byte) error { return paints.Unmarshal(text, p) }

type tin struct {
	Colour colour `json:"colour"`
	Litres int    `json:"litres"`
}

// What is stored is text, or NULL for "not given", and never a number.
func TestValue(t *testing.T) {
	for _, tt := range []struct {
		v    driver.Valuer
		want driver.Value
	}{
		{red, "red"}, {noColour, nil},
		{field.Column[colour]{V: green}, "green"}, {field.Column[colour]{}, nil},
		{field.Column[tin]{V: tin{red, 3}}, `{"colour":"red","litres":3}`},
		{field.Column[int]{V: 7}, "7"},
		{field.Column[[]tin]{}, nil}, {field.Column[[]tin]{V: []tin{}}, "[]"},
		{field.Column[*tin]{}, nil}, {field.Column[*tin]{V: &tin{}}, `{"colour":"","litres":0}`},
	} {
		if got, err := tt.v.Value(); err != nil || got != tt.want {
			t.Errorf("%#v: %#v, %v, want %#v", tt.v, got, err, tt.want)
		}
	}
	if got, err := colour(9).Value(); got != nil || !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("a colour that is none: %v, %v", got, err)
	}
	if got, err := (field.Column[func()]{}).Value(); err == nil {
		t.Errorf("a function is stored as %v", got)
	}
}

// What was stored reads back, as the text or the bytes that drivers hand over.
func TestScan(t *testing.T) {
	back(t, red)
	back(t, noColour)
	back(t, tin{green, 2})
	back(t, []tin{{red, 1}, {}})
	back[[]tin](t, nil)
	back[*tin](t, nil)
	back(t, &tin{red, 1})
	back(t, map[string]int{"a": 1})
}

func back[T any](t *testing.T, v T) {
	t.Helper()
	stored, err := field.Column[T]{V: v}.Value()
	if err != nil {
		t.Fatal(err)
	}
	sources := []any{stored}
	if text, ok := stored.(string); ok {
		sources = append(sources, []byte(text))
	}
	for _, src := range sources {
		var got field.Column[T]
		if err := got.Scan(src); err != nil || !cmp.Equal(v, got.V) {
			t.Errorf("%#v: %#v, %v", src, got.V, err)
		}
	}
}

// Nothing but what was stored is taken, and the value is left as it was.
func TestScanRefuses(t *testing.T) {
	c, p := red, paint(1)
	for _, tt := range []struct {
		name     string
		err      error
		category error
	}{
		{"a number for an enumeration", c.Scan(int64(1)), field.ErrSyntax},
		{"a fraction", c.Scan(1.5), field.ErrSyntax},
		{"true", c.Scan(true), field.ErrSyntax},
		{"an unknown text", c.Scan("blue"), field.ErrUnknown},
		{"NULL without a not given", field.Scan(nil, &p), field.ErrMissing},
		{"nothing without a not given", field.Scan("", &p), field.ErrUnknown},
		{"a number in a column", scan[colour](int64(1)), field.ErrSyntax},
		{"a number in a column of JSON", scan[int](int64(1)), field.ErrSyntax},
		{"NULL for a struct", scan[tin](nil), field.ErrMissing},
		{"an unknown name", scan[tin](`{"colour":"red","litres":1,"lid":true}`), field.ErrUnknown},
		{"a name twice", scan[tin](`{"colour":"red","litres":1,"litres":2}`), field.ErrDuplicate},
		{"null in JSON", scan[tin](`null`), field.ErrMissing},
		{"broken JSON", scan[tin](`{"colour":`), field.ErrSyntax},
	} {
		var bad *field.Error
		if !errors.As(tt.err, &bad) || !errors.Is(tt.err, tt.category) {
			t.Errorf("%s: %v, want %v", tt.name, tt.err, tt.category)
		}
	}
	if c != red || p != 1 {
		t.Errorf("changed: %v, %v", c, p)
	}
	kept := field.Column[tin]{V: tin{red, 1}}
	if kept.Scan("{") == nil || kept.V.Litres != 1 {
		t.Errorf("changed: %v", kept)
	}
}

func scan[T any](src any) error {
	var c field.Column[T]
	return c.Scan(src)
}

// Nothing is not given in a column, and has no place to read one into.
func TestColumnOfNothing(t *testing.T) {
	if v, err := field.Value(nil); v != nil || err != nil {
		t.Errorf("%v, %v", v, err)
	}
	if err := field.Scan("x", nil); !errors.Is(err, field.ErrMissing) {
		t.Error(err)
	}
}

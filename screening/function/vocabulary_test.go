package function_test

import (
	"encoding"
	"errors"
	"slices"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units/field"
)

type vocabulary interface {
	comparable
	encoding.TextMarshaler
	String() string
}

// walk checks that every value from 0 to last round-trips and the next does not.
func walk[E interface {
	~uint8
	vocabulary
}, P interface {
	*E
	encoding.TextUnmarshaler
}](t *testing.T, last E) {
	t.Helper()
	seen := map[string]bool{}
	for e := E(0); e <= last; e++ {
		text, err := e.MarshalText()
		var back E
		if err != nil || P(&back).UnmarshalText(text) != nil || back != e || e.String() != string(text) || seen[string(text)] {
			t.Errorf("%T %d: %q, %v, back %d", e, uint8(e), text, err, uint8(back))
		}
		seen[string(text)] = true
		if (e == 0) != (len(text) == 0) {
			t.Errorf("%T %d prints %q", e, uint8(e), text)
		}
	}
	if _, err := (last + 1).MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("%T has more than %d values: %v", last, uint8(last), err)
	}
	var e E
	if err := P(&e).UnmarshalText([]byte("nonsense")); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("%T reads nonsense: %v", e, err)
	}
}

func TestVocabularies(t *testing.T) {
	walk(t, function.FrailtyLevel)
	walk(t, function.Stopped)
	walk(t, function.NonDominant)
	walk(t, slices.Max(slices.Collect(function.Units())))
	walk(t, slices.Max(slices.Collect(function.Measures())))
	walk(t, function.Better)
	walk(t, function.WithinLearning)
	walk(t, slices.Max(slices.Collect(function.BatteryBands())))
}

// Tests are complete: each has a unit, a measure and a range.
func TestTestsAreComplete(t *testing.T) {
	n := 0
	for test := range function.Tests() {
		n++
		low, high := test.Plausible()
		if test.Unit() == 0 || test.Measure() == 0 || low.Unit() != test.Unit() || !(low.Number() < high.Number()) {
			t.Errorf("%v: unit %v, %v, %v to %v", test, test.Unit(), test.Measure(), low, high)
		}
	}
	if n != int(function.FrailtyLevel) {
		t.Errorf("%d tests", n)
	}
	for _, none := range []function.Test{0, 99} {
		if low, high := none.Plausible(); !low.IsZero() || !high.IsZero() || none.Unit() != 0 {
			t.Errorf("%v counts as a test", none)
		}
	}
}

func TestStatisticsHaveWords(t *testing.T) {
	for n := range function.Norms() {
		if s := n.Statistic; s.Kind() == 0 || s.Words() == "" {
			t.Errorf("%s has kind %v, words %q", s, s.Kind(), s.Words())
		}
	}
	const other function.Statistic = "other"
	if other.Kind() != 0 || other.Words() != "other" {
		t.Errorf("an unknown statistic has meaning: %v, %v", other.Kind(), other.Words())
	}
}

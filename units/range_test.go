package units_test

import (
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func TestRange(t *testing.T) {
	tests := []struct {
		r        units.Range[int]
		text     string
		json     string
		in, out  []int
		min, max bool
	}{
		{units.Must(units.Between(8, 12)), "8 to 12", `{"min":8,"max":12}`, []int{8, 10, 12}, []int{7, 13}, true, true},
		{units.Exactly(10), "10", `{"min":10,"max":10}`, []int{10}, []int{9, 11}, true, true},
		{units.AtLeast(2), "at least 2", `{"min":2}`, []int{2, math.MaxInt}, []int{1}, true, false},
		{units.AtMost(30), "at most 30", `{"max":30}`, []int{30, math.MinInt}, []int{31}, false, true},
		{units.AtMost(0), "at most 0", `{"max":0}`, []int{0}, []int{1}, false, true},
		{units.Range[int]{}, "not stated", `{}`, []int{0, math.MinInt, math.MaxInt}, nil, false, false},
	}
	for _, tt := range tests {
		if got := tt.r.String(); got != tt.text {
			t.Errorf("String() = %q, want %q", got, tt.text)
		}
		if got, err := json.Marshal(tt.r); string(got) != tt.json || err != nil {
			t.Errorf("%v in JSON = %s, %v, want %s", tt.r, got, err, tt.json)
		}
		for _, v := range tt.in {
			if !tt.r.Contains(v) {
				t.Errorf("%v does not contain %d", tt.r, v)
			}
		}
		for _, v := range tt.out {
			if tt.r.Contains(v) {
				t.Errorf("%v contains %d", tt.r, v)
			}
		}
		_, hasMin := tt.r.Min()
		_, hasMax := tt.r.Max()
		if hasMin != tt.min || hasMax != tt.max || tt.r.IsZero() != (!tt.min && !tt.max) {
			t.Errorf("%v: ends %v, %v, IsZero %v", tt.r, hasMin, hasMax, tt.r.IsZero())
		}
	}
}

// The ends print as %v prints them, whatever the range is of.
func TestRangeText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		checkRangeText(t, rapid.Int().Draw(t, "int"))
		checkRangeText(t, rapid.Float64().Draw(t, "float"))
		checkRangeText(t, rapid.String().Draw(t, "string"))
		checkRangeText(t, anyFraction().Draw(t, "fraction"))
		checkRangeText(t, anyMass().Draw(t, "mass"))
		checkRangeText(t, units.MassUnit(rapid.Byte().Draw(t, "number with no text")))
		checkRangeText(t, units.Day(rapid.Int32Range(1, 3_000_000).Draw(t, "day")))
	})
}

func checkRangeText[T cmp.Ordered](t *rapid.T, v T) {
	if v != v {
		return
	}
	text := fmt.Sprint(v)
	for want, r := range map[string]units.Range[T]{text: units.Exactly(v), "at least " + text: units.AtLeast(v), "at most " + text: units.AtMost(v)} {
		if got := r.String(); got != want {
			t.Errorf("String() = %q, want %q", got, want)
		}
	}
	var zero T
	low, high := min(zero, v), max(zero, v)
	if got, want := units.Must(units.Between(low, high)).String(), fmt.Sprintf("%v to %v", low, high); low != high && got != want {
		t.Errorf("String() = %q, want %q", got, want)
	}
}

func TestRangeNaN(t *testing.T) {
	nan := math.NaN()
	for _, ends := range [][2]float64{{nan, 1}, {1, nan}, {nan, nan}, {2, 1}} {
		if r, err := units.Between(ends[0], ends[1]); !errors.Is(err, field.ErrOutOfRange) || r != (units.Range[float64]{}) {
			t.Errorf("Between(%v) = %v, %v, want %v", ends, r, err, field.ErrOutOfRange)
		}
	}
	for _, r := range []units.Range[float64]{units.AtLeast(nan), units.AtMost(nan), units.Exactly(nan)} {
		if r != (units.Range[float64]{}) {
			t.Errorf("a range made of NaN is %v, want the zero Range", r)
		}
	}
	for _, r := range []units.Range[float64]{{}, units.AtLeast(0.0), units.AtMost(0.0), units.AtLeast(math.Inf(-1))} {
		if r.Contains(nan) {
			t.Errorf("%v contains NaN", r)
		}
	}
	if data, err := json.Marshal(units.AtMost(math.Inf(1))); err == nil {
		t.Errorf("infinity marshals as %s, want an error", data)
	}
}

func anyRange() *rapid.Generator[units.Range[int]] {
	return rapid.Custom(func(t *rapid.T) units.Range[int] {
		end := rapid.IntRange(-5, 5)
		a, b := end.Draw(t, "a"), end.Draw(t, "b")
		switch rapid.IntRange(0, 3).Draw(t, "ends") {
		case 0:
			return units.AtLeast(a)
		case 1:
			return units.AtMost(a)
		case 2:
			return units.Must(units.Between(min(a, b), max(a, b)))
		}
		return units.Range[int]{}
	})
}

func TestRangeIntersect(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, s, u := anyRange().Draw(t, "r"), anyRange().Draw(t, "s"), anyRange().Draw(t, "u")
		both, ok := r.Intersect(s)
		some := false
		for v := -6; v <= 6; v++ {
			want := r.Contains(v) && s.Contains(v)
			some = some || want
			if ok && both.Contains(v) != want {
				t.Fatalf("%v and %v give %v: contains %d = %v", r, s, both, v, !want)
			}
		}
		if ok != some {
			t.Fatalf("%v and %v: ok = %v, want %v", r, s, ok, some)
		}
		if back, okBack := s.Intersect(r); back != both || okBack != ok {
			t.Fatalf("%v and %v: %v one way, %v the other", r, s, both, back)
		}
		if self, ok := r.Intersect(r); self != r || !ok {
			t.Fatalf("%v with itself gives %v, %v", r, self, ok)
		}
		left, okLeft := both.Intersect(u)
		right, okRight := s.Intersect(u)
		right, okRight2 := r.Intersect(right)
		if ok && okLeft != (okRight && okRight2) || ok && okLeft && left != right {
			t.Fatalf("%v, %v, %v: grouping changes the result: %v or %v", r, s, u, left, right)
		}
	})
}

func TestRangeJSONRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ints := anyRange().Draw(t, "r")
		roundTrip(t, ints)
		least, most := anyMass().Draw(t, "least"), anyMass().Draw(t, "most")
		roundTrip(t, units.Must(units.Between(min(least, most), max(least, most))))
		roundTrip(t, units.AtMost(least))
		roundTrip(t, units.AtLeast(rapid.Float64().Draw(t, "x")))
		roundTrip(t, units.Exactly(rapid.String().Draw(t, "s")))
	})
}

func roundTrip[T comparable](t rapid.TB, v T) {
	t.Helper()
	data, err := json.Marshal(v)
	if err != nil {
		t.Fatalf("%v: %v", v, err)
	}
	var got, strict T
	if err := json.Unmarshal(data, &got); err != nil || got != v {
		t.Fatalf("%v by way of %s gives %v, %v", v, data, got, err)
	}
	if err := field.Decode(data, &strict, field.Strict); err != nil || strict != v {
		t.Fatalf("%v by way of %s gives %v, %v", v, data, strict, err)
	}
}

func TestRangeJSONErrors(t *testing.T) {
	tests := []struct {
		data, path string
		want       error
	}{
		{`{"min":3,"max":2}`, "/max", field.ErrOutOfRange},
		{`{"min":3,"min":3}`, "/min", field.ErrDuplicate},
		{`{"Min":3}`, "/Min", field.ErrUnknown},
		{`{"min":"3"}`, "/min", field.ErrSyntax},
		{`{"min":2.5}`, "/min", field.ErrSyntax},
		{`null`, "", field.ErrMissing},
		{`[2,3]`, "", field.ErrSyntax},
	}
	for _, tt := range tests {
		r := units.Exactly(7)
		err := json.Unmarshal([]byte(tt.data), &r)
		var f *field.Error
		if !errors.Is(err, tt.want) || !errors.As(err, &f) || f.Path != tt.path {
			t.Errorf("%s: %v, want %v at %q", tt.data, err, tt.want, tt.path)
		}
		if r != units.Exactly(7) {
			t.Errorf("%s changed the range to %v", tt.data, r)
		}
	}
	var r units.Range[int]
	if err := field.Decode([]byte(`{"min":null,"max":4}`), &r, field.Strict); err != nil || r != units.AtMost(4) {
		t.Errorf("null for an end gives %v, %v, want at most 4", r, err)
	}
}

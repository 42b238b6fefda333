package units

import (
	"cmp"
	"encoding/json"
	"fmt"
	"strconv"

	"example.org/posology/units/field"
)

// A Range is an interval whose ends belong to it. Either end may be absent: a
// floor has no upper end, a ceiling no lower one. The zero Range has neither
// and means "not stated".
//
// Its JSON is {"min":2,"max":3}, with an absent end left out.
type Range[T cmp.Ordered] struct {
	min, max       T
	hasMin, hasMax bool
}

// Between returns the range from min to max. It is a [field.ErrOutOfRange] if max
// lies below min or an end is not a number.
func Between[T cmp.Ordered](min, max T) (Range[T], error) {
	if !(min <= max) {
		return Range[T]{}, field.Bad(fmt.Sprintf("%v to %v", min, max), "a lower end at or below the upper end", field.ErrOutOfRange)
	}
	return Range[T]{min, max, true, true}, nil
}

// AtLeast returns the range that begins at min. Not a number gives the zero Range.
func AtLeast[T cmp.Ordered](min T) Range[T] {
	return Range[T]{min: number(min), hasMin: min == min}
}

// AtMost returns the range that ends at max. Not a number gives the zero Range.
func AtMost[T cmp.Ordered](max T) Range[T] {
	return Range[T]{max: number(max), hasMax: max == max}
}

// Exactly returns the range that holds v alone. Not a number gives the zero Range.
func Exactly[T cmp.Ordered](v T) Range[T] {
	return Range[T]{number(v), number(v), v == v, v == v}
}

// number keeps Range comparable with ==: it turns NaN into zero.
func number[T cmp.Ordered](v T) T {
	if v != v {
		var zero T
		return zero
	}
	return v
}

// Min returns the lower end and whether there is one.
func (r Range[T]) Min() (T, bool) { return r.min, r.hasMin }

// Max returns the upper end and whether there is one.
func (r Range[T]) Max() (T, bool) { return r.max, r.hasMax }

// IsZero reports whether r has no ends: "not stated".
func (r Range[T]) IsZero() bool { return !r.hasMin && !r.hasMax }

// Contains reports whether v lies in r. A range without ends contains
// everything but NaN.
func (r Range[T]) Contains(v T) bool {
	return v == v && (!r.hasMin || v >= r.min) && (!r.hasMax || v <= r.max)
}

// Intersect returns what r and s have in common, and false if that is nothing.
func (r Range[T]) Intersect(s Range[T]) (Range[T], bool) {
	if s.hasMin && (!r.hasMin || s.min > r.min) {
		r.min, r.hasMin = s.min, true
	}
	if s.hasMax && (!r.hasMax || s.max < r.max) {
		r.max, r.hasMax = s.max, true
	}
	if r.hasMin && r.hasMax && r.min > r.max {
		return Range[T]{}, false
	}
	return r, true
}

// String prints "8 to 12", "at least 2", "at most 30", "10" or "not stated".
func (r Range[T]) String() string {
	switch {
	case r.hasMin && r.hasMax && r.min == r.max:
		return printed(r.min)
	case r.hasMin && r.hasMax:
		return printed(r.min) + " to " + printed(r.max)
	case r.hasMin:
		return "at least " + printed(r.min)
	case r.hasMax:
		return "at most " + printed(r.max)
	}
	return "not stated"
}

// printed is what %v prints, found sooner for what most ranges are of.
func printed[T cmp.Ordered](v T) string {
	switch v := any(v).(type) {
	case int:
		return strconv.Itoa(v)
	case Fraction:
		return v.String()
	case Mass:
		return v.String()
	}
	return fmt.Sprint(v)
}

type rangeJSON[T cmp.Ordered] struct {
	Min *T `json:"min,omitempty"`
	Max *T `json:"max,omitempty"`
}

// MarshalJSON writes the ends that there are.
func (r Range[T]) MarshalJSON() ([]byte, error) {
	var j rangeJSON[T]
	if r.hasMin {
		j.Min = &r.min
	}
	if r.hasMax {
		j.Max = &r.max
	}
	return json.Marshal(j)
}

// UnmarshalJSON reads what MarshalJSON writes; other fields, a field given
// twice, and an upper end below the lower one are errors.
func (r *Range[T]) UnmarshalJSON(data []byte) error {
	var j rangeJSON[T]
	if err := field.Decode(data, &j, field.Strict); err != nil {
		return err
	}
	var got Range[T]
	if j.Min != nil {
		got.min, got.hasMin = *j.Min, true
	}
	if j.Max != nil {
		got.max, got.hasMax = *j.Max, true
	}
	if got.hasMin && got.hasMax && got.min > got.max {
		return field.New("/max", got.max, fmt.Sprintf("%v or more", got.min), field.ErrOutOfRange)
	}
	return field.Assign(r, got, nil)
}

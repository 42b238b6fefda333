package units

import (
	"bytes"
	"errors"
	"fmt"
	"iter"
	"math"
	"strconv"
	"strings"

	"example.org/posology/units/field"
)

// ErrNoRIR: the effort rating has no value in repetitions in reserve.
var ErrNoRIR = errors.New("rating has no value in repetitions in reserve")

// Fraction is a share of a whole: 0.7 of a one-repetition maximum.
type Fraction float64

// Percent returns f in percent.
func (f Fraction) Percent() float64 { return float64(f) * 100 }

// String prints a percentage to one decimal at most, such as "72.5 %".
func (f Fraction) String() string {
	var room [24]byte
	text := strconv.AppendFloat(room[:0], f.Percent(), 'f', 1, 64)
	return string(append(bytes.TrimSuffix(text, []byte(".0")), " %"...))
}

// RIR is a number of repetitions in reserve: how many more could have been
// done. Zero means that the set went to failure.
type RIR float64

// Scale is a scale that effort is rated on. Only its numbers are used here;
// the words printed beside them belong to the scales' owners.
type Scale uint8

// Scales of effort.
const (
	_         Scale = iota // not given
	ScaleRIR               // "rir": repetitions in reserve, 0 to 10
	ScaleRPE               // "rpe": 1 to 10 in halves, by repetitions in reserve (Zourdos 2016)
	ScaleOMNI              // "omni": 0 to 10, resistance exercise; no value in reserve
	ScaleCR10              // "cr10": 0 to 10, category-ratio; no value in reserve
	ScaleBorg              // "borg": 6 to 20; no value in reserve
)

var scales = field.NewVocabulary[Scale]("scale", "", "rir", "rpe", "omni", "cr10", "borg")

// Scales yields every scale.
func Scales() iter.Seq[Scale] { return scales.All() }

var scaleEnds = [...]struct{ min, max, step float64 }{
	ScaleRIR:  {0, 10, 0},
	ScaleRPE:  {1, 10, 0.5},
	ScaleOMNI: {0, 10, 0},
	ScaleCR10: {0, 10, 0},
	ScaleBorg: {6, 20, 0},
}

// String returns the scale's code: "rir", "rpe", "omni", "cr10", "borg".
func (s Scale) String() string { return scales.Text(s) }

// MarshalText writes the scale's code.
func (s Scale) MarshalText() ([]byte, error) { return scales.Marshal(s) }

// UnmarshalText reads a scale's code.
func (s *Scale) UnmarshalText(text []byte) error { return scales.Unmarshal(text, s) }

// Effort is a rating of effort on a named scale. The zero value is "not
// recorded". Its text is the scale's code and the number: "rir 2", "rpe 8.5".
type Effort struct {
	scale Scale
	value float64
}

// NewEffort returns the rating value on scale s; outside the scale, or between
// its steps, it is a [field.ErrOutOfRange].
func NewEffort(s Scale, value float64) (Effort, error) {
	if !scales.Valid(s) {
		return Effort{}, scales.Check("", s)
	}
	e := scaleEnds[s]
	onStep := e.step == 0 || math.Mod(value, e.step) == 0
	if !(value >= e.min && value <= e.max) || !onStep {
		allowed := fmt.Sprintf("%v to %v", e.min, e.max)
		if e.step != 0 {
			allowed += fmt.Sprintf(" in steps of %v", e.step)
		}
		return Effort{}, field.Bad(fmt.Sprintf("%s %v", s, value), allowed, field.ErrOutOfRange)
	}
	return Effort{s, value + 0}, nil // the sum turns -0 into 0, which prints without a sign
}

// InReserve returns the effort of a set that left n repetitions undone, 0 to 10.
func InReserve(n float64) (Effort, error) { return NewEffort(ScaleRIR, n) }

// RPE returns a rating from 1 to 10, in halves, on the scale that is based on
// repetitions in reserve.
func RPE(v float64) (Effort, error) { return NewEffort(ScaleRPE, v) }

// OMNI returns a rating from 0 to 10 on the OMNI scale for resistance exercise.
func OMNI(v float64) (Effort, error) { return NewEffort(ScaleOMNI, v) }

// IsZero reports whether no effort was recorded.
func (e Effort) IsZero() bool { return e.scale == 0 }

// Scale returns the scale, zero if nothing was recorded.
func (e Effort) Scale() Scale { return e.scale }

// Number returns the number on the scale.
func (e Effort) Number() float64 { return e.value }

// String prints "rpe 8.5", or "" if nothing was recorded.
func (e Effort) String() string {
	if e.IsZero() {
		return ""
	}
	return e.scale.String() + " " + strconv.FormatFloat(e.value, 'f', -1, 64)
}

// MarshalText writes what [Effort.String] prints.
func (e Effort) MarshalText() ([]byte, error) { return []byte(e.String()), nil }

// UnmarshalText reads a scale and a number, such as "rir 2", "RPE 8.5" or "rpe 8,5".
func (e *Effort) UnmarshalText(text []byte) error { return field.AssignText(e, text, parseEffort) }

func parseEffort(text string) (Effort, error) {
	code, number, _ := strings.Cut(text, " ")
	size, negative := strings.CutPrefix(number, "-")
	whole, frac, rest := digits(size)
	if whole == "" || rest != "" {
		return Effort{}, field.Bad(fmt.Sprintf("%.40q", text), `a scale and a number, such as "rir 2" or "rpe 8.5"`, field.ErrSyntax)
	}
	s, err := scales.Parse(strings.ToLower(code))
	if err != nil {
		return Effort{}, err
	}
	value, _ := strconv.ParseFloat(whole+"."+frac, 64) // digits only: no error
	if negative {
		value = -value
	}
	return NewEffort(s, value)
}

// ratings are the values of the RIR-based scale in repetitions in reserve.
// [example.org/posology/units/evidence] lists where each was seen. The range for 6
// is from memory and reaches past the 5 that was read for 5: it stays as wide, since
// to narrow it would count sets that it leaves out.
var ratings = []struct {
	rating float64
	rir    Range[RIR]
}{
	{5, Exactly[RIR](5)},
	{6, Must(Between[RIR](4, 6))},
	{7, Exactly[RIR](3)},
	{7.5, Must(Between[RIR](2, 3))},
	{8, Exactly[RIR](2)},
	{8.5, Must(Between[RIR](1, 2))},
	{9, Exactly[RIR](1)},
	{9.5, Exactly[RIR](0)},
	{10, Exactly[RIR](0)},
}

// Ratings yields the ratings of the RIR-based scale that have a value in
// repetitions in reserve, rising, with that value.
func Ratings() iter.Seq2[float64, Range[RIR]] {
	return func(yield func(float64, Range[RIR]) bool) {
		for _, r := range ratings {
			if !yield(r.rating, r.rir) {
				return
			}
		}
	}
}

// RIR returns the effort in repetitions in reserve: a range, since half points
// stand for two counts (8.5 for 1 to 2) and 6, from memory, for 4 to 6. Ratings
// of 5.5 and 6.5, which no source lists, take what their neighbours span. It is
// an [ErrNoRIR] below 5, where the scale has no such value, and on scales that
// are not built on it; a [field.ErrMissing] if nothing was recorded.
func (e Effort) RIR() (Range[RIR], error) {
	switch e.scale {
	case 0:
		return Range[RIR]{}, field.Bad(nil, "an effort rating", field.ErrMissing)
	case ScaleRIR:
		return Exactly(RIR(e.value)), nil
	case ScaleRPE:
		return ratingRIR(e.value)
	}
	return Range[RIR]{}, field.Bad(e, "a rating on the scales rir or rpe", ErrNoRIR)
}

func ratingRIR(v float64) (Range[RIR], error) {
	if v < ratings[0].rating {
		return Range[RIR]{}, field.Bad(fmt.Sprintf("rpe %v", v), "rpe 5 to 10", ErrNoRIR)
	}
	i := 0
	for ratings[i].rating < v {
		i++
	}
	if ratings[i].rating == v {
		return ratings[i].rir, nil
	}
	low, _ := ratings[i].rir.Min()
	high, _ := ratings[i].rir.Max()
	above, _ := ratings[i-1].rir.Max()
	return Between(low, max(high, above))
}

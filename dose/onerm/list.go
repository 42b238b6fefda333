package onerm

import (
	"fmt"
	"math"

	"example.org/posology/dose/onerm/internal/shape"
	"example.org/posology/units/field"
)

// OneRMs returns the 1RM for each load and its repetitions to failure, in the
// unit of the loads. The result takes the place of dst, which grows if it is
// too short and may be load itself. Epley is evaluated as load·(1 + reps/30),
// Brzycki as load·36/(37 − reps), in this order, so that other programs can
// match the results to the last bit.
//
// A load that is not above 0 and at most 9.22e18, or repetitions outside
// [Formula.Domain], are a [field.ErrOutOfRange] that names the first bad entry
// by its index ("/load/3", "/reps/3"); the result is then nil and what dst held
// is lost. Lists of different length are a [field.ErrConflict].
func (f Formula) OneRMs(dst, load []float64, reps []int32) ([]float64, error) {
	return f.fill(dst, load, reps, func(at int, _ []float64) error { return f.badEntry("/load", at, load[at], reps[at]) })
}

// OneRMsOrNaN is [Formula.OneRMs] for lists with holes: a bad entry gives NaN
// in its place and no error. The errors left are those of the formula and of
// lists of different length.
func (f Formula) OneRMsOrNaN(dst, load []float64, reps []int32) ([]float64, error) {
	return f.fill(dst, load, reps, func(at int, out []float64) error {
		out[at] = math.NaN()
		return nil
	})
}

// Loads returns the load for each 1RM that can be lifted so many repetitions to
// failure: the inverse of [Formula.OneRMs] in the load, with the same rules and
// errors, which name "/one_rm/3" or "/reps/3".
func (f Formula) Loads(dst, oneRM []float64, reps []int32) ([]float64, error) {
	dst, err := f.room(dst, oneRM, reps)
	if err != nil {
		return nil, err
	}
	low, high := equations[f].Whole()
	factors := equations[f].Table()
	for i, x := range oneRM {
		r := reps[i]
		switch {
		case shape.BadPair(x, r, low, uint32(high-low)):
			return nil, f.badEntry("/one_rm", i, x, r)
		case r < shape.Tabled:
			dst[i] = x / factors[r]
		default:
			dst[i] = x / equations[f].Factor(float64(r))
		}
	}
	return dst, nil
}

// room checks formula and lengths and returns dst with the length of load.
func (f Formula) room(dst, load []float64, reps []int32) ([]float64, error) {
	if err := f.check(); err != nil {
		return nil, field.At("/formula", err)
	}
	if len(load) != len(reps) {
		return nil, field.New("/reps", fmt.Sprintf("%d entries", len(reps)), fmt.Sprintf("%d, one for each load", len(load)), field.ErrConflict)
	}
	if cap(dst) < len(load) {
		dst = make([]float64, len(load))
	}
	return dst[:len(load)], nil
}

// fill computes dst and hands every bad entry to bad, whose error ends it.
func (f Formula) fill(dst, load []float64, reps []int32, bad func(at int, dst []float64) error) ([]float64, error) {
	dst, err := f.room(dst, load, reps)
	if err != nil {
		return nil, err
	}
	factors := equations[f].Table()
	for at := 0; at < len(load); at++ {
		at += equations[f].Fill(dst[at:], load[at:], reps[at:], &factors)
		if at < len(load) {
			if err := bad(at, dst); err != nil {
				return nil, err
			}
		}
	}
	return dst, nil
}

func (f Formula) badEntry(list string, i int, load float64, reps int32) error {
	var bad field.Errors
	if !(load > 0 && load <= shape.MaxLoad) {
		bad.Add("", field.New(fmt.Sprintf("%s/%d", list, i), load, "above 0 and at most 9.22e18", field.ErrOutOfRange))
	}
	bad.Add("", f.checkReps(fmt.Sprintf("/reps/%d", i), float64(reps)))
	return bad.Err()
}

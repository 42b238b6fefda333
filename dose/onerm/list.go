package onerm

import (
	"fmt"

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
	dst, err := f.room(dst, load, reps)
	if err != nil {
		return nil, err
	}
	factors := equations[f].Table()
	if at := equations[f].Fill(dst, load, reps, &factors); at < len(load) {
		return nil, f.badEntry(at, load[at], reps[at])
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

func (f Formula) badEntry(i int, load float64, reps int32) error {
	var bad field.Errors
	if !(load > 0 && load <= shape.MaxLoad) {
		bad.Add("", field.New(fmt.Sprintf("/load/%d", i), load, "above 0 and at most 9.22e18", field.ErrOutOfRange))
	}
	bad.Add("", f.checkReps(fmt.Sprintf("/reps/%d", i), float64(reps)))
	return bad.Err()
}

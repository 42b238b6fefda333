package equipment

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Stall is a step that a kit does not offer: from Present, no load within
// Ceiling reaches as far as Wanted, or lies within Share of Present.
type Stall struct {
	Hold    body.Hold      `json:"hold"`
	Present units.Mass     `json:"present"`          // per implement, in use now; 0 or more
	Ceiling units.Mass     `json:"ceiling,omitzero"` // per implement; 0 for none
	Wanted  units.Mass     `json:"wanted,omitzero"`  // the most that the next weight may be; above Present
	Share   units.Fraction `json:"share,omitzero"`   // instead of Wanted: the largest step, such as 0.1; above 0, at most 10
}

// maxShare guards against a percentage that was meant as a fraction.
const maxShare = 10

// Validate returns every bad field of s at once: a hold not given or without
// weight, a mass or share out of range, both or neither of Wanted and Share, a
// share of zero.
func (s Stall) Validate() error {
	var bad field.Errors
	bad.Add("/hold", s.Hold.Check())
	bad.Refuse(s.Hold == body.Unloaded, "/hold", s.Hold, "a hold with a weight", field.ErrConflict)
	bad.Refuse(s.Present < 0, "/present", s.Present, "0 kg or more", field.ErrOutOfRange)
	bad.Refuse(s.Ceiling < 0, "/ceiling", s.Ceiling, "0 kg or more", field.ErrOutOfRange)
	bad.Add("", s.checkStep())
	return bad.Err()
}

func (s Stall) checkStep() error {
	share := float64(s.Share)
	switch {
	case s.Wanted == 0 && s.Share == 0:
		return field.New("/wanted", nil, "the next mass, or a share instead", field.ErrMissing)
	case s.Wanted != 0 && s.Share != 0:
		return field.New("/share", s.Share, "only one of wanted and share", field.ErrConflict)
	case s.Share != 0 && !(share > 0 && share <= maxShare): // NaN too
		return field.New("/share", s.Share, fmt.Sprintf("above 0, at most %d", maxShare), field.ErrOutOfRange)
	case s.Share != 0 && s.Present == 0:
		return field.New("/share", s.Share, "wanted instead, since nothing is a share of 0 kg", field.ErrConflict)
	case s.Share == 0 && s.Wanted <= s.Present:
		return field.New("/wanted", s.Wanted, "above the present mass", field.ErrOutOfRange)
	}
	return nil
}

// limit returns the most that the next weight may be.
func (s Stall) limit() units.Mass {
	most := s.Wanted
	if s.Share != 0 {
		step, err := s.Present.Scale(s.Share, units.Down)
		if err != nil || step > units.MaxMass-s.Present {
			step = units.MaxMass - s.Present
		}
		most = s.Present + step
	}
	if s.Ceiling > 0 {
		most = min(most, s.Ceiling)
	}
	return most
}

// Advice is what one purchase would do.
type Advice struct {
	Purchase Purchase   `json:"purchase"`
	Mass     units.Mass `json:"mass"`              // bought in all
	Removes  []int      `json:"removes,omitempty"` // indices of the stalls that it ends, rising
}

// Advise returns the candidates, each with the stalls that it ends alone:
// those that end most first, then the least mass bought, then the order given.
// Where the present kit already goes on, there is no stall for a purchase to end. Without
// candidates it takes, of what leaves a kit within its limits, those of [More]; one
// and two dumbbells halfway between neighbours and plates of half the lightest; and
// dumbbells of the most that each stall allows, rounded down to half a kilogram.
//
// Bad fields come back all at once, below "/kit", "/stalls" and "/candidates";
// a kit that makes too many loads, with a candidate or without, is
// [ErrTooManyLoads].
func Advise(k Kit, stalls []Stall, candidates []Purchase) ([]Advice, error) {
	var bad field.Errors
	bad.Add("/kit", k.Validate())
	bad.Add("/stalls", checkAll(stalls, Stall.Validate))
	bad.Add("/candidates", checkAll(candidates, Purchase.Validate))
	if err := bad.Err(); err != nil {
		return nil, err
	}
	proposed := len(candidates) == 0
	if proposed {
		candidates = slices.Concat(More(k), inBetween(k), reaching(k, stalls))
	}
	now, err := stalled(k, stalls)
	if err != nil {
		return nil, field.At("/kit", err)
	}
	list := make([]Advice, 0, len(candidates))
	for i, c := range candidates {
		removes, err := ended(k, c, stalls, now)
		if err != nil && proposed {
			continue // the caller named no such purchase
		}
		bad.Add(fmt.Sprintf("/candidates/%d", i), err)
		list = append(list, Advice{c, c.Mass(), removes})
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	slices.SortStableFunc(list, func(a, b Advice) int {
		return cmp.Or(cmp.Compare(len(b.Removes), len(a.Removes)), cmp.Compare(a.Mass, b.Mass))
	})
	return list, nil
}

func checkAll[T any](list []T, check func(T) error) error {
	var bad field.Errors
	for i, entry := range list {
		bad.Add(fmt.Sprintf("/%d", i), check(entry))
	}
	return bad.Err()
}

// ended returns which of the stalls of now the purchase ends.
func ended(k Kit, p Purchase, stalls []Stall, now []bool) ([]int, error) {
	larger, err := k.With(p)
	if err != nil {
		return nil, err
	}
	left, err := stalled(larger, stalls)
	var removes []int
	for i := range left {
		if now[i] && !left[i] {
			removes = append(removes, i)
		}
	}
	return removes, err
}

// stalled tells of each stall whether k leaves it; it compiles each hold once.
func stalled(k Kit, stalls []Stall) ([]bool, error) {
	k = k.Once(k)
	left := make([]bool, len(stalls))
	for i, s := range stalls {
		table, err := k.Compile(s.Hold)
		if err != nil && !errors.Is(err, ErrEmptyKit) {
			return nil, err
		}
		gap, heavier := table.Next(s.Present)
		left[i] = !heavier || gap.To.each > s.limit()
	}
	return left, nil
}

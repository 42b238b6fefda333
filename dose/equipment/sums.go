package equipment

import (
	"cmp"
	"math"
	"math/bits"
	"slices"

	"example.org/posology/units"
)

// sums are all masses that plates make on top of some start, each once and
// rising, with the fewest plates that make it.
type sums struct {
	plates []Plate  // rising by mass; Count is the most at one place
	rows   []row    // rising by mass
	counts []uint16 // for each row, how many of each kind are at one place
}

// A row is one mass of sums.
type row struct {
	mass   units.Mass // on one implement, the start included
	plates uint16     // at one place
	origin uint16     // index of the start it was made from
}

// A spot is where plates go: on so many ends of an implement, with so many
// implements loaded alike, and at most limit plates at one place.
type spot struct{ ends, implements, limit int }

// noLimit stands for the limit of a place that has none.
const noLimit = math.MaxInt

// newSums adds plates to start, whose rows rise by mass and have no plates yet.
// It is false as soon as there are more than [MaxLoads] sums.
//
// Kind after kind is added, the lightest first, and each in lots of 1, 2, 4, …
// plates, which make every number up to the stock. A lot is one merge of two
// rising lists. Where two ways make a mass with as few plates, the one with the
// lot is kept: that way has the most plates of the heaviest kind.
func newSums(start []row, stock []Plate, s spot) (*sums, bool) {
	now := &sums{rows: start}
	for _, p := range stock {
		if p.Count /= s.ends * s.implements; p.Count > 0 {
			now.plates = append(now.plates, p)
		}
	}
	slices.SortFunc(now.plates, func(a, b Plate) int { return cmp.Compare(a.Mass.Mass, b.Mass.Mass) })
	now.counts = make([]uint16, len(start)*len(now.plates))

	next := &sums{plates: now.plates}
	for kind, p := range now.plates {
		for lot, rest := 1, min(p.Count, s.limit); rest > 0; lot, rest = 2*lot, rest-lot {
			lot = min(lot, rest)
			step := p.Mass.Mass * units.Mass(s.ends*lot)
			if !now.addLot(next, kind, lot, step, s.limit) {
				return nil, false
			}
			now, next = next, now
		}
	}
	return &sums{now.plates, slices.Clone(now.rows), slices.Clone(now.counts)}, true // lets the buffers go
}

// addLot writes to next the rows of s and the same with one more lot.
func (s *sums) addLot(next *sums, kind, lot int, step units.Mass, limit int) bool {
	next.clear(2 * len(s.rows))
	bare, laden := 0, 0 // the rows whose turn it is, as they are and with the lot
	for len(next.rows) <= MaxLoads {
		for laden < len(s.rows) && int(s.rows[laden].plates)+lot > limit {
			laden++
		}
		if bare == len(s.rows) && laden == len(s.rows) {
			return true
		}
		asIs, more := units.MaxMass, units.MaxMass // no load is as heavy
		if bare < len(s.rows) {
			asIs = s.rows[bare].mass
		}
		if laden < len(s.rows) {
			more = s.rows[laden].mass + step
		}
		if asIs < more || asIs == more && int(s.rows[bare].plates) < int(s.rows[laden].plates)+lot {
			next.push(s, bare, kind, 0, 0)
		} else {
			next.push(s, laden, kind, lot, step)
		}
		if asIs <= more {
			bare++
		}
		if more <= asIs {
			laden++
		}
	}
	return false
}

// clear makes s an empty buffer with room for n rows, of which it never needs
// more than MaxLoads+1. Room grows by doubling, so that all buffers that were
// ever made are together as large as the last.
func (s *sums) clear(n int) {
	n = min(n, MaxLoads+1)
	s.rows, s.counts = s.rows[:0], s.counts[:0]
	if cap(s.rows) < n {
		n = min(1<<bits.Len(uint(n)), MaxLoads+1)
		s.rows, s.counts = make([]row, 0, n), make([]uint16, 0, n*len(s.plates))
	}
}

// push appends row i of from with one lot more.
func (s *sums) push(from *sums, i, kind, lot int, step units.Mass) {
	r := from.rows[i]
	s.rows = append(s.rows, row{r.mass + step, r.plates + uint16(lot), r.origin})
	s.counts = append(s.counts, from.row(i)...)
	s.counts[len(s.counts)-len(s.plates)+kind] += uint16(lot)
}

// row returns how many of each kind of plate row i has at one place.
func (s *sums) row(i int) []uint16 {
	n := len(s.plates)
	return s.counts[i*n : (i+1)*n]
}

package equipment

import (
	"cmp"
	"iter"
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
	taken  []armful // as many for the starts, of nothing, and then what rows are made of
	starts int32
}

// A row is one mass of sums.
type row struct {
	mass   units.Mass // on one implement, the start included
	made   int32      // index of what was taken last; of a start, its own
	plates uint16     // at one place
	more   uint16     // of them, of the kind that is being added and not yet in taken
}

// An armful is plates of one kind at one place, on top of those taken before. Rows share what
// they have in common, so that a row costs the same however many kinds there are.
type armful struct {
	before      int32
	kind, count uint16
}

// A spot is where plates go: on so many ends of an implement, with so many
// implements loaded alike, and at most limit plates at one place.
type spot struct{ ends, implements, limit int }

// noLimit stands for the limit of a place that has none.
const noLimit = math.MaxInt

// newSums adds plates to start, whose rows rise by mass and have no plates yet.
// It is false as soon as there are more than maxLoads sums.
//
// Kind after kind is added, the lightest first, and each in lots of 1, 2, 4, …
// plates, which make every number up to the stock. A lot is one merge of two
// rising lists, so that the work is rows times lots. Where two ways make a mass with as few plates, the one with the
// lot is kept: that way has the most plates of the heaviest kind.
func newSums(start []row, stock []Plate, s spot) (*sums, bool) {
	now := &sums{rows: start, taken: make([]armful, len(start)), starts: int32(len(start))}
	for _, p := range stock {
		if p.Count /= s.ends * s.implements; p.Count > 0 {
			now.plates = append(now.plates, p)
		}
	}
	slices.SortFunc(now.plates, func(a, b Plate) int { return cmp.Compare(a.Mass.Mass, b.Mass.Mass) })

	next := &sums{}
	for kind, p := range now.plates {
		for lot, rest := 1, min(p.Count, s.limit); rest > 0; lot, rest = 2*lot, rest-lot {
			lot = min(lot, rest)
			step := p.Mass.Mass * units.Mass(s.ends*lot)
			if !now.addLot(next, lot, step, s.limit) {
				return nil, false
			}
			now.rows, next.rows = next.rows, now.rows
		}
		now.take(uint16(kind))
	}
	now.rows, now.taken = slices.Clone(now.rows), slices.Clone(now.taken) // lets the buffers go
	return now, true
}

// take enters what the rows have of a kind.
func (s *sums) take(kind uint16) {
	for i := range s.rows {
		if r := &s.rows[i]; r.more > 0 {
			s.taken = append(s.taken, armful{r.made, kind, r.more})
			r.made, r.more = int32(len(s.taken)-1), 0
		}
	}
}

// addLot writes to next the rows of s and the same with one more lot.
func (s *sums) addLot(next *sums, lot int, step units.Mass, limit int) bool {
	next.clear(2 * len(s.rows))
	bare, laden := 0, 0 // the rows whose turn it is, as they are and with the lot
	for len(next.rows) <= maxLoads {
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
			next.rows = append(next.rows, s.rows[bare])
		} else {
			r := s.rows[laden]
			r.mass, r.plates, r.more = more, r.plates+uint16(lot), r.more+uint16(lot)
			next.rows = append(next.rows, r)
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
// more than maxLoads+1. Room grows by doubling, so that all buffers that were
// ever made are together as large as the last.
func (s *sums) clear(n int) {
	n = min(n, maxLoads+1)
	if s.rows = s.rows[:0]; cap(s.rows) < n {
		s.rows = make([]row, 0, min(1<<bits.Len(uint(n)), maxLoads+1))
	}
}

// of yields how many plates of which kind row i has at one place, the heaviest first.
func (s *sums) of(i int32) iter.Seq2[*Plate, int] {
	return func(yield func(*Plate, int) bool) {
		for at := s.rows[i].made; at >= s.starts; at = s.taken[at].before {
			if !yield(&s.plates[s.taken[at].kind], int(s.taken[at].count)) {
				return
			}
		}
	}
}

// start returns the index of the start that row i was made from.
func (s *sums) start(i int32) int32 {
	at := s.rows[i].made
	for at >= s.starts {
		at = s.taken[at].before
	}
	return at
}

package equipment

import (
	"math/bits"

	"example.org/posology/units"
)

// A place is an end of a handle, or the top of a stack, with the plates that it can take.
// It finds sums of them in one of two ways: few are gone through one by one; of many the
// sums that can be made are kept as bits, and the fewest plates for one sum are
// searched for among those.
type place struct {
	kinds   []Plate // rising by mass; Count is the most at one place
	upTo    []bound // of the first kinds
	room    units.Mass
	unit    units.Mass // that all plates are multiples of; 0 where ways are few
	made    [][]uint64 // for the first so many kinds, which multiples of unit they make
	known   map[state]answer
	work    int
	tooMany bool
}

// A bound is all that some kinds weigh together, and how many they are.
type bound struct {
	mass   units.Mass
	plates int
}

const (
	fewWays  = 4096    // that are gone through one by one
	maxWords = 1 << 22 // of bits, 32 MiB
	maxWork  = 1 << 22 // states of a search
)

// build works the bits out.
func (pl *place) build() {
	for _, p := range pl.kinds {
		pl.unit = divisor(pl.unit, p.Mass.Mass)
	}
	size := pl.room/pl.unit + 1
	words := int64(size+63) / 64
	if words*int64(len(pl.kinds)) > maxWords {
		pl.tooMany = true
		return
	}
	all := make([]uint64, words*int64(len(pl.kinds)+1))
	all[0] = 1
	pl.made = append(pl.made, all[:words])
	for i, p := range pl.kinds {
		next := all[int64(i+1)*words : int64(i+2)*words]
		copy(next, pl.made[i])
		for lot, rest := 1, p.Count; rest > 0; lot, rest = 2*lot, rest-lot {
			lot = min(lot, rest)
			shiftInto(next, int(p.Mass.Mass/pl.unit)*lot)
		}
		pl.made = append(pl.made, next)
	}
	pl.known = map[state]answer{}
}

func divisor(a, b units.Mass) units.Mass {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// shiftInto sets, for each bit of b, the one so many places above.
func shiftInto(b []uint64, by int) {
	words, rest := by/64, uint(by%64)
	for i := len(b) - 1; i >= words; i-- {
		x := b[i-words] << rest
		if rest > 0 && i > words {
			x |= b[i-words-1] >> (64 - rest)
		}
		b[i] |= x
	}
}

// atMost returns the greatest sum above zero up to room of at most limit plates, and the
// fewest plates that make it: more of the heaviest first. n is 0 if there is none.
func (pl *place) atMost(room units.Mass, limit int) (sum units.Mass, counts []int, n int) {
	if pl.unit == 0 {
		e := enumeration{pl: pl, low: 1, high: room, limit: limit}
		return e.best()
	}
	for at := int(min(room, pl.room) / pl.unit); ; at-- {
		if at = below(pl.last(), at); at <= 0 || pl.tooMany {
			return 0, nil, 0
		}
		if counts, n = pl.fewest(at, limit); n > 0 {
			return units.Mass(at) * pl.unit, counts, n
		}
	}
}

// atLeast is atMost for the least sum from low to high.
func (pl *place) atLeast(low, high units.Mass, limit int) (sum units.Mass, counts []int, n int) {
	if pl.unit == 0 {
		e := enumeration{pl: pl, low: low, high: high, limit: limit, least: true}
		return e.best()
	}
	for at := int((min(low, pl.room+1) + pl.unit - 1) / pl.unit); ; at++ {
		at = above(pl.last(), at)
		if at < 0 || units.Mass(at)*pl.unit > high || pl.tooMany {
			return 0, nil, 0
		}
		if counts, n = pl.fewest(at, limit); n > 0 {
			return units.Mass(at) * pl.unit, counts, n
		}
	}
}

func (pl *place) last() []uint64 { return pl.made[len(pl.kinds)] }

// below returns the highest bit up to at, -1 for none.
func below(b []uint64, at int) int {
	if at < 0 {
		return -1
	}
	for i, mask := at/64, ^uint64(0)>>(63-uint(at%64)); i >= 0; i, mask = i-1, ^uint64(0) {
		if x := b[i] & mask; x != 0 {
			return i*64 + 63 - bits.LeadingZeros64(x)
		}
	}
	return -1
}

// above returns the lowest bit from at on, -1 for none.
func above(b []uint64, at int) int {
	mask := ^uint64(0) << uint(at%64)
	for i := at / 64; i < len(b); i++ {
		if x := b[i] & mask; x != 0 {
			return i*64 + bits.TrailingZeros64(x)
		}
		mask = ^uint64(0)
	}
	return -1
}

// An enumeration goes through all that a place can take.
type enumeration struct {
	pl        *place
	low, high units.Mass
	limit     int
	least     bool // the least sum is wanted and not the greatest

	counts, chosen []int
	sum            units.Mass
	plates         int
}

func (e *enumeration) best() (units.Mass, []int, int) {
	room := make([]int, 2*len(e.pl.kinds))
	e.counts, e.chosen = room[:len(e.pl.kinds)], room[len(e.pl.kinds):]
	e.from(len(e.pl.kinds), 0, 0)
	return e.sum, e.chosen, e.plates
}

// from chooses among the first kinds, most of the heaviest first, so that of two ways that
// weigh and count the same the first one met is the one wanted.
func (e *enumeration) from(kinds int, sum units.Mass, plates int) {
	if sum+e.pl.upTo[kinds].mass < e.low || e.plates > 0 && e.hopeless(sum, sum+e.pl.upTo[kinds].mass) {
		return
	}
	if kinds == 0 {
		if e.plates == 0 || sum != e.sum || plates < e.plates {
			copy(e.chosen, e.counts)
			e.sum, e.plates = sum, plates
		}
		return
	}
	p := &e.pl.kinds[kinds-1]
	for n := min(p.Count, e.limit-plates, int(min((e.high-sum)/p.Mass.Mass, maxCount))); n >= 0; n-- {
		e.counts[kinds-1] = n
		e.from(kinds-1, sum+p.Mass.Mass*units.Mass(n), plates+n)
	}
}

// hopeless reports whether no sum from low to high is as good as the best.
func (e *enumeration) hopeless(low, high units.Mass) bool {
	if e.least {
		return low > e.sum
	}
	return high < e.sum
}

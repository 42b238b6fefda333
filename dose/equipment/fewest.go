package equipment

import "example.org/posology/units"

// A state of a search: a sum to be made of the first kinds.
type state struct{ kinds, sum int }

// An answer to a state: the fewest plates, or that they are more than n.
type answer struct {
	n     int
	exact bool
}

// fewest returns how many of each kind make a sum, which can be made, with the fewest
// plates: more of the heaviest first, then of the second heaviest, and so on. n is 0 if it
// takes more than limit.
func (pl *place) fewest(sum, limit int) (counts []int, n int) {
	if n = pl.search(len(pl.kinds), sum, min(limit, pl.upTo[len(pl.kinds)].plates)); n < 0 {
		return nil, 0
	}
	counts = make([]int, len(pl.kinds))
	rest := n
	for kinds := len(pl.kinds); kinds > 0; kinds-- {
		w, most := pl.steps(kinds, sum)
		for c := min(most, rest); c >= 0; c-- {
			if pl.search(kinds-1, sum-c*w, rest-c) == rest-c {
				counts[kinds-1], sum, rest = c, sum-c*w, rest-c
				break
			}
		}
	}
	return counts, n
}

// steps returns the mass of a kind in units, and how many of it a sum can have.
func (pl *place) steps(kinds, sum int) (w, most int) {
	p := &pl.kinds[kinds-1]
	w = int(p.Mass.Mass / pl.unit)
	return w, min(p.Count, sum/w)
}

// search returns the fewest plates of the first kinds that make a sum, -1 if that takes
// more than limit.
func (pl *place) search(kinds, sum, limit int) int {
	switch {
	case sum == 0 && limit >= 0:
		return 0
	case limit <= 0 || pl.made[kinds][sum/64]>>uint(sum%64)&1 == 0:
		return -1
	case pl.atBest(kinds, sum) > limit:
		return -1
	}
	at := state{kinds, sum}
	if a, known := pl.known[at]; known {
		switch {
		case a.exact && a.n <= limit:
			return a.n
		case a.exact || a.n >= limit:
			return -1
		}
	}
	if pl.work++; pl.work > maxWork {
		pl.tooMany = true
		return -1
	}
	best := -1
	w, most := pl.steps(kinds, sum)
	for c := min(most, limit); c >= 0; c-- {
		rest := sum - c*w
		if c+pl.atBest(kinds-1, rest) > limit {
			break // fewer of this kind take more of the lighter ones
		}
		if n := pl.search(kinds-1, rest, limit-c); n >= 0 {
			best = n + c
			limit = best - 1
		}
	}
	if best >= 0 {
		pl.known[at] = answer{best, true}
	} else {
		pl.known[at] = answer{limit, false}
	}
	return best
}

// atBest returns a bound from below on the plates of the first kinds that make a sum: the
// heaviest, as if the last could be cut.
func (pl *place) atBest(kinds, sum int) int {
	n := 0
	rest := units.Mass(sum) * pl.unit
	for ; kinds > 0 && rest > 0; kinds-- {
		p := &pl.kinds[kinds-1]
		c := min(units.Mass(p.Count), (rest+p.Mass.Mass-1)/p.Mass.Mass)
		n, rest = n+int(c), rest-c*p.Mass.Mass
	}
	if rest > 0 {
		return int(^uint(0) >> 1) // all of them are too light
	}
	return n
}

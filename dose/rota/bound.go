package rota

import (
	"cmp"
	"math/bits"
	"slices"
)

// A need is something that at most room units of can be in use in one slot,
// and how many units each kind of load takes of it, however it is made.
type need struct {
	room  int
	units []int // by kind
}

// findNeeds lists what can be scarce: each kind of load, of which the kit makes
// so many at once, and each thing in the kit.
func (p *problem) findNeeds() []need {
	if p.partial {
		return nil // with other ways there may be room for more
	}
	var needs []need
	for kind, k := range p.kinds {
		n := need{room: k.atOnce, units: make([]int, len(p.kinds))}
		n.units[kind] = 1
		needs = append(needs, n)
	}
	for thing, stock := range p.stock {
		n := need{room: mostShare * stock, units: make([]int, len(p.kinds))}
		for kind, k := range p.kinds {
			uses := slices.MinFunc(k.uses, func(a, b []int) int { return cmp.Compare(a[thing], b[thing]) })[thing]
			n.units[kind] = mostShare / p.shares[kind] * uses
		}
		if n.divide() {
			needs = append(needs, n)
		}
	}
	return slices.DeleteFunc(needs, func(n need) bool { return n.room >= len(p.order)*slices.Max(n.units) })
}

// divide counts in lots where all loads take the same lot, so that what is left
// over counts for nothing. It is false if no load takes any.
func (n *need) divide() bool {
	lot, alike := 0, true
	for _, u := range n.units {
		if u > 0 {
			alike = alike && (lot == 0 || lot == u)
			lot = u
		}
	}
	if lot > 0 && alike {
		n.room /= lot
		for i := range n.units {
			n.units[i] /= lot
		}
	}
	return lot > 0
}

// A demand is what one client still takes of a need, and how many exercises
// are left to that client.
type demand struct{ units, left int }

// bound returns how much waiting and how many slots there must yet be, with
// the exercises in todo, a set of bits for each client.
func (p *problem) bound(todo []uint32) (waiting, slots int) {
	for _, set := range todo {
		slots = max(slots, bits.OnesCount32(set))
	}
	var room [maxClients]demand
	for _, n := range p.needs {
		demands := room[:0]
		for client, set := range todo {
			if d := p.demand(n, client, set); d.units > 0 {
				demands = append(demands, d)
			}
		}
		late, last := n.lateness(demands)
		slots = max(slots, last)
		if p.together {
			waiting = max(waiting, late)
		}
	}
	return waiting, slots
}

func (p *problem) demand(n need, client int, set uint32) demand {
	d := demand{left: bits.OnesCount32(set)}
	for ; set != 0; set &= set - 1 {
		if kind := p.loads[client][bits.TrailingZeros32(set)]; kind != bodyOnly {
			d.units += n.units[kind]
		}
	}
	return d
}

// lateness returns the least sum of slots by which last uses come after a
// client's exercises could have ended, and the slot of the last use of all.
//
// The k-th of the clients to be done with the need is done no earlier than if
// the smallest demands were met first. Matched in order with the exercises that
// the clients have left, which is the best match, what lies above is waiting.
func (n need) lateness(demands []demand) (late, last int) {
	var lefts [maxClients]int
	for i, d := range demands {
		lefts[i] = d.left
	}
	slices.Sort(lefts[:len(demands)])
	slices.SortFunc(demands, func(a, b demand) int { return cmp.Compare(a.units, b.units) })
	sum := 0
	for i, d := range demands {
		sum += d.units
		last = (sum + n.room - 1) / n.room
		late += max(0, last-lefts[i])
	}
	return late, last
}

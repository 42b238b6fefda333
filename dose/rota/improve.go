package rota

import (
	"math/bits"
	"slices"
)

// maxSeat is the most items of a client that is placed again: the number of sets
// of items that are looked at doubles with each.
const maxSeat = 12

// improve changes what is there step by step as long as it gets better.
func (p *problem) improve(s *solution) {
	effort := improveEffort
	for p.reseat(s, &effort) || p.exchangeAll(s, &effort) {
	}
}

// exchangeAll exchanges each two slots, of all clients and of each, and reports
// whether that made a better rota.
func (p *problem) exchangeAll(s *solution, effort *int) bool {
	better := false
	for a := range s.rows {
		for b := a + 1; b < len(s.rows); b++ {
			for client := -1; client < len(p.loads) && *effort > 0; client++ {
				*effort -= len(s.rows) * len(p.loads)
				better = p.exchange(s, a, b, client) || better
			}
		}
	}
	s.rows = s.rows.busy()
	return better
}

// exchange swaps two slots of a client, of all where that is below 0, and keeps
// what is better.
func (p *problem) exchange(s *solution, a, b, client int) bool {
	swap := func() {
		if client < 0 {
			s.rows[a], s.rows[b] = s.rows[b], s.rows[a]
		} else {
			s.rows[a][client], s.rows[b][client] = s.rows[b][client], s.rows[a][client]
		}
	}
	swap()
	cost := p.cost(s.rows)
	possible := func(row []int8) bool { return client < 0 || p.fits.ask(p.counts(row)) }
	if cost.compare(s.cost) < 0 && possible(s.rows[a]) && possible(s.rows[b]) {
		s.cost = cost
		return true
	}
	swap()
	return false
}

// reseat takes one client or two out of the rota, puts each back into the best
// slots that the others leave, and keeps what is better. It reports whether
// anything was.
func (p *problem) reseat(s *solution, effort *int) bool {
	better := false
	for a := range p.loads {
		for b := range p.loads {
			if *effort <= 0 {
				return better
			}
			rows := s.rows.without(a, b)
			if !p.seat(&rows, a, effort) || a != b && !p.seat(&rows, b, effort) {
				continue
			}
			if cost := p.cost(rows); cost.compare(s.cost) < 0 {
				s.rows, s.cost, better = rows, cost, true
			}
		}
	}
	return better
}

// A seating looks for the best slots of one client, slot after slot, by the set
// of items that are done. Its costs put waiting before turned pairs.
type seating struct {
	p      *problem
	client int
	fit    []uint32 // of each slot, the items that the others leave room for
	others int      // the last slot that others need
	cost   [][]int32
	by     [][]int8 // the item that led there, or idle
}

const (
	unreached int32 = -1
	oneWait   int32 = 1 << 16 // more than any sum of turned pairs
)

// seat places all items of a client who does nothing yet. It is false if there
// are too many to look at.
func (p *problem) seat(rows *grid, client int, effort *int) bool {
	items := len(p.loads[client])
	if items > maxSeat {
		return false
	}
	s := seating{p: p, client: client}
	*rows = rows.busy()
	s.others = len(*rows)
	for range items {
		*rows = append(*rows, slices.Repeat([]int8{idle}, len(p.loads)))
	}
	*effort -= len(*rows) * (items<<items/8 + len(p.kinds))
	for _, row := range *rows {
		s.fit = append(s.fit, p.leaves(row, client))
	}
	s.spread()
	s.write(*rows)
	*rows = rows.busy()
	return true
}

// leaves returns the items of a client that fit into a slot beside the others.
func (p *problem) leaves(row []int8, client int) uint32 {
	counts := p.counts(row)
	fit := uint32(0)
	for item, kind := range p.loads[client] {
		if kind == bodyOnly {
			fit |= 1 << item
			continue
		}
		counts[kind]++
		if p.fits.ask(counts) {
			fit |= 1 << item
		}
		counts[kind]--
	}
	return fit
}

// spread finds the least cost of every set of done items after every slot.
func (s *seating) spread() {
	all := 1 << len(s.p.loads[s.client])
	for slot := range len(s.fit) + 1 {
		s.cost = append(s.cost, slices.Repeat([]int32{unreached}, all))
		s.by = append(s.by, make([]int8, all))
		if slot == 0 {
			s.cost[0][0] = 0
			continue
		}
		for done, cost := range s.cost[slot-1] {
			if cost != unreached {
				s.step(slot, uint32(done), cost)
			}
		}
	}
}

// step goes on from the items done before a slot.
func (s *seating) step(slot int, done uint32, cost int32) {
	todo := (uint32(1)<<len(s.p.loads[s.client]) - 1) &^ done
	wait := oneWait
	if todo == 0 || done == 0 && !s.p.together {
		wait = 0
	}
	s.reach(slot, done, cost+wait, idle)
	for set := todo & s.fit[slot-1]; set != 0; set &= set - 1 {
		item := bits.TrailingZeros32(set)
		turned := bits.OnesCount32(todo & (1<<item - 1))
		s.reach(slot, done|1<<item, cost+int32(turned), int8(item))
	}
}

func (s *seating) reach(slot int, done uint32, cost int32, by int8) {
	if old := s.cost[slot][done]; old == unreached || cost < old {
		s.cost[slot][done], s.by[slot][done] = cost, by
	}
}

// write enters the best seating into the rows: the least waiting, then the
// fewest slots beyond those that the others need, then the fewest turned pairs.
func (s *seating) write(rows grid) {
	done := uint32(1)<<len(s.p.loads[s.client]) - 1
	end, best := 0, price{}
	for slot, costs := range s.cost {
		if c := costs[done]; c != unreached {
			cost := price{int(c / oneWait), max(slot, s.others), int(c % oneWait)}
			if end == 0 || cost.compare(best) < 0 {
				end, best = slot, cost
			}
		}
	}
	for slot := end; slot > 0; slot-- {
		item := s.by[slot][done]
		rows[slot-1][s.client] = item
		if item != idle {
			done &^= 1 << item
		}
	}
}

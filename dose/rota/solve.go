package rota

import (
	"cmp"
	"math"
	"math/bits"
	"slices"
)

// What the steps of a solution may spend, in looks at a need, at a kind of load
// or at a cell of the rota. Counted so, and not by the clock, it gives the same
// rota on every machine.
const (
	greedyEffort  = 500_000
	provingEffort = 200_000 // for each amount of waiting or slots
	provingTries  = 6
	exactEffort   = 1_000_000
	improveEffort = 2_000_000
)

// A price is what a rota is judged by, in this order.
type price struct{ waiting, slots, turned int }

func (a price) compare(b price) int {
	return cmp.Or(cmp.Compare(a.waiting, b.waiting), cmp.Compare(a.slots, b.slots), cmp.Compare(a.turned, b.turned))
}

// A grid is a rota: for each slot, the item of each client, or idle.
type grid [][]int8

const (
	idle   int8 = -1
	unsaid int8 = -2 // not yet decided
)

// without returns a copy in which the clients do nothing.
func (g grid) without(clients ...int) grid {
	rows := make(grid, len(g))
	for i, row := range g {
		rows[i] = slices.Clone(row)
		for _, client := range clients {
			rows[i][client] = idle
		}
	}
	return rows
}

// busy returns the slots in which somebody does something.
func (g grid) busy() grid {
	still := func(row []int8) bool { return slices.Max(row) == idle }
	if !slices.ContainsFunc(g, still) {
		return g
	}
	return slices.DeleteFunc(slices.Clone(g), still)
}

// A solution is a rota with what is known about the best.
type solution struct {
	rows  grid
	cost  price
	least price // bounds on waiting and slots
	proof Proof
}

func (s *solution) take(rows grid, cost price) {
	if cost.compare(s.cost) < 0 {
		s.rows, s.cost = rows, cost
	}
}

// solve returns the best rota that it finds, never worse than start, if there
// is one, or than one client after the other.
func (p *problem) solve(start grid) solution {
	s := solution{rows: p.oneByOne(), proof: BestFound}
	s.cost = p.cost(s.rows)
	if start != nil {
		s.take(start.without(), p.cost(start))
	}
	s.least.waiting, s.least.slots = p.bound(p.all())
	p.improve(&s)
	p.descend(&s)
	waitingProven := p.prove(&s)
	p.improve(&s)
	last := p.search(true, s.cost, false, exactEffort)
	whole := last.run()
	if last.best != nil {
		s.rows, s.cost = last.best, last.got
	}
	switch {
	case p.partial:
	case whole:
		s.proof, s.least = BestOfAll, s.cost
	case waitingProven && s.cost.slots == s.least.slots:
		s.proof = LeastWaiting
	}
	if s.proof != BestOfAll {
		p.improve(&s)
	}
	return s
}

// oneByOne lets one client after the other do everything.
func (p *problem) oneByOne() grid {
	var rows grid
	for client, loads := range p.loads {
		for item := range loads {
			row := slices.Repeat([]int8{idle}, len(p.loads))
			row[client] = int8(item)
			rows = append(rows, row)
		}
	}
	return rows
}

// descend looks for less waiting, then fewer slots, from what is there.
func (p *problem) descend(s *solution) {
	if s.cost.waiting == s.least.waiting && s.cost.slots == s.least.slots {
		return
	}
	search := p.search(false, price{s.cost.waiting, s.cost.slots, 0}, true, greedyEffort)
	search.run()
	if search.best != nil {
		s.take(search.best, search.got)
	}
}

// prove tries amounts of waiting from the least that there can be, then numbers
// of slots, and raises the bounds by what it rules out. It reports whether no
// rota has less waiting; the bound on slots then is for that much waiting.
func (p *problem) prove(s *solution) bool {
	p.climb(s, &s.least.waiting, &s.cost.waiting, func(n int) price { return price{n, math.MaxInt, math.MaxInt} })
	p.climb(s, &s.least.slots, &s.cost.slots, func(n int) price { return price{s.cost.waiting, n, math.MaxInt} })
	return s.cost.waiting == s.least.waiting
}

// climb goes from the bound towards what is had, until a rota is found.
func (p *problem) climb(s *solution, least, have *int, limit func(int) price) {
	raising := true
	for n, tries := *least, provingTries; n < *have && tries > 0; n, tries = n+1, tries-1 {
		found, none := p.reach(s, limit(n))
		if found {
			return
		}
		if raising = raising && none; raising {
			*least = n + 1
		}
	}
}

// reach looks for a rota within the limit and tells whether there is none.
func (p *problem) reach(s *solution, limit price) (found, none bool) {
	search := p.search(false, limit, false, provingEffort)
	search.first = true
	ended := search.run()
	if search.best == nil {
		return false, ended && !p.partial
	}
	s.take(search.best, search.got)
	return true, false
}

// cost judges a rota; a slot in which nobody does anything counts for nothing.
func (p *problem) cost(rows grid) price {
	rows = rows.busy()
	c := price{slots: len(rows)}
	for client, loads := range p.loads {
		todo, started := uint32(1)<<len(loads)-1, p.together
		for _, row := range rows {
			if item := row[client]; item >= 0 {
				started = true
				c.turned += bits.OnesCount32(todo & (1<<item - 1))
				todo &^= 1 << item
			} else if started && todo != 0 {
				c.waiting++
			}
		}
	}
	return c
}

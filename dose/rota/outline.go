package rota

import (
	"math"
	"slices"
)

// outlines are the problems of a class without some exercises, so far as their bounds
// need them. They depend on which kinds of load are left and which of those are shared, and
// are made once for each.
type outlines struct {
	base  *problem
	at    []int // of each client of the class, the place in base
	items []outlined
	known map[string]*problem
}

// An outlined is an exercise in numbers.
type outlined struct {
	client, item int // in base
	kind         int
	seconds      int
	of           alike
}

func (o *outlines) begin(c Class) {
	o.base, _ = newRotaProblem(c) // the class was checked
	o.at, o.known = make([]int, len(c.Clients)), map[string]*problem{}
	for at, i := range o.base.order {
		o.at[i] = at
		for j, item := range c.Clients[i].Items {
			o.items = append(o.items, outlined{at, j, o.base.loads[at][j], int(math.Ceil(c.length(item))), alikeOf(item)})
		}
	}
}

// without is what is left to do without some exercises.
func (o *outlines) without(out []spot) []uint32 {
	todo := o.base.all()
	for _, s := range out {
		todo[o.at[s.client]] &^= 1 << s.item
	}
	return todo
}

// of returns the problem of what is left, and the length of its slots in seconds.
func (o *outlines) of(todo []uint32) (*problem, int) {
	kinds, seconds := make([]alike, len(o.base.kinds)), 0
	for i := range o.items {
		one := &o.items[i]
		if todo[one.client]&(1<<one.item) == 0 {
			continue
		}
		seconds = max(seconds, one.seconds)
		if one.kind != bodyOnly {
			kinds[one.kind] = kinds[one.kind].with(one.of)
		}
	}
	shares := make([]byte, len(kinds)) // 0 for a kind that is left out
	for kind, all := range kinds {
		switch {
		case all.sets == 0:
		case o.base.sharing() && all.seconds() <= float64(seconds):
			shares[kind] = mostShare
		default:
			shares[kind] = 1
		}
	}
	p := o.known[string(shares)]
	if p == nil {
		p = o.outline(shares)
		o.known[string(shares)] = p
	}
	return p, seconds
}

// outline makes a problem of those kinds that are shared by one or two.
func (o *outlines) outline(shares []byte) *problem {
	p := *o.base
	p.kinds, p.shares, p.partial = slices.Clone(p.kinds), make([]int, len(shares)), false
	p.fits = fitCache{p: &p, known: map[string]bool{}, left: slices.Clone(p.stock)}
	for kind, n := range shares {
		p.shares[kind] = int(n)
		if n > 0 {
			p.partial = p.partial || !p.kinds[kind].whole
			continue
		}
		p.shares[kind] = 1
		p.kinds[kind].uses = [][]int{make([]int, len(p.stock))} // takes nothing
	}
	for kind := range p.kinds {
		p.kinds[kind].atOnce = p.mostAtOnce(kind)
	}
	p.needs = p.findNeeds()
	return &p
}

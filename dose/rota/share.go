package rota

import (
	"math"

	"example.org/posology/dose"
)

const (
	mostShare       = 2  // clients that one weight serves in a slot
	handOverSeconds = 10 // from one to the other
)

// findShares finds for each kind of load whether two can share it.
func (p *problem) findShares() {
	p.shares = make([]int, len(p.kinds))
	slot, _, _ := p.slotSeconds()
	for kind := range p.shares {
		p.shares[kind] = 1
		if p.sharing() && p.pairSeconds(kind) <= float64(slot) {
			p.shares[kind] = mostShare
		}
	}
}

// sharing reports whether two may share a load.
func (p *problem) sharing() bool { return p.class.Shared && !p.class.RestApart }

// pairSeconds is how long any two take that share a load of this kind.
func (p *problem) pairSeconds(kind int) float64 {
	all := alike{sets: 1}
	for at, i := range p.order {
		for j, item := range p.class.Clients[i].Items {
			if p.loads[at][j] == kind {
				all = all.with(alikeOf(item))
			}
		}
	}
	return all.seconds()
}

// An alike is the most of what exercises with one kind of load take.
type alike struct {
	sets int
	work float64 // seconds of a set
	rest int     // seconds
}

func alikeOf(item dose.Prescription) alike {
	least, _ := item.Rest.Min()
	return alike{item.Sets, setWork(item), least}
}

func (a alike) with(b alike) alike {
	return alike{max(a.sets, b.sets), math.Max(a.work, b.work), max(a.rest, b.rest)}
}

// seconds is how long any two take: each rests as long as prescribed, and at least while
// the other lifts.
func (a alike) seconds() float64 {
	round := math.Max(a.work+float64(a.rest), float64(mostShare*(a.work+handOverSeconds)))
	return float64(float64(a.sets-1)*round) + float64(mostShare*a.work) + handOverSeconds
}

// setWork is the length of one set, of both sides where it is one-sided.
func setWork(p dose.Prescription) float64 { return workSeconds(p) / float64(p.Sets) }

// needed is how many loads of a kind so many clients take in a slot.
func (p *problem) needed(kind, clients int) int {
	return (clients + p.shares[kind] - 1) / p.shares[kind]
}

// holders are the clients for whom a load is put together, by its kind, and who shares
// it with them: only of the kinds of which the kit does not make one for each.
func (p *problem) holders(row []int8) (clients []int, partner map[int]int) {
	of := make([][]int, len(p.kinds))
	for client, item := range row {
		if item >= 0 && p.loads[client][item] != bodyOnly {
			of[p.loads[client][item]] = append(of[p.loads[client][item]], client)
		}
	}
	taken := make([]int, len(p.kinds))
	for kind, all := range of {
		taken[kind] = p.needed(kind, len(all))
	}
	for kind, all := range of {
		least := taken[kind]
		if taken[kind] = len(all); len(all) > least && p.fits.choose(kindsOf(taken), nil, len(row)) == nil {
			taken[kind] = least
		}
	}
	partner = map[int]int{}
	for kind, all := range of {
		for pairs := len(all) - taken[kind]; len(all) > 0; pairs-- {
			clients = append(clients, all[0])
			if pairs > 0 {
				partner[all[0]] = all[1]
				all = all[1:]
			}
			all = all[1:]
		}
	}
	return clients, partner
}

// kindsOf lists each kind as often as it is taken.
func kindsOf(taken []int) []int {
	var kinds []int
	for kind, n := range taken {
		for range n {
			kinds = append(kinds, kind)
		}
	}
	return kinds
}

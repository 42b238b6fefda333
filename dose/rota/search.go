package rota

import (
	"cmp"
	"encoding/binary"
	"math"
	"math/bits"
	"slices"
)

// A searcher fills slot after slot, depth first, and turns back where the
// bound or a state met before rules out anything within the limit.
type searcher struct {
	p      *problem
	byName bool  // try clients and items in the order that settles ties; else the scarce ones first
	limit  price // not to be exceeded
	strict bool  // and not to be equalled
	first  bool  // be content with the first rota within the limit
	most   int   // slots, however little waiting there is; 0 where limit says all
	effort int   // what may still be spent; below 0: the search gave up

	todo   []uint32 // of each client, a set of items
	rows   grid
	counts []uint8 // loads in the present slot
	cost   price
	seen   map[string]price
	scarce []int // of each kind, how scarce; only without byName

	best grid
	got  price
}

// maxSeen bounds the states that a search remembers.
const maxSeen = 1 << 17

func (p *problem) search(byName bool, limit price, strict bool, effort int) *searcher {
	return &searcher{
		p: p, byName: byName, limit: limit, strict: strict, effort: effort,
		todo: p.all(), counts: make([]uint8, len(p.kinds)), seen: map[string]price{},
		scarce: make([]int, len(p.kinds)),
	}
}

// run reports whether the search ended by itself: what it did not find does
// not exist.
func (s *searcher) run() bool {
	s.slot()
	return s.effort >= 0
}

func (s *searcher) over() bool { return s.effort < 0 || s.first && s.best != nil }

// within reports whether a cost that can only grow is within the limit.
func (s *searcher) within(c price) bool {
	order := c.compare(s.limit)
	return order < 0 || order == 0 && !s.strict
}

// slot decides the next slot and all after it.
func (s *searcher) slot() {
	s.effort -= len(s.p.needs) * len(s.todo)
	waiting, slots := s.p.bound(s.todo)
	least := price{s.cost.waiting + waiting, s.cost.slots + slots, s.cost.turned}
	if !s.within(least) || s.most > 0 && least.slots > s.most || s.metBefore() {
		return
	}
	if slots == 0 {
		s.best, s.got = s.rows.without(), s.cost
		s.limit, s.strict = s.cost, true
		return
	}
	if !s.byName {
		s.weigh()
	}
	row := make([]int8, len(s.todo))
	for i, set := range s.todo {
		row[i] = unsaid
		if set == 0 {
			row[i] = idle
		}
	}
	counts := s.counts
	s.rows, s.counts = append(s.rows, row), make([]uint8, len(counts))
	s.cost.slots++
	s.fill(row, 0)
	s.cost.slots--
	s.rows, s.counts = s.rows[:len(s.rows)-1], counts
}

// metBefore remembers the items that are left and reports whether they were
// left at no greater cost before: what comes after costs the same.
func (s *searcher) metBefore() bool {
	key := make([]byte, 0, 4*maxClients)
	for _, set := range s.todo {
		key = binary.LittleEndian.AppendUint32(key, set)
	}
	if before, met := s.seen[string(key)]; met && before.compare(s.cost) <= 0 && (s.most == 0 || before.slots <= s.cost.slots) {
		return true
	}
	if len(s.seen) < maxSeen {
		s.seen[string(key)] = s.cost
	}
	return false
}

// weigh finds how scarce each kind of load is, in thousandths of a slot.
func (s *searcher) weigh() {
	clear(s.scarce)
	for _, n := range s.p.needs {
		units := 0
		for client, set := range s.todo {
			units += s.p.demand(n, client, set).units
		}
		for kind, u := range n.units {
			if u > 0 {
				s.scarce[kind] = max(s.scarce[kind], 1000*units/n.room)
			}
		}
	}
}

// fill decides for the clients of the slot that have no item yet.
func (s *searcher) fill(row []int8, placed int) {
	if s.effort -= 1 + len(s.counts); s.over() || s.cost.waiting > s.limit.waiting {
		return
	}
	client, options := s.next(row)
	if client < 0 {
		if placed > 0 { // a slot in which all wait is never needed
			s.slot()
		}
		return
	}
	for _, item := range options {
		s.use(row, client, item, placed)
	}
	wait := 0
	if s.p.together || bits.OnesCount32(s.todo[client]) < len(s.p.loads[client]) {
		wait = 1
	}
	row[client] = idle
	s.cost.waiting += wait
	s.fill(row, placed)
	s.cost.waiting -= wait
	row[client] = unsaid
}

// use tries an item of a client in the present slot.
func (s *searcher) use(row []int8, client int, item int8, placed int) {
	set, kind := s.todo[client], s.p.loads[client][item]
	turned := bits.OnesCount32(set & (1<<item - 1))
	if kind != bodyOnly {
		s.counts[kind]++
	}
	row[client], s.todo[client] = item, set&^(1<<item)
	s.cost.turned += turned
	s.fill(row, placed+1)
	s.cost.turned -= turned
	row[client], s.todo[client] = unsaid, set
	if kind != bodyOnly {
		s.counts[kind]--
	}
}

// next returns the client to decide for, and the items that fit in their order:
// by name, or the client with the fewest that fit and the scarcest items first.
func (s *searcher) next(row []int8) (int, []int8) {
	open := s.open()
	who, fewest := -1, math.MaxInt
	for client, item := range row {
		if item != unsaid {
			continue
		}
		if n := bits.OnesCount32(s.fitting(client, open)); n < fewest {
			who, fewest = client, n
		}
		if s.byName {
			break
		}
	}
	if who < 0 {
		return who, nil
	}
	items := make([]int8, 0, fewest)
	for set := s.fitting(who, open); set != 0; set &= set - 1 {
		items = append(items, int8(bits.TrailingZeros32(set)))
	}
	if !s.byName {
		slices.SortStableFunc(items, func(a, b int8) int { return cmp.Compare(s.scarcity(who, b), s.scarcity(who, a)) })
	}
	return who, items
}

func (s *searcher) scarcity(client int, item int8) int {
	if kind := s.p.loads[client][item]; kind != bodyOnly {
		return s.scarce[kind]
	}
	return 0
}

// open tells of each kind of load whether the kit makes one more in this slot.
func (s *searcher) open() []bool {
	open := make([]bool, len(s.counts))
	for kind := range open {
		s.counts[kind]++
		open[kind] = s.p.fits.ask(s.counts)
		s.counts[kind]--
	}
	return open
}

// fitting returns the items of a client that are left and fit.
func (s *searcher) fitting(client int, open []bool) uint32 {
	fit := uint32(0)
	for set := s.todo[client]; set != 0; set &= set - 1 {
		item := bits.TrailingZeros32(set)
		if kind := s.p.loads[client][item]; kind == bodyOnly || open[kind] {
			fit |= 1 << item
		}
	}
	return fit
}

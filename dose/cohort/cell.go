package cohort

import (
	"math"
	"math/bits"
	"slices"
	"sort"

	"example.org/posology/dose/volume"
	"example.org/posology/units"
)

// A cell is what a person did of an exercise in a week.
type cell struct {
	held   uint64 // nanograms times repetitions
	when   uint32 // week and exercise, see cellKey
	done   uint32 // sets
	left   uint32 // of them that count, by side
	right  uint32
	count  uint32 // repetitions, seconds or metres of both sides
	heldHi uint16 // beyond 64 bits
	days   uint8  // with a set, from Monday
	_      uint8
}

// maxSets of an exercise in a week keep every sum of a cell in its type: a set adds at
// most 2000 repetitions of two times 1000 kg, 4·10^18 ng of the 2^80 that fit.
const maxSets = 1 << 18

func cellKey(w volume.ISOWeek, exercise uint16) uint32 { return uint32(w)<<12 | uint32(exercise) }

func (c *cell) week() volume.ISOWeek { return volume.ISOWeek(c.when >> 12) }
func (c *cell) exercise() uint16     { return uint16(c.when & (maxExercises - 1)) }

// add adds what another cell of the same key has, which fits.
func (c *cell) add(d *cell) {
	var carry uint64
	c.held, carry = bits.Add64(c.held, d.held, 0)
	c.heldHi += d.heldHi + uint16(carry)
	c.done, c.left, c.right, c.count = c.done+d.done, c.left+d.left, c.right+d.right, c.count+d.count
	c.days |= d.days
}

// load returns what was held, times repetitions.
func (c *cell) load() volume.VolumeLoad {
	if c.heldHi == 0 && c.held <= math.MaxInt64 {
		all, _ := volume.Lifted(units.Mass(c.held), 1)
		return all
	}
	kg, rest := bits.Div64(uint64(c.heldHi), c.held, uint64(units.Kilogram))
	whole, _ := volume.Lifted(units.Kilogram, int(kg&(1<<31-1))) // below 2^31, so that an int of 32 bits holds it
	part, _ := volume.Lifted(units.Mass(rest), 1)
	whole, _ = whole.Add(part)
	if kg >>= 31; kg > 0 { // at most 2^9
		much, _ := volume.Lifted(units.Kilogram, 1<<30)
		for range 2 * kg {
			whole, _ = whole.Add(much)
		}
	}
	return whole
}

// cells keeps cells in order of their keys, in leaves that are filled from either end, so that
// a log from the oldest or the newest day on leaves no room unused.
type cells struct{ leaves [][]cell }

const leafSize = 64

// at returns the cell of a key, a new one if there is none. It is valid until the next.
func (cs *cells) at(key uint32) *cell {
	n := len(cs.leaves)
	if n == 0 {
		cs.leaves = [][]cell{append(make([]cell, 0, 4), cell{when: key})}
		return &cs.leaves[0][0]
	}
	i := n - 1
	if cs.leaves[i][0].when > key {
		i = max(cs.leaf(key), 0)
	}
	leaf := cs.leaves[i]
	k := len(leaf)
	if leaf[k-1].when >= key {
		if k = place(leaf, key); leaf[k].when == key {
			return &leaf[k]
		}
	}
	return cs.insert(i, k, key)
}

// leaf returns the last leaf that does not begin behind the key, -1 if all do.
func (cs *cells) leaf(key uint32) int {
	return sort.Search(len(cs.leaves), func(i int) bool { return cs.leaves[i][0].when > key }) - 1
}

// place returns where the key stands in a leaf, or would.
func place(leaf []cell, key uint32) int {
	return sort.Search(len(leaf), func(i int) bool { return leaf[i].when >= key })
}

// insert puts a new cell at place k of leaf i.
func (cs *cells) insert(i, k int, key uint32) *cell {
	leaf := cs.leaves[i]
	switch {
	case len(leaf) < leafSize:
		cs.leaves[i] = slices.Insert(leaf, k, cell{when: key})
		return &cs.leaves[i][k]
	case k == len(leaf):
		cs.leaves = slices.Insert(cs.leaves, i+1, append(make([]cell, 0, leafSize), cell{when: key}))
		return &cs.leaves[i+1][0]
	case k == 0:
		cs.leaves = slices.Insert(cs.leaves, i, append(make([]cell, 0, leafSize), cell{when: key}))
		return &cs.leaves[i][0]
	}
	const half = leafSize / 2
	upper := append(make([]cell, 0, leafSize), leaf[half:]...)
	cs.leaves[i] = leaf[:half]
	cs.leaves = slices.Insert(cs.leaves, i+1, upper)
	if k > half {
		return cs.insert(i+1, k-half, key)
	}
	return cs.insert(i, k, key)
}

// all yields the cells in order.
func (cs *cells) all(yield func(*cell) bool) {
	for _, leaf := range cs.leaves {
		for i := range leaf {
			if !yield(&leaf[i]) {
				return
			}
		}
	}
}

// get returns the cell of a key, nil if there is none.
func (cs *cells) get(key uint32) *cell {
	i := cs.leaf(key)
	if i < 0 {
		return nil
	}
	leaf := cs.leaves[i]
	if k := place(leaf, key); k < len(leaf) && leaf[k].when == key {
		return &leaf[k]
	}
	return nil
}

// merge adds all cells of other.
func (cs *cells) merge(other *cells) {
	for one := range other.all {
		cs.at(one.when).add(one)
	}
}

// take is merge of cells that nobody needs any more: what lies behind those of cs is not
// copied.
func (cs *cells) take(other cells) {
	for len(other.leaves) > 0 && len(cs.leaves) > 0 {
		first, last := other.leaves[0], cs.leaves[len(cs.leaves)-1]
		if lastKey(last) < first[0].when {
			break
		}
		cs.at(first[0].when).add(&first[0])
		if other.leaves[0] = first[1:]; len(first) == 1 {
			other.leaves = other.leaves[1:]
		}
	}
	cs.leaves = append(cs.leaves, other.leaves...)
}

func lastKey(leaf []cell) uint32 { return leaf[len(leaf)-1].when }

package rota

// fitNodes bounds the search for ways to make the loads of one slot.
const fitNodes = 5000

// A fitCache remembers which loads the kit makes at the same time.
type fitCache struct {
	p     *problem
	known map[string]bool
	left  []int // of each thing; room for the search
	nodes int   // below 0: the search gave up
}

// ask reports whether the kit makes so many of each kind at once. Where that
// could not be found out it says no.
func (f *fitCache) ask(counts []uint8) bool {
	if ok, known := f.known[string(counts)]; known {
		return ok
	}
	taken := make([]int, len(counts))
	for kind, n := range counts {
		taken[kind] = f.p.needed(kind, int(n))
	}
	kinds := kindsOf(taken)
	ok := f.choose(kinds, nil, len(kinds)) != nil
	if !ok && f.nodes < 0 {
		f.p.partial = true
	}
	f.known[string(counts)] = ok
	return ok
}

// choose returns a way for each load so that the kit suffices, nil if there is
// none. At most so many loads may be made in other than the preferred way;
// without preferences that is the first.
func (f *fitCache) choose(kinds, preferred []int, others int) []int {
	copy(f.left, f.p.stock)
	f.nodes = fitNodes
	ways := make([]int, len(kinds))
	if f.place(kinds, preferred, ways, 0, others) {
		return ways
	}
	return nil
}

// place chooses ways for the loads from at on, the preferred one first.
func (f *fitCache) place(kinds, preferred, ways []int, at, others int) bool {
	if at == len(kinds) {
		return true
	}
	uses, first := f.p.kinds[kinds[at]].uses, 0
	if preferred != nil {
		first = preferred[at]
	}
	for i := range uses {
		way := i
		switch {
		case i == 0:
			way = first
		case i <= first:
			way = i - 1
		}
		if f.nodes--; f.nodes < 0 || i > 0 && others == 0 {
			return false
		}
		if !f.take(uses[way]) {
			continue
		}
		ways[at] = way
		if f.place(kinds, preferred, ways, at+1, others-min(i, 1)) {
			return true
		}
		f.putBack(uses[way])
	}
	return false
}

func (f *fitCache) take(uses []int) bool {
	for thing, n := range uses {
		if n > f.left[thing] {
			return false
		}
	}
	for thing, n := range uses {
		f.left[thing] -= n
	}
	return true
}

func (f *fitCache) putBack(uses []int) {
	for thing, n := range uses {
		f.left[thing] += n
	}
}

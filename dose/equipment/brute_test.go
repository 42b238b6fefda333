package equipment_test

import (
	"cmp"
	"errors"
	"maps"
	"slices"
	"strings"
	"sync"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	gocmp "github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// A way is one way to make a mass, with what it is ranked by, least first:
// plates, ready-made or not, entry of the kit, then fewer of the heaviest plate
// counted as worse.
type way struct {
	mass  units.Mass
	rank  []int
	parts []equipment.Part
}

// everyWay tries everything that the kit allows, without any shortcut.
func everyWay(k equipment.Kit, h body.Hold) []way {
	implements := h.Implements()
	switch h {
	case body.Unloaded:
		return []way{{}}
	case body.OnStack:
		return stackWays(k.Stacks)
	case body.OnLimb:
		return readyWays(equipment.PartAnkleWeight, 0, k.AnkleWeights, implements)
	case body.OnBand:
		return nil
	case body.OnBar:
		var ways []way
		for i, b := range k.Bars {
			ways = append(ways, plateWays(equipment.PartBar, i, handleOf(b), k.Plates, 1)...)
		}
		return ways
	}
	ways := append(readyWays(equipment.PartDumbbell, 0, k.Dumbbells, implements), readyWays(equipment.PartKettlebell, 1, k.Kettlebells, implements)...)
	for i, handle := range k.Handles {
		if handle.Count >= implements {
			ways = append(ways, plateWays(equipment.PartHandle, i, handle, k.Plates, implements)...)
		}
	}
	return ways
}

// readyWays are those of what is lifted as it is.
func readyWays(kind equipment.PartKind, rank int, list []equipment.Dumbbell, implements int) (ways []way) {
	for i, d := range list {
		like := 0
		for _, other := range list {
			if other.Mass.Mass == d.Mass.Mass {
				like += other.Count
			}
		}
		if like >= implements {
			ways = append(ways, way{d.Mass.Mass, []int{0, rank, i}, []equipment.Part{{Kind: kind, Mass: d.Mass, Count: 1}}})
		}
	}
	return ways
}

func handleOf(b equipment.Bar) equipment.Handle {
	return equipment.Handle{Name: b.Name, Mass: b.Mass, Collars: b.Collars, PlatesPerEnd: b.PlatesPerEnd}
}

func plateWays(kind equipment.PartKind, entry int, h equipment.Handle, stock []equipment.Plate, implements int) []way {
	parts := []equipment.Part{{Kind: kind, Name: h.Name, Mass: h.Mass, Count: 1}}
	if h.Collars.Mass > 0 {
		parts = append(parts, equipment.Part{Kind: equipment.PartCollars, Mass: h.Collars, Count: 1})
	}
	var ways []way
	forEachChoice(stock, 2*implements, func(sorted []equipment.Plate, x []int) {
		w := way{h.Mass.Mass + h.Collars.Mass, []int{0, 2, entry}, slices.Clone(parts)}
		for i, p := range sorted {
			w.add(equipment.PartPlate, p, x[i], 2)
		}
		if h.PlatesPerEnd == 0 || w.rank[0] <= h.PlatesPerEnd {
			ways = append(ways, w)
		}
	})
	return ways
}

func stackWays(stacks []equipment.Stack) []way {
	var ways []way
	for entry, s := range stacks {
		for _, pin := range s.Pins {
			forEachChoice(s.AddOns, 1, func(sorted []equipment.Plate, x []int) {
				w := way{pin.Mass, []int{0, 1, entry}, []equipment.Part{{Kind: equipment.PartPin, Name: s.Name, Mass: pin, Count: 1}}}
				for i, p := range sorted {
					w.add(equipment.PartAddOn, p, x[i], 1)
				}
				ways = append(ways, w)
			})
		}
	}
	return ways
}

func (w *way) add(kind equipment.PartKind, p equipment.Plate, n, ends int) {
	w.mass += units.Mass(n*ends) * p.Mass.Mass
	w.rank[0] += n
	w.rank = append(w.rank, -n)
	if n > 0 {
		w.parts = append(w.parts, equipment.Part{Kind: kind, Mass: p.Mass, Count: n})
	}
}

// forEachChoice calls f with the plates, heaviest first, and every number of
// each that places loaded alike can have.
func forEachChoice(stock []equipment.Plate, places int, f func(sorted []equipment.Plate, x []int)) {
	sorted := slices.Clone(stock)
	slices.SortFunc(sorted, func(a, b equipment.Plate) int { return cmp.Compare(b.Mass.Mass, a.Mass.Mass) })
	x := make([]int, len(sorted))
	var choose func(i int)
	choose = func(i int) {
		if i == len(sorted) {
			f(sorted, x)
			return
		}
		for x[i] = 0; x[i]*places <= sorted[i].Count; x[i]++ {
			choose(i + 1)
		}
	}
	choose(0)
}

// bestWays keeps the first-ranked way of each mass.
func bestWays(k equipment.Kit, h body.Hold) map[units.Mass]way {
	best := map[units.Mass]way{}
	for _, w := range everyWay(k, h) {
		if b, ok := best[w.mass]; !ok || slices.Compare(w.rank, b.rank) < 0 {
			best[w.mass] = w
		}
	}
	return best
}

// Every load of every hold against exhaustive search: the same masses, made of
// the same parts.
func TestCompileBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		for h := range body.Holds() {
			best := bestWays(k, h)
			table, err := k.Compile(h)
			if len(best) == 0 {
				if !errors.Is(err, equipment.ErrEmptyKit) || !strings.HasSuffix(err.Error(), " "+h.String()) {
					t.Fatalf("%s: error %v, want ErrEmptyKit", h, err)
				}
				continue
			}
			if err != nil {
				t.Fatalf("%s: %v", h, err)
			}
			var got []units.Mass
			for l := range table.Loads() {
				got = append(got, l.Each())
				checkLoad(t, k, l, best[l.Each()])
			}
			if want := slices.Sorted(maps.Keys(best)); !slices.Equal(got, want) || table.Len() != len(want) {
				t.Fatalf("%s: loads %v, want %v", h, got, want)
			}
			if table.Lightest().Each() != got[0] || table.Heaviest().Each() != got[len(got)-1] {
				t.Fatalf("%s: %v to %v, want %v to %v", h, table.Lightest(), table.Heaviest(), got[0], got[len(got)-1])
			}
		}
	})
}

func checkLoad(t *rapid.T, k equipment.Kit, l equipment.Load, want way) {
	parts := l.Parts()
	if diff := gocmp.Diff(want.parts, parts); diff != "" {
		t.Fatalf("%s %s: parts differ (-want +got):\n%s", l.Hold(), l.Each(), diff)
	}
	if err := l.Validate(); err != nil {
		t.Fatalf("%s: %v", l, err)
	}
	if total := units.Must(l.Hold().Total(l.Each())); l.Total() != total {
		t.Fatalf("%s: total %s, want %s", l, l.Total(), total)
	}
	places := l.Hold().Implements() // of one kind of part, ends counted
	if l.Hold() != body.OnStack {
		places *= 2
	}
	if n := 0; len(want.rank) > 0 {
		n = want.rank[0] * places
		if l.Plates() != n {
			t.Fatalf("%s: %d plates, want %d", l, l.Plates(), n)
		}
	}
	for _, p := range parts {
		if p.Kind == equipment.PartPlate && p.Count*places > stockOf(k.Plates, p.Mass) {
			t.Fatalf("%s: more plates of %s than there are", l, p.Mass)
		}
	}
}

func stockOf(plates []equipment.Plate, m units.Marked) int {
	for _, p := range plates {
		if p.Mass == m {
			return p.Count
		}
	}
	return 0
}

// Both hands on one lift what one hand lifts.
func TestBothHandsAsOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		one, err := k.Compile(body.OneHand)
		both, errBoth := k.Compile(body.BothHandsOnOne)
		if (err == nil) != (errBoth == nil) || one.Len() != both.Len() {
			t.Fatalf("one hand: %d loads, %v; both: %d loads, %v", one.Len(), err, both.Len(), errBoth)
		}
		for l := range one.Loads() {
			if b, ok := both.Find(l.Each()); !ok || !slices.Equal(b.Parts(), l.Parts()) {
				t.Fatalf("both hands: %v, one: %v", b, l)
			}
		}
	})
}

// The order in which plates and add-ons are listed makes no difference.
func TestCompileOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		turned := k
		turned.Plates = rapid.Permutation(k.Plates).Draw(t, "order")
		turned.Stacks = slices.Clone(k.Stacks)
		for i := range turned.Stacks {
			turned.Stacks[i].AddOns = rapid.Permutation(k.Stacks[i].AddOns).Draw(t, "order")
		}
		for h := range body.Holds() {
			a, _ := k.Compile(h)
			b, _ := turned.Compile(h)
			if diff := gocmp.Diff(slices.Collect(a.Loads()), slices.Collect(b.Loads())); diff != "" {
				t.Fatalf("%s: loads differ:\n%s", h, diff)
			}
		}
	})
}

// More equipment never takes a weight away, and never needs more plates.
func TestCompileMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		more := k
		more.Plates = slices.Clone(k.Plates)
		for i := range more.Plates {
			more.Plates[i].Count += 2
		}
		more.Dumbbells = append(slices.Clone(k.Dumbbells), equipment.Dumbbell{Mass: kg(6), Count: 2})
		for h := range body.Holds() {
			few, _ := k.Compile(h)
			many, _ := more.Compile(h)
			for l := range few.Loads() {
				if m, ok := many.Find(l.Each()); !ok || m.Plates() > l.Plates() {
					t.Fatalf("%s: %s with less, %s with more", h, l, m)
				}
			}
		}
	})
}

// One table serves many readers; the race detector watches.
func TestTableConcurrent(t *testing.T) {
	table := units.Must(clinicKit().Compile(body.OneEachHand))
	var wg sync.WaitGroup
	for range 4 {
		wg.Go(func() {
			n := 0
			for l := range table.Loads() {
				parts := l.Parts()
				parts[0] = equipment.Part{} // the caller's own
				if got, err := table.Nearest(l.Each(), equipment.RoundingRule{}); err != nil || !got.Equal(l) {
					t.Errorf("Nearest(%s) = %s, %v", l.Each(), got, err)
				}
				n++
			}
			if n != table.Len() {
				t.Errorf("%d loads, want %d", n, table.Len())
			}
		})
	}
	wg.Wait()
}

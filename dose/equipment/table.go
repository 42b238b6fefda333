package equipment

import (
	"cmp"
	"errors"
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// maxLoads is the most loads that a table holds.
const maxLoads = 1 << 18

// What a good kit cannot do.
var (
	// ErrTooManyLoads: the kit makes more than 262,144 loads.
	ErrTooManyLoads = errors.New("equipment: too many loads")
	// ErrEmptyKit: nothing in the kit can be held so.
	ErrEmptyKit = errors.New("equipment: nothing to hold")
)

// nothingToHold reports that nothing in the kit can be held as h says.
func nothingToHold(h body.Hold) error { return fmt.Errorf("%w %s", ErrEmptyKit, h) }

// A Table lists what a kit makes for one hold. It never changes and is safe for
// concurrent use. The zero Table and a nil one have no loads.
type Table struct {
	hold  body.Hold
	each  []units.Mass // of one implement, rising
	made  []recipe     // how, at the same index
	items []item
}

// A recipe says how a load is put together.
type recipe struct {
	item int32 // index in Table.items; of a stack, of its first pin
	row  int32 // in the item's sums, if it has any
}

// An item is what a load starts from: a dumbbell, kettlebell or ankle weight, a handle or
// bar, a pin position.
type item struct {
	kind          PartKind
	name          string
	mass, collars units.Marked
	sums          *sums // of plates or add-ons; nil if it takes none
}

// Compile returns everything that the kit makes when held as h says:
//
//   - one hand, both hands on one: each ready-made dumbbell and kettlebell, and each
//     handle with like plates on both ends
//   - one in each hand: each pair of ready-made dumbbells or kettlebells of the same
//     mass, and each handle that exists twice, all four ends with like plates
//   - on a bar: each bar with like plates on both ends
//   - on a stack: each pin position with any of the stack's add-ons
//   - on a limb: each ankle weight
//   - on a band: one load without a mass, if there is a band
//   - unloaded: one load of zero
//
// Each mass is listed once, made with the fewest plates. Among ways with equally
// few plates a ready-made dumbbell comes before a kettlebell, that before a handle, and
// the earlier entry of the kit before the later; on one handle, bar or stack the way with more
// plates of the heaviest kind comes first, then of the second heaviest, and so
// on. The order in which plates are listed makes no difference.
//
// It returns the errors of [Kit.Validate], with those of the hold below "/hold";
// [ErrEmptyKit] if nothing can be held so; and [ErrTooManyLoads], without
// having listed them, if there are more than 262,144 loads.
func (k Kit) Compile(h body.Hold) (*Table, error) { return k.compileOnce(h, anyKind) }

// CompileFor returns what the kit makes for an exercise: what [Kit.Compile] returns for
// its hold, of the implements that it names. A kit has no framed bars, and an exercise
// with a band needs the very band that it names.
func (k Kit) CompileFor(ex exercise.Exercise) (*Table, error) {
	missing := ex.Hold == body.OnBand && !slices.Contains(k.Bands, ex.Band)
	if missing || len(ex.Implements) > 0 && slices.IndexFunc(ex.Implements, listed) < 0 {
		if _, err := k.Compile(ex.Hold); err != nil {
			return nil, err
		}
		return nil, nothingToHold(ex.Hold)
	}
	with := anyKind
	if dumbbell := slices.Contains(ex.Implements, exercise.Dumbbell); dumbbell != slices.Contains(ex.Implements, exercise.Kettlebell) {
		with = onlyKettlebells
		if dumbbell {
			with = onlyDumbbells
		}
	}
	return k.compileOnce(ex.Hold, with)
}

// Fit returns the catalogue with what of it depends on the kit: an exercise for each
// band, seat and step, as [exercise.Catalogue.WithBands] and [exercise.Catalogue.WithHeights]
// say. It returns the errors of [Kit.Validate], and [field.ErrConflict] where the catalogue
// has another exercise of an ID that would be made.
func (k Kit) Fit(c exercise.Catalogue) (exercise.Catalogue, error) {
	if len(k.Bands)+len(k.Seats)+len(k.Steps) == 0 {
		return c, nil
	}
	if err := k.Validate(); err != nil {
		return c, err
	}
	fit, err := c.WithBands(k.Bands...)
	if err == nil {
		fit, err = fit.WithHeights(k.Seats, k.Steps)
	}
	if err != nil { // the catalogue has another exercise of such an ID
		return c, field.New("/bands", strings.Join(k.Bands, ", "), "names that make no ID that the catalogue has", field.ErrConflict)
	}
	return fit, nil
}

// listed reports whether a kit lists such implements.
func listed(i exercise.Implement) bool { return i != exercise.HexBar }

// ofHand narrows what is held in the hand.
type ofHand uint8

const (
	anyKind ofHand = iota
	onlyDumbbells
	onlyKettlebells
	numKinds
)

func (k *Kit) compile(h body.Hold, with ofHand) (*Table, error) {
	var bad field.Errors
	bad.Add("", k.Validate())
	bad.Add("/hold", h.Check())
	if err := bad.Err(); err != nil {
		return nil, err
	}
	t := &Table{hold: h}
	if !t.fill(*k, with) {
		return nil, tooManyLoads(h)
	}
	if t.size() == 0 {
		return nil, nothingToHold(h)
	}
	return t, nil
}

// fill lists what k makes; it is false if that is too much.
func (t *Table) fill(k Kit, with ofHand) bool {
	n := t.hold.Implements()
	switch t.hold {
	case body.OneHand, body.OneEachHand, body.BothHandsOnOne:
		if with != onlyKettlebells {
			t.addReady(PartDumbbell, k.Dumbbells, n)
		}
		if with != onlyDumbbells {
			t.addReady(PartKettlebell, k.Kettlebells, n)
		}
		return with == onlyKettlebells || t.addHandles(PartHandle, k.Handles, k.Plates, n)
	case body.OnBar:
		return t.addHandles(PartBar, asHandles(k.Bars), k.Plates, n)
	case body.OnStack:
		return t.addStacks(k.Stacks)
	case body.OnLimb:
		t.addReady(PartAnkleWeight, k.AnkleWeights, n)
		return true
	case body.OnBand:
		if len(k.Bands) == 0 {
			return true
		}
	}
	t.each, t.made, t.items = []units.Mass{0}, []recipe{{}}, []item{{}}
	return true
}

// addReady lists the ready-made masses of which n exist, and that are not listed yet.
func (t *Table) addReady(kind PartKind, ds []Dumbbell, n int) {
	sorted, lighter := ds, func(a, b Dumbbell) int { return cmp.Compare(a.Mass.Mass, b.Mass.Mass) }
	if !slices.IsSortedFunc(ds, lighter) {
		sorted = slices.Clone(ds)
		slices.SortStableFunc(sorted, lighter)
	}
	t.each, t.made, t.items = slices.Grow(t.each, len(ds)), slices.Grow(t.made, len(ds)), slices.Grow(t.items, len(ds))
	for i := 0; i < len(sorted); {
		first, count := sorted[i], 0
		for ; i < len(sorted) && sorted[i].Mass.Mass == first.Mass.Mass; i++ {
			count += sorted[i].Count
		}
		if count < n {
			continue
		}
		mass, made := first.Mass.Mass, recipe{item: int32(len(t.items))}
		if last := len(t.each) - 1; last < 0 || t.each[last] < mass { // as of all but a second kind
			t.each, t.made = append(t.each, mass), append(t.made, made)
		} else if at, there := slices.BinarySearch(t.each, mass); !there {
			t.each, t.made = slices.Insert(t.each, at, mass), slices.Insert(t.made, at, made)
		} else {
			continue
		}
		t.items = append(t.items, item{kind: kind, mass: first.Mass})
	}
}

// addHandles merges in what the handles of which n exist make, all with the
// same sums: those of the handle that holds most, cut short for the others.
func (t *Table) addHandles(kind PartKind, handles []Handle, stock []Plate, n int) bool {
	most := -1
	for _, h := range handles {
		if h.Count >= n {
			most = max(most, h.limit())
		}
	}
	if most < 0 {
		return true
	}
	s, ok := newSums([]row{{}}, stock, spot{ends: 2, implements: n, limit: most})
	for i := 0; ok && i < len(handles); i++ {
		h := handles[i]
		if h.Count >= n {
			t.items = append(t.items, item{kind, h.Name, h.Mass, h.Collars, s})
			ok = t.merge(s, h.Mass.Mass+h.Collars.Mass, h.limit(), len(t.items)-1)
		}
	}
	return ok
}

func (h Handle) limit() int {
	if h.PlatesPerEnd == 0 {
		return noLimit
	}
	return h.PlatesPerEnd
}

// addStacks merges in what the stacks make.
func (t *Table) addStacks(stacks []Stack) bool {
	for _, stack := range stacks {
		pins := make([]row, len(stack.Pins))
		for i, pin := range stack.Pins {
			pins[i] = row{mass: pin.Mass, made: int32(i)}
		}
		s, ok := newSums(pins, stack.AddOns, spot{ends: 1, implements: 1, limit: noLimit})
		if !ok {
			return false
		}
		first := len(t.items)
		for _, pin := range stack.Pins {
			t.items = append(t.items, item{kind: PartPin, name: stack.Name, mass: pin, sums: s})
		}
		if !t.merge(s, 0, noLimit, first) {
			return false
		}
	}
	return true
}

// merge lists every row of s within limit, on top of base, unless what is
// listed makes the mass with no more plates. first is the item of the first start.
func (t *Table) merge(s *sums, base units.Mass, limit, first int) bool {
	each, made := t.each, t.made
	room := min(len(each)+len(s.rows), maxLoads+1)
	t.each, t.made = make([]units.Mass, 0, room), make([]recipe, 0, room)
	i, j := 0, 0
	for len(t.each) <= maxLoads {
		for j < len(s.rows) && int(s.rows[j].plates) > limit {
			j++
		}
		if i == len(each) && j == len(s.rows) {
			return true
		}
		listed, added := units.MaxMass, units.MaxMass // no load is as heavy
		if i < len(each) {
			listed = each[i]
		}
		if j < len(s.rows) {
			added = base + s.rows[j].mass
		}
		if listed < added || listed == added && t.plates(made[i]) <= int(s.rows[j].plates) {
			t.each, t.made = append(t.each, listed), append(t.made, made[i])
		} else {
			t.each, t.made = append(t.each, added), append(t.made, recipe{int32(first), int32(j)})
		}
		if listed <= added {
			i++
		}
		if added <= listed {
			j++
		}
	}
	return false
}

// item returns what r starts from.
func (t *Table) item(r recipe) *item {
	it := &t.items[r.item]
	if it.kind == PartPin {
		it = &t.items[r.item+it.sums.start(r.row)]
	}
	return it
}

// plates returns how many plates or add-ons r has at one place.
func (t *Table) plates(r recipe) int {
	if s := t.items[r.item].sums; s != nil {
		return int(s.rows[r.row].plates)
	}
	return 0
}

// size returns the number of loads.
func (t *Table) size() int {
	if t == nil {
		return 0
	}
	return len(t.each)
}

// load returns the load at index i.
func (t *Table) load(i int) Load {
	each := t.each[i]
	l := Load{each: each, total: each, hold: t.hold, table: t, made: t.made[i]}
	if t.hold.Implements() == 2 {
		l.total += each // at most 5 million kg
	}
	return l
}

// Loads yields the loads, rising, each mass once.
func (t *Table) Loads() iter.Seq[Load] {
	return func(yield func(Load) bool) {
		for i := range t.size() {
			if !yield(t.load(i)) {
				return
			}
		}
	}
}

// Lightest returns the lightest load; of a zero Table, the zero Load.
func (t *Table) Lightest() Load {
	if t.size() == 0 {
		return Load{}
	}
	return t.load(0)
}

// Heaviest returns the heaviest load; of a zero Table, the zero Load.
func (t *Table) Heaviest() Load {
	if t.size() == 0 {
		return Load{}
	}
	return t.load(t.size() - 1)
}

// search returns how many loads weigh less than each, and whether the one at
// that index weighs exactly that.
func (t *Table) search(each units.Mass) (int, bool) {
	if t == nil {
		return 0, false
	}
	return slices.BinarySearch(t.each, each)
}

// Find returns the load that weighs exactly each per implement, if there is one.
func (t *Table) Find(each units.Mass) (Load, bool) {
	i, found := t.search(each)
	if !found {
		return Load{}, false
	}
	return t.load(i), true
}

func tooManyLoads(h body.Hold) error {
	return fmt.Errorf("%w: over %d, %s", ErrTooManyLoads, maxLoads, h)
}

package equipment

import (
	"cmp"
	"errors"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// maxWays is the most ways to put one load together that [Kit.Ways] lists.
const maxWays = 32

// waySums is how many part sums of plates are tried on one handle or bar.
const waySums = 20_000

// A Use is how many of one entry of a kit are taken. Entry is the index in the
// kit's list of that kind; what is ready-made and of one mass counts as the first entry
// of that mass, and a pin stands for its whole stack.
type Use struct {
	Kind  PartKind `json:"kind"` // dumbbell, kettlebell, ankle weight, handle, bar, plate or pin
	Entry int      `json:"entry"`
	Count int      `json:"count"` // on all implements and ends together
}

// A Way is a load made in one way, and what that takes out of the kit.
type Way struct {
	Load Load  `json:"load"`
	Uses []Use `json:"uses,omitempty"`
}

// Stock returns how many the kit has of what u takes, 0 for no such entry.
func (k Kit) Stock(u Use) int {
	switch has := func(n int) bool { return 0 <= u.Entry && u.Entry < n }; {
	case u.Kind.ready() && has(len(k.ready(u.Kind))):
		list := k.ready(u.Kind)
		return alike(list, list[u.Entry].Mass.Mass)
	case u.Kind == PartHandle && has(len(k.Handles)):
		return k.Handles[u.Entry].Count
	case u.Kind == PartPlate && has(len(k.Plates)):
		return k.Plates[u.Entry].Count
	case u.Kind == PartBar && has(len(k.Bars)), u.Kind == PartPin && has(len(k.Stacks)):
		return 1
	}
	return 0
}

// ready returns the list of a ready-made kind.
func (k Kit) ready(kind PartKind) []Dumbbell {
	switch kind {
	case PartKettlebell:
		return k.Kettlebells
	case PartAnkleWeight:
		return k.AnkleWeights
	}
	return k.Dumbbells
}

// alike counts those of a mass.
func alike(list []Dumbbell, mass units.Mass) int {
	n := 0
	for _, d := range list {
		if d.Mass.Mass == mass {
			n += d.Count
		}
	}
	return n
}

// Ways returns the ways in which the kit makes a load of each, a mass per
// implement, in the order in which [Kit.Compile] would choose among them; a
// stack appears once, whatever its add-ons, and a band is nothing of the kit that is
// counted. The list is empty if the kit does
// not make the load. It is whole unless there are more than 32 or a
// stock of plates is too large to go through, and then all is false.
//
// It returns the errors of [Kit.Validate], with those of the hold below
// "/hold", a [field.ErrOutOfRange] for "/each" below zero, and
// [ErrTooManyLoads] for a stack of more than 262,144 loads.
func (k Kit) Ways(each units.Mass, h body.Hold) (ways []Way, all bool, err error) {
	var bad field.Errors
	bad.Add("", k.Validate())
	bad.Add("/hold", h.Check())
	bad.Refuse(each < 0, "/each", each, "0 kg or more", field.ErrOutOfRange)
	if err := bad.Err(); err != nil {
		return nil, false, err
	}
	f := finder{k: k, each: each, hold: h, all: true}
	if err := f.find(); err != nil {
		return nil, false, err
	}
	slices.SortStableFunc(f.ways, func(a, b Way) int { return cmp.Compare(a.Load.plates(), b.Load.plates()) })
	if len(f.ways) > maxWays {
		f.ways, f.all = f.ways[:maxWays], false
	}
	return f.ways, f.all, nil
}

// A finder collects the ways to make one load.
type finder struct {
	k    Kit
	each units.Mass
	hold body.Hold
	ways []Way
	all  bool
}

func (f *finder) find() error {
	switch f.hold {
	case body.OneHand, body.OneEachHand, body.BothHandsOnOne:
		f.ready(PartDumbbell)
		f.ready(PartKettlebell)
		f.handles(PartHandle, f.k.Handles)
	case body.OnBar:
		f.handles(PartBar, asHandles(f.k.Bars))
	case body.OnStack:
		return f.stacks()
	case body.OnLimb:
		f.ready(PartAnkleWeight)
	default:
		if f.each == 0 && (f.hold == body.Unloaded || len(f.k.Bands) > 0) {
			f.add(nil)
		}
	}
	return nil
}

func (f *finder) add(parts []Part, uses ...Use) {
	load, err := NewLoad(f.each, f.hold)
	if err != nil {
		return // heavier than anything that a kit can hold
	}
	load.parts = parts
	f.ways = append(f.ways, Way{load, uses})
}

func (f *finder) ready(kind PartKind) {
	n, list := f.hold.Implements(), f.k.ready(kind)
	i := slices.IndexFunc(list, func(d Dumbbell) bool { return d.Mass.Mass == f.each })
	if i >= 0 && alike(list, f.each) >= n {
		f.add([]Part{{kind, "", withUnit(list[i].Mass), 1}}, Use{kind, i, n})
	}
}

func (f *finder) handles(kind PartKind, handles []Handle) {
	n := f.hold.Implements()
	for i, h := range handles {
		onEnds := f.each - h.Mass.Mass - h.Collars.Mass
		if h.Count < n || onEnds < 0 || onEnds%2 != 0 {
			continue
		}
		f.plates(onEnds/2, h.limit(), h.parts(kind), Use{kind, i, n})
	}
}

// plates adds a way for each choice of plates that weighs onEnd, fewest plates
// first, then more of the heaviest.
func (f *finder) plates(onEnd units.Mass, limit int, parts []Part, first Use) {
	if onEnd == 0 {
		f.add(parts, first)
		return
	}
	places := 2 * f.hold.Implements()
	r := rack{left: waySums}
	most := 0 // plates at one place
	for i, p := range f.k.Plates {
		if n := p.Count / places; n > 0 {
			r.kinds = append(r.kinds, stocked{p.Mass, n, i})
			most += n
		}
	}
	slices.SortFunc(r.kinds, func(a, b stocked) int { return cmp.Compare(b.mass.Mass, a.mass.Mass) })
	for n := 1; n <= min(limit, most) && r.left > 0 && len(r.found) <= maxWays; n++ {
		r.choose(0, n, onEnd, nil)
	}
	f.all = f.all && r.left > 0
	for _, counts := range r.found {
		made, uses := slices.Clone(parts), []Use{first}
		for i, c := range counts {
			if c > 0 {
				made = append(made, Part{PartPlate, "", withUnit(r.kinds[i].mass), c})
				uses = append(uses, Use{PartPlate, r.kinds[i].entry, c * places})
			}
		}
		f.add(made, uses...)
	}
}

// stocked is a kind of plate, how many one place can take, and its entry.
type stocked struct {
	mass         units.Marked
	count, entry int
}

// A rack is what one place can take, heaviest first, and the sums found for it.
type rack struct {
	kinds []stocked
	left  int // sums that may still be tried
	found [][]int
}

// choose takes exactly n plates of the kinds from i on that weigh mass.
func (r *rack) choose(i, n int, mass units.Mass, counts []int) {
	if n == 0 && mass == 0 {
		r.found = append(r.found, slices.Clone(counts))
		return
	}
	if r.left--; r.left <= 0 || n == 0 || i == len(r.kinds) || len(r.found) > maxWays {
		return
	}
	heaviest, lightest := r.kinds[i].mass.Mass, r.kinds[len(r.kinds)-1].mass.Mass
	if mass > heaviest*units.Mass(n) || mass < lightest*units.Mass(n) {
		return
	}
	for c := min(n, r.kinds[i].count); c >= 0; c-- {
		if rest := mass - heaviest*units.Mass(c); rest >= 0 {
			r.choose(i+1, n-c, rest, append(slices.Clone(counts), c))
		}
	}
}

// stacks adds one way for each stack that lifts the mass: whatever the pin and
// the add-ons, the stack as a whole is taken.
func (f *finder) stacks() error {
	for i, s := range f.k.Stacks {
		table, err := Kit{Stacks: []Stack{s}}.Compile(body.OnStack)
		if errors.Is(err, ErrTooManyLoads) {
			return err
		}
		if load, made := table.Find(f.each); made {
			f.add(load.Parts(), Use{PartPin, i, 1})
		}
	}
	return nil
}

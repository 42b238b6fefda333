package rota

import (
	"cmp"
	"fmt"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// bodyOnly stands for the load of an exercise without one.
const bodyOnly = -1

// A problem is a class in numbers. Its clients are in the order of their
// names, which settles what nothing else does.
type problem struct {
	class    Class
	order    []int   // index in the class
	loads    [][]int // of each client's items, index in kinds, or bodyOnly
	kinds    []loadKind
	stock    []int // of each thing in the kit that is used
	together bool  // all start in the first slot
	partial  bool  // not every way to make every load is known
	shares   []int // of each kind, how many clients one load serves in a slot: 1 or 2
	fits     fitCache
	needs    []need
}

// A loadKind is a mass and a hold, and the ways to make it.
type loadKind struct {
	each       units.Mass
	hold       body.Hold
	kettlebell bool
	ways       []equipment.Way
	uses       [][]int // of each way, how many of each thing
	atOnce     int     // how many the kit makes at once, at most one for each client
	whole      bool    // every way is known
}

// newRotaProblem checks the class and finds what its loads are made of.
func newRotaProblem(c Class) (*problem, error) {
	if err := c.Validate(); err != nil {
		return nil, err
	}
	p := &problem{class: c, together: !c.Staggered}
	for i := range c.Clients {
		p.order = append(p.order, i)
	}
	slices.SortFunc(p.order, func(a, b int) int { return cmp.Compare(c.Clients[a].Name, c.Clients[b].Name) })
	p.loads = make([][]int, len(p.order))
	if err := p.addLoads(); err != nil {
		return nil, err
	}
	p.findShares()
	p.countUses()
	p.fits = fitCache{p: p, known: map[string]bool{}, left: slices.Clone(p.stock)}
	for i := range p.kinds {
		p.kinds[i].atOnce = p.mostAtOnce(i)
	}
	p.needs = p.findNeeds()
	return p, nil
}

// addLoads lists the kinds of load in the order of the names.
func (p *problem) addLoads() error {
	bad := make([]field.Errors, len(p.order)) // in the order given
	for at, i := range p.order {
		for j, item := range p.class.Clients[i].Items {
			kind, err := p.kind(item)
			bad[i].Add(fmt.Sprintf("/clients/%d/items/%d/load", i, j), err)
			p.loads[at] = append(p.loads[at], kind)
		}
	}
	return field.Errors(slices.Concat(bad...)).Err()
}

// kind returns the index of the item's load, which is added if it is new.
func (p *problem) kind(item dose.Prescription) (int, error) {
	if item.Hold == body.Unloaded {
		return bodyOnly, nil
	}
	each, kettlebell := item.Load.Each(), ofKettlebell(item.Load)
	i := slices.IndexFunc(p.kinds, func(k loadKind) bool { return k.each == each && k.hold == item.Hold && k.kettlebell == kettlebell })
	if i >= 0 {
		return i, nil
	}
	ways, all, err := p.class.Kit.Ways(each, item.Hold)
	if err != nil {
		return 0, err
	}
	ways = slices.DeleteFunc(ways, func(w equipment.Way) bool { return ofKettlebell(w.Load) != kettlebell })
	if len(ways) == 0 {
		return 0, field.Bad(item.Load, "a load that the kit makes", field.ErrConflict)
	}
	p.partial = p.partial || !all
	p.kinds = append(p.kinds, loadKind{each: each, hold: item.Hold, kettlebell: kettlebell, ways: ways, whole: all})
	return len(p.kinds) - 1, nil
}

// ofKettlebell reports whether the load is a kettlebell: what was asked for with one is
// not done with a dumbbell, nor the other way round.
func ofKettlebell(l equipment.Load) bool {
	parts := l.Parts()
	return len(parts) > 0 && parts[0].Kind == equipment.PartKettlebell
}

// countUses numbers the things that are used and counts them for each way.
func (p *problem) countUses() {
	things := map[equipment.Use]int{}
	number := func(u equipment.Use) int {
		u.Count = 0
		if _, known := things[u]; !known {
			things[u] = len(p.stock)
			p.stock = append(p.stock, p.class.Kit.Stock(u))
		}
		return things[u]
	}
	for _, k := range p.kinds {
		for _, w := range k.ways {
			for _, u := range w.Uses {
				number(u)
			}
		}
	}
	for i, k := range p.kinds {
		for _, w := range k.ways {
			uses := make([]int, len(p.stock))
			for _, u := range w.Uses {
				uses[number(u)] += u.Count
			}
			p.kinds[i].uses = append(p.kinds[i].uses, uses)
		}
	}
}

func (p *problem) mostAtOnce(kind int) int {
	counts := make([]uint8, len(p.kinds))
	for n := range len(p.order) {
		counts[kind]++
		if !p.fits.ask(counts) {
			return n
		}
	}
	return len(p.order)
}

// all returns every item of every client, as sets of bits.
func (p *problem) all() []uint32 {
	todo := make([]uint32, len(p.loads))
	for i, loads := range p.loads {
		todo[i] = 1<<len(loads) - 1
	}
	return todo
}

// counts returns how many of each kind of load a slot has.
func (p *problem) counts(row []int8) []uint8 {
	counts := make([]uint8, len(p.kinds))
	for client, item := range row {
		if item >= 0 && p.loads[client][item] != bodyOnly {
			counts[p.loads[client][item]]++
		}
	}
	return counts
}

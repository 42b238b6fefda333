package equipment

import (
	"cmp"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Steps in which ready-made dumbbells are taken to be sold, where candidates
// are proposed without a list: a choice of this package, not a fact.
const (
	stepKG = units.Kilogram / 2
	stepLB = units.Pound
)

// More returns candidates that are more of what the kit has: one more and two
// more dumbbells of each mass, one more of each handle, and, where there is a
// handle or bar, four more of each kind of plate, one for each end of a pair.
func More(k Kit) []Purchase {
	var list []Purchase
	for _, m := range masses(k) {
		list = append(list, singleAndPair(m)...)
	}
	for _, h := range k.Handles {
		h.Count = 1
		list = append(list, Purchase{Handle: h})
	}
	if takesPlates(k) {
		for _, p := range k.Plates {
			list = append(list, fourPlates(p.Mass))
		}
	}
	return list
}

// inBetween returns candidates that part the steps of the kit: one and two
// dumbbells halfway between each two neighbouring masses, rounded down to half
// a kilogram, or to a pound where both neighbours are marked in pounds; and,
// where there is a handle or bar, four plates of half the lightest plate.
func inBetween(k Kit) []Purchase {
	var list []Purchase
	have := masses(k)
	for i := 1; i < len(have); i++ {
		low, high := have[i-1], have[i]
		m := trade(low.Mass+(high.Mass-low.Mass)/2, low.Unit == units.LB && high.Unit == units.LB)
		if m.Mass > low.Mass {
			list = append(list, singleAndPair(m)...)
		}
	}
	if len(k.Plates) > 0 && takesPlates(k) {
		lightest := slices.MinFunc(k.Plates, func(a, b Plate) int { return cmp.Compare(a.Mass.Mass, b.Mass.Mass) }).Mass
		if lightest.Mass /= 2; lightest.Mass > 0 {
			list = append(list, fourPlates(lightest))
		}
	}
	return list
}

// reaching returns candidates that end the stalls of hand-held weights one by
// one: one and two dumbbells of the most that each allows, rounded down to half
// a kilogram, where that is above the present mass and not in the kit.
func reaching(k Kit, stalls []Stall) []Purchase {
	var list []Purchase
	for _, s := range stalls {
		held := s.Hold == body.OneHand || s.Hold == body.OneEachHand || s.Hold == body.BothHandsOnOne
		m := trade(min(s.limit(), maxMass), false)
		if !held || m.Mass <= s.Present || alike(k.Dumbbells, m.Mass) > 0 {
			continue
		}
		for _, p := range singleAndPair(m) {
			if !slices.Contains(list, p) {
				list = append(list, p)
			}
		}
	}
	return list
}

func takesPlates(k Kit) bool { return len(k.Handles) > 0 || len(k.Bars) > 0 }

// masses returns the masses of the ready-made dumbbells, rising, each once.
func masses(k Kit) []units.Marked {
	var list []units.Marked
	for _, d := range k.Dumbbells {
		i, found := slices.BinarySearchFunc(list, d.Mass.Mass, func(m units.Marked, mass units.Mass) int { return cmp.Compare(m.Mass, mass) })
		if !found {
			list = slices.Insert(list, i, d.Mass)
		}
	}
	return list
}

// trade rounds m down to the step of the unit.
func trade(m units.Mass, pounds bool) units.Marked {
	if pounds {
		return units.Marked{Mass: m / stepLB * stepLB, Unit: units.LB}
	}
	return units.Marked{Mass: m / stepKG * stepKG, Unit: units.KG}
}

func singleAndPair(m units.Marked) []Purchase {
	return []Purchase{{Dumbbell: Dumbbell{m, 1}}, {Dumbbell: Dumbbell{m, 2}}}
}

func fourPlates(m units.Marked) Purchase { return Purchase{Plate: Plate{m, 4}} }

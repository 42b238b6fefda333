package rota

import (
	"cmp"
	"slices"
	"strconv"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// ClassAdvice is what one purchase would do for a class.
type ClassAdvice struct {
	Purchase equipment.Purchase `json:"purchase"`
	Mass     units.Mass         `json:"mass"`    // bought in all
	Removed  int                `json:"removed"` // slots of waiting fewer, all clients together
	Saved    int                `json:"saved"`   // slots of the rota fewer; below 0 where less waiting takes more
	Waiting  int                `json:"waiting"` // slots of waiting that are left
	Slots    int                `json:"slots"`
	Proof    Proof              `json:"proof"` // of the rota with the purchase
}

// AdviseClass returns the candidates, each with what the rota of the class would
// be after buying it alone: those that remove most waiting first, then those
// that save most slots, then the least mass bought, then the order given.
// Without candidates it takes those of [equipment.More], but what the kit has no room for.
//
// Where a rota is not proven the best, neither is what a purchase removes; the
// search with a purchase starts from the rota without, so that it is never
// worse. Errors are those of [Schedule] and, below "/candidates", of
// [equipment.Kit.With].
func AdviseClass(c Class, candidates []equipment.Purchase) ([]ClassAdvice, error) {
	p, err := newRotaProblem(c)
	if err != nil {
		return nil, err
	}
	proposed := len(candidates) == 0
	if proposed {
		candidates = equipment.More(c.Kit)
	}
	now := p.solve(nil)
	list := make([]ClassAdvice, 0, len(candidates))
	var bad field.Errors
	for i, candidate := range candidates {
		then, err := p.buying(candidate, now)
		if err != nil && proposed {
			continue // the kit is full, and the caller named no such purchase
		}
		bad.Add("/candidates/"+strconv.Itoa(i), err)
		list = append(list, ClassAdvice{
			Purchase: candidate, Mass: candidate.Mass(), Waiting: then.cost.waiting, Slots: then.cost.slots, Proof: then.proof,
			Removed: now.cost.waiting - then.cost.waiting, Saved: now.cost.slots - then.cost.slots,
		})
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	slices.SortStableFunc(list, func(a, b ClassAdvice) int {
		return cmp.Or(cmp.Compare(b.Removed, a.Removed), cmp.Compare(b.Saved, a.Saved), cmp.Compare(a.Mass, b.Mass))
	})
	return list, nil
}

// buying solves the class with one thing more. Nothing changes where that adds
// no way and no stock to what is used, or where nothing is left to gain.
func (p *problem) buying(candidate equipment.Purchase, now solution) (solution, error) {
	larger := p.class
	var err error
	if larger.Kit, err = p.class.Kit.With(candidate); err != nil {
		return solution{}, err
	}
	q, err := newRotaProblem(larger)
	if err != nil || q.sameSupply(p) || p.ideal(now.cost) {
		return now, err
	}
	return q.solve(now.rows), nil
}

// ideal reports whether nobody waits and the slots are those of the longest
// session.
func (p *problem) ideal(c price) bool {
	longest := slices.MaxFunc(p.loads, func(a, b []int) int { return cmp.Compare(len(a), len(b)) })
	return c.waiting == 0 && c.slots == len(longest)
}

// sameSupply reports whether the loads are made in the same ways from the same
// stock.
func (p *problem) sameSupply(q *problem) bool {
	return slices.Equal(p.stock, q.stock) && slices.EqualFunc(p.kinds, q.kinds, func(a, b loadKind) bool {
		return slices.EqualFunc(a.uses, b.uses, slices.Equal[[]int])
	})
}

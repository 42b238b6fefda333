package guideline

import (
	"cmp"
	"fmt"
	"iter"
	"slices"
	"strings"
	"sync"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// placeOf is the place of each ID in rows.
var placeOf = sync.OnceValue(func() map[ID]int { return places(rows()) })

func places(list []Recommendation) map[ID]int {
	byID := make(map[ID]int, len(list))
	for i, r := range list {
		byID[r.ID] = i
	}
	return byID
}

// All yields every recommendation: of professional bodies, for people with a
// condition, from trials, from reviews.
func All() iter.Seq[Recommendation] {
	return func(yield func(Recommendation) bool) {
		for _, r := range rows() {
			if !yield(r.clone()) {
				return
			}
		}
	}
}

// clone keeps the table apart from what callers hold.
func (r *Recommendation) clone() Recommendation {
	c := *r
	c.Conditions = slices.Clone(r.Conditions)
	c.Training = slices.Clone(r.Training)
	c.Effects = slices.Clone(r.Effects)
	c.Bases = slices.Clone(r.Bases)
	c.SupersededBy = slices.Clone(r.SupersededBy)
	return c
}

// Get returns the recommendation with the given ID. One that is not known is
// a [field.ErrUnknown] that names those whose IDs begin most alike.
func Get(id ID) (Recommendation, error) {
	if i, ok := placeOf()[id]; ok {
		return rows()[i].clone(), nil
	}
	return Recommendation{}, field.Bad(fmt.Sprintf("%.40q", id), beginLike(id), field.ErrUnknown)
}

// beginLike lists the IDs that share the longest beginning with id; one
// letter in common is not enough.
func beginLike(id ID) string {
	longest, near := 1, []string(nil)
	for _, r := range rows() {
		n := 0
		for n < len(id) && n < len(r.ID) && id[n] == r.ID[n] {
			n++
		}
		switch {
		case n > longest:
			longest, near = n, []string{string(r.ID)}
		case n == longest && near != nil:
			near = append(near, string(r.ID))
		}
	}
	if near == nil {
		return "the ID of a recommendation, such as " + string(rows()[0].ID)
	}
	return "perhaps " + strings.Join(near, ", ")
}

// A Query says whom a recommendation is sought for. Zero fields ask for nothing.
type Query struct {
	Goal     Goal          `json:"goal,omitzero"`
	Training body.Training `json:"training,omitzero"`
	Age      body.Age      `json:"age,omitzero"` // years
	// Conditions of the person. If there are any, rows for other conditions
	// are left out.
	Conditions []Condition `json:"conditions,omitempty"`
	// AtLarge leaves out rows for conditions even if Conditions is empty: it
	// says that the person is known to have none.
	AtLarge bool `json:"at_large,omitzero"`
}

func (q Query) fits(r Recommendation) bool {
	return (q.Goal == 0 || r.Goal == q.Goal) &&
		(q.Training == 0 || len(r.Training) == 0 || slices.Contains(r.Training, q.Training)) &&
		(q.Age == 0 || r.AgeMin <= q.Age && (r.AgeMax == 0 || q.Age <= r.AgeMax)) &&
		(!r.clinical() || q.shares(r) || len(q.Conditions) == 0 && !q.AtLarge)
}

// shares reports whether r is for one of the person's conditions.
func (q Query) shares(r Recommendation) bool {
	return slices.ContainsFunc(r.Conditions, func(c Condition) bool { return slices.Contains(q.Conditions, c) })
}

// For returns the recommendations that fit q, the closest first: what nothing
// supersedes before what is superseded; rows for the person's conditions, then
// rows for people at large, then rows for other conditions; rows for a training
// status before rows for any; then the higher least age, the better known, the
// newer, and the ID.
func For(q Query) []Recommendation {
	var list []Recommendation
	for _, r := range rows() {
		if q.fits(r) {
			list = append(list, r.clone())
		}
	}
	slices.SortFunc(list, q.closer)
	return list
}

func (q Query) closer(a, b Recommendation) int {
	return cmp.Or(
		falseFirst(len(a.SupersededBy) > 0, len(b.SupersededBy) > 0),
		falseFirst(!q.shares(a), !q.shares(b)),
		falseFirst(a.clinical(), b.clinical()),
		falseFirst(len(a.Training) == 0, len(b.Training) == 0),
		cmp.Compare(b.AgeMin, a.AgeMin),
		betterKnown(a.Basis, b.Basis),
		cmp.Compare(b.Year, a.Year),
		cmp.Compare(a.ID, b.ID),
	)
}

func falseFirst(a, b bool) int {
	switch {
	case a == b:
		return 0
	case b:
		return -1
	}
	return 1
}

func betterKnown(a, b evidence.Basis) int {
	switch {
	case a == b:
		return 0
	case evidence.Weaker(a, b) == b:
		return -1
	}
	return 1
}

package equipment

import (
	"fmt"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Purchase is one thing to buy: dumbbells, handles or plates. Exactly one of
// the fields is given; a Dumbbell with a Count of 2 is a pair.
type Purchase struct {
	Dumbbell Dumbbell `json:"dumbbell,omitzero"`
	Handle   Handle   `json:"handle,omitzero"`
	Plate    Plate    `json:"plate,omitzero"`
}

// Validate returns every bad field of p at once: what [Kit.Validate] says of
// the thing, nothing given ([field.ErrMissing]), two things ([field.ErrConflict]).
func (p Purchase) Validate() error {
	var bad field.Errors
	given := 0
	if p.Dumbbell != (Dumbbell{}) {
		given++
		bad.Add("/dumbbell", checkDumbbell(nil, p.Dumbbell))
	}
	if p.Handle != (Handle{}) {
		given++
		bad.Add("/handle", checkHandle(nil, p.Handle))
	}
	if p.Plate != (Plate{}) {
		given++
		bad.Add("/plate", checkPlate(nil, p.Plate))
	}
	const allowed = "one of dumbbell, handle and plate"
	bad.Refuse(given == 0, "", nil, allowed, field.ErrMissing)
	bad.Refuse(given > 1, "", given, allowed, field.ErrConflict)
	return bad.Err()
}

// Mass returns all that is bought, 0 for a purchase that is not valid.
func (p Purchase) Mass() units.Mass {
	if p.Validate() != nil {
		return 0
	}
	each := p.Dumbbell.Mass.Mass + p.Plate.Mass.Mass + p.Handle.Mass.Mass + p.Handle.Collars.Mass
	return each * units.Mass(p.Dumbbell.Count+p.Plate.Count+p.Handle.Count) // one thing, at most 1 million kg
}

// String says what to buy, such as "2 × 4 kg dumbbell".
func (p Purchase) String() string {
	switch {
	case p.Dumbbell != Dumbbell{}:
		return fmt.Sprintf("%d × %s dumbbell", p.Dumbbell.Count, p.Dumbbell.Mass)
	case p.Plate != Plate{}:
		return fmt.Sprintf("%d × %s plate", p.Plate.Count, p.Plate.Mass)
	case p.Handle != Handle{}:
		return fmt.Sprintf("%d × %s", p.Handle.Count, Part{Kind: PartHandle, Name: p.Handle.Name, Mass: p.Handle.Mass}.head())
	}
	return "nothing"
}

// With returns the kit with the purchase; k stays as it is. What is like an
// entry of the kit adds to its count: a second handle of one kind makes a pair.
// It returns the errors of [Purchase.Validate] and, below "/kit", those of
// [Kit.Validate] for the larger kit.
func (k Kit) With(p Purchase) (Kit, error) {
	if err := p.Validate(); err != nil {
		return Kit{}, err
	}
	d, q, h := p.Dumbbell, p.Plate, p.Handle
	k.Dumbbells = more(k.Dumbbells, d, d.Count, func(in *Dumbbell) (*int, bool) { return &in.Count, in.Mass.Mass == d.Mass.Mass })
	k.Plates = more(k.Plates, q, q.Count, func(in *Plate) (*int, bool) { return &in.Count, in.Mass.Mass == q.Mass.Mass })
	k.Handles = more(k.Handles, h, h.Count, func(in *Handle) (*int, bool) {
		like := in.Name == h.Name && in.Mass.Mass == h.Mass.Mass && in.Collars.Mass == h.Collars.Mass && in.PlatesPerEnd == h.PlatesPerEnd
		return &in.Count, like
	})
	return k, field.At("/kit", k.Validate())
}

// more returns a new list with n more of the entry: of the one like it, where
// there is one. like returns the count of an entry and whether it is.
func more[T any](list []T, entry T, n int, like func(in *T) (*int, bool)) []T {
	if n == 0 {
		return list
	}
	list = slices.Clone(list)
	for i := range list {
		if count, ok := like(&list[i]); ok {
			*count += n
			return list
		}
	}
	return append(list, entry)
}

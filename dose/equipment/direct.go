package equipment

import (
	"cmp"
	"math"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Nearest is [Table.Nearest] of what [Kit.Compile] would list, without listing it: the same
// load of the same parts, also where that is more than a table holds. Its work is bounded by the
// target and the ceiling, and grows with the kinds of plate rather than with what they make.
//
// The errors are those of [Kit.Validate], [RoundingRule.Validate] and [Table.Nearest], with
// those of the hold below "/hold"; [ErrEmptyKit] if nothing can be held so; and
// [ErrTooManyLoads] where plates of so many kinds have so little in common, such as
// pounds among kilograms, that neither list nor bounded search can hold their sums.
func (k Kit) Nearest(target units.Mass, h body.Hold, p RoundingRule) (Load, error) {
	var bad field.Errors
	bad.Add("", k.Validate())
	bad.Add("/hold", h.Check())
	bad.Add("", p.check(target))
	if err := bad.Err(); err != nil {
		return Load{}, err
	}
	ceiling := units.MaxMass
	if p.Ceiling > 0 {
		ceiling = p.Ceiling
	}
	s := seeker{hold: h, target: target, most: min(target, ceiling), ceiling: ceiling, up: p.Direction != units.Down}
	switch h {
	case body.OneHand, body.OneEachHand, body.BothHandsOnOne:
		s.ready(PartDumbbell, k.Dumbbells)
		s.ready(PartKettlebell, k.Kettlebells)
		s.handles(PartHandle, k.Handles, k.Plates)
	case body.OnBar:
		s.handles(PartBar, asHandles(k.Bars), k.Plates)
	case body.OnStack:
		s.stacks(k.Stacks)
	case body.OnLimb:
		s.ready(PartAnkleWeight, k.AnkleWeights)
	default:
		s.tooMany = true // a table has them all, and is small
	}
	if s.tooMany {
		t, err := k.Compile(h)
		if err != nil {
			return Load{}, err
		}
		return t.Nearest(target, p)
	}
	return s.answer(p)
}

// A seeker keeps the best loads met on either side of the target.
type seeker struct {
	hold                  body.Hold
	target, most, ceiling units.Mass
	up                    bool // a load above most is of use
	below, above, least   offered
	tooMany               bool
}

// An offered load: what it weighs, with how many plates at one place, and of what.
type offered struct {
	each   units.Mass
	plates int
	parts  []Part
	is     bool
}

// offer takes a load if it is better than what there was; what comes first stays where the
// two are alike.
func (s *seeker) offer(each units.Mass, plates int, parts func() []Part) {
	take := func(f *offered, better bool) {
		if !f.is || better || each == f.each && plates < f.plates {
			*f = offered{each, plates, parts(), true}
		}
	}
	take(&s.least, each < s.least.each)
	switch {
	case each <= s.most:
		take(&s.below, each > s.below.each)
	case s.up && each <= s.ceiling:
		take(&s.above, each < s.above.each)
	}
}

func (s *seeker) answer(p RoundingRule) (Load, error) {
	if !s.least.is {
		return Load{}, nothingToHold(s.hold)
	}
	goUp := s.above.is && (!s.below.is || p.Direction == units.Up && s.below.each < s.target ||
		p.Direction == units.Nearest && s.above.each-s.target < s.target-s.below.each)
	switch {
	case goUp:
		return s.load(s.above), nil
	case s.below.is:
		return s.load(s.below), nil
	}
	return Load{}, &TooHeavyError{s.load(s.least), s.target, p.Ceiling}
}

func (s *seeker) load(f offered) Load {
	total, _ := s.hold.Total(f.each) // at most 5 million kg
	return Load{each: f.each, total: total, hold: s.hold, parts: f.parts}
}

// ready offers what is lifted as it is.
func (s *seeker) ready(kind PartKind, list []Dumbbell) {
	n := s.hold.Implements()
	for _, d := range list {
		if d.Count >= n || alike(list, d.Mass.Mass) >= n {
			s.offer(d.Mass.Mass, 0, func() []Part { return []Part{{kind, "", withUnit(d.Mass), 1}} })
		}
	}
}

func (s *seeker) handles(kind PartKind, handles []Handle, plates []Plate) {
	n := s.hold.Implements()
	pl := newPlace(plates, 2*n, s.room(handles, n))
	for _, h := range handles {
		if h.Count < n {
			continue
		}
		s.base(h.Mass.Mass+h.Collars.Mass, 2, h.limit(), pl, func(counts []int) []Part {
			return pl.parts(h.parts(kind), PartPlate, counts)
		})
	}
}

// room is the most that a place of any handle may take.
func (s *seeker) room(handles []Handle, n int) units.Mass {
	room := units.Mass(0)
	for _, h := range handles {
		if h.Count >= n {
			room = max(room, (s.highest()-h.Mass.Mass-h.Collars.Mass)/2)
		}
	}
	return room
}

// highest is the heaviest load that may be of use.
func (s *seeker) highest() units.Mass {
	if s.up {
		return s.ceiling
	}
	return s.most
}

func (s *seeker) stacks(stacks []Stack) {
	for _, stack := range stacks {
		pl := newPlace(stack.AddOns, 1, s.highest()-stack.Pins[0].Mass)
		for _, pin := range stack.Pins {
			s.base(pin.Mass, 1, noLimit, pl, func(counts []int) []Part {
				return pl.parts([]Part{{PartPin, stack.Name, withUnit(pin), 1}}, PartAddOn, counts)
			})
		}
	}
}

// base offers what can be made of a start with plates on so many ends.
func (s *seeker) base(start units.Mass, ends units.Mass, limit int, pl *place, parts func([]int) []Part) {
	s.offer(start, 0, func() []Part { return parts(nil) })
	s.tooMany = s.tooMany || pl.tooMany
	if s.tooMany {
		return
	}
	if room := s.most - start; room >= ends {
		if at, counts, n := pl.atMost(room/ends, limit); n > 0 {
			s.offer(start+ends*at, n, func() []Part { return parts(counts) })
		}
	}
	if room := s.ceiling - start; s.up && room >= ends {
		from := max(s.most-start, 0)/ends + 1
		if s.most < start {
			from = 1 // what the start alone does not make
		}
		if at, counts, n := pl.atLeast(from, room/ends, limit); n > 0 {
			s.offer(start+ends*at, n, func() []Part { return parts(counts) })
		}
	}
	s.tooMany = s.tooMany || pl.tooMany
}

// parts appends the plates of a place, the heaviest first.
func (pl *place) parts(parts []Part, kind PartKind, counts []int) []Part {
	for i, n := range slices.Backward(counts) {
		if n > 0 {
			parts = append(parts, Part{kind, "", withUnit(pl.kinds[i].Mass), n})
		}
	}
	return parts
}

// newPlace returns what one of so many places that are loaded alike can take of the stock, up
// to room.
func newPlace(stock []Plate, places int, room units.Mass) *place {
	pl := &place{}
	for _, p := range stock {
		p.Count /= places
		if p.Mass.Mass > room || p.Count == 0 {
			continue
		}
		p.Count = int(min(units.Mass(p.Count), room/p.Mass.Mass))
		pl.kinds = append(pl.kinds, p)
	}
	slices.SortFunc(pl.kinds, func(a, b Plate) int { return cmp.Compare(a.Mass.Mass, b.Mass.Mass) })
	ways := 1
	pl.upTo = make([]bound, len(pl.kinds)+1)
	for i, p := range pl.kinds {
		b := pl.upTo[i]
		pl.upTo[i+1] = bound{b.mass + p.Mass.Mass*units.Mass(p.Count), b.plates + p.Count}
		ways = min(ways*(p.Count+1), math.MaxInt32)
	}
	pl.room = min(room, pl.upTo[len(pl.kinds)].mass)
	if ways > fewWays {
		pl.build()
	}
	return pl
}

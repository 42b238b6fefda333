package equipment

import (
	"encoding/json"
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// PartKind is what a part of a load is.
type PartKind uint8

// Kinds of part.
const (
	_               PartKind = iota // not given
	PartDumbbell                    // "dumbbell": a ready-made dumbbell
	PartHandle                      // "handle": a dumbbell handle
	PartBar                         // "bar": a bar
	PartCollars                     // "collars": both collars of a handle or bar
	PartPlate                       // "plate": a plate on a handle or bar
	PartPin                         // "pin": a pin position of a stack
	PartAddOn                       // "add-on": an add-on weight on a stack
	PartKettlebell                  // "kettlebell"
	PartAnkleWeight                 // "ankle weight"
)

var partKinds = field.NewVocabulary[PartKind]("kind of part", "", "dumbbell", "handle", "bar", "collars", "plate", "pin", "add-on", "kettlebell", "ankle weight")

// PartKinds yields every kind of part.
func PartKinds() iter.Seq[PartKind] { return partKinds.All() }

// String returns the kind's name, such as "plate".
func (k PartKind) String() string { return partKinds.Text(k) }

// MarshalText writes what String returns.
func (k PartKind) MarshalText() ([]byte, error) { return partKinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *PartKind) UnmarshalText(text []byte) error { return partKinds.Unmarshal(text, k) }

// A Part is one kind of thing that a load is made of.
type Part struct {
	Kind  PartKind     `json:"kind"`
	Name  string       `json:"name,omitzero"` // of a handle, bar or stack that has one
	Mass  units.Marked `json:"mass"`          // of one, with the unit marked on it
	Count int          `json:"count"`         // plates: on each end; else on each implement
}

// onImplement returns how many of the part one implement has.
func (p Part) onImplement() int {
	if p.Kind == PartPlate {
		return 2 * p.Count
	}
	return p.Count
}

// A Load is a weight that the kit makes, held in one way. Compare loads with
// [Load.Equal]. The zero Load is "not given".
type Load struct {
	each, total units.Mass
	hold        body.Hold

	table *Table // where made belongs to; nil for a load that was decoded
	made  recipe
	parts []Part // of a load that was decoded
}

// NewLoad returns a load of which nothing is known but what one implement weighs and
// how it is held: no parts. The errors are those of [Load.Validate].
func NewLoad(each units.Mass, h body.Hold) (Load, error) {
	total, _ := h.Total(each) // Validate says why there is none
	l := Load{each: each, total: total, hold: h}
	if err := l.Validate(); err != nil {
		return Load{}, err
	}
	return l, nil
}

// Each returns what one implement weighs.
func (l Load) Each() units.Mass { return l.each }

// Total returns what all that is held at once weighs.
func (l Load) Total() units.Mass { return l.total }

// Hold returns how it is held.
func (l Load) Hold() body.Hold { return l.hold }

// Parts returns what each implement is made of, in the order of handling:
// dumbbell, kettlebell or ankle weight; handle or bar, collars, plates; pin position, add-ons. The heavier
// plates and add-ons come first. Unloaded or on a band, there are no parts. The list is the
// caller's own.
func (l Load) Parts() []Part {
	if l.table == nil {
		return slices.Clone(l.parts)
	}
	it := l.table.item(l.made)
	if it.kind == 0 {
		return nil
	}
	parts := Handle{Name: it.name, Mass: it.mass, Collars: it.collars}.parts(it.kind)
	if it.sums == nil {
		return parts
	}
	kind := PartPlate
	if it.kind == PartPin {
		kind = PartAddOn
	}
	for p, n := range it.sums.of(l.made.row) {
		parts = append(parts, Part{kind, "", withUnit(p.Mass), n})
	}
	return parts
}

// parts returns the handle, or what else a load starts from, with its collars.
func (h Handle) parts(kind PartKind) []Part {
	parts := []Part{{kind, h.Name, withUnit(h.Mass), 1}}
	if h.Collars.Mass > 0 {
		parts = append(parts, Part{PartCollars, "", withUnit(h.Collars), 1})
	}
	return parts
}

// withUnit turns a unit not given into the kilogram, which it counts as.
func withUnit(m units.Marked) units.Marked {
	m.Unit, _ = units.ParseMassUnit(m.Unit.String()) // reads all that String prints
	return m
}

// plates returns how many plates, or add-ons, are used in all, on all implements.
func (l Load) plates() int {
	n := 0
	for _, p := range l.Parts() {
		if p.Kind == PartPlate || p.Kind == PartAddOn {
			n += p.onImplement() * l.hold.Implements()
		}
	}
	return n
}

// Marked returns Each with the unit that is marked on the first part, so that
// a dumbbell of 25 lb prints as that; kilograms if there are no parts.
func (l Load) Marked() units.Marked {
	m := units.Marked{Mass: l.each, Unit: units.KG}
	if parts := l.Parts(); len(parts) > 0 {
		m.Unit = parts[0].Mass.Unit
	}
	return m
}

// Equal reports whether l and m weigh the same, are held alike and are made of
// the same parts.
func (l Load) Equal(m Load) bool {
	return l.each == m.each && l.total == m.total && l.hold == m.hold && slices.Equal(l.Parts(), m.Parts())
}

// String says what to take, in the units marked on it: "4 kg dumbbell in each
// hand", "handle 2 kg + 2 × 1.25 kg on each end, in one hand", "stack at 20 kg
// + 1 × 2.5 kg". Without parts it gives the mass and the hold.
func (l Load) String() string {
	parts := l.Parts()
	if len(parts) == 0 {
		return l.bare()
	}
	var b strings.Builder
	b.WriteString(parts[0].head())
	ends := ""
	for _, p := range parts[1:] {
		switch p.Kind {
		case PartCollars:
			fmt.Fprintf(&b, " with collars %s", p.Mass)
			continue
		case PartPlate:
			ends = " on each end"
		}
		fmt.Fprintf(&b, " + %d × %s", p.Count, p.Mass)
	}
	b.WriteString(ends)
	if hand := inHand[l.hold]; hand != "" {
		if !parts[0].Kind.ready() {
			b.WriteByte(',')
		}
		b.WriteString(hand)
	}
	return b.String()
}

// ready reports whether it is ready-made.
func (k PartKind) ready() bool {
	return k == PartDumbbell || k == PartKettlebell || k == PartAnkleWeight
}

// bare describes a load that does not say what it is made of.
func (l Load) bare() string {
	switch {
	case l.hold == body.Unloaded:
		return "no weight"
	case l.hold == body.OnBand:
		return "a band"
	case l.hold == body.OnBar, l.hold == body.OnStack, l.hold == body.OnLimb:
		return l.each.Short(units.Down) + " " + l.hold.String()
	}
	return l.each.Short(units.Down) + inHand[l.hold]
}

// head names the part that a load starts from.
func (p Part) head() string {
	name := p.Name
	if name == "" {
		name = p.Kind.String()
	}
	switch {
	case p.Kind.ready():
		return p.Mass.String() + " " + p.Kind.String()
	case p.Kind != PartPin:
		return name + " " + p.Mass.String()
	case p.Name == "":
		name = "stack"
	}
	return name + " at " + p.Mass.String()
}

var inHand = map[body.Hold]string{
	body.OneHand: " in one hand", body.OneEachHand: " in each hand", body.BothHandsOnOne: " in both hands",
}

// Validate returns every bad field of l at once: a hold not given; a mass below
// zero, or above zero if unloaded or on a band; a total that does not follow from Each
// and the hold; parts of no kind, with a mass or count not above zero, or that
// do not add up to Each.
func (l Load) Validate() error {
	var bad field.Errors
	bad.Add("/hold", l.hold.Check())
	if l.each < 0 || l.each > 0 && (l.hold == body.Unloaded || l.hold == body.OnBand) {
		bad.Add("/each", field.Bad(l.each, "0 kg or more, 0 kg if unloaded or on a band", field.ErrOutOfRange))
	}
	if total, err := l.hold.Total(l.each); err != nil {
		bad.Add("/each", err)
	} else if total != l.total {
		bad.Add("/total", field.Bad(l.total, fmt.Sprintf("%s, held %s", total, l.hold), field.ErrConflict))
	}
	if parts := l.Parts(); len(parts) > 0 {
		bad.Add("/parts", l.checkParts(parts))
	}
	return bad.Err()
}

func (l Load) checkParts(parts []Part) error {
	var bad field.Errors
	var sum units.Mass
	for i, p := range parts {
		if err := p.check(); err != nil {
			bad.Add(fmt.Sprintf("/%d", i), err)
			continue
		}
		mass, err := p.Mass.Mass.Times(p.onImplement())
		if err == nil {
			sum, err = sum.Add(mass)
		}
		bad.Add(fmt.Sprintf("/%d", i), err)
	}
	bad.Refuse(len(bad) == 0 && sum != l.each, "", sum, fmt.Sprintf("parts of %s in all", l.each), field.ErrConflict)
	return bad.Err()
}

func (p Part) check() error {
	var bad field.Errors
	bad.Add("", partKinds.Check("/kind", p.Kind))
	bad.Add("/mass", checkMass(p.Mass, maxMass))
	bad.Add("/count", checkCount(p.Count))
	return bad.Err()
}

// loadJSON is the JSON of a Load.
type loadJSON struct {
	Each  units.Mass `json:"each"`
	Total units.Mass `json:"total"`
	Hold  body.Hold  `json:"hold"`
	Parts []Part     `json:"parts,omitempty"`
}

// MarshalJSON writes masses, hold and parts.
func (l Load) MarshalJSON() ([]byte, error) {
	return json.Marshal(loadJSON{l.each, l.total, l.hold, l.Parts()})
}

// UnmarshalJSON reads what MarshalJSON writes, strictly. It does not validate.
func (l *Load) UnmarshalJSON(data []byte) error {
	var j loadJSON
	if err := field.Decode(data, &j, field.Strict); err != nil {
		return err
	}
	return field.Assign(l, Load{each: j.Each, total: j.Total, hold: j.Hold, parts: j.Parts}, nil)
}

package equipment

import (
	"fmt"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A RoundingRule says how [Table.Nearest] rounds. The zero RoundingRule goes down.
type RoundingRule struct {
	Direction units.Rounding // to the nearest, ties go down
	Ceiling   units.Mass     // per implement; 0 for none, which only [units.Down] allows
}

// directions are the words for a direction in an error.
var directions = []string{units.Down: "down", units.Nearest: "nearest", units.Up: "up"}

// Validate returns every bad field of p at once: an unknown direction or a
// ceiling below zero ([field.ErrOutOfRange]), and another direction than down
// without a ceiling ([field.ErrMissing]).
func (p RoundingRule) Validate() error {
	var bad field.Errors
	switch {
	case int(p.Direction) >= len(directions):
		bad.Add("/direction", field.Bad(p.Direction, strings.Join(directions, ", "), field.ErrOutOfRange))
	case p.Ceiling == 0 && p.Direction != units.Down:
		bad.Add("/ceiling", field.Bad(nil, fmt.Sprintf("a mass above 0 kg beside %q", directions[p.Direction]), field.ErrMissing))
	}
	if p.Ceiling < 0 {
		bad.Add("/ceiling", field.Bad(p.Ceiling, "0 kg or more", field.ErrOutOfRange))
	}
	return bad.Err()
}

// A TooHeavyError reports that even the lightest load is too heavy.
type TooHeavyError struct {
	Lightest Load
	Target   units.Mass // per implement, as asked for
	Ceiling  units.Mass // per implement; 0 for none
}

// Error gives the lightest load, the target and the ceiling.
func (e *TooHeavyError) Error() string {
	e = field.OrZero(e)
	text := fmt.Sprintf("equipment: lightest load too heavy: %s, target %s", e.Lightest, e.Target)
	if e.Ceiling > 0 {
		text += fmt.Sprintf(", ceiling %s", e.Ceiling)
	}
	return text
}

// Nearest returns the load that target, a mass per implement, is rounded to.
// It never exceeds the ceiling of p, if there is one; with [units.Up] it is the
// greatest load below target where kit and ceiling allow none at or above it,
// so that the caller compares when that matters. For one policy, a greater
// target never gives a lighter load.
//
// It returns a [TooHeavyError] if no load suits because even the lightest
// exceeds the ceiling or, with [units.Down], the target; the errors of
// [RoundingRule.Validate], with a [field.ErrOutOfRange] for "/target" below zero;
// and [ErrEmptyKit] from a zero Table.
func (t *Table) Nearest(target units.Mass, p RoundingRule) (Load, error) {
	if err := p.check(target); err != nil {
		return Load{}, err
	}
	if t.size() == 0 {
		return Load{}, ErrEmptyKit
	}
	ceiling := units.MaxMass
	if p.Ceiling > 0 {
		ceiling = p.Ceiling
	}
	allowed := t.upTo(ceiling)
	i := t.upTo(min(target, ceiling)) - 1 // the greatest below, -1 if there is none
	if i+1 < allowed && t.goUp(i, target, p.Direction) {
		i++
	}
	if i < 0 {
		return Load{}, &TooHeavyError{t.load(0), target, p.Ceiling}
	}
	return t.load(i), nil
}

// check is Validate with the target; it allocates only on errors.
func (p RoundingRule) check(target units.Mass) error {
	err := p.Validate()
	if target >= 0 {
		return err
	}
	var bad field.Errors
	bad.Add("/target", field.Bad(target, "0 kg or more", field.ErrOutOfRange))
	bad.Add("", err)
	return bad.Err()
}

// upTo returns how many loads do not exceed each.
func (t *Table) upTo(each units.Mass) int {
	i, found := t.search(each)
	if found {
		i++
	}
	return i
}

// goUp decides between load i, the greatest not above target, and the next,
// which is there and within the ceiling. i is -1 if there is none below.
func (t *Table) goUp(i int, target units.Mass, d units.Rounding) bool {
	switch d {
	case units.Up:
		return i < 0 || t.each[i] < target
	case units.Nearest:
		return i < 0 || t.each[i+1]-target < target-t.each[i]
	}
	return false
}

// A Gap is the step from one mass to the next heavier load, per implement.
type Gap struct {
	From  units.Mass     `json:"from"`
	To    Load           `json:"to"`
	Step  units.Mass     `json:"step"`           // above 0
	Share units.Fraction `json:"share,omitzero"` // Step as a share of From; 0 where From is 0
}

// Next returns the step from each, a mass per implement that the kit need not
// make, to the next heavier load. It is false if there is none, or if each is
// below zero.
func (t *Table) Next(each units.Mass) (Gap, bool) {
	i := t.upTo(each)
	if each < 0 || i == t.size() {
		return Gap{}, false
	}
	g := Gap{From: each, To: t.load(i), Step: t.each[i] - each}
	if each > 0 {
		g.Share, _ = g.Step.Share(each) // fails for zero only
	}
	return g, true
}

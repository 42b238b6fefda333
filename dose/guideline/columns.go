package guideline

import (
	"fmt"
	"maps"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// columns are the fields that the collection has, by its own names.
var columns = func() map[string]Field {
	byName := map[string]Field{}
	for f := range Fields() {
		if name := readers[f].column; name != "" {
			byName[name] = f
		}
	}
	return byName
}()

// read takes the field from a cell: shares from per cent, others but effort and effects as
// they stand there.
func (f Field) read(cell []byte, r *Recommendation) error {
	switch into := readers[f].at(r).(type) {
	case *units.Range[units.Fraction]:
		return readShare(cell, into)
	case *EffortRange:
		return readEffort(cell, r)
	case *[]Effect:
		return readEffects(cell, r)
	default:
		return field.Decode(cell, into, field.Strict)
	}
}

// readShare reads a range in percent.
func readShare(cell []byte, into *units.Range[units.Fraction]) (err error) {
	var e ends
	if err = field.Decode(cell, &e, field.Strict); err == nil {
		*into, err = rangeOf[units.Fraction](e, 100)
	}
	return err
}

// ends are those of a range, and its scale where it has one.
type ends struct {
	Min   *float64 `json:"min"`
	Max   *float64 `json:"max"`
	Scale string   `json:"scale"`
}

// rangeOf divides the ends by what a whole is.
func rangeOf[T ~int | ~float64](e ends, whole float64) (units.Range[T], error) {
	switch {
	case e.Min != nil && e.Max != nil:
		return units.Between(T(*e.Min/whole), T(*e.Max/whole))
	case e.Min != nil:
		return units.AtLeast(T(*e.Min / whole)), nil
	case e.Max != nil:
		return units.AtMost(T(*e.Max / whole)), nil
	}
	return units.Range[T]{}, field.Bad("", "a range with an end", field.ErrMissing)
}

const borg = "Borg 6-20"

func readEffort(cell []byte, r *Recommendation) (err error) {
	var e ends
	if err = field.Decode(cell, &e, field.Strict); err != nil {
		return err
	}
	r.Effort.Ends = e.Scale
	if e.Scale == borg {
		r.Effort.Scale = units.ScaleBorg
	}
	r.Effort.Range, err = rangeOf[int](e, 1)
	return err
}

// readEffects adds the values to the effects that stand in r in their order
// and with their units.
func readEffects(cell []byte, r *Recommendation) error {
	var values map[string]float64
	if err := field.Decode(cell, &values, field.Strict); err != nil {
		return err
	}
	for i, e := range r.Effects {
		value, ok := values[e.Of]
		if !ok {
			return field.Bad(e.Of, fmt.Sprint("an effect among ", slices.Sorted(maps.Keys(values))), field.ErrUnknown)
		}
		r.Effects[i].Value = value
	}
	if len(values) != len(r.Effects) {
		return field.Bad(fmt.Sprint(len(r.Effects), " units"), fmt.Sprint("one for each of ", len(values), " effects"), field.ErrMissing)
	}
	return nil
}

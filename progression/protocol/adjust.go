package protocol

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ends are the low and high end of a change as printed, in tenths of its unit.
type ends struct{ low, high int }

// A band is a printed row: for so many repetitions, that change.
type band struct {
	from, to int // repetitions; to is 0 for an open end
	kg, lb   ends
	basis    evidence.Basis
}

// A table is a printed table of bands, rising. Its rows cover the repetitions
// from the first row's on without a gap.
type table struct {
	name  string
	units []units.MassUnit // columns that were printed
	rows  []band
	facts rowSource
}

// adjustments are the tables for the fourth set and for the next session.
type adjustments struct{ fourth, next *table }

// An Adjustment is what a printed row says of the load.
type Adjustment struct {
	Reps units.Range[int] `json:"reps"` // the row's repetitions
	// Low and High are the ends of the printed range in the column's unit;
	// below zero means lighter.
	Low     units.Marked      `json:"low"`
	High    units.Marked      `json:"high"`
	Pick    units.Marked      `json:"pick"` // the cautious one: Low
	Basis   evidence.Basis    `json:"basis"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// FourthSet returns how the fourth set's load differs from the third's by the
// repetitions done in the third, from the column of unit u. It is a
// [field.ErrConflict] for schemes without one and for a unit that the
// table was not printed in, a [field.ErrOutOfRange] for repetitions without a row,
// as with fewer than 4 on the 10RM form.
func (s Scheme) FourthSet(u units.MassUnit, reps int) (Adjustment, error) {
	return s.adjust(s.layout().gives.fourth, u, reps, thirdSet)
}

// NextSession returns how the next session's base differs from this one's by
// the repetitions done in the fourth set, with the errors of [Scheme.FourthSet].
// One printing reads the daily adjustable scheme's column by the third set:
// see [Scheme.Disagreements].
func (s Scheme) NextSession(u units.MassUnit, reps int) (Adjustment, error) {
	return s.adjust(s.layout().gives.next, u, reps, fourthSet)
}

func (s Scheme) adjust(t *table, u units.MassUnit, reps, set int) (Adjustment, error) {
	var bad field.Errors
	bad.Add("/scheme", s.check())
	bad.Add("/unit", checkUnit(u))
	bad.Refuse(len(bad) == 0 && t == nil, "/scheme", s, "a scheme that changes the load by repetitions", field.ErrConflict)
	if err := bad.Err(); err != nil {
		return Adjustment{}, err
	}
	row, err := t.find(reps)
	bad.Add("/reps", err)
	bad.Add("/unit", t.has(u))
	if err := bad.Err(); err != nil {
		return Adjustment{}, err
	}
	return t.change(row, u, set), nil
}

func (t *table) find(reps int) (band, error) {
	for _, row := range t.rows {
		if reps >= row.from && (row.to == 0 || reps <= row.to) {
			return row, nil
		}
	}
	return band{}, field.Bad(reps, units.AtLeast(t.rows[0].from).String()+" repetitions", field.ErrOutOfRange)
}

func (t *table) has(u units.MassUnit) error {
	if slices.Contains(t.units, u) {
		return nil
	}
	return field.Bad(u, t.units[0].String()+" for "+t.name, field.ErrConflict)
}

func (t *table) change(row band, u units.MassUnit, set int) Adjustment {
	column := row.lb
	if u == units.KG {
		column = row.kg
	}
	tenths := func(n int) units.Marked { return units.Marked{Mass: units.Mass(n) * (u.Mass() / 10), Unit: u} }
	c := Adjustment{Reps: row.reps(), Low: tenths(column.low), High: tenths(column.high), Pick: tenths(column.low), Basis: row.basis}
	c.Reasons = []evidence.Reason{evidence.Because("protocol.change", t.rowFact(row), factPick).With(
		evidence.Count("set", set), evidence.Count("reps", c.Reps), evidence.Marked("low", c.Low), evidence.Marked("high", c.High))}
	return c
}

// reps returns the repetitions of the row.
func (b band) reps() units.Range[int] {
	if b.to == 0 {
		return units.AtLeast(b.from)
	}
	return units.Must(units.Between(b.from, b.to)) // a row of the tables
}

// From returns m changed by the cautious pick, exactly, in m's unit. It is a
// [field.ErrOutOfRange] if that leaves nothing, a [field.ErrOverflow] if it
// does not fit.
func (c Adjustment) From(m units.Marked) (units.Marked, error) {
	mass, err := m.Mass.Add(c.Pick.Mass)
	if err != nil {
		return units.Marked{}, err
	}
	if m.Mass <= 0 || mass <= 0 {
		return units.Marked{}, field.Bad(m, "a mass above 0 kg that stays above it when changed by "+c.Pick.String(), field.ErrOutOfRange)
	}
	return units.Marked{Mass: mass, Unit: m.Unit}, nil
}

// Fourth returns the fourth set after a third with m: as many repetitions as
// possible with m changed as c says, rounded down to the kit, which may be nil.
// The errors are those of [Adjustment.From] and [equipment.Table.Nearest].
func (c Adjustment) Fourth(m units.Marked, kit *equipment.Table) (SchemeSet, error) {
	mass, err := c.From(m)
	if err != nil {
		return SchemeSet{}, err
	}
	s := SchemeSet{AsMany: true, Adjusted: true, ToFailure: true}
	if err := s.put(mass, kit); err != nil {
		return SchemeSet{}, err
	}
	return s, nil
}

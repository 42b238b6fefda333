package dose

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A Frame is a request that passed screening, kit and setting, with what the
// guideline says for it: everything about a dose but its load and count. The
// zero value comes from no request and gives no dose. It does not change.
type Frame struct {
	r     Request
	table *equipment.Table
	g     guide
	plain Prescription // without a load
}

// NewFrame returns the frame of a request. The errors are those of [Prescribe]; with
// one comes a frame that gives no dose.
func NewFrame(r Request) (*Frame, error) {
	if err := r.validate(); err != nil {
		return &Frame{}, err
	}
	if err := gate(r); err != nil {
		return &Frame{}, err
	}
	table, err := r.table()
	if err != nil {
		return &Frame{}, err
	}
	return frame(r, table)
}

// frame works on a request that is valid and not barred.
func frame(r Request, table *equipment.Table) (*Frame, error) {
	g, err := guideFor(r)
	if err != nil {
		return &Frame{}, err
	}
	p := opening(r, g)
	p.Reasons = slices.Clip(p.Reasons) // several doses may be drawn up in one frame
	return &Frame{r, table, g, p}, nil
}

// Request returns what the frame was made for.
func (f *Frame) Request() Request { return f.r }

// Table returns what the kit makes in the exercise's hold.
func (f *Frame) Table() *equipment.Table { return f.table }

// Outline returns the dose without a load: phase, sets, the range of the count
// and the count to begin with, reserve, rest and days.
func (f *Frame) Outline() Prescription { return f.plain }

// MostSets returns the most sets that may be asked for: those of the guideline's
// row, or those that it is built up to.
func (f *Frame) MostSets() int {
	most, stated := f.g.row.Sets.Max()
	if !stated || f.g.buildTo < aboutThreeSets {
		return f.g.buildTo
	}
	return max(most, f.g.buildTo)
}

// Ceiling returns the most per implement that restrictions, the limit on the
// share of a maximum and a beginner's first weight allow, [units.MaxMass] where
// nothing limits it. Why it is what it is stands in the reasons of
// [Frame.Continue].
func (f *Frame) Ceiling() units.Mass { return f.draft().limit() }

// Prescribe returns the dose of one exercise, as [Prescribe] does.
func (f *Frame) Prescribe() (Prescription, error) {
	if f.table == nil {
		return Prescription{}, &units.FieldError{Path: "/screening", Allowed: "a frame of NewFrame", Err: ErrNotScreened}
	}
	d := f.draft()
	var err error
	switch {
	case d.r.Exercise.Hold == body.Unloaded:
		d.withoutLoad()
	case d.estimated():
		err = d.fromEstimate(*d.r.Estimate)
	default:
		err = d.byFinding()
	}
	if err != nil {
		return Prescription{}, err
	}
	return d.close(), nil
}

// estimated reports whether there is an estimate that a load may rest on.
func (d *draft) estimated() bool {
	return d.r.Estimate != nil && !d.r.Exercise.MovesBody && d.r.Exercise.Measure == exercise.Repetitions
}

func (f *Frame) draft() *draft { return &draft{f, f.plain} }

// limit returns the most per implement that a dose which goes on from another
// may ask for.
func (d *draft) limit() units.Mass {
	ceiling := d.restricted()
	if !d.r.Technique.Made() {
		ceiling = min(ceiling, d.firstMass())
	}
	most := d.r.Screening.Limits.MaxFraction
	switch {
	case most <= 0:
	case d.estimated():
		d.because(evidence.Because("dose.fraction-limit").With("most", most))
		if under, err := d.r.Estimate.Cautious().Scale(most, units.Down); err == nil {
			ceiling = min(ceiling, under)
		}
	case most < blindCap:
		d.because(evidence.Because("dose.kept-lightest", factBlindCap).With("most", most))
		ceiling = min(ceiling, d.table.Lightest().Each)
	}
	return ceiling
}

package dose

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Frame is a request that passed screening, kit and setting, with what the
// guideline says for it: everything about a dose but its load and count. The
// zero value comes from no request and gives no dose. It does not change.
type Frame struct {
	r     *Request // nobody changes it
	table *equipment.Table
	g     guide

	estimate *onerm.Estimate   // that the dose rests on, nil for none
	note     []evidence.Reason // of the choice
	ability  strength.Ability  // what is known of strength
	chance   strength.Chance   // that counts are kept to
	oneRM    units.Mass        // per implement, the best of what is known; 0 for nothing
	most     units.Mass        // per implement, by every limit
	top      units.Mass        // per implement, of the band of the goal's row
	light    bool              // it is a light one, of which what was asked for last stays
}

// NewFrame returns the frame of a request. The errors are those of [Prescribe]; with
// one comes a frame that gives no dose.
//
// It chooses the estimate among those that are of the exercise and hold, say
// something of the day and do not contradict each other (package week looks at the
// weights of all sets too, and who hands its list on gets the same choice): the latest,
// and of one day the one that shows less by [strength.Ability.Tested]. One-sided work takes a test of
// both sides, or the weaker of left and right, since the stronger side does not
// exceed the weaker; where one side alone was tested, that says nothing of the
// other. What cannot be used is listed in the outline, unless it is the only one of
// the exercise and says nothing of the day: that is an error.
func NewFrame(r Request) (*Frame, error) { return FrameOf(&r) }

// FrameOf is [NewFrame] of a request that is kept and not copied: it may not change while
// the frame is in use. Its screening is tightened, see [screening.Outcome.Tightest].
func FrameOf(r *Request) (*Frame, error) {
	f := &Frame{r: field.OrZero(r)}
	if err := f.fill(fewReasons); err != nil {
		return &Frame{}, err
	}
	f.g.Reasons = slices.Clip(f.g.Reasons) // callers may add to the outline's
	return f, nil
}

// fill works out everything from the request, with room for so many reasons.
func (f *Frame) fill(reasons int) (err error) {
	if err := f.r.validate(); err != nil {
		return err
	}
	f.r.Screening = f.r.Screening.Tightest()
	if err := gate(f.r); err != nil {
		return err
	}
	if f.table, err = f.r.table(); err != nil {
		return err
	}
	f.g.fill(f.r, reasons)
	f.choose()
	f.know()
	f.bound()
	return nil
}

// Request returns what the frame was made for.
func (f *Frame) Request() Request { return *field.OrZero(field.OrZero(f).r) }

// Table returns what the kit makes in the exercise's hold.
func (f *Frame) Table() *equipment.Table { return field.OrZero(f).table }

// Outline returns the dose without a load: phase, sets, the range of the count
// and the count to begin with, reserve, rest and days.
func (f *Frame) Outline() Prescription { return field.OrZero(f).g.Prescription }

// MostSets returns the most sets that may be asked for: those of the guideline's
// row, or those that it is built up to.
func (f *Frame) MostSets() int {
	f = field.OrZero(f)
	if f.g.row == nil || f.g.BuildTo < aboutThreeSets {
		return f.g.BuildTo
	}
	most, _ := f.g.row.Sets.Max()
	return max(most, f.g.BuildTo)
}

// Ceiling returns the most per implement that restrictions, the limit on the
// share of a maximum, the bound of an exercise that this one replaces and a
// beginner's first weight allow, [units.MaxMass] where nothing limits it. Why it
// is what it is stands in the outline's reasons and the cautions of each dose.
func (f *Frame) Ceiling() units.Mass { return field.OrZero(f).most }

// Prescribe returns the dose of one exercise, as [Prescribe] does.
func (f *Frame) Prescribe() (Prescription, error) {
	if f == nil || f.table == nil {
		return Prescription{}, &field.Error{Path: "/screening", Allowed: "a frame of NewFrame", Err: ErrNotScreened}
	}
	d := f.draft("", fewOfDose)
	return d.prescribe()
}

func (d *draft) prescribe() (Prescription, error) {
	var err error
	switch {
	case d.r.Exercise.Hold == body.Unloaded:
		d.withoutLoad()
	case d.r.Exercise.Hold == body.OnBand:
		d.byBand()
	case d.tested():
		err = d.fromKnown()
	default:
		err = d.byFinding()
	}
	if err != nil {
		return Prescription{}, err
	}
	d.because(d.note...)
	d.because(d.KitFalls(d.p.Load.Each())...)
	return d.close(), nil
}

// estimated reports whether there is an estimate that a load may rest on.
func (f *Frame) estimated() bool { return f.estimate != nil && f.ability.Known() }

// tested reports whether enough is known for a first dose by the chance: more than the
// one set from which a load is looked for.
func (f *Frame) tested() bool { return f.estimated() || f.r.Ability.Known() && f.ability.Known() }

// draft begins a dose, with reasons of its own and room for so many more, without those of
// a code: several may be drawn up in one frame.
func (f *Frame) draft(without evidence.ReasonCode, room int) draft {
	d := draft{f, f.g.Prescription}
	d.p.Reasons = make([]evidence.Reason, 0, len(f.g.Reasons)+room)
	for i := range f.g.Reasons {
		if r := &f.g.Reasons[i]; r.Code != without {
			d.p.Reasons = append(d.p.Reasons, *r)
		}
	}
	return d
}

package dose

import (
	"errors"
	"fmt"
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/say"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// table compiles the kit for the exercise, where all that it needs is there.
func (r *Request) table() (*equipment.Table, error) {
	if lacks := r.lacks(); len(lacks) > 0 {
		things := evidence.Terms("things", lacks...)
		return nil, r.barred(errNotThere, evidence.Because("dose.not-there", factThere, factServes).With(things), evidence.Because("dose.free-by-thing").With(things))
	}
	table, err := r.Kit.CompileFor(r.Exercise)
	if errors.Is(err, equipment.ErrEmptyKit) {
		hold := evidence.Terms("hold", r.holdAsked()...)
		return nil, r.barred(errNothingToHold, evidence.Because("dose.nothing-to-hold").With(hold), evidence.Because("dose.free-by-kit").With(hold))
	}
	if why := r.unweighed(); err == nil && len(why) > 0 {
		return nil, r.barred(ErrTooHeavy, why[0], evidence.Because("dose.free-by-mass", factBand))
	}
	return table, field.At("/kit", err)
}

// holdAsked says how the weight is held and, where the kit has something for that hold, what
// the exercise takes: of a kettlebell alone nobody is told that nothing fits one hand.
func (r *Request) holdAsked() []string {
	hold := []string{r.Exercise.Hold.String()}
	if _, err := r.Kit.Compile(r.Exercise.Hold); err != nil {
		return hold
	}
	return append(hold, say.Texts(r.Exercise.Implements)...)
}

// lacks says what the exercise needs and is not there.
func (r *Request) lacks() []string {
	var list []string
	if r.Kit.Things != nil {
		list = say.Texts(r.Exercise.Lacks(r.Kit.Things...))
	}
	of, heights := exercise.LowStep, r.Kit.Steps
	if slices.Contains(r.Exercise.Needs, exercise.Chair) {
		of, heights = exercise.Chair, r.Kit.Seats
	}
	if h := r.Exercise.Height; h > 0 && !slices.Contains(heights, h) {
		list = append(list, fmt.Sprintf("%s of %d cm", of, h))
	}
	return list
}

// byBand doses an exercise with a band by repetitions and reserve alone: nothing is
// known of its pull, so there is neither a maximum nor a share of one.
func (d *draft) byBand() {
	d.p.Mode, d.p.Load = WithoutLoad, d.table.Lightest()
	d.because(evidence.Because("dose.by-band", factBand, factBandOrder).With(evidence.ID("exercise", d.r.Exercise.ID)))
}

// unweighed says which limits on a mass, or on a share of a maximum, rule out an
// exercise with a band, since nobody can say that it keeps to them.
func (r *Request) unweighed() []evidence.Reason {
	if r.Exercise.Hold != body.OnBand {
		return nil
	}
	var limits []string
	for _, l := range r.massLimits() {
		limits = append(limits, l.Max.Short(units.Down)+", "+place(l))
	}
	if r.Bound > 0 {
		limits = append(limits, r.Bound.Short(units.Down))
	}
	if most := r.Screening.Limits.MaxFraction; most > 0 {
		limits = append(limits, fmt.Sprintf("%.0f %% of 1RM", 100*float64(most)))
	}
	var why []evidence.Reason
	for _, text := range limits {
		why = append(why, evidence.Because("dose.band-unweighed", factBand).With(evidence.Text("limit", text)))
	}
	return why
}

package dose

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Search says how to look for the load: begin with the prescribed weight, do a
// set, and while it ends clearly easy go up one step, at most MaxSteps a visit,
// never above Ceiling and never to failure.
type Search struct {
	// MaxSteps are the steps up in one visit that the kit and Ceiling leave. 0:
	// none, whether because none is left, that nobody saw the technique, that the
	// person is alone, or that the day is a lighter one. A reason says which.
	MaxSteps int        `json:"max_steps"`
	Ceiling  units.Mass `json:"ceiling,omitzero"` // per implement; 0: none beyond the kit
}

// byFinding begins with a light weight and says how to look for the load.
func (d *draft) byFinding() error {
	first, ok := d.fromPerformed(d.most)
	if !ok {
		var err error
		if first, err = d.usualFirst(); err != nil {
			return err
		}
	}
	if d.p.Measure == exercise.Repetitions {
		d.p.Reserve = Reserve{Least: max(d.g.reserve.Least, uncountable)}
	}
	d.find(first, smallSteps, d.most)
	if d.r.Exercise.MovesBody {
		d.because(evidence.Because("dose.moves-body"))
	} else if d.estimate == nil {
		d.because(evidence.Because("dose.no-estimate"))
	}
	return nil
}

// usualFirst returns the first weight that is set for the exercise, where there
// is one and the kit makes it, else the lightest. A novice whose technique nobody
// saw takes no more than a first weight; with it seen that is where the search begins,
// and a kit that begins higher, up to three times that, is no bar.
func (d *draft) usualFirst() (equipment.Load, error) {
	lightest, ceiling := d.table.Lightest(), d.most
	usual, some := d.r.Exercise.FirstMass.Min()
	if top, ok := d.r.Exercise.FirstMass.Max(); ok && d.r.Screening.Who.Training == body.Novice && d.r.Technique.Made() {
		d.because(evidence.Because("dose.first-mass-seen", factFirstSeen, d.r.Exercise.FirstMassFact).With(evidence.Mass("most", firstSeen*top)))
		ceiling = min(ceiling, firstSeen*top)
		if d.mayRise() {
			usual, some = top, true
		}
	}
	if lightest.Each() > ceiling {
		return equipment.Load{}, d.tooHeavy(ceiling)
	}
	if !some {
		return lightest, nil
	}
	load, err := d.table.Nearest(min(usual, ceiling), equipment.RoundingRule{})
	if err != nil {
		return lightest, nil
	}
	return load, nil
}

// find says that the load is looked for from first on.
func (d *draft) find(first equipment.Load, steps int, ceiling units.Mass) {
	d.p.Mode, d.p.Load = LoadFinding, first
	d.search(&d.p, steps, ceiling)
}

// Why the load is looked for with steps within the visit, or without.
const (
	easyStep    evidence.ReasonCode = "dose.load-finding"
	countedStep evidence.ReasonCode = "dose.load-finding-counted"
	noStep      evidence.ReasonCode = "dose.no-step"
	unseenStep  evidence.ReasonCode = "dose.no-step-unseen"
	aloneStep   evidence.ReasonCode = "dose.no-step-alone"
)

// search writes how the load of p is looked for, in steps up at most, and says
// so with as many as there may be.
func (f *Frame) search(p *Prescription, steps int, ceiling units.Mass) {
	left, top := f.stepsUp(p.Load, steps, ceiling)
	step := func(code evidence.ReasonCode) evidence.Reason {
		return evidence.Because(code, factSteps, factUncountable).With(evidence.ID("exercise", f.r.Exercise.ID), evidence.Count("steps", left), evidence.Text("most", asTaken(top)))
	}
	var why evidence.Reason
	switch {
	case left == 0 || f.r.Screening.Limits.Lighten.AtMostLast:
		left, top = 0, p.Load
		why = evidence.Because(noStep, factSteps).With(evidence.Text("most", asTaken(top)))
	case !f.r.Technique.Made():
		left, why = 0, evidence.Because(unseenStep, factLookedAt).With(evidence.Term("setting", f.r.Screening.Setting.String()))
	case f.r.Screening.Setting <= screening.Alone:
		left, why = 0, evidence.Because(aloneStep, factLookedAt).With(evidence.Term("setting", f.r.Screening.Setting.String()))
	case p.Reserve.Countable:
		why = step(countedStep)
	default:
		why = step(easyStep)
	}
	if ceiling == units.MaxMass {
		ceiling = 0
	}
	p.Finding = &Search{MaxSteps: left, Ceiling: ceiling}
	kept := append(make([]evidence.Reason, 0, len(p.Reasons)+fewOfDose), p.Reasons...)
	p.Reasons = append(slices.DeleteFunc(kept, ofSearch), why)
}

// mayRise reports whether a weight may go up within the visit: somebody saw the
// technique of the exercise and is there, on a day that is no lighter one.
func (f *Frame) mayRise() bool {
	return f.r.Technique.Made() && f.r.Screening.Setting > screening.Alone && !f.r.Screening.Limits.Lighten.AtMostLast
}

// Heaviest lets the search of p, which came from f, begin with no less than least per
// implement, within the ceiling, where the exercise takes the heaviest weight of a
// session, and somebody saw its technique and is there; else it returns p.
func (f *Frame) Heaviest(p Prescription, least units.Mass) Prescription {
	if f == nil || f.table == nil || p.Finding == nil || !f.r.Exercise.Heaviest || !f.mayRise() || f.r.Performed != nil {
		return p // a set that was done is never gone above
	}
	load, err := f.table.Nearest(least, equipment.RoundingRule{Ceiling: p.Finding.Ceiling})
	if err != nil || load.Each() <= p.Load.Each() {
		return p
	}
	ceiling := p.Finding.Ceiling
	if ceiling == 0 {
		ceiling = units.MaxMass
	}
	p.Load, p.Next = load, nil
	if gap, ok := f.table.Next(load.Each()); ok {
		p.Next = &gap
	}
	f.search(&p, smallSteps, ceiling)
	p.Reasons = append(p.Reasons, evidence.Because("dose.heaviest", f.r.Exercise.Facts...))
	return p
}

func ofSearch(r evidence.Reason) bool {
	return slices.Contains([]evidence.ReasonCode{easyStep, countedStep, noStep, unseenStep, aloneStep}, r.Code)
}

// stepsUp returns how often, up to steps, the weight can go up from a load under
// the ceiling, and the load reached so. Beyond two steps every one has to be small.
func (f *Frame) stepsUp(from equipment.Load, steps int, ceiling units.Mass) (int, equipment.Load) {
	small := true
	for i := range steps {
		gap, ok := f.table.Next(from.Each())
		small = small && gap.Share <= smallStep
		if !ok || gap.To.Each() > ceiling || i >= findingSteps && !small {
			return i, from
		}
		from = gap.To
	}
	return steps, from
}

package dose

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Prescribe returns the dose of one exercise.
//
// Bad fields come back all at once as [field.Errors]; the zero screening
// outcome is [ErrNotScreened]; what the person, the kit or the setting rules
// out is a [*ConstraintError] that says what would free it.
func Prescribe(r Request) (Prescription, error) {
	f := Frame{r: &r}
	if err := f.fill(fewReasons + fewOfDose); err != nil {
		return Prescription{}, err
	}
	d := draft{&f, f.g.Prescription} // the only one of its frame
	return d.prescribe()
}

// A draft is a prescription on its way, in a frame that it does not change.
type draft struct {
	*Frame
	p Prescription
}

func (d *draft) because(why ...evidence.Reason) {
	if len(d.p.Reasons) == cap(d.p.Reasons) {
		d.p.Reasons = slices.Grow(d.p.Reasons, fewOfDose)
	}
	d.p.Reasons = append(d.p.Reasons, why...)
}

func (d *draft) withoutLoad() {
	d.p.Mode = WithoutLoad
	d.because(evidence.Because("dose.without-load"))
}

// fromKnown lays the band on the best of what is known and takes the heaviest weight
// of the kit in it that allows the row's lowest count. Where none does, the lightest is
// taken for as many as it allows: above a band it is heavy, and not out of reach.
func (d *draft) fromKnown() error {
	d.because(d.g.load)
	high, err := d.g.top(d.relation())
	if err != nil {
		return field.At("/guideline", err)
	}
	if most := d.r.Screening.Limits.MaxFraction; most > 0 && most < high && d.estimated() {
		d.because(evidence.Because("dose.fraction-limit", factLimits).With(evidence.Share("most", most)))
	}
	ceiling := min(share1RM(d.oneRM, high), d.most)
	lowest, _ := d.g.Span.Min()
	load, err := d.table.Nearest(ceiling, equipment.RoundingRule{})
	for ok := err == nil; ok; load, ok = lighter(d.table, load) {
		if count, _ := d.Allows(load.Each(), 0); count >= lowest {
			d.take(load, count)
			return nil
		}
	}
	load = d.table.Lightest()
	count, _ := d.Allows(load.Each(), 0)
	switch {
	case count == 0:
		return d.tooHeavy(ceiling)
	case count < d.leastCount():
		return d.tooFew(count)
	}
	d.because(evidence.Because("dose.only-lightest", factBest).With(evidence.Mass("lightest", load.Each()), evidence.Mass("most", ceiling)))
	d.take(load, count)
	return nil
}

// relation returns what ties load and repetitions where a row speaks in repetition
// maxima.
func (f *Frame) relation() onerm.Relation {
	if f.estimate != nil {
		return f.estimate.Relation()
	}
	return onerm.Epley
}

// take writes the load, the count that the chance allows up to the row's top, and how
// they were come by.
func (d *draft) take(load equipment.Load, most int) {
	low, _ := d.g.Span.Min()
	high, _ := d.g.Span.Max()
	d.p.Load, d.p.Mode = load, FromBand
	d.count(load, 0, min(most, high), most)
	d.p.Span = units.Must(units.Between(min(low, d.p.Count), d.p.Count))
	d.share(load)
	if heaviest, err := onerm.Epley.Fraction(aboutTen); err == nil && d.p.Share >= heaviest {
		d.p.Mode = OnCurve
		d.because(evidence.Because("dose.on-curve", onerm.Epley.Fact()).With(evidence.Term("equation", onerm.Epley.String()), evidence.Share("share", d.p.Share)))
		return
	}
	d.because(evidence.Because("dose.from-band", d.g.load.Facts...).With(evidence.Share("share", d.p.Share)))
}

// share writes what the load is of the best that is known, and whether that is enough.
func (d *draft) share(load equipment.Load) {
	d.p.Share, _ = load.Each().Share(d.oneRM)
	d.because(evidence.Because("dose.known", knownFacts...).With(evidence.NearMass("best", d.oneRM), evidence.Share("share", d.p.Share)))
	d.flagLight()
}

var knownFacts = []evidence.FactID{factAbility, factCredit, factBest}

// flagLight raises BelowEffectiveDose where the goal's row has a floor and the
// delivered share of the best estimate stays under it.
func (d *draft) flagLight() {
	aim := d.g.aim
	floor, which, ok := floorOf(aim, d.relation())
	if !ok || d.p.Share >= floor {
		return
	}
	d.p.Flags = append(d.p.Flags, BelowEffectiveDose)
	code := evidence.ReasonCode("dose.below-effective")
	if d.p.Phase == Familiarise {
		code = "dose.below-effective-learning"
	}
	d.because(evidence.Because(code, slices.Concat([]evidence.FactID{aim.fact(which)}, given.RowFacts(d.r.Screening.Who.Age))...).With(
		evidence.Share("share", d.p.Share), evidence.Share("floor", floor), evidence.Term("goal", d.r.Goal.String())))
}

// tooHeavy says that nothing is light enough, by the limit that bites: that of the
// guideline on what is known, or what else limits the weight.
func (d *draft) tooHeavy(ceiling units.Mass) error {
	facts := []evidence.FactID{factMost}
	if ceiling < d.most {
		facts = append(slices.Clone(d.g.load.Facts), factBest)
	}
	why := evidence.Because("dose.too-heavy", facts...).With(evidence.Mass("lightest", d.table.Lightest().Each()), evidence.Mass("most", ceiling))
	free := []evidence.Reason{evidence.Because("dose.free-by-lighter", facts...).With(evidence.Mass("most", ceiling)), evidence.Because("dose.free-by-variant")}
	if d.r.Screening.Limits.MaxFraction > 0 && !d.estimated() && !d.r.Exercise.MovesBody {
		free = append(free, evidence.Because("dose.free-by-set"))
	}
	return d.r.barred(ErrTooHeavy, why, free...)
}

// close adds the step to the next weight and what screening asks for.
func (d *draft) close() Prescription {
	cautions := limitCautions(d.r)
	if d.p.Mode != WithoutLoad {
		if gap, ok := d.table.Next(d.p.Load.Each()); ok {
			d.p.Next = &gap
		}
		d.p.Most = d.mostSaid()
		cautions = append(cautions, d.massCautions()...)
	}
	d.p.Cautions = append(cautions, d.p.Cautions...)
	return d.p
}

package dose

import (
	"fmt"
	"math"
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Prescribe returns the dose of one exercise.
//
// Bad fields come back all at once as [field.Errors]; the zero screening
// outcome is [ErrNotScreened]; what the person, the kit or the setting rules
// out is a [*ConstraintError] that says what would free it.
func Prescribe(r Request) (Prescription, error) {
	f, err := NewFrame(r)
	if err != nil {
		return Prescription{}, err
	}
	return f.Prescribe()
}

// opening fills in what does not depend on the load.
func opening(r *Request, g *guide) Prescription {
	ex := &r.Exercise
	p := Prescription{
		Exercise: ex.ID, Name: ex.Name, Hold: ex.Hold, Side: r.Side, OneSided: ex.OneSided, Phase: r.phase(),
		Sets: g.sets, BuildTo: g.buildTo, Measure: ex.Measure, Count: g.first, Span: g.count,
		Rest: g.rest, Days: g.days, Guideline: g.row.ID, Assumed: g.assumed,
		Cautions: ex.Warnings,
	}
	if g.aim.ID != g.row.ID {
		p.Aim = g.aim.ID
	}
	if ex.Measure == exercise.Repetitions {
		p.Reserve, p.Tempo = g.reserve, tempo
		g.because(evidence.Because("dose.tempo", g.rests(factTempo)...))
	}
	p.Reasons = g.why
	return p
}

// A draft is a prescription on its way.
type draft struct {
	*Frame
	p Prescription
}

func (d *draft) because(why ...evidence.Reason) {
	if len(d.p.Reasons) == cap(d.p.Reasons) {
		d.p.Reasons = slices.Grow(d.p.Reasons, fewReasons/2)
	}
	d.p.Reasons = append(d.p.Reasons, why...)
}

func (d *draft) withoutLoad() {
	d.p.Mode = WithoutLoad
	d.because(evidence.Because("dose.without-load"))
}

// fromEstimate lays the band on the cautious end of the estimate, picks a
// weight and works the repetitions out again for it.
func (d *draft) fromEstimate(e onerm.Estimate) error {
	d.because(d.g.load)
	low, high, err := d.g.shares(e.Relation())
	if err != nil {
		return field.At("/guideline", err)
	}
	if most := d.r.Screening.Limits.MaxFraction; most > 0 && most < high {
		high = most
		d.because(evidence.Because("dose.fraction-limit", factLimits).With(evidence.Share("most", most)))
	}
	target, ceiling, err := d.window(e.Cautious(), low, high)
	if err != nil {
		return err
	}
	load, ok := pick(d.table, target, ceiling)
	for ok {
		if count, fits := d.countAt(load, e); fits {
			d.take(load, count, e, ceiling)
			return nil
		}
		load, ok = lighter(d.table, load)
	}
	return d.tooHeavy(ceiling)
}

// window returns the masses, per implement, that the band allows on the
// cautious 1RM under every limit.
func (f *Frame) window(cautious units.Mass, low, high units.Fraction) (target, ceiling units.Mass, err error) {
	if target, err = cautious.Scale(low, units.Down); err != nil {
		return 0, 0, field.At("/estimates", err)
	}
	if ceiling, err = cautious.Scale(high, units.Down); err != nil {
		return 0, 0, field.At("/estimates", err)
	}
	return target, min(ceiling, f.most), nil
}

// countAt returns how many repetitions of the load leave the reserve, by the
// equation on the cautious estimate, and whether that reaches the lowest count.
// Beyond the equation's studied range its extension serves as a bound that may
// lighten the load and never adds to it.
func (d *draft) countAt(load equipment.Load, e onerm.Estimate) (int, bool) {
	toFailure, known := repsToFailure(e, load)
	lowest, _ := d.g.count.Min()
	highest, _ := d.g.count.Max()
	if !known {
		return d.g.first, true
	}
	count := int(math.Floor(toFailure - float64(d.g.reserve.Least)))
	if d.beyond(toFailure, e) {
		return min(count, d.g.first), count >= lowest
	}
	return min(count, highest), count >= lowest
}

// repsToFailure returns the repetitions to failure at the load by the
// estimate's equation, false where the equation has none: so light a load that
// its curve has ended.
func repsToFailure(e onerm.Estimate, load equipment.Load) (float64, bool) {
	share, err := load.Each().Share(e.Cautious())
	if err != nil {
		return 0, true // no strength known: no repetition fits
	}
	reps, err := e.Relation().Reps(share)
	if err != nil {
		fewest, _ := e.Relation().Studied().Min()
		heaviest, err := e.Relation().Fraction(fewest)
		return 0, err != nil || share >= heaviest
	}
	return reps, true
}

// beyond reports whether so many repetitions lie above the studied range.
func (d *draft) beyond(toFailure float64, e onerm.Estimate) bool {
	top, ok := e.Relation().Studied().Max()
	return ok && toFailure > top
}

// take writes the load and how it was come by.
func (d *draft) take(load equipment.Load, count int, e onerm.Estimate, ceiling units.Mass) {
	d.p.Load, d.p.Count = load, count
	d.p.Share, _ = load.Each().Share(e.OneRM)
	toFailure, known := repsToFailure(e, load)
	switch {
	case known && !d.beyond(toFailure, e):
		d.p.Mode = OnCurve
		d.because(evidence.Because("dose.on-curve", onCurve(e)...).With(evidence.Term("equation", fmt.Sprint(e.Relation())), evidence.Share("share", d.p.Share)))
	case d.r.Screening.Who.Training == body.Novice:
		d.find(load, findingSteps, ceiling)
	default:
		d.p.Mode = FromBand
		d.because(evidence.Because("dose.from-band", d.g.load.Facts...).With(evidence.Share("share", d.p.Share)))
	}
	d.because(evidence.Because("dose.cautious-end", factCautious).With(evidence.NearMass("best", e.OneRM), evidence.Mass("cautious", e.Cautious())))
	d.flagLight(e)
}

// flagLight raises BelowEffectiveDose where the goal's row has a floor and the
// delivered share of the best estimate stays under it.
func (d *draft) flagLight(e onerm.Estimate) {
	aim := d.g.aim
	floor, which, ok := floorOf(aim, e.Relation())
	if !ok || d.p.Share >= floor {
		return
	}
	d.p.Flags = append(d.p.Flags, BelowEffectiveDose)
	d.because(evidence.Because("dose.below-effective", append([]evidence.FactID{factOf(aim, which)}, aimFacts(d.r.Screening.Who.Age)...)...).With(
		evidence.Share("share", d.p.Share), evidence.Share("floor", floor), evidence.Term("goal", d.r.Goal.String())))
}

// onCurve are the facts behind the relation of an estimate: its own equation's, or
// those of the two whose lower one it is.
func onCurve(e onerm.Estimate) []evidence.FactID {
	if f, own := e.Relation().(onerm.Formula); own {
		return []evidence.FactID{f.Fact()}
	}
	return houseCurve
}

var houseCurve = []evidence.FactID{"onerm.epley", "onerm.brzycki"}

// tooHeavy says that nothing is light enough, by the limit that bites: that of the
// guideline on the cautious end, or what else limits the weight.
func (d *draft) tooHeavy(ceiling units.Mass) error {
	facts := []evidence.FactID{factMost}
	if ceiling < d.most {
		facts = append(slices.Clone(d.g.load.Facts), factCautious)
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
	cautions := limitCautions(&d.r)
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

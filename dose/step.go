package dose

import (
	"fmt"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Step is what a dose that goes on from another asks for. Limits bind it: the
// load may come out lighter and the sets fewer, never the reverse.
type Step struct {
	Load  units.Mass `json:"load"`  // per implement, at most; 0 without load
	Last  units.Mass `json:"last"`  // per implement, last completed: none above it on a lighter day
	Count int        `json:"count"` // repetitions, seconds or metres a set, from 1 to the end of the range
	// Held are as many of Count as the last sets with Load showed to leave the reserve asked:
	// they stay where the chance allows fewer. 0: none.
	Held int `json:"held,omitzero"`
	// UpTo is the end of the range to work through where it lies above the
	// guideline's, 20 at most, 25 where strength is known; 0
	// for the guideline's.
	UpTo int `json:"up_to,omitzero"`
	Sets int `json:"sets"` // of each side where one-sided, from 1; more than [Frame.MostSets] come out as that
	// Lowering and Pausing are seconds of each repetition, up to 10, where they
	// are longer than usual; 0 for the usual.
	Lowering float64 `json:"lowering,omitzero"`
	Pausing  float64 `json:"pausing,omitzero"`
	// Steps is how often the weight may go up within the visit while the load is
	// looked for, from Load on, 2 at most, 4 where each is small, and fewer or none where limits, the kit,
	// an unseen technique or nobody at hand leave no more; 0: it is not looked for.
	Steps int `json:"steps,omitzero"`
	// Feel is how often, in one of the sets, the next weight is lifted to feel it, where
	// [Frame.Feelable] has one; 0: it is not felt.
	Feel int `json:"feel,omitzero"`
}

// Ceilings against slips; they are no doses.
const (
	mostSeconds = 10
	mostSets    = 100
)

// validate returns every bad field of s at once, for a frame whose range of
// counts ends at top, and for those beyond it at end.
func (s Step) validate(top, end int) error {
	end = max(top, end)
	top = max(top, min(s.UpTo, end))
	var bad field.Errors
	for _, m := range [...]struct {
		path string
		mass units.Mass
	}{{"/load", s.Load}, {"/last", s.Last}} {
		if m.mass < 0 {
			bad.Add(m.path, field.Bad(m.mass, "0 kg or more", field.ErrOutOfRange))
		}
	}
	inRange(&bad, "/count", s.Count, 1, top)
	inRange(&bad, "/held", s.Held, 0, end)
	inRange(&bad, "/up_to", s.UpTo, 0, end)
	inRange(&bad, "/sets", s.Sets, 1, mostSets)
	inRange(&bad, "/steps", s.Steps, 0, smallSteps)
	inRange(&bad, "/feel", s.Feel, 0, end)
	inRange(&bad, "/lowering", s.Lowering, 0, mostSeconds)
	inRange(&bad, "/pausing", s.Pausing, 0, mostSeconds)
	return bad.Err()
}

func inRange[T int | float64](bad *field.Errors, path string, v, least, most T) {
	if !(v >= least && v <= most) {
		bad.Add(path, field.Bad(v, fmt.Sprintf("%v to %v", least, most), field.ErrOutOfRange))
	}
}

// Continue returns the dose that s asks for, as far as every limit allows: the
// heaviest weight of the kit that is not above what was asked for nor above a
// limit, and no more sets than [Frame.MostSets], fewer on a lighter day. What would have
// fewer repetitions than screening asks for comes with the next lighter weight. With Steps
// the mode is LoadFinding, and the reserve stays that of the frame. It looks at no
// log; package progression does, and asks. Bad fields of s come back all at once; where the
// lightest weight lies above a limit, or is too heavy for the fewest repetitions of
// screening, it is a [*ConstraintError].
func (f *Frame) Continue(s Step) (Prescription, error) {
	if f == nil || f.table == nil {
		return Prescription{}, &field.Error{Path: "/screening", Allowed: "a frame of NewFrame", Err: ErrNotScreened}
	}
	top, _ := f.g.Span.Max()
	end, _ := workable.Max()
	if f.ability.Known() {
		end = mostBridged
	}
	if err := s.validate(top, end); err != nil {
		return Prescription{}, err
	}
	d := f.draft(setsCode, fewOfStep) // a step says its own
	d.follow(s, min(s.Sets, f.MostSets()))
	said := len(d.p.Reasons) // what the dose came to is said once it is known
	d.because(evidence.Because("dose.continued", continuedFacts...))
	var err error
	switch hold := d.r.Exercise.Hold; {
	case hold != body.Unloaded && hold != body.OnBand:
		err = d.goOn(s)
	case s.Count < d.leastCount():
		err = d.tooFew(s.Count)
	case hold == body.Unloaded:
		d.withoutLoad()
	default:
		d.byBand()
	}
	if err != nil {
		return Prescription{}, err
	}
	d.p.Reasons[said] = d.p.Reasons[said].With(
		evidence.Mass("load", d.p.Load.Each()), evidence.Count("count", d.p.Count), evidence.Count("sets", d.p.Sets), evidence.Count("build to", d.p.BuildTo))
	return d.close(), nil
}

// follow writes what does not depend on the load.
func (d *draft) follow(s Step, sets int) {
	limits := &d.r.Screening.Limits
	d.p.Count, d.p.Sets = s.Count, max(1, sets-limits.Lighten.FewerSets)
	low, _ := d.g.Span.Min()
	if top, _ := d.g.Span.Max(); s.UpTo > top {
		d.p.Span = units.Must(units.Between(low, s.UpTo))
	}
	if d.p.Measure == exercise.Repetitions {
		d.p.Tempo.Lowering = max(d.p.Tempo.Lowering, s.Lowering)
		d.p.Tempo.Pausing = max(d.p.Tempo.Pausing, s.Pausing)
	}
}

var continuedFacts = []evidence.FactID{factContinued}

// goOn writes the load.
func (d *draft) goOn(s Step) error {
	ceiling := min(s.Load, d.most)
	if d.r.Screening.Limits.Lighten.AtMostLast {
		ceiling = min(ceiling, s.Last)
	}
	load, err := d.table.Nearest(ceiling, equipment.RoundingRule{})
	if err != nil {
		return d.tooHeavy(ceiling)
	}
	if least := d.leastCount(); s.Count < least {
		switch below, ok := lighter(d.table, load); {
		case load.Each() < s.Load: // lighter already
		case !ok:
			return d.tooFew(s.Count)
		default:
			load = below
		}
		d.p.Count = least
	}
	if load, err = d.keepTo(load, s); err != nil {
		return err
	}
	d.p.Mode, d.p.Load = Continued, load
	if share := d.r.Screening.Limits.MaxFraction; share > 0 && d.estimated() {
		d.because(evidence.Because("dose.fraction-limit", factLimits).With(evidence.Share("most", share)))
	}
	if d.ability.Known() {
		d.share(load)
	}
	if s.Steps > 0 {
		d.find(load, s.Steps, d.most)
	}
	d.feel(load.Each(), s.Feel)
	return nil
}

// keepTo lowers the count to what the chance allows with a load, or the last sets with it
// showed, or, where that is less than a set may have, takes the next lighter one.
func (d *draft) keepTo(load equipment.Load, s Step) (equipment.Load, error) {
	for from := load; ; {
		most, known := d.Allows(load.Each(), s.Last)
		if !known {
			return load, nil
		}
		held := 0
		if load.Each() == s.Load {
			held = s.Held
		}
		if able := max(most, held); able >= d.leastCount() {
			if d.p.Count = min(d.p.Count, able); d.p.Count <= most {
				d.count(load, s.Last, d.p.Count, most)
			}
			return load, nil
		}
		below, ok := lighter(d.table, load)
		switch {
		case ok:
			load = below
		case most > 0:
			return load, d.tooFew(most)
		default:
			return load, d.tooHeavy(from.Each())
		}
	}
}

// count writes a count that the chance governs, or the few of the lightest weight that
// it does not, and says so.
func (d *draft) count(load equipment.Load, last units.Mass, count, most int) {
	d.p.Count = count
	by := count
	if d.fewDo(load.Each()) { // no other count lies above the chance
		by, _ = d.byChance(load.Each(), last, d.g.Reserve.Least)
	}
	if count > by {
		d.because(evidence.Because("dose.few-do", factFew).With(evidence.Mass("load", load.Each()), evidence.Count("count", count)))
		return
	}
	d.p.Chance = d.chance
	d.because(d.chanceReason(load.Each(), most))
}

// feel lets one of the sets feel the next weight.
func (d *draft) feel(each units.Mass, count int) {
	if count == 0 {
		return
	}
	next, ok := d.Feelable(each)
	if !ok {
		return
	}
	d.p.Feel = &Feel{next, count}
	d.because(evidence.Because("dose.feel", factFeel).With(evidence.ID("exercise", d.r.Exercise.ID), evidence.Text("weight", asTaken(next)), evidence.Count("count", count)))
}

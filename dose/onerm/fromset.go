package onerm

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// An attempt is a set made ready for the equations.
type attempt struct {
	chooser
	each      units.Mass // load of one implement, or of all that is held
	reps      int
	low, high int // repetitions in reserve
}

// measured reports whether the load itself is the 1RM.
func (a attempt) measured() bool { return a.reps == 1 && a.high == 0 }

// FromSet estimates the 1RM of exercise e from a set s that person p did.
//
// Repetitions to failure are those done plus those in reserve; a rating that
// stands for two counts gives the estimate by the lower and the interval by
// both. One repetition to failure is the 1RM itself. Otherwise Epley and
// Brzycki answer, for 1 to 10 repetitions to failure, and the lower is taken;
// in trained women from 55 years on a stack, Kemmler 2006 answers too, for 3 to
// 20. In other practised people O'Conner answers from 2 repetitions on and
// gives the best estimate, since the two read high in them; the lower end of
// the interval stays with the two. That end never rises when
// repetitions done fall or the reserve shrinks, for the same person and load.
//
// Errors name the field below /set, /exercise or /person: those of
// [setlog.Set.Validate], [exercise.Exercise.Validate] and [body.Person.Validate]; a
// [field.ErrConflict] if exercise or hold differ between s and e, or if e is
// not counted in repetitions; a [field.ErrMissing] for a day, an effort, an age
// or a training status not given, and for a sex where it decides; an
// [units.ErrNoRIR] for an effort that has no reserve; [ErrNotStudied] for a
// reserve above 5 or repetitions to failure outside the studied range; a
// [field.ErrConflict] where the body, or a long limb, is most of what is lifted, so that a
// 1RM of the held weight alone would mislead.
// [WhyRefused] says in words why a set that is in order gives no estimate.
func FromSet(s setlog.Set, e exercise.Exercise, p body.Person) (Estimate, error) {
	return Options{}.FromSet(s, e, p)
}

// check returns why no equation, or no interval, fits the repetitions.
func (a attempt) check(effort units.Effort) error {
	low, high := a.reps+a.low, a.reps+a.high
	reps := units.Must(units.Between(low, high))
	top, _ := sharedRange.Max()
	if a.kemmler && a.noSex && float64(high) > top && a.asks(Kemmler2006, low, high) {
		return refuse(field.New("/person/sex", nil, "the sex, since above 10 repetitions to failure only an equation for women is left", field.ErrMissing),
			evidence.Because("onerm.none-sex", factKemmlerChoice).With(evidence.Count("reps", reps)))
	}
	_, _, interval := lookUp(a.reps, a.high, a.novice)
	for _, f := range house {
		if interval && a.asks(f, low, high) {
			return nil
		}
	}
	return refuse(field.New("/set/reps", reps.String()+" to failure ("+effort.String()+")", a.allowed(), ErrNotStudied),
		evidence.Because("onerm.none-range", factSharedRange, factKemmlerChoice).With(evidence.Count("reps", reps), evidence.Effort("effort", effort), evidence.Text("allowed", a.allowed())))
}

func (a attempt) allowed() string {
	if a.kemmler && !a.noSex {
		return "done plus reserve 1 to 20; 1 to 15 with some in reserve, 1 to 10 with more than 3"
	}
	return "done plus reserve 1 to 10"
}

// estimate fills in the masses, the equation and the grade. Its errors are
// overflows.
func (a attempt) estimate(e *Estimate, o Options) error {
	low, high := a.reps+a.low, a.reps+a.high
	r, m, _ := lookUp(a.reps, a.high, a.novice)
	e.ToFailure = units.Must(units.Between(float64(low), float64(high)))
	e.Grade = r.grade
	least, err := a.each.Scale(units.Fraction(a.lower(a.reps, a.low)), units.Nearest)
	if err != nil {
		return err
	}
	k, _ := a.lowest(high)
	most, err := a.each.Scale(units.Fraction(k*(1+m.up)), units.Nearest)
	if err != nil {
		return err
	}
	answers := hull{a.each, a.each}
	if a.measured() {
		e.OneRM = a.each
	} else if answers, err = a.answer(e, low, high); err != nil {
		return err
	}
	least, most = min(least, e.OneRM), max(most, e.OneRM)
	e.Interval, err = o.interval(e.OneRM, least, most, answers, high)
	return err
}

// A hull is the least and the most of some masses.
type hull struct{ least, most units.Mass }

func (h hull) with(m units.Mass) hull { return hull{min(h.least, m), max(h.most, m)} }

// interval brings the ends of the table's level to that of the options, moves
// the upper one up for a tired set, and holds every equation's answer.
func (o Options) interval(best, least, most units.Mass, answers hull, toFailure int) (units.Range[units.Mass], error) {
	var none units.Range[units.Mass]
	if c := units.Fraction(o.scale()); c != 1 {
		down, err := (best - least).Scale(c, units.Nearest)
		if err != nil {
			return none, err
		}
		up, err := (most - best).Scale(c, units.Nearest)
		if err != nil {
			return none, err
		}
		least = best - down
		if most, err = best.Add(up); err != nil {
			return none, err
		}
	}
	tired, err := best.Scale(units.Fraction(o.tired(toFailure)), units.Nearest)
	if err != nil {
		return none, err
	}
	if most, err = most.Add(tired); err != nil {
		return none, err
	}
	return outward(max(min(least, answers.least), 0), max(most, answers.most))
}

// answer asks the equations, takes the best estimate and the one that doses
// follow, and returns the least and most of their answers at both counts.
func (a attempt) answer(e *Estimate, low, high int) (hull, error) {
	all := hull{units.MaxMass, 0}
	for _, f := range [...]Formula{house[0], house[1], house[2], a.also} {
		if !a.asks(f, low, high) {
			continue
		}
		m, err := f.OneRM(a.each, float64(low))
		if err != nil {
			return all, err
		}
		further, err := f.OneRM(a.each, float64(high))
		if err != nil {
			return all, err
		}
		all = all.with(m).with(further)
		e.Answers = append(e.Answers, FormulaEstimate{f, m})
		switch {
		case f == a.also:
			e.Loading, e.Formula, e.OneRM = e.Formula, f, m
		case e.Formula == 0 || m < e.OneRM:
			e.Formula, e.OneRM = f, m
		}
	}
	return all, nil
}

// reasons says what was done, in the order in which it was done.
func (a attempt) reasons(s setlog.Set, e Estimate, o Options) []evidence.Reason {
	list := a.reasonsReserve(s, e, []evidence.Reason{a.reasonEquation(e)})
	add := func(r evidence.Reason) { list = append(list, r) }
	r, m, _ := lookUp(a.reps, a.high, a.novice)
	add(evidence.Because("onerm.interval", r.fact(), factColumns).With(evidence.Text("row", r.String()), evidence.Text("margin", m.String()), evidence.Term("grade", r.grade.String())))
	if own, ok := a.own(a.reps, a.low); ok && own != a.lower(a.reps, a.low) {
		k, _ := a.lowest(a.reps + a.low)
		add(evidence.Because("onerm.lower-end", factOrder).With(evidence.Share("own", units.Fraction(1-own/k)), evidence.Share("down", units.Fraction(1-a.lower(a.reps, a.low)/k))))
	}
	list = o.reasons(list, a.reps+a.high)
	if a.novice && !a.measured() {
		add(evidence.Because(codeLikelyLow, factUntrained, factUntrainedShare, factReestimate))
	}
	if a.kemmler && a.noSex && a.asks(Kemmler2006, a.reps+a.low, a.reps+a.high) {
		add(evidence.Because("onerm.sex-not-given", factKemmlerChoice))
	}
	if isDumbbell(s.Hold) {
		add(evidence.Because("onerm.no-dumbbells", factNoDumbbells))
	}
	return list
}

// reasonsReserve adds what the reserve did.
func (a attempt) reasonsReserve(s setlog.Set, e Estimate, list []evidence.Reason) []evidence.Reason {
	if a.high > 0 {
		list = append(list, a.reasonReserve(s.Effort, e))
	}
	if a.high > a.low {
		list = append(list, evidence.Because("onerm.half-point", factHalfPoint).With(evidence.Effort("effort", s.Effort), evidence.Number("reps", e.ToFailure)))
	}
	if a.high > wideReserve {
		list = append(list, evidence.Because("onerm.reserve-wide", factWide, factReserveLimit).With(evidence.Count("reserve", a.high)))
	}
	return list
}

func (a attempt) reasonEquation(e Estimate) evidence.Reason {
	switch {
	case a.measured():
		return evidence.Because("onerm.measured", factMeasured).With(evidence.Mass("load", e.OneRM), evidence.Term("stated", e.Stated.String()))
	case e.Formula == Kemmler2006:
		return evidence.Because("onerm.kemmler2006", Kemmler2006.Fact(), rangeFact(Kemmler2006), peopleFact(Kemmler2006), factKemmlerError, factKemmlerChoice).With(
			evidence.Number("reps", e.ToFailure))
	case e.Formula == a.also:
		return evidence.Because("onerm.practised", e.Formula.Fact(), rangeFact(e.Formula), factPractised, factMeneses, factOlderTrained, factOpenNear).With(
			evidence.Term("formula", e.Formula.String()), evidence.Term("loading", e.Loading.String()), evidence.Number("reps", e.ToFailure))
	}
	return evidence.Because("onerm.lower-of-two", Epley.Fact(), Brzycki.Fact(), factSharedRange, factLower).With(evidence.Term("formula", e.Formula.String()), evidence.Number("reps", e.ToFailure))
}

func (a attempt) reasonReserve(effort units.Effort, e Estimate) evidence.Reason {
	r := evidence.Because("onerm.reserve-added", factToFailure, factReserveBias)
	if effort.Scale() == units.ScaleRPE {
		r.Facts = append(r.Facts, evidence.RatingFact(effort.Number()))
	}
	return r.With(evidence.Count("done", a.reps), evidence.Effort("effort", effort), evidence.Number("reps", e.ToFailure))
}

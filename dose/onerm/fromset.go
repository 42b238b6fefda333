package onerm

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
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
// 20. The lower end of the interval never rises when repetitions done fall or
// the reserve shrinks, for the same person and load.
//
// Errors name the field below /set, /exercise or /person: those of
// [setlog.Set.Validate], [exercise.Exercise.Validate] and [Person.Validate]; an
// [units.ErrConflict] if exercise or hold differ between s and e, or if e is
// not counted in repetitions; an [units.ErrMissing] for a day, an effort, an age
// or a training status not given, and for a sex where it decides; an
// [units.ErrNoRIR] for an effort that has no reserve; [ErrNotStudied] for a
// reserve above 5 or repetitions to failure outside the studied range;
// [ErrMovesBody]; an [units.ErrOverflow] for a load near [units.MaxMass].
func FromSet(s setlog.Set, e exercise.Exercise, p Person) (Estimate, error) {
	var bad units.FieldErrors
	bad.Add("/set", s.Validate())
	bad.Add("/exercise", e.Validate())
	bad.Add("/person", p.Validate())
	bad.Add("", checkMatch(s, e))
	low, high, err := reserveOf(s.Effort)
	bad.Add("/set/effort", err)
	if len(bad) > 0 {
		return Estimate{}, bad
	}
	each, err := s.Each()
	if err != nil {
		return Estimate{}, units.At("/set", err)
	}
	a := attempt{choose(p, s.Hold), each, s.Reps, low, high}
	if err := a.check(s.Effort); err != nil {
		return Estimate{}, err
	}
	result := Estimate{Exercise: s.Exercise, Side: s.Side, Hold: s.Hold, Day: s.Day, Stated: statedFor(s.Hold)}
	if err := a.estimate(&result); err != nil {
		return Estimate{}, units.At("/set/load", err)
	}
	result.Reasons = a.reasons(s, result)
	return result, nil
}

// check returns why no equation, or no interval, fits the repetitions.
func (a attempt) check(effort units.Effort) error {
	low, high := a.reps+a.low, a.reps+a.high
	top, _ := sharedRange.Max()
	if a.kemmler && a.noSex && float64(high) > top && a.asks(Kemmler2006, low, high) {
		return units.Field("/person/sex", nil, "the sex, since above 10 repetitions to failure only an equation for women is left", units.ErrMissing)
	}
	_, _, interval := lookUp(a.reps, a.high, a.novice)
	for _, f := range house {
		if interval && a.asks(f, low, high) {
			return nil
		}
	}
	return units.Field("/set/reps", units.Must(units.Between(low, high)).String()+" to failure ("+effort.String()+")", a.allowed(), ErrNotStudied)
}

func (a attempt) allowed() string {
	if a.kemmler && !a.noSex {
		return "done plus reserve 1 to 20; 1 to 15 with some in reserve, 1 to 10 with more than 3"
	}
	return "done plus reserve 1 to 10"
}

// estimate fills in the masses, the equation and the grade. Its errors are
// overflows.
func (a attempt) estimate(e *Estimate) error {
	low, high := a.reps+a.low, a.reps+a.high
	r, m, _ := lookUp(a.reps, a.high, a.novice)
	e.ToFailure = units.Must(units.Between(float64(low), float64(high)))
	e.Grade = r.grade
	least, err := a.each.Scale(units.Fraction(a.lower(a.reps, a.low)), units.Down)
	if err != nil {
		return err
	}
	k, _ := a.lowest(high)
	most, err := a.each.Scale(units.Fraction(k*(1+m.up)), units.Up)
	if err != nil {
		return err
	}
	if a.measured() {
		e.OneRM = a.each
	} else if most, err = a.answer(e, low, high, most); err != nil {
		return err
	}
	e.Interval, err = units.Between(min(least, e.OneRM), max(most, e.OneRM))
	return err
}

// answer asks the equations, takes the lowest and returns the interval's upper
// end, moved so that every answer lies below it.
func (a attempt) answer(e *Estimate, low, high int, most units.Mass) (units.Mass, error) {
	for _, f := range house {
		if !a.asks(f, low, high) {
			continue
		}
		m, err := f.OneRM(a.each, float64(low))
		if err != nil {
			return 0, err
		}
		further, err := f.OneRM(a.each, float64(high))
		if err != nil {
			return 0, err
		}
		most = max(most, m, further)
		e.Answers = append(e.Answers, Answer{f, m})
		if e.Formula == FormulaUnknown || m < e.OneRM {
			e.Formula, e.OneRM = f, m
		}
	}
	return most, nil
}

// reasons says what was done, in the order in which it was done.
func (a attempt) reasons(s setlog.Set, e Estimate) []evidence.Reason {
	var list []evidence.Reason
	add := func(r evidence.Reason) { list = append(list, r) }
	add(a.reasonEquation(e))
	if a.high > 0 {
		add(a.reasonReserve(s.Effort, e))
	}
	if a.high > a.low {
		add(evidence.Because(codeHalfPoint, factHalfPoint).With("effort", s.Effort).With("reps", e.ToFailure))
	}
	if a.high > wideReserve {
		add(evidence.Because(codeWide, factWide, factReserveLimit).With("reserve", a.high))
	}
	r, m, _ := lookUp(a.reps, a.high, a.novice)
	add(evidence.Because(codeInterval, r.fact(), factColumns).With("row", r).With("margin", m).With("grade", r.grade))
	if own, ok := a.own(a.reps, a.low); ok && own != a.lower(a.reps, a.low) {
		k, _ := a.lowest(a.reps + a.low)
		add(evidence.Because(codeOrder, factOrder).With("own", units.Fraction(1-own/k)).With("down", units.Fraction(1-a.lower(a.reps, a.low)/k)))
	}
	if a.novice && !a.measured() {
		add(evidence.Because(codeLikelyLow, factUntrained, factUntrainedShare, factReestimate))
	}
	if a.kemmler && a.noSex && a.asks(Kemmler2006, a.reps+a.low, a.reps+a.high) {
		add(evidence.Because(codeNoSex, factKemmlerChoice))
	}
	if isDumbbell(s.Hold) {
		add(evidence.Because(codeDumbbell, factNoDumbbells))
	}
	return list
}

func (a attempt) reasonEquation(e Estimate) evidence.Reason {
	switch {
	case a.measured():
		return evidence.Because(codeMeasured, factMeasured).With("load", e.OneRM).With("stated", e.Stated)
	case e.Formula == Kemmler2006:
		return evidence.Because(codeKemmler, Kemmler2006.Fact(), rangeFact(Kemmler2006), peopleFact(Kemmler2006), factKemmlerError, factKemmlerChoice).
			With("reps", e.ToFailure)
	}
	return evidence.Because(codeLower, Epley.Fact(), Brzycki.Fact(), factSharedRange, factLower).
		With("formula", e.Formula).With("reps", e.ToFailure)
}

func (a attempt) reasonReserve(effort units.Effort, e Estimate) evidence.Reason {
	r := evidence.Because(codeReserve, factToFailure, factReserveBias)
	if effort.Scale() == units.ScaleRPE {
		r.Facts = append(r.Facts, evidence.RatingFact(effort.Value()))
	}
	return r.With("done", a.reps).With("effort", effort).With("reps", e.ToFailure)
}

package onerm

import (
	"math"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Options are the choices of an estimate. The zero value makes the choices of
// [FromSet]. None of them moves a dose: that reads the set behind the estimate, and does
// not depend on how an interval is reported.
type Options struct {
	// Level is the share of such intervals that should hold the 1RM, 0.5 to
	// 0.99; zero is 0.95, which the interval table is taken for.
	Level units.Fraction `json:"level,omitzero"`
	// Tired says that sets of the exercise came before on that day. Such a set
	// reads low, and the upper end moves up for it.
	Tired bool `json:"tired,omitzero"`
	// Accuracy, where given, takes the place of the equations and of the
	// interval table. People and sets that it was not measured in keep the
	// table's margins where these are wider.
	Accuracy Accuracy `json:"accuracy,omitzero"`
}

// Levels of intervals. The table of intervals is a proposal for about 95 %.
const (
	leastLevel units.Fraction = 0.50
	tableLevel units.Fraction = 0.95
	mostLevel  units.Fraction = 0.99
)

// Validate returns every bad field of o at once.
func (o Options) Validate() error {
	var bad field.Errors
	if o.Level != 0 {
		bad.Add("/level", checkLevel(o.Level))
	}
	if !o.Accuracy.IsZero() {
		bad.Add("/accuracy", o.Accuracy.Validate())
	}
	return bad.Err()
}

func checkLevel(level units.Fraction) error {
	if level >= leastLevel && level <= mostLevel {
		return nil
	}
	return field.Bad(float64(level), "0.5 to 0.99", field.ErrOutOfRange)
}

func (o Options) level() units.Fraction {
	if o.Level == 0 {
		return tableLevel
	}
	return o.Level
}

// normal returns how many standard deviations to each side hold a share of
// normally distributed errors.
func normal(level units.Fraction) float64 { return math.Sqrt2 * math.Erfinv(float64(level)) }

// scale is what the table's distances are multiplied by.
func (o Options) scale() float64 {
	if o.level() == tableLevel {
		return 1
	}
	return normal(o.level()) / normal(tableLevel)
}

// How much lower a set reads that was done after others of one session, as a
// share of the 1RM: the means by which sets at 80 and at 70 % of the 1RM fell
// behind the same sets on a day of their own.
const (
	tiredNear = 0.012 // up to 10 repetitions to failure
	tiredFar  = 0.037 // above
)

func (o Options) tired(toFailure int) float64 {
	top, _ := sharedRange.Max()
	switch {
	case !o.Tired:
		return 0
	case float64(toFailure) <= top:
		return tiredNear
	}
	return tiredFar
}

// FromSet is [FromSet] with these options; their errors name a field below
// /options.
func (o Options) FromSet(s setlog.Set, e exercise.Exercise, p body.Person) (Estimate, error) {
	var bad field.Errors
	bad.Add("/set", s.Validate())
	bad.Add("/exercise", e.Validate())
	bad.Add("/person", p.Validate())
	bad.Add("/options", o.Validate())
	bad.Add("", checkMatch(s, e))
	low, high, err := reserveOf(s.Effort)
	bad.Add("/set/effort", err)
	if len(bad) > 0 {
		return Estimate{}, bad
	}
	each, err := s.Each()
	if err != nil {
		return Estimate{}, field.At("/set", err)
	}
	a := attempt{choose(p, s.Hold), each, s.Reps, low, high}
	result := Estimate{Key: s.Key, Exercise: s.Exercise, Side: s.Side, Hold: s.Hold, Day: s.Day, Stated: statedFor(s.Hold)}
	if o.Accuracy.IsZero() || a.measured() {
		err = a.byHouse(&result, o, s)
	} else {
		err = a.byAccuracy(&result, o, s, p)
	}
	if err != nil {
		return Estimate{}, err
	}
	if o.level() != tableLevel {
		result.Level = o.level()
	}
	return result, nil
}

// byHouse fills in the estimate by the house's equations and the table.
func (a attempt) byHouse(e *Estimate, o Options, s setlog.Set) error {
	if err := a.check(s.Effort); err != nil {
		return err
	}
	if err := a.estimate(e, o); err != nil {
		return field.At("/set/load", err)
	}
	e.Reasons = a.reasons(s, *e, o)
	return nil
}

// reasons adds what the options did.
func (o Options) reasons(list []evidence.Reason, toFailure int) []evidence.Reason {
	if share := o.tired(toFailure); share > 0 {
		list = append(list, evidence.Because("onerm.tired", factTired, factOpenSets).With(evidence.Share("share", units.Fraction(share))))
	}
	if o.level() != tableLevel {
		list = append(list, evidence.Because("onerm.level", factTableLevel).With(evidence.Share("level", o.level())))
	}
	return list
}

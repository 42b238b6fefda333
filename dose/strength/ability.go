package strength

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// dosing is the one equation that a set is read by and a dose is found by. Any
// that rises with the repetitions keeps the order of better and worse; two,
// the lower of which counts, would be two cautions: a set would not show what it
// was itself. Of the two house equations Epley rises without end, while Brzycki
// ends at 37 repetitions, which an easy set reaches. From 3.5 repetitions on
// Epley also lets load rise less for each repetition, 1/(30+r) against 1/(37−r):
// it is the more careful one going up.
const dosing = onerm.Epley

// perLoad is its one number: so many repetitions to failure add the load once more.
const perLoad = 30

// factor returns 1RM over load by dosing.
func factor(toFailure float64) float64 { return 1 + toFailure/perLoad }

// How a state is kept; standard deviations are shares of the 1RM. They go by what
// was planned, never by what came out: a set that is believed less because more
// was left would make a worse one count for more.
const (
	seenSD  = 0.055 // of a visit or a test, around the state
	driftSD = 0.015 // from visit to visit
	firstSD = 0.08  // after the first visit or test
	daySD   = 0.042 // of strength from day to day
	curveSD = 0.06  // of a person's curve, for each unit of the logarithm of load

	lostAWeek = 0.0075 // of the logarithm of strength, while away
)

const (
	toldShort = 1 // repetitions more are left than told
	toldMost  = 6 // told, beyond which nothing more is read from it
	toldFar   = 5 // told, beyond which a visit shows a lower bound: people misjudge by more than two
	// ratedFrom is the lowest rating on the scale rpe that has a value in reserve.
	// An easier one counts as that: were it unknown, a harder one would show more.
	ratedFrom = 5
)

// An Ability is what is known of how much somebody can lift in one exercise, on
// one side and in one hold, from all that was done so far. The zero value knows
// nothing. Methods return what is known after something more was seen.
//
// It is a normal distribution of the logarithm of the 1RM. Only its mean is
// learned: no trend, no curve, no variance. The mean is a sum of what sets showed
// with weights that do not depend on what they showed, or the larger of two such
// sums. So fewer repetitions, less told in reserve, a set asked and not done (while
// one was), a reserve no longer told (where at least the one asked was), at the last
// visit or any before, never raise it; and its variance is moved by none of these.
// Sets beyond those asked are outside that order, and so is whether there was a test
// at all: a low one lowers what is known.
//
// The part of an estimate's error that equation and person share is not in
// Variance, since no repetition narrows it: the same equation reads and doses,
// so that it falls out at the load that was lifted, and [Ability.Most] adds what
// is left of it at another load.
//
// [field.DecodeChecked] with [Ability.Validate] reads a stored one strictly.
type Ability struct {
	Log      float64 `json:"log,omitzero"`      // natural logarithm of the 1RM in kg, by [onerm.Epley]; −30 to 30
	Variance float64 `json:"variance,omitzero"` // of Log, above 0 up to 1; 0 where nothing is known
	AtLeast  bool    `json:"at_least,omitzero"` // all that was seen were lower bounds
	Untold   bool    `json:"untold,omitzero"`   // at the last visit no reserve was told: the load may not rise
}

const mostLog, mostVariance = 30, 1

// Known reports whether anything is known.
func (a Ability) Known() bool { return a.Variance > 0 }

// Validate returns every bad field of a at once.
func (a Ability) Validate() error {
	var bad field.Errors
	if !(math.Abs(a.Log) <= mostLog) {
		bad.Add("/log", field.Bad(a.Log, "-30 to 30", field.ErrOutOfRange))
	}
	if !(a.Variance >= 0 && a.Variance <= mostVariance) {
		bad.Add("/variance", field.Bad(a.Variance, "above 0 up to 1, or 0 where nothing is known", field.ErrOutOfRange))
	} else if a.Variance == 0 && a != (Ability{}) {
		bad.Add("/variance", field.Bad(a.Variance, "above 0 where something is known", field.ErrConflict))
	}
	return bad.Err()
}

// OneRM returns the 1RM by the equation that doses go by, to the gram, and false
// where nothing is known or no mass is as large. It is no measured 1RM.
func (a Ability) OneRM() (units.Mass, bool) {
	m, err := units.Kilograms(rounded(math.Exp(a.Log)))
	if err != nil || !a.Known() {
		return 0, false
	}
	m, err = m.Rounded(units.Gram, units.Nearest)
	return m, err == nil
}

// Seen returns what is known after a visit at which so many sets were asked for,
// with the reserve asked. Sets are those really done, of the exercise, side and
// hold, warm-ups and loads in doubt left out; those without repetitions, or without
// a load that can be told, are passed over. Without any nothing changes: that is no
// visit. Of what lifts the body or a long limb there is no 1RM: see [onerm.FromSet].
//
// The best set counts, read with what was told and one repetition more, up to 6
// told; above, 7 are read. If every set asked was done and all were told above 5,
// the visit shows a lower bound; after lower bounds alone a visit that shows more counts
// in full. A reserve that was not told counts as the one
// asked, but never for more than is known already, and where none was told the
// load may not rise.
func (a Ability) Seen(asked int, reserve units.RIR, sets ...setlog.Set) Ability {
	best, done, far, told := math.Inf(-1), 0, true, false
	var load, toFailure, shown float64 // of the set before, which most are like
	for i := range sets {
		s := &sets[i]
		each, err := s.Hold.Each(s.Load, s.Stated)
		if err != nil || each == 0 || s.Reps < 1 {
			continue
		}
		left, known := toldLeft(s.Effort)
		if !known && reserve > 0 {
			left = reserve
		}
		if kg, r := each.Kilograms(), float64(s.Reps)+float64(min(left, toldMost))+toldShort; kg != load || r != toFailure {
			load, toFailure, shown = kg, r, logOf(each, factor(r))
		}
		y := shown
		if !known && a.Known() {
			y = min(y, a.Log)
		}
		best, done, far, told = max(best, y), done+1, far && known && left > toldFar, told || known
	}
	if done == 0 {
		return a
	}
	return a.after(best, far && done >= asked, !told)
}

// Tested returns what is known after a test, which weighs as a visit does,
// whichever way it came out: a test that counted for more once it ended at one
// repetition would make a worse one count for more. A set says the same as in a
// visit. A measured 1RM, and an estimate that [onerm.Combine] made, count as they are. The
// estimate has to be valid; the zero one changes nothing.
func (a Ability) Tested(e onerm.Estimate) Ability {
	if e.OneRM <= 0 {
		return a
	}
	asSet := 1.0
	if r, ok := e.ToFailure.Min(); ok && len(e.Answers) > 0 {
		if share, err := e.Formula.Fraction(r); err == nil {
			asSet = factor(r+toldShort) * float64(share)
		}
	}
	return a.after(logOf(e.OneRM, asSet), false, false)
}

// Unable returns what is known after a visit at which a load could not be lifted
// once: never more than before.
func (a Ability) Unable(load units.Mass) Ability {
	if load <= 0 {
		return a
	}
	y := logOf(load, 1)
	if a.Known() {
		y = min(y, a.Log)
	}
	return a.after(y, false, false)
}

// after adds one value, or one lower bound, of the logarithm of the 1RM. The sum
// is written so that rounding keeps it rising in both.
func (a Ability) after(y float64, bound, untold bool) Ability {
	if !a.Known() {
		return Ability{Log: y, Variance: firstSD * firstSD, AtLeast: bound, Untold: untold}
	}
	gain := a.Variance / (a.Variance + seenSD*seenSD)
	mean := rounded(float64((1-gain)*a.Log) + float64(gain*y))
	switch {
	case bound:
		a.Log = max(a.Log, y)
	case a.AtLeast: // what was only a lower bound holds nothing back
		a.Log = max(mean, y)
	default:
		a.Log = mean
	}
	a.Variance = float64(a.Variance*(1-gain)) + driftSD*driftSD
	a.AtLeast, a.Untold = a.AtLeast && bound, untold
	return a
}

// toldLeft returns the reserve told, the lower of two counts, and false with 0 where
// none was.
func toldLeft(e units.Effort) (units.RIR, bool) {
	switch e.Scale() {
	case units.ScaleRIR:
		return units.RIR(e.Number()), true
	case units.ScaleRPE:
		if e.Number() < ratedFrom {
			e = units.Must(units.RPE(ratedFrom))
		}
	default:
		return 0, false
	}
	left, err := e.RIR()
	low, _ := left.Min()
	return low, err == nil
}

// logOf returns the logarithm of a multiple of a mass in kg, the same on every
// machine.
func logOf(m units.Mass, factor float64) float64 {
	return rounded(math.Log(float64(m.Kilograms() * factor)))
}

// rounded keeps nine decimals: of a logarithm, or of a number near 1, what is the
// same on every machine.
func rounded(x float64) float64 { return math.Round(x*1e9) / 1e9 }

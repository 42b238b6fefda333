package strength

import (
	"fmt"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Chance governs a load and a count together, for somebody who does the count
// to its end and does not stop by feel. It is the one caution between what
// is known and a dose. The zero value is "not given".
type Chance struct {
	// Reserve is the highest chance that fewer are left than the reserve asked less
	// one; 0.01 to 0.20.
	Reserve units.Fraction `json:"reserve"`
	// Finish is the highest chance that not even one more than the count could be done;
	// 0.01 to 0.10, and no more than Reserve. The count itself is not finished in fewer.
	Finish units.Fraction `json:"finish"`
}

const (
	usualReserve, leastChance, mostReserve units.Fraction = 0.10, 0.01, 0.20
	usualFinish, mostFinish                units.Fraction = 0.05, 0.10
)

// StandardChance returns the chances that doses keep to, where no policy says otherwise:
// 0.10 and 0.05. In simulated beginners half of the first held many back whose weights were
// few, and twice of it brought 5 to 7 % of sets to failure for little.
func StandardChance() Chance { return standard }

var standard = Chance{usualReserve, usualFinish}

// Validate returns every bad field of c at once.
func (c Chance) Validate() error {
	var bad field.Errors
	if !(c.Reserve >= leastChance && c.Reserve <= mostReserve) {
		bad.Add("/reserve", field.Bad(float64(c.Reserve), fmt.Sprintf("%v to %v", leastChance, mostReserve), field.ErrOutOfRange))
	}
	if most := min(mostFinish, c.Reserve); !(c.Finish >= leastChance && c.Finish <= most) {
		bad.Add("/finish", field.Bad(float64(c.Finish), fmt.Sprintf("%v to %v", leastChance, most), field.ErrOutOfRange))
	}
	return bad.Err()
}

// String says both chances, such as "at most 10 % below the reserve less one, at
// most 5 % without one more than the count".
func (c Chance) String() string {
	return fmt.Sprintf("at most %v below the reserve less one, at most %v without one more than the count", c.Reserve, c.Finish)
}

// A Prospect is a load that might be asked for.
type Prospect struct {
	Load units.Mass // of one implement, or of all that is held: above 0 kg
	// Last is the load that was asked for last: the farther from it, the less is
	// known. 0 kg is none; then the distance is that from the 1RM.
	Last    units.Mass
	Reserve units.RIR // asked for: 0 to 10
	// Missed is how many days somebody was away beyond the planned gap, 0 or more. What
	// is lost by them is taken off this answer alone. Were what was known before
	// believed less for it, a good visit after a longer gap would show more.
	Missed int
}

func (p Prospect) valid() bool {
	return p.Load > 0 && p.Last >= 0 && p.Reserve >= 0 && p.Reserve <= 10 && p.Missed >= 0
}

// Ceilings against overflow; they are no doses.
const (
	mostCount = 100
	mostOver  = 2 // the logarithm of 1RM over load: 191 repetitions to failure
)

// Most returns the largest count that the chance allows with the load and the
// reserve of p, from 0, where not even one is, to 100; limits on a count, and the
// repetitions that the equation was studied for, are the caller's. It is false where
// nothing is known, or where a, p or c lie outside their ranges. After a visit
// without any reserve told it is 0 for whatever is heavier than the last load.
//
// R, the repetitions to failure on the day, follows the logarithm of the 1RM, whose
// variance is that of a, of the day and of the curve between the two loads. For
// a reserve r the count n keeps P(R < n+r−1) to c.Reserve and P(R < n+1) to
// c.Finish. It never rises with load, reserve, variance or missed days, nor
// falls as the 1RM rises. The normal distribution stands for t: the spreads are
// not estimated from the person.
//
// The chance hangs together with what is read of a set: for a count to stay, r−1
// and z standard deviations of R have to be read beyond what was done, 5 to 6
// repetitions for a reserve of 3, and one more for it to rise.
func (a Ability) Most(p Prospect, c Chance) (n int, ok bool) {
	if !a.Known() || a.Validate() != nil || !p.valid() || c != standard && c.Validate() != nil {
		return 0, false
	}
	if a.Untold && p.Last > 0 && p.Load > p.Last {
		return 0, true
	}
	load, last := logOf(p.Load, 1), a.Log
	switch {
	case p.Last == p.Load:
		last = load
	case p.Last > 0:
		last = logOf(p.Last, 1)
	}
	far := float64(curveSD * (load - last))
	s := math.Sqrt(a.Variance + daySD*daySD + float64(far*far))
	over := a.Log - float64(float64(p.Missed)*(lostAWeek/7)) - load
	keep, finish := c.oneSided()
	inReserve := repsAt(over-float64(keep*s)) - float64(p.Reserve) + 1
	toFinish := repsAt(over-float64(finish*s)) - 1
	return int(max(0, min(math.Floor(min(inReserve, toFinish)), mostCount))), true
}

// repsAt returns the repetitions to failure with a load of which the logarithm lies
// so far below that of the 1RM, below 0 where it lies above it.
func repsAt(over float64) float64 {
	return float64(perLoad * (rounded(math.Exp(min(over, mostOver))) - 1))
}

// oneSided returns the standard deviations of both shares of a chance.
func (c Chance) oneSided() (reserve, finish float64) {
	if c == standard { // worked out once
		return standardReserve, standardFinish
	}
	return oneSided(c.Reserve), oneSided(c.Finish)
}

var standardReserve, standardFinish = oneSided(standard.Reserve), oneSided(standard.Finish)

// oneSided returns how many standard deviations below the mean leave a share of
// normally distributed values below them.
func oneSided(share units.Fraction) float64 {
	return rounded(math.Sqrt2 * math.Erfinv(float64(1-(share+share))))
}

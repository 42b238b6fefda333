package onerm

import (
	"math"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// kemmlerAge is the least age for which Kemmler 2006 is chosen: the women it
// was made in were 57.4 ± 3.1 years old.
const kemmlerAge body.Age = 55

// house are the equations asked, in this order: the lower end of
// the interval comes from the lowest of those that may be asked; where Kemmler
// 2006 may be asked, that is always its own.
var house = [...]Formula{Epley, Brzycki, Kemmler2006}

// practisedFormula gives the best estimate in practised people in whom Kemmler
// 2006 was not made: Epley and Brzycki read high in them. It moves the best
// estimate within the interval, never its lower end.
const practisedFormula = OConner

// practisedLeast is the fewest repetitions to failure at which it is asked: no
// source tested it at 1, where it gives more than was lifted.
const practisedLeast = 2

// A chooser knows which equations a person and a hold allow.
type chooser struct {
	kemmler bool // Kemmler 2006 may be asked: sex given as female, or not given
	noSex   bool // and it was not given
	novice  bool
	also    Formula // asked for the best estimate apart from the house, if any
}

func choose(p body.Person, h body.Hold) chooser {
	trained := p.Training == body.Intermediate || p.Training == body.Advanced
	c := chooser{
		kemmler: trained && h == body.OnStack && p.Age >= kemmlerAge && p.Sex != body.Male,
		noSex:   p.Sex == 0,
		novice:  p.Training == body.Novice,
	}
	if trained && !c.kemmler {
		c.also = practisedFormula
	}
	return c
}

// asks reports whether f may be asked about sets of low to high repetitions to
// failure.
func (c chooser) asks(f Formula, low, high int) bool {
	switch {
	case f == Kemmler2006 && !c.kemmler, f == 0, f == c.also && low < practisedLeast:
		return false
	}
	studied := equations[f].studied
	return studied.Contains(float64(low)) && studied.Contains(float64(high))
}

// lowest returns the least factor 1RM/load of the equations asked at r
// repetitions to failure, and which gives it; the first among equals. It is no
// formula if none may be asked.
func (c chooser) lowest(r int) (float64, Formula) {
	least, taken := math.Inf(1), Formula(0)
	for _, f := range house {
		if !c.asks(f, r, r) {
			continue
		}
		if k := equations[f].Factor(float64(r)); k < least {
			least, taken = k, f
		}
	}
	return least, taken
}

// own returns the lower end, over the load, that the interval table by itself
// gives to a set, and false where there is none.
func (c chooser) own(reps, reserve int) (float64, bool) {
	k, f := c.lowest(reps + reserve)
	_, m, ok := lookUp(reps, reserve, c.novice)
	return k * (1 - m.down), ok && f != 0
}

// lower returns the lower end, over the load, once sets are put in order.
//
// The table's margins jump from row to row, so that by themselves a set of 5
// to failure would end higher than one of 5 with 1 in reserve, and 10 higher
// than 11. Two rules keep the order that common sense gives: a set with some
// in reserve counts no less than the same set with less in reserve, and a set
// counts no more than any set with the same reserve and more repetitions. The
// second only lightens, and it has the last word.
func (c chooser) lower(reps, reserve int) float64 {
	low := math.Inf(1)
	for n := reps; ; n++ {
		k, ok := c.own(n, reserve)
		if !ok {
			return low
		}
		for s := range reserve {
			if less, ok := c.own(n, s); ok {
				k = max(k, less)
			}
		}
		low = min(low, k)
	}
}

// reserveOf returns the whole repetitions in reserve that an effort stands for:
// 2.5 for 2 to 3, as the scale's own half points.
func reserveOf(e units.Effort) (low, high int, err error) {
	r, err := e.RIR()
	if err != nil {
		return 0, 0, noReserve(e, err)
	}
	from, _ := r.Min()
	to, _ := r.Max()
	if to > maxReserve {
		return 0, 0, refuse(field.Bad(e, "at most 5 repetitions in reserve: more cannot be counted", ErrNotStudied),
			evidence.Because("onerm.none-reserve", factReserveLimit).With(evidence.Effort("effort", e), evidence.Count("most", maxReserve)))
	}
	return int(math.Floor(float64(from))), int(math.Ceil(float64(to))), nil
}

// countedReps returns the repetitions of a set by which its Loading is chosen: those done,
// or, where the table ends before, as many as it has an interval for. It is 0
// where it has none at all.
func (c chooser) countedReps(reps, reserve int) int {
	for n := reps; n > 0; n-- {
		if _, ok := c.own(n, reserve); ok {
			return n
		}
	}
	return 0
}

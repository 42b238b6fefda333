package simulate

import (
	"cmp"
	"math"
	"slices"

	"example.org/posology/units"
)

// What a set does for growth, as a share of what a reference set does: 70 % of the
// 1RM, five or fewer left. No step stands in it: the trials know none.
const (
	referenceShare = 0.70
	perShare       = 0.8 // of the gain for the whole of the 1RM: 0.08 for each ten points
	leastShare     = 0.20
	mostShare      = 0.85
)

// reserveAt and reserveGain are how the gain falls with what is left truly.
var (
	reserveAt   = [...]float64{5, 10, 15}
	reserveGain = [...]float64{1, 0.9, 0.6}
)

// setGain is the gain of one, two and three sets, as a share of that of three.
var setGain = [...]float64{0.80, 0.95, 1}

// loadFactor returns the gain with a share of the 1RM. Below what was tried it falls to
// none without load.
func loadFactor(share float64) float64 {
	at := min(max(share, leastShare), mostShare)
	factor := 1 + float64(perShare*(at-referenceShare))
	if share < leastShare {
		return factor * max(0, share) / leastShare
	}
	return factor
}

// effect returns what a set does for growth.
func effect(share, left float64) float64 {
	return loadFactor(share) * between(left, reserveAt[:], reserveGain[:])
}

// together joins the effects of the sets of a visit, best first: one set more, however
// light, never takes away.
func together(effects []float64) float64 {
	slices.SortFunc(effects, func(a, b float64) int { return cmp.Compare(b, a) })
	sum, before := 0.0, 0.0
	for i, e := range effects {
		if i == len(setGain) {
			break
		}
		sum, before = sum+float64(e*(setGain[i]-before)), setGain[i]
	}
	return sum
}

// A growth is how strong somebody has become.
type growth struct {
	exponent  float64 // of the weeks, at the reference dose
	log, best float64 // logarithm of the strength, as a multiple of that at the start: now, and at best
}

// Of growth and loss.
const (
	perVisit    = 0.5    // weeks that a visit stands for, of two a week
	lossAWeek   = 0.0075 // of the logarithm
	daysKept    = 7      // after a visit, in which nothing is lost
	regainTimes = 2      // as fast as it was lost
)

// visit trains with an effect. At the same effect throughout, strength is the power of
// the weeks that the trials follow; where the effect changes, growth goes on from the
// strength reached, fast for somebody who has trained too lightly so far.
func (g *growth) visit(effect float64) {
	was := g.log
	if rate := float64(g.exponent * effect); rate > 0 && g.log/rate < 500 { // beyond, it grows no more
		g.log = rate * math.Log(math.Exp(g.log/rate)+perVisit)
	}
	again := was + float64(regainTimes*lossAWeek*perVisit*min(1, effect))
	g.log = max(g.log, min(g.best, again))
	g.best = max(g.best, g.log)
}

// away loses what so many days since the last visit take, nothing of the strength
// before all training.
func (g *growth) away(days units.Day) {
	weeks := float64(max(0, days-daysKept)) / daysInWeek
	g.log = min(g.log, max(0, g.log-float64(lossAWeek*weeks)))
}

// A fatigue is the share of the repetitions to failure that sets before have taken.
type fatigue struct {
	share float64
	sets  int
}

// restAt and restTakes: what a set to failure takes from the next, by seconds of rest;
// leftAt and leftTakes: how much of that a set takes which ends so far from failure.
var (
	restAt    = [...]float64{60, 120, 180}
	restTakes = [...]float64{0.45, 0.30, 0.22}
	leftAt    = [...]float64{0, 1, 3, 15}
	leftTakes = [...]float64{1, 0.4, 0.3, 0}
)

const (
	eachMore = 0.06 // for each set more
	mostFall = 0.8
)

// set adds a set that ended with so many left, before so many seconds of rest.
func (f *fatigue) set(left, rest float64) {
	takes := between(max(0, left), leftAt[:], leftTakes[:])
	f.share = max(f.share, float64(takes*between(rest, restAt[:], restTakes[:])))
	if f.sets > 0 {
		f.share += float64(eachMore * takes)
	}
	f.share = min(f.share, mostFall)
	f.sets++
}

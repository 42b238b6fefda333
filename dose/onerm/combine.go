package onerm

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// The parts of an estimate's error that differ from day to day and from set to
// set, as standard deviations of its share of the 1RM. What is left of an
// estimate's error stays with the person and the equation, and no number of
// sets takes it away. The day's part is set below what was measured, so that
// more is left.
const (
	dayError = 0.012
	setError = 0.018
)

// unfitLevel is the level beyond which a set does not fit the others.
const unfitLevel = mostLevel

// leastSpread keeps an interval without width from taking all the weight.
const leastSpread = 1e-6

// Combine joins estimates of one person into one. They must be of the same
// exercise, side, hold and level, and of no two keys; their order does not matter, and a single one
// comes back as it is.
//
// Each is taken to be of a set of its own, also where two are alike, as two sets of a day
// may well be: one given twice counts twice, and a caller who joins lists drops it first.
//
// Each is weighed by the inverse of its variance, taken from its interval. Sets
// of one day share that day's error, and all share the error of person and
// equation, so that many sets narrow the interval only so far. A set that lies
// farther from the others than 99 % of sets would is named in the reasons, not
// dropped, and the interval is widened to hold it. The day is the latest one; strength
// that changes over weeks is not modelled here.
//
// Doses read the result's best estimate as it is, so that a set that does not fit lowers
// them by its weight alone: the result of ten good sets and a bad one doses above the bad
// one. They are more careful with the estimates themselves, of which the least of the
// latest day counts and those far apart are asked about: see package strength.
//
// Errors name the estimate by its place ("/2/hold"): those of
// [Estimate.Validate], a [field.ErrConflict] for one that differs from the
// first, a [field.ErrMissing] for none.
func Combine(estimates ...Estimate) (Estimate, error) {
	if err := checkAlike(estimates); err != nil {
		return Estimate{}, err
	}
	if len(estimates) == 1 {
		return estimates[0], nil
	}
	c := combination{sets: slices.Clone(estimates)}
	slices.SortFunc(c.sets, byContent)
	c.weigh()
	c.findUnfit()
	return c.result()
}

// checkAlike returns every reason why the estimates cannot be joined.
func checkAlike(list []Estimate) error {
	if len(list) == 0 {
		return field.Bad(nil, "one estimate or more", field.ErrMissing)
	}
	var bad field.Errors
	key := keyOf(list)
	for i, e := range list {
		path := fmt.Sprintf("/%d", i)
		bad.Add(path, e.Validate())
		differs := func(which string, got, want any) {
			if got != want {
				bad.Add(path+which, field.Bad(got, fmt.Sprintf("%v, as in the first", want), field.ErrConflict))
			}
		}
		bad.Add(path+"/key", key.Matches(e.Key))
		differs("/exercise", e.Exercise, list[0].Exercise)
		differs("/side", e.Side, list[0].Side)
		differs("/hold", e.Hold, list[0].Hold)
		differs("/level", e.level(), list[0].level())
	}
	return bad.Err()
}

// keyOf returns the first key that is given.
func keyOf(list []Estimate) body.Key {
	for _, e := range list {
		if e.Key != "" {
			return e.Key
		}
	}
	return ""
}

// byContent puts estimates in an order that does not hang on how they came.
func byContent(a, b Estimate) int {
	lowA, highA := endsOf(a.Interval)
	lowB, highB := endsOf(b.Interval)
	fewA, manyA := endsOf(a.ToFailure)
	fewB, manyB := endsOf(b.ToFailure)
	return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.OneRM, b.OneRM), cmp.Compare(lowA, lowB), cmp.Compare(highA, highB),
		cmp.Compare(fewA, fewB), cmp.Compare(manyA, manyB), cmp.Compare(a.Grade, b.Grade), cmp.Compare(a.Formula, b.Formula),
		cmp.Compare(a.Loading, b.Loading))
}

func endsOf[T cmp.Ordered](r units.Range[T]) (low, high T) {
	low, _ = r.Min()
	high, _ = r.Max()
	return low, high
}

// A combination is several sets on the way to one estimate.
type combination struct {
	sets        []Estimate
	spread      []float64 // standard deviation of each, as a share
	shared      []float64 // the part of it that stays with person and equation
	day, set    []float64 // the other two
	weight      []float64
	unfit       []int
	best, sigma float64 // mean in ng, and its standard deviation as a share
	down, up    float64 // margins, as shares of the mean
}

// weigh works out parts, weights, mean and margins. An interval of Student's t counts as a
// normal one as wide: what few people leave open is shared by all sets.
func (c *combination) weigh() {
	z := normal(c.sets[0].level())
	sum := 0.0
	for _, e := range c.sets {
		low, high := endsOf(e.Interval)
		sigma := max((float64(high)-float64(low))/(2*z*float64(e.OneRM)), leastSpread)
		part := min(1, sigma/math.Hypot(dayError, setError)) // no more than all of it
		day, set := part*dayError, part*setError
		c.spread, c.day, c.set = append(c.spread, sigma), append(c.day, day), append(c.set, set)
		c.shared = append(c.shared, math.Sqrt(max(0, float64(sigma*sigma)-float64(day*day)-float64(set*set))))
		c.weight = append(c.weight, 1/float64(sigma*sigma))
		sum += 1 / float64(sigma*sigma)
	}
	usual := 0.0
	for i, e := range c.sets {
		c.weight[i] /= sum
		w, share := c.weight[i], c.weight[i]/float64(e.OneRM)
		low, high := endsOf(e.Interval)
		c.best += float64(w * float64(e.OneRM))
		c.down += float64(share * float64(e.OneRM-low))
		c.up += float64(share * float64(high-e.OneRM))
		usual += float64(w * c.spread[i])
	}
	c.sigma = math.Sqrt(c.variance())
	narrower := min(1, c.sigma/usual)
	c.down, c.up = c.down*narrower, c.up*narrower
}

// result writes the combination as an estimate, with the equation and the
// grade of the set that weighs most.
func (c *combination) result() (Estimate, error) {
	heaviest := 0
	for i, w := range c.weight {
		if w > c.weight[heaviest] {
			heaviest = i
		}
	}
	e := c.sets[heaviest]
	e.Key, e.Answers, e.Reasons = keyOf(c.sets), nil, c.reasons()
	e.Day = c.sets[len(c.sets)-1].Day // they are in the order of their days
	for _, s := range c.sets {
		few, many := endsOf(e.ToFailure)
		fewer, more := endsOf(s.ToFailure)
		e.ToFailure = units.Must(units.Between(min(few, fewer), max(many, more)))
	}
	var bad field.Errors
	mass := func(ng float64) units.Mass {
		if !(ng < float64(units.MaxMass)) {
			bad.Add("/one_rm", field.Bad(ng, "a mass within 9.22 million kg", field.ErrOverflow))
			return 0
		}
		return units.Mass(ng)
	}
	e.OneRM = mass(math.Round(c.best))
	least := min(max(0, mass(math.Round(c.best*(1-c.down)))), e.OneRM)
	most := max(mass(math.Round(c.best*(1+c.up))), e.OneRM)
	if len(bad) > 0 {
		return Estimate{}, bad
	}
	for _, i := range c.unfit {
		least, most = min(least, c.sets[i].OneRM), max(most, c.sets[i].OneRM)
	}
	var err error
	e.Interval, err = outward(least, most)
	return e, err
}

func (c *combination) reasons() []evidence.Reason {
	days := map[units.Day]bool{}
	for _, e := range c.sets {
		days[e.Day] = true
	}
	list := []evidence.Reason{evidence.Because("onerm.combined", factDayError, factSetError, factShared).With(
		evidence.Count("sets", len(c.sets)), evidence.Days("days", len(days)), evidence.Share("spread", units.Fraction(c.sigma)))}
	for _, i := range c.unfit {
		e := c.sets[i]
		list = append(list, evidence.Because("onerm.unfit", factUnfit).With(evidence.Day("day", e.Day), evidence.Number("reps", e.ToFailure), evidence.Mass("one_rm", e.OneRM)))
	}
	return list
}

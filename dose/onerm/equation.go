package onerm

import (
	"fmt"
	"math"
	"strconv"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// shape is the form of an equation's factor 1RM/load over repetitions r.
type shape uint8

const (
	linear      shape = iota + 1 // 1 + r/a
	slope                        // 1 + a·r
	hyperbola                    // a/(b − c·r)
	power                        // r^a
	exponential                  // 100/(a + b·e^(−c·r))
	cubic                        // a + b·r + c·r² + d·r³
)

// An equation is a row of the table of equations.
type equation struct {
	shape      shape
	a, b, c, d float64
	domain     units.Range[float64] // float64s at which it is evaluated
	studied    units.Range[float64] // repetitions to failure
	known      evidence.Fact        // how the coefficients are known; ID and value are made
	advised    evidence.Fact        // the range in use or tested; the ID is made
	people     evidence.Fact        // in whom it was made; no fact without a basis
}

// factor returns 1RM/load at r, which lies in the domain.
func (q *equation) factor(r float64) float64 {
	switch q.shape {
	case linear:
		return 1 + r/q.a
	case slope:
		return 1 + float64(q.a*r)
	case hyperbola:
		return q.a / (q.b - float64(q.c*r))
	case power:
		return math.Pow(r, q.a)
	case exponential:
		return 100 / (q.a + float64(q.b*math.Exp(-q.c*r)))
	}
	return q.a + float64(r*(q.b+float64(r*(q.c+float64(q.d*r)))))
}

// reps is the inverse of 1/factor for a share above 0. What has no solution
// gives NaN or a number outside the domain.
func (q *equation) reps(share float64) float64 {
	switch q.shape {
	case linear:
		return q.a * (1/share - 1)
	case slope:
		return (1/share - 1) / q.a
	case hyperbola:
		return (q.b - float64(q.a*share)) / q.c
	case power:
		return math.Pow(share, -1/q.a)
	case exponential:
		return -math.Log((float64(100*share)-q.a)/q.b) / q.c
	}
	return q.bisect(share)
}

// bisect returns the least r in the domain whose share 1/factor is no more than
// the given one, NaN if there is none. The factor rises from the lower end on,
// which itself has no inverse.
func (q *equation) bisect(share float64) float64 {
	low, _ := q.domain.Min()
	high, _ := q.domain.Max()
	if !(share < 1/q.factor(low) && share >= 1/q.factor(high)) {
		return math.NaN()
	}
	for {
		mid := low + (high-low)/2
		switch {
		case mid <= low || mid >= high:
			return high
		case 1/q.factor(mid) > share:
			low = mid
		default:
			high = mid
		}
	}
}

// rising returns the repetitions above 0 over which a cubic rises: between the
// roots of its slope b + 2c·r + 3d·r², for c above 0 and d below.
func rising(b, c, d float64) units.Range[float64] {
	root := math.Sqrt(float64(c*c) - float64(3*d*b))
	return units.Must(units.Between(max(tiny, (root-c)/(3*d)), (-c-root)/(3*d)))
}

// whole returns the whole repetitions that lie in the domain.
func (q *equation) whole() (low, high int32) {
	from, _ := q.domain.Min()
	high = math.MaxInt32
	if end, ok := q.domain.Max(); ok {
		high = int32(math.Floor(end))
	}
	return int32(math.Ceil(from)), high
}

// tabled is for how many repetitions a factor is kept while a list is computed.
const tabled = 32

// table returns the factors of the first repetitions.
func (q *equation) table() (factors [tabled]float64) {
	low, high := q.whole()
	for r := low; r < tabled && r <= high; r++ {
		factors[r] = q.factor(float64(r))
	}
	return factors
}

// fill computes dst from load and reps up to the first pair outside its limits
// and returns the index of that, the length if there is none: the load times the
// factor, but for a hyperbola load·a/(b − c·r), in the order that OneRMs
// promises.
func (q *equation) fill(dst, load []float64, reps []int32, factors *[tabled]float64) int {
	dst, reps = dst[:len(load)], reps[:len(load)]
	low, high := q.whole()
	span := uint32(high - low)
	if q.shape == hyperbola {
		a, b, c := q.a, q.b, q.c
		for i, x := range load {
			r := reps[i]
			if badPair(x, r, low, span) {
				return i
			}
			dst[i] = x * a / (b - float64(c*float64(r)))
		}
		return len(load)
	}
	for i, x := range load {
		r := reps[i]
		if badPair(x, r, low, span) {
			return i
		}
		if uint32(r) < tabled {
			dst[i] = x * factors[r]
		} else {
			dst[i] = x * q.factor(float64(r))
		}
	}
	return len(load)
}

// badPair reports whether a load is no mass, or repetitions, which lie within
// span above the lowest, do not. Below the lowest the difference wraps round.
func badPair(load float64, reps, low int32, span uint32) bool {
	return !(load > 0 && load <= maxLoad) || uint32(reps-low) > span
}

// text prints the equation from its coefficients.
func (q *equation) text() string { return "1RM = " + q.put("load", "r", "·") }

// put prints the equation with a load and repetitions, as symbols or numbers, and
// the sign that stands between what is multiplied.
func (q *equation) put(load, r, times string) string {
	a, b, c, d := number(q.a), number(q.b), number(q.c), number(math.Abs(q.d))
	of := func(coefficient string) string { // repetitions
		if coefficient == "1" {
			return r
		}
		return coefficient + times + r
	}
	load += times
	switch q.shape {
	case linear:
		return load + "(1 + " + r + "/" + a + ")"
	case slope:
		return load + "(1 + " + of(a) + ")"
	case hyperbola:
		return load + a + "/(" + b + " − " + of(c) + ")"
	case power:
		return load + r + "^" + a
	case exponential:
		return load + "100/(" + a + " + " + b + times + "e^(−" + of(c) + "))"
	}
	sign := " + "
	if q.b < 0 {
		sign, b = " − ", number(-q.b)
	}
	return load + "(" + a + sign + of(b) + " + " + of(c) + "² − " + of(d) + "³)"
}

func number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// domainText says which repetitions are accepted.
func (q *equation) domainText() string {
	low, _ := q.domain.Min()
	high, ends := q.domain.Max()
	from, to := "more than 0", "any finite number"
	if low >= 1 {
		from = fmt.Sprintf("at least %.4g", low)
	}
	if ends {
		to = fmt.Sprintf("below about %.4g", high)
	}
	return from + " repetitions, " + to
}

// shareText says which shares of the 1RM have an inverse.
func (q *equation) shareText() string {
	first, _ := q.domain.Min()
	last, ends := q.domain.Max()
	if !ends {
		last = math.MaxFloat64
	}
	return fmt.Sprintf("a share between about %.4g and %.4g of the 1RM", 1/q.factor(last), 1/q.factor(first))
}

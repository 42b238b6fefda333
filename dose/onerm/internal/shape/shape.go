package shape

import (
	"fmt"
	"math"
	"strconv"

	"example.org/posology/units"
)

// Kind is the form of an equation's factor 1RM/load over repetitions r.
type Kind uint8

const (
	Linear      Kind = iota + 1 // 1 + r/a
	Slope                       // 1 + a·r
	Hyperbola                   // a/(b − c·r)
	Power                       // r^a
	Exponential                 // 100/(a + b·e^(−c·r))
	Cubic                       // a + b·r + c·r² + d·r³
)

// A Shape is an equation's factor with its coefficients.
type Shape struct {
	Kind       Kind
	A, B, C, D float64
	Domain     units.Range[float64] // float64s at which it is evaluated
}

// Factor returns 1RM/load at r, which lies in the domain.
func (q *Shape) Factor(r float64) float64 {
	switch q.Kind {
	case Linear:
		return 1 + r/q.A
	case Slope:
		return 1 + float64(q.A*r)
	case Hyperbola:
		return q.A / (q.B - float64(q.C*r))
	case Power:
		return math.Pow(r, q.A)
	case Exponential:
		return 100 / (q.A + float64(q.B*math.Exp(-q.C*r)))
	}
	return q.A + float64(r*(q.B+float64(r*(q.C+float64(q.D*r)))))
}

// Reps is the inverse of 1/factor for a share above 0. What has no solution
// gives NaN or a number outside the domain.
func (q *Shape) Reps(share float64) float64 {
	switch q.Kind {
	case Linear:
		return q.A * (1/share - 1)
	case Slope:
		return (1/share - 1) / q.A
	case Hyperbola:
		return (q.B - float64(q.A*share)) / q.C
	case Power:
		return math.Pow(share, -1/q.A)
	case Exponential:
		return -math.Log((float64(100*share)-q.A)/q.B) / q.C
	}
	return q.bisect(share)
}

// bisect returns the least r in the domain whose share 1/factor is no more than
// the given one, NaN if there is none. The factor rises from the lower end on,
// which itself has no inverse.
func (q *Shape) bisect(share float64) float64 {
	low, _ := q.Domain.Min()
	high, _ := q.Domain.Max()
	if !(share < 1/q.Factor(low) && share >= 1/q.Factor(high)) {
		return math.NaN()
	}
	for {
		mid := low + (high-low)/2
		switch {
		case mid <= low || mid >= high:
			return high
		case 1/q.Factor(mid) > share:
			low = mid
		default:
			high = mid
		}
	}
}

// Rising returns the repetitions above 0 over which a cubic rises: between the
// roots of its slope b + 2c·r + 3d·r², for c above 0 and d below.
func Rising(b, c, d float64) units.Range[float64] {
	root := math.Sqrt(float64(c*c) - float64(3*d*b))
	return units.Must(units.Between(max(Tiny, (root-c)/(3*d)), (-c-root)/(3*d)))
}

// Whole returns the whole repetitions that lie in the domain.
func (q *Shape) Whole() (low, high int32) {
	from, _ := q.Domain.Min()
	high = math.MaxInt32
	if end, ok := q.Domain.Max(); ok {
		high = int32(math.Floor(end))
	}
	return int32(math.Ceil(from)), high
}

// Tabled is for how many repetitions a factor is kept while a list is computed.
const Tabled = 32

// Table returns the factors of the first repetitions.
func (q *Shape) Table() (factors [Tabled]float64) {
	low, high := q.Whole()
	for r := low; r < Tabled && r <= high; r++ {
		factors[r] = q.Factor(float64(r))
	}
	return factors
}

// Fill computes dst from load and reps up to the first pair outside its limits
// and returns the index of that, the length if there is none: the load times the
// factor, but for a hyperbola load·a/(b − c·r), in the order that OneRMs
// promises.
func (q *Shape) Fill(dst, load []float64, reps []int32, factors *[Tabled]float64) int {
	dst, reps = dst[:len(load)], reps[:len(load)]
	low, high := q.Whole()
	span := uint32(high - low)
	if q.Kind == Hyperbola {
		a, b, c := q.A, q.B, q.C
		for i, x := range load {
			r := reps[i]
			if BadPair(x, r, low, span) {
				return i
			}
			dst[i] = x * a / (b - float64(c*float64(r)))
		}
		return len(load)
	}
	for i, x := range load {
		r := reps[i]
		if BadPair(x, r, low, span) {
			return i
		}
		if uint32(r) < Tabled {
			dst[i] = x * factors[r]
		} else {
			dst[i] = x * q.Factor(float64(r))
		}
	}
	return len(load)
}

// BadPair reports whether a load is no mass, or repetitions, which lie within
// span above the lowest, do not. Below the lowest the difference wraps round.
func BadPair(load float64, reps, low int32, span uint32) bool {
	return !(load > 0 && load <= MaxLoad) || uint32(reps-low) > span
}

// Text prints the equation from its coefficients.
func (q *Shape) Text() string { return "1RM = " + q.Put("load", "r", "·") }

// Put prints the equation with a load and repetitions, as symbols or numbers, and
// the sign that stands between what is multiplied.
func (q *Shape) Put(load, r, times string) string {
	a, b, c, d := Number(q.A), Number(q.B), Number(q.C), Number(math.Abs(q.D))
	of := func(coefficient string) string { // repetitions
		if coefficient == "1" {
			return r
		}
		return coefficient + times + r
	}
	load += times
	switch q.Kind {
	case Linear:
		return load + "(1 + " + r + "/" + a + ")"
	case Slope:
		return load + "(1 + " + of(a) + ")"
	case Hyperbola:
		return load + a + "/(" + b + " − " + of(c) + ")"
	case Power:
		return load + r + "^" + a
	case Exponential:
		return load + "100/(" + a + " + " + b + times + "e^(−" + of(c) + "))"
	}
	sign := " + "
	if q.B < 0 {
		sign, b = " − ", Number(-q.B)
	}
	return load + "(" + a + sign + of(b) + " + " + of(c) + "² − " + of(d) + "³)"
}

// Number prints a number as short as it can be read back.
func Number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// DomainText says which repetitions are accepted.
func (q *Shape) DomainText() string {
	low, _ := q.Domain.Min()
	high, ends := q.Domain.Max()
	from, to := "more than 0 repetitions", "any finite number"
	switch {
	case low == 1:
		from = "1 repetition or more"
	case low > 1:
		from = fmt.Sprintf("at least about %.4g repetitions", low)
	}
	if ends {
		to = fmt.Sprintf("below about %.4g", high)
	}
	return from + ", " + to
}

// ShareText says which shares of the 1RM have an inverse.
func (q *Shape) ShareText() string {
	first, _ := q.Domain.Min()
	last, ends := q.Domain.Max()
	if !ends {
		last = math.MaxFloat64
	}
	return fmt.Sprintf("a share between about %.4g and %.4g of the 1RM", 1/q.Factor(last), 1/q.Factor(first))
}

// MaxLoad is the most that a load may be in any unit: what [units.Mass] holds,
// in nanograms. No product overflows below it.
const MaxLoad = float64(units.MaxMass)

// Tiny is the first float64 above 0.
const Tiny = math.SmallestNonzeroFloat64

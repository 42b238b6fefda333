package fit

import (
	"math"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
)

// A problem is a sum of squared residuals to be made least.
type problem struct {
	start []float64
	size  int // number of residuals
	// residuals writes the residuals at the given parameters, NaN where the
	// function is not defined.
	residuals func(into, at []float64)
	// jacobian writes their derivatives, a column for each parameter. Without
	// it central differences are taken.
	jacobian func(columns [][]float64, at []float64)
	damp     float64 // the damping to begin with: little for a start near the end
}

// A solution is where the sum of squares is least.
type solution struct {
	at    []float64
	rss   float64       // the sum of squares
	cov   *mat.SymDense // (JᵀJ)⁻¹, the covariance for residuals of variance 1
	steps int
}

const (
	maxSteps = 1000
	maxDamp  = 1e30
	// offset ends the search: how far the residuals still lean into the tangent
	// plane, as a share of their length (Bates and Watts 1981). Below it a sum
	// of squares in float64 cannot tell better from worse.
	offset = 1e-7
	// still ends it for data with little error, whose residuals are mostly rounding:
	// the undamped step over the parameters, both scaled.
	still = 1e-9
	// slack is by what both may be wider where rounding hides any further gain.
	slack = 1000
	// enough is the share of the promised gain that makes a step count.
	enough = 1e-4
)

// least runs the Levenberg–Marquardt method: Marquardt's scaling by the longest
// columns met, Nielsen's rule for the damping, steps by QR of the damped system
// and not by normal equations, which would square the condition number. The
// errors are errTooFew, errNotFinite, errSingular and [ErrNoConvergence].
func least(p problem) (solution, error) {
	if p.size < len(p.start) {
		return solution{}, errTooFew
	}
	s := newSearch(p)
	if !finite(s.r) {
		return solution{}, errNotFinite
	}
	for n := range maxSteps {
		if err := s.look(); err != nil {
			return solution{}, err
		}
		if s.settled(1) || !s.move() && s.settled(slack) {
			return s.solution(n)
		}
		if s.damp >= maxDamp {
			break
		}
	}
	if s.newton == nil {
		return solution{}, errSingular
	}
	return solution{}, ErrNoConvergence
}

// A search is the state between two steps.
type search struct {
	problem // its damp is the damping as it stands
	at, r   []float64
	rss     float64
	columns [][]float64
	newton  []float64 // the undamped step; nil if there is none
	longest []float64 // longest column met, by parameter
	growth  float64   // by what the damping grows when a step fails
}

func newSearch(p problem) *search {
	s := &search{problem: p, growth: 2}
	s.at = append(s.at, p.start...)
	s.longest = make([]float64, len(p.start))
	s.r = make([]float64, p.size)
	p.residuals(s.r, s.at)
	s.rss = dot(s.r, s.r)
	s.columns = make([][]float64, len(p.start))
	for j := range s.columns {
		s.columns[j] = make([]float64, p.size)
	}
	return s
}

// look takes the derivatives and the undamped step where the search stands.
func (s *search) look() error {
	if s.jacobian != nil {
		s.jacobian(s.columns, s.at)
	} else {
		differences(s.problem, s.columns, s.at)
	}
	for j, c := range s.columns {
		if !finite(c) {
			return errNotFinite
		}
		s.longest[j] = max(s.longest[j], norm(c))
	}
	newton, err := factor(s.columns, nil).solve(negative(s.r))
	if err != nil {
		newton = nil // damping may lead out of here
	}
	s.newton = newton
	return nil
}

// settled reports whether the search is at its end.
func (s *search) settled(slack float64) bool {
	return s.newton != nil &&
		(norm(s.along(s.newton)) <= slack*offset*norm(s.r) || s.length(s.newton) <= slack*still*s.length(s.at))
}

// move tries damped steps until one lowers the sum of squares; it is false if
// none does.
func (s *search) move() bool {
	for s.damp < maxDamp {
		step, gain := s.damped()
		if s.try(step, gain) {
			return true
		}
		s.damp *= s.growth
		s.growth *= 2
	}
	return false
}

// damped returns a step and by how much it should lower the sum of squares.
func (s *search) damped() ([]float64, float64) {
	weights := make([]float64, len(s.at))
	for j, l := range s.longest {
		if l == 0 {
			l = 1
		}
		weights[j] = math.Sqrt(s.damp) * l
	}
	step, err := factor(s.columns, weights).solve(negative(s.r))
	if err != nil {
		return nil, 0
	}
	along, held := s.along(step), 0.0
	for j, d := range step {
		held += float64(weights[j] * d * weights[j] * d)
	}
	return step, dot(along, along) + float64(2*held)
}

// try takes the step if it keeps enough of its promise.
func (s *search) try(step []float64, gain float64) bool {
	if !(gain > 0) {
		return false
	}
	at, r := plus(s.at, step), make([]float64, s.size)
	s.residuals(r, at)
	rss := dot(r, r)
	kept := (s.rss - rss) / gain
	if !(kept > enough) || !finite(at) { // NaN too
		return false
	}
	s.at, s.r, s.rss = at, r, rss
	s.damp *= max(1.0/3, 1-math.Pow(float64(2*kept)-1, 3))
	s.growth = 2
	return true
}

// solution takes the last undamped step, if it does no harm, and the covariance.
func (s *search) solution(steps int) (solution, error) {
	at, r := plus(s.at, s.newton), make([]float64, s.size)
	s.residuals(r, at)
	if rss := dot(r, r); rss <= s.rss {
		s.at, s.r, s.rss = at, r, rss
	}
	cov, err := factor(s.columns, nil).inverse()
	return solution{s.at, s.rss, cov, steps}, err
}

// along returns the change of the residuals that the tangent plane gives to a step.
func (s *search) along(step []float64) []float64 {
	change := make([]float64, s.size)
	for j, c := range s.columns {
		for i, x := range c {
			change[i] += float64(x * step[j])
		}
	}
	return change
}

// length is that of x with each parameter scaled.
func (s *search) length(x []float64) float64 {
	scaled := make([]float64, len(x))
	for j, v := range x {
		scaled[j] = v * s.longest[j]
	}
	return norm(scaled)
}

// differences writes central differences. The cube root of the precision is
// the step that balances rounding against curvature.
func differences(p problem, columns [][]float64, at []float64) {
	x := append([]float64(nil), at...)
	low, high := make([]float64, p.size), make([]float64, p.size)
	for j, v := range at {
		h := math.Cbrt(0x1p-52) * math.Abs(v)
		if h == 0 {
			h = math.Cbrt(0x1p-52)
		}
		x[j] = v + h
		above := x[j]
		p.residuals(high, x)
		x[j] = v - h
		width := above - x[j]
		p.residuals(low, x)
		x[j] = v
		for i := range columns[j] {
			columns[j][i] = (high[i] - low[i]) / width
		}
	}
}

func negative(x []float64) []float64 { return floats.ScaleTo(make([]float64, len(x)), -1, x) }

func plus(x, y []float64) []float64 { return floats.AddTo(make([]float64, len(x)), x, y) }

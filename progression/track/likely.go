package track

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/mat"

	"example.org/posology/units/field"
)

// ErrNoConvergence: no likeliest variances were found; the readings may not differ
// at all.
var ErrNoConvergence = errors.New("track: no convergence")

// Unknowns say which variances of a [Model] are to be found.
type Unknowns struct{ Level, Slope, Day, Noise bool }

// Variances hold a number for each variance that can be found.
type Variances struct {
	Level float64 `json:"level,omitzero"`
	Slope float64 `json:"slope,omitzero"`
	Day   float64 `json:"day,omitzero"`
	Noise float64 `json:"noise,omitzero"`
}

// A Likeliest is the model under which the readings are the likeliest.
type Likeliest struct {
	Model      Model      `json:"model"`
	Likelihood Likelihood `json:"likelihood"`
	// Errors are the standard errors of what was found, from the curvature of the
	// likelihood: 0 for what was not asked for, lies at its end of 0, or cannot be told.
	Errors Variances `json:"errors,omitzero"`
}

// MostLikely finds the variances that are asked for by maximum likelihood, with an
// exact diffuse start; all else of m is kept, and its variances, where they are not 0,
// are where the search begins. Variances may come out as 0.
//
// It takes two days with readings more than there are unknowns, the start's among them, else it
// is a [field.ErrOutOfRange]; Day together with Noise takes a day with several, else it is
// a [field.ErrConflict]. Readings that do not differ are an [ErrNoConvergence].
func MostLikely(m Model, find Unknowns, readings []Reading) (Likeliest, error) {
	s, err := newSearch(m, find, readings)
	if err != nil {
		return Likeliest{}, err
	}
	at, best, err := s.climb()
	if err != nil {
		return Likeliest{}, err
	}
	found := Likeliest{}
	found.Model, at = s.settled(at, best)
	found.Likelihood = s.likelihood(found.Model)
	found.Errors = s.errors(found.Model, at)
	return found, nil
}

// A search is for the logarithms of some variances.
type search struct {
	model    Model
	find     Unknowns
	readings []Reading
	scale    float64 // variance of the values
	start    []float64
}

func newSearch(m Model, find Unknowns, readings []Reading) (*search, error) {
	s := &search{model: m, find: find, readings: readings}
	if find.Noise && m.Noise == 0 {
		s.model.Noise = 1 // so that readings need no variance of their own
	}
	var bad field.Errors
	bad.Refuse(find == (Unknowns{}), "/find", nil, "a variance to find", field.ErrMissing)
	bad.Refuse(find.Slope && m.Kind == LocalLevel, "/find/slope", true, "a model with a slope", field.ErrConflict)
	bad.Add("", s.model.checkSeries(State{}, readings))
	if err := bad.Err(); err != nil {
		return nil, err
	}
	days, mean := 1, 0.0
	for i, r := range readings {
		if i > 0 && r.Day != readings[i-1].Day {
			days++
		}
		mean += r.Value / float64(len(readings))
	}
	for _, r := range readings {
		s.scale += (r.Value - mean) * (r.Value - mean) / float64(len(readings))
	}
	if find.Day && find.Noise && days == len(readings) {
		bad.Add("/find", field.Bad("day and noise", "one of the two, where no day has two readings", field.ErrConflict))
	}
	variances := s.variances(&s.model)
	if need := len(variances) + 2; days < need {
		bad.Add("/readings", field.Bad(days, fmt.Sprintf("readings on %d days or more", need), field.ErrOutOfRange))
	}
	bad.Refuse(s.scale == 0, "/readings", nil, "readings that differ", ErrNoConvergence)
	for _, v := range s.variances(&m) {
		if *v == 0 {
			*v = s.scale / 10
		}
		s.start = append(s.start, math.Log(*v))
	}
	return s, bad.Err()
}

// variances returns those of m that are to be found.
func (s *search) variances(m *Model) []*float64 {
	var list []*float64
	for _, v := range []struct {
		find bool
		of   *float64
	}{{s.find.Level, &m.Level}, {s.find.Slope, &m.Slope}, {s.find.Day, &m.Day}, {s.find.Noise, &m.Noise}} {
		if v.find {
			list = append(list, v.of)
		}
	}
	return list
}

func (s *search) at(logs []float64) Model {
	m := s.model
	for i, v := range s.variances(&m) {
		*v = math.Exp(logs[i])
	}
	return m
}

func (s *search) likelihood(m Model) Likelihood {
	var state State
	for _, r := range s.readings {
		state.add(m, r)
	}
	return state.Likelihood(m)
}

// worse is what is made least.
func (s *search) worse(logs []float64) float64 {
	for _, x := range logs {
		if math.Abs(x-math.Log(s.scale)) > farthest {
			return farAway
		}
	}
	if l := s.likelihood(s.at(logs)).Diffuse; !math.IsNaN(l) {
		return -l
	}
	return farAway
}

// farAway is worse than any series is, and finite for the differences.
const farAway = 1e300

// farthest is how far the logarithm of a variance may lie from that of the values.
const farthest = 60

// climb goes up from three places and returns the highest top.
func (s *search) climb() (at []float64, worst float64, err error) {
	worst = math.Inf(1)
	for _, lower := range []float64{0, 3, 8} {
		x := make([]float64, len(s.start))
		for i, start := range s.start {
			x[i] = start
			if i == 0 { // the level, where it is asked for, or else the first of the others
				x[i] -= lower
			}
		}
		if f := s.newton(x); f < farAway && f < worst {
			at, worst = x, f
		}
	}
	if at == nil {
		return nil, 0, field.New("/readings", nil, "readings with a likeliest model", ErrNoConvergence)
	}
	return at, -worst, nil
}

// How the search goes.
const (
	mostSteps   = 200
	enough      = 1e-11 // of the likelihood, below which a step is the last
	longestStep = 3     // of a logarithm
	mostDamping = 1e8
)

// newton moves x to where s.worse is least nearby, by Newton's method with as much
// damping as it takes to go down, and returns what it is there.
func (s *search) newton(x []float64) float64 {
	here, damping := s.worse(x), 1e-2
	n := len(x)
	slope, next := make([]float64, n), make([]float64, n)
	curve := mat.NewSymDense(n, nil)
	for range mostSteps {
		fd.Gradient(slope, s.worse, x, &fd.Settings{Formula: fd.Central, Step: difference})
		fd.Hessian(curve, s.worse, x, &fd.Settings{Formula: fd.Central, Step: difference})
		gain := 0.0
		for ; damping < mostDamping; damping *= 4 {
			if !step(next, x, slope, curve, damping) {
				continue
			}
			if there := s.worse(next); there < here {
				gain, here = here-there, there
				copy(x, next)
				damping = math.Max(damping/16, 1e-12)
				break
			}
		}
		if gain < enough {
			return here
		}
	}
	return here
}

// difference is the step of numeric derivatives by the logarithm of a variance.
const difference = 1e-3

// step writes where a damped step leads from x, and reports whether there is one.
func step(next, x, slope []float64, curve *mat.SymDense, damping float64) bool {
	n := len(x)
	damped := mat.NewSymDense(n, nil)
	damped.CopySym(curve)
	for i := range n {
		damped.SetSym(i, i, curve.At(i, i)+damping)
	}
	var factor mat.Cholesky
	var move mat.VecDense
	if !factor.Factorize(damped) || factor.SolveVecTo(&move, mat.NewVecDense(n, slope)) != nil {
		return false
	}
	for i := range n {
		next[i] = x[i] - math.Max(-longestStep, math.Min(longestStep, move.AtVec(i)))
	}
	return true
}

// end is by how much a likelihood may fall when a variance is taken for 0.
const end = 1e-7

// settled takes what has no effect for 0, and returns the logarithms of the rest.
func (s *search) settled(at []float64, best float64) (Model, []float64) {
	m := s.at(at)
	var rest []float64
	kept := []*bool{&s.find.Level, &s.find.Slope, &s.find.Day, &s.find.Noise}
	place := 0
	for i, v := range []*float64{&m.Level, &m.Slope, &m.Day, &m.Noise} {
		if !*kept[i] {
			continue
		}
		was := *v
		*v = 0
		if m.checkSeries(State{}, s.readings) == nil && s.likelihood(m).Diffuse >= best-end {
			*kept[i] = false
		} else {
			*v = was
			rest = append(rest, at[place])
		}
		place++
	}
	s.model = m
	return m, rest
}

// errors returns the standard errors of the variances that were found, whose logarithms
// stand at the top.
func (s *search) errors(m Model, at []float64) Variances {
	if len(at) == 0 {
		return Variances{}
	}
	curve := mat.NewSymDense(len(at), nil)
	fd.Hessian(curve, s.worse, at, &fd.Settings{Formula: fd.Central, Step: difference})
	var factor mat.Cholesky
	var covariance mat.SymDense
	if !factor.Factorize(curve) || factor.InverseTo(&covariance) != nil {
		return Variances{}
	}
	var sd Model
	values := s.variances(&m)
	for i, v := range s.variances(&sd) {
		*v = *values[i] * math.Sqrt(covariance.At(i, i))
	}
	return Variances{Level: sd.Level, Slope: sd.Slope, Day: sd.Day, Noise: sd.Noise}
}

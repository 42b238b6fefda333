package track

import "math"

// A Likelihood is how well a series was foreseen.
type Likelihood struct {
	// Diffuse is the diffuse log-likelihood (Durbin and Koopman 2012, section 7.2.2): of
	// every reading given those before, in logarithms of the unit of the values, but
	// for the ones that begin level and slope, which count with the logarithm of what
	// they divide by and without ½·ln 2π.
	Diffuse  float64 `json:"diffuse"`
	Readings int     `json:"readings,omitzero"` // all of them
	Begun    int     `json:"begun,omitzero"`    // those among them that begin level or slope, 0 to 2
	// Squares is the sum of the squares of what was not foreseen, each over its
	// variance.
	Squares float64 `json:"squares,omitzero"`
}

var ln2Pi = math.Log(2 * math.Pi)

// Likelihood returns that of all readings of s.
func (s State) Likelihood(m Model) Likelihood {
	l := s.Past
	if s.Count == 0 {
		return l
	}
	l.within(s)
	l.Readings++
	switch b := s.Before; {
	case b.NoLevel:
		l.Begun++
	case b.Free[0] != 0:
		l.Begun++
		l.Diffuse -= math.Log(math.Abs(b.Free[0]))
	default:
		f := b.LevelVar + s.meanVar(m)
		v := s.Mean - b.Level
		square := v * v / f
		l.Squares += square
		l.Diffuse -= (ln2Pi + math.Log(f) + square) / 2
	}
	return l
}

// within counts the readings of the day of s beyond one: how they lie about their mean.
func (l *Likelihood) within(s State) {
	l.Readings += s.Count - 1
	l.Squares += s.Within
	l.Diffuse -= (float64(float64(s.Count-1)*ln2Pi) + s.Logs + math.Log(s.Weight) + s.Within) / 2
}

// A Width is how wide intervals are: the factor by which all variances of the model
// were off, as far as the readings tell, and how surely. The zero value is that of
// variances taken as they are.
type Width struct {
	Factor  float64 `json:"factor"`           // of variances, above 0; 0 stands for 1
	Freedom float64 `json:"freedom,omitzero"` // degrees of freedom of Student's t; 0 for normal
}

// Width returns what l says of the model's variances, and the zero Width of what no
// readings give, such as fewer than those that begin.
func (l Likelihood) Width(m Model) Width {
	if m.Firm == 0 {
		return Width{Factor: 1}
	}
	n := m.Firm + float64(l.Readings-l.Begun)
	if w := (Width{Factor: (m.Firm + l.Squares) / n, Freedom: n}); w.Factor > 0 && n > 0 {
		return w
	}
	return Width{}
}

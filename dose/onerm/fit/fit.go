package fit

import (
	"fmt"
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Options say what is fitted and what is believed beforehand.
type Options struct {
	Form onerm.Form `json:"form"` // needed; [onerm.Hyperbola] is a good first choice
	// Alone leaves the population prior out: the sets must then speak for
	// themselves, and there must be one more than the form has parameters.
	Alone bool `json:"alone,omitzero"`
	// Expected is a 1RM expected for reasons other than these sets, ExpectedSD
	// its standard error as a share, 1 to 100 %. Both or neither, and not alone.
	Expected   units.Mass     `json:"expected,omitzero"`
	ExpectedSD units.Fraction `json:"expected_sd,omitzero"`
}

// Validate returns every bad field of o at once.
func (o Options) Validate() error {
	var bad field.Errors
	bad.Add("/form", o.Form.Check())
	if o.Expected == 0 && o.ExpectedSD == 0 {
		return bad.Err()
	}
	bad.Refuse(o.Alone, "/alone", true, "false where a 1RM is expected", field.ErrConflict)
	bad.Refuse(o.Expected <= 0, "/expected", o.Expected, "a mass above 0 kg", field.ErrOutOfRange)
	bad.Refuse(!expectedRange.Contains(o.ExpectedSD), "/expected_sd", float64(o.ExpectedSD), "0.01 to 1", field.ErrOutOfRange)
	return bad.Err()
}

// Fit fits a form to a person's sets.
//
// The logarithm of the load is fitted, so that errors are shares and the unit
// does not matter. What is made least is the sum of the squared errors over
// their standard errors and, unless alone, of the distance of the shape from
// the population's over its width: the shape's maximum a posteriori.
//
// With a prior one set is enough, and a shape that the sets cannot tell stays
// the population's, which a reason says. The forms of three parameters need
// three different repetition counts, and alone a form needs as many as it has
// parameters: else a [field.ErrOutOfRange]; sets that do not tell the parameters
// apart are a [field.ErrConflict]. A curve that would not fall is an
// [onerm.ErrNotFalling]. Bad fields are named by their path, as "/points/2/reps" or
// "/options/form", all at once. The order of the points does not matter.
func Fit(points []Point, o Options) (onerm.Curve, error) {
	if err := check(points, o); err != nil {
		return onerm.Curve{}, err
	}
	m := newModel(ordered(points), o)
	if err := m.enough(); err != nil {
		return onerm.Curve{}, field.New("/points", sets(len(points)), m.needed(), err)
	}
	s, err := least(m.problem())
	if err != nil {
		return onerm.Curve{}, field.New("/points", sets(len(points)), "sets that the form can follow", err)
	}
	return m.curve(s)
}

func check(points []Point, o Options) error {
	var bad field.Errors
	for i, p := range points {
		bad.Add(fmt.Sprintf("/points/%d", i), p.Validate())
	}
	bad.Refuse(len(points) == 0, "/points", nil, "at least one set", field.ErrMissing)
	bad.Add("/options", o.Validate())
	return bad.Err()
}

// sets prints a number of sets.
func sets(n int) string {
	if n == 1 {
		return "1 set"
	}
	return fmt.Sprintf("%d sets", n)
}

// A model is a form, ordered points and priors. Its parameters are the
// logarithm of the 1RM in kilograms, that of the shape, and the logit of the
// floor.
type model struct {
	Options
	points   []Point
	ends     []int     // of the visits among the points
	logs     []float64 // of the loads in kilograms
	expected normal    // of the first parameter
}

// form is the form as package bend counts it.
func (m *model) form() bend.Form { return bend.Form(m.Form) }

func newModel(points []Point, o Options) *model {
	m := &model{Options: o, points: points, ends: visits(points)}
	for _, p := range points {
		m.logs = append(m.logs, math.Log(p.Load.Kilograms()))
	}
	if o.Expected > 0 {
		m.expected = normal{math.Log(o.Expected.Kilograms()), float64(o.ExpectedSD)}
	}
	return m
}

// enough reports whether there are sets enough for the form.
func (m *model) enough() error {
	different, parameters := counts(m.points), m.Form.Parameters()
	switch {
	case m.Alone && (different < parameters || len(m.points) <= parameters):
		return errTooFew
	case m.form().HasFloor() && different < parameters:
		return errTooFew
	}
	return nil
}

func (m *model) needed() string {
	n := m.Form.Parameters()
	if m.Alone {
		return fmt.Sprintf("at least %d sets at %d different repetition counts", n+1, n)
	}
	return fmt.Sprintf("sets at %d different repetition counts", n)
}

// believed is the number of priors.
func (m *model) believed() int {
	n := 0
	if m.Expected > 0 {
		n++
	}
	if !m.Alone {
		n += m.Form.Parameters() - 1
	}
	return n
}

// start is the population's shape at the height of the points.
func (m *model) start() []float64 {
	floor := 0.0
	if m.form().HasFloor() {
		floor = logistic(populationFloor.mean)
	}
	s := bend.WithFall(m.form(), math.Exp(population.mean), floor)
	height := 0.0
	for i, p := range m.points {
		height += (m.logs[i] - s.At(p.Reps).Share) / float64(len(m.points))
	}
	at := []float64{height, math.Log(s.Shape)}
	if floor > 0 {
		at = append(at, logit(floor))
	}
	return at
}

// shapeAt is the shape that parameters stand for.
func (m *model) shapeAt(at []float64) bend.Bend {
	s := bend.Bend{Form: m.form(), Shape: math.Exp(at[1])}
	if len(at) > 2 {
		s.Floor = logistic(at[2])
	}
	return s
}

func (m *model) problem() problem {
	return problem{
		start:     m.start(),
		size:      len(m.points) + m.believed(),
		residuals: m.residuals,
		jacobian:  m.jacobian,
		damp:      1e-3,
	}
}

func (m *model) residuals(into, at []float64) {
	s, n := m.shapeAt(at), len(m.points)
	for i, p := range m.points {
		into[i] = (at[0] + s.At(p.Reps).Share - m.logs[i]) / p.sd()
	}
	whiten(into[:n], m.ends)
	prior := into[n:]
	if m.Expected > 0 {
		prior[0] = (at[0] - m.expected.mean) / m.expected.sd
		prior = prior[1:]
	}
	if m.Alone {
		return
	}
	prior[0] = (math.Log(s.Fall()) - population.mean) / population.sd
	if len(at) > 2 {
		prior[1] = (at[2] - populationFloor.mean) / populationFloor.sd
	}
}

func (m *model) jacobian(columns [][]float64, at []float64) {
	s, n := m.shapeAt(at), len(m.points)
	for i, p := range m.points {
		t := s.At(p.Reps)
		for j, d := range []float64{1, t.ByShape, t.ByFloor}[:len(at)] {
			columns[j][i] = d / p.sd()
		}
	}
	for j, c := range columns {
		whiten(c[:n], m.ends)
		clear(c[n:])
		prior := c[n:]
		if m.Expected > 0 {
			prior[0] = 0
			if j == 0 {
				prior[0] = 1 / m.expected.sd
			}
			prior = prior[1:]
		}
		if !m.Alone {
			m.priorSlopes(prior, s, j)
		}
	}
}

// priorSlopes writes the derivatives of the priors on the shape by parameter j.
func (m *model) priorSlopes(into []float64, s bend.Bend, j int) {
	t := s.At(bend.Pivot)
	fall := -t.Share
	into[0] = -[]float64{0, t.ByShape, t.ByFloor}[j] / fall / population.sd
	if j == 2 {
		into[1] = 1 / populationFloor.sd
	}
}

// curve makes a curve of the solution, or refuses.
func (m *model) curve(s solution) (onerm.Curve, error) {
	oneRM, err := units.Kilograms(math.Exp(s.at[0]))
	if err != nil {
		return onerm.Curve{}, field.At("/points", err)
	}
	shape := m.shapeAt(s.at)
	d := onerm.CurveData{
		Form: m.Form, OneRM: oneRM, Shape: shape.Shape, Floor: shape.Floor, Alone: m.Alone,
		Sets: len(m.points), Studied: studied(m.points), Days: days(m.points),
		Freedom: len(m.points) + m.believed() - len(s.at),
	}
	if most, _ := d.Studied.Max(); oneRM <= 0 || !shape.Falls(most) { // loads of a few nanograms may come to none
		return onerm.Curve{}, field.New("/points", sets(len(m.points)), "loads that fall as repetitions rise", onerm.ErrNotFalling)
	}
	believed := 0.0
	if !m.Alone {
		believed = setFreedom
	}
	d.Freedom += int(believed)
	variance := (believed + s.rss) / float64(d.Freedom)
	d.Noise = math.Sqrt(variance) * m.meanSD()
	for i := range s.at {
		for j := i; j < len(s.at); j++ {
			d.Covariance = append(d.Covariance, variance*s.cov.At(i, j))
		}
	}
	d.Reasons = m.reasons(d, shape, s.cov)
	c, err := onerm.NewCurve(d)
	if err != nil {
		return onerm.Curve{}, field.New("/points", sets(len(m.points)), "sets that tell the parameters apart", errSingular)
	}
	return c, nil
}

// meanSD is the standard error of one set: the root of the mean variance.
func (m *model) meanSD() float64 {
	sum := 0.0
	for _, p := range m.points {
		sum += float64(p.sd()*p.sd()) / float64(len(m.points))
	}
	return math.Sqrt(sum)
}

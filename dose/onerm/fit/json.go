package fit

import (
	"encoding/json"
	"fmt"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A record is a curve as it is stored.
type record struct {
	Form       Form                   `json:"form"`
	OneRM      units.Mass             `json:"one_rm"`
	Shape      float64                `json:"shape"`
	Floor      float64                `json:"floor,omitzero"`
	Covariance []float64              `json:"covariance"` // upper triangle, row by row
	Freedom    int                    `json:"freedom"`
	Noise      float64                `json:"noise"`
	Sets       int                    `json:"sets"`
	Studied    units.Range[float64]   `json:"studied"`
	Days       units.Range[units.Day] `json:"days,omitzero"`
	Alone      bool                   `json:"alone,omitzero"`
	Reasons    []evidence.Reason      `json:"reasons,omitempty"`
}

// MarshalJSON writes the form, the parameters with the upper triangle of their
// covariance row by row, and what they were found from. The zero curve is null.
func (c Curve) MarshalJSON() ([]byte, error) {
	if c.form == FormUnknown {
		return []byte("null"), nil
	}
	r := record{
		c.form, c.oneRM, c.shape.shape, c.floor, nil, c.freedom, c.noise,
		c.sets, c.studied, c.days, c.alone, c.reasons,
	}
	for i := range c.form.Parameters() {
		r.Covariance = append(r.Covariance, c.covariance[i][i:c.form.Parameters()]...)
	}
	return json.Marshal(r)
}

// UnmarshalJSON reads what MarshalJSON writes. It is strict, and every number
// that no curve can have is an error.
func (c *Curve) UnmarshalJSON(data []byte) error {
	if string(data) == "null" {
		*c = Curve{}
		return nil
	}
	var r record
	if err := field.Decode(data, &r, field.Strict); err != nil {
		return err
	}
	if err := r.validate(); err != nil {
		return err
	}
	*c = r.curve()
	return nil
}

func (r record) curve() Curve {
	c := Curve{
		shape: shape{r.Form, r.Shape, r.Floor}, oneRM: r.OneRM, freedom: r.Freedom, noise: r.Noise,
		sets: r.Sets, studied: r.Studied, days: r.Days, alone: r.Alone, reasons: r.Reasons,
	}
	k := 0
	for i := range r.Form.Parameters() {
		for j := i; j < r.Form.Parameters(); j++ {
			c.covariance[i][j], c.covariance[j][i] = r.Covariance[k], r.Covariance[k]
			k++
		}
	}
	return c
}

func (r record) validate() error {
	if err := r.Form.Check(); err != nil {
		return field.At("/form", err)
	}
	var bad field.Errors
	refuse := func(ok bool, path string, got any, allowed string) {
		if !ok {
			bad.Add(path, field.Bad(got, allowed, field.ErrOutOfRange))
		}
	}
	refuse(r.OneRM > 0, "/one_rm", r.OneRM, "a mass above 0 kg")
	refuse(r.Shape > 0, "/shape", r.Shape, "above 0")
	if forms[r.Form].floor {
		refuse(r.Floor > 0 && r.Floor < 1, "/floor", r.Floor, "above 0 and below 1")
	} else {
		refuse(r.Floor == 0, "/floor", r.Floor, "none for this form")
	}
	n := r.Form.Parameters() * (r.Form.Parameters() + 1) / 2
	refuse(len(r.Covariance) == n, "/covariance", len(r.Covariance), fmt.Sprintf("%d numbers", n))
	refuse(r.Freedom > 0, "/freedom", r.Freedom, "1 or more")
	refuse(r.Noise >= 0, "/noise", r.Noise, "0 or more")
	refuse(r.Sets > 0, "/sets", r.Sets, "1 or more")
	low, begins := r.Studied.Min()
	high, ends := r.Studied.Max()
	refuse(begins && ends && repsRange.Contains(low) && repsRange.Contains(high), "/studied", r.Studied, repsRange.String())
	if err := bad.Err(); err != nil {
		return err
	}
	return r.validateCurve()
}

// validateCurve checks what needs all the numbers: that the curve falls, and
// that the covariance is one.
func (r record) validateCurve() error {
	c := r.curve()
	var bad field.Errors
	if !c.falls() {
		bad.Add("/shape", field.Bad(r.Shape, "a shape whose curve falls over the repetitions studied", ErrNotFalling))
	}
	if !semidefinite(c.covariance) {
		bad.Add("/covariance", field.Bad(r.Covariance, "variances of 0 or more, covariances within them", field.ErrOutOfRange))
	}
	return bad.Err()
}

// semidefinite reports whether no combination has a variance below nought, save
// for rounding: each principal minor is, over its diagonal, at least that.
func semidefinite(m [3][3]float64) bool {
	const rounding = -1e-9
	for i := range m {
		if !(m[i][i] >= 0) || m[i][i] > math.MaxFloat64 {
			return false
		}
	}
	correlation := func(i, j int) float64 {
		if m[i][j] == 0 {
			return 0
		}
		return m[i][j] / math.Sqrt(m[i][i]) / math.Sqrt(m[j][j])
	}
	a, b, c := correlation(0, 1), correlation(0, 2), correlation(1, 2)
	for _, r := range [...]float64{a, b, c} {
		if !(1-float64(r*r) >= rounding) { // not a number too
			return false
		}
	}
	return 1+float64(2*a*b*c)-float64(a*a)-float64(b*b)-float64(c*c) >= rounding
}

package onerm

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"

	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ErrNotFalling: a curve, or the sets that it is to go through, whose load does
// not fall as repetitions rise, or falls otherwise than a person's can.
var ErrNotFalling = errors.New("onerm: no curve that falls")

// CurveData are the numbers of a [Curve], and its form as it is stored.
type CurveData struct {
	Form  Form       `json:"form"`
	OneRM units.Mass `json:"one_rm"`         // the load at one repetition, above 0
	Shape float64    `json:"shape"`          // above 0; see [Form]
	Floor float64    `json:"floor,omitzero"` // above 0 and below 1; 0 for a form without one
	// Covariance of the logarithm of the 1RM, that of the shape and, for a form with
	// a floor, the logit of the floor: the upper triangle, row by row, so 3 numbers or 6.
	Covariance []float64              `json:"covariance"`
	Freedom    int                    `json:"freedom"` // degrees of freedom of Student's t, 1 or more
	Noise      float64                `json:"noise"`   // standard error of a further set, as a share of its load, 0 or more
	Sets       int                    `json:"sets"`    // that it was fitted to, 1 or more
	Studied    units.Range[float64]   `json:"studied"` // their repetitions to failure, within 1 to 30
	Days       units.Range[units.Day] `json:"days,omitzero"`
	Alone      bool                   `json:"alone,omitzero"` // the population prior was left out
	Reasons    []evidence.Reason      `json:"reasons,omitempty"`
}

// NewCurve makes a curve of its numbers. Every number that no curve can have is
// named at once; a curve that does not fall is an [ErrNotFalling] for "/shape".
func NewCurve(d CurveData) (Curve, error) {
	if err := d.Validate(); err != nil {
		return Curve{}, err
	}
	return Curve{Curve{d}.Data()}, nil
}

// MarshalJSON writes the [CurveData]. The zero curve is null.
func (c Curve) MarshalJSON() ([]byte, error) {
	if c.data.Form == 0 {
		return []byte("null"), nil
	}
	return json.Marshal(c.data)
}

// UnmarshalJSON reads what MarshalJSON writes. It is strict, and every number
// that no curve can have is an error.
func (c *Curve) UnmarshalJSON(data []byte) error {
	if string(data) == "null" {
		return field.Assign(c, Curve{}, nil)
	}
	var d CurveData
	if err := field.DecodeChecked(data, &d, field.Strict, CurveData.Validate); err != nil {
		return err
	}
	return field.Assign(c, Curve{d}, nil)
}

// matrix returns the covariance, zeros where the form has no floor.
func (d CurveData) matrix() (m [3][3]float64) {
	k := 0
	for i := range d.Form.Parameters() {
		for j := i; j < d.Form.Parameters(); j++ {
			m[i][j], m[j][i] = d.Covariance[k], d.Covariance[k]
			k++
		}
	}
	return m
}

// Validate returns every bad field of d at once.
func (d CurveData) Validate() error {
	if err := d.Form.Check(); err != nil {
		return field.At("/form", err)
	}
	var bad field.Errors
	refuse := func(ok bool, path string, got any, allowed string) {
		bad.Refuse(!ok, path, got, allowed, field.ErrOutOfRange)
	}
	refuse(d.OneRM > 0, "/one_rm", d.OneRM, "a mass above 0 kg")
	refuse(d.Shape > 0, "/shape", d.Shape, "above 0")
	if bend.Form(d.Form).HasFloor() {
		refuse(d.Floor > 0 && d.Floor < 1, "/floor", d.Floor, "above 0 and below 1")
	} else {
		refuse(d.Floor == 0, "/floor", d.Floor, "none for this form")
	}
	n := d.Form.Parameters() * (d.Form.Parameters() + 1) / 2
	refuse(len(d.Covariance) == n, "/covariance", len(d.Covariance), fmt.Sprintf("%d numbers", n))
	refuse(d.Freedom > 0, "/freedom", d.Freedom, "1 or more")
	refuse(d.Noise >= 0 && d.Noise <= math.MaxFloat64, "/noise", d.Noise, "0 or more")
	refuse(d.Sets > 0, "/sets", d.Sets, "1 or more")
	low, begins := d.Studied.Min()
	high, ends := d.Studied.Max()
	refuse(begins && ends && bend.Reps().Contains(low) && bend.Reps().Contains(high), "/studied", d.Studied, bend.Reps().String())
	for _, end := range []func() (units.Day, bool){d.Days.Min, d.Days.Max} {
		if day, ok := end(); ok {
			bad.Add("/days", day.Check())
		}
	}
	if err := bad.Err(); err != nil {
		return err
	}
	return d.validateCurve()
}

// validateCurve checks what needs all the numbers: that the curve falls, and
// that the covariance is one.
func (d CurveData) validateCurve() error {
	most, _ := d.Studied.Max()
	var bad field.Errors
	bad.Refuse(!(Curve{d}).bend().Falls(most), "/shape", d.Shape, "a shape whose curve falls over the repetitions studied", ErrNotFalling)
	bad.Refuse(!semidefinite(d.matrix()), "/covariance", d.Covariance, "variances of 0 or more, covariances within them", field.ErrOutOfRange)
	return bad.Err()
}

// semidefinite reports whether no combination has a variance below zero, except
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

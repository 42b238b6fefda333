package published

import (
	"fmt"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Macht2016 is 1RM = 1.20·load + 2.19·r − 0.56·breadth + 9.6 in kilograms and
// centimetres, for the bench press. It was made in 60 moderately trained men of
// 21.2 years; standard error 3.5 kg, R² 0.99. The repetitions tested were not in
// the part read. Published (macht2016, abstract).
type Macht2016 struct {
	// Biacromial is the breadth of the shoulders from acromion to acromion, in
	// centimetres, above 0 and at most 100 (a guard against slips, not a norm).
	Biacromial float64 `json:"biacromial_cm"`
}

const machtLoad, machtReps, machtBreadth, machtOffset = 1.20, 2.19, 0.56, 9.6

const mostBreadth = 100 // cm

var machtText = fmt.Sprintf("1RM = %v·load + %v kg·r − %v kg·biacromial breadth in cm + %v kg", machtLoad, machtReps, machtBreadth, machtOffset)

// Validate returns what is wrong with m.
func (m Macht2016) Validate() error {
	if m.Biacromial > 0 && m.Biacromial <= mostBreadth {
		return nil
	}
	return field.New("/biacromial_cm", m.Biacromial, "above 0 and at most 100 cm", field.ErrOutOfRange)
}

// Fact names the fact that states the equation; with ".people" and ".error" it
// states people and published error.
func (m Macht2016) Fact() evidence.FactID { return factMacht }

// offset returns what the load's share is added to.
func (m Macht2016) offset(path string, mass units.Mass, reps float64) (units.Mass, error) {
	var bad field.Errors
	bad.Add("", m.Validate())
	bad.Refuse(mass <= 0, path, mass, "a mass above 0 kg", field.ErrOutOfRange)
	bad.Refuse(!(reps >= 1 && reps <= math.MaxFloat64), "/reps", reps, "1 repetition or more", field.ErrOutOfRange)
	if len(bad) > 0 {
		return 0, bad
	}
	offset, err := units.Kilograms(float64(machtReps*reps) - float64(machtBreadth*m.Biacromial) + machtOffset)
	return offset, field.At("/reps", err)
}

// OneRM returns the 1RM that the equation predicts from a load lifted reps
// times to failure. A breadth, a load or repetitions outside what they can be,
// and a load so small that the 1RM would lie below it, are a
// [field.ErrOutOfRange], too much a [field.ErrOverflow].
func (m Macht2016) OneRM(load units.Mass, reps float64) (units.Mass, error) {
	offset, err := m.offset("/load", load, reps)
	if err != nil {
		return 0, err
	}
	return above("/load", load, machtLoad, offset)
}

// Load is the inverse of [Macht2016.OneRM] in the load, with the same errors.
func (m Macht2016) Load(oneRM units.Mass, reps float64) (units.Mass, error) {
	offset, err := m.offset("/one_rm", oneRM, reps)
	if err != nil {
		return 0, err
	}
	return below("/one_rm", oneRM, machtLoad, offset)
}

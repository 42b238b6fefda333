package track

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Reading is a value that was read on a day, with the variance of its own error.
type Reading struct {
	Day   units.Day `json:"day"`
	Value float64   `json:"value"` // within ±1e150; of strength the natural logarithm of kg
	// Variance is of its own error, beside the day's, in the square of the unit of Value: of the
	// logarithm of a 1RM 0.018² where it was lifted, 0.036² where it was worked out from a
	// set. Together with Model.Noise above 0.
	Variance float64 `json:"variance,omitzero"`
}

// check returns every bad field of r, read by m.
func (m Model) check(r Reading) error {
	if r.Day > 0 && math.Abs(r.Value) <= mostValue && r.Variance >= 0 && r.Variance <= mostValue && r.Variance+m.Noise > 0 {
		return nil
	}
	var bad field.Errors
	bad.Add("/day", r.Day.Check())
	if !(math.Abs(r.Value) <= mostValue) {
		bad.Add("/value", field.Bad(r.Value, "a number within ±1e150", field.ErrOutOfRange))
	}
	bad.Add("/variance", checkVariance(r.Variance))
	if r.Variance+m.Noise == 0 {
		bad.Add("/variance", field.Bad(r.Variance, "above 0, or a noise in the model", field.ErrOutOfRange))
	}
	return bad.Err()
}

// The parts of an estimate's error within one person, beside that of the day.
const (
	testSD = 0.018 // of a measured 1RM
	toldSD = 0.036 // of an estimate: one to two repetitions of telling in about 13
	// alike is by how many repetitions to failure two sets may differ for the error that
	// equation and person share to fall out between them.
	alike = 4
)

// FromEstimate reads an estimate: the logarithm of its 1RM in kg, with the part of
// its error that lies within the person. The part that equation and person share
// falls out of every comparison of like sets, and is left out; it is added back
// where the repetitions to failure differ by more than 4 from those that the track
// is mostly read from, which usual is, 1 to 30: as if it were that set's alone, so that one
// such set says little, and several say more than they should. The day's error is the
// model's.
//
// Errors are those of [onerm.Estimate.Validate], and a [field.ErrOutOfRange] for
// usual.
func FromEstimate(e onerm.Estimate, usual float64) (Reading, error) {
	var bad field.Errors
	bad.Add("/estimate", e.Validate())
	bad.Refuse(!(usual >= 1 && usual <= 30), "/usual", usual, "1 to 30 repetitions to failure", field.ErrOutOfRange)
	if err := bad.Err(); err != nil {
		return Reading{}, err
	}
	own := toldSD
	if e.Grade == onerm.Measured {
		own = testSD
	}
	r := Reading{Day: e.Day, Value: math.Log(e.OneRM.Kilograms()), Variance: own * own}
	few, _ := e.ToFailure.Min()
	if math.Abs(few-usual) > alike {
		r.Variance += math.Max(0, spreadOf(e)-r.Variance-daySD*daySD)
	}
	return r, nil
}

// spreadOf returns the variance of the logarithm of a 1RM that its interval tells of.
func spreadOf(e onerm.Estimate) float64 {
	level := e.Level
	if level == 0 {
		level = 0.95
	}
	low, _ := e.Interval.Min()
	high, _ := e.Interval.Max()
	sd := float64(high-low) / float64(e.OneRM) / (2 * normalWithin(level))
	return sd * sd
}

// normalWithin returns the number that a standard normal value stays within, on
// both sides, with the given probability.
func normalWithin(level units.Fraction) float64 { return math.Sqrt2 * math.Erfinv(float64(level)) }

// FromVisit reads what one visit alone showed, which is [strength.Ability.Seen] of nothing:
// the logarithm of the 1RM by the equation that doses go by, with the part of its error
// that lies within the person. It is for sets of beginners, of whom an [onerm.Estimate]
// asks for fewer repetitions. By how much a person's curve is off between two weights
// is not in it: a change below some hundredths is not to be read from it.
//
// Where nothing is known, only a lower bound, or where no reserve was told, it is a
// [field.ErrMissing]; other errors are those of a reading and of
// [strength.Ability.Validate].
func FromVisit(day units.Day, alone strength.Ability) (Reading, error) {
	r := Reading{Day: day, Value: alone.Log, Variance: toldSD * toldSD}
	var bad field.Errors
	bad.Add("/day", day.Check())
	if bad.Add("/alone", alone.Validate()); !alone.Known() || alone.AtLeast || alone.Untold {
		bad.Add("/alone", field.Bad(nil, "what a set with its reserve told showed, no lower bound", field.ErrMissing))
	}
	if err := bad.Err(); err != nil {
		return Reading{}, err
	}
	return r, nil
}

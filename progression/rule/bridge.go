package rule

import (
	"cmp"
	"fmt"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// guidance is the published size of a step up in load (ACSM 2002).
var guidance = between[units.Fraction](0.02, 0.10)

// epleyReps is the 30 of the linear form 1RM = load × (1 + repetitions/30).
const epleyReps = 30

// StepShare returns the published size of a step up in load, 2 to 10 per cent
// (ACSM 2002).
func StepShare() units.Range[units.Fraction] { return guidance }

// between makes the ranges of tables.
func between[T cmp.Ordered](low, high T) units.Range[T] { return units.Must(units.Between(low, high)) }

// RepsBeforeJump returns how many repetitions to reach with the present weight
// so that a step up by the fraction p lands on low repetitions, on the linear
// form of the load–repetition curve: low + p × (30 + low). No trial tests this
// ladder; it inherits the form's error, which is large above about 12
// repetitions. low is 1 or more, p above 0. The reason names the rule.
func RepsBeforeJump(low int, p units.Fraction) (float64, evidence.Reason, error) {
	var bad field.Errors
	bad.Refuse(low < 1, "/low", low, "1 repetition or more", field.ErrOutOfRange)
	if !(p > 0) || math.IsInf(float64(p), 0) {
		bad.Add("/p", field.Bad(fmt.Sprint(float64(p)), "a finite fraction above 0", field.ErrOutOfRange))
	}
	if err := bad.Err(); err != nil {
		return 0, evidence.Reason{}, err
	}
	reps := float64(low) + float64(float64(p)*float64(epleyReps+low))
	return reps, evidence.Because("progression.bridge", factBridge).With(evidence.Tenths("reps", reps), evidence.Count("low", low), evidence.Share("share", p)), nil
}

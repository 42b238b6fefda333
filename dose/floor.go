package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// floorOf returns the share of 1RM below which the row's goal is not served,
// and the field that says so: the lower end of its load, or the share at its
// highest repetition maximum on the curve. It is false for rows that state
// neither.
func floorOf(row *tableRow, rel onerm.Relation) (units.Fraction, guideline.Field, bool) {
	if low, ok := row.Load.Min(); ok {
		return low, guideline.FieldLoad, true
	}
	most, ok := row.RM.Max()
	if !ok {
		return 0, guideline.FieldRM, false
	}
	share, err := rel.Fraction(float64(most))
	return share, guideline.FieldRM, err == nil
}

// leastCount is the fewest repetitions that a set may have, 1 where none is asked for.
func (f *Frame) leastCount() int {
	if f.r.Exercise.Measure != exercise.Repetitions {
		return 1
	}
	return max(1, f.r.Screening.Limits.LeastCount)
}

// tooFew says that nothing is light enough for as many repetitions as screening asks for.
func (f *Frame) tooFew(count int) error {
	why := evidence.Because("dose.too-few", factLimits).With(evidence.Count("count", count), evidence.Count("least", f.leastCount()))
	return f.r.barred(ErrTooHeavy, why, evidence.Because("dose.free-by-variant"))
}

// raiseCount leaves out counts below what screening asks for.
func (g *guide) raiseCount(least int) {
	low, _ := g.Span.Min()
	high, _ := g.Span.Max()
	if least <= low {
		return
	}
	g.Span, _ = units.Between(least, max(high, least))
	g.Count = max(g.Count, least)
	g.because(evidence.Because("dose.count-limit", g.rests(factLimits)...).With(evidence.Count("least", least)))
}

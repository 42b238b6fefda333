package dose

import (
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

// raiseCount leaves out counts below what screening asks for.
func (g *guide) raiseCount(least int) {
	low, _ := g.count.Min()
	high, _ := g.count.Max()
	if least <= low {
		return
	}
	g.count, _ = units.Between(least, max(high, least))
	g.first = max(g.first, least)
	g.because(evidence.Because("dose.count-limit", g.rests(factLimits)...).With(evidence.Count("least", least)))
}

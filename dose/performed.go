package dose

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// fromPerformed returns the weight to begin from after a set that was really
// done: that weight, or less where the repetitions and the reserve asked for
// now go beyond those of the set. It is false where the kit has none so light.
func (d *draft) fromPerformed(ceiling units.Mass) (equipment.Load, bool) {
	s := d.r.Performed
	if s == nil {
		return equipment.Load{}, false
	}
	each, err := s.Each()
	if err != nil {
		return equipment.Load{}, false
	}
	least := max(d.g.reserve.Least, uncountable)
	each, err = each.Scale(lightened(doneToFailure(*s), float64(d.g.Count)+float64(least)), units.Down)
	if err != nil {
		return equipment.Load{}, false
	}
	load, err := d.table.Nearest(min(each, ceiling), equipment.RoundingRule{})
	if err != nil {
		return equipment.Load{}, false
	}
	d.because(evidence.Because("dose.from-performed", factPerformed).With(evidence.Mass("load", s.Load), evidence.Count("reps", s.Reps)))
	return load, true
}

// doneToFailure returns the repetitions to failure of the set at least: those done
// and the fewest that its effort stands for, none where it was not recorded.
func doneToFailure(s setlog.Set) float64 {
	rir, err := s.Effort.RIR()
	if err != nil {
		return float64(s.Reps)
	}
	least, _ := rir.Min()
	return float64(s.Reps) + float64(least)
}

// lightened returns by what a weight that can be lifted done times is scaled to
// be lifted wanted times, never up: the lower answer of the house equations,
// whose extension beyond their studied range may lighten. Zero stands for
// where they have no answer.
func lightened(done, wanted float64) units.Fraction {
	scale := units.Fraction(1)
	for _, f := range []onerm.Formula{onerm.Epley, onerm.Brzycki} {
		now, err := f.Fraction(done)
		if err != nil {
			continue // more repetitions than the equation knows: no answer, and no need
		}
		then, err := f.Fraction(wanted)
		if err != nil {
			return 0
		}
		scale = min(scale, then/now)
	}
	return scale
}

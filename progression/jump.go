package progression

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Jump is the step from one weight to the next that can be held.
type Jump struct {
	From     units.Mass     `json:"from"` // per implement
	To       equipment.Load `json:"to"`
	Step     units.Mass     `json:"step"`              // per implement
	External units.Fraction `json:"external,omitzero"` // step over the mass held; 0 from an unloaded start
	Moved    units.Fraction `json:"moved,omitzero"`    // step over all that is moved; 0 if the moved body mass was not given
	// Within reports whether External lies within the published 2 to 10 per
	// cent. A larger step is common with dumbbells and never passed over in silence.
	Within  bool              `json:"within"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// NextJump returns the step up from the weight each in the kit's table, and
// false at the top of the kit. moved is the part of the body that is lifted
// with the weight, 0 if not given: a percentage of the dumbbell alone misleads
// where the body does most of the work.
func NextJump(t *equipment.Table, each, moved units.Mass) (Jump, bool, error) {
	if moved < 0 {
		return Jump{}, false, field.New("/moved", moved, "0 kg or more", field.ErrOutOfRange)
	}
	j, err := stepUp(t, each, moved)
	if j == nil {
		return Jump{}, false, field.At("/moved", err)
	}
	j.say()
	return *j, true, nil
}

// stepUp is NextJump, without its reasons; nil at the top of the kit.
func stepUp(t *equipment.Table, each, moved units.Mass) (*Jump, error) {
	if gap, ok := t.Next(each); ok {
		return over(gap, moved)
	}
	return nil, nil
}

// say gives a step its reasons.
func (j *Jump) say() {
	if j.Reasons == nil {
		j.Reasons = []evidence.Reason{because("progression.jump").With(evidence.Mass("from", j.From), evidence.Mass("to", j.To.Each()), evidence.Share("share", j.External))}
	}
}

// over returns the step over a gap in the kit, without its reasons: most are only looked at.
func over(gap equipment.Gap, moved units.Mass) (*Jump, error) {
	j := &Jump{From: gap.From, To: gap.To, Step: gap.Step, External: gap.Share}
	j.Within = gap.Share > 0 && rule.StepShare().Contains(gap.Share)
	if moved > 0 {
		var err error
		if j.Moved, err = history.OfMoved(gap, moved); err != nil {
			return nil, err
		}
	}
	return j, nil
}

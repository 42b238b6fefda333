package dose

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A Feel is one set, of those asked for, with the next weight: a few lifts of it show
// whether it can be worked with. Whoever is there watches.
type Feel struct {
	Load  equipment.Load `json:"load"`
	Count int            `json:"count"` // lifts, in that one set
}

// spared are findings with which weights stay moderate, whether known or feared.
var spared = []screening.Code{
	"frailty", "frailty_dose", "total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "rotator_cuff_repair",
	"vertebral_fracture", "osteoporosis_with_vertebral_fracture",
}

// boneFindings are those with which no hinge and no carried load is tried out.
var boneFindings = []screening.Code{
	"osteoporosis", "osteoporosis_uk", "osteoporosis_essa", "osteoporosis_essa_dose", "vertebral_fracture", "osteoporosis_with_vertebral_fracture", "bone_metastases",
}

// learning reports whether the movement is learnt, or nobody saw it lately.
func (f *Frame) learning() bool {
	seen := f.r.Technique
	return f.g.Phase == Familiarise || !seen.Made() || f.r.Day-seen.Day > seenDays
}

// sparing reports whether, of whoever has learnt the movement too, nothing is done under
// 6 times or above 80 % of the 1RM.
func (f *Frame) sparing() bool {
	r, limits := f.r, &f.r.Screening.Limits
	share := limits.MaxFraction
	alone := r.Screening.Setting <= screening.Alone && r.Exercise.Demands.Both(body.DemandSet(body.Overhead, body.OverFace)) != 0
	return limits.NoBreathHolding || limits.Lighten != (screening.Lighten{}) || limits.MaxIntensity != 0 && limits.MaxIntensity < screening.Vigorous || share > 0 && share < mostSparing ||
		alone || slices.ContainsFunc(r.Screening.Findings, func(found screening.Finding) bool {
		return slices.Contains(spared, found.Code) && found.Variant != screening.LongAgo
	})
}

// Feelable returns the weight after each that one set may feel, as a [Feel]: where
// somebody saw the technique within four weeks and is there, on a day that is no lighter
// one, within every limit and a light band, which would take it away again, and where what
// is known of strength comes within 5 % of it. It is false under whatever rules out counts under 6, or low ones at all, and in osteoporosis for hinges and
// carried loads. How long ago the last one was, and how it went, is the caller's.
func (f *Frame) Feelable(each units.Mass) (equipment.Load, bool) {
	if f == nil || !f.ability.Known() || !f.mayRise() || f.learning() || f.sparing() || f.boneLoading() || f.leastCount() > 1 {
		return equipment.Load{}, false
	}
	gap, ok := f.table.Next(each)
	if to := gap.To.Each(); !ok || to > f.most || to > f.top && f.light || f.oneRM < share1RM(to, nearlyAll) {
		return equipment.Load{}, false
	}
	return gap.To, true
}

// boneLoading reports whether the exercise is a hinge or a carry of a person with
// osteoporosis.
func (f *Frame) boneLoading() bool {
	p := f.r.Exercise.Pattern
	return (p == exercise.Hinge || p == exercise.Carry) && slices.ContainsFunc(f.r.Screening.Findings, func(found screening.Finding) bool {
		return slices.Contains(boneFindings, found.Code)
	})
}

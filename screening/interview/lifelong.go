package interview

import (
	"slices"

	"example.org/posology/screening"
)

// lifelong are what cannot go away again once it is so: what is asked of any time in a
// life, illnesses that last, what was replaced or implanted, and old fractures. It is this
// module's own list (Design). What can heal, or be operated on, is not on it. With yes and
// no two of them are asked as questions, too.
var lifelong = []screening.Code{
	"cancer_history", "known_heart_murmur", "bone_metastases",
	"cardiac", "peripheral_vascular", "cerebrovascular", "diabetes_t1", "diabetes_t2", "renal",
	"after_mi_or_stroke", "stroke_before", "heart_failure", "pacemaker", "icd", "aortic_or_cerebral_aneurysm", "marfan", "lung_disease",
	"osteoporosis", "vertebral_fracture", "hip_fracture",
	"total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "osteoarthritis_knee", "osteoarthritis_hip", "osteoarthritis_hand",
	"glaucoma", "npdr_moderate_or_worse", "diabetic_retinopathy_severe", "parkinsons", "severe_cognitive_impairment",
	"diabetes", "nephropathy", "lymphoedema_stable",
}

// Forgets returns what stood in an earlier profile, cannot go away again, and would by a
// reply to the question that [Interview.Next] returns, save the codes that are known to be
// gone; and the reply with it, or with the area that it is asked under. A form asks back
// before it takes the reply as it is. What is not known takes nothing away.
func (i Interview) Forgets(r Reply, was screening.Profile, save ...screening.Code) (gone []screening.Code, kept Reply) {
	kept = r.clone()
	a := i.now.next()
	if a == nil || a.check(r) != nil {
		return nil, kept
	}
	stood := slices.Concat(was.Diseases.Present, was.Symptoms.Present, was.RedFlags.Present, was.Conditions.Present)
	for _, code := range stood {
		stood = append(stood, through[code])
	}
	isGone := func(code screening.Code) bool {
		told := slices.Contains(stood, code) || was.Answers[code] == screening.Yes
		return told && slices.Contains(lifelong, code) && !slices.Contains(save, code)
	}
	if a.Form == YesNo && r.YesNo == screening.No && isGone(screening.Code(a.Key)) {
		kept.YesNo = screening.Yes
		return []screening.Code{screening.Code(a.Key)}, kept
	}
	for _, g := range groups() {
		lost := slices.DeleteFunc(slices.Clone(g.codes), func(code screening.Code) bool {
			return !isGone(code) || r.List.Of(code) != screening.No
		})
		switch {
		case len(lost) == 0:
		case a.Key == g.key:
			gone, kept.List.Present = lost, append(kept.List.Present, lost...)
		case a.Key == "areas" && g.area != "" && r.List.Of(screening.Code(g.key)) == screening.No:
			gone, kept.List.Present = append(gone, lost...), append(kept.List.Present, screening.Code(g.key))
		}
	}
	return gone, kept
}

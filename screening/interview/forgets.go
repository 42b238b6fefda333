package interview

import (
	"slices"

	"example.org/posology/screening"
)

// strokeBefore is asked as a question alone, and of any time in a life.
const strokeBefore screening.Code = "stroke_before"

// holds reports whether a code is asked back about: every disease, symptom and condition,
// since each holds, limits, asks or is let know of, and what lasts of the other lists. A sign
// of the last days comes and goes.
func holds(code screening.Code) bool {
	term, _ := screening.LookUp(code)
	switch term.Kind {
	case screening.Disease, screening.Symptom, screening.Condition:
		return true
	}
	return code == strokeBefore || slices.ContainsFunc(groups(), func(g group) bool { return g.lasts && slices.Contains(g.codes, code) })
}

// Forgets returns which diseases, symptoms, conditions and lasting signs stood in an earlier
// profile and would go by a reply to the question that [Interview.Next] returns, save the
// codes that are known to be gone: one "none" would free what each of them holds. It returns
// the reply with them, or with the areas that they are asked under, too. A form asks back
// before it takes the reply as it is. What is not known takes nothing away, and a reply that
// is refused forgets nothing.
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
		return told && holds(code) && !slices.Contains(save, code)
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

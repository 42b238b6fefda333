package screening

import "slices"

// RedFlags answers by the red flags: of the spine after IFOMPT 2020 (Finucane
// 2020), of which one alone says little except those of cauda equina, and by
// others, most of them of this module's own design. Two signs that point to one
// cause, or a sign that counts by itself, are an urgent referral; signs count
// together unless the back is known not to hurt. What is unsure is not counted.
func RedFlags(p Profile) Referral {
	answer := NoReferral
	items := p.RedFlags.appendItems(nil)
	for _, it := range items {
		if it.held == Yes {
			answer = max(answer, it.flag)
		}
	}
	if together(items, Yes) && p.backPain() != No {
		answer = max(answer, UrgentReferral)
	}
	return answer
}

// together reports whether enough signs of the spine that are held at least as
// surely as given point to one cause.
func together(items []item, atLeast Answer) bool {
	for _, it := range items {
		signs := 0
		for _, other := range items {
			if it.points != "" && other.points == it.points && other.held.Severity() >= atLeast.Severity() {
				signs++
			}
		}
		if signs >= flagsTogether {
			return true
		}
	}
	return false
}

// backPain says whether the back hurts. A sign that is back pain counts before
// an answer of no.
func (p *Profile) backPain() Answer {
	pain := p.Answers[askBack]
	for _, code := range backSigns {
		if sign := p.RedFlags.Of(code); sign.Severity() > pain.Severity() {
			pain = sign
		}
	}
	return pain
}

// openBack is what to answer where nobody knows whether the back hurts, else "": the
// question, and once that has a no the sign that is back pain and not known.
func (p *Profile) openBack() Code {
	switch {
	case p.backPain() != Unknown:
		return ""
	case p.Answers[askBack] != No:
		return askBack
	}
	at := slices.IndexFunc(backSigns, func(code Code) bool { return p.RedFlags.Of(code) == Unknown })
	return backSigns[at]
}

// pointing are the red flags of the spine that count together.
func pointing() []Code { return codesWith(func(e *entry) bool { return e.points != "" }) }

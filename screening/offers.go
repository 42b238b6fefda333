package screening

import (
	"maps"
	"strings"

	"example.org/posology/units/evidence"
)

// heldBack marks the reason of a finding whose usual sentence lets more go on than
// the joined outcome does.
const heldBack evidence.ReasonCode = ".held"

// offers returns the most that the client's sentence of a reason lets go on,
// and whether it lets anything go on at all. No finding of an outcome offers more
// than its Meanwhile.
func offers(code evidence.ReasonCode) (Meanwhile, bool) {
	name := asKnown(unprefixed(code))
	if most, ok := offered[name]; ok {
		return most, true
	}
	if of, agreed := strings.CutSuffix(string(name), string(withClearance)); agreed && find(Code(of)) != nil {
		return WithinLimits, true // an agreement that lifted a hold
	}
	return 0, false
}

// unprefixed is a reason's code without the package's prefix.
func unprefixed(code evidence.ReasonCode) Code {
	return Code(strings.TrimPrefix(string(code), string(reasonPrefix)))
}

// asKnown is a branch as its sentence is to a client, who is told the same where some of
// it is not known; any other code is as it is.
func asKnown(name Code) Code {
	if _, branch := strings.CutPrefix(string(name), "branch."); branch {
		name = Code(strings.TrimSuffix(string(name), string(unsurely)))
	}
	return name
}

// hold leaves out sentences that let more go on than o does, and what is said
// twice.
func (o *Outcome) hold() {
	kept := o.Findings[:0]
	for i := range o.Findings {
		f := &o.Findings[i]
		if most, ok := offers(f.Reason.Code); ok && most < o.Meanwhile {
			f.Reason.Code += heldBack
		}
		if !f.among(kept) {
			kept = append(kept, *f)
		}
	}
	o.Findings = kept
}

// among reports whether one of the findings says the same of the same. Most differ by
// their codes.
func (f *Finding) among(list []Finding) bool {
	for i := range list {
		if list[i].Reason.Code == f.Reason.Code && f.same(list[i]) {
			return true
		}
	}
	return false
}

// addHeld adds to w what is said to those who are held in place of each offer.
func addHeld(w evidence.Words) {
	for code, wording := range maps.Clone(w) {
		if _, ok := offers(code); !ok {
			continue
		}
		name := asKnown(unprefixed(code))
		client, own := heldTexts[name]
		if !own {
			client = heldText(name)
		}
		w[code+heldBack] = evidence.Wording{Client: client, Clinician: wording.Clinician + " What else was found holds it."}
	}
}

// whomText is whom a client asks.
var whomText = map[Lifter]string{TheDoctor: "your doctor", TheSurgeon: "your surgeon", TheTeam: "your specialist team"}

// heldText is put together for an entry.
func heldText(name Code) string {
	code, variant, _ := strings.Cut(string(name), ".")
	e, about := find(Code(code)), clientTextOf(Code(code)).about
	switch {
	case "."+variant == string(withClearance):
		return "Your doctor has agreed about " + about + "; the rest comes first."
	case e.effect.route >= AskFirst:
		return "Please ask " + whomText[e.exit().Who] + " about " + about + " as well."
	}
	return "Thank you for telling us about " + about + "; we come back to it."
}

package screening

import (
	"slices"
	"strings"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A finer row splits the people of one code by questions with yes and no: as long as
// one of them is answered with yes, or not answered, the entry stands as it is,
// which is how records read that were stored before the questions were asked.
type finer struct {
	grave   []Code // the questions
	settled effect // with every one of them answered with no
	dated   *dated // likewise, once its day is known; nil: as the entry
	// explained: a sign of the preparticipation rule that was looked at and has not
	// changed waits for no clearance in the joined outcome. The rule's own answer
	// counts it.
	explained bool
	kept      []Code // of the questions those whose yes no clearance lifts
}

// A seen row takes the look of a physiotherapist at what days, a place or nothing grave
// beside have made of an entry without finer questions: with its own answered with no.
type seen struct {
	question Code
	then     effect
}

// afterLook is what an entry leads to once the physiotherapist has looked, where that is
// all that it waits for; else the look is asked about.
func (a *assessment) afterLook(it item, e effect, variant evidence.ReasonCode) (effect, evidence.ReasonCode) {
	s := it.seen
	switch {
	case s == nil || e.route != PhysioLooks:
		return e, variant
	case a.p.Answers[s.question] == No:
		return s.then, lookedAtOnce
	case a.p.Answers[s.question] == Unknown && it.held == Yes:
		a.out.ask(askFor(s.question, it.code))
	}
	return e, variant
}

// settled reports whether every question that makes the entry grave was answered
// with no.
func (p *Profile) settled(e *entry) bool {
	return e.finer != nil && !slices.ContainsFunc(e.finer.grave, p.notNo)
}

// notNo reports whether a question may still have a grave answer.
func (p *Profile) notNo(code Code) bool { return p.Answers[code] != No }

// explains reports whether an item is a sign that was looked at and has not changed.
func (p *Profile) explains(it item) bool {
	return it.kind == Symptom && it.finer != nil && it.finer.explained && p.settled(it.entry)
}

// signs says whether a sign of the preparticipation rule is present that nobody has
// looked at, as the joined outcome counts them; of one that may be there a look says more.
func (a *assessment) signs() Answer {
	held := No
	if !a.p.Symptoms.Asked {
		held = Unknown
	}
	for _, it := range a.items {
		if it.kind == Symptom && !a.p.explains(it) && !it.looked() && it.held.Severity() > held.Severity() {
			held = it.held
		}
	}
	return held
}

// kept reports whether no clearance lifts the entry, for what was answered.
func (p *Profile) kept(e *entry) bool {
	return e.finer != nil && slices.ContainsFunc(e.finer.kept, p.notNo)
}

// askFiner asks for what is not known of a present entry, if it would matter, and
// returns the first such question, "" if there is none. A first yes decides.
func (a *assessment) askFiner(it item, e effect) Code {
	if it.finer == nil || it.held != Yes || e.meanwhile == WithinLimits && e.route != PhysioLooks {
		return ""
	}
	if slices.ContainsFunc(it.finer.grave, func(q Code) bool { return a.p.Answers[q] == Yes }) {
		return ""
	}
	var first Code
	for _, q := range it.finer.grave {
		if a.p.Answers[q] == Unknown {
			a.out.ask(askFor(q, it.code))
			if first == "" {
				first = q
			}
		}
	}
	return first
}

// A Site is where in the body something on the list of conditions is: a joint that
// hurts, is injured or inflamed. With it only work of that place is held.
type Site struct {
	Code   Code        `json:"code"`
	Region body.Region `json:"region"`
	Side   body.Side   `json:"side,omitzero"` // not given is either side
}

func (s Site) check() error {
	var bad field.Errors
	if e := find(s.Code); e == nil || e.sited == nil {
		bad.Add("/code", field.Bad(s.Code, listed(sitedCodes()), field.ErrUnknown))
	}
	bad.Add("/region", s.Region.Check())
	bad.Add("/side", givenBy(s.Side != 0, s.Side.Check))
	return bad.Err()
}

// sitedCodes are those that have a place in the body.
func sitedCodes() []Code { return codesWith(func(e *entry) bool { return e.sited != nil }) }

// spared is what follows from an entry whose place is known: work of it is held and
// the person is not. The whole body is no place.
func (p *Profile) spared(e *entry) (effect, bool) {
	if e.sited == nil {
		return effect{}, false
	}
	spared, known := *e.sited, false
	for _, s := range p.Sites {
		if s.Code != e.code {
			continue
		}
		if s.Region == body.WholeBody {
			return effect{}, false
		}
		spared, known = spared.with(Limits{Avoid: sparing(s.Region)}.onSide(s.Region, s.Side)), true
	}
	return spared, known
}

// siteOf is the code of the question for the place of an entry.
func siteOf(code Code) Code { return code + "_site" }

// siteQuestions ask where it is.
func siteQuestions() []question {
	var list []question
	for _, code := range sitedCodes() {
		list = append(list, question{code: siteOf(code), triggers: []Code{code},
			client:    "About " + clientTextOf(code).about + ": where in the body is it?",
			clinician: "Place of: " + find(code).meaning + ". Work of it alone is held once it is known."})
	}
	return list
}

// limitedJoint asks the surgeon's limits of who says that some are left, until they are there.
func (a *assessment) limitedJoint() {
	if a.p.Answers[replacementLimited] != Yes || !findQuestion(replacementLimited).triggered(a.items) {
		return
	}
	if q := findQuestion(askLimit); !a.answered(q) {
		a.out.ask(askFor(askLimit, replacementLimited))
	}
	e, follows := find(replacementLimited), find(replacementLimited).effect
	if a.limitsSet() {
		follows.route = Tell
	}
	a.out.add(e.finding(plainly), follows)
}

// replacedAt are where the joints are of which the surgeon's limits are asked.
var replacedAt = map[Code]body.Region{"total_knee_replacement": body.Knee, "total_hip_replacement": body.Hip}

// limitsSet reports whether of each replaced joint a limit is in force that binds something
// and bears a name: words alone bind no dose.
func (a *assessment) limitsSet() bool {
	return !slices.ContainsFunc(a.items, func(it item) bool {
		where, replaced := replacedAt[it.code]
		return replaced && !slices.ContainsFunc(a.p.Restrictions, func(r Restriction) bool {
			l := r.limits()
			binds := len(l.Masses) > 0 || l.Avoided(body.Both) != 0
			return binds && strings.TrimSpace(r.Author) != "" && (r.Region == where || r.Region == body.WholeBody) && r.inForce(a.p.Day) && r.Day <= a.p.Day
		})
	})
}

package screening

import (
	"cmp"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Assess screens a person: may training start, with which limits, and whom to
// ask. The package comment tells how findings are joined. Bad fields of p are
// reported all at once, as [field.Errors].
//
// A policy says how the rules are joined where they disagree; without one it is this
// module's own. It is kept in the outcome. Two of them are a [field.ErrConflict] at
// /policy.
func Assess(p Profile, by ...JoinPolicy) (Outcome, error) {
	policy, wrong := chosen(by)
	if err := p.Validate(); err != nil || wrong != nil {
		var bad field.Errors
		bad.Add("", err)
		bad.Add("", wrong)
		return Outcome{}, bad
	}
	a := assessment{p: p, items: p.found(), policy: policy}
	a.read()
	a.out.Policy = policy
	a.out.Findings = make([]Finding, 0, len(a.items)+len(p.Clearances)+len(p.Restrictions)+fewMore)
	a.out.Key, a.out.Who, a.out.Setting, a.out.Day = p.Key, p.person(), p.Setting.company(), p.Day
	a.out.TestsFrom = testsFrom(p.Events, p.Conditions, p.Day)
	a.out.ReviewBy, a.out.Clearances = renewal(p.Day), a.inForce
	a.lists()
	a.branch()
	a.listed()
	a.together()
	a.measured()
	a.dayReadings()
	a.questions()
	a.clearances()
	a.restrictions()
	a.rules()
	a.out.close()
	return a.out, nil
}

// fewMore are findings that stand for no item: the branch, readings, nothing found.
const fewMore = 3

// An assessment gathers an outcome.
type assessment struct {
	p      Profile
	items  []item
	out    Outcome
	policy JoinPolicy

	met     []*entry    // by readings, on the lists of contraindications or at the lower edge of a band
	inForce []Clearance // that count on the day
	lifted  []Code      // a clearance that names one of them has lifted something
}

// read fills in what is asked of the profile again and again.
func (a *assessment) read() {
	a.met, a.inForce = append(a.p.measured(), a.p.visitCheck().lowerEdges()...), a.p.inForce()
}

// add takes in one finding. What is light and supervised or graver rests on the
// facts of its limits too.
func (o *Outcome) add(f Finding, e effect) {
	if e.meanwhile > WithinLimits {
		f.Reason.Facts = slices.Concat(f.Reason.Facts, lightFacts)
	}
	e = e.full()
	if e.limits.Lighten != (Lighten{}) {
		f.Reason.Facts = append(f.Reason.Facts, lightenFact)
	}
	f.Route, f.Meanwhile, f.Limits = e.route, e.meanwhile, e.limits
	if f.Exit.Who == 0 {
		f.Exit = f.exit(e)
	}
	o.Findings = append(o.Findings, f)
}

// addOpen is add for what an answer or a second reading may still lift.
func (o *Outcome) addOpen(f Finding, e effect) {
	f.Open = true
	o.add(f, e)
}

// same reports whether f and g say the same of the same.
func (f Finding) same(g Finding) bool {
	return f.Reason.Code == g.Reason.Code && slices.Equal(f.Reason.Args, g.Reason.Args) && f.Open == g.Open && f.Exit == g.Exit &&
		effect{f.Route, f.Meanwhile, f.Limits}.same(effect{g.Route, g.Meanwhile, g.Limits})
}

// ask takes in a missing question, once.
func (o *Outcome) ask(q Question) {
	if !slices.ContainsFunc(o.Missing, func(m Question) bool { return m.Code == q.Code }) {
		if o.Missing == nil {
			o.Missing = make([]Question, 0, 8) // few go without any, or with more
		}
		o.Missing = append(o.Missing, q)
	}
}

// close joins the findings by the worst and puts the gravest first.
func (o *Outcome) close() {
	all := effect{NoRoute, WithinLimits, Limits{}}
	for i := range o.Findings {
		f := &o.Findings[i]
		all = all.join(effect{f.Route, f.Meanwhile, f.Limits})
	}
	o.Route, o.Meanwhile = max(o.Route, all.route), max(o.Meanwhile, all.meanwhile)
	o.Limits = o.Limits.Join(all.limits)
	o.hold()
	o.Frees = o.frees()
	if o.Route == NoRoute {
		o.add(byRule(evidence.Because(nothingCode)), nothingFound)
	}
	slices.SortStableFunc(o.Findings, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(b.Route, a.Route), cmp.Compare(b.Meanwhile, a.Meanwhile))
	})
}

// reason is why an entry leads to a finding; variant is one of those in words.go.
func (e *entry) reason(variant evidence.ReasonCode) evidence.Reason {
	code := e.plain
	if variant != plainly {
		code += variant
	}
	return evidence.Because(code, e.facts...)
}

// finding is what an entry leads to; variant is one of those in words.go.
func (e *entry) finding(variant evidence.ReasonCode) Finding {
	return finding(e.code, variant, e.reason(variant))
}

// lists reports each list that was not asked, as one finding.
func (a *assessment) lists() {
	for _, l := range [...]struct {
		code Code
		list Checklist
	}{{askDiseases, a.p.Diseases}, {askSymptoms, a.p.Symptoms}, {askRedFlags, a.p.RedFlags}, {askConditions, a.p.Conditions}} {
		if !l.list.Asked {
			a.out.addUnasked(l.code, a.p.Setting)
		}
	}
}

func (o *Outcome) addUnasked(list Code, s Setting) {
	o.ask(askFor(list, ""))
	reason := evidence.Because(unaskedPrefix+evidence.ReasonCode(list), unaskedFact)
	o.addOpen(finding(list, unsurely, reason), unasked[list].softened().inSetting(s, true))
}

// listed reports every entry that is present or not known.
func (a *assessment) listed() {
	for _, it := range a.items {
		if it.held != Yes {
			a.out.ask(a.missing(it)) // before what depends on it
		}
		if it.held != Yes && it.code == vertebralFracture && a.spineNotSeen(it) {
			continue
		}
		if it.held != Yes && it.code == uncontrolled && a.p.pressure() != nil {
			continue // the reading says it, and has a finding of its own where it is high
		}
		e, variant := a.follows(it)
		e = a.p.itsSide(it.entry, e).inSetting(a.p.Setting, it.balance)
		if it.held != Yes {
			f := it.finding(unsurely)
			if a.looked(it) && e.route == PhysioLooks {
				f.Exit = WayOut{Who: ThePhysio, With: ALook, Ask: a.missing(it).Code}
			} else if e.meanwhile > WithinLimits || e.route >= PhysioLooks {
				f.Exit = WayOut{Who: ThePerson, With: AnAnswer, Ask: a.missing(it).Code}
			}
			a.out.addOpen(f, e.softened())
			continue
		}
		f := it.finding(variant)
		if open := a.askFiner(it, e); open != "" && variant != withClearance {
			if f.Exit = (WayOut{Who: ThePerson, With: AnAnswer, Ask: open}); e.route == PhysioLooks {
				f.Exit.Who, f.Exit.With = ThePhysio, ALook
			}
		} else if a.p.kept(it.entry) && e.meanwhile > WithinLimits {
			f.Exit = WayOut{Who: TheDoctor, With: BeingSettled}
		} else {
			f.Exit = a.dated(it, f.exit(e))
		}
		a.out.add(f, e)
	}
}

// missing is the question that would settle an item that is not known.
func (a *assessment) missing(it item) Question {
	if it.by != nil { // what implies it is what was not known
		return item{entry: find(it.by[0])}.unsure()
	}
	if it.question != nil {
		return askFor(it.question.code, it.question.because(a.items))
	}
	return it.unsure()
}

// measured reports readings that meet the list of contraindications.
func (a *assessment) measured() {
	for _, e := range a.met {
		follows, variant := a.follows(item{entry: e, held: Yes})
		a.out.addRead(e, variant, follows.inSetting(a.p.Setting, e.balance), a.p.visitCheck())
	}
}

// addRead takes in what a reading met. Of pressure, pulse and saturation a first reading
// alone is measured again before it counts for good; both are named.
func (o *Outcome) addRead(e *entry, variant evidence.ReasonCode, follows effect, c Check) {
	question, first, again := measuredAgain[e.code], c.BP.String(), c.BPAgain.String()
	switch question {
	case askPulseAgain:
		first, again = taken(c.RestingPulse, " a minute"), taken(c.RestingPulseAgain, " a minute")
	case askSpO2Again:
		first, again = taken(c.SpO2, " %"), taken(c.SpO2Again, " %")
	}
	switch {
	case question == "":
		o.add(e.finding(variant), follows)
	case again == "" && follows.meanwhile > WithinLimits && variant == plainly:
		o.ask(askFor(question, e.code))
		f := e.finding(onceMore)
		f.Reason = f.Reason.With(evidence.Text("first", first))
		f.Reason.Facts = append(f.Reason.Facts, againFact)
		o.addOpen(f, follows)
	default:
		f := e.finding(variant)
		f.Reason = f.Reason.With(evidence.Text("first", first), evidence.Text("second", or(again, "not taken")))
		o.add(f, follows)
	}
}

// dayReadings reports what the visit's own readings say of the day.
func (a *assessment) dayReadings() {
	c := a.p.visitCheck()
	for _, code := range SessionDay(c, Profile{}).Reasons {
		e := find(code)
		a.out.addRead(e, plainly, e.effect, c)
	}
}

// renewal is the last day of an assessment of the given day: its own, at the end
// of the calendar.
func renewal(day units.Day) units.Day { return max(day, monthsAfter(day, assessmentMonths)) }

// questions reports triggered questions that no entry stands for.
func (a *assessment) questions() {
	for i := range questions {
		q := &questions[i]
		if len(q.triggers) == 0 || a.answered(q) || !q.triggered(a.items) {
			continue
		}
		a.out.ask(askFor(q.code, q.because(a.items)))
		switch e := find(q.means); q.code {
		case askPressure:
			a.out.reviewBy(a.p.Day + pressureDays)
			e = find(pressureUntaken)
			a.out.addOpen(e.finding(unsurely), e.effect.inSetting(a.p.Setting, e.balance))
		case askCounts:
			a.out.addOpen(e.finding(unsurely), e.effect.inSetting(a.p.Setting, e.balance))
		}
	}
	a.floor()
	a.limitedJoint()
	a.askClearance()
	a.everyones()
	a.eachDay()
}

// everyones asks for what everybody is asked or measured. That it is not known
// holds nobody by itself.
func (a *assessment) everyones() {
	for _, q := range [...]struct {
		open bool
		code Code
	}{
		{a.p.BP == nil, askPressure}, {a.p.RestingPulse == 0, askPulse}, {a.p.Setting == 0, askSetting},
		{a.p.Falls == nil && int(a.p.Age) >= fallsAge && !a.holds(fallsRisk), askFalls},
	} {
		if q.open {
			a.out.ask(askFor(q.code, ""))
		}
	}
}

// holds reports whether a code is known to be present.
func (a *assessment) holds(code Code) bool {
	return slices.ContainsFunc(a.items, func(it item) bool { return it.code == code && it.held == Yes })
}

// eachDay lists what every day's check must bring: what a condition asks for,
// and the readings that somebody asked the person to take.
func (a *assessment) eachDay() {
	insulin := a.p.Answers[askInsulin]
	if insulin == Yes || insulin == Unknown && findQuestion(askInsulin).triggered(a.items) {
		a.out.EachDay = append(a.out.EachDay, askGlucose)
	}
	for _, it := range a.items {
		switch {
		case it.code == lateLow && !slices.Contains(a.out.EachDay, askGlucose):
			a.out.EachDay = append(a.out.EachDay, askGlucose)
		case it.code == heartFailure:
			a.out.EachDay = append(a.out.EachDay, worsening)
		case slices.Contains(saturationCodes, it.code) && !slices.Contains(a.out.EachDay, askSaturation):
			a.out.EachDay = append(a.out.EachDay, askSaturation)
		}
	}
	for _, code := range a.p.HomeReadings {
		if !slices.Contains(a.out.EachDay, code) {
			a.out.EachDay = append(a.out.EachDay, code)
		}
	}
}

// answered reports whether q has its answer, or is asked elsewhere.
func (a *assessment) answered(q *question) bool {
	switch q.code {
	case askPressure:
		return a.p.BP != nil
	case askCounts:
		return a.p.Counts != nil && a.p.Counts.Platelets > 0 && a.p.Counts.Haemoglobin > 0
	case askLimit:
		return a.p.Answers[askLimit] == No || slices.ContainsFunc(a.p.Restrictions, func(r Restriction) bool { return r.inForce(a.p.Day) })
	}
	return true
}

// restrictions binds every dose by the restrictions in force, and tells those that have ended.
func (a *assessment) restrictions() {
	for _, r := range a.p.Restrictions {
		who, where := evidence.Text("author", or(r.Author, "somebody unnamed")), evidence.Term("region", r.Region.String())
		if !r.inForce(a.p.Day) {
			a.out.add(byRule(evidence.Because(endedCode, restrictedFact).With(who, where, evidence.Day("day", r.Until))), tell)
			continue
		}
		reason := evidence.Because(restrictionCode, restrictedFact).With(who, where)
		if r.Note != "" {
			reason = reason.With(evidence.Text("note", r.Note))
		}
		a.out.add(byRule(reason), tell.with(r.limits()))
	}
}

func (a *assessment) rules() {
	a.out.Rules = Rules{
		Preparticipation:  a.p.preparticipation(a.items, a.inForce),
		DiabetesStart:     a.p.diabetesStart(a.items),
		Contraindications: a.p.contraindications(a.items, a.met),
		Wider:             a.p.wider(a.items, a.met),
		RedFlags:          RedFlags(a.p),
		SessionDay:        SessionDay(a.p.visitCheck(), a.p),
		HeartFailure:      Check{}.heartFailure(a.items),
		Falls:             Falls(a.p),
		Cautions:          a.p.cautions(a.items),
	}
}

package screening

import (
	"slices"

	"example.org/posology/units/evidence"
)

// together reports signs of the spine that point to one cause. Pain of years and the
// same is looked at, and with a cancer earlier in life asked about; with any other sign
// they stop, and so does new pain with any cancer. The rule of [RedFlags] makes no such
// difference.
func (a *assessment) together() {
	flags := a.p.RedFlags.appendItems(nil)
	pain := a.p.backPain()
	if pain == No || !together(flags, Unknown) { // of a back that does not hurt they are no signs of the spine
		return
	}
	if pain == Unknown {
		a.out.ask(askFor(askBack, ""))
	}
	a.askChronic(flags)
	for _, held := range [...]Answer{Yes, Unknown} {
		if together(flags, held) && !a.chronic(flags, held) {
			a.addTogether(togetherCode, stopSpine, held)
			return
		}
	}
	for _, held := range [...]Answer{Yes, Unknown} {
		if !together(flags, held) {
			continue
		}
		before := a.p.RedFlags.Of(cancerBefore)
		switch {
		case before.Severity() >= held.Severity() && a.p.Answers[cancerActive] != No:
			a.addTogether(followedCode, practiseSpine, held)
		case before.Severity() >= held.Severity():
			a.addTogether(chronicPastCode, askSpine, held)
		case held == Yes && before != No:
			continue // it may have been a cancer, which is more
		case !a.unseen(flags):
		default:
			a.addTogether(chronicCode, lookSpine, held)
		}
		return
	}
}

// unseen reports whether one of the chronic signs is still to be looked at.
func (a *assessment) unseen(flags []item) bool {
	return slices.ContainsFunc(flags, func(it item) bool {
		return it.held != No && slices.Contains(chronicSigns, it.code) && !a.p.settled(it.entry)
	})
}

// Effects of several signs, each as tight as the one above it: training goes on around
// the spine while a doctor is asked, is practised without weight where a cancer is
// treated or followed, or stops.
var (
	askSpine      = ask.with(lookSpine.limits)
	practiseSpine = askNoLoad.with(lookSpine.limits)
	stopSpine     = seeToday.with(lookSpine.limits)
)

// addTogether takes in one finding of several signs.
func (a *assessment) addTogether(code evidence.ReasonCode, e effect, held Answer) {
	if held == Yes {
		f := byRule(evidence.Because(code, togetherFact, chronicFact, followedFact))
		if open := a.p.openBack(); open != "" { // a no to which leaves no signs of the spine
			f.Exit = WayOut{Who: ThePerson, With: AnAnswer, Ask: open}
		}
		a.out.add(f, e)
		return
	}
	f := finding(unprefixed(code), unsurely, evidence.Because(togetherCode+unsurely, togetherFact))
	f.Exit = WayOut{Who: ThePerson, With: AnAnswer, Ask: a.unsureFlag()}
	a.out.addOpen(f, e.softened())
}

// unsureFlag is the first sign that points to a cause and is not known.
func (a *assessment) unsureFlag() Code {
	for _, code := range a.p.RedFlags.Unsure {
		if e := find(code); e != nil && e.points != "" {
			return code
		}
	}
	return askRedFlags
}

// chronic reports whether every sign that counts together with another is chronic.
func (a *assessment) chronic(flags []item, atLeast Answer) bool {
	for _, it := range flags {
		if it.points == "" || it.held.Severity() < atLeast.Severity() || a.mild(it) {
			continue
		}
		if slices.ContainsFunc(flags, func(other item) bool {
			return other.entry != it.entry && other.points == it.points && other.held.Severity() >= atLeast.Severity()
		}) {
			return false
		}
	}
	return true
}

// mild reports whether a sign is pain of years and the same, or a cancer earlier in
// life, which makes no other sign one of a new illness.
func (a *assessment) mild(it item) bool {
	return it.code == cancerBefore || slices.Contains(chronicSigns, it.code) && a.p.Answers[painChanged] == No
}

// askChronic asks what would make several signs chronic.
func (a *assessment) askChronic(flags []item) {
	for _, it := range flags {
		asks := cancerActive
		switch {
		case it.held == No || it.code != cancerBefore && !slices.Contains(chronicSigns, it.code):
			continue
		case it.code != cancerBefore:
			asks = painChanged
		}
		if a.p.Answers[asks] == Unknown {
			a.out.ask(askFor(asks, it.code))
		}
	}
}

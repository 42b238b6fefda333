package screening

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

const factPrefix evidence.FactID = "screening."

// Facts that stand for no entry.
const (
	branchMap      = factPrefix + "map.branch"
	unaskedFact    = factPrefix + "not-asked"
	clearanceFact  = factPrefix + "clearance"
	togetherFact   = factPrefix + "flags-together"
	adaFact        = factPrefix + "diabetes-start"
	lightLoadFact  = factPrefix + "light-load"
	reserveFact    = factPrefix + "light-reserve"
	belowFact      = factPrefix + "below-high-intensity"
	lyingFact      = factPrefix + "orthostatic-lying"
	pressureESC    = factPrefix + "pressure-high-intensity"
	fallFact       = factPrefix + "recent-fall"
	dayConflict    = factPrefix + "diastolic-conflict"
	activeFact     = factPrefix + "regularly-active"
	referredFact   = factPrefix + "share-referred"
	aloneFact      = factPrefix + "alone"
	restrictedFact = factPrefix + "restriction"
	replacedFact   = factPrefix + "recent-replacement"
	saturationFact = factPrefix + "saturation-floor"
	highLyingFact  = factPrefix + "orthostatic-high-lying"
	lightenFact    = factPrefix + "lighter-session"
	againFact      = factPrefix + "measure-again"
	eventFact      = factPrefix + "events-end"
	eatFirstFact   = factPrefix + "eat-first"
	treatedFact    = factPrefix + "glucose-again"
	zonesFact      = factPrefix + "pain-zones"
	variantFact    = factPrefix + "pain-zones-variant"
	policyFact     = factPrefix + "pain-osteoarthritis"
	timingFact     = factPrefix + "parkinsons-timing"
	usualFact      = factPrefix + "pain-settled"
	trialFact      = factPrefix + "pain-trial"
	fallsFact      = factPrefix + "falls-screen"
	followUpFact   = factPrefix + "falls-follow-up"
	renewalFact    = factPrefix + "assessment-term"
	knownFact      = factPrefix + "known-disease"
	recalledFact   = factPrefix + "known-disease-recalled"
	gainRateFact   = factPrefix + "hf-weight-rate"
)

// branchFact names the fact of a branch.
func branchFact(b Branch) evidence.FactID {
	return factPrefix + "branch." + evidence.FactID(b.String())
}

// branchFacts are the rows of the preparticipation rule.
var branchFacts = [...]string{
	N1: "neither disease nor symptoms, not regularly active: no clearance; light or moderate at the start, vigorous by small steps",
	N2: "disease without symptoms, not regularly active: clearance before any exercise; with it light or moderate at the start, and more as it is borne",
	N3: "symptoms, not regularly active: clearance before any exercise; with it light or moderate at the start, and more as it is borne",
	A1: "neither disease nor symptoms, regularly active: no clearance; moderate and vigorous effort both go on and may grow",
	A2: fmt.Sprintf("disease without symptoms, regularly active: moderate effort goes on without; vigorous effort needs a clearance, which counts for %d months if nothing has changed", clearanceMonths),
	A3: "symptoms, regularly active: exercise pauses until there is a clearance; with it the way back, and more as it is borne",
}

// numberFacts are the facts that stand for no entry of the tables of codes.
var numberFacts = []evidence.Fact{
	{ID: activeFact, Value: fmt.Sprintf("regularly active: planned, at least %d days a week and %d minutes, at least moderate, for at least %d months", activeDays, activeMinutes, activeMonths), Source: "riebe2015", Via: figureVia, Basis: evidence.Secondary},
	{ID: adaFact, Value: "people with diabetes, not active and without symptoms, who start with light or moderate effort need no clearance; disagrees with branch N2", Source: "colberg2017", Basis: evidence.Published},
	{ID: referredFact, Value: "of US adults from 40, the preparticipation rule sends 54.2 % before any exercise and a further 2.6 % before vigorous exercise", Source: "whitfield2017", Basis: evidence.Published},
	{ID: lyingFact, Value: fmt.Sprintf("from lying a fall of %d systolic or %d diastolic mmHg within 3 minutes of standing is orthostatic hypotension", lyingSystolic, lyingDiastolic), Source: "freeman2011", Via: "shaw2017", Basis: evidence.Secondary},
	{ID: pressureESC, Value: fmt.Sprintf("systolic above %d mmHg: no high-intensity exercise until controlled", relativeSystolic), Source: "pelliccia2021", Basis: evidence.FromMemory},
	{ID: dayConflict, Value: fmt.Sprintf("diastolic pressure stops the day at %d mmHg in the UK list and bars resistance exercise above %d in the American one", dayDiastolic, absoluteDiastolic), Basis: evidence.Computed, From: []evidence.FactID{factPrefix + evidence.FactID(pressureToday), factPrefix + evidence.FactID(pressureAbsolute)}},
	{ID: lightLoadFact, Value: fmt.Sprintf("light and supervised: at most %v of the 1RM, the low level for this group", lightFraction), Source: "williams2007", Basis: evidence.FromMemory},
	{ID: reserveFact, Value: fmt.Sprintf("light and supervised, or a lighter day: at least %v repetitions in reserve, and light effort beside an instructor", lightReserve), Basis: evidence.Design},
	{ID: belowFact, Value: fmt.Sprintf("at most %v of the 1RM: the last whole per cent below %v", belowIntensity, highIntensity), Basis: evidence.Computed, From: []evidence.FactID{factPrefix + "npdr_moderate_or_worse"}},
	{ID: renewalFact, Value: fmt.Sprintf("an assessment is renewed after %d months, the term of a clearance, or when a clearance that counted in it ends; past that day nobody trains on it", assessmentMonths), Basis: evidence.Design, From: []evidence.FactID{clearanceFact}},
	{ID: knownFact, Value: "a disease counts for every rule that asks about it, whichever list it was told in: failure, infarction, valves, rhythm and inflammation of the heart as heart disease; stroke and bleeding as disease of the vessels of the brain; diseased kidneys or eyes of diabetes as diabetes", Basis: evidence.CommonPractice},
	{ID: recalledFact, Value: "angina on effort, a pacemaker, a defibrillator and a widened artery count as known disease", Source: "riebe2015", Basis: evidence.FromMemory},
	{ID: gainRateFact, Value: fmt.Sprintf("over more days: %v for every %d days begun holds %v within some %d of them", gainMass, gainMaxDays, gainMass, gainMaxDays), Basis: evidence.Computed, From: []evidence.FactID{factPrefix + evidence.FactID(weightGain)}},
	{ID: fallFact, Value: fmt.Sprintf("a fall in the last %d months counts as a risk of falling", fallMonths), Source: "cdc2019", Via: "summaries of the algorithm", Basis: evidence.Secondary},
	{ID: replacedFact, Value: fmt.Sprintf("a replaced joint counts as recent for %d weeks, or without its day; no limit of load was found", replacementWeeks), Basis: evidence.Design},
	{ID: saturationFact, Value: fmt.Sprintf("severe desaturation is read below %d %% in one source, while programmes keep it at or above 88 to %d %%: below the first no session, below the second a lighter one", spo2Severe, spo2Floor), Basis: evidence.Computed, From: []evidence.FactID{factPrefix + evidence.FactID(saturationSevere), factPrefix + evidence.FactID(saturationFloor)}},
	{ID: highLyingFact, Value: fmt.Sprintf("where the pressure lying down is high a fall of %d systolic mmHg is asked", lyingHighSystolic), Source: "freeman2011", Via: "later reports", Basis: evidence.Secondary},
	{ID: lightenFact, Value: fmt.Sprintf("a lighter session: the last completed load or less, %d set fewer, %v more repetitions in reserve", lighterSets, lighterReserve), Basis: evidence.Design},
	{ID: againFact, Value: "a pressure, pulse or oxygen saturation that would stop the day is measured again after a rest; both readings are kept and the second counts", Basis: evidence.Design},
	{ID: eventFact, Value: "an operation, a fracture, a heart attack, a stroke, a stay in hospital, a fall or a new diagnosis ends clearances, estimates and the plan until the person is assessed anew", Basis: evidence.Design},
	{ID: eatFirstFact, Value: fmt.Sprintf("below %v on insulin eating first is never waived for weights, though the position allows it for short or very intense bouts", glucoseEat), Basis: evidence.Design, From: []evidence.FactID{factPrefix + evidence.FactID(glucoseBelowEat)}},
	{ID: treatedFact, Value: fmt.Sprintf("a second reading of %v or more after a low was treated lets a lighter session go on, with a helper; whatever it is, a first below %v and a low that needed help end the day, and what else a first one asks for stays", glucoseTreat, glucoseNone), Basis: evidence.Design, From: []evidence.FactID{factPrefix + evidence.FactID(glucoseLow)}},
	{ID: zonesFact, Value: fmt.Sprintf("zones of pain cut at %v and %v of 10", painLow, painLimit), Source: "thomee1997", Basis: evidence.FromMemory},
	{ID: variantFact, Value: fmt.Sprintf("one page prints the cuts at %v and %v", painLowVariant, painLimit), Source: "silbernagel2007", Via: "a physiotherapy page", Basis: evidence.Secondary},
	{ID: policyFact, Value: fmt.Sprintf("in osteoarthritis usual pain up to %v may progress if it settles and does not rise", painLimit), Basis: evidence.Design},
	{ID: timingFact, Value: "in Parkinson's disease training is done while the medication works; pressure on standing and falls are watched", Source: "jpd2023", Basis: evidence.FromMemory},
	{ID: usualFact, Value: "settled means back to usual by the next morning; of a score and an answer the graver counts", Basis: evidence.Design},
	{ID: trialFact, Value: "38 people with a painful Achilles tendon: loading under the model did no worse than six weeks of rest; other pain is an extension", Source: "silbernagel2007", Basis: evidence.Published},
	{ID: fallsFact, Value: fmt.Sprintf("falls screen from %d years: a self-score of %d or more of the 12 questions, or yes on fear of falling, a fall in the last 12 months or poor steadiness; then other illness, medicines, pressure on standing, vitamin D, eyes and feet are looked at, balance, strength and walking tested, and the home seen", fallsAge, fallsScore), Source: "cdc2019", Via: "summaries of the algorithm", Basis: evidence.Secondary},
	{ID: followUpFact, Value: fmt.Sprintf("after a positive falls screen a follow-up in %d to %d days", fallsMinFollowUp, fallsMaxFollowUp), Source: "cdc2019", Basis: evidence.FromMemory},
	{ID: togetherFact, Value: fmt.Sprintf("signs of the spine count together: %d that point to one cause are referred the same day", flagsTogether), Basis: evidence.Design, From: []evidence.FactID{factPrefix + "cancer_history"}},
	{ID: branchMap, Value: "before the clearance that a branch asks for: unloaded practice with known disease, nothing with symptoms, at most moderate effort before vigorous", Basis: evidence.Design},
	{ID: unaskedFact, Value: "what was not asked counts as yes for what may go on, and as a question for where to send", Basis: evidence.Design},
	{ID: clearanceFact, Value: fmt.Sprintf("a clearance counts with a name, a day, a scope, within its term or %d months, and with no event since; it lifts relative entries and the need of a branch, nothing else", clearanceMonths), Basis: evidence.Design, From: []evidence.FactID{branchFact(A2)}},
	{ID: aloneFact, Value: "who may faint or fall does no free standing, overhead or over-the-face work alone", Basis: evidence.Design},
	{ID: restrictedFact, Value: "a restriction in force binds every dose, and one that has ended is told; without weight-bearing no standing work of that region; what an arm or a leg is kept from binds the side that is told, and both where none is", Basis: evidence.Design},
}

// Facts yields the facts behind this package, from the tables that its code
// uses: what is said of each code, what follows from it here, the branches of
// the preparticipation rule, and the numbers.
func Facts() iter.Seq[evidence.Fact] {
	var list []evidence.Fact
	for i := range entries {
		list = append(list, entries[i].fact(), entries[i].mapFact())
	}
	for b := N1; b <= A3; b++ {
		list = append(list, evidence.Fact{ID: branchFact(b), Value: branchFacts[b], Source: "riebe2015", Via: figureVia, Basis: evidence.Secondary})
	}
	return slices.Values(slices.Concat(list, numberFacts, finerFacts, favourFacts))
}

func (e *entry) fact() evidence.Fact {
	p := e.from
	return evidence.Fact{ID: e.factID(), Value: e.meaning + ": " + p.says, Source: p.source, Via: p.via, Locator: p.locator, Basis: p.basis}
}

// mapFact is the mapping of this module, as its code has it.
func (e *entry) mapFact() evidence.Fact {
	value := e.meaning + ": " + e.effect.String()
	if e.dated != nil {
		value += e.dated.String()
	}
	if e.finer != nil {
		value += "; looked at and unchanged " + e.finer.settled.String() + e.finer.dated.String()
	}
	if e.lesser != nil {
		value += "; with nothing beside that makes it grave " + e.lesser.String()
	}
	if e.seen != nil {
		value += "; once the physiotherapist has looked at what waits for that alone " + e.seen.then.String()
	}
	if e.notKnown != nil {
		value += "; not known whether " + e.notKnown.String()
	}
	if e.sited != nil {
		value += "; with its place known " + e.sited.String() + ", and work of the place"
	}
	if e.dropped {
		value += "; by the newer list " + byNewer.String()
	}
	if e.released != nil {
		value += "; with a clearance " + e.withAgreement()
	}
	return evidence.Fact{ID: e.mapID(), Value: value, Basis: evidence.Design, From: []evidence.FactID{e.factID()}}
}

// withAgreement prints what a clearance comes to, and what it does not free meanwhile.
func (e *entry) withAgreement() string {
	text := e.released.String()
	if heals := e.effect.limits.Avoid &^ e.released.limits.Avoid; heals != 0 && e.effect.meanwhile > WithinLimits {
		text += "; while it heals still avoiding " + heals.String()
	}
	return text
}

// String prints where to send, what may go on and what is avoided.
func (e effect) String() string {
	text := fmt.Sprintf("route %v, meanwhile %v", e.route, e.meanwhile)
	if e.limits.Avoid != 0 {
		text += ", avoiding " + e.limits.Avoid.String()
	}
	return text
}

// String prints what follows later, "" for nil.
func (d *dated) String() string {
	text := ""
	for ; d != nil; d = d.next {
		text += "; later " + d.later.String()
	}
	return text
}

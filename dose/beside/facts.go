package beside

import (
	"fmt"
	"iter"

	"example.org/posology/dose/guideline"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// older is the age from which balance and aerobic work belong beside lifting.
const older = 50

// whoAge is the least age of the WHO's row for older adults, years.
const whoAge body.Age = 65

const (
	whoRow     guideline.ID = "who2020-older"
	whoAdults  guideline.ID = "who2020-adults"
	britishRow guideline.ID = "ukcmo2019-older"
	boneRow    guideline.ID = "brookewavell2022-osteoporosis"
	powerRow   guideline.ID = "acsm2009-older-power"
)

const (
	balanceTries   = 3   // of a day
	balanceMinutes = 5   // of a day, of one item, with the breaks
	balanceMet     = 2   // days on which all was held
	fallsMinutes   = 180 // a week, of the programme that has balance in it
	firstHold      = 10  // seconds
	lastHold       = 30
	stepOverHeight = 5.0 // cm

	impactSet   = 10
	mostImpacts = 50 // of a session
	impactDays  = 3
	impactRest  = 60 // seconds
	lowJump     = 4.0
	smallJump   = 8.5 // cm

	powerMet  = 2
	powerRest = 60 // seconds
	slower    = units.Fraction(0.2)

	aerobicDays  = 5
	brittleBrisk = 20  // minutes a day
	briskSteps   = 100 // a minute

	missedDays = 14
)

// IDs of the facts.
const (
	factLimits      evidence.FactID = "beside.limits"
	factStart       evidence.FactID = "beside.start"
	factFilled      evidence.FactID = "beside.filled"
	factSupport     evidence.FactID = "beside.support"
	factCompany     evidence.FactID = "beside.company"
	factHold        evidence.FactID = "beside.hold"
	factMinutes     evidence.FactID = "beside.minutes"
	factMoveOn      evidence.FactID = "beside.move-on"
	factTrouble     evidence.FactID = "beside.trouble"
	factFallsHours  evidence.FactID = "beside.falls-hours"
	factNoBrisk     evidence.FactID = "beside.no-brisk"
	factStamp       evidence.FactID = "beside.stamp-force"
	factJump        evidence.FactID = "beside.jump-force"
	factLowJump     evidence.FactID = "beside.low-jump"
	factHeelDrop    evidence.FactID = "beside.heel-drop-force"
	factHop         evidence.FactID = "beside.hop-force"
	factHopCentre   evidence.FactID = "beside.hops-not-advised"
	factJumpsAlone  evidence.FactID = "beside.jumps-alone"
	factLiftingWith evidence.FactID = "beside.lifting-with-impact"
	factNoImpact    evidence.FactID = "beside.no-impact"
	factBrittle     evidence.FactID = "beside.brittle-spine"
	factImpactSteps evidence.FactID = "beside.impact-steps"
	factRises       evidence.FactID = "beside.fast-rises"
	factLowPressure evidence.FactID = "screening.bp_lt_100_or_50" // of package screening
	factSlower      evidence.FactID = "beside.slower"
	factPowerLoad   evidence.FactID = "beside.power-load"
	factWalkStart   evidence.FactID = "beside.walk-start"
	factTalk        evidence.FactID = "beside.talk"
	factCadence     evidence.FactID = "beside.cadence"
	factPace        evidence.FactID = "beside.pace"
)

var ownFacts = [...]evidence.Fact{
	{ID: factLimits, Value: "every limit of a screening binds each item as it stands: a demand to leave out, a share of a maximum, effort, company", Basis: evidence.Design},
	{ID: factStart, Value: "balance begins free-handed on the stance that was held in the four-stage test; with one hand where nobody looked; with both where feet together was not held or a limit asks for support. One leg comes after heel to toe was held", Basis: evidence.Design},
	{ID: factFilled, Value: "rows give days, amounts, aims and the band of load; what is done, tries, seconds, counts and the order of steps are chosen here: stances from wide to narrow, then reaching, turning and stepping over, then looking round. Soft ground and closed eyes are left out", Basis: evidence.Design},
	{ID: factSupport, Value: "something firm is at hand for everyone who stands to practise", Basis: evidence.Design},
	{ID: factCompany, Value: "who is to have support, or cannot hold half-tandem, has somebody within reach and a hand on; alone both hands stay on", Basis: evidence.Design},
	{ID: factHold, Value: fmt.Sprintf("%d tries, of %d seconds at first and of %d at the end; %d to %d movements where the body moves, %d to %d steps", balanceTries, firstHold, lastHold, reachTry.count[0], reachTry.count[2], stepTry.count[0], stepTry.count[2]), Basis: evidence.Design},
	{ID: factMinutes, Value: fmt.Sprintf("about %d minutes a day for one balance item, with the breaks", balanceMinutes), Basis: evidence.Design},
	{ID: factMoveOn, Value: fmt.Sprintf("a step harder once all was done as asked, with no more support and without trouble, on %d days for balance, %d for impact, %d for power, %d for aerobic work; no published rule was found",
		balanceMet, impactDays, powerMet, aerobicDays), Basis: evidence.Design},
	{ID: factTrouble, Value: fmt.Sprintf("a step easier where less than half was done, more support was used, or for each %d days missed; back to the first step where balance was lost or on dizziness; impact and power pause there, all work after a fall, impact at pain or a leak, until somebody looked", missedDays), Basis: evidence.Design},
	{ID: factFallsHours, Value: fmt.Sprintf("programmes with balance and function of %d hours a week or more: fall rate 0.58 of that of controls (95 %% interval 0.45 to 0.76)", fallsMinutes/60), Source: "sherrington2020", Locator: "abstract", Basis: evidence.Published},
	{ID: factNoBrisk, Value: "brisk walking is not prescribed at high risk of falls; gentle walking may be added to balance work", Source: "sherrington2011", Locator: "abstract", Basis: evidence.Published},
	{ID: factStamp, Value: fmt.Sprintf("a stamp of effort %d of 10: 2.9 to %.1f body weights; of effort 8: 4.4 to 4.6, in women of 42 on average", stamps.effort, stamps.force), Source: "ryan2021", Locator: "abstract", Basis: evidence.Published},
	{ID: factJump, Value: fmt.Sprintf("%d jumps of %.1f cm on 6 days a week: %.1f body weights in women after menopause", mostImpacts, smallJump, smallJumps.force), Source: "bassey1998", Locator: "abstract", Basis: evidence.Published},
	{ID: factLowJump, Value: fmt.Sprintf("jumps begin at %.0f cm at most; no force was found for them, that of %.1f cm is said", lowJump, smallJump), Basis: evidence.Design, From: []evidence.FactID{factJump}},
	{ID: factHeelDrop, Value: fmt.Sprintf("a heel drop: %.1f body weights, in women of 42 on average; the height of the heels is bounded here by that of the jumps", heelDrops.force), Source: "heeldrop2021", Locator: "abstract", Basis: evidence.Published},
	{ID: factHop, Value: fmt.Sprintf("landings of hops: 4.0 to %.1f body weights, in women of 43 on average", hops.force), Source: "hoplandings2022", Locator: "abstract", Basis: evidence.Published},
	{ID: factHopCentre, Value: "hopping is not advised to people with osteoporosis", Source: "allison2015", Via: "page of the authors' centre", Basis: evidence.Secondary},
	{ID: factJumpsAlone, Value: "the same jumps alone had no effect on bone density after menopause, in 12 and 18 months", Source: "bassey1998", Locator: "abstract", Basis: evidence.Published},
	{ID: factLiftingWith, Value: "supervised lifting above 85 % of 1RM with impact, twice a week for 8 months: density of the spine +2.9 against -1.2 %", Source: "watson2018", Locator: "abstract", Basis: evidence.Published},
	{ID: factNoImpact, Value: "no impact with a fracture of the spine or within 6 months of any, a spine that nobody looked at in osteoporosis, unsteady stance, a leak or heaviness on landing, a limit to low impact or light effort, or while somebody is to be asked first", Basis: evidence.Design, From: []evidence.FactID{factBrittle}},
	{ID: factBrittle, Value: fmt.Sprintf("after a fracture of the spine, or several from little force: impact up to brisk walking, %d minutes a day", brittleBrisk), Source: "brookewavell2022", Via: "summary and news text", Basis: evidence.Secondary},
	{ID: factImpactSteps, Value: fmt.Sprintf("%d stamps on %d days a week, %d more a week up to %d, %d seconds after each %d; then jumps, heel drops and hops in the order of their forces, each built up likewise, with somebody present and heel to toe held; hops once one leg was held",
		impactSet, impactDays, impactSet, mostImpacts, impactRest, impactSet), Basis: evidence.Design, From: []evidence.FactID{"guideline.brookewavell2022-osteoporosis.impacts"}},
	{ID: factRises, Value: fmt.Sprintf("fast chair rises: 2 to 3 sets of 4 to 8, up fast, down in 2 to 3 seconds, %d seconds of rest, at the start of a session, from a high seat first", powerRest), Basis: evidence.Design, From: []evidence.FactID{"guideline.acsm2009-older-power.reps"}},
	{ID: factSlower, Value: fmt.Sprintf("a set ends where the rise is %v slower than the first; people of 79 on average in a care home, 40 to 65 %% of 1RM", slower), Source: "marques2020", Locator: "abstract", Basis: evidence.Published},
	{ID: factPowerLoad, Value: "loads under 50, of 50 to 69 and from 70 % of 1RM do not differ in the power gained", Source: "powerintensity2023", Locator: "abstract", Basis: evidence.Published},
	{ID: factWalkStart, Value: fmt.Sprintf("the inactive begin with 5 minutes of slow walking, several times a day, on %d or 6 days a week; then 10 minutes, 3 times a day; then faster", aerobicDays), Source: "usdhhs2018", Via: "an open textbook", Basis: evidence.Secondary},
	{ID: factTalk, Value: "moderate: one can talk and not sing; vigorous: a few words at a time", Source: "cdc_intensity", Via: "press that quotes the page", Basis: evidence.Secondary},
	{ID: factCadence, Value: fmt.Sprintf("walking at 3 METs: about %d steps a minute, from 61 to 85 years; single people differ much (70 to 114)", briskSteps), Source: "tudorlocke2021", Locator: "abstract", Basis: evidence.Published},
	{ID: factPace, Value: "minutes grow before pace, one bout of a day after another becomes brisk, none vigorous; it begins with no more brisk minutes than are done now, and while none is brisk with no more easy ones than are done now, or than three times the brisk ones", Basis: evidence.Design, From: []evidence.FactID{factWalkStart}},
}

// Facts yields the facts behind this package's choices.
func Facts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		for _, f := range ownFacts {
			if !yield(f) {
				return
			}
		}
	}
}

// rowOf returns a row of the collection; its ID is a constant that a test holds.
func rowOf(id guideline.ID) guideline.Recommendation { return units.Must(guideline.Get(id)) }

// factOf returns the fact behind a field of a row, "" where it has none.
func factOf(row guideline.Recommendation, f guideline.Field) evidence.FactID {
	id, _ := row.Fact(f)
	return id
}

package dose

import (
	"iter"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Facts of this package's own. What guidelines and equations state is listed
// by their packages.
const (
	factRest         evidence.FactID = "dose.rest"
	factDays         evidence.FactID = "dose.days"
	factReserve      evidence.FactID = "dose.start-reserve"
	factReserveBand  evidence.FactID = "dose.reserve-1-to-3"
	factUncountable  evidence.FactID = "dose.uncountable-reserve"
	factIntensity    evidence.FactID = "dose.intensity-reserve"
	factHackett      evidence.FactID = "dose.reserve-error"
	factSteps        evidence.FactID = "dose.finding-steps"
	factLookedAt     evidence.FactID = "dose.steps-looked-at"
	factMost         evidence.FactID = "dose.most"
	factShareDone    evidence.FactID = "dose.share-from-done"
	factUnknownShare evidence.FactID = "dose.share-unknown"
	factTempo        evidence.FactID = "dose.tempo"
	factHeld         evidence.FactID = "dose.held-or-walked"
	factPace         evidence.FactID = "dose.walking-pace"
	factChange       evidence.FactID = "dose.change-between-exercises"
	factGap          evidence.FactID = "dose.days-between"
	factFewerLater   evidence.FactID = "dose.fewer-later"
	factMaintain     evidence.FactID = "dose.maintain"
	factPerformed    evidence.FactID = "dose.from-performed"
	factContinued    evidence.FactID = "dose.continued"
	factTwoWeeks     evidence.FactID = "dose.familiarise-two-weeks"
	factRetest       evidence.FactID = "dose.retest"
	factExpiry       evidence.FactID = "dose.expiry"
	factWarmUp       evidence.FactID = "dose.warm-up"
	factReviewed     evidence.FactID = "dose.review-overdue"
	factTestAge      evidence.FactID = "dose.test-age"
	factQueried      evidence.FactID = "dose.queried-tests"
)

// ChangeSeconds is the time from one exercise to the next, for the length of a
// session; from memory (dose.change-between-exercises).
const ChangeSeconds = 120

const (
	aboutTen       = 10 // repetitions
	aboutThreeSets = 3
	maintainSets   = 2
	maintainDays   = 2 // a week

	// lightBand is the top of a band that counts as a light start: the curve
	// there lies far outside its studied range.
	lightBand units.Fraction = 0.5

	// uncountable is the reserve above which people misjudge by more than two.
	uncountable units.RIR = 5

	// findingSteps is how often the weight may go up in one visit.
	findingSteps = 2

	// reserveError is by how much people misjudge a reserve that they can count.
	reserveError units.RIR = 1

	// leastFirstMass is the first weight per implement of an exercise that states
	// none, where a limit on the share of a maximum holds and nothing is known.
	leastFirstMass = units.Kilogram

	walkingPace = 0.5 // metres a second, with weights
	daysBetween = 2   // from one session to the next: 48 hours

	warmUpMinutes = 5
	reviewDays    = 14 // familiarisation: two weeks
	buildDays     = 42 // from one review to the next later on
	retestDays    = 21
	expiryDays    = 56 // no plan is followed longer without a review
	testDays      = 84 // no test of strength is used longer
)

var (
	workable     = units.Must(units.Between(5, 20))   // repetitions
	heldOrWalked = units.Must(units.Between(10, 30))  // seconds or metres
	usualRest    = units.Must(units.Between(60, 120)) // seconds
	usualDays    = units.Must(units.Between(2, 3))    // a week
)

// startReserve is the least reserve by training status.
var startReserve = map[body.Training]units.RIR{body.Novice: 3, body.Intermediate: 2, body.Advanced: 1}

// intensityReserve is the least reserve under a limit on intensity.
var intensityReserve = map[screening.Intensity]units.RIR{screening.Idle: uncountable, screening.Light: uncountable, screening.Moderate: 4}

// tempo is 4 seconds a repetition, evenly up and down.
var tempo = Tempo{Lowering: 2, Lifting: 2}

var facts = []evidence.Fact{
	{ID: factRest, Value: "60 to 120 seconds between sets where a recommendation states none",
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.grgic2018-rest-untrained.rest"}},
	{ID: factDays, Value: "two to three days a week where a recommendation states none",
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.acsm2011-older-start.days"}},
	{ID: factReserveBand, Value: "1 to 3 repetitions in reserve paired with ratings of 15 to 18 on the scale from 6 to 20",
		Source: "prediabetes2021", Locator: "Table 3", Basis: evidence.Published},
	{ID: factReserve, Value: "at least 3 in reserve for a novice, 2 for an intermediate, 1 for an advanced person",
		Basis: evidence.Design, From: []evidence.FactID{factReserveBand}},
	{ID: factHackett, Value: "reserve is misjudged by about 1 repetition when 0 to 5 are left, by more than 2 when 7 to 10 are",
		Source: "hackett2017", Basis: evidence.Published},
	{ID: factUncountable, Value: "a reserve above 5 is not counted; the set ends while it is clearly easy",
		Basis: evidence.Design, From: []evidence.FactID{factHackett}},
	{ID: factIntensity, Value: "under a limit at moderate effort at least 4 in reserve, at light effort more than 5: 1 to 3 in reserve are rated as vigorous",
		Basis: evidence.Design, From: []evidence.FactID{factReserveBand}},
	{ID: factSteps, Value: "at most two steps up in weight in one visit while the load is looked for", Basis: evidence.Design},
	{ID: factLookedAt, Value: "within a visit the weight goes up only where somebody saw the technique of the exercise and somebody is at hand; alone by no step, small or large, overhead or not",
		Basis: evidence.Design},
	{ID: factMost, Value: "restrictions, a limit on the share of a maximum, a beginner's first weight until the technique was seen, and the bound of an exercise that is replaced all hold: the least of them is said with every dose", Basis: evidence.Design},
	{ID: factShareDone, Value: "without an estimate a limit on the share of 1RM is one on what the sets that were done show at the least: by the equation that gives less, on at most 10 repetitions to failure, the reserve less 1 and none above 4",
		Basis: evidence.Design, From: []evidence.FactID{"onerm.brzycki", factHackett}},
	{ID: factUnknownShare, Value: "under a limit on the share of 1RM of which nothing is known only the lightest weight is taken, and only within the first weight of the exercise, 1 kg where none is set, or the bound of one that it replaces",
		Basis: evidence.Design, From: []evidence.FactID{"exercise.first-mass-small-raise"}},
	{ID: factTempo, Value: "2 seconds down and 2 seconds up",
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.gschwind2013-beginner.rep_seconds",
			"guideline.acsm2009-strength-intermediate.lift_seconds", "guideline.acsm2009-strength-intermediate.lower_seconds"}},
	{ID: factFewerLater, Value: "fewer repetitions in a later set are acceptable", Basis: evidence.CommonPractice},
	{ID: factPerformed, Value: "looking for the load begins from a set that was really done, never above it, and lighter where more repetitions or more reserve are asked for",
		Basis: evidence.Design, From: []evidence.FactID{"onerm.epley", "onerm.brzycki"}},
	{ID: factContinued, Value: "a dose that goes on from another is never above any limit of a first one, save that a beginner's first weight binds only until the technique was seen", Basis: evidence.Design},
	{ID: factMaintain, Value: "older people keep strength with two sessions a week and two to three sets",
		Source: "spiering2021", Basis: evidence.FromMemory},
	{ID: factTwoWeeks, Value: "two weeks of familiarisation come first; then a review, and one every six weeks", Basis: evidence.Design},
	{ID: factRetest, Value: "an estimate is made anew after three weeks", Basis: evidence.Design, From: []evidence.FactID{"onerm.untrained.again"}},
	{ID: factExpiry, Value: "a plan expires after eight weeks, or when a clearance that it rests on lapses", Basis: evidence.Design},
	{ID: factReviewed, Value: "nobody is dosed on an assessment whose review is overdue", Basis: evidence.Design},
	{ID: factTestAge, Value: "a test of strength is used for twelve weeks at most, and none from before an event that ends it", Basis: evidence.Design, From: []evidence.FactID{factRetest}},
	{ID: factQueried, Value: "tests of strength are asked about and not used with a weight that the kit does not make, where one is 1.9 times another of the exercise, side and hold or more, and where two of one day have intervals that do not overlap", Basis: evidence.Design},
	{ID: factWarmUp, Value: "five minutes of easy movement before a session", Basis: evidence.Design},
	{ID: factHeld, Value: "10 to 30 seconds or metres where an exercise states no range", Basis: evidence.Design},
	{ID: factPace, Value: "0.5 metres a second when carrying, for the length of a session", Basis: evidence.Design},
	{ID: factChange, Value: "two minutes from one exercise to the next, for the length of a session",
		Source: "schoenfeld2019", Basis: evidence.FromMemory},
	{ID: factGap, Value: "at least two days from one session to the next",
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.acsm2011-older-start.hours_between"}},
}

// Facts yields the facts behind this package's own choices.
func Facts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		for _, f := range facts {
			if !yield(f) {
				return
			}
		}
	}
}

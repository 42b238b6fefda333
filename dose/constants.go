package dose

import (
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Facts of this package's own. What guidelines and equations state is listed
// by their packages.
const (
	factOlder         evidence.FactID = "dose.older-from"
	factStart         evidence.FactID = "dose.row-to-start"
	factAims          evidence.FactID = "dose.row-by-goal"
	factYoung         evidence.FactID = "dose.row-by-training"
	factRest          evidence.FactID = "dose.rest"
	factDays          evidence.FactID = "dose.days"
	factReserve       evidence.FactID = "dose.start-reserve"
	factReserveBand   evidence.FactID = "dose.reserve-1-to-3"
	factUncountable   evidence.FactID = "dose.uncountable-reserve"
	factIntensity     evidence.FactID = "dose.intensity-reserve"
	factHackett       evidence.FactID = "dose.reserve-error"
	factSteps         evidence.FactID = "dose.finding-steps"
	factLookedAt      evidence.FactID = "dose.steps-looked-at"
	factMost          evidence.FactID = "dose.most"
	factBest          evidence.FactID = "dose.band-on-best"
	factLimits        evidence.FactID = "dose.screening-limits"
	factLighter       evidence.FactID = "screening.lighter-session"
	factShareDone     evidence.FactID = "dose.share-from-done"
	factUnknownShare  evidence.FactID = "dose.share-unknown"
	factTempo         evidence.FactID = "dose.tempo"
	factFast          evidence.FactID = "dose.tempo-fast"
	factSlower        evidence.FactID = "beside.slower" // of package beside
	factHeld          evidence.FactID = "dose.held-or-walked"
	factPace          evidence.FactID = "dose.walking-pace"
	factMostMissed    evidence.FactID = "dose.most-missed"
	factFirstSeen     evidence.FactID = "dose.first-mass-seen"
	factSparing       evidence.FactID = "dose.sparing"
	factFeel          evidence.FactID = "dose.feel"
	factBreath        evidence.FactID = "dose.no-breath-holding-reserve"
	factPressure      evidence.FactID = "dose.pressure-in-long-sets"
	factReserveChance evidence.FactID = "onerm.chance.reserve"
	factFinishChance  evidence.FactID = "onerm.chance.finish"
	factAbility       evidence.FactID = "onerm.ability"
	factCredit        evidence.FactID = "onerm.ability.credit"
	factWorks         evidence.FactID = "dose.weight-that-works"
	factSold          evidence.FactID = "dose.sizes-sold"
	factFarAlone      evidence.FactID = "dose.far-alone"
	factFew           evidence.FactID = "dose.few-of-the-lightest"
	factEnds          evidence.FactID = "dose.count-ends"
	factFewerLater    evidence.FactID = "dose.fewer-later"
	factMaintain      evidence.FactID = "dose.maintain"
	factPerformed     evidence.FactID = "dose.from-performed"
	factContinued     evidence.FactID = "dose.continued"
	factReviewed      evidence.FactID = "dose.review-overdue"
	factBrief         evidence.FactID = "dose.brief"
	factBriefTrial    evidence.FactID = "choice.four-a-day" // of package choice
	factThere         evidence.FactID = "dose.what-is-there"
	factServes        evidence.FactID = "exercise.things-serve"
	factBand          evidence.FactID = "dose.band-without-mass"
	factBandOrder     evidence.FactID = "dose.band-order"
	factBandUneven    evidence.FactID = "dose.band-steps-uneven"
	factBandPrinted   evidence.FactID = "dose.band-printed-values"
	factBandReps      evidence.FactID = "dose.band-by-repetitions"
	factBandStretch   evidence.FactID = "dose.band-stretch"
)

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

	// findingSteps is how often the weight may go up in one visit, smallSteps where no
	// step is larger than smallStep of the weight held.
	findingSteps                = 2
	smallSteps                  = 4
	smallStep    units.Fraction = 0.3

	// breathReserve is the least reserve where breath must not be held.
	breathReserve units.RIR = 3

	// reserveError is by how much people misjudge a reserve that they can count.
	reserveError units.RIR = 1

	// firstSeen times a first weight is the most that a kit may begin with once the
	// technique was seen and nothing else is known.
	firstSeen = 3

	// leastFirstMass is the first weight per implement of an exercise that states
	// none, where a limit on the share of a maximum holds and nothing is known.
	leastFirstMass = units.Kilogram

	leastAtLightest                = 3    // repetitions with the lightest weight
	mostForFew      units.Fraction = 0.88 // of 1RM, for these: where one more can be done, by Epley
	fewestSparing                  = 6    // repetitions, where weights stay moderate
	mostSparing     units.Fraction = 0.8  // of 1RM, likewise
	longSet                        = 12   // repetitions: no longer set goes to its end where breath must not be held
	mostBridged                    = 25   // repetitions, where strength is known, until a far weight can be taken
	farStep         units.Fraction = 0.5  // of a weight: a next one farther than that is far
	soonGained                     = 0.15 // of the logarithm of strength, within the weeks of a plan
	seenDays                       = 28   // for so long a look at the technique counts for what is heavy
	nearlyAll       units.Fraction = 0.95 // of a weight, from which on it may be felt
	mostReserve     units.RIR      = 10   // that a chance is asked for

	walkingPace = 0.5 // metres a second, with weights
)

var (
	workable     = units.Must(units.Between(5, 20))   // repetitions
	heldOrWalked = units.Must(units.Between(10, 30))  // seconds or metres
	usualRest    = units.Must(units.Between(60, 120)) // seconds
	usualDays    = units.Must(units.Between(2, 3))    // a week
)

// startReserve is the least reserve by training status.
var startReserve = [...]units.RIR{body.Novice: 3, body.Intermediate: 2, body.Advanced: 1}

// intensityReserve is the least reserve under a limit on intensity.
var intensityReserve = [...]units.RIR{screening.Idle: uncountable, screening.Light: uncountable, screening.Moderate: 4, screening.Vigorous: 0}

// tempo is 4 seconds a repetition, evenly up and down.
var tempo = Tempo{Lowering: 2, Lifting: 2}

// fastTempo is that of lifts that train power.
var fastTempo = Tempo{Lowering: 2, Lifting: 1, Fast: true}

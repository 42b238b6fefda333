package progression

import (
	"slices"

	"example.org/posology/units/evidence"
)

// A reasonRow is all of one reason: what it rests on, and what it says.
type reasonRow struct {
	code      evidence.Code
	facts     []evidence.FactID
	client    string // empty: nothing to say
	clinician string
}

type rests = []evidence.FactID

// reasons are all that this package says, by code.
var reasons = func() map[evidence.Code]reasonRow {
	all := map[evidence.Code]reasonRow{}
	for _, table := range [...][]reasonRow{goneReasons, keptReasons, harderReasons, gateReasons} {
		for _, row := range table {
			all[row.code] = row
		}
	}
	return all
}()

// because is the reason of a code with the facts that it rests on.
func because(code evidence.Code) evidence.Reason {
	return evidence.Because(code, slices.Clone(reasons[code].facts)...)
}

// Words returns a fresh table of what this package's reasons say.
func Words() evidence.Words {
	w := evidence.Words{}
	for code, row := range reasons {
		w[code] = evidence.Wording{Client: row.client, Clinician: row.clinician}
	}
	return w
}

// goneReasons are of what is asked about, sent on, replaced or left out.
var goneReasons = []reasonRow{
	{"progression.not-in-kit", rests{factQueries}, "Please tell us which weight you used.", "Logged with {load}, which the kit does not make: ask; the set is not used."},
	{"progression.slip", rests{factQueries}, "Please tell us which weight you used.", "Logged with {load} where {planned} was planned: per hand or total, kg or lb? Ask; the set is not used."},
	{"progression.plan-ended", rests{factMedical}, "Since something has happened we would like to look at everything again first.", "Since the assessment: {event}. It ends the plan, estimates and clearances: assess anew."},
	{"progression.referred", rests{factRefer}, "Before you go on with the weights, somebody should have a look; we will tell you whom to ask. Call for help at once if it gets much worse, if you have chest pain or faint, if strength or feeling goes, or if you can no longer hold or pass water.", "The visit of {day} ended with something for somebody else to look at; no assessment has followed. Nothing is prescribed."},
	{"progression.medical-absence", rests{factMedical}, "Welcome back. Since you were ill we ask a few questions first.", "The days missed had a medical cause: assess anew; the ladder of missed time is not for this."},
	{"progression.return-assessed", rests{factMedical}, "Welcome back. We begin afresh, gently.", "{days} days away with a medical cause, assessed since: familiarisation and a new baseline."},
	{"progression.settle-first", rests{factRefer}, "Please rest a little; then we measure again.", "Settle what is open first (rest, measure again, ask); then decide."},
	{"progression.assess-anew", rests{factRefer}, "We do that together at the beginning of the next visit.", "The review of the assessment is over: it is made anew, by whoever makes assessments here, and nothing is prescribed until then. Nobody else has to look for this alone."},
	{"progression.instead", rests{factVariant}, "We change to {exercise}.", "In its place: {exercise}, from its own first dose."},
	{"progression.left-out", rests{factVariant}, "We leave {exercise} out for now.", "{exercise} is left out: nothing that is no harder can be dosed."},
	{"progression.instead-waits", rests{factOneNew}, "We leave this one out today. In its place comes {exercise}, at one of the next visits: one new exercise at a time.", "Left out at this visit: {exercise} is to take its place, and waits, since enough exercises are new at this visit."},
}

// keptReasons are of a dose that stays or is made easier.
var keptReasons = []reasonRow{
	{"progression.easier-variant", rests{factVariant}, "", "An easier variant, learnt anew."},
	{"progression.eased", rests{factGates}, "", "The gates on the last visit ask for less: no more load, a set fewer if there is one to spare, two more in reserve."},
	{"progression.above-limit", rests{factLimit}, "", "The last load, {load} each, lies above the most allowed now, {most}: the heaviest below it."},
	{"progression.recurring", rests{factVariant}, "Since it has hurt more than once we change the exercise, and look at it together.", "It spoke for less at one of the three visits before too: recurring, to be looked at."},
	{"progression.too-much", rests{factTooMuch}, "This weight was too much for now.", "The load could not be lifted as often as the range begins with: lighter, or an easier variant."},
	{"progression.fewer-reps", rests{factFit}, "", "{count} repetitions, so that the reserve asked for remains: {reserve}."},
	{"progression.lighter-for-reserve", rests{factFit}, "", "{to} instead of {from}: with {from} the reserve asked for ({reserve}) would leave fewer repetitions than the range begins with."},
	{"progression.reps-for-load", rests{factCoarse}, "", "The next lighter weight is further than that cut of the load: {count} repetitions instead, which are as much easier."},
	{"progression.lighter-day", rests{factGates}, "", "The day's check asks for a lighter session: nothing is made harder."},
	{"progression.below-three", rests{factSimplify}, "We make it a little easier.", "Three visits in a row below the dose: made easier."},
	{"progression.nothing-done", rests{factGates}, "", "No set to go by: the dose stays."},
	{"progression.tried", rests{factFindOn}, "", "A heavier weight was tried and was too much: the load stays, and repetitions come next."},
	{"progression.resumed", rests{factFindOn}, "", "After the trial the dose before it is taken up again."},
	{"progression.hold", rests{factGates}, "", "The dose stays. What keeps it: {gate}."},
	{"progression.maintain", rests{factKeepUp}, "", "Maintenance: the dose is kept, and nothing is made harder than it was."},
	{"progression.ask-first", rests{factAskFirst}, "", "Until somebody has been asked only light supervised work, or practice without weights, goes on: the dose stays."},
	{"progression.familiarising", rests{factFamiliarising}, "", "Still learning the movement: what the range and the kit allow is reached; the rest waits for the review."},
	{"progression.no-rating", rests{factOMNI}, "", "The rule goes by a rating on the scale omni, and there is none: the load is kept."},
}

// harderReasons are of what is made harder, or cannot be.
var harderReasons = []reasonRow{
	{"progression.jump", rests{factGuidance}, "", "The next weight after {from} is {to}, a step of {share}; published guidance is 2 to 10 %."},
	{"progression.one-more-set", rests{factSetsFirst}, "One set more than before.", "One set more, towards those that the plan builds up to; load and repetitions stay."},
	{"progression.more-reps", rests{factOneMore, factEasyStep, factBridgeTop}, "A little more of the same.", "{aim} with the same load, to work up to {top} before more load."},
	{"progression.find-on", rests{factFindOn, factTry}, "That still looks easy: you may try the next weight.", "Every set left more than can be counted: go on looking for the load."},
	{"progression.found", rests{factFindOn}, "", "The load was found: {load} each."},
	{"progression.shown", rests{factShown, factReserve}, "Well done: time for the next weight.", "{reps} repetitions with surely {surely} in reserve show {next} each for {count} in the reserve asked for."},
	{"progression.done-before", rests{factDoneBefore}, "Now the weight that you have used before.", "Sets with {next} each within four weeks show that it can be done; two calm visits in a row: taken."},
	{"progression.large-step", rests{factGuidance, factSmallMuscles}, "The next weight is a big step. If the first lift is not easy, put it down and take the lighter one again.", "The step is {share} of the weight held, {moved} of all that is moved; published guidance is 2 to 10 %, its lower end for small muscles."},
	{"progression.step-beside", rests{factBeside}, "The next weight is a big step. Please take it when somebody is with you.", "Alone: {next} each, {share} more in the hand and {moved} of all that is moved, is a big step. It waits for somebody at hand; until then repetitions and pace."},
	{"progression.above-beside", rests{factBeside}, "A heavier weight over you: please take it when somebody is with you.", "Alone: {next} each is more over head or face than was lifted before. It waits for somebody at hand; until then repetitions and pace."},
	{"progression.look-beside", rests{factBeside}, "We look for a heavier weight when somebody is with you.", "Alone: every set left more than can be counted, and {next} each may be tried with somebody at hand; until then repetitions and pace."},
	{"progression.step-in-hand", rests{factGuidance, factSmallMuscles}, "", "The step is {share} of the weight held and {moved} of all that is moved; published guidance is 2 to 10 %, its lower end for small muscles."},
	{"progression.above-range", rests{factBridgeTop, factGuidance}, "", "{count} repetitions lie above the guideline's {range} for the goal {goal}: a bridge to the next weight. One above {from} and up to {up to} would make it needless."},
	{"progression.note-effort", rests{factGates}, "Please note after each set how many more you could have done.", "Effort was not recorded for every set: at most repetitions go up, within the guideline's range."},
	{"progression.note-pain", rests{factGates}, "Please note whether anything hurt, then and the next morning.", "Pain was not recorded in full (during, after, next morning, trend): the dose is kept."},
	{"progression.note-range", rests{factGates}, "Please note whether it moves as far as before.", "Range of movement was not recorded: the dose is kept."},
	{"progression.note-signs", rests{factGates}, "Please note whether anything else showed during the sets.", "What showed during the sets was not recorded: the dose is kept."},
	{"progression.show-technique", rests{factGates}, "Please show us the movement next time; then we can go further.", "Nobody has seen the technique within four weeks: at most repetitions go up."},
	{"progression.more-reserve", rests{factShown}, "", "{reps} repetitions are reached; more left in reserve would show {next}."},
	{"progression.limit", rests{factLimit}, "This is the most weight for you for now.", "The next weight, {next} each, lies above the most allowed, {most}: repetitions within the range, nothing further."},
	{"progression.variant-waits", rests{factOneNew}, "Something new comes at one of the next visits: one new exercise at a time.", "A harder variant, {exercise}, waits: enough exercises are new at this visit. The dose stays."},
	{"progression.no-variant", rests{factVariant}, "", "A harder variant, {exercise}, cannot be dosed."},
	{"progression.two-rise", rests{factTwoRises}, "", "Two other loads rise at this visit: this one waits."},
	{"progression.slower", rests{factSlower}, "Now lower the weight more slowly: count to four.", "The next weight is too far for repetitions: slower lowering, four seconds; fewer repetitions, so that a set stays about as long."},
	{"progression.pause", rests{factPause}, "Now pause for two seconds before you lift.", "A pause of two seconds before lifting; fewer repetitions, so that a set stays about as long."},
	{"progression.extra-set", rests{factExtraSet}, "Now one more set.", "One set more, up to the guideline's most; repetitions from the bottom of the range."},
	{"progression.kit-ends", rests{factKitEnds}, "There is no heavier weight for you here.", "The kit has nothing heavier, and pace, sets and variants are used up: held. A heavier weight would let it go on."},
	{"progression.too-far", rests{factKitEnds}, "The next weight is still too far. A weight in between would help.", "The next weight, {next}, is {share} more: nothing that was done shows it, and pace, sets and variants are used up. Held; a weight in between would let it go on."},
}

// gateReasons are of the gates.
var gateReasons = []reasonRow{
	{"progression.below-dose", rests{factGates}, "", "Below the dose: sets {sets} of {planned}, repetitions of the weakest {fewest} of {count}."},
	{"progression.below-top", rests{factTopOfRange, factGates}, "", "The weakest set reached {fewest} of {top}: repetitions before load."},
	{"progression.event", rests{factGates}, "Something showed during the sets: we look at that first.", "During the sets: {signs}; {action}; route: {route}."},
	{"progression.form-lost", rests{factGates}, "No more weight until the movement feels steady.", "The technique gave way: the load is kept."},
	{"progression.gate-not-known", rests{factGates}, "", "Not recorded, or not enough: {gate}. What is not known keeps the load."},
	{"progression.gate-passed", nil, "", "Nothing against more load from: {gate}."},
	{"progression.gates", rests{factGates}, "", "Events, pain, range, technique, effort, repetitions, in this order; the most cautious decides: {advice}."},
	{"progression.one-more", rests{factOneMore}, "Next time, try one more.", "Aim at {aim} next time with the same load: one more than in the weakest set."},
	{"progression.other-load", rests{factGates}, "", "Done with {done} instead of {asked}: nothing is concluded from it."},
	{"progression.pain", rests{factZones, factGates}, "We go by how it feels, and make it easier if it hurts.", "Pain during or right after: {zone}, by the pain-monitoring model."},
	{"progression.pain-other", rests{factGates}, "We would like somebody to look at this pain first.", "Pain of a kind that the pain model is never used for: {kind}."},
	{"progression.range-lost", rests{factPerry, factGates}, "Since it moves less far than before, we make it easier.", "Range of movement was lost since the visit before: eased."},
	{"progression.rated-hard", rests{factOMNI, factGates}, "", "A set was rated as hard or went to failure ({effort}): the load is kept."},
	{"progression.sore", rests{factGates}, "", "Sore for {days} days after the visit, past the usual peak: the load is kept."},
	{"progression.unwell-then", rests{factGates}, "", "Unwell at the visit: nothing is concluded from it."},
	{"progression.too-near-failure", rests{factGates}, "Please stop a little earlier next time.", "A set ended with {left} in reserve, {asked} were asked for: the load is kept."},
}

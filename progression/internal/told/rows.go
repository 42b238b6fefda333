package told

import "example.org/posology/progression/internal/say"

// Reasons are all that package progression says, made anew.
func Reasons() say.Reasons { return say.All(gone, kept, harder) }

// gone are of what is asked about, sent on, replaced or left out.
var gone = []say.Row{
	say.That("progression.plan-ended", say.Rests{Medical}, "Since something has happened we would like to look at everything again first.", "Since the assessment: {event}. It ends the plan, estimates and clearances: assess anew."),
	say.That("progression.referred", say.Rests{Refer}, "Before you go on with the weights, somebody has to look at what came up. Call for help at once if it gets much worse, if you have chest pain or faint, if strength or feeling goes, or if you can no longer hold or pass water.", "The visit of {day} ended with something for somebody else to look at, and nobody is known to have. Nothing is prescribed until somebody has and the person is assessed anew."),
	say.That("progression.looked-at", say.Rests{Refer}, "No exercise until we have asked you everything once more.", "What came up on {day} was looked at by {who}; nothing is prescribed until an assessment has followed."),
	say.That("progression.medical-absence", say.Rests{Medical}, "Welcome back. Since you were ill we ask a few questions first; please wait with the exercises until then.", "The days missed had a medical cause: assess anew; the ladder of missed time is not for this."),
	say.That("progression.return-assessed", say.Rests{Medical}, "Welcome back. We begin afresh, gently.", "{days} days away with a medical cause, assessed since: familiarisation and a new baseline, with no more than the last rung of the ladder."),
	say.That("progression.settle-first", say.Rests{Refer}, "First we settle what is still open today.", "Settle what is open first (rest, measure again, ask); then decide."),
	say.That("progression.assess-anew", say.Rests{Refer}, "We do that together at the beginning of the next visit.", "The review of the assessment is over: it is made anew, by whoever makes assessments here, and nothing is prescribed until then. Nobody else has to look for this alone."),
	say.That("progression.instead", say.Rests{Variant}, "We change to {exercise}.", "In its place: {exercise}, from its own first dose."),
	say.That("progression.left-out", say.Rests{Variant}, "We leave {exercise} out for now.", "{exercise} is left out: nothing that is no harder, and not there already, can be dosed."),
	say.That("progression.instead-waits", say.Rests{OneNew}, "We leave this one out today. In its place comes {exercise}, at one of the next visits: one new exercise at a time.", "Left out at this visit: {exercise} is to take its place, and waits, since enough exercises are new at this visit."),
}

// kept are of a dose that stays or is made easier.
var kept = []say.Row{
	say.That("progression.easier-variant", say.Rests{Variant}, "", "An easier variant, learnt anew."),
	say.That("progression.eased", say.Rests{Gates}, "", "The gates on the last visit ask for less: no more load, a set fewer if there is one to spare, two more in reserve; where none is counted and no set is to spare, a lighter weight."),
	say.That("progression.above-limit", say.Rests{Limit}, "", "The last load, {load} each, lies above the most allowed now, {most}: the heaviest below it."),
	say.That("progression.few-for-limit", say.Rests{Limit}, "", "The last dose had fewer repetitions than screening asks for in a set: as many with a lighter weight, or an easier variant."),
	say.That("progression.recurring", say.Rests{Variant}, "Since it has hurt more than once we look at it together.", "It spoke for less at one of the three visits before too: recurring, to be looked at."),
	say.That("progression.too-much", say.Rests{TooMuch}, "This was too much for now.", "A set could not be done often enough even to failure: lighter, or an easier variant."),
	say.That("progression.too-few", say.Rests{Fit, Variant}, "This weight is too much for now.", "The lightest weight leaves fewer repetitions in the reserve asked for than a set is worth: an easier variant."),
	say.That("progression.fewer-reps", say.Rests{Fit}, "Not more in a set than stands here, so that some are left.", "Repetitions: {count}, so that the reserve asked for remains: {reserve}."),
	say.That("progression.lighter-for-reserve", say.Rests{Fit}, "", "{to} instead of {from}: with {from} the reserve asked for ({reserve}) would leave fewer repetitions than the range begins with."),
	say.That("progression.reps-for-load", say.Rests{Coarse}, "", "No lighter weight is as near as that cut of the load: {count} a set, which makes up for it."),
	say.That("progression.return-kept", say.Rests{Return}, "After the break we go on with the same, and no more for now.", "{days} days since it was last done. The ladder, which has no published source, would take {load} of the load and {sets} of the sets; nothing is left to take."),
	say.That("progression.set-for-load", say.Rests{Least}, "", "No lighter weight is as near as that cut of the load, and fewer repetitions than screening asks for in a set would make up for it: one set of {count}."),
	say.That("progression.lighter-day", say.Rests{Gates}, "", "The day's check asks for a lighter session: nothing is made harder."),
	say.That("progression.below-three", say.Rests{Simplify}, "We make it a little easier.", "Three visits in a row below the dose: made easier."),
	say.That("progression.nothing-done", say.Rests{Gates}, "", "No set to go by: nothing is made harder."),
	say.That("progression.tried", say.Rests{FindOn}, "", "A heavier weight was tried and was too much: the load stays, and repetitions come next."),
	say.That("progression.resumed", say.Rests{FindOn}, "", "After the trial the dose before it is taken up again."),
	say.That("progression.not-tried", say.Rests{Try, Feel}, "You did not try the heavier weight. Was there a reason? Please tell us; we leave it for now.", "A heavier weight was to be tried or felt, was not, and what was done was easy: ask why. It is left for {visits} visits."),
	say.That("progression.try-missing", say.Rests{Try}, "To go on, please try the next weight when somebody is with you, or tell us what speaks against it.", "All of it is easy, and only a try of {next} each would show that it can be used: it was offered within the last {visits} visits and not taken, and is offered again after them. Ask what keeps it."),
	say.That("progression.same-told", say.Rests{Unlike}, "", "At {visits} visits running every set told {left} left, though load and repetitions did not come to the same: what is told may not be what is left. Watch a set, and ask how it is judged; the dose goes by what was told."),
	say.That("progression.far-below", say.Rests{Unlike}, "", "What the last visit told comes to less than half of what was lifted within {days} days before: one of them may be a slip, or a sign of something else. Ask, and look at it; the dose goes by what was told."),
	say.That("progression.hold", say.Rests{Gates}, "", "Nothing is made harder. What keeps it: {gate}."),
	say.That("progression.maintain", say.Rests{KeepUp}, "", "Maintenance: the dose is kept, and nothing is made harder than it was."),
	say.That("progression.ask-first", say.Rests{AskFirst}, "", "Until somebody has been asked only light supervised work, or practice without weights, goes on: the dose stays."),
	say.That("progression.familiarising", say.Rests{Familiarising}, "", "Still learning the movement: what the range and the kit allow is reached; the rest waits for the review."),
	say.That("progression.no-rating", say.Rests{OMNI}, "", "The rule goes by a rating on the scale omni, and there is none: the load is kept."),
}

// harder are of what is made harder, or cannot be.
var harder = []say.Row{
	say.That("progression.jump", say.Rests{Guidance}, "", "The next weight after {from} is {to}, a step of {share}; published guidance is 2 to 10 %."),
	say.That("progression.one-more-set", say.Rests{SetsFirst}, "One set more than before.", "One set more, towards those that the plan builds up to; nothing else is made harder."),
	say.That("progression.more-reps", say.Rests{EasyStep, BridgeTop}, "The same as before, and a little more of it if that comes easily.", "Up to {aim} with the same load, ended by the reserve; {top} at most."),
	say.That("progression.more-of-it", say.Rests{EasyStep}, "The same as before, and a little more of it if that comes easily.", "Up to {aim} with the same load, {top} at most, as long as it is not hard."),
	say.That("progression.find-on", say.Rests{FindOn, Try}, "That still looks easy: you may try the next weight.", "Every set left more than can be counted, or was rated as easy: go on looking for the load, from the bottom of the range."),
	say.That("progression.feel", say.Rests{Feel}, "In one set you feel the next weight, with somebody beside you. Put it down as soon as it is not easy.", "One set feels {next} each, {count} lifts: it lies far ahead, and nothing lighter shows it."),
	say.That("progression.found", say.Rests{FindOn}, "", "The load was found: {load} each."),
	say.That("progression.shown", say.Rests{Shown, Reserve}, "Well done: time for the next weight.", "All that was done shows {next} each: the chance that doses are kept to allows up to {count} of it in the reserve asked for."),
	say.That("progression.done-before", say.Rests{DoneBefore}, "Now the weight that you have used before.", "Sets with {next} each within four weeks show that it can be done; two calm visits in a row: taken."),
	say.That("progression.rated-twice", say.Rests{RatedTwice}, "Well done: time for the next weight.", "Two visits running at the top of the range, no set rated as hard: {next} each, from the bottom of the range."),
	say.That("progression.steps-at-once", say.Rests{Shown, Between}, "", "From {from} to {to} at once, a step of {share}: all that was done shows the weights between, and the step is of the published size."),
	say.That("progression.passed-over", say.Rests{Shown, Between}, "We pass over the {passed} weight: the one after it fits better now.", "To {to}, past {passed}: with that {count} are allowed at once, the whole range, and nothing would be left to work through; of all that is moved the step is small."),
	say.That("progression.large-step", say.Rests{Guidance, SmallMuscles}, "The next weight is a big step. If the first lift is not easy, put it down and take the lighter one again.", "The step is {share} of the weight held (of all that is moved: {moved}); published guidance is 2 to 10 %, its lower end for small muscles."),
	say.That("progression.step-beside", say.Rests{Beside}, "The next weight is a big step. Please take it when somebody is with you.", "Alone: {next} each is a big step, {share} more in the hand (of all that is moved: {moved}). It waits for somebody at hand; until then repetitions and pace."),
	say.That("progression.above-beside", say.Rests{Beside}, "A heavier weight over you: please take it when somebody is with you.", "Alone: {next} each is more over head or face than was lifted before. It waits for somebody at hand; until then repetitions and pace."),
	say.That("progression.look-beside", say.Rests{Beside}, "We look for a heavier weight when somebody is with you.", "Alone: every set left more than can be counted, and {next} each may be tried with somebody at hand; until then repetitions and pace."),
	say.That("progression.step-in-hand", say.Rests{Guidance, SmallMuscles}, "", "The step is {share} of the weight held and {moved} of all that is moved; published guidance is 2 to 10 %, its lower end for small muscles."),
	say.That("progression.above-range", say.Rests{BridgeTop, Guidance}, "", "{count} repetitions lie above the guideline's {range} for the goal {goal}, as no heavier weight is near: the kit has none above {from} and up to {up to}, within a published step."),
	say.That("progression.note-effort", say.Rests{Gates}, "Please note after each set how many more you could have done.", "Effort was not recorded for every set: at most repetitions go up, within the guideline's range."),
	say.That("progression.note-pain", say.Rests{Gates}, "Please note whether anything hurt, then and the next morning.", "Pain was not recorded in full (during, after, next morning, trend): the dose is kept."),
	say.That("progression.note-range", say.Rests{Gates}, "Please note whether it moves as far as before.", "Range of movement was not recorded: the dose is kept."),
	say.That("progression.note-signs", say.Rests{Gates}, "Please note whether anything else showed during the sets.", "What showed during the sets was not recorded: the dose is kept."),
	say.That("progression.rate-effort", say.Rests{Gates}, "Please note after each set how hard it was, from 0 to 10.", "How hard it was, of 10, was not recorded for every set: at most seconds or metres go up, within the range."),
	say.That("progression.show-technique", say.Rests{Gates}, "Please show us the movement next time; then we can go further.", "Nobody has seen the technique within four weeks: at most repetitions go up."),
	say.That("progression.as-allowed", say.Rests{Shown}, "This weight for now: when the sets end easier there will be more.", "The chance that doses are kept to allows {count} of {load} each: no more of either until sets end with more in reserve."),
	say.That("progression.set-nearest", say.Rests{Fit}, "This weight for now: when the sets end easier there will be more.", "{count} for now: no more until every set leaves the reserve asked for with more than that."),
	say.That("progression.range-ends", say.Rests{BridgeTop, Limit}, "Fewer in a set than before: that is meant so.", "{count} a set, where the range ends now: more only bridge to a weight that is neither shown yet nor forbidden."),
	say.That("progression.more-reserve", say.Rests{Shown}, "", "{next} waits: what was done does not show it. More left in reserve would, or would lead to a set in which it is felt; after it was eased two calm visits come first."),
	say.That("progression.limit", say.Rests{Limit}, "This is the most weight for you for now.", "The next weight, {next} each, lies above the most allowed, {most}: repetitions within the range, nothing further."),
	say.That("progression.variant-waits", say.Rests{OneNew}, "Something new comes at one of the next visits: one new exercise at a time.", "A harder variant, {exercise}, waits: enough exercises are new at this visit. The dose stays."),
	say.That("progression.no-variant", say.Rests{Variant}, "", "A harder variant, {exercise}, cannot be dosed."),
	say.That("progression.two-rise", say.Rests{TwoRises}, "", "Two other loads rise at this visit: this one waits."),
	say.That("progression.slower", say.Rests{Slower}, "Now lower the weight more slowly: count to four.", "The next weight is too far for repetitions: slower lowering, four seconds; fewer repetitions, so that a set stays about as long."),
	say.That("progression.pause", say.Rests{Pause}, "Now pause for two seconds before you lift.", "A pause of two seconds before lifting; fewer repetitions, so that a set stays about as long."),
	say.That("progression.extra-set", say.Rests{ExtraSet}, "Now one more set.", "One set more, up to the guideline's most; repetitions from the bottom of the range."),
	say.That("progression.kit-ends", say.Rests{KitEnds}, "There is no heavier weight for you here.", "The kit has nothing heavier, and pace, sets and variants are used up: held. A heavier weight would let it go on."),
	say.That("progression.ladder-ends", say.Rests{KitEnds}, "This is as far as this exercise goes here: keep it up.", "The range is worked through, and pace, sets and variants are used up: held."),
	say.That("progression.once-more", say.Rests{RatedTwice}, "", "{next} each is next after two visits running at the top of the range, no set rated as hard."),
	say.That("progression.tried-lately", say.Rests{Try}, "", "{next} each was tried within the last {visits} visits and could not be done as asked: later again."),
	say.That("progression.too-far", say.Rests{KitEnds}, "The next weight is still too far. A weight in between would help.", "The next weight, {next}, is {share} more: nothing that was done shows it, and pace, sets and variants are used up. Held; a weight in between would let it go on."),
}

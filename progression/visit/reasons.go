package visit

import (
	"sync"

	"example.org/posology/progression/internal/say"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// reasons are all that this package says.
var reasons = say.All(visitReasons)

func because(code evidence.ReasonCode) evidence.Reason { return reasons.Because(code) }

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(reasons.Words())) })

// visitReasons are of the gates and of doubtful sets.
var visitReasons = []say.Row{
	say.That("progression.below-dose", say.Rests{factGates}, "", "Below the dose: sets {sets} of {planned}, of one-sided work on the side with fewer; repetitions of the weakest {fewest} of {count}."),
	say.That("progression.below-top", say.Rests{factTopOfRange, factGates}, "", "The weakest set reached {fewest} of {top}: the whole range before load."),
	say.That("progression.event", say.Rests{factGates}, "Something showed during the sets: we look at that first.", "During the sets: {signs}; {action}; route: {route}."),
	say.That("progression.form-lost", say.Rests{factGates}, "No more weight until the movement feels steady.", "The technique gave way: the load is kept."),
	say.That("progression.gate-not-known", say.Rests{factGates}, "", "Not recorded, or not enough: {gate}. What is not known keeps the load."),
	say.That("progression.gate-passed", nil, "", "Nothing against more load from: {gate}."),
	say.That("progression.gates", say.Rests{factGates}, "", "Events, pain, range, technique, effort, repetitions, in this order; the most cautious decides: {advice}."),
	say.That("progression.help-now", say.Rests{factGates}, "Please call the emergency services now (112 in Europe, elsewhere the number for emergencies there) about what came up, unless a doctor has seen you since. No exercise until then.", "CALL FOR HELP NOW, unless somebody has looked since: {what}, on {day}."),
	say.That("progression.hurt-in-another", say.Rests{factHurt, factGates}, "This stays as it was for now, since another exercise with a movement like this one hurt last time.", "Pain in another exercise of the visit with the same kind of movement: {exercise}. The dose is held."),
	say.That("progression.see-today", say.Rests{factGates}, "Please see a doctor today about what came up. Call the emergency services at once (112 in Europe, elsewhere the number for emergencies there) if it comes again or gets worse. No exercise until somebody has looked.", "TO BE SEEN TODAY: {what}, on {day}."),
	say.That("progression.look-first", say.Rests{factGates}, "Somebody has to look at what came up first. No exercise until then.", "TO BE LOOKED AT FIRST: {what}, on {day}."),
	say.That("progression.one-more", say.Rests{factOneMore}, "Next time, try one more.", "Aim at {aim} next time with the same load: one more than in the weakest set."),
	say.That("progression.other-load", say.Rests{factGates}, "", "Done with {done} instead of {asked}: nothing is concluded from it."),
	say.That("progression.pain", say.Rests{factZones, factGates}, "We go by how it feels, and make it easier if it hurts.", "Pain during or right after: {zone}, by the pain-monitoring model."),
	say.That("progression.pain-back", say.Rests{factGates}, "The pain in your back is new: please ask your doctor about it before you go on.", "New back pain, with osteoporosis or a spine that broke: a fracture of the spine is to be ruled out first."),
	say.That("progression.pain-other", say.Rests{factGates}, "We would like somebody to look at the pain from your training first.", "Pain of a kind that the pain model is never used for: {kind}."),
	say.That("progression.range-lost", say.Rests{factPerry, factGates}, "Since it moves less far than before, we go easy on it.", "Range of movement was lost since the visit before: eased."),
	say.That("progression.rated-hard", say.Rests{factOMNI, factGates}, "", "A set was rated as hard or went to failure ({effort}): the load is kept."),
	say.That("progression.sore", say.Rests{factGates}, "", "Sore for {days} days after the visit, past the usual peak: the load is kept."),
	say.That("progression.unwell-then", say.Rests{factGates}, "", "Unwell at the visit: nothing is concluded from it."),
	say.That("progression.too-near-failure", say.Rests{factGates}, "Please stop a little earlier next time.", "A set ended with {left} in reserve, {asked} were asked for: the load is kept."),
	say.That("progression.not-in-kit", say.Rests{factQueries}, "Please tell us which weight you used.", "Logged with {load}, which the kit does not make: ask; the set is not used."),
	say.That("progression.slip", say.Rests{factQueries}, "Please tell us which weight you used.", "Logged with {load} where {planned} was planned: per hand or total, kg or lb? Ask; the set is not used."),
}

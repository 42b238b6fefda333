package exercise

import (
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// counting is what a dose of an exercise counts, and how much of it works.
type counting uint8

const (
	inSets    counting = iota // repetitions, the usual range
	smallLift                 // repetitions of a small raise of the shoulder
	held                      // seconds
	marched                   // seconds
	walked                    // metres
)

var countings = [...]struct {
	measure DoseUnit
	count   units.Range[int]
	fact    evidence.FactID
}{
	inSets:    {Repetitions, units.Must(units.Between(5, 20)), FactCountSets},
	smallLift: {Repetitions, units.Must(units.Between(12, 20)), "exercise.count-small-raise"},
	held:      {Seconds, units.Must(units.Between(10, 30)), "exercise.count-held"},
	marched:   {Seconds, units.Must(units.Between(20, 60)), "exercise.count-marched"},
	walked:    {Metres, units.Must(units.Between(10, 30)), "exercise.count-walked"},
}

// firstWeight is a beginner's first weight per implement.
type firstWeight uint8

const (
	noFirstWeight firstWeight = iota
	raiseFirst                // small raises of the shoulder, in each hand
	hingeFirst                // hinges, in each hand
	hingeOneFirst             // a hinge with one dumbbell
)

var firstWeights = [...]struct {
	mass units.Range[units.Mass]
	fact evidence.FactID
}{
	raiseFirst:    {units.Must(units.Between(units.Kilogram/2, units.Kilogram)), "exercise.first-mass-small-raise"},
	hingeFirst:    {units.Must(units.Between(units.Kilogram, 2*units.Kilogram)), "exercise.first-mass-hinge"},
	hingeOneFirst: {units.Must(units.Between(units.Kilogram, 2*units.Kilogram)), "exercise.first-mass-hinge-one"},
}

// FactCountSets is what doses rest on where a guideline is silent: three sets,
// ten repetitions, workable from five to twenty. A choice of this module.
const FactCountSets evidence.FactID = "exercise.count-sets"

// Facts that rows name beside their own.
const (
	factHeldWeight        evidence.FactID = "exercise.held-weight"
	factBorne             evidence.FactID = "exercise.weight-borne"
	factMovesBody         evidence.FactID = "exercise.moves-body"
	factMovesBodyHinge    evidence.FactID = "exercise.moves-body-hinge"
	factMovesBodyUnloaded evidence.FactID = "exercise.moves-body-unloaded"
	factPerSide           evidence.FactID = "exercise.sets-per-side"
	factHeaviest          evidence.FactID = "exercise.heaviest-two-handed-squat"
	factStraightBack      evidence.FactID = "exercise.hinge-straight-back"
	factPainEnds          evidence.FactID = "exercise.pain-ends-exercise"
	factHingePain         evidence.FactID = "exercise.back-or-leg-pain-ends-hinge"
	factHingeKnees        evidence.FactID = "exercise.hinge-knees"
	factStartHelp         evidence.FactID = "exercise.overhead-start-needs-help"
	factChairHeight       evidence.FactID = "exercise.weight-from-chair-height"
	factFloorReach        evidence.FactID = "exercise.weight-within-reach"
	factRackHeight        evidence.FactID = "exercise.bar-from-rack"
	factBandCheck         evidence.FactID = "exercise.band-looked-over"
	factKettlebell        evidence.FactID = "exercise.kettlebell-alike"
)

// tradeFacts are what the trade does and what this module chose.
var tradeFacts = []evidence.Fact{
	{ID: FactCountSets, Basis: evidence.Design,
		Value: "where no recommendation states them, 3 sets and 10 repetitions, the middle of 2 to 4 and of 8 to 12; a set is planned with " + countings[inSets].count.String()},
	{ID: countings[smallLift].fact, Basis: evidence.Design,
		Value: "small raises of the shoulder are done with " + countings[smallLift].count.String() + " repetitions, so that the weight is light"},
	{ID: countings[held].fact, Basis: evidence.Design,
		Value: "a position is held for " + countings[held].count.String() + " seconds"},
	{ID: countings[marched].fact, Basis: evidence.Design,
		Value: "marching on the spot lasts " + countings[marched].count.String() + " seconds"},
	{ID: countings[walked].fact, Basis: evidence.Design,
		Value: "a weight is carried for " + countings[walked].count.String() + " metres"},
	{ID: firstWeights[raiseFirst].fact, Basis: evidence.Design,
		Value: "a beginner's small raise of the shoulder takes " + firstWeights[raiseFirst].mass.String() + " per hand"},
	{ID: firstWeights[hingeFirst].fact, Basis: evidence.Design,
		Value: "until the technique is sound a hip hinge takes " + firstWeights[hingeFirst].mass.String() + " per hand"},
	{ID: firstWeights[hingeOneFirst].fact, Basis: evidence.Design, From: []evidence.FactID{firstWeights[hingeFirst].fact},
		Value: "a hip hinge with one dumbbell takes " + firstWeights[hingeOneFirst].mass.String() + " at first, no more than one with two takes in each hand"},
	{ID: factHeldWeight, Basis: evidence.Design,
		Value: "a weight in the hand loads wrist, elbow and shoulder in every exercise, even where it only hangs"},
	{ID: factBorne, Basis: evidence.CommonPractice,
		Value: "a weight on the lap or the hips is borne by them; the hands only steady it"},
	{ID: factMovesBody, Basis: evidence.CommonPractice,
		Value: "squats, steps, push-ups, calf raises and raises with a long arm lift the body or a limb besides the weight"},
	{ID: factMovesBodyHinge, Basis: evidence.Design, From: []evidence.FactID{factMovesBody},
		Value: "a hinge and a bridge are counted among the exercises that lift the body: the trunk or the hips rise with the weight"},
	{ID: factMovesBodyUnloaded, Basis: evidence.CommonPractice,
		Value: "without a weight only the body and its limbs are lifted"},
	{ID: factPerSide, Basis: evidence.CommonPractice, Value: "work of one side at a time counts its sets per side"},
	{ID: factHeaviest, Basis: evidence.CommonPractice,
		Value: "legs lift more than arms: a squat with one dumbbell in both hands begins with no less than any other dumbbell of the session"},
	{ID: factStraightBack, Basis: evidence.Design,
		Value: "a hinge with a straight back loads the spine and does not count as bending it under load; done with a bent back it would"},
	{ID: factPainEnds, Basis: evidence.CommonPractice,
		Value: "pain, as opposed to the effort of muscles, ends an exercise"},
	{ID: factHingePain, Basis: evidence.CommonPractice, Value: "back pain, or pain down the leg, ends the hinge"},
	{ID: factHingeKnees, Basis: evidence.CommonPractice,
		Value: "in a hip hinge the knees stay a little bent"},
	{ID: factStartHelp, Basis: evidence.CommonPractice,
		Value: "lifting heavy dumbbells to where an overhead press starts needs help"},
	{ID: factChairHeight, Basis: evidence.Design,
		Value: "weights are taken from and put back on something as high as a chair, so that the exercise asks for no lift from the floor"},
	{ID: factFloorReach, Basis: evidence.Design,
		Value: "for work on the floor the weights are put within reach before the person gets down, or handed over"},
	{ID: factRackHeight, Basis: evidence.CommonPractice,
		Value: "a bar that does not start from the floor is taken from a rack, with catches at a height where it can be left"},
	{ID: factKettlebell, Basis: evidence.Design,
		Value: "a kettlebell does as a dumbbell where the weight hangs, rests against the chest or is walked with: sit-to-stand, goblet squat, hinge, row and carry; it is not pressed, raised or held over the face"},
	{ID: factBandCheck, Basis: evidence.CommonPractice,
		Value: "a band is looked over for cracks before use and fixed to something that does not give way"},
}

// Facts yields the facts behind the standard catalogue: the muscles of the
// listed exercises, those of variants that the list lacks, the demands of each
// exercise, the facts of the trade, the shares of body mass that are lifted, and
// what has to be there.
func Facts() iter.Seq[evidence.Fact] {
	list := slices.Collect(listedFacts())
	for _, l := range ladders() {
		for _, r := range l.rungs {
			list = append(list, r.ownFacts()...)
		}
	}
	return slices.Values(slices.Concat(list, tradeFacts, movedFacts(), needFacts()))
}

// ownFacts are the facts about this row alone: its demands, and its muscles
// where they are those of the nearest listed exercise.
func (r rung) ownFacts() []evidence.Fact {
	f := evidence.Fact{ID: r.demandFact(), Basis: evidence.CommonPractice,
		Value: r.name + " asks for: " + r.demands.String()}
	if r.weighsOnHands() {
		f.Value += ", beside holding a weight"
	}
	if r.chosen {
		f.Basis = evidence.Design
	}
	facts := []evidence.Fact{f}
	if !r.nearest {
		return facts
	}
	for _, m := range find(r.muscles) {
		facts = append(facts, evidence.Fact{
			ID: r.workFact(m.muscle), Basis: evidence.Computed, From: []evidence.FactID{listedFact(r.muscles, m.muscle)},
			Value: m.muscle.String() + " works in the " + r.name + " as " + m.role.String() + ", as in the " + r.muscles,
		})
	}
	return facts
}

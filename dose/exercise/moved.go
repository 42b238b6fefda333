package exercise

import (
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// movedShare is the share of body mass that some exercises lift beside what is
// held. No share was found published: each is a choice, read off what moves.
type movedShare struct {
	share     units.Range[units.Fraction]
	fact      evidence.FactID
	why       string
	exercises []ID
}

func share(min, max units.Fraction) units.Range[units.Fraction] {
	return units.Must(units.Between(min, max))
}

var movedShares = []movedShare{
	{share(.80, 1), "exercise.moved-share-squat", "squats, lunges and steps lift all of the body but the lower legs and feet", []ID{
		"sit-to-stand", "dumbbell-sit-to-stand", "goblet-squat", "dumbbell-squat", "bodyweight-squat", "barbell-back-squat", "barbell-front-squat",
		"dumbbell-split-squat", "bodyweight-split-squat", "rear-foot-elevated-split-squat", "dumbbell-rear-foot-elevated-split-squat",
		"step-up", "dumbbell-step-up", "lateral-step-up", "dumbbell-lateral-step-up", "step-down",
		"bodyweight-forward-lunge", "dumbbell-forward-lunge", "bodyweight-reverse-lunge", "dumbbell-reverse-lunge",
		"bodyweight-side-lunge", "dumbbell-side-lunge",
	}},
	{share(.90, 1), "exercise.moved-share-heel-raise", "raises of the heels in standing lift all of the body but the feet", []ID{
		"standing-calf-raise", "dumbbell-calf-raise", "two-dumbbell-calf-raise", "machine-calf-raise", "single-leg-heel-raise", "dumbbell-single-leg-heel-raise",
		"heel-drop-knee-straight", "loaded-heel-drop-knee-straight", "heel-drop-knee-bent", "loaded-heel-drop-knee-bent",
	}},
	{share(.90, 1), "exercise.moved-share-hang", "pull-ups and chin-ups lift all of the body but the hands and forearms", []ID{"chin-up", "pull-up"}},
}

// movedBy returns the share that the exercise lifts and its fact, zero if none
// is stated.
func movedBy(id ID) (units.Range[units.Fraction], evidence.FactID) {
	for _, m := range movedShares {
		if slices.Contains(m.exercises, id) {
			return m.share, m.fact
		}
	}
	return units.Range[units.Fraction]{}, ""
}

// movedFacts lists the facts behind the shares.
func movedFacts() []evidence.Fact {
	var facts []evidence.Fact
	for _, m := range movedShares {
		facts = append(facts, evidence.Fact{ID: m.fact, Basis: evidence.Design,
			Value: m.why + ", taken as " + m.share.String() + " of body mass"})
	}
	return facts
}

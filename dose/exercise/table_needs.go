package exercise

import (
	"slices"
	"strings"

	"example.org/posology/units/evidence"
)

// factServes says what a thing serves as beside itself.
const factServes evidence.FactID = "exercise.things-serve"

// needs are the exercises for which each thing has to be there, as their lines for
// the client say. The seats, pads and frames of machines belong to the machine.
var needs = [...][]ID{
	Chair: {
		"supported-sit-to-stand", "sit-to-stand", "dumbbell-sit-to-stand", "seated-hip-hinge", "elbow-draw-back", "seated-one-arm-row", "band-row",
		"pull-down-reach", "overhead-reach", "one-arm-shoulder-press", "dumbbell-shoulder-press", "chair-dip", "arm-sweep",
		"seated-leg-straightening", "ankle-weight-knee-extension", "heel-pull-back", "knees-apart", "knee-squeeze", "seated-knee-lift",
		"arm-opening", "reverse-fly", "arm-raise", "seated-scaption-raise", "shoulder-lift", "forearm-out", "forearm-in",
		"seated-hammer-curl", "elbow-straightening", "overhead-triceps-extension", "seated-heel-raise", "seated-calf-raise",
		"two-dumbbell-seated-calf-raise", "toe-raise", "band-toe-raise", "seated-march",
	},
	ArmChair: {"chair-arm-press"},
	Worktop: {
		"standing-leg-back", "ankle-weight-hip-extension", "band-hip-extension", "supported-step-up", "counter-push-up", "one-arm-dumbbell-row",
		"standing-knee-bend", "ankle-weight-leg-curl", "standing-leg-out", "ankle-weight-hip-abduction", "band-hip-abduction", "triceps-kickback",
		"wrist-bend", "wrist-curl", "wrist-lift", "wrist-extension", "standing-calf-raise", "dumbbell-calf-raise", "single-leg-heel-raise",
		"dumbbell-single-leg-heel-raise", "heel-drop-knee-straight", "loaded-heel-drop-knee-straight", "heel-drop-knee-bent",
		"loaded-heel-drop-knee-bent", "supported-march",
	},
	LowStep: {
		"supported-step-up", "step-up", "dumbbell-step-up", "lateral-step-up", "dumbbell-lateral-step-up", "step-down",
		"heel-drop-knee-straight", "loaded-heel-drop-knee-straight", "heel-drop-knee-bent", "loaded-heel-drop-knee-bent", "chin-up", "pull-up",
	},
	Staircase: {},
	Bench: {
		"dumbbell-hip-thrust", "barbell-hip-thrust", "rear-foot-elevated-split-squat", "dumbbell-rear-foot-elevated-split-squat",
		"dumbbell-bench-press", "barbell-bench-press", "incline-dumbbell-press", "dumbbell-fly", "dumbbell-pullover",
		"lying-triceps-extension", "barbell-lying-triceps-extension",
	},
	FirmBed: {
		"glute-bridge", "dumbbell-glute-bridge", "single-leg-bridge", "back-extension", "clam", "band-clam", "side-lying-hip-abduction",
		"ankle-weight-side-lying-abduction", "straight-leg-raise", "ankle-weight-straight-leg-raise", "dumbbell-external-rotation",
		"dead-bug", "abdominal-crunch",
	},
	FixedBar: {"inverted-row", "chin-up", "pull-up"},
	Anchor: {
		"band-hip-extension", "band-row", "band-hip-abduction", "band-external-rotation", "band-internal-rotation", "band-pushdown",
		"band-toe-raise", "band-anti-rotation-press",
	},
}

// fact names the fact that says which exercises need t.
func (t Thing) fact() evidence.FactID { return evidence.FactID("exercise.needs-" + slug(t.String())) }

// neededBy returns what the exercise needs, in the order of [Things].
func neededBy(id ID) []Thing {
	var list []Thing
	for t, ids := range needs {
		if slices.Contains(ids, id) {
			list = append(list, Thing(t))
		}
	}
	return list
}

// needFacts lists the facts behind the needs.
func needFacts() []evidence.Fact {
	facts := []evidence.Fact{{ID: factHeights, Basis: evidence.Design,
		Value: "standing up is harder from a lower seat and stepping is from a higher step: only the order of those that are there is used; all but the easiest count as a deep knee bend"}, {ID: factServes, Basis: evidence.Design,
		Value: "a chair with arms serves as a chair, stairs as a step and, by their rail, as a counter to hold on to; nothing else serves for another thing"}}
	for t, ids := range needs {
		if len(ids) == 0 {
			continue
		}
		names := make([]string, len(ids))
		for i, id := range ids {
			names[i] = string(id)
		}
		facts = append(facts, evidence.Fact{ID: Thing(t).fact(), Basis: evidence.CommonPractice,
			Value: "has to be there, " + Thing(t).String() + ": for " + strings.Join(names, ", ")})
	}
	return facts
}

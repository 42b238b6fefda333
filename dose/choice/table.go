package choice

import (
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/screening/function"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// slot is a movement that has a place in a plan.
type slot uint8

const (
	rise slot = iota
	pull
	hinge
	push
	calf
	side
	trunk
	shoulder
	shin
	carry // those above are chosen for everybody, in this order
	step
	back
	thigh
	numSlots

	everybody = carry + 1
)

// variants of each slot are steps of one ladder, the easiest first; the last is
// wanted of whom nothing caps.
var variants = [numSlots][]exercise.ID{
	rise:     {"supported-sit-to-stand", "sit-to-stand", "dumbbell-sit-to-stand", "goblet-squat"},
	pull:     {"elbow-draw-back", "seated-one-arm-row", "one-arm-dumbbell-row"},
	hinge:    {"seated-hip-hinge", "hip-hinge-practice", "one-dumbbell-hinge", "dumbbell-romanian-deadlift"},
	push:     {"wall-push-up", "counter-push-up", "dumbbell-floor-press"},
	calf:     {"standing-calf-raise", "dumbbell-calf-raise"},
	side:     {"standing-leg-out"},
	trunk:    {"standing-brace", "dead-bug"},
	shoulder: {"arm-raise", "seated-scaption-raise"},
	shin:     {"toe-raise"},
	carry:    {"supported-march", "farmers-carry"},
	step:     {"supported-step-up", "step-up", "dumbbell-step-up"},
	back:     {"back-extension"},
	thigh:    {"seated-leg-straightening"},
}

// byBand is what is taken of a slot, with the weakest band, where the kit makes no weight
// for any of its variants.
var byBand = map[slot]exercise.ID{pull: "band-row"}

// A template is what a task, a concern or a goal asks for.
type template struct {
	first []slot               // the most useful first
	caps  map[slot]exercise.ID // nothing harder than this
	tests []function.Test
	trial TaskTrial
	aim   evidence.ReasonCode // of the plan beside its exercises
	facts []evidence.FactID   // beside the one that prints the row
}

// stays is the slot that is cut last: the back extensors, which nothing else trains first, and
// where they are not asked for the most useful.
func (t template) stays() slot {
	if slices.Contains(t.first, back) {
		return back
	}
	return t.first[0]
}

var forTask = map[Task]template{
	Stairs:         {first: []slot{step, rise, calf, side, shin}, tests: stands, trial: stairTime},
	FloorRise:      {first: []slot{rise, step, pull, push, trunk, hinge}, tests: stands, trial: floorTime, aim: codeFloorAim, caps: map[slot]exercise.ID{push: "counter-push-up"}},
	Shopping:       {first: []slot{carry, hinge, pull, rise}, tests: grip, trial: carryTen},
	LiftGrandchild: {first: []slot{rise, hinge, pull, carry, trunk}, tests: stands, trial: loadedRise},
	Garden:         {first: []slot{hinge, rise, carry, pull, trunk}, tests: stands, trial: kneeLift},
	CarryPack:      {first: []slot{carry, step, hinge, pull, calf}, tests: grip, trial: kneeLift},
	ChairRise:      {first: []slot{rise, side, calf}, tests: []function.Test{function.ChairStand30, function.FiveSitToStands}},
}

// Tests of function that several rows ask for.
var (
	stands = []function.Test{function.ChairStand30}
	grip   = []function.Test{function.Grip}
)

var forConcern = map[Concern]template{
	hip: {first: []slot{side, rise, step}, tests: stands, facts: []evidence.FactID{factHipWeaker, factHipPress, factJointTests},
		caps: map[slot]exercise.ID{rise: "dumbbell-sit-to-stand", hinge: "one-dumbbell-hinge", step: "supported-step-up", push: "counter-push-up"}},
	knee: {first: []slot{rise, thigh, side}, tests: stands, facts: []evidence.FactID{factJointExercise, factJointTests},
		caps: map[slot]exercise.ID{rise: "dumbbell-sit-to-stand", hinge: "one-dumbbell-hinge", step: "supported-step-up", push: "counter-push-up"}},
	spine: {first: []slot{back, hinge, rise},
		caps: map[slot]exercise.ID{rise: "dumbbell-sit-to-stand", hinge: "one-dumbbell-hinge", push: "counter-push-up", step: "supported-step-up"}},
	bone: {first: []slot{hinge, rise, back},
		caps: map[slot]exercise.ID{push: "counter-push-up"}},
	frailty: {first: []slot{rise, pull, side, calf}, tests: []function.Test{function.PhysicalPerformance}, facts: []evidence.FactID{factChairUpward},
		caps: map[slot]exercise.ID{rise: "sit-to-stand", pull: "seated-one-arm-row", hinge: "seated-hip-hinge", push: "wall-push-up", calf: "standing-calf-raise",
			trunk: "standing-brace", shoulder: "arm-raise", carry: "supported-march", step: "supported-step-up"}},
	falls: {first: []slot{rise, calf, side, shin}, tests: []function.Test{function.FourStageBalance, function.TimedUpAndGo},
		caps: map[slot]exercise.ID{rise: "dumbbell-sit-to-stand", hinge: "one-dumbbell-hinge", push: "counter-push-up", trunk: "standing-brace", carry: "supported-march", step: "supported-step-up"}},
	diabetes: {first: []slot{rise, hinge, pull, push}, facts: []evidence.FactID{factHeavierGlucose}},
}

// forBone is the goal of bone: what loads hips and spine first.
var forBone = template{first: []slot{rise, hinge, back}}

// For a beginner, and for one with nobody at hand.
var (
	beginner = template{caps: map[slot]exercise.ID{step: "step-up"}}
	alone    = template{caps: map[slot]exercise.ID{push: "counter-push-up"}}
)

// byArms is for who gets up from a chair with the arms alone.
var byArms = template{caps: map[slot]exercise.ID{rise: "supported-sit-to-stand"}}

// briefly keeps to what has no weight.
var briefly = template{caps: map[slot]exercise.ID{rise: "sit-to-stand", pull: "elbow-draw-back", hinge: "hip-hinge-practice", push: "counter-push-up",
	calf: "standing-calf-raise", shoulder: "arm-raise", carry: "supported-march", step: "step-up"}}

// latestPull and latestPush are the last places, from 0, at which pull and push stand,
// so that arms have had a turn where minutes run short.
const (
	latestPull = 2
	latestPush = 4
)

// thighs is the row of mainMuscles for the front of the thigh.
const thighs = 0

// mainMuscles are what a plan leaves without work at most by choice: of each row
// one is enough.
var mainMuscles = [][]body.Muscle{
	{body.Quadriceps}, {body.GluteusMaximus}, {body.GluteusMedius}, {body.Hamstrings}, {body.Gastrocnemius}, {body.TibialisAnterior},
	{body.LatissimusDorsi, body.Rhomboids}, {body.ErectorSpinae}, {body.RectusAbdominis, body.Obliques}, {body.PectoralisMajor},
	{body.AnteriorDeltoid, body.LateralDeltoid}, {body.RotatorCuff}, {body.BicepsBrachii, body.BrachialisBrachioradialis}, {body.TricepsBrachii},
}

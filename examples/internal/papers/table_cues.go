package papers

import (
	"strings"

	"example.org/posology/dose/exercise"
)

// A cue says how somebody alone gets into an exercise, and out of it.
type cue struct {
	ready, after string
	of           []exercise.ID
}

const (
	sitDown   = "Stand a firm chair against the wall. Feel the seat at the back of your legs, then sit down slowly."
	getUp     = "Both feet flat, lean forward and stand up. Wait for a moment before you walk."
	besideYou = "Stand a firm chair against the wall, and lay what you hold on a table or a second chair beside it, about as high as the seat. "
	layBack   = "Lay it back where it was, one thing after the other. "
	onTable   = "Lay the weight on a table about as high as your hips, and clear the floor around you. "
	toTable   = "Step up to the table and lay the weight back with a long back; not on the floor. "
	lieDown   = "Sit down on the edge of the bed, well up. Let yourself down onto your side with the help of your arms while your legs come up. "
	onBack    = "Roll onto your back."
	sitUp     = "Roll onto your side, let your legs down over the edge and push yourself up with your arms. Sit for a minute before you stand up."
	kneel     = "Only if you can get up from the floor by yourself: put a mat beside a firm chair, a hand on the seat, one knee down, then the other. "
	rise      = "Roll onto your side, come up onto hands and knees, put your hands on the chair and one foot flat, and push yourself up. Rest on the chair for a minute."
	hold      = "Stand at a counter or a heavy table, near enough to lay a hand flat on it."
	letGo     = "Both feet down, both hands on the counter. Stand for a moment before you let go."
	machine   = "Set seat and pads while nothing moves, put the pin at the weight named, and see that it is right in. "
	release   = "Let the weight come down until it rests before you let go, then get out."
	rack      = "Not without somebody beside you. The bar lies in a rack at the height where you take it, with stops below. "
	toRack    = "Walk the bar back until it touches the rack on both sides, and lower it into the hooks."
	anchor    = "See that the band has no nicks and that what holds it cannot give way. "
	slack     = "Step or lean towards where the band is fixed until it is slack, then let go."
)

// cues are common practice, in our own words: no source is claimed for them.
var cues = []cue{
	{sitDown, getUp, []exercise.ID{"supported-sit-to-stand", "sit-to-stand", "seated-hip-hinge", "elbow-draw-back", "pull-down-reach", "overhead-reach", "chair-arm-press",
		"arm-sweep", "seated-leg-straightening", "heel-pull-back", "knees-apart", "knee-squeeze", "seated-knee-lift", "arm-opening", "arm-raise", "shoulder-lift", "forearm-out",
		"forearm-in", "elbow-bend", "elbow-straightening", "wrist-bend", "wrist-lift", "seated-heel-raise", "toe-raise", "seated-march"}},
	{besideYou + "Sit down first, then take it.", layBack + getUp, []exercise.ID{"dumbbell-sit-to-stand", "seated-one-arm-row", "one-arm-shoulder-press", "dumbbell-shoulder-press",
		"reverse-fly", "seated-scaption-raise", "seated-hammer-curl", "overhead-triceps-extension", "wrist-curl", "wrist-extension", "seated-calf-raise", "two-dumbbell-seated-calf-raise"}},
	{"Sit down first. Put the cuff on with the foot on a low stool, tight enough that it cannot slide.", "Foot on the stool, and take the cuff off before you stand up. " + getUp,
		[]exercise.ID{"ankle-weight-knee-extension"}},
	{"Lean a firm chair against the wall. Sit on its edge, hands beside you, and slide forward with bent knees.", "Slide back onto the seat; do not let yourself down to the floor. " + getUp,
		[]exercise.ID{"chair-dip"}},

	{onTable + "Put your feet as wide as your hips, take it close to you, and step back.", toTable, []exercise.ID{"goblet-squat", "dumbbell-squat", "one-dumbbell-hinge",
		"dumbbell-romanian-deadlift", "staggered-romanian-deadlift", "bent-over-row", "standing-shoulder-press", "scaption-raise", "lateral-raise", "front-raise", "upright-row",
		"dumbbell-shrug", "biceps-curl", "dumbbell-side-lunge", "suitcase-carry", "farmers-carry", "kettlebell-swing"}},
	{onTable + "Stand beside something that you could hold on to, then take it.", toTable, []exercise.ID{"single-leg-romanian-deadlift", "dumbbell-split-squat", "dumbbell-reverse-lunge",
		"dumbbell-forward-lunge", "dumbbell-rear-foot-elevated-split-squat", "dumbbell-step-up", "dumbbell-lateral-step-up", "two-dumbbell-calf-raise"}},
	{hold + " Lay the weight on it. Take it with one hand, and leave the other on the counter.", "Both feet down, lay the weight on the counter, then let go.",
		[]exercise.ID{"one-arm-dumbbell-row", "triceps-kickback", "dumbbell-calf-raise", "dumbbell-single-leg-heel-raise"}},
	{"Stand on the step only with a hand on the rail, and lay the weight where you reach it from there.", "Both feet on the step, lay the weight aside, and come down with a hand on the rail.",
		[]exercise.ID{"loaded-heel-drop-knee-straight", "loaded-heel-drop-knee-bent"}},
	{"Take hold of the rail first, then put the whole foot on the step.", "Come down with a hand on the rail, one foot after the other.",
		[]exercise.ID{"supported-step-up", "step-up", "lateral-step-up", "step-down", "heel-drop-knee-straight", "heel-drop-knee-bent"}},
	{hold, letGo, []exercise.ID{"standing-leg-back", "standing-knee-bend", "standing-leg-out", "standing-calf-raise", "single-leg-heel-raise", "supported-march", "counter-push-up"}},
	{"Put the cuff on sitting down, tight enough that it cannot slide. " + hold, letGo + " Sit down to take the cuff off.",
		[]exercise.ID{"ankle-weight-hip-extension", "ankle-weight-leg-curl", "ankle-weight-hip-abduction"}},
	{"Clear the floor, and have something firm in reach that you could hold on to.", "Bring your feet together under you, and stand for a moment.",
		[]exercise.ID{"bodyweight-squat", "hip-hinge-practice", "bodyweight-split-squat", "rear-foot-elevated-split-squat", "bodyweight-forward-lunge", "bodyweight-reverse-lunge", "bodyweight-side-lunge"}},
	{"Stand facing the wall on a floor that is not slippery, a step away, and lay your hands on it.", "Walk your feet up to the wall, then take your hands off.", []exercise.ID{"wall-push-up", "standing-brace"}},
	{"Lean your back on the wall on a floor that is not slippery, then walk your feet forward.", "Push up with your hands on your thighs or the wall, and walk your feet back under you.", []exercise.ID{"wall-squat"}},

	{lieDown + onBack, sitUp, []exercise.ID{"glute-bridge", "single-leg-bridge", "straight-leg-raise", "dead-bug", "abdominal-crunch"}},
	{lieDown + "Roll onto your front.", sitUp, []exercise.ID{"back-extension"}},
	{lieDown + "Stay on that side; for the other begin from the other edge.", sitUp, []exercise.ID{"clam", "side-lying-hip-abduction"}},
	{"Lay the weight on the bed, beside where your hips will be. " + lieDown + onBack, "Put the weight down beside you first. " + sitUp, []exercise.ID{"dumbbell-glute-bridge"}},
	{"Lay the weight on the bed, in front of where your chest will be. " + lieDown + "Stay on that side.", "Put the weight down in front of you first. " + sitUp, []exercise.ID{"dumbbell-external-rotation"}},
	{"Put the cuff on while you sit. " + lieDown + onBack, sitUp + " Take the cuff off sitting.", []exercise.ID{"ankle-weight-straight-leg-raise"}},
	{"Put cuff or band on while you sit. " + lieDown + "Stay on that side; for the other begin from the other edge.", sitUp + " Take it off sitting.",
		[]exercise.ID{"ankle-weight-side-lying-abduction", "band-clam"}},
	{"Sit on the end of the bench with a weight upright on each thigh. Bring them to your chest, and let yourself back.", "Bring the weights to your chest, then to your thighs, and sit up; or let them down beside the bench at arm's length. Sit for a minute.",
		[]exercise.ID{"dumbbell-bench-press", "incline-dumbbell-press", "dumbbell-fly", "lying-triceps-extension", "dumbbell-pullover"}},
	{kneel + "Lay the weights on both sides of the mat before you lie down; take them lying on your side, and roll over.", "Put the weights down beside you first. " + rise, []exercise.ID{"dumbbell-floor-press"}},
	{kneel, rise, []exercise.ID{"push-up", "bird-dog", "plank", "side-plank", "inverted-row"}},
	{kneel + "Sit on the mat with your back to the bench, and roll the weight up over your legs.", "Roll the weight down over your legs and away from you first. " + rise, []exercise.ID{"dumbbell-hip-thrust", "barbell-hip-thrust"}},
	{"Climb onto a firm box until the bar is within reach of bent arms; do not jump.", "Put both feet back on the box before you let go, and climb down.", []exercise.ID{"chin-up", "pull-up"}},

	{machine, release, []exercise.ID{"leg-press", "chest-press-machine", "seated-row", "lat-pulldown", "machine-shoulder-press", "knee-extension-machine", "seated-leg-curl", "lying-leg-curl",
		"hip-adduction-machine", "reverse-fly-machine", "machine-calf-raise", "machine-seated-calf-raise", "crunch-machine", "cable-hip-extension", "cable-hip-abduction", "cable-external-rotation",
		"cable-internal-rotation", "cable-curl", "triceps-pushdown", "cable-anti-rotation-press"}},
	{rack, toRack, []exercise.ID{"barbell-back-squat", "barbell-front-squat", "barbell-romanian-deadlift", "barbell-bench-press", "barbell-bent-over-row", "barbell-upright-row", "barbell-shrug",
		"barbell-curl", "barbell-lying-triceps-extension"}},
	{"Clear the floor around the bar, and stand close to it.", "Lower the bar to the floor with a long back, and let go only when it lies still.", []exercise.ID{"hex-bar-deadlift", "conventional-deadlift"}},
	{anchor + "Fix it before you sit or stand where you train.", slack, []exercise.ID{"band-row", "band-external-rotation", "band-internal-rotation", "band-pushdown", "band-toe-raise", "band-anti-rotation-press"}},
	{anchor + "Put it on sitting down. " + hold, letGo + " Sit down to take the band off.", []exercise.ID{"band-hip-extension", "band-hip-abduction", "band-side-step"}},
}

// pair makes a cue one of a weight in each hand.
var pair = strings.NewReplacer("Lay the weight on", "Lay the weights on", "lay the weight back", "lay the weights back", "take it close to you", "take them close to you",
	"then take it.", "then take them.", "lay what you hold on", "lay the weights on", "Lay it back where it was, one thing", "Lay them back where they were, one")

// cueOf returns the cue of an exercise. One of the clinic's own has none here.
func cueOf(id exercise.ID) cue {
	for _, c := range cues {
		for _, of := range c.of {
			if of == id {
				return c
			}
		}
	}
	return cue{ready: "Ask us to show you how to get into it.", after: "Ask us to show you how to get out of it."}
}

package exercise

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// legLadders are the squats, steps, hinges, bridges and calf raises.
var legLadders = []ladder{
	{rungs: []rung{
		{
			id: "supported-sit-to-stand", name: "sit-to-stand with hands", aliases: []string{"chair rise with hands"}, pattern: Squat,
			how:     "From a firm chair, push up with your hands as much as you need, stand tall, and sit down slowly.",
			muscles: "sit-to-stand", nearest: true, hold: body.Unloaded, seat: true,
			demands: body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
		{
			id: "sit-to-stand", name: "sit-to-stand", aliases: []string{"chair stand", "chair rise"}, pattern: Squat,
			how:     "From a firm chair, high enough for you, stand up without your hands and sit down slowly.",
			muscles: "sit-to-stand", hold: body.Unloaded, handsBusy: true, seat: true,
			demands: body.DemandSet(body.FreeStanding, body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
		{
			id: "dumbbell-sit-to-stand", name: "sit-to-stand holding a dumbbell", aliases: []string{"loaded sit-to-stand"}, pattern: Squat,
			how:     "Hold one weight upright against your chest in both hands; stand up from the chair and sit down slowly.",
			muscles: "sit-to-stand", hold: body.BothHandsOnOne, with: handWeights, lifts: true, seat: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
		{
			id: "goblet-squat", name: "goblet squat", aliases: []string{"two-handed squat"}, pattern: Squat,
			how:     "Hold one weight upright against your chest in both hands; bend hips and knees as far as you can control, and stand up.",
			muscles: "goblet squat", hold: body.BothHandsOnOne, with: handWeights, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.DeepKneeBend, body.HipResisted,
				body.KneeResisted, body.AnkleResisted, body.AbdominalPressure),
			facts: []evidence.FactID{factHeaviest},
		},
		{
			id: "dumbbell-squat", name: "dumbbell squat", pattern: Squat,
			how:     "With a dumbbell hanging in each hand, bend hips and knees as far as you can control, and stand up.",
			muscles: "dumbbell squat", hold: body.OneEachHand, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.DeepKneeBend, body.HipResisted,
				body.KneeResisted, body.AnkleResisted, body.FirmGrip, body.AbdominalPressure),
		},
		{
			id: "dumbbell-split-squat", name: "split squat with dumbbells", aliases: []string{"split squat"}, pattern: Lunge,
			how:     "One foot well in front of the other, a dumbbell in each hand: lower the back knee towards the floor and come up. Do one side, then the other.",
			muscles: "split squat", hold: body.OneEachHand, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.DeepKneeBend, body.HipResisted,
				body.KneeResisted, body.AnkleResisted, body.FirmGrip, body.AbdominalPressure),
		},
	}},
	{rungs: []rung{
		{
			id: "supported-step-up", name: "step-up with a hand on a rail", pattern: Lunge,
			how:     "With a hand on the rail, step up onto a low step and down again. Do one side, then the other.",
			muscles: "step-up", nearest: true, hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
		{
			id: "step-up", name: "step-up", pattern: Lunge,
			how:     "Step up onto a step with the whole foot, stand tall, and step down slowly. Do one side, then the other.",
			muscles: "step-up", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.FreeStanding, body.SingleLegStance, body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
		{
			id: "dumbbell-step-up", name: "step-up with dumbbells", pattern: Lunge,
			how:     "With a dumbbell in each hand, step up with the whole foot, stand tall, and step down slowly.",
			muscles: "step-up", hold: body.OneEachHand, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.SingleLegStance, body.HipResisted,
				body.KneeResisted, body.AnkleResisted, body.FirmGrip),
		},
		{
			id: "dumbbell-reverse-lunge", name: "reverse lunge with dumbbells", aliases: []string{"reverse lunge"}, pattern: Lunge,
			how:     "With a dumbbell in each hand, step back, lower the back knee towards the floor, and step forward again; change legs each time.",
			muscles: "reverse lunge", hold: body.OneEachHand, turns: true, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.SingleLegStance, body.DeepKneeBend,
				body.HipResisted, body.KneeResisted, body.AnkleResisted, body.FirmGrip, body.AbdominalPressure),
		},
	}},
	{rungs: []rung{
		{
			id: "seated-hip-hinge", name: "seated hip hinge", pattern: Hinge,
			how:     "Sit at the front of a chair, hands on your thighs; lean forward from the hips with a long back, and come up.",
			muscles: "dumbbell Romanian deadlift", nearest: true, hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: body.DemandSet(body.HipResisted),
			warn:    []warning{hingePain}, facts: []evidence.FactID{factStraightBack},
		},
		{
			id: "hip-hinge-practice", name: "hip hinge without weight", aliases: []string{"hip hinge"}, pattern: Hinge,
			how:     "Stand a foot's length from a wall, hands on your thighs; push your hips back to touch the wall, and stand tall.",
			muscles: "dumbbell Romanian deadlift", nearest: true, hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: body.DemandSet(body.FreeStanding, body.HipResisted),
			warn:    []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
		{
			id: "one-dumbbell-hinge", name: "hip hinge with one dumbbell", pattern: Hinge,
			how:     "Hold one weight in both hands in front of your thighs; push your hips back with a long back, and stand tall.",
			muscles: "dumbbell Romanian deadlift", nearest: true, hold: body.BothHandsOnOne, with: handWeights, lifts: true, chosen: true, first: hingeOneFirst,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted),
			warn:    []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
		{
			id: "dumbbell-romanian-deadlift", name: "dumbbell Romanian deadlift", aliases: []string{"Romanian deadlift", "RDL"}, pattern: Hinge,
			how:     "With a weight in each hand close to your legs, push your hips back only as far as your back stays long, and stand tall.",
			muscles: "dumbbell Romanian deadlift", hold: body.OneEachHand, with: handWeights, lifts: true, chosen: true, first: hingeFirst,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted, body.FirmGrip, body.AbdominalPressure),
			warn:    []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
		{
			id: "staggered-romanian-deadlift", name: "Romanian deadlift with one foot back", aliases: []string{"staggered-stance Romanian deadlift"}, pattern: Hinge,
			how:     "Most of your weight on the front foot, the toes of the other foot behind you: hinge as before. Do one side, then the other.",
			muscles: "single-leg Romanian deadlift", nearest: true, hold: body.OneEachHand, oneSided: true, lifts: true, chosen: true, first: hingeFirst,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted, body.FirmGrip, body.AbdominalPressure),
			warn:    []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
		{
			id: "single-leg-romanian-deadlift", name: "single-leg Romanian deadlift", aliases: []string{"single-leg RDL"}, pattern: Hinge,
			how:     "Stand on one leg with a dumbbell in the other side's hand; hinge forward as the free leg goes back, and stand tall.",
			muscles: "single-leg Romanian deadlift", hold: body.OneHand, oneSided: true, lifts: true, chosen: true, first: hingeFirst,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.SingleLegStance, body.HipResisted, body.FirmGrip),
			warn:    []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
	}},
	{rungs: []rung{
		{
			id: "glute-bridge", name: "glute bridge", aliases: []string{"bridge"}, pattern: Hinge,
			how:     "Lie on your back on a firm bed, knees bent; lift your hips until trunk and thighs are in line, and lower them slowly.",
			muscles: "glute bridge", hold: body.Unloaded, chosen: true,
			demands: body.DemandSet(body.LyingSupine, body.HeadDown, body.HipResisted),
			warn:    []warning{hingePain},
		},
		{
			id: "dumbbell-glute-bridge", name: "glute bridge with a dumbbell", pattern: Hinge,
			how:     "As the bridge, on a firm bed, with one dumbbell on the front of your hips, steadied by both hands.",
			muscles: "glute bridge", hold: body.BothHandsOnOne, lifts: true, chosen: true,
			demands: body.DemandSet(body.LyingSupine, body.HeadDown, body.HipResisted, body.AbdominalPressure),
			warn:    []warning{hingePain}, facts: []evidence.FactID{factBorne},
		},
		{
			id: "single-leg-bridge", name: "single-leg bridge", pattern: Hinge,
			how:     "As the bridge, on a firm bed, with one foot down and the other leg held straight. Do one side, then the other.",
			muscles: "single-leg bridge", hold: body.Unloaded, oneSided: true, chosen: true,
			demands: body.DemandSet(body.LyingSupine, body.HeadDown, body.HipResisted, body.AbdominalPressure),
			warn:    []warning{hingePain},
		},
	}},
	{rungs: []rung{
		{
			id: "seated-heel-raise", name: "seated heel raise", pattern: Calf,
			how:     "Sit with your feet flat; lift both heels as high as they go, and lower them slowly.",
			muscles: "seated calf raise", nearest: true, hold: body.Unloaded,
		},
		{
			id: "seated-calf-raise", name: "seated calf raise with a dumbbell", aliases: []string{"seated calf raise"}, pattern: Calf,
			how:     "Sit with a dumbbell on one thigh near the knee, a hand on it; lift that heel as high as it goes, and lower it slowly. Do one side, then the other.",
			muscles: "seated calf raise", nearest: true, hold: body.OneHand, oneSided: true,
			demands: body.DemandSet(body.AnkleResisted), facts: []evidence.FactID{factBorne},
		},
		{
			id: "standing-calf-raise", name: "standing calf raise with support", aliases: []string{"standing calf raise", "heel raise"}, pattern: Calf,
			how:     "With a hand on a counter, rise onto your toes, and lower your heels slowly.",
			muscles: "standing calf raise", hold: body.Unloaded,
			demands: body.DemandSet(body.AnkleResisted),
		},
		{
			id: "dumbbell-calf-raise", name: "standing calf raise with a dumbbell", pattern: Calf,
			how:     "One hand on a counter, a dumbbell in the other: rise onto your toes, and lower your heels slowly.",
			muscles: "standing calf raise", hold: body.OneHand, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.AnkleResisted, body.FirmGrip),
		},
		{
			id: "single-leg-heel-raise", name: "single-leg heel raise", aliases: []string{"single-leg calf raise"}, pattern: Calf,
			how:     "With a hand on a counter, stand on one leg; rise onto your toes, and lower your heel slowly. Do one side, then the other.",
			muscles: "single-leg heel raise", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.AnkleResisted),
		},
	}},
}

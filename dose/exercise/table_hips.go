package exercise

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// hipLadders are the hinges with bars and kettlebells, the hip thrust and what
// trains mainly the hips.
var hipLadders = []ladder{
	{below: "dumbbell-romanian-deadlift", rungs: []rung{
		{
			id: "barbell-romanian-deadlift", name: "barbell Romanian deadlift", pattern: Hinge,
			how:     "The bar close to your legs, push your hips back only as far as your back stays long, and stand tall.",
			muscles: "barbell Romanian deadlift", hold: body.OnBar, lifts: true, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted, body.FirmGrip, body.AbdominalPressure),
			warn:    []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
	}},
	{below: "dumbbell-romanian-deadlift", rungs: []rung{
		{
			id: "hex-bar-deadlift", name: "hex-bar deadlift", pattern: Hinge,
			how:     "Stand in the middle of the frame, bend hips and knees with a long back, grip the handles, and stand tall.",
			muscles: "hex-bar deadlift", hold: body.OnBar, with: []Implement{HexBar}, lifts: true, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.PickUpFromFloor, body.FreeStanding, body.HipResisted, body.KneeResisted,
				body.FirmGrip, body.AbdominalPressure),
			warn: []warning{hingePain}, facts: []evidence.FactID{factStraightBack},
		},
		{
			id: "conventional-deadlift", name: "conventional deadlift", aliases: []string{"deadlift", "barbell deadlift"}, pattern: Hinge,
			how:     "The bar over the middle of your feet, bend hips and knees with a long back, grip it, and stand tall with the bar close to your legs.",
			muscles: "conventional deadlift", hold: body.OnBar, lifts: true, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.PickUpFromFloor, body.FreeStanding, body.HipResisted, body.KneeResisted,
				body.FirmGrip, body.AbdominalPressure),
			warn: []warning{hingePain}, facts: []evidence.FactID{factStraightBack},
		},
	}},
	{below: "dumbbell-romanian-deadlift", rungs: []rung{
		{
			id: "kettlebell-swing", name: "kettlebell swing", pattern: Hinge,
			how:     "Hinge with a long back, both hands on the kettlebell; swing it back between your legs and drive your hips forward to stand tall.",
			muscles: "kettlebell swing", hold: body.BothHandsOnOne, with: []Implement{Kettlebell}, lifts: true, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.PickUpFromFloor, body.FreeStanding, body.HipResisted, body.KneeResisted,
				body.FirmGrip, body.AbdominalPressure, body.FastMovement),
			warn: []warning{hingePain, hingePosition}, facts: []evidence.FactID{factStraightBack},
		},
	}},
	{rungs: []rung{
		{
			id: "back-extension", name: "back extension", pattern: Hinge,
			how:     "Lie on your front on a firm bed, hands beside you; lift your breastbone a little with a long neck, and lower it slowly.",
			muscles: "back extension", hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: body.DemandSet(body.HipResisted, body.AbdominalPressure),
			warn:    []warning{hingePain},
		},
	}},
	{below: "glute-bridge", rungs: []rung{
		{
			id: "dumbbell-hip-thrust", name: "hip thrust with a dumbbell", pattern: Hinge,
			how:     "Shoulder blades on the edge of a low bench, one dumbbell on the front of your hips, steadied by both hands; lift your hips until trunk and thighs are in line, and lower them slowly.",
			muscles: "hip thrust", hold: body.BothHandsOnOne, lifts: true, chosen: true,
			demands: body.DemandSet(body.FloorTransfer, body.PickUpFromFloor, body.HipResisted, body.KneeResisted, body.AbdominalPressure),
			warn:    []warning{hingePain}, facts: []evidence.FactID{factBorne},
		},
		{
			id: "barbell-hip-thrust", name: "hip thrust with a barbell", aliases: []string{"hip thrust"}, pattern: Hinge,
			how:     "Shoulder blades on the edge of a low bench, the padded bar across the front of your hips; lift your hips until trunk and thighs are in line, and lower them slowly.",
			muscles: "hip thrust", hold: body.OnBar, lifts: true, chosen: true,
			demands: body.DemandSet(body.FloorTransfer, body.PickUpFromFloor, body.HipResisted, body.KneeResisted, body.AbdominalPressure),
			warn:    []warning{hingePain}, facts: []evidence.FactID{factBorne},
		},
	}},
	{rungs: []rung{
		{
			id: "standing-leg-back", name: "standing hip extension without weight", aliases: []string{"standing leg back"}, pattern: Hinge,
			how:     "Both hands on a counter, stand tall; move one straight leg back without leaning, and return slowly. Do one side, then the other.",
			muscles: "standing hip extension", nearest: true, hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
		{
			id: "ankle-weight-hip-extension", name: "standing hip extension with an ankle weight", aliases: []string{"standing hip extension"}, pattern: Hinge,
			how:     "Both hands on a counter, a weight at one ankle; move that straight leg back without leaning, and return slowly.",
			muscles: "standing hip extension", hold: body.OnLimb, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
	}},
	{below: "standing-leg-back", rungs: []rung{
		{
			id: "band-hip-extension", name: "standing hip extension with a band", pattern: Hinge,
			how:     "Both hands on a counter, a band round the ankle; move that straight leg back without leaning, and return slowly.",
			muscles: "standing hip extension", hold: body.OnBand, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
	}},
	{below: "standing-leg-back", rungs: []rung{
		{
			id: "cable-hip-extension", name: "standing hip extension with a cable", pattern: Hinge,
			how:     "Hands on the frame, the cable's cuff round one ankle; move that straight leg back without leaning, and return slowly.",
			muscles: "standing hip extension", hold: body.OnStack, with: []Implement{Cable}, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
	}},
	{rungs: []rung{
		{
			id: "knees-apart", name: "seated knees apart", pattern: HipAbduction,
			how:     "Sit tall, feet together; move your knees apart as far as is comfortable, and bring them back slowly.",
			muscles: "clam", nearest: true, hold: body.Unloaded,
		},
		{
			id: "clam", name: "clam", aliases: []string{"clamshell"}, pattern: HipAbduction,
			how:     "Lie on your side on a firm bed, knees bent, feet together; lift the upper knee without rolling back, and lower it slowly. Do one side, then the other.",
			muscles: "clam", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.HipResisted),
		},
		{
			id: "band-clam", name: "clam with a band", pattern: HipAbduction,
			how:     "As the clam, on a firm bed, with a band round both thighs just above the knees. Do one side, then the other.",
			muscles: "clam", hold: body.OnBand, oneSided: true,
			demands: body.DemandSet(body.HipResisted),
		},
	}},
	{below: "clam", rungs: []rung{
		{
			id: "side-lying-hip-abduction", name: "side-lying hip abduction", aliases: []string{"side leg raise"}, pattern: HipAbduction,
			how:     "Lie on your side on a firm bed, the lower knee bent; lift the upper leg straight, toes forward, and lower it slowly. Do one side, then the other.",
			muscles: "side-lying hip abduction", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.HipResisted),
		},
		{
			id: "ankle-weight-side-lying-abduction", name: "side-lying hip abduction with an ankle weight", pattern: HipAbduction,
			how:     "As without, on a firm bed, with a weight at the upper ankle. Do one side, then the other.",
			muscles: "side-lying hip abduction", hold: body.OnLimb, oneSided: true, lifts: true,
			demands: body.DemandSet(body.HipResisted),
		},
	}},
	{below: "knees-apart", rungs: []rung{
		{
			id: "standing-leg-out", name: "standing hip abduction without weight", aliases: []string{"standing leg out"}, pattern: HipAbduction,
			how:     "Both hands on a counter, stand tall; move one straight leg out to the side without leaning, and return slowly. Do one side, then the other.",
			muscles: "standing hip abduction", nearest: true, hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
		{
			id: "ankle-weight-hip-abduction", name: "standing hip abduction with an ankle weight", aliases: []string{"standing hip abduction"}, pattern: HipAbduction,
			how:     "Both hands on a counter, a weight at one ankle; move that straight leg out to the side without leaning, and return slowly.",
			muscles: "standing hip abduction", hold: body.OnLimb, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
	}},
	{below: "standing-leg-out", rungs: []rung{
		{
			id: "band-hip-abduction", name: "standing hip abduction with a band", pattern: HipAbduction,
			how:     "Both hands on a counter, a band round the ankle; move that straight leg out to the side without leaning, and return slowly.",
			muscles: "standing hip abduction", hold: body.OnBand, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
		{
			id: "band-side-step", name: "band side-step", aliases: []string{"lateral band walk"}, pattern: HipAbduction,
			how:     "A band round both thighs, knees a little bent; take small steps to one side against it, and as many back.",
			muscles: "band side-step", hold: body.OnBand, turns: true,
			demands: body.DemandSet(body.FreeStanding, body.SingleLegStance, body.HipResisted, body.KneeResisted),
		},
	}},
	{below: "standing-leg-out", rungs: []rung{
		{
			id: "cable-hip-abduction", name: "standing hip abduction with a cable", pattern: HipAbduction,
			how:     "Hands on the frame, the cable's cuff round the far ankle; move that straight leg out to the side without leaning, and return slowly.",
			muscles: "standing hip abduction", hold: body.OnStack, with: []Implement{Cable}, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted),
		},
	}},
	{rungs: []rung{
		{
			id: "knee-squeeze", name: "seated knee squeeze", aliases: []string{"pillow squeeze"}, pattern: HipAdduction,
			how:     "Sit tall with a firm cushion between your knees; squeeze it, breathe calmly while you hold it, and let go.",
			muscles: "hip adduction machine", nearest: true, hold: body.Unloaded, count: held,
			demands: body.DemandSet(body.HipResisted),
		},
		{
			id: "hip-adduction-machine", name: "hip adduction machine", aliases: []string{"adductor machine"}, pattern: HipAdduction,
			how:     "Sit well back, the pads inside your knees; bring the knees together, and let them apart slowly.",
			muscles: "hip adduction machine", hold: body.OnStack,
			demands: body.DemandSet(body.HipResisted),
		},
	}},
}

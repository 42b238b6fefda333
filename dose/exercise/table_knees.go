package exercise

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// kneeLadders train mainly the knees and the hip flexors.
var kneeLadders = []ladder{
	{rungs: []rung{
		{
			id: "seated-leg-straightening", name: "seated knee extension without weight", aliases: []string{"seated leg straightening"}, pattern: KneeExtension,
			how:     "Sit tall; straighten one knee, toes up, hold for a moment, and lower the foot slowly. Do one side, then the other.",
			muscles: "seated knee extension with ankle weight", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "ankle-weight-knee-extension", name: "seated knee extension with ankle weight", aliases: []string{"seated knee extension"}, pattern: KneeExtension,
			how:     "Sit tall with a weight at one ankle; straighten that knee, hold for a moment, and lower the foot slowly. Do one side, then the other.",
			muscles: "seated knee extension with ankle weight", hold: body.OnLimb, oneSided: true, lifts: true,
			demands: body.DemandSet(body.KneeResisted),
		},
	}},
	{below: "seated-leg-straightening", rungs: []rung{
		{
			id: "knee-extension-machine", name: "knee extension machine", aliases: []string{"leg extension", "leg extension machine"}, pattern: KneeExtension,
			how:     "Sit well back, the pad just above your ankles; straighten your knees, and lower the weight slowly.",
			muscles: "knee extension machine", hold: body.OnStack,
			demands: body.DemandSet(body.KneeResisted),
		},
	}},
	{rungs: []rung{
		{
			id: "heel-pull-back", name: "seated heel pull-back", pattern: KneeFlexion,
			how:     "Sit tall, one foot forward on a cloth; draw that heel back under the chair, pressing it into the floor. Do one side, then the other.",
			muscles: "seated leg curl", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "standing-knee-bend", name: "standing leg curl without weight", aliases: []string{"standing leg curl"}, pattern: KneeFlexion,
			how:     "Both hands on a counter; bend one knee to bring the heel up behind you, thighs side by side, and lower it slowly. Do one side, then the other.",
			muscles: "standing leg curl with ankle weight", nearest: true, hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance),
		},
		{
			id: "ankle-weight-leg-curl", name: "standing leg curl with ankle weight", pattern: KneeFlexion,
			how:     "Both hands on a counter, a weight at one ankle; bend that knee to bring the heel up behind you, and lower it slowly. Do one side, then the other.",
			muscles: "standing leg curl with ankle weight", hold: body.OnLimb, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SingleLegStance, body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
	}},
	{below: "heel-pull-back", rungs: []rung{
		{
			id: "seated-leg-curl", name: "seated leg curl", aliases: []string{"leg curl machine"}, pattern: KneeFlexion,
			how:     "Sit well back, thighs under the pad, heels on the roller; bend your knees, and let the weight up slowly.",
			muscles: "seated leg curl", hold: body.OnStack,
			demands: body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted),
		},
		{
			id: "lying-leg-curl", name: "lying leg curl", aliases: []string{"prone leg curl"}, pattern: KneeFlexion,
			how:     "Lie on your front, hips down on the bench, the roller above your heels; bend your knees, and lower the weight slowly.",
			muscles: "lying leg curl", hold: body.OnStack,
			demands: body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted, body.AbdominalPressure),
		},
	}},
	{rungs: []rung{
		{
			id: "seated-knee-lift", name: "seated knee lift", pattern: HipFlexion,
			how:     "Sit tall; lift one knee, hold for a moment, and lower it slowly. Do one side, then the other.",
			muscles: "straight leg raise", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "straight-leg-raise", name: "straight leg raise", pattern: HipFlexion,
			how:     "Lie on your back on a firm bed, one knee bent; tighten the other thigh, lift that straight leg to the height of the bent knee, and lower it slowly.",
			muscles: "straight leg raise", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.LyingSupine, body.HipResisted, body.AbdominalPressure),
		},
		{
			id: "ankle-weight-straight-leg-raise", name: "straight leg raise with an ankle weight", pattern: HipFlexion,
			how:     "As without, on a firm bed, with a weight at the ankle of the straight leg. Do one side, then the other.",
			muscles: "straight leg raise", hold: body.OnLimb, oneSided: true, lifts: true,
			demands: body.DemandSet(body.LyingSupine, body.HipResisted, body.KneeResisted, body.AbdominalPressure),
		},
	}},
}

// footLadders are the calf raises that part from those of legLadders, the heel
// drops and the toe raises.
var footLadders = []ladder{
	{below: "standing-calf-raise", rungs: []rung{
		{
			id: "two-dumbbell-calf-raise", name: "standing calf raise with dumbbells", pattern: Calf,
			how:     "Your back near a wall, a dumbbell in each hand: rise onto your toes, and lower your heels slowly.",
			muscles: "standing calf raise", hold: body.OneEachHand, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.AnkleResisted, body.FirmGrip),
		},
	}},
	{below: "standing-calf-raise", rungs: []rung{
		{
			id: "machine-calf-raise", name: "standing calf raise on a machine", aliases: []string{"calf raise machine"}, pattern: Calf,
			how:     "Shoulders under the pads, the front of your feet on the step: rise onto your toes, and lower your heels slowly.",
			muscles: "standing calf raise", hold: body.OnStack, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.AnkleResisted),
		},
	}},
	{below: "seated-calf-raise", rungs: []rung{
		{
			id: "two-dumbbell-seated-calf-raise", name: "seated calf raise with a dumbbell on each thigh", pattern: Calf,
			how:     "Sit with a dumbbell on each thigh near the knee, a hand on each; lift both heels as high as they go, and lower them slowly.",
			muscles: "seated calf raise", hold: body.OneEachHand,
			demands: body.DemandSet(body.AnkleResisted), facts: []evidence.FactID{factBorne},
		},
	}},
	{below: "seated-heel-raise", rungs: []rung{
		{
			id: "machine-seated-calf-raise", name: "seated calf raise on a machine", pattern: Calf,
			how:     "Sit with the pad on your thighs, the front of your feet on the step; lift your heels as high as they go, and lower them slowly.",
			muscles: "seated calf raise", hold: body.OnStack,
			demands: body.DemandSet(body.AnkleResisted),
		},
	}},
	{below: "single-leg-heel-raise", rungs: []rung{
		{
			id: "dumbbell-single-leg-heel-raise", name: "single-leg heel raise with a dumbbell", pattern: Calf,
			how:     "One hand on a counter, a dumbbell in the other, on one leg: rise onto your toes, and lower your heel slowly. Do one side, then the other.",
			muscles: "single-leg heel raise", hold: body.OneHand, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.SingleLegStance, body.AnkleResisted, body.FirmGrip),
		},
	}},
	{below: "standing-calf-raise", rungs: []rung{
		{
			id: "heel-drop-knee-straight", name: "heel drop with the knee straight", aliases: []string{"heel drop, knee straight (tendon loading)", "eccentric heel drop"}, pattern: Calf,
			how:     "A hand on the rail, the front of both feet on a step: rise on both, shift to one leg, and lower that heel slowly with the knee straight.",
			muscles: "heel drop, knee straight (tendon loading)", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.AnkleResisted),
		},
		{
			id: "loaded-heel-drop-knee-straight", name: "heel drop with the knee straight and a dumbbell", pattern: Calf,
			how:     "As without, a hand on the rail and a dumbbell in the other.",
			muscles: "heel drop, knee straight (tendon loading)", hold: body.OneHand, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.SingleLegStance, body.AnkleResisted, body.FirmGrip),
		},
	}},
	{below: "standing-calf-raise", rungs: []rung{
		{
			id: "heel-drop-knee-bent", name: "heel drop with the knee bent", aliases: []string{"heel drop, knee bent (tendon loading)"}, pattern: Calf,
			how:     "A hand on the rail, the front of both feet on a step: rise on both, shift to one leg, and lower that heel slowly with the knee a little bent.",
			muscles: "heel drop, knee bent (tendon loading)", hold: body.Unloaded, oneSided: true,
			demands: body.DemandSet(body.SingleLegStance, body.AnkleResisted),
		},
		{
			id: "loaded-heel-drop-knee-bent", name: "heel drop with the knee bent and a dumbbell", pattern: Calf,
			how:     "As without, a hand on the rail and a dumbbell in the other.",
			muscles: "heel drop, knee bent (tendon loading)", hold: body.OneHand, oneSided: true, lifts: true,
			demands: body.DemandSet(body.SpinalCompression, body.SingleLegStance, body.AnkleResisted, body.FirmGrip),
		},
	}},
	{rungs: []rung{
		{
			id: "toe-raise", name: "toe raise", aliases: []string{"seated toe raise"}, pattern: Dorsiflexion,
			how:     "Sit with your feet flat; lift the front of both feet, heels down, and lower them slowly.",
			muscles: "toe raise", hold: body.Unloaded,
		},
		{
			id: "band-toe-raise", name: "toe raise with a band", pattern: Dorsiflexion,
			how:     "Sit with your legs forward, a band over the front of both feet and fixed before you; draw your toes towards you, and let them go slowly.",
			muscles: "toe raise", hold: body.OnBand,
			demands: body.DemandSet(body.AnkleResisted),
		},
	}},
}

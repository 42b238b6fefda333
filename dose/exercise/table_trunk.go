package exercise

import "example.org/posology/units/body"

// trunkLadders are the exercises of the trunk and the carries.
var trunkLadders = []ladder{
	{rungs: []rung{
		{
			id: "standing-brace", name: "standing brace", aliases: []string{"wall plank"}, pattern: Trunk,
			how:     "Lean on the wall with your forearms, body in one line, and breathe calmly while you hold it.",
			muscles: "plank", nearest: true, hold: body.Unloaded, handsBusy: true, count: held,
			demands: body.DemandSet(body.ShoulderResisted),
		},
		{
			id: "dead-bug", name: "dead bug", pattern: Trunk,
			how:     "Lie on your back on a firm bed, arms up, hips and knees bent; lower one heel and the opposite arm, and change sides.",
			muscles: "dead bug", hold: body.Unloaded, handsBusy: true, turns: true,
			demands: body.DemandSet(body.LyingSupine, body.AbdominalPressure),
		},
		{
			id: "bird-dog", name: "bird dog", pattern: Trunk,
			how:     "On hands and knees on a mat, reach out one arm and the opposite leg, back level, and change sides.",
			muscles: "bird dog", hold: body.Unloaded, handsBusy: true, turns: true,
			demands: body.DemandSet(body.FloorTransfer, body.HipResisted, body.WristResisted, body.ShoulderResisted),
		},
		{
			id: "plank", name: "plank", aliases: []string{"forearm plank"}, pattern: Trunk,
			how:     "On forearms and toes on a mat, body in one line, breathe calmly while you hold it.",
			muscles: "plank", hold: body.Unloaded, handsBusy: true, count: held,
			demands: body.DemandSet(body.FloorTransfer, body.ShoulderResisted, body.AbdominalPressure),
		},
	}},
	{below: "dead-bug", rungs: []rung{
		{
			id: "abdominal-crunch", name: "abdominal crunch", aliases: []string{"crunch", "curl-up"}, pattern: Trunk,
			how:     "Lie on your back on a firm bed, knees bent; curl up until your shoulder blades lift, and lower yourself slowly.",
			muscles: "abdominal crunch", hold: body.Unloaded,
			demands: body.DemandSet(body.LoadedSpinalFlex, body.LyingSupine, body.AbdominalPressure),
		},
		{
			id: "crunch-machine", name: "abdominal crunch on a machine", aliases: []string{"abdominal machine"}, pattern: Trunk,
			how:     "Sit with your back on the pad, hands on the handles; curl your breastbone towards your hips, and return slowly.",
			muscles: "abdominal crunch", hold: body.OnStack, chosen: true,
			demands: heldWeight.Union(body.DemandSet(body.LoadedSpinalFlex, body.SpinalCompression, body.AbdominalPressure)),
		},
	}},
	{below: "standing-brace", rungs: []rung{
		{
			id: "side-plank", name: "side plank", pattern: Trunk,
			how:     "On one forearm and the side of your feet or knees on a mat, body in one line, breathe calmly while you hold it. Do one side, then the other.",
			muscles: "side plank", hold: body.Unloaded, oneSided: true, count: held,
			demands: body.DemandSet(body.FloorTransfer, body.ShoulderResisted, body.HipResisted, body.AbdominalPressure),
		},
	}},
	{below: "standing-brace", rungs: []rung{
		{
			id: "band-anti-rotation-press", name: "anti-rotation press with a band", aliases: []string{"anti-rotation press"}, pattern: Trunk,
			how:     "Stand side-on to where the band is fixed, hands at your breastbone; press them straight forward without turning, and return. Do one side, then the other.",
			muscles: "anti-rotation press", hold: body.OnBand, oneSided: true, chosen: true,
			demands: heldWeight.Union(body.DemandSet(body.SpinalTwist, body.FreeStanding, body.AbdominalPressure)),
		},
	}},
	{below: "standing-brace", rungs: []rung{
		{
			id: "cable-anti-rotation-press", name: "anti-rotation press with a cable", pattern: Trunk,
			how:     "Stand side-on to the frame, the handle in both hands at your breastbone; press it straight forward without turning, and return. Do one side, then the other.",
			muscles: "anti-rotation press", hold: body.OnStack, with: []Implement{Cable}, oneSided: true, chosen: true,
			demands: heldWeight.Union(body.DemandSet(body.SpinalTwist, body.FreeStanding, body.AbdominalPressure)),
		},
	}},
	{rungs: []rung{
		{
			id: "seated-march", name: "seated march", pattern: Carry,
			how:     "Sit tall and lift your knees in turn, as in marching.",
			muscles: "straight leg raise", nearest: true, hold: body.Unloaded, turns: true, count: marched,
		},
		{
			id: "supported-march", name: "march on the spot with support", aliases: []string{"march on the spot"}, pattern: Carry,
			how:     "With a hand on a counter, stand tall and lift your knees in turn, as in marching.",
			muscles: "straight leg raise", nearest: true, hold: body.Unloaded, turns: true, count: marched,
			demands: body.DemandSet(body.SingleLegStance),
		},
		{
			id: "suitcase-carry", name: "suitcase carry", pattern: Carry,
			how:     "Walk tall with a weight in one hand, without leaning; turn, change hands and walk back.",
			muscles: "suitcase carry", hold: body.OneHand, with: handWeights, oneSided: true, count: walked,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.FirmGrip),
		},
		{
			id: "farmers-carry", name: "farmer's carry", aliases: []string{"farmers carry", "farmer's walk"}, pattern: Carry,
			how:     "Walk tall with a weight in each hand.",
			muscles: "farmer's carry", hold: body.OneEachHand, with: handWeights, count: walked,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.FirmGrip, body.AbdominalPressure),
		},
	}},
}

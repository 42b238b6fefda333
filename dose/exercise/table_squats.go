package exercise

import "example.org/posology/units/body"

// Demands that many rows share, beside those of holding a weight.
var (
	// legsStanding are the demands of squats and lunges on both feet.
	legsStanding = body.DemandSet(body.FreeStanding, body.HipResisted, body.KneeResisted, body.AnkleResisted)
	// legsLoaded are those of squats and lunges with a weight.
	legsLoaded = legsStanding.Union(body.DemandSet(body.SpinalCompression, body.DeepKneeBend, body.AbdominalPressure))
)

// squatLadders are the squats and lunges that part from those of legLadders.
var squatLadders = []ladder{
	{below: "sit-to-stand", rungs: []rung{
		{
			id: "bodyweight-squat", name: "bodyweight squat", aliases: []string{"free squat"}, pattern: Squat,
			how:     "Feet as wide as your hips, arms in front of you; bend hips and knees as far as you can control, and stand up.",
			muscles: "bodyweight squat", hold: body.Unloaded, handsBusy: true,
			demands: legsStanding.Union(body.DemandSet(body.DeepKneeBend)),
		},
	}},
	{below: "supported-sit-to-stand", rungs: []rung{
		{
			id: "wall-squat", name: "wall squat", aliases: []string{"wall squat (isometric)", "wall sit"}, pattern: Squat,
			how:     "Back against the wall, feet well in front of it; slide down only as far as is comfortable, and breathe calmly while you hold it.",
			muscles: "wall squat (isometric)", hold: body.Unloaded, count: held,
			demands: body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted, body.AbdominalPressure),
		},
	}},
	{below: "goblet-squat", rungs: []rung{
		{
			id: "barbell-back-squat", name: "barbell back squat", aliases: []string{"back squat"}, pattern: Squat,
			how:     "The bar across the top of your shoulder blades, hands beside your shoulders; bend hips and knees as far as you can control, and stand up.",
			muscles: "barbell back squat", hold: body.OnBar, lifts: true,
			demands: legsLoaded.Union(body.DemandSet(body.FirmGrip)),
		},
		{
			id: "barbell-front-squat", name: "barbell front squat", aliases: []string{"front squat"}, pattern: Squat,
			how:     "The bar across the front of your shoulders, elbows high; bend hips and knees as far as you can control with your chest up, and stand up.",
			muscles: "barbell front squat", hold: body.OnBar, lifts: true,
			demands: legsLoaded.Union(body.DemandSet(body.FirmGrip)),
		},
	}},
	{below: "sit-to-stand", rungs: []rung{
		{
			id: "leg-press", name: "leg press", pattern: Squat,
			how:     "Back and hips flat on the pads, feet as wide as your hips; bend your knees only as far as your lower back stays on its pad, and push away without locking them.",
			muscles: "leg press", hold: body.OnStack, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.DeepKneeBend, body.HipResisted, body.KneeResisted, body.AnkleResisted, body.AbdominalPressure),
		},
	}},
	{below: "supported-step-up", rungs: []rung{
		{
			id: "lateral-step-up", name: "lateral step-up", aliases: []string{"side step-up"}, pattern: Lunge,
			how:     "Stand beside a low step; put the near foot on it, stand tall on that leg, and lower yourself slowly. Do one side, then the other.",
			muscles: "lateral step-up", hold: body.Unloaded, oneSided: true,
			demands: legsStanding.Union(body.DemandSet(body.SingleLegStance)),
		},
		{
			id: "dumbbell-lateral-step-up", name: "lateral step-up with dumbbells", pattern: Lunge,
			how:     "With a dumbbell in each hand, stand beside a low step; step up onto it sideways, stand tall, and lower yourself slowly.",
			muscles: "lateral step-up", hold: body.OneEachHand, oneSided: true, lifts: true,
			demands: legsStanding.Union(body.DemandSet(body.SpinalCompression, body.SingleLegStance, body.FirmGrip)),
		},
	}},
	{below: "supported-step-up", rungs: []rung{
		{
			id: "step-down", name: "step-down", pattern: Lunge,
			how:     "Stand on a low step; lower the heel of one foot to the floor in front by bending the other knee, touch, and come up. Do one side, then the other.",
			muscles: "step-down", hold: body.Unloaded, oneSided: true,
			demands: legsStanding.Union(body.DemandSet(body.SingleLegStance)),
		},
	}},
	{below: "sit-to-stand", rungs: []rung{
		{
			id: "bodyweight-split-squat", name: "split squat without weight", pattern: Lunge,
			how:     "One foot well in front of the other; lower the back knee towards the floor and come up. Do one side, then the other.",
			muscles: "split squat", hold: body.Unloaded, oneSided: true,
			demands: legsStanding.Union(body.DemandSet(body.DeepKneeBend)),
		},
		{
			id: "rear-foot-elevated-split-squat", name: "rear-foot-elevated split squat", pattern: Lunge,
			how:     "The toes of the back foot on a low bench behind you; lower the back knee towards the floor and come up on the front leg. Do one side, then the other.",
			muscles: "rear-foot-elevated split squat", hold: body.Unloaded, oneSided: true,
			demands: legsStanding.Union(body.DemandSet(body.DeepKneeBend, body.SingleLegStance)),
		},
		{
			id: "dumbbell-rear-foot-elevated-split-squat", name: "rear-foot-elevated split squat with dumbbells", pattern: Lunge,
			how:     "With a dumbbell in each hand and the toes of the back foot on a low bench: lower the back knee towards the floor and come up on the front leg.",
			muscles: "rear-foot-elevated split squat", hold: body.OneEachHand, oneSided: true, lifts: true,
			demands: legsLoaded.Union(body.DemandSet(body.SingleLegStance, body.FirmGrip)),
		},
	}},
	{below: "step-up", rungs: []rung{
		{
			id: "bodyweight-forward-lunge", name: "forward lunge without weight", pattern: Lunge,
			how:     "Step forward, lower the back knee towards the floor, and push back to standing; change legs each time.",
			muscles: "forward lunge", hold: body.Unloaded, turns: true,
			demands: legsStanding.Union(body.DemandSet(body.DeepKneeBend, body.SingleLegStance)),
		},
		{
			id: "dumbbell-forward-lunge", name: "forward lunge with dumbbells", aliases: []string{"forward lunge", "lunge"}, pattern: Lunge,
			how:     "With a dumbbell in each hand, step forward, lower the back knee towards the floor, and push back to standing; change legs each time.",
			muscles: "forward lunge", hold: body.OneEachHand, turns: true, lifts: true,
			demands: legsLoaded.Union(body.DemandSet(body.SingleLegStance, body.FirmGrip)),
		},
	}},
	{below: "step-up", rungs: []rung{
		{
			id: "bodyweight-reverse-lunge", name: "reverse lunge without weight", pattern: Lunge,
			how:     "Step back, lower the back knee towards the floor, and step forward again; change legs each time.",
			muscles: "reverse lunge", hold: body.Unloaded, turns: true,
			demands: legsStanding.Union(body.DemandSet(body.DeepKneeBend, body.SingleLegStance)),
		},
	}},
	{below: "step-up", rungs: []rung{
		{
			id: "bodyweight-side-lunge", name: "side lunge without weight", pattern: Lunge,
			how:     "Step wide to the side and sit back over that leg while the other stays straight; push back to standing and change sides.",
			muscles: "side lunge", hold: body.Unloaded, turns: true,
			demands: legsStanding.Union(body.DemandSet(body.DeepKneeBend, body.SingleLegStance)),
		},
		{
			id: "dumbbell-side-lunge", name: "side lunge with a dumbbell", aliases: []string{"side lunge", "lateral lunge"}, pattern: Lunge,
			how:     "Hold one dumbbell in both hands in front of your chest; step wide to the side, sit back over that leg, push back and change sides.",
			muscles: "side lunge", hold: body.BothHandsOnOne, turns: true, lifts: true,
			demands: legsLoaded.Union(body.DemandSet(body.SingleLegStance)),
		},
	}},
}

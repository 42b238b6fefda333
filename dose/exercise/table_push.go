package exercise

import "example.org/posology/units/body"

// pushLadders are the presses with bars and machines, the fly and the dip.
var pushLadders = []ladder{
	{below: "dumbbell-bench-press", rungs: []rung{
		{
			id: "barbell-bench-press", name: "barbell bench press", pattern: HorizontalPush,
			how:     "Lie on your back on a firm bench, somebody behind you to help; lower the bar to the middle of your chest, and press it up.",
			muscles: "barbell bench press", hold: body.OnBar,
			demands: body.DemandSet(body.LyingSupine, body.OverFace, body.FirmGrip),
		},
	}},
	{below: "dumbbell-bench-press", rungs: []rung{
		{
			id: "incline-dumbbell-press", name: "incline dumbbell press", aliases: []string{"incline press"}, pattern: HorizontalPush,
			how:     "Sit back on a bench raised by about a third of the way to upright, a dumbbell in each hand; press them up over your chest, and lower them beside it.",
			muscles: "incline dumbbell press", hold: body.OneEachHand,
			demands: body.DemandSet(body.LyingSupine, body.OverFace),
			warn:    []warning{startHelp},
		},
	}},
	{below: "dumbbell-bench-press", rungs: []rung{
		{
			id: "dumbbell-fly", name: "dumbbell fly", aliases: []string{"chest fly"}, pattern: HorizontalPush,
			how:     "Lie on your back on a firm bench with a light dumbbell in each hand over your chest, elbows a little bent; open your arms only as far as is comfortable, and bring them together.",
			muscles: "dumbbell fly", hold: body.OneEachHand, lifts: true, count: smallLift,
			demands: body.DemandSet(body.LyingSupine, body.OverFace),
		},
	}},
	{below: "wall-push-up", rungs: []rung{
		{
			id: "chest-press-machine", name: "chest press machine", aliases: []string{"seated chest press"}, pattern: HorizontalPush,
			how:     "Sit with your back on the pad, the handles at chest height; press them forward, and let them back slowly.",
			muscles: "chest press machine", hold: body.OnStack,
			demands: heldWeight,
		},
	}},
	{below: "overhead-reach", rungs: []rung{
		{
			id: "machine-shoulder-press", name: "machine shoulder press", aliases: []string{"shoulder press machine"}, pattern: OverheadPush,
			how:     "Sit with your back on the pad, the handles at shoulder height; press them up, and lower them slowly.",
			muscles: "machine shoulder press", hold: body.OnStack,
			demands: heldWeight.Union(body.DemandSet(body.SpinalCompression, body.Overhead)),
		},
	}},
	{rungs: []rung{
		{
			id: "chair-arm-press", name: "press-up from the arms of a chair", aliases: []string{"seated press-up"}, pattern: DownwardPush,
			how:     "Sit in a firm chair with arms; press down on them to take some of your weight off the seat, feet helping, and sit down slowly.",
			muscles: "chair dip", nearest: true, hold: body.Unloaded, handsBusy: true,
			demands: body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted),
		},
		{
			id: "chair-dip", name: "chair dip", aliases: []string{"bench dip"}, pattern: DownwardPush,
			how:     "Hands on the edge of a firm chair that cannot slide, hips just in front of it; bend your elbows only as far as your shoulders are comfortable, and press up.",
			muscles: "chair dip", hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted, body.AbdominalPressure),
		},
	}},
}

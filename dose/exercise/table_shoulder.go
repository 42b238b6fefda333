package exercise

import "example.org/posology/units/body"

// shoulderLadders are the flies backwards, shrugs, raises and rotations.
var shoulderLadders = []ladder{
	{rungs: []rung{
		{
			id: "arm-opening", name: "seated arm opening", pattern: HorizontalAbduction,
			how:     "Sit tall, arms forward at chest height, elbows a little bent; open your arms to the side and your shoulder blades together, and return slowly.",
			muscles: "reverse fly", nearest: true, hold: body.Unloaded, handsBusy: true, count: smallLift,
		},
		{
			id: "reverse-fly", name: "reverse fly", aliases: []string{"rear deltoid raise"}, pattern: HorizontalAbduction,
			how:     "Sit at the front of a chair and lean forward from the hips with a long back, a light dumbbell in each hand; open your arms to the side, and lower them slowly.",
			muscles: "reverse fly", hold: body.OneEachHand, lifts: true, chosen: true, count: smallLift, first: raiseFirst,
			demands: body.DemandSet(body.SpinalCompression),
		},
	}},
	{below: "arm-opening", rungs: []rung{
		{
			id: "reverse-fly-machine", name: "reverse fly machine", aliases: []string{"rear deltoid machine"}, pattern: HorizontalAbduction,
			how:     "Sit with your chest on the pad, the handles at shoulder height; open your arms to the side, and let them back slowly.",
			muscles: "reverse fly machine", hold: body.OnStack, count: smallLift,
			demands: heldWeight,
		},
	}},
	{rungs: []rung{
		{
			id: "shoulder-lift", name: "seated shoulder lift", pattern: ScapularElevation,
			how:     "Sit tall, arms at your sides; lift both shoulders towards your ears, and lower them slowly.",
			muscles: "shrug", nearest: true, hold: body.Unloaded, handsBusy: true,
		},
		{
			id: "dumbbell-shrug", name: "shrug with dumbbells", aliases: []string{"shrug"}, pattern: ScapularElevation,
			how:     "Stand tall with a dumbbell in each hand; lift both shoulders towards your ears, and lower them slowly.",
			muscles: "shrug", hold: body.OneEachHand,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.FirmGrip),
		},
	}},
	{below: "shoulder-lift", rungs: []rung{
		{
			id: "barbell-shrug", name: "shrug with a barbell", pattern: ScapularElevation,
			how:     "Stand tall, the bar in both hands in front of your thighs; lift both shoulders towards your ears, and lower them slowly.",
			muscles: "shrug", hold: body.OnBar,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.FirmGrip),
		},
	}},
	{below: "seated-scaption-raise", rungs: []rung{
		{
			id: "front-raise", name: "front raise", pattern: ShoulderRaise,
			how:     "Stand tall with a dumbbell in each hand; raise your arms in front of you to shoulder height, and lower them slowly.",
			muscles: "front raise", hold: body.OneEachHand, lifts: true, count: smallLift, first: raiseFirst,
			demands: body.DemandSet(body.FreeStanding),
		},
	}},
	{below: "seated-scaption-raise", rungs: []rung{
		{
			id: "upright-row", name: "upright row", pattern: ShoulderRaise,
			how:     "Stand tall with a dumbbell in each hand in front of your thighs; lift your elbows to the side, no higher than the shoulders, and lower them slowly.",
			muscles: "upright row", hold: body.OneEachHand, lifts: true,
			demands: body.DemandSet(body.FreeStanding, body.FirmGrip),
		},
		{
			id: "barbell-upright-row", name: "upright row with a barbell", pattern: ShoulderRaise,
			how:     "Stand tall, the bar in both hands in front of your thighs; lift your elbows to the side, no higher than the shoulders, and lower them slowly.",
			muscles: "upright row", hold: body.OnBar, lifts: true,
			demands: body.DemandSet(body.FreeStanding, body.FirmGrip),
		},
	}},
	{rungs: []rung{
		{
			id: "forearm-out", name: "turning the forearm out without weight", pattern: ShoulderRotation,
			how:     "Sit tall, elbow at your side and bent; turn the forearm out as far as is comfortable, and return slowly. Do one side, then the other.",
			muscles: "shoulder external rotation", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "dumbbell-external-rotation", name: "side-lying external rotation with a dumbbell", pattern: ShoulderRotation,
			how:     "Lie on your side on a firm bed, a light dumbbell in the upper hand, elbow at your side and bent; turn the forearm up, and lower it slowly.",
			muscles: "shoulder external rotation", hold: body.OneHand, oneSided: true, count: smallLift,
		},
	}},
	{below: "forearm-out", rungs: []rung{
		{
			id: "band-external-rotation", name: "shoulder external rotation with a band", aliases: []string{"shoulder external rotation", "external rotation"}, pattern: ShoulderRotation,
			how:     "Sit or stand at ease, elbow at your side and bent; turn the forearm out against the band, and return slowly. Do one side, then the other.",
			muscles: "shoulder external rotation", hold: body.OnBand, oneSided: true, count: smallLift,
			demands: heldWeight,
		},
	}},
	{below: "forearm-out", rungs: []rung{
		{
			id: "cable-external-rotation", name: "shoulder external rotation with a cable", pattern: ShoulderRotation,
			how:     "Stand at ease beside the frame, elbow at your side and bent; turn the forearm out against the cable, and return slowly. Do one side, then the other.",
			muscles: "shoulder external rotation", hold: body.OnStack, with: []Implement{Cable}, oneSided: true, count: smallLift,
			demands: heldWeight.Union(body.DemandSet(body.FreeStanding)),
		},
	}},
	{rungs: []rung{
		{
			id: "forearm-in", name: "turning the forearm in without weight", pattern: ShoulderRotation,
			how:     "Sit tall, elbow at your side and bent; turn the forearm in across your waist, and return slowly. Do one side, then the other.",
			muscles: "shoulder internal rotation", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "band-internal-rotation", name: "shoulder internal rotation with a band", aliases: []string{"shoulder internal rotation", "internal rotation"}, pattern: ShoulderRotation,
			how:     "Sit or stand at ease, elbow at your side and bent; turn the forearm in across your waist against the band, and return slowly. Do one side, then the other.",
			muscles: "shoulder internal rotation", hold: body.OnBand, oneSided: true, count: smallLift,
			demands: heldWeight,
		},
	}},
	{below: "forearm-in", rungs: []rung{
		{
			id: "cable-internal-rotation", name: "shoulder internal rotation with a cable", pattern: ShoulderRotation,
			how:     "Stand at ease beside the frame, elbow at your side and bent; turn the forearm in across your waist against the cable, and return slowly. Do one side, then the other.",
			muscles: "shoulder internal rotation", hold: body.OnStack, with: []Implement{Cable}, oneSided: true, count: smallLift,
			demands: heldWeight.Union(body.DemandSet(body.FreeStanding)),
		},
	}},
}

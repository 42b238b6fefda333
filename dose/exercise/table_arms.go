package exercise

import "example.org/posology/units/body"

// armLadders are the pushes, rows, presses, raises and curls.
var armLadders = []ladder{
	{rungs: []rung{
		{
			id: "wall-push-up", name: "wall push-up", pattern: HorizontalPush,
			how:     "Hands on the wall at shoulder height; bend your arms to bring your chest near the wall, and push away.",
			muscles: "wall push-up", hold: body.Unloaded, handsBusy: true,
			demands: body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted),
		},
		{
			id: "counter-push-up", name: "push-up at a counter", aliases: []string{"incline push-up"}, pattern: HorizontalPush,
			how:     "Hands on the edge of a firm counter, body in one line; bend your arms to bring your chest near the edge, and push away.",
			muscles: "wall push-up", nearest: true, hold: body.Unloaded, handsBusy: true,
			demands: body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted),
		},
		{
			id: "dumbbell-floor-press", name: "dumbbell floor press", aliases: []string{"floor press"}, pattern: HorizontalPush,
			how:     "Lie on your back on a mat with a dumbbell in each hand; press them up over your chest, and lower your upper arms to the floor.",
			muscles: "dumbbell floor press", hold: body.OneEachHand,
			demands: body.DemandSet(body.FloorTransfer, body.PickUpFromFloor, body.LyingSupine, body.OverFace),
		},
		{
			id: "dumbbell-bench-press", name: "dumbbell bench press", aliases: []string{"bench press", "chest press"}, pattern: HorizontalPush,
			how:     "Lie on your back on a firm bench with a dumbbell in each hand; press them up over your chest, and lower them beside it.",
			muscles: "dumbbell bench press", hold: body.OneEachHand,
			demands: body.DemandSet(body.LyingSupine, body.OverFace),
		},
		{
			id: "push-up", name: "push-up", aliases: []string{"press-up"}, pattern: HorizontalPush,
			how:     "On the floor, hands under your shoulders, body in one line; lower your chest near the floor, and push up.",
			muscles: "push-up", hold: body.Unloaded, handsBusy: true,
			demands: body.DemandSet(body.FloorTransfer, body.ShoulderResisted, body.ElbowResisted, body.WristResisted, body.AbdominalPressure),
		},
	}},
	{rungs: []rung{
		{
			id: "elbow-draw-back", name: "drawing the elbows back", aliases: []string{"shoulder blade squeeze"}, pattern: Row,
			how:     "Sit tall, elbows bent; draw them back and your shoulder blades together, and let them go slowly.",
			muscles: "one-arm dumbbell row", nearest: true, hold: body.Unloaded, handsBusy: true,
		},
		{
			id: "seated-one-arm-row", name: "seated one-arm row", pattern: Row,
			how:     "Sit and lean forward with a long back, one forearm resting on your thigh; draw the weight up beside your seat, and lower it slowly.",
			muscles: "one-arm dumbbell row", nearest: true, hold: body.OneHand, with: handWeights, handsBusy: true, oneSided: true,
		},
		{
			id: "one-arm-dumbbell-row", name: "one-arm dumbbell row", aliases: []string{"one-arm row", "single-arm row", "supported one-arm row"}, pattern: Row,
			how:     "One hand on a bench or table, back long; draw the weight up to your side, and lower it slowly. Do one side, then the other.",
			muscles: "one-arm dumbbell row", hold: body.OneHand, with: handWeights, oneSided: true,
			demands: body.DemandSet(body.FirmGrip),
		},
		{
			id: "bent-over-row", name: "bent-over row", pattern: Row,
			how:     "Hinge forward with a long back, a dumbbell in each hand; draw them up to your sides, and lower them slowly.",
			muscles: "bent-over row", hold: body.OneEachHand, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted, body.FirmGrip),
			warn:    []warning{hingePain, hingePosition},
		},
	}},
	{rungs: []rung{
		{
			id: "overhead-reach", name: "seated overhead reach", pattern: OverheadPush,
			how:     "Sit tall, hands at your shoulders; reach up as far as is comfortable, and bring your hands back slowly.",
			muscles: "dumbbell shoulder press", nearest: true, hold: body.Unloaded, handsBusy: true,
			demands: body.DemandSet(body.Overhead),
		},
		{
			id: "one-arm-shoulder-press", name: "single-arm dumbbell shoulder press", aliases: []string{"seated one-arm press"}, pattern: OverheadPush,
			how:     "Sit tall with a dumbbell at one shoulder; press it up, and lower it slowly. Do one side, then the other.",
			muscles: "single-arm dumbbell shoulder press", hold: body.OneHand, oneSided: true,
			demands: body.DemandSet(body.SpinalCompression, body.Overhead),
			warn:    []warning{startHelp},
		},
		{
			id: "dumbbell-shoulder-press", name: "dumbbell shoulder press", aliases: []string{"seated shoulder press", "shoulder press"}, pattern: OverheadPush,
			how:     "Sit tall with a dumbbell at each shoulder; press them up, and lower them slowly.",
			muscles: "dumbbell shoulder press", hold: body.OneEachHand,
			demands: body.DemandSet(body.SpinalCompression, body.Overhead),
			warn:    []warning{startHelp},
		},
		{
			id: "standing-shoulder-press", name: "standing dumbbell shoulder press", aliases: []string{"standing press"}, pattern: OverheadPush,
			how:     "Stand tall with a dumbbell at each shoulder; press them up without leaning back, and lower them slowly.",
			muscles: "dumbbell shoulder press", nearest: true, hold: body.OneEachHand,
			demands: body.DemandSet(body.SpinalCompression, body.Overhead, body.FreeStanding, body.AbdominalPressure),
			warn:    []warning{startHelp},
		},
	}},
	{rungs: []rung{
		{
			id: "arm-raise", name: "seated arm raise without weight", aliases: []string{"unloaded arm raise"}, pattern: ShoulderRaise,
			how:     "Sit tall; raise your arms slightly forward of the side, no higher than the shoulders, and lower them slowly.",
			muscles: "scaption raise", nearest: true, hold: body.Unloaded, handsBusy: true, count: smallLift,
		},
		{
			id: "seated-scaption-raise", name: "seated scaption raise", pattern: ShoulderRaise,
			how:     "Sit tall with a dumbbell in each hand, thumbs up; raise your arms slightly forward of the side to shoulder height, and lower them slowly.",
			muscles: "scaption raise", nearest: true, hold: body.OneEachHand, lifts: true, count: smallLift, first: raiseFirst,
		},
		{
			id: "scaption-raise", name: "scaption raise", pattern: ShoulderRaise,
			how:     "Stand tall with a dumbbell in each hand, thumbs up; raise your arms slightly forward of the side to shoulder height, and lower them slowly.",
			muscles: "scaption raise", hold: body.OneEachHand, lifts: true, count: smallLift, first: raiseFirst,
			demands: body.DemandSet(body.FreeStanding),
		},
		{
			id: "lateral-raise", name: "lateral raise", aliases: []string{"side raise"}, pattern: ShoulderRaise,
			how:     "Stand tall with a dumbbell in each hand; raise your arms to the side, no higher than the shoulders, and lower them slowly.",
			muscles: "lateral raise", hold: body.OneEachHand, lifts: true, count: smallLift, first: raiseFirst,
			demands: body.DemandSet(body.FreeStanding),
		},
	}},
	{rungs: []rung{
		{
			id: "elbow-bend", name: "elbow bend without weight", pattern: ElbowFlexion,
			how:     "Sit or stand at ease; bend your elbows fully, and straighten them slowly.",
			muscles: "biceps curl", nearest: true, hold: body.Unloaded, handsBusy: true,
		},
		{
			id: "seated-hammer-curl", name: "seated hammer curl", aliases: []string{"hammer curl"}, pattern: ElbowFlexion,
			how:     "Sit tall with a dumbbell in each hand, thumbs forward; bend your elbows, and lower the weights slowly.",
			muscles: "hammer curl", hold: body.OneEachHand,
		},
		{
			id: "biceps-curl", name: "biceps curl", aliases: []string{"arm curl", "dumbbell curl"}, pattern: ElbowFlexion,
			how:     "Stand tall with a dumbbell in each hand; bend your elbows, palms up, and lower the weights slowly.",
			muscles: "biceps curl", hold: body.OneEachHand,
			demands: body.DemandSet(body.FreeStanding),
		},
	}},
}

package exercise

import "example.org/posology/units/body"

// elbowLadders are the curls with bars and cables, and what trains mainly the
// triceps and the wrists.
var elbowLadders = []ladder{
	{below: "biceps-curl", rungs: []rung{
		{
			id: "barbell-curl", name: "biceps curl with a barbell", aliases: []string{"barbell curl"}, pattern: ElbowFlexion,
			how:     "Stand tall, the bar in both hands, palms up; bend your elbows, and lower the bar slowly.",
			muscles: "biceps curl", hold: body.OnBar,
			demands: body.DemandSet(body.FreeStanding),
		},
	}},
	{below: "elbow-bend", rungs: []rung{
		{
			id: "cable-curl", name: "biceps curl with a cable", aliases: []string{"cable curl"}, pattern: ElbowFlexion,
			how:     "Stand tall before the frame, the handle in both hands, palms up; bend your elbows, and let the weight down slowly.",
			muscles: "biceps curl", hold: body.OnStack, with: []Implement{Cable},
			demands: heldWeight.Union(body.DemandSet(body.FreeStanding)),
		},
	}},
	{rungs: []rung{
		{
			id: "elbow-straightening", name: "elbow straightening without weight", pattern: ElbowExtension,
			how:     "Sit and lean a little forward, elbow bent at your side; straighten it behind you, and bend it slowly. Do one side, then the other.",
			muscles: "triceps kickback", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "triceps-kickback", name: "triceps kickback", aliases: []string{"kickback"}, pattern: ElbowExtension,
			how:     "One hand on a bench or table, back long, the other upper arm at your side; straighten that elbow behind you with a light dumbbell, and bend it slowly.",
			muscles: "triceps kickback", hold: body.OneHand, oneSided: true,
		},
	}},
	{below: "elbow-straightening", rungs: []rung{
		{
			id: "lying-triceps-extension", name: "lying triceps extension", pattern: ElbowExtension,
			how:     "Lie on your back on a firm bench, a dumbbell in each hand over your chest; bend your elbows to lower them beside your head, and straighten them.",
			muscles: "lying triceps extension", hold: body.OneEachHand,
			demands: body.DemandSet(body.LyingSupine, body.OverFace),
		},
		{
			id: "barbell-lying-triceps-extension", name: "lying triceps extension with a barbell", pattern: ElbowExtension,
			how:     "Lie on your back on a firm bench, the bar over your chest; bend your elbows to lower it towards your forehead, and straighten them. Have somebody with you.",
			muscles: "lying triceps extension", hold: body.OnBar,
			demands: body.DemandSet(body.LyingSupine, body.OverFace, body.FirmGrip),
		},
	}},
	{below: "elbow-straightening", rungs: []rung{
		{
			id: "overhead-triceps-extension", name: "overhead triceps extension", pattern: ElbowExtension,
			how:     "Sit tall, one dumbbell in both hands above your head; bend your elbows to lower it behind your head, and straighten them.",
			muscles: "overhead triceps extension", hold: body.BothHandsOnOne,
			demands: body.DemandSet(body.SpinalCompression, body.Overhead, body.AbdominalPressure),
			warn:    []warning{startHelp},
		},
	}},
	{below: "elbow-straightening", rungs: []rung{
		{
			id: "triceps-pushdown", name: "triceps pushdown", aliases: []string{"cable pushdown"}, pattern: ElbowExtension,
			how:     "Stand tall before the frame, elbows at your sides; push the handle down until they are straight, and let it up slowly.",
			muscles: "triceps pushdown", hold: body.OnStack, with: []Implement{Cable},
			demands: heldWeight.Union(body.DemandSet(body.FreeStanding)),
		},
	}},
	{below: "elbow-straightening", rungs: []rung{
		{
			id: "band-pushdown", name: "triceps pushdown with a band", pattern: ElbowExtension,
			how:     "Sit or stand at ease, the band fixed above you, elbows at your sides; push down until they are straight, and let it up slowly.",
			muscles: "triceps pushdown", hold: body.OnBand,
			demands: heldWeight,
		},
	}},
	{rungs: []rung{
		{
			id: "wrist-bend", name: "wrist bend without weight", pattern: WristFlexion,
			how:     "Forearm on a table, palm up, hand over the edge; bend the wrist up, and lower it slowly. Do one side, then the other.",
			muscles: "wrist curl", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "wrist-curl", name: "wrist curl", pattern: WristFlexion,
			how:     "Forearm on a table, palm up, a light dumbbell in the hand over the edge; bend the wrist up, and lower it slowly. Do one side, then the other.",
			muscles: "wrist curl", hold: body.OneHand, oneSided: true,
		},
	}},
	{rungs: []rung{
		{
			id: "wrist-lift", name: "wrist lift without weight", pattern: WristExtension,
			how:     "Forearm on a table, palm down, hand over the edge; lift the hand, and lower it slowly. Do one side, then the other.",
			muscles: "wrist extension", nearest: true, hold: body.Unloaded, oneSided: true,
		},
		{
			id: "wrist-extension", name: "wrist extension", aliases: []string{"reverse wrist curl"}, pattern: WristExtension,
			how:     "Forearm on a table, palm down, a light dumbbell in the hand over the edge; lift the hand, and lower it slowly. Do one side, then the other.",
			muscles: "wrist extension", hold: body.OneHand, oneSided: true,
		},
	}},
}

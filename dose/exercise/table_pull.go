package exercise

import "example.org/posology/units/body"

// heldFirmly is what pulling at a handle demands.
var heldFirmly = heldWeight.Union(body.DemandSet(body.FirmGrip))

// pullLadders are the rows with bars, cables and bands, the vertical pulls and
// the pullover.
var pullLadders = []ladder{
	{below: "bent-over-row", rungs: []rung{
		{
			id: "barbell-bent-over-row", name: "bent-over row with a barbell", aliases: []string{"barbell row"}, pattern: Row,
			how:     "Hinge forward with a long back, the bar hanging from both hands; draw it up to your waist, and lower it slowly.",
			muscles: "bent-over row", hold: body.OnBar, chosen: true,
			demands: body.DemandSet(body.SpinalCompression, body.FreeStanding, body.HipResisted, body.FirmGrip, body.AbdominalPressure),
			warn:    []warning{hingePain, hingePosition},
		},
	}},
	{below: "elbow-draw-back", rungs: []rung{
		{
			id: "seated-row", name: "seated row", aliases: []string{"cable row", "seated cable row"}, pattern: Row,
			how:     "Sit tall, feet firm; draw the handles to your waist and your shoulder blades together, and let them go slowly.",
			muscles: "seated row", hold: body.OnStack, with: []Implement{Cable, Machine},
			demands: heldFirmly,
		},
	}},
	{below: "elbow-draw-back", rungs: []rung{
		{
			id: "band-row", name: "band row", pattern: Row,
			how:     "Sit tall, the band fixed before you at waist height; draw your hands to your waist and your shoulder blades together, and let them go slowly.",
			muscles: "band row", hold: body.OnBand,
			demands: heldFirmly,
		},
	}},
	{below: "one-arm-dumbbell-row", rungs: []rung{
		{
			id: "inverted-row", name: "inverted row", aliases: []string{"body row"}, pattern: Row,
			how:     "Hang below a fixed bar at waist height, body in one line, heels on the floor; draw your chest to the bar, and lower yourself slowly.",
			muscles: "inverted row", hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: heldFirmly.Union(body.DemandSet(body.FloorTransfer, body.AbdominalPressure)),
		},
	}},
	{rungs: []rung{
		{
			id: "pull-down-reach", name: "pull-down movement without weight", pattern: VerticalPull,
			how:     "Sit tall; reach up as far as is comfortable, then draw your elbows down and back to your sides.",
			muscles: "lat pulldown", nearest: true, hold: body.Unloaded, handsBusy: true,
			demands: body.DemandSet(body.Overhead),
		},
		{
			id: "lat-pulldown", name: "lat pulldown", aliases: []string{"pulldown", "lat pull-down"}, pattern: VerticalPull,
			how:     "Sit tall, thighs under the pad, hands wider than your shoulders; draw the bar down in front of you to your upper chest, and let it up slowly.",
			muscles: "lat pulldown", hold: body.OnStack, with: []Implement{Cable, Machine},
			demands: heldFirmly.Union(body.DemandSet(body.Overhead)),
		},
	}},
	{below: "lat-pulldown", rungs: []rung{
		{
			id: "chin-up", name: "chin-up", pattern: VerticalPull,
			how:     "From a box, hang from a fixed bar with your palms towards you; draw yourself up until your chin reaches the bar, and lower yourself slowly.",
			muscles: "chin-up", hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: heldFirmly.Union(body.DemandSet(body.Overhead, body.FreeStanding, body.AbdominalPressure)),
		},
		{
			id: "pull-up", name: "pull-up", pattern: VerticalPull,
			how:     "From a box, hang from a fixed bar with your palms away from you; draw yourself up until your chin reaches the bar, and lower yourself slowly.",
			muscles: "pull-up", hold: body.Unloaded, handsBusy: true, chosen: true,
			demands: heldFirmly.Union(body.DemandSet(body.Overhead, body.FreeStanding, body.AbdominalPressure)),
		},
	}},
	{rungs: []rung{
		{
			id: "arm-sweep", name: "seated arm sweep", pattern: ShoulderExtension,
			how:     "Sit tall, arms straight in front of you at shoulder height; sweep them down and back past your hips, and return slowly.",
			muscles: "dumbbell pullover", nearest: true, hold: body.Unloaded, handsBusy: true,
		},
		{
			id: "dumbbell-pullover", name: "dumbbell pullover", aliases: []string{"pullover"}, pattern: ShoulderExtension,
			how:     "Lie on your back on a firm bench, one dumbbell in both hands over your chest; lower it behind your head only as far as is comfortable, and bring it back.",
			muscles: "dumbbell pullover", hold: body.BothHandsOnOne, lifts: true, chosen: true,
			demands: body.DemandSet(body.LyingSupine, body.OverFace, body.Overhead, body.AbdominalPressure),
		},
	}},
}

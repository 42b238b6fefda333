package screening

import "example.org/posology/units/body"

// askFloor asks whether the person gets down to the floor and up again alone.
// Here a yes is the better answer.
const askFloor Code = "floor_and_up"

// floorCodes make that question necessary.
var floorCodes = []Code{
	fallsRisk, "vertigo", "hip_fracture", "parkinsons", "frailty", "frailty_dose", vertebralFracture, "osteoporosis_with_vertebral_fracture",
	"cfs_level_4", "cfs_level_5", "cfs_level_6", "cfs_level_7", "cfs_level_8", "cfs_level_9",
}

// floorEntries are what follows for who does not, or may not.
var floorEntries = []entry{
	{code: askFloor, kind: Topic, meaning: "needs help to get down to the floor or up again", effect: tell.avoiding(body.FloorTransfer),
		from: ours("nothing on the floor for who may not get up again, unless a clinician is beside; getting up can be practised there")},
}

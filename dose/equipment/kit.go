package equipment

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
)

// A Kit is the equipment at hand. [Kit.Validate] tells what its fields may
// hold; each list takes at most 100 entries. The zero Kit is empty: nothing but
// the body.
//
// [example.org/posology/units/field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Kit struct {
	Dumbbells    []Dumbbell `json:"dumbbells,omitempty"`
	Kettlebells  []Dumbbell `json:"kettlebells,omitempty"`   // for exercises that name them
	AnkleWeights []Dumbbell `json:"ankle_weights,omitempty"` // single ones; two are never put on one limb
	Handles      []Handle   `json:"handles,omitempty"`
	Bars         []Bar      `json:"bars,omitempty"`
	Plates       []Plate    `json:"plates,omitempty"` // stock that handles and bars share
	Stacks       []Stack    `json:"stacks,omitempty"`

	// Bands are the user's own names of elastic bands, from the weakest to the
	// strongest in the order that the user found; no colour and no printed figure
	// tells it. Two that are used together are one more band. Each is of lower-case
	// letters, digits and dashes, since the exercises with it have it in their IDs.
	Bands []string `json:"bands,omitempty"`

	// Seats and Steps are the heights of the firm chairs and of the steps that are
	// there, in whole cm, each once; empty: not measured.
	Seats []int `json:"seats_cm,omitempty"`
	Steps []int `json:"steps_cm,omitempty"`

	// Things are what stands there. They are told as a whole: what is not listed is
	// not there. Nil: nobody asked, and everything is taken as there, which a plan says.
	Things []exercise.Thing `json:"things,omitzero"`

	made *compiled // tables that are compiled already; see [Kit.Once]
}

// A Dumbbell is a ready-made dumbbell, kettlebell or ankle weight, as its list says, and
// Count of them exist. Two of the same mass in one list make a pair, from one entry or
// from two.
type Dumbbell struct {
	Mass  units.Marked `json:"mass"`  // above 0, at most 1000 kg
	Count int          `json:"count"` // 1 to 500
}

// A Handle is a dumbbell handle that takes plates. Two from one entry make a
// pair; two from different entries do not.
type Handle struct {
	Name         string       `json:"name,omitzero"`           // for people; at most 100 bytes
	Mass         units.Marked `json:"mass"`                    // bare; above 0, at most 1000 kg
	Collars      units.Marked `json:"collars,omitzero"`        // both of one handle together, always on; 0 for none or included
	Count        int          `json:"count"`                   // 1 to 500
	PlatesPerEnd int          `json:"plates_per_end,omitzero"` // most plates that fit on one end, at most 500; 0 states no limit
}

// A Bar is a bar that takes plates and is held in both hands or lies on the
// back. One is used at a time, so that it needs no count.
type Bar struct {
	Name         string       `json:"name,omitzero"`           // for people; at most 100 bytes
	Mass         units.Marked `json:"mass"`                    // bare; above 0, at most 1000 kg
	Collars      units.Marked `json:"collars,omitzero"`        // both together, always on; 0 for none or included
	PlatesPerEnd int          `json:"plates_per_end,omitzero"` // most plates that fit on one end, at most 500; 0 states no limit
}

// A Plate is a kind of plate, and Count of them exist. A kind is listed once.
type Plate struct {
	Mass  units.Marked `json:"mass"`  // above 0, at most 100 kg
	Count int          `json:"count"` // 1 to 500
}

// A Stack is the weight stack of a machine or cable: one pin position is
// chosen, and any number of the add-on weights is laid on top.
type Stack struct {
	Name   string         `json:"name,omitzero"` // for people; at most 100 bytes
	Pins   []units.Marked `json:"pins"`          // what each position lifts, rising; above 0, at most 1000 kg
	AddOns []Plate        `json:"add_ons,omitempty"`
}

// asHandles lets bars be checked and loaded as handles are.
func asHandles(bars []Bar) []Handle {
	handles := make([]Handle, len(bars))
	for i, b := range bars {
		handles[i] = Handle{b.Name, b.Mass, b.Collars, 1, b.PlatesPerEnd}
	}
	return handles
}

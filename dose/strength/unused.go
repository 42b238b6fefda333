package strength

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Unused is a test of strength, or a set that was done, on which no dose rests,
// and why.
type Unused struct {
	Exercise exercise.ID     `json:"exercise"`
	Side     body.Side       `json:"side"`
	Hold     body.Hold       `json:"hold"`
	Day      units.Day       `json:"day"`
	Load     units.Mass      `json:"load,omitzero"`   // of a set, as it was given
	OneRM    units.Mass      `json:"one_rm,omitzero"` // of an estimate
	Reason   evidence.Reason `json:"reason"`
}

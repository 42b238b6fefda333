package dose

import "example.org/posology/units"

// An Observation is somebody's look at how the person moves. The zero value
// means that nobody looked.
type Observation struct {
	Who string    `json:"who"`
	Day units.Day `json:"day"`
}

// Made reports whether somebody looked, on a day.
func (o Observation) Made() bool { return o.Who != "" && o.Day.Check() == nil }

package progression

import (
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Spread is a mean with the standard deviation beside it; an SD of 0 is not stated.
type Spread struct {
	Mean float64 `json:"mean"`
	SD   float64 `json:"sd,omitzero"`
}

// A Deload is how some athletes plan lighter weeks: for information.
type Deload struct {
	Who       string               `json:"who"`
	People    int                  `json:"people"`
	Days      Spread               `json:"days,omitzero"`        // length, days
	Every     Spread               `json:"every,omitzero"`       // weeks from one to the next
	DaysRange units.Range[float64] `json:"days_range,omitzero"`  // where a range was printed instead
	EveryWeek units.Range[float64] `json:"every_range,omitzero"` // weeks
	Fact      evidence.FactID      `json:"fact"`
}

var deloads = [...]Deload{
	{Who: "competitive strength and physique athletes", People: 246, Days: Spread{6.4, 1.7}, Every: Spread{5.6, 2.3}, Fact: factRogerson},
	{Who: "strength and physique coaches", People: 18, DaysRange: between(5.0, 7), EveryWeek: between(4.0, 6), Fact: factBell},
}

// Deloads returns what was published on planned lighter weeks, all of it on
// athletes, and the reason why none is planned by default here: nothing was
// found for older adults, so that pain, soreness and stalled repetitions decide.
func Deloads() ([]Deload, evidence.Reason) {
	return append([]Deload(nil), deloads[:]...), evidence.Because("progression.no-deload", factNoDeload, factWeekOff)
}

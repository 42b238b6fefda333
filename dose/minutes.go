package dose

import (
	"math"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/evidence"
)

// Minutes returns the length of a session without its warm-up: the sets, the
// shortest rests between them, and two minutes from one exercise to the next.
// One-sided work counts each side.
func Minutes(items []Prescription) float64 {
	seconds := 0.0
	for _, item := range items {
		seconds += itemSeconds(item)
	}
	if len(items) > 1 {
		seconds += float64(changeSeconds * (len(items) - 1))
	}
	return seconds / 60
}

// wholeMinutes rounds the length of a session up.
func wholeMinutes(items []Prescription) int { return int(math.Ceil(Minutes(items))) }

func itemSeconds(p Prescription) float64 {
	sides := 1.0
	if p.OneSided {
		sides = 2
	}
	rest, _ := p.Rest.Min()
	sets := float64(p.Sets)
	return float64(sides*sets*setSeconds(p)) + float64((sets-1)*float64(rest))
}

func setSeconds(p Prescription) float64 {
	switch p.Measure {
	case exercise.Seconds:
		return float64(p.Count)
	case exercise.Metres:
		return float64(p.Count) / walkingPace
	}
	return float64(p.Count) * p.Tempo.Seconds()
}

// keepMinutes drops the last exercises, the smallest, until the session fits,
// and keeps at least one.
func (p *planner) keepMinutes() {
	for p.r.Minutes > 0 && len(p.items) > 1 && wholeMinutes(p.items) > p.r.Minutes {
		last := p.items[len(p.items)-1]
		p.items = p.items[:len(p.items)-1]
		why := evidence.Because("dose.no-minutes").With("minutes", p.r.Minutes)
		p.leftOut = append(p.leftOut, LeftOut{Exercise: last.Exercise, Reasons: []evidence.Reason{why}})
	}
}

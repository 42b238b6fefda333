package dose

import "example.org/posology/dose/exercise"

// Seconds returns the length of the exercise: its sets, each side where it is
// one-sided, and the shortest rests between them; 0 where there is no set.
func (p Prescription) Seconds() float64 {
	if p.Sets < 1 || p.Count < 0 {
		return 0
	}
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

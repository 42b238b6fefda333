package main

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
)

// leastShare is the share of the 1RM from which equations are ranked: below, they differ
// most where nobody doses by them.
const leastShare = 0.75

// A forward is how far an equation is wrong in the repetitions that are done with a load, as
// standard deviations of the logarithm in percent: its bias, what people differ by, what sets
// of a person do, and all of it for a set of somebody new. A load is chosen and repetitions
// come of it; ranked by the 1RM that repetitions give, flat curves would win.
type forward struct {
	Equation onerm.Formula `json:"equation"`
	Sets     int           `json:"sets"`
	Bias     float64       `json:"bias"`
	People   float64       `json:"people"`
	Within   float64       `json:"within"`
	Total    float64       `json:"total"`
}

// byPerson are the sets of each person.
func byPerson(sets []set) map[string][]set {
	by := map[string][]set{}
	for _, s := range sets {
		by[s.body] = append(by[s.body], s)
	}
	return by
}

// foretold takes people as random, by analysis of variance. It is false with fewer than two
// people, without anybody of several sets, and where the equation has no repetitions for a load.
func foretold(sets []set, f onerm.Formula) (forward, bool) {
	r := forward{Equation: f}
	var means []float64
	within, freedom, inverse := 0.0, 0, 0.0
	by := byPerson(sets)
	for _, s := range sets { // in their order, so that sums have the same digits
		own, ok := by[s.body]
		if !ok {
			continue
		}
		delete(by, s.body)
		list, ok := logs(own, f)
		if !ok {
			return r, false
		}
		if len(list) == 0 {
			continue
		}
		m, squares := meanOf(list)
		means, within = append(means, m), within+squares
		r.Sets, freedom, inverse = r.Sets+len(list), freedom+len(list)-1, inverse+1/float64(len(list))
	}
	if len(means) < 2 || freedom == 0 {
		return r, false
	}
	mean, between := meanOf(means)
	within /= float64(freedom)
	between = max(0, between/float64(len(means)-1)-float64(within*inverse)/float64(len(means)))
	r.Bias, r.People, r.Within = 100*mean, 100*math.Sqrt(between), 100*math.Sqrt(within)
	r.Total = 100 * math.Sqrt(float64(mean*mean)+between+within)
	return r, true
}

// logs are the logarithms of repetitions told over repetitions done.
func logs(sets []set, f onerm.Formula) (list []float64, ok bool) {
	for _, s := range sets {
		share := float64(s.load) / float64(s.oneRM)
		if share < leastShare || s.reps < 1 {
			continue
		}
		reps, err := f.Reps(units.Fraction(share))
		if err != nil {
			return nil, false
		}
		list = append(list, math.Log(reps/float64(s.reps)))
	}
	return list, true
}

// meanOf returns the mean and the sum of the squares about it.
func meanOf(list []float64) (mean, squares float64) {
	for _, x := range list {
		mean += x / float64(len(list))
	}
	for _, x := range list {
		squares += float64((x - mean) * (x - mean))
	}
	return mean, squares
}

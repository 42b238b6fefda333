package fit

import (
	"cmp"
	"math"
	"slices"

	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

var (
	sdRange       = units.Must(units.Between[units.Fraction](0.001, 0.5))
	expectedRange = units.Must(units.Between[units.Fraction](0.01, 1))
)

// A Point is a set, or what is known of one: a load and the repetitions to
// failure that belong to it. All points of a curve are of one exercise, side
// and hold, counted alike (per hand or total), and of weeks, not years: a
// person's profile drifts.
type Point struct {
	Load units.Mass `json:"load"` // above 0
	Reps float64    `json:"reps"` // to failure: done plus reserve; 1 to 30
	// SD is the standard error of the load that belongs to these repetitions,
	// as a share of it, 0.001 to 0.5: more where the reserve was guessed. Not
	// given, it is 4.2 %.
	SD units.Fraction `json:"sd,omitzero"`
	// Day is the day of the set. Sets of one day share half of their error
	// variance; a set whose day is not given shares with none.
	Day units.Day `json:"day,omitzero"`
}

// Validate returns every bad field of p at once.
func (p Point) Validate() error {
	var bad field.Errors
	bad.Refuse(p.Load <= 0, "/load", p.Load, "a mass above 0 kg", field.ErrOutOfRange)
	bad.Add("/reps", bend.CheckReps(p.Reps))
	bad.Refuse(p.SD != 0 && !sdRange.Contains(p.SD), "/sd", float64(p.SD), "0.001 to 0.5, or not given", field.ErrOutOfRange)
	if p.Day != 0 {
		bad.Add("/day", p.Day.Check())
	}
	return bad.Err()
}

// sd returns the standard error of the set.
func (p Point) sd() float64 {
	if p.SD == 0 {
		return setSD
	}
	return float64(p.SD)
}

// ordered returns the points by day, repetitions, load and error, so that the
// order in which they come changes no digit of a sum.
func ordered(points []Point) []Point {
	sorted := slices.Clone(points)
	slices.SortFunc(sorted, func(p, q Point) int {
		return cmp.Or(cmp.Compare(p.Day, q.Day), cmp.Compare(p.Reps, q.Reps), cmp.Compare(p.Load, q.Load), cmp.Compare(p.SD, q.SD))
	})
	return sorted
}

// counts returns how many different repetition counts the points have.
func counts(points []Point) int {
	different := map[float64]bool{}
	for _, p := range points {
		different[p.Reps] = true
	}
	return len(different)
}

// studied returns the repetitions from the fewest to the most.
func studied(points []Point) units.Range[float64] {
	least, most := points[0].Reps, points[0].Reps
	for _, p := range points {
		least, most = min(least, p.Reps), max(most, p.Reps)
	}
	return units.Must(units.Between(least, most)) // ordered, and no NaN
}

// days returns the first and the last day given, not stated if none is.
func days(points []Point) units.Range[units.Day] {
	var first, last units.Day
	for _, p := range points {
		if p.Day != 0 {
			last = max(last, p.Day)
			if first == 0 || p.Day < first {
				first = p.Day
			}
		}
	}
	if first == 0 {
		return units.Range[units.Day]{}
	}
	return units.Must(units.Between(first, last)) // ordered
}

// visits returns the ends of the groups of ordered points that share a day.
func visits(points []Point) []int {
	var ends []int
	for i, p := range points {
		if i+1 == len(points) || p.Day == 0 || points[i+1].Day != p.Day {
			ends = append(ends, i+1)
		}
	}
	return ends
}

// whiten turns errors of variance 1, of which those of one visit share sameDay,
// into independent ones: the inverse root of their correlation.
func whiten(x []float64, ends []int) {
	from := 0
	for _, to := range ends {
		visit := x[from:to]
		from = to
		n := float64(len(visit))
		if n == 1 {
			continue
		}
		mean := 0.0
		for _, v := range visit {
			mean += v / n
		}
		pull := mean * (1 - math.Sqrt((1-sameDay)/(1-sameDay+float64(n*sameDay))))
		for i := range visit {
			visit[i] = (visit[i] - pull) / math.Sqrt(1-sameDay)
		}
	}
}

package onerm

import "math"

// A pile adds up weighted parts of errors. What sets share is added before it is
// squared, so that a pile is worked out in one pass, and two piles of different
// days, or of one day each, make one.
type pile struct {
	weight float64
	mean   float64 // sum of the weighted 1RM, in ng
	shared float64 // sum of the parts that stay with person and equation
	day    float64 // sum of the parts of the pile's one day; 0 where it has several
	days   float64 // squares of the sums of its days
	set    float64 // squares of the sets' own parts
}

// of returns the pile of one set.
func (c *combination) of(i int) pile {
	w := c.weight[i]
	day, set := float64(w*c.day[i]), float64(w*c.set[i])
	return pile{weight: w, mean: float64(w * float64(c.sets[i].OneRM)), shared: float64(w * c.shared[i]), day: day, days: float64(day * day), set: float64(set * set)}
}

// sameDay joins piles of one and the same day.
func (p pile) sameDay(q pile) pile {
	day := p.day + q.day
	return pile{p.weight + q.weight, p.mean + q.mean, p.shared + q.shared, day, float64(day * day), p.set + q.set}
}

// otherDay joins piles that have no day in common.
func (p pile) otherDay(q pile) pile {
	return pile{p.weight + q.weight, p.mean + q.mean, p.shared + q.shared, 0, p.days + q.days, p.set + q.set}
}

// variance is that of the weighted sum of the errors.
func (p pile) variance() float64 { return float64(p.shared*p.shared) + p.days + p.set }

// others returns, for each of the piles in a row, what joins all the others:
// sums from both ends, since taking one away from the whole loses digits where
// that one weighs nearly everything.
func others(row []pile, join func(p, q pile) pile) []pile {
	rest := make([]pile, len(row))
	var before, after pile
	for i, p := range row {
		rest[i] = before
		before = join(before, p)
	}
	for i := len(row) - 1; i >= 0; i-- {
		rest[i] = join(rest[i], after)
		after = join(row[i], after)
	}
	return rest
}

// byDay returns the sets' piles, day by day; the sets are in the order of their days.
func (c *combination) byDay() [][]pile {
	var days [][]pile
	for i := range c.sets {
		if i == 0 || c.sets[i].Day != c.sets[i-1].Day {
			days = append(days, nil)
		}
		days[len(days)-1] = append(days[len(days)-1], c.of(i))
	}
	return days
}

// whole joins the piles of one day.
func whole(day []pile) pile {
	var sum pile
	for _, p := range day {
		sum = sum.sameDay(p)
	}
	return sum
}

// variance returns that of the weighted mean.
func (c *combination) variance() float64 {
	var all pile
	for _, day := range c.byDay() {
		all = all.otherDay(whole(day))
	}
	return all.variance()
}

// findUnfit sets each estimate against the weighted mean of the others, in time
// that grows with the number of sets.
func (c *combination) findUnfit() {
	days := c.byDay()
	wholes := make([]pile, len(days))
	for d, day := range days {
		wholes[d] = whole(day)
	}
	elsewhere := others(wholes, pile.otherDay)
	i := 0
	for d, day := range days {
		for _, sameDay := range others(day, pile.sameDay) {
			if !c.fits(i, sameDay, elsewhere[d]) {
				c.unfit = append(c.unfit, i)
			}
			i++
		}
	}
}

// fits reports whether set i lies as near to the mean of the others, of its own
// day and of other days, as sets do.
func (c *combination) fits(i int, sameDay, elsewhere pile) bool {
	rest := sameDay.weight + elsewhere.weight
	mean := (sameDay.mean + elsewhere.mean) / rest
	shared := c.shared[i] - (sameDay.shared+elsewhere.shared)/rest
	day := c.day[i] - sameDay.day/rest
	own := (elsewhere.days + sameDay.set + elsewhere.set) / float64(rest*rest)
	variance := float64(shared*shared) + float64(day*day) + float64(c.set[i]*c.set[i]) + own
	apart := math.Abs(float64(c.sets[i].OneRM)-mean) / c.best
	return !(rest > 0 && apart > normal(unfitLevel)*math.Sqrt(variance))
}

package track

import "slices"

// lookBack smooths a model with a slope: from the last day backwards each day is
// moved by what later days moved the next one (Rauch, Tung and Striebel 1965). The
// variances are sums of squares, so that they cannot fall below zero.
func (t *Track) lookBack() {
	n := len(t.filtered)
	t.smoothed = slices.Grow(t.smoothed, n)[:n]
	t.smoothed[n-1] = t.filtered[n-1]
	for i := n - 2; i >= 0; i-- {
		t.smoothed[i] = t.filtered[i].smoothed(t.model.gap(daysFrom(t.days[i], t.days[i+1])), t.smoothed[i+1])
	}
}

// smoothed returns what is known of the day of b once more is known of the next one,
// g later.
func (b Belief) smoothed(g gap, next Belief) Belief {
	back := b.back(g)
	level := next.Level - b.Level - float64(g.reach*b.Slope)
	slope := next.Slope - float64(g.keep*b.Slope)
	kept := matrix{1 - back.a, -float64(back.a*g.reach) - float64(back.b*g.keep), -back.c, 1 - float64(back.c*g.reach) - float64(back.d*g.keep)}
	v := kept.around(matrix{b.LevelVar, b.Covariance, b.Covariance, b.SlopeVar}).
		plus(back.around(matrix{g.level + next.LevelVar, g.both + next.Covariance, g.both + next.Covariance, g.slope + next.SlopeVar}))
	s := Belief{Day: b.Day, LevelVar: v.a, Covariance: v.b, SlopeVar: v.d}
	s.Level = b.Level + float64(back.a*level) + float64(back.b*slope)
	s.Slope = b.Slope + float64(back.c*level) + float64(back.d*slope)
	s.Free = next.Free // free to the end where it never was told
	return s
}

// walkBack smooths a local level.
func (t *Track) walkBack() {
	n := len(t.days)
	level, variance := t.level[n-1], t.variance[n-1]
	t.smooth[n-1], t.smoothVar[n-1] = level, variance
	for i := n - 2; i >= 0; i-- {
		own := t.variance[i]
		step := float64(daysFrom(t.days[i], t.days[i+1])) * t.model.Level
		back := 0.0
		if own > 0 {
			back = own / (own + step)
		}
		level = t.level[i] + float64(back*(level-t.level[i]))
		variance = float64((1-back)*own) + float64(float64(back*back)*variance)
		t.smooth[i], t.smoothVar[i] = level, variance
	}
}

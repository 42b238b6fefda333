package track

import "math"

// first returns b after a value was seen that begins what nothing was known of: the
// level, or the slope. It is the exact limit of a variance that grows beyond all
// bounds (Durbin and Koopman 2012, section 5.2.2), for the direction in which it is
// unknown, which is one at a time since the first day leaves the slope alone.
func (b Belief) first(value, variance float64) Belief {
	slope := 0.0 // of the gain; that of the level is one
	free := [2]float64{}
	if b.NoLevel {
		free = b.Free
	} else {
		slope = b.Free[1] / b.Free[0]
	}
	v, f := value-b.Level, b.LevelVar+variance
	return Belief{
		Day:        b.Day,
		Level:      value,
		Slope:      b.Slope + float64(slope*v),
		LevelVar:   variance,
		Covariance: float64(slope * variance),
		SlopeVar:   math.Max(0, b.SlopeVar-float64(2*slope*b.Covariance)+float64(float64(slope*slope)*f)),
		Free:       free,
	}
}

// A matrix is of two rows: a b; c d.
type matrix struct{ a, b, c, d float64 }

func (x matrix) times(y matrix) matrix {
	return matrix{
		float64(x.a*y.a) + float64(x.b*y.c), float64(x.a*y.b) + float64(x.b*y.d),
		float64(x.c*y.a) + float64(x.d*y.c), float64(x.c*y.b) + float64(x.d*y.d),
	}
}

func (x matrix) turned() matrix { return matrix{x.a, x.c, x.b, x.d} }

func (x matrix) plus(y matrix) matrix { return matrix{x.a + y.a, x.b + y.b, x.c + y.c, x.d + y.d} }

// around returns x·y·xᵀ.
func (x matrix) around(y matrix) matrix { return x.times(y).times(x.turned()) }

// flat is what of a matrix's determinant is rounding alone.
const flat = 1e-14

// back returns by how much what is known of the day after g moves what is known of
// the day b: the covariance of the two over the variance of the later one. Where the
// slope is still free it is the limit for a variance beyond all bounds, which has
// the adjugate for its inverse.
func (b Belief) back(g gap) matrix {
	now := matrix{b.LevelVar, b.Covariance, b.Covariance, b.SlopeVar}
	move := matrix{1, g.reach, 0, g.keep}
	next := move.around(now).plus(matrix{g.level, g.both, g.both, g.slope})
	across := now.times(move.turned())
	if b.Free[1] != 0 {
		return b.backFree(across, next, g)
	}
	if next.a == 0 { // known beyond doubt
		return matrix{}
	}
	whole := float64(next.a * next.d)
	det := whole - float64(next.b*next.b)
	if det <= flat*whole { // the later slope follows from the later level
		return matrix{across.a / next.a, 0, across.c / next.a, 0}
	}
	return across.times(matrix{next.d / det, -next.b / det, -next.b / det, next.a / det})
}

// backFree is back where the slope is free, with the finite part of the variances.
func (b Belief) backFree(across, next matrix, g gap) matrix {
	level, slope := b.Free[0]+float64(g.reach*b.Free[1]), g.keep*b.Free[1]
	adjugate := matrix{next.d, -next.b, -next.b, next.a}
	x := float64(level*adjugate.a) + float64(slope*adjugate.c)
	y := float64(level*adjugate.b) + float64(slope*adjugate.d)
	c := float64(x*level) + float64(y*slope)
	if c <= flat*next.a*level*level { // nothing of the slope is left by then
		return matrix{b.Free[0] / level, 0, b.Free[1] / level, 0}
	}
	apart := matrix{slope * slope, -level * slope, -level * slope, level * level}
	finite := across.times(apart)
	return matrix{
		(float64(b.Free[0]*x) + finite.a) / c, (float64(b.Free[0]*y) + finite.b) / c,
		(float64(b.Free[1]*x) + finite.c) / c, (float64(b.Free[1]*y) + finite.d) / c,
	}
}

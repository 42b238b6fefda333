package track_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"example.org/posology/progression/track"
	"example.org/posology/units"
)

// A direct is the plain answer for a short series: the joint normal distribution of
// all states and readings, day by day, conditioned on the readings at once. What is
// unknown at the start is a fixed effect, found by generalised least squares, which is
// what a variance beyond all bounds comes to.
type direct struct {
	start       units.Day
	state       *mat.Dense // covariance of level and slope on every day, two rows a day
	reading     *mat.Dense // of the readings
	between     *mat.Dense // of states with readings
	free        *mat.Dense // what each unknown of the start adds to the states
	freeReading *mat.Dense // and to the readings
	values      *mat.VecDense
	logLik      float64
	mean        *mat.VecDense
	variance    *mat.Dense
}

func newDirect(m track.Model, prior *track.Belief, readings []track.Reading) *direct {
	start, end := readings[0].Day, readings[len(readings)-1].Day
	days, n := int(end-start)+1, len(readings)
	keep, reach := 0.0, 0.0
	switch m.Kind {
	case track.LinearTrend:
		keep, reach = 1, 1
	case track.DampedTrend:
		keep, reach = m.Keep, 1
	}
	move := mat.NewDense(2, 2, []float64{1, reach, 0, keep})
	d := &direct{start: start, state: mat.NewDense(2*days, 2*days, nil)}
	unknown := [][2]float64{{1, 0}}
	var p mat.Dense
	p.CloneFrom(mat.NewDense(2, 2, []float64{0, 0, 0, m.FirstSlope}))
	if m.Kind != track.LocalLevel && m.FirstSlope == 0 {
		unknown = append(unknown, [2]float64{0, 1})
	}
	if prior != nil {
		unknown = nil
		p.CloneFrom(mat.NewDense(2, 2, []float64{prior.LevelVar, prior.Covariance, prior.Covariance, prior.SlopeVar}))
	}
	d.free = mat.NewDense(2*days, max(1, len(unknown)), nil)
	for k, u := range unknown {
		d.free.Set(0, k, u[0])
		d.free.Set(1, k, u[1])
	}
	for t := range days {
		if t > 0 {
			var next mat.Dense
			next.Product(move, &p, move.T())
			next.Set(0, 0, next.At(0, 0)+m.Level)
			next.Set(1, 1, next.At(1, 1)+m.Slope)
			p.CloneFrom(&next)
			var f mat.Dense
			f.Mul(move, d.free.Slice(2*t-2, 2*t, 0, d.free.RawMatrix().Cols))
			d.free.Slice(2*t, 2*t+2, 0, d.free.RawMatrix().Cols).(*mat.Dense).Copy(&f)
		}
		across := mat.DenseCopyOf(&p)
		for u := t; u < days; u++ {
			d.state.Slice(2*t, 2*t+2, 2*u, 2*u+2).(*mat.Dense).Copy(across.T())
			d.state.Slice(2*u, 2*u+2, 2*t, 2*t+2).(*mat.Dense).Copy(across)
			var next mat.Dense
			next.Mul(move, across)
			across.CloneFrom(&next)
		}
	}
	d.reading, d.between, d.values = mat.NewDense(n, n, nil), mat.NewDense(2*days, n, nil), mat.NewVecDense(n, nil)
	d.freeReading = mat.NewDense(n, d.free.RawMatrix().Cols, nil)
	for i, r := range readings {
		at := 2 * int(r.Day-start)
		level := 0.0
		if prior != nil { // what is known beforehand goes on as it is expected
			x := mat.NewVecDense(2, []float64{prior.Level, prior.Slope})
			for range r.Day - start {
				var next mat.VecDense
				next.MulVec(move, x)
				x.CloneFromVec(&next)
			}
			level = x.AtVec(0)
		}
		d.values.SetVec(i, r.Value-level)
		d.freeReading.Slice(i, i+1, 0, d.free.RawMatrix().Cols).(*mat.Dense).Copy(d.free.Slice(at, at+1, 0, d.free.RawMatrix().Cols))
		for row := range 2 * days {
			d.between.Set(row, i, d.state.At(row, at))
		}
		for j, s := range readings {
			c := d.state.At(at, 2*int(s.Day-start))
			if s.Day == r.Day {
				c += m.Day
			}
			if i == j {
				c += r.Variance + m.Noise
			}
			d.reading.Set(i, j, c)
		}
	}
	d.condition(len(unknown))
	return d
}

func (d *direct) condition(unknown int) {
	n := d.values.Len()
	symmetric := mat.NewSymDense(n, nil)
	for i := range n {
		for j := i; j < n; j++ {
			symmetric.SetSym(i, j, d.reading.At(i, j))
		}
	}
	var factor mat.Cholesky
	if !factor.Factorize(symmetric) {
		panic("readings without a variance")
	}
	var weight mat.Dense // C Σ⁻¹
	var inverse mat.SymDense
	if err := factor.InverseTo(&inverse); err != nil {
		panic(err)
	}
	weight.Mul(d.between, &inverse)
	rest := mat.VecDenseCopyOf(d.values)
	d.mean, d.variance = mat.NewVecDense(d.between.RawMatrix().Rows, nil), mat.DenseCopyOf(d.state)
	d.logLik = -float64(n-unknown)*math.Log(2*math.Pi)/2 - factor.LogDet()/2
	var less mat.Dense
	less.Mul(&weight, d.between.T())
	d.variance.Sub(d.variance, &less)
	if unknown > 0 {
		var information, left mat.Dense
		information.Product(d.freeReading.T(), &inverse, d.freeReading)
		var covariance mat.Dense
		if err := covariance.Inverse(&information); err != nil {
			panic(err)
		}
		var effect, fitted mat.VecDense
		left.Product(&covariance, d.freeReading.T(), &inverse)
		effect.MulVec(&left, d.values)
		fitted.MulVec(d.freeReading, &effect)
		rest.SubVec(rest, &fitted)
		d.mean.MulVec(d.free, &effect)
		var moves, more mat.Dense
		moves.Mul(&weight, d.freeReading)
		moves.Sub(d.free, &moves)
		more.Product(&moves, &covariance, moves.T())
		d.variance.Add(d.variance, &more)
		d.logLik -= math.Log(mat.Det(&information)) / 2
	}
	var add mat.VecDense
	add.MulVec(&weight, rest)
	d.mean.AddVec(d.mean, &add)
	var spread mat.VecDense
	spread.MulVec(&inverse, rest)
	d.logLik -= mat.Dot(rest, &spread) / 2
}

// compare holds a belief against the plain answer of its day.
func (d *direct) compare(t failer, what string, b track.Belief, prior [2]float64) {
	t.Helper()
	if !b.Known() || b.Free != [2]float64{} {
		t.Errorf("%s: something is unknown in %+v", what, b)
	}
	at := 2 * int(b.Day-d.start)
	const tolerance = 1e-9
	scale := math.Max(1, math.Abs(d.mean.AtVec(at)))
	within(t, what+", level", b.Level-prior[0], d.mean.AtVec(at), tolerance*scale)
	within(t, what+", slope", b.Slope-prior[1], d.mean.AtVec(at+1), tolerance*scale)
	for _, v := range [][2]float64{{b.LevelVar, d.variance.At(at, at)}, {b.Covariance, d.variance.At(at, at+1)}, {b.SlopeVar, d.variance.At(at+1, at+1)}} {
		within(t, what+", variance", v[0], v[1], tolerance*math.Max(1, math.Abs(v[1])))
	}
}

// anySeries draws a model and a short series with gaps and several readings a day.
func anySeries(t *rapid.T) (track.Model, []track.Reading) {
	variance := rapid.SampledFrom([]float64{0, 0.01, 0.3, 1, 2})
	m := track.Model{Kind: rapid.SampledFrom(slices.Collect(track.TrendKinds())).Draw(t, "kind"), Level: variance.Draw(t, "level"), Day: variance.Draw(t, "day"), Noise: variance.Draw(t, "noise")}
	if m.Kind != track.LocalLevel {
		m.Slope = variance.Draw(t, "slope") / 1000 // more, and the plain answer loses digits
		m.FirstSlope = variance.Draw(t, "first slope") / 100
	}
	if m.Kind == track.DampedTrend {
		m.Keep = rapid.SampledFrom([]float64{0.5, 0.8, 0.99, 0.9999}).Draw(t, "keep")
	}
	day := first
	var readings []track.Reading
	for range rapid.IntRange(1, 9).Draw(t, "readings") {
		readings = append(readings, track.Reading{Day: day, Value: rapid.Float64Range(-5, 5).Draw(t, "value"), Variance: rapid.Float64Range(0.2, 2).Draw(t, "own")})
		day += units.Day(rapid.SampledFrom([]int{0, 0, 1, 1, 2, 3, 7, 12}).Draw(t, "gap"))
	}
	return m, readings
}

// TestAgainstDirect: filter, smoother and likelihood equal the conditional normal
// distribution worked out at once.
func TestAgainstDirect(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		s, err := new(track.Track), error(nil)
		if err = s.Run(m, track.State{}, readings); err != nil {
			t.Fatal(err)
		}
		unknown := 1
		if m.Kind != track.LocalLevel && m.FirstSlope == 0 {
			unknown = 2
		}
		var from track.State
		for i, r := range readings {
			if from, err = from.Seen(m, r); err != nil {
				t.Fatal(err)
			}
			if now := from.Now(m); now.Known() && now.Free[1] == 0 {
				newDirect(m, nil, readings[:i+1]).compare(t, "filtered", now, [2]float64{})
			}
		}
		if days := distinct(readings); days < unknown {
			return
		}
		whole := newDirect(m, nil, readings)
		for i := range s.Len() {
			whole.compare(t, "smoothed", s.Smoothed(i), [2]float64{})
		}
		for day := readings[0].Day; day <= readings[len(readings)-1].Day; day++ {
			b, err := s.On(day)
			if err != nil {
				t.Fatal(err)
			}
			whole.compare(t, "on any day", b, [2]float64{})
		}
		l := from.Likelihood(m)
		within(t, "likelihood", l.Diffuse, whole.logLik, 1e-9*math.Max(1, math.Abs(whole.logLik)))
		within(t, "likelihood of the series", s.State().Likelihood(m).Diffuse, l.Diffuse, 1e-10*math.Max(1, math.Abs(l.Diffuse)))
	})
}

// TestAgainstDirectWithPrior: the same from a start that is known.
func TestAgainstDirectWithPrior(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		prior := track.Belief{Day: first, Level: 1, LevelVar: 0.5}
		if m.Kind != track.LocalLevel {
			prior.Slope, prior.SlopeVar, prior.Covariance = 0.1, 0.04, 0.05
		}
		s := new(track.Track)
		if err := s.Run(m, track.State{Before: prior}, readings); err != nil {
			t.Fatal(err)
		}
		whole := newDirect(m, &prior, readings)
		for i := range s.Len() {
			b := s.Smoothed(i)
			whole.compare(t, "smoothed", b, expected(m, prior, b.Day))
		}
		l := s.State().Likelihood(m).Diffuse
		within(t, "likelihood", l, whole.logLik, 1e-9*math.Max(1, math.Abs(whole.logLik)))
	})
}

// expected is the prior carried on to a day, step by step.
func expected(m track.Model, b track.Belief, day units.Day) [2]float64 {
	level, slope := b.Level, b.Slope
	for range day - b.Day {
		switch m.Kind {
		case track.LinearTrend:
			level += slope
		case track.DampedTrend:
			level, slope = level+slope, slope*m.Keep
		default:
			slope = 0
		}
	}
	return [2]float64{level, slope}
}

func distinct(readings []track.Reading) int {
	days := map[units.Day]bool{}
	for _, r := range readings {
		days[r.Day] = true
	}
	return len(days)
}

// TestOrderAndSplit: the order within a day changes nothing; splitting and going on gives the same state.
func TestOrderAndSplit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		want := run(t, m, track.State{}, readings).State()
		mixed := slices.Clone(readings)
		rand.New(rand.NewPCG(1, rapid.Uint64().Draw(t, "seed"))).Shuffle(len(mixed), func(i, j int) { mixed[i], mixed[j] = mixed[j], mixed[i] })
		slices.SortStableFunc(mixed, func(a, b track.Reading) int { return int(a.Day - b.Day) })
		same(t, "another order", m, run(t, m, track.State{}, mixed).State(), want, 1e-12)
		cut := rapid.IntRange(0, len(readings)).Draw(t, "cut")
		var half track.State
		if cut > 0 {
			half = run(t, m, track.State{}, readings[:cut]).State()
		}
		for _, r := range readings[cut:] {
			var err error
			if half, err = half.Seen(m, r); err != nil {
				t.Fatal(err)
			}
		}
		same(t, "split", m, half, want, 1e-13)
	})
}

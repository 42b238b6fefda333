package fit_test

import (
	"iter"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

// A visit is what one record of the open data did in one protocol: the load and
// the repetitions to failure at 90, 80 and 70 % of the 1RM.
type visit struct {
	person string
	oneRM  units.Mass
	points [3]fit.Point
}

// visits reads the open data on the bench press: two protocols a record, all
// three loads in one visit and one load a visit. Records 14 and 16 are probably
// one person and count as such.
func visits(t testing.TB) []visit {
	t.Helper()
	names, rows := fieldtest.Table(t, published+"bench-rtf.csv", ',')
	column := map[string]int{}
	for i, name := range names {
		column[name] = i
	}
	var list []visit
	for _, row := range rows {
		at := func(name string) float64 { return fieldtest.Number(t, row[column[name]]) }
		for k, protocol := range []string{"SV", "MV"} {
			v := visit{person: row[column["subject_ID"]], oneRM: units.Must(units.Kilograms(at("1RM_true(kg)")))}
			if v.person == "16" {
				v.person = "14"
			}
			for i, percent := range []string{"90", "80", "70"} {
				v.points[i] = fit.Point{
					Load: units.Must(units.Kilograms(at("load" + percent + "(n)"))),
					Reps: at(protocol + "_reps" + percent + "(n)"),
					Day:  units.Day(100 + i*k), // the days themselves are not in the data
				}
			}
			list = append(list, v)
		}
	}
	return list
}

// A guess predicts, from two sets, the load of reps to failure.
type guess func(t testing.TB, known []fit.Point, reps float64) units.Mass

// byEquation takes the mean of the 1RMs that an equation gives, and its load.
func byEquation(f onerm.Formula) guess {
	return func(t testing.TB, known []fit.Point, reps float64) units.Mass {
		sum := 0.0
		for _, p := range known {
			sum += units.Must(f.OneRM(p.Load, p.Reps)).Kilograms()
		}
		return units.Must(f.Load(units.Must(units.Kilograms(sum/float64(len(known)))), reps))
	}
}

// byCurve takes the load of a curve with the population prior.
func byCurve(f onerm.Form) guess {
	return func(t testing.TB, known []fit.Point, reps float64) units.Mass {
		return units.Must(curve(t, known, fit.Options{Form: f}).Load(reps))
	}
}

// misses returns the errors of a guess in percent: of the load of each set from
// the other two, or of the measured 1RM from each two sets.
func misses(t testing.TB, list []visit, g guess, ofOneRM bool) []float64 {
	var all []float64
	for _, v := range list {
		for i := range v.points {
			known := []fit.Point{v.points[(i+1)%3], v.points[(i+2)%3]}
			target, reps := v.points[i].Load, v.points[i].Reps
			if ofOneRM {
				target, reps = v.oneRM, 1
			}
			all = append(all, 100*(g(t, known, reps).Kilograms()/target.Kilograms()-1))
		}
	}
	return all
}

func rmse(x []float64) float64 {
	sum := 0.0
	for _, v := range x {
		sum += v * v
	}
	return math.Sqrt(sum / float64(len(x)))
}

// without splits the visits into those of a person and those of all others.
func without(list []visit, person string) (own, others []visit) {
	for _, v := range list {
		if v.person == person {
			own = append(own, v)
		} else {
			others = append(others, v)
		}
	}
	return own, others
}

func persons(list []visit) []string {
	var all []string
	for _, v := range list {
		if !slices.Contains(all, v.person) {
			all = append(all, v.person)
		}
	}
	return all
}

// chosen is the equation with the least error on the visits given.
func chosen(t testing.TB, list []visit, ofOneRM bool) onerm.Formula {
	best, least := onerm.Formula(0), math.Inf(1)
	for f := range fixed() {
		if e := rmse(misses(t, list, byEquation(f), ofOneRM)); e < least {
			best, least = f, e
		}
	}
	return best
}

// fixed are the nine equations that need a load and repetitions only.
func fixed() iter.Seq[onerm.Formula] {
	return slices.Values([]onerm.Formula{
		onerm.Epley, onerm.Brzycki, onerm.Lander, onerm.Lombardi, onerm.Mayhew,
		onerm.OConner, onerm.Wathen, onerm.Adams, onerm.Kemmler2006,
	})
}

// byPopulation is the curve of the prior, which nothing personal goes into but
// its height: the mean of what each set says alone.
func byPopulation(t testing.TB, known []fit.Point, reps float64) units.Mass {
	product := 1.0
	for _, p := range known {
		product *= byCurve(onerm.Hyperbola)(t, []fit.Point{p}, reps).Kilograms()
	}
	return units.Must(units.Kilograms(math.Pow(product, 1/float64(len(known)))))
}

// TestThirdSet: two sets of a person are known. The person's own curve predicts
// the third set, and the 1RM, better than the equation that did best on
// everybody else, and better than the population's curve. Nothing is tuned on
// these data: the prior is made of published numbers.
//
// The comparison with the equations is over sets of 3 to 20 repetitions, the
// widest range that any of them was studied over. Outside, one person's 2 and
// another's 21 repetitions decide; there the curve is still ahead for the 1RM
// and level, 3.1 against 3.0 %, with the best equation for the load.
func TestThirdSet(t *testing.T) {
	all := visits(t)
	within := slices.DeleteFunc(slices.Clone(all), func(v visit) bool {
		return slices.ContainsFunc(v.points[:], func(p fit.Point) bool { return !onerm.Kemmler2006.Studied().Contains(p.Reps) })
	})
	for _, test := range []struct {
		name    string
		list    []visit
		ofOneRM bool
		visits  int
		margin  float64 // by how many percent the equation may be ahead
		most    float64 // error of the personal curve, in percent
	}{
		{"load within 3 to 20", within, false, 18, 0, 2.45},
		{"1RM within 3 to 20", within, true, 18, 0, 2.7},
		{"load", all, false, 20, 0.1, 3.1},
		{"1RM", all, true, 20, 0, 2.8},
	} {
		t.Run(test.name, func(t *testing.T) {
			if len(test.list) != test.visits {
				t.Errorf("%d visits, want %d", len(test.list), test.visits)
			}
			var equation []float64
			for _, p := range persons(test.list) {
				own, others := without(test.list, p)
				equation = append(equation, misses(t, own, byEquation(chosen(t, others, test.ofOneRM)), test.ofOneRM)...)
			}
			personal := rmse(misses(t, test.list, byCurve(onerm.Hyperbola), test.ofOneRM))
			population := rmse(misses(t, test.list, byPopulation, test.ofOneRM))
			if personal > rmse(equation)+test.margin || personal > population || personal > test.most {
				t.Errorf("personal %.2f, equation %.2f, population %.2f %%", personal, rmse(equation), population)
			}
			t.Logf("%d predictions: personal %.2f, equation %.2f, population %.2f %%", len(equation), personal, rmse(equation), population)
		})
	}
}

// How intervals of curves from two sets of a visit did: shares that hold the third set and
// the measured 1RM, half the width of the latter's as a share, and its errors in percent.
type coverage struct {
	load, oneRM, reps, half float64
	misses                  []float64
}

func covered(t testing.TB, level units.Fraction, of func([]fit.Point) onerm.Curve) coverage {
	t.Helper()
	var c coverage
	n := 0.0
	for _, v := range visits(t) {
		for i, p := range v.points {
			own := of([]fit.Point{v.points[(i+1)%3], v.points[(i+2)%3]})
			n++
			if units.Must(fit.LoadWithin(own, p.Reps, level)).Contains(p.Load) {
				c.load++
			}
			within := units.Must(fit.OneRMWithin(own, level))
			if within.Contains(v.oneRM) {
				c.oneRM++
			}
			low, _ := within.Min()
			high, _ := within.Max()
			c.half += (high - low).Kilograms() / own.OneRM().Kilograms() / 2
			if units.Must(fit.RepsWithin(own, p.Load, level)).Contains(p.Reps) {
				c.reps++
			}
			c.misses = append(c.misses, 100*(own.OneRM().Kilograms()/v.oneRM.Kilograms()-1))
		}
	}
	c.load, c.oneRM, c.reps, c.half = c.load/n, c.oneRM/n, c.reps/n, c.half/n
	t.Logf("%v: load %.0f, repetitions %.0f, 1RM %.0f %%; mean half width of the 1RM %.1f %%, error %.2f %%", level, 100*c.load, 100*c.reps, 100*c.oneRM, 100*c.half, rmse(c.misses))
	return c
}

// TestCoverage: how often the intervals hold the set that was left out, and the
// measured 1RM. They hold more than they promise: practised young people in a
// laboratory scatter less than the error that is assumed of a set.
func TestCoverage(t *testing.T) {
	for _, level := range []units.Fraction{0.8, 0.9} {
		c := covered(t, level, func(known []fit.Point) onerm.Curve { return curve(t, known, fit.Options{Form: onerm.Hyperbola}) })
		if least := float64(level) - 0.05; c.load < least || c.oneRM < least || c.reps < least {
			t.Errorf("at %v the intervals hold %.2f, %.2f and %.2f", level, c.load, c.reps, c.oneRM)
		}
	}
}

// honest reports whether intervals at 90 % hold what they should: 85 to 97 of 100, as far
// as sixty of nine people tell.
func (c coverage) honest() bool {
	within := func(x float64) bool { return x >= 0.85 && x <= 0.97 }
	return within(c.load) && within(c.oneRM) && within(c.reps)
}

// TestPractised: for practised people the personal curve's 1RM is no worse than that of the
// best equation, its interval is half as wide as without, and holds as often as it
// should. The same check finds intervals that are too wide, as those of Fit, and too narrow.
func TestPractised(t *testing.T) {
	practised := covered(t, 0.9, func(known []fit.Point) onerm.Curve { return units.Must(fit.ForPractised(known, onerm.Hyperbola)) })
	plain := covered(t, 0.9, func(known []fit.Point) onerm.Curve { return curve(t, known, fit.Options{Form: onerm.Hyperbola}) })
	if !practised.honest() || practised.half > plain.half/2 {
		t.Errorf("practised %+v", practised)
	}
	for f := range fixed() {
		var list []float64
		for _, v := range visits(t) {
			for i := range v.points {
				one := func(p fit.Point) float64 { return units.Must(f.OneRM(p.Load, p.Reps)).Kilograms() }
				list = append(list, 100*((one(v.points[(i+1)%3])+one(v.points[(i+2)%3]))/2/v.oneRM.Kilograms()-1))
			}
		}
		t.Logf("%v: %.2f %%", f, rmse(list))
		if rmse(practised.misses) > rmse(list) {
			t.Errorf("1RM wrong by %.2f %%, by %v %.2f %%", rmse(practised.misses), f, rmse(list))
		}
	}
	if plain.honest() {
		t.Errorf("intervals that always hold pass for honest: %+v", plain)
	}
	narrow := covered(t, 0.9, func(known []fit.Point) onerm.Curve {
		for i := range known {
			known[i].SD = 0.0125
		}
		return units.Must(fit.ForPractised(known, onerm.Hyperbola))
	})
	if narrow.honest() {
		t.Errorf("intervals half as wide pass for honest: %+v", narrow)
	}
}

// Bad points are named as by Fit, in the order in which they came; the reason says where the
// expected 1RM is from.
func TestPractisedSays(t *testing.T) {
	_, err := fit.ForPractised([]fit.Point{{Load: kg(50), Reps: 5}, {Load: -1, Reps: 5}}, onerm.Hyperbola)
	if err == nil || !strings.Contains(err.Error(), "/points/1/load") {
		t.Error(err)
	}
	if _, err := fit.ForPractised([]fit.Point{{Load: kg(50), Reps: 5}}, 0); err == nil || !strings.Contains(err.Error(), "/options/form") {
		t.Error(err)
	}
	if _, err := fit.ForPractised([]fit.Point{{Load: units.MaxMass, Reps: 5}}, onerm.Hyperbola); err == nil {
		t.Error("a 1RM above all masses")
	}
	a, b := fit.Point{Load: kg(80), Reps: 10}, fit.Point{Load: kg(90), Reps: 5, SD: 0.01}
	one, other := units.Must(fit.ForPractised([]fit.Point{a, b}, onerm.Hyperbola)), units.Must(fit.ForPractised([]fit.Point{b, a}, onerm.Hyperbola))
	if one.OneRM() != other.OneRM() {
		t.Errorf("%v and %v in another order", one.OneRM(), other.OneRM())
	}
	codes := one.Data().Reasons
	if !slices.ContainsFunc(codes, hasCode("fit.practised")) || slices.ContainsFunc(codes, hasCode("fit.expected")) {
		t.Error(codes)
	}
}

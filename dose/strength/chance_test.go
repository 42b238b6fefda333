package strength_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func kg(x float64) units.Mass { return units.Must(units.Kilograms(x)) }

// The formulation again, from the tail of the normal distribution instead of its
// quantile: the chance that fewer than r repetitions can be done.
func fewer(r float64, a strength.Ability, p strength.Prospect) float64 {
	last := a.Log
	if p.Last > 0 {
		last = math.Log(p.Last.Kilograms())
	}
	load := math.Log(p.Load.Kilograms())
	s := math.Sqrt(a.Variance + math.Pow(0.042, 2) + math.Pow(0.06*(load-last), 2))
	mean := a.Log - 0.0075/7*float64(p.Missed) - load
	if r <= -30 {
		return 0
	}
	return math.Erfc((mean-math.Log(1+r/30))/s/math.Sqrt2) / 2
}

var (
	drawAbility = rapid.Custom(func(t *rapid.T) strength.Ability {
		return strength.Ability{Log: rapid.Float64Range(0, 4).Draw(t, "log"), Variance: rapid.Float64Range(0.0005, 0.05).Draw(t, "variance")}
	})
	drawProspect = rapid.Custom(func(t *rapid.T) strength.Prospect {
		return strength.Prospect{
			Load: kg(rapid.Float64Range(0.5, 60).Draw(t, "load")), Last: kg(rapid.SampledFrom([]float64{0, 1, 5, 20, 60}).Draw(t, "last")),
			Reserve: units.RIR(rapid.IntRange(0, 5).Draw(t, "reserve")), Missed: rapid.IntRange(0, 100).Draw(t, "missed"),
		}
	})
	drawChance = rapid.Custom(func(t *rapid.T) strength.Chance {
		below := rapid.Float64Range(0.01, 0.20).Draw(t, "below")
		return strength.Chance{Reserve: units.Fraction(below), Finish: units.Fraction(rapid.Float64Range(0.01, min(0.10, below)).Draw(t, "without"))}
	})
)

// TestMostIsTheLargestAllowed: with n both chances hold, with one more one does not.
func TestMostIsTheLargestAllowed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, p, c := drawAbility.Draw(t, "a"), drawProspect.Draw(t, "p"), drawChance.Draw(t, "c")
		n, ok := a.Most(p, c)
		if !ok {
			t.Fatal("no answer")
		}
		allowed := func(n int, slack float64) bool {
			return fewer(float64(n)+float64(p.Reserve)-1, a, p) <= float64(c.Reserve)+slack && fewer(float64(n)+1, a, p) <= float64(c.Finish)+slack
		}
		if n > 0 && !allowed(n, 1e-6) || n < 100 && allowed(n+1, -1e-6) {
			t.Errorf("%+v, %+v, %v: %d", a, p, c, n)
		}
	})
}

// TestChancesAreKept draws what happens: with the heaviest load that a count is
// allowed for, it goes wrong as often as was stated, and no more.
func TestChancesAreKept(t *testing.T) {
	const draws = 200_000
	a, c := strength.Ability{Log: math.Log(10), Variance: 0.001}, strength.StandardChance()
	for _, reserve := range []units.RIR{0, 2, 3, 5} {
		for _, n := range []int{6, 8, 12, 20} {
			p := strength.Prospect{Last: kg(6), Reserve: reserve}
			for grams := 12_000; ; grams-- {
				p.Load = units.Mass(grams) * units.Gram
				if most, _ := a.Most(p, c); most >= n {
					break
				}
			}
			r := rand.New(rand.NewPCG(20261129, uint64(n)))
			below, without, unfinished := 0, 0, 0
			for range draws {
				truth := a.Log + math.Sqrt(a.Variance)*r.NormFloat64() + 0.042*r.NormFloat64() + 0.06*math.Log(p.Load.Kilograms()/6)*r.NormFloat64()
				left := 30 * (math.Exp(truth)/p.Load.Kilograms() - 1)
				if left < float64(n)+float64(reserve)-1 {
					below++
				}
				if left < float64(n)+1 {
					without++
				}
				if left < float64(n) {
					unfinished++
				}
			}
			b, w, u := float64(below)/draws, float64(without)/draws, float64(unfinished)/draws
			if b > 0.102 || w > 0.052 || b < 0.098 && w < 0.048 { // within some three standard errors of drawing
				t.Errorf("%d with %v left at %v: %.4f below the reserve less one, %.4f without one more", n, reserve, p.Load, b, w)
			}
			if u > 0.035 || reserve <= 3 && n >= 8 && n <= 12 && (u < 0.01 || u > 0.03) { // "about 2 % cannot finish"
				t.Errorf("%d with %v left at %v: %.4f not finished", n, reserve, p.Load, u)
			}
		}
	}
}

func TestMostIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, p, c := drawAbility.Draw(t, "a"), drawProspect.Draw(t, "p"), drawChance.Draw(t, "c")
		b, q, d := a, p, c
		switch what := rapid.IntRange(0, 6).Draw(t, "what"); what {
		case 0:
			q.Load += kg(rapid.Float64Range(0, 5).Draw(t, "more"))
		case 1:
			q.Reserve += units.RIR(rapid.Float64Range(0, 3).Draw(t, "more"))
		case 2:
			b.Variance += rapid.Float64Range(0, 0.1).Draw(t, "more")
		case 3:
			q.Missed += rapid.IntRange(0, 60).Draw(t, "more")
		case 4:
			b.Log -= rapid.Float64Range(0, 1).Draw(t, "less")
		case 5:
			d.Finish = units.Fraction(rapid.Float64Range(0.01, float64(c.Finish)).Draw(t, "less"))
		case 6:
			b.Untold = true
		}
		before, _ := a.Most(p, c)
		if after, ok := b.Most(q, d); !ok || after > before {
			t.Errorf("%+v %+v %v: %d; worse %+v %+v %v: %d", a, p, c, before, b, q, d, after)
		}
	})
}

// TestCountRisesByItself: with 3 asked, what is read beyond the count done at every
// visit has to be 5 to 6 repetitions for the count to stay, and 6 to 7 for it to
// rise: the most that is read is just enough.
func TestCountRisesByItself(t *testing.T) {
	for n := 8; n <= 15; n++ {
		stays, rises := 0, 0
		for told := 9; told >= 2; told-- {
			var a strength.Ability
			done := set(n, float64(told))
			for range 40 {
				a = a.Seen(2, 3, done) // a set is missing, so that much told is no lower bound
			}
			most, _ := a.Most(strength.Prospect{Load: done.Load, Last: done.Load, Reserve: 3}, strength.StandardChance())
			if most >= n {
				stays = told + 1
			}
			if most > n {
				rises = told + 1
			}
		}
		if stays < 5 || stays > 6 || rises < 6 || rises > 7 {
			t.Errorf("%d repetitions: stays from %d beyond, rises from %d", n, stays, rises)
		}
	}
}

func TestMostRefuses(t *testing.T) {
	good, known, c := strength.Prospect{Load: kg(5), Reserve: 3}, strength.Ability{Log: 2, Variance: 0.01}, strength.StandardChance()
	if n, ok := known.Most(good, c); !ok || n != 5 {
		t.Errorf("5 kg of 7.4: %d, %v", n, ok)
	}
	if n, ok := known.Most(strength.Prospect{Load: kg(1e-9)}, c); !ok || n != 100 {
		t.Errorf("a microgram: %d, %v", n, ok)
	}
	if n, ok := known.Most(strength.Prospect{Load: kg(8), Reserve: 3}, c); !ok || n != 0 {
		t.Errorf("more than the 1RM: %d, %v", n, ok)
	}
	for name, try := range map[string]func() (int, bool){
		"nothing known": func() (int, bool) { return strength.Ability{}.Most(good, c) },
		"not a number":  func() (int, bool) { return strength.Ability{Log: math.NaN(), Variance: 0.01}.Most(good, c) },
		"no load":       func() (int, bool) { return known.Most(strength.Prospect{Reserve: 3}, c) },
		"a last below 0": func() (int, bool) {
			return known.Most(strength.Prospect{Load: kg(5), Last: -1}, c)
		},
		"reserve of 11": func() (int, bool) { return known.Most(strength.Prospect{Load: kg(5), Reserve: 11}, c) },
		"reserve NaN": func() (int, bool) {
			return known.Most(strength.Prospect{Load: kg(5), Reserve: units.RIR(math.NaN())}, c)
		},
		"days before 0":  func() (int, bool) { return known.Most(strength.Prospect{Load: kg(5), Missed: -1}, c) },
		"no chance":      func() (int, bool) { return known.Most(good, strength.Chance{}) },
		"a chance above": func() (int, bool) { return known.Most(good, strength.Chance{Reserve: 0.21, Finish: 0.05}) },
	} {
		if n, ok := try(); ok || n != 0 {
			t.Errorf("%s: %d, %v", name, n, ok)
		}
	}
}

func TestChanceChecks(t *testing.T) {
	for _, tt := range []struct {
		c    strength.Chance
		path string
	}{
		{strength.Chance{Reserve: 0.10, Finish: 0.05}, ""}, {strength.Chance{Reserve: 0.20, Finish: 0.10}, ""}, {strength.Chance{Reserve: 0.01, Finish: 0.01}, ""},
		{strength.Chance{Reserve: 0.205, Finish: 0.05}, "/reserve"}, {strength.Chance{Reserve: 0.20, Finish: 0.11}, "/finish"},
		{strength.Chance{Reserve: 0.04, Finish: 0.05}, "/finish"}, {strength.Chance{Reserve: 0.10, Finish: 0.005}, "/finish"},
	} {
		var bad *field.Error
		err := tt.c.Validate()
		if (err != nil) != (tt.path != "") || err != nil && (!errors.As(err, &bad) || bad.Path != tt.path || !errors.Is(err, field.ErrOutOfRange)) {
			t.Errorf("%v: %v, want %q", tt.c, err, tt.path)
		}
		if _, ok := (strength.Ability{Variance: 0.01}).Most(strength.Prospect{Load: kg(1)}, tt.c); ok != (tt.path == "") {
			t.Errorf("%v: Most takes it %v", tt.c, ok)
		}
	}
	var all field.Errors
	if err := (strength.Chance{}).Validate(); !errors.As(err, &all) || len(all) != 2 {
		t.Errorf("no chance: %v", err)
	}
	if got, want := strength.StandardChance().String(), "at most 10 % below the reserve less one, at most 5 % without one more than the count"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

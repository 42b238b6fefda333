package simulate_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/progression/simulate"
	"example.org/posology/units"
)

// fine is a rack of every fifth of a kilogram to 20.
func fine() []float64 {
	var kg []float64
	for m := range 100 {
		kg = append(kg, float64(m+1)/5)
	}
	return kg
}

// A held dose is the same throughout, as a share of the strength reached.
type held struct {
	share      float64 // of the true 1RM
	left, sets int
	rest       int // seconds; 0: as before
}

// choose gives the held dose. Epley's equation is the trainee's own.
func (h held) choose(s simulate.Scene) (progression.Decision, error) {
	p := s.Course.Log[len(s.Course.Log)-1].Plan
	p.Mode, p.Finding, p.Phase, p.Reserve = dose.Continued, nil, dose.Build, dose.Reserve{Least: 3, Countable: true}
	p.Load = s.Table.Lightest()
	for l := range s.Table.Loads() {
		if s.Able(l.Each()) >= 30*(1/h.share-1)-1e-9 {
			p.Load = l
		}
	}
	p.Count, p.Sets = max(1, int(s.Able(p.Load.Each()))-h.left), h.sets
	if h.rest > 0 {
		p.Rest = units.Exactly(h.rest)
	}
	return progression.Decision{Action: progression.HoldDose, Next: &p}, nil
}

// grows returns the logarithm of the strength after so many weeks, on the given days,
// of somebody of 12 kg whose strength does not change from day to day.
func (h held) grows(t testing.TB, weeks int, days ...int) float64 {
	t.Helper()
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(fine()...))
	s.Weeks, s.Days, s.Choose = weeks+1, days, h.choose
	if len(days) == 0 {
		s.Days = []int{0, 3}
	}
	tr := exact(12)
	tr.Gain, tr.Stubborn = simulate.FirstYear(), true
	visits := runOf(t, tr, s, 1)
	for _, v := range visits {
		if v.Week == weeks+1 {
			return math.Log(v.Usual.Kilograms() / 12)
		}
	}
	t.Fatal("ended early")
	return 0
}

var reference = held{share: 0.7, left: 4, sets: 3}

// At the reference dose strength grows as weeks to the power of 0.085: by 16, 24, 27
// and 40 % in 6, 12, 17 and 52 weeks (fitted to Steele 2022, computed), the trials net of
// controls by 17, 37, 28 and 44 % in 6, 12, 17 and 50. The first dose is light, and
// growth is counted from a first week: 2 points.
func TestGrowthAtTheReferenceDose(t *testing.T) {
	for weeks, percent := range map[int]float64{6: 16, 12: 24, 17: 27, 52: 40} {
		if got := 100 * math.Expm1(reference.grows(t, weeks)); math.Abs(got-percent) > 2 {
			t.Errorf("%d weeks: %.1f %%, published course %v %%", weeks, got, percent)
		}
	}
}

// Shares of the logarithmic gain of 12 weeks at the second test and after 2 and 5 weeks,
// in four lifts of young people (Hammarström 2020, open data, computed): 0.12 to 0.28,
// 0.36 to 0.58, 0.62 to 0.77. What is learned between the first tries is in it.
func TestCourseAgainstOpenData(t *testing.T) {
	whole := reference.grows(t, 12)
	for weeks, between := range map[int][2]float64{2: {0.36, 0.58}, 5: {0.62, 0.77}} {
		if got := reference.grows(t, weeks) / whole; got < between[0] || got > between[1] {
			t.Errorf("%d weeks: %.2f of the gain of 12, measured %v", weeks, got, between)
		}
	}
}

// Dose against gain, as ratios of logarithmic gains.
func TestGainByDose(t *testing.T) {
	ratio := func(a, b held, weeks int) float64 { return a.grows(t, weeks) / b.grows(t, weeks) }
	days := func(n ...int) float64 { return reference.grows(t, 24, n...) / reference.grows(t, 24) }
	for name, tt := range map[string]struct{ got, low, high float64 }{
		// de Vos 2005 (abstract), net of controls, 8 to 12 weeks: 0.56 and 0.75; Vincent 2002 0.97 for 50 to 80 %.
		"20 over 80 % of the 1RM": {ratio(held{share: 0.2, left: 4, sets: 3}, held{share: 0.8, left: 4, sets: 3}, 10), 0.50, 0.65},
		"50 over 80 % of the 1RM": {ratio(held{share: 0.5, left: 4, sets: 3}, held{share: 0.8, left: 4, sets: 3}, 10), 0.70, 0.97},
		// Bergamasco 2022 (abstract): 21.3 over 23.5 %; Vieira 2021 (abstract) less than half, with other loads.
		"far from failure at 40 %": {ratio(held{share: 0.4, left: 30, sets: 3}, held{share: 0.4, left: 1, sets: 3}, 12), 0.43, 0.91},
		// Hammarström 2020 (computed) 0.85 to 0.92, Radaelli 2014 (abstract) 16.1 over 21.7 %.
		"one set over three": {ratio(held{share: 0.7, left: 4, sets: 1}, reference, 12), 0.72, 0.92},
		// Taaffe 1999 (abstract) 0.88 and 0.95, Turpela 2017 (abstract) half and more in later months.
		"once over twice a week":  {days(0), 0.75, 0.88},
		"three times over twice":  {days(0, 2, 4), 1.0, 1.2},
		"light at first, then as": {lightAtFirst(t), 0.90, 1}, // Van Roie 2013 (abstract): 20 %, then 40 %, came to as much as 80 %
	} {
		if tt.got < tt.low-1e-9 || tt.got > tt.high {
			t.Errorf("%s: %.3f, want %v to %v", name, tt.got, tt.low, tt.high)
		}
	}
}

// lightAtFirst is how much of the gain of 24 weeks is reached with 6 light ones.
func lightAtFirst(t testing.TB) float64 {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(fine()...))
	s.Weeks = 25
	s.Choose = func(sc simulate.Scene) (progression.Decision, error) {
		if sc.Course.Day < firstDay+42 {
			return held{share: 0.3, left: 20, sets: 2}.choose(sc)
		}
		return reference.choose(sc)
	}
	tr := exact(12)
	tr.Gain, tr.Stubborn = simulate.FirstYear(), true
	visits := runOf(t, tr, s, 1)
	return math.Log(visits[48].Usual.Kilograms()/12) / reference.grows(t, 24)
}

// More load, fewer left or one set more never gain less, and a little more never gains
// much more: there is no edge.
func TestGrowthIsSmoothAndMonotone(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	for range 150 {
		h := held{share: 0.15 + 0.8*rng.Float64(), left: rng.IntN(25), sets: 1 + rng.IntN(3)}
		base := h.grows(t, 12)
		for name, more := range map[string]held{
			"load": {share: h.share + 0.02, left: h.left, sets: h.sets}, "fewer left": {share: h.share, left: max(0, h.left-1), sets: h.sets}, "a set": {share: h.share, left: h.left, sets: h.sets + 1},
		} {
			got := more.grows(t, 12)
			if got < base-0.004 { // weights of the rack are a fifth of a kilogram apart
				t.Errorf("%+v: more by %s, and %.4f after %.4f", h, name, got, base)
			}
			if name != "a set" && got > base+0.02 {
				t.Errorf("%+v: a little more by %s jumps from %.4f to %.4f", h, name, base, got)
			}
		}
	}
}

// Without a spread all gain alike at the same dose, whoever it is.
func TestNoSpreadGivesEqualGains(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(fine()...))
	s.Choose = reference.choose
	var gains []float64
	for seed := range uint64(5) {
		tr := exact(8 + float64(seed))
		tr.Gain, tr.Stubborn = simulate.FirstYear(), true
		visits := runOf(t, tr, s, seed)
		gains = append(gains, visits[31].Usual.Kilograms()/tr.OneRM.Kilograms())
	}
	for _, g := range gains {
		if math.Abs(g-gains[0]) > 0.005 { // of a fifth of a kilogram in the rack
			t.Errorf("gains %v", gains)
		}
	}
}

// A set to failure takes from the next what was measured, within 0.1: knee extension at
// 80 %, 5.6 and 4.8 of 10.8 a minute apart, 7.0 and 6.4 of 9.4 three minutes apart (2007,
// abstract). Stopping with three left spares most of it (Refalo 2023: about a quarter is
// left, computed).
func TestTiresFromSetToSet(t *testing.T) {
	falls := func(h held) (ratios []float64) {
		s := beginner(t, "one-arm-dumbbell-row", dumbbells(fine()...))
		s.Choose, s.Request.Side = h.choose, right
		tr := exact(12)
		tr.Tires, tr.Stubborn = true, true
		sets := runOf(t, tr, s, 1)[4].Sets
		for _, set := range sets {
			ratios = append(ratios, set.Able/sets[0].Able)
		}
		return ratios
	}
	for rest, want := range map[int][]float64{60: {1, 0.52, 0.44}, 180: {1, 0.74, 0.68}} {
		got := falls(held{share: 0.8, left: -1, sets: 3, rest: rest}) // one more than can be done
		for i := range want {
			if math.Abs(got[i]-want[i]) > 0.1 {
				t.Errorf("%d s: %.2f, measured %v", rest, got, want)
			}
		}
		if spared := falls(held{share: 0.8, left: 3, sets: 2, rest: rest}); spared[1] < 1-0.4*(1-want[1]) {
			t.Errorf("%d s, three left: %.2f", rest, spared)
		}
	}
}

// The order of the sets of a visit does not matter, and one more never takes away.
func TestSetsTogether(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 3))
	for range 1000 {
		var list []float64
		for range 1 + rng.IntN(5) {
			list = append(list, 1.2*rng.Float64())
		}
		got := simulate.Together(slices.Clone(list))
		more := simulate.Together(append(slices.Clone(list), 1.2*rng.Float64()))
		slices.Reverse(list)
		if back := simulate.Together(list); back != got || more < got || got > slices.Max(list) {
			t.Fatalf("%v: %v, %v turned round, %v with one more", list, got, back, more)
		}
	}
}

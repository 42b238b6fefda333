package onerm_test

import (
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A done set, by whole repetitions in reserve at the lower end of its rating.
type done struct {
	person   body.Person
	hold     body.Hold
	reps     int
	reserve  float64
	estimate onerm.Estimate
}

// everyEstimate returns the estimates of all sets that are not refused: 1 to 25
// repetitions, 0 to 5.5 in reserve in halves and every rating, by people on both
// sides of each bound.
func everyEstimate(t testing.TB) []done {
	t.Helper()
	var efforts []units.Effort
	for r := 0.0; r <= 5.5; r += 0.5 {
		efforts = append(efforts, units.Must(units.InReserve(r)))
	}
	for r := 5.0; r <= 10; r += 0.5 {
		efforts = append(efforts, units.Must(units.RPE(r)))
	}
	var list []done
	for _, p := range everyone() {
		for _, h := range []body.Hold{body.OnStack, body.OneHand} {
			for reps := 1; reps <= 25; reps++ {
				for _, effort := range efforts {
					s := set(reps, 0)
					s.Hold, s.Effort = h, effort
					e, err := onerm.FromSet(s, press(h), p)
					if err != nil {
						continue
					}
					low, _ := e.ToFailure.Min()
					list = append(list, done{p, h, reps, low - float64(reps), e})
				}
			}
		}
	}
	return list
}

// TestOrder: for the same person, hold and load, fewer repetitions or fewer in
// reserve never raise the lower end, across all rows of the interval table.
func TestOrder(t *testing.T) {
	type who struct {
		person body.Person
		hold   body.Hold
	}
	groups := map[who][]done{}
	for _, d := range everyEstimate(t) {
		w := who{d.person, d.hold}
		groups[w] = append(groups[w], d)
	}
	if len(groups) != 54 {
		t.Errorf("%d groups of estimates, want 54", len(groups))
	}
	for w, group := range groups {
		for _, a := range group {
			for _, b := range group {
				if a.reps <= b.reps && a.reserve <= b.reserve && dosetest.LowEnd(a.estimate) > dosetest.LowEnd(b.estimate) {
					t.Errorf("%+v: %d done and %v left give %v, but %d and %v give %v", w,
						a.reps, a.reserve, dosetest.LowEnd(a.estimate), b.reps, b.reserve, dosetest.LowEnd(b.estimate))
				}
			}
		}
	}
}

// TestWhole: every estimate is valid, its interval holds every answer at both
// counts and is no narrower than the least half-widths measured; the estimate is
// the lowest answer, but for O'Conner's in practised people, where doses follow
// the lowest of the others.
func TestWhole(t *testing.T) {
	for _, d := range everyEstimate(t) {
		e := d.estimate
		if err := e.Validate(); err != nil {
			t.Errorf("%+v: %v", d, err)
		}
		if !(dosetest.LowEnd(e) > 0 && dosetest.LowEnd(e) < e.OneRM) {
			t.Errorf("lower end %v, estimate %v", dosetest.LowEnd(e), e.OneRM)
		}
		high, _ := e.ToFailure.Max()
		lowest := e.OneRM
		for _, a := range e.Answers {
			further, err := a.Formula.OneRM(20*units.Kilogram, high)
			if err != nil || !e.Interval.Contains(further) {
				t.Errorf("%v at %v: %v outside %v (%v)", a.Formula, high, further, e.Interval, err)
			}
			if a.Formula == e.Loading {
				lowest = a.OneRM
			}
		}
		for _, a := range e.Answers {
			if a.OneRM < lowest && a.Formula != onerm.OConner {
				t.Errorf("%v answers %v, below %v by %v and %v", a.Formula, a.OneRM, lowest, e.Formula, e.Loading)
			}
		}
		if (e.Loading != 0) != (e.Formula == onerm.OConner) {
			t.Errorf("taken %v, doses by %v", e.Formula, e.Loading)
		}
		if top, _ := e.Interval.Max(); !(float64(top) >= 1.05*float64(e.OneRM) && float64(dosetest.LowEnd(e)) <= 0.95*float64(e.OneRM)) {
			t.Errorf("%v in %v: narrower than ± 5 %%", e.OneRM, e.Interval)
		}
		if kemmler := len(e.Answers) > 0 && e.Answers[len(e.Answers)-1].Formula == onerm.Kemmler2006; kemmler != (e.Formula == onerm.Kemmler2006) {
			t.Errorf("Kemmler 2006 answered at %v but %v was taken", e.ToFailure, e.Formula)
		}
	}
}

// TestAge: an older person, or one whose sex is not given, is never estimated
// higher.
func TestAge(t *testing.T) {
	for reps := 2; reps <= 10; reps++ {
		at := func(age body.Age, sex body.Sex) units.Mass {
			return dosetest.LowEnd(estimate(t, set(reps, 0), body.Person{Age: age, Sex: sex, Training: body.Advanced}))
		}
		if at(55, body.Female) > at(54, body.Female) || at(55, 0) > min(at(55, body.Female), at(55, body.Male)) {
			t.Errorf("%d repetitions: %v at 54, %v at 55, %v without sex, %v as a man", reps,
				at(54, body.Female), at(55, body.Female), at(55, 0), at(55, body.Male))
		}
	}
}

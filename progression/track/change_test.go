package track_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/track"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

func kg(x float64) units.Mass { return units.Must(units.Kilograms(x)) }

func ask(t failer, before, after track.MeanTest, r track.Reliability) track.RealChangeAnswer {
	t.Helper()
	a, err := track.RealChange(before, after, r, 0.95)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// TestRealChange: a single re-test of an older beginner shows nothing below 12 to 25 %,
// which is the detectable change at 4.2 and 9 %.
func TestRealChange(t *testing.T) {
	for _, test := range []struct {
		typical units.Fraction
		novel   bool
		after   float64
		want    function.Shown
	}{
		{0.042, false, 11.2, function.NotShown}, {0.042, false, 11.3, function.Real},
		{0.09, false, 12.6, function.NotShown}, {0.09, false, 12.8, function.Real},
		{0.042, true, 10.6, function.WithinLearning}, {0.042, true, 10.7, function.NotShown},
		{0.042, true, 11.9, function.NotShown}, {0.042, true, 12, function.Real},
		{0.042, false, 8.9, function.Real}, {0.042, false, 9, function.NotShown}, {0.042, true, 8.9, function.Real},
		{0.042, true, 10, function.NotShown},
	} {
		a := ask(t, track.MeanTest{Mean: kg(10), Count: 1, Novel: test.novel}, track.MeanTest{Mean: kg(test.after), Count: 1}, track.Reliability{Typical: test.typical, Rise: 0.066})
		if learned := len(a.Reasons) == 2; a.Shown != test.want || learned != test.novel || len(a.Reasons) > 2 {
			t.Errorf("%+v: %v, %v", test, a.Shown, a.Reasons)
		}
	}
}

// TestLearnedOfSeveral: of the mean of three tests the first ever is a third, and so of what
// was learned a third is taken off.
func TestLearnedOfSeveral(t *testing.T) {
	r := track.Reliability{Typical: 0.001, Rise: 0.06}
	for after, want := range map[float64]function.Shown{10.19: function.WithinLearning, 10.25: function.Real} {
		a := ask(t, track.MeanTest{Mean: kg(10), Count: 3, Novel: true}, track.MeanTest{Mean: kg(after), Count: 1}, r)
		within(t, "learned", float64(a.Learned), math.Cbrt(1.06)-1, 1e-12)
		if a.Shown != want {
			t.Errorf("%v: %+v", after, a)
		}
	}
}

// TestRealChangeProperties: more tests show smaller changes; a larger error shows fewer;
// the interval holds the change; turned round, the answer is the same where nothing was
// to be learned.
func TestRealChangeProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := track.Reliability{Typical: units.Fraction(rapid.Float64Range(0.01, 0.2).Draw(t, "typical"))}
		mass := rapid.Custom(func(t *rapid.T) units.Mass { return kg(rapid.Float64Range(2, 40).Draw(t, "kg")) })
		before := track.MeanTest{Mean: mass.Draw(t, "before"), Count: rapid.IntRange(1, 5).Draw(t, "tests before")}
		after := track.MeanTest{Mean: mass.Draw(t, "after"), Count: rapid.IntRange(1, 5).Draw(t, "tests after")}
		a := ask(t, before, after, r)
		if !(a.Low < a.Change && a.Change < a.High) || (a.Shown == function.Real) != (a.Low > 0 || a.High < 0) {
			t.Errorf("%+v", a)
		}
		more, worse := before, r
		more.Count++
		worse.Typical *= 1.2
		if b := ask(t, more, after, r); b.Detectable >= a.Detectable || a.Shown == function.Real && b.Shown != function.Real {
			t.Errorf("with one more %+v, %+v", b, a)
		}
		if b := ask(t, before, after, worse); b.Detectable <= a.Detectable || a.Shown != function.Real && b.Shown == function.Real {
			t.Errorf("with a larger error %+v, %+v", b, a)
		}
		if b := ask(t, after, before, r); b.Shown != a.Shown {
			t.Errorf("turned round %+v, %+v", b, a)
		}
		learned := r
		learned.Rise = 0.05
		before.Novel = true
		if b := ask(t, before, after, learned); b.Shown == function.Real && a.Shown != function.Real {
			t.Errorf("with learning %+v, %+v", b, a)
		}
	})
}

// TestFirstTry: a track whose first test was low for want of practice reads no growth into
// what was learned.
func TestFirstTry(t *testing.T) {
	m, learned := track.StrengthModel(), track.StandardReliability()
	var plain, corrected []track.Reading
	for i := range 6 {
		r := track.Reading{Day: first + units.Day(3*i), Value: 3, Variance: 0.0003}
		if i == 0 {
			r.Value -= math.Log1p(float64(learned.Rise))
		}
		plain = append(plain, r)
		if i == 0 {
			r = units.Must(learned.FirstTry(r))
		}
		corrected = append(corrected, r)
	}
	a, b := run(t, m, track.State{}, plain).State().Now(m), run(t, m, track.State{}, corrected).State().Now(m)
	within(t, "slope", b.Slope, 0, 1e-12)
	if !(a.Slope > 0.0001) {
		t.Errorf("slope %v without", a.Slope)
	}
}

// TestSince: growth is called a rise, a level a plateau, a fall a dip, and little is called
// nothing yet.
func TestSince(t *testing.T) {
	m := track.StrengthModel()
	for name, test := range map[string]struct {
		step float64 // a day
		n    int
		days int // between readings
		want evidence.ReasonCode
	}{
		"growth": {0.004, 24, 3, "track.rose"}, "level": {0, 60, 3, "track.held"}, "fall": {-0.004, 24, 3, "track.fell"}, "two readings": {0.002, 2, 40, "track.unclear"},
	} {
		var readings []track.Reading
		for i := range test.n {
			readings = append(readings, track.Reading{Day: first + units.Day(test.days*i), Value: 3 + float64(test.days*i)*test.step, Variance: 0.0003})
		}
		o, err := run(t, m, track.State{}, readings).Since(first, 0.1, 0.9)
		if err != nil {
			t.Fatal(err)
		}
		if o.Reasons[0].Code != test.want || o.Rose < 0 || o.Held < 0 || o.Fell < 0 {
			t.Errorf("%s: %+v", name, o)
		}
		within(t, "sum", float64(o.Rose+o.Held+o.Fell), 1, 1e-12)
	}
}

// TestSinceAgainstDirect: the change between two days has the variance of the plain
// answer.
func TestSinceAgainstDirect(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		unknown := 1
		if m.Kind != track.LocalLevel && m.FirstSlope == 0 {
			unknown = 2
		}
		if distinct(readings) < max(2, unknown) || readings[len(readings)-1].Value > 4 {
			return
		}
		o, err := run(t, m, track.State{}, readings).Since(readings[0].Day, 0, 0.9)
		if err != nil {
			t.Fatal(err)
		}
		d := newDirect(m, nil, readings)
		to := 2 * int(o.To-o.From)
		sd := math.Sqrt(math.Max(0, d.variance.At(0, 0)+d.variance.At(to, to)-2*d.variance.At(0, to)))
		change := d.mean.AtVec(to) - d.mean.AtVec(0)
		within(t, "change", math.Log1p(float64(o.Change)), change, 1e-8)
		const z90 = 1.6448536269514722
		within(t, "interval", (math.Log1p(float64(o.High))-math.Log1p(float64(o.Low)))/2, z90*sd, 2e-7)
	})
}

// TestFromEstimate: a like set is read with the part of its error within the person, an
// unlike one with the part that equation and person share too.
func TestFromEstimate(t *testing.T) {
	e := onerm.Estimate{
		OneRM: kg(10), Interval: units.Must(units.Between(kg(8), kg(12))), Stated: body.PerHand, Exercise: "a-row", Side: body.Right, Hold: body.OneEachHand,
		Day: first, ToFailure: units.Exactly(10.0), Formula: onerm.Epley, Grade: onerm.Fair,
	}
	read := func(e onerm.Estimate, usual float64) track.Reading {
		r, err := track.FromEstimate(e, usual)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	near(t, "value", read(e, 10).Value, math.Log(10), 1e-14)
	if _, err := track.FromEstimate(e, 30); err != nil {
		t.Error(err)
	}
	near(t, "like", read(e, 14).Variance, 0.036*0.036, 1e-12)
	sd := 0.4 / (2 * 1.959963984540054)
	near(t, "unlike", read(e, 14.5).Variance, sd*sd-0.042*0.042, 1e-12)
	near(t, "unlike, at fewer", read(e, 5).Variance, sd*sd-0.042*0.042, 1e-12)
	measured := e
	measured.Formula, measured.Grade, measured.ToFailure, measured.Level = 0, onerm.Measured, units.Exactly(1.0), 0.9
	near(t, "measured", read(measured, 1).Variance, 0.018*0.018, 1e-12)
	sd = 0.4 / (2 * 1.6448536269514722)
	near(t, "measured, at another level", read(measured, 10).Variance, sd*sd-0.042*0.042, 1e-12)
}

// TestFromVisit: Epley's 1RM for what was done, was told and is told short, with the part of
// the error that lies within the person. A factor at its end is none too large.
func TestFromVisit(t *testing.T) {
	set := setlog.Set{Day: first, Exercise: "a-row", Side: body.Right, Hold: body.OneHand, Load: 6 * units.Kilogram, Reps: 10, Effort: units.Must(units.InReserve(3))}
	r, err := track.FromVisit(first, strength.Ability{}.Seen(1, 3, set))
	if err != nil || r.Day != first {
		t.Fatal(r, err)
	}
	near(t, "value", r.Value, math.Log(6*(1+14.0/30)), 1e-9)
	near(t, "variance", r.Variance, 0.036*0.036, 1e-15)
	if _, err := (track.Belief{Day: first, Level: 2, LevelVar: 1e-300}).Interval(0.9, track.Width{Factor: 1e150, Freedom: 1e150}); err != nil {
		t.Error(err)
	}
}

var gap = regexp.MustCompile(`\{[a-z]+\}`)

// TestFactsAndWords: with those below they make a ledger; sentences have no gaps left;
// what was chosen here passes for no more.
func TestFactsAndWords(t *testing.T) {
	ledger, err := evidence.NewLedger(onerm.Facts(), strength.Facts(), guideline.Facts(), week.Facts(), rule.Facts(), track.Facts())
	if err != nil {
		t.Fatal(err)
	}
	for range track.Facts() {
		break // a reader may stop early
	}
	for r := range track.Reliabilities() {
		if _, ok := ledger.Fact(r.Fact); !ok || r.Validate() != nil {
			t.Errorf("%+v: no fact, or %v", r, r.Validate())
		}
	}
	if b := units.Must(ledger.Basis(track.StandardReliability().Fact)); b != evidence.Design {
		t.Errorf("%v", b)
	}
	for _, own := range []evidence.FactID{"onerm.error.set", "onerm.ability.seen"} {
		f, _ := ledger.Fact(own)
		if want := map[evidence.FactID]string{"onerm.error.set": "1.8 %", "onerm.ability.seen": "5.5 %"}[own]; !strings.Contains(f.Value, want) {
			t.Errorf("%s says %q, not %s", own, f.Value, want)
		}
	}
	within(t, "of a visit's 5.5 % with the day's taken off", math.Sqrt(0.055*0.055-0.042*0.042), 0.036, 0.0005)
	a := ask(t, track.MeanTest{Mean: kg(10), Count: 1, Novel: true}, track.MeanTest{Mean: kg(12), Count: 1}, track.StandardReliability())
	words := track.Words()
	for _, r := range a.Reasons {
		if text := words.Clinician(r) + words.Client(r); gap.MatchString(text) || text == "" {
			t.Errorf("%s: %s", r.Code, text)
		}
	}
	for code, w := range words.All() {
		if w.Clinician == "" || strings.Contains(strings.ToLower(w.Client+w.Clinician), "respon") {
			t.Errorf("%s: %+v", code, w)
		}
	}
}

package track

import (
	"fmt"
	"math"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A MeanTest is one test, or the mean of several of the same thing, close together.
type MeanTest struct {
	Mean  units.Mass `json:"mean"`  // of all of them; above 0
	Count int        `json:"count"` // 1 to 20
	// Novel: the first of them was the person's first ever.
	Novel bool `json:"novel,omitzero"`
}

// A RealChangeAnswer says whether two tests differ by more than noise. It is about the
// tests: it tells nobody how they respond, and permits no load.
type RealChangeAnswer struct {
	Shown      function.Shown    `json:"shown"`
	Change     units.Fraction    `json:"change"` // after over before, less one; what was learned is not taken off
	Low        units.Fraction    `json:"low"`    // ends of the interval of the change
	High       units.Fraction    `json:"high"`
	Detectable units.Fraction    `json:"detectable"` // the smallest rise that shows, without learning
	Learned    units.Fraction    `json:"learned,omitzero"`
	Reasons    []evidence.Reason `json:"reasons"`
}

// RealChange compares two tests, or the means of several, of an exercise, at a level of
// 0.5 to 0.99: of unchanged people a share of one less the level show a real change.
// It is worked out on logarithms, since errors are shares. Where the first test before
// was the first ever, a gain that its learning covers is within learning, and a larger one must
// stay above what is detectable with that taken off. Errors name the field, such as
// "/before/count".
func RealChange(before, after MeanTest, r Reliability, level units.Fraction) (RealChangeAnswer, error) {
	var bad field.Errors
	bad.Add("/before", before.check())
	bad.Add("/after", after.check())
	bad.Add("/reliability", r.Validate())
	bad.Add("/level", checkLevel(level))
	bad.Refuse(after.Novel, "/after/novel", true, "tests after the first", field.ErrConflict)
	if err := bad.Err(); err != nil {
		return RealChangeAnswer{}, err
	}
	change := math.Log(float64(after.Mean) / float64(before.Mean))
	shows := detectable(math.Log1p(float64(r.Typical)), level, before.Count, after.Count)
	learned := 0.0
	if before.Novel {
		learned = math.Log1p(float64(r.Rise)) / float64(before.Count)
	}
	share := func(log float64) units.Fraction { return units.Fraction(math.Expm1(log)) }
	a := RealChangeAnswer{
		Shown: function.NotShown, Change: share(change), Low: share(change - shows), High: share(change + shows),
		Detectable: share(shows), Learned: share(learned),
	}
	switch {
	case change > 0 && learned > 0 && change <= learned:
		a.Shown = function.WithinLearning
	case change-learned > shows || -change > shows:
		a.Shown = function.Real
	}
	a.Reasons = a.reasons(r, level)
	return a, nil
}

const mostTests = 20

func (t MeanTest) check() error {
	var bad field.Errors
	bad.Refuse(t.Mean <= 0, "/mean", t.Mean, "a mass above 0 kg", field.ErrOutOfRange)
	bad.Add("/count", checkCount(t.Count))
	return bad.Err()
}

func checkCount(n int) error {
	if n < 1 || n > mostTests {
		return field.Bad(n, fmt.Sprintf("1 to %d tests", mostTests), field.ErrOutOfRange)
	}
	return nil
}

var changeCodes = map[function.Shown]evidence.ReasonCode{
	function.Real: "track.change.real", function.NotShown: "track.change.not-shown", function.WithinLearning: "track.change.within-learning",
}

func (a RealChangeAnswer) reasons(r Reliability, level units.Fraction) []evidence.Reason {
	code := changeCodes[a.Shown]
	if a.Shown == function.Real && a.Change < 0 {
		code = "track.change.real-fall"
	}
	facts := []evidence.FactID{factDetectable, factPercent}
	if r.Fact != "" {
		facts = append(facts, r.Fact)
	}
	args := []evidence.Arg{
		evidence.Share("change", a.Change), evidence.Share("low", a.Low), evidence.Share("high", a.High),
		evidence.Share("detectable", a.Detectable), evidence.Share("typical", r.Typical), evidence.Share("level", level),
	}
	list := []evidence.Reason{evidence.Because(code, facts...).With(args...)}
	if a.Learned > 0 {
		list = append(list, evidence.Because("track.change.learning-taken-off", factLearned).With(evidence.Share("learned", a.Learned)))
	}
	return list
}

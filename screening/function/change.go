package function

import (
	"fmt"
	"iter"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Shown says whether a change is more than the noise of the test.
type Shown uint8

// Answers.
const (
	_              Shown = iota // not given
	Real                        // "real": above the published detectable change
	NotShown                    // "not shown": not above it, or none is held here for the person
	WithinLearning              // "within learning": a gain that the published practice effect covers
)

var showns = field.NewVocabulary[Shown]("answer", "", "real", "not shown", "within learning")

// EveryShown yields every answer on a change.
func EveryShown() iter.Seq[Shown] { return showns.All() }

// String returns "real", "not shown" or "within learning".
func (s Shown) String() string { return showns.Text(s) }

// MarshalText writes what String returns.
func (s Shown) MarshalText() ([]byte, error) { return showns.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Shown) UnmarshalText(text []byte) error { return showns.Unmarshal(text, s) }

// A Yardstick is a published change beside the one at hand.
type Yardstick struct {
	Norm    Norm `json:"norm"`
	Applies bool `json:"applies"` // printed for the person's sex and age
	// Reached reports whether the difference, without its sign, is above a
	// detectable change, or at least an important one.
	Reached bool `json:"reached"`
}

// A ChangeAnswer says whether two results of a test differ by more than noise. It is
// about the measurement: it permits no load, and tells nobody how they respond.
type ChangeAnswer struct {
	Test       Test           `json:"test,omitzero"`
	Shown      Shown          `json:"shown"`
	Direction  Position       `json:"direction,omitzero"`  // [Better], [Worse] or [Equal] than before; without two scores by [HowDone.Order]
	Difference Amount         `json:"difference,omitzero"` // after − before, in the unit of the score
	Low        Amount         `json:"low,omitzero"`        // ends of the interval of the difference,
	High       Amount         `json:"high,omitzero"`       // difference ∓ the detectable change
	Basis      evidence.Basis `json:"basis"`               // of what decided
	// Detectable and Important are all published changes of the measure, also
	// those that were made on others and do not decide.
	Detectable []Yardstick       `json:"detectable,omitempty"`
	Important  []Yardstick       `json:"important,omitempty"`
	Reasons    []evidence.Reason `json:"reasons"`
}

// ChangeBetween compares two results of one test by one person, whose age is that of
// the second. Both need a day. Results of different tests, walks, sides, hands,
// protocols or numbers of trials, and results out of order, are a
// [field.ErrConflict]; what only one of the two states of hand, protocol and
// trials is let pass, and told in the reasons for the protocol.
//
// The change is real if it is above the largest detectable change published for
// that sex and age; a figure for the sex takes the place of the same body's
// figure for both. Where a practice effect from the first try to the second was
// published and the first result may be a first try, a gain up to that effect, in
// whole counts where the test is counted, is within learning, and a larger gain
// must stay above the detectable change with the effect taken off. Without a
// published detectable change for the person, or without two scores, the answer
// is not shown; how the two went may still tell which is the better.
func ChangeBetween(before, after Result, sex body.Sex, age body.Age) (ChangeAnswer, error) {
	if err := checkChange(before, after, sex, age); err != nil {
		return ChangeAnswer{}, err
	}
	v := ChangeAnswer{Test: after.Test, Shown: NotShown, Basis: evidence.Design}
	if before.How != Done || after.How != Done {
		v.Direction = after.How.Order(before.How)
		v.Reasons = []evidence.Reason{evidence.Because(orderCodes[v.Direction], factNotScored, factGotFurther).With(
			evidence.Term("test", v.Test.String()), evidence.Term("before", before.How.String()), evidence.Term("after", after.How.String()))}
		return v, nil
	}
	p := after.Test.protocol()
	v.Difference = p.score(after.Value).minus(p.score(before.Value))
	v.Direction = direction(v.Difference, p.less)
	v.measure(sex, age)
	v.decide(before.mayLearn(), sex, age)
	if before.Protocol == "" || after.Protocol == "" {
		v.Reasons = append(v.Reasons, evidence.Because("function.change.protocol-not-stated", factAlike).With(evidence.Term("test", v.Test.String())))
	}
	return v, nil
}

func direction(difference Amount, less bool) Position {
	switch {
	case difference.millionths == 0:
		return Equal
	case (difference.millionths < 0) == less:
		return Better
	}
	return Worse
}

// mayLearn reports whether r may be a person's first try.
func (r Result) mayLearn() bool { return r.Try <= 1 }

func checkChange(before, after Result, sex body.Sex, age body.Age) error {
	var bad field.Errors
	bad.Add("/before", before.Validate())
	bad.Add("/after", after.Validate())
	checkPerson(&bad, sex, age)
	if err := bad.Err(); err != nil {
		return err
	}
	if before.Day == 0 {
		bad.Add("/before/day", before.Day.Check())
	}
	if after.Day == 0 {
		bad.Add("/after/day", after.Day.Check())
	}
	for _, c := range []struct {
		path        string
		wrong       bool
		got, wanted any
	}{
		{"/after/test", before.Test != after.Test, after.Test, before.Test},
		{"/after/side", before.Side != after.Side, after.Side, before.Side},
		{"/after/hand", before.Hand != after.Hand && before.Hand != 0 && after.Hand != 0, after.Hand, before.Hand},
		{"/after/protocol", before.Protocol != after.Protocol && before.Protocol != "" && after.Protocol != "", after.Protocol, before.Protocol},
		{"/after/trials", len(before.Trials) != len(after.Trials) && len(before.Trials) != 0 && len(after.Trials) != 0, len(after.Trials), len(before.Trials)},
		{"/after/try", before.Try != 0 && after.Try != 0 && after.Try <= before.Try, after.Try, fmt.Sprintf("more than %d", before.Try)},
		{"/after/day", before.Day != 0 && after.Day != 0 && after.Day < before.Day, after.Day, fmt.Sprintf("%s or later", before.Day)},
	} {
		if c.wrong {
			bad.Add(c.path, field.Bad(c.got, fmt.Sprintf("as before: %v", c.wanted), field.ErrConflict))
		}
	}
	return bad.Err()
}

// measure lays the published changes beside the difference.
func (v *ChangeAnswer) measure(sex body.Sex, age body.Age) {
	size := v.Difference.size()
	for n := range Norms() {
		if n.Measure != v.Test.Measure() {
			continue
		}
		y := Yardstick{Norm: n, Applies: n.AppliesTo(sex, age)}
		switch n.Statistic.kind() {
		case detectable:
			y.Reached = size.millionths > n.Value.millionths
			v.Detectable = append(v.Detectable, y)
		case important:
			y.Reached = size.millionths >= n.Value.millionths
			v.Important = append(v.Important, y)
		}
	}
}

// detectable returns the norm that decides, and whether there is one: the
// largest that applies, a body's own figure for the sex before the one for both.
func (v *ChangeAnswer) detectable() (Norm, bool) {
	var most Norm
	for _, y := range v.Detectable {
		if !y.Applies || v.replaced(y.Norm) {
			continue
		}
		if y.Norm.Value.millionths > most.Value.millionths {
			most = y.Norm
		}
	}
	return most, !most.Value.IsZero()
}

// replaced reports whether the same source has a figure for the sex in place of n.
func (v *ChangeAnswer) replaced(n Norm) bool {
	for _, y := range v.Detectable {
		if y.Applies && n.Sex == 0 && y.Norm.Sex != 0 && y.Norm.Source == n.Source {
			return true
		}
	}
	return false
}

// practice returns the upper end of the published practice effect, if any.
func practice(m Measure) (Norm, bool) {
	for n := range Norms() {
		if n.Measure == m && n.Statistic == "practice_high" {
			return n, true
		}
	}
	return Norm{}, false
}

// decide sets the answer from the changes laid beside the difference.
func (v *ChangeAnswer) decide(mayLearn bool, sex body.Sex, age body.Age) {
	limit, ok := v.detectable()
	if !ok {
		v.Reasons = append(v.Reasons, evidence.Because("function.change.none-published", factNoDetectable).With(
			evidence.Term("test", v.Test.String()), v.Difference.arg("difference"), evidence.Count("age", int(age)), evidence.Term("sex", sexText(sex))))
		return
	}
	v.Low, v.High = v.Difference.minus(limit.Value), v.Difference.plus(limit.Value)
	v.Basis = limit.Basis
	code, facts := v.judge(limit)
	learning, learns := practice(v.Test.Measure())
	learns = learns && mayLearn && v.Direction == Better
	if learns && v.learned(limit, learning) {
		v.Basis = evidence.Weaker(limit.Basis, evidence.Design)
		code, facts = v.judgeLearned(learning), append(facts, learning.Fact, factLearning)
	}
	reason := evidence.Because(code, facts...).With(
		evidence.Term("test", v.Test.String()), v.Difference.arg("difference"), limit.Value.arg("detectable"), evidence.Text("body", limit.Body), evidence.Term("basis", limit.Basis.String()), v.Low.arg("low"), v.High.arg("high"))
	if learns {
		reason = reason.With(learning.Value.arg("practice"))
	}
	v.Reasons = append([]evidence.Reason{reason}, limit.cautions()...)
}

// judge answers by the detectable change alone.
func (v *ChangeAnswer) judge(limit Norm) (evidence.ReasonCode, []evidence.FactID) {
	facts := []evidence.FactID{limit.Fact, factStrictlyAbove}
	switch above := v.Difference.size().millionths > limit.Value.millionths; {
	case above && v.Direction == Better:
		v.Shown = Real
		return "function.change.real-better", facts
	case above:
		v.Shown = Real
		return "function.change.real-worse", facts
	}
	return "function.change.not-shown", facts
}

// learned reports whether the practice effect changes the answer: the gain is
// within it, or real only as long as it is not taken off.
func (v *ChangeAnswer) learned(limit, learning Norm) bool {
	gain := v.Difference.size()
	return v.covered(learning) || v.Shown == Real && gain.minus(learning.Value).millionths <= limit.Value.millionths
}

// covered reports whether the practice effect is as large as the gain, in whole
// counts where the test is counted.
func (v *ChangeAnswer) covered(learning Norm) bool {
	effect := learning.Value
	if v.Test.protocol().counted() {
		effect = effect.roundedUp()
	}
	return v.Difference.size().millionths <= effect.millionths
}

func (v *ChangeAnswer) judgeLearned(learning Norm) evidence.ReasonCode {
	if v.covered(learning) {
		v.Shown = WithinLearning
		return "function.change.within-learning"
	}
	v.Shown = NotShown
	return "function.change.learning-taken-off"
}

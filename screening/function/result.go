package function

import (
	"fmt"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Result is how one test went on one day. The zero value is no result.
type Result struct {
	Test  Test      `json:"test,omitzero"`
	Day   units.Day `json:"day,omitzero"` // needed for a change only
	How   HowDone   `json:"how"`
	Value Amount    `json:"value,omitzero"` // needed if done; with arms or a stop for the record only
	// Side is needed for grip and for nothing else; Both is the better hand.
	Side body.Side `json:"side,omitzero"`
	Hand Hand      `json:"hand,omitzero"` // of a grip with one hand
	// Try counts the person's tries at this test, the first ever being 1; 0 is
	// not given. Practice effects depend on it.
	Try uint8 `json:"try,omitzero"`
	// Trials are the single trials of that day, where the best one counts.
	Trials []Amount `json:"trials,omitempty"`
	// Protocol names what else must be alike for two results to be compared:
	// height of the seat, dynamometer, weight curled, walking aid.
	Protocol string `json:"protocol,omitzero"`
}

// Validate returns every bad field of r at once. A value beyond the plausible
// range of its test is a [field.ErrOutOfRange]; a value of another unit, a
// value beside unable or refused, a side for anything but grip, arms in a test
// that does not forbid them, and a value that is not the best of its trials are
// [field.ErrConflict].
func (r Result) Validate() error {
	if err := r.Test.check(); err != nil {
		return field.At("/test", err)
	}
	var bad field.Errors
	if r.Day != 0 {
		bad.Add("/day", r.Day.Check())
	}
	bad.Add("/how", r.checkHow())
	bad.Add("/value", r.checkValue())
	r.checkSide(&bad)
	r.checkTrials(&bad)
	return bad.Err()
}

func (r Result) checkHow() error {
	if r.How == UsedArms && !r.Test.protocol().arms {
		return field.Bad(r.How, "arms only where the test is to rise without them", field.ErrConflict)
	}
	return r.How.check()
}

func (r Result) checkValue() error {
	none := r.Value.IsZero()
	switch {
	case (r.How == Unable || r.How == Refused) && !none:
		return field.Bad(r.Value, "no value, since the test was "+r.How.String(), field.ErrConflict)
	case r.How != Done && none:
		return nil
	}
	return r.Test.checkAmount(r.Value)
}

func (r Result) checkSide(bad *field.Errors) {
	if !r.Test.protocol().hands {
		bad.Refuse(r.Side != 0, "/side", r.Side, "no side, since the test has none", field.ErrConflict)
		bad.Refuse(r.Hand != 0, "/hand", r.Hand, "no hand, since the test is not done by one", field.ErrConflict)
		return
	}
	bad.Add("/side", r.Side.Check())
	switch {
	case r.Hand == 0:
	case r.Side == body.Both:
		bad.Add("/hand", field.Bad(r.Hand, "no hand, since both were tested", field.ErrConflict))
	default:
		bad.Add("/hand", hands.Check("", r.Hand))
	}
}

func (r Result) checkTrials(bad *field.Errors) {
	if len(r.Trials) == 0 {
		return
	}
	if r.How != Done {
		bad.Add("/trials", field.Bad(len(r.Trials), "no trials unless the test was done", field.ErrConflict))
		return
	}
	best, err := Best(r.Test, r.Trials...)
	bad.Add("/trials", err)
	bad.Refuse(err == nil && best != r.Value, "/value", r.Value, fmt.Sprintf("the best of the trials, %s", best), field.ErrConflict)
}

// Best returns the best trial of a test whose best trial counts:
// the strongest grip, the fastest walk. All trials must have one unit. For other
// tests more than one trial is a [field.ErrConflict].
func Best(t Test, trials ...Amount) (Amount, error) {
	if err := t.check(); err != nil {
		return Amount{}, err
	}
	if len(trials) == 0 {
		return Amount{}, field.Bad(nil, "at least one trial", field.ErrMissing)
	}
	p := t.protocol()
	if len(trials) > 1 && !p.best {
		return Amount{}, field.Bad(len(trials), "one trial, since no rule for several is known", field.ErrConflict)
	}
	var bad field.Errors
	best := trials[0]
	for i, a := range trials {
		path := fmt.Sprintf("/%d", i)
		if err := t.checkAmount(a); err != nil {
			bad.Add(path, err)
			continue
		}
		if a.unit != best.unit {
			bad.Add(path, field.Bad(a, "the unit of the other trials", field.ErrConflict))
			continue
		}
		if less := p.less || a.unit == Seconds && p.course != 0; (a.millionths < best.millionths) == less && a != best {
			best = a
		}
	}
	if len(bad) > 0 {
		return Amount{}, bad
	}
	return best, nil
}

// A Score is what a result counts for.
type Score struct {
	Value  Amount          `json:"value,omitzero"` // zero: not scored
	Reason evidence.Reason `json:"reason"`
}

// Score returns what r counts for, in the unit of [Test.Unit], or the errors of
// Validate. Unable, arms used, refused and stopped are not scored: no source
// that was seen gives them a number outside the [Battery].
func (r Result) Score() (Score, error) {
	if err := r.Validate(); err != nil {
		return Score{}, err
	}
	if r.How != Done {
		return Score{Reason: r.unscored()}, nil
	}
	p := r.Test.protocol()
	reason := evidence.Because("function.scored", r.Test.rangeFact())
	if p.course != 0 {
		reason.Facts = append(reason.Facts, factSpeed)
	}
	if len(r.Trials) > 1 {
		reason.Facts = append(reason.Facts, factBest)
	}
	value := p.score(r.Value)
	return Score{value, reason.With(evidence.Term("test", r.Test.String()), value.arg("value"))}, nil
}

func (r Result) unscored() evidence.Reason {
	return evidence.Because("function.not-scored", factNotScored).With(evidence.Term("test", r.Test.String()), evidence.Term("how", r.How.String()))
}

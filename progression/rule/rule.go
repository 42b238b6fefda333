package rule

import (
	"iter"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// LoadAdvice is what a rule says of the load. The order is that of caution.
type LoadAdvice uint8

// Advices, from the least to the most cautious.
const (
	_     LoadAdvice = iota // not given
	Raise                   // "raise": more load may be taken
	Keep                    // "keep": the load stays
	Ease                    // "ease": make it easier
	Refer                   // "refer": outside the rule: somebody else decides first
)

var advices = field.NewVocabulary[LoadAdvice]("advice", "", "raise", "keep", "ease", "refer")

// LoadAdvices yields every advice.
func LoadAdvices() iter.Seq[LoadAdvice] { return advices.All() }

// String returns "raise", "keep", "ease" or "refer", and "" for not given.
func (a LoadAdvice) String() string { return advices.Text(a) }

// MarshalText writes what String returns.
func (a LoadAdvice) MarshalText() ([]byte, error) { return advices.Marshal(a) }

// UnmarshalText reads what MarshalText writes.
func (a *LoadAdvice) UnmarshalText(text []byte) error { return advices.Unmarshal(text, a) }

// Name names a published rule of progression. Rules answer one by one and are
// never blended: in older adults four of them did equally well over 11 weeks
// (Buskard 2019).
type Name uint8

// Rules.
const (
	_                   Name = iota // not given
	NameOverTarget                  // "over-target": 2 to 10 % after 1 to 2 repetitions over the target (ACSM 2002)
	NameTwoForTwo                   // "two-for-two": 2 repetitions over in the last set, twice running
	NameRepsThenLoad                // "reps-then-load": repetitions first, then load (Hostler 2001, the traditional form)
	NameSmallSteps                  // "small-steps": steps of 0.22 or 0.44 kg (Hostler 2001)
	NameBenchSteps                  // "bench-steps": the same trial's bench press with plain steps
	NameTricepsSteps                // "triceps-steps": the same trial's triceps press with plain steps
	NameOMNIBelow8                  // "omni-below-8": rated below 8 of 10 (Buskard 2019)
	NameTopOfRange                  // "top-of-range": three sets of 12, then the load for 8 (Gearhart 2009)
	NameSimplify                    // "simplify": easier after three sessions below the dose
	NamePainGate                    // "pain-gate": pain below 5 of 10, full range, target met (Perry 2005)
	NameSetToSetKg                  // "set-to-set-kg": kilograms by the rating of the set before (a trial of 2024)
	NameSetToSetPercent             // "set-to-set-percent": 2 % for half a point off the target (from memory)
)

var rules = field.NewVocabulary[Name]("rule", "", "over-target", "two-for-two", "reps-then-load", "small-steps", "bench-steps", "triceps-steps",
	"omni-below-8", "top-of-range", "simplify", "pain-gate", "set-to-set-kg", "set-to-set-percent")

// Names yields every rule.
func Names() iter.Seq[Name] { return rules.All() }

// String returns the rule's code, such as "two-for-two", and "" for not given.
func (r Name) String() string { return rules.Text(r) }

// MarshalText writes what String returns.
func (r Name) MarshalText() ([]byte, error) { return rules.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Name) UnmarshalText(text []byte) error { return rules.Unmarshal(text, r) }

// A Ruling is what one named rule says of one exercise. It looks at nothing
// but what it was given: pain, technique and limits are other gates.
type Ruling struct {
	Rule    Name                    `json:"rule"`
	Advice  LoadAdvice              `json:"advice"`
	Load    units.Range[units.Mass] `json:"load,omitzero"` // per implement, where the rule tells it
	Reps    units.Range[int]        `json:"reps,omitzero"` // to aim at next, where the rule tells them
	Reasons []evidence.Reason       `json:"reasons,omitempty"`
}

// answer returns Raise or Keep with a reason that names rule and answer.
func answer(r Name, raise bool, facts ...evidence.FactID) Ruling {
	a := Ruling{Rule: r, Advice: Keep}
	if raise {
		a.Advice = Raise
	}
	return a.because(facts...)
}

func (a Ruling) because(facts ...evidence.FactID) Ruling {
	a.Reasons = []evidence.Reason{evidence.Because("progression.rule", facts...).With(evidence.Term("rule", a.Rule.String()), evidence.Term("advice", a.Advice.String()))}
	return a
}

func checkReps(reps int) error {
	if reps < 0 {
		return field.Bad(reps, "0 repetitions or more", field.ErrOutOfRange)
	}
	return nil
}

func checkGoal(reps int) error {
	if reps < 1 {
		return field.Bad(reps, "1 repetition or more", field.ErrOutOfRange)
	}
	return nil
}

func checkLoad(each units.Mass) error {
	if each <= 0 {
		return field.Bad(each, "a mass above 0 kg", field.ErrOutOfRange)
	}
	return nil
}

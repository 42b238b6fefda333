package rule

import (
	"cmp"
	"fmt"
	"math"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A PublishedStep is a published size of a rise in load, as printed in one unit.
type PublishedStep struct {
	Low    units.Marked                `json:"low"`
	High   units.Marked                `json:"high"`
	OrMore bool                        `json:"or_more,omitzero"` // the upper end was printed open
	Share  units.Range[units.Fraction] `json:"share"`            // of the load, for anyone
	// Reasons name the rule. It is known from memory, so that it can make a step
	// smaller and never permit one.
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// nscaShare is the textbook's step as a share of the load, for anyone.
var nscaShare = between[units.Fraction](0.025, 0.10)

// A stepRow is a row of the textbook's table, in tenths of kilograms and
// pounds. The columns restate each other and are no conversions.
type stepRow struct {
	experienced, legs bool
	kg, lb            [2]int
}

var stepRows = []stepRow{
	{false, false, [2]int{10, 20}, [2]int{25, 50}},
	{true, false, [2]int{20, 40}, [2]int{50, 100}},
	{false, true, [2]int{20, 40}, [2]int{50, 100}},
	{true, true, [2]int{40, 70}, [2]int{100, 150}},
}

func (r stepRow) id() evidence.FactID {
	person, region := "newcomer", "upper"
	if r.experienced {
		person = "experienced"
	}
	if r.legs {
		region = "lower"
	}
	return evidence.FactID("progression.step." + person + "-" + region)
}

func (r stepRow) fact() evidence.Fact {
	kg, lb := r.in(units.KG), r.in(units.LB)
	more := ""
	if r.experienced {
		more = " or more"
	}
	return evidence.Fact{ID: r.id(), Value: fmt.Sprintf("add %v to %v, printed too as %v to %v%s", kg.Low, kg.High, lb.Low, lb.High, more),
		Source: "nscatextbook", Basis: evidence.FromMemory}
}

func (r stepRow) in(u units.MassUnit) PublishedStep {
	column := r.kg
	if u == units.LB {
		column = r.lb
	}
	end := func(tenths int) units.Marked {
		return units.Marked{Mass: units.Mass(tenths) * (u.Mass() / 10), Unit: u}
	}
	return PublishedStep{Low: end(column[0]), High: end(column[1]), OrMore: r.experienced, Share: nscaShare}
}

// StepFor returns the NSCA textbook's step by experience and body region, in
// the column of unit u, kg or lb. The book knows two kinds of people: a novice
// counts as a newcomer, and so, for the smaller step, does an intermediate.
func StepFor(t body.Training, p exercise.Pattern, u units.MassUnit) (PublishedStep, error) {
	var bad field.Errors
	bad.Add("/training", t.Check())
	bad.Add("/pattern", checkPattern(p))
	bad.Refuse(u != units.KG && u != units.LB, "/unit", uint8(u), "kg or lb", field.ErrOutOfRange)
	if err := bad.Err(); err != nil {
		return PublishedStep{}, err
	}
	var row stepRow
	for _, r := range stepRows {
		if r.experienced == (t == body.Advanced) && r.legs == p.Legs() {
			row = r
		}
	}
	s := row.in(u)
	s.Reasons = []evidence.Reason{evidence.Because("progression.step", row.id(), factShare, factNewcomer).With(evidence.Marked("low", s.Low), evidence.Marked("high", s.High))}
	return s, nil
}

func checkPattern(p exercise.Pattern) error {
	if p == 0 {
		return field.Bad(nil, "a pattern of movement", field.ErrMissing)
	}
	_, err := p.MarshalText() // refuses a value that is no pattern
	return err
}

// A trialStep is a rise by the repetitions of the final set (Hostler 2001).
type trialStep struct {
	rule Name
	from int // repetitions
	step units.Mass
}

// trialSteps rise within a rule. The repetitions where the plain steps begin
// are those that were printed for both lifts.
var trialSteps = []trialStep{
	{NameSmallSteps, 7, units.Gram * 220},
	{NameSmallSteps, 9, units.Gram * 440},
	{NameBenchSteps, 7, units.Gram * 2200},
	{NameTricepsSteps, 7, units.Gram * 1100},
}

// TrialStep is the rise of Hostler 2001 by the repetitions of the final set:
// with [NameSmallSteps] 0.22 kg at 7 to 8 and 0.44 kg at 9 or more; with
// [NameBenchSteps] 2.2 kg and [NameTricepsSteps] 1.1 kg from 7 on. Strength grew
// alike over 8 weeks; small steps came more often and frustrated less. Other
// rules are a [field.ErrOutOfRange].
func TrialStep(r Name, each units.Mass, done int) (Ruling, error) {
	var bad field.Errors
	bad.Refuse(r < NameSmallSteps || r > NameTricepsSteps, "/rule", r, "small-steps, bench-steps or triceps-steps", field.ErrOutOfRange)
	bad.Add("/each", checkLoad(each))
	bad.Add("/done", checkReps(done))
	step := units.Mass(0)
	for _, row := range trialSteps {
		if row.rule == r && done >= row.from {
			step = row.step
		}
	}
	next, err := each.Add(step)
	bad.Add("/each", err)
	if err := bad.Err(); err != nil {
		return Ruling{}, err
	}
	a := answer(r, step > 0, factSmallSteps, factPlainSteps)
	a.Load = units.Exactly(next)
	return a, nil
}

// guidance is the published size of a step up in load (ACSM 2002).
var guidance = between[units.Fraction](0.02, 0.10)

// epleyReps is the 30 of the linear form 1RM = load × (1 + repetitions/30).
const epleyReps = 30

// StepShare returns the published size of a step up in load, 2 to 10 per cent
// (ACSM 2002).
func StepShare() units.Range[units.Fraction] { return guidance }

// between makes the ranges of tables.
func between[T cmp.Ordered](low, high T) units.Range[T] { return units.Must(units.Between(low, high)) }

// RepsBeforeJump returns how many repetitions to reach with the present weight
// so that a step up by the fraction p lands on low repetitions, on the linear
// form of the load–repetition curve: low + p × (30 + low). No trial tests this
// ladder; it inherits the form's error, which is large above about 12
// repetitions. low is 1 or more, p above 0. The reason names the rule.
func RepsBeforeJump(low int, p units.Fraction) (float64, evidence.Reason, error) {
	var bad field.Errors
	bad.Refuse(low < 1, "/low", low, "1 repetition or more", field.ErrOutOfRange)
	if !(p > 0) || math.IsInf(float64(p), 0) {
		bad.Add("/p", field.Bad(fmt.Sprint(float64(p)), "a finite fraction above 0", field.ErrOutOfRange))
	}
	if err := bad.Err(); err != nil {
		return 0, evidence.Reason{}, err
	}
	reps := float64(low) + float64(float64(p)*float64(epleyReps+low))
	return reps, evidence.Because("progression.bridge", factBridge).With(evidence.Tenths("reps", reps), evidence.Count("low", low), evidence.Share("share", p)), nil
}

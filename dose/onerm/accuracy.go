package onerm

import (
	"fmt"
	"math"

	"example.org/posology/dose/onerm/internal/student"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// An Accuracy is an equation together with the errors that were measured with
// it, in some people and some way to hold the weight. The zero value is "not
// given". [OpenBench] is one; a clinic or a study can state its own.
type Accuracy struct {
	Formula Formula `json:"formula"`
	// From is the fewest repetitions to failure that were measured.
	From int `json:"from"`
	// People is how many were measured, 2 to 10,000: the fewer, the wider the intervals.
	People int `json:"people"`
	// Bands hold the errors by repetitions to failure, in rising order.
	Bands []ErrorBand `json:"bands"`
	// Ages are those of the people measured, who were all practised. Others
	// keep the margins of the interval table where these are wider.
	Ages units.Range[body.Age] `json:"ages"`
	// Hold is how the weight was held; for another hold the same is done.
	Hold body.Hold `json:"hold"`
	// Fact names the fact that states the errors, if there is one.
	Fact evidence.FactID `json:"fact,omitzero"`
}

// An ErrorBand is the error of an equation up to so many repetitions to failure.
type ErrorBand struct {
	UpTo int `json:"up_to"`
	// Error is the root mean square of estimate/measured − 1, above 0 and at
	// most 0.5. It counts the bias: an estimate is not corrected.
	Error units.Fraction `json:"error"`
}

// IsZero reports whether a is not given.
func (a Accuracy) IsZero() bool {
	return a.Formula == 0 && a.From == 0 && a.People == 0 && len(a.Bands) == 0 && a.Ages.IsZero() && a.Hold == 0 && a.Fact == ""
}

// Validate returns every bad field of a at once.
func (a Accuracy) Validate() error {
	var bad field.Errors
	bad.Add("/formula", a.Formula.check())
	bad.Refuse(a.From < 1, "/from", a.From, "1 repetition or more", field.ErrOutOfRange)
	bad.Refuse(a.People < leastPeople || a.People > mostPeople, "/people", a.People, fmt.Sprintf("%d to %d people", leastPeople, mostPeople), field.ErrOutOfRange)
	bad.Refuse(len(a.Bands) == 0, "/bands", nil, "one band or more", field.ErrMissing)
	least := a.From
	for i, b := range a.Bands {
		path := fmt.Sprintf("/bands/%d", i)
		bad.Refuse(b.UpTo < least, path+"/up_to", b.UpTo, fmt.Sprintf("%d repetitions or more", least), field.ErrOutOfRange)
		bad.Refuse(!(b.Error > 0 && b.Error <= 0.5), path+"/error", float64(b.Error), "above 0 and at most 0.5", field.ErrOutOfRange)
		least = b.UpTo + 1
	}
	bad.Add("/hold", a.Hold.Check())
	return bad.Err()
}

const leastPeople, mostPeople = 2, 10_000

// times returns how many errors to each side hold a share of further people: Student's t
// with as many degrees of freedom as people less one, and √(1 + 1/people) for what is not
// known of the mean. Sets of one person share most of their error, so that people
// count, not sets.
func (a Accuracy) times(level units.Fraction) float64 {
	return student.Within(float64(level), a.People-1) * math.Sqrt(1+1/float64(a.People))
}

// at returns the error at so many repetitions to failure, and false outside
// what was measured.
func (a Accuracy) at(toFailure int) (float64, bool) {
	if toFailure < a.From {
		return 0, false
	}
	for _, b := range a.Bands {
		if toFailure <= b.UpTo {
			return float64(b.Error), a.Formula.takes(float64(toFailure))
		}
	}
	return 0, false
}

// mismatch says in what a person and a set differ from those measured.
func (a Accuracy) mismatch(p body.Person, h body.Hold) []string {
	var list []string
	if p.Training == body.Novice {
		list = append(list, "training "+p.Training.String())
	}
	if !a.Ages.Contains(p.Age) {
		list = append(list, fmt.Sprintf("age %v", p.Age))
	}
	if h != a.Hold {
		list = append(list, "held "+h.String())
	}
	return list
}

// The least half-widths of a 95 % interval for practised people in a
// laboratory, as shares of the estimate, and the root mean square errors that
// were measured there, bias and all.
const (
	floorNear = 0.05 // up to 10 repetitions to failure
	floorMid  = 0.07 // 11 to 15
	floorFar  = 0.10 // above

	openNearReps = 10
	openPeople   = 9 // ten records

	openRank, openRankNext = 0.224, 0.24 // of the logarithm of repetitions, given the load

	openNear = 0.0253 // 37 sets
	openMid  = 0.0584 // 17 sets
	openFar  = 0.0196 // 5 sets, 16 to 20
)

// OpenBench returns the accuracy of [OConner] in the open data that come with
// the module: 59 sets of 2 to 20 bench presses to failure by nine practised
// lifters (ten records) of 22 to 33 years, with their 1RM measured. No band is narrower than
// the least half-width for it, or than the band before: five sets are no
// evidence that many repetitions predict better than fewer.
//
// From 11 to 15 repetitions the equation read 4.6 % low there. That is shown and
// counted as error, not corrected: in other people the bias has another sign.
func OpenBench() Accuracy {
	a := Accuracy{Formula: practisedFormula, From: practisedLeast, People: openPeople, Hold: body.OnBar, Fact: factOpenBench}
	a.Ages = units.Must(units.Between[body.Age](22, 34))
	times := a.times(tableLevel)
	near := max(openNear, floorNear/times)
	mid := max(near, openMid, floorMid/times)
	far := max(mid, openFar, floorFar/times)
	a.Bands = []ErrorBand{
		{UpTo: openNearReps, Error: units.Fraction(near)},
		{UpTo: 15, Error: units.Fraction(mid)},
		{UpTo: 20, Error: units.Fraction(far)},
	}
	return a
}

// How far a reserve is told wrong, in repetitions, as a standard deviation.
const (
	slipNear = 1.0  // up to 3 in reserve
	slipFar  = 2.92 // more
)

// slip returns the share by which a wrongly told reserve moves the estimate.
func (a Accuracy) slip(reserve, toFailure int) float64 {
	if reserve == 0 {
		return 0
	}
	repetitions := slipNear
	if reserve > wideReserve {
		repetitions = slipFar
	}
	q := &equations[a.Formula]
	here := q.Factor(float64(toFailure))
	step := here - q.Factor(float64(toFailure-1))
	return repetitions * math.Abs(step) / here
}

// byAccuracy fills in the estimate by an equation with measured errors.
func (a attempt) byAccuracy(e *Estimate, o Options, s setlog.Set, p body.Person) error {
	low, high := a.reps+a.low, a.reps+a.high
	e.ToFailure = units.Must(units.Between(float64(low), float64(high)))
	spread, ok := o.Accuracy.at(high)
	_, okLow := o.Accuracy.at(low)
	mismatch := o.Accuracy.mismatch(p, s.Hold)
	margin := both(o.Accuracy.times(o.level()) * math.Hypot(spread, o.Accuracy.slip(a.high, high)))
	if len(mismatch) > 0 {
		_, table, _ := lookUp(a.reps, a.high, a.novice)
		margin = margin.wider(table.times(o.scale()))
	}
	if !ok || !okLow || !margin.given() {
		return refuse(field.New("/set/reps", fmt.Sprintf("%v to failure (%v)", e.ToFailure, s.Effort), "repetitions to failure that the accuracy has a band for, with a margin for this person", ErrNotStudied),
			evidence.Because("onerm.none-accuracy", factMismatch).With(evidence.Number("reps", e.ToFailure), evidence.Effort("effort", s.Effort)))
	}
	if err := a.measuredEnds(e, o, margin); err != nil {
		return field.At("/set/load", err)
	}
	e.Grade = gradeAt(high)
	e.Reasons = a.accuracyReasons(*e, o, s, margin, mismatch)
	return nil
}

// measuredEnds fills in the masses.
func (a attempt) measuredEnds(e *Estimate, o Options, m margin) error {
	f := o.Accuracy.Formula
	high, _ := e.ToFailure.Max()
	low, _ := e.ToFailure.Min()
	var err error
	if e.OneRM, err = f.OneRM(a.each, low); err != nil {
		return err
	}
	further, err := f.OneRM(a.each, high)
	if err != nil {
		return err
	}
	least, err := e.OneRM.Scale(units.Fraction(1-m.down), units.Nearest)
	if err != nil {
		return err
	}
	most, err := further.Scale(units.Fraction(1+m.up+o.tired(int(high))), units.Nearest)
	if err != nil {
		return err
	}
	if e.Interval, err = outward(max(least, 0), most); err != nil {
		return err
	}
	e.Formula, e.Answers = f, []FormulaEstimate{{f, e.OneRM}}
	counted := a.countedReps(a.reps, a.low)
	_, e.Loading = a.lowest(counted + a.low)
	return nil
}

func (a attempt) accuracyReasons(e Estimate, o Options, s setlog.Set, m margin, mismatch []string) []evidence.Reason {
	first := evidence.Because("onerm.accuracy", e.Formula.Fact()).With(
		evidence.Term("formula", e.Formula.String()), evidence.Number("reps", e.ToFailure), evidence.Text("margin", m.String()), evidence.Term("loading", e.Loading.String()))
	if o.Accuracy.Fact != "" {
		first.Facts = append(first.Facts, o.Accuracy.Fact)
	}
	list := a.reasonsReserve(s, e, []evidence.Reason{first})
	for _, what := range mismatch {
		list = append(list, evidence.Because("onerm.mismatch", factMismatch).With(evidence.Text("what", what)))
	}
	if a.novice {
		list = append(list, evidence.Because(codeLikelyLow, factUntrained, factUntrainedShare, factReestimate))
	} else if e.Formula == practisedFormula && a.reps+a.high > openNearReps {
		list = append(list, evidence.Because("onerm.reads-low", factOpenMid).With(evidence.Term("formula", e.Formula.String())))
	}
	return o.reasons(list, a.reps+a.high)
}

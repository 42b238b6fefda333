package rule

import (
	"errors"
	"fmt"

	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ErrMedicalCause: the absence had a medical cause; the person is assessed again.
var ErrMedicalCause = errors.New("rule: medical cause")

// begunAnew: after so long the last load and sets say nothing.
func begunAnew() error {
	return field.Bad(nil, "an absence after which the last load and sets still count", field.ErrConflict)
}

// A rung of the ladder holds up to and including so many days.
type rung struct {
	days       int // 0: no end
	load, sets units.Fraction
}

// ladder has no published source.
var ladder = []rung{
	{1 * given.Week, 1, 1},
	{2 * given.Week, 0.95, 0.75},
	{4 * given.Week, 0.90, 0.5},
	{8 * given.Week, 0.80, 0.5},
	{0, 0, 0},
}

// LongestBreak returns the days off up to which the ladder answers.
func LongestBreak() int { return ladder[len(ladder)-2].days }

// A Return is how to begin again after missed time. It has no published source,
// and its reasons say so each time.
type Return struct {
	Load units.Fraction `json:"load,omitzero"` // of the last load; 0 with Anew
	Sets units.Fraction `json:"sets,omitzero"` // of the last number of sets; 0 with Anew
	// Anew: familiarisation and a new baseline, as for somebody who begins; package
	// progression gives no more than the last rung.
	Anew    bool              `json:"anew,omitzero"`
	Basis   evidence.Basis    `json:"basis"` // always design
	Reasons []evidence.Reason `json:"reasons"`
}

// ReturnAfter returns the rung of the ladder for so many days since the last
// session, 0 or more: up to 1 week nothing changes; up to 2 weeks 5 % less load
// and three quarters of the sets; up to 4 weeks 10 % less and half the sets; up
// to 8 weeks 20 % less and half; beyond, a new baseline. The ends belong to the
// rung below them, so that one session a week is no absence.
//
// medical says whether the absence had a medical cause: [screening.Yes] is an
// [ErrMedicalCause], not known a [field.ErrMissing].
func ReturnAfter(days int, medical screening.Answer) (Return, error) {
	var bad field.Errors
	bad.Refuse(days < 0, "/days", days, "0 days or more", field.ErrOutOfRange)
	switch {
	case medical == screening.Unknown:
		bad.Add("/medical", field.Bad(nil, "yes or no", field.ErrMissing))
	case medical != screening.No:
		bad.Add("/medical", field.Bad(medical, "no: the ladder is for absence without a medical cause", ErrMedicalCause))
	}
	if err := bad.Err(); err != nil {
		return Return{}, err
	}
	i := 0
	for ladder[i].days != 0 && days > ladder[i].days {
		i++
	}
	r := Return{Load: ladder[i].load, Sets: ladder[i].sets, Anew: ladder[i].days == 0, Basis: evidence.Design}
	code := evidence.ReasonCode("progression.return")
	if r.Anew {
		code = "progression.return-anew"
	}
	r.Reasons = []evidence.Reason{evidence.Because(code, ladder[i].id(), factNoLadder, factDetraining).With(
		evidence.Days("days", days), evidence.Share("load", r.Load), evidence.Share("sets", r.Sets))}
	return r, nil
}

// Each returns the load to begin again with, to the nearest nanogram, after a
// last load of 0 kg or more. With Anew it is a [field.ErrConflict].
func (r Return) Each(last units.Mass) (units.Mass, error) {
	if last < 0 {
		return 0, field.New("/last", last, "0 kg or more", field.ErrOutOfRange)
	}
	if r.Load <= 0 {
		return 0, begunAnew()
	}
	return last.Scale(r.Load, units.Nearest)
}

// Count returns the sets to begin again with, rounded down but at least one;
// after the last number, 1 to 1000. With Anew it is a [field.ErrConflict].
func (r Return) Count(last int) (int, error) {
	const most = 1000
	if last < 1 || last > most {
		return 0, field.New("/last", last, fmt.Sprintf("1 to %d sets", most), field.ErrOutOfRange)
	}
	if r.Sets <= 0 {
		return 0, begunAnew()
	}
	return max(1, int(float64(last)*float64(r.Sets))), nil
}

func (r rung) id() evidence.FactID {
	if r.days == 0 {
		return "progression.return.beyond"
	}
	return evidence.FactID(fmt.Sprintf("progression.return.%d", r.days/given.Week))
}

func (r rung) fact() evidence.Fact {
	f := evidence.Fact{ID: r.id(), Basis: evidence.Design}
	f.Value = fmt.Sprintf("up to %d weeks off: %v of the load, %v of the sets", r.days/given.Week, r.load, r.sets)
	if r.days == 0 {
		f.Value = "longer off than the ladder: familiarisation and a new baseline, with no more than its last rung gives"
	}
	return f
}

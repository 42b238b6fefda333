package programme

import (
	"iter"
	"slices"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Standing says whether a plan still stands after what happened.
type Standing uint8

// Standings, from the least to the most cautious.
const (
	_               Standing = iota // not given
	PlanStands                      // "stands": nothing that was told stands against it
	AskWhatHappened                 // "ask first": the person was not asked today
	ReviewBefore                    // "review first": somebody looks at it before the next session
	PlanEnded                       // "ended": it ends with clearances and estimates: assess again
)

var standings = field.NewVocabulary[Standing]("standing", "", "stands", "ask first", "review first", "ended")

// Standings yields every standing.
func Standings() iter.Seq[Standing] { return standings.All() }

// String returns "stands", "ask first", "review first" or "ended", and "" for
// not given.
func (s Standing) String() string { return standings.Text(s) }

// MarshalText writes what String returns.
func (s Standing) MarshalText() ([]byte, error) { return standings.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Standing) UnmarshalText(text []byte) error { return standings.Unmarshal(text, s) }

// A HappeningAnswer is what follows from one happening.
type HappeningAnswer struct {
	Kind     HappeningKind     `json:"kind"`
	Day      units.Day         `json:"day,omitzero"`
	Standing Standing          `json:"standing"`
	Reasons  []evidence.Reason `json:"reasons"`
}

// A HappeningReport is what follows from all of them. It screens nobody: red
// flags, symptoms and readings of the day are for [screening.Today].
type HappeningReport struct {
	Standing Standing `json:"standing"` // the most cautious of all
	// Advice is Raise where nothing stands against the plan from this side, Keep
	// where the person was not asked, else Refer.
	Advice     rule.LoadAdvice   `json:"advice"`
	Ended      []screening.Code  `json:"ended,omitempty"`      // the events that ended the plan
	Happenings []HappeningAnswer `json:"happenings,omitempty"` // one for each, in the order given
	Reasons    []evidence.Reason `json:"reasons"`
}

// Review says what happened since the day of the last assessment, o.Day, and
// has to be looked at before the next session: everything that nobody has
// reviewed. What screening knows as an event (operation, fracture, heart attack,
// stroke, hospital stay, fall, new diagnosis) ends the plan until a new
// assessment, reviewed or not, as does what the day's check found in o.Ended.
// What lies before that day was the assessment's to look at, unless it is known
// to have come to light later. On that day, or without a day, it counts as
// after, unless the assessment is known to have heard of it. Who was not asked
// today is asked first. That other kinds ask for a review is this module's
// design; the list of events is screening's.
//
// The errors are those of [Happenings.Validate], a [field.ErrMissing] for an
// outcome that came from no assessment or today not given, and a
// [field.ErrConflict] for days after today, for what an assessment is said to
// have heard of before its day, and for a waiver of screening.
func (h Happenings) Review(o screening.Outcome, today units.Day) (HappeningReport, error) {
	var bad field.Errors
	bad.Add("/happenings", h.checkDays(o.Day, today))
	bad.Add("/screening", checkAssessed(o, today))
	bad.Add("/today", today.Check())
	if err := bad.Err(); err != nil {
		return HappeningReport{}, err
	}
	r := HappeningReport{Standing: PlanStands, Ended: slices.Clone(o.Ended)}
	if h.Asked < today {
		r.Standing = AskWhatHappened
		r.Reasons = append(r.Reasons, evidence.Because("progression.happened-not-asked", factHappenings))
	}
	for _, one := range h.List {
		r.add(one, o.Day)
	}
	if len(r.Ended) > 0 {
		r.Standing = PlanEnded
	}
	r.Advice = r.Standing.advice()
	r.Reasons = append(r.Reasons, evidence.Because("progression.standing", factHappenings, factEventsEnd).With(evidence.Term("standing", r.Standing.String())))
	return r, nil
}

func (s Standing) advice() rule.LoadAdvice {
	switch s {
	case PlanStands:
		return rule.Raise
	case AskWhatHappened:
		return rule.Keep
	}
	return rule.Refer
}

func (r *HappeningReport) add(h Happening, assessed units.Day) {
	s, why := h.standing(assessed)
	a := HappeningAnswer{Kind: h.Kind, Day: h.Day, Standing: s, Reasons: []evidence.Reason{why}}
	if s > PlanStands && h.Related != screening.No {
		a.Reasons = append(a.Reasons, evidence.Because("progression.happened-in-training", factHappenings).With(evidence.Term("related", h.Related.String())))
	}
	r.Happenings = append(r.Happenings, a)
	r.Standing = max(r.Standing, s)
	if code, _ := h.Kind.Code(); s == PlanEnded && !slices.Contains(r.Ended, code) {
		r.Ended = append(r.Ended, code)
	}
}

// standing is what follows from one happening.
func (h Happening) standing(assessed units.Day) (Standing, evidence.Reason) {
	day := evidence.Day("day", h.Day)
	if h.Day.IsZero() {
		day = evidence.Text("day", "a day that is not known")
	}
	because := func(code evidence.ReasonCode) evidence.Reason {
		return evidence.Because(code, factHappenings, factEventsEnd).With(evidence.Term("what", h.Kind.String()), day, evidence.Day("assessed", assessed))
	}
	_, event := h.Kind.Code()
	switch {
	case !h.since(assessed):
		return PlanStands, because("progression.happened-assessed")
	case event:
		return PlanEnded, because("progression.happened-ends-plan")
	case h.Reviewed.Made():
		return PlanStands, because("progression.happened-reviewed").With(evidence.Text("who", h.Reviewed.Who), evidence.Day("reviewed", h.Reviewed.Day))
	case h.Kind == Faint:
		return ReviewBefore, because("progression.happened-faint")
	case h.Kind == HeadKnock:
		why := because("progression.happened-head")
		why.Facts = append(why.Facts, factHead)
		return ReviewBefore, why
	case h.Kind == MedicineChanged:
		return ReviewBefore, because("progression.medicine-changed")
	}
	return ReviewBefore, because("progression.happened-review")
}

// since reports whether h counts as after the assessment.
func (h Happening) since(assessed units.Day) bool {
	switch {
	case h.Day > assessed || given.Yes(h.Unassessed):
		return true
	case h.Day == assessed || h.Day.IsZero():
		return h.Unassessed != screening.No
	}
	return false
}

// checkAssessed refuses an outcome that came from no assessment of a person up
// to today.
func checkAssessed(o screening.Outcome, today units.Day) error {
	switch {
	case o.Waived != "":
		return field.New("/waived", o.Waived, "an outcome of an assessment: a waiver is for no person", field.ErrConflict)
	case o.Route == 0 && o.Meanwhile == 0:
		return field.Bad(nil, "the outcome of an assessment", field.ErrMissing)
	case !o.Screened():
		return o.Validate()
	case today.Check() == nil && o.Day > today:
		return field.New("/day", o.Day, "today or before", field.ErrConflict)
	}
	return nil
}

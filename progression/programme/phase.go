package programme

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/week"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A PhaseState is what is known of a person in a phase of a programme. What is
// zero or empty was not recorded, and lets nothing be left.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type PhaseState struct {
	Phase dose.Phase `json:"phase"`
	First units.Day  `json:"first"` // of the first session in the phase
	Today units.Day  `json:"today"` // First or later

	// PlanFirst is the day of the first session of the plan in force, from First to
	// Today; not given: First, by which the plan expires no later.
	PlanFirst units.Day `json:"plan,omitzero"`
	// ReviewBy is the last day on which the clearances that the plan rests on
	// are in force, as in [screening.Outcome]; not given if there are none.
	ReviewBy units.Day `json:"review_by,omitzero"`

	Planned int `json:"planned"` // sessions from First to Today, 0 or more
	Done    int `json:"done"`    // those known to have been done, 0 to Planned

	Technique dose.Observation `json:"technique,omitzero"` // who saw it last, and when
	// Visits are what the latest visits said, the oldest first; one that was not
	// recorded stands among them as not given.
	Visits []rule.LoadAdvice `json:"visits,omitempty"`

	Goal guideline.Goal `json:"goal,omitzero"` // of the programme
	// Reached says whether the client's own task or test that the phase is for,
	// such as stairs, can be done. Yes is the good answer here.
	Reached  screening.Answer `json:"reached,omitzero"`
	Referral screening.Answer `json:"referral,omitzero"` // one is open
	Standing Standing         `json:"standing,omitzero"` // by [Happenings.Review]
}

// Validate returns every bad field of s at once: a phase, first day or today
// that is not given, days out of order, counts below zero, more sessions done
// than planned, and values outside their enumeration.
func (s PhaseState) Validate() error {
	var bad field.Errors
	bad.Add("/phase", s.Phase.Check())
	bad.Add("", s.checkDays())
	bad.Refuse(s.Planned < 0, "/planned", s.Planned, "0 sessions or more", field.ErrOutOfRange)
	switch {
	case s.Done < 0:
		bad.Add("/done", field.Bad(s.Done, "0 sessions or more", field.ErrOutOfRange))
	case s.Done > s.Planned:
		bad.Add("/done", field.Bad(s.Done, "at most the sessions planned", field.ErrConflict))
	}
	for i, a := range s.Visits {
		bad.Add(fmt.Sprintf("/visits/%d", i), given.OrNone(a))
	}
	bad.Add("/goal", given.OrNone(s.Goal))
	bad.Add("/reached", given.OrNone(s.Reached))
	bad.Add("/referral", given.OrNone(s.Referral))
	bad.Add("/standing", given.OrNone(s.Standing))
	return bad.Err()
}

func (s PhaseState) checkDays() error {
	var bad field.Errors
	bad.Add("/first", s.First.Check())
	bad.Add("/today", s.Today.Check())
	bad.Refuse(bad.Err() == nil && s.Today < s.First, "/today", s.Today, "the day of the first session or later", field.ErrConflict)
	bad.Add("/plan", given.UpTo(s.PlanFirst, s.Today))
	bad.Refuse(s.PlanFirst > 0 && s.PlanFirst < s.First, "/plan", s.PlanFirst, "the first day of the phase or later", field.ErrConflict)
	bad.Add("/review_by", given.UpTo(s.ReviewBy, 0))
	bad.Add("/technique/day", given.UpTo(s.Technique.Day, s.Today))
	return bad.Err()
}

// A CriterionAnswer is whether one criterion holds.
type CriterionAnswer struct {
	Criterion Criterion         `json:"criterion"`
	Holds     CriterionState    `json:"holds"`
	Reasons   []evidence.Reason `json:"reasons"`
}

// An ExitAnswer is whether a phase may be left through one exit.
type ExitAnswer struct {
	Exit     Exit              `json:"exit"`
	May      bool              `json:"may,omitzero"` // every criterion is met
	Criteria []CriterionAnswer `json:"criteria"`     // every one that the exit asks for, in order
}

// A PhaseReport is where a phase may lead today. It moves nobody: person and
// clinician decide, and what comes next is screened and dosed as ever.
type PhaseReport struct {
	Phase   dose.Phase        `json:"phase"`
	Exits   []ExitAnswer      `json:"exits"`          // every one of the phase
	Open    []Exit            `json:"open,omitempty"` // those through which it may be left; none: it goes on
	Dates   week.Dates        `json:"dates"`          // of the plan in force
	Reasons []evidence.Reason `json:"reasons"`        // of the whole, and of dates that have come
}

// PhaseExits says whether the phase may be left today and through which exit:
// Familiarise to Build; Build to Power only where power is the goal; Build and
// Power to Maintain once the client's own goal is reached; Maintain to the end
// of the programme. Each exit lists its criteria as met, not met and not known,
// and is open only where every one is met. Exits and criteria are this module's
// design. The errors are those of [PhaseState.Validate] and days whose dates
// would lie outside the calendar.
func PhaseExits(s PhaseState) (PhaseReport, error) {
	if err := s.Validate(); err != nil {
		return PhaseReport{}, err
	}
	look, err := s.look()
	if err != nil {
		return PhaseReport{}, err
	}
	r := PhaseReport{Phase: s.Phase, Dates: look.plan}
	for _, row := range exitRows {
		if row.from != s.Phase {
			continue
		}
		answer := look.exit(row)
		r.Exits = append(r.Exits, answer)
		if answer.May {
			r.Open = append(r.Open, row.to)
		}
	}
	r.Reasons = append([]evidence.Reason{r.whole()}, look.due()...)
	return r, nil
}

func (r PhaseReport) whole() evidence.Reason {
	if len(r.Open) == 0 {
		return evidence.Because("progression.phase-goes-on", factExits).With(evidence.Term("phase", r.Phase.String()))
	}
	open := r.Open[0].String()
	for _, e := range r.Open[1:] {
		open += " or " + e.String()
	}
	return evidence.Because("progression.phase-may-be-left", factExits).With(evidence.Term("phase", r.Phase.String()), evidence.Text("exits", open))
}

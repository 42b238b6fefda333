package programme

import (
	"fmt"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

const (
	attendanceDays = 4 * given.Week // today and the days before it
	fewPlanned     = 4              // sessions; of fewer planned nothing is concluded, nor of fewer done more than Keep

	// lowShare and what lies below is low attendance, fullShare and what lies
	// above is full.
	lowShare  units.Fraction = 0.5
	fullShare units.Fraction = 0.75
)

// A PlannedSession is a session that a plan had for a day that is over.
type PlannedSession struct {
	Day    units.Day        `json:"day"`
	Missed screening.Answer `json:"missed,omitzero"` // not known counts as missed
}

// An AttendanceAnswer is what attendance says of the plan.
type AttendanceAnswer struct {
	// Advice is Raise where nothing stands against more from this side, Keep, or
	// Ease: simplify the plan.
	Advice  rule.LoadAdvice   `json:"advice"`
	Days    int               `json:"days"`    // of the window, today among them
	Planned int               `json:"planned"` // sessions within it
	Done    int               `json:"done"`    // those known to have been done
	Reasons []evidence.Reason `json:"reasons"`
}

// Attendance looks at the sessions planned in the last 28 days, today among
// them; older ones may be given and count for nothing. Half of them or fewer
// done is Ease: simplify the plan, with fewer exercises or sets and shorter
// sessions. Three quarters or more, and 4 at least, is Raise; what lies between is
// Keep. Of fewer than 4 planned sessions nothing is concluded: Keep. Window,
// number and shares are this module's design.
//
// It looks at sessions that did not take place. [rule.Simplify] is a published rule
// on sessions that did and stayed below the dose; it stands by itself, and
// neither enters the other.
//
// Today or a day not given is a [field.ErrMissing], a day after today a
// [field.ErrConflict], a day given twice a [field.ErrDuplicate].
func Attendance(sessions []PlannedSession, today units.Day) (AttendanceAnswer, error) {
	if err := CheckSessions(sessions, today); err != nil {
		return AttendanceAnswer{}, err
	}
	a := AttendanceAnswer{Days: attendanceDays}
	for _, s := range sessions {
		if today-s.Day >= attendanceDays {
			continue
		}
		a.Planned++
		if s.Missed == screening.No {
			a.Done++
		}
	}
	a.Advice = rule.Keep
	code := evidence.ReasonCode("progression.attendance-between")
	switch {
	case a.Planned < fewPlanned:
		code = "progression.attendance-few"
	case shareOf(a.Done, a.Planned) <= lowShare:
		a.Advice, code = rule.Ease, "progression.attendance-low"
	case nearlyAll(a.Done, a.Planned):
		a.Advice, code = rule.Raise, "progression.attendance-full"
	}
	a.Reasons = []evidence.Reason{evidence.Because(code, factAttendance).With(
		evidence.Count("done", a.Done), evidence.Count("planned", a.Planned), evidence.Days("days", a.Days), evidence.Count("least", fewPlanned))}
	return a, nil
}

// shareOf is the share of the planned sessions that was done, 0 where none was planned.
func shareOf(done, planned int) units.Fraction {
	if planned == 0 {
		return 0
	}
	return units.Fraction(float64(done) / float64(planned))
}

// nearlyAll asks for a number too: else three sessions, too few to tell from,
// would say more once a fourth was missed.
func nearlyAll(done, planned int) bool {
	return done >= fewPlanned && shareOf(done, planned) >= fullShare
}

// CheckSessions returns every bad field of sessions up to today at once: the errors
// of [Attendance].
func CheckSessions(sessions []PlannedSession, today units.Day) error {
	var bad field.Errors
	bad.Add("/today", today.Check())
	seen := make(map[units.Day]bool, len(sessions))
	for i, s := range sessions {
		err := s.Day.Check()
		switch {
		case err != nil:
		case seen[s.Day]:
			err = field.Bad(s.Day, "each day once", field.ErrDuplicate)
		case today.Check() == nil:
			err = given.UpTo(s.Day, today)
		}
		seen[s.Day] = true
		if missed := given.OrNone(s.Missed); err != nil || missed != nil {
			path := fmt.Sprintf("/sessions/%d", i)
			bad.Add(path+"/day", err)
			bad.Add(path+"/missed", missed)
		}
	}
	return bad.Err()
}

package visit

import (
	"fmt"
	"log/slog"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Visit is one exercise at one visit: what was asked for, what was done, and
// how the person bore it. What is nil, empty or unknown was not recorded.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Visit struct {
	Day  units.Day         `json:"day,omitzero"` // needed in the log of a course
	Plan dose.Prescription `json:"plan"`
	Sets []setlog.Set      `json:"sets,omitempty"` // of this exercise, really done

	Moment    *screening.Moment `json:"moment,omitempty"`    // what showed during the sets; given and empty: nothing
	Pain      *screening.Pain   `json:"pain,omitempty"`      // scores from 0 to 10
	RangeLost screening.Answer  `json:"range_lost,omitzero"` // the joint moves less far than at the visit before
	// HurtElsewhere names the other exercises of the visit, of the same kind of movement, that
	// hurt so that they are eased or stopped ([Visit.Hurt]): nothing is made harder after it.
	// A record fills it in; elsewhere the caller does.
	HurtElsewhere []string `json:"hurt_elsewhere,omitempty"`

	// After says that Plan was that day's alone, since its check asked for less, or without sets that
	// the check left the exercise out: it is what the course goes on from.
	After *dose.Prescription `json:"after,omitempty"`

	SorenessDays int              `json:"soreness_days,omitzero"` // of the muscles, after the visit, 0 to 30
	Unwell       screening.Answer `json:"unwell,omitzero"`        // ill at the visit, without what keeps from training

	// Unable says that not one repetition could be done with the planned load, so
	// that Sets is empty; a visit at which nobody tried is something else.
	Unable screening.Answer `json:"unable,omitzero"`

	FormLost screening.Answer `json:"form_lost,omitzero"` // the technique gave way before the sets ended
	Observer dose.Observation `json:"observer,omitzero"`  // who saw the technique, and when

	// LookedAt is who has looked since, and when, at what showed or hurt so that somebody
	// else had to ([Visit.Refers]); no dose follows until somebody has.
	LookedAt dose.Observation `json:"looked_at,omitzero"`
}

// Validate returns every bad field of v at once: a plan without sets, with a count
// outside its range or with what no dose can go on from, sets that are bad or of
// another exercise, hold or side, and bad records of what showed or hurt.
func (v Visit) Validate() error { return v.Check() }

// Check is Validate, without a copy.
func (v *Visit) Check() error {
	v = field.OrZero(v)
	var bad field.Errors
	bad.Add("/plan", checkPlan(&v.Plan))
	if v.After != nil {
		bad.Add("/after", checkPlan(v.After))
		bad.Refuse(v.After.Exercise != v.Plan.Exercise, "/after/exercise", v.After.Exercise, "that of the plan, "+string(v.Plan.Exercise), field.ErrConflict)
	}
	for i := range v.Sets {
		if err := v.checkSet(&v.Sets[i]); err != nil {
			bad.Add(fmt.Sprintf("/sets/%d", i), err)
		}
	}
	bad.Refuse(given.Yes(v.Unable) && len(v.Sets) > 0, "/unable", v.Unable, "no, where a set was done", field.ErrConflict)
	if v.Moment != nil {
		bad.Add("/moment", v.Moment.Validate())
	}
	if v.Pain != nil {
		bad.Add("/pain", given.Pain(*v.Pain))
	}
	for i, name := range v.HurtElsewhere {
		if name == "" {
			bad.Add(fmt.Sprintf("/hurt_elsewhere/%d", i), field.Bad(nil, "the name of an exercise", field.ErrMissing))
		}
	}
	if v.SorenessDays < 0 || v.SorenessDays > mostSoreness {
		bad.Add("/soreness_days", field.Bad(v.SorenessDays, fmt.Sprintf("0 to %d days", mostSoreness), field.ErrOutOfRange))
	}
	if v.LookedAt != (dose.Observation{}) {
		bad.Add("/looked_at", v.checkLookedAt())
	}
	return bad.Err()
}

// checkLookedAt takes somebody with a name, on the day of the visit or later.
func (v *Visit) checkLookedAt() error {
	var bad field.Errors
	bad.Refuse(v.LookedAt.Who == "", "/who", nil, "who has looked", field.ErrMissing)
	bad.Add("/day", v.LookedAt.Day.Check())
	bad.Refuse(v.LookedAt.Day < v.Day, "/day", v.LookedAt.Day, "the day of the visit or later", field.ErrConflict)
	return bad.Err()
}

// mostSoreness is a ceiling against slips, in days.
const mostSoreness = 30

// Ceilings against slips; they are no doses.
const (
	mostSets    = 100
	mostSeconds = 10 // of a part of a repetition
)

// checkPlan refuses what [dose.Frame.Continue] would.
func checkPlan(p *dose.Prescription) error {
	var bad field.Errors
	if p.Sets < 1 || p.Sets > mostSets {
		bad.Add("/sets", field.Bad(p.Sets, fmt.Sprintf("1 to %d sets", mostSets), field.ErrOutOfRange))
	}
	bad.Refuse(p.Load.Each() < 0, "/load/each", p.Load.Each(), "0 kg or more", field.ErrOutOfRange)
	for _, part := range [...]struct {
		path    string
		seconds float64
	}{{"/tempo/lowering", p.Tempo.Lowering}, {"/tempo/pausing", p.Tempo.Pausing}} {
		if !(part.seconds >= 0 && part.seconds <= mostSeconds) {
			bad.Add(part.path, field.Bad(part.seconds, fmt.Sprintf("0 to %d seconds", mostSeconds), field.ErrOutOfRange))
		}
	}
	top, limited := p.Span.Max()
	bad.Refuse(!limited || p.Count < 1 || p.Count > top, "/count", p.Count, "1 or more, up to the end of the plan's span", field.ErrOutOfRange)
	return bad.Err()
}

func (v *Visit) checkSet(s *setlog.Set) error {
	var bad field.Errors
	bad.Add("", s.ValidateFor(v.Plan.Exercise, v.Plan.Hold))
	other := v.Plan.Side != body.Both && s.Side != v.Plan.Side || !v.Plan.OneSided && s.Side != body.Both
	bad.Refuse(other && s.Side.Check() == nil, "/side", s.Side, v.Plan.Side.String(), field.ErrConflict)
	return bad.Err()
}

// setsOf counts the sets of a side; one of both sides counts for each.
func (v *Visit) setsOf(side body.Side) int {
	n := 0
	for i := range v.Sets {
		if s := &v.Sets[i]; s.Side == side || s.Side == body.Both {
			n++
		}
	}
	return n
}

// Done returns the sets of the side with fewer of them.
func (v *Visit) Done() int {
	v = field.OrZero(v)
	if v.Plan.Side != body.Both {
		return v.setsOf(v.Plan.Side)
	}
	left, right := 0, 0
	for i := range v.Sets {
		switch v.Sets[i].Side {
		case body.Left:
			left++
		case body.Right:
			right++
		case body.Both:
			left, right = left+1, right+1
		}
	}
	return min(left, right)
}

// fewest returns the least repetitions of any set, on the weaker side so, and 0
// without a set.
func (v *Visit) fewest() int {
	if len(v.Sets) == 0 {
		return 0
	}
	least := v.Sets[0].Reps
	for i := range v.Sets {
		least = min(least, v.Sets[i].Reps)
	}
	return least
}

// OtherLoad returns the load of the first set that was not done with the
// planned one.
func (v *Visit) OtherLoad() (units.Mass, bool) {
	v = field.OrZero(v)
	for i := range v.Sets {
		s := &v.Sets[i]
		if m, _ := s.Hold.Each(s.Load, s.Stated); m != v.Plan.Load.Each() {
			return m, true
		}
	}
	return 0, false
}

// Met reports whether every planned set was done as asked, with the planned load:
// to the planned count or, within the range, to the reserve that ends a set.
func (v *Visit) Met() bool {
	v = field.OrZero(v)
	_, other := v.OtherLoad()
	return !other && v.allAsAsked()
}

// allAsAsked is Met, whatever the load.
func (v *Visit) allAsAsked() bool {
	for i := range v.Sets {
		if !v.asAsked(&v.Sets[i]) {
			return false
		}
	}
	return v.Done() >= v.Plan.Sets
}

// asAsked reports whether a set was done as asked.
func (v *Visit) asAsked(s *setlog.Set) bool {
	if s.Reps >= v.Plan.Count || !v.countsReserve() {
		return s.Reps >= v.Plan.Count
	}
	low, _ := v.Plan.Span.Min()
	told, known := given.Told(s.Effort)
	return known && told >= v.Plan.Reserve.Least && s.Reps >= low
}

// Reserve returns the least that any set left undone. It is false if the effort
// of a set was not recorded, or on a scale that has no reserve.
func (v *Visit) Reserve() (units.RIR, bool) {
	v = field.OrZero(v)
	var least units.RIR
	for i := range v.Sets {
		low, known := given.Told(v.Sets[i].Effort)
		if !known {
			return 0, false
		}
		if i == 0 || low < least {
			least = low
		}
	}
	return least, len(v.Sets) > 0
}

// leastLeft returns the least that any set left undone, unrecorded for a set whose
// effort was not recorded.
func (v *Visit) leastLeft(unrecorded units.RIR) units.RIR {
	v = field.OrZero(v)
	least := unrecorded
	for i := range v.Sets {
		low, known := given.Told(v.Sets[i].Effort)
		if !known {
			low = unrecorded
		}
		if i == 0 || low < least {
			least = low
		}
	}
	return least
}

// countsReserve reports whether the exercise is one whose reserve is counted.
func (v *Visit) countsReserve() bool { return v.Plan.Measure == exercise.Repetitions }

// Looked reports whether somebody saw the technique at the visit or in the four
// weeks before.
func (v *Visit) Looked() bool {
	v = field.OrZero(v)
	o := v.Observer
	return o.Made() && (v.Day.IsZero() || int(v.Day-o.Day) <= given.KnownDays)
}

// LogValue gives day, exercise and how many sets were done in a line of a log. What was
// noted, and who saw it, are left out.
func (v Visit) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", v.Day.String()), slog.String("exercise", string(v.Plan.Exercise)), slog.Int("sets", len(v.Sets)))
}

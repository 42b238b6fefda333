package progression

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/week"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Course is one exercise of one person from visit to visit: all that
// [Next] depends on.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Course struct {
	// Request is what the dose of the day depends on, as for [dose.Prescribe]:
	// the outcome of the day's screening, the exercise, the kit. Its day may be
	// left out: it is that of the course.
	Request dose.Request `json:"request"`
	// Usual is the outcome of the assessment alone, where that of Request is tightened by the day's check
	// ([screening.Today]): what the check changes is then that day's alone ([Decision.After]).
	Usual *screening.Outcome `json:"usual,omitempty"`
	Log   []visit.Visit      `json:"log"` // of this exercise, the oldest first; each with its day
	Day   units.Day          `json:"day"` // of the visit that is decided on
	// Absence says whether days missed since the last visit at which a set was done
	// had a medical cause. It is needed once more than a week has passed since then,
	// even if the person came. Whether a slight illness that is over is one is for
	// the practitioner to say.
	Absence screening.Answer `json:"absence,omitzero"`
	// BodyMass, if given, tells how large a step is where the body moves too.
	BodyMass units.Mass `json:"body_mass,omitzero"`
	Policy   Policy     `json:"policy,omitzero"`
	// Sessions are those that the plan had for days that are over, each with whether
	// it was missed; none where that is not known. Low [programme.Attendance] makes the dose
	// shorter, and nothing harder.
	Sessions []programme.PlannedSession `json:"sessions,omitempty"`
	// Plan are the dates of the plan in force, those that are known. On a day when it
	// has expired nothing is made harder.
	Plan week.Dates `json:"plan,omitzero"`
	// Watched is who will watch at the visit of Day. [NextAll] brings a second new
	// exercise only where somebody will.
	Watched dose.Observation `json:"watched,omitzero"`
	// Catalogue is where variants are looked up, for bands and heights the one that
	// [example.org/posology/dose/equipment.Kit.Fit] returns; the zero value is the standard one.
	Catalogue exercise.Catalogue `json:"-"`
	// Curve is the person's own relation of load and repetitions. It is kept beside the
	// log, and no dose goes by it: sets are read and doses found by the one equation of
	// [strength.Ability], whose error of curve [strength.Ability.Most] adds.
	Curve onerm.Relation `json:"-"`
}

// A Policy is what a practitioner decides once for a course. The zero value is
// this module's own.
type Policy struct {
	// Rule says when the repetitions are enough for more load. Zero: every set
	// at the top of the range. Else one of over-target, two-for-two,
	// reps-then-load, omni-below-8 and top-of-range. All other gates stay as they
	// are, and so does the look at the next weight.
	Rule rule.Name `json:"rule,omitzero"`
	// Pain says which pain permits more load. Zero: the lowest zone, or usual pain
	// of osteoarthritis. Pain-gate: ordinary pain below 5 of 10 that settles and
	// does not rise (Perry 2005).
	Pain rule.Name `json:"pain,omitzero"`
	// MostReps is where bridging by repetitions ends, 1 to 20; 0: at 20, at 25 to a far weight, or at the
	// end of the exercise's own range. A guideline's range is always worked through.
	MostReps int `json:"most_reps,omitzero"`
	// Floor is with how many repetitions a weight is taken that lies far ahead, 5 to 12;
	// 0: with 6.
	Floor int `json:"floor,omitzero"`
	// KeepExercise keeps a harder variant from being offered: as "harder-variant" in
	// Without.
	KeepExercise bool `json:"keep_exercise,omitzero"`
	// Without names rows of the table of what makes harder that are taken away, such
	// as "harder-variant" (see the package's page): only rows that make harder may be,
	// and not "found", which takes what was lifted already.
	Without []string `json:"without,omitempty"`
}

// without reports whether a row was taken away.
func (p *Policy) without(name string) bool {
	return slices.Contains(p.Without, name) || p.KeepExercise && name == "harder-variant"
}

const (
	bridgeTop  = 20 // where bridging by repetitions ends
	bridgeFar  = 25 // likewise, to a far weight
	leastFloor = 5
	mostFloor  = 12
)

// Validate returns every bad field of p at once.
func (p Policy) Validate() error {
	var bad field.Errors
	switch p.Rule {
	case 0, rule.NameOverTarget, rule.NameTwoForTwo, rule.NameRepsThenLoad, rule.NameOMNIBelow8, rule.NameTopOfRange:
	default:
		bad.Add("/rule", field.Bad(p.Rule, "none, over-target, two-for-two, reps-then-load, omni-below-8 or top-of-range", field.ErrOutOfRange))
	}
	if p.Pain != 0 && p.Pain != rule.NamePainGate {
		bad.Add("/pain", field.Bad(p.Pain, "none or pain-gate", field.ErrOutOfRange))
	}
	if p.MostReps < 0 || p.MostReps > bridgeTop {
		bad.Add("/most_reps", field.Bad(p.MostReps, fmt.Sprintf("1 to %d repetitions, or 0 for the usual", bridgeTop), field.ErrOutOfRange))
	}
	if p.Floor != 0 && (p.Floor < leastFloor || p.Floor > mostFloor) {
		bad.Add("/floor", field.Bad(p.Floor, fmt.Sprintf("%d to %d repetitions, or 0 for the usual", leastFloor, mostFloor), field.ErrOutOfRange))
	}
	for i, name := range p.Without {
		if !slices.Contains(removable(), name) {
			bad.Add(fmt.Sprintf("/without/%d", i), field.Bad(name, "one of "+strings.Join(removable(), ", "), field.ErrUnknown))
		}
	}
	return bad.Err()
}

// Validate returns every bad field of the log and of what stands beside it at
// once; the request's own errors come from [dose.NewFrame].
func (c Course) Validate() error { return c.check(0) }

// history is the log, with what it is read by.
func (c *Course) history() history.History {
	return history.History{Request: &c.Request, Log: c.Log, Day: c.Day, BodyMass: c.BodyMass, ByRating: c.Policy.Rule == rule.NameOMNIBelow8}
}

// check is Validate, with no more than the order of the days of visits before from.
func (c *Course) check(from int) error {
	var bad field.Errors
	bad.Add("/day", c.Day.Check())
	if len(c.Log) == 0 {
		bad.Add("/log", field.Bad(nil, "one visit or more; the first dose is that of dose.Prescribe", field.ErrMissing))
	}
	h := c.history()
	bad.Add("", h.Check(from))
	if c.BodyMass < 0 {
		bad.Add("/body_mass", field.Bad(c.BodyMass, "0 kg or more", field.ErrOutOfRange))
	}
	if d := c.Request.Day; !d.IsZero() && d != c.Day {
		bad.Add("/request/day", field.Bad(d, c.Day.String()+", the day of the course", field.ErrConflict))
	}
	if u := c.Usual; u != nil && (u.Day != c.Request.Screening.Day || u.Today != 0) {
		bad.Add("/usual", field.Bad(u.Day, "the outcome of the assessment of "+c.Request.Screening.Day.String()+", without a day's check", field.ErrConflict))
	}
	bad.Add("/policy", c.Policy.Validate())
	if c.Day.Check() == nil {
		bad.Add("", programme.CheckSessions(c.Sessions, c.Day))
	}
	bad.Add("/plan", history.CheckDates(c.Plan))
	bad.Add("/watched", history.CheckWatched(c.Watched, c.Day))
	return bad.Err()
}

// catalogue returns where variants are looked up.
func (c *Course) catalogue() exercise.Catalogue {
	if c.Catalogue.Len() == 0 {
		return exercise.Standard()
	}
	return c.Catalogue
}

// A Visit is one exercise at one visit: see [visit.Visit].
type Visit = visit.Visit

package review

import (
	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/plan"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

type planned plan.Case

// A Case is that of a plan, and what came of it. Its days are those of the
// plan's first week, which repeats; its list of exercises is not needed, since
// what was asked for names them.
type Case struct {
	planned
	Began    units.Day          `json:"began,omitzero"`   // first session under the plan in force; not given: the first of its days
	Review   units.Day          `json:"review"`           // day of the review
	Absence  screening.Answer   `json:"absence,omitzero"` // whether days missed since the last visit had a medical cause
	BodyMass units.Mass         `json:"body_mass,omitzero"`
	Policy   progression.Policy `json:"policy,omitzero"`

	Asked  []Asked  `json:"asked"`  // what was asked for; each line holds until the next of its exercise
	Visits []Record `json:"visits"` // one for each day of training, in order
	// Sets are the lines of a log that setlog reads, the first of them naming
	// the columns.
	Sets []string `json:"sets"`
}

// Asked is what was asked for of one exercise from a day on, in few words.
type Asked struct {
	From     units.Day        `json:"from"`
	Until    units.Day        `json:"until,omitzero"` // the last day, where the exercise was then dropped
	Exercise exercise.ID      `json:"exercise"`
	Side     body.Side        `json:"side,omitzero"` // not given: both
	Load     units.Mass       `json:"load,omitzero"`
	Stated   body.Stated      `json:"stated,omitzero"` // needed where two weights are held
	Sets     int              `json:"sets"`
	Count    int              `json:"count"`
	Span     units.Range[int] `json:"span"`              // the range of the count to work through
	Reserve  *units.RIR       `json:"reserve,omitempty"` // needed where repetitions are counted
	Lowering float64          `json:"lowering,omitzero"` // seconds, where longer than usual
	Pausing  float64          `json:"pausing,omitzero"`  // likewise
	Finding  *dose.Finding    `json:"finding,omitempty"` // the load was being looked for
}

// Noted is what was recorded of a visit beside its sets, as in
// [progression.Visit]. What is not given was not recorded.
type Noted struct {
	// PainFree: no pain during or after the sets, by the next morning, or on
	// other days of the week.
	PainFree     bool              `json:"pain_free,omitzero"`
	Pain         *screening.Pain   `json:"pain,omitempty"`
	Moment       *screening.Moment `json:"moment,omitempty"` // given and empty: nothing showed
	RangeLost    screening.Answer  `json:"range_lost,omitzero"`
	FormLost     screening.Answer  `json:"form_lost,omitzero"`
	Observer     string            `json:"observer,omitzero"` // who saw the technique
	SorenessDays int               `json:"soreness_days,omitzero"`
	Unwell       screening.Answer  `json:"unwell,omitzero"`
}

// A Record is what was recorded of one visit. What was noted holds for every
// exercise, save where it was otherwise for one.
type Record struct {
	Day units.Day `json:"day"`
	Noted
	But []Exception `json:"but,omitempty"`
}

// An Exception is what was noted of one exercise alone; what it does not give
// is as noted for all.
type Exception struct {
	Exercise exercise.ID `json:"exercise"`
	Noted
}

// A Result is all that follows from a case.
type Result struct {
	Note      string            `json:"note"`
	Client    string            `json:"client"`
	Task      string            `json:"task"`
	Day       units.Day         `json:"day"`             // of the review
	Next      units.Day         `json:"next"`            // of the visit that is decided on
	Profile   screening.Profile `json:"profile"`         // as it was answered at the assessment
	Today     *screening.Check  `json:"today,omitempty"` // the day's check, if there was one
	Screening screening.Outcome `json:"screening"`
	InForce   dose.Dates        `json:"in_force"`          // the days that the plan was held to until now
	Overdue   []evidence.Reason `json:"overdue,omitempty"` // which of them are over
	Expired   bool              `json:"expired,omitzero"`  // so that a new plan is to be made
	Unused    []dose.Unused     `json:"unused,omitempty"`  // tests on which no dose rests
	Items     []Item            `json:"items"`
	Attended  Attendance        `json:"attended"`
	Coming    *Coming           `json:"coming,omitempty"` // nil: nothing can be planned for now
}

// An Item is one exercise: its log and what becomes of it.
type Item struct {
	Exercise exercise.ID          `json:"exercise"`
	Name     string               `json:"name"`
	Log      []progression.Visit  `json:"log"`
	Decision progression.Decision `json:"decision"`
}

func (i Item) prescribed() bool { return i.Decision.Next != nil }

// Attendance is what was done of what was planned.
type Attendance struct {
	// Sessions are those that the plan had, up to the last before the review.
	Sessions []programme.PlannedSession `json:"sessions"`
	Done     []units.Day                `json:"done"`
	Missed   []units.Day                `json:"missed,omitempty"` // planned, and no visit
	Short    []Short                    `json:"short,omitempty"`
	Answer   programme.AttendanceAnswer `json:"answer"` // what it says of the plan
}

// Short is an exercise of which less was done at a visit than was asked for.
type Short struct {
	Day      units.Day   `json:"day"`
	Exercise exercise.ID `json:"exercise"`
	Name     string      `json:"name"`
	// Why is what the gate of repetitions says; nil: the exercise was left out.
	Why *evidence.Reason `json:"why,omitempty"`
}

// Coming is the week of the next visit, and the dates after it.
type Coming struct {
	Days    []units.Day       `json:"days"`
	Dates   dose.Dates        `json:"dates"`
	Beside  []dose.Beside     `json:"beside,omitempty"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// A row is a set with its place among the lines of the log.
type row struct {
	setlog.Set
	at int
}

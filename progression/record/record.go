package record

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Version is the version of the records that this package writes.
const Version = 4

// A Record is one person's file. Its lists are in the order of time, and only grow.
type Record struct {
	Version int    `json:"version"` // needed: [Version]
	Note    string `json:"note"`    // where the record comes from, such as that it is invented; every page repeats it
	Client  string `json:"client"`  // how the papers call the person
	Given

	// Checks are those of days, at most one each: but one stands once more with what was measured
	// again, of glucose after a treated low and of the other readings once, after a rest. A sign that an assessment
	// heard of and that sends to help now or today is one's, too: the next assessment takes the
	// place of the answers.
	Checks []screening.Check `json:"checks,omitempty"`
	Tests  []setlog.Set      `json:"tests,omitempty"` // submaximal test sets
	// Function are tests of function and trials of tasks, as they went.
	Function []choice.Tried `json:"function,omitempty"`
	Seen     []week.Seen    `json:"seen,omitempty"`   // who saw the technique of which exercise, and when
	Asked    []Asked        `json:"asked,omitempty"`  // what was asked for; each line holds until the next of its exercise
	Visits   []TrainingDay  `json:"visits,omitempty"` // one for each day of training
	Done     []setlog.Set   `json:"done,omitempty"`   // the sets of the visits
	// Practised is what came of the work beside lifting, at visits and at home, by days.
	Practised []beside.Practised `json:"practised,omitempty"`
	// Happened is what was told between assessments, such as a faint; an event may stand in
	// Checks, too, and goes into the profile of the next assessment. A sign that sends to help now
	// or today, and was heard on a day whose check is kept already, is a new symptom that is not
	// Unassessed, and stands as one of a check. Looked is who has looked at that, and at what showed
	// or hurt at visits: see [Record.Alarms].
	Happened []programme.Happening `json:"happened,omitempty"`
	Looked   []Look                `json:"looked,omitempty"`
	Entries  []Entry               `json:"entries,omitempty"` // what was decided, to be worked out again
}

// Given is what holds until it is changed.
type Given struct {
	Task    string            `json:"task"`            // what the person wants to be able to do, in their own words
	Tasks   []choice.Task     `json:"tasks,omitempty"` // what that comes to, the most wanted first
	Goal    guideline.Goal    `json:"goal"`
	Profile screening.Profile `json:"profile"` // with restrictions and clearances, and the key of the person
	// Join says how screening joins the published rules where they disagree; the zero
	// value is the choice of package screening, as in records from before it was kept.
	Join      screening.JoinPolicy `json:"join,omitzero"`
	Kit       equipment.Kit        `json:"kit"`
	Exercises []exercise.ID        `json:"exercises,omitempty"` // that are wanted; after the first visit what was asked for names them
	Guideline guideline.ID         `json:"guideline,omitzero"`
	BodyMass  units.Mass           `json:"body_mass,omitzero"`
	// Own are exercises of the clinic beside those of [exercise.Standard].
	Own []exercise.Exercise `json:"own,omitempty"`
	// Curves are the person's own load–repetition curves, at most one for an exercise and side.
	Curves []StoredCurve `json:"curves,omitempty"`

	// Beside is what work beside lifting goes by: the stances that were held, answers of
	// spine and pelvic floor, and in InForce the steps reached before Since. What was
	// practised from then on moves them on; [Review.Beside] is what to keep here.
	// Minutes that are not given there are those of the profile's activity. Not given:
	// not kept.
	Beside beside.Known `json:"beside,omitzero"`

	// The plan in force: the days of its first week, which repeats; minutes of a
	// session, 0 if not limited; its phase, zero by training status; and its first
	// session, the first of its days if not given.
	Days    []units.Day `json:"days"`
	Minutes int         `json:"minutes,omitzero"`
	Phase   dose.Phase  `json:"phase,omitzero"`
	Brief   bool        `json:"brief,omitzero"` // a few minutes on each of the days, in place of sessions
	Began   units.Day   `json:"began,omitzero"`

	// Away are days, in order, on which the person will not train, told beforehand: no week from
	// [Record.Week] or [Record.Assess] has a session on them, and one of them that was not come to is
	// not among those missed. Doses go by what was missed all the same.
	Away []Away `json:"away,omitempty"`

	Review  units.Day          `json:"review,omitzero"`  // agreed day of the next review
	Reached screening.Answer   `json:"reached,omitzero"` // whether the person could do what was wanted, when last asked: see [Record.Phases]
	Absence screening.Answer   `json:"absence,omitzero"` // whether days missed since the last visit had a medical cause; a yes of an entry stands until a visit or an assessment, and what it stopped until an assessment
	Policy  progression.Policy `json:"policy,omitzero"`
}

// Asked is what was asked for of one exercise from a day on, in few words. Its weights are
// of the kit, or of one that an entry was decided with.
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
	// Uncounted: more than the reserve, which is above 0, and too far off to be counted.
	Uncounted bool         `json:"uncounted,omitzero"`
	Lowering  float64      `json:"lowering,omitzero"` // seconds, where longer than usual
	Pausing   float64      `json:"pausing,omitzero"`  // likewise
	Fast      bool         `json:"fast,omitzero"`     // up as fast as can be controlled
	Finding   *dose.Search `json:"finding,omitempty"` // the load was being looked for
	Feel      *Felt        `json:"feel,omitempty"`    // one of the sets was to feel the next weight
	// Looked is who looked, up to the day from which it is asked for, at an exercise that
	// was stopped, so that it begins anew; not given where it was not stopped.
	Looked *dose.Observation `json:"looked,omitempty"`
}

// Felt is what one set was to feel of the next weight, as in [dose.Feel]: a mass stated
// as that of the dose, and how many lifts of it.
type Felt struct {
	Load  units.Mass `json:"load"`
	Count int        `json:"count"`
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

// A TrainingDay is what was recorded of one day of training. What was noted holds for
// every exercise, except where it was otherwise for one.
type TrainingDay struct {
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

// LastDay returns the day of the latest check, or that of the assessment if there was none.
func (r Record) LastDay() units.Day {
	if n := len(r.Checks); n > 0 {
		return r.Checks[n-1].Day
	}
	return r.Profile.Day
}

// check returns the last check of a day, nil if none was made.
func (r Record) check(day units.Day) (*screening.Check, int) {
	for i := range slices.Backward(r.Checks) {
		if r.Checks[i].Day == day {
			return &r.Checks[i], i
		}
	}
	return nil, 0
}

// Away is from which day to which somebody is away, both of them with it.
type Away struct {
	From  units.Day `json:"from"`
	Until units.Day `json:"until"`
}

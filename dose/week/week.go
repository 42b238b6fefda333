package week

import (
	"cmp"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/internal/tested"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Request is all that a week depends on.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Request struct {
	Day       units.Day         `json:"day"`       // that is decided on; the sessions are on it or later
	Screening screening.Outcome `json:"screening"` // whose the week is, where and with whom
	Goal      guideline.Goal    `json:"goal"`
	Phase     dose.Phase        `json:"phase,omitzero"` // zero: by training status, reported as assumed
	Seen      []Seen            `json:"seen,omitempty"` // whose technique; without it a novice stays in dose.Familiarise

	// Exercises that are wanted, the most wanted first; empty: those that package
	// choice takes for the tasks, what was found, the company and the goal.
	Exercises []exercise.ID `json:"exercises,omitempty"`
	// Without are exercises that the client does not want, as stand-ins either.
	Without []exercise.ID `json:"without,omitempty"`
	// Task is what the client wants to be able to do, in their own words.
	Task string `json:"task,omitzero"`
	// Tasks are what that comes to, the most wanted first; exercises and tests are
	// chosen by them.
	Tasks []choice.Task `json:"tasks,omitempty"`
	// Tried are tests of function, as they went: see [choice.Wish].
	Tried []choice.Tried `json:"tried,omitempty"`
	// ComesLittle says that half of the sessions or fewer were come to: the choice is short,
	// and a reason proposes Brief, which nothing switches on by itself.
	ComesLittle bool `json:"comes_little,omitzero"`
	// Brief asks for a few minutes each day in place of sessions, for who will not come
	// to any: four exercises without a weight, one after the other, on every day offered.
	Brief bool `json:"brief,omitzero"`
	// Estimates that there are, of any of the exercises. Those that say nothing of
	// the day, and doubtful ones, are listed in the week and not used: see
	// [Request.Usable].
	Estimates []onerm.Estimate `json:"estimates,omitempty"`
	// Performed are sets that were really done, of any of the exercises; the
	// latest of each that is usable is what looking for a load begins from.
	Performed []setlog.Set  `json:"performed,omitempty"`
	Kit       equipment.Kit `json:"kit"`
	// Chance is what loads and counts are kept to together; zero: [strength.StandardChance].
	Chance    strength.Chance `json:"chance,omitzero"`
	Guideline guideline.ID    `json:"guideline,omitzero"`

	// Known is what work beside lifting goes by: balance that was looked at, brisk
	// minutes now, what is in force.
	Known beside.Known `json:"known,omitzero"`

	// Days on which the person can train, all within seven days.
	Days []units.Day `json:"days"`
	// Minutes for one session, its warm-up included; 0: not limited.
	Minutes int `json:"minutes,omitzero"`

	// Catalogue to look the exercises up in; the zero value: the standard one. What of it
	// depends on the kit is added, as [equipment.Kit.Fit] does.
	Catalogue exercise.Catalogue `json:"-"`
}

// A Session is what is done on one day, in order.
type Session struct {
	Day     units.Day           `json:"day"`
	Items   []dose.Prescription `json:"items"`
	WarmUp  int                 `json:"warm_up"` // minutes of easy movement before it
	Minutes int                 `json:"minutes"` // with the warm-up, rounded up
}

// LeftOut is an exercise that was wanted and is not in the week.
type LeftOut struct {
	Exercise exercise.ID       `json:"exercise"`
	Instead  exercise.ID       `json:"instead,omitzero"` // what took its place, if anything
	Reasons  []evidence.Reason `json:"reasons"`
	Free     []evidence.Reason `json:"free,omitempty"` // what would free it, if anything can
}

// A Week is a week of training, repeated until its review.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Week struct {
	Task     string        `json:"task,omitzero"` // the client's own, as asked for
	Phase    dose.Phase    `json:"phase"`
	Sessions []Session     `json:"sessions"`
	Beside   []beside.Item `json:"beside,omitempty"` // what lifting does not give
	// NotBeside is work of that kind that was called for and is not begun.
	NotBeside []beside.Barred   `json:"not_beside,omitempty"`
	LeftOut   []LeftOut         `json:"left_out,omitempty"`
	Unused    []strength.Unused `json:"unused,omitempty"` // tests and sets that it does not rest on
	Review    units.Day         `json:"review"`           // look at the plan again by this day
	Retest    units.Day         `json:"retest"`           // test strength again by this day
	Expires   units.Day         `json:"expires"`          // follow the plan no longer than this day
	Choice    choice.Chosen     `json:"choice,omitzero"`  // what was chosen and why, and the tests of the tasks
	Reasons   []evidence.Reason `json:"reasons,omitempty"`
}

// Dates returns the days that the week is held to.
func (w Week) Dates() Dates { return Dates{w.Review, w.Retest, w.Expires} }

// Plan plans a week: the same session on each of its days.
//
// Constraints, never broken: the limits of the screening and the weights of
// the kit, as in [dose.Prescribe]; no session after the day by which the assessment is
// to be made again; at least two days from one session to the next,
// round the week; no more days than the guideline's row and, unless it asks for
// fewer, three; a session within its minutes, warm-up included, unless they are
// too few for one set of one exercise: then the session has that alone, and the
// week says how many minutes it takes.
//
// In this order, as far as the minutes reach: as many days as the constraints allow, the
// earliest; each exercise in the order of wish, with one set; then second sets,
// in the order of wish; then third ones. Where the guideline's row asks for more sets of an exercise and
// no movement is learnt any more, those that train the large muscle groups get them first,
// and then each other with as many. Fewer minutes never bring more sets, and what is left
// out says from how many on it is in. Within a session large movements come before small.
//
// A brief week is on every day offered, one after the other, without a warm-up; what has
// a weight is replaced by what has none.
//
// Where no exercises are asked for, those of [choice.Choose] are wanted, each item
// says why, and pushes get no more sets than pulls. What the
// tasks are tested by is in the week either way.
//
// An exercise that cannot be dosed is replaced by a gentler one that can, or
// left out; either way it is listed with its reasons, as is one for which the
// minutes do not suffice. Tests of strength and sets that say nothing of the day,
// or are doubtful, are listed and not used ([Request.Usable]). The error is [dose.ErrNotScreened], a [*dose.ConstraintError]
// where nothing at all can be dosed, and [field.Errors] for bad fields.
func Plan(r Request) (Week, error) {
	p, err := newPlanner(r)
	if err != nil {
		return Week{}, err
	}
	w := Week{Task: r.Task, Choice: p.chosen, Reasons: p.chosen.Said()}
	for _, ex := range p.wanted {
		if err := p.place(ex); err != nil {
			return Week{}, err
		}
	}
	if len(p.items) == 0 {
		return Week{}, p.nothing()
	}
	days := p.days()
	if len(days) == 0 {
		return Week{}, p.reviewOverdue()
	}
	p.raiseHeaviest()
	p.fitMinutes()
	p.order()
	w.Phase, w.LeftOut, w.Unused = p.phase(), p.leftOut, p.unused
	for _, day := range days {
		w.Sessions = append(w.Sessions, Session{day, p.items, p.warmUp(), p.minutes(p.items)})
	}
	if w.Beside, w.NotBeside, err = p.besides(); err != nil {
		return Week{}, err
	}
	if err := w.date(r.Screening.ReviewBy); err != nil {
		return Week{}, err
	}
	w.Reasons = append(w.Reasons, p.weekReasons(days)...)
	return w, nil
}

// nothing says why no exercise is left.
func (p *planner) nothing() error {
	if p.last != nil {
		return p.last
	}
	return field.New("/without", p.r.Without, "at least one exercise left to do", field.ErrConflict)
}

func (r Request) validate() error {
	if err := given.Screened(&r.Screening); err != nil {
		return err
	}
	var bad field.Errors
	bad.Add("", given.Day(r.Day, &r.Screening))
	bad.Add("/seen", r.checkSeen())
	for i, id := range r.Exercises {
		_, err := r.Catalogue.Lookup(string(id))
		bad.Add(given.At("/exercises", i), err)
	}
	for i, t := range r.Tried {
		bad.Add(given.At("/tried", i), t.Validate())
	}
	for i, t := range r.Tasks {
		bad.Add(given.At("/tasks", i), t.Check())
		bad.Refuse(slices.Contains(r.Tasks[:i], t), given.At("/tasks", i), t, "each task once", field.ErrDuplicate)
	}
	for i, id := range r.Without {
		_, err := r.Catalogue.Lookup(string(id))
		bad.Add(given.At("/without", i), err)
	}
	for i, e := range r.Estimates {
		bad.Add(given.At("/estimates", i), e.Validate())
		bad.Add(given.At("/estimates", i)+"/key", r.Screening.Key.Matches(e.Key))
	}
	for i, s := range r.Performed {
		bad.Add(given.At("/performed", i), s.Validate())
		bad.Add(given.At("/performed", i)+"/key", r.Screening.Key.Matches(s.Key))
	}
	if r.Chance != (strength.Chance{}) {
		bad.Add("/chance", r.Chance.Validate())
	}
	bad.Add("/known", r.Known.Validate())
	bad.Add("/days", checkDays(r.Days))
	for i, d := range r.Days {
		if d < r.Day && d.Check() == nil {
			bad.Add(given.At("/days", i), field.Bad(d, r.Day.String()+", the day decided on, or later", field.ErrConflict))
		}
	}
	bad.Refuse(r.Minutes < 0, "/minutes", r.Minutes, "0 or more minutes", field.ErrOutOfRange)
	return bad.Err()
}

// order puts large movements before small, the order of wish among equals.
func (p *planner) order() {
	slices.SortStableFunc(p.items, func(a, b dose.Prescription) int {
		return cmp.Compare(p.r.Catalogue.Pattern(a.Exercise), p.r.Catalogue.Pattern(b.Exercise))
	})
}

// date sets the days of review, re-test and expiry from the first session on.
func (w *Week) date(lapses units.Day) error {
	d, err := dates(w.Phase, w.Sessions[0].Day, lapses)
	w.Review, w.Retest, w.Expires = d.Review, d.Retest, d.Expires
	return field.At("/days", err)
}

// Usable returns r with those estimates and performed sets alone that say something of the
// day decided on, and lists the others. It leaves out
//
//   - what is of after that day, of before an event that ends tests of strength,
//     or older than twelve weeks (dose.test-age);
//   - sets with a weight that the kit does not make, and estimates of the same
//     day, exercise, side and hold, which may come from such a set;
//   - all estimates of one day, exercise, side and hold of which one is 1.9 times
//     another or more, or two have intervals that do not overlap;
//   - estimates of different days of which one is 1.9 times the other or more;
//   - sets of the day of such a doubtful estimate.
//
// The last four are asked about: a slip of per hand and total, or of kilograms
// and pounds, is likely, and which figure is right is not known (dose.queried-tests).
//
// It asks for no more than [Request.Day], the screening, the kit and the two lists, which
// are taken to be valid, and does not change them.
func (r Request) Usable() (Request, []strength.Unused) {
	kept, unused := tested.Lists{Estimates: r.Estimates, Performed: r.Performed}.Usable(r.Day, r.Screening.TestsFrom, r.Kit)
	r.Estimates, r.Performed = kept.Estimates, kept.Performed
	return r, unused
}

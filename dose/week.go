package dose

import (
	"errors"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A WeekRequest is all that a first week depends on.
type WeekRequest struct {
	Screening screening.Outcome `json:"screening"`
	Setting   screening.Setting `json:"setting"`
	Goal      guideline.Goal    `json:"goal"`
	Training  body.Training     `json:"training"`
	Age       body.Age          `json:"age"` // years

	// Exercises that are wanted; empty: the standard start, reported as assumed.
	Exercises []exercise.ID `json:"exercises,omitempty"`
	// Estimates that there are, of any of the exercises.
	Estimates []onerm.Estimate `json:"estimates,omitempty"`
	Kit       equipment.Kit    `json:"kit"`
	Guideline guideline.ID     `json:"guideline,omitzero"`

	// Days on which the person can train, all within seven days.
	Days []units.Day `json:"days"`
	// Minutes for one session; 0: not limited.
	Minutes int `json:"minutes,omitzero"`

	// Catalogue to look the exercises up in; the zero value: the standard one.
	Catalogue exercise.Catalogue `json:"-"`
}

// UnmarshalJSON is strict: unknown fields and fields given twice are errors.
func (r *WeekRequest) UnmarshalJSON(data []byte) error {
	type plain WeekRequest
	return units.DecodeJSON(data, (*plain)(r))
}

// A Session is what is done on one day, in order.
type Session struct {
	Day     units.Day      `json:"day"`
	Items   []Prescription `json:"items"`
	Minutes int            `json:"minutes"` // without warm-up, rounded up
}

// LeftOut is an exercise that was wanted and is not in the week.
type LeftOut struct {
	Exercise exercise.ID       `json:"exercise"`
	Instead  exercise.ID       `json:"instead,omitzero"` // what took its place, if anything
	Reasons  []evidence.Reason `json:"reasons"`
}

// A Week is a first week of training: familiarisation with light loads.
type Week struct {
	Sessions []Session         `json:"sessions"`
	LeftOut  []LeftOut         `json:"left_out,omitempty"`
	Reasons  []evidence.Reason `json:"reasons,omitempty"`
}

// UnmarshalJSON is strict: unknown fields and fields given twice are errors.
func (w *Week) UnmarshalJSON(data []byte) error {
	type plain Week
	return units.DecodeJSON(data, (*plain)(w))
}

// standardStart is one exercise for each large movement, and a carry.
var standardStart = []exercise.ID{
	"goblet-squat", "dumbbell-romanian-deadlift", "dumbbell-floor-press", "one-arm-dumbbell-row",
	"dumbbell-shoulder-press", "lateral-raise", "standing-calf-raise", "dead-bug", "suitcase-carry",
}

// FirstWeek plans a first week: the same session on two or three days with at
// least two days from one to the next, large movements before small.
//
// An exercise that cannot be dosed is replaced by an easier one that can, or
// left out; either way it is listed with its reasons. The error is
// [ErrNotScreened], a [*ConstraintError] where nothing at all can be dosed, and
// [units.FieldErrors] for bad fields.
func FirstWeek(r WeekRequest) (Week, error) {
	var week Week
	if len(r.Exercises) == 0 {
		r.Exercises = standardStart
		week.Reasons = append(week.Reasons, evidence.Because("dose.exercises-assumed"))
	}
	p, err := newPlanner(r)
	if err != nil {
		return Week{}, err
	}
	for i := range r.Exercises {
		if err := p.place(p.wanted[i]); err != nil {
			return Week{}, err
		}
	}
	if len(p.items) == 0 {
		return Week{}, p.last
	}
	days, err := p.days()
	if err != nil {
		return Week{}, err
	}
	p.raiseHeaviest()
	p.keepMinutes()
	week.LeftOut = p.leftOut
	for _, day := range days {
		week.Sessions = append(week.Sessions, Session{day, p.items, wholeMinutes(p.items)})
	}
	week.Reasons = append(week.Reasons, p.weekReasons(days)...)
	return week, nil
}

// A planner collects the items of the session and what was left out.
type planner struct {
	r       WeekRequest
	wanted  []exercise.Exercise
	tables  map[body.Hold]*equipment.Table
	items   []Prescription
	leftOut []LeftOut
	last    error // why the latest exercise was left out
}

func newPlanner(r WeekRequest) (*planner, error) {
	if !r.Screening.Screened() {
		return nil, &units.FieldError{Path: "/screening", Allowed: "the outcome of an assessment", Err: ErrNotScreened}
	}
	if r.Catalogue.Len() == 0 {
		r.Catalogue = exercise.Standard()
	}
	p := &planner{r: r, tables: map[body.Hold]*equipment.Table{}}
	var bad units.FieldErrors
	for i, id := range r.Exercises {
		ex, err := r.Catalogue.Lookup(string(id))
		bad.Add(path("/exercises", i), err)
		p.wanted = append(p.wanted, ex)
	}
	for i, e := range r.Estimates {
		bad.Add(path("/estimates", i), e.Validate())
	}
	bad.Add("/days", checkDays(r.Days))
	if r.Minutes < 0 {
		bad.Add("/minutes", units.Field("", r.Minutes, "0 or more minutes", units.ErrOutOfRange))
	}
	return p, bad.Err()
}

// place doses an exercise, or the first easier one that can be dosed, and
// records what was replaced or left out. Bad fields are an error, and so is
// [ErrNoDose], which bars every exercise.
func (p *planner) place(ex exercise.Exercise) error {
	wanted := ex.ID
	var reasons []evidence.Reason
	for {
		item, err := p.dose(ex)
		if err == nil {
			p.keep(wanted, item, reasons)
			return nil
		}
		var barred *ConstraintError
		if errors.Is(err, ErrNoDose) || !errors.As(err, &barred) {
			return err
		}
		p.last = err
		reasons = append(reasons, barred.Constraint)
		easier, ok := p.r.Catalogue.Get(barred.Instead)
		if !ok {
			p.leftOut = append(p.leftOut, LeftOut{Exercise: wanted, Reasons: reasons})
			return nil
		}
		ex = easier
	}
}

// keep adds an item in its order, unless the session has it already.
func (p *planner) keep(wanted exercise.ID, item Prescription, reasons []evidence.Reason) {
	if item.Exercise != wanted {
		p.leftOut = append(p.leftOut, LeftOut{wanted, item.Exercise, reasons})
	}
	for _, have := range p.items {
		if have.Exercise == item.Exercise {
			return
		}
	}
	at := len(p.items)
	for at > 0 && p.pattern(item) < p.pattern(p.items[at-1]) {
		at--
	}
	p.items = append(p.items[:at], append([]Prescription{item}, p.items[at:]...)...)
}

func (p *planner) pattern(item Prescription) exercise.Pattern {
	ex, _ := p.r.Catalogue.Get(item.Exercise)
	return ex.Pattern
}

// dose prescribes one exercise with the estimate that fits it, if there is one.
func (p *planner) dose(ex exercise.Exercise) (Prescription, error) {
	r := Request{
		Screening: p.r.Screening, Setting: p.r.Setting, Exercise: ex, Side: body.Both,
		Goal: p.r.Goal, Training: p.r.Training, Age: p.r.Age, Kit: p.r.Kit, Guideline: p.r.Guideline,
	}
	var note []evidence.Reason
	r.Estimate, note = p.estimate(ex)
	if r.Estimate != nil {
		r.Side = r.Estimate.Side
	}
	if err := r.validate(); err != nil {
		return Prescription{}, err
	}
	if err := gate(r); err != nil {
		return Prescription{}, err
	}
	table, err := p.table(r)
	if err != nil {
		return Prescription{}, err
	}
	item, err := prescribe(r, table)
	item.Side = body.Both
	item.Reasons = append(item.Reasons, note...)
	return item, err
}

// raiseHeaviest lets an exercise that takes the heaviest weight of the session
// begin with no less than the heaviest of the others, within its own ceiling.
func (p *planner) raiseHeaviest() {
	var most units.Mass
	for _, item := range p.items {
		if ex, _ := p.r.Catalogue.Get(item.Exercise); !ex.Heaviest {
			most = max(most, item.Load.Each)
		}
	}
	for i, item := range p.items {
		ex, _ := p.r.Catalogue.Get(item.Exercise)
		if !ex.Heaviest || item.Finding == nil {
			continue
		}
		load, err := p.tables[item.Hold].Nearest(most, equipment.Policy{Ceiling: item.Finding.Ceiling})
		if err != nil || load.Each <= item.Load.Each {
			continue
		}
		p.items[i].Load, p.items[i].Next = load, nil
		if gap, ok := p.tables[item.Hold].Next(load.Each); ok {
			p.items[i].Next = &gap
		}
		p.items[i].Reasons = append(item.Reasons, evidence.Because("dose.heaviest", ex.Facts...))
	}
}

// table compiles the kit once for each hold.
func (p *planner) table(r Request) (*equipment.Table, error) {
	if t, ok := p.tables[r.Exercise.Hold]; ok {
		return t, nil
	}
	t, err := r.table()
	if err == nil {
		p.tables[r.Exercise.Hold] = t
	}
	return t, err
}

// estimate returns the estimate to dose from. One-sided work takes the weaker
// of the two sides, and none while only one side was tested.
func (p *planner) estimate(ex exercise.Exercise) (*onerm.Estimate, []evidence.Reason) {
	bySide := map[body.Side]onerm.Estimate{}
	for _, e := range p.r.Estimates {
		have, twice := bySide[e.Side]
		if e.Exercise == ex.ID && e.Hold == ex.Hold && (!twice || e.Cautious() < have.Cautious()) {
			bySide[e.Side] = e
		}
	}
	if !ex.OneSided {
		if e, ok := bySide[body.Both]; ok {
			return &e, nil
		}
		return nil, nil
	}
	left, hasLeft := bySide[body.Left]
	right, hasRight := bySide[body.Right]
	switch {
	case hasLeft && hasRight && left.Cautious() <= right.Cautious():
		return &left, []evidence.Reason{evidence.Because("dose.weaker-side").With("side", left.Side)}
	case hasLeft && hasRight:
		return &right, []evidence.Reason{evidence.Because("dose.weaker-side").With("side", right.Side)}
	case hasLeft || hasRight:
		return nil, []evidence.Reason{evidence.Because("dose.one-side-tested")}
	}
	return nil, nil
}

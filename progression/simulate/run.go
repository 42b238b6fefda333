package simulate

import (
	"math"
	"math/rand/v2"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Setup is under what a trainee trains.
type Setup struct {
	// Request is that of the first dose, for the exercise, with the outcome of a
	// screening that comes to the same each time it is due again.
	Request  dose.Request       `json:"request"`
	Policy   progression.Policy `json:"policy,omitzero"`
	BodyMass units.Mass         `json:"body_mass,omitzero"` // where the body moves too; part of the trainee's strength
	Start    units.Day          `json:"start"`              // of the first week
	Weeks    int                `json:"weeks"`              // 1 to 520
	Days     []int              `json:"days"`               // of each week that are planned, 0 to 6, rising
	// Familiarise is how many weeks the phase Familiarise lasts for a request
	// without a phase of its own; then it is Build.
	Familiarise int `json:"familiarise,omitzero"`
	// Choose is the policy: what gives the dose of every visit but the first; nil: [Own].
	Choose Chooser `json:"-"`
}

const (
	mostWeeks  = 520
	daysInWeek = 7
	testDays   = 84 // after a test of strength, for which package dose takes it; then it is left out
	lookedAt   = 28 // days of planned sessions that a decision looks back at
)

// Validate returns every bad field of s at once; the errors of the request come
// from its first dose.
func (s Setup) Validate() error {
	var bad field.Errors
	bad.Add("/policy", s.Policy.Validate())
	bad.Add("/start", s.Start.Check())
	if s.BodyMass < 0 {
		bad.Add("/body_mass", field.Bad(s.BodyMass, "0 kg or more", field.ErrOutOfRange))
	}
	if s.Weeks < 1 || s.Weeks > mostWeeks {
		bad.Add("/weeks", field.Bad(s.Weeks, "1 to 520 weeks", field.ErrOutOfRange))
	}
	if s.Familiarise < 0 || s.Familiarise > mostWeeks {
		bad.Add("/familiarise", field.Bad(s.Familiarise, "0 to 520 weeks", field.ErrOutOfRange))
	}
	rising := len(s.Days) > 0 && len(s.Days) <= daysInWeek
	for i, d := range s.Days {
		rising = rising && d >= 0 && d < daysInWeek && (i == 0 || d > s.Days[i-1])
	}
	if !rising {
		bad.Add("/days", field.Bad(s.Days, "one day or more, 0 to 6, rising", field.ErrOutOfRange))
	}
	return bad.Err()
}

// A Lived visit is one planned day of a run.
type Lived struct {
	Week   int       `json:"week"` // from 1
	Day    units.Day `json:"day"`
	Missed bool      `json:"missed,omitzero"`
	// Strength is the true 1RM of the day, of all that is lifted at once.
	Strength units.Mass `json:"strength,omitzero"`
	// Usual is what it would be on a day like most, before the visit: of missed ones too.
	Usual units.Mass `json:"usual,omitzero"`
	// Fits is the heaviest weight of the kit that could truly be lifted eight times with
	// three left, rested, on that day; 0: none.
	Fits units.Mass `json:"fits,omitzero"`
	// Decision is what led to the dose of the day; without a dose the run ends
	// here. It is zero at the first visit and where the visit was missed.
	Decision progression.Decision `json:"decision,omitzero"`
	Done     progression.Visit    `json:"done,omitzero"`
	Sets     []TrueSet            `json:"true_sets,omitempty"` // what was tried, those that came to nothing too
}

// A TrueSet is what is true of a set, which nobody can see.
type TrueSet struct {
	Side   body.Side      `json:"side"`
	Each   units.Mass     `json:"each"`            // per implement, whatever was logged
	Search bool           `json:"search,omitzero"` // heavier than the dose, to find the load
	Able   float64        `json:"able"`            // repetitions to failure as it began, tired as the trainee was
	Reps   int            `json:"reps"`
	Left   float64        `json:"left"`            // at its end; 0 where it came to nothing
	Failed bool           `json:"failed,omitzero"` // one more was tried, and could not be done
	Share  units.Fraction `json:"share"`           // of the true 1RM of the day
}

// Run lets the trainee train as decided, and returns every planned day. The run
// ends early with a decision that prescribes nothing of the same exercise. src
// is the one source of chance: the same source gives the same run, and the same days,
// errors and misses under another policy or with another kit.
//
// The errors are those of Validate, of [dose.Prescribe] for the first dose and
// of the setup's [Chooser].
func Run(t Trainee, s Setup, src rand.Source) ([]Lived, error) {
	r, err := begin(t, s, src)
	if err != nil {
		return nil, err
	}
	return r.weeks()
}

// begin checks what a run needs.
func begin(t Trainee, s Setup, src rand.Source) (*run, error) {
	var bad field.Errors
	bad.Add("/trainee", t.Validate())
	bad.Add("/setup", s.Validate())
	if src == nil {
		bad.Add("/src", field.Bad(nil, "a source of random numbers", field.ErrMissing))
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	if s.Choose == nil {
		s.Choose = Own
	}
	s.Request.Day = s.Start
	f, err := dose.NewFrame(s.Request)
	if err != nil {
		return nil, field.At("/setup/request", err)
	}
	return &run{t: t, s: s, table: f.Table(), draws: newDraws(src), growth: growth{exponent: t.Gain.exponent()}, last: s.Start}, nil
}

// A run is under way.
type run struct {
	*draws
	t       Trainee
	s       Setup
	table   *equipment.Table
	growth  growth
	planned int       // days so far
	last    units.Day // of the last visit
	log     []progression.Visit
	out     []Lived

	sessions []programme.PlannedSession // of the days before
}

func (r *run) weeks() ([]Lived, error) {
	for week := range r.s.Weeks {
		for _, d := range r.s.Days {
			day := r.s.Start + units.Day(week*daysInWeek+d)
			on, err := r.visit(week, day)
			if err != nil || !on {
				return r.out, err
			}
			r.attend(day, r.out[len(r.out)-1].Missed)
		}
	}
	return r.out, nil
}

// attend keeps of the sessions those that a decision looks at.
func (r *run) attend(day units.Day, missed bool) {
	r.sessions = slices.DeleteFunc(r.sessions, func(s programme.PlannedSession) bool { return day-s.Day >= lookedAt })
	was := screening.No
	if missed {
		was = screening.Yes
	}
	r.sessions = append(r.sessions, programme.PlannedSession{Day: day, Missed: was})
}

// visit trains on one day, and reports whether the run goes on.
func (r *run) visit(week int, day units.Day) (bool, error) {
	defer func() { r.planned++ }()
	kg := r.t.OneRM.Kilograms()
	lost := r.growth
	lost.away(day - r.last)
	usual, _ := units.Kilograms(kg * math.Exp(lost.log))
	v := Lived{Week: week + 1, Day: day, Usual: usual}
	if r.happens(ofMissing, 0, r.t.Missed) {
		v.Missed = true
		r.out = append(r.out, v)
		return true, nil
	}
	r.growth, r.last = lost, day
	plan, err := r.plan(week, day, &v)
	if err != nil {
		return false, err
	}
	if plan == nil || plan.Exercise != r.s.Request.Exercise.ID {
		r.out = append(r.out, v)
		return false, nil
	}
	today := kg * math.Exp(r.growth.log+float64(r.of(ofDay, r.planned, 0).NormFloat64()*float64(r.t.DaySD)))
	v.Strength, _ = units.Kilograms(today)
	v.Fits = r.fits(today)
	r.train(&v, *plan, today)
	r.growth.visit(v.effect())
	r.log = append(r.log, v.Done)
	r.out = append(r.out, v)
	return true, nil
}

// Of a weight that could be lifted instead.
const (
	fitReps = 8
	fitLeft = 3
)

// fits returns the heaviest weight of the kit that can be lifted eight times with
// three left, rested.
func (r *run) fits(oneRM float64) units.Mass {
	heaviest := units.Mass(0)
	for l := range r.table.Loads() {
		if r.t.toFailure(r.lifted(r.s.Request.Exercise.Hold, l.Each()), oneRM) < fitReps+fitLeft {
			break
		}
		heaviest = l.Each()
	}
	return heaviest
}

// plan returns the dose of the day, nil for none.
func (r *run) plan(week int, day units.Day, v *Lived) (*dose.Prescription, error) {
	request := r.s.Request
	request.Day = day
	if slices.ContainsFunc(request.Estimates, func(e onerm.Estimate) bool { return day-e.Day > testDays }) {
		request.Estimates = slices.DeleteFunc(slices.Clone(request.Estimates), func(e onerm.Estimate) bool { return day-e.Day > testDays })
	}
	if o := &request.Screening; r.watched() {
		o.Setting = max(o.Setting, screening.WithHelper)
	}
	if o := &request.Screening; day > o.ReviewBy {
		o.Day, o.ReviewBy = day, o.ReviewBy+day-o.Day
	}
	if request.Phase == 0 && r.s.Familiarise > 0 {
		request.Phase = dose.Familiarise
		if week >= r.s.Familiarise {
			request.Phase = dose.Build
		}
	}
	if len(r.log) == 0 {
		p, err := dose.Prescribe(request)
		return &p, field.At("/setup/request", err)
	}
	d, err := r.s.Choose(Scene{
		Course: progression.Course{
			Request: request, Log: r.log, Day: day, Absence: screening.No, BodyMass: r.s.BodyMass, Policy: r.s.Policy, Sessions: r.sessions,
		},
		Table: r.table,
		Able: func(each units.Mass) float64 {
			return r.t.toFailure(r.lifted(request.Exercise.Hold, each), v.Usual.Kilograms())
		},
	})
	if err != nil {
		return nil, err
	}
	v.Decision = d
	return d.Next, nil
}

// watched reports whether somebody sees the visit, who is then at hand.
func (r *run) watched() bool { return !r.happens(ofWatching, 0, r.t.Unseen) }

// happens draws whether something with a chance happens on the day, in a set.
func (r *run) happens(what purpose, set int, chance units.Fraction) bool {
	return chance > 0 && r.of(what, r.planned, set).Float64() < float64(chance)
}

package simulate

import (
	"math"
	"math/rand/v2"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
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
}

const (
	mostWeeks  = 520
	daysInWeek = 7
	lookedAt   = 28 // days that a decision looks back at
	atLeast    = 4  // visits
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

// A Visit is one planned day of a run.
type Visit struct {
	Week   int       `json:"week"` // from 1
	Day    units.Day `json:"day"`
	Missed bool      `json:"missed,omitzero"`
	// Strength is the true 1RM of the day, of all that is lifted at once.
	Strength units.Mass `json:"strength,omitzero"`
	// Decision is what led to the dose of the day; without a dose the run ends
	// here. It is zero at the first visit and where the visit was missed.
	Decision progression.Decision `json:"decision,omitzero"`
	Done     progression.Visit    `json:"done,omitzero"`
}

// Run lets the trainee train as decided, and returns every planned day. The run
// ends early with a decision that prescribes nothing of the same exercise. src
// is the one source of chance: the same source gives the same run.
//
// The errors are those of Validate, of [dose.Prescribe] for the first dose and
// of [progression.Next].
func Run(t Trainee, s Setup, src rand.Source) ([]Visit, error) {
	var bad field.Errors
	bad.Add("/trainee", t.Validate())
	bad.Add("/setup", s.Validate())
	if src == nil {
		bad.Add("/src", field.Bad(nil, "a source of random numbers", field.ErrMissing))
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	s.Request.Day = s.Start
	f, err := dose.NewFrame(s.Request)
	if err != nil {
		return nil, field.At("/setup/request", err)
	}
	r := run{t: t, s: s, table: f.Table(), rng: rand.New(src)}
	return r.weeks()
}

// A run is under way.
type run struct {
	t     Trainee
	s     Setup
	table *equipment.Table
	rng   *rand.Rand
	log   []progression.Visit
	out   []Visit

	sessions []programme.PlannedSession // of the days before
}

func (r *run) weeks() ([]Visit, error) {
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
	v := Visit{Week: week + 1, Day: day}
	if r.happens(r.t.Missed) {
		v.Missed = true
		r.out = append(r.out, v)
		return true, nil
	}
	plan, err := r.plan(week, day, &v)
	if err != nil {
		return false, err
	}
	if plan == nil || plan.Exercise != r.s.Request.Exercise.ID {
		r.out = append(r.out, v)
		return false, nil
	}
	kg := r.t.strength(float64(len(r.log))/float64(len(r.s.Days))) * math.Exp(r.rng.NormFloat64()*float64(r.t.DaySD))
	v.Strength, _ = units.Kilograms(kg)
	v.Done = r.train(day, *plan, kg)
	r.log = append(r.log, v.Done)
	r.out = append(r.out, v)
	return true, nil
}

// plan returns the dose of the day, nil for none.
func (r *run) plan(week int, day units.Day, v *Visit) (*dose.Prescription, error) {
	request := r.s.Request
	request.Day = day
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
	d, err := progression.Next(progression.Course{
		Request: request, Log: r.recent(day), Day: day, Absence: screening.No, BodyMass: r.s.BodyMass, Policy: r.s.Policy, Sessions: r.sessions,
	})
	if err != nil {
		return nil, err
	}
	v.Decision = d
	return d.Next, nil
}

// recent returns the visits that a decision looks at.
func (r *run) recent(day units.Day) []progression.Visit {
	first := max(0, len(r.log)-atLeast)
	for first > 0 && day-r.log[first-1].Day <= lookedAt {
		first--
	}
	return r.log[first:]
}

// happens draws whether something with a chance happens.
func (r *run) happens(chance units.Fraction) bool {
	return chance > 0 && r.rng.Float64() < float64(chance)
}

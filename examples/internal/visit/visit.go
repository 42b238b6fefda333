package visit

import (
	"errors"
	"strconv"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Case is what is known after a first visit.
type Case struct {
	Note      string            `json:"note"`   // where the case comes from, such as that it is invented; every page repeats it
	Client    string            `json:"client"` // how the papers call the person
	Task      string            `json:"task"`   // what the person wants to be able to do
	Goal      guideline.Goal    `json:"goal"`
	Training  body.Training     `json:"training"`
	Profile   screening.Profile `json:"profile"`
	Today     *screening.Check  `json:"today,omitempty"`
	Tests     []setlog.Set      `json:"tests,omitempty"` // submaximal test sets
	Kit       equipment.Kit     `json:"kit"`
	Days      []units.Day       `json:"days"`
	Minutes   int               `json:"minutes,omitzero"`
	Exercises []exercise.ID     `json:"exercises,omitempty"`
	Seen      []dose.Seen       `json:"seen,omitempty"` // who saw the technique of which exercise, and when
	Guideline guideline.ID      `json:"guideline,omitzero"`

	// On is the day that is decided on, where that is not the day of the visit.
	On units.Day `json:"-"`
}

// A Refusal is a test set from which no estimate follows.
type Refusal struct {
	Set    setlog.Set      `json:"set"`
	Reason evidence.Reason `json:"reason"`
}

// A Stop says why there is no week.
type Stop struct {
	Why        string            `json:"why"`
	Constraint evidence.Reason   `json:"constraint"`
	Free       []evidence.Reason `json:"free,omitempty"`
}

// A Result is all that follows from a case.
type Result struct {
	Note      string            `json:"note"`
	Client    string            `json:"client"`
	Task      string            `json:"task"`
	Profile   screening.Profile `json:"profile"`         // as it was answered
	Today     *screening.Check  `json:"today,omitempty"` // the day's check, if there was one
	Screening screening.Outcome `json:"screening"`
	Estimates []onerm.Estimate  `json:"estimates,omitempty"`
	Refused   []Refusal         `json:"refused,omitempty"`
	Week      *dose.Week        `json:"week,omitempty"`
	Stop      *Stop             `json:"stop,omitempty"`
}

// Run takes a case from its answers to a first week. Bad fields are an error;
// a week that cannot be planned is part of the result.
func Run(c Case) (Result, error) {
	result := Result{Note: c.Note, Client: c.Client, Task: c.Task, Profile: c.Profile, Today: c.Today}
	outcome, err := assess(c)
	if err != nil {
		return Result{}, err
	}
	result.Screening = outcome
	if err := result.estimate(c); err != nil {
		return Result{}, err
	}
	week, err := dose.PlanWeek(dose.WeekRequest{
		Day: c.Day(), Seen: c.Seen, Screening: outcome, Goal: c.Goal,
		Exercises: c.Exercises, Estimates: result.Estimates, Performed: c.Tests, Kit: c.Kit, Guideline: c.Guideline,
		Days: c.Days, Minutes: c.Minutes, Task: c.Task,
	})
	var barred *dose.ConstraintError
	switch {
	case errors.As(err, &barred):
		result.Stop = &Stop{barred.Error(), barred.Constraint, barred.Free}
	case err != nil:
		return Result{}, err
	default:
		result.Week = &week
	}
	return result, nil
}

// Day returns the day that is decided on: On, else that of the day's check, else
// that of the screening.
func (c Case) Day() units.Day {
	switch {
	case !c.On.IsZero():
		return c.On
	case c.Today != nil:
		return c.Today.Day
	}
	return c.Profile.Day
}

func assess(c Case) (screening.Outcome, error) {
	profile := c.Profile
	profile.Training = c.Training
	outcome, err := screening.Assess(profile)
	if err != nil {
		return screening.Outcome{}, field.At("/profile", err)
	}
	if c.Today == nil {
		return outcome, nil
	}
	outcome, err = screening.Today(*c.Today, outcome)
	return outcome, field.At("/today", err)
}

// estimate works through the test sets. A malformed set is an error; a set that
// the policy refuses is listed.
func (r *Result) estimate(c Case) error {
	person := body.Person{Age: c.Profile.Age, Sex: c.Profile.Sex, Training: c.Training}
	catalogue := exercise.Standard()
	var bad field.Errors
	if err := person.Validate(); err != nil && len(c.Tests) > 0 {
		return err // the training status: age and sex were screened
	}
	for i, set := range c.Tests {
		at := "/tests/" + strconv.Itoa(i)
		if err := set.Validate(); err != nil {
			bad.Add(at, err)
			continue
		}
		ex, err := catalogue.Lookup(string(set.Exercise))
		if err != nil {
			bad.Add(at+"/exercise", err)
			continue
		}
		estimate, err := onerm.FromSet(set, ex, person)
		if why, refused := onerm.Refusal(err); refused {
			r.Refused = append(r.Refused, Refusal{set, why})
			continue
		}
		if err != nil {
			bad.Add("", placed(at, err))
			continue
		}
		r.Estimates = append(r.Estimates, estimate)
	}
	return bad.Err()
}

// placed turns the places of an estimate's errors into those of the case.
func placed(at string, err error) error {
	var all field.Errors
	all.Add("", err)
	places := strings.NewReplacer("/set/", at+"/", "/exercise/", at+"/exercise/")
	for _, f := range all {
		f.Path = places.Replace(f.Path)
	}
	return all.Err()
}

package main

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/rota"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A classCase is a class that meets on the same days and shares one kit.
type classCase struct {
	Note    string        `json:"note"` // where the case comes from
	Class   string        `json:"class"`
	Kit     equipment.Kit `json:"kit"`
	Days    []units.Day   `json:"days"`
	Minutes int           `json:"minutes,omitzero"`
	// Clients have neither kit nor days nor minutes of their own.
	Clients []client `json:"clients"`
}

// A client is the record of one of the class, decoded as strictly.
type client struct{ record.Record }

// UnmarshalJSON reads a record of any version.
func (c *client) UnmarshalJSON(data []byte) (err error) {
	c.Record, err = record.Decode(data, field.Strict)
	return err
}

// A member is one person of the class. Those with a stop take no part.
type member struct {
	Client  string            `json:"client"`
	Task    string            `json:"task"`
	Profile screening.Profile `json:"profile"` // as it was answered
	Week    *dose.Week        `json:"week,omitempty"`
	Stop    *record.Stop      `json:"stop,omitempty"`
}

// A classResult is all that follows from a class.
type classResult struct {
	Note    string   `json:"note"`
	Class   string   `json:"class"`
	Members []member `json:"members"`
	// Rota is of those who take part, nil if nobody does.
	Rota   *rota.Timetable    `json:"rota,omitempty"`
	Advice []rota.ClassAdvice `json:"advice,omitempty"` // for less waiting, the best first
	// Stalls are next weights that lie too far off by StepRow's rule, and Steps
	// what one purchase would do about them, the best first.
	Stalls  []stall            `json:"stalls,omitempty"`
	StepRow guideline.ID       `json:"step_row"`
	Steps   []equipment.Advice `json:"steps,omitempty"`
}

// A stall is a member's exercise whose next weight is too far off.
type stall struct {
	Client   string          `json:"client"`
	Exercise string          `json:"exercise"`
	Step     equipment.Stall `json:"step"`
}

// stepRow is where the largest step of load is taken from.
const stepRow guideline.ID = "acsm2009-hypertrophy-novice-intermediate"

// classed plans for each member with the kit of the class, and then finds who
// uses which weight when. Bad fields are an error; a member who cannot be given
// a dose is part of the result.
func classed(c classCase) (classResult, error) {
	result := classResult{Note: c.Note, Class: c.Class, StepRow: stepRow}
	group := rota.Class{Kit: c.Kit}
	var bad field.Errors
	for i, one := range c.Clients {
		one.Kit, one.Days, one.Minutes = c.Kit, c.Days, c.Minutes
		plan, err := one.Start(one.LastDay())
		bad.Add(fmt.Sprintf("/clients/%d", i), err)
		result.Members = append(result.Members, member{one.Client, one.Task, one.Profile, plan.Week, plan.Stop})
		if week := plan.Week; week != nil {
			group.Clients = append(group.Clients, rota.Client{Name: one.Client, Items: week.Sessions[0].Items})
		}
	}
	if len(c.Clients) == 0 {
		bad.Add("/clients", field.Bad(nil, "at least one client", field.ErrMissing))
	}
	if err := bad.Err(); err != nil || len(group.Clients) == 0 {
		return result, err
	}
	table, err := rota.Schedule(group)
	if err != nil {
		return classResult{}, err
	}
	result.Rota = &table
	if result.Advice, err = rota.AdviseClass(group, nil); err != nil {
		return classResult{}, err
	}
	return result, result.steps(group)
}

// steps finds the next weights that are too far off, and what would help.
func (r *classResult) steps(c rota.Class) error {
	row, err := guideline.Get(stepRow)
	if err != nil {
		return err
	}
	most, _ := row.LoadStep.Max()
	var steps []equipment.Stall
	for _, client := range c.Clients {
		for _, item := range client.Items {
			if item.Share == 0 {
				continue // where no maximum is known, a share of the weight held says little
			}
			step := equipment.Stall{Hold: item.Hold, Present: item.Load.Each(), Share: most}
			stalls, err := step.In(c.Kit)
			if err != nil {
				return err
			}
			if stalls {
				r.Stalls = append(r.Stalls, stall{client.Name, item.Name, step})
				steps = append(steps, step)
			}
		}
	}
	r.Steps, err = equipment.Advise(c.Kit, steps, nil)
	return err
}

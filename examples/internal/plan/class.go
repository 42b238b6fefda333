package plan

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/rota"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A ClassCase is a class that meets on the same days and shares one kit.
type ClassCase struct {
	Note    string        `json:"note"` // where the case comes from
	Class   string        `json:"class"`
	Kit     equipment.Kit `json:"kit"`
	Days    []units.Day   `json:"days"`
	Minutes int           `json:"minutes,omitzero"`
	// Clients have neither kit nor days nor minutes of their own.
	Clients []Case `json:"clients"`
}

// A Member is one person of the class. Those with a stop take no part.
type Member struct {
	Client  string            `json:"client"`
	Task    string            `json:"task"`
	Profile screening.Profile `json:"profile"` // as it was answered
	Week    *dose.Week        `json:"week,omitempty"`
	Stop    *visit.Stop       `json:"stop,omitempty"`
}

// A ClassResult is all that follows from a class.
type ClassResult struct {
	Note    string   `json:"note"`
	Class   string   `json:"class"`
	Members []Member `json:"members"`
	// Rota is of those who take part, nil if nobody does.
	Rota   *rota.Timetable `json:"rota,omitempty"`
	Advice []rota.Advice   `json:"advice,omitempty"` // for less waiting, the best first
	// Stalls are next weights that lie too far off by StepRow's rule, and Steps
	// what one purchase would do about them, the best first.
	Stalls  []Stall            `json:"stalls,omitempty"`
	StepRow guideline.ID       `json:"step_row"`
	Steps   []equipment.Advice `json:"steps,omitempty"`
}

// A Stall is a member's exercise whose next weight is too far off.
type Stall struct {
	Client   string          `json:"client"`
	Exercise string          `json:"exercise"`
	Step     equipment.Stall `json:"step"`
}

// stepRow is where the largest step of load is taken from.
const stepRow guideline.ID = "acsm2009-hypertrophy-novice-intermediate"

// RunClass plans for each member with the kit of the class, and then finds who
// uses which weight when. Bad fields are an error; a member who cannot be given
// a dose is part of the result.
func RunClass(c ClassCase) (ClassResult, error) {
	result := ClassResult{Note: c.Note, Class: c.Class, StepRow: stepRow}
	group := rota.Class{Kit: c.Kit}
	var bad field.Errors
	for i, client := range c.Clients {
		client.Kit, client.Days, client.Minutes = c.Kit, c.Days, c.Minutes
		one, err := Run(client)
		bad.Add(fmt.Sprintf("/clients/%d", i), err)
		result.Members = append(result.Members, Member{client.Client, client.Task, client.Profile, one.Visit.Week, one.Visit.Stop})
		if week := one.Visit.Week; week != nil {
			group.Clients = append(group.Clients, rota.Client{Name: client.Client, Items: week.Sessions[0].Items})
		}
	}
	if len(c.Clients) == 0 {
		bad.Add("/clients", field.Bad(nil, "at least one client", field.ErrMissing))
	}
	if err := bad.Err(); err != nil || len(group.Clients) == 0 {
		return result, err
	}
	table, err := rota.Plan(group)
	if err != nil {
		return ClassResult{}, err
	}
	result.Rota = &table
	if result.Advice, err = rota.Advise(group, nil); err != nil {
		return ClassResult{}, err
	}
	return result, result.steps(group)
}

// steps finds the next weights that are too far off, and what would help.
func (r *ClassResult) steps(c rota.Class) error {
	row, err := guideline.Get(stepRow)
	if err != nil {
		return err
	}
	most, _ := row.LoadStep.Max()
	var list []equipment.Stall
	for _, client := range c.Clients {
		for _, item := range client.Items {
			if item.Share == 0 {
				continue // where no maximum is known, a share of the weight held says little
			}
			step := equipment.Stall{Hold: item.Hold, Present: item.Load.Each, Share: most}
			stalls, err := step.In(c.Kit)
			if err != nil {
				return err
			}
			if stalls {
				r.Stalls = append(r.Stalls, Stall{client.Name, item.Name, step})
				list = append(list, step)
			}
		}
	}
	r.Steps, err = equipment.Advise(c.Kit, list, nil)
	return err
}

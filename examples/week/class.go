package main

import (
	"fmt"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/week"
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
	Week    *week.Week        `json:"week,omitempty"`
	Stop    *record.Stop      `json:"stop,omitempty"`
}

// A classResult is all that follows from a class.
type classResult struct {
	Note    string   `json:"note"`
	Class   string   `json:"class"`
	Members []member `json:"members"`
	// Rota is of those who take part, within the minutes of the class where it has any;
	// nil if nobody does.
	Rota   *rota.Timetable `json:"rota,omitempty"`
	WarmUp int             `json:"warm_up,omitzero"` // minutes before the first turn
	// Whole is how long it would be with all sets and exercises; Fitted is what gave.
	Whole  int                `json:"whole,omitzero"` // minutes, without the warm-up
	Fitted *rota.Fitted       `json:"fitted,omitempty"`
	Advice []rota.ClassAdvice `json:"advice,omitempty"` // for less waiting, the best first; none where nobody waits
	Buy    []bought           `json:"buy,omitempty"`    // what brings next weights nearer, the best first
}

// classed plans for each member with the kit of the class, and then finds who
// uses which weight when. Bad fields are an error; a member who cannot be given
// a dose is part of the result. The minutes are those of the class, and not of each.
func classed(c classCase) (classResult, error) {
	result := classResult{Note: c.Note, Class: c.Class}
	group := rota.Class{Kit: c.Kit, Shared: true}
	var bad field.Errors
	for i, one := range c.Clients {
		one.Kit, one.Days, one.Minutes = c.Kit, c.Days, 0
		plan, err := one.Start(one.LastDay())
		bad.Add(fmt.Sprintf("/clients/%d", i), err)
		result.Members = append(result.Members, member{one.Client, one.Task, one.Profile, plan.Week, plan.Stop})
		if w := plan.Week; w != nil {
			group.Clients = append(group.Clients, rota.Client{Name: one.Client, Items: w.Sessions[0].Items})
			result.WarmUp = max(result.WarmUp, w.Sessions[0].WarmUp)
		}
	}
	if len(c.Clients) == 0 {
		bad.Add("/clients", field.Bad(nil, "at least one client", field.ErrMissing))
	}
	if err := bad.Err(); err != nil || len(group.Clients) == 0 {
		return result, err
	}
	if err := result.fit(group, c.Minutes); err != nil {
		return classResult{}, err
	}
	var err error
	result.Buy, err = buys(group)
	return result, err
}

// fit makes the rota, within the minutes if there are any.
func (r *classResult) fit(group rota.Class, minutes int) error {
	table, err := rota.Schedule(group)
	if err != nil {
		return err
	}
	r.Rota, r.Whole = &table, table.Minutes
	if minutes > 0 {
		fitted, err := rota.Within(group, minutes-r.WarmUp)
		if err != nil {
			return err
		}
		r.Fitted, r.Rota, group = &fitted, &fitted.Timetable, fitted.Class
	}
	if r.Rota.Waiting > 0 {
		r.Advice, err = rota.AdviseClass(group, nil)
	}
	return err
}

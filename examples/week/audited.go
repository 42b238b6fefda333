package main

import (
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/command"
	"example.org/posology/progression/record"
)

// A column is the week against one recommendation.
type column struct {
	Guideline guideline.ID     `json:"guideline"`
	Why       string           `json:"why"` // why it is shown
	Plan      guideline.Report `json:"plan"`
	// Alone leaves out what the plan puts beside the lifting.
	Alone guideline.Report `json:"lifting_alone"`
}

// A result is all that follows from a case. There is no week, and nothing that
// follows from one, where the plan has a stop.
type result struct {
	Visit      record.Plan            `json:"visit"`
	Prescribed *guideline.AuditedWeek `json:"prescribed,omitempty"`
	Columns    []column               `json:"columns,omitempty"`
}

// audited takes a case to its week and audits it.
func audited(r record.Record) (result, error) {
	plan, err := command.Plan(r)
	if err != nil || plan.Week == nil {
		return result{Visit: plan}, err
	}
	catalogue, err := r.Catalogue()
	if err != nil {
		return result{}, err
	}
	prescribed, err := plan.Week.Prescribed(catalogue, volume.Options{})
	if err != nil {
		return result{}, err
	}
	columns, err := compared(r, *plan.Week, prescribed)
	return result{plan, &prescribed, columns}, err
}

func compared(r record.Record, w week.Week, prescribed guideline.AuditedWeek) ([]column, error) {
	alone, none := prescribed, 0
	alone.Proposed = nil
	alone.BalanceDays, alone.AerobicMinutes, alone.Impacts = &none, &none, &none
	list := choose(r, w)
	for i := range list {
		row, err := guideline.Get(list[i].Guideline)
		if err != nil {
			return nil, err
		}
		if list[i].Plan, err = guideline.Audit(prescribed, row); err != nil {
			return nil, err
		}
		if list[i].Alone, err = guideline.Audit(alone, row); err != nil {
			return nil, err
		}
	}
	return list, nil
}

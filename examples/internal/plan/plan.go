package plan

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/examples/internal/visit"
)

type visited visit.Case

// A Case is what is known after a first visit, and what a plan needs beside it.
type Case struct {
	visited
	Phase dose.Phase `json:"phase,omitzero"` // zero: by training status
}

// A Column is the week against one recommendation.
type Column struct {
	Guideline guideline.ID     `json:"guideline"`
	Why       string           `json:"why"` // why it is shown
	Plan      guideline.Report `json:"plan"`
	// Alone leaves out what the plan puts beside the lifting.
	Alone guideline.Report `json:"lifting_alone"`
}

// A Result is all that follows from a case. There is no week, and nothing that
// follows from one, where the visit has a stop.
type Result struct {
	Visit      visit.Result    `json:"visit"`
	Prescribed *guideline.Week `json:"prescribed,omitempty"`
	Columns    []Column        `json:"columns,omitempty"`
}

// Run takes a case to its week and audits it. Bad fields are an error; a week
// that cannot be planned is part of the result.
func Run(c Case) (Result, error) {
	first, err := visit.Run(visit.Case(c.visited))
	if err != nil {
		return Result{}, err
	}
	result := Result{Visit: first}
	week, err := dose.PlanWeek(Request(c, first))
	var barred *dose.ConstraintError
	switch {
	case errors.As(err, &barred):
		result.Visit.Week = nil
		result.Visit.Stop = &visit.Stop{Why: barred.Error(), Constraint: barred.Constraint, Free: barred.Free}
		return result, nil
	case err != nil:
		return Result{}, err
	}
	result.Visit.Week = &week
	prescribed, err := week.Prescribed(exercise.Catalogue{}, volume.Options{})
	if err != nil {
		return Result{}, err
	}
	result.Prescribed = &prescribed
	result.Columns, err = columns(c, week, prescribed)
	return result, err
}

// Request is what the case asks of the planner, after its first visit.
func Request(c Case, first visit.Result) dose.WeekRequest {
	return dose.WeekRequest{
		Day: visit.Case(c.visited).Day(), Seen: c.Seen, Screening: first.Screening, Goal: c.Goal,
		Phase:     c.Phase,
		Exercises: c.Exercises, Estimates: first.Estimates, Performed: c.Tests, Kit: c.Kit, Guideline: c.Guideline,
		Days: c.Days, Minutes: c.Minutes, Task: c.Task,
	}
}

func columns(c Case, week dose.Week, prescribed guideline.Week) ([]Column, error) {
	alone, none := prescribed, 0
	alone.BalanceDays, alone.AerobicMinutes, alone.Impacts = &none, &none, &none
	list := choose(c, week)
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

package record

import (
	"errors"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A version0 is the case file of a first visit, a plan or a review: one check, and
// sets as lines of a log that setlog reads, the first of them naming the columns.
type version0 struct {
	Version   int                `json:"version,omitzero"`
	Note      string             `json:"note"`
	Client    string             `json:"client"`
	Task      string             `json:"task"`
	Goal      guideline.Goal     `json:"goal"`
	Training  body.Training      `json:"training"` // now in the profile
	Profile   screening.Profile  `json:"profile"`
	Today     *screening.Check   `json:"today,omitempty"`
	Tests     []setlog.Set       `json:"tests,omitempty"`
	Kit       equipment.Kit      `json:"kit"`
	Days      []units.Day        `json:"days"`
	Minutes   int                `json:"minutes,omitzero"`
	Exercises []exercise.ID      `json:"exercises,omitempty"`
	Seen      []week.Seen        `json:"seen,omitempty"`
	Guideline guideline.ID       `json:"guideline,omitzero"`
	Phase     dose.Phase         `json:"phase,omitzero"`
	Began     units.Day          `json:"began,omitzero"`
	Review    units.Day          `json:"review,omitzero"`
	Absence   screening.Answer   `json:"absence,omitzero"`
	BodyMass  units.Mass         `json:"body_mass,omitzero"`
	Policy    progression.Policy `json:"policy,omitzero"`
	Asked     []Asked            `json:"asked,omitempty"`
	Visits    []TrainingDay      `json:"visits,omitempty"`
	Sets      []string           `json:"sets,omitempty"`
}

func decode0(data []byte, how field.How) (Record, error) {
	var v version0
	var r Record
	err := field.DecodeChecked(data, &v, how, func(v version0) error {
		var bad field.Errors
		lifted, err := v.lift()
		bad.Add("", err)
		if how == field.Strict {
			bad.Add("", lifted.newer(0))
		}
		r = lifted
		return bad.Err()
	})
	if err != nil {
		return Record{}, err
	}
	return r, nil
}

// lift returns the record that v is, or its bad fields at the places of v.
func (v version0) lift() (Record, error) {
	r := Record{
		Version: Version, Note: v.Note, Client: v.Client, Tests: v.Tests, Seen: v.Seen, Asked: v.Asked, Visits: v.Visits,
		Given: Given{
			Task: v.Task, Goal: v.Goal, Profile: v.Profile, Kit: v.Kit, Exercises: v.Exercises, Guideline: v.Guideline,
			BodyMass: v.BodyMass, Days: v.Days, Minutes: v.Minutes, Phase: v.Phase, Began: v.Began, Review: v.Review, Absence: v.Absence, Policy: v.Policy,
		},
	}
	r.Profile.Training = v.Training
	places := moves{"/checks/0": "/today", "/profile/training": "/training"}
	var bad field.Errors
	if v.Today != nil {
		r.Checks = []screening.Check{*v.Today}
		if !v.Review.IsZero() && v.Today.Day != v.Review {
			bad.Add("/today/day", field.Bad(v.Today.Day, v.Review.String()+", the day of the review", field.ErrConflict))
		}
	}
	for i, visit := range v.Visits {
		if !v.Review.IsZero() && visit.Day > v.Review {
			bad.Add(path("visits", i)+"/day", field.Bad(visit.Day, v.Review.String()+", the day of the review, or before", field.ErrConflict))
		}
	}
	done, err := readSets(v.Sets)
	bad.Add("", err)
	for i, s := range done {
		r.Done = append(r.Done, s.Set)
		places[path("done", i)] = path("sets", s.at)
	}
	bad.Add("", places.of(r.Validate()))
	return r, bad.Err()
}

// A row is a set with its place among the lines of the log.
type row struct {
	setlog.Set
	at int
}

// readSets reads the lines of sets.
func readSets(lines []string) ([]row, error) {
	var bad field.Errors
	for i, text := range lines {
		if strings.ContainsAny(text, "\r\n") {
			bad.Add(path("sets", i), field.Bad(nil, "one line", field.ErrSyntax))
		}
	}
	if len(bad) > 0 || len(lines) == 0 {
		return nil, bad.Err()
	}
	blank := func(text string) bool { return strings.TrimSpace(text) == "" }
	at := 0 // the line that was read last; blank ones are passed over
	for at < len(lines) && blank(lines[at]) {
		at++
	}
	var rows []row
	for s, err := range setlog.ReadCSV(strings.NewReader(strings.Join(lines, "\n"))) {
		for at++; err == nil && at < len(lines) && blank(lines[at]); at++ {
		}
		var broken *setlog.RowError
		if errors.As(err, &broken) {
			at = broken.Line - 1
			bad.Add(path("sets", at), broken.Err)
			continue
		}
		if err != nil {
			return nil, field.At("/sets", err)
		}
		rows = append(rows, row{s, at})
	}
	return rows, bad.Err()
}

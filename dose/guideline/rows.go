package guideline

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// rowsJSON is the collection of recommendations. Nothing else holds these rows.
//
//go:embed rows.json
var rowsJSON []byte

// rows are all recommendations, read on first use: professional bodies, people
// with a condition, trials, reviews. Reading cannot panic: the file is built
// into the program, and a test holds that it can be read.
var rows = sync.OnceValue(func() []Recommendation { return units.Must(readRows(rowsJSON)) })

// A row is about the recommendation as a whole; its other columns are in columns.
type row struct {
	ID          ID                `json:"id"`
	Body        string            `json:"body"`
	Year        int               `json:"year"`
	Goal        Goal              `json:"goal"`
	Training    string            `json:"training_status"` // joined by bars, or "any"
	Citation    string            `json:"source"`
	DOI         string            `json:"doi"`
	Via         string            `json:"via"`
	Known       string            `json:"known"`
	KnownFields map[string]string `json:"known_fields"`
	Notes       string            `json:"notes"` // of the collection; ours are in Here
	Here        here              `json:"here"`
}

// here is what this module adds to a row.
type here struct {
	Source       evidence.SourceID `json:"source"`
	Conditions   []Condition       `json:"conditions"`
	AgeMax       body.Age          `json:"age_max"`
	LoadRule     string            `json:"load_rule"`
	Effects      []Effect          `json:"effects"` // in order and with units; the values are in the column
	Via          string            `json:"via"`     // where the row names none
	Notes        string            `json:"notes"`
	SupersededBy []ID              `json:"superseded_by"`
}

// knownAs are the marks of the file for how something is known.
var knownAs = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory}

// aboutRow are the columns of row.
var aboutRow = []string{"id", "body", "year", "goal", "training_status", "source", "doi", "via", "known", "known_fields", "notes", "here"}

func readRows(data []byte) ([]Recommendation, error) {
	var heads []row
	var cells []map[string]json.RawMessage
	if err := field.Decode(data, &heads, field.PassOver); err != nil {
		return nil, err
	}
	if err := field.Decode(data, &cells, field.Strict); err != nil {
		return nil, err
	}
	all := make([]Recommendation, len(heads))
	for i, head := range heads {
		var err error
		if all[i], err = head.recommendation(cells[i]); err != nil {
			return nil, fmt.Errorf("%s: %w", head.ID, err)
		}
	}
	return all, nil
}

func (w row) recommendation(cells map[string]json.RawMessage) (Recommendation, error) {
	r := Recommendation{
		ID: w.ID, Body: w.Body, Year: w.Year, Conditions: w.Here.Conditions, AgeMax: w.Here.AgeMax, Goal: w.Goal,
		Effects: w.Here.Effects, Notes: w.Here.Notes, Source: w.Here.Source, Via: w.Via + w.Here.Via,
		Basis: knownAs[w.Known], SupersededBy: w.Here.SupersededBy,
	}
	var bad field.Errors
	bad.Add("/goal", r.Goal.Check())
	bad.Add("/known", r.Basis.Check())
	bad.Add("/training_status", w.readTraining(&r))
	for name, cell := range cells {
		if f, ok := columns[name]; ok {
			bad.Add("/"+name, f.read(cell, &r))
		} else if !slices.Contains(aboutRow, name) {
			bad.Add("/"+name, field.Bad("", "a column of the file", field.ErrUnknown))
		}
	}
	if w.Here.LoadRule != "" {
		r.LoadRule = w.Here.LoadRule
	}
	bad.Add("/known_fields", w.readBases(&r))
	return r, bad.Err()
}

func (w row) readTraining(r *Recommendation) error {
	if w.Training == "any" {
		return nil
	}
	for name := range strings.SplitSeq(w.Training, "|") {
		var t body.Training
		if err := t.UnmarshalText([]byte(name)); err != nil {
			return err
		}
		r.Training = append(r.Training, t)
	}
	return nil
}

// readBases takes the fields that are known otherwise than their row, in the
// order of fields. What no column holds stands in the notes.
func (w row) readBases(r *Recommendation) error {
	for name, known := range w.KnownFields {
		f, ok := columns[name]
		basis := knownAs[known]
		if err := basis.Check(); err != nil {
			return err
		}
		if ok {
			r.Bases = append(r.Bases, FieldBasis{f, basis})
		}
	}
	slices.SortFunc(r.Bases, func(a, b FieldBasis) int { return int(a.Field) - int(b.Field) })
	return nil
}

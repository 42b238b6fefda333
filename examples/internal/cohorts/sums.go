package cohorts

import (
	"cmp"
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strconv"

	"example.org/posology/dose/cohort"
	"example.org/posology/units/evidence"
)

// Sums are what a log, or some shards of it, come to, and the rows that were not read.
type Sums struct {
	Cohort  *cohort.Cohort
	Rejects []Reject // in order of lines
}

// A Reject is a row that was not read, or one to look at.
type Reject struct {
	Line   int                 `json:"line"`
	Column int                 `json:"column,omitzero"`
	Field  string              `json:"field,omitzero"`
	Code   evidence.ReasonCode `json:"code"`
	Says   string              `json:"says"`
	Taken  bool                `json:"taken,omitzero"` // doubtful, and in the sums all the same
}

// Merge adds t, of other shards; the order and the grouping of merges make no difference.
func (s *Sums) Merge(t Sums) error {
	if err := s.Cohort.Merge(t.Cohort); err != nil {
		return err
	}
	s.Rejects = append(s.Rejects, t.Rejects...)
	slices.SortStableFunc(s.Rejects, func(a, b Reject) int { return cmp.Compare(a.Line, b.Line) })
	return nil
}

// Encode writes the sums and the rejects in the forms that [Plan.Decode] reads.
func (s Sums) Encode(sums, rejects io.Writer) error {
	return errors.Join(s.Cohort.Encode(sums), writeRows(rejects, s.Rejected()))
}

// Decode reads what was encoded by the same plan.
func (p Plan) Decode(sums, rejects io.Reader) (s Sums, err error) {
	if s.Cohort, err = p.Study.Decode(sums); err != nil {
		return Sums{}, err
	}
	s.Rejects, err = readRejects(rejects)
	return s, err
}

func readRejects(r io.Reader) (list []Reject, err error) {
	in := csv.NewReader(r)
	in.FieldsPerRecord = 6
	all, err := in.ReadAll()
	for i, row := range all {
		if i == 0 {
			continue
		}
		one := Reject{Field: row[2], Code: evidence.ReasonCode(row[3]), Says: row[5]}
		var bad [3]error
		one.Line, bad[0] = strconv.Atoi(row[0])
		one.Column, bad[1] = strconv.Atoi(row[1])
		one.Taken, bad[2] = strconv.ParseBool(row[4])
		err = errors.Join(err, bad[0], bad[1], bad[2])
		list = append(list, one)
	}
	return list, err
}

package main

import (
	"encoding"
	"errors"
	"fmt"
	"io"
	"time"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"github.com/parquet-go/parquet-go"
)

// A row is a set in columns of plain types. What was not recorded is null, not zero: a
// reserve of none is failure, and day 0 of the format is a day.
type row struct {
	Person      string   `parquet:"person,dict"`
	Day         *int32   `parquet:"day,date"` // from 1970-01-01
	Exercise    string   `parquet:"exercise,dict"`
	Side        string   `parquet:"side,dict"`
	Hold        string   `parquet:"hold,dict"`
	LoadNG      int64    `parquet:"load_ng"` // nanograms, exact
	Stated      *string  `parquet:"stated,dict"`
	Reps        int32    `parquet:"reps"`
	EffortScale *string  `parquet:"effort_scale,dict"`
	Effort      *float64 `parquet:"effort"`
	RepSeconds  *float64 `parquet:"rep_seconds"`
}

var epoch = units.Must(units.NewDay(1970, time.January, 1))

// given returns a pointer to v, or nil if it was not recorded.
func given[T any](v T, recorded bool) *T {
	if !recorded {
		return nil
	}
	return &v
}

func rowOf(s setlog.Set) row {
	return row{
		Person: string(s.Key), Exercise: string(s.Exercise), Side: s.Side.String(), Hold: s.Hold.String(),
		Day:    given(int32(s.Day-epoch), s.Day != 0),
		LoadNG: int64(s.Load), Stated: given(s.Stated.String(), s.Stated != 0), Reps: int32(s.Reps),
		EffortScale: given(s.Effort.Scale().String(), !s.Effort.IsZero()), Effort: given(s.Effort.Number(), !s.Effort.IsZero()),
		RepSeconds: given(s.RepSeconds, s.RepSeconds != 0),
	}
}

// set returns the set of a row, which has to be valid.
func (r row) set() (setlog.Set, error) {
	s := setlog.Set{Key: body.Key(r.Person), Exercise: exercise.ID(r.Exercise), Load: units.Mass(r.LoadNG), Reps: int(r.Reps)}
	bad := errors.Join(parse(&s.Side, &r.Side), parse(&s.Hold, &r.Hold), parse(&s.Stated, r.Stated))
	if r.Day != nil {
		s.Day = units.Day(*r.Day) + epoch
	}
	if r.RepSeconds != nil {
		s.RepSeconds = *r.RepSeconds
	}
	var scale units.Scale
	bad = errors.Join(bad, parse(&scale, r.EffortScale))
	if (r.Effort == nil) != (r.EffortScale == nil) {
		bad = errors.Join(bad, errors.New("effort and effort_scale go together"))
	} else if r.Effort != nil {
		var err error
		s.Effort, err = units.NewEffort(scale, *r.Effort)
		bad = errors.Join(bad, err)
	}
	return s, errors.Join(bad, s.Validate())
}

// parse reads a text if there is one.
func parse(to encoding.TextUnmarshaler, text *string) error {
	if text == nil {
		return nil
	}
	return to.UnmarshalText([]byte(*text))
}

const batch = 1024 // rows at a time

func write(w io.Writer, sets []setlog.Set) error {
	out := parquet.NewGenericWriter[row](w)
	rows := make([]row, 0, batch)
	for len(sets) > 0 {
		n := min(batch, len(sets))
		rows = rows[:0]
		for _, s := range sets[:n] {
			rows = append(rows, rowOf(s))
		}
		if _, err := out.Write(rows); err != nil {
			return err
		}
		sets = sets[n:]
	}
	return out.Close()
}

func readSets(r io.ReaderAt, size int64) (sets []setlog.Set, err error) {
	file, err := parquet.OpenFile(r, size)
	if err != nil {
		return nil, err
	}
	in := parquet.NewGenericReader[row](file)
	defer in.Close()
	for {
		rows := make([]row, batch)
		n, err := in.Read(rows)
		for _, one := range rows[:n] {
			s, bad := one.set()
			if bad != nil {
				return nil, fmt.Errorf("set %d: %w", len(sets)+1, bad)
			}
			sets = append(sets, s)
		}
		if err == io.EOF {
			return sets, nil
		}
		if err != nil {
			return nil, err
		}
	}
}

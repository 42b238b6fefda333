package papers

import (
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// ReadDiary reads what was typed in from diaries of these exercises: the sets, and what
// was noted of each day, in the order of the days. Bad lines are [field.Errors], all at once, at
// the line, its column below it; then nothing else is returned.
func (v Visit) ReadDiary(typed io.Reader) ([]setlog.Set, []record.TrainingDay, error) {
	lines := csv.NewReader(typed)
	lines.TrimLeadingSpace = true
	all, err := lines.ReadAll()
	if err != nil {
		return nil, nil, field.Bad(nil, "lines of five columns: "+err.Error(), field.ErrSyntax)
	}
	if len(all) == 0 || strings.Join(all[0], ",") != typedColumns {
		return nil, nil, field.New("/1", nil, "a first line "+typedColumns, field.ErrSyntax)
	}
	d := diary{rows: diaryRows(v.items), seen: map[string]bool{}}
	for i, cells := range all[1:] {
		d.bad.Add("/"+strconv.Itoa(i+2), d.line(cells))
	}
	if err := d.bad.Err(); err != nil {
		return nil, nil, err
	}
	slices.SortFunc(d.days, func(a, b record.TrainingDay) int { return int(a.Day - b.Day) })
	return d.sets, d.days, nil
}

// A diary is what was read so far.
type diary struct {
	rows []diaryRow
	seen map[string]bool // days with their rows
	sets []setlog.Set
	days []record.TrainingDay
	bad  field.Errors
}

func (d *diary) line(cells []string) error {
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	var day units.Day
	if err := day.UnmarshalText([]byte(cells[0])); err != nil || day.Check() != nil {
		return field.New("/day", cells[0], "a day such as 2026-12-14", field.ErrSyntax)
	}
	if d.seen[cells[0]+cells[1]] {
		return field.New("/row", cells[1], "each row once on a day", field.ErrDuplicate)
	}
	d.seen[cells[0]+cells[1]] = true
	at := slices.IndexFunc(d.days, func(t record.TrainingDay) bool { return t.Day == day })
	if at < 0 {
		at, d.days = len(d.days), append(d.days, record.TrainingDay{Day: day})
	}
	n, err := strconv.Atoi(cells[1])
	switch {
	case err != nil:
		return note(&d.days[at].Noted, cells[1], cells[3])
	case n < 1 || n > len(d.rows):
		return field.New("/row", n, fmt.Sprintf("1 to %d", len(d.rows)), field.ErrOutOfRange)
	}
	set, err := d.rows[n-1].read(day, cells[2], cells[3], cells[4])
	if err == nil {
		d.sets = append(d.sets, set)
	}
	return err
}

// read returns the set of a row.
func (r diaryRow) read(day units.Day, weight, done, more string) (setlog.Set, error) {
	s := setlog.Set{Day: day, Exercise: r.item.Exercise, Side: r.side, Hold: r.item.Hold, Load: r.item.Load.Each()}
	if s.Hold == body.OneEachHand {
		s.Stated = body.PerHand
	}
	if r.item.Mode == dose.WithoutLoad {
		s.Load = 0
	}
	var bad field.Errors
	var err error
	if weight != "" && weight != none {
		s.Load, err = units.ParseMass(weight)
		bad.Add("/weight", err)
	}
	if s.Reps, err = strconv.Atoi(done); err != nil {
		bad.Add("/done", field.Bad(done, "a whole number", field.ErrSyntax))
	}
	if more != "" && more != none && more != ofTen {
		s.Effort, err = r.effort(more)
		bad.Add("/more", err)
	}
	if len(bad) == 0 {
		bad.Add("", s.Validate())
	}
	return s, bad.Err()
}

// effort reads how many were left or, where nobody counts that, how hard it was.
func (r diaryRow) effort(more string) (e units.Effort, err error) {
	if r.item.Measure != exercise.Repetitions {
		if rating, rated := strings.CutSuffix(more, ofTen); !rated || e.UnmarshalText([]byte("omni "+rating)) != nil {
			return e, field.Bad(more, "how hard it was, such as 6"+ofTen, field.ErrSyntax)
		}
		return e, nil
	}
	left, err := strconv.Atoi(more)
	if err != nil {
		return e, field.Bad(more, "a whole number", field.ErrSyntax)
	}
	return units.InReserve(float64(left))
}

// note takes the answer to one of the questions.
func note(n *record.Noted, row, answer string) error {
	if row == noPain {
		if answer != "yes" && answer != "no" {
			return field.New("/done", answer, "yes or no", field.ErrSyntax)
		}
		if n.PainFree = answer == "yes"; !n.PainFree && n.Pain == nil { // and not told how
			n.Pain = &screening.Pain{}
		}
		return agree(*n)
	}
	score, err := strconv.ParseFloat(answer, 64)
	if row != painDuring && row != painMorning {
		return field.New("/row", row, fmt.Sprintf("a number, “%s”, “%s” or “%s”", noPain, painDuring, painMorning), field.ErrUnknown)
	}
	if err != nil || !(score >= 0 && score <= 10) {
		return field.New("/done", answer, "a number from 0 to 10", field.ErrOutOfRange)
	}
	if n.Pain == nil {
		n.Pain = &screening.Pain{}
	}
	if row == painDuring {
		n.Pain.During = &score
	} else {
		n.Pain.NextMorning = &score
	}
	return agree(*n)
}

// agree refuses a score beside the answer that there was no pain.
func agree(n record.Noted) error {
	if n.PainFree && n.Pain != nil {
		return field.New("/done", noPain, "no score of pain beside it", field.ErrConflict)
	}
	return nil
}

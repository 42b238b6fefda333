package volume

import (
	"fmt"
	"regexp"
	"strconv"
	"time"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// ISOWeek is a week by ISO 8601, Monday to Sunday, counted from the one that
// begins on 0001-01-01. The zero value is "not given". Its text is like
// "2026-W53"; early January may belong to the last week of the year before.
type ISOWeek int32

const daysInWeek = 7

// maxWeek is the last week whose Sunday is a day of [units.Day].
const maxWeek ISOWeek = 3652059 / daysInWeek

const weekForm = "a week such as 2026-W53, from 0001-W01 to 9999-W51"

// ISOWeekOf returns the week that d lies in. A day not given is a
// [field.ErrMissing], one outside whole weeks a [field.ErrOutOfRange].
func ISOWeekOf(d units.Day) (ISOWeek, error) {
	if err := d.Check(); err != nil {
		return 0, err
	}
	w := ISOWeek((d-1)/daysInWeek + 1)
	if w > maxWeek {
		return 0, field.Bad(d, "a day up to 9999-12-26, with which the last whole week ends", field.ErrOutOfRange)
	}
	return w, nil
}

// Check returns nil for a week that is given and ends within the calendar,
// else a [field.ErrMissing] or [field.ErrOutOfRange].
func (w ISOWeek) Check() error {
	switch {
	case w == 0:
		return field.Bad(nil, weekForm, field.ErrMissing)
	case w < 0 || w > maxWeek:
		return field.Bad(int32(w), weekForm, field.ErrOutOfRange)
	}
	return nil
}

// Monday returns the first day of w, no day for a week not given.
func (w ISOWeek) Monday() units.Day {
	if w.Check() != nil {
		return 0
	}
	return units.Day(w-1)*daysInWeek + 1
}

// days lists those days of w whose bit is set, Monday's first.
func (w ISOWeek) days(bits uint8) []units.Day {
	var list []units.Day
	for i := range units.Day(daysInWeek) {
		if bits&(1<<i) != 0 {
			list = append(list, w.Monday()+i)
		}
	}
	return list
}

// String prints "2026-W53", and "" for a week not given.
func (w ISOWeek) String() string {
	switch {
	case w == 0:
		return ""
	case w.Check() != nil:
		return fmt.Sprintf("Week(%d)", int32(w))
	}
	year, n := w.Monday().ISOWeek()
	text := [...]byte{'0', '0', '0', '0', '-', 'W', '0' + byte(n/10), '0' + byte(n%10)}
	for i := 3; year > 0; i, year = i-1, year/10 {
		text[i] += byte(year % 10)
	}
	return string(text[:])
}

// MarshalText writes what [ISOWeek.String] prints; a week outside the calendar is
// a [field.ErrOutOfRange].
func (w ISOWeek) MarshalText() ([]byte, error) {
	if w != 0 {
		if err := w.Check(); err != nil {
			return nil, err
		}
	}
	return []byte(w.String()), nil
}

var weekText = regexp.MustCompile(`^([0-9]{4})-W([0-9]{2})$`)

func parseISOWeek(s string) (ISOWeek, error) {
	part := weekText.FindStringSubmatch(s)
	if part == nil {
		return 0, field.Bad(fmt.Sprintf("%.40q", s), weekForm, field.ErrSyntax)
	}
	year, _ := strconv.Atoi(part[1]) // digits only: no error
	n, _ := strconv.Atoi(part[2])
	fourth, err := units.NewDay(year, time.January, 4) // always in week 1
	if err != nil {
		return 0, field.Bad(s, weekForm, field.ErrOutOfRange)
	}
	w := ISOWeek((fourth-1)/daysInWeek+1) + ISOWeek(n) - 1
	if n == 0 || w.Check() != nil || w.String() != s {
		return 0, field.Bad(s, weekForm, field.ErrOutOfRange)
	}
	return w, nil
}

// UnmarshalText reads a week such as "2026-W53". Another form is a
// [field.ErrSyntax], a week that does not exist a [field.ErrOutOfRange].
func (w *ISOWeek) UnmarshalText(text []byte) error {
	return field.AssignText(w, text, parseISOWeek)
}

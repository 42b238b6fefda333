package units

import (
	"fmt"
	"regexp"
	"strconv"
	"time"

	"example.org/posology/units/field"
)

// Day is a civil day of the proleptic Gregorian calendar, from 0001-01-01,
// which is 1, to 9999-12-31. The zero value is "not given". It has no time of
// day and no zone. Its text is that of ISO 8601: "2026-11-25".
type Day int32

const maxDay Day = 3652059 // 9999-12-31

const dayForm = "a day from 0001-01-01 to 9999-12-31"

// NewDay returns the day of the given year (1 to 9999), month and day of the
// month; a day that does not exist is a [field.ErrOutOfRange].
func NewDay(year int, month time.Month, day int) (Day, error) {
	t := time.Date(year, month, day, 0, 0, 0, 0, time.UTC)
	y, m, d := t.Date()
	if year < 1 || year > 9999 || y != year || m != month || d != day {
		return 0, field.Bad(fmt.Sprintf("%04d-%02d-%02d", year, int(month), day), dayOf(year, month), field.ErrOutOfRange)
	}
	return Day(t.Unix()/86400 - epoch), nil
}

// dayOf says which days there are: those of the month, where there is such a month.
func dayOf(year int, month time.Month) string {
	if year < 1 || year > 9999 {
		return dayForm
	}
	if month < time.January || month > time.December {
		return "a month from 01 to 12"
	}
	last := time.Date(year, month+1, 0, 0, 0, 0, 0, time.UTC).Day()
	return fmt.Sprintf("a day from 1 to %d, as %s %d has", last, month, year)
}

// epoch is the day before 0001-01-01, counted from 1970-01-01.
const epoch = -719163

var dayText = regexp.MustCompile(`^([0-9]{4})-([0-9]{2})-([0-9]{2})$`)

// ParseDay reads a day in the form "2026-11-25". Another form is a
// [field.ErrSyntax], a day that does not exist a [field.ErrOutOfRange].
func ParseDay(s string) (Day, error) {
	part := dayText.FindStringSubmatch(s)
	if part == nil {
		return 0, field.Bad(fmt.Sprintf("%.40q", s), "a day such as 2026-11-25", field.ErrSyntax)
	}
	year, _ := strconv.Atoi(part[1]) // digits only: no error
	month, _ := strconv.Atoi(part[2])
	day, _ := strconv.Atoi(part[3])
	return NewDay(year, time.Month(month), day)
}

// IsZero reports whether the day was not given.
func (d Day) IsZero() bool { return d == 0 }

// Check returns nil for a day from 0001-01-01 to 9999-12-31, else a
// [field.ErrMissing] or [field.ErrOutOfRange].
func (d Day) Check() error {
	if d > 0 && d <= maxDay {
		return nil
	}
	return d.refusal()
}

func (d Day) refusal() error {
	if d == 0 {
		return field.Bad(nil, dayForm, field.ErrMissing)
	}
	return field.Bad(int32(d), dayForm, field.ErrOutOfRange)
}

func (d Day) time() time.Time { return time.Unix((int64(d)+epoch)*86400, 0).UTC() }

// Date returns year, month and day of the month; for a day not given it
// returns zeros.
func (d Day) Date() (year int, month time.Month, day int) {
	if d.Check() != nil {
		return 0, 0, 0
	}
	return d.time().Date()
}

// ISOWeek returns the year and the number of the week, 1 to 53, by ISO 8601;
// for a day not given it returns zeros.
func (d Day) ISOWeek() (year, week int) {
	if d.Check() != nil {
		return 0, 0
	}
	return d.time().ISOWeek()
}

// Weekday returns the day of the week, of a day that is given.
func (d Day) Weekday() time.Weekday { return d.time().Weekday() }

// Plus returns the day n days later, or earlier for n below zero. A day not
// given, or a result outside the calendar, is an error.
func (d Day) Plus(n int) (Day, error) {
	if err := d.Check(); err != nil {
		return 0, err
	}
	s := int64(d) + int64(n)
	if s < 1 || s > int64(maxDay) {
		return 0, field.Bad(fmt.Sprintf("%s plus %d days", d, n), dayForm, field.ErrOutOfRange)
	}
	return Day(s), nil
}

// String prints "2026-11-25", or "" for a day not given.
func (d Day) String() string {
	switch {
	case d == 0:
		return ""
	case d.Check() != nil:
		return fmt.Sprintf("Day(%d)", int32(d))
	}
	return d.time().Format(time.DateOnly)
}

// MarshalText writes what [Day.String] prints; a day outside the calendar is
// a [field.ErrOutOfRange].
func (d Day) MarshalText() ([]byte, error) {
	if d != 0 {
		if err := d.Check(); err != nil {
			return nil, err
		}
	}
	return []byte(d.String()), nil
}

// UnmarshalText reads what MarshalText writes.
func (d *Day) UnmarshalText(text []byte) error {
	return field.AssignText(d, text, ParseDay)
}

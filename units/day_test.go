package units_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

var (
	firstDay = units.Must(units.NewDay(1, time.January, 1))
	lastDay  = units.Must(units.NewDay(9999, time.December, 31))
)

func TestPublishedWeeks(t *testing.T) {
	const src = "ISO 8601: weeks begin on Monday, week 1 holds the year's first Thursday"
	tests := []struct {
		day        string
		year, week int
		weekday    time.Weekday
	}{
		{"2005-01-01", 2004, 53, time.Saturday},
		{"2005-01-02", 2004, 53, time.Sunday},
		{"2005-01-03", 2005, 1, time.Monday},
		{"2008-12-29", 2009, 1, time.Monday},
		{"2010-01-03", 2009, 53, time.Sunday},
		{"2020-12-31", 2020, 53, time.Thursday},
		{"2026-01-01", 2026, 1, time.Thursday},
		{"2026-12-31", 2026, 53, time.Thursday},
		{"2027-01-01", 2026, 53, time.Friday},
		{"2027-01-04", 2027, 1, time.Monday},
	}
	for _, tt := range tests {
		d := units.Must(units.ParseDay(tt.day))
		if y, w := d.ISOWeek(); y != tt.year || w != tt.week || d.Weekday() != tt.weekday {
			t.Errorf("%s is a %v of week %d of %d, want %v, %d, %d (%s)", tt.day, d.Weekday(), w, y, tt.weekday, tt.week, tt.year, src)
		}
	}
}

func TestDayEnds(t *testing.T) {
	if firstDay != 1 || firstDay.String() != "0001-01-01" {
		t.Errorf("the first day is %d, %v, want 1", int32(firstDay), firstDay)
	}
	if lastDay != 3652059 || lastDay.String() != "9999-12-31" {
		t.Errorf("the last day is %d, %v, want 3652059", int32(lastDay), lastDay)
	}
	for _, d := range []units.Day{firstDay, lastDay} {
		if err := d.Check(); err != nil {
			t.Errorf("%v: %v", d, err)
		}
	}
	for _, d := range []units.Day{-1, lastDay + 1, math.MaxInt32, math.MinInt32} {
		if err := d.Check(); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("Day(%d): %v, want %v", int32(d), err, field.ErrOutOfRange)
		}
		if _, err := d.MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("Day(%d).MarshalText: %v, want %v", int32(d), err, field.ErrOutOfRange)
		}
		if y, m, n := d.Date(); y != 0 || m != 0 || n != 0 {
			t.Errorf("Day(%d).Date() = %d, %d, %d, want noughts", int32(d), y, m, n)
		}
		if d.Weekday() < time.Sunday || d.Weekday() > time.Saturday {
			t.Errorf("Day(%d) is a %v", int32(d), d.Weekday())
		}
	}
	if got := units.Day(-1).String(); got != "Day(-1)" {
		t.Errorf("Day(-1) prints %q", got)
	}
}

func TestDayNotGiven(t *testing.T) {
	var d units.Day
	if !d.IsZero() || firstDay.IsZero() || d.String() != "" {
		t.Errorf("IsZero() = %v and %v, text %q", d.IsZero(), firstDay.IsZero(), d)
	}
	if y, w := d.ISOWeek(); y != 0 || w != 0 {
		t.Errorf("ISOWeek() = %d, %d, want noughts", y, w)
	}
	_, plus := d.Plus(1)
	for _, err := range []error{d.Check(), plus} {
		if !errors.Is(err, field.ErrMissing) {
			t.Errorf("got %v, want %v", err, field.ErrMissing)
		}
	}
	roundTrip(t, d)
}

func TestDayErrors(t *testing.T) {
	tests := []struct {
		in   string
		want error
	}{
		{"", field.ErrSyntax},
		{"2026-1-1", field.ErrSyntax},
		{"2026-01-01T00:00:00Z", field.ErrSyntax},
		{" 2026-01-01", field.ErrSyntax},
		{"2026-01-01\n", field.ErrSyntax},
		{"20260101", field.ErrSyntax},
		{"01.02.2026", field.ErrSyntax},
		{"-001-01-01", field.ErrSyntax},
		{"12026-01-01", field.ErrSyntax},
		{"0000-01-01", field.ErrOutOfRange},
		{"2026-00-10", field.ErrOutOfRange},
		{"2026-13-10", field.ErrOutOfRange},
		{"2026-02-29", field.ErrOutOfRange},
		{"1900-02-29", field.ErrOutOfRange},
		{"2026-04-31", field.ErrOutOfRange},
		{"2026-01-00", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		if d, err := units.ParseDay(tt.in); d != 0 || !errors.Is(err, tt.want) {
			t.Errorf("ParseDay(%q) = %v, %v, want %v", tt.in, d, err, tt.want)
		}
	}
	for _, leap := range []string{"2024-02-29", "2000-02-29", "0004-02-29"} {
		if d, err := units.ParseDay(leap); err != nil || d.String() != leap {
			t.Errorf("ParseDay(%q) = %v, %v", leap, d, err)
		}
	}
	if _, err := units.NewDay(math.MaxInt, math.MaxInt, math.MinInt); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("NewDay of huge numbers: %v, want %v", err, field.ErrOutOfRange)
	}
	d := firstDay
	if err := d.UnmarshalText([]byte("tomorrow")); !errors.Is(err, field.ErrSyntax) || d != firstDay {
		t.Errorf("UnmarshalText(tomorrow): %v, day %v; want %v and the old day", err, d, field.ErrSyntax)
	}
}

func anyDay() *rapid.Generator[units.Day] {
	return rapid.Map(rapid.Int32Range(int32(firstDay), int32(lastDay)), func(n int32) units.Day { return units.Day(n) })
}

func TestDayAgainstTime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := anyDay().Draw(t, "d")
		n := rapid.OneOf(rapid.IntRange(-4e6, 4e6), rapid.Int()).Draw(t, "n")
		y, m, day := d.Date()
		want := time.Date(y, m, day, 0, 0, 0, 0, time.UTC)
		if want.Format(time.DateOnly) != d.String() || want.Weekday() != d.Weekday() {
			t.Fatalf("Day(%d) is %v, a %v; by time %v", int32(d), d, d.Weekday(), want)
		}
		if back, err := units.NewDay(y, m, day); back != d || err != nil {
			t.Fatalf("NewDay(%d, %d, %d) = %d, %v, want %d", y, m, day, back, err, d)
		}
		roundTrip(t, d)
		checkPlus(t, d, n, want)
	})
}

// checkPlus compares Plus and Since with time; start is the time of d.
func checkPlus(t *rapid.T, d units.Day, n int, start time.Time) {
	got, err := d.Plus(n)
	inside := n >= -4e6 && n <= 4e6 // years at most, so that AddDate does not overflow
	if inside {
		y := start.AddDate(0, 0, n).Year()
		inside = y >= 1 && y <= 9999
	}
	if !inside {
		if !errors.Is(err, field.ErrOutOfRange) {
			t.Fatalf("%v plus %d = %v, %v, want %v", d, n, got, err, field.ErrOutOfRange)
		}
		return
	}
	if err != nil || got.String() != start.AddDate(0, 0, n).Format(time.DateOnly) {
		t.Fatalf("%v plus %d = %v, %v", d, n, got, err)
	}
}

func TestDayPlusOverflow(t *testing.T) {
	for _, n := range []int{math.MaxInt, math.MinInt, 1} {
		if got, err := lastDay.Plus(n); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("the last day plus %d = %v, %v, want %v", n, got, err, field.ErrOutOfRange)
		}
	}
	if got, err := firstDay.Plus(int(lastDay - firstDay)); got != lastDay || err != nil {
		t.Errorf("the first day plus all = %v, %v, want %v", got, err, lastDay)
	}
}

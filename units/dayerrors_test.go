package units_test

import (
	"errors"
	"testing"
	"time"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// The Gregorian calendar: February has 28 days and, every fourth year but those of
// three centuries in four, 29; April, June, September and November have 30.
func TestDaysThatDoNotExist(t *testing.T) {
	for text, want := range map[string]string{
		"2026-02-30": "a day from 1 to 28, as February 2026 has",
		"2028-02-30": "a day from 1 to 29, as February 2028 has",
		"2100-02-29": "a day from 1 to 28, as February 2100 has",
		"2026-11-31": "a day from 1 to 30, as November 2026 has",
		"2026-12-32": "a day from 1 to 31, as December 2026 has",
		"2026-01-00": "a day from 1 to 31, as January 2026 has",
		"9999-12-32": "a day from 1 to 31, as December 9999 has",
		"2026-13-01": "a month from 01 to 12",
		"2026-00-10": "a month from 01 to 12",
		"0000-01-01": "a day from 0001-01-01 to 9999-12-31",
	} {
		_, err := units.ParseDay(text)
		var bad *field.Error
		if !errors.As(err, &bad) || !errors.Is(err, field.ErrOutOfRange) || bad.Got != text || bad.Allowed != want {
			t.Errorf("%s: %v, want %q", text, err, want)
		}
	}
	if _, err := units.NewDay(10_000, time.January, 1); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("the year 10,000: %v", err)
	}
}

package given_test

import (
	"errors"
	"math"
	"testing"

	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func TestUpTo(t *testing.T) {
	const today units.Day = 739950
	for _, tt := range []struct {
		day, last units.Day
		want      error
	}{{0, today, nil}, {today, today, nil}, {today + 1, today, field.ErrConflict}, {today + 1, 0, nil}, {-1, today, field.ErrOutOfRange}} {
		if err := given.UpTo(tt.day, tt.last); !errors.Is(err, tt.want) {
			t.Errorf("%d up to %d: %v, want %v", tt.day, tt.last, err, tt.want)
		}
	}
}

func TestAnswers(t *testing.T) {
	for a, want := range map[screening.Answer]bool{screening.No: false, screening.Unknown: false, screening.Yes: true, 77: true} {
		if given.Yes(a) != want || (given.OrNone(a) == nil) != (a <= screening.Yes) {
			t.Errorf("%v: %v, %v", a, given.Yes(a), given.OrNone(a))
		}
	}
}

func TestPain(t *testing.T) {
	low, high, none := 0.0, 10.0, math.NaN()
	if err := given.Pain(screening.Pain{Usual: &low, After: &high}); err != nil {
		t.Error(err)
	}
	if err := given.Pain(screening.Pain{During: &none}); !errors.Is(err, field.ErrOutOfRange) {
		t.Error(err)
	}
	texts := map[string]bool{}
	for z := screening.PainZone(0); z <= screening.ZoneUpTo2+2; z++ {
		texts[given.Zone(z)] = true
	}
	if len(texts) != 4 {
		t.Errorf("%v", texts)
	}
}

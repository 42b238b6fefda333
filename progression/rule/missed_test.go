package rule_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"testing"

	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// The ladder at, just under and just over each end; every answer says that it
// has no published source.
func TestReturnAfter(t *testing.T) {
	for _, tt := range []struct {
		days int
		want string
	}{
		{0, "100 % 100 % false"}, {7, "100 % 100 % false"}, {8, "95 % 75 % false"}, {14, "95 % 75 % false"}, {15, "90 % 50 % false"},
		{28, "90 % 50 % false"}, {29, "80 % 50 % false"}, {56, "80 % 50 % false"}, {57, "0 % 0 % true"}, {math.MaxInt, "0 % 0 % true"},
	} {
		r, err := rule.ReturnAfter(tt.days, screening.No)
		if got := fmt.Sprint(r.Load, " ", r.Sets, " ", r.Anew); err != nil || got != tt.want {
			t.Errorf("%d days: %s, %v, want %s", tt.days, got, err, tt.want)
		}
		if r.Basis != evidence.Design || !slices.Contains(r.Reasons[0].Facts, "progression.return-no-source") {
			t.Errorf("%d days: %+v does not say that it has no source", tt.days, r)
		}
	}
	for _, bad := range []struct {
		days    int
		medical screening.Answer
		is      error
		paths   string
	}{
		{-1, screening.No, field.ErrOutOfRange, "/days"}, {10, screening.Unknown, field.ErrMissing, "/medical"},
		{10, screening.Yes, rule.ErrMedicalCause, "/medical"}, {-1, 77, rule.ErrMedicalCause, "/days /medical"},
	} {
		if _, err := rule.ReturnAfter(bad.days, bad.medical); !errors.Is(err, bad.is) || paths(err) != bad.paths {
			t.Errorf("%d days, %v: %v", bad.days, bad.medical, err)
		}
	}
}

// More days missed never raise load or sets, in kilograms or pounds.
func TestReturnIsMonotone(t *testing.T) {
	load, sets := 20*units.Pound, 4
	for days := range 57 {
		r := units.Must(rule.ReturnAfter(days, screening.No))
		each, err := r.Each(20 * units.Pound)
		count, countErr := r.Count(4)
		if err != nil || countErr != nil || each > load || count > sets || count < 1 {
			t.Fatalf("%d days: %v and %d sets after %v and %d (%v, %v)", days, each, count, load, sets, err, countErr)
		}
		load, sets = each, count
	}
	if load != 16*units.Pound || sets != 2 {
		t.Errorf("after 8 weeks %v and %d sets", load.Text(units.LB), sets)
	}
	two := units.Must(rule.ReturnAfter(10, screening.No))
	for last, want := range map[int]int{1: 1, 2: 1, 3: 2, 4: 3, 1000: 750} {
		if got, err := two.Count(last); err != nil || got != want {
			t.Errorf("%d sets become %d, %v, want %d", last, got, err, want)
		}
	}
	anew := units.Must(rule.ReturnAfter(100, screening.No))
	_, errEach := anew.Each(1)
	_, errCount := anew.Count(1)
	if !errors.Is(errEach, field.ErrConflict) || !errors.Is(errCount, field.ErrConflict) {
		t.Errorf("anew: %v, %v", errEach, errCount)
	}
	_, errEach = two.Each(-1)
	_, errCount = two.Count(0)
	_, errMany := two.Count(1001)
	if paths(errEach) != "/last" || paths(errCount) != "/last" || paths(errMany) != "/last" {
		t.Errorf("bad input: %v, %v, %v", errEach, errCount, errMany)
	}
}

func TestLongestBreak(t *testing.T) {
	if days := rule.LongestBreak(); days != 8*7 || units.Must(rule.ReturnAfter(days, screening.No)).Anew || !units.Must(rule.ReturnAfter(days+1, screening.No)).Anew {
		t.Errorf("%d days", days)
	}
}

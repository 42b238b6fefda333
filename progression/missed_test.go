package progression_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/progression"
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
		r, err := progression.ReturnAfter(tt.days, screening.No)
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
		{10, screening.Yes, progression.ErrMedicalCause, "/medical"}, {-1, 77, progression.ErrMedicalCause, "/days /medical"},
	} {
		if _, err := progression.ReturnAfter(bad.days, bad.medical); !errors.Is(err, bad.is) || paths(err) != bad.paths {
			t.Errorf("%d days, %v: %v", bad.days, bad.medical, err)
		}
	}
}

// More days missed never raise load or sets, in kilograms or pounds.
func TestReturnIsMonotone(t *testing.T) {
	load, sets := 20*units.Pound, 4
	for days := range 57 {
		r := units.Must(progression.ReturnAfter(days, screening.No))
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
	two := units.Must(progression.ReturnAfter(10, screening.No))
	for last, want := range map[int]int{1: 1, 2: 1, 3: 2, 4: 3, 1000: 750} {
		if got, err := two.Count(last); err != nil || got != want {
			t.Errorf("%d sets become %d, %v, want %d", last, got, err, want)
		}
	}
	anew := units.Must(progression.ReturnAfter(100, screening.No))
	_, errEach := anew.Each(1)
	_, errCount := anew.Count(1)
	if !errors.Is(errEach, progression.ErrNoBaseline) || !errors.Is(errCount, progression.ErrNoBaseline) {
		t.Errorf("anew: %v, %v", errEach, errCount)
	}
	_, errEach = two.Each(-1)
	_, errCount = two.Count(0)
	_, errMany := two.Count(1001)
	if paths(errEach) != "/last" || paths(errCount) != "/last" || paths(errMany) != "/last" {
		t.Errorf("bad input: %v, %v, %v", errEach, errCount, errMany)
	}
}

// Caterisano 2019, from memory: cuts of 50, 30, 20 and 10 %.
func TestAthletesRamp(t *testing.T) {
	r := progression.AthletesRamp()
	if got := fmt.Sprint(r.AfterDays, r.Weeks, r.Relative); got != "14 [{1 50 % 3} {2 30 % 4} {3 20 % 0} {4 10 % 0}] 11 to 30" {
		t.Error(got)
	}
}

func TestAfterCovid(t *testing.T) {
	well := progression.Recovery{SymptomFree: 100, Severe: screening.No, Lasting: screening.No, Heart: screening.No}
	with := func(change func(*progression.Recovery)) progression.Recovery { r := well; change(&r); return r }
	for name, tt := range map[string]struct {
		r    progression.Recovery
		want string
	}{
		"6 days":     {with(func(r *progression.Recovery) { r.SymptomFree = 6 }), "not yet"},
		"7 days":     {with(func(r *progression.Recovery) { r.SymptomFree = 7 }), "in phase 1 6 to 8 false"},
		"day 6":      {with(func(r *progression.Recovery) { r.Since = 6 }), "in phase 1 6 to 8 false"},
		"day 7":      {with(func(r *progression.Recovery) { r.Since = 7 }), "in phase 2 6 to 11 false"},
		"day 13":     {with(func(r *progression.Recovery) { r.Since = 13 }), "in phase 2 6 to 11 false"},
		"day 14":     {with(func(r *progression.Recovery) { r.Since = 14 }), "in phase 3 12 to 14 false"},
		"day 20":     {with(func(r *progression.Recovery) { r.Since = 20 }), "in phase 3 12 to 14 false"},
		"day 21":     {with(func(r *progression.Recovery) { r.Since = 21 }), "in phase 3 12 to 14 true"},
		"severe":     {with(func(r *progression.Recovery) { r.Severe = screening.Yes }), "assess first"},
		"lasting":    {with(func(r *progression.Recovery) { r.Lasting = screening.Yes }), "assess first"},
		"heart":      {with(func(r *progression.Recovery) { r.Heart = screening.Yes }), "assess first"},
		"not asked":  {with(func(r *progression.Recovery) { r.Heart = screening.Unknown }), "ask first"},
		"both":       {with(func(r *progression.Recovery) { r.Heart, r.Severe = screening.Unknown, screening.Yes }), "assess first"},
		"no answer":  {with(func(r *progression.Recovery) { r.Heart = 99 }), "assess first"},
		"not an ask": {progression.Recovery{}, "ask first"},
	} {
		a, err := progression.AfterCovid(tt.r)
		got := a.Resume.String()
		if a.Phase != nil {
			got = fmt.Sprint(got, " ", a.Phase.Number, " ", a.Phase.Effort, " ", a.Last)
		}
		if err != nil || got != tt.want {
			t.Errorf("%s: %s, %v, want %s", name, got, err, tt.want)
		}
	}
	for _, bad := range []struct {
		r     progression.Recovery
		is    error
		paths string
	}{
		{progression.Recovery{SymptomFree: -1, Since: -1}, field.ErrOutOfRange, "/symptom_free /since"},
		{progression.Recovery{SymptomFree: 10, Since: 4}, field.ErrConflict, "/since"},
	} {
		if _, err := progression.AfterCovid(bad.r); !errors.Is(err, bad.is) || paths(err) != bad.paths {
			t.Errorf("%+v: %v", bad.r, err)
		}
	}
	if a, err := progression.AfterCovid(with(func(r *progression.Recovery) { r.SymptomFree, r.Since = 10, 3 })); err != nil || a.Phase == nil {
		t.Errorf("began on the seventh day: %+v, %v", a, err)
	}
	// The first two phases are the published two weeks at very low effort.
	days := 0
	for _, p := range progression.CovidPhases()[:2] {
		days += p.Days
	}
	if days != 14 {
		t.Errorf("two phases last %d days", days)
	}
	for f := range progression.Facts() {
		if f.ID == "progression.covid" && !strings.Contains(f.Value, fmt.Sprintf("at least %d days at very low effort", days)) {
			t.Errorf("the fact says %q", f.Value)
		}
	}
}

func TestDeloads(t *testing.T) {
	list, reason := progression.Deloads()
	if len(list) != 2 || list[1].DaysRange.String() != "5 to 7" || list[1].EveryWeek.String() != "4 to 6" || list[1].People != 18 {
		t.Errorf("%+v", list)
	}
	if reason.Code != "progression.no-deload" {
		t.Errorf("%+v", reason)
	}
	list[0].People = 1
	if again, _ := progression.Deloads(); again[0].People != 246 {
		t.Error("the list is not the caller's own")
	}
}

package week_test

import (
	"encoding/json"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Two weeks of familiarisation, six weeks later on, three to the re-test, eight
// to the expiry: this module's design.
func TestPhaseDates(t *testing.T) {
	for _, tt := range []struct {
		phase                   dose.Phase
		lapses                  int // days from the first; 0: none
		review, retest, expires int
	}{
		{dose.Familiarise, 0, 14, 21, 56}, {dose.Build, 0, 42, 21, 56}, {dose.Power, 0, 42, 21, 56}, {dose.Maintain, 0, 42, 21, 56},
		{dose.Familiarise, 10, 10, 21, 10}, {dose.Build, 50, 42, 21, 50}, {dose.Build, 100, 42, 21, 56}, {dose.Build, -3, -3, 21, -3},
	} {
		var lapses units.Day
		if tt.lapses != 0 {
			lapses = plus(tt.lapses)
		}
		want := week.Dates{Review: plus(tt.review), Retest: plus(tt.retest), Expires: plus(tt.expires)}
		got, err := week.DatesOf(tt.phase, firstDay, lapses)
		if err != nil || got != want {
			t.Errorf("%v, clearance until %v: %+v, %v, want %+v", tt.phase, lapses, got, err, want)
		}
		var back week.Dates
		if err := field.Decode(units.Must(json.Marshal(got)), &back, field.Strict); err != nil || back != got {
			t.Errorf("%+v reads back as %+v, %v", got, back, err)
		}
	}
	if field.Decode([]byte(`{"retests":"2026-11-25"}`), &week.Dates{}, field.Strict) == nil {
		t.Error("an unknown field was read")
	}
}

// A plan's week is held to the same days.
func TestWeekHasItsPhasesDates(t *testing.T) {
	r := weekOf(0, 2, 4)
	r.Screening.ReviewBy = plus(30)
	w := firstWeek(t, r)
	want, err := week.DatesOf(w.Phase, w.Sessions[0].Day, plus(30))
	if diff := cmp.Diff(want, week.Dates{Review: w.Review, Retest: w.Retest, Expires: w.Expires}); diff != "" || err != nil {
		t.Errorf("%v\n%s", err, diff)
	}
}

func TestPhaseDatesRefuse(t *testing.T) {
	_, err := week.DatesOf(dose.Phase(9), 0, -1)
	if got := paths(err); !slices.Equal(got, []string{"/phase", "/first", "/lapses"}) || !errors.Is(err, field.ErrMissing) {
		t.Errorf("%v", err)
	}
	late := units.Must(units.ParseDay("9999-12-01"))
	if _, err := week.DatesOf(dose.Build, late, 0); !errors.Is(err, field.ErrOutOfRange) || !slices.Equal(paths(err), []string{"/first", "/first"}) {
		t.Errorf("beyond the calendar: %v", err)
	}
	r := weekOf()
	r.Day, r.Days = late, []units.Day{late}
	r.Screening = screening.Waived("a test", r.Screening.Who, r.Screening.Setting, late)
	if _, err := week.Plan(r); !slices.Equal(paths(err), []string{"/days"}) {
		t.Errorf("a week at the end of the calendar: %v", err)
	}
}

// Spiering 2021, from memory: two sessions a week, two to three sets. The phase
// Maintain takes no more than that.
func TestMaintenanceDose(t *testing.T) {
	days, sets, fact := dose.MaintenanceDose()
	if days != 2 || sets.String() != "2 to 3" {
		t.Errorf("%d days, %v sets", days, sets)
	}
	for f := range dose.Facts() {
		if f.ID == fact && !strings.Contains(f.Value, "two sessions a week and two to three sets") {
			t.Errorf("the fact says %q", f.Value)
		}
	}
}

// Each day that is over is said, in order, to both readers; the day itself still
// counts. Days that are not given are never over.
func TestOverdue(t *testing.T) {
	d := week.Dates{Review: plus(14), Retest: plus(21), Expires: plus(56)}
	tests := []struct {
		dates week.Dates
		day   units.Day
		want  []evidence.ReasonCode
	}{
		{d, plus(14), nil},
		{d, plus(15), []evidence.ReasonCode{"dose.overdue-review"}},
		{d, plus(21), []evidence.ReasonCode{"dose.overdue-review"}},
		{d, plus(22), []evidence.ReasonCode{"dose.overdue-review", "dose.overdue-retest"}},
		{d, plus(56), []evidence.ReasonCode{"dose.overdue-review", "dose.overdue-retest"}},
		{d, plus(57), []evidence.ReasonCode{"dose.overdue-review", "dose.overdue-retest", "dose.overdue-plan"}},
		{week.Dates{Review: plus(42), Retest: plus(21), Expires: plus(56)}, plus(30), []evidence.ReasonCode{"dose.overdue-retest"}},
		{week.Dates{}, plus(0), nil},
		{d, 0, nil},
	}
	words := week.Words()
	for _, tt := range tests {
		var got []evidence.ReasonCode
		for _, r := range tt.dates.Overdue(tt.day) {
			got = append(got, r.Code)
			if text := words.Client(r) + words.Clinician(r); words.Client(r) == "" || strings.ContainsAny(text, "{}") || len(r.Facts) == 0 {
				t.Errorf("%s reads %q", r.Code, text)
			}
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%v: %s", tt.day, diff)
		}
		if tt.dates.Expired(tt.day) != slices.Contains(got, "dose.overdue-plan") {
			t.Errorf("%v: expired %v", tt.day, tt.dates.Expired(tt.day))
		}
	}
	w := firstWeek(t, weekOf(0))
	if w.Dates() != d {
		t.Errorf("the week is held to %+v, want %+v", w.Dates(), d)
	}
}

// No session lies after the day by which the assessment is made again.
func TestNoSessionPastTheReview(t *testing.T) {
	r := weekOf(4, 0, 2)
	r.Screening.ReviewBy = plus(2)
	w := firstWeek(t, r)
	if len(w.Sessions) != 2 || w.Sessions[1].Day != plus(2) || !has(w.Reasons, "dose.days-past-review") {
		t.Errorf("%d sessions, the last on %v", len(w.Sessions), w.Sessions[len(w.Sessions)-1].Day)
	}
	r = weekOf(3, 5)
	r.Screening.ReviewBy = plus(2)
	var barred *dose.ConstraintError
	if _, err := week.Plan(r); !errors.Is(err, dose.ErrNoDose) || !errors.As(err, &barred) || barred.Constraint.Code != "dose.review-overdue" {
		t.Errorf("all days lie past the review: %v", err)
	}
}

// A review that is over hides nobody who has to be seen.
func TestReviewOverdueHidesNoRoute(t *testing.T) {
	for route, want := range map[screening.Route]evidence.ReasonCode{
		screening.Tell: "dose.review-overdue", screening.AskFirst: "dose.review-overdue", screening.SameDay: "dose.no-dose", screening.Emergency: "dose.no-dose",
	} {
		r := row(t)
		r.Screening.Route, r.Screening.ReviewBy, r.Screening.Day = route, firstDay-1, firstDay-30
		if c := barred(t, r, dose.ErrNoDose); c.Constraint.Code != want {
			t.Errorf("%v: %v", route, c.Constraint.Code)
		}
		w := weekOf(3, 5)
		w.Screening.Route, w.Screening.ReviewBy = route, plus(2)
		var c *dose.ConstraintError
		if _, err := week.Plan(w); !errors.As(err, &c) || c.Constraint.Code != want {
			t.Errorf("a week, %v: %v", route, err)
		}
	}
}

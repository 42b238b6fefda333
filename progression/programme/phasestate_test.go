package programme_test

import (
	"encoding/json"
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func TestPhaseStateRefuses(t *testing.T) {
	bad := programme.PhaseState{Phase: 9, First: learningDay, Today: learningDay - 1, PlanFirst: -1, ReviewBy: -1, Planned: -1, Done: -1,
		Technique: dose.Observation{Day: learningDay}, Visits: []rule.LoadAdvice{1, 9}, Goal: 99, Reached: 9, Referral: 9, Standing: 9}
	want := "/phase /today /plan /review_by /technique/day /planned /done /visits/1 /goal /reached /referral /standing"
	if _, err := programme.PhaseExits(bad); paths(err) != want {
		t.Errorf("%v", err)
	}
	for _, tt := range []struct {
		spoil func(s *programme.PhaseState)
		is    error
		paths string
	}{
		{func(s *programme.PhaseState) { *s = programme.PhaseState{} }, field.ErrMissing, "/phase /first /today"},
		{func(s *programme.PhaseState) { s.Done = 9 }, field.ErrConflict, "/done"},
		{func(s *programme.PhaseState) { s.PlanFirst = learningDay - 1 }, field.ErrConflict, "/plan"},
		{func(s *programme.PhaseState) { s.PlanFirst = s.Today + 1 }, field.ErrConflict, "/plan"},
		{func(s *programme.PhaseState) { s.Technique.Day = s.Today + 1 }, field.ErrConflict, "/technique/day"},
		{func(s *programme.PhaseState) {
			s.First, s.Today, s.Technique.Day = 3652050, 3652050, 0
		}, field.ErrOutOfRange, "/first /first /first"},
		{func(s *programme.PhaseState) {
			s.First, s.PlanFirst, s.Today, s.Technique.Day = 3652000, 3652010, 3652040, 0
		}, field.ErrOutOfRange, "/plan/first"},
	} {
		s := readyState(dose.Familiarise)
		tt.spoil(&s)
		if _, err := programme.PhaseExits(s); !errors.Is(err, tt.is) || paths(err) != tt.paths {
			t.Errorf("%+v: %v", s, err)
		}
	}
}

func TestPhaseJSON(t *testing.T) {
	s := readyState(dose.Build)
	s.Visits[0], s.PlanFirst, s.ReviewBy = 0, learningDay+1, learningDay+90
	var again programme.PhaseState
	if err := field.Decode(units.Must(json.Marshal(s)), &again, field.Strict); err != nil || !cmp.Equal(again, s) {
		t.Errorf("%v: %s", err, cmp.Diff(s, again))
	}
	r := phaseOf(t, s)
	var back programme.PhaseReport
	if err := field.Decode(units.Must(json.Marshal(r)), &back, field.Strict); err != nil || !cmp.Equal(back, r) {
		t.Errorf("%v: %s", err, cmp.Diff(r, back))
	}
	for _, into := range []any{&again, &back, &programme.ExitAnswer{}, &programme.CriterionAnswer{}} {
		if field.Decode([]byte(`{"stage":1}`), into, field.Strict) == nil {
			t.Errorf("%T: an unknown field was read", into)
		}
	}
	roundTrips(t, programme.ToDischarge)
	roundTrips(t, programme.CriterionGoal)
	roundTrips(t, programme.CriterionNotKnown)
}

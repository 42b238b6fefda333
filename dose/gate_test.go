package dose_test

import (
	"errors"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

func TestGate(t *testing.T) {
	squat := row(t)
	squat.Exercise, squat.Side = exerciseOf(t, "goblet-squat"), body.Both
	tests := []struct {
		name  string
		spoil func(r *dose.Request)
		want  error
	}{
		{"emergency", func(r *dose.Request) { r.Screening.Route = screening.Emergency }, dose.ErrNoDose},
		{"same day", func(r *dose.Request) { r.Screening.Route = screening.SameDay }, dose.ErrNoDose},
		{"nothing meanwhile", func(r *dose.Request) { r.Screening.Meanwhile = screening.Nothing }, dose.ErrNoDose},
		{"unloaded practice", func(r *dose.Request) { r.Screening.Meanwhile = screening.UnloadedPractice }, dose.ErrUnloadedOnly},
		{"too little supervision", func(r *dose.Request) { r.Screening.Limits.LeastSetting = screening.InClinic }, dose.ErrSetting},
		{"avoided demand", func(r *dose.Request) { r.Screening.Limits.Avoid = body.DemandSet(body.SpinalCompression) }, dose.ErrDemand},
		{"support without a free hand, alone", func(r *dose.Request) {
			r.Screening.Limits.Support, r.Screening.Setting = true, screening.Alone
		}, dose.ErrDemand},
		{"empty kit", func(r *dose.Request) { r.Kit = equipment.Kit{} }, dose.ErrNothingToHold},
	}
	for _, tt := range tests {
		r := squat
		tt.spoil(&r)
		c := barred(t, r, tt.want)
		if c.Exercise != r.Exercise.ID || c.Constraint.Code == "" || len(c.Free) == 0 || c.Error() == "" {
			t.Errorf("%s: %+v names no constraint or nothing that would free it", tt.name, c)
		}
		if dose.Words().Copy()[c.Constraint.Code].Clinician == "" {
			t.Errorf("%s: no words for %s", tt.name, c.Constraint.Code)
		}
	}
}

// What strains is no unloaded practice, and a kit of dumbbells has no kettlebell.
func TestStrainingAndUnlisted(t *testing.T) {
	r := row(t)
	r.Exercise, r.Side = exerciseOf(t, "pull-up"), body.Both
	if p := prescribe(t, r); p.Mode != dose.WithoutLoad {
		t.Errorf("%+v", p)
	}
	r.Screening.Meanwhile = screening.UnloadedPractice
	barred(t, r, dose.ErrDemand)
	r = row(t)
	r.Exercise.Implements = []exercise.Implement{exercise.Kettlebell}
	barred(t, r, dose.ErrNothingToHold)
}

func TestGateLetsPass(t *testing.T) {
	r := row(t)
	r.Exercise, r.Side = exerciseOf(t, "step-up"), body.Both
	r.Screening.Meanwhile = screening.UnloadedPractice
	r.Screening.Limits.LeastSetting = screening.InClinic
	r.Screening.Limits.Support = true
	p := prescribe(t, r)
	if p.Mode != dose.WithoutLoad || !has(p.Cautions, "dose.support") {
		t.Errorf("unloaded practice with support: %v, %v", p.Mode, p.Cautions)
	}
	r = row(t)
	r.Screening.Limits.LeastSetting = screening.InGroup
	if p := prescribe(t, r); p.Load.Each() == 0 {
		t.Error("a setting with enough supervision is refused")
	}
}

// Support is a free hand, a chair behind, or somebody beside; on one leg it is a hand.
func TestSupport(t *testing.T) {
	falls := func(codes ...screening.Code) []screening.Finding {
		var list []screening.Finding
		for _, code := range codes {
			limits := screening.Limits{Support: code != "foot_ulcer_neuropathy", Avoid: body.DemandSet(body.FreeStanding)}
			list = append(list, screening.Finding{Code: code, Known: true, Limits: limits, Meanwhile: screening.WithinLimits})
		}
		return list
	}
	for _, tt := range []struct {
		id       exercise.ID
		setting  screening.Setting
		findings []screening.Finding // while alone
		allowed  bool
	}{
		{"goblet-squat", screening.Alone, nil, false},
		{"goblet-squat", screening.WithHelper, nil, true},
		{"goblet-squat", screening.InClinic, nil, true},
		{"dumbbell-sit-to-stand", screening.Alone, nil, true},
		{"dumbbell-step-up", screening.InClinic, nil, false},
		{"single-leg-romanian-deadlift", screening.Alone, nil, true},
		{"dumbbell-sit-to-stand", screening.Alone, falls("falls_risk", "frailty"), true},
		{"goblet-squat", screening.Alone, falls("falls_risk"), false},
		{"dumbbell-sit-to-stand", screening.Alone, falls("falls_risk", "vertigo"), false}, // may faint
		{"dumbbell-sit-to-stand", screening.Alone, falls("falls_risk", "foot_ulcer_neuropathy"), false},
	} {
		r := row(t)
		r.Exercise, r.Side = exerciseOf(t, tt.id), body.Both
		r.Screening.Setting, r.Screening.Limits.Support, r.Screening.Findings = tt.setting, true, tt.findings
		p, err := dose.Prescribe(r)
		if (err == nil) != tt.allowed || err != nil && !errors.Is(err, dose.ErrDemand) {
			t.Errorf("%s, %v, %v: %v", tt.id, tt.setting, tt.findings, err)
		}
		if beside := tt.id == "goblet-squat"; err == nil && has(p.Cautions, "dose.support-beside") != beside {
			t.Errorf("%s, %v: %v", tt.id, tt.setting, p.Cautions)
		}
	}
}

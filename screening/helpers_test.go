package screening_test

import (
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// blank is a person of whom everything was asked and nothing found.
func blank() screening.Profile {
	return screening.Profile{
		Day: visit, Age: 66, Wanted: screening.Moderate, Setting: screening.InClinic,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(),
		Conditions: screening.AskedFor(), RedFlags: screening.AskedFor(),
	}
}

// busy is activity that just counts as regular.
func busy() *screening.Activity {
	return &screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Moderate, Months: 3}
}

// fataler is a test of package testing or rapid.
type fataler interface {
	Helper()
	Fatal(...any)
}

func assess(t fataler, p screening.Profile) screening.Outcome {
	t.Helper()
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// by assesses by a policy.
func by(t fataler, p screening.Profile, policy screening.JoinPolicy) screening.Outcome {
	t.Helper()
	o, err := screening.Assess(p, policy)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

func finding(o screening.Outcome, code evidence.ReasonCode) (screening.Finding, bool) {
	for _, f := range o.Findings {
		if f.Reason.Code == code {
			return f, true
		}
	}
	return screening.Finding{}, false
}

func misses(o screening.Outcome, code screening.Code) bool {
	for _, q := range o.Missing {
		if q.Code == code {
			return true
		}
	}
	return false
}

func pressure(systolic, diastolic int) *screening.BloodPressure {
	return &screening.BloodPressure{Systolic: systolic, Diastolic: diastolic}
}

func clearance(scope ...screening.Code) screening.Clearance {
	return screening.Clearance{Who: "doctor A", Day: visit - 30, Scope: scope, Intensity: screening.Vigorous}
}

// expect checks route and what may go on.
func expect(t *testing.T, o screening.Outcome, r screening.Route, m screening.Meanwhile) {
	t.Helper()
	if o.Route != r || o.Meanwhile != m {
		t.Errorf("route %v, meanwhile %v; want %v, %v; findings %+v", o.Route, o.Meanwhile, r, m, o.Findings)
	}
}

func quiet() screening.Check {
	return screening.Check{Day: visit, Setting: screening.InClinic, New: screening.AskedFor(), Febrile: screening.No}
}

func score(v float64) *float64 { return &v }

func glucose(s string) screening.Glucose { return units.Must(screening.ParseGlucose(s)) }

// well is a person of whom everything was asked and measured and nothing found.
func well() screening.Profile {
	p := blank()
	p.BP, p.RestingPulse = pressure(130, 80), 64
	p.Falls = &screening.FallsScreen{Fell: screening.No, Unsteady: screening.No, Afraid: screening.No}
	return p
}

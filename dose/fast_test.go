package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// Power is trained by lifting as fast as one can and lowering slowly (Orr 2006, abstract:
// up as fast as able, down slowly); what bars fast work of package beside bars it here.
func TestPowerIsFastOnTheWayUp(t *testing.T) {
	for _, tt := range []struct {
		name  string
		worse func(*dose.Request)
		fast  bool
	}{
		{"power", func(*dose.Request) {}, true},
		{"another phase", func(r *dose.Request) { r.Phase = dose.Build }, false},
		{"a novice whom nobody saw", func(r *dose.Request) { r.Screening.Who.Training = body.Novice }, false},
		{"fast movement to be left out", func(r *dose.Request) { r.Screening.Limits.Avoid = body.DemandSet(body.FastMovement) }, false},
		{"light effort alone", func(r *dose.Request) { r.Screening.Limits.MaxIntensity = screening.Light }, false},
		{"half-tandem not held, alone", func(r *dose.Request) { r.Screening.Setting, r.Known.Stands = screening.Alone, new(1) }, false},
		{"half-tandem not held, in a group", func(r *dose.Request) { r.Known.Stands = new(1) }, true},
	} {
		r := row(t)
		r.Screening.Who.Training, r.Phase = body.Intermediate, dose.Power
		tt.worse(&r)
		p := prescribe(t, r)
		want := dose.Tempo{Lowering: 2, Lifting: 2}
		if tt.fast {
			want = dose.Tempo{Lowering: 2, Lifting: 1, Fast: true}
		}
		if p.Tempo != want || has(p.Reasons, "dose.tempo-fast") != tt.fast || has(p.Reasons, "dose.tempo") == tt.fast {
			t.Errorf("%s: %+v, %v", tt.name, p.Tempo, p.Reasons)
		}
		goesOn := continued(t, r, dose.Step{Load: p.Load.Each(), Count: p.Count, Sets: 1, Lowering: 4})
		if want.Lowering = 4; goesOn.Tempo != want {
			t.Errorf("%s, going on: %+v", tt.name, goesOn.Tempo)
		}
	}
	r := row(t)
	r.Known.Stands = new(5)
	if _, err := dose.Prescribe(r); err == nil {
		t.Error("five stances of four are accepted")
	}
}

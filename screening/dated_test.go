package screening_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// TestDaysFromWhichLessIsHeld walks the days since an event and lists those on which the
// outcome is another than on the day before: 12 weeks are 84 days, 12 months a year. The
// two weeks and four of a cataract stand within what a college of surgeons names, the
// 12 weeks of a device are ACSM's; the others are this module's own choice.
func TestDaysFromWhichLessIsHeld(t *testing.T) {
	for _, tt := range []struct {
		code screening.Code
		is   and
		want []units.Day
	}{
		{"recent_eye_operation", and{no("eye_operation_not_cataract")}, []units.Day{14, 28}},
		{"recent_eye_operation", and{yes("eye_operation_not_cataract")}, []units.Day{365}},
		{"total_hip_replacement", nil, []units.Day{84, 365}},
		{"total_knee_replacement", nil, []units.Day{84, 365}},
		{"total_knee_replacement", and{no("replacement_limited")}, []units.Day{84}},
		{"hip_fracture", nil, []units.Day{84, 365}},
		{"after_mi_or_stroke", and{func(p *screening.Profile) { p.Activity = busy() }}, []units.Day{365}}, // the inactive wait for a clearance at any time
		{"pacemaker", nil, []units.Day{84}},
		{"icd", nil, []units.Day{84}},
	} {
		var got []units.Day
		var before screening.Outcome
		for days := range units.Day(400) {
			p := well()
			p.Answers = map[screening.Code]screening.Answer{}
			has(tt.code)(&p)
			ago(tt.code, days)(&p)
			for _, is := range tt.is {
				is(&p)
			}
			o := assess(t, p)
			if days > 0 && (o.Route != before.Route || o.Meanwhile != before.Meanwhile || !o.Limits.AsTightAs(before.Limits) || !before.Limits.AsTightAs(o.Limits)) {
				if got = append(got, days); o.Meanwhile > before.Meanwhile {
					t.Errorf("%s: on day %d %v became %v", tt.code, days, before.Meanwhile, o.Meanwhile)
				}
			}
			before = o
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%s: %s", tt.code, diff)
		}
	}
}

// A pressure that was to be measured is taken within two weeks, and osteoporosis with a
// spine that nobody looked at has no set below the low end of the published 8 to 12
// (Giangregorio 2014, secondary).
func TestUntakenPressureAndSpineCount(t *testing.T) {
	p := well()
	has("hypertension_treated")(&p)
	unmeasured(&p)
	if o := assess(t, p); o.ReviewBy != visit+14 {
		t.Errorf("to be taken by %v, want %v", o.ReviewBy, visit+14)
	}
	p = well()
	has("osteoporosis")(&p)
	if o := assess(t, p); o.Limits.LeastCount != 8 {
		t.Errorf("at least %d repetitions, want 8", o.Limits.LeastCount)
	}
}

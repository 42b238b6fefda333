package screening_test

import (
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// TestFloor holds that who may not get up again stays off the floor until it is
// known, or a clinician is beside (design).
func TestFloor(t *testing.T) {
	triggers := []screening.Code{"falls_risk", "vertigo", "frailty", "frailty_dose", "cfs_level_4", "cfs_level_5", "cfs_level_6", "cfs_level_7",
		"cfs_level_8", "cfs_level_9", "parkinsons", "vertebral_fracture", "osteoporosis_with_vertebral_fracture"}
	for _, code := range triggers {
		for setting := screening.Setting(0); setting <= screening.InClinic; setting++ {
			for _, answer := range []screening.Answer{screening.No, screening.Unknown, screening.Yes} {
				for _, unsure := range []bool{false, true} {
					p := well()
					p.Setting, p.Conditions = setting, screening.AskedFor(code)
					if unsure {
						p.Conditions = screening.Checklist{Asked: true, Unsure: []screening.Code{code}}
					}
					p.Answers = map[screening.Code]screening.Answer{"floor_and_up": answer}
					o := assess(t, p)
					want := answer != screening.Yes && setting < screening.InClinic || code == "cfs_level_9" // off the floor by itself
					if got := o.Limits.Avoid.Has(body.FloorTransfer); got != want {
						t.Errorf("%s, %q, %v: off the floor %v, want %v", code, setting, answer, got, want)
					}
					if got := misses(o, "floor_and_up"); got != (answer == screening.Unknown && setting < screening.InClinic) {
						t.Errorf("%s, %q, %v: asked for %v", code, setting, answer, got)
					}
				}
			}
		}
	}
	for _, code := range []screening.Code{"glaucoma", "cfs_level_3", "osteoporosis"} {
		p := well()
		p.Setting, p.Conditions = screening.Alone, screening.AskedFor(code)
		p.Answers = map[screening.Code]screening.Answer{"vertebral_fracture": screening.No}
		if o := assess(t, p); misses(o, "floor_and_up") || o.Limits.Avoid.Has(body.FloorTransfer) {
			t.Errorf("%s: limits %+v, missing %v", code, o.Limits, o.Missing)
		}
	}
	p := well()
	p.Setting, p.Falls = screening.InGroup, &screening.FallsScreen{Unsteady: screening.Yes}
	if o := assess(t, p); !misses(o, "floor_and_up") || !o.Limits.Avoid.Has(body.FloorTransfer) {
		t.Errorf("unsteady: limits %+v, missing %v", o.Limits, o.Missing)
	}
	p.Answers = map[screening.Code]screening.Answer{"floor_and_up": screening.No}
	o := assess(t, p)
	if f, ok := finding(o, "screening.floor_and_up"); !ok || f.Route > screening.Tell || f.Meanwhile != screening.WithinLimits {
		t.Errorf("does not get up alone: %+v", f)
	}
}

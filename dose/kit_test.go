package dose_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// What of a kit falls short is said at the first visit, with the one size of those
// that are sold (common practice) that changes most. The person of these rows lifts about
// 8.2 kg once: 60 % are 4.9 kg, and 6 times with 3 left go up to about 5.7 kg.
func TestKitFalls(t *testing.T) {
	for name, tt := range map[string]struct {
		kit   equipment.Kit
		spoil func(r *dose.Request)
		codes string
		says  string
	}{
		"one weight works":        {pairs(2, 5, 10), nil, "", ""},
		"all too light":           {pairs(1, 2, 3, 4), nil, "too-light would-help", "To get on here, one of 5 kg would change most."},
		"too far apart":           {pairs(2, 4, 7.5, 10), nil, "too-coarse would-help", "To get on here, one of 5 kg would change most."},
		"too far apart, alone":    {pairs(3, 4, 7.5), alone, "too-coarse would-help far-alone", "To get on here, one of 5 kg would change most."},
		"the next one soon":       {pairs(2, 4, 6, 10), nil, "", ""},
		"one of few":              {pairs(4, 7.5), alone, "too-coarse would-help far-alone", "With one of 6 kg, or with somebody beside you"},
		"nothing of that size":    {pairs(1, 8), func(r *dose.Request) { *r = tested(t, *r, 2, 6, 2) }, "too-coarse", "lie far apart"}, // 1.6 to 1.8 kg would
		"a limit, and no kit":     {pairs(1, 2, 3, 4), func(r *dose.Request) { restrict(r, 3*units.Kilogram) }, "", ""},
		"a goal without a floor":  {pairs(1, 2), func(r *dose.Request) { r.Goal = guideline.Health }, "", ""},
		"nothing known":           {pairs(2, 4), func(r *dose.Request) { r.Estimates = nil }, "", ""},
		"nothing known and alone": {pairs(2, 4), func(r *dose.Request) { r.Estimates = nil; alone(r) }, "far-alone", "With one of 3 kg"},
		"no step, alone":          {pairs(3), func(r *dose.Request) { r.Estimates = nil; alone(r) }, "", ""},
	} {
		r := tested(t, row(t), 6, 8, 2)
		r.Kit = tt.kit
		if tt.spoil != nil {
			tt.spoil(&r)
		}
		p := prescribe(t, r)
		var codes []string
		for _, why := range p.Reasons {
			if code, of := strings.CutPrefix(string(why.Code), "dose.kit-"); of {
				codes = append(codes, code)
			}
		}
		if got := strings.Join(codes, " "); got != tt.codes || !strings.Contains(told(p), tt.says) {
			t.Errorf("%s: %q, want %q with %q:\n%s", name, got, tt.codes, tt.says, told(p))
		}
		again := frameOf(t, r).KitFalls(p.Load.Each())
		if len(again) != len(codes) || slices.ContainsFunc(again, func(why evidence.Reason) bool { return len(why.Facts) == 0 }) {
			t.Errorf("%s: %v", name, again)
		}
	}
	if (&dose.Frame{}).KitFalls(units.Kilogram) != nil {
		t.Error("a frame of nothing has no kit")
	}
}

func alone(r *dose.Request) { r.Screening.Setting = screening.Alone }

package screening_test

import (
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// The surgeon's limits that are left on a new joint are asked for until they are there, by the
// way out that the outcome names: in force, with who set them, about the joint, and binding
// something. After that they are told; the limits hold as before. The cases are invented.
func TestLimitsOfAReplacedJoint(t *testing.T) {
	heavy := 10 * units.Kilogram
	limit := func(change func(*screening.Restriction)) func(*screening.Profile) {
		return func(p *screening.Profile) {
			r := screening.Restriction{Author: "surgeon B", Day: visit - 20, Region: body.Hip, MaxMass: &heavy}
			change(&r)
			p.Restrictions = append(p.Restrictions, r)
		}
	}
	as := func(*screening.Restriction) {}
	hip := and{has("total_hip_replacement"), ago("total_hip_replacement", 400), yes("replacement_limited")}
	knee := and{has("total_knee_replacement"), ago("total_knee_replacement", 400)}
	for _, tt := range []struct {
		what string
		is   and
		set  bool
	}{
		{"nothing told", nil, false},
		{"a figure", and{limit(as)}, true},
		{"of the whole body", and{limit(func(r *screening.Restriction) { r.Region = body.WholeBody })}, true},
		{"what to avoid", and{limit(func(r *screening.Restriction) {
			r.MaxMass, r.Avoid = nil, body.DemandSet(body.DeepKneeBend)
		})}, true},
		{"no weight on it", and{limit(func(r *screening.Restriction) { r.MaxMass, r.NonWeightBearing = nil, true })}, true},
		{"words alone, which bind nothing", and{limit(func(r *screening.Restriction) { r.MaxMass, r.Note = nil, "not too deep" })}, false},
		{"of nobody", and{limit(func(r *screening.Restriction) { r.Author = " " })}, false},
		{"of another joint", and{limit(func(r *screening.Restriction) { r.Region = body.Knee })}, false},
		{"ended", and{limit(func(r *screening.Restriction) { r.Until = visit - 1 })}, false},
		{"to begin later", and{limit(func(r *screening.Restriction) { r.Day = visit + 1 })}, false},
		{"of one of two joints", append(and{limit(as)}, knee...), false},
		{"of both", append(and{limit(as), limit(func(r *screening.Restriction) { r.Region = body.Knee })}, knee...), true},
		{"none are left, it is said now", and{no("restriction")}, false},
	} {
		o := assess(t, made(append(append(and{}, hip...), tt.is...)...))
		route := screening.AskFirst
		if tt.set {
			route = screening.Tell
		}
		f, _ := finding(o, "screening.replacement_limited")
		if f.Route != route || f.Meanwhile != screening.WithinLimits || !f.Limits.LowImpact || (f.Exit.With == screening.TheirLimits) == tt.set {
			t.Errorf("%s: %v, %v, by %v", tt.what, f.Route, f.Meanwhile, f.Exit)
		}
	}
}

// A limit that answers what is asked of a joint frees nothing else: without it no dose is more.
func TestLimitsOfAJointOnlyTell(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(rt, "seed"), 5))
		p := randomProfile(r)
		if rapid.Bool().Draw(rt, "limited") {
			p.Conditions = screening.AskedFor("total_hip_replacement")
			p.Answers = map[screening.Code]screening.Answer{"replacement_limited": screening.Yes}
		}
		with := p
		heavy := 5 * units.Kilogram
		with.Restrictions = append(append([]screening.Restriction{}, p.Restrictions...), screening.Restriction{Author: "surgeon B", Region: rapid.SampledFrom([]body.Region{body.Hip, body.Knee}).Draw(rt, "region"), MaxMass: &heavy})
		was, is := assess(rt, p), assess(rt, with)
		if is.Meanwhile < was.Meanwhile || !is.Limits.AsTightAs(was.Limits) || is.Route < was.Route && p.Answers["replacement_limited"] != screening.Yes {
			rt.Fatalf("%v, %v after %v, %v", is.Route, is.Meanwhile, was.Route, was.Meanwhile)
		}
	})
}

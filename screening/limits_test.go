package screening_test

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

var nan = math.NaN()

// badLimits are limits that bind nothing that anybody means, with the place of each.
var badLimits = []struct {
	path   string
	limits screening.Limits
}{
	{"/max_fraction", screening.Limits{MaxFraction: -0.4}},
	{"/max_fraction", screening.Limits{MaxFraction: 40}}, // per cent
	{"/max_fraction", screening.Limits{MaxFraction: units.Fraction(nan)}},
	{"/min_reserve", screening.Limits{MinReserve: -5}},
	{"/min_reserve", screening.Limits{MinReserve: 1e308}},
	{"/min_reserve", screening.Limits{MinReserve: 10.5}},
	{"/lighten/more_reserve", screening.Limits{Lighten: screening.Lighten{MoreReserve: 10.5}}},
	{"/least_count", screening.Limits{LeastCount: 26}},
	{"/min_reserve", screening.Limits{MinReserve: units.RIR(nan)}},
	{"/lighten/fewer_sets", screening.Limits{Lighten: screening.Lighten{FewerSets: -3}}},
	{"/lighten/more_reserve", screening.Limits{Lighten: screening.Lighten{MoreReserve: -5}}},
	{"/lighten/more_reserve", screening.Limits{Lighten: screening.Lighten{MoreReserve: units.RIR(nan)}}},
	{"/max_intensity", screening.Limits{MaxIntensity: 99}},
	{"/least_count", screening.Limits{LeastCount: -1}},
	{"/least_count", screening.Limits{LeastCount: 10000}},
	{"/avoid", screening.Limits{Avoid: 1 << 63}},
	{"/avoid_left", screening.Limits{AvoidLeft: body.DemandSet(body.FreeStanding)}}, // no arm or leg does that alone
	{"/avoid_right", screening.Limits{AvoidRight: 1 << 63}},
	{"/least_setting", screening.Limits{LeastSetting: 99}},
	{"/masses/1/region", screening.Limits{Masses: []screening.MassLimit{{}, {Region: 99}}}},
	{"/masses/0/side", screening.Limits{Masses: []screening.MassLimit{{Side: 9}}}},
	{"/masses/0/max", screening.Limits{Masses: []screening.MassLimit{{Max: -1}}}},
}

// A limit outside its range is refused wherever it stands, also after the outcome was
// joined anew from findings that would cover it.
func TestLimitsOutsideTheirRange(t *testing.T) {
	for _, tt := range badLimits {
		o := assess(t, blank())
		o.Limits = tt.limits
		o.Findings = append(o.Findings, screening.Finding{Limits: screening.Limits{MaxFraction: 0.4, MinReserve: 4, LeastCount: 8, Lighten: screening.Lighten{FewerSets: 1, MoreReserve: 2}}})
		for _, o := range []screening.Outcome{o, o.Tightest()} {
			err := o.Validate()
			if got := fieldtest.Paths(err); !reflect.DeepEqual(got, []string{"/limits" + tt.path}) || o.Screened() {
				t.Errorf("%+v: %v", tt.limits, err)
			}
			var one *field.Error
			if !errors.As(err, &one) || one.Got == "" || one.Allowed == "" {
				t.Errorf("%s: value %q, allowed %q", tt.path, one.Got, one.Allowed)
			}
		}
		o = assess(t, blank())
		at := len(o.Findings)
		o.Findings = append(o.Findings, screening.Finding{Limits: tt.limits})
		if got := fieldtest.Paths(o.Validate()); !reflect.DeepEqual(got, []string{fmt.Sprintf("/findings/%d/limits%s", at, tt.path)}) {
			t.Errorf("in a finding: %q", got)
		}
	}
}

// Limits at the ends of their ranges are taken.
func TestLimitsAtTheEnds(t *testing.T) {
	for _, l := range []screening.Limits{
		{}, {MaxFraction: 1}, {MinReserve: 10}, {Lighten: screening.Lighten{FewerSets: math.MaxInt, MoreReserve: 10}}, {MaxIntensity: screening.Idle},
		{LeastCount: 25}, {LeastSetting: screening.InClinic}, {Masses: []screening.MassLimit{{Region: body.WholeBody, Side: body.Left}, {}}},
		{AvoidLeft: body.DemandSet(body.Overhead, body.OverFace, body.FirmGrip, body.ShoulderResisted, body.ElbowResisted, body.WristResisted), AvoidRight: body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted)},
	} {
		o := assess(t, blank())
		o.Limits = l
		if err := o.Validate(); err != nil {
			t.Errorf("%+v: %v", l, err)
		}
	}
}

// What is no limit in one of two stays in their joint, whichever comes first, so that it
// is refused and not lost.
func TestJoinInAnyOrder(t *testing.T) {
	odd := rapid.SampledFrom([]float64{nan, -1, 0, 0.4, 0.79, 1, 2, 40, math.Inf(1), math.Inf(-1)})
	rapid.Check(t, func(t *rapid.T) {
		draw := func() screening.Limits {
			return screening.Limits{
				MaxFraction: units.Fraction(odd.Draw(t, "fraction")), MinReserve: units.RIR(odd.Draw(t, "reserve")),
				Lighten: screening.Lighten{FewerSets: rapid.IntRange(-2, 3).Draw(t, "sets"), MoreReserve: units.RIR(odd.Draw(t, "more"))},
			}
		}
		same := func(a, b float64) bool { return a == b || a != a && b != b }
		l, m := draw(), draw()
		a, b := l.Join(m), m.Join(l)
		if !same(float64(a.MaxFraction), float64(b.MaxFraction)) || !same(float64(a.MinReserve), float64(b.MinReserve)) ||
			!same(float64(a.Lighten.MoreReserve), float64(b.Lighten.MoreReserve)) || a.Lighten.FewerSets != b.Lighten.FewerSets {
			t.Fatalf("%+v and %+v: %+v, the other way %+v", l, m, a, b)
		}
	})
}

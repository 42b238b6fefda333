package progression_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/posology/progression"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Cardiac stages, Robertson's ratings and the whole set of maps, as printed.
func TestEffortMaps(t *testing.T) {
	var all []string
	for m := range progression.EffortMaps() {
		var points []string
		for _, p := range m.Points {
			points = append(points, fmt.Sprintf("%s[%v|%v]", p.Stage, p.Rating, p.Reps))
			for _, rating := range []func() (float64, bool){p.Rating.Min, p.Rating.Max} {
				if v, ok := rating(); ok {
					if _, err := units.NewEffort(m.Scale, v); err != nil {
						t.Errorf("%s: %v", m.ID, err)
					}
				}
			}
		}
		all = append(all, string(m.ID)+strings.Join(points, ""))
		if m.Warning().Code != "progression.map-drifts" || m.Who == "" {
			t.Errorf("%+v", m)
		}
	}
	for range progression.EffortMaps() {
		break // stopping early must not panic
	}
	for _, want := range []string{
		"omni-65-percent-curl[3.6|4][8.2|12]", "omni-65-percent-curl-body[2.4|4][6.7|12]", "omni-65-percent-knee[5.1|4][9.6|12]", "omni-65-percent-knee-body[4.2|4][7.6|12]",
		"cardiac-stagesstage0[at most 11|5 to 10]stage1[12 to 13|10 to 15]stage2[14 to 15|8 to 15]stage3[not stated|8 to 10]",
		"cr10[3 to 6|2]",
	} {
		if !strings.Contains(strings.Join(all, "\n"), want) {
			t.Errorf("no map %s in %v", want, all)
		}
	}
	if _, ok := progression.LookUpMap("none"); ok {
		t.Error("found a map that is not there")
	}
}

// After 12 weeks the same ratings stood for 24, 19 and 14 points more.
func TestMapsDrift(t *testing.T) {
	before, _ := progression.LookUpMap(progression.OMNIBefore)
	after, _ := progression.LookUpMap(progression.OMNIAfter)
	for i, want := range []float64{24.24, 19.35, 13.98} {
		low, _ := before.Points[i].Share.Min()
		high, _ := after.Points[i].Share.Min()
		if got := (high - low).Percent(); math.Abs(got-want) > 0.005 {
			t.Errorf("point %d: %v more, want %v", i, got, want)
		}
	}
	for id, want := range map[progression.MapID]bool{progression.OMNIBefore: true, progression.BorgYoungWomen: true, progression.CR10: false, progression.CardiacStages: false} {
		m, _ := progression.LookUpMap(id)
		if _, ok := m.Slope(); ok != want {
			t.Errorf("%s: slope %v, want %v", id, ok, want)
		}
	}
}

func TestGains(t *testing.T) {
	list, reason := progression.GainRanges()
	rate := func(from, to progression.GainRange) float64 { return units.Must(progression.GainRate(from, to)) }
	// Churchward-Venne 2015: 2.75 kg a week, then 1.42, about half.
	if first, second := rate(progression.GainRange{}, list[0]), rate(list[0], list[1]); first != 2.75 || math.Abs(second-1.42) > 0.005 {
		t.Errorf("leg press: %v, then %v kg a week", first, second)
	}
	if reason.Code != "progression.response-noise" {
		t.Errorf("%+v", reason)
	}
	_, two := progression.GainRate(list[0], list[3])
	_, back := progression.GainRate(list[1], list[0])
	_, nan := progression.GainRate(progression.GainRange{}, progression.GainRange{Weeks: 1, Mean: math.NaN()})
	if !errors.Is(two, field.ErrConflict) || !errors.Is(back, field.ErrConflict) || !errors.Is(nan, field.ErrOutOfRange) {
		t.Errorf("%v, %v, %v", two, back, nan)
	}
	// Steele 2022: 50 to 60 % by the sixth year.
	if percent, _, err := progression.FirstYear().At(6 * 52); err != nil || percent < 50 || percent > 60 {
		t.Errorf("sixth year: %v, %v", percent, err)
	}
	if percent, rate, err := progression.FirstYear().At(1); err != nil || percent != 0 || rate <= 0 {
		t.Errorf("first week: %v, %v, %v", percent, rate, err)
	}
	_, _, err := progression.LogGain{Percent: math.Inf(1), Weeks: 1}.At(0.5)
	if paths(err) != "/weeks /percent /at" || !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("bad fields: %v", err)
	}
	if _, _, err := (progression.LogGain{Percent: 1, Weeks: math.NaN()}).At(math.Inf(1)); paths(err) != "/weeks /at" {
		t.Errorf("bad fields: %v", err)
	}
}

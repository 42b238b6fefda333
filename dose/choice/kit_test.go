package choice_test

import (
	"slices"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// What of the kit is not used is said: bands that nothing is there to fix to, whose row was
// once left out in silence, and bars and stacks, which leave every exercise without a weight.
func TestWhatOfTheKitIsNotUsed(t *testing.T) {
	kilos := func(m units.Mass) units.Marked { return units.Marked{Mass: m * units.Kilogram} }
	bands := []string{"green", "blue"}
	bar := []equipment.Bar{{Mass: kilos(20)}}
	stack := []equipment.Stack{{Pins: []units.Marked{kilos(5), kilos(10)}}}
	one := []equipment.Dumbbell{{Mass: kilos(2), Count: 1}}
	const unfixed, byName evidence.ReasonCode = "choice.band-unfixed", "choice.by-name"
	for name, tt := range map[string]struct {
		kit  equipment.Kit
		want evidence.ReasonCode
	}{
		"a chair and bands":    {equipment.Kit{Bands: bands, Things: []exercise.Thing{exercise.Chair}}, unfixed},
		"what to fix them to":  {equipment.Kit{Bands: bands, Things: []exercise.Thing{exercise.Chair, exercise.Anchor}}, ""},
		"nobody asked":         {equipment.Kit{Bands: bands}, ""},
		"a dumbbell too":       {equipment.Kit{Bands: bands, Dumbbells: one, Things: []exercise.Thing{exercise.Chair}}, ""},
		"a bar":                {equipment.Kit{Bars: bar}, byName},
		"a stack":              {equipment.Kit{Stacks: stack}, byName},
		"a bar and a dumbbell": {equipment.Kit{Bars: bar, Dumbbells: one}, ""},
		"nothing":              {equipment.Kit{}, ""},
	} {
		r := choice.Wish{Screening: found(screening.InGroup, ""), Kit: tt.kit}
		r.Screening.Who.Training = body.Intermediate
		got := choice.Choose(r)
		for _, code := range []evidence.ReasonCode{unfixed, byName} {
			i := slices.IndexFunc(got.Reasons, func(w evidence.Reason) bool { return w.Code == code })
			if i >= 0 != (code == tt.want) {
				t.Errorf("%s: %s: %v", name, code, i >= 0)
			}
			if i >= 0 && choice.Words().Clinician(got.Reasons[i]) == "" {
				t.Errorf("%s: no word for %s", name, code)
			}
		}
	}
}

package progression_test

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// pairs compiles a kit with a pair of dumbbells of each mass.
func pairs(t testing.TB, masses ...units.Mass) *equipment.Table {
	t.Helper()
	return dosetest.Table(t, masses...)
}

// Published guidance is 2 to 10 % (ACSM 2002): inside at both ends, outside beyond.
func TestWithinGuidance(t *testing.T) {
	tests := []struct {
		from, to units.Mass
		want     bool
	}{
		{10 * units.Kilogram, 11 * units.Kilogram, true},
		{10 * units.Kilogram, 11*units.Kilogram + units.Gram, false},
		{100 * units.Kilogram, 102 * units.Kilogram, true},
		{100 * units.Kilogram, 102*units.Kilogram - units.Gram, false},
		{4 * units.Kilogram, 6 * units.Kilogram, false},
	}
	for _, tt := range tests {
		jump, ok, err := progression.NextJump(pairs(t, tt.from, tt.to), tt.from, 0)
		if err != nil || !ok || jump.Within != tt.want {
			t.Errorf("%v to %v: within %v (%v, %v), want %v", tt.from, tt.to, jump.Within, ok, err, tt.want)
		}
		if jump.Step != tt.to-tt.from || jump.From != tt.from || jump.To.Each() != tt.to || len(jump.Reasons) == 0 {
			t.Errorf("%v to %v: %+v", tt.from, tt.to, jump)
		}
	}
}

// For a person of whom 70 kg move, a squat from 4 to 8 kg moves about 6 %
// more, not 100 % (practice of the trade).
func TestMovedMass(t *testing.T) {
	table := pairs(t, 2*units.Kilogram, 4*units.Kilogram)
	jump, _, err := progression.NextJump(table, 2*units.Kilogram, 66*units.Kilogram)
	if err != nil {
		t.Fatal(err)
	}
	first := units.Must(json.Marshal(jump))
	var back progression.Jump
	if err := field.Decode(first, &back, field.Strict); err != nil || string(units.Must(json.Marshal(back))) != string(first) {
		t.Errorf("JSON: %v, %s", err, first)
	}
	if jump.External != 1 || math.Abs(float64(jump.Moved)-4.0/70) > 1e-12 {
		t.Errorf("on the weight %v, on all that moves %v", jump.External, jump.Moved)
	}
	if _, _, err := progression.NextJump(table, 2*units.Kilogram, -1); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("body mass below nought: %v", err)
	}
	if _, _, err := progression.NextJump(table, 2*units.Kilogram, units.MaxMass); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("body mass too large: %v", err)
	}
	if _, ok, err := progression.NextJump(table, 4*units.Kilogram, 0); ok || err != nil {
		t.Errorf("at the top of the kit: %v, %v", ok, err)
	}
}

func TestFactsAndWords(t *testing.T) {
	ids := map[evidence.FactID]bool{}
	for f := range allFacts() {
		ids[f.ID] = true
	}
	for range progression.Facts() {
		break // stopping early must not panic
	}
	jump, _, err := progression.NextJump(pairs(t, units.Kilogram, 2*units.Kilogram), units.Kilogram, 0)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range jump.Reasons {
		if allWords()[r.Code].Clinician == "" || !slices.ContainsFunc(r.Facts, func(id evidence.FactID) bool { return ids[id] }) {
			t.Errorf("reason %+v has no words or no fact", r)
		}
	}
}

package progression_test

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// pairs compiles a kit with a pair of dumbbells of each mass.
func pairs(t testing.TB, masses ...units.Mass) *equipment.Table {
	t.Helper()
	return pairsOf(t, masses)
}

func pairsOf(t interface{ Fatal(...any) }, masses []units.Mass) *equipment.Table {
	var kit equipment.Kit
	for _, m := range masses {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: m}, Count: 2})
	}
	table, err := kit.Compile(body.OneEachHand)
	if err != nil {
		t.Fatal(err)
	}
	return table
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
		if jump.Step != tt.to-tt.from || jump.From != tt.from || jump.To.Each != tt.to || len(jump.Reasons) == 0 {
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

func TestRepsBeforeJump(t *testing.T) {
	for _, bad := range []struct {
		low int
		p   units.Fraction
	}{{0, 0.1}, {-1, 0.1}, {8, 0}, {8, -0.1}, {8, units.Fraction(math.NaN())}, {8, units.Fraction(math.Inf(1))}} {
		if _, _, err := progression.RepsBeforeJump(bad.low, bad.p); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("RepsBeforeJump(%d, %v): %v, want out of range", bad.low, float64(bad.p), err)
		}
	}
	// The bridge undoes the jump: on the linear form, the repetitions reached
	// with the lighter weight predict the same 1RM as low with the heavier one.
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.IntRange(1, 30).Draw(t, "low")
		p := rapid.Float64Range(0.01, 1).Draw(t, "p")
		reps, _, err := progression.RepsBeforeJump(low, units.Fraction(p))
		if err != nil {
			t.Fatal(err)
		}
		light, heavy := 1+reps/30, (1+p)*(1+float64(low)/30)
		if math.Abs(light-heavy) > 1e-12*heavy {
			t.Fatalf("1RM %v before, %v after", light, heavy)
		}
	})
}

func TestFactsAndWords(t *testing.T) {
	ids := map[evidence.FactID]bool{}
	for f := range progression.Facts() {
		ids[f.ID] = true
	}
	for range progression.Facts() {
		break // stopping early must not panic
	}
	jump, _, err := progression.NextJump(pairs(t, units.Kilogram, 2*units.Kilogram), units.Kilogram, 0)
	if err != nil {
		t.Fatal(err)
	}
	_, bridge, err := progression.RepsBeforeJump(8, jump.External)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range append(jump.Reasons, bridge) {
		if progression.Words()[r.Code].Clinician == "" || !slices.ContainsFunc(r.Facts, func(id evidence.FactID) bool { return ids[id] }) {
			t.Errorf("reason %+v has no words or no fact", r)
		}
	}
}

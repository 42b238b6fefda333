package body_test

import (
	"errors"
	"fmt"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

const kg = units.Kilogram

// TestEach walks every hold with every statement.
func TestEach(t *testing.T) {
	missing, conflict, outOfRange := field.ErrMissing, field.ErrConflict, field.ErrOutOfRange
	tests := []struct {
		hold   body.Hold
		stated body.Stated
		mass   units.Mass
		want   units.Mass
		err    error
	}{
		{body.OneEachHand, body.PerHand, 8 * kg, 8 * kg, nil},
		{body.OneEachHand, body.Total, 8 * kg, 4 * kg, nil},
		{body.OneEachHand, body.Total, 3, 0, conflict}, // 3 ng cannot be shared
		{body.OneEachHand, body.Total, -3, 0, outOfRange},
		{body.OneEachHand, 0, 8 * kg, 0, missing},
		{body.OneEachHand, 0, 0, 0, missing},
		{body.OneHand, body.PerHand, 8 * kg, 8 * kg, nil},
		{body.OneHand, body.Total, 8 * kg, 8 * kg, nil},
		{body.OneHand, 0, 8 * kg, 8 * kg, nil},
		{body.BothHandsOnOne, body.PerHand, 8 * kg, 0, conflict},
		{body.BothHandsOnOne, body.Total, 8 * kg, 8 * kg, nil},
		{body.BothHandsOnOne, 0, 8 * kg, 8 * kg, nil},
		{body.OnBar, body.PerHand, 20 * kg, 0, conflict},
		{body.OnBar, body.Total, 20 * kg, 20 * kg, nil},
		{body.OnBar, 0, 20 * kg, 20 * kg, nil},
		{body.OnStack, body.PerHand, 20 * kg, 0, conflict},
		{body.OnStack, body.Total, 20 * kg, 20 * kg, nil},
		{body.OnStack, 0, 20 * kg, 20 * kg, nil},
		{body.OnLimb, body.PerHand, 2 * kg, 0, conflict},
		{body.OnLimb, body.Total, 2 * kg, 2 * kg, nil},
		{body.OnLimb, 0, 2 * kg, 2 * kg, nil},
		{body.OnBand, body.PerHand, 0, 0, nil},
		{body.OnBand, body.PerHand, 1, 0, conflict},
		{body.OnBand, body.Total, 0, 0, nil},
		{body.OnBand, body.Total, 1, 0, conflict},
		{body.OnBand, 0, 0, 0, nil},
		{body.OnBand, 0, 1, 0, conflict},
		{body.Unloaded, body.PerHand, 0, 0, nil},
		{body.Unloaded, body.Total, 0, 0, nil},
		{body.Unloaded, 0, 0, 0, nil},
		{body.Unloaded, body.PerHand, 1, 0, conflict},
		{body.Unloaded, body.Total, 1, 0, conflict},
		{body.Unloaded, 0, 1, 0, conflict},
		{body.OneHand, body.PerHand, -1, 0, outOfRange},
		{body.Hold(9), body.PerHand, 8 * kg, 0, outOfRange},
		{0, body.PerHand, 8 * kg, 0, missing},
		{0, body.Total, 8 * kg, 0, missing},
		{0, 0, 8 * kg, 0, missing},
	}
	walked := map[[2]uint8]bool{}
	for _, tt := range tests {
		walked[[2]uint8{uint8(tt.hold), uint8(tt.stated)}] = true
		got, err := tt.hold.Each(tt.mass, tt.stated)
		if got != tt.want || !errors.Is(err, tt.err) || (tt.err == nil) != (err == nil) {
			t.Errorf("%q.Each(%v, %q) = %v, %v, want %v, %v", tt.hold, tt.mass, tt.stated, got, err, tt.want, tt.err)
		}
	}
	if want := (int(body.Unloaded)+1)*(int(body.Total)+1) + 1; len(walked) != want {
		t.Errorf("%d pairs of hold and statement are in the table, want all %d with one that is no hold", len(walked), want)
	}
}

func TestTotalAndImplements(t *testing.T) {
	tests := []struct {
		hold  body.Hold
		count int
		total units.Mass
	}{
		{0, 0, 4 * kg},
		{body.OneHand, 1, 4 * kg},
		{body.OneEachHand, 2, 8 * kg},
		{body.BothHandsOnOne, 1, 4 * kg},
		{body.OnBar, 1, 4 * kg},
		{body.OnStack, 1, 4 * kg},
		{body.OnLimb, 1, 4 * kg},
		{body.OnBand, 0, 4 * kg},
		{body.Unloaded, 0, 4 * kg},
	}
	for _, tt := range tests {
		if got := tt.hold.Implements(); got != tt.count {
			t.Errorf("%q.Implements() = %d, want %d", tt.hold, got, tt.count)
		}
		if got, err := tt.hold.Total(4 * kg); got != tt.total || err != nil {
			t.Errorf("%q.Total(4 kg) = %v, %v, want %v", tt.hold, got, err, tt.total)
		}
	}
	half := units.MaxMass / 2
	if _, err := body.OneEachHand.Total(half); err != nil {
		t.Errorf("twice %v: %v, want it to fit", half, err)
	}
	if _, err := body.OneEachHand.Total(half + 1); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("twice %v: %v, want ErrOverflow", half+1, err)
	}
}

// TestEachOfTotal: what is held in all, shared again, is what each weighs.
func TestEachOfTotal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := body.Hold(rapid.IntRange(int(body.OneHand), int(body.OnLimb)).Draw(t, "hold"))
		each := units.Mass(rapid.Int64Range(0, int64(units.MaxMass/2)).Draw(t, "each"))
		total, err := h.Total(each)
		if err != nil {
			t.Fatal(err)
		}
		if back, err := h.Each(total, body.Total); err != nil || back != each {
			t.Fatalf("%q: %v each is %v in all, shared again %v, %v", h, each, total, back, err)
		}
	})
}

func ExampleHold_Each() {
	m := 8 * units.Kilogram
	perHand, _ := body.OneEachHand.Each(m, body.PerHand)
	total, _ := body.OneEachHand.Each(m, body.Total)
	_, err := body.OneEachHand.Each(m, 0)
	fmt.Println(perHand, total)
	fmt.Println(err)
	// Output:
	// 8 kg 4 kg
	// not given: value = 8 kg, allowed: "per hand" or "total" beside a mass for two dumbbells
}

package setlog_test

import (
	"errors"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A log takes the loads that a kit may have, and no more: 90,000 kg is a slip of the
// keyboard, for which there would be a maximum of 120,000 kg.
func TestLoadsNobodyLifts(t *testing.T) {
	for kg, fine := range map[units.Mass]bool{0: true, 10: true, 1000: true, 1001: false, 90_000: false} {
		s := setlog.Set{Exercise: "one-arm-dumbbell-row", Side: body.Right, Hold: body.OneHand, Load: kg * units.Kilogram, Reps: 8}
		err := s.Validate()
		if (err == nil) != fine || !fine && !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("%d kg: %v", kg, err)
		}
		if _, err := s.Each(); (err == nil) != fine {
			t.Errorf("%d kg: Each: %v", kg, err)
		}
		kit := equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Marked{Mass: kg * units.Kilogram}, Count: 1}}}
		if kg > 0 && (kit.Validate() == nil) != fine {
			t.Errorf("a dumbbell of %d kg: %v", kg, kit.Validate())
		}
	}
}

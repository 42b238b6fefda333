package rota_test

import (
	"errors"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// What was asked for with a dumbbell is not done with a kettlebell of its mass, nor the
// other way round.
func TestKettlebellIsNoDumbbell(t *testing.T) {
	ready := []equipment.Dumbbell{{Mass: units.Marked{Mass: 8 * units.Kilogram, Unit: units.KG}, Count: 1}}
	dumbbells, kettlebells := equipment.Kit{Dumbbells: ready}, equipment.Kit{Kettlebells: ready}
	for _, kits := range [][2]equipment.Kit{{dumbbells, kettlebells}, {kettlebells, dumbbells}} {
		table := units.Must(kits[0].Compile(body.OneHand))
		item := turnOf("one-arm-dumbbell-row", body.OneHand, 8)
		item.Load = table.Lightest()
		c := classOf(kits[0], []dose.Prescription{item})
		if _, err := rota.Schedule(c); err != nil {
			t.Errorf("%s: %v", item.Load, err)
		}
		c.Kit = kits[1]
		if _, err := rota.Schedule(c); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s from the other list: %v", item.Load, err)
		}
	}
}

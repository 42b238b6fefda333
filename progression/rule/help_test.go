package rule_test

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

func kg(v float64) units.Mass { return units.Must(units.Kilograms(v)) }

// pairs compiles a kit with a pair of dumbbells of each mass.
func pairs(t interface{ Fatal(...any) }, masses ...units.Mass) *equipment.Table {
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

package equipment_test

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"pgregory.net/rapid"
)

// kg and lb mark a mass in its unit.
func kg(x float64) units.Marked {
	return units.Marked{Mass: units.Must(units.Kilograms(x)), Unit: units.KG}
}

func lb(x float64) units.Marked {
	return units.Marked{Mass: units.Must(units.Pounds(x)), Unit: units.LB}
}

// few draws a list of at most n.
func few[T any](t *rapid.T, label string, n int, one func(i int) T) []T {
	list := make([]T, rapid.IntRange(0, n).Draw(t, label))
	for i := range list {
		list[i] = one(i)
	}
	return list
}

// oneOf draws one of the given masses: few, and of both units, so that many
// sums meet.
func oneOf(t *rapid.T, label string, masses ...units.Marked) units.Marked {
	return rapid.SampledFrom(masses).Draw(t, label)
}

// drawPlates draws different kinds of plate.
func drawPlates(t *rapid.T, label string, kinds, most int) []equipment.Plate {
	pool := rapid.Permutation([]units.Marked{kg(0.5), kg(1), kg(1.25), kg(2), kg(2.5), kg(5), lb(1), lb(2.5), lb(5)}).Draw(t, label)
	return few(t, label, kinds, func(i int) equipment.Plate {
		return equipment.Plate{Mass: pool[i], Count: rapid.IntRange(1, most).Draw(t, "plates")}
	})
}

// drawKit draws a small valid kit.
func drawKit(t *rapid.T) equipment.Kit {
	names := []string{"", "one", "two", "three"}
	collars := []units.Marked{{}, kg(0.5), lb(1)}
	count := func() int { return rapid.IntRange(1, 3).Draw(t, "count") }
	perEnd := func() int { return rapid.IntRange(0, 4).Draw(t, "plates per end") }
	return equipment.Kit{
		Dumbbells: few(t, "dumbbells", 5, func(int) equipment.Dumbbell {
			return equipment.Dumbbell{Mass: oneOf(t, "dumbbell", kg(1), kg(2), kg(3), kg(4.5), kg(7), lb(5), lb(10)), Count: count()}
		}),
		Kettlebells: few(t, "kettlebells", 3, func(int) equipment.Dumbbell {
			return equipment.Dumbbell{Mass: oneOf(t, "kettlebell", kg(4), kg(7), kg(8), lb(10)), Count: count()}
		}),
		AnkleWeights: few(t, "ankle weights", 3, func(int) equipment.Dumbbell {
			return equipment.Dumbbell{Mass: oneOf(t, "ankle weight", kg(0.5), kg(1), lb(2)), Count: count()}
		}),
		Handles: few(t, "handles", 3, func(i int) equipment.Handle {
			return equipment.Handle{Name: names[i], Mass: oneOf(t, "handle", kg(1), kg(1.5), kg(2), lb(4)),
				Collars: oneOf(t, "collars", collars...), Count: count(), PlatesPerEnd: perEnd()}
		}),
		Bars: few(t, "bars", 3, func(i int) equipment.Bar {
			return equipment.Bar{Name: names[i], Mass: oneOf(t, "bar", kg(7), kg(8), kg(20), lb(45)),
				Collars: oneOf(t, "collars", collars...), PlatesPerEnd: perEnd()}
		}),
		Plates: drawPlates(t, "kinds", 4, 9),
		Stacks: few(t, "stacks", 2, func(i int) equipment.Stack {
			pin, s := units.Mass(0), equipment.Stack{Name: names[i], AddOns: drawPlates(t, "add-ons", 3, 3)}
			for range rapid.IntRange(1, 5).Draw(t, "pins") {
				m := oneOf(t, "pin", kg(2.5), kg(5), lb(10))
				pin += m.Mass
				s.Pins = append(s.Pins, units.Marked{Mass: pin, Unit: m.Unit})
			}
			return s
		}),
	}
}

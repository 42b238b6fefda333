package strength_test

import (
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
)

var (
	abilitySink strength.Ability
	countSink   int
)

func BenchmarkAbilitySeen(b *testing.B) {
	sets := []setlog.Set{set(9, 3), set(8, 3), set(8, 2)}
	var a strength.Ability
	b.ReportAllocs()
	for b.Loop() {
		a = a.Seen(3, 3, sets...)
	}
	abilitySink = a
}

func BenchmarkAbilityMost(b *testing.B) {
	a, c := strength.Ability{}.Seen(1, 3, set(9, 3)), strength.StandardChance()
	p := strength.Prospect{Load: 22 * units.Kilogram, Last: 20 * units.Kilogram, Reserve: 3}
	b.ReportAllocs()
	for b.Loop() {
		countSink, _ = a.Most(p, c)
	}
}

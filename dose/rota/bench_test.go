package rota_test

import (
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
)

func benchmarkPlan(b *testing.B, c rota.Class) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := rota.Schedule(c); err != nil {
			b.Fatal(err)
		}
	}
}

// Eight clients with eight exercises and one rack with handles.
func BenchmarkRotaRack(b *testing.B) { benchmarkPlan(b, eight(rack())) }

// The same with dumbbells alone, where some wait.
func BenchmarkRotaScarce(b *testing.B) { benchmarkPlan(b, eight(scarce())) }

func BenchmarkRotaSmall(b *testing.B) {
	benchmarkPlan(b, classOf(singles(1, 2, 3), oneHanded(1, 2, 3), oneHanded(1, 2, 3), oneHanded(3, 2, 1)))
}

func BenchmarkAdvise(b *testing.B) {
	c := eight(scarce())
	candidates := []equipment.Purchase{dumbbells(6, 1), dumbbells(5, 1)}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := rota.AdviseClass(c, candidates); err != nil {
			b.Fatal(err)
		}
	}
}

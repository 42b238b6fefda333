package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
)

func benchmarkRota(b *testing.B, c dose.Class) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := dose.Rota(c); err != nil {
			b.Fatal(err)
		}
	}
}

// Eight clients with eight exercises and one rack with handles.
func BenchmarkRotaRack(b *testing.B) { benchmarkRota(b, eight(rack())) }

// The same with dumbbells alone, where some wait.
func BenchmarkRotaScarce(b *testing.B) { benchmarkRota(b, eight(scarce())) }

func BenchmarkRotaSmall(b *testing.B) {
	benchmarkRota(b, classOf(singles(1, 2, 3), oneHanded(1, 2, 3), oneHanded(1, 2, 3), oneHanded(3, 2, 1)))
}

func BenchmarkAdviseRota(b *testing.B) {
	c := eight(scarce())
	candidates := []equipment.Purchase{dumbbells(6, 1), dumbbells(5, 1)}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := dose.AdviseRota(c, candidates); err != nil {
			b.Fatal(err)
		}
	}
}

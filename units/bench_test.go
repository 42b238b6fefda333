package units_test

import (
	"testing"

	"example.org/posology/units"
)

func BenchmarkParseMass(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := units.ParseMass("27.5 lb"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMassText(b *testing.B) {
	b.ReportAllocs()
	m := 55 * units.Pound / 2
	for b.Loop() {
		if m.Text(units.KG) != "12.473790175 kg" {
			b.Fatal(m)
		}
	}
}

func BenchmarkMassScale(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := units.MaxMass.Scale(0.725, units.Down); err != nil {
			b.Fatal(err)
		}
	}
}

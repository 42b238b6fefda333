package equipment_test

import (
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units/body"
)

func BenchmarkAdvise(b *testing.B) {
	k := clinicKit()
	stalls := []equipment.Stall{
		{Hold: body.OneEachHand, Present: 4 * kilo, Share: 0.1},
		{Hold: body.OneHand, Present: 12 * kilo, Share: 0.02},
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := equipment.Advise(k, stalls, nil); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWays(b *testing.B) {
	k := clinicKit()
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := k.Ways(12*kilo, body.OneEachHand); err != nil {
			b.Fatal(err)
		}
	}
}

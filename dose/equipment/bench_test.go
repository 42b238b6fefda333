package equipment_test

import (
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// clinicKit is a typical rack: twelve pairs, and a pair of handles with six
// kinds of plate.
func clinicKit() equipment.Kit {
	k := equipment.Kit{
		Handles: []equipment.Handle{{Mass: kg(2), Count: 2, PlatesPerEnd: 5}},
		Plates: []equipment.Plate{
			{Mass: kg(5), Count: 4}, {Mass: kg(2.5), Count: 4}, {Mass: kg(2), Count: 4},
			{Mass: kg(1.25), Count: 8}, {Mass: kg(1), Count: 4}, {Mass: kg(0.5), Count: 4},
		},
	}
	for i := 1; i <= 12; i++ {
		k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: kg(float64(i)), Count: 2})
	}
	return k
}

// bigKit makes about half of MaxLoads.
func bigKit(extra ...equipment.Plate) equipment.Kit {
	return equipment.Kit{
		Handles: []equipment.Handle{{Mass: kg(2), Count: 2}},
		Plates: append([]equipment.Plate{
			{Mass: kg(25), Count: 40}, {Mass: kg(10), Count: 40}, {Mass: kg(9.072), Count: 40}, {Mass: kg(5), Count: 40},
			{Mass: kg(4.536), Count: 40}, {Mass: kg(2.268), Count: 40}, {Mass: kg(1.134), Count: 40}, {Mass: kg(0.25), Count: 40},
		}, extra...),
	}
}

func benchmarkCompile(b *testing.B, k equipment.Kit, h body.Hold) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := k.Compile(h); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCompileDumbbells(b *testing.B) {
	k := clinicKit()
	k.Handles = nil
	benchmarkCompile(b, k, body.OneEachHand)
}

func BenchmarkCompileClinic(b *testing.B) { benchmarkCompile(b, clinicKit(), body.OneEachHand) }

func BenchmarkCompileBig(b *testing.B) { benchmarkCompile(b, bigKit(), body.OneEachHand) }

func BenchmarkCompileTooMany(b *testing.B) {
	k := bigKit(equipment.Plate{Mass: kg(0.333), Count: 60}, equipment.Plate{Mass: kg(0.7), Count: 60})
	b.ReportAllocs()
	for b.Loop() {
		if _, err := k.Compile(body.OneEachHand); err == nil {
			b.Fatal("want ErrTooManyLoads")
		}
	}
}

func BenchmarkNearest(b *testing.B) {
	t := units.Must(clinicKit().Compile(body.OneEachHand))
	p := equipment.RoundingRule{Direction: units.Nearest, Ceiling: 20 * units.Kilogram}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := t.Nearest(7300*units.Gram, p); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLoadString(b *testing.B) {
	l := units.Must(clinicKit().Compile(body.OneEachHand)).Heaviest()
	b.ReportAllocs()
	for b.Loop() {
		if l.String() == "" {
			b.Fatal("no text")
		}
	}
}

func BenchmarkKitNearestClinic(b *testing.B) { benchmarkKitNearest(b, clinicKit()) }

func BenchmarkKitNearestBig(b *testing.B) {
	benchmarkKitNearest(b, bigKit(equipment.Plate{Mass: kg(0.333), Count: 60}, equipment.Plate{Mass: kg(0.7), Count: 60}))
}

func benchmarkKitNearest(b *testing.B, k equipment.Kit) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := k.Nearest(57*units.Kilogram+321*units.Gram, body.OneEachHand, equipment.RoundingRule{}); err != nil {
			b.Fatal(err)
		}
	}
}

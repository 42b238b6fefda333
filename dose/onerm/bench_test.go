package onerm_test

import (
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var (
	massSink units.Mass
	repsSink float64
)

func BenchmarkOneRM(b *testing.B) {
	for f := range onerm.Formulas() {
		b.Run(f.String(), func(b *testing.B) {
			b.ReportAllocs()
			for i := range b.N {
				massSink, _ = f.OneRM(20*units.Kilogram, float64(2+i&7))
			}
		})
	}
}

func BenchmarkReps(b *testing.B) {
	for f := range onerm.Formulas() {
		b.Run(f.String(), func(b *testing.B) {
			b.ReportAllocs()
			for range b.N {
				repsSink, _ = f.Reps(0.8)
			}
		})
	}
}

// BenchmarkOneRMs also checks every bit of ten million results: the hashes are
// those of plain C, NumPy and others on the same pairs.
func BenchmarkOneRMs(b *testing.B) {
	const n = 10_000_000
	load, reps := pairs(n)
	want := map[onerm.Formula]uint64{onerm.Epley: 0xf6ed64bb82e34e5f, onerm.Brzycki: 0x5c5196157fc3f3e5}
	dst := make([]float64, n)
	for f := range onerm.Formulas() {
		if !f.Domain().Contains(1) {
			continue // the pairs begin at one repetition
		}
		b.Run(f.String(), func(b *testing.B) {
			b.ReportAllocs()
			b.SetBytes(n * 20)
			for range b.N {
				var err error
				if dst, err = f.OneRMs(dst, load, reps); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/n, "ns/pair")
			b.StopTimer()
			if hash, ok := want[f]; ok && fnv(dst) != hash {
				b.Errorf("hash %x, want %x", fnv(dst), hash)
			}
		})
	}
}

func BenchmarkFromSet(b *testing.B) {
	s, e := set(6, 1), press(body.OnStack)
	for name, p := range map[string]body.Person{"man": man, "woman": woman} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for range b.N {
				estimate, err := onerm.FromSet(s, e, p)
				if err != nil {
					b.Fatal(err)
				}
				massSink = estimate.OneRM
			}
		})
	}
}

// Two years of one exercise, three sets a visit.
func BenchmarkCombine(b *testing.B) {
	var list []onerm.Estimate
	for i := range 936 {
		s := set(5+i%4, 2)
		s.Hold = body.OnBar
		s.Day += units.Day(i / 3)
		e, err := onerm.FromSet(s, press(s.Hold), everyone()[0])
		if err != nil {
			b.Fatal(err)
		}
		list = append(list, e)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := onerm.Combine(list...); err != nil {
			b.Fatal(err)
		}
	}
}

package fit_test

import (
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/units"
)

func BenchmarkFit(b *testing.B) {
	for f := range onerm.Forms() {
		for name, reps := range map[string][]float64{"3sets": {5, 8, 12}, "12sets": {3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16}} {
			points := samples[7].points(reps...)
			b.Run(f.String()+"/"+name, func(b *testing.B) {
				b.ReportAllocs()
				for range b.N {
					curve(b, points, fit.Options{Form: f})
				}
			})
		}
	}
}

func BenchmarkCurve(b *testing.B) {
	c := curve(b, samples[0].points(5, 8, 12), fit.Options{Form: onerm.Hyperbola})
	b.Run("Fraction", func(b *testing.B) {
		b.ReportAllocs()
		for range b.N {
			fractionSink, _ = c.Fraction(7)
		}
	})
	b.Run("Reps", func(b *testing.B) {
		b.ReportAllocs()
		for range b.N {
			repsSink, _ = c.Reps(0.8)
		}
	})
	b.Run("OneRMWithin", func(b *testing.B) {
		b.ReportAllocs()
		for range b.N {
			rangeSink, _ = fit.OneRMWithin(c, 0.9)
		}
	})
}

var (
	fractionSink units.Fraction
	repsSink     float64
	rangeSink    units.Range[units.Mass]
)

func BenchmarkThurber(b *testing.B) {
	p := nonlinear(b, "thurber", certified(b, "thurber").start2, false)
	b.ReportAllocs()
	for range b.N {
		if _, err := fit.Least(p); err != nil {
			b.Fatal(err)
		}
	}
}

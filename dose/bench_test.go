package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/units/body"
)

func BenchmarkPrescribe(b *testing.B) {
	r := tested(b, row(b), 6, 8, 2)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := dose.Prescribe(r); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPrescribeLoadFinding(b *testing.B) {
	r := row(b)
	r.Exercise, r.Side = exerciseOf(b, "goblet-squat"), body.Both
	b.ReportAllocs()
	for b.Loop() {
		if _, err := dose.Prescribe(r); err != nil {
			b.Fatal(err)
		}
	}
}

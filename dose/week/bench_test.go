package week_test

import (
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/week"
)

func BenchmarkPlan(b *testing.B) {
	r := weekOf(0, 2, 4)
	q := row(b)
	r.Estimates = []onerm.Estimate{estimateOf(b, q, 6, 8, 2)}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := week.Plan(r); err != nil {
			b.Fatal(err)
		}
	}
}

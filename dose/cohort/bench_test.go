package cohort_test

import (
	"bytes"
	"testing"

	"example.org/posology/dose/cohort"
	"example.org/posology/units"
)

// BenchmarkRead reads 200,000 rows; its output is in rows.
func BenchmarkRead(b *testing.B) {
	log, _ := kitLog(200_000, 20_000)
	catalogue, _ := kitCatalogue(b)
	study := units.Must(cohort.NewStudy(catalogue, kitOptions))
	b.SetBytes(int64(len(log)))
	b.ReportAllocs()
	for b.Loop() {
		c := study.NewCohort()
		for range c.Read(kitReader(catalogue), bytes.NewReader(log), int64(len(log)), 2) {
		}
		if c.Len() == 0 {
			b.Fatal("nobody")
		}
	}
}

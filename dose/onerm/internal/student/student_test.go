package student_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"example.org/posology/dose/onerm/internal/student"
)

// TestPrinted: quantiles as tables of Student's t print them (NIST/SEMATECH e-Handbook of
// Statistical Methods, section 1.3.6.7.2: one-sided 0.95, 0.975, 0.99 and 0.995).
func TestPrinted(t *testing.T) {
	for freedom, want := range map[int][4]float64{
		1:   {6.314, 12.706, 31.821, 63.657},
		2:   {2.920, 4.303, 6.965, 9.925},
		3:   {2.353, 3.182, 4.541, 5.841},
		8:   {1.860, 2.306, 2.896, 3.355},
		9:   {1.833, 2.262, 2.821, 3.250},
		30:  {1.697, 2.042, 2.457, 2.750},
		100: {1.660, 1.984, 2.364, 2.626},
	} {
		for i, level := range []float64{0.90, 0.95, 0.98, 0.99} {
			if got := student.Within(level, freedom); math.Abs(got-want[i]) > 0.0006 {
				t.Errorf("%d degrees, %v: %v, want %v", freedom, level, got, want[i])
			}
		}
	}
}

// TestLibrary: another way to the same numbers, on both sides of where the sum ends.
func TestLibrary(t *testing.T) {
	for _, freedom := range []int{1, 2, 3, 4, 5, 8, 12, 99, 399, 400, 401, 1000, 9999} {
		for _, level := range []float64{0.5, 0.8, 0.9, 0.95, 0.99} {
			want := distuv.StudentsT{Sigma: 1, Nu: float64(freedom)}.Quantile((1 + level) / 2)
			if got := student.Within(level, freedom); math.Abs(got/want-1) > 1e-9 {
				t.Errorf("%d degrees, %v: %v, want %v", freedom, level, got, want)
			}
		}
	}
}

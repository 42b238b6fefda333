package bend_test

import (
	"math"
	"testing"

	"example.org/posology/dose/onerm/internal/bend"
)

// The slopes are those of small differences, Reps is the inverse of the share, and
// a form made with a fall has it.
func TestAt(t *testing.T) {
	const h = 1e-6
	near := func(what string, f bend.Form, got, want float64) {
		t.Helper()
		if !(math.Abs(got-want) <= 1e-8) {
			t.Errorf("form %d: %s %.12g, want %.12g", f, what, got, want)
		}
	}
	for f := bend.Form(bend.Hyperbola); f <= bend.HyperbolaFloor; f++ {
		floor := 0.0
		if f.HasFloor() {
			floor = 0.4
		}
		b := bend.WithFall(f, 0.25, floor)
		near("fall", f, b.Fall(), 0.25)
		share := func(shape, logit, r float64) float64 {
			moved := bend.Bend{Form: f, Shape: b.Shape * math.Exp(shape), Floor: floor}
			if floor > 0 {
				moved.Floor = 1 / (1 + math.Exp(-math.Log(floor/(1-floor))-logit))
			}
			return moved.At(r).Share
		}
		for _, r := range []float64{1, 4.5, 12} {
			at := b.At(r)
			near("slope by shape", f, at.ByShape, (share(h, 0, r)-share(-h, 0, r))/2/h)
			near("slope by floor", f, at.ByFloor, (share(0, h, r)-share(0, -h, r))/2/h)
			near("slope by repetitions", f, at.ByReps, (share(0, 0, r+h)-share(0, 0, r-h))/2/h)
			near("repetitions", f, b.Reps(math.Exp(at.Share)), r)
		}
	}
	if s := (bend.Bend{Form: bend.Line, Shape: 20}).At(22).Share; !math.IsNaN(s) {
		t.Errorf("beyond the end of a line: %v", s)
	}
}

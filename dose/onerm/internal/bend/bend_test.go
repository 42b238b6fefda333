package bend_test

import (
	"errors"
	"math"
	"testing"

	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units/field"
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

// Curves end at 30 repetitions and begin at one.
func TestCheckReps(t *testing.T) {
	for reps, ok := range map[float64]bool{1: true, 30: true, 12.5: true, 0.99: false, 30.01: false, math.NaN(): false, math.Inf(1): false} {
		err := bend.CheckReps(reps)
		if ok != (err == nil) || err != nil && !errors.Is(err, field.ErrOutOfRange) || ok != bend.Reps().Contains(reps) {
			t.Errorf("%v repetitions: %v", reps, err)
		}
	}
}

// A curve falls as a person's can, neither hardly nor nearly to nothing, and still
// at its end.
func TestFalls(t *testing.T) {
	tests := []struct {
		name string
		b    bend.Bend
		most float64
		want bool
	}{
		{"a usual one", bend.WithFall(bend.Hyperbola, 0.25, 0), 12, true},
		{"hardly", bend.WithFall(bend.Hyperbola, 0.0009, 0), 12, false},
		{"just enough", bend.WithFall(bend.Hyperbola, 0.0011, 0), 12, true},
		{"to nearly nothing", bend.WithFall(bend.Power, 2.26, 0), 12, false},
		{"nearly so", bend.WithFall(bend.Power, 2.24, 0), 12, true},
		{"at its floor before its end", bend.Bend{Form: bend.ExponentialFloor, Shape: 2, Floor: 0.5}, 30, false},
		{"and not yet there", bend.Bend{Form: bend.ExponentialFloor, Shape: 2, Floor: 0.5}, 4, true},
	}
	for _, tt := range tests {
		if got := tt.b.Falls(tt.most); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}

// Below its floor a curve has no repetitions; a line goes on below nothing.
func TestRepsBelowTheFloor(t *testing.T) {
	for f := bend.Form(bend.Hyperbola); f <= bend.HyperbolaFloor; f++ {
		floor := 0.0
		if f.HasFloor() {
			floor = 0.4
		}
		reps := bend.WithFall(f, 0.25, floor).Reps(floor - 0.1)
		if f == bend.Line && !(reps > 30) || f != bend.Line && !math.IsNaN(reps) {
			t.Errorf("form %d: %v repetitions", f, reps)
		}
		if f.Equation() == "" {
			t.Errorf("form %d has no equation", f)
		}
	}
}

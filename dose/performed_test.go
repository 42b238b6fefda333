package dose_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Where the body is most of what is lifted there is no estimate; what was
// really done is where looking for the load begins, never above it.
func TestBeginsFromWhatWasDone(t *testing.T) {
	tests := []struct {
		name     string
		kg       float64
		reps     int
		reserve  float64
		min, max float64
	}{
		{"easily enough", 8, 12, 5, 8, 8},        // 8 with more than 5 left ask for 13 to failure, 17 were there
		{"not enough in reserve", 8, 8, 2, 6, 6}, // 10 to failure: lighter
		{"between the weights", 7, 12, 5, 6, 6},
		{"no weight so light", 0.4, 12, 5, 0.5, 0.5},
	}
	for _, tt := range tests {
		p := prescribe(t, squatAfter(t, tt.kg, tt.reps, tt.reserve))
		if kg := p.Load.Each().Kilograms(); kg < tt.min || kg > tt.max || p.Mode != dose.LoadFinding {
			t.Errorf("%s: %v, want %v to %v kg", tt.name, p.Load, tt.min, tt.max)
		}
	}
	r := squatAfter(t, 8, 12, 5)
	r.Performed.Effort = units.Effort{} // not recorded: nothing is taken to be in reserve
	if p := prescribe(t, r); p.Load.Each() >= 8*units.Kilogram {
		t.Errorf("effort not recorded: %v", p.Load)
	}
	r.Screening.Limits.MaxFraction = 0.4
	if p := prescribe(t, r); p.Load.Each() != units.Kilogram/2 {
		t.Errorf("under a low limit: %v, want the lightest", p.Load)
	}
}

// Less done, or more asked for, never begins heavier; nothing goes above what
// was done.
func TestBeginningIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := float64(rapid.IntRange(1, 40).Draw(t, "half kilograms")) / 2
		reps, reserve := rapid.IntRange(1, 25).Draw(t, "repetitions"), float64(rapid.IntRange(0, 10).Draw(t, "reserve"))
		load := func(r dose.Request) units.Mass {
			p, err := dose.Prescribe(r)
			if err != nil {
				t.Fatalf("Prescribe: %v", err)
			}
			return p.Load.Each()
		}
		was := load(squatAfter(t, kg, reps, reserve))
		if done := units.Must(units.Kilograms(kg)); was > done {
			t.Fatalf("%v begins above the %v that were done", was, done)
		}
		if is := load(squatAfter(t, kg, max(1, reps-1), reserve)); is > was {
			t.Fatalf("one repetition fewer begins at %v, before at %v", is, was)
		}
		if is := load(squatAfter(t, kg, reps, max(0, reserve-1))); is > was {
			t.Fatalf("one less in reserve begins at %v, before at %v", is, was)
		}
		more := squatAfter(t, kg, reps, reserve)
		more.Screening.Limits.MinReserve = units.RIR(rapid.IntRange(0, 9).Draw(t, "reserve asked for"))
		if is := load(more); is > was {
			t.Fatalf("reserve %v begins at %v, before at %v", more.Screening.Limits.MinReserve, is, was)
		}
	})
}

// A limit on the mass for an arm rules out leaning on it: nobody weighed that.
func TestBodyWeightOnALimitedArm(t *testing.T) {
	r := row(t)
	r.Exercise, r.Side = exerciseOf(t, "counter-push-up"), body.Both
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Shoulder, Side: body.Right, Max: 2 * units.Kilogram, Author: "a clinician"}}
	barred(t, r, dose.ErrDemand)
	r.Exercise = exerciseOf(t, "sit-to-stand")
	r.Screening.Limits.Masses[0].Region = body.Knee
	if p := prescribe(t, r); p.Mode != dose.WithoutLoad {
		t.Errorf("standing up under a limit on what is held: %v", p.Mode)
	}
}

func TestSupersededRowsSaySo(t *testing.T) {
	r := row(t)
	r.Screening.Who.Training = body.Intermediate
	if p := prescribe(t, r); !has(p.Reasons, "dose.superseded") {
		t.Errorf("%s has a later word, and nothing says so", p.Guideline)
	}
	if p := prescribe(t, row(t)); has(p.Reasons, "dose.superseded") {
		t.Errorf("%s has no later word", p.Guideline)
	}
}

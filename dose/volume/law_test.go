package volume_test

import (
	"encoding/json"
	"errors"
	"math/big"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// drawSet draws a set that is valid, in kg or lb, around the end of 2026.
func drawSet(t *rapid.T) setlog.Set {
	first := units.Must(units.ParseDay("2026-12-14"))
	s := setlog.Set{
		Day:      first + units.Day(rapid.IntRange(0, 28).Draw(t, "day")),
		Exercise: rapid.SampledFrom([]exercise.ID{"press", "row", "squat", "sit", "dip-press", "plank", "carry"}).Draw(t, "exercise"),
		Side:     rapid.SampledFrom([]body.Side{body.Left, body.Right, body.Both}).Draw(t, "side"),
		Hold:     rapid.SampledFrom([]body.Hold{body.OneHand, body.OneEachHand, body.BothHandsOnOne}).Draw(t, "hold"),
		Load:     rapid.SampledFrom([]units.Mass{units.Kilogram / 2, units.Pound}).Draw(t, "unit") * 2 * units.Mass(rapid.IntRange(0, 40).Draw(t, "load")),
		Stated:   body.Total,
		Reps:     rapid.IntRange(1, 30).Draw(t, "reps"),
	}
	switch rapid.IntRange(0, 2).Draw(t, "rated") {
	case 1:
		s.Effort = units.Must(units.InReserve(rapid.Float64Range(0, 10).Draw(t, "rir")))
	case 2:
		s.Effort = units.Must(units.RPE(float64(rapid.IntRange(2, 20).Draw(t, "rpe")) / 2))
	}
	if rapid.Bool().Draw(t, "timed") {
		s.RepSeconds = rapid.Float64Range(0, 60).Draw(t, "seconds")
	}
	return s
}

// TestAnyOrderAndGrouping: however sets are ordered and split, and however the
// tallies are merged, the totals are the same, to the last digit.
func TestAnyOrderAndGrouping(t *testing.T) {
	c := counter(t, volume.Options{
		Rule: volume.Rule{Source: "a trial", Reserve: units.AtMost[units.RIR](4)}, BodyMass: 71 * units.Kilogram,
		OneRM: map[volume.Lift]units.Mass{{Exercise: "press", Side: body.Both, Hold: body.OneEachHand}: 37 * units.Pound},
	})
	rapid.Check(t, func(rt *rapid.T) {
		sets := rapid.SliceOfN(rapid.Custom(drawSet), 0, 30).Draw(rt, "sets")
		whole := c.NewTally()
		parts := []*volume.Tally{c.NewTally(), c.NewTally(), c.NewTally()}
		for _, s := range rapid.Permutation(sets).Draw(rt, "order") {
			part := parts[rapid.IntRange(0, 2).Draw(rt, "part")]
			if err := errors.Join(part.Add(s)); err != nil {
				rt.Fatal(err)
			}
		}
		for _, s := range sets {
			if err := whole.Add(s); err != nil {
				rt.Fatal(err)
			}
		}
		order := rapid.Permutation([]int{0, 1, 2}).Draw(rt, "merge")
		left, right := c.NewTally(), c.NewTally()
		a, b, d := parts[order[0]], parts[order[1]], parts[order[2]]
		// (a + b) + d and a + (b + d)
		if err := errors.Join(left.Merge(a), left.Merge(b), left.Merge(d), b.Merge(d), right.Merge(a), right.Merge(b)); err != nil {
			rt.Fatal(err)
		}
		want := slices.Collect(whole.All())
		for _, got := range []*volume.Tally{left, right} {
			if diff := cmp.Diff(want, slices.Collect(got.All()), plain); diff != "" {
				rt.Fatal(diff)
			}
			if encoded(t, got) != encoded(t, whole) {
				rt.Fatal("merged tallies are stored otherwise")
			}
		}
	})
}

// TestBruteForce works totals out again, set by set, with big numbers.
func TestBruteForce(t *testing.T) {
	cat := catalogue(t)
	rapid.Check(t, func(rt *rapid.T) {
		sets := rapid.SliceOfN(rapid.Custom(drawSet), 1, 20).Draw(rt, "sets")
		tally := counter(t, volume.Options{}).NewTally()
		held := map[string]*big.Int{}
		count := map[string][2]float64{}
		for _, s := range sets {
			if err := tally.Add(s); err != nil {
				rt.Fatal(err)
			}
			e, _ := cat.Get(s.Exercise)
			year, week := s.Day.ISOWeek()
			key := func(what string) string { return what + string(rune(year)) + "/" + string(rune(week)) }
			reps := int64(s.Reps)
			if e.OneSided && s.Side == body.Both {
				reps *= 2
			}
			if e.Measure == exercise.Repetitions {
				k := key(string(e.ID))
				if held[k] == nil {
					held[k] = new(big.Int)
				}
				held[k].Add(held[k], new(big.Int).Mul(big.NewInt(int64(s.Load)), big.NewInt(reps)))
			}
			for _, w := range e.Muscles {
				weight := map[exercise.Role]float64{exercise.Prime: 1, exercise.Synergist: 0.5}[w.Role]
				n := count[key(w.Muscle.String())]
				if s.Side != body.Right {
					n[0] += weight
				}
				if s.Side != body.Left {
					n[1] += weight
				}
				count[key(w.Muscle.String())] = n
			}
		}
		for totals := range tally.All() {
			year, week := totals.Week.Monday().ISOWeek()
			key := func(what string) string { return what + string(rune(year)) + "/" + string(rune(week)) }
			for _, e := range totals.Exercises {
				kg, rest := e.Held.Parts()
				got := new(big.Int).Add(new(big.Int).Mul(big.NewInt(kg), big.NewInt(int64(units.Kilogram))), big.NewInt(int64(rest)))
				want := held[key(string(e.Exercise))]
				if want == nil {
					want = new(big.Int)
				}
				if got.Cmp(want) != 0 {
					rt.Fatalf("%s: %v ng, want %v", e.Exercise, got, want)
				}
			}
			for m := range body.Muscles() {
				n := count[key(m.String())]
				if got := muscle(totals, m).Sets(volume.FractionalSets).Count(); got != min(n[0], n[1]) {
					rt.Fatalf("%v: %v sets, want %v of %v", m, got, min(n[0], n[1]), n)
				}
			}
		}
	})
}

func TestTotalsJSON(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		tally := counter(t, volume.Options{BodyMass: 80 * units.Kilogram}).NewTally()
		for _, s := range rapid.SliceOfN(rapid.Custom(drawSet), 1, 8).Draw(rt, "sets") {
			if err := tally.Add(s); err != nil {
				rt.Fatal(err)
			}
		}
		for totals := range tally.All() {
			text, err := json.Marshal(totals)
			if err != nil {
				rt.Fatal(err)
			}
			var back volume.Totals
			if err := field.Decode(text, &back, field.Strict); err != nil {
				rt.Fatalf("%s: %v", text, err)
			}
			if diff := cmp.Diff(totals, back, plain); diff != "" {
				rt.Fatal(diff)
			}
		}
	})
	if err := field.Decode([]byte(`{"weak":1}`), new(volume.Totals), field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("unknown field: %v", err)
	}
}

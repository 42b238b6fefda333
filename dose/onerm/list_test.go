package onerm_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

// pairs are loads of 0.5 to 200 in halves and 1 to 12 repetitions, drawn by
// splitmix64 from a fixed seed as other programs draw them.
func pairs(n int) (load []float64, reps []int32) {
	state := uint64(20260101)
	next := func() uint64 {
		state += 0x9e3779b97f4a7c15
		z := state
		z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
		z = (z ^ z>>27) * 0x94d049bb133111eb
		return z ^ z>>31
	}
	load, reps = make([]float64, n), make([]int32, n)
	for i := range load {
		load[i] = 0.5 * float64(1+next()%400)
		reps[i] = int32(1 + next()%12)
	}
	return load, reps
}

// fnv hashes the 64-bit words of x.
func fnv(x []float64) uint64 {
	h := uint64(0xcbf29ce484222325)
	for _, v := range x {
		h = (h ^ math.Float64bits(v)) * 0x100000001b3
	}
	return h
}

// TestListBits: Epley and Brzycki match plain loops to the last bit.
func TestListBits(t *testing.T) {
	load, reps := pairs(5000)
	epley, brzycki := make([]float64, len(load)), make([]float64, len(load))
	for i, x := range load {
		r := float64(reps[i])
		epley[i] = x * (1 + r/30)
		brzycki[i] = x * 36 / (37 - r)
	}
	for f, want := range map[onerm.Formula][]float64{onerm.Epley: epley, onerm.Brzycki: brzycki} {
		got, err := f.OneRMs(nil, load, reps)
		if err != nil || fnv(got) != fnv(want) || !slices.Equal(got, want) {
			t.Errorf("%v: list differs from the plain loop (%v)", f, err)
		}
	}
}

func TestListIsOneByOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFormula.Draw(t, "formula")
		high := int32(60)
		if end, ok := f.Domain().Max(); ok {
			high = int32(end)
		}
		from, _ := f.Domain().Min()
		low := int32(math.Ceil(from))
		n := rapid.SampledFrom([]int{0, 1, 2, 1023, 1024, 1025}).Draw(t, "n")
		load, reps := make([]float64, n), make([]int32, n)
		for i := range load {
			load[i] = 1 + float64(i%200)/4
			reps[i] = low + int32(i)*7%(high-low+1)
		}
		got, err := f.OneRMs(nil, load, reps)
		if err != nil || len(got) != n {
			t.Fatal(len(got), err)
		}
		for i, x := range got {
			want, err := f.OneRM(units.Must(units.Kilograms(load[i])), float64(reps[i]))
			if err != nil || math.Abs(x-want.Kilograms()) > 1e-12*x+1e-12 {
				t.Errorf("%v: %v kg for %d: list %v, alone %v (%v)", f, load[i], reps[i], x, want, err)
			}
		}
	})
}

func TestListStorage(t *testing.T) {
	load, reps := []float64{10, 20}, []int32{5, 10}
	want, _ := onerm.Epley.OneRMs(nil, load, reps)
	dst := make([]float64, 0, 8)
	got, err := onerm.Epley.OneRMs(dst, load, reps)
	if err != nil || &got[0] != &dst[:1][0] || !slices.Equal(got, want) {
		t.Errorf("a list with room is not used: %v, %v", got, err)
	}
	got, err = onerm.Epley.OneRMs(load, load, reps)
	if err != nil || !slices.Equal(got, want) {
		t.Errorf("in place: %v, want %v (%v)", got, want, err)
	}
}

func TestListErrors(t *testing.T) {
	list := func(i int, x float64) []float64 {
		l := make([]float64, 3000)
		for j := range l {
			l[j] = 20
		}
		l[i] = x
		return l
	}
	reps := func(i int, r int32) []int32 {
		l := make([]int32, 3000)
		for j := range l {
			l[j] = 5
		}
		l[i] = r
		return l
	}
	tests := []struct {
		name string
		f    onerm.Formula
		load []float64
		reps []int32
		path string
		want error
	}{
		{"not a number", onerm.Epley, list(2, math.NaN()), reps(0, 5), "/load/2", field.ErrOutOfRange},
		{"0", onerm.Epley, list(2500, 0), reps(0, 5), "/load/2500", field.ErrOutOfRange},
		{"below 0", onerm.Wathen, list(1024, -1), reps(0, 5), "/load/1024", field.ErrOutOfRange},
		{"infinite", onerm.Adams, list(1023, math.Inf(1)), reps(0, 5), "/load/1023", field.ErrOutOfRange},
		{"1e300", onerm.Adams, list(7, 1e300), reps(0, 5), "/load/7", field.ErrOutOfRange},
		{"0 repetitions", onerm.Lombardi, list(7, 1), reps(3, 0), "/reps/3", field.ErrOutOfRange},
		{"below 0 repetitions", onerm.OConner, list(7, 1), reps(2999, -1), "/reps/2999", field.ErrOutOfRange},
		{"the least count there is", onerm.Epley, list(7, 1), reps(4, math.MinInt32), "/reps/4", field.ErrOutOfRange},
		{"pole", onerm.Brzycki, list(7, 1), reps(4, 37), "/reps/4", field.ErrOutOfRange},
		{"turn", onerm.Kemmler2006, list(7, 1), reps(4, 25), "/reps/4", field.ErrOutOfRange},
		{"lengths", onerm.Brzycki, []float64{1}, nil, "/reps", field.ErrConflict},
		{"no formula", 0, nil, nil, "/formula", field.ErrMissing},
	}
	for _, tt := range tests {
		got, err := tt.f.OneRMs(nil, tt.load, tt.reps)
		var which *field.Error
		if got != nil || !errors.As(err, &which) || which.Path != tt.path || !errors.Is(err, tt.want) {
			t.Errorf("%s: %v, error %v, want %v at %s", tt.name, len(got), err, tt.want, tt.path)
		}
	}
	both := list(2, -1)
	r := reps(2, -1)
	var all field.Errors
	if _, err := onerm.Epley.OneRMs(nil, both, r); !errors.As(err, &all) || len(all) != 2 {
		t.Errorf("load and repetitions bad: %v", err)
	}
}

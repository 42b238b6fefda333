package volume_test

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"
	"testing/iotest"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func encoded(t testing.TB, tally *volume.Tally) string {
	t.Helper()
	var text bytes.Buffer
	if err := tally.Encode(&text); err != nil {
		t.Fatal(err)
	}
	return text.String()
}

func storing() volume.Options {
	return volume.Options{
		Rule: volume.Rule{Source: "a trial", Reserve: units.AtMost[units.RIR](4)}, BodyMass: 71 * units.Kilogram,
		OneRM: map[volume.Lift]units.Mass{{Exercise: "press", Side: body.Both, Hold: body.OneEachHand}: 37 * units.Pound},
	}
}

// A tally that was stored and read, by another counter of the same options, is the same.
func TestStoredTally(t *testing.T) {
	c, other := counter(t, storing()), counter(t, storing())
	rapid.Check(t, func(rt *rapid.T) {
		a, b := c.NewTally(), c.NewTally()
		for i, s := range rapid.SliceOfN(rapid.Custom(drawSet), 0, 30).Draw(rt, "sets") {
			if err := []*volume.Tally{a, b}[i%2].Add(s); err != nil {
				rt.Fatal(err)
			}
		}
		far, err := other.Decode(strings.NewReader(encoded(t, a)))
		if err != nil {
			rt.Fatal(err)
		}
		more, err := other.Decode(iotest.OneByteReader(strings.NewReader(encoded(t, b))))
		if err := errors.Join(err, far.Merge(more), a.Merge(b)); err != nil {
			rt.Fatal(err)
		}
		if diff := cmp.Diff(slices.Collect(a.All()), slices.Collect(far.All()), plain); diff != "" || encoded(t, a) != encoded(t, far) {
			rt.Fatal(diff)
		}
	})
}

// extremes is a tally with the largest set that a set may be, a set of each measure, and a band.
func extremes(t testing.TB, c *volume.Counter) *volume.Tally {
	t.Helper()
	tally := c.NewTally()
	for i, id := range []exercise.ID{"row", "press", "plank", "carry", "sit"} {
		s := setlog.Set{Day: 739_000 + units.Day(3*i), Exercise: id, Side: body.Both, Hold: body.OneEachHand, Stated: body.PerHand,
			Load: 1000*units.Kilogram - 1, Reps: 1000, RepSeconds: 60, Effort: units.Must(units.InReserve(10))}
		if id == "press" {
			s.Load = 10 * units.Kilogram
		}
		if id == "sit" {
			s.Hold, s.Load, s.Stated, s.Effort = body.OnBand, 0, 0, units.Effort{}
		}
		if err := tally.Add(s); err != nil {
			t.Fatal(err)
		}
	}
	return tally
}

func stored(t testing.TB, c *volume.Counter) string { return encoded(t, extremes(t, c)) }

// Whatever is cut off, added or changed is found.
func TestStoredTallyDamage(t *testing.T) {
	c := counter(t, storing())
	whole := stored(t, c)
	back, err := c.Decode(strings.NewReader(whole))
	if err != nil || encoded(t, back) != whole {
		t.Fatal(err)
	}
	if diff := cmp.Diff(slices.Collect(extremes(t, c).All()), slices.Collect(back.All()), plain); diff != "" {
		t.Error(diff)
	}
	for i := range len(whole) {
		if got, err := c.Decode(strings.NewReader(whole[:i])); !errors.Is(err, field.ErrSyntax) || got != nil {
			t.Errorf("cut at %d: %v", i, err)
		}
		b := []byte(whole)
		b[i] ^= 1
		if got, err := c.Decode(bytes.NewReader(b)); !errors.Is(err, field.ErrSyntax) && !errors.Is(err, field.ErrConflict) || got != nil {
			t.Errorf("changed at %d: %v", i, err)
		}
	}
	if _, err := c.Decode(strings.NewReader(whole + "x")); !errors.Is(err, field.ErrSyntax) {
		t.Errorf("longer: %v", err)
	}
	broken := errors.New("broken")
	if _, err := c.Decode(io.MultiReader(strings.NewReader(whole[:90]), iotest.ErrReader(broken))); !errors.Is(err, broken) {
		t.Error(err)
	}
	var none *volume.Tally
	if err := none.Encode(io.Discard); !errors.Is(err, field.ErrMissing) {
		t.Error(err)
	}
	if _, err := new(volume.Counter).Decode(strings.NewReader(whole)); !errors.Is(err, field.ErrMissing) {
		t.Error(err)
	}
}

// Whoever writes a right checksum below wrong sums is refused, or has stored another tally that can
// be added up and merged: nothing breaks.
func TestStoredTallyForged(t *testing.T) {
	c := counter(t, storing())
	whole := stored(t, c)
	first := len("posology tally 1\n") + sha256.Size
	refused := 0
	for i := first; i < len(whole)-sha256.Size; i++ {
		for _, flip := range []byte{1, 2, 0x40, 0x80} {
			b := []byte(whole[:len(whole)-sha256.Size])
			b[i] ^= flip
			sum := sha256.Sum256(b)
			forged := string(append(b, sum[:]...))
			tally, err := c.Decode(strings.NewReader(forged))
			if err != nil {
				refused++
				continue
			}
			if encoded(t, tally) != forged {
				t.Errorf("byte %d: another tally than was stored", i)
			}
			if err := tally.Merge(units.Must(c.Decode(strings.NewReader(whole)))); err != nil {
				t.Errorf("byte %d: %v", i, err)
			}
			for range tally.All() {
			}
		}
	}
	if refused < len(whole) {
		t.Errorf("only %d of %d are refused", refused, 4*(len(whole)-first-sha256.Size))
	}
}

// Other options, or exercises that count otherwise, are refused.
func TestStoredTallyOfOthers(t *testing.T) {
	whole := stored(t, counter(t, storing()))
	for name, change := range map[string]func(*volume.Options){
		"kind": func(o *volume.Options) { o.Kind = volume.Prescribed }, "rule": func(o *volume.Options) { o.Rule = volume.Rule{} },
		"body mass": func(o *volume.Options) { o.BodyMass += units.Kilogram }, "maxima": func(o *volume.Options) { o.OneRM = nil },
	} {
		o := storing()
		o.Kind = volume.Performed
		change(&o)
		c := units.Must(volume.NewCounter(catalogue(t), o))
		if _, err := c.Decode(strings.NewReader(whole)); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s: %v", name, err)
		}
	}
	o := storing()
	o.Kind = volume.Performed
	if _, err := units.Must(volume.NewCounter(exercise.Standard(), o)).Decode(strings.NewReader(whole)); !errors.Is(err, field.ErrConflict) {
		t.Errorf("exercises: %v", err)
	}
}

// What is decoded is what is encoded again, and can be totalled.
func FuzzDecode(f *testing.F) {
	c := counter(f, storing())
	f.Add([]byte(stored(f, c)))
	f.Add([]byte(encoded(f, c.NewTally())))
	f.Fuzz(func(t *testing.T, data []byte) {
		tally, err := c.Decode(bytes.NewReader(data))
		if err != nil {
			return
		}
		if encoded(t, tally) != string(data) {
			t.Error("another tally than was stored")
		}
		for range tally.All() {
		}
	})
}

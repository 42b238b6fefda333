package cohort_test

import (
	"bytes"
	"errors"
	"io"
	"strings"
	"testing"
	"testing/iotest"

	"example.org/posology/dose/cohort"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

var storing = units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley}))

// someone holds a few sets of two people.
func someone(t testing.TB) *cohort.Cohort {
	t.Helper()
	c := storing.NewCohort()
	for i, id := range []exercise.ID{"biceps-curl", "one-arm-dumbbell-row", "goblet-squat"} {
		for _, key := range []body.Key{"", "p1"} {
			s := setlog.Set{Key: key, Day: 739_000 + units.Day(3*i), Exercise: id, Side: body.Both, Hold: body.BothHandsOnOne, Load: 12 * units.Kilogram, Reps: 10}
			if err := c.Add(s); err != nil {
				t.Fatal(err)
			}
		}
	}
	return c
}

// Whatever is cut off, added or changed is found.
func TestDecodeFindsDamage(t *testing.T) {
	whole := encoded(t, someone(t))
	back, err := storing.Decode(iotest.OneByteReader(strings.NewReader(whole)))
	if err != nil || encoded(t, back) != whole {
		t.Fatalf("%v", err)
	}
	for i := range len(whole) {
		if c, err := storing.Decode(strings.NewReader(whole[:i])); !errors.Is(err, field.ErrSyntax) || c != nil {
			t.Errorf("cut at %d: %v", i, err)
		}
		for _, flip := range []byte{1, 0x80} {
			b := []byte(whole)
			b[i] ^= flip
			if c, err := storing.Decode(bytes.NewReader(b)); !errors.Is(err, field.ErrSyntax) && !errors.Is(err, field.ErrConflict) || c != nil {
				t.Errorf("changed at %d: %v", i, err)
			}
		}
	}
	if _, err := storing.Decode(strings.NewReader(whole + "x")); !errors.Is(err, field.ErrSyntax) {
		t.Errorf("longer: %v", err)
	}
}

// Other options, or exercises that count otherwise, are refused.
func TestDecodeOfOthers(t *testing.T) {
	whole := encoded(t, someone(t))
	curl, _ := exercise.Standard().Get("biceps-curl")
	curl.Easier, curl.Harder = "", ""
	few := units.Must(exercise.Catalogue{}.With(curl))
	for name, c := range map[string]*cohort.Study{
		"formula":   units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{})),
		"rule":      units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley, Rule: rules[1]})),
		"exercises": units.Must(cohort.NewStudy(few, cohort.Options{Formula: onerm.Epley})),
	} {
		if _, err := c.Decode(strings.NewReader(whole)); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s: %v", name, err)
		}
	}
	again := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley}))
	if _, err := again.Decode(strings.NewReader(whole)); err != nil {
		t.Errorf("another counter of the same: %v", err)
	}
}

func TestBrokenReadersAndWriters(t *testing.T) {
	broken := errors.New("broken")
	whole := encoded(t, someone(t))
	for _, at := range []int{0, 5, 60, len(whole) - 40, len(whole) - 5} {
		if _, err := storing.Decode(io.MultiReader(strings.NewReader(whole[:at]), iotest.ErrReader(broken))); !errors.Is(err, broken) {
			t.Errorf("at %d: %v", at, err)
		}
		if err := someone(t).Encode(&fullWriter{at, broken}); !errors.Is(err, broken) {
			t.Errorf("written to %d: %v", at, err)
		}
	}
}

// fullWriter takes so many bytes.
type fullWriter struct {
	left int
	err  error
}

func (w *fullWriter) Write(p []byte) (int, error) {
	if w.left -= len(p); w.left < 0 {
		return 0, w.err
	}
	return len(p), nil
}

// What is decoded is what is encoded again.
func FuzzDecode(f *testing.F) {
	f.Add([]byte(encoded(f, someone(f))))
	f.Add([]byte(encoded(f, storing.NewCohort())))
	f.Fuzz(func(t *testing.T, data []byte) {
		c, err := storing.Decode(bytes.NewReader(data))
		if err == nil && encoded(t, c) != string(data) {
			t.Error("another cohort than was stored")
		}
		for range c.Weeks() {
		}
	})
}

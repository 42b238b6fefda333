package volume_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func TestVocabularies(t *testing.T) {
	type text interface {
		MarshalText() ([]byte, error)
		String() string
	}
	for i := range uint8(6) {
		var c volume.Convention
		var k volume.TallyKind
		for _, v := range []struct {
			of   text
			back interface{ UnmarshalText([]byte) error }
			same func() bool
			most uint8
		}{
			{volume.Convention(i), &c, func() bool { return c == volume.Convention(i) }, 3},
			{volume.TallyKind(i), &k, func() bool { return k == volume.TallyKind(i) }, 2},
		} {
			got, err := v.of.MarshalText()
			if valid := i <= v.most; valid != (err == nil) || valid && (string(got) != v.of.String() || v.back.UnmarshalText(got) != nil || !v.same()) {
				t.Errorf("%T %d: %q, %v", v.of, i, got, err)
			}
		}
	}
	if _, err := volume.Convention(0).Indirect(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("an indirect set of no convention: %v", err)
	}
}

// TestFacts: every fact can be traced.
func TestFacts(t *testing.T) {
	ledger, err := evidence.NewLedger(volume.Facts())
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for f := range ledger.All() {
		n++
		if _, err := ledger.Basis(f.ID); err != nil {
			t.Error(err)
		}
	}
	if f, _ := ledger.Fact("volume.indirect-fractional"); n < 15 || f.Value != "in the fractional convention an indirect set counts 0.5, a direct set 1" || f.Basis != evidence.Published {
		t.Errorf("%d facts; %+v", n, f)
	}
	for range volume.Facts() {
		break
	}
	for _, id := range slices.Concat(volume.Totals{}.Facts(), volume.Spread{}.Facts()) {
		if _, known := ledger.Fact(id); !known {
			t.Errorf("totals rest on %s, which is no fact", id)
		}
	}
	if int(body.ToeExtensors) != len(slices.Collect(body.Muscles())) {
		t.Error("there is a muscle after the last one that volume counts")
	}
}

func TestPatternSets(t *testing.T) {
	tally := counter(t, volume.Options{}).NewTally()
	add(t, tally, 3, set("press", body.OneEachHand, 20*units.Kilogram, 8))
	add(t, tally, 2, set("dip-press", body.OnBar, 20*units.Kilogram, 8))
	add(t, tally, 4, set("squat", body.BothHandsOnOne, 20*units.Kilogram, 8))
	left := set("row", body.OneHand, 10*units.Kilogram, 8)
	left.Side = body.Left
	add(t, tally, 5, left)
	add(t, tally, 1, set("row", body.OneHand, 10*units.Kilogram, 8))
	add(t, tally, 1, set("plank", body.Unloaded, 0, 8))
	got := week(t, tally)
	squats := func(p exercise.Pattern) bool { return p == exercise.Squat }
	for _, tt := range []struct {
		of   func(exercise.Pattern) bool
		want int
	}{{exercise.Pattern.Pushes, 5}, {exercise.Pattern.Pulls, 1}, {squats, 4}, {nil, 0}} {
		if n := got.PatternSets(tt.of); n != tt.want {
			t.Errorf("%d sets, want %d", n, tt.want)
		}
	}
	if ex(got, "plank").Measure == exercise.Repetitions || ex(got, "row").Measure != exercise.Repetitions {
		t.Error("a plank counts repetitions, or a row does not")
	}
}

// FuzzTexts: what is read from a text comes back from its own text.
func FuzzTexts(f *testing.F) {
	for _, s := range []string{"1560.5 kg", "9223372036854775807.999999999999 kg", "2026-W53", "9999-W51", "4.5 fractional", "0 direct", "-0 total", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		if l, err := read[volume.VolumeLoad](s); err == nil {
			if back, err := read[volume.VolumeLoad](l.String()); err != nil || back != l {
				t.Errorf("%q: %v reads back as %v, %v", s, l, back, err)
			}
		}
		if w, err := read[volume.ISOWeek](s); err == nil && w.String() != s {
			t.Errorf("%q is taken for %v", s, w)
		}
		var sets, back volume.Sets
		if sets.UnmarshalText([]byte(s)) == nil {
			if err := back.UnmarshalText([]byte(sets.String())); err != nil || back != sets {
				t.Errorf("%q: %v reads back as %v, %v", s, sets, back, err)
			}
		}
	})
}

package evidence_test

import (
	"errors"
	"testing"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// byStrength lists the bases that have a rank, the best known first.
var byStrength = []evidence.Basis{evidence.Published, evidence.Secondary, evidence.CommonPractice, evidence.FromMemory, evidence.Design, 0}

func TestWeaker(t *testing.T) {
	for i, a := range byStrength {
		for j, b := range byStrength {
			if got, want := evidence.Weaker(a, b), byStrength[max(i, j)]; got != want {
				t.Errorf("Weaker(%v, %v) = %v, want %v", a, b, got, want)
			}
		}
		if got := evidence.Weaker(evidence.Computed, a); got != a {
			t.Errorf("Weaker(computed, %v) = %v, want %v", a, got, a)
		}
	}
}

// A number that is no basis is nothing to build on, and no reason to panic.
func TestWeakerOfStrangers(t *testing.T) {
	stranger := evidence.Design + 1
	defer func() {
		if r := recover(); r != nil {
			t.Errorf("Weaker panics on a number that is no basis: %v", r)
		}
	}()
	if got := evidence.Weaker(stranger, evidence.Published); got == evidence.Published {
		t.Errorf("Weaker(%v, published) = published", stranger)
	}
	if got := evidence.Weaker(evidence.Published, stranger); got == evidence.Published {
		t.Errorf("Weaker(published, %v) = published", stranger)
	}
}

func TestBasisText(t *testing.T) {
	names := map[evidence.Basis]string{
		0: "", evidence.Published: "published", evidence.Secondary: "secondary",
		evidence.FromMemory: "from memory", evidence.CommonPractice: "common practice",
		evidence.Computed: "computed", evidence.Design: "design",
	}
	for b, want := range names {
		text, err := b.MarshalText()
		if err != nil || string(text) != want || b.String() != want {
			t.Errorf("basis %d: %q, %v, and %q, want %q", b, text, err, b, want)
		}
		back := evidence.Design
		if err := back.UnmarshalText(text); err != nil || back != b {
			t.Errorf("UnmarshalText(%q) = %v, %v", text, back, err)
		}
		if err := b.Check(); (err == nil) != (b != 0) {
			t.Errorf("%q.Check() = %v", b, err)
		}
	}
	stranger := evidence.Design + 1
	if _, err := stranger.MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("MarshalText of no basis: %v, want %v", err, field.ErrOutOfRange)
	}
	kept := evidence.Published
	if err := kept.UnmarshalText([]byte("hearsay")); !errors.Is(err, field.ErrUnknown) || kept != evidence.Published {
		t.Errorf("UnmarshalText(hearsay): %v, %v, want %v and no change", kept, err, field.ErrUnknown)
	}
}

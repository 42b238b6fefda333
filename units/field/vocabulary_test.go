package field_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/posology/units/field"
)

type side uint8

var sides = field.NewVocabulary[side]("side", "", "left", "right")

// A zero value with a text of its own is a value like the others.
func TestVocabularyWithZeroText(t *testing.T) {
	answers := field.NewVocabulary[side]("answer", "unknown", "no", "yes")
	if got := slices.Collect(answers.All()); !slices.Equal(got, []side{0, 1, 2}) {
		t.Errorf("All() = %v, want 0, 1 and 2", got)
	}
}

func TestVocabulary(t *testing.T) {
	if got := slices.Collect(sides.All()); !slices.Equal(got, []side{1, 2}) {
		t.Errorf("All() = %v, want 1 and 2", got)
	}
	for first := range sides.All() {
		if first != 1 {
			t.Errorf("the first value is %d, want 1", first)
		}
		break
	}
	for e, text := range []string{"", "left", "right"} {
		if got := sides.Text(side(e)); got != text {
			t.Errorf("Text(%d) = %q, want %q", e, got, text)
		}
		if got, err := sides.Parse(text); got != side(e) || err != nil {
			t.Errorf("Parse(%q) = %d, %v, want %d", text, got, err, e)
		}
		if got, err := sides.Marshal(side(e)); string(got) != text || err != nil {
			t.Errorf("Marshal(%d) = %q, %v, want %q", e, got, err, text)
		}
		if got := sides.Valid(side(e)); got != (e > 0) {
			t.Errorf("Valid(%d) = %v", e, got)
		}
	}
}

func TestVocabularyErrors(t *testing.T) {
	if got := sides.Text(9); got != "side(9)" || sides.Valid(9) {
		t.Errorf("Text(9) = %q, Valid %v; want side(9), false", got, sides.Valid(9))
	}
	if _, err := sides.Marshal(9); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("Marshal(9): %v, want %v", err, field.ErrOutOfRange)
	}
	e := side(1)
	err := sides.Unmarshal([]byte("Left"), &e)
	if !errors.Is(err, field.ErrUnknown) || e != 1 {
		t.Errorf("Unmarshal(Left): %v, value %d; want %v and the old value", err, e, field.ErrUnknown)
	}
	if want := `= "Left", allowed: side: left, right`; !strings.HasSuffix(err.Error(), want) {
		t.Errorf("error %q does not end in %q", err, want)
	}
	if err := sides.Unmarshal([]byte("right"), &e); err != nil || e != 2 {
		t.Errorf("Unmarshal(right): %v, value %d, want 2", err, e)
	}
	if _, err := sides.Parse(strings.Repeat("x", 10_000)); len(err.Error()) > 200 {
		t.Errorf("the error for a long text has %d bytes", len(err.Error()))
	}
}

func TestVocabularyCheck(t *testing.T) {
	for e, want := range map[side]error{0: field.ErrMissing, 1: nil, 2: nil, 3: field.ErrOutOfRange} {
		err := sides.Check("/side", e)
		if !errors.Is(err, want) {
			t.Errorf("Check(%d): %v, want %v", e, err, want)
		}
		var f *field.Error
		if want != nil && (!errors.As(err, &f) || f.Path != "/side") {
			t.Errorf("Check(%d): %v does not name the path", e, err)
		}
	}
}

func TestVocabularyWithoutTexts(t *testing.T) {
	var none field.Vocabulary[side]
	if _, err := none.Parse("left"); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("Parse: %v, want %v", err, field.ErrUnknown)
	}
	if _, err := none.Marshal(0); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("Marshal: %v, want %v", err, field.ErrOutOfRange)
	}
	if err := none.Check("", 0); !errors.Is(err, field.ErrMissing) {
		t.Errorf("Check: %v, want %v", err, field.ErrMissing)
	}
	if got := slices.Collect(none.All()); len(got) != 0 {
		t.Errorf("All() = %v, want nothing", got)
	}
}

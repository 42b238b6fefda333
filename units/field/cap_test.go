package field_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"example.org/posology/units/field"
)

// Fifty lines are more than anybody reads; the errors behind them are all there.
func TestManyBadFieldsAreSaidShortly(t *testing.T) {
	var bad field.Errors
	for i := range 20_000 {
		bad.Add(fmt.Sprintf("/sets/%d/reps", i), field.Bad(i, "1 to 1000", field.ErrOutOfRange))
	}
	text := bad.Error()
	lines := strings.Split(text, "\n")
	if len(lines) != 51 || lines[50] != "and 19950 more" || lines[49] != "out of range: /sets/49/reps = 49, allowed: 1 to 1000" {
		t.Errorf("%d lines, the last two %q", len(lines), lines[max(0, len(lines)-2):])
	}
	if n := len(bad.Unwrap()); n != 20_000 {
		t.Errorf("%d errors are left, want every one", n)
	}
	if text := bad[:50].Error(); strings.Contains(text, "more") || strings.Count(text, "\n") != 49 {
		t.Errorf("fifty errors end with %q", text[len(text)-60:])
	}
}

func TestLongPartsAreCut(t *testing.T) {
	long := strings.Repeat("é", 1_000_000)
	one := field.New("/"+long, long, long, field.ErrUnknown)
	text := one.Error()
	if len(text) > 3200 || !utf8.ValidString(text) || strings.Count(text, "…") != 3 {
		t.Errorf("%d bytes, valid %v, %d cuts", len(text), utf8.ValidString(text), strings.Count(text, "…"))
	}
	if one.Got != long {
		t.Error("the error itself was cut too")
	}
	for _, length := range []int{999, 1000} {
		if text := field.Bad(strings.Repeat("x", length), "", field.ErrUnknown).Error(); strings.Contains(text, "…") {
			t.Errorf("%d letters are cut", length)
		}
	}
	many := make(field.Errors, 50)
	for i := range many {
		many[i] = one
	}
	if text := many.Error(); len(text) > 20<<10 || !strings.Contains(text, " more") {
		t.Errorf("%d bytes for fifty long errors", len(text))
	}
}

func TestNilErrors(t *testing.T) {
	var none *field.Error
	one := field.Bad(0, "1 or more", field.ErrOutOfRange)
	holed := field.Errors{nil, one, nil}
	if holed.Error() != one.Error() || !errors.Is(holed, field.ErrOutOfRange) || len(holed.Unwrap()) != 1 {
		t.Errorf("nil elements: %q, %d errors", holed.Error(), len(holed.Unwrap()))
	}
	if err := holed.Err(); err == nil || err.Error() != one.Error() {
		t.Errorf("Err = %v", err)
	}
	if err := (field.Errors{nil, nil}).Err(); err != nil {
		t.Errorf("of nil elements alone: %v", err)
	}
	if err := field.At("/x", holed); err.Error() != "out of range: /x = 0, allowed: 1 or more" {
		t.Errorf("moved: %v", err)
	}
	if err := field.At("/x", none); err != nil {
		t.Errorf("a nil *Error became %v", err)
	}
	if err := field.New("/x", 1, "2", none); err.Error() != "bad field: value: /x = 1, allowed: 2" {
		t.Errorf("with a nil *Error as category: %v", err)
	}
	wrapped := fmt.Errorf("reading: %w", none)
	if err := field.At("/x", wrapped); err == nil || !strings.Contains(err.Error(), "reading") {
		t.Errorf("an error that wraps a nil *Error became %v", err)
	}
	(*field.Errors)(nil).Add("/x", one) // nowhere to add to, and no panic
}

// What cannot take a value says so, also of a text that is nothing.
func TestReadingIntoNil(t *testing.T) {
	var into *int
	for name, err := range map[string]error{
		"Set":              field.Assign(into, 1, nil),
		"AssignText":       field.AssignText(into, []byte("1"), func(string) (int, error) { return 1, nil }),
		"AssignText of ''": field.AssignText(into, nil, func(string) (int, error) { return 1, nil }),
		"Unmarshal":        field.NewVocabulary[side]("side", "", "left").Unmarshal([]byte("left"), nil),
		"DecodeChecked":    field.DecodeChecked([]byte("1"), into, field.Strict, func(int) error { return nil }),
		"Decode":           field.Decode([]byte("1"), into, field.Strict),
		"Decode nil":       field.Decode([]byte("1"), nil, field.Strict),
	} {
		if !errors.Is(err, field.ErrMissing) {
			t.Errorf("%s into nil: %v, want ErrMissing", name, err)
		}
	}
	n := 7
	if err := field.AssignText(&n, nil, func(string) (int, error) { return 1, nil }); err != nil || n != 0 {
		t.Errorf("nothing read into 7: %d, %v", n, err)
	}
	if err := field.AssignText(&n, []byte("x"), func(string) (int, error) { return 5, field.ErrSyntax }); !errors.Is(err, field.ErrSyntax) || n != 0 {
		t.Errorf("an error: %d, %v", n, err)
	}
}

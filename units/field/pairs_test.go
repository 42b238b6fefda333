package field_test

import (
	"errors"
	"testing"

	"example.org/posology/units/field"
)

// RFC 8259, 7: beyond the basic plane a character is written as two escapes, each
// with its own backslash and u. Half a pair, or one that is written otherwise, is
// no text, though encoding/json puts U+FFFD in its place.
func TestHalfPairsOfSurrogates(t *testing.T) {
	for _, data := range []string{
		`"\ud83d"`, `"\ude00"`, `"\ud83d\ndc00"`, `"\ud83d\tde00"`, `"\ud83dxude00"`, `"\ud83d ude00"`, `"\ud83d\\ude00"`, `"\ud83d\ud83d"`, `"\ud83d\u00e9"`,
		`"\ud83d\ude0"`, `"\ud83d\"`, `"\ud83d\u"`,
	} {
		var got string
		if err := field.Decode([]byte(data), &got, field.Strict); !errors.Is(err, field.ErrSyntax) || got != "" {
			t.Errorf("%s gives %q, %v, want ErrSyntax", data, got, err)
		}
	}
}

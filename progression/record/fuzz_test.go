package record_test

import (
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// Whatever the text: no panic, and what is read is read again from what it encodes to.
func FuzzDecode(f *testing.F) {
	for _, name := range append([]string{stored}, old...) {
		f.Add(file(f, name))
	}
	f.Add([]byte(`{"version": 2}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		_, _ = record.Decode(data, field.PassOver)
		r, err := record.Decode(data, field.Strict)
		if err != nil {
			return
		}
		text := encoded(t, r)
		back, err := record.Decode([]byte(text), field.Strict)
		if err != nil {
			t.Fatalf("%v in\n%s", err, text)
		}
		if encoded(t, back) != text {
			t.Fatal("another record")
		}
	})
}

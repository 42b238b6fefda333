package record_test

import (
	"fmt"
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// Whatever the text: no panic, and what is read is read again from what it encodes to.
func FuzzDecode(f *testing.F) {
	// Small ones: the fixtures are so long that the fuzzer would do nothing but shorten them.
	for _, more := range []string{"", trained} {
		f.Add(fmt.Appendf(nil, client, more))
	}
	f.Add([]byte(`{"note": "", "client": "", "days": ["2026-11-30"], "asked": [{"from": "2026-11-30"}], "visits": [{"day": "2026-11-30"}], "sets": ["day,reps", "", "1,1"]}`))
	f.Add([]byte(`{"version": 4}`))
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

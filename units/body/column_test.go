package body_test

import (
	"errors"
	"testing"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A set of demands is its names in a database, not the bits behind it.
func TestStoredDemands(t *testing.T) {
	all := body.Demands(0)
	for d := range body.EveryDemand() {
		all = all.Union(body.DemandSet(d))
		for _, s := range []body.Demands{body.DemandSet(d), all, 0} {
			stored, err := s.Value()
			text, ok := stored.(string)
			if err != nil || !ok {
				t.Fatalf("%v is stored as %#v, %v", s, stored, err)
			}
			var back body.Demands
			for _, src := range []any{text, []byte(text)} {
				if err := back.Scan(src); err != nil || back != s {
					t.Errorf("%s: %v, %v, want %v", text, back, err, s)
				}
			}
		}
	}
	for _, src := range []any{int64(2), nil, `["nothing of the kind"]`, `[""]`, `[`, `3`} {
		var bad *field.Error
		if err := all.Scan(src); !errors.As(err, &bad) {
			t.Errorf("%#v: %v", src, err)
		}
	}
}

package equipment_test

import (
	"encoding/json"
	"errors"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Whatever the text, decoding, checking, compiling and asking end in an answer
// or an error, and what comes out adds up.
func FuzzKit(f *testing.F) {
	f.Add(units.Must(json.Marshal(clinicKit())), int64(7*kilo), int64(9*kilo), uint8(2))
	f.Add([]byte(`{"stacks":[{"pins":["5 kg","10 lb"],"add_ons":[{"mass":"1.25 kg","count":2}]}]}`), int64(1), int64(0), uint8(0))
	f.Add([]byte(`{"bars":[{"name":"b","mass":"20 kg","collars":"5 lb"}],"plates":[{"mass":"1 oz","count":500}]}`), int64(-1), int64(-1), uint8(9))
	f.Fuzz(func(t *testing.T, text []byte, target, ceiling int64, direction uint8) {
		var k equipment.Kit
		if field.Decode(text, &k, field.Strict) != nil {
			return
		}
		valid := k.Validate() == nil
		for h := range body.Holds() {
			table, err := k.Compile(h)
			if !valid && err == nil {
				t.Fatalf("compiles, but %v", k.Validate())
			}
			if valid && err != nil && !errors.Is(err, equipment.ErrEmptyKit) && !errors.Is(err, equipment.ErrTooManyLoads) {
				t.Fatal(err)
			}
			p := equipment.RoundingRule{Direction: units.Rounding(direction), Ceiling: units.Mass(ceiling)}
			l, err := table.Nearest(units.Mass(target), p)
			table.Next(units.Mass(target))
			if err != nil {
				continue
			}
			if bad := l.Validate(); bad != nil || ceiling > 0 && l.Each() > p.Ceiling {
				t.Fatalf("%s: %v", l, bad)
			}
		}
	})
}

// A decoded load prints and checks, whatever it says, and is written as it was read.
func FuzzLoad(f *testing.F) {
	for l := range units.Must(clinicKit().Compile(body.OneEachHand)).Loads() {
		f.Add(units.Must(json.Marshal(l)))
	}
	f.Add([]byte(`{"each":"-1 kg","parts":[{"kind":"plate","count":-9223372036854775808}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		var l, back equipment.Load
		if field.Decode(text, &l, field.Strict) != nil {
			return
		}
		_, _, _, _ = l.String(), l.Plates(), l.Marked(), l.Validate()
		again, err := json.Marshal(l)
		if err == nil {
			err = field.Decode(again, &back, field.Strict)
		}
		if err != nil || l.Each() != back.Each() || l.Total() != back.Total() || l.Hold() != back.Hold() {
			t.Fatalf("%s came back as %s, %v", text, again, err)
		}
	})
}

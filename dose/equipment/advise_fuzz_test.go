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

// Whatever kit, stall and purchase say, advice or an error comes out.
func FuzzAdvise(f *testing.F) {
	f.Add([]byte(`{"dumbbells":[{"mass":"4 kg","count":2}]}`), []byte(`{"hold":"one hand","present":"4 kg","share":0.1}`), []byte(`{"dumbbell":{"mass":"4.4 kg","count":1}}`))
	f.Add(units.Must(json.Marshal(homeKit())), []byte(`{"hold":"on a bar","present":"0 kg","wanted":"3 kg","ceiling":"1 kg"}`), []byte(`{"plate":{"mass":"1 lb","count":4}}`))
	f.Fuzz(func(t *testing.T, kit, stall, purchase []byte) {
		var k equipment.Kit
		var s equipment.Stall
		var p equipment.Purchase
		if field.Decode(kit, &k, field.Strict) != nil || field.Decode(stall, &s, field.Strict) != nil || field.Decode(purchase, &p, field.Strict) != nil {
			return
		}
		list, err := equipment.Advise(k, []equipment.Stall{s}, []equipment.Purchase{p})
		valid := k.Validate() == nil && s.Validate() == nil && p.Validate() == nil
		if err == nil && (!valid || len(list) != 1 || list[0].Mass <= 0) {
			t.Fatalf("%+v, valid %v", list, valid)
		}
		if _, withErr := k.With(p); err != nil && valid && withErr == nil && !errors.Is(err, equipment.ErrTooManyLoads) {
			t.Fatal(err)
		}
	})
}

// A load that the kit makes has a way; what a way takes is there.
func FuzzWays(f *testing.F) {
	f.Add(units.Must(json.Marshal(clinicKit())), int64(7*kilo), uint8(2))
	f.Add([]byte(`{"bars":[{"mass":"20 kg"}],"plates":[{"mass":"1 oz","count":500}]}`), int64(21*kilo), uint8(4))
	f.Fuzz(func(t *testing.T, text []byte, each int64, hold uint8) {
		var k equipment.Kit
		if field.Decode(text, &k, field.Strict) != nil {
			return
		}
		h := body.Hold(hold)
		ways, all, err := k.Ways(units.Mass(each), h)
		if err != nil {
			return
		}
		table, err := k.Compile(h)
		_, made := table.Find(units.Mass(each))
		if err == nil && all && made != (len(ways) > 0) {
			t.Fatalf("made %v, %d ways", made, len(ways))
		}
		for _, w := range ways {
			for _, u := range w.Uses {
				if u.Count > k.Stock(u) {
					t.Fatalf("%s uses %+v of %d", w.Load, u, k.Stock(u))
				}
			}
		}
	})
}

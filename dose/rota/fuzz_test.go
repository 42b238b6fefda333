package rota_test

import (
	"encoding/json"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Whatever the text, decoding and planning end in a rota that keeps the stock,
// or in an error; a rota is written as it is read.
func FuzzClass(f *testing.F) {
	f.Add(units.Must(json.Marshal(classOf(rack(), oneHanded(1, 2), oneHanded(2, 1)))))
	f.Add(units.Must(json.Marshal(classOf(singles(1), oneHanded(1), oneHanded(1)))))
	f.Add([]byte(`{"clients":[{"name":"1","items":[{"exercise":"x","hold":"unloaded","sets":1,"count":1,"measure":"seconds"}]}],"kit":{}}`))
	f.Add([]byte(`{"clients":[{"name":"1","items":[{"exercise":"x","hold":"on a bar","load":{"each":"7 kg","total":"7 kg","hold":"on a bar"},
		"sets":1,"count":1,"measure":"seconds"}]}],"kit":{"bars":[{"mass":"5 kg"}],"plates":[{"mass":"1 kg","count":2}]},"staggered":true}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		var c rota.Class
		if field.Decode(text, &c, field.Strict) != nil {
			return
		}
		table, err := rota.Schedule(c)
		if err != nil {
			return
		}
		if tellsEntries(c.Kit) {
			checkRota(t, c, table)
		}
		var back rota.Timetable
		if err := field.Decode(units.Must(json.Marshal(table)), &back, field.Strict); err != nil || !cmp.Equal(table, back) {
			t.Fatalf("came back as %+v, %v", back, err)
		}
	})
}

// tellsEntries reports whether parts tell which entry of the kit they are: one
// bar and stack at most, each handle named, each mass of dumbbell listed once.
func tellsEntries(k equipment.Kit) bool {
	masses := map[units.Mass]bool{}
	for _, d := range k.Dumbbells {
		masses[d.Mass.Mass] = true
	}
	names := map[string]bool{}
	for _, h := range k.Handles {
		names[h.Name] = true
	}
	return len(k.Bars) < 2 && len(k.Stacks) < 2 && len(masses) == len(k.Dumbbells) && len(names) == len(k.Handles)
}

package record_test

import (
	"errors"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Who moves, or sells the weights, has lifted them all the same: the record stays whole,
// every dose is of the weights that are there now and no heavier than the last, earlier
// decisions come out again, and a weight of no kit is still refused.
func TestKitReplaced(t *testing.T) {
	r := read(t, stored)
	if len(r.Entries) == 0 {
		t.Fatal("no entry")
	}
	before, err := r.Decide(r.LastDay() + 1)
	if err != nil {
		t.Fatal(err)
	}
	r.Entries = append(r.Entries, before)
	r.Kit = equipment.Kit{}
	for _, mass := range []string{"500 g", "1.5 kg", "3.5 kg", "5.5 kg"} {
		r.Kit.Dumbbells = append(r.Kit.Dumbbells, equipment.Dumbbell{Mass: units.Must(units.ParseMarked(mass)), Count: 2})
	}
	if r, err = record.Decode([]byte(encoded(t, r)), field.Strict); err != nil {
		t.Fatal(err)
	}
	last := map[string]units.Mass{}
	for _, a := range r.Asked {
		last[string(a.Exercise)] = a.Load
	}
	now, err := r.Decide(before.Day)
	if err != nil {
		t.Fatal(err)
	}
	dosed := 0
	for _, item := range now.Items {
		p := item.Decision.Next
		if p == nil || p.Load.Each() == 0 || p.Exercise != item.Exercise {
			continue
		}
		dosed++
		if p.Load.Each()%units.Kilogram != units.Kilogram/2 || p.Load.Each() > last[string(p.Exercise)] {
			t.Errorf("%s: %v after %v", p.Exercise, p.Load, last[string(p.Exercise)])
		}
	}
	if dosed == 0 {
		t.Error("nothing is dosed with the new weights")
	}
	for i, one := range r.Replay() {
		if one.Err != nil {
			t.Errorf("entry %d: %v", i, one.Err)
		}
	}
	r.Asked[0].Load += units.Gram
	if err := r.Validate(); !errors.Is(err, field.ErrConflict) {
		t.Errorf("a weight of no kit: %v", err)
	}
}

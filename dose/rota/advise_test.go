package rota_test

import (
	"encoding/json"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func advise(t failer, c rota.Class, candidates ...equipment.Purchase) []rota.ClassAdvice {
	t.Helper()
	list, err := rota.AdviseClass(c, candidates)
	if err != nil {
		t.Fatalf("Advise: %v", err)
	}
	return list
}

func dumbbells(kg float64, count int) equipment.Purchase {
	return equipment.Purchase{Dumbbell: equipment.Dumbbell{Mass: marked(kg), Count: count}}
}

// Three at one weight wait for 3 slots in all: 1 and 2. One weight more leaves
// one waiting slot, two more none.
func TestAdvise(t *testing.T) {
	c := classOf(singles(1, 2), oneHanded(1), oneHanded(1), oneHanded(1))
	want := []rota.ClassAdvice{
		{Purchase: dumbbells(1, 2), Mass: 2 * units.Kilogram, Removed: 3, Saved: 2, Waiting: 0, Slots: 1, Proof: rota.BestOfAll},
		{Purchase: dumbbells(1, 1), Mass: units.Kilogram, Removed: 2, Saved: 1, Waiting: 1, Slots: 2, Proof: rota.BestOfAll},
		{Purchase: dumbbells(2, 1), Mass: 2 * units.Kilogram, Waiting: 3, Slots: 3, Proof: rota.BestOfAll},
		{Purchase: dumbbells(2, 2), Mass: 4 * units.Kilogram, Waiting: 3, Slots: 3, Proof: rota.BestOfAll},
	}
	if diff := cmp.Diff(want, advise(t, c)); diff != "" {
		t.Errorf("Advise (-want +got):\n%s", diff)
	}
	// Equal gains: the lighter first, then the order given.
	handles := equipment.Purchase{Handle: equipment.Handle{Name: "h", Mass: marked(0.5), Count: 6}}
	given := []equipment.Purchase{dumbbells(1, 3), dumbbells(1, 2), handles, dumbbells(3, 1), dumbbells(1, 1)}
	order := []equipment.Purchase{dumbbells(1, 2), dumbbells(1, 3), dumbbells(1, 1), handles, dumbbells(3, 1)}
	for i, a := range advise(t, c, given...) {
		if a.Purchase != order[i] {
			t.Errorf("place %d: %s, want %s", i, a.Purchase, order[i])
		}
	}
}

func TestAdviseWithNothingToGain(t *testing.T) {
	for _, a := range advise(t, classOf(pairs(1, 2), oneHanded(1), oneHanded(2))) {
		if a.Removed != 0 || a.Saved != 0 || a.Waiting != 0 || a.Slots != 1 {
			t.Errorf("%+v", a)
		}
	}
}

// Waiting that takes no slots of its own still counts: two with one exercise
// wait for each other while a third has two.
func TestAdviseWithinTheLongestSession(t *testing.T) {
	c := classOf(singles(1, 2), oneHanded(2, 2), oneHanded(1), oneHanded(1))
	if a := advise(t, c, dumbbells(1, 1))[0]; a.Removed != 1 || a.Waiting != 0 || a.Slots != 2 {
		t.Errorf("%+v", a)
	}
}

// Each advice states what the rota with that purchase is, and none makes it worse.
func TestAdviseAgreesWithPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawClass(t, 3, 3)
		now := plan(t, c)
		list := advise(t, c)
		for i, a := range list {
			larger := c
			larger.Kit = units.Must(c.Kit.With(a.Purchase))
			then := plan(t, larger)
			if a.Waiting != then.Waiting || a.Slots != then.Slots || a.Removed != now.Waiting-then.Waiting || a.Saved != now.Slots-then.Slots {
				t.Fatalf("%s: %+v, the rota has waiting %d and %d slots", a.Purchase, a, then.Waiting, then.Slots)
			}
			if a.Removed < 0 || i > 0 && list[i-1].Removed < a.Removed {
				t.Fatalf("place %d: %+v", i, a)
			}
		}
	})
}

// Beyond what can be searched through, buying still never makes it worse.
func TestAdviseOfEight(t *testing.T) {
	c := eight(scarce())
	now := plan(t, c)
	list := advise(t, c, dumbbells(1, 1), dumbbells(5, 1), dumbbells(10, 2))
	for _, a := range list {
		if a.Removed < 0 || a.Waiting+a.Removed != now.Waiting || a.Slots+a.Saved != now.Slots {
			t.Errorf("%+v beside waiting %d, %d slots", a, now.Waiting, now.Slots)
		}
	}
	if list[0].Removed == 0 || !slices.IsSortedFunc(list, func(a, b rota.ClassAdvice) int { return b.Removed - a.Removed }) {
		t.Errorf("%+v", list)
	}
}

func TestAdviseErrors(t *testing.T) {
	c := classOf(singles(1), oneHanded(1), oneHanded(1))
	c.Kit.Handles = []equipment.Handle{{Name: "h", Mass: marked(1), Count: 1}}
	other := equipment.Purchase{Handle: equipment.Handle{Name: "h", Mass: marked(2), Count: 1}}
	_, err := rota.AdviseClass(c, []equipment.Purchase{dumbbells(1, 1), {}, other, dumbbells(1, 500)})
	want := []string{"/candidates/1", "/candidates/2/kit/handles/1/name", "/candidates/3/kit/dumbbells/0/count"}
	if !cmp.Equal(paths(err), want) {
		t.Errorf("%v, want %v", err, want)
	}
}

func TestPlanAdviceJSON(t *testing.T) {
	for _, a := range advise(t, classOf(singles(1, 2), oneHanded(1), oneHanded(1))) {
		var back rota.ClassAdvice
		if err := field.Decode(units.Must(json.Marshal(a)), &back, field.Strict); err != nil || back != a {
			t.Errorf("%+v came back as %+v, %v", a, back, err)
		}
	}
}

// What is proposed for a kit that is full is what there is room for.
func TestAdviseClassForAFullKit(t *testing.T) {
	c := classOf(singles(1, 2), oneHanded(1, 2))
	c.Kit.Dumbbells[0].Count = 500
	list, err := rota.AdviseClass(c, nil)
	if err != nil || len(list) != 2 {
		t.Errorf("%v, %v", list, err)
	}
}

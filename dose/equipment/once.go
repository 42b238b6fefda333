package equipment

import (
	"slices"
	"sync/atomic"

	"example.org/posology/units/body"
)

// A compiled remembers the tables of a kit.
type compiled struct {
	kit   Kit // a copy that nobody else holds
	holds [body.Unloaded + 1][numKinds]atomic.Pointer[ofHold]
}

// An ofHold is what a hold came to.
type ofHold struct {
	table *Table
	err   error
}

// latest is the last kit that was new to Once. Of whoever trains in the same room the
// tables are there already.
var latest atomic.Pointer[compiled]

// Once returns k as a kit that is compiled once for each hold: all copies of it share
// the tables, from several goroutines too. Where as is such a kit and holds the same
// things as k, they share those of as, and else of the kit that was last new to Once, where
// that holds the same things. A list that is changed later is compiled anew.
func (k Kit) Once(as Kit) Kit {
	if k.made = as.made; !k.remembered() {
		k.made = latest.Load()
	}
	if !k.remembered() {
		k.made = &compiled{kit: k.clone()}
		latest.Store(k.made)
	}
	return k
}

// compileOnce is compile, from what is remembered.
func (k *Kit) compileOnce(h body.Hold, with ofHand) (*Table, error) {
	if len(k.Kettlebells) == 0 && with == onlyDumbbells {
		with = anyKind
	}
	if h.Check() != nil || !k.remembered() {
		return k.compile(h, with)
	}
	kept := &k.made.holds[h][with]
	m := kept.Load()
	if m == nil {
		t, err := k.made.kit.compile(h, with)
		kept.CompareAndSwap(nil, &ofHold{t, err})
		m = kept.Load() // the first of several goroutines is kept
	}
	return m.table, m.err
}

// remembered reports whether the tables that k remembers are those of its lists.
func (k *Kit) remembered() bool { return k.made != nil && k.equal(&k.made.kit) }

// Equal reports whether k and m list the same things in the same order.
func (k Kit) Equal(m Kit) bool { return k.equal(&m) }

func (k *Kit) equal(m *Kit) bool {
	return slices.Equal(k.Dumbbells, m.Dumbbells) && slices.Equal(k.Kettlebells, m.Kettlebells) && slices.Equal(k.AnkleWeights, m.AnkleWeights) &&
		slices.Equal(k.Bands, m.Bands) && slices.Equal(k.Seats, m.Seats) && slices.Equal(k.Steps, m.Steps) && (k.Things == nil) == (m.Things == nil) && slices.Equal(k.Things, m.Things) &&
		slices.Equal(k.Handles, m.Handles) && slices.Equal(k.Bars, m.Bars) &&
		slices.Equal(k.Plates, m.Plates) && slices.EqualFunc(k.Stacks, m.Stacks, func(a, b Stack) bool {
		return a.Name == b.Name && slices.Equal(a.Pins, b.Pins) && slices.Equal(a.AddOns, b.AddOns)
	})
}

func (k *Kit) clone() Kit {
	c := Kit{
		Dumbbells: slices.Clone(k.Dumbbells), Kettlebells: slices.Clone(k.Kettlebells), AnkleWeights: slices.Clone(k.AnkleWeights),
		Handles: slices.Clone(k.Handles), Bars: slices.Clone(k.Bars), Plates: slices.Clone(k.Plates), Stacks: slices.Clone(k.Stacks),
		Bands: slices.Clone(k.Bands), Seats: slices.Clone(k.Seats), Steps: slices.Clone(k.Steps), Things: slices.Clone(k.Things),
	}
	for i, s := range c.Stacks {
		c.Stacks[i].Pins, c.Stacks[i].AddOns = slices.Clone(s.Pins), slices.Clone(s.AddOns)
	}
	return c
}

package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// sold are sizes in which dumbbells are commonly sold, from memory.
var sold = strings.Fields("0.5 1 1.5 2 2.5 3 4 5 6 7 8 9 10 12 14 15 16 18 20 22 24 25")

// A bought is a purchase, and the exercises whose next weight it brings nearer.
type bought struct {
	Purchase equipment.Purchase `json:"purchase"`
	Nearer   []nearer           `json:"nearer"`
}

// A nearer is one exercise of one client.
type nearer struct {
	Client   string     `json:"client"`
	Exercise string     `json:"exercise"`
	From     units.Mass `json:"from"`
	To       units.Mass `json:"to"`
	Now      units.Mass `json:"now,omitzero"` // the next weight without it; 0: there is none
}

// buys lists what brings a next weight nearer, for most exercises first, then the
// lightest. A first weight, of which no strength is known, is soon outgrown and counts
// for nothing.
func buys(c rota.Class) ([]bought, error) {
	var list []bought
	for _, mass := range sold {
		marked, err := units.ParseMarked(mass + " kg")
		if err != nil {
			return nil, err
		}
		b := bought{Purchase: equipment.Purchase{Dumbbell: equipment.Dumbbell{Mass: marked, Count: 2}}}
		with, err := c.Kit.With(b.Purchase)
		if err != nil {
			return nil, err
		}
		for _, client := range c.Clients {
			for _, item := range client.Items {
				now, then, err := nextWeights(c.Kit, with, item.Hold, item.Load.Each())
				within := item.Most == 0 || then <= item.Most
				if err == nil && item.Load.Each() > 0 && (item.Finding == nil || item.Share > 0) && then > 0 && within && (now == 0 || then < now) {
					b.Nearer = append(b.Nearer, nearer{client.Name, item.Name, item.Load.Each(), then, now})
				}
			}
		}
		if len(b.Nearer) > 0 {
			list = append(list, b)
		}
	}
	slices.SortStableFunc(list, func(a, b bought) int {
		return cmp.Or(cmp.Compare(len(b.Nearer), len(a.Nearer)), cmp.Compare(a.Purchase.Mass(), b.Purchase.Mass()))
	})
	return list, nil
}

// steps says of which exercises the next weight comes nearer, those alike in one line.
func (b bought) steps() []string {
	var texts []string
	number := map[string]int{}
	for _, n := range b.Nearer {
		instead := "which is the heaviest now"
		if n.Now > 0 {
			instead = fmt.Sprintf("instead of %s", n.Now)
		}
		text := fmt.Sprintf("%s, from %s to %s, %s", n.Exercise, n.From, n.To, instead)
		if number[text]++; number[text] == 1 {
			texts = append(texts, text)
		}
	}
	for i, text := range texts {
		texts[i] = fmt.Sprintf("%s: %d of the class", text, number[text])
	}
	return texts
}

// nextWeights are the next weights above one of a hold, without and with a purchase; 0
// where there is none.
func nextWeights(kit, with equipment.Kit, hold body.Hold, each units.Mass) (now, then units.Mass, err error) {
	next := func(k equipment.Kit) (units.Mass, error) {
		table, err := k.Compile(hold)
		if err != nil {
			return 0, err
		}
		gap, ok := table.Next(each)
		if !ok {
			return 0, nil
		}
		return gap.To.Each(), nil
	}
	if now, err = next(kit); err == nil {
		then, err = next(with)
	}
	return now, then, err
}

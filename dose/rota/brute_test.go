package rota_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// taken is what a load takes out of a kit, named by kind and entry.
type taken map[string]int

// waysOf tries everything that the kit allows, without any shortcut.
func waysOf(k equipment.Kit, l equipment.Load) []taken {
	n := l.Hold().Implements()
	var ways []taken
	switch l.Hold() {
	case body.Unloaded:
		return []taken{{}}
	case body.OnStack:
		for i, s := range k.Stacks {
			for _, pin := range s.Pins {
				if pin.Mass == l.Each() {
					ways = append(ways, taken{fmt.Sprint("stack ", i): 1})
				}
			}
		}
		return ways
	case body.OnBar:
		for i, b := range k.Bars {
			ways = append(ways, withPlates(k.Plates, b.Mass.Mass, b.PlatesPerEnd, 1, l.Each(), taken{fmt.Sprint("bar ", i): 1})...)
		}
		return ways
	}
	for _, d := range k.Dumbbells {
		if d.Mass.Mass == l.Each() && d.Count >= n {
			ways = append(ways, taken{"dumbbell " + d.Mass.String(): n})
		}
	}
	for i, h := range k.Handles {
		if h.Count >= n {
			ways = append(ways, withPlates(k.Plates, h.Mass.Mass, h.PlatesPerEnd, n, l.Each(), taken{fmt.Sprint("handle ", i): n})...)
		}
	}
	return ways
}

func withPlates(stock []equipment.Plate, bare units.Mass, most, n int, each units.Mass, start taken) []taken {
	var ways []taken
	var choose func(i, plates int, mass units.Mass, so taken)
	choose = func(i, plates int, mass units.Mass, so taken) {
		if i == len(stock) {
			if mass == each && (most == 0 || plates <= most) {
				ways = append(ways, so)
			}
			return
		}
		for x := 0; 2*n*x <= stock[i].Count; x++ {
			then := taken{"plate " + stock[i].Mass.String(): 2 * n * x}
			for thing, count := range so {
				then[thing] = count
			}
			choose(i+1, plates+x, mass+2*units.Mass(x)*stock[i].Mass.Mass, then)
		}
	}
	choose(0, 0, bare, start)
	return ways
}

// stockOf counts what the kit has, by the names of taken.
func stockOf(k equipment.Kit) taken {
	stock := taken{}
	for _, d := range k.Dumbbells {
		stock["dumbbell "+d.Mass.String()] = d.Count
	}
	for i, h := range k.Handles {
		stock[fmt.Sprint("handle ", i)] = h.Count
	}
	for _, p := range k.Plates {
		stock["plate "+p.Mass.String()] = p.Count
	}
	for i := range k.Bars {
		stock[fmt.Sprint("bar ", i)] = 1
	}
	for i := range k.Stacks {
		stock[fmt.Sprint("stack ", i)] = 1
	}
	return stock
}

// allMade reports whether the kit makes all loads at once.
func allMade(ways [][]taken, stock taken) bool {
	if len(ways) == 0 {
		return true
	}
	for _, way := range ways[0] {
		left, ok := taken{}, true
		for thing, n := range stock {
			left[thing] = n - way[thing]
			ok = ok && left[thing] >= 0
		}
		if ok && allMade(ways[1:], left) {
			return true
		}
	}
	return false
}

// costOf are waiting, slots and turned pairs.
type costOf [3]int

func (a costOf) plus(b costOf) costOf { return costOf{a[0] + b[0], a[1] + b[1], a[2] + b[2]} }

// A brute works out every state of a class once: what is left to do for each
// client, as a set of bits, settles what comes after.
type brute struct {
	class  rota.Class
	ways   [][][]taken
	stock  taken
	least  map[string]costOf
	choice map[string][]int
}

func newBrute(c rota.Class) *brute {
	b := &brute{class: c, stock: stockOf(c.Kit), least: map[string]costOf{}, choice: map[string][]int{}}
	for _, client := range c.Clients {
		var ways [][]taken
		for _, item := range client.Items {
			ways = append(ways, waysOf(c.Kit, item.Load))
		}
		b.ways = append(b.ways, ways)
	}
	return b
}

// rows returns the best rota, the first in the order of names among equals.
func (b *brute) rows() (costOf, [][]int) {
	todo := make([]int, len(b.ways))
	for i, ways := range b.ways {
		todo[i] = 1<<len(ways) - 1
	}
	cost := b.solve(todo)
	var rows [][]int
	for slices.Max(todo) > 0 {
		row := b.choice[fmt.Sprint(todo)]
		rows = append(rows, row)
		todo = after(todo, row)
	}
	return cost, rows
}

func after(todo, row []int) []int {
	todo = slices.Clone(todo)
	for client, item := range row {
		if item >= 0 {
			todo[client] &^= 1 << item
		}
	}
	return todo
}

func (b *brute) solve(todo []int) costOf {
	key := fmt.Sprint(todo)
	if cost, done := b.least[key]; done || slices.Max(todo) == 0 {
		return cost
	}
	best, found := costOf{}, false
	b.eachRow(todo, func(row []int, cost costOf) {
		all := cost.plus(b.solve(after(todo, row)))
		if !found || slices.Compare(all[:], best[:]) < 0 {
			best, found, b.choice[key] = all, true, row
		}
	})
	b.least[key] = best
	return best
}

// eachRow visits everything that one slot can hold, with its cost.
func (b *brute) eachRow(todo []int, visit func(row []int, cost costOf)) {
	row := make([]int, len(todo))
	var choose func(client int, cost costOf)
	choose = func(client int, cost costOf) {
		if client == len(todo) {
			if slices.Max(row) >= 0 && allMade(b.apart(row), b.stock) {
				visit(slices.Clone(row), cost)
			}
			return
		}
		earlier := 0
		for item := range b.ways[client] {
			if todo[client]&(1<<item) != 0 {
				row[client] = item
				choose(client+1, cost.plus(costOf{0, 0, earlier}))
				earlier++
			}
		}
		row[client] = -1
		whole := todo[client] == 1<<len(b.ways[client])-1
		if todo[client] != 0 && !(whole && b.class.Staggered) {
			cost[0]++
		}
		choose(client+1, cost)
	}
	choose(0, costOf{0, 1, 0})
}

// apart returns the ways of the loads that a slot takes: of those alike every second
// one is left out where two can share.
func (b *brute) apart(row []int) [][]taken {
	var loads [][]taken
	met := map[string]int{}
	for client, item := range row {
		if item < 0 {
			continue
		}
		l := b.class.Clients[client].Items[item].Load
		key := fmt.Sprint(l.Each(), l.Hold())
		met[key]++
		if met[key]%2 == 1 || !b.shares(l) {
			loads = append(loads, b.ways[client][item])
		}
	}
	return loads
}

// shares lets two go through their sets second by second, as long and as often as any
// that take this load, and looks at the clock when both are through.
func (b *brute) shares(l equipment.Load) bool {
	slot, sets, work, rest := 0, 0, 0, 0
	for _, client := range b.class.Clients {
		for _, item := range client.Items {
			seconds, least := item.Count*4, 0
			if at, ok := item.Rest.Min(); ok {
				least = at
			}
			slot = max(slot, item.Sets*seconds+(item.Sets-1)*least)
			if item.Load.Each() == l.Each() && item.Hold == l.Hold() {
				sets, work, rest = max(sets, item.Sets), max(work, seconds), max(rest, least)
			}
		}
	}
	if !b.class.Shared || l.Hold() == body.Unloaded {
		return false
	}
	clock, free, rested := 0, 0, [2]int{}
	for set := range 2 * sets {
		who := set % 2
		begin := max(free, rested[who])
		clock = begin + work
		free, rested[who] = clock+10, clock+rest
	}
	return clock <= slot
}

// rowsOf reads a timetable as rows of items, -1 for none.
func rowsOf(t rota.Timetable) [][]int {
	rows := make([][]int, t.Slots)
	for i := range rows {
		rows[i] = slices.Repeat([]int{-1}, len(t.Clients))
	}
	for client, c := range t.Clients {
		for _, turn := range c.Turns {
			rows[turn.Slot-1][client] = turn.Item
		}
	}
	return rows
}

// On small classes nothing beats the rota, and among equals it is the one that
// the objective names.
func TestPlanAgainstExhaustiveSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawClass(t, 3, 3)
		got := plan(t, c)
		cost, rows := newBrute(c).rows()
		if got.Proof != rota.BestOfAll || got.WaitingBound != got.Waiting || got.SlotsBound != got.Slots {
			t.Fatalf("%s, bounds %d and %d, for waiting %d and %d slots", got.Proof, got.WaitingBound, got.SlotsBound, got.Waiting, got.Slots)
		}
		if have := (costOf{got.Waiting, got.Slots, got.Turned}); have != cost {
			t.Fatalf("waiting, slots, turned: %v, exhaustive search: %v", have, cost)
		}
		if have := rowsOf(got); fmt.Sprint(have) != fmt.Sprint(rows) {
			t.Fatalf("rows %v, exhaustive search %v", have, rows)
		}
	})
}

// Where the search does not end, what it states as a bound holds.
func TestPlanBoundsHold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawClass(t, 4, 3)
		cost, _ := newBrute(c).rows()
		if got := plan(t, c); got.WaitingBound > cost[0] || got.Waiting == cost[0] && got.SlotsBound > cost[1] || got.Proof != rota.BestFound && (got.Waiting != cost[0] || got.Slots != cost[1]) {
			t.Fatalf("%s: waiting %d, at least %d, slots %d, at least %d; exhaustive search %v", got.Proof, got.Waiting, got.WaitingBound, got.Slots, got.SlotsBound, cost)
		}
	})
}

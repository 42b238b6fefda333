package rota_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/week"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// fits returns the class within minutes.
func fits(t failer, c rota.Class, minutes int) rota.Fitted {
	t.Helper()
	f, err := rota.Within(c, minutes)
	if err != nil {
		t.Fatalf("Within: %v", err)
	}
	return f
}

// leastWaiting is the least waiting with which everything is done within so many slots.
func (b *brute) leastWaiting(todo []int, slots int, known map[string]int) int {
	if slices.Max(todo) == 0 {
		return 0
	}
	if slots == 0 {
		return math.MaxInt32
	}
	key := fmt.Sprint(todo, slots)
	if least, done := known[key]; done {
		return least
	}
	least := math.MaxInt32
	b.eachRow(todo, func(row []int, cost costOf) {
		least = min(least, cost[0]+b.leastWaiting(after(todo, row), slots-1, known))
	})
	known[key] = least
	return least
}

// given is what gives in a class, as Within orders it: waiting, exercises left out, and
// sets, the other way round.
type given [3]int

// bestOfAll tries every number of sets and every choice of exercises.
func bestOfAll(c rota.Class, minutes int) (best given, any bool) {
	most := 0
	var spots [][2]int
	for i, client := range c.Clients {
		for j, item := range client.Items {
			most = max(most, item.Sets)
			spots = append(spots, [2]int{i, j})
		}
	}
	for sets := 1; sets <= most; sets++ {
		for out := range 1 << len(spots) {
			small, left, whole := c, 0, true
			small.Clients = slices.Clone(c.Clients)
			for i := range small.Clients {
				small.Clients[i].Items = nil
			}
			seconds := 0
			for bit, s := range spots {
				item := c.Clients[s[0]].Items[s[1]]
				item.Sets = min(item.Sets, sets)
				if out&(1<<bit) != 0 {
					left++
					continue
				}
				small.Clients[s[0]].Items = append(small.Clients[s[0]].Items, item)
				seconds = max(seconds, int(math.Ceil(item.Seconds())))
			}
			var todo []int
			for _, client := range small.Clients {
				whole = whole && len(client.Items) > 0
				todo = append(todo, 1<<len(client.Items)-1)
			}
			slots := (minutes*60 + week.ChangeSeconds) / (seconds + week.ChangeSeconds)
			if !whole || slots == 0 {
				continue
			}
			waiting := newBrute(small).leastWaiting(todo, slots, map[string]int{})
			if got := (given{waiting, left, -sets}); waiting < math.MaxInt32 && (!any || slices.Compare(got[:], best[:]) < 0) {
				best, any = got, true
			}
		}
	}
	return best, any
}

// On small classes no choice of sets and exercises is better than what Within gives.
func TestWithinAgainstExhaustiveSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawClass(t, 3, 2)
		c.RestApart = false
		minutes := rapid.IntRange(1, 20).Draw(t, "minutes")
		want, any := bestOfAll(c, minutes)
		f, err := rota.Within(c, minutes)
		if !any {
			if !errors.Is(err, field.ErrOutOfRange) {
				t.Fatalf("nothing fits, and Within says %+v, %v", f, err)
			}
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		left := 0
		for _, client := range f.LeftOut {
			left += len(client.Turns)
		}
		got := given{f.Timetable.Waiting, left, -f.Sets}
		if got != want || !f.Proven {
			t.Fatalf("waiting, left out, sets: %v, proven %v; exhaustive search: %v", got, f.Proven, want)
		}
	})
}

// Whatever is given, it fits, nothing is made harder, and everything is kept or told.
func TestWithinKeepsItsPromises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawClass(t, 4, 3)
		minutes := rapid.IntRange(1, 40).Draw(t, "minutes")
		f, err := rota.Within(c, minutes)
		if err != nil {
			return
		}
		checkRota(t, f.Class, f.Timetable)
		if f.Timetable.Minutes > minutes {
			t.Fatalf("%d minutes for %d", f.Timetable.Minutes, minutes)
		}
		for i, client := range c.Clients {
			out := map[int]bool{}
			for _, left := range f.LeftOut {
				for _, turn := range left.Turns {
					if left.Name == client.Name {
						out[turn.Item] = true
					}
				}
			}
			kept := f.Class.Clients[i].Items
			for j, item := range client.Items {
				if out[j] {
					continue
				}
				if item.Sets = min(item.Sets, f.Sets); len(kept) == 0 || fmt.Sprint(kept[0]) != fmt.Sprint(item) {
					t.Fatalf("%s: %v of %v", client.Name, kept, item)
				}
				kept = kept[1:]
			}
			if len(kept) != 0 || len(f.Class.Clients[i].Items) == 0 {
				t.Fatalf("%s: %d exercises, %v more than before", client.Name, len(f.Class.Clients[i].Items), kept)
			}
		}
	})
}

// An invented class of eight, with six exercises each and one pair of each weight, which
// all of it at once would take over an hour, fits into 45 minutes with a warm-up of 5: sets
// give, nobody waits, and nothing is left out.
func TestWithinOfEight(t *testing.T) {
	c := hallOf(8)
	if before := plan(t, c); before.Minutes <= 40 {
		t.Fatalf("%d minutes before anything gives", before.Minutes)
	}
	f := fits(t, c, 40)
	checkRota(t, f.Class, f.Timetable)
	if f.Timetable.Minutes > 40 || f.Timetable.Waiting != 0 || len(f.LeftOut) != 0 || f.Sets != 2 || f.Whole != 3 || !f.Proven {
		t.Errorf("%d minutes, %d waiting, left out %v, %d of %d sets, proven %v", f.Timetable.Minutes, f.Timetable.Waiting, f.LeftOut, f.Sets, f.Whole, f.Proven)
	}
	if short := fits(t, c, 12); short.Timetable.Minutes > 12 || short.Timetable.Waiting != 0 || len(short.LeftOut) == 0 {
		t.Errorf("in 12 minutes: %d minutes, %d waiting, left out %v", short.Timetable.Minutes, short.Timetable.Waiting, short.LeftOut)
	}
}

// What is too many to search through gives no more than it has to: in four minutes each of four
// keeps an exercise with two sets, and would else go home, or lose a set, for nothing.
func TestWithinGivesNoMoreThanItHasTo(t *testing.T) {
	f, left := fits(t, hallOf(4), 4), 0
	for _, client := range f.LeftOut {
		left += len(client.Turns)
	}
	if left != 4*6-4 || f.Sets != 2 || f.Timetable.Waiting != 0 || f.Timetable.Minutes > 4 {
		t.Errorf("%d left out, %d sets, %d waiting, %d minutes", left, f.Sets, f.Timetable.Waiting, f.Timetable.Minutes)
	}
}

// hallOf is an invented class with six exercises each and one pair of each weight.
func hallOf(clients int) (c rota.Class) {
	c.Kit, c.Shared = pairs(1, 2, 3, 4, 5, 6, 8, 10), true
	for i := range clients {
		level := float64(i % 3)
		items := []dose.Prescription{
			turnOf("sit-to-stand", body.BothHandsOnOne, 1), turnOf("row", body.OneHand, 4+level), turnOf("press", body.OneEachHand, 2+level),
			turnOf("hinge", body.BothHandsOnOne, 1), turnOf("calf", body.Unloaded, 0), turnOf("curl", body.OneEachHand, 2+level),
		}
		for j := range items {
			items[j].Sets, items[j].Rest, items[j].OneSided = 3, units.Exactly(60), j == 1
		}
		c.Clients = append(c.Clients, rota.Client{Name: fmt.Sprint(i + 1), Items: items})
	}
	return c
}

func TestWithinErrors(t *testing.T) {
	c := twoClients()
	for _, minutes := range []int{-1, 0, 1441} {
		if _, err := rota.Within(c, minutes); !errors.Is(err, field.ErrOutOfRange) || !slices.Equal(paths(err), []string{"/minutes"}) {
			t.Errorf("%d minutes: %v", minutes, err)
		}
	}
	c.Clients[1].Items[0].Count = 16 // 64 s
	if _, err := rota.Within(c, 1); !slices.Equal(paths(err), []string{"/minutes"}) {
		t.Errorf("an exercise that is too long: %v", err)
	}
	c.Clients = nil
	if _, err := rota.Within(c, 45); !slices.Equal(paths(err), []string{"/clients"}) {
		t.Errorf("nobody: %v", err)
	}
}

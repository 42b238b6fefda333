package equipment

import (
	"testing"

	"example.org/posology/units"
	"pgregory.net/rapid"
)

// The search finds the fewest plates that a plain walk over all kinds finds, whatever
// was asked before and with whatever limit.
func TestFewestAsPlain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kinds := rapid.SliceOfNDistinct(rapid.IntRange(1, 12), 1, 4, rapid.ID).Draw(t, "kinds")
		var stock []Plate
		fewest := map[int]int{0: 0}
		for _, w := range kinds {
			n := rapid.IntRange(1, 6).Draw(t, "count")
			stock = append(stock, Plate{Mass: units.Marked{Mass: units.Mass(w) * units.Gram}, Count: n})
			next := map[int]int{}
			for sum, plates := range fewest {
				for c := range n + 1 {
					if had, made := next[sum+c*w]; !made || plates+c < had {
						next[sum+c*w] = plates + c
					}
				}
			}
			fewest = next
		}
		pl := newPlace(stock, 1, units.Kilogram)
		if pl.unit == 0 {
			pl.build()
		}
		for range 60 {
			sum := rapid.IntRange(1, int(pl.room/units.Gram)).Draw(t, "sum")
			limit := rapid.IntRange(1, 20).Draw(t, "limit")
			want, made := fewest[sum]
			if !made || want > limit {
				want = 0
			}
			if units.Mass(sum)*units.Gram%pl.unit != 0 {
				continue
			}
			if _, n := pl.fewest(int(units.Mass(sum)*units.Gram/pl.unit), limit); n != want {
				t.Fatalf("%v, %d g of at most %d: %d plates, want %d", stock, sum, limit, n, want)
			}
		}
	})
}

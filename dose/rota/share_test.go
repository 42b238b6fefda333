package rota_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Two share one weight where both get through within the slot, which is as long as the
// longest exercise: here 100 s, of somebody who lifts nothing.
func TestShare(t *testing.T) {
	for _, tt := range []struct {
		name              string
		sets, count, rest int
		waiting           int
	}{
		{"44 s each and 10 s to hand over: 98 s", 1, 11, 0, 0},
		{"48 s each and 10 s to hand over: 106 s", 1, 12, 0, 1},
		{"twice 16 s each, rests of 26 s: 84 s", 2, 4, 26, 0},
		{"twice 16 s each, rests of 42 s: 100 s", 2, 4, 42, 0},
		{"twice 16 s each, rests of 43 s: 101 s", 2, 4, 43, 1},
	} {
		long := turnOf("march", body.Unloaded, 0)
		long.Count = 25
		row := turnOf("row", body.OneHand, 4)
		row.Sets, row.Count, row.Rest = tt.sets, tt.count, units.Exactly(tt.rest)
		c := classOf(singles(4), []dose.Prescription{row}, []dose.Prescription{row}, []dose.Prescription{long})
		c.Shared = true
		table := plan(t, c)
		checkRota(t, c, table)
		if table.Waiting != tt.waiting || (table.Clients[0].Turns[0].With == "B") != (tt.waiting == 0) || has(table.Reasons, "rota.shared") != (tt.waiting == 0) {
			t.Errorf("%s: waiting %d, %+v", tt.name, table.Waiting, table.Clients)
		}
		for name, change := range map[string]func(*rota.Class){"not asked for": func(c *rota.Class) { c.Shared = false }, "rests counted apart": func(c *rota.Class) { c.RestApart = true }} {
			other := c
			change(&other)
			if got := plan(t, other); got.Waiting != 1 {
				t.Errorf("%s, %s: waiting %d", tt.name, name, got.Waiting)
			}
		}
	}
	// Where there is one for each, nobody shares.
	row := turnOf("row", body.OneHand, 4)
	row.Count = 5
	c := classOf(pairs(4), []dose.Prescription{row}, []dose.Prescription{row}, []dose.Prescription{turnOf("march", body.Unloaded, 0)})
	c.Shared = true
	if table := plan(t, c); table.Clients[0].Turns[0].With != "" || has(table.Reasons, "rota.shared") {
		t.Errorf("%+v", table.Clients)
	}
}

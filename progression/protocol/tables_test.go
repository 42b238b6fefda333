package protocol_test

import (
	"testing"

	"example.org/posology/progression/protocol"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Every printed row of the tables, from the collected rules (Knight 1979 and
// 1985 and Mann 2010, as restated), read a second time by a program: after which set, from how many
// repetitions to how many (0: no end), the change, and how the row is known.
func TestEveryPrintedRow(t *testing.T) {
	for _, r := range []struct {
		scheme    protocol.Scheme
		set       int
		from, to  int
		low, high string
		basis     evidence.Basis
	}{
		{protocol.DAPRE, 3, 0, 2, "-5 kg", "-2.5 kg", evidence.Secondary},
		{protocol.DAPRE, 3, 0, 2, "-10 lb", "-5 lb", evidence.Secondary},
		{protocol.DAPRE, 3, 3, 4, "-2.5 kg", "0 kg", evidence.FromMemory},
		{protocol.DAPRE, 3, 3, 4, "-5 lb", "0 lb", evidence.FromMemory},
		{protocol.DAPRE, 3, 5, 6, "0 kg", "0 kg", evidence.Secondary},
		{protocol.DAPRE, 3, 5, 6, "0 lb", "0 lb", evidence.Secondary},
		{protocol.DAPRE, 3, 7, 10, "2.5 kg", "5 kg", evidence.Secondary},
		{protocol.DAPRE, 3, 7, 10, "5 lb", "10 lb", evidence.Secondary},
		{protocol.DAPRE, 3, 11, 0, "5 kg", "7.5 kg", evidence.Secondary},
		{protocol.DAPRE, 3, 11, 0, "10 lb", "15 lb", evidence.Secondary},
		{protocol.DAPRE, 4, 0, 2, "-5 kg", "-2.5 kg", evidence.Secondary},
		{protocol.DAPRE, 4, 0, 2, "-10 lb", "-5 lb", evidence.Secondary},
		{protocol.DAPRE, 4, 3, 4, "0 kg", "0 kg", evidence.Secondary},
		{protocol.DAPRE, 4, 3, 4, "0 lb", "0 lb", evidence.Secondary},
		{protocol.DAPRE, 4, 5, 6, "2.5 kg", "5 kg", evidence.Secondary},
		{protocol.DAPRE, 4, 5, 6, "5 lb", "10 lb", evidence.Secondary},
		{protocol.DAPRE, 4, 7, 10, "2.5 kg", "7.5 kg", evidence.Secondary},
		{protocol.DAPRE, 4, 7, 10, "5 lb", "15 lb", evidence.Secondary},
		{protocol.DAPRE, 4, 11, 0, "5 kg", "10 kg", evidence.Secondary},
		{protocol.DAPRE, 4, 11, 0, "10 lb", "20 lb", evidence.Secondary},
		{protocol.APRE10, 3, 4, 6, "-10 lb", "-5 lb", evidence.Secondary},
		{protocol.APRE10, 3, 7, 8, "-5 lb", "0 lb", evidence.Secondary},
		{protocol.APRE10, 3, 9, 11, "0 lb", "0 lb", evidence.Secondary},
		{protocol.APRE10, 3, 12, 16, "5 lb", "10 lb", evidence.FromMemory},
		{protocol.APRE10, 3, 17, 0, "10 lb", "15 lb", evidence.FromMemory},
		{protocol.APRE6, 3, 0, 2, "-10 lb", "-5 lb", evidence.Secondary},
		{protocol.APRE6, 3, 3, 4, "-5 lb", "0 lb", evidence.Secondary},
		{protocol.APRE6, 3, 5, 7, "0 lb", "0 lb", evidence.FromMemory},
		{protocol.APRE6, 3, 8, 12, "5 lb", "10 lb", evidence.FromMemory},
		{protocol.APRE6, 3, 13, 0, "10 lb", "15 lb", evidence.FromMemory},
		{protocol.APRE3, 3, 1, 2, "-10 lb", "-5 lb", evidence.Secondary},
		{protocol.APRE3, 3, 3, 4, "0 lb", "0 lb", evidence.Secondary},
		{protocol.APRE3, 3, 5, 6, "5 lb", "10 lb", evidence.FromMemory},
		{protocol.APRE3, 3, 7, 0, "10 lb", "15 lb", evidence.Secondary},
	} {
		read := r.scheme.FourthSet
		if r.set == 4 {
			read = r.scheme.NextSession
		}
		low, high := marked(r.low), marked(r.high)
		want := units.AtLeast(r.from)
		if r.to > 0 {
			want = units.Must(units.Between(r.from, r.to))
		}
		for _, reps := range []int{r.from, max(r.from, r.to)} {
			c, err := read(low.Unit, reps)
			if err != nil || c.Reps != want || c.Low != low || c.High != high || c.Basis != r.basis {
				t.Errorf("%v after set %d, %d repetitions: %v %v to %v, %v, %v, want %+v", r.scheme, r.set, reps, c.Reps, c.Low, c.High, c.Basis, err, r)
			}
		}
	}
}

package main

import (
	"io"
	"testing"

	"example.org/posology/dose/strength"
	"example.org/posology/examples/internal/command"
)

// Whoever knows the truth, and does the count whatever it feels like, is as near to
// failure as the chance says, or less, with every kit, and most kits still work.
func TestByChance(t *testing.T) {
	chance := strength.StandardChance()
	o := order{people: 60, progress: command.NewProgress(io.Discard, "people", 60)}
	for _, k := range kits {
		toll, err := o.toll(scene{kit: k, weeks: 12}, populations[3], policies[5])
		if err != nil {
			t.Fatal(err)
		}
		if toll.Near > 100*float64(chance.Reserve) || toll.Failed > 100*float64(chance.Finish) || toll.Working < 40 {
			t.Errorf("%s: under two left %.1f, not finished %.1f, working %.1f", k.name, toll.Near, toll.Failed, toll.Working)
		}
	}
}

package main

import (
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/units"
)

// Of 20 people with one muscle-week each, 10 of them met, a draw has a binomial number of
// met ones: by tables of the binomial distribution for n = 20 and p = 0.5, P(X ≤ 5) = 0.021 and
// P(X ≤ 6) = 0.058, so that the 2.5th percentile is 6, and by symmetry the 97.5th is 14.
func TestDrawn(t *testing.T) {
	var people []held
	for i := range 20 {
		people = append(people, held{met: i % 2, short: 1 - i%2})
	}
	for seed := range uint64(20) {
		low, high := drawn(people, rand.New(rand.NewPCG(seed, 0)))
		if low < 5.0/20 || low > 6.0/20 || high < 14.0/20 || high > 15.0/20 {
			t.Errorf("seed %d: %v to %v", seed, low, high)
		}
	}
	if low, high := drawn([]held{{met: 3}, {met: 1}}, rand.New(rand.NewPCG(1, 0))); low != 1 || high != 1 {
		t.Errorf("all met: %v to %v", low, high)
	}
	if low, high := drawn([]held{{}}, rand.New(rand.NewPCG(1, 0))); low != 0 || high != 1 {
		t.Errorf("nothing known: %v to %v", low, high)
	}
}

func TestReal(t *testing.T) {
	for _, test := range []struct {
		whole units.Range[int]
		want  units.Range[float64]
	}{{units.AtLeast(10), units.AtLeast(10.0)}, {units.AtMost(9), units.AtMost(9.0)}, {units.Exactly(5), units.Exactly(5.0)}} {
		if got := real(test.whole); got != test.want {
			t.Errorf("%v becomes %v", test.whole, got)
		}
	}
}

// Twelve people train one exercise in one week each: odd ones ten sets, the others nine, one of
// theirs with a single repetition. By the catalogue a curl is direct work of one muscle and indirect of
// another: six of 24 muscle-weeks meet ten sets, and where indirect sets count in full twelve do. A low set makes no week short.
func TestPaper(t *testing.T) {
	text := []byte("who,date,exercise,weight,unit,reps,left\n")
	for i := range 12 {
		for set := range 9 + i%2 {
			reps := 10
			if set == 0 {
				reps = 1
			}
			text = fmt.Appendf(text, "p%d,2026-11-%d,biceps-curl,4,kg,%d,2\n", i, 23+set%7, reps)
		}
	}
	folder := t.TempDir()
	log, mapping := filepath.Join(folder, "log.csv"), filepath.Join(folder, "map.json")
	said := strings.Replace(string(inventedMap), `"scale"`, `"side": "both", "scale"`, 1)
	for name, text := range map[string][]byte{log: text, mapping: []byte(said)} {
		if err := os.WriteFile(name, text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	paper := func(args ...string) string {
		status, out, errs := did(context.Background(), append([]string{"-map", mapping, "-paper"}, args...)...)
		if status != 0 || errs != "" {
			t.Fatalf("%v: %s", args, errs)
		}
		return out
	}
	page := paper("-log", log, "-seed", "7")
	for i, want := range []string{"direct 12 24 6 18 0 25 %", "fractional 12 24 6 18 0 25 %", "total 12 24 12 12 0 50 %"} {
		if line := strings.Join(strings.Fields(strings.Split(page, "\n")[5+i]), " "); !strings.HasPrefix(line, want+" ") || strings.HasSuffix(line, "-") {
			t.Errorf("%q, want %q and an interval", line, want)
		}
	}
	for i := 1; i <= 2; i++ {
		if status, _, errs := did(context.Background(), "-log", log, "-map", mapping, "-out", folder, "-shard", fmt.Sprintf("%d/2", i)); status != 0 {
			t.Fatal(errs)
		}
	}
	if merged := paper("-merge", "2", "-out", folder, "-seed", "7"); merged != page {
		t.Errorf("merged:\n%s\nin one:\n%s", merged, page)
	}
	if paper("-log", log, "-seed", "7") != page || paper("-log", log, "-seed", "8") == page {
		t.Error("the seed does not decide the page")
	}
}

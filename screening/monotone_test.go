package screening_test

import (
	"errors"
	"flag"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

var (
	cases = flag.Int("cases", usualCases, "random profiles and checks for the laws of monotone safety")
	long  = flag.Bool("long", false, "ten million of them")
)

// howMany is the number of random cases of each of the two laws.
func howMany() int {
	if *long {
		return 10_000_000
	}
	return *cases
}

// allMoves are the cases from which on every move has to be made: some are rare.
const allMoves = 10_000

// TestMonotone holds the law that nothing worse ever lets more go on: each case
// is a random profile that one random move makes worse.
func TestMonotone(t *testing.T) {
	t.Parallel()
	start, r, moved := time.Now(), rand.New(rand.NewPCG(50, 1)), make([]int, len(moves))
	for i := range howMany() {
		p := randomProfile(r)
		before := assess(t, p)
		m := r.IntN(len(moves))
		if !moves[m].worse(r, &p) {
			continue
		}
		moved[m]++
		tighter(t, moves[m].name, i, before, assess(t, p))
	}
	for m, n := range moved {
		if n == 0 && howMany() >= allMoves {
			t.Errorf("the move %q was never made", moves[m].name)
		}
	}
	t.Logf("%d cases, %.0f a second", howMany(), float64(howMany())/time.Since(start).Seconds())
}

func tighter(t *testing.T, move string, i int, before, after screening.Outcome) {
	t.Helper()
	if after.Meanwhile < before.Meanwhile {
		t.Fatalf("case %d, %s: meanwhile %v became %v\nbefore %+v\nafter %+v", i, move, before.Meanwhile, after.Meanwhile, before.Findings, after.Findings)
	}
	if !after.Limits.AsTightAs(before.Limits) {
		t.Fatalf("case %d, %s: limits %+v became %+v\nbefore %+v\nafter %+v", i, move, before.Limits, after.Limits, before.Findings, after.Findings)
	}
}

// refusesCompany holds that less company than was screened lets nothing go on.
func refusesCompany(t *testing.T, c screening.Check, o screening.Outcome) {
	t.Helper()
	var at *field.Error
	if less, err := screening.Today(c, o); !errors.As(err, &at) || at.Path != "/check/setting" || !errors.Is(err, field.ErrConflict) || less.Screened() {
		t.Fatalf("%v after %v: %v", c.Setting, o.Setting, err)
	}
}

// TestTodayMonotone holds that the day's check never loosens an outcome and
// that a worse check never lets more go on.
func TestTodayMonotone(t *testing.T) {
	t.Parallel()
	start, r, moved := time.Now(), rand.New(rand.NewPCG(50, 2)), make([]int, len(checkMoves))
	for i := range howMany() {
		o := assess(t, randomProfile(r))
		c := checkFor(r, o)
		first := mustToday(t, c, o)
		tighter(t, "check", i, o, first)
		if first.Route < o.Route {
			t.Fatalf("route %v became %v", o.Route, first.Route)
		}
		m := r.IntN(len(checkMoves))
		if !checkMoves[m].worse(r, &c) {
			continue
		}
		moved[m]++
		if c.Setting < o.Setting && o.Setting > screening.Alone {
			refusesCompany(t, c, o)
			continue
		}
		worse := mustToday(t, c, o)
		tighter(t, checkMoves[m].name, i, first, worse)
		// Where something is no longer known, asking comes first.
		if worse.Route >= first.Route && worse.Plan < first.Plan && worse.Plan != screening.SettleFirst {
			t.Fatalf("%s: plan %v became %v", checkMoves[m].name, first.Plan, worse.Plan)
		}
	}
	for m, n := range moved {
		if n == 0 && howMany() >= allMoves {
			t.Errorf("the move %q was never made", checkMoves[m].name)
		}
	}
	t.Logf("%d cases, %.0f a second", howMany(), float64(howMany())/time.Since(start).Seconds())
}

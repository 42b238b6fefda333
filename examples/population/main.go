package main

import (
	"bufio"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/screening"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

const most = 1_000_000 // people

// run returns the exit status: 0, 1 if somebody is stopped by a question that
// nothing triggered, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("population", flag.ContinueOnError)
	flags.SetOutput(stderr)
	n := flags.Int("n", 10000, "how many `people`")
	seed := flags.Uint64("seed", 1, "the `seed` of the draw")
	unknown := flags.Float64("unknown", 1, "how many times as many answers are not known: 1 to 2")
	compare := flags.Bool("compare", false, "print the module's own policy beside one that follows the older lists")
	all := flags.Bool("all", false, "print every finding, rare ones too")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if !(*unknown >= 1 && *unknown <= 2) {
		fmt.Fprintln(stderr, "population: -unknown takes 1 to 2")
		return 2
	}
	if *n < 1 || *n > most || flags.NArg() > 0 {
		fmt.Fprintf(stderr, "population: -n takes 1 to %d people, and there are no other arguments\n", most)
		return 2
	}
	t, err := tallied(*n, draws(*seed, *unknown), screening.JoinPolicy{})
	other := t
	if err == nil && *compare {
		other, err = tallied(*n, draws(*seed, *unknown), older)
	}
	if err != nil {
		fmt.Fprintln(stderr, "population:", err)
		return 1
	}
	out := bufio.NewWriter(stdout)
	if *compare {
		beside(out, t, other)
	} else {
		t.print(out, *all)
	}
	if err := out.Flush(); err != nil {
		fmt.Fprintln(stderr, "population:", err)
		return 1
	}
	if t.untold+t.untrigger > 0 {
		return 1
	}
	return 0
}

// older follows the older list wherever there are two, and ADA 2016 nowhere.
var older = screening.JoinPolicy{RiskFactors: screening.OlderList, DiabetesStart: screening.OlderList}

// tallied screens n people by a policy.
func tallied(n int, d drawing, policy screening.JoinPolicy) (*tally, error) {
	t := newTally()
	for range n {
		p, o, err := d.screened(policy)
		if err == nil {
			t.add(p, o)
			err = t.untriggered(p, o)
		}
		if err != nil {
			return nil, err
		}
	}
	return t, nil
}

package main

import (
	_ "embed"
	"fmt"
	"io"

	"example.org/posology/examples/internal/command"
	"example.org/posology/screening"
)

func main() { command.Main(run) }

//go:embed doc.go
var source string

const most = 1_000_000 // people

// run returns the exit status: 0, 1 if somebody cannot be screened, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := command.New(source)
	n := flags.Int("n", 10000, "how many `people`")
	seed := flags.Uint64("seed", 1, "the `seed` of the draw")
	unknown := flags.Float64("unknown", 1, "how many times as many answers are not known: 1 to 2")
	compare := flags.Bool("compare", false, "print the module's own policy beside one that follows the older lists")
	all := flags.Bool("all", false, "print every finding, rare ones too")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	if !(*unknown >= 1 && *unknown <= 2) {
		return flags.Refuse(stderr, "-unknown %g: it takes 1 to 2", *unknown)
	}
	if *n < 1 || *n > most {
		return flags.Refuse(stderr, "-n %d: it takes 1 to %d people", *n, most)
	}
	rounds := map[bool]int{false: 1, true: 2}[*compare]
	progress := command.NewProgress(stderr, "people", rounds**n)
	t, err := tallied(*n, draws(*seed, *unknown), screening.JoinPolicy{}, progress)
	other := t
	if err == nil && *compare {
		other, err = tallied(*n, draws(*seed, *unknown), older, progress)
	}
	progress.End()
	if err != nil {
		fmt.Fprintln(stderr, "population:", err)
		return 1
	}
	if *compare {
		beside(stdout, t, other)
	} else {
		t.print(stdout, *all)
	}
	return 0
}

// older follows the older list wherever there are two, and ADA 2016 nowhere.
var older = screening.JoinPolicy{RiskFactors: screening.OlderList, DiabetesStart: screening.OlderList}

// tallied screens n people by a policy.
func tallied(n int, d drawing, policy screening.JoinPolicy, progress *command.Progress) (*tally, error) {
	t := newTally()
	for range n {
		p, o, err := d.screened(policy)
		if err != nil {
			return nil, err
		}
		t.add(p, o)
		progress.Step()
	}
	return t, nil
}

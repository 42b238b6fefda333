package main

import (
	_ "embed"
	"errors"
	"fmt"
	"io"
	"runtime"
	"strings"
	"sync"

	"example.org/posology/examples/internal/command"
	"example.org/posology/progression/simulate"
)

func main() { command.Main(run) }

//go:embed doc.go
var source string

const (
	mostPeople = 100_000
	mostWeeks  = 104
	leastWeeks = 9 // from which on the dose is looked at
)

// order is what was asked for.
type order struct {
	people, weeks int
	facts, curves bool
	kits          []kit
	populations   []population
	policies      []policy
	progress      *command.Progress
}

// run returns the exit status: 0, 1 if a run fails, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	var o order
	flags := command.New(source)
	flags.IntVar(&o.people, "people", 4, "how many `people` of each kind train with each kit")
	flags.IntVar(&o.weeks, "weeks", 24, "how many `weeks` of two visits")
	kitPart := flags.String("kit", "", "only kits whose `name` has this in it")
	people := flags.String("population", "", "only people whose `name` has this in it")
	way := flags.String("policy", "", "only policies whose `name` has this in it")
	flags.BoolVar(&o.facts, "facts", false, "print what the people are made from, too")
	flags.BoolVar(&o.curves, "curves", false, "write a table of strength week by week, with comma-separated values, of people who are seen and without an estimate")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	o.kits = named(kits, *kitPart, func(k kit) string { return k.name })
	o.populations = named(populations, *people, func(p population) string { return p.name })
	o.policies = named(policies, *way, func(p policy) string { return p.name })
	switch {
	case o.people < 1 || o.people > mostPeople:
		return flags.Refuse(stderr, "-people %d: it takes 1 to %d", o.people, mostPeople)
	case o.weeks < leastWeeks || o.weeks > mostWeeks:
		return flags.Refuse(stderr, "-weeks %d: it takes %d to %d", o.weeks, leastWeeks, mostWeeks)
	case len(o.kits) == 0:
		return flags.Refuse(stderr, "-kit %q: no kit has that in its name", *kitPart)
	case len(o.populations) == 0:
		return flags.Refuse(stderr, "-population %q: no people have that in their name", *people)
	case len(o.policies) == 0:
		return flags.Refuse(stderr, "-policy %q: no policy has that in its name", *way)
	}
	o.progress = command.NewProgress(stderr, "people", 4*len(o.kits)*len(o.populations)*len(o.policies)*o.people)
	defer o.progress.End()
	write := o.print
	if o.curves {
		write = o.writeCurves
	}
	if err := write(stdout); err != nil {
		fmt.Fprintln(stderr, "policies:", err)
		return 1
	}
	return 0
}

// named returns those whose name has a part in it.
func named[T any](list []T, part string, name func(T) string) (kept []T) {
	for _, one := range list {
		if strings.Contains(name(one), part) {
			kept = append(kept, one)
		}
	}
	return kept
}

// print prints the tables, each row when it is whole.
func (o order) print(w io.Writer) error {
	head := fmt.Sprintf(title, o.people, o.weeks) + legend
	if o.facts {
		head += "\nWhat the people are made from\n"
		for f := range simulate.Facts() {
			head += fmt.Sprintf("  %s (%s)\n", f.Value, strings.TrimSuffix(f.Basis.String()+", "+string(f.Source), ", "))
		}
	}
	_, err := io.WriteString(w, head)
	for p := range place(places) {
		for _, k := range o.kits {
			for _, estimated := range []bool{false, true} {
				if err == nil {
					err = o.table(w, scene{k, estimated, p, o.weeks})
				}
			}
		}
	}
	return err
}

// table prints the rows of one scene.
func (o order) table(w io.Writer, s scene) error {
	_, err := io.WriteString(w, s.heading()+columns)
	for _, p := range o.populations {
		for _, way := range o.policies {
			if err != nil {
				return err
			}
			toll, failed := o.toll(s, p, way)
			if failed != nil {
				return failed
			}
			_, err = io.WriteString(w, row(p.name, way.name, toll))
		}
	}
	return err
}

// toll lets everybody train, on every core, and adds up in the order of the people.
func (o order) toll(s scene, p population, way policy) (simulate.Toll, error) {
	fates, errs := make([]simulate.Fate, o.people), make([]error, o.people)
	var all sync.WaitGroup
	cores := runtime.GOMAXPROCS(0)
	for core := range cores {
		all.Go(func() {
			for i := core; i < o.people; i += cores {
				fates[i], errs[i] = s.fate(uint64(i), p, way.choose)
				o.progress.Step()
			}
		})
	}
	all.Wait()
	return simulate.Sum(fates), errors.Join(errs...)
}

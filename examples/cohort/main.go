package main

import (
	"bytes"
	"context"
	_ "embed"
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime"

	"example.org/posology/dose/volume"
	"example.org/posology/examples/internal/cohorts"
	"example.org/posology/examples/internal/command"
)

//go:embed doc.go
var source string

//go:embed map.json
var inventedMap []byte

//go:embed invented.csv
var inventedLog []byte

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	os.Exit(run(ctx, os.Args[1:], os.Stdout, os.Stderr))
}

// A job is what the flags ask for.
type job struct {
	log, mapping, out string
	shard             cohorts.Shard
	merge, workers    int
	most              float64 // repetitions in reserve of a set that counts; below 0 for any
	convention        volume.Convention
	asJSON, asPaper   bool
	guideline         string
	seed              uint64

	plan     cohorts.Plan
	progress io.Writer // nil for none
}

// run returns the exit status: 0, 1 for what cannot be read or written, 2 for bad flags.
func run(ctx context.Context, args []string, stdout, stderr io.Writer) int {
	j := job{convention: volume.FractionalSets}
	if command.Terminal(stderr) {
		j.progress = stderr
	}
	flags := command.New(source)
	flags.StringVar(&j.log, "log", "", "the CSV `file` to read; without it an invented one")
	flags.StringVar(&j.mapping, "map", "", "the JSON `file` that says which column holds what")
	flags.StringVar(&j.out, "out", "", "the `folder` to write tables to; without it they are printed")
	flags.TextVar(&j.shard, "shard", cohorts.Shard{}, "read one part of several, such as `1/4`, and keep it in the folder")
	flags.IntVar(&j.merge, "merge", 0, "put so many `parts` that lie in the folder together")
	flags.IntVar(&j.workers, "workers", min(runtime.GOMAXPROCS(0), 256), "how many `parts` of the log are read at once")
	flags.Float64Var(&j.most, "reserve", -1, "most repetitions in `reserve` of a set that counts; without it every set does")
	flags.TextVar(&j.convention, "convention", volume.FractionalSets, "how indirect sets count: direct, fractional or total")
	flags.BoolVar(&j.asJSON, "json", false, "print the tables as JSON")
	flags.BoolVar(&j.asPaper, "paper", false, "print how many weeks meet a recommendation, by convention, and how to cite it")
	flags.StringVar(&j.guideline, "guideline", "acsm2026-hypertrophy", "the `ID` of a recommendation on weekly sets, for -paper")
	flags.Uint64Var(&j.seed, "seed", 1, "what the draws of -paper begin with")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	if text := j.wrong(); text != "" {
		return flags.Refuse(stderr, "%s", text)
	}
	if err := j.do(ctx, stdout); err != nil {
		fmt.Fprintln(stderr, "cohort:", err)
		return 1
	}
	return 0
}

// wrong says which flags do not go together.
func (j *job) wrong() string {
	parts := j.shard.Of > 0 || j.merge > 0
	switch {
	case j.log != "" && j.mapping == "", j.log == "" && j.mapping != "" && j.merge == 0:
		return "-log and -map go together"
	case j.shard.Of > 0 && j.merge > 0, parts && j.out == "", parts && j.asJSON:
		return "-shard and -merge take a folder by -out, and neither goes with the other or with -json"
	case j.asPaper && (j.asJSON || j.shard.Of > 0 || j.out != "" && j.merge == 0):
		return "-paper prints a page of its own, of a log or with -merge"
	case j.out != "" && j.asJSON:
		return "-json prints, and -out writes files: one of the two"
	}
	return ""
}

func (j *job) do(ctx context.Context, stdout io.Writer) error {
	if err := j.prepare(); err != nil {
		return err
	}
	sums, err := j.sums(ctx)
	switch {
	case err != nil:
		return err
	case j.shard.Of > 0:
		return j.keep(ctx, sums)
	case j.asPaper:
		return j.paper(stdout, sums)
	case j.out != "":
		return sums.Write(ctx, j.out, j.convention)
	case j.asJSON:
		return j.json(stdout, sums)
	}
	return j.print(stdout, sums)
}

func (j *job) sums(ctx context.Context) (cohorts.Sums, error) {
	switch {
	case j.merge > 0:
		return j.merged()
	case j.log == "":
		return j.plan.Read(ctx, bytes.NewReader(inventedLog), int64(len(inventedLog)), j.shard, j.workers, j.progress)
	}
	return j.plan.ReadFile(ctx, j.log, j.shard, j.workers, j.progress)
}

// prepare reads the map.
func (j *job) prepare() error {
	text := inventedMap
	if j.mapping != "" {
		var err error
		if text, err = os.ReadFile(j.mapping); err != nil {
			return err
		}
	}
	var err error
	j.plan, err = cohorts.NewPlan(text, j.most)
	return err
}

// Command beam adds up a log of many people as examples/cohort does, with Apache Beam: every
// shard is read on its own, and their sums are put together, in whatever order and grouping
// the engine likes. The tables are those of examples/cohort, to the byte.
//
//	go run . -log FILE -map FILE -out FOLDER [-shards 8]
//
// It is a module of its own, since Beam brings many others. It runs on Beam's local runner; for a
// cluster, put that one's runner in its place, and log, map and folder where all its machines
// see them.
package main

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"

	"example.org/posology/dose/volume"
	"example.org/posology/examples/internal/cohorts"
	"github.com/apache/beam/sdks/v2/go/pkg/beam"
	"github.com/apache/beam/sdks/v2/go/pkg/beam/register"
	"github.com/apache/beam/sdks/v2/go/pkg/beam/runners/prism"
)

func init() {
	register.DoFn2x2[context.Context, int, part, error](&mapper{})
	register.Combiner1[part](&reducer{})
	register.DoFn2x1[context.Context, part, error](&writer{})
}

func main() {
	log := flag.String("log", "", "the CSV `file` to read, without double quotes")
	mapping := flag.String("map", "", "the JSON `file` that says which column holds what, as for examples/cohort")
	out := flag.String("out", "", "the `folder` to write tables to")
	shards := flag.Int("shards", 8, "how many `parts` the log is read in")
	flag.Parse()
	beam.Init()
	if err := run(context.Background(), *log, *mapping, *out, *shards); err != nil {
		fmt.Fprintln(os.Stderr, "beam:", err)
		os.Exit(1)
	}
}

func run(ctx context.Context, log, mapping, out string, shards int) error {
	text, err := os.ReadFile(mapping)
	if err != nil {
		return err
	}
	counts := counting{Map: text}
	if _, err := counts.plan(); err != nil {
		return err
	}
	if err := (&cohorts.Shard{}).UnmarshalText(fmt.Appendf(nil, "1/%d", shards)); err != nil {
		return err
	}
	numbers := make([]int, shards)
	for i := range numbers {
		numbers[i] = i + 1
	}
	p, s := beam.NewPipelineWithRoot()
	parts := beam.ParDo(s, &mapper{counts, log, shards}, beam.Reshuffle(s, beam.CreateList(s, numbers)))
	beam.ParDo0(s, &writer{counts, out}, beam.Combine(s, &reducer{counts}, parts))
	_, err = prism.Execute(ctx, p)
	return err
}

// A part is what goes from machine to machine.
type part struct{ Sums, Rejects []byte }

// counting packs and unpacks parts. A function of a pipeline travels as its exported fields.
type counting struct{ Map []byte }

func (c counting) plan() (cohorts.Plan, error) { return cohorts.NewPlan(c.Map, -1) }

func (c counting) unpacked(p part) (cohorts.Sums, error) {
	plan, err := c.plan()
	if err != nil {
		return cohorts.Sums{}, err
	}
	return plan.Decode(bytes.NewReader(p.Sums), bytes.NewReader(p.Rejects))
}

func packed(s cohorts.Sums) (part, error) {
	var sums, rejects bytes.Buffer
	err := s.Encode(&sums, &rejects)
	return part{sums.Bytes(), rejects.Bytes()}, err
}

type mapper struct {
	Counting counting
	Log      string
	Shards   int
}

// ProcessElement reads a shard.
func (m *mapper) ProcessElement(ctx context.Context, number int) (part, error) {
	plan, err := m.Counting.plan()
	if err != nil {
		return part{}, err
	}
	sums, err := plan.ReadFile(ctx, m.Log, cohorts.Shard{Number: number, Of: m.Shards}, 1, nil)
	if err != nil {
		return part{}, err
	}
	return packed(sums)
}

type reducer struct{ Counting counting }

// MergeAccumulators puts two parts together.
func (r *reducer) MergeAccumulators(a, b part) (part, error) {
	sums, err := r.Counting.unpacked(a)
	if err != nil {
		return part{}, err
	}
	more, err := r.Counting.unpacked(b)
	if err == nil {
		err = sums.Merge(more)
	}
	if err != nil {
		return part{}, err
	}
	return packed(sums)
}

type writer struct {
	Counting counting
	Folder   string
}

// ProcessElement writes the tables.
func (w *writer) ProcessElement(ctx context.Context, p part) error {
	sums, err := w.Counting.unpacked(p)
	if err != nil {
		return err
	}
	return sums.Write(ctx, w.Folder, volume.FractionalSets)
}

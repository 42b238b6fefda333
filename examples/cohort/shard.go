package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"example.org/posology/examples/internal/cohorts"
)

// kept names the files of a shard.
func (j *job) kept(number int) (sums, rejects string) {
	return filepath.Join(j.out, fmt.Sprintf("shard-%d.cohort", number)), filepath.Join(j.out, fmt.Sprintf("shard-%d.rejects.csv", number))
}

// keep writes the shard.
func (j *job) keep(ctx context.Context, s cohorts.Sums) error {
	sums, rejects := j.kept(j.shard.Number)
	return errors.Join(
		cohorts.Whole(ctx, sums, func(w io.Writer) error { return s.Encode(w, io.Discard) }),
		cohorts.Whole(ctx, rejects, func(w io.Writer) error { return s.Encode(io.Discard, w) }))
}

// merged puts the shards together.
func (j *job) merged() (cohorts.Sums, error) {
	sum := cohorts.Sums{Cohort: j.plan.Study.NewCohort()}
	for number := 1; number <= j.merge; number++ {
		part, err := j.load(j.kept(number))
		if err == nil {
			err = sum.Merge(part)
		}
		if err != nil {
			return cohorts.Sums{}, fmt.Errorf("shard %d: %w", number, err)
		}
	}
	return sum, nil
}

func (j *job) load(sums, rejects string) (cohorts.Sums, error) {
	f, err := os.Open(sums)
	if err != nil {
		return cohorts.Sums{}, err
	}
	defer f.Close()
	g, err := os.Open(rejects)
	if err != nil {
		return cohorts.Sums{}, err
	}
	defer g.Close()
	return j.plan.Decode(f, g)
}

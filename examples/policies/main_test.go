package main

import (
	"bytes"
	"errors"
	"io"
	"math"
	"runtime"
	"strings"
	"testing"

	"example.org/posology/examples/internal/command"
	"example.org/posology/testdata/programtest"
)

func TestTable(t *testing.T) {
	status, got, errs := programtest.Run(run, "-people", "3", "-weeks", "12", "-facts")
	if status != 0 || errs != "" {
		t.Fatalf("status %d, %s", status, errs)
	}
	programtest.Golden(t, "golden.txt", got)
}

// The table is the same on one core as on many.
func TestCores(t *testing.T) {
	args := []string{"-people", "5", "-weeks", "9", "-kit", "2, 4", "-population", "mixed"}
	_, many, _ := programtest.Run(run, args...)
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
	if _, one, _ := programtest.Run(run, args...); one != many || strings.Count(one, "\nmixed") != 2*places*len(policies) {
		t.Errorf("one core:\n%s\nmany:\n%s", one, many)
	}
}

func TestFlags(t *testing.T) {
	for _, args := range [][]string{
		{"-people", "0"}, {"-people", "100001"}, {"-weeks", "8"}, {"-weeks", "105"}, {"-people", "x"}, {"extra"},
		{"-kit", "none"}, {"-population", "nobody"}, {"-policy", "none"},
	} {
		if status, out, errs := programtest.Run(run, args...); status != 2 || errs == "" || out != "" {
			t.Errorf("%v: status %d, %q, %q", args, status, out, errs)
		}
	}
}

// A writer that is full ends the program.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no room") }

func TestWriteFails(t *testing.T) {
	var errs bytes.Buffer
	if status := run([]string{"-people", "1"}, full{}, &errs); status != 1 || !strings.Contains(errs.String(), "no room") {
		t.Errorf("status %d, %s", status, errs.String())
	}
}

// The curves that examples/charts draws are what this program writes, and end where the
// tables do.
func TestCurves(t *testing.T) {
	var out, errs bytes.Buffer
	if status := run([]string{"-curves", "-people", "40", "-kit", ",", "-population", "typical"}, &out, &errs); status != 0 {
		t.Fatal(errs.String())
	}
	programtest.Golden(t, "../../charts/policies.csv", out.String())
	o := order{people: 5, weeks: 12, progress: command.NewProgress(io.Discard, "people", 5)}
	s := scene{kit: kits[1], weeks: 12}
	points, err := o.curve(s, populations[0], policies[0])
	if err != nil {
		t.Fatal(err)
	}
	toll, err := o.toll(s, populations[0], policies[0])
	last := points[len(points)-1]
	if got := 100*last.strength/5 - 100; err != nil || math.Abs(got-toll.Gain) > 0.5 {
		t.Errorf("gain %v, want %v within the last visit's (%v)", got, toll.Gain, err)
	}
	if got := 100 * float64(last.near) / float64(last.sets); math.Abs(got-toll.Near) > 0.01 {
		t.Errorf("near %v, want %v", got, toll.Near)
	}
}

package main

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"github.com/parquet-go/parquet-go"
)

// every returns sets with every scale of effort, side, hold and way of stating a load, with
// what may be missing and without it.
func every() (sets []setlog.Set) {
	efforts := []units.Effort{{}, units.Must(units.InReserve(0)), units.Must(units.InReserve(2.5)), units.Must(units.RPE(8.5))}
	for s := range units.Scales() {
		efforts = append(efforts, units.Must(units.NewEffort(s, 10)))
	}
	days := []units.Day{0, 1, epoch - 1, epoch, units.Must(units.NewDay(2026, 11, 30))}
	for i, effort := range efforts {
		for hold := range body.Holds() {
			for side := range body.Sides() {
				s := setlog.Set{Key: body.Key([]string{"", "p1", "ä, \"b\"\n"}[i%3]), Day: days[(i+int(hold))%len(days)], Exercise: "biceps-curl",
					Side: side, Hold: hold, Load: units.Mass(i)*2*units.Pound + 2, Reps: 1 + i*100, Effort: effort, RepSeconds: float64(i%3) * 1.7}
				switch hold {
				case body.OneEachHand:
					s.Stated = []body.Stated{body.PerHand, body.Total}[i%2]
				case body.Unloaded, body.OnBand:
					s.Load = 0
				}
				sets = append(sets, s)
			}
		}
	}
	return sets
}

func TestReadsBackEqual(t *testing.T) {
	sets := slices.Repeat(every(), 20) // more than a batch
	for _, some := range [][]setlog.Set{nil, sets[:1], sets[:batch], sets} {
		var file bytes.Buffer
		if err := write(&file, some); err != nil {
			t.Fatal(err)
		}
		back, err := readSets(bytes.NewReader(file.Bytes()), int64(file.Len()))
		if err != nil || !slices.Equal(back, some) {
			t.Errorf("%d sets read back as %d, not as they were (%v)", len(some), len(back), err)
		}
	}
	for _, s := range sets {
		if err := s.Validate(); err != nil {
			t.Fatal(err)
		}
	}
}

// Others read the columns too: a date of the format counts days from 1970-01-01, of which
// 2000-01-01 is the 10,957th (30 years of 365 days and 7 leap days).
func TestColumns(t *testing.T) {
	s := every()[0]
	s.Day, s.Load, s.Effort = units.Must(units.NewDay(2000, 1, 1)), units.Kilogram, units.Must(units.InReserve(0))
	r := rowOf(s)
	if *r.Day != 30*365+7 || r.LoadNG != 1e12 || *r.Effort != 0 || *r.EffortScale != "rir" || r.Stated != nil || r.RepSeconds != nil {
		t.Errorf("%+v", r)
	}
	day, _ := parquet.SchemaOf(row{}).Lookup("day")
	if got := day.Node.Type().String(); got != "DATE" || !day.Node.Optional() {
		t.Errorf("day is %s, optional: %v", got, day.Node.Optional())
	}
}

// A file that others wrote is checked, set by set, and so is one that is cut off.
func TestRefused(t *testing.T) {
	good := rowOf(every()[0])
	for says, change := range map[string]func(*row){
		"/reps":  func(r *row) { r.Reps = 0 },
		"/day":   func(r *row) { r.Day = given(int32(1<<31-1), true) },
		"hold":   func(r *row) { r.Hold = "by the teeth" },
		"effort": func(r *row) { r.Effort = given(2.0, true) },
		"rpe 11": func(r *row) { r.Effort, r.EffortScale = given(11.0, true), given("rpe", true) },
	} {
		bad := good
		change(&bad)
		var file bytes.Buffer
		if err := parquet.Write(&file, []row{good, bad}); err != nil {
			t.Fatal(err)
		}
		if _, err := readSets(bytes.NewReader(file.Bytes()), int64(file.Len())); err == nil || !strings.Contains(err.Error(), says) || !strings.Contains(err.Error(), "set 2") {
			t.Errorf("%s: %v", says, err)
		}
		if _, err := readSets(bytes.NewReader(file.Bytes()[:file.Len()/2]), int64(file.Len()/2)); err == nil {
			t.Error("half a file is read")
		}
	}
}

func TestProgram(t *testing.T) {
	folder := t.TempDir()
	mapping, log, out := filepath.Join("..", "map.json"), filepath.Join("..", "invented.csv"), filepath.Join(folder, "sets.parquet")
	var page bytes.Buffer
	if err := run(&page, log, mapping, out); err != nil {
		t.Fatal(err)
	}
	if want := "6 sets were written and read back equal; 5 rows could not be read.\n"; page.String() != want {
		t.Errorf("%q, want %q", page.String(), want)
	}
	if err := run(&page, mapping, mapping, filepath.Join(folder, "none")); err == nil {
		t.Error("a map is read as a log")
	}
	if left, err := os.ReadDir(folder); err != nil || len(left) != 1 {
		t.Errorf("%v, %v", left, err)
	}
}

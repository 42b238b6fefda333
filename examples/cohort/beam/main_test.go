package main

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/apache/beam/sdks/v2/go/pkg/beam"
)

func TestMain(m *testing.M) {
	flag.Parse()
	beam.Init()
	m.Run()
}

var mapping = filepath.Join("..", "map.json")

// invented writes a log of invented people and sets, every eleventh row bad, and its map.
func invented(t *testing.T, folder string) (log, said string) {
	t.Helper()
	text := []byte("who,date,exercise,weight,unit,reps,left\n")
	for i := range 2000 {
		reps := fmt.Sprint(1 + i%12)
		if i%11 == 7 {
			reps = "x"
		}
		name := []string{"biceps-curl", "goblet-squat", "one-arm-dumbbell-row"}[i%3]
		text = fmt.Appendf(text, "p%d,2026-%02d-%02d,%s,%d,kg,%s,%d\n", i%17, 1+i%12, 1+i%28, name, 2+i%9, reps, i%5)
	}
	asked, err := os.ReadFile(mapping)
	if err != nil {
		t.Fatal(err)
	}
	asked = bytes.Replace(asked, []byte(`"scale"`), []byte(`"side": "both", "scale"`), 1)
	log, said = filepath.Join(folder, "log.csv"), filepath.Join(folder, "map.json")
	for name, text := range map[string][]byte{log: text, said: asked} {
		if err := os.WriteFile(name, text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return log, said
}

// The tables are those of the plain program to the byte, however many shards there are.
func TestSameBytes(t *testing.T) {
	log, said := invented(t, t.TempDir())
	plain := t.TempDir()
	cmd := exec.Command("go", "run", "example.org/posology/examples/cohort", "-log", log, "-map", said, "-out", plain)
	if text, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	for _, shards := range []int{1, 4, 9} {
		out := t.TempDir()
		if err := run(context.Background(), log, said, out, shards); err != nil {
			t.Fatal(err)
		}
		for name, lines := range map[string]int{"weekly.csv": 1000, "exercises.csv": 400, "estimates.csv": 35, "rejects.csv": 182} {
			want, err := os.ReadFile(filepath.Join(plain, name))
			if err != nil || bytes.Count(want, []byte("\n")) < lines {
				t.Fatalf("%s of the plain program: %v, %d lines", name, err, bytes.Count(want, []byte("\n")))
			}
			if got, err := os.ReadFile(filepath.Join(out, name)); err != nil || !bytes.Equal(got, want) {
				t.Errorf("%d shards: %s differs (%v)", shards, name, err)
			}
		}
	}
}

// What cannot be read, counted or cut ends in an error and leaves no table.
func TestRefused(t *testing.T) {
	log, said := invented(t, t.TempDir())
	quoted := filepath.Join(t.TempDir(), "quoted.csv")
	if err := os.WriteFile(quoted, []byte("who,date\n\"p1\",2026-11-30\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	for name, test := range map[string]struct {
		log, mapping string
		shards       int
	}{
		"no log": {"nowhere.csv", said, 2}, "no map": {log, "nowhere.json", 2}, "a log for a map": {log, log, 2},
		"no shards": {log, said, 0}, "quotes": {quoted, said, 2},
	} {
		out := t.TempDir()
		err := run(context.Background(), test.log, test.mapping, out, test.shards)
		if left, _ := os.ReadDir(out); err == nil || len(left) > 0 {
			t.Errorf("%s: %v, %d files", name, err, len(left))
		}
	}
}

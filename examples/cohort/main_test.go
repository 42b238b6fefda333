package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.org/posology/examples/internal/cohorts"
	"example.org/posology/testdata/programtest"
)

// did runs the program; it returns its status and what it printed.
func did(ctx context.Context, args ...string) (status int, out, errs string) {
	var o, e bytes.Buffer
	status = run(ctx, args, &o, &e)
	return status, o.String(), e.String()
}

func TestPages(t *testing.T) {
	for name, args := range map[string][]string{"page.txt": nil, "page.json": {"-json"}, "paper.txt": {"-paper"}} {
		status, out, errs := did(context.Background(), args...)
		if status != 0 || errs != "" {
			t.Errorf("%v: status %d, %s", args, status, errs)
		}
		programtest.Golden(t, name, out)
	}
}

// folder keeps an invented log of some hundred rows, some bad, with its map; without quotes unless asked.
func folder(t *testing.T, quote bool) (log, mapping string) {
	t.Helper()
	text := []byte("who,date,exercise,weight,unit,reps,left\r\n")
	for i := range 120 {
		reps := fmt.Sprint(1 + i%12)
		if i%11 == 7 {
			reps = "x"
		}
		name := []string{"biceps-curl", "goblet-squat", "one-arm-dumbbell-row"}[i%3]
		if quote && i == 100 {
			name = `"goblet-squat"`
		}
		text = fmt.Appendf(text, "p%d,2026-%02d-%02d,%s,%d,kg,%s,%d\n", i%7, 1+i%12, 1+i%28, name, 2+i%9, reps, i%5)
	}
	log, mapping = filepath.Join(t.TempDir(), "log.csv"), filepath.Join(t.TempDir(), "map.json")
	if err := os.WriteFile(log, text, 0o644); err != nil {
		t.Fatal(err)
	}
	said := bytes.Replace(inventedMap, []byte(`"scale"`), []byte(`"side": "both", "scale"`), 1)
	if err := os.WriteFile(mapping, said, 0o644); err != nil {
		t.Fatal(err)
	}
	return log, mapping
}

// files returns what lies in a folder.
func files(t *testing.T, folder string) map[string]string {
	t.Helper()
	list, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]string{}
	for _, f := range list {
		text, err := os.ReadFile(filepath.Join(folder, f.Name()))
		if err != nil {
			t.Fatal(err)
		}
		all[f.Name()] = string(text)
	}
	return all
}

// However many shards and workers, the tables are the same to the byte.
func TestShards(t *testing.T) {
	log, mapping := folder(t, false)
	one := t.TempDir()
	if status, out, errs := did(context.Background(), "-log", log, "-map", mapping, "-out", one); status != 0 || out+errs != "" {
		t.Fatalf("status %d, %s%s", status, out, errs)
	}
	want := files(t, one)
	if len(want) != 4 || strings.Count(want["rejects.csv"], "\n") != 12 || strings.Count(want["weekly.csv"], "\n") < 60 {
		t.Fatalf("%d files, rejects:\n%s", len(want), want["rejects.csv"])
	}
	for _, n := range []int{1, 2, 4, 50, 300} {
		out := t.TempDir()
		for i := range n {
			if status, _, errs := did(context.Background(), "-log", log, "-map", mapping, "-out", out, "-shard", fmt.Sprintf("%d/%d", i+1, n), "-workers", "3"); status != 0 {
				t.Fatalf("shard %d of %d: %s", i+1, n, errs)
			}
		}
		if status, _, errs := did(context.Background(), "-map", mapping, "-out", out, "-merge", fmt.Sprint(n)); status != 0 {
			t.Fatalf("%d shards: %s", n, errs)
		}
		got := files(t, out)
		for name, text := range want {
			if got[name] != text {
				t.Errorf("%d shards: %s differs", n, name)
			}
		}
	}
}

// An interrupt, or a log that ends in nothing, leaves every file as it was.
func TestNoHalfFiles(t *testing.T) {
	log, mapping := folder(t, true)
	out := t.TempDir()
	old := map[string]string{"weekly.csv": "old"}
	if err := os.WriteFile(filepath.Join(out, "weekly.csv"), []byte("old"), 0o644); err != nil {
		t.Fatal(err)
	}
	stopped, stop := context.WithCancel(context.Background())
	stop()
	for _, test := range []struct {
		ctx    context.Context
		args   []string
		status int
		says   string
	}{
		{stopped, []string{"-log", log, "-map", mapping, "-out", out}, 1, "canceled"},
		{context.Background(), []string{"-log", out, "-map", mapping, "-out", out}, 1, "directory"},
		{context.Background(), []string{"-log", log, "-map", log, "-out", out}, 1, "the map cannot be used"},
		{context.Background(), []string{"-log", log, "-map", mapping, "-out", out, "-shard", "2/2"}, 1, "quotes"},
		{context.Background(), []string{"-map", mapping, "-out", out, "-merge", "2"}, 1, "shard-1"},
		{context.Background(), []string{"-log", log}, 2, "-log and -map"},
		{context.Background(), []string{"-log", log, "-map", mapping, "-shard", "1/2"}, 2, "-out"},
		{context.Background(), []string{"-shard", "3/2"}, 2, "1/4"},
		{context.Background(), []string{"-out", out, "-json"}, 2, "-json"},
		{context.Background(), []string{"-paper", "-json"}, 2, "-paper"},
		{context.Background(), []string{"-paper", "-out", out}, 2, "-paper"},
		{context.Background(), []string{"-paper", "-guideline", "who2020-older"}, 1, "no weekly sets"},
		{context.Background(), []string{"-paper", "-guideline", "none"}, 1, "none"},
		{context.Background(), []string{"x"}, 2, "one argument too many"},
	} {
		status, _, errs := did(test.ctx, test.args...)
		if status != test.status || !strings.Contains(errs, test.says) {
			t.Errorf("%v: status %d, %s", test.args, status, errs)
		}
		if got := files(t, out); !slices.Equal(keys(got), keys(old)) || got["weekly.csv"] != "old" {
			t.Errorf("%v leaves %v", test.args, keys(got))
		}
	}
}

func keys(m map[string]string) (list []string) {
	for name := range m {
		list = append(list, name)
	}
	slices.Sort(list)
	return list
}

// A page can be interrupted while it is written.
func TestInterruptedWhileWriting(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	name := filepath.Join(t.TempDir(), "x")
	err := cohorts.Whole(ctx, name, func(w io.Writer) error {
		stop()
		_, err := w.Write([]byte("half"))
		return err
	})
	if got := files(t, filepath.Dir(name)); err == nil || len(got) != 0 {
		t.Errorf("%v, %v", err, got)
	}
}

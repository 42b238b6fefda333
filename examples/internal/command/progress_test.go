package command

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"
)

// On a terminal a run says in one line how far it is, and takes the line away. A machine that
// stands still between two steps is no failure: it is tried again.
func TestProgressOnATerminal(t *testing.T) {
	var got string
	for range 20 {
		var out bytes.Buffer
		p := &Progress{w: &out, what: "people", all: 4} // said last in the year 1
		begun := time.Now()
		p.Step()
		p.Step() // too soon after the first to be said
		p.last = time.Time{}
		var all sync.WaitGroup
		for range 2 {
			all.Go(p.Step)
		}
		all.Wait()
		quick := time.Since(begun) < between
		p.End()
		if got = out.String(); quick {
			break
		}
	}
	if want := "\rpeople: 1 of 4, 25 %\rpeople: 3 of 4, 75 %\r\033[K"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// A pipe, a file and a buffer get nothing of it.
func TestProgressElsewhere(t *testing.T) {
	name := filepath.Join(t.TempDir(), "out")
	file, err := os.Create(name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	var buffer bytes.Buffer
	for range 2 {
		a, b := NewProgress(file, "people", 1), NewProgress(&buffer, "people", 1)
		for _, p := range []*Progress{a, b} {
			p.last = time.Time{}
			p.Step()
			p.End()
		}
	}
	read, write, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer read.Close()
	defer write.Close()
	text, err := os.ReadFile(name)
	if len(text)+buffer.Len() > 0 || err != nil || Terminal(write) {
		t.Errorf("a file got %q, a buffer %q, %v; a pipe counts as a terminal: %v", text, buffer.String(), err, Terminal(write))
	}
}

// Flags may stand behind arguments, as people type them.
func TestFlagsBehindArguments(t *testing.T) {
	c := New("// Command walk goes.\npackage main\n")
	day := c.String("day", "", "a day")
	given, status, goOn := c.Parse(strings.Fields("log -day 2027-01-05 ann"), nil, nil, "STEP", "[NAME]")
	if !goOn || status != OK || *day != "2027-01-05" || strings.Join(given, " ") != "log ann" {
		t.Errorf("%v, %d, %v, %q", given, status, goOn, *day)
	}
}

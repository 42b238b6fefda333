package programtest

import (
	"bytes"
	"flag"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// Run calls a program and returns what it ends with and what it prints.
func Run(program func(args []string, stdout, stderr io.Writer) int, args ...string) (status int, stdout, stderr string) {
	var out, errs bytes.Buffer
	status = program(args, &out, &errs)
	return status, out.String(), errs.String()
}

var update = flag.Bool("update", false, "rewrite the golden files, which are our own output and no published figures")

// Golden holds a program's output against a file of testdata, or rewrites it.
func Golden(t testing.TB, name, got string) {
	t.Helper()
	name = filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("differs from %s (-update rewrites it):\n%s", name, diff)
	}
}

// Edited writes text with the first old replaced by new to a file of that name in
// a directory that goes with the test, and returns its path. A text without old
// fails the test.
func Edited(t testing.TB, name string, text []byte, old, new string) string {
	t.Helper()
	if !strings.Contains(string(text), old) {
		t.Fatalf("%s has no %s", name, old)
	}
	file := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(file, []byte(strings.Replace(string(text), old, new, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	return file
}

// Decoded is a record that has to be whole.
func Decoded(t testing.TB, data []byte) record.Record {
	t.Helper()
	r, err := record.Decode(data, field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

const killedAt = "KILLED_AT"

// Killable is the TestMain of a package whose tests kill a process. A process that [Killed]
// made does the task, and dies at that change of the disk; reached is what is called at each.
func Killable(m *testing.M, reached *func(string), task func() int) {
	at, _ := strconv.Atoi(os.Getenv(killedAt))
	if at == 0 {
		os.Exit(m.Run())
	}
	n := 0
	*reached = func(string) {
		if n++; n == at {
			self, _ := os.FindProcess(os.Getpid())
			_ = self.Kill()
			select {} // until it is dead
		}
	}
	os.Exit(task())
}

// Killed is a process that does the task, with more of an environment, and dies at a change
// of the disk, the first is 1.
func Killed(t testing.TB, at int, environment ...string) *exec.Cmd {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(self)
	cmd.Env = append(append(os.Environ(), fmt.Sprintf("%s=%d", killedAt, at)), environment...)
	return cmd
}

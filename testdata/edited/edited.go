package edited

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// File writes text with the first old replaced by new to a file of that name in
// a directory that goes with the test, and returns its path. A text without old
// fails the test.
func File(t testing.TB, name string, text []byte, old, new string) string {
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

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/testdata/programtest"
)

// At a review the pages name what is planned for, and that it is tested again; the file
// says with which test.
func TestTasksAtAReview(t *testing.T) {
	data, err := os.ReadFile("../../progression/record/testdata/version1/home-review.json")
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "case.json")
	text := strings.Replace(string(data), `"task":`, `"tasks": ["working in the garden"], "task":`, 1)
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	for reader, want := range map[string][]string{
		"client": {"We plan for: working", "At the start, and each time we look at the plan"},
		"file":   {"We plan for: working", "For working in the garden: 30-s chair stand"},
	} {
		status, got, errs := programtest.Run(run, "-for", reader, "-case", file)
		flat := strings.Join(strings.Fields(got), " ")
		for _, w := range want {
			if status != 0 || !strings.Contains(flat, w) {
				t.Errorf("%s: status %d %s, no %q in\n%s", reader, status, errs, w, got)
			}
		}
	}
}

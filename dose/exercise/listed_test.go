package exercise

import (
	"strings"
	"testing"
)

// A list that cannot be read is an error here, so that it never is one for a caller.
func TestReadListings(t *testing.T) {
	all, err := readListings(musclesCSV)
	if err != nil || len(all) != 90 {
		t.Fatalf("%d exercises, want 90: %v", len(all), err)
	}
	good := muscleColumns + "\nsquat,squat,bodyweight,bilateral,quadriceps,prime,A study,text,study2000\n"
	if _, err := readListings(good); err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string][2]string{
		"columns": {"source_id", "source_key"}, "muscle": {"quadriceps", "quadrisceps"}, "role": {"prime", "chief"},
		"known": {"text", "seen"}, "a field too few": {",text", ""}, "quote": {"A study", "A \"study"},
	} {
		if _, err := readListings(strings.Replace(good, change[0], change[1], 1)); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := readListings(""); err == nil {
		t.Error("nothing: no error")
	}
}

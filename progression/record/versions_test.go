package record_test

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// The fixture of the present version is a review with what was decided on it.
func TestPresentVersion(t *testing.T) {
	if *update {
		r := read(t, review)
		r.Kit.Kettlebells, r.Kit.Bands = []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("24 kg")), Count: 1}}, []string{"soft", "wide"}
		r.Kit.AnkleWeights = []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("1 kg")), Count: 2}}
		r.Kit.Things = []exercise.Thing{exercise.Chair, exercise.Worktop, exercise.Staircase, exercise.FirmBed, exercise.Bench, exercise.Anchor}
		entry, err := r.Decide(r.Review)
		if err != nil {
			t.Fatal(err)
		}
		r.Profile.Key, r.Entries = "client-n", []record.Entry{entry}
		r.Away = []record.Away{{From: r.Review + 20, Until: r.Review + 33}}
		write(t, stored, encoded(t, r))
	}
	r := read(t, stored)
	if diff := cmp.Diff(string(file(t, stored)), encoded(t, r)); diff != "" {
		t.Error(diff)
	}
	sameAnswers(t, r)
}

// A record of version 1, 2 or 3 becomes one of the present version that answers what it did;
// of version 1 nobody had asked what stands in the room.
func TestOlderVersions(t *testing.T) {
	now := fmt.Sprintf(`"version": %d`, record.Version)
	for i, name := range []string{before, second, third} {
		was := fmt.Sprintf(`"version": %d`, i+1)
		if *update {
			r := read(t, name)
			entry, err := r.Decide(r.Review)
			if err != nil {
				t.Fatal(err)
			}
			r.Entries = []record.Entry{entry}
			write(t, name, strings.Replace(encoded(t, r), now, was, 1))
		}
		text := string(file(t, name))
		r := read(t, name)
		if want := strings.Replace(text, was, now, 1); want == text || encoded(t, r) != want {
			t.Error(cmp.Diff(want, encoded(t, r)))
		}
		if (r.Kit.Things == nil) != (name == before) || len(r.Entries) == 0 {
			t.Errorf("%s: things %v, %d entries", name, r.Kit.Things, len(r.Entries))
		}
		sameAnswers(t, r)
	}
}

// What came with a later version is unknown to an earlier one, at its own place.
func TestNewerFields(t *testing.T) {
	for _, tt := range []struct{ old, new, path string }{
		{`"kit": {`, `"kit": {"things": [],`, "/kit/things"},
		{`"kit": {`, `"reached": "yes", "kit": {`, "/reached"},
		{`"kit": {`, `"kit": {"bands": ["soft"],`, "/kit/bands"},
		{`"kit": {`, `"kit": {"kettlebells": [{"mass": "8 kg", "count": 1}],`, "/kit/kettlebells"},
		{`"kit": {`, `"kit": {"ankle_weights": [{"mass": "1 kg", "count": 1}],`, "/kit/ankle_weights"},
		{`"kit": {`, `"happened": [{"kind": "other", "day": "2026-12-01"}], "kit": {`, "/happened"},
		{`"kit": {`, `"looked": [{"who": "Doctor M", "day": "2026-12-01"}], "kit": {`, "/looked"},
		{`"kit": {`, `"looked": [{"who": "Doctor M", "day": "2026-12-01", "by": "the doctor"}], "kit": {`, "/looked/0/by"},
		{`"resting_pulse": 68`, `"glucose": "60 mg/dL", "glucose_again": "105 mg/dL", "resting_pulse": 68`, "/checks/0/glucose_again"},
		{`"resting_pulse": 68`, `"spo2": 86, "spo2_again": 92, "resting_pulse": 68`, "/checks/0/spo2_again"},
		{`"kit": {`, `"away": [{"from": "2027-04-01", "until": "2027-04-14"}], "kit": {`, "/away"},
	} {
		for i, name := range []string{before, second, third} {
			if i > 0 && strings.HasPrefix(tt.path, "/kit") || i > 1 && !slices.Contains([]string{"/away", "/checks/0/spo2_again", "/looked/0/by"}, tt.path) || i < 2 && tt.path == "/looked/0/by" { // which version 2 has, or 3
				continue
			}
			newer := strings.Replace(string(file(t, name)), tt.old, tt.new, 1)
			_, err := record.Decode([]byte(newer), field.Strict)
			var all field.Errors
			if !errors.As(err, &all) || all[0].Path != tt.path || !errors.Is(err, field.ErrUnknown) || all[0].Line == 0 {
				t.Errorf("%s in %s: %v", tt.path, name, err)
			}
			if _, err := record.Decode([]byte(newer), field.PassOver); err != nil {
				t.Errorf("%s in %s, passed over: %v", tt.path, name, err)
			}
		}
		oldest := strings.Replace(string(file(t, review)), tt.old, tt.new, 1)
		if _, err := record.Decode([]byte(oldest), field.Strict); !errors.Is(err, field.ErrUnknown) {
			t.Errorf("%s in version 0: %v", tt.path, err)
		}
	}
}

func sameAnswers(t *testing.T, r record.Record) {
	t.Helper()
	for _, again := range r.Replay() {
		if again.Err != nil {
			t.Error(again.Err)
		}
	}
}

package guideline

import (
	"strings"
	"testing"
)

// Rows that cannot be read are an error here, so that they never are one for a caller.
func TestReadRows(t *testing.T) {
	if all, err := readRows(rowsJSON); err != nil || len(all) != 77 {
		t.Fatalf("%d rows, want 77: %v", len(all), err)
	}
	const good = `[{"id": "a", "body": "b", "year": 2000, "goal": "power", "training_status": "novice|advanced",
		"sets": {"min": 1, "max": 3}, "intensity_pct_1rm": {"max": 60}, "rpe": {"min": 11, "scale": "Borg 6-20"},
		"effect": {"gain_kg": 2.5}, "known": "text", "known_fields": {"sets": "memory"},
		"here": {"source": "s", "effects": [{"of": "gain_kg", "unit": "kg"}]}}]`
	if _, err := readRows([]byte(good)); err != nil {
		t.Fatal(err)
	}
	for _, change := range [][2]string{
		{`"power"`, `"might"`}, {"advanced", "old"}, {`"sets": {`, `"set": {`}, {`"min": 1, "max": 3`, `"min": 4, "max": 3`},
		{`{"max": 60}`, `{"most": 60}`}, {`{"max": 60}`, `{}`}, {`{"max": 60}`, `{"min": 70, "max": 60}`}, {`"min": 11`, `"min": "11"`},
		{`2.5`, `"much"`}, {`{"gain_kg": 2.5}`, `{"gain_kg": 2.5, "other_kg": 1}`}, {`"of": "gain_kg"`, `"of": "gain"`},
		{`"text"`, `"seen"`}, {`"memory"`, `"seen"`}, {`"unit": "kg"`, `"unit": "stone"`}, {`}}]`, `}}`},
		{`"id": "a",`, `"id": "a", "id": "b",`},
	} {
		bad := strings.Replace(good, change[0], change[1], 1)
		if _, err := readRows([]byte(bad)); err == nil || bad == good {
			t.Errorf("%s for %s: no error", change[1], change[0])
		}
	}
}

package main

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
)

// What is read by somebody with bands and a chair, and by who comes to no session. The
// cases are invented.
func TestCupboard(t *testing.T) {
	const bands = `{"bands": ["soft", "wide"], "things": ["chair", "counter", "anchor"]}`
	for _, tt := range []struct {
		name         string
		kit          string
		brief        bool
		client, file []string
		never        string
	}{
		{"bands", bands, false, []string{"BAND ROW: SOFT Ready ", "How Sit tall, the band fixed before you", "Fix the band at the same place each time"},
			[]string{"no mass is known of a band", "rather than one-arm-dumbbell-row: the kit has no weight for it"}, "WIDE"},
		{"no anchor", strings.Replace(bands, `, "anchor"`, "", 1), false, []string{"DRAWING THE ELBOWS BACK"}, []string{"needs what is not there: step"}, "BAND"},
		{"a few minutes a day", bands, true, []string{"A few minutes on each day", "Each time about 4 minutes."}, []string{"A few minutes a day: 4 exercises"}, "to warm up"},
	} {
		var person map[string]any
		if err := json.Unmarshal(demo.VillageHall(), &person); err != nil {
			t.Fatal(err)
		}
		person["version"], person["kit"], person["brief"] = record.Version, json.RawMessage(tt.kit), tt.brief
		delete(person, "exercises")
		delete(person, "tests")
		delete(person, "function") // which would take the step from her list
		text := units.Must(json.Marshal(person))
		path := programtest.Edited(t, "case.json", text, tt.kit[:1], tt.kit[:1])
		for reader, wants := range map[string][]string{"file": tt.file, "client": tt.client} {
			status, got, errs := programtest.Run(run, "-case", path, "-for", reader)
			flat := strings.Join(strings.Fields(got), " ")
			for _, want := range wants {
				if status != 0 || !strings.Contains(flat, want) {
					t.Errorf("%s, for the %s: status %d, %s, no %q", tt.name, reader, status, errs, want)
				}
			}
			if reader == "client" && strings.Contains(flat, tt.never) {
				t.Errorf("%s: the client reads %q", tt.name, tt.never)
			}
		}
	}
}

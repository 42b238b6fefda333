package house_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// A change puts other JSON at places of a case, such as "profile/age".
type change map[string]string

// changes make invented people out of the demo cases: no such person exists.
var changes = map[string]change{
	"as it is": {},
	"a surgeon's limit on a shoulder": {
		"profile/restrictions": `[{"author": "Surgeon B", "day": "2026-11-02", "side": "right", "region": "shoulder", "max_mass": "1 kg"}]`,
		"kit":                  `{"dumbbells": [{"mass": "1 kg", "count": 2}, {"mass": "2 kg", "count": 2}, {"mass": "4 kg", "count": 2}, {"mass": "6 kg", "count": 2}, {"mass": "10 kg", "count": 2}]}`,
	},
	"a limit on the back, and a note": {
		"profile/restrictions": `[{"author": "Doctor C", "day": "2026-10-02", "until": "2027-12-31", "region": "lower back", "max_mass": "4.5 kg", "note": "nothing from the floor"}]`,
	},
	"a shoulder spared": {
		"profile/restrictions": `[{"author": "Surgeon B", "region": "shoulder", "side": "right", "max_mass": "0.2 kg"}]`,
	},
	"a limit that ends between assessment and review": {
		"profile/restrictions": `[{"author": "Surgeon B", "until": "2027-02-15", "region": "elbow", "side": "left", "max_mass": "2.5 kg"}]`,
	},
	"two limits": {
		"profile/restrictions": `[{"author": "Surgeon B", "region": "shoulder", "side": "left", "max_mass": "3 kg"}, {"author": "Doctor C", "region": "knee", "side": "right", "max_mass": "6 kg", "non_weight_bearing": true}]`,
	},
	"alone":           {"profile/setting": `"alone"`, "today/setting": `"alone"`, "checks/setting": `"alone"`},
	"nobody has seen": {"seen": `[]`},
	"one weight only": {"kit": `{"dumbbells": [{"mass": "3 kg", "count": 1}]}`, "tests": `[]`},
	"two pairs":       {"kit": `{"dumbbells": [{"mass": "2 kg", "count": 2}, {"mass": "4 kg", "count": 2}]}`, "tests": `[]`, "seen": `[]`, "profile/setting": `"alone"`},
	"falls":           {"profile/conditions": `{"asked": true, "present": ["falls_risk", "osteoporosis"]}`, "profile/age": `81`},
	"unsteady, not to the floor": {
		"profile/conditions": `{"asked": true, "present": ["autonomic_neuropathy_postural_hypotension"]}`,
	},
	"a new hip": {
		"profile/conditions":   `{"asked": true, "present": ["total_hip_replacement"]}`,
		"profile/events":       `[{"code": "total_hip_replacement", "day": "2026-06-28", "side": "right"}]`,
		"profile/restrictions": `[{"author": "Surgeon B", "day": "2026-07-01", "side": "right", "region": "hip", "max_mass": "8 kg"}]`,
	},
	"diabetes, active, no clearance": {"profile/diseases": `{"asked": true, "present": ["diabetes_t2"]}`},
	"heart disease, active":          {"profile/diseases": `{"asked": true, "present": ["cardiac"]}`},
	"new shape of the spine":         {"profile/red_flags": `{"asked": true, "present": ["spinal_deformity"]}`},
	"old pain and a followed cancer": {"profile/red_flags": `{"asked": true, "present": ["cancer_history", "back_pain_not_better_at_a_month"]}`, "profile/answers": `{"cancer_active": "yes", "chronic_pain_changed": "no"}`},
	"dizzy and new, no faint":        {"profile/symptoms": `{"asked": true, "present": ["dizziness_or_syncope"]}`, "profile/answers": `{"dizziness_faint": "no", "dizziness_new": "yes"}`},
	"a new knee, perhaps":            {"profile/conditions": `{"asked": true, "unsure": ["total_knee_replacement"]}`},
	"height lost":                    {"profile/red_flags": `{"asked": true, "present": ["sudden_back_pain_or_height_loss"]}`},
	"dizzy":                          {"profile/symptoms": `{"asked": true, "present": ["dizziness_or_syncope"]}`},
	"dizzy, with a clearance": {
		"profile/symptoms":   `{"asked": true, "present": ["dizziness_or_syncope"]}`,
		"profile/clearances": `[{"who": "Doctor C", "day": "2026-11-20", "scope": ["dizziness_or_syncope"]}]`,
	},
	"unstable angina":  {"profile/conditions": `{"asked": true, "present": ["unstable_chd"]}`},
	"a high pressure":  {"profile/bp": `{"systolic": 174, "diastolic": 98}`, "profile/bp_again": `{"systolic": 172, "diastolic": 96}`},
	"no pressure":      {"profile/bp": `null`},
	"symptoms unasked": {"profile/symptoms": `{"asked": false}`},
}

// A leaf is one case on one program: its pages and what they were made from.
type leaf struct {
	name      string
	pages     map[string]string // by reader: client, file, doctor, json
	screening screening.Outcome
	profile   screening.Profile
	items     []dose.Prescription
}

// lines returns a page without its line breaks.
func (l leaf) flat(reader string) string { return strings.Join(strings.Fields(l.pages[reader]), " ") }

// leaves runs every program on every change of its demo case.
func leaves(t *testing.T) []leaf {
	t.Helper()
	folder := built(t)
	var list []leaf
	for _, name := range slices.Sorted(maps.Keys(changes)) {
		for _, p := range []struct {
			program, as string
			base        []byte
			into        func(*leaf, []byte) error
		}{
			{"firstvisit", "firstvisit", demo.VillageHall(), firstVisit}, {"week", "week", demo.VillageHallBuild(), weekly},
			{"review", "review", demo.HomeReview(), reviewed}, {"review", "review with a pain", demo.HomeReviewRefer(), reviewed},
		} {
			file := filepath.Join(t.TempDir(), "case.json")
			if err := os.WriteFile(file, changed(t, p.base, changes[name]), 0o600); err != nil {
				t.Fatal(err)
			}
			l := leaf{name: p.as + ", " + name, pages: map[string]string{}}
			readers := map[string][]string{"client": {"-for", "client"}, "file": {"-for", "file"}, "doctor": {"-for", "doctor"}, "json": {"-json"}}
			if p.program == "week" {
				readers = map[string][]string{"file": nil, "json": {"-json"}}
			}
			for reader, args := range readers {
				cmd := exec.Command(filepath.Join(folder, p.program), append(args, "-case", file)...)
				var errs bytes.Buffer
				cmd.Stderr = &errs
				out, err := cmd.Output()
				if err != nil {
					t.Fatalf("%s: %v, %s", l.name, err, errs.Bytes())
				}
				l.pages[reader] = string(out)
			}
			if err := p.into(&l, []byte(l.pages["json"])); err != nil {
				t.Fatalf("%s: %v", l.name, err)
			}
			list = append(list, l)
		}
	}
	return list
}

func firstVisit(l *leaf, data []byte) error {
	var r record.Plan
	err := field.Decode(data, &r, field.Strict)
	l.take(r)
	return err
}

func weekly(l *leaf, data []byte) error {
	var r struct {
		Visit record.Plan `json:"visit"`
	}
	err := field.Decode(data, &r, field.PassOver)
	l.take(r.Visit)
	return err
}

func (l *leaf) take(r record.Plan) {
	l.screening, l.profile = r.Screening, r.Profile
	if r.Week != nil {
		l.items = r.Week.Sessions[0].Items
	}
}

func reviewed(l *leaf, data []byte) error {
	var r record.Review
	err := field.Decode(data, &r, field.Strict)
	l.screening, l.profile = r.Screening, r.Profile
	for _, item := range r.Items {
		if item.Decision.Next != nil {
			l.items = append(l.items, *item.Decision.Next)
		}
	}
	return err
}

// changed returns the case with other JSON at some places. A place whose parent
// the case does not have is left alone, of a list the first is meant, and so is the kit that a log rests on.
func changed(t *testing.T, base []byte, c change) []byte {
	t.Helper()
	var all map[string]any
	if err := field.Decode(base, &all, field.Strict); err != nil {
		t.Fatal(err)
	}
	for place, text := range c {
		parts := strings.Split(place, "/")
		at := all
		for _, part := range parts[:len(parts)-1] {
			next := at[part]
			if list, is := next.([]any); is && len(list) > 0 {
				next = list[0]
			}
			at, _ = next.(map[string]any)
		}
		if at == nil || place == "kit" && all["asked"] != nil {
			continue
		}
		var value any
		if err := field.Decode([]byte(text), &value, field.Strict); err != nil {
			t.Fatal(fmt.Errorf("%s: %w", place, err))
		}
		if value == nil {
			delete(at, parts[len(parts)-1])
			continue
		}
		at[parts[len(parts)-1]] = value
	}
	out, err := json.Marshal(all)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

package record_test

import (
	"strings"
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Bad fields of a case file are named at its own places.
func TestBadCases(t *testing.T) {
	const (
		squat  = `"from": "2027-02-02", "exercise": "goblet-squat"`
		press  = `"from": "2027-02-05", "exercise": "dumbbell-floor-press", "load": "4 kg", "stated": "per hand"`
		row    = `"2027-02-02,goblet-squat,both,both hands on one,4 kg,,8,rir 6"`
		visit2 = `{"day": "2027-02-05", "observer"`
		agreed = `"review": "2027-03-09"`
	)
	tests := []struct{ name, old, new, want string }{
		{"an unknown exercise", squat, `"from": "2027-02-02", "exercise": "goblet-squad"`, `/asked/0/exercise = "goblet-squad", allowed: did you mean goblet-squat`},
		{"a load that is not in the kit", press, strings.Replace(press, "4 kg", "5 kg", 1), "/asked/11/load = 5 kg, allowed: a weight of the kit: 2 kg, 4 kg, 6 kg, 10 kg each"},
		{"a bare mass for two dumbbells", press, strings.Replace(press, `, "stated": "per hand"`, "", 1), "/asked/11/load"},
		{"no reserve", `"span": {"min": 8, "max": 12}, "reserve": 5`, `"span": {"min": 8, "max": 12}`, "/asked/0/reserve"},
		{"no sets asked for", `"sets": 1, "count": 8`, `"sets": 0, "count": 8`, "/asked/0/sets"},
		{"a count beyond its range", `"sets": 1, "count": 8`, `"sets": 1, "count": 13`, "/asked/0/count"},
		{"doses out of order", `"from": "2027-02-05", "exercise": "goblet-squat"`, `"from": "2027-02-01", "exercise": "goblet-squat"`, "/asked/1/from"},
		{"days out of order", visit2, `{"day": "2027-02-01", "observer"`, "/visits/1/day"},
		{"a visit after the review", agreed, `"review": "2027-03-01"`, "/visits/7/day"},
		{"a set of another day", row, strings.Replace(row, "02-02", "02-03", 1), "/sets/1/day"},
		{"a set of an unknown exercise", row, strings.Replace(row, "squat", "squad", 1), "/sets/1/exercise"},
		{"a set of an exercise that was not asked for", row, strings.Replace(row, "goblet-squat", "dumbbell-hip-thrust", 1), "/sets/1/exercise"},
		{"a set without a load", row, strings.Replace(row, "4 kg", "", 1), "/sets/1/load"},
		{"a set in another hold", row, strings.Replace(row, "both hands on one", "one hand", 1), "/sets/1/hold"},
		{"an unknown column", `"day,exercise,side`, `"day,name,side`, "/sets/0/name"},
		{"pain beyond the scale", `"during": 6`, `"during": 16`, "/visits/8/but/0/pain/during"},
		{"a sign that is none", `"moment": {}`, `"moment": {"signs": ["dizzy"]}`, "/visits/0/moment/signs/0"},
		{"sore for ever", `{"exercise": "one-dumbbell-hinge", "form_lost"`, `{"exercise": "one-dumbbell-hinge", "soreness_days": 99, "form_lost"`, "/visits/8/but/1/soreness_days"},
		{"a blank line", row, `"", ` + strings.Replace(row, "4 kg", "4", 1), "/sets/2/load"},
		{"a set of one side", row, strings.Replace(row, "both,", "left,", 1), "/sets/1/side"},
		{"pain and none", `"pain": {"kind": "ordinary", "site": "shoulder", "side": "right", "usual": 1, "during": 6`, `"pain_free": true, "pain": {"kind": "ordinary", "usual": 1, "during": 6`, "/visits/8/but/0/pain"},
		{"an exception for another exercise", `{"exercise": "one-dumbbell-hinge", "form_lost"`, `{"exercise": "kettlebell-swing", "form_lost"`, "/visits/8/but/1/exercise"},
		{"an unknown field", agreed, agreed + `, "weeks": 5`, "/weeks"},
		{"a key twice", agreed, agreed + ", " + agreed, "/review"},
		{"no days", `"days": ["2027-02-02", "2027-02-05"]`, `"days": []`, "/days"},
		{"a policy that is none", agreed, agreed + `, "policy": {"most_reps": 40}`, "/policy/most_reps"},
	}
	for _, tt := range tests {
		text := string(file(t, review))
		if !strings.Contains(text, tt.old) {
			t.Fatalf("%s: no %s", tt.name, tt.old)
		}
		r, err := record.Decode([]byte(strings.Replace(text, tt.old, tt.new, 1)), field.Strict)
		if err == nil {
			_, err = r.Assess(r.Review)
		}
		if err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v; want %s", tt.name, err, tt.want)
		}
	}
}

// What is bad only for the day that is decided on is named in the record.
func TestBadDays(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*record.Record)
		want   string
	}{
		{"no day", func(r *record.Record) { r.Review = 0 }, "/day"},
		{"nothing asked for", func(r *record.Record) { r.Asked, r.Visits, r.Done = nil, nil, nil }, "/asked"},
		{"no visits", func(r *record.Record) { r.Visits, r.Done = nil, nil }, "/visits"},
		{"a visit after it", func(r *record.Record) { r.Review-- }, "/visits/8/day"},
		{"less company than was screened", func(r *record.Record) { r.Checks[0].Setting = screening.Alone }, "/checks/0/setting"},
		{"an exercise that was never done", func(r *record.Record) {
			a := r.Asked[0]
			a.Exercise, a.Load, a.Reserve = "dead-bug", 0, nil
			r.Asked = append(r.Asked, a)
		}, "/asked/"},
		{"no training status", func(r *record.Record) { r.Profile.Training = 0 }, "/profile/training"},
		{"no goal", func(r *record.Record) { r.Goal = 0 }, "/goal"},
	} {
		r := read(t, review)
		tt.change(&r)
		if tt.name == "a visit after it" {
			r.Review = r.Visits[8].Day - 1
		}
		if _, err := r.Assess(r.Review); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v; want %s", tt.name, err, tt.want)
		}
	}
}

// Every reason of a review has words and facts that exist; by a plan that has ended
// nobody goes on.
func TestReviews(t *testing.T) {
	ledger, err := record.Ledger()
	if err != nil {
		t.Fatal(err)
	}
	words, err := record.Words()
	if err != nil {
		t.Fatal(err)
	}
	for _, late := range []int{0, 70} {
		for _, name := range []string{review, "version0/home-review-refer.json"} {
			r := read(t, name)
			r.Absence, r.Phase = screening.No, 0
			if late > 0 {
				r.Checks = nil
			}
			re, err := r.Assess(r.Review + units.Day(late))
			if err != nil {
				t.Fatal(err)
			}
			if re.Expired != (late > 0) || late > 0 && re.Coming != nil {
				t.Errorf("%s, %d days on: expired %v, coming %v", name, late, re.Expired, re.Coming)
			}
			for _, reason := range re.Reasons() {
				if words.Copy()[reason.Code].Clinician == "" {
					t.Errorf("no words for %s", reason.Code)
				}
				for _, id := range reason.Facts {
					if _, ok := ledger.Fact(id); !ok {
						t.Errorf("%s names %q, which is no fact", reason.Code, id)
					}
				}
			}
		}
	}
}

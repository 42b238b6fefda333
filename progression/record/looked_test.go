package record_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Who looked at what begins anew is kept, and answers nothing otherwise; it has a name and
// a day up to that of the line.
func TestLookedIsKept(t *testing.T) {
	r := read(t, review)
	plain, err := r.Next(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	r.Asked = slices.Clone(r.Asked)
	a := &r.Asked[0]
	a.Looked = &dose.Observation{Who: "Physiotherapist E", Day: a.From}
	back, err := record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil || *back.Asked[0].Looked != *a.Looked {
		t.Fatalf("%v, %+v", err, back.Asked[0].Looked)
	}
	got, err := back.Next(back.Review)
	if diff := cmp.Diff(string(units.Must(json.Marshal(plain))), string(units.Must(json.Marshal(got)))); diff != "" || err != nil {
		t.Errorf("%v\n%s", err, diff)
	}
	for path, bad := range map[string]dose.Observation{"/who": {Day: a.From}, "/day": {Who: "Physiotherapist E"}, "/day ": {Who: "Physiotherapist E", Day: a.From + 1}} {
		a.Looked = &bad
		if err := r.Validate(); err == nil || !strings.Contains(err.Error(), "/asked/0/looked"+strings.TrimSpace(path)) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

// What somebody is who has looked is kept beside the name, and is one of those there are.
func TestLookedByIsKept(t *testing.T) {
	r := read(t, review)
	look := record.Look{Observation: dose.Observation{Who: "Doctor K", Day: r.Review}, Visits: len(r.Visits)}
	for by := range screening.Lifters() {
		look.By = by
		r.Looked = []record.Look{look, {Observation: look.Observation}}
		back, err := record.Decode([]byte(encoded(t, r)), field.Strict)
		if err != nil || back.Looked[0] != look || back.Looked[1].By != 0 {
			t.Errorf("%v, %+v", err, back.Looked)
		}
	}
	r.Looked[0].By = 99
	if err := r.Validate(); err == nil || !strings.Contains(err.Error(), "/looked/0/by") {
		t.Error(err)
	}
}

// A knock on the head sends to the doctor today, who takes a blood thinner too; after the look nothing stands,
// and the review still says that no assessment knows of it, so that the next one hears of it.
func TestHeadKnockIsToldOn(t *testing.T) {
	for _, thinner := range []bool{false, true} {
		r := read(t, review)
		if thinner {
			r.Profile.Conditions = screening.AskedFor(append(r.Profile.Conditions.Present, "anticoagulant")...)
		}
		day := r.Visits[len(r.Visits)-1].Day + 3
		r.Happened = []programme.Happening{{Kind: programme.HeadKnock, Day: day}}
		list, err := r.Alarms(day)
		if err != nil || len(list) != 1 || !list[0].Open || list[0].Route != screening.SameDay || list[0].Who != screening.TheDoctor || list[0].Counts(screening.ThePhysio) {
			t.Errorf("%v: %+v", err, list)
		}
		r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: day}, By: screening.TheDoctor, Visits: len(r.Visits), Happened: 1}}
		re, err := r.Assess(day)
		if err != nil || len(re.Alarms) > 0 || len(re.Told) != 1 || re.Told[0].Kind != programme.HeadKnock || re.Told[0].Reasons[0].Code != "progression.happened-reviewed" {
			t.Errorf("looked at: %v, %+v, %+v", err, re.Alarms, re.Told)
		}
	}
}

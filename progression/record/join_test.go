package record_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// older is a record of a first visit whose clinic follows the older list, with the
// plan that was decided: an invented case.
const older = "version4/older-list.json"

// riskFactors is what AHA 2007 lists as a relative contraindication and ACSM 2015 dropped.
const riskFactors screening.Code = "major_chd_risk_factors"

var olderLists = screening.JoinPolicy{RiskFactors: screening.OlderList}

// joinedBy is the first visit of somebody with risk factors, with a plan by a policy.
func joinedBy(t testing.TB, policy screening.JoinPolicy) record.Record {
	t.Helper()
	r := read(t, visit)
	r.Join = policy
	r.Profile.Conditions.Present = append(r.Profile.Conditions.Present, riskFactors)
	e, err := r.Decide(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	r.Entries = []record.Entry{e}
	return r
}

// routeOf is where the risk factors send.
func routeOf(t testing.TB, o screening.Outcome) screening.Route {
	t.Helper()
	for _, f := range o.Findings {
		if f.Code == riskFactors {
			return f.Route
		}
	}
	t.Fatal("no risk factors")
	return 0
}

// What is decided follows the record's policy, and says so.
func TestJoinDecides(t *testing.T) {
	for policy, want := range map[screening.JoinPolicy]screening.Route{{}: screening.Tell, olderLists: screening.AskFirst} {
		o := joinedBy(t, policy).Entries[0].Plan.Screening
		if got := routeOf(t, o); got != want || o.Policy.Edition != screening.Edition {
			t.Errorf("%+v: %v, want %v; followed %+v", policy, got, want, o.Policy)
		}
	}
}

// The stored record has its policy in Given and in its entry; replay follows that of
// the entry, whatever the record's is by then.
func TestJoinReplays(t *testing.T) {
	if *update {
		write(t, older, string(units.Must(json.Marshal(joinedBy(t, olderLists))))+"\n")
	}
	for _, now := range []screening.JoinPolicy{olderLists, {}, {DiabetesStart: screening.NewerList}} {
		r := read(t, older)
		if r.Join != olderLists {
			t.Fatalf("%+v", r.Join)
		}
		r.Join = now
		if err := r.Replay()[0].Err; err != nil {
			t.Errorf("%+v: %v", now, err)
		}
	}
	r := read(t, older)
	r.Entries[0].Plan.Screening.Policy.Edition = 2 // the number of an edition is no answer
	if err := r.Replay()[0].Err; err != nil {
		t.Errorf("another number: %v", err)
	}
	r.Entries[0].Given.Join = screening.JoinPolicy{}
	if err := r.Replay()[0].Err; !errors.Is(err, record.ErrAnswer) {
		t.Errorf("without its policy: %v", err)
	}
}

// A record from before the policy was kept has the choice of package screening.
func TestJoinOfOlderRecords(t *testing.T) {
	for _, name := range append(old[:len(old):len(old)], stored) {
		if r := read(t, name); r.Join != (screening.JoinPolicy{}) || strings.Contains(encoded(t, r), `"join"`) {
			t.Errorf("%s: %+v", name, r.Join)
		}
	}
	usual := joinedBy(t, screening.JoinPolicy{}).Entries[0].Plan.Screening.Policy
	if want := (screening.JoinPolicy{Edition: screening.Edition, RiskFactors: screening.NewerList, DiabetesStart: screening.OlderList}); usual != want {
		t.Errorf("%+v, want %+v", usual, want)
	}
}

func TestBadJoin(t *testing.T) {
	for text, want := range map[string]string{
		`{"risk_factors": "newest"}`: "/join/risk_factors", `{"edition": 99}`: "/join/edition", `{"edition": -1}`: "/join/edition", `{"strokes": "older list"}`: "/join/strokes",
	} {
		_, err := record.Decode([]byte(strings.Replace(string(file(t, stored)), `"version": 4,`, `"version": 4, "join": `+text+`,`, 1)), field.Strict)
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v; want %s", text, err, want)
		}
	}
}

package programme_test

import (
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Spiering 2021, from memory: the young one session a week and one set for up to
// 32 weeks, older people two sessions and two to three sets, the load kept.
func TestMaintenances(t *testing.T) {
	list := programme.Maintenances()
	var got []string
	for _, m := range list {
		got = append(got, fmt.Sprint(m.Who, " ", m.Days, " ", m.Sets, " ", m.Weeks, " ", m.Basis))
	}
	if text := strings.Join(got, "; "); text != "older people 2 2 to 3 0 from memory; young people 1 1 32 from memory" {
		t.Error(text)
	}
	for f := range progression.Facts() {
		if f.ID == list[1].Fact && (f.Basis != evidence.FromMemory || f.Value != "young people keep strength with 1 session a week and 1 set, the load kept, for up to 32 weeks") {
			t.Errorf("%+v", f)
		}
	}
	if _, _, fact := dose.MaintenanceDose(); list[0].Fact != fact {
		t.Errorf("%s, want package dose's own %s", list[0].Fact, fact)
	}
	list[0].Days = 9
	if programme.Maintenances()[0].Days != 2 {
		t.Error("the list is not the caller's own")
	}
}

func TestTakeAlong(t *testing.T) {
	d := programme.TakeAlong()
	if d.Weeks != 8 || d.Maintain != programme.Maintenances()[0] {
		t.Errorf("%+v", d)
	}
	// One day beyond those weeks the ladder begins again, and not before.
	for days, anew := range map[int]bool{7 * d.Weeks: false, 7*d.Weeks + 1: true} {
		if r := units.Must(rule.ReturnAfter(days, screening.No)); r.Anew != anew {
			t.Errorf("%d days: %+v", days, r)
		}
	}
	if len(d.ComeBack) != 13 || !slices.Contains(d.ComeBack, programme.NewDiagnosis) || slices.Contains(d.ComeBack, programme.OtherHappening) {
		t.Errorf("come back after %v", d.ComeBack)
	}
	var codes []string
	for _, why := range d.Reasons {
		codes = append(codes, string(why.Code))
	}
	if got := strings.Join(codes, " "); got != "progression.discharge progression.discharge-maintain dose.stop-and-ask progression.discharge-weeks progression.discharge-happened" {
		t.Error(got)
	}
	speaks(t, d.Reasons...)
	words := units.Must(evidence.NewLexicon(programme.Words().Copy(), dose.Words().Copy(), week.Words().Copy()))
	for _, why := range d.Reasons {
		if words.Client(why) == "" {
			t.Errorf("%s says nothing to the client", why.Code)
		}
	}
	var back programme.Discharge
	if err := field.Decode(units.Must(json.Marshal(d)), &back, field.Strict); err != nil || !reflect.DeepEqual(back, d) {
		t.Errorf("%+v, %v, want %+v", back, err, d)
	}
	if field.Decode([]byte(`{"phase":"discharge"}`), &back, field.Strict) == nil || field.Decode([]byte(`{"months":1}`), &programme.Maintenance{}, field.Strict) == nil {
		t.Error("an unknown field was read")
	}
}

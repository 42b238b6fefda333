package evidence_test

import (
	"encoding/json"
	"fmt"
	"testing"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

func TestBecause(t *testing.T) {
	got := evidence.Because("kettle.descale", "kettle.lime", "kettle.age")
	want := evidence.Reason{Code: "kettle.descale", Facts: []evidence.FactID{"kettle.lime", "kettle.age"}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Because (-want +got):\n%s", diff)
	}
}

// Two reasons that grow from one must not write over each other.
func TestWithLeavesTheReasonAlone(t *testing.T) {
	base := evidence.Because("kettle.descale").With(evidence.Number("litres", 1.7), evidence.Count("months", 6))
	base.Args = append(make([]evidence.Arg, 0, 8), base.Args...) // room to write into
	left := base.With(evidence.Text("who", "client A"))
	right := base.With(evidence.Text("who", "client B"))
	if len(base.Args) != 2 {
		t.Errorf("With changed its receiver: %v", base)
	}
	want := []evidence.Arg{evidence.Number("litres", 1.7), evidence.Count("months", 6), evidence.Text("who", "client A")}
	if diff := cmp.Diff(want, left.Args); diff != "" {
		t.Errorf("first reason (-want +got):\n%s", diff)
	}
	want[2] = evidence.Text("who", "client B")
	if diff := cmp.Diff(want, right.Args); diff != "" {
		t.Errorf("second reason (-want +got):\n%s", diff)
	}
}

// Facts and values that are handed over are not written to by what is added.
func TestReasonsShareNothingThatGrows(t *testing.T) {
	table := append(make([]evidence.FactID, 0, 8), "kettle.lime")
	given := append(make([]evidence.Arg, 0, 8), evidence.Count("months", 6))
	first, second := evidence.Because("kettle.descale", table...).With(given...), evidence.Because("kettle.note", table...).With(given...)
	first.Facts, second.Facts = append(first.Facts, "kettle.age"), append(second.Facts, "kettle.use")
	first, second = first.With(evidence.Text("who", "client A")), second.With(evidence.Text("who", "client B"))
	if first.Facts[1] != "kettle.age" || second.Facts[1] != "kettle.use" || first.Args[1].Value() != "client A" || second.Args[1].Value() != "client B" {
		t.Errorf("%v and %v", first, second)
	}
	if len(table) != 1 || table[:2][1] != "" || given[:2][1] != (evidence.Arg{}) {
		t.Errorf("the table is %q and %v", table[:2], given[:2])
	}
}

func TestWords(t *testing.T) {
	words := evidence.Words{
		"kettle.descale": {Client: "Time to clean a kettle of {litres}.", Clinician: "{months} months; {litres}, again {litres}"},
		"kettle.note":    {Clinician: "lime seen"},
		"kettle.blank":   {Client: "All well."},
	}
	full := func(c evidence.ReasonCode) evidence.Reason {
		return evidence.Because(c).With(evidence.Quantity("litres", 1.7, "L"), evidence.Count("months", 6))
	}
	tests := []struct {
		code              evidence.ReasonCode
		client, clinician string
	}{
		{"kettle.descale", "Time to clean a kettle of 1.7 L.", "6 months; 1.7 L, again 1.7 L"},
		{"kettle.note", "", "lime seen"},
		{"kettle.blank", "All well.", "kettle.blank; litres: 1.7 L; months: 6"},
		{"kettle.strange", "", "kettle.strange; litres: 1.7 L; months: 6"},
	}
	for _, test := range tests {
		if got := words.Client(full(test.code)); got != test.client {
			t.Errorf("Client(%s) = %q, want %q", test.code, got, test.client)
		}
		if got := words.Clinician(full(test.code)); got != test.clinician {
			t.Errorf("Clinician(%s) = %q, want %q", test.code, got, test.clinician)
		}
	}
	if got := words.Clinician(evidence.Because("kettle.descale")); got != "{months} months; {litres}, again {litres}" {
		t.Errorf("a value that is missing should stay visible, got %q", got)
	}
	if got := evidence.Words(nil).Clinician(evidence.Because("kettle.note")); got != "kettle.note" {
		t.Errorf("Clinician without a table = %q, want the code", got)
	}
}

func TestReasonJSON(t *testing.T) {
	for _, test := range []struct {
		reason evidence.Reason
		want   string
	}{
		{evidence.Because("kettle.note"), `{"code":"kettle.note"}`},
		{evidence.Because("kettle.descale", "kettle.lime").With(evidence.Number("litres", 1.7)),
			`{"code":"kettle.descale","args":[{"name":"litres","value":"1.7","kind":"number","number":1.7}],"facts":["kettle.lime"]}`},
	} {
		text, err := json.Marshal(test.reason)
		if err != nil || string(text) != test.want {
			t.Errorf("Marshal = %s, %v, want %s", text, err, test.want)
		}
		var back evidence.Reason
		if err := field.Decode(text, &back, field.Strict); err != nil {
			t.Error(err)
		}
		if diff := cmp.Diff(test.reason, back); diff != "" {
			t.Errorf("round trip (-want +got):\n%s", diff)
		}
	}
}

func ExampleWords() {
	words := evidence.Words{"kettle.descale": {
		Client:    "The kettle will like a clean this week.",
		Clinician: "descaling due after {months} months",
	}}
	r := evidence.Because("kettle.descale", "kettle.lime").With(evidence.Count("months", 6))
	fmt.Println(words.Client(r))
	fmt.Println(words.Clinician(r))
	// Output:
	// The kettle will like a clean this week.
	// descaling due after 6 months
}

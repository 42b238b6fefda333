package evidence_test

import (
	"errors"
	"maps"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A lexicon holds what its tables held, whatever becomes of them or of copies.
func TestLexiconStaysAsItIs(t *testing.T) {
	kettle := evidence.Words{"kettle.note": {Client: "lime", Clinician: "lime seen"}}
	cup := evidence.Words{"cup.note": {Clinician: "tea seen"}}
	want := evidence.Words{"kettle.note": kettle["kettle.note"], "cup.note": cup["cup.note"]}
	l := units.Must(evidence.NewLexicon(kettle, cup))
	kettle["kettle.note"] = evidence.Wording{}
	l.Copy()["cup.note"] = evidence.Wording{}
	if diff := cmp.Diff(want, evidence.Words(maps.Collect(l.All()))); diff != "" {
		t.Error(diff)
	}
	r := evidence.Because("kettle.note")
	if l.Client(r) != "lime" || l.Clinician(r) != "lime seen" {
		t.Errorf("says %q and %q", l.Client(r), l.Clinician(r))
	}
	if w, ok := l.Wording("kettle.note"); !ok || w.Client != "lime" {
		t.Errorf("Wording: %v, %v", w, ok)
	}
	if _, ok := l.Wording("x"); ok || l.Clinician(evidence.Because("x")) != "x" {
		t.Error("a code that is not there has words")
	}
	var order []evidence.ReasonCode
	for code := range l.All() {
		order = append(order, code)
	}
	if diff := cmp.Diff([]evidence.ReasonCode{"cup.note", "kettle.note"}, order); diff != "" {
		t.Error(diff)
	}
	for range l.All() {
		break // a caller may stop
	}
	_, err := evidence.NewLexicon(cup, want, cup)
	var bad field.Errors
	if !errors.As(err, &bad) || len(bad) != 2 || bad[0].Path != "/cup.note" || !errors.Is(err, field.ErrDuplicate) {
		t.Errorf("a code twice: %v", err)
	}
	var empty evidence.Lexicon
	empty.Copy()["x"] = evidence.Wording{Clinician: "y"}
	if empty.Clinician(r) != "kettle.note" {
		t.Errorf("the empty one says %q", empty.Clinician(r))
	}
}

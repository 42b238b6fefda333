package evidence_test

import (
	"errors"
	"maps"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

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

// Slots are filled as the standard library replaces them: in one pass, the first value
// of a name, and a slot without a value stays.
func TestSlots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`([ab{} ]|\{a\}|\{ab\}|\{b\}){0,12}`).Draw(t, "text")
		var args []evidence.Arg
		var pairs []string
		for range rapid.IntRange(0, 4).Draw(t, "args") {
			name, value := rapid.SampledFrom([]string{"a", "ab", "b", ""}).Draw(t, "name"), rapid.SampledFrom([]string{"{a}", "x", "{", ""}).Draw(t, "value")
			args, pairs = append(args, evidence.Text(name, value)), append(pairs, "{"+name+"}", value)
		}
		words := evidence.Words{"kettle.a": {Client: text}}
		if got, want := words.Client(evidence.Because("kettle.a").With(args...)), strings.NewReplacer(pairs...).Replace(text); got != want {
			t.Fatalf("%q with %v: %q, want %q", text, args, got, want)
		}
	})
}

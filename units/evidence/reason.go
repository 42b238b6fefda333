package evidence

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"

	"example.org/posology/units/field"
)

// ReasonCode names a decision, such as "dose.load-finding". Codes are stable: they
// are what a record stores and a translation is keyed by.
type ReasonCode string

// A Reason says why something was decided. Its values and facts may be those of the table
// that it comes from: they are for reading. Decode into a fresh Reason, as [field.Decode] does.
type Reason struct {
	Code  ReasonCode `json:"code"`
	Args  []Arg      `json:"args,omitempty"`
	Facts []FactID   `json:"facts,omitempty"`
}

// Because returns a reason with the given code and facts. A slice of facts that is
// handed on (facts...) is kept, not copied.
func Because(code ReasonCode, facts ...FactID) Reason {
	return Reason{Code: code, Facts: slices.Clip(facts)}
}

// With returns r with more values. The first ones that a reason gets are kept as they
// are handed over, so that it is allocated once; r itself stays as it was.
func (r Reason) With(args ...Arg) Reason {
	if len(r.Args) > 0 {
		args = append(slices.Clip(r.Args), args...)
	}
	r.Args = slices.Clip(args)
	return r
}

// Wording is what a code says to the two readers. {name} stands for the
// argument of that name.
type Wording struct {
	Client    string `json:"client"`    // short and kind; empty where a client need not read it
	Clinician string `json:"clinician"` // the rule, its answer and the values
}

// Words is a table of the wording of codes. [NewLexicon] makes of it what packages
// hand out by their function Words; a table in another language takes its place.
type Words map[ReasonCode]Wording

// Client is [Lexicon.Client] in English.
func (w Words) Client(r Reason) string { return Lexicon{words: w}.Client(r) }

// Clinician is [Lexicon.Clinician] in English.
func (w Words) Clinician(r Reason) string { return Lexicon{words: w}.Clinician(r) }

var slot = regexp.MustCompile(`\{[^{}]+\}`)

// Missing compares a translation with w, sentence by sentence: [field.ErrMissing] are
// codes, sentences and {slots} that it lacks, [field.ErrUnknown] those that w does not
// have. A slot of the other reader's sentence may be used. The errors are sorted by
// their path, /code/reader.
func (w Words) Missing(translation Words) error {
	var bad field.Errors
	for _, code := range slices.Sorted(maps.Keys(w)) {
		theirs, there := translation[code]
		if !there {
			bad.Add("/"+string(code), field.Bad(nil, "a wording for every code", field.ErrMissing))
			continue
		}
		ours, all := w[code], w[code].Client+w[code].Clinician
		bad.Add("/"+string(code)+"/client", compare(ours.Client, theirs.Client, all))
		bad.Add("/"+string(code)+"/clinician", compare(ours.Clinician, theirs.Clinician, all))
	}
	for _, code := range slices.Sorted(maps.Keys(translation)) {
		if _, known := w[code]; !known {
			bad.Add("/"+string(code), field.Bad(nil, "a code that has words", field.ErrUnknown))
		}
	}
	return bad.Err()
}

// compare returns what a translated sentence lacks and what it should not have.
func compare(ours, theirs, all string) error {
	if (ours == "") != (theirs == "") {
		return field.Bad(theirs, fmt.Sprintf("a translation of %q", ours), field.ErrMissing)
	}
	var bad field.Errors
	for _, s := range slot.FindAllString(ours, -1) {
		bad.Refuse(!strings.Contains(theirs, s), "", theirs, "the slot "+s, field.ErrMissing)
	}
	for _, s := range slot.FindAllString(theirs, -1) {
		bad.Refuse(!strings.Contains(all, s), "", s, "a slot that the words have", field.ErrUnknown)
	}
	return bad.Err()
}

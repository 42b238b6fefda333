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

// A Reason says why something was decided. Its facts may be those of the table that
// it comes from: they are for reading. Decode into a fresh Reason, as [field.Decode] does.
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
		args = slices.Concat(r.Args, args)
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

// Words holds the wording of codes. Each package that gives reasons has a
// function Words with its own table; a table in another language takes its place.
type Words map[ReasonCode]Wording

// Client returns the sentence for the client, "" if there is none.
func (w Words) Client(r Reason) string { return w.In(Locale{}).Client(r) }

// Clinician returns the sentence for the clinician; a code without wording
// gives the code and its values, so that nothing is lost.
func (w Words) Clinician(r Reason) string { return w.In(Locale{}).Clinician(r) }

// In returns the words with the values printed as l says.
func (w Words) In(l Locale) Voice { return Voice{w, l} }

// A Voice says reasons in a language: [Words] and how the values in them print.
type Voice struct {
	Words  Words
	Locale Locale
}

// Client is [Words.Client] in the language.
func (v Voice) Client(r Reason) string { return v.fill(v.Words[r.Code].Client, r.Args) }

// Clinician is [Words.Clinician] in the language.
func (v Voice) Clinician(r Reason) string {
	if text := v.Words[r.Code].Clinician; text != "" {
		return v.fill(text, r.Args)
	}
	var b strings.Builder
	b.WriteString(string(r.Code))
	for _, a := range r.Args {
		b.WriteString("; " + a.Name + ": " + v.Locale.print(a))
	}
	return b.String()
}

// fill puts the values in, in one pass: a value that looks like a slot stays.
func (v Voice) fill(text string, args []Arg) string {
	pairs := make([]string, 0, 2*len(args))
	for _, a := range args {
		if slot := "{" + a.Name + "}"; strings.Contains(text, slot) {
			pairs = append(pairs, slot, v.Locale.print(a))
		}
	}
	if len(pairs) == 0 {
		return text
	}
	return strings.NewReplacer(pairs...).Replace(text)
}

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
		if !strings.Contains(theirs, s) {
			bad.Add("", field.Bad(theirs, "the slot "+s, field.ErrMissing))
		}
	}
	for _, s := range slot.FindAllString(theirs, -1) {
		if !strings.Contains(all, s) {
			bad.Add("", field.Bad(s, "a slot that the words have", field.ErrUnknown))
		}
	}
	return bad.Err()
}

// Join returns one table with the codes of all, and an [field.ErrDuplicate]
// for a code that stands in two.
func Join(tables ...Words) (Words, error) {
	joined := Words{}
	var bad field.Errors
	for _, t := range tables {
		for code, wording := range t {
			if _, twice := joined[code]; twice {
				bad.Add("/"+string(code), field.Bad(nil, "each code in one table", field.ErrDuplicate))
			}
			joined[code] = wording
		}
	}
	slices.SortFunc(bad, func(a, b *field.Error) int { return strings.Compare(a.Path, b.Path) }) // a table has no order
	return joined, bad.Err()
}

package screening

import (
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Code names a disease, symptom, condition, red flag, event, reading or
// question, such as "osteoporosis". Codes are what is stored and exchanged.
type Code string

// Kind is what a code names.
type Kind uint8

// Kinds of code.
const (
	_         Kind = iota // not given
	Disease               // "disease": known disease of the preparticipation rule
	Symptom               // "symptom": sign or symptom of the preparticipation rule
	Condition             // "condition": condition, contraindication or medicine
	RedFlag               // "red flag": sign of a serious cause
	Happening             // "happening": what an [Event] may name
	Reading               // "reading": what a measurement showed
	Topic                 // "topic": what a question asks after and no list holds
	Sign                  // "sign": what shows during a set
)

var kindTexts = field.NewVocabulary[Kind]("kind of code", "", "disease", "symptom", "condition", "red flag", "happening", "reading", "topic", "sign")

// Kinds yields every kind of code.
func Kinds() iter.Seq[Kind] { return kindTexts.All() }

// String returns the kind's name, such as "red flag".
func (k Kind) String() string { return kindTexts.Text(k) }

// MarshalText writes what String returns.
func (k Kind) MarshalText() ([]byte, error) { return kindTexts.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *Kind) UnmarshalText(text []byte) error { return kindTexts.Unmarshal(text, k) }

// A Term is a known code with what it stands for.
type Term struct {
	Code    Code            `json:"code"`
	Kind    Kind            `json:"kind"`
	Meaning string          `json:"meaning"` // for a clinician, in our own words
	Fact    evidence.FactID `json:"fact"`    // what a source says of it
}

// Codes yields every known code, in the order of the lists.
func Codes() iter.Seq[Term] {
	list := make([]Term, len(entries))
	for i := range entries {
		list[i] = entries[i].term()
	}
	return slices.Values(list)
}

// LookUp returns what a code stands for, and whether it is known.
func LookUp(code Code) (Term, bool) {
	if e := find(code); e != nil {
		return e.term(), true
	}
	return Term{}, false
}

func (e *entry) term() Term { return Term{e.code, e.kind, e.meaning, e.factID()} }

// check returns nil if code is known and of one of the kinds, else a
// [field.ErrUnknown].
func (c Code) check(of ...Kind) error {
	if e := find(c); e == nil || !slices.Contains(of, e.kind) {
		return field.Bad(fmt.Sprintf("%.60q", string(c)), c.allowed(of), field.ErrUnknown)
	}
	return nil
}

// allowed says which codes may stand in the place of c, and which may be meant.
func (c Code) allowed(of []Kind) string {
	names := make([]string, len(of))
	for i, k := range of {
		names[i] = k.String()
	}
	text := "the code of a " + strings.Join(names, " or ") + ", as Codes lists them"
	if meant := field.DidYouMean(string(c), named(of)); meant != "" {
		text += "; " + meant
	}
	return text
}

// named yields the codes of some kinds, alone and with what they stand for.
func named(of []Kind) iter.Seq2[string, string] {
	return func(yield func(code, text string) bool) {
		for i := range entries {
			e := &entries[i]
			code := string(e.code)
			if slices.Contains(of, e.kind) && !(yield(code, code) && yield(code, code+" "+e.meaning)) {
				return
			}
		}
	}
}

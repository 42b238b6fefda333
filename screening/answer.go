package screening

import (
	"iter"

	"example.org/posology/units/field"
)

// Answer is the answer to a question with yes and no, where yes is the grave
// one, except for a clearance and for getting up from the floor. The zero value is Unknown: not asked, or asked and not known.
type Answer uint8

// Answers.
const (
	Unknown Answer = iota // "unknown": not known, which is not "no"
	No                    // "no"
	Yes                   // "yes"
)

// Unlike other enumerations the zero value has a text: "unknown" is an answer.
var answers = field.NewVocabulary[Answer]("answer", "unknown", "no", "yes")

// Answers yields every answer, Unknown first.
func Answers() iter.Seq[Answer] { return answers.All() }

// String returns "unknown", "no" or "yes".
func (a Answer) String() string { return answers.Text(a) }

// MarshalText writes what String returns.
func (a Answer) MarshalText() ([]byte, error) { return answers.Marshal(a) }

// UnmarshalText reads what MarshalText writes.
func (a *Answer) UnmarshalText(text []byte) error { return answers.Unmarshal(text, a) }

// Severity orders answers: 0 for No, 1 for Unknown, 2 for Yes and for what is
// no answer.
func (a Answer) Severity() int {
	switch a {
	case No:
		return 0
	case Unknown:
		return 1
	}
	return 2
}

package screening

import (
	"fmt"
	"iter"
	"slices"

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

// A Checklist is a list that was asked as a whole: what stands in neither list
// was answered with no. If the list was not asked, every item is unknown, which
// is not "no". On what no code stands for this module has no rule: that goes to a
// clinician, and a list without it does not say that it does not matter.
type Checklist struct {
	Asked   bool   `json:"asked"`
	Present []Code `json:"present,omitempty"` // answered with yes
	Unsure  []Code `json:"unsure,omitempty"`  // asked, and not known
}

// AskedFor returns a checklist that was asked, with yes to the given codes and
// no to all others.
func AskedFor(present ...Code) Checklist { return Checklist{Asked: true, Present: present} }

// IsZero reports whether the list was not asked and holds nothing.
func (c Checklist) IsZero() bool { return !c.Asked && len(c.Present) == 0 && len(c.Unsure) == 0 }

// Of returns the answer for one code.
func (c Checklist) Of(code Code) Answer {
	switch {
	case slices.Contains(c.Present, code):
		return Yes
	case !c.Asked || slices.Contains(c.Unsure, code):
		return Unknown
	}
	return No
}

// any returns Yes if any item is present, else Unknown if any is not known,
// else No.
func (c Checklist) any() Answer {
	switch {
	case len(c.Present) > 0:
		return Yes
	case !c.Asked || len(c.Unsure) > 0:
		return Unknown
	}
	return No
}

// check returns what is wrong with c, when the list may hold the given kinds.
func (c Checklist) check(kinds ...Kind) error {
	var bad field.Errors
	for _, list := range [...]struct {
		path         string
		codes, other []Code
	}{{"/present", c.Present, nil}, {"/unsure", c.Unsure, c.Present}} {
		for i, code := range list.codes {
			err := code.check(kinds...)
			twice, both := slices.Contains(list.codes[:i], code), slices.Contains(list.other, code)
			if err == nil && !twice && !both {
				continue
			}
			path := fmt.Sprintf("%s/%d", list.path, i)
			bad.Add(path, err)
			switch {
			case twice:
				bad.Add(path, field.Bad(code, "each code once", field.ErrDuplicate))
			case both:
				bad.Add(path, field.Bad(code, "a code either present or unsure", field.ErrConflict))
			}
		}
	}
	bad.Refuse(!c.Asked && len(c.Present)+len(c.Unsure) > 0, "/asked", false, "true where the list holds codes", field.ErrConflict)
	return bad.Err()
}

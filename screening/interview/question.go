package interview

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// ReplyForm is how a question is answered.
type ReplyForm uint8

// Forms.
const (
	_         ReplyForm = iota
	YesNo               // "yes or no": yes or no, in [Reply.YesNo]
	OneOf               // "one of": one of the choices, in [Reply.Choice]
	SeveralOf           // "several of": any of the choices, or none, in [Reply.List]
	Whole               // "whole number": a whole number from Least to Most, in [Reply.Text]; its unit may stand behind it
	Quantity            // "quantity": a reading as Hint shows, in [Reply.Text]
	Date                // "date": a day, or only its month, in [Reply.Text]
	FreeText            // "free text": any text, in [Reply.Text]
)

var forms = field.NewVocabulary[ReplyForm]("form", "", "yes or no", "one of", "several of", "whole number", "quantity", "date", "free text")

// ReplyForms yields every form.
func ReplyForms() iter.Seq[ReplyForm] { return forms.All() }

// String returns the form's name, such as "several of".
func (f ReplyForm) String() string { return forms.Text(f) }

// MarshalText writes what String returns.
func (f ReplyForm) MarshalText() ([]byte, error) { return forms.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *ReplyForm) UnmarshalText(text []byte) error { return forms.Unmarshal(text, f) }

// A FormQuestion is what to ask next.
type FormQuestion struct {
	Key       string         `json:"key"` // its name, the same each time
	Form      ReplyForm      `json:"form"`
	Client    string         `json:"client"`            // what the client is asked
	Clinician string         `json:"clinician"`         // what the answer is for
	Because   screening.Code `json:"because,omitzero"`  // the code that made it necessary; empty where everybody is asked
	Needed    bool           `json:"needed,omitzero"`   // cannot be left unknown
	Choices   []Choice       `json:"choices,omitempty"` // of OneOf and SeveralOf
	Hint      string         `json:"hint,omitzero"`     // how to write the answer, of the other forms but YesNo
	Unit      string         `json:"unit,omitzero"`     // of a whole number
	Least     int            `json:"least,omitzero"`    // of a whole number
	Most      int            `json:"most,omitzero"`     // of a whole number
}

// A Choice is one answer to choose.
type Choice struct {
	Code      screening.Code `json:"code"`
	Client    string         `json:"client"`
	Clinician string         `json:"clinician"`
}

// A Reply is the answer to a question, in the field that its form names. The zero
// value is "don't know".
type Reply struct {
	YesNo  screening.Answer    `json:"yes_no,omitzero"`
	Choice screening.Code      `json:"choice,omitzero"`
	List   screening.Checklist `json:"list,omitzero"` // asked, with what is so and what is not sure
	Text   string              `json:"text,omitzero"` // as written, such as "146/84" or "4.6 mmol/L"
}

// IsZero reports whether the answer is not known.
func (r Reply) IsZero() bool {
	return r.YesNo == screening.Unknown && r.Choice == "" && r.List.IsZero() && r.Text == ""
}

func (r Reply) clone() Reply {
	r.List.Present, r.List.Unsure = slices.Clone(r.List.Present), slices.Clone(r.List.Unsure)
	return r
}

// check returns what keeps r from being an answer to q, whatever it says.
func (q FormQuestion) check(r Reply) error {
	var bad field.Errors
	for _, of := range [...]struct {
		path    string
		forms   []ReplyForm
		got     any
		isGiven bool
	}{
		{"/yes_no", []ReplyForm{YesNo}, r.YesNo, r.YesNo != screening.Unknown},
		{"/choice", []ReplyForm{OneOf}, r.Choice, r.Choice != ""},
		{"/list", []ReplyForm{SeveralOf}, r.List, !r.List.IsZero()},
		{"/text", []ReplyForm{Whole, Quantity, Date, FreeText}, r.Text, r.Text != ""},
	} {
		if of.isGiven && !slices.Contains(of.forms, q.Form) {
			bad.Add(of.path, field.Bad(of.got, fmt.Sprintf("an answer of the form %q", q.Form), field.ErrConflict))
		}
	}
	bad.Refuse(r.YesNo > screening.Yes, "/yes_no", r.YesNo, "yes or no", field.ErrUnknown)
	if r.Choice != "" {
		bad.Add("/choice", q.offers(r.Choice))
	}
	bad.Add("/list", q.checkList(r.List))
	return bad.Err()
}

// checkList returns what is wrong with a list of choices.
func (q FormQuestion) checkList(l screening.Checklist) error {
	var bad field.Errors
	bad.Refuse(!l.Asked && !l.IsZero(), "/asked", false, "true where the list holds codes", field.ErrConflict)
	seen := map[screening.Code]bool{}
	for i, code := range slices.Concat(l.Present, l.Unsure) {
		path := fmt.Sprintf("/present/%d", i)
		if i >= len(l.Present) {
			path = fmt.Sprintf("/unsure/%d", i-len(l.Present))
		}
		bad.Add(path, q.offers(code))
		bad.Refuse(seen[code], path, code, "each code once", field.ErrDuplicate)
		seen[code] = true
	}
	return bad.Err()
}

// offers returns nil if code is one of the choices of q.
func (q FormQuestion) offers(code screening.Code) error {
	if !slices.ContainsFunc(q.Choices, func(c Choice) bool { return c.Code == code }) {
		return field.Bad(fmt.Sprintf("%.60q", string(code)), fmt.Sprintf("one of the %d choices of %s", len(q.Choices), q.Key), field.ErrUnknown)
	}
	return nil
}

package evidence

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Code names a decision, such as "dose.load-finding". Codes are stable: they
// are what a record stores and a translation is keyed by.
type Code string

// Arg is a named value in a reason, with its unit in the text.
type Arg struct {
	Name  string `json:"name"`
	Value string `json:"value"`
}

// A Reason says why something was decided.
type Reason struct {
	Code  Code     `json:"code"`
	Args  []Arg    `json:"args,omitempty"`
	Facts []FactID `json:"facts,omitempty"`
}

// Because returns a reason with the given code and facts.
func Because(code Code, facts ...FactID) Reason { return Reason{Code: code, Facts: facts} }

// With returns r with one more value, printed with %v; a mass is printed short,
// rounded down, since most masses in reasons are ceilings.
func (r Reason) With(name string, value any) Reason {
	args := make([]Arg, len(r.Args), len(r.Args)+1)
	copy(args, r.Args)
	r.Args = append(args, Arg{name, printed(value)})
	return r
}

// printed is what [fmt.Sprint] gives, found sooner for what most reasons say.
func printed(value any) (text string) {
	switch v := value.(type) {
	case string:
		return v
	case int:
		return strconv.Itoa(v)
	case units.Mass:
		return v.Short(units.Down)
	case fmt.Formatter, error, reflect.Value: // Sprint does not ask their String
		return fmt.Sprint(v)
	case fmt.Stringer:
		defer func() {
			if recover() != nil { // as from a nil pointer, of which Sprint knows what to print
				text = fmt.Sprint(v)
			}
		}()
		return v.String()
	}
	if v := reflect.ValueOf(value); v.Kind() == reflect.String { // an ID
		return v.String()
	}
	return fmt.Sprint(value)
}

// Wording is what a code says to the two readers. {name} stands for the
// argument of that name.
type Wording struct {
	Client    string `json:"client"`    // short and kind; empty where a client need not read it
	Clinician string `json:"clinician"` // the rule, its answer and the values
}

// Words holds the wording of codes. Each package that gives reasons has a
// function Words with its own table; a table in another language takes its place.
type Words map[Code]Wording

// Client returns the sentence for the client, "" if there is none.
func (w Words) Client(r Reason) string { return fill(w[r.Code].Client, r.Args) }

// Clinician returns the sentence for the clinician; a code without wording
// gives the code and its values, so that nothing is lost.
func (w Words) Clinician(r Reason) string {
	if text := w[r.Code].Clinician; text != "" {
		return fill(text, r.Args)
	}
	var b strings.Builder
	b.WriteString(string(r.Code))
	for _, a := range r.Args {
		b.WriteString("; " + a.Name + ": " + a.Value)
	}
	return b.String()
}

// fill puts the values in, in one pass: a value that looks like a slot stays.
func fill(text string, args []Arg) string {
	pairs := make([]string, 0, 2*len(args))
	for _, a := range args {
		pairs = append(pairs, "{"+a.Name+"}", a.Value)
	}
	return strings.NewReplacer(pairs...).Replace(text)
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

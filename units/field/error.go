package field

import (
	"errors"
	"fmt"
	"strings"
)

// Categories of bad input. A [*Error] unwraps to one of them.
var (
	// ErrSyntax: the text is not of the form that the field asks for.
	ErrSyntax = errors.New("malformed")
	// ErrOutOfRange: the value lies outside what the field allows.
	ErrOutOfRange = errors.New("out of range")
	// ErrOverflow: the result does not fit its type.
	ErrOverflow = errors.New("overflow")
	// ErrMissing: a value that is needed was not given.
	ErrMissing = errors.New("not given")
	// ErrUnknown: a name or code that is not known here.
	ErrUnknown = errors.New("unknown")
	// ErrDuplicate: a name that stands twice where it may stand once.
	ErrDuplicate = errors.New("given twice")
	// ErrConflict: two fields that contradict each other.
	ErrConflict = errors.New("contradiction")
)

// An Error reports one bad field of an input.
type Error struct {
	Path    string // JSON Pointer (RFC 6901) from the value at hand, such as "/sets/0/reps"
	Got     string // the value as it was given; empty if none was
	Allowed string // what would be accepted, in words and with units
	Err     error  // category: one of the sentinels, or of another package's

	// Line and Column say where the field stands in the text that was read, from
	// 1, the column in characters; 0 where no text was read.
	Line, Column int
}

// Error gives category, field, value and allowed range in one line, and where
// it stands in the text, if one was read.
func (e *Error) Error() string {
	e = OrZero(e)
	var b strings.Builder
	if e.Err != nil {
		b.WriteString(e.Err.Error())
	} else {
		b.WriteString("bad field")
	}
	b.WriteString(": ")
	if e.Path == "" {
		b.WriteString("value")
	} else {
		b.WriteString(short(e.Path))
	}
	if e.Got != "" {
		b.WriteString(" = " + short(e.Got))
	}
	if e.Allowed != "" {
		b.WriteString(", allowed: " + short(e.Allowed))
	}
	if e.Line > 0 {
		fmt.Fprintf(&b, " (line %d, column %d)", e.Line, e.Column)
	}
	return b.String()
}

// Unwrap returns the category.
func (e *Error) Unwrap() error { return OrZero(e).Err }

// Bad makes the [*Error] of the value at hand; got is printed with %v, and nil
// is left out. [At] and [Errors.Add] move it to where the value stands.
func Bad(got any, allowed string, category error) *Error { return New("", got, allowed, category) }

// New is Bad for a field at a path below the value at hand.
func New(path string, got any, allowed string, category error) *Error {
	e := &Error{Path: path, Allowed: allowed, Err: category}
	if got != nil {
		e.Got = fmt.Sprint(got)
	}
	return e
}

// Errors are all the bad fields of one input, in the order met.
type Errors []*Error

// Error gives one field a line: of very many the first ones, and how many more
// there are. A nil element is passed over, here and in Unwrap and Err.
func (e Errors) Error() string { return e.given().text() }

// Unwrap lets [errors.Is] and [errors.As] see every field.
func (e Errors) Unwrap() []error {
	var errs []error
	for _, f := range e.given() {
		errs = append(errs, f)
	}
	return errs
}

// Add takes err in, its fields moved below path; nil, also a nil [*Error],
// is passed over.
func (e *Errors) Add(path string, err error) {
	if err != nil { // in line where it is called: most of what is checked is good
		e.add(path, err)
	}
}

// Refuse adds the error of the field at path, as [New] makes it, where wrong is true. Its
// arguments are made either way: a check that may allocate nothing asks first.
func (e *Errors) Refuse(wrong bool, path string, got any, allowed string, category error) {
	if wrong {
		e.Add(path, Bad(got, allowed, category))
	}
}

func (e *Errors) add(path string, err error) {
	for _, f := range flatten(err) {
		if f == nil || e == nil { // a *Error that was nil before it became an error; nowhere to add to
			continue
		}
		moved := *f
		moved.Path = path + f.Path
		*e = append(*e, &moved)
	}
}

// Err returns nil if nothing was added, else the errors themselves.
func (e Errors) Err() error {
	if len(e) == 0 {
		return nil
	}
	return e.refusal()
}

//go:noinline
func (e Errors) refusal() error { // apart, so that Err is in line
	if e = e.given(); len(e) == 0 {
		return nil
	}
	return e
}

// At returns err with its fields moved below path, nil for nil. An error that
// names no field becomes the error of the field at path.
func At(path string, err error) error {
	var all Errors
	all.Add(path, err)
	return all.Err()
}

// flatten flattens err to field errors, those of joined errors one by one; an
// error that names no field is wrapped.
func flatten(err error) []*Error {
	if err == nil { // before the variables below, which escape
		return nil
	}
	var one *Error
	var many Errors
	switch e := err.(type) {
	case *Error:
		return []*Error{e}
	case Errors:
		return e
	case interface{ Unwrap() []error }:
		if errors.As(err, &one) {
			for _, joined := range e.Unwrap() {
				many = append(many, flatten(joined)...)
			}
			return many
		}
	}
	switch {
	case errors.As(err, &many):
		return many
	case errors.As(err, &one) && one != nil:
		return []*Error{one}
	}
	return []*Error{{Err: err}}
}

package units

import (
	"errors"
	"fmt"
	"strings"
)

// Categories of bad input. A [*FieldError] unwraps to one of them.
var (
	// ErrSyntax: the text is not of the form that the field asks for.
	ErrSyntax = errors.New("units: malformed")
	// ErrOutOfRange: the value lies outside what the field allows.
	ErrOutOfRange = errors.New("units: out of range")
	// ErrOverflow: the result does not fit its type.
	ErrOverflow = errors.New("units: overflow")
	// ErrMissing: a value that is needed was not given.
	ErrMissing = errors.New("units: not given")
	// ErrUnknown: a name or code that is not known here.
	ErrUnknown = errors.New("units: unknown")
	// ErrDuplicate: a name that stands twice where it may stand once.
	ErrDuplicate = errors.New("units: given twice")
	// ErrConflict: two fields that contradict each other.
	ErrConflict = errors.New("units: contradiction")
	// ErrNoRIR: the effort rating has no value in repetitions in reserve.
	ErrNoRIR = errors.New("units: rating has no value in repetitions in reserve")
)

// A FieldError reports one bad field of an input.
type FieldError struct {
	Path    string // JSON Pointer (RFC 6901) from the value at hand, such as "/sets/0/reps"
	Got     string // the value as it was given; empty if none was
	Allowed string // what would be accepted, in words and with units
	Err     error  // category: one of the sentinels, or of another package's
}

// Error gives category, field, value and allowed range in one line.
func (e *FieldError) Error() string {
	var b strings.Builder
	if e.Err != nil {
		b.WriteString(e.Err.Error())
	} else {
		b.WriteString("units: bad field")
	}
	b.WriteString(": ")
	if e.Path == "" {
		b.WriteString("value")
	} else {
		b.WriteString(e.Path)
	}
	if e.Got != "" {
		b.WriteString(" = " + e.Got)
	}
	if e.Allowed != "" {
		b.WriteString(", allowed: " + e.Allowed)
	}
	return b.String()
}

// Unwrap returns the category.
func (e *FieldError) Unwrap() error { return e.Err }

// Field makes a [*FieldError]; got is printed with %v, and nil is left out.
func Field(path string, got any, allowed string, category error) *FieldError {
	e := &FieldError{Path: path, Allowed: allowed, Err: category}
	if got != nil {
		e.Got = fmt.Sprint(got)
	}
	return e
}

// FieldErrors are all the bad fields of one input, in the order met.
type FieldErrors []*FieldError

// Error gives one field a line.
func (e FieldErrors) Error() string {
	lines := make([]string, len(e))
	for i, f := range e {
		lines[i] = f.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap lets [errors.Is] and [errors.As] see every field.
func (e FieldErrors) Unwrap() []error {
	errs := make([]error, len(e))
	for i, f := range e {
		errs[i] = f
	}
	return errs
}

// Add takes err in, its fields moved below path; nil, also a nil [*FieldError],
// is passed over.
func (e *FieldErrors) Add(path string, err error) {
	for _, f := range fields(err) {
		if f == nil { // a *FieldError that was nil before it became an error
			continue
		}
		moved := *f
		moved.Path = path + f.Path
		*e = append(*e, &moved)
	}
}

// Err returns nil if nothing was added, else the errors themselves.
func (e FieldErrors) Err() error {
	if len(e) == 0 {
		return nil
	}
	return e
}

// At returns err with its fields moved below path, nil for nil. An error that
// names no field becomes the error of the field at path.
func At(path string, err error) error {
	var all FieldErrors
	all.Add(path, err)
	return all.Err()
}

// fields flattens err to field errors, those of joined errors one by one; an
// error that names no field is wrapped.
func fields(err error) []*FieldError {
	if err == nil { // before the variables below, which escape
		return nil
	}
	var one *FieldError
	var many FieldErrors
	switch e := err.(type) {
	case *FieldError:
		return []*FieldError{e}
	case FieldErrors:
		return e
	case interface{ Unwrap() []error }:
		if errors.As(err, &one) {
			for _, joined := range e.Unwrap() {
				many = append(many, fields(joined)...)
			}
			return many
		}
	}
	switch {
	case errors.As(err, &many):
		return many
	case errors.As(err, &one):
		return []*FieldError{one}
	}
	return []*FieldError{{Err: err}}
}

// Must returns v and panics if err is not nil. It is for package-level tables
// of constants and for tests, never for input.
func Must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

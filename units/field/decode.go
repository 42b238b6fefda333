package field

import (
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strings"
)

// How says what becomes of names that are not known.
type How uint8

// Ways of decoding. In each of them a name that stands twice is an error.
const (
	Strict   How = iota // an unknown name is an [ErrUnknown]
	PassOver            // unknown names are passed over, as by the reader of a record that a later version wrote
)

// Decode decodes exactly one JSON value into the value that v points to. It is
// the door at which this module is strict; [encoding/json] is not, and passes
// over a name that stands twice. Names match the json tag (or the name of the
// field) letter by letter, and an unknown name (unless passed over), a name
// given twice, invalid UTF-8, a list of another length than its array, or null
// where Go has no nil is an error.
//
// Every bad field is reported, the first thousand of them at most, as [Errors]
// in document order with a JSON Pointer, a line and a column each: [ErrUnknown]
// and [ErrDuplicate] for names, [ErrMissing] for null, [ErrOverflow] for a
// number that does not fit, [ErrSyntax] for a value of another kind and for
// malformed text, which ends the reading; so do arrays and objects more than 200 deep in
// one another. Then *v is left as it was; otherwise all of it is replaced.
//
// Values may be booleans, texts, integers, floats, structs, pointers, slices,
// arrays, maps with text keys, any, and what implements
// [encoding/json.Unmarshaler] or [encoding.TextUnmarshaler] (fed by texts only);
// errors from these are moved below the pointer of their field, and the first
// are strict in their own way. Untagged embedded structs are flattened; of two
// fields with one name the outer counts. The tag option string and the base64
// form of byte slices are not known here.
func Decode(data []byte, v any, how How) error {
	target := reflect.ValueOf(v)
	if target.Kind() != reflect.Pointer || target.IsNil() {
		return Errors{Bad(fmt.Sprintf("%T", v), "a pointer that is not nil to decode into", ErrMissing)}
	}
	fresh, d := read(data, target.Type().Elem(), how)
	if len(d.errs) == 0 {
		target.Elem().Set(fresh)
	}
	return d.errs.Err()
}

// DecodeChecked is Decode for a value that has to pass a check too, such as its
// own Validate, so that the bad fields of one text come all at once: those that
// cannot be read and those that check refuses, each with its line and column.
// What check says of a field that could not be read is left out, also that it is
// missing where only a part of it could not be read, and so is what it says where
// the text is malformed.
func DecodeChecked[T any](data []byte, v *T, how How, check func(T) error) error {
	if v == nil {
		return Errors{Bad(fmt.Sprintf("%T", v), "a pointer that is not nil to decode into", ErrMissing)}
	}
	fresh, d := read(data, reflect.TypeFor[T](), how)
	value := fresh.Interface().(T)
	if !d.root.cut && check != nil {
		d.merge(check(value))
	}
	if len(d.errs) == 0 {
		*v = value
	}
	return d.errs.Err()
}

// read returns what could be read into a new value of the type.
func read(data []byte, t reflect.Type, how How) (reflect.Value, *binder) {
	p := parse(data)
	b := &binder{how: how, root: p.root, text: places{data: data}}
	fresh := reflect.New(t).Elem()
	b.bind(p.root, fresh)
	if p.err != nil {
		b.errs = append(b.errs, b.placed(p.err, p.failed))
	}
	return fresh, b
}

// merge takes in what a check says of the fields that could be read.
func (b *binder) merge(err error) {
	var said Errors
	said.Add("", err)
	unread := slices.Clone(b.errs)
	for _, e := range said {
		missing := errors.Is(e, ErrMissing)
		known := func(u *Error) bool {
			return e.Path == u.Path || strings.HasPrefix(e.Path, u.Path+"/") || missing && strings.HasPrefix(u.Path, e.Path+"/")
		}
		narrow(unread, e)
		if len(b.errs) < maxBadFields && !slices.ContainsFunc(unread, known) {
			b.errs = append(b.errs, b.placed(e, b.root.find(e.Path).at))
		}
	}
}

// narrow takes what a check allows of a number, such as the ages that people have,
// into the error of one that could not be read: its type allows far more. One that does
// not fit the type is then out of that range, and not of a machine's.
func narrow(unread Errors, said *Error) {
	for _, u := range unread {
		if u.Path == said.Path && said.Allowed != "" && strings.HasPrefix(u.Allowed, wholeNumber) {
			u.Allowed = wholeNumber + ", " + said.Allowed
			if u.Err == ErrOverflow {
				u.Err = ErrOutOfRange
			}
		}
	}
}

// placed gives e its line and column.
func (b *binder) placed(e *Error, at int) *Error {
	e.Line, e.Column = b.text.place(at)
	return e
}

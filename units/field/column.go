package field

import (
	"bytes"
	"database/sql/driver"
	"encoding"
	"encoding/json"
	"fmt"
)

// storedText is what a column holds of a type with a text form.
const storedText = "the text that was stored, not a number"

// Value is for Value methods of types with a text form: the text, and NULL for
// the empty one, which means "not given". A number would be stored without a
// word otherwise, and means something else in another version. Nil is NULL.
func Value(v encoding.TextMarshaler) (driver.Value, error) {
	if v == nil {
		return nil, nil
	}
	text, err := v.MarshalText()
	if err != nil || len(text) == 0 {
		return nil, err
	}
	return string(text), nil
}

// Scan is for Scan methods of types with a text form. NULL is the empty text: an
// [ErrMissing] for a type that has no "not given". A number, or anything else that
// is no text, is an [ErrSyntax]; nowhere to read it into is an [ErrMissing].
func Scan(src any, into encoding.TextUnmarshaler) error {
	if into == nil {
		return Bad(nil, "a value to read into", ErrMissing)
	}
	text, null, err := stored(src)
	if err != nil {
		return err
	}
	if err = into.UnmarshalText(text); null && err != nil {
		return Bad("NULL", storedText, ErrMissing)
	}
	return err
}

// stored returns the text that a driver hands over, and whether it was NULL.
func stored(src any) (text []byte, null bool, err error) {
	switch s := src.(type) {
	case nil:
		return nil, true, nil
	case string:
		return []byte(s), false, nil
	case []byte:
		return s, false, nil
	}
	return nil, false, Bad(fmt.Sprintf("%T %v", src, src), storedText, ErrSyntax)
}

// A Column keeps a value of any type in a column of a database: by the methods
// that the type has for that, as every type of this module with a text form does,
// and else as JSON, which is read strictly. It implements [driver.Valuer] and the
// Scanner of database/sql.
//
// NULL stands for what JSON writes as null, such as a nil pointer or list; any
// other type refuses it with an [ErrMissing]. A number in the column is an
// [ErrSyntax].
type Column[T any] struct{ V T }

// Value returns text, or nil for NULL.
func (c Column[T]) Value() (driver.Value, error) {
	if v, ok := any(c.V).(driver.Valuer); ok && scanner(&c.V) != nil {
		return v.Value()
	}
	text, err := json.Marshal(c.V)
	if err != nil || bytes.Equal(text, null) {
		return nil, err
	}
	return string(text), nil
}

var null = []byte("null")

// Scan reads what Value wrote.
func (c *Column[T]) Scan(src any) error {
	var v T
	if s := scanner(&v); s != nil {
		if err := s.Scan(src); err != nil {
			return err
		}
		c.V = v
		return nil
	}
	text, isNull, err := stored(src)
	if err != nil {
		return err
	}
	if isNull {
		if zero, err := json.Marshal(v); err != nil || !bytes.Equal(zero, null) {
			return Bad("NULL", "the JSON that was stored", ErrMissing)
		}
	} else if err := Decode(text, &v, Strict); err != nil {
		return err
	}
	c.V = v
	return nil
}

// scanner returns the Scan method of the type that v points to, nil if it has none.
func scanner(v any) interface{ Scan(src any) error } {
	s, _ := v.(interface{ Scan(src any) error })
	return s
}

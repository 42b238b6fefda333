package record

import (
	"database/sql/driver"
	"encoding/json"

	"example.org/posology/units/field"
)

// Value returns the record as JSON text for a column of a database. A record that
// [Decode] would not read back is an error, every bad field at once.
//
// A struct that embeds a Record is stored as the record alone, without its own
// fields: give such a column the record, or the struct methods of its own.
func (r Record) Value() (driver.Value, error) {
	if err := r.Validate(); err != nil {
		return nil, err
	}
	text, err := json.Marshal(r)
	return string(text), err
}

// Scan reads a stored record of any version up to [Version], as [Decode] does
// under [field.Strict]. NULL is no record: a [field.ErrMissing]. Anything else that
// is no text is a [field.ErrSyntax].
func (r *Record) Scan(src any) error {
	var text stored
	if err := field.Scan(src, &text); err != nil {
		return err
	}
	got, err := Decode(text, field.Strict)
	if err == nil {
		*r = got
	}
	return err
}

// stored is the text of a record.
type stored []byte

func (s *stored) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		return field.Bad(nil, "a record", field.ErrMissing)
	}
	*s = text
	return nil
}

package record_test

import (
	"errors"
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// A stored record reads back to the same bytes; an older version is lifted.
func TestStoredRecord(t *testing.T) {
	r := read(t, stored)
	value, err := r.Value()
	if err != nil {
		t.Fatal(err)
	}
	text, ok := value.(string)
	if !ok {
		t.Fatalf("stored as %T", value)
	}
	for _, src := range []any{text, []byte(text)} {
		var back record.Record
		if err := back.Scan(src); err != nil || encoded(t, back) != encoded(t, r) {
			t.Errorf("%T: %v", src, err)
		}
	}
	var old record.Record
	if err := old.Scan(file(t, visit)); err != nil || old.Version != record.Version {
		t.Errorf("version %d, %v", old.Version, err)
	}
	var column field.Column[record.Record]
	if err := column.Scan(file(t, visit)); err != nil || encoded(t, column.V) != encoded(t, old) {
		t.Errorf("as a column: %v", err)
	}
}

// What could not be read back is not stored, and what is no record is not read.
func TestStoredRecordRefuses(t *testing.T) {
	r := read(t, stored)
	spoilt := r
	spoilt.BodyMass = -1
	_, unsaid := record.Record{}.Value()
	_, bad := spoilt.Value()
	for _, tt := range []struct {
		name     string
		err      error
		category error
	}{
		{"the zero record", unsaid, field.ErrMissing},
		{"a body mass below 0", bad, field.ErrOutOfRange},
		{"NULL", r.Scan(nil), field.ErrMissing},
		{"an empty text", r.Scan(""), field.ErrMissing},
		{"a number", r.Scan(int64(1)), field.ErrSyntax},
		{"half a record", r.Scan(`{"version": 4`), field.ErrSyntax},
		{"a newer version", r.Scan(`{"version": 5}`), record.ErrVersion},
	} {
		var one *field.Error
		if !errors.As(tt.err, &one) || !errors.Is(tt.err, tt.category) {
			t.Errorf("%s: %v, want %v", tt.name, tt.err, tt.category)
		}
	}
	if encoded(t, r) != encoded(t, read(t, stored)) {
		t.Error("what could not be read changed the record")
	}
}

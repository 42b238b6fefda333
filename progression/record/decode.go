package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"

	"example.org/posology/units/field"
)

// ErrVersion: a record of a version that this package does not know.
var ErrVersion = errors.New("another version of records")

var allowedVersion = fmt.Sprint(Version)

// Decode reads a record of any version up to [Version], and lifts it to that.
// Every bad field comes in one round as [field.Errors], with the place, line and
// column at which it stands in the text.
//
// A newer version is an [ErrVersion] under [field.Strict]. Under
// [field.PassOver] it is read without what it added and becomes one of the present
// version: nobody then heeds what the newer one might have forbidden, and
// storing it loses that.
func Decode(data []byte, how field.How) (Record, error) {
	version, known := versionOf(data)
	if known && version == 0 {
		return decode0(data, how)
	}
	var r Record
	err := field.DecodeChecked(data, &r, how, func(r Record) error {
		var bad field.Errors
		older := r.Version > 0 && r.Version < Version
		if older && how == field.Strict {
			bad.Add("", r.newer(r.Version))
		}
		if older || how == field.PassOver && r.Version > Version {
			r.Version = Version
		}
		bad.Add("", r.Validate())
		return bad.Err()
	})
	if err != nil {
		return Record{}, err
	}
	r.Version = Version
	return r, nil
}

// versionOf finds the version of a record, even of one whose text breaks off
// later; none is 0. It is false where the version cannot be read.
func versionOf(data []byte) (version int, known bool) {
	d := json.NewDecoder(bytes.NewReader(data))
	if open, err := d.Token(); err != nil || open != json.Delim('{') {
		return 0, true
	}
	for d.More() {
		name, err := d.Token()
		if err != nil {
			break
		}
		if name == "version" {
			return version, d.Decode(&version) == nil
		}
		var skipped json.RawMessage
		if d.Decode(&skipped) != nil {
			break
		}
	}
	return 0, true
}

package setlog

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"iter"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// ReadJSONLines yields the sets of a log with one JSON object a line. It reads
// r as far as the sequence is followed, once. Unknown fields and fields given
// twice are errors; each bad line is a [*RowError] that unwraps to its
// [field.Errors], and the reading goes on. An error of r itself comes
// last, and no reader at all is a
// [field.ErrMissing]. Sets are valid by [Set.Validate].
func ReadJSONLines(r io.Reader) iter.Seq2[Set, error] {
	if r == nil {
		return func(yield func(Set, error) bool) { yield(Set{}, missing("a reader")) }
	}
	return func(yield func(Set, error) bool) { rows(newLines(r), readObject)(yield) }
}

type plainSet Set

// logged is a set whose load can be seen to be missing.
type logged struct {
	plainSet
	Load *units.Mass `json:"load"`
}

func readObject(line []byte) (Set, *RowError) {
	var got logged
	var bad field.Errors
	if bad.Add("", field.Decode(line, &got, field.Strict)); len(bad) > 0 {
		return Set{}, fault(line, bad)
	}
	s := Set(got.plainSet)
	if got.Load != nil {
		s.Load = *got.Load
	}
	if bad = check(s, got.Load != nil, nil); len(bad) > 0 {
		return Set{}, fault(line, bad)
	}
	return s, nil
}

// fault names the place of the first bad field in the line.
func fault(line []byte, bad field.Errors) *RowError {
	for _, f := range bad {
		f.Line, f.Column = 0, 0 // they count within the line, and the row has its own
	}
	name, _, _ := strings.Cut(strings.TrimPrefix(bad[0].Path, "/"), "/")
	if bad[0].Path == "" {
		return &RowError{Column: breach(line), Err: bad}
	}
	name = strings.NewReplacer("~1", "/", "~0", "~").Replace(name)
	return &RowError{Column: find(line, name, errors.Is(bad[0], field.ErrDuplicate)), Name: name, Err: bad}
}

// breach returns the byte, from 1, at which line stops being JSON.
func breach(line []byte) int {
	var broken *json.SyntaxError
	if err := json.Unmarshal(line, new(any)); errors.As(err, &broken) {
		return max(1, int(broken.Offset))
	}
	return 1
}

// find returns the byte, from 1, at which the object's field of the given name
// begins, its second if again is set; 1 if there is none.
func find(line []byte, name string, again bool) int {
	d := json.NewDecoder(bytes.NewReader(line))
	d.UseNumber()
	depth, isKey := 0, false
	for {
		before := d.InputOffset()
		token, err := d.Token()
		if err != nil {
			return 1
		}
		key, _ := token.(string)
		switch token {
		case json.Delim('{'), json.Delim('['):
			depth++
			isKey = depth == 1
			continue
		case json.Delim('}'), json.Delim(']'):
			depth--
		}
		if depth == 1 && isKey && key == name {
			if !again {
				quote := bytes.IndexByte(line[before:], '"')
				return int(before) + quote + 1
			}
			again = false
		}
		isKey = depth == 1 && !isKey
	}
}

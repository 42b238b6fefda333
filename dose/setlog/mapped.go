package setlog

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"iter"
	"strconv"
	"strings"

	"example.org/posology/units/field"
)

// JSONLines yields the rows of a log with one JSON object a line, of at most 64 kibibytes,
// whose names are those of the columns. Values are texts, numbers or null. Names that
// are no columns are passed over, whatever they hold; one given twice is an error. All
// else is as in [Reader.CSV].
func (rd Reader) JSONLines(r io.Reader) iter.Seq2[LoggedSet, error] {
	return func(yield func(LoggedSet, error) bool) {
		if r == nil {
			yield(LoggedSet{}, missing("a reader"))
			return
		}
		if err := rd.Validate(); err != nil {
			yield(LoggedSet{}, &RowError{Line: 1, Column: 1, Err: err})
			return
		}
		o := newObjects(&rd)
		for l := newLines(r); ; {
			line, err := l.next()
			if err == io.EOF {
				return
			}
			var row LoggedSet
			if err != nil {
				err = &RowError{Line: l.n, Column: 1, Err: err}
			} else if bad := o.row(l.n, line, &row); bad != nil {
				err = bad
			}
			if !yield(row, err) || err != nil && !goesOn(err) {
				return
			}
		}
	}
}

// objects makes rows of JSON objects.
type objects struct {
	*parser
	fields map[string]int // by name of the column
	recs   records        // of which only what a row has is used
}

func newObjects(rd *Reader) *objects {
	o := &objects{parser: newParser(rd), fields: map[string]int{}}
	for i := range fieldNames {
		if name, _ := rd.column(i); name != "" {
			o.fields[name] = i
		}
	}
	_, o.numbered = rd.Columns[fieldNames[ofSet]]
	return o
}

// row reads one object.
func (o *objects) row(n int, line []byte, row *LoggedSet) *RowError {
	o.recs.line, o.recs.cells, o.recs.places = n, o.recs.cells[:0], o.recs.places[:0]
	for i := range o.at {
		o.at[i], o.texts[i] = -1, nil
	}
	if err := o.read(line); err != nil {
		err.Line = n
		return err
	}
	o.pick(o.recs.cells)
	if !o.quick(&row.Set) {
		set, faults := o.slow()
		if row.Set = set; len(faults) > 0 {
			*row = LoggedSet{}
			return o.fault(&o.recs, faults)
		}
	}
	row.Line, row.Doubts = n, o.doubts(&row.Set)
	return nil
}

// read takes the texts of an object.
func (o *objects) read(line []byte) *RowError {
	d := json.NewDecoder(bytes.NewReader(line))
	d.UseNumber()
	if open, err := d.Token(); err != nil || open != json.Delim('{') {
		return broken(line, "one JSON object")
	}
	for d.More() {
		before := int(d.InputOffset())
		name, err := d.Token()
		if err != nil {
			return broken(line, "one JSON object")
		}
		var value any
		if err := d.Decode(&value); err != nil {
			return broken(line, "one JSON object")
		}
		column := before + bytes.IndexByte(line[before:], '"') + 1
		if err := o.take(folded(name.(string)), value, place{o.recs.line, column}); err != nil {
			return err
		}
	}
	if _, err := d.Token(); err != nil {
		return broken(line, "one JSON object")
	}
	if _, err := d.Token(); err != io.EOF {
		return broken(line, "one JSON object and nothing behind it")
	}
	return nil
}

func broken(line []byte, allowed string) *RowError {
	return &RowError{Column: breach(line), Text: shortText(line), Err: field.Bad(nil, allowed, field.ErrSyntax)}
}

// plainNumber writes a number without an exponent.
func plainNumber(n json.Number) string {
	if x, err := n.Float64(); err == nil && strings.ContainsAny(n.String(), "eE") {
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	return n.String()
}

// take keeps a value as the text of its column.
func (o *objects) take(name string, value any, at place) *RowError {
	i, known := o.fields[name]
	if !known {
		return nil
	}
	refuse := func(got any, allowed string, category error) *RowError {
		var bad field.Errors
		bad.Add("/"+fieldNames[i], field.Bad(got, allowed, category))
		return &RowError{Column: at.column, Name: fieldNames[i], Err: bad}
	}
	if o.at[i] >= 0 {
		return refuse(nil, "each name once", field.ErrDuplicate)
	}
	text := ""
	switch v := value.(type) {
	case nil:
	case string:
		text = v
	case json.Number:
		text = plainNumber(v)
	default:
		return refuse(fmt.Sprintf("%.40v", value), "a text or a number", field.ErrSyntax)
	}
	o.at[i] = len(o.recs.cells)
	o.recs.cells, o.recs.places = append(o.recs.cells, []byte(text)), append(o.recs.places, at)
	return nil
}

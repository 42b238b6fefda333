package setlog

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"iter"
	"strings"
	"unicode/utf8"

	"example.org/posology/units/field"
)

// WriteCSV writes a log that [ReadCSV] reads back as the same sets, with every
// column. It stops at the first set that is not valid by [Set.Validate] or
// whose person or exercise holds a line break, is not UTF-8, or begins with =, +, -, @ or a
// tab, which spreadsheets take for a formula, with a
// [*RowError] for the line it would have had, and at an error of w. No writer or no
// sequence at all is a [field.ErrMissing].
func WriteCSV(w io.Writer, sets iter.Seq[Set]) error {
	if w == nil || sets == nil {
		return missing("a writer and a sequence of sets")
	}
	out := bufio.NewWriter(w)
	for i, col := range columns {
		if i > 0 {
			out.WriteByte(',')
		}
		out.WriteString(col.name)
	}
	out.WriteByte('\n')
	line := 1
	for s := range sets {
		line++
		var bad field.Errors
		switch err := writeRow(out, s); {
		case errors.As(err, &bad):
			return &RowError{Line: line, Column: 1, Err: bad}
		case err != nil:
			return err
		}
	}
	return out.Flush()
}

// missing says that an argument was nil.
func missing(what string) error { return field.Bad(nil, what, field.ErrMissing) }

func writeRow(out *bufio.Writer, s Set) error {
	bad := writable(s)
	for i, col := range columns {
		cell, err := col.write(s)
		if err == nil {
			_, err = oneLine[string](cell)
		}
		if (col.name == "person" || col.name == "exercise") && cell != "" && strings.IndexByte("=+-@\t", cell[0]) >= 0 {
			err = field.Bad(fmt.Sprintf("%.40q", cell), "a text that does not begin with =, +, -, @ or a tab, since spreadsheets take that for a formula", field.ErrSyntax)
		}
		if !has(bad, "/"+col.name) {
			bad.Add("/"+col.name, err)
		}
		if i > 0 {
			out.WriteByte(',')
		}
		out.WriteString(quoted(cell))
	}
	if len(bad) > 0 {
		return bad
	}
	return out.WriteByte('\n') // the writer keeps any error before it
}

// writable returns what keeps s from being read back.
func writable(s Set) field.Errors {
	bad := check(s, true, nil)
	for _, text := range []struct{ path, value string }{{"/person", string(s.Key)}, {"/exercise", string(s.Exercise)}} {
		if !utf8.ValidString(text.value) && !has(bad, text.path) {
			bad.Add(text.path, field.Bad(fmt.Sprintf("%.40q", text.value), "UTF-8", field.ErrSyntax))
		}
	}
	return bad
}

// quoted sets a cell in quotes where it must be.
func quoted(cell string) string {
	if strings.ContainsAny(cell, `",`) {
		return `"` + strings.ReplaceAll(cell, `"`, `""`) + `"`
	}
	return cell
}

// WriteJSONLines writes a log that [ReadJSONLines] reads back as the same sets.
// It stops as [WriteCSV] does.
func WriteJSONLines(w io.Writer, sets iter.Seq[Set]) error {
	if w == nil || sets == nil {
		return missing("a writer and a sequence of sets")
	}
	out := json.NewEncoder(w)
	out.SetEscapeHTML(false)
	line := 0
	for s := range sets {
		line++
		if bad := writable(s); len(bad) > 0 {
			return &RowError{Line: line, Column: 1, Err: bad}
		}
		if err := out.Encode(s); err != nil {
			return err
		}
	}
	return nil
}

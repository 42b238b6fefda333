package setlog

import (
	"errors"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })

var words = evidence.Words{
	"setlog.missing":      {Clinician: "Line {line}, column {column}: nothing is given for {field}."},
	"setlog.unreadable":   {Clinician: "Line {line}, column {column}: {field} cannot be read: {text}."},
	"setlog.unknown":      {Clinician: "Line {line}, column {column}: {field} is not known here: {text}."},
	"setlog.out-of-range": {Clinician: "Line {line}, column {column}: {field} lies outside what is possible: {text}."},
	"setlog.conflict":     {Clinician: "Line {line}, column {column}: {field} contradicts another field: {text}."},
	"setlog.twice":        {Clinician: "Line {line}, column {column}: {field} is given twice."},
	"setlog.not-a-row":    {Clinician: "Line {line}, column {column}: this is no row with as many cells as the first line names, in UTF-8, and with every quote closed."},
	"setlog.too-long":     {Clinician: "Line {line}, column {column}: this is longer than a row may be, or more than can be kept."},
	"setlog.broken-off":   {Clinician: "Line {line}: the log could not be read any further."},

	"setlog.thousands": {Clinician: "{text} was read as {load}. If its comma parts thousands, that is a thousandth of it."},
	"setlog.heavy":     {Clinician: "{load} is far more than most people lift: was the unit or the decimal sign lost?"},
	"setlog.days":      {Clinician: "{day} lies outside the days that this log is taken to be of: was the year mistyped?"},
	"setlog.many":      {Clinician: "{reps} in one set are far more than usual: did two numbers run together?"},
}

// rowCodes say what kind of fault a row has, by the first of its errors.
var rowCodes = []struct {
	category error
	code     evidence.ReasonCode
}{
	{field.ErrMissing, "setlog.missing"},
	{field.ErrSyntax, "setlog.unreadable"},
	{field.ErrUnknown, "setlog.unknown"},
	{field.ErrOutOfRange, "setlog.out-of-range"},
	{field.ErrConflict, "setlog.conflict"},
	{field.ErrDuplicate, "setlog.twice"},
	{field.ErrOverflow, "setlog.too-long"},
}

// Reason returns what is wrong with the row as a code with line, column, field and text,
// and words in [Words]. The code goes by the first bad field.
func (e *RowError) Reason() evidence.Reason {
	e = field.OrZero(e)
	place := []evidence.Arg{evidence.Count("line", e.Line), evidence.Count("column", e.Column),
		evidence.ID("field", e.Name), evidence.Text("text", e.Text)}
	return evidence.Because(e.code()).With(place...)
}

func (e *RowError) code() evidence.ReasonCode {
	first := e.Err
	var bad field.Errors
	if errors.As(e.Err, &bad) {
		first = bad[0]
		for _, f := range bad {
			if f.Path == "/"+e.Name {
				first = f
			}
		}
	}
	for _, c := range rowCodes {
		if errors.Is(first, c.category) {
			if e.Name == "" && c.category == field.ErrSyntax {
				return "setlog.not-a-row"
			}
			return c.code
		}
	}
	return "setlog.broken-off"
}

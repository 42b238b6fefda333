package field

import (
	"fmt"
	"log/slog"
	"strings"
)

// mostLogged is how many fields a line of a log names.
const mostLogged = 5

// LogValue gives what is wrong with which field, and where, in one line. The
// value that was given, and what is allowed, are left out: either may tell of a
// person. [Error.Error] has both, and so has the line of an error that wraps this one by
// fmt.Errorf: slog does not look into it. Log what [errors.As] finds there.
func (e *Error) LogValue() slog.Value {
	if e == nil {
		return slog.Value{}
	}
	return slog.StringValue(e.logged())
}

// LogValue gives the first five fields as [Error.LogValue] does, and how many
// there are.
func (e Errors) LogValue() slog.Value {
	if e = e.given(); len(e) == 0 {
		return slog.Value{}
	}
	lines := make([]string, 0, mostLogged+1)
	for i, f := range e {
		if i == mostLogged {
			lines = append(lines, fmt.Sprintf("and %d more", len(e)-i))
			break
		}
		lines = append(lines, f.logged())
	}
	return slog.StringValue(strings.Join(lines, "; "))
}

// logged is one bad field without values. A name that is not known comes from
// outside: the path is quoted and shortened, and so is an error of another package.
func (e *Error) logged() string {
	path, kind := e.Path, "bad field"
	if path == "" {
		path = "value"
	}
	if e.Err != nil {
		kind = e.Err.Error()
	}
	text := inLine(path) + ": " + inLine(kind)
	if e.Line > 0 {
		text += fmt.Sprintf(" (line %d, column %d)", e.Line, e.Column)
	}
	return text
}

func inLine(text string) string { return strings.Trim(fmt.Sprintf("%.80q", text), `"`) }

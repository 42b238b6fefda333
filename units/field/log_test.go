package field_test

import (
	"bytes"
	"errors"
	"log/slog"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/units/field"
)

// logged is the line that slog's text handler writes of a value.
func logged(v any) string {
	var b bytes.Buffer
	drop := func(_ []string, a slog.Attr) slog.Attr {
		if a.Key == slog.TimeKey || a.Key == slog.LevelKey || a.Key == slog.MessageKey {
			return slog.Attr{}
		}
		return a
	}
	slog.New(slog.NewTextHandler(&b, &slog.HandlerOptions{ReplaceAttr: drop})).Info("", "err", v)
	return b.String()
}

func TestErrorsInLogs(t *testing.T) {
	one := field.New("/sets/0/reps", -1, "1 or more", field.ErrOutOfRange)
	placed := *one
	placed.Line, placed.Column = 3, 7
	var many field.Errors
	for range 7 {
		many.Add("", one)
	}
	var none *field.Error
	for _, tt := range []struct {
		v    any
		want string
	}{
		{one, `err="/sets/0/reps: out of range"`},
		{&placed, `err="/sets/0/reps: out of range (line 3, column 7)"`},
		{&field.Error{}, `err="value: bad field"`},
		{many[:2], `err="/sets/0/reps: out of range; /sets/0/reps: out of range"`},
		{many, `err="` + strings.Repeat("/sets/0/reps: out of range; ", 5) + `and 2 more"`},
		{field.Errors{nil}, `err=<nil>`}, {field.Errors{nil, one}, `err="/sets/0/reps: out of range"`},
		{field.Errors{}, `err=<nil>`}, {none, `err=<nil>`},
	} {
		if got := strings.TrimSpace(logged(tt.v)); got != tt.want {
			t.Errorf("%#v: %s, want %s", tt.v, got, tt.want)
		}
	}
}

// escape is how a log writes what does not print; "\x00x" holds no address.
var escape = regexp.MustCompile(`\\+[xuU][0-9a-f]+`)

// Whatever was given stays out of the log, and a line stays a line.
func TestErrorsInLogsAreShort(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		given := "given " + rapid.StringMatching(`[a-z]{8}`).Draw(t, "given")
		var all field.Errors
		for range rapid.IntRange(1, 9).Draw(t, "fields") {
			all.Add(rapid.String().Draw(t, "path"), &field.Error{Got: given, Allowed: given, Err: errors.New(rapid.String().Draw(t, "kind")), Line: rapid.Int().Draw(t, "line")})
		}
		for _, v := range []any{all, all[0]} {
			line := logged(v)
			if strings.Count(line, "\n") != 1 || strings.Contains(line, given) || strings.Contains(escape.ReplaceAllString(line, ""), "0x") && !strings.Contains(all.Error(), "0x") || len([]rune(line)) > 5000 {
				t.Fatalf("%q", line)
			}
		}
	})
}

package field_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"
	"unicode/utf8"

	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// malformed texts, with the place and the rest that the error names.
var malformed = []struct {
	data, path, got string
	at              int // bytes before it
}{
	{"", "", "the end of the text", 0},
	{" \n", "", "the end of the text", 2},
	{"{", "", "the end of the text", 1},
	{"[", "/0", "the end of the text", 1},
	{"[1,2", "", "the end of the text", 4},
	{"[1,]", "/1", `"]"`, 3},
	{"[1 2]", "", `"2]"`, 3},
	{"[,1]", "/0", `",1]"`, 1},
	{"[1}", "", `"}"`, 2},
	{`{"a":1,}`, "", `"}"`, 7},
	{`{"a" 1}`, "/a", `"1}"`, 5},
	{`{"a":}`, "/a", `"}"`, 5},
	{`{a:1}`, "", `"a:1}"`, 1},
	{`{'a':1}`, "", `"'a':1}"`, 1},
	{`{"a":{"b":[1,tru]}}`, "/a/b/1", `"tru]}}"`, 13},
	{`{"a":1} x`, "", `"x"`, 8},
	{`1 2`, "", `"2"`, 2},
	{`{}{}`, "", `"{}"`, 2},
	{`{"a/b":x}`, "/a~1b", `"x}"`, 7},
	{`NaN`, "", `"NaN"`, 0},
	{`-Infinity`, "", `"-Infinity"`, 0},
	{`01`, "", `"01"`, 0},
	{`1.`, "", `"1."`, 0},
	{`.5`, "", `".5"`, 0},
	{`+1`, "", `"+1"`, 0},
	{`0x10`, "", `"0x10"`, 0},
	{`True`, "", `"True"`, 0},
	{"\ufeff1", "", `"\ufeff1"`, 0},
	{"\x00", "", `"\x00"`, 0},
	{`"abc`, "", "the end of the text", 4},
	{`"abc\"`, "", "the end of the text", 6},
	{`"abc\`, "", "the end of the text", 5},
	{"\"a\nb\"", "", `"\"a\nb\""`, 0},
	{"\"\xff\"", "", `"\"\xff\""`, 0},
	{"{\"\xff\":1}", "", `"\"\xff\":1}"`, 1},
	{`"\x41"`, "", `"\"\\x41\""`, 0},
	{`"\u12"`, "", `"\"\\u12\""`, 0},
	{`"\u+123"`, "", `"\"\\u+123\""`, 0},
	{`"\ud800"`, "", `"\"\\ud800\""`, 0},
	{`"\udc00\ud800"`, "", `"\"\\udc00\\ud800\""`, 0},
	{`"\ud800\u0041"`, "", `"\"\\ud800\\u0041\""`, 0},
}

func TestDecodeSyntax(t *testing.T) {
	for _, tt := range malformed {
		old := any("old")
		v := old
		err := field.Decode([]byte(tt.data), &v, field.Strict)
		var all field.Errors
		if !errors.Is(err, field.ErrSyntax) || !errors.As(err, &all) || len(all) != 1 {
			t.Errorf("%q: %v, want one %v", tt.data, err, field.ErrSyntax)
			continue
		}
		before, last := tt.data[:tt.at], strings.LastIndex(tt.data[:tt.at], "\n")
		line, column := strings.Count(before, "\n")+1, utf8.RuneCountInString(before[last+1:])+1
		if all[0].Path != tt.path || all[0].Got != tt.got || all[0].Line != line || all[0].Column != column {
			t.Errorf("%q: %v, want at %q %s in line %d, column %d", tt.data, all[0], tt.path, tt.got, line, column)
		}
		if v != old {
			t.Errorf("%q changed the value to %v", tt.data, v)
		}
	}
}

func TestDecodeJSONKeepsErrorsBeforeSyntax(t *testing.T) {
	var l log
	err := field.Decode([]byte(`{"day":"x","sets":[{"reps":1.5,"tempo":[1,2`), &l, field.Strict)
	want := []string{"/day", "/sets/0/reps", "/sets/0/tempo"}
	if diff := cmp.Diff(want, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
	err = field.Decode([]byte(`{"best":{"tempo":[1,2,3,4`), &l, field.Strict) // cut short and too long
	if diff := cmp.Diff([]string{"/best/tempo", "/best/tempo"}, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
	err = field.Decode([]byte(`{"day":"x","best":{"rir":{"min":}}}`), &l, field.Strict)
	if diff := cmp.Diff([]string{"/day", "/best/rir/min"}, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
}

func TestDecodeJSONNesting(t *testing.T) {
	deep := func(n int) []byte { return []byte(strings.Repeat("[", n) + strings.Repeat("]", n)) }
	var v any
	if err := field.Decode(deep(200), &v, field.Strict); err != nil {
		t.Errorf("200 levels: %v", err)
	}
	for _, n := range []int{201, 1_000_000} {
		if err := field.Decode(deep(n), &v, field.Strict); !errors.Is(err, field.ErrSyntax) {
			t.Errorf("%d levels: %.80v, want %v", n, err, field.ErrSyntax)
		}
	}
	if err := field.Decode([]byte(strings.Repeat("[", 1_000_000)), &v, field.Strict); !errors.Is(err, field.ErrSyntax) {
		t.Errorf("a million brackets: %.80v, want %v", err, field.ErrSyntax)
	}
}

func TestDecodeJSONStrings(t *testing.T) {
	for data, want := range map[string]string{
		`""`:                           "",
		`"a\"\\\/\b\f\n\r\tz"`:         "a\"\\/\b\f\n\r\tz",
		`"\u00e9\u20AC\ud83d\ude00"`:   "é€😀",
		`"é€😀\ufffd"`:                  "é€😀\ufffd",
		`"\\ud800"`:                    `\ud800`,
		"\"\u007f\u2028\"":             "\u007f\u2028",
		"\"" + `\u0000` + "\"":         "\x00",
		" \t\r\n" + `"x"` + "\n\t\r  ": "x",
	} {
		var got, standard string
		if err := field.Decode([]byte(data), &got, field.Strict); err != nil || got != want {
			t.Errorf("%s gives %q, %v, want %q", data, got, err, want)
		}
		if err := json.Unmarshal([]byte(data), &standard); err != nil || standard != want {
			t.Errorf("encoding/json: %s gives %q, %v, want %q", data, standard, err, want)
		}
	}
}

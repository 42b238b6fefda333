package units_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/posology/units"
	"github.com/google/go-cmp/cmp"
)

// malformed texts, with the place and the rest that the error names.
var malformed = []struct{ data, path, got string }{
	{"", "", "end of text at byte 0"},
	{" \n", "", "end of text at byte 2"},
	{"{", "", "end of text at byte 1"},
	{"[", "/0", "end of text at byte 1"},
	{"[1,2", "", "end of text at byte 4"},
	{"[1,]", "/1", `"]" at byte 3`},
	{"[1 2]", "", `"2]" at byte 3`},
	{"[,1]", "/0", `",1]" at byte 1`},
	{"[1}", "", `"}" at byte 2`},
	{`{"a":1,}`, "", `"}" at byte 7`},
	{`{"a" 1}`, "/a", `"1}" at byte 5`},
	{`{"a":}`, "/a", `"}" at byte 5`},
	{`{a:1}`, "", `"a:1}" at byte 1`},
	{`{'a':1}`, "", `"'a':1}" at byte 1`},
	{`{"a":{"b":[1,tru]}}`, "/a/b/1", `"tru]}}" at byte 13`},
	{`{"a":1} x`, "", `"x" at byte 8`},
	{`1 2`, "", `"2" at byte 2`},
	{`{}{}`, "", `"{}" at byte 2`},
	{`{"a/b":x}`, "/a~1b", `"x}" at byte 7`},
	{`NaN`, "", `"NaN" at byte 0`},
	{`-Infinity`, "", `"-Infinity" at byte 0`},
	{`01`, "", `"01" at byte 0`},
	{`1.`, "", `"1." at byte 0`},
	{`.5`, "", `".5" at byte 0`},
	{`+1`, "", `"+1" at byte 0`},
	{`0x10`, "", `"0x10" at byte 0`},
	{`True`, "", `"True" at byte 0`},
	{"\ufeff1", "", `"\ufeff1" at byte 0`},
	{"\x00", "", `"\x00" at byte 0`},
	{`"abc`, "", "end of text at byte 4"},
	{`"abc\"`, "", "end of text at byte 6"},
	{`"abc\`, "", "end of text at byte 5"},
	{"\"a\nb\"", "", `"\"a\nb\"" at byte 0`},
	{"\"\xff\"", "", `"\"\xff\"" at byte 0`},
	{"{\"\xff\":1}", "", `"\"\xff\":1}" at byte 1`},
	{`"\x41"`, "", `"\"\\x41\"" at byte 0`},
	{`"\u12"`, "", `"\"\\u12\"" at byte 0`},
	{`"\u+123"`, "", `"\"\\u+123\"" at byte 0`},
	{`"\ud800"`, "", `"\"\\ud800\"" at byte 0`},
	{`"\udc00\ud800"`, "", `"\"\\udc00\\ud800\"" at byte 0`},
	{`"\ud800\u0041"`, "", `"\"\\ud800\\u0041\"" at byte 0`},
}

func TestDecodeJSONSyntax(t *testing.T) {
	for _, tt := range malformed {
		before := any("old")
		v := before
		err := units.DecodeJSON([]byte(tt.data), &v)
		var all units.FieldErrors
		if !errors.Is(err, units.ErrSyntax) || !errors.As(err, &all) || len(all) != 1 {
			t.Errorf("%q: %v, want one %v", tt.data, err, units.ErrSyntax)
			continue
		}
		if all[0].Path != tt.path || all[0].Got != tt.got {
			t.Errorf("%q: at %q got %s, want at %q %s", tt.data, all[0].Path, all[0].Got, tt.path, tt.got)
		}
		if v != before {
			t.Errorf("%q changed the value to %v", tt.data, v)
		}
	}
}

func TestDecodeJSONKeepsErrorsBeforeSyntax(t *testing.T) {
	var l log
	err := units.DecodeJSON([]byte(`{"day":"x","sets":[{"reps":1.5,"tempo":[1,2`), &l)
	want := []string{"/day", "/sets/0/reps", "/sets/0/tempo"}
	if diff := cmp.Diff(want, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
	err = units.DecodeJSON([]byte(`{"best":{"tempo":[1,2,3,4`), &l) // cut short and too long
	if diff := cmp.Diff([]string{"/best/tempo", "/best/tempo"}, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
	err = units.DecodeJSON([]byte(`{"day":"x","best":{"rir":{"min":}}}`), &l)
	if diff := cmp.Diff([]string{"/day", "/best/rir/min"}, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
}

func TestDecodeJSONNesting(t *testing.T) {
	deep := func(n int) []byte { return []byte(strings.Repeat("[", n) + strings.Repeat("]", n)) }
	var v any
	if err := units.DecodeJSON(deep(200), &v); err != nil {
		t.Errorf("200 levels: %v", err)
	}
	for _, n := range []int{201, 1_000_000} {
		if err := units.DecodeJSON(deep(n), &v); !errors.Is(err, units.ErrSyntax) {
			t.Errorf("%d levels: %.80v, want %v", n, err, units.ErrSyntax)
		}
	}
	if err := units.DecodeJSON([]byte(strings.Repeat("[", 1_000_000)), &v); !errors.Is(err, units.ErrSyntax) {
		t.Errorf("a million brackets: %.80v, want %v", err, units.ErrSyntax)
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
		if err := units.DecodeJSON([]byte(data), &got); err != nil || got != want {
			t.Errorf("%s gives %q, %v, want %q", data, got, err, want)
		}
		if err := json.Unmarshal([]byte(data), &standard); err != nil || standard != want {
			t.Errorf("encoding/json: %s gives %q, %v, want %q", data, standard, err, want)
		}
	}
}

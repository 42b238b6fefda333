package field_test

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

type visit struct {
	Day  units.Day `json:"day"`
	Reps int       `json:"reps"`
	Sets []entry   `json:"sets"`
}

type entry struct {
	Load units.Mass `json:"load"`
}

// check is what a type of somebody else asks for beyond its form.
func (v visit) check() error {
	var bad field.Errors
	bad.Add("/day", v.Day.Check())
	if v.Reps < 1 {
		bad.Add("/reps", field.Bad(v.Reps, "1 or more", field.ErrOutOfRange))
	}
	for i, e := range v.Sets {
		if e.Load <= 0 {
			bad.Add(fmt.Sprintf("/sets/%d/load", i), field.Bad(e.Load, "above 0 kg", field.ErrOutOfRange))
		}
	}
	return bad.Err()
}

// What cannot be read and what is refused come in one round, each with its place;
// of what could not be read nothing more is said.
func TestDecodeCheckedTellsAllAtOnce(t *testing.T) {
	old := visit{Reps: 7}
	tests := []struct {
		name, data string
		want       []string
	}{
		{"good", `{"day":"2026-11-25","reps":8}`, nil},
		{"both kinds", "{\n \"day\": \"2026-02-30\",\n \"reps\": 0, \"hold\": 1,\n \"sets\": [{\"load\": \"0 kg\"}, {\"load\": \"x\"}]}",
			[]string{"/day 2:9", "/hold 3:21", "/sets/1/load 4:38", "/reps 3:10", "/sets/0/load 4:20"}},
		{"what is not there stands where it is missed", "\n{\"reps\": 8}", []string{"/day 2:1"}},
		{"a list that is none", `{"day":"2026-11-25","reps":8,"sets":{}}`, []string{"/sets 1:37"}},
		{"malformed: nothing is checked", `{"reps":0,`, []string{" 1:11"}},
	}
	for _, tt := range tests {
		got := old
		err := field.DecodeChecked([]byte(tt.data), &got, field.Strict, visit.check)
		if diff := cmp.Diff(tt.want, places(err)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
		if (err == nil) == cmp.Equal(got, old) {
			t.Errorf("%s: %v left %+v", tt.name, err, got)
		}
	}
	if err := field.DecodeChecked([]byte(`{}`), (*visit)(nil), field.Strict, visit.check); !errors.Is(err, field.ErrMissing) {
		t.Errorf("nil: %v", err)
	}
}

// What was written, though wrong, is not missing.
func TestDecodeCheckedKnowsWhatIsWritten(t *testing.T) {
	type held struct {
		Kit kit `json:"kit"` // reads itself, and stays empty if it cannot
	}
	check := func(held) error { return field.New("/kit", nil, "a kit", field.ErrMissing) }
	for text, want := range map[string][]string{
		`{"kit": {"more": 1}}`: {"/kit/more 1:9"},
		`{}`:                   {"/kit 1:1"},
	} {
		err := field.DecodeChecked([]byte(text), new(held), field.Strict, check)
		if diff := cmp.Diff(want, places(err)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", text, diff)
		}
	}
}

// places lists paths with line and column.
func places(err error) []string {
	var all field.Errors
	errors.As(err, &all)
	var list []string
	for _, e := range all {
		list = append(list, fmt.Sprintf("%s %d:%d", e.Path, e.Line, e.Column))
	}
	return list
}

// Names that are not known are passed over when the reader says so; a name that
// stands twice never is, known or not.
func TestPassOver(t *testing.T) {
	tests := []struct {
		data         string
		strict, over error
	}{
		{`{"reps":8}`, nil, nil},
		{`{"reps":8,"since":{"a":[1,{"b":2}]}}`, field.ErrUnknown, nil},
		{`{"sets":[{"load":"2 kg","belt":true}]}`, field.ErrUnknown, nil},
		{`{"reps":8,"reps":8}`, field.ErrDuplicate, field.ErrDuplicate},
		{`{"since":1,"since":1}`, field.ErrUnknown, field.ErrDuplicate},
		{`{"reps":"8"}`, field.ErrSyntax, field.ErrSyntax},
	}
	for _, tt := range tests {
		for how, want := range map[field.How]error{field.Strict: tt.strict, field.PassOver: tt.over} {
			var v visit
			if err := field.Decode([]byte(tt.data), &v, how); !errors.Is(err, want) {
				t.Errorf("%s, how %d: %v, want %v", tt.data, how, err, want)
			}
		}
	}
}

// A library's type embedded in somebody's own is read with it, both ways.
func TestEmbedding(t *testing.T) {
	var own struct {
		visit
		Clinic string `json:"clinic"`
	}
	if err := field.Decode([]byte(`{"day":"2026-11-25","reps":8,"clinic":"A"}`), &own, field.Strict); err != nil || own.Reps != 8 || own.Clinic != "A" {
		t.Errorf("%+v, %v", own, err)
	}
}

// Places agree with counting from the beginning, whatever was asked before.
func TestPlaces(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 12))
	for range 200 {
		var b strings.Builder
		b.WriteString("[")
		for i := range 1 + r.IntN(40) {
			if i > 0 {
				b.WriteString(",")
			}
			b.WriteString([]string{"", " ", "\n", "\r\n", "\n\n\t"}[r.IntN(5)] + []string{`1`, `"é"`, `{"ü":"漢"}`, `null`}[r.IntN(4)])
		}
		text := b.String() + "]"
		var v []bool
		var all field.Errors
		errors.As(field.Decode([]byte(text), &v, field.Strict), &all)
		at := 0
		for _, e := range all {
			at += strings.Index(text[at:], e.Got)
			before := text[:at]
			line, column := strings.Count(before, "\n")+1, utf8.RuneCountInString(before[strings.LastIndex(before, "\n")+1:])+1
			if e.Line != line || e.Column != column {
				t.Fatalf("%q: %v, want line %d, column %d", text, e, line, column)
			}
			at += len(e.Got)
		}
	}
}

package setlog_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"slices"
	"strings"
	"testing"
	"testing/iotest"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// read gathers what a log yields: sets, and for bad rows "line:column name paths".
func read(t testing.TB, log iter.Seq2[setlog.Set, error]) (sets []setlog.Set, bad []string) {
	t.Helper()
	for s, err := range log {
		if err == nil {
			sets = append(sets, s)
			continue
		}
		var row *setlog.RowError
		if !errors.As(err, &row) || s != (setlog.Set{}) {
			t.Fatalf("%T %v with %+v", err, err, s)
		}
		var all field.Errors
		all.Add("", row.Err)
		text := fmt.Sprintf("%d:%d %s", row.Line, row.Column, row.Name)
		for _, f := range all {
			text += " " + f.Path
		}
		bad = append(bad, text)
	}
	return sets, bad
}

const header = "day,exercise,side,hold,load,stated,reps,effort\n"

// TestReadCSV: kilograms and pounds in one log, quotes, both line ends, blank
// lines.
func TestReadCSV(t *testing.T) {
	log := "\ufeffday,exercise,side,hold,load,stated,reps,effort,person,rep_seconds\r\n" +
		"2026-11-25,seated-press,both,one in each hand,8 kg,per hand,6,rir 2,,\r\n" +
		"\n  \n" +
		`2026-11-26,"press, seated",left,one hand,"12,5 lb",,10,rpe 8.5,"p ""1""",4.5` + "\n" +
		`,sit-to-stand,both,unloaded,,,8,,p2,0`
	sets, bad := read(t, setlog.ReadCSV(strings.NewReader(log)))
	want := []setlog.Set{good,
		{Key: `p "1"`, Day: good.Day + 1, Exercise: "press, seated", Side: body.Left, Hold: body.OneHand,
			Load: 25 * units.Pound / 2, Reps: 10, Effort: units.Must(units.RPE(8.5)), RepSeconds: 4.5},
		{Key: "p2", Exercise: "sit-to-stand", Side: body.Both, Hold: body.Unloaded, Reps: 8},
	}
	if diff := cmp.Diff(want, sets, cmp.AllowUnexported(units.Effort{})); diff != "" || bad != nil {
		t.Errorf("%v %s", bad, diff)
	}
}

func TestHeader(t *testing.T) {
	tests := []struct {
		name, log, want string
		err             error
	}{
		{"empty", "", "1:1  ", field.ErrMissing},
		{"unknown", "day,exercise,side,hold,weight,load,reps\n", "1:24 weight /weight", field.ErrUnknown},
		{"twice", "reps,exercise,side,hold,load,reps\n", "1:30 reps /reps", field.ErrDuplicate},
		{"missing", "exercise,side,hold,reps\n", "1:1 load /load", field.ErrMissing},
		{"twice in other cases", "reps,exercise,side,hold,load, Reps\n", "1:30  Reps / Reps", field.ErrDuplicate},
		{"ends of lines of old computers", "Exercise,side,hold,load,reps\rx,both,unloaded,,6\r", "1:1  ", field.ErrSyntax},
		{"all at once", "\nperson,person,mass\n", "2:8 person /person /mass /exercise /side /hold /load /reps", field.ErrUnknown},
		{"bad quote", `"exercise,side` + "\n", "1:1  ", field.ErrSyntax},
		{"not UTF-8", "exercise\xff\n", "1:1  ", field.ErrSyntax},
	}
	for _, tt := range tests {
		n := 0
		for _, err := range setlog.ReadCSV(strings.NewReader(tt.log + "a,b\n")) {
			n++
			if tt.log != "" && !errors.Is(err, tt.err) {
				t.Errorf("%s: %v, want %v", tt.name, err, tt.err)
			}
		}
		_, bad := read(t, setlog.ReadCSV(strings.NewReader(tt.log)))
		if n != 1 || len(bad) != 1 || bad[0] != tt.want {
			t.Errorf("%s: %d errors, %q, want %q", tt.name, n, bad, tt.want)
		}
	}
}

// TestBadRows: each bad row is reported once, with all its fields, and the
// rows around it are read.
func TestBadRows(t *testing.T) {
	tests := []struct {
		name, row, want string
		err             error
	}{
		{"too few", "2026-11-25,x,both,one hand,8 kg,,6", "3:1  ", field.ErrSyntax},
		{"too many, by a comma for a point", "2026-11-25,x,both,one hand,12,5 kg,,6,", "3:1  ", field.ErrSyntax},
		{"no such day", "2027-02-30,x,both,one hand,8 kg,,6,", "3:1 day /day", field.ErrOutOfRange},
		{"no exercise", "2026-11-25,,both,one hand,8 kg,,6,", "3:12 exercise /exercise", field.ErrMissing},
		{"no unit", "2026-11-25,x,both,one hand,8,,6,", "3:28 load /load", field.ErrMissing},
		{"no load", "2026-11-25,x,both,one hand,,,6,", "3:28 load /load", field.ErrMissing},
		{"below nought", "2026-11-25,x,both,one hand,-10 kg,,6,", "3:28 load /load", field.ErrOutOfRange},
		{"NaN", "2026-11-25,x,both,one hand,NaN kg,,6,", "3:28 load /load", field.ErrSyntax},
		{"no such unit", "2026-11-25,x,both,one hand,8 stone,,6,", "3:28 load /load", field.ErrSyntax},
		{"bare pair", "2026-11-25,x,both,one in each hand,8 kg,,6,", "3:41 stated /stated", field.ErrMissing},
		{"load for nothing held", "2026-11-25,x,both,unloaded,8 kg,,6,", "3:28 load /load", field.ErrConflict},
		{"0 repetitions", "2026-11-25,x,both,one hand,8 kg,,0,", "3:34 reps /reps", field.ErrOutOfRange},
		{"no repetitions", "2026-11-25,x,both,one hand,8 kg,,,", "3:34 reps /reps", field.ErrMissing},
		{"a range", "2026-11-25,x,both,one hand,8 kg,,8-10,", "3:34 reps /reps", field.ErrSyntax},
		{"no such effort", "2026-11-25,x,both,one hand,8 kg,,6,rir 99", "3:36 effort /effort", field.ErrOutOfRange},
		{"quote within", `2026-11-25,x"y,both,one hand,8 kg,,6,`, "3:1  ", field.ErrSyntax},
		{"quote not closed", `2026-11-25,"x,both,one hand,8 kg,,6,`, "3:1  ", field.ErrSyntax},
		{"text after quote", `2026-11-25,"x"y,both,one hand,8 kg,,6,`, "3:1  ", field.ErrSyntax},
		{"not UTF-8", "2026-11-25,\xff,both,one hand,8 kg,,6,", "3:1  ", field.ErrSyntax},
		{"too long", strings.Repeat("x", 65<<10), "3:1  ", field.ErrOverflow},
		{"very long", strings.Repeat("x", 200<<10), "3:1  ", field.ErrOverflow},
		{"everything", "2026,,up,teeth,heavy,twice,many,very", "3:1 day /day /side /hold /load /stated /reps /effort /exercise", field.ErrUnknown},
	}
	const fine = "2026-11-25,seated-press,both,one in each hand,8 kg,per hand,6,rir 2\n"
	for _, tt := range tests {
		log := header + fine + tt.row + "\n" + fine
		sets, bad := read(t, setlog.ReadCSV(strings.NewReader(log)))
		if len(sets) != 2 || sets[0] != good || sets[1] != good || len(bad) != 1 || bad[0] != tt.want {
			t.Errorf("%s: %d sets, %q, want %q", tt.name, len(sets), bad, tt.want)
		}
		for _, err := range setlog.ReadCSV(strings.NewReader(log)) {
			if err != nil && !errors.Is(err, tt.err) {
				t.Errorf("%s: %v, want %v", tt.name, err, tt.err)
			}
		}
	}
	if _, bad := read(t, setlog.ReadCSV(strings.NewReader(header+strings.Repeat("x", 100<<10)))); !slices.Equal(bad, []string{"2:1  "}) {
		t.Errorf("a last line that is too long: %q", bad)
	}
	if _, bad := read(t, setlog.ReadCSV(strings.NewReader("exercise,side,hold,load,reps\nx,both,one in each hand,8 kg,0\n"))); !slices.Equal(bad, []string{"2:30 reps /stated /reps"}) {
		t.Errorf("a column that is needed only here: %q", bad)
	}
	if _, bad := read(t, setlog.ReadCSV(strings.NewReader("exercise,side,hold,load,reps\nx,both,one in each hand,8 kg,1\n"))); !slices.Equal(bad, []string{"2:1 stated /stated"}) {
		t.Errorf("a column that is not there: %q", bad)
	}
}

func TestReadJSONLines(t *testing.T) {
	tests := []struct {
		name, row, want string
		err             error
	}{
		{"unknown", `{"exercise":"x","side":"both","hold":"one hand","weight":"8 kg","load":"8 kg","reps":6}`, `2:49 weight /weight`, field.ErrUnknown},
		{"twice", `{"reps":6,"exercise":"x","side":"both","hold":"one hand","load":"8 kg","reps":6}`, `2:72 reps /reps`, field.ErrDuplicate},
		{"no load", `{"exercise":"x","side":"both","hold":"one hand","reps":6}`, `2:1 load /load`, field.ErrMissing},
		{"bad value", `{"exercise":"x","side":"both","hold":"one hand","load":"8 kg", "reps":0}`, `2:64 reps /reps`, field.ErrOutOfRange},
		{"not JSON", `{"exercise":"x",}`, `2:17  `, field.ErrSyntax},
		{"no object", `[1]`, `2:1  `, field.ErrSyntax},
		{"slash in a name", `{"a/b":{"reps":1},"exercise":"x","side":"both","hold":"one hand","load":"8 kg","reps":6}`, `2:2 a/b /a~1b`, field.ErrUnknown},
	}
	for _, tt := range tests {
		log := goodJSON + "\n" + tt.row + "\n\n" + goodJSON
		sets, bad := read(t, setlog.ReadJSONLines(strings.NewReader(log)))
		if len(sets) != 2 || sets[0] != good || sets[1] != good || len(bad) != 1 || bad[0] != tt.want {
			t.Errorf("%s: %d sets, %q, want %q", tt.name, len(sets), bad, tt.want)
		}
		for _, err := range setlog.ReadJSONLines(strings.NewReader(log)) {
			if err != nil && !errors.Is(err, tt.err) {
				t.Errorf("%s: %v, want %v", tt.name, err, tt.err)
			}
		}
	}
	sets, bad := read(t, setlog.ReadJSONLines(strings.NewReader(`{"exercise":"x","side":"both","hold":"unloaded","reps":6}`)))
	if len(sets) != 1 || bad != nil {
		t.Errorf("no load where none is held: %v %q", sets, bad)
	}
}

// TestReaderError: what the reader says comes last, once.
func TestReaderError(t *testing.T) {
	broken := errors.New("broken pipe")
	for _, read := range []func(io.Reader) iter.Seq2[setlog.Set, error]{setlog.ReadCSV, setlog.ReadJSONLines} {
		log := header + "2026-11-25,seated-press,both,one in each hand,8 kg,per hand,6,rir 2\n"
		var errs []error
		for _, err := range read(io.MultiReader(strings.NewReader(log), iotest.ErrReader(broken))) {
			if errors.Is(err, broken) {
				errs = append(errs, err)
			}
		}
		for _, err := range read(io.MultiReader(strings.NewReader(strings.Repeat("x", 100<<10)), iotest.ErrReader(broken))) {
			if errors.Is(err, broken) {
				errs = append(errs, err)
			}
		}
		if len(errs) != 2 {
			t.Errorf("%d errors of the reader, want one each", len(errs))
		}
	}
}

func TestReadingStops(t *testing.T) {
	log := header + strings.Repeat("bad\n", 5)
	for range setlog.ReadCSV(strings.NewReader(log)) {
		break
	}
	n := 0
	for _, err := range setlog.ReadCSV(strings.NewReader(log)) {
		if n++; n == 2 {
			if got, want := err.Error(), "line 3, column 1: malformed: value = 1 cells, allowed: 8 cells, as in the first line"; got != want {
				t.Errorf("%s, want %s", got, want)
			}
			break
		}
	}
	for _, err := range setlog.ReadCSV(strings.NewReader(header + "2026-11-25,x,both,one hand,8 kg,,0,\n")) {
		if got, want := err.Error(), "line 2, column 34 (reps): out of range: /reps = 0, allowed: 1 to 1000 repetitions"; got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
	for _, broken := range []string{strings.Repeat("x", 70<<10) + "\n{}\n", "{}\n{}\n"} {
		for range setlog.ReadJSONLines(strings.NewReader(broken)) {
			break
		}
	}
}

// drawLogged draws a set that a log can hold.
func drawLogged(t *rapid.T) setlog.Set {
	s := good
	s.Key = body.Key(rapid.StringMatching(`([a-z",; é'][a-z",; é'-]{0,5})?`).Draw(t, "person"))
	s.Exercise = exercise.ID(rapid.StringMatching(`[a-z",][a-z",-]{0,7}`).Draw(t, "exercise"))
	s.Hold = rapid.SampledFrom([]body.Hold{body.OneHand, body.OneEachHand, body.OnBar}).Draw(t, "hold")
	s.Stated = body.Total
	s.Load = units.Mass(rapid.Int64Range(0, 500*int64(units.Kilogram)).Draw(t, "load")) * 2
	s.Reps = rapid.IntRange(1, 1000).Draw(t, "reps")
	s.Day = units.Day(rapid.Int32Range(0, 3652059).Draw(t, "day"))
	s.RepSeconds = rapid.Float64Range(0, 60).Draw(t, "seconds")
	if rapid.Bool().Draw(t, "rated") {
		s.Effort = units.Must(units.InReserve(rapid.Float64Range(0, 10).Draw(t, "rir")))
	}
	return s
}

func TestRoundTripOfLogs(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		sets := rapid.SliceOfN(rapid.Custom(drawLogged), 0, 10).Draw(rt, "sets")
		var csv, lines bytes.Buffer
		if err := errors.Join(setlog.WriteCSV(&csv, slices.Values(sets)), setlog.WriteJSONLines(&lines, slices.Values(sets))); err != nil {
			rt.Fatal(err)
		}
		for text, log := range map[string]iter.Seq2[setlog.Set, error]{csv.String(): setlog.ReadCSV(&csv), lines.String(): setlog.ReadJSONLines(&lines)} {
			back, bad := read(t, log)
			if !slices.Equal(back, sets) || bad != nil {
				rt.Fatalf("%s\nreads back as %+v, %q", text, back, bad)
			}
		}
	})
}

func TestWriteRefuses(t *testing.T) {
	tests := []struct {
		name     string
		change   func(*setlog.Set)
		csv, jsn string
	}{
		{"not valid", func(s *setlog.Set) { s.Reps = 0 }, "line 3, column 1: out of range: /reps = 0, allowed: 1 to 1000 repetitions", "line 2, column 1: out of range: /reps = 0, allowed: 1 to 1000 repetitions"},
		{"no value of an enumeration", func(s *setlog.Set) { s.Side = 9 }, "line 3, column 1: out of range: /side = side(9), allowed: side: left, right, both", "line 2, column 1: out of range: /side = side(9), allowed: side: left, right, both"},
		{"line break", func(s *setlog.Set) { s.Key = "a\nb" }, `line 3, column 1: malformed: /person = "a\nb", allowed: text on one line`, ""},
		{"a formula", func(s *setlog.Set) { s.Key = "=1+1" }, `line 3, column 1: malformed: /person = "=1+1", allowed: a text that does not begin with =, +, -, @ or a tab, since spreadsheets take that for a formula`, ""},
		{"a formula for a name", func(s *setlog.Set) { s.Exercise = "@x" }, `line 3, column 1: malformed: /exercise = "@x", allowed: a text that does not begin with =, +, -, @ or a tab, since spreadsheets take that for a formula`, ""},
		{"not UTF-8", func(s *setlog.Set) { s.Key = "\xff" }, `line 3, column 1: malformed: /person = "\xff", allowed: UTF-8`, `line 2, column 1: malformed: /person = "\xff", allowed: UTF-8`},
	}
	for _, tt := range tests {
		s := good
		tt.change(&s)
		for want, err := range map[string]error{
			"csv: " + tt.csv:  setlog.WriteCSV(io.Discard, slices.Values([]setlog.Set{good, s})),
			"json: " + tt.jsn: setlog.WriteJSONLines(io.Discard, slices.Values([]setlog.Set{good, s})),
		} {
			_, want, _ := strings.Cut(want, ": ")
			if got := fmt.Sprint(err); got != want && !(want == "" && err == nil) {
				t.Errorf("%s: %v, want %s", tt.name, err, want)
			}
		}
	}
	full := failing{}
	many := slices.Repeat([]setlog.Set{good}, 200)
	for _, err := range []error{setlog.WriteCSV(full, slices.Values(many)), setlog.WriteJSONLines(full, slices.Values(many)), setlog.WriteCSV(full, slices.Values(many[:1]))} {
		if !errors.Is(err, io.ErrShortWrite) {
			t.Errorf("%v, want that of the writer", err)
		}
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestRepSeconds(t *testing.T) {
	log := "exercise,side,hold,load,reps,rep_seconds\nplank,both,unloaded,,1,slow\nplank,both,unloaded,,1,NaN\nplank,both,unloaded,,1,61\n"
	if _, bad := read(t, setlog.ReadCSV(strings.NewReader(log))); !slices.Equal(bad, []string{"2:24 rep_seconds /rep_seconds", "3:24 rep_seconds /rep_seconds", "4:24 rep_seconds /rep_seconds"}) {
		t.Errorf("%q", bad)
	}
	for seconds, valid := range map[float64]bool{0: true, 60: true, 60.001: false, -0.001: false} {
		s := good
		s.RepSeconds = seconds
		if err := s.Validate(); (err == nil) != valid {
			t.Errorf("%v s: %v, want valid: %v", seconds, err, valid)
		}
	}
}

package setlog_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"strings"
	"testing"
	"testing/iotest"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// natural reads a log as a clinic may keep it: invented, and no program's.
var natural = setlog.Reader{
	Columns: map[string]string{"person": "Subject", "day": "Date", "exercise": "Exercise", "side": "Side", "load": "Weight", "unit": "Unit",
		"reps": "Reps", "effort": "Left", "set": "No."},
	Scale: units.ScaleRIR, Stated: body.PerHand, Missing: []string{"NA", "-"}, Catalogue: exercise.Standard(),
}

// rowsOf lists what a log yields, one text a row.
func rowsOf(t testing.TB, log iter.Seq2[setlog.LoggedSet, error]) (all []string) {
	t.Helper()
	for row, err := range log {
		var bad *setlog.RowError
		switch {
		case err == nil:
			s := row.Set
			text := fmt.Sprintf("%d %s %v %s %v, %v, %v %v x%d %v %v", row.Line, s.Key, s.Day, s.Exercise, s.Side, s.Hold, s.Load, s.Stated, s.Reps, s.Effort, s.RepSeconds)
			for _, d := range row.Doubts {
				text += " " + string(d.Code)
			}
			all = append(all, text)
		case errors.As(err, &bad) && cmp.Equal(row, setlog.LoggedSet{}, cmp.AllowUnexported(units.Effort{})):
			var list field.Errors
			list.Add("", bad.Err)
			text := fmt.Sprintf("%d:%d %s %q %s", bad.Line, bad.Column, bad.Name, bad.Text, bad.Reason().Code)
			for _, f := range list {
				text += " " + f.Path
			}
			all = append(all, text)
		default:
			t.Fatalf("%v with %v", err, row)
		}
	}
	return all
}

func same(t *testing.T, what string, got []string, want ...string) {
	t.Helper()
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", what, diff)
	}
}

func TestReaderNatural(t *testing.T) {
	log := "\ufeffsubject,DATE,Exercise , Side,Weight,Unit,Reps,Left,No.,Remark\r\n" +
		"p1,2026-11-25, BICEPS-curl ,NA,5,kg,10,2,1,\"fine, he\nsaid\"\r\n" +
		"p1,2026-11-25,biceps-curl,-,\"12,5\",lbs,10,,2,\r\n" +
		"\r\n,,,,,,,,,\n" +
		"p1,2026-11-26,biceps-curl,left,12.5 KG,,8,RPE 8.5,3,\n" +
		"p1,2026-11-26,biceps-curl,left,\"1,250\",g,8,rpe8,3,\n" +
		"p1,2026-11-26,goblet-squat,,12,kg,8,2,3,\n" +
		"p2,2026-11-26,Biceps Curls,left,12.5 KG,lb,8-10,3,x,\n"
	same(t, "natural log", rowsOf(t, natural.CSV(strings.NewReader(log))),
		"2 p1 2026-11-25 biceps-curl both, one in each hand, 5 kg per hand x10 rir 2 0",
		"4 p1 2026-11-25 biceps-curl both, one in each hand, 5.669904625 kg per hand x10  0",
		"7 p1 2026-11-26 biceps-curl left, one in each hand, 12.5 kg per hand x8 rpe 8.5 0",
		"8 p1 2026-11-26 biceps-curl left, one in each hand, 0.00125 kg per hand x8 rpe 8 0 setlog.thousands",
		"9 p1 2026-11-26 goblet-squat both, both hands on one, 12 kg  x8 rir 2 0",
		`10:15 exercise "Biceps Curls" setlog.unknown /exercise /load /reps /set`)
}

// Each row has one fault.
func TestReaderFaults(t *testing.T) {
	rd := setlog.Reader{Columns: map[string]string{"day": "day", "exercise": "exercise", "load": "load", "unit": "unit", "reps": "reps", "effort": "left", "scale": "scale", "set": "set"},
		Side: body.Both, Hold: body.OneHand}
	tests := []struct{ row, want string }{
		{"2027-02-30,curl,5,kg,10,2,rir,1", `2:1 day "2027-02-30" setlog.out-of-range /day`},
		{"25/11/2026,curl,5,kg,10,2,rir,1", `2:1 day "25/11/2026" setlog.unreadable /day`},
		{",,5,kg,10,2,rir,1", `2:2 exercise "" setlog.missing /exercise`},
		{",curl,,kg,10,2,rir,1", `2:7 load "" setlog.missing /load`},
		{",curl,4000,kg,10,2,rir,1", `2:7 load "4000" setlog.out-of-range /load`},
		{",curl,-10,kg,10,2,rir,1", `2:7 load "-10" setlog.out-of-range /load`},
		{",curl,NaN,kg,10,2,rir,1", `2:7 load "NaN" setlog.unreadable /load`},
		{",curl,5 lb,kg,10,2,rir,1", `2:7 load "5 lb" setlog.conflict /load`},
		{",curl,5,,10,2,rir,1", `2:7 load "5" setlog.missing /load`},
		{",curl,5,stone,10,2,rir,1", `2:9 unit "stone" setlog.unknown /unit`},
		{",curl,5,kg,0,2,rir,1", `2:12 reps "0" setlog.out-of-range /reps`},
		{",curl,5,kg,,2,rir,1", `2:12 reps "" setlog.missing /reps`},
		{",curl,5,kg,8-10,2,rir,1", `2:12 reps "8-10" setlog.unreadable /reps`},
		{",curl,5,kg,10,99,rir,1", `2:15 effort "99" setlog.out-of-range /effort`},
		{",curl,5,kg,10,2,,1", `2:15 effort "2" setlog.missing /effort`},
		{",curl,5,kg,10,rpe 8,rir,1", `2:15 effort "rpe 8" setlog.conflict /effort`},
		{",curl,5,kg,10,2,rirs,1", `2:17 scale "rirs" setlog.unknown /scale`},
		{",curl,5,kg,10,2,rir,", `2:21 set "" setlog.missing /set`},
		{",curl,5,kg,10,2,rir,x", `2:21 set "x" setlog.unreadable /set`},
		{",curl,5,kg,10,2,rir,0", `2:21 set "0" setlog.out-of-range /set`},
		{",curl,5,kg,10,2,rir", `2:1  "" setlog.not-a-row `},
		{",curl,12,5,kg,10,2,rir,1", `2:1  "" setlog.not-a-row `},
		{",cu\xff,5,kg,10,2,rir,1", `2:1  "" setlog.not-a-row `},
		{`,cu"rl,5,kg,10,2,rir,1`, `2:4  "" setlog.not-a-row `},
		{",curl,0,,10,,,1", "2   curl both, one hand, 0 kg  x10  0"},
		{",curl,301,kg,201,2,RIR,1", "2   curl both, one hand, 301 kg  x201 rir 2 0 setlog.heavy setlog.many"},
		{"\x00,curl,5,kg,10,2,rir,1", `2:1 day "\x00" setlog.unreadable /day`},
	}
	for _, test := range tests {
		log := "day,exercise,load,unit,reps,left,scale,set\n" + test.row + "\n,curl,5,kg,10,2,rir,1\n"
		good := "3   curl both, one hand, 5 kg  x10 rir 2 0"
		same(t, test.row, rowsOf(t, rd.CSV(strings.NewReader(log))), test.want, good)
	}
}

func TestReaderHeader(t *testing.T) {
	curl := map[string]string{"exercise": "what", "load": "kg", "reps": "n"}
	for _, test := range []struct {
		name string
		rd   setlog.Reader
		log  string
		want string
	}{
		{"empty", setlog.Reader{}, "", `1:1  "" setlog.missing `},
		{"own names", setlog.Reader{}, "exercise,reps\n", `1:1 side "" setlog.missing /side /hold /load`},
		{"twice", setlog.Reader{Columns: curl, Side: body.Both, Hold: body.OneHand}, "\nwhat,kg,n,What\n", `2:11 exercise "" setlog.twice /exercise`},
		{"not there", setlog.Reader{Columns: curl, Side: body.Both, Hold: body.OneHand}, "what,kg,reps\n", `1:1 reps "" setlog.missing /reps`},
		{"map", setlog.Reader{Columns: map[string]string{"weight": "kg", "load": "", "reps": "x", "exercise": "X"}, Comma: ",,"}, "a", `1:1  "" setlog.missing /columns/load /columns/reps /columns/weight /columns/side /columns/hold /comma`},
		{"quote", setlog.Reader{}, "\"a", `1:3  "" setlog.not-a-row `},
	} {
		same(t, test.name, rowsOf(t, test.rd.CSV(strings.NewReader(test.log))), test.want)
	}
	for _, comma := range []string{"\"", "\n", "\r", "a", "Z", "0", " ", ".", "-", "é", "\x00", "ab"} {
		if err := (setlog.Reader{Comma: comma}).Validate(); !errors.Is(err, field.ErrSyntax) {
			t.Errorf("comma %q: %v", comma, err)
		}
	}
	for _, comma := range []string{"", ",", ";", "\t", "|"} {
		if err := (setlog.Reader{Comma: comma}).Validate(); err != nil {
			t.Errorf("comma %q: %v", comma, err)
		}
	}
}

// The same rows as CSV and as JSON Lines.
func TestReaderJSONLines(t *testing.T) {
	log := `{"Subject":"p1","date":"2026-11-25","exercise":" BICEPS-curl ","Side":null,"Weight":12.5,"UNIT":"lbs","Reps":10,"Left":2,"No.":1,"Remark":{"a":[1]}}
 
{"Subject":"p1","date":"2026-11-25","exercise":"curls","Side":null,"Weight":12.5,"UNIT":"lbs","Reps":"10","No.":1}
{"Reps":1,"reps":2}
{"Reps":true}
[1]
{"Reps":1} {}
{"Subject":"p1","exercise":"biceps-curl","Weight":5,"Unit":"kg","Reps":10}
{"Reps":
`
	same(t, "JSON Lines", rowsOf(t, natural.JSONLines(strings.NewReader(log))),
		"1 p1 2026-11-25 biceps-curl both, one in each hand, 5.669904625 kg per hand x10 rir 2 0",
		`3:37 exercise "curls" setlog.unknown /exercise`,
		`4:11 reps "" setlog.twice /reps`,
		`5:2 reps "" setlog.unreadable /reps`,
		`6:1  "[1]" setlog.not-a-row `,
		`7:12  "{\"Reps\":1} {}" setlog.not-a-row `,
		`8:1 set "" setlog.missing /set`,
		`9:8  "{\"Reps\":" setlog.not-a-row `)
}

// Whatever breaks a log off is said with the line, last, and once.
func TestReaderBrokenOff(t *testing.T) {
	rd := setlog.Reader{Side: body.Both, Hold: body.OneHand}
	broken := errors.New("broken")
	log := io.MultiReader(strings.NewReader("exercise,load,reps\ncurl,5 kg,10\ncurl,5"), iotest.ErrReader(broken))
	n := 0
	var last error
	for _, err := range rd.CSV(log) {
		n++
		last = err
	}
	var row *setlog.RowError
	if !errors.As(last, &row) || row.Line != 3 || !errors.Is(last, broken) || row.Reason().Code != "setlog.broken-off" || n != 2 {
		t.Errorf("%d, %v", n, last)
	}
	for _, read := range []func(io.Reader) iter.Seq2[setlog.LoggedSet, error]{rd.CSV, rd.JSONLines} {
		for _, err := range read(nil) {
			if !errors.Is(err, field.ErrMissing) {
				t.Error(err)
			}
		}
		for range read(bytes.NewReader([]byte("exercise,load,reps\n{}\n{}\n"))) {
			break
		}
	}
}

// Whatever a log holds, rows are valid, lines never go back, and every fault has a code
// with words.
func FuzzReader(f *testing.F) {
	f.Add([]byte("Subject,Date,Exercise,Side,Weight,Unit,Reps,Left,No.\np,2026-11-25,biceps-curl,left,5,kg,10,2,1\n\"p\n\",,,,,,,,\n"))
	f.Add([]byte(`{"Subject":"p1","date":"2026-11-25","exercise":"biceps-curl","Weight":12.5,"UNIT":"lbs","Reps":10,"Left":2,"No.":1}`))
	f.Add([]byte("Subject,Date,Exercise,Side,Weight,Unit,Reps,Left,No.\n\x00\x00,\xff"))
	f.Fuzz(func(t *testing.T, log []byte) {
		for _, rows := range []iter.Seq2[setlog.LoggedSet, error]{natural.CSV(bytes.NewReader(log)), natural.JSONLines(bytes.NewReader(log))} {
			line := 0
			for row, err := range rows {
				at := row.Line
				var bad *setlog.RowError
				if errors.As(err, &bad) {
					at = bad.Line
					if w, _ := setlog.Words().Wording(bad.Reason().Code); w.Clinician == "" {
						t.Errorf("%v has no words", bad.Reason())
					}
				} else if err != nil || row.Set.Validate() != nil {
					t.Errorf("%v, %v", err, row.Set.Validate())
				}
				if at < line || at < 1 {
					t.Errorf("line %d behind line %d", at, line)
				}
				line = at
			}
		}
	})
}

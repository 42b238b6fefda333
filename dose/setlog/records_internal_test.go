package setlog

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
	"testing/iotest"
)

// plainRecords lists what encoding/csv makes of a log: its cells with their places, and
// where it finds fault.
func plainRecords(log []byte, comma byte) (all []string) {
	r := csv.NewReader(bytes.NewReader(log))
	r.Comma, r.FieldsPerRecord, r.ReuseRecord = rune(comma), -1, true
	for {
		cells, err := r.Read()
		var bad *csv.ParseError
		switch {
		case err == io.EOF:
			return all
		case errors.As(err, &bad):
			all = append(all, fmt.Sprintf("%d:%d wrong", bad.Line, bad.Column))
			continue
		}
		text := ""
		for i, cell := range cells {
			line, column := r.FieldPos(i)
			text += fmt.Sprintf("%d:%d %q ", line, column, cell)
		}
		all = append(all, text)
	}
}

// ownRecords lists what records makes of it, and the longest room that it took.
func ownRecords(r io.Reader, comma byte) (all []string, room int) {
	c := newRecords(r, comma, 0)
	for {
		err := c.next()
		var bad *RowError
		switch {
		case errors.As(err, &bad):
			all = append(all, fmt.Sprintf("%d:%d wrong", bad.Line, bad.Column))
			continue
		case err != nil:
			return all, len(c.buf)
		}
		text := ""
		for i, cell := range c.cells {
			at := c.place(i)
			text += fmt.Sprintf("%d:%d %q ", at.line, at.column, cell)
		}
		all = append(all, text)
	}
}

var trickyLogs = []string{"", "\n", "a", "a,b\nc,d", "a\r\n\r\nb\r", "\r", "a\rb\n", "\"a\nb\",c\n", "\"a\r\nb\"\r\nc", "a\"b,c\nd", "\"a\"b\nc\n",
	"\"a\"\"b\"", "\"", "\"a", "\"a\r", "\"\"\"\n\"\"\"", ",,\n,\n", "\x00,\xff\n", "\"a\n\n\nb\"\n\nx", " \"a\"\n", "\"a\" ,b", "a,\"b\",\n\"c\"\r", "\ufeffa\n", "x\n\"", "\"\n", "\"\r\n", "\"\n\r", "é\"\n",
	strings.Repeat("a,b\n", 1000) + "\"q\n\"," + strings.Repeat("c", 200_000) + "\nd"}

// What encoding/csv of the standard library reads is the reference.
func TestRecordsAsEncodingCSV(t *testing.T) {
	for _, log := range trickyLogs {
		sameRecords(t, []byte(log), ',')
	}
}

func sameRecords(t *testing.T, log []byte, comma byte) {
	t.Helper()
	want := plainRecords(log, comma)
	for _, r := range []io.Reader{bytes.NewReader(log), iotest.OneByteReader(bytes.NewReader(log)), iotest.DataErrReader(bytes.NewReader(log))} {
		if got, _ := ownRecords(r, comma); fmt.Sprint(got) != fmt.Sprint(want) {
			t.Fatalf("%.200q:\n got %.400q\nwant %.400q", log, got, want)
		}
	}
}

func FuzzRecordsAsEncodingCSV(f *testing.F) {
	for i, log := range trickyLogs {
		f.Add([]byte(log), i%2 == 0)
	}
	f.Fuzz(func(t *testing.T, log []byte, semicolon bool) {
		if len(log) > maxRecord {
			return
		}
		if semicolon {
			sameRecords(t, log, ';')
		} else {
			sameRecords(t, log, ',')
		}
	})
}

// A record of just the longest length is read, and one byte more is refused by its
// line alone; what is in quotes is then read line by line.
func TestLongestRecord(t *testing.T) {
	within := "a\n" + strings.Repeat("x", maxRecord-1) + "\nb\n"
	sameRecords(t, []byte(within), ',')
	for name, test := range map[string]struct{ log, want string }{
		"line":         {"a\n" + strings.Repeat("x", maxRecord) + "\nb\n", `[1:1 "a"  2:1 wrong 3:1 "b" ]`},
		"last line":    {"a\n" + strings.Repeat("x", maxRecord+1), `[1:1 "a"  2:1 wrong]`},
		"long quotes":  {"a\n\"" + strings.Repeat("\n", maxRecord) + "b,c\nd\n", `[1:1 "a"  2:1 wrong 1048578:1 "b" 1048578:3 "c"  1048579:1 "d" ]`},
		"quote inside": {"a\n" + strings.Repeat("x", maxRecord) + "\"\n\"b\"\n", `[1:1 "a"  2:1 wrong 3:1 "b" ]`},
	} {
		if got, _ := ownRecords(strings.NewReader(test.log), ','); fmt.Sprint(got) != test.want {
			t.Errorf("%s: got %.300q, want %s", name, got, test.want)
		}
	}
}

// zeros is a line without an end, of so many bytes.
type zeros struct{ left int64 }

func (z *zeros) Read(p []byte) (int, error) {
	n := int(min(z.left, int64(len(p))))
	if n == 0 {
		return 0, io.EOF
	}
	clear(p[:n])
	z.left -= int64(n)
	return n, nil
}

// One line of a gibibyte is refused within the room of two records.
func TestEndlessLine(t *testing.T) {
	log := io.MultiReader(strings.NewReader("a\n"), &zeros{1 << 30}, strings.NewReader("\nb\n"))
	got, room := ownRecords(log, ',')
	if want := `[1:1 "a"  2:1 wrong 3:1 "b" ]`; fmt.Sprint(got) != want || room > 2*maxRecord {
		t.Errorf("got %.300q with room for %d bytes, want %s", got, room, want)
	}
}

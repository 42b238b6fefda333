package setlog_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"slices"
	"strings"
	"sync"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

var scanned = setlog.Reader{Columns: map[string]string{"person": "who", "exercise": "what", "load": "load", "reps": "n"},
	Side: body.Both, Hold: body.OneHand}

// bigLog is invented: some rows are bad, some doubtful, some refused by who takes them.
// At the given rows it has the text of odd.
func bigLog(rows int, odd map[int]string) []byte {
	b := []byte("who,what,load,n,note\n")
	for i := range rows {
		switch text, is := odd[i]; {
		case is:
			b = append(b, text...)
		case i%997 == 5:
			b = fmt.Appendf(b, "p%d,curl,x,%d,\n", i, i%20+1)
		case i%1009 == 7:
			b = fmt.Appendf(b, "p%d,curl,\t301 kg,%d,\r\n\n", i, i%20+1)
		case i%1013 == 9:
			b = fmt.Appendf(b, "p%d,refuse,5 kg,%d,\n", i, i%20+1)
		default:
			b = fmt.Appendf(b, "p%d,curl,%d.5 kg,%d,%s\n", i, i%30+1, i%20+1, strings.Repeat("z", i%40))
		}
	}
	return b
}

var errRefused = field.New("/exercise", "refuse", "another", field.ErrConflict)

// scanAll reads with so many workers: what is said, and the sum of what the last functions
// took.
func scanAll(t testing.TB, log io.ReaderAt, size int64, workers int) (said []string, sets, reps int) {
	t.Helper()
	var mu sync.Mutex
	seq := scanned.Scan(log, size, workers, func(n int) []func(setlog.Set) error {
		mu.Lock()
		defer mu.Unlock()
		sets, reps = 0, 0
		return slices.Repeat([]func(setlog.Set) error{func(s setlog.Set) error {
			if s.Exercise == "refuse" {
				return errRefused
			}
			mu.Lock()
			defer mu.Unlock()
			sets, reps = sets+1, reps+s.Reps
			return nil
		}}, n)
	})
	return rowsOf(t, seq), sets, reps
}

// What CSV says of the log, with the set that is refused.
func readAll(t testing.TB, log []byte) (said []string, sets, reps int) {
	t.Helper()
	var rows iter.Seq2[setlog.LoggedSet, error] = func(yield func(setlog.LoggedSet, error) bool) {
		for row, err := range scanned.CSV(bytes.NewReader(log)) {
			switch {
			case err == nil && row.Set.Exercise == "refuse":
				yield(setlog.LoggedSet{}, &setlog.RowError{Line: row.Line, Column: 2 + len(row.Set.Key), Name: "exercise", Text: "refuse", Err: field.Errors{errRefused}})
				continue
			case err == nil:
				sets, reps = sets+1, reps+row.Set.Reps
			}
			if err != nil || row.Doubts != nil {
				yield(row, err)
			}
		}
	}
	return rowsOf(t, rows), sets, reps
}

// However many workers read, and wherever a quote stands, the same is said and taken.
func TestScanAsCSV(t *testing.T) {
	const rows = 25_000
	for name, odd := range map[string]map[int]string{
		"no quote":      nil,
		"early quote":   {3: "p,\"curl\",5 kg,10,\n"},
		"late quote":    {rows - 3: "p,\"cu\nrl\",5 kg,10,\n"},
		"middle quote":  {rows / 2: "p,curl,5 kg,10,\"\n\n\n\"\n"},
		"open quote":    {rows / 3: "p,curl,5 kg,10,\"\n", rows - 1: "p,curl,5 kg,10,\"\n"},
		"long line":     {rows / 2: strings.Repeat("\x00", 1<<20+5) + "\n"},
		"binary":        {rows / 2: "\x00\xff\xfe,\x80\n", rows / 3: "\r\r\n,,,,\n"},
		"truncated":     {rows - 1: "p,cur"},
		"broad ends":    {0: strings.Repeat("\n", 100_000), rows - 1: strings.Repeat("\r\n", 100_000)},
		"lone CR ended": {rows - 1: "p,curl,5 kg,10,\r"},
	} {
		log := bigLog(rows, odd)
		want, sets, reps := readAll(t, log)
		for _, workers := range []int{1, 2, 3, 8} {
			got, n, r := scanAll(t, bytes.NewReader(log), int64(len(log)), workers)
			if !slices.Equal(got, want) || n != sets || r != reps {
				t.Errorf("%s, %d workers: %d remarks, want %d; %d sets, want %d; %d repetitions, want %d", name, workers, len(got), len(want), n, sets, r, reps)
			}
		}
	}
}

// Whoever wants no more gets no more, and nobody works on.
func TestScanEnds(t *testing.T) {
	log := bigLog(100_000, nil)
	n := 0
	for range scanned.Scan(bytes.NewReader(log), int64(len(log)), 4, func(n int) []func(setlog.Set) error {
		return slices.Repeat([]func(setlog.Set) error{func(setlog.Set) error { return nil }}, n)
	}) {
		if n++; n == 10 {
			break
		}
	}
	enough := errors.New("enough")
	for _, workers := range []int{1, 4} {
		var last error
		for _, err := range scanned.Scan(bytes.NewReader(log), int64(len(log)), workers, func(n int) []func(setlog.Set) error {
			return slices.Repeat([]func(setlog.Set) error{func(setlog.Set) error { return enough }}, n)
		}) {
			last = err
		}
		var row *setlog.RowError
		if !errors.Is(last, enough) || !errors.As(last, &row) || row.Line != 2 {
			t.Errorf("%d workers: %v", workers, last)
		}
	}
}

// brokenAt cannot be read from a byte on.
type brokenAt struct {
	*bytes.Reader
	from int64
}

var errBroken = errors.New("broken")

func (b brokenAt) ReadAt(p []byte, off int64) (int, error) {
	if off+int64(len(p)) > b.from {
		n, _ := b.Reader.ReadAt(p[:max(0, min(int64(len(p)), b.from-off))], off)
		return n, errBroken
	}
	return b.Reader.ReadAt(p, off)
}

func TestScanBrokenOff(t *testing.T) {
	log := bigLog(100_000, nil)
	at := int64(len(log) / 2)
	want := 1 + bytes.Count(log[:at], []byte("\n"))
	for _, workers := range []int{1, 2, 5} {
		var row *setlog.RowError
		var last error
		for _, err := range scanned.Scan(brokenAt{bytes.NewReader(log), at}, int64(len(log)), workers, func(n int) []func(setlog.Set) error {
			return slices.Repeat([]func(setlog.Set) error{func(setlog.Set) error { return nil }}, n)
		}) {
			last = err
		}
		if !errors.Is(last, errBroken) || !errors.As(last, &row) || row.Line != want || row.Reason().Code != "setlog.broken-off" {
			t.Errorf("%d workers: %v, want line %d", workers, last, want)
		}
	}
}

func TestScanMisuse(t *testing.T) {
	none := func(int) []func(setlog.Set) error { return nil }
	log := bytes.NewReader(bigLog(50_000, nil))
	for name, test := range map[string]struct {
		seq  iter.Seq2[setlog.LoggedSet, error]
		want error
	}{
		"no reader":      {scanned.Scan(nil, 0, 1, none), field.ErrMissing},
		"no functions":   {scanned.Scan(log, 0, 1, nil), field.ErrMissing},
		"no workers":     {scanned.Scan(log, 0, 0, none), field.ErrOutOfRange},
		"less than none": {scanned.Scan(log, -1, 1, none), field.ErrOutOfRange},
		"no header":      {scanned.Scan(log, 0, 1, none), field.ErrMissing},
		"nobody takes":   {scanned.Scan(log, log.Size(), 1, none), field.ErrMissing},
		"nor of many":    {scanned.Scan(log, log.Size(), 3, none), field.ErrMissing},
	} {
		n := 0
		for _, err := range test.seq {
			if n++; !errors.Is(err, test.want) {
				t.Errorf("%s: %v", name, err)
			}
		}
		if n != 1 {
			t.Errorf("%s: %d times", name, n)
		}
	}
}

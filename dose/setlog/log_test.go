package setlog_test

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// makeLog writes a log of n rows, kg and lb mixed, one row in every bad ones
// malformed in one of several ways; it returns the bad rows as "line field".
func makeLog(n, bad int) (log []byte, truth []string) {
	var b bytes.Buffer
	b.WriteString("person,day,exercise,side,hold,load,reps,effort\n")
	day := units.Must(units.ParseDay("2026-06-01"))
	exercises := []string{"goblet-squat", "one-arm-dumbbell-row", "standing-calf-raise", "biceps-curl"}
	x := uint64(20260102)
	next := func(n uint64) uint64 { // a linear congruential generator
		x = x*6364136223846793005 + 1442695040888963407
		return x >> 33 % n
	}
	for line := 2; line < n+2; line++ {
		cell := []string{fmt.Sprintf("p%03d", next(50)), (day + units.Day(line/500)).String(), exercises[next(4)], "both", "both hands on one",
			strconv.FormatFloat(0.5*float64(4+next(120)), 'f', -1, 64) + " kg", strconv.Itoa(3 + int(next(18))), "rir " + strconv.Itoa(int(next(6)))}
		if next(3) == 0 {
			cell[5] = strconv.FormatFloat(2.5*float64(2+next(54)), 'f', -1, 64) + " lb"
		}
		if line%bad == 0 {
			spoilt := [][3]string{{"1", "2027-02-30", "/day"}, {"2", "", "/exercise"}, {"5", "abc", "/load"}, {"5", "-10 kg", "/load"},
				{"5", "10", "/load"}, {"6", "0", "/reps"}, {"6", "8-10", "/reps"}, {"7", "rir 99", "/effort"}, {"3", "up", "/side"}}[next(9)]
			at, _ := strconv.Atoi(spoilt[0])
			cell[at] = spoilt[1]
			truth = append(truth, fmt.Sprintf("%d %s", line, spoilt[2]))
		}
		b.WriteString(strings.Join(cell, ",") + "\n")
	}
	return b.Bytes(), truth
}

// TestGeneratedLog: of a long log, every malformed row is found, and no other.
func TestGeneratedLog(t *testing.T) {
	log, truth := makeLog(20_000, 97)
	sets := 0
	var got []string
	for _, err := range setlog.ReadCSV(bytes.NewReader(log)) {
		var row *setlog.RowError
		switch {
		case err == nil:
			sets++
		case errors.As(err, &row):
			got = append(got, fmt.Sprintf("%d /%s", row.Line, row.Name))
		}
	}
	if sets+len(got) != 20_000 || strings.Join(got, "\n") != strings.Join(truth, "\n") {
		t.Errorf("%d sets and %d bad rows, want %d bad rows", sets, len(got), len(truth))
	}
}

// TestSteadyState: once the texts of a log are known, a row allocates nothing.
func TestSteadyState(t *testing.T) {
	short, _ := makeLog(5_000, 1<<30)
	long := append(bytes.Clone(short), short[bytes.IndexByte(short, '\n')+1:]...)
	allocs := func(log []byte) float64 {
		return testing.AllocsPerRun(2, func() {
			for _, err := range setlog.ReadCSV(bytes.NewReader(log)) {
				if err != nil {
					t.Error(err)
				}
			}
		})
	}
	if once, twice := allocs(short), allocs(long); twice-once > 50 { // one in a hundred rows; the runtime allocates now and then
		t.Errorf("5000 rows allocate %v times, the same again %v more", once, twice-once)
	}
}

// TestManyNames: a log of more names than are remembered is read nevertheless.
func TestManyNames(t *testing.T) {
	var b strings.Builder
	b.WriteString("person,exercise,side,hold,load,reps\n")
	for i := range 40_000 {
		fmt.Fprintf(&b, "p%d,plank,both,unloaded,,30\n", i)
	}
	n := 0
	for s, err := range setlog.ReadCSV(strings.NewReader(b.String())) {
		if err != nil || s.Key != body.Key("p"+strconv.Itoa(n)) {
			t.Fatalf("row %d: %+v, %v", n, s, err)
		}
		n++
	}
	if n != 40_000 {
		t.Errorf("%d rows", n)
	}
}

func FuzzReadCSV(f *testing.F) {
	f.Add([]byte(header + "2026-11-25,seated-press,both,one in each hand,8 kg,per hand,6,rir 2\n"))
	f.Add([]byte("exercise,side,hold,load,reps\n\"a\"\"b\",both,unloaded,,1\n,,,,\n\"\n"))
	f.Add([]byte("exercise,exercise\n\xff\r\n"))
	f.Add([]byte("exercise,side,hold,load,reps\na\rb,both,unloaded,,1\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		rows, last := 0, 0
		for s, err := range setlog.ReadCSV(bytes.NewReader(data)) {
			rows++
			var bad *setlog.RowError
			switch {
			case err == nil:
				checkWritten(t, s)
			case !errors.As(err, &bad):
				t.Errorf("%T: %v", err, err)
			case bad.Line <= last || bad.Column < 1:
				t.Errorf("%v comes after line %d", bad, last)
			default:
				last = bad.Line
			}
		}
		if most := bytes.Count(data, []byte("\n")) + 1; rows > most {
			t.Errorf("%d rows of %d lines", rows, most)
		}
	})
}

// checkWritten holds that a set that was read can be written and read again.
func checkWritten(t *testing.T, s setlog.Set) {
	t.Helper()
	var b bytes.Buffer
	if err := s.Validate(); err != nil {
		t.Errorf("%+v: %v", s, err)
	}
	if formula := func(text string) bool { return text != "" && strings.IndexByte("=+-@\t", text[0]) >= 0 }; formula(string(s.Key)) || formula(string(s.Exercise)) {
		return // refused: spreadsheets would work it out
	}
	one := func(yield func(setlog.Set) bool) { yield(s) }
	if err := setlog.WriteCSV(&b, one); err != nil {
		t.Errorf("%+v cannot be written: %v", s, err)
	}
	for back, err := range setlog.ReadCSV(&b) {
		if err != nil || back != s {
			t.Errorf("%+v reads back as %+v, %v", s, back, err)
		}
	}
}

func FuzzReadJSONLines(f *testing.F) {
	f.Add([]byte(goodJSON + "\n{}\n[1]\n{\"reps\":1,\"reps\":2}"))
	f.Add([]byte(`{"a~b":1}` + "\n" + `{"load":null}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		for s, err := range setlog.ReadJSONLines(bytes.NewReader(data)) {
			var bad *setlog.RowError
			if err == nil && s.Validate() != nil || err != nil && !errors.As(err, &bad) {
				t.Errorf("%+v, %v", s, err)
			}
		}
	})
}

func BenchmarkReadCSV(b *testing.B) {
	log, _ := makeLog(20_000, 1<<30)
	b.SetBytes(int64(len(log)))
	b.ReportAllocs()
	for b.Loop() {
		for _, err := range setlog.ReadCSV(bytes.NewReader(log)) {
			if err != nil {
				b.Fatal(err)
			}
		}
	}
}

func BenchmarkReadJSONLines(b *testing.B) {
	log := bytes.Repeat([]byte(goodJSON+"\n"), 5_000)
	b.SetBytes(int64(len(log)))
	b.ReportAllocs()
	for b.Loop() {
		for _, err := range setlog.ReadJSONLines(bytes.NewReader(log)) {
			if err != nil {
				b.Fatal(err)
			}
		}
	}
}

// One row of two is bad: it is told, and the other is read.
func ExampleReadCSV() {
	log := strings.NewReader(`day,exercise,side,hold,load,stated,reps,effort
2026-11-25,dumbbell-bench-press,both,one in each hand,8 kg,per hand,10,rir 3
2026-11-25,goblet-squat,both,both hands on one,25,,10,rir 3
`)
	for s, err := range setlog.ReadCSV(log) {
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(s.Exercise, s.Reps, "×", s.Load)
	}
	// Output:
	// dumbbell-bench-press 10 × 8 kg
	// line 3, column 48 (load): not given: /load = "25", allowed: a decimal number and a unit, such as "12.5 kg" or "25 lb"
}

// The same set as a table and as lines of JSON.
func ExampleWriteCSV() {
	sets := []setlog.Set{{
		Day: units.Must(units.NewDay(2026, 11, 25)), Exercise: "seated-press", Side: body.Both, Hold: body.OneEachHand,
		Load: 8 * units.Kilogram, Stated: body.PerHand, Reps: 6, Effort: units.Must(units.InReserve(2)),
	}}
	if err := setlog.WriteCSV(os.Stdout, slices.Values(sets)); err != nil {
		fmt.Println(err)
	}
	if err := setlog.WriteJSONLines(os.Stdout, slices.Values(sets)); err != nil {
		fmt.Println(err)
	}
	// Output:
	// person,day,exercise,side,hold,load,stated,reps,effort,rep_seconds
	// ,2026-11-25,seated-press,both,one in each hand,8 kg,per hand,6,rir 2,
	// {"day":"2026-11-25","exercise":"seated-press","side":"both","hold":"one in each hand","load":"8 kg","stated":"per hand","reps":6,"effort":"rir 2"}
}

package setlog_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

var heldOnce = setlog.Reader{Side: body.Both, Hold: body.OneHand}

// Whole numbers that programs write with zeros behind the point are whole; three zeros may be
// thousands. JSON has more ways to write a number.
func TestReaderWholeNumbers(t *testing.T) {
	log := "exercise,load,reps\ncurl,5 kg,8.0\ncurl,5 kg,\"8,0\"\ncurl,5 kg,12.00\ncurl,5 kg,1.000\ncurl,5 kg,8.5\ncurl,5 kg,.0\n"
	var reps []string
	for row, err := range heldOnce.CSV(strings.NewReader(log)) {
		reps = append(reps, fmt.Sprint(row.Set.Reps, " ", err != nil))
	}
	same(t, "CSV", reps, "8 false", "8 false", "12 false", "0 true", "0 true", "0 true")
	rd := heldOnce
	rd.Unit = units.KG
	lines := `{"exercise":"curl","load":1e1,"reps":8.0}` + "\n" + `{"exercise":"curl","load":1.25E1,"reps":8e0}` + "\n" + `{"exercise":"curl","load":1e400,"reps":8}` + "\n"
	var got []string
	for row, err := range rd.JSONLines(strings.NewReader(lines)) {
		got = append(got, fmt.Sprint(row.Set.Load, " ", row.Set.Reps, " ", err != nil))
	}
	same(t, "JSON", got, "10 kg 8 false", "12.5 kg 8 false", "0 kg 0 true")
	for row, err := range setlog.ReadCSV(strings.NewReader("EXERCISE,side, Hold ,load,Reps\ncurl,both,one hand,5 kg,8.0\n")) {
		if err != nil || row.Reps != 8 {
			t.Errorf("%v, %v", row, err)
		}
	}
}

// A load where nothing is held is wrong itself, in the words of the log and where it stands,
// and not what it is stated of, for which the log has no column.
func TestLoadOfNothingHeld(t *testing.T) {
	rd := setlog.Reader{Side: body.Both, Hold: body.Unloaded}
	for _, err := range rd.CSV(strings.NewReader("exercise,load,reps\nplank,5 lb,30\n")) {
		if got, want := fmt.Sprint(err), "line 2, column 7 (load): contradiction: /load = 5 lb, allowed: no mass, since the hold is unloaded"; got != want {
			t.Errorf("%s\nwant %s", got, want)
		}
	}
}

// An error of a line of JSON has one place: that in the log.
func TestJSONLinesHaveOnePlace(t *testing.T) {
	for _, err := range setlog.ReadJSONLines(strings.NewReader("\n" + strings.Replace(goodJSON, `"reps":`, `"reps":"`, 1) + "\n" + strings.Replace(goodJSON, `"reps"`, `"rep"`, 1))) {
		var row *setlog.RowError
		if !errors.As(err, &row) || strings.Count(err.Error(), "line") != 1 || strings.Count(err.Error(), "column") != 1 {
			t.Errorf("%v", err)
		}
	}
}

// A log whose lines end as those of old computers is told once, not cell by cell.
func TestReaderOldLineEnds(t *testing.T) {
	for _, err := range heldOnce.CSV(strings.NewReader("exercise,load,reps\rcurl,5 kg,8\rcurl,5 kg,9\r")) {
		var bad *field.Error
		if !errors.As(err, &bad) || !strings.Contains(bad.Allowed, "LF or CR LF") {
			t.Errorf("%v", err)
		}
	}
}

// A log as people have it: days in the order of a country, sides and exercises by its own
// names, two scales of effort side by side, and a range of days that makes a slip of the year
// doubtful. Invented.
func TestReaderRawLog(t *testing.T) {
	rd := setlog.Reader{
		Columns: map[string]string{"day": "Datum", "exercise": "Übung", "side": "S", "load": "kg", "reps": "Wdh", "rpe": "RPE", "rir": "RIR"},
		Comma:   ";", Unit: units.KG, Stated: body.PerHand, Catalogue: exercise.Standard(), DayForm: "day.month.year",
		From: units.Must(units.NewDay(2026, 1, 1)), Until: units.Must(units.NewDay(2026, 12, 31)),
		Sides: map[string]body.Side{"R": body.Right, "l": body.Left, "beide": body.Both}, Exercises: map[string]exercise.ID{"Kurzhantelcurl": "biceps-curl"},
	}
	log := "Datum;Übung;S;kg;Wdh;RPE;RIR\n" +
		"17.3.2026;kurzhantelcurl;r;7,5;8;8,5;\n" +
		"17.03.2026;Kurzhantelcurl;L;7,5;8.0;;2\n" +
		"01.05.1026;Kurzhantelcurl;beide;7,5;8;8,5;1\n" +
		"1.1.2062;Kurzhantelcurl;right;7,5;8;8;2\n" +
		"17.3.2026;Kurzhantelcurl;r;7,5;8;9;3\n" +
		"17.3.2026;Kurzhantelcurl;r;7,5;8;4;6\n" +
		"3/17/2026;Kurzhantelcurl;r;7,5;8;;\n" +
		"17.3.26;Kurzhantelcurl;x;7,5;8;;\n" +
		"30.2.2026;Trizeps;r;7,5;8;1_0;\n"
	same(t, "raw log", rowsOf(t, rd.CSV(strings.NewReader(log))),
		"2  2026-03-17 biceps-curl right, one in each hand, 7.5 kg per hand x8 rpe 8.5 0",
		"3  2026-03-17 biceps-curl left, one in each hand, 7.5 kg per hand x8 rir 2 0",
		"4  1026-05-01 biceps-curl both, one in each hand, 7.5 kg per hand x8 rir 1 0 setlog.days",
		"5  2062-01-01 biceps-curl right, one in each hand, 7.5 kg per hand x8 rpe 8 0 setlog.days",
		`6:36 rir "3" setlog.conflict /rir`,
		`7:36 rir "6" setlog.conflict /rir`,
		`8:1 day "3/17/2026" setlog.unreadable /day`,
		`9:1 day "17.3.26" setlog.unreadable /day /side`,
		`10:1 day "30.2.2026" setlog.out-of-range /day /exercise /rpe`)
	ends := "Datum;Übung;S;kg;Wdh;RPE;RIR\n31.12.2025;Kurzhantelcurl;r;5;8;;\n1.1.2026;Kurzhantelcurl;r;5;8;;\n31.12.2026;Kurzhantelcurl;r;5;8;;\n1.1.2027;Kurzhantelcurl;r;5;8;;\n"
	same(t, "the ends of the range", rowsOf(t, rd.CSV(strings.NewReader(ends))),
		"2  2025-12-31 biceps-curl right, one in each hand, 5 kg per hand x8  0 setlog.days",
		"3  2026-01-01 biceps-curl right, one in each hand, 5 kg per hand x8  0",
		"4  2026-12-31 biceps-curl right, one in each hand, 5 kg per hand x8  0",
		"5  2027-01-01 biceps-curl right, one in each hand, 5 kg per hand x8  0 setlog.days")
	rd.Sides, rd.Exercises = map[string]body.Side{"R": body.Right, "r ": body.Left, "left": body.Right, "": body.Left, "q/": 0}, map[string]exercise.ID{"x": "zumba", "y": ""}
	rd.DayForm, rd.From, rd.Until = "day.month.day", -1, 0
	var bad field.Errors
	if errors.As(rd.Validate(), &bad); len(bad) != 8 {
		t.Errorf("%v", bad)
	}
	for path, category := range map[string]error{"/sides/r ": field.ErrDuplicate, "/sides/left": field.ErrConflict, "/sides/": field.ErrMissing, "/sides/q~1": field.ErrMissing,
		"/exercises/x": field.ErrUnknown, "/exercises/y": field.ErrMissing, "/day_form": field.ErrSyntax, "/from": field.ErrOutOfRange} {
		found := false
		for _, f := range bad {
			found = found || f.Path == path && errors.Is(f, category)
		}
		if !found {
			t.Errorf("%s: %v, want %v", path, bad, category)
		}
	}
	rd = setlog.Reader{From: 9, Until: 8}
	if err := rd.Validate(); !errors.Is(err, field.ErrConflict) {
		t.Errorf("a range that ends before it begins: %v", err)
	}
}

// Every day is read back in every order and with every sign between, as time writes it.
func TestReaderDayForms(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := units.Day(rapid.Int32Range(365, 3652059).Draw(t, "day"))
		form := rapid.SampledFrom([]string{"day/month/year", "month/day/year", "year-month-day", "day.month.year", "day month.year"}).Draw(t, "form")
		year, month, day := d.Date()
		layout := strings.NewReplacer("year", "2006", "month", rapid.SampledFrom([]string{"1", "01"}).Draw(t, "month"), "day", rapid.SampledFrom([]string{"2", "02"}).Draw(t, "of month")).Replace(form)
		text := time.Date(year, month, day, 0, 0, 0, 0, time.UTC).Format(layout)
		rd := heldOnce
		rd.DayForm = form
		for row, err := range rd.CSV(strings.NewReader("exercise,load,reps,day\ncurl,5 kg,8," + text + "\n")) {
			if err != nil || row.Set.Day != d {
				t.Fatalf("%s as %s: %v, %v", text, form, row.Set.Day, err)
			}
		}
	})
}

package setlog_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

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

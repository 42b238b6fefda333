package setlog_test

import (
	"fmt"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An invented log with columns of its own, pounds, a plain number for the reserve and names
// that people use.
func ExampleReader_CSV() {
	log := `Who;Date;Lift;Weight;Reps;In reserve
p1;2026-11-25;Biceps-Curl;12,5;10;2
p1;2026-11-25;biceps-curl;1,250;10;2
p1;2026-11-25;biceps-curl;12,5;8-10;n/a
p1;2026-11-25;curls;12,5;8;2
`
	reader := setlog.Reader{
		Columns: map[string]string{"person": "who", "day": "date", "exercise": "lift", "load": "weight", "reps": "reps", "effort": "in reserve"},
		Comma:   ";", Missing: []string{"n/a"}, Unit: units.LB, Scale: units.ScaleRIR, Stated: body.PerHand, Catalogue: exercise.Standard(),
	}
	words := setlog.Words()
	for row, err := range reader.CSV(strings.NewReader(log)) {
		if bad, ok := err.(*setlog.RowError); ok {
			fmt.Println(words.Clinician(bad.Reason()))
			continue
		}
		fmt.Println("Line", row.Line, row.Set.Exercise, row.Set.Load.Text(units.LB), row.Set.Effort)
		for _, doubt := range row.Doubts {
			fmt.Println("-", words.Clinician(doubt))
		}
	}
	// Output:
	// Line 2 biceps-curl 12.5 lb rir 2
	// Line 3 biceps-curl 1.25 lb rir 2
	// - 1,250 was read as 0.5669904625 kg. If its comma parts thousands, that is a thousandth of it.
	// Line 4, column 32: reps cannot be read: 8-10.
	// Line 5, column 15: exercise is not known here: curls.
}

package function

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strings"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// normsCSV holds the norms. Nothing else holds these rows.
//
//go:embed norms.csv
var normsCSV string

const normColumns = "id,test,sex,age_min,age_max,statistic,value,unit,source,doi,known,note,source_id,body,via,people,course,remark"

// tables reads the norms on first use. It cannot panic: the file is built into
// the program, and a test holds that it can be read.
var tables = sync.OnceValue(func() []table { return units.Must(readTables(normsCSV)) })

// A table holds what one body printed about one measure, in one unit.
type table struct {
	measure Measure
	unit    Unit
	body    string
	course  string
	norms   []Norm
}

func (t table) takes(n Norm) bool {
	return t.measure == n.Measure && t.unit == n.Value.unit && t.body == n.Body && t.course == n.Course
}

// Words of the file.
var (
	knownAs = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory}
	sexAs   = map[string]body.Sex{"any": 0, "M": body.Male, "F": body.Female}
)

// readTables reads the tables, in the order of the file; the rows of a table
// stand together.
func readTables(data string) ([]table, error) {
	r := csv.NewReader(strings.NewReader(data))
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(lines) == 0 || strings.Join(lines[0], ",") != normColumns {
		return nil, field.Bad("the first line", normColumns, field.ErrSyntax)
	}
	var all []table
	row := map[string]string{}
	for i, line := range lines[1:] {
		for j, name := range lines[0] {
			row[name] = line[j]
		}
		n, err := readNorm(row)
		if err != nil {
			return nil, fmt.Errorf("row %d: %w", i+1, err)
		}
		if len(all) == 0 || !all[len(all)-1].takes(n) {
			all = append(all, table{n.Measure, n.Value.unit, n.Body, n.Course, nil})
		}
		t := &all[len(all)-1]
		t.norms = append(t.norms, n)
	}
	return all, nil
}

func readNorm(row map[string]string) (Norm, error) {
	n := Norm{
		Statistic: Statistic(row["statistic"]), Body: row["body"], Source: evidence.SourceID(row["source_id"]), Basis: knownAs[row["known"]],
		Via: row["via"], People: row["people"], Course: row["course"], Note: row["remark"],
	}
	var bad field.Errors
	var err error
	var known bool
	bad.Add("/test", n.Measure.UnmarshalText([]byte(row["test"])))
	if n.Sex, known = sexAs[row["sex"]]; !known {
		bad.Add("/sex", field.Bad(row["sex"], "any, M or F", field.ErrUnknown))
	}
	n.Ages, err = readAges(row["age_min"], row["age_max"])
	bad.Add("/age", err)
	bad.Refuse(n.Statistic.kind() == 0, "/statistic", row["statistic"], "a statistic of this package", field.ErrUnknown)
	n.Value, err = ParseAmount(row["value"] + " " + row["unit"])
	bad.Add("/value", err)
	bad.Add("/known", n.Basis.Check())
	n.Fact = n.factID()
	return n, bad.Err()
}

// readAges reads the ends that were printed, each empty where none was.
func readAges(from, to string) (ages units.Range[body.Age], err error) {
	var ends []string
	if from != "" {
		ends = append(ends, `"min":`+from)
	}
	if to != "" {
		ends = append(ends, `"max":`+to)
	}
	err = ages.UnmarshalJSON([]byte("{" + strings.Join(ends, ",") + "}"))
	return ages, err
}

package rule_test

import (
	"strings"

	"example.org/posology/testdata/dosetest"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

var pairs = dosetest.Table

// paths lists where the bad fields of err are.
func paths(err error) string { return strings.Join(fieldtest.Paths(err), " ") }

func kg(v float64) units.Mass { return units.Must(units.Kilograms(v)) }

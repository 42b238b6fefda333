package programme_test

import (
	"strings"

	"example.org/posology/testdata/fieldtest"
)

// paths lists where the bad fields of err are.
func paths(err error) string { return strings.Join(fieldtest.Paths(err), " ") }

type failer = fieldtest.T

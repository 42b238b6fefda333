package programme_test

import (
	"strings"

	"example.org/posology/internal/fieldtest"
)

// paths lists where the bad fields of err are.
func paths(err error) string { return strings.Join(fieldtest.Paths(err), " ") }

type failer = fieldtest.T

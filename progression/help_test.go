package progression_test

import (
	"errors"
	"strings"

	"example.org/posology/units/field"
)

// paths lists where the bad fields of err are.
func paths(err error) string {
	var many field.Errors
	var one *field.Error
	var all []string
	switch {
	case errors.As(err, &many):
		for _, f := range many {
			all = append(all, f.Path)
		}
	case errors.As(err, &one):
		all = append(all, one.Path)
	}
	return strings.Join(all, " ")
}

package record

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.org/posology/units/field"
)

func path(list string, i int) string { return "/" + list + "/" + strconv.Itoa(i) }

// moves say where the places of one thing stand in another: "/log/3" at
// "/visits/5", say.
type moves map[string]string

// place returns where a place stands; of the moves that hold for it the longest
// counts.
func (m moves) place(path string) string {
	for cut := len(path); cut > 0; cut = strings.LastIndexByte(path[:cut], '/') {
		if to, ok := m[path[:cut]]; ok {
			return to + path[cut:]
		}
	}
	return path
}

// of moves the fields of an error, and drops what is said of one for the second
// time, as of a field that all exercises share. An error without fields stays.
func (m moves) of(err error) error {
	var all field.Errors
	var one *field.Error
	if !errors.As(err, &all) && !errors.As(err, &one) {
		return err
	}
	var bad, kept field.Errors
	bad.Add("", err)
	said := map[string]bool{}
	for _, f := range bad {
		f.Path = m.place(f.Path)
		if what := fmt.Sprint(f.Path, " ", f.Err); !said[what] {
			said[what] = true
			kept = append(kept, f)
		}
	}
	return kept.Err()
}

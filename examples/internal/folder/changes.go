package folder

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"unicode/utf8"
)

// changes compares two records as they are kept; the first may be nil.
func changes(was, is []byte) ([]string, error) {
	var list []string
	if was == nil {
		was = []byte("{}")
	}
	err := differ("", was, is, &list)
	return list, err
}

// differ adds a line for everything at a place and below it that is not the same. What
// stands there as it was is not looked into.
func differ(at string, was, is json.RawMessage, list *[]string) error {
	was, is = bytes.TrimSpace(was), bytes.TrimSpace(is)
	if was == nil && bytes.HasPrefix(is, []byte("[")) && strings.Count(at, "/") == 1 { // a list that begins is said line by line
		was = json.RawMessage("[]")
	}
	var err error
	switch {
	case bytes.Equal(was, is):
	case both(was, is, "{"):
		var a, b map[string]json.RawMessage
		if err = errors.Join(json.Unmarshal(was, &a), json.Unmarshal(is, &b)); err == nil {
			for _, name := range names(a, b) {
				err = errors.Join(err, differ(at+"/"+name, a[name], b[name], list))
			}
		}
	case both(was, is, "["):
		var a, b []json.RawMessage
		if err = errors.Join(json.Unmarshal(was, &a), json.Unmarshal(is, &b)); err == nil {
			most := max(len(a), len(b))
			a, b = append(a, make([]json.RawMessage, most-len(a))...), append(b, make([]json.RawMessage, most-len(b))...)
			for i := range most {
				err = errors.Join(err, differ(fmt.Sprintf("%s/%d", at, i), a[i], b[i], list))
			}
		}
	case was == nil:
		*list = append(*list, "+ "+at+": "+short(is))
	case is == nil:
		*list = append(*list, "- "+at+": "+short(was))
	default:
		*list = append(*list, "~ "+at+": "+short(was)+" -> "+short(is))
	}
	return err
}

func both(a, b []byte, begin string) bool {
	return bytes.HasPrefix(a, []byte(begin)) && bytes.HasPrefix(b, []byte(begin))
}

// names are those of either, sorted.
func names(a, b map[string]json.RawMessage) []string {
	all := maps.Clone(a)
	maps.Copy(all, b)
	return slices.Sorted(maps.Keys(all))
}

// mostShown is how many characters of a value are shown: of what was decided, which
// is long, its beginning tells the day and the edition.
const mostShown = 160

func short(text []byte) string {
	if n := utf8.RuneCount(text); n > mostShown {
		return string([]rune(string(text))[:mostShown]) + fmt.Sprintf(" ... (%d characters)", n)
	}
	return string(text)
}

package folder

import (
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"unicode/utf8"
)

// changes compares two records as JSON has them; the first may be nil.
func changes(was, is []byte) ([]string, error) {
	var before, after any
	if was != nil {
		if err := json.Unmarshal(was, &before); err != nil {
			return nil, err
		}
	}
	if err := json.Unmarshal(is, &after); err != nil {
		return nil, err
	}
	if before == nil {
		before = map[string]any{}
	}
	var list []string
	differ("", before, after, &list)
	return list, nil
}

// differ adds a line for everything at a place and below it that is not the same.
func differ(at string, was, is any, list *[]string) {
	a, inA := was.(map[string]any)
	b, inB := is.(map[string]any)
	if inA && inB {
		names := slices.Collect(maps.Keys(a))
		for name := range b {
			if _, ok := a[name]; !ok {
				names = append(names, name)
			}
		}
		slices.Sort(names)
		for _, name := range names {
			differ(at+"/"+name, a[name], b[name], list)
		}
		return
	}
	c, inC := was.([]any)
	d, inD := is.([]any)
	if was == nil && inD && strings.Count(at, "/") == 1 { // a list that begins is said line by line
		c, inC = []any{}, true
	}
	if inC && inD {
		for i := range max(len(c), len(d)) {
			differ(fmt.Sprintf("%s/%d", at, i), nth(c, i), nth(d, i), list)
		}
		return
	}
	switch {
	case reflect.DeepEqual(was, is):
	case was == nil:
		*list = append(*list, "+ "+at+": "+short(is))
	case is == nil:
		*list = append(*list, "- "+at+": "+short(was))
	default:
		*list = append(*list, "~ "+at+": "+short(was)+" -> "+short(is))
	}
}

func nth(list []any, i int) any {
	if i < len(list) {
		return list[i]
	}
	return nil
}

// mostShown is how many characters of a value are shown: of what was decided, which
// is long, its beginning tells the day and the edition.
const mostShown = 160

func short(v any) string {
	text, _ := json.Marshal(v) // it came from JSON
	if n := utf8.RuneCount(text); n > mostShown {
		return string([]rune(string(text))[:mostShown]) + fmt.Sprintf(" ... (%d characters)", n)
	}
	return string(text)
}

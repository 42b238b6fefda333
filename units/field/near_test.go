package field_test

import (
	"strings"
	"testing"

	"example.org/posology/units/field"
)

// known are made-up names, the second text of one on another line.
func known(yield func(name, text string) bool) {
	for _, row := range [...][2]string{
		{"one-arm-lift", "one-arm-lift"}, {"one-arm-lift", "a lift with one arm, in a Corner"}, {"narrow-pull", "narrow-pull"}, {"long-lift", "long-lift"},
		{"lifting-belt", "lifting-belt"}, {"shelf", "Übung am Regal"}, {"one-arm-pull", "one-arm-pull"}, {"ones", "ones"}, {"short-lift", "short-lift"}, {"steep-lift", "steep-lift"},
	} {
		if !yield(row[0], row[1]) {
			return
		}
	}
}

func TestDidYouMean(t *testing.T) {
	for given, want := range map[string]string{
		"arm lift":     "did you mean one-arm-lift, long-lift, lifting-belt, short-lift or steep-lift", // both words, then the last
		"ARM  Pulls":   "did you mean one-arm-pull, narrow-pull or one-arm-lift",                       // a plural
		"corner":       "did you mean one-arm-lift",                                                    // described so
		"row":          "",                                                                             // narrow has no such word
		"übung":        "did you mean shelf",
		"narow-pull":   "did you mean narrow-pull", // a slip, and not what else has pull
		"narrow thing": "did you mean narrow-pull", // not the last word, but in the name
		"corner thing": "",                         // in a description alone: says too little
		"zz":           "", "": "", "  ": "", "-": "",
		strings.Repeat("lift ", 13): "",
	} {
		if got := field.DidYouMean(given, known); got != want {
			t.Errorf("%q: %q, want %q", given, got, want)
		}
	}
	if got := field.DidYouMean("lift", func(func(string, string) bool) {}); got != "" {
		t.Errorf("of no names: %q", got)
	}
}

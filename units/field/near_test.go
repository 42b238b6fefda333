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

// TestDidYouMeanOneRule tries each rule on names of its own.
func TestDidYouMeanOneRule(t *testing.T) {
	for _, tt := range []struct {
		rule, given string
		names       [][2]string
		want        string
	}{
		{"two letters are no word", "lift of", [][2]string{{"a", "sum of all"}}, ""},
		{"a word within another is none, behind an accent too", "lance", [][2]string{{"a", "élancement"}}, ""},
		{"two words of a description", "left heavy thing", [][2]string{{"a", "a heavy one on the left"}}, "did you mean a"},
		{"the best text of a name counts", "red lamp", [][2]string{{"a", "lamp"}, {"b", "lamp"}, {"b", "lamp, red"}}, "did you mean b or a"},
		{"one slip before the last word", "big lump", [][2]string{{"big-lamp", "big lamp"}, {"lump", "lump"}}, "did you mean big-lamp"},
		{"the last word before three slips", "greet lamp", [][2]string{{"gravel-lamp", "gra lamp"}, {"a", "tall lamp"}}, "did you mean gravel-lamp or a"},
		{"every word before a slip", "red lamp", [][2]string{{"red-lam", "red lam"}, {"a", "lamp in red"}}, "did you mean a or red-lam"},
	} {
		got := field.DidYouMean(tt.given, func(yield func(string, string) bool) {
			for _, n := range tt.names {
				if !yield(n[0], n[1]) {
					return
				}
			}
		})
		if got != tt.want {
			t.Errorf("%s: %q, want %q", tt.rule, got, tt.want)
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

package say

import (
	"fmt"
	"strconv"
	"strings"
)

// Spelt writes numbers up to twelve out.
func Spelt(n int) string {
	words := [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"}
	if n >= 0 && n < len(words) {
		return words[n]
	}
	return strconv.Itoa(n)
}

// Begin makes s the beginning of a sentence.
func Begin(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// Weeks writes days as weeks where they are whole ones.
func Weeks(days int) string { return inLarger(days, 7, "week", "day") }

// Minutes writes seconds as minutes where they are whole ones.
func Minutes(seconds int) string { return inLarger(seconds, 60, "minute", "second") }

func inLarger(n, of int, large, small string) string {
	if n%of == 0 {
		n, small = n/of, large
	}
	if n != 1 {
		small += "s"
	}
	return Spelt(n) + " " + small
}

// Texts are what some values print.
func Texts[T fmt.Stringer](list []T) []string {
	texts := make([]string, len(list))
	for i, v := range list {
		texts[i] = v.String()
	}
	return texts
}

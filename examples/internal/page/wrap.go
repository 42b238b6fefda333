package page

import (
	"fmt"
	"io"
	"strings"
)

// Width is how many columns a printed page has.
const Width = 76

// Wrap prints text within the width, its first line behind mark and the others
// below its first word.
func Wrap(w io.Writer, mark, text string) {
	line, indent := mark, strings.Repeat(" ", len([]rune(mark)))
	for i, word := range strings.Fields(text) {
		switch {
		case i == 0:
			line += word
		case len([]rune(line))+1+len([]rune(word)) > Width:
			fmt.Fprintln(w, line)
			line = indent + word
		default:
			line += " " + word
		}
	}
	fmt.Fprintln(w, line)
}

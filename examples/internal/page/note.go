package page

import (
	"fmt"
	"io"
	"strings"

	"example.org/posology/units"
)

// Note prints where a case comes from, in brackets; nothing where it does not say.
func Note(w io.Writer, note string) {
	if note != "" {
		Wrap(w, "", fmt.Sprintf("(%s)", note))
	}
}

// Under are the lines below a title: the day, and where a case comes from.
func Under(day units.Day, note string) []string {
	lines := []string{Day(day)}
	if note != "" {
		lines = append(lines, fmt.Sprintf("(%s)", note))
	}
	return lines
}

// Note prints where a case comes from, as the function does.
func (p *Paper) Note(note string) { Note(p.out, note) }

// Opening returns what the lines at the head of a table say that begin with #.
func Opening(table []byte) string {
	var words []string
	for line := range strings.Lines(string(table)) {
		text, comment := strings.CutPrefix(line, "#")
		if !comment {
			break
		}
		words = append(words, strings.Fields(text)...)
	}
	return strings.Join(words, " ")
}

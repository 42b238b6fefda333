package document

import (
	"fmt"
	"io"
	"slices"
	"strings"
)

// Width is how many columns a printed page has.
const Width = 76

const gap = 2 // columns between those of a table

// A typist collects the lines of a text.
type typist struct {
	strings.Builder
	tight bool // the next block stands right below
}

// Text writes the document as plain text.
func (d Document) Text(w io.Writer) error {
	Wrap(w, "", strings.ToUpper(d.Title))
	for _, line := range d.Under {
		Wrap(w, "", line)
	}
	return d.Body(w)
}

// Body writes what stands below the title.
func (d Document) Body(w io.Writer) error {
	var t typist
	for _, b := range d.Blocks {
		if !t.tight {
			t.WriteString("\n")
		}
		t.tight = false
		b.text(&t)
	}
	_, err := io.WriteString(w, t.String())
	return err
}

func (h Heading) text(t *typist) {
	Wrap(t, "", strings.ToUpper(h.Text))
	t.tight = h.Level > 2
}

func (p Paragraph) text(t *typist) { Wrap(t, "", string(p)) }

func (l List) text(t *typist) {
	longest := 0
	for _, i := range l {
		longest = max(longest, len([]rune(i.Lead)))
	}
	for _, i := range l {
		mark := "- "
		if longest > 0 {
			mark = fmt.Sprintf("   %-*s ", longest, i.Lead)
		}
		if longest > 0 && i.Lead == "" {
			mark = "   "
		}
		Wrap(t, mark, i.Text)
	}
}

func (b Table) text(t *typist) {
	if b.Caption != "" {
		Wrap(t, "", b.Caption)
	}
	widths := b.widths()
	b.row(t, b.Head, widths)
	for _, row := range b.Rows {
		b.row(t, row, widths)
	}
}

// widths are the columns' own, the widest made narrower until all fit.
func (b Table) widths() []int {
	widths := make([]int, len(b.Head))
	sum := gap * (len(b.Head) - 1)
	for i := range b.Head {
		for _, row := range append([][]string{b.Head}, b.Rows...) {
			widths[i] = max(widths[i], len([]rune(row[i])))
		}
		sum += widths[i]
	}
	for ; sum > Width; sum-- {
		widths[slices.Index(widths, slices.Max(widths))]--
	}
	return widths
}

// row prints the cells of a row, each within its own column.
func (b Table) row(t *typist, cells []string, widths []int) {
	lines := make([][]string, len(cells))
	most := 1
	for i, cell := range cells {
		if empty(cell) {
			cell = strings.Repeat("_", widths[i])
		}
		lines[i] = broken(cell, widths[i])
		most = max(most, len(lines[i]))
	}
	for n := range most {
		line := ""
		for i := range cells {
			cell := ""
			if n < len(lines[i]) {
				cell = lines[i][n]
			}
			line += fmt.Sprintf("%-*s", widths[i]+gap, cell)
		}
		t.WriteString(strings.TrimRight(line, " ") + "\n")
	}
}

// Wrap prints text within the width, its first line behind mark and the others
// below its first word.
func Wrap(w io.Writer, mark, text string) {
	indent := strings.Repeat(" ", len([]rune(mark)))
	for i, line := range broken(text, Width-len(indent)) {
		if i > 0 {
			mark = indent
		}
		fmt.Fprintln(w, mark+line)
	}
}

// broken returns the lines of a text, none longer than width but for one long word.
func broken(text string, width int) []string {
	lines := []string{""}
	for _, word := range strings.Fields(text) {
		last := &lines[len(lines)-1]
		switch {
		case *last == "":
			*last = word
		case len([]rune(*last))+1+len([]rune(word)) > width:
			lines = append(lines, word)
		default:
			*last += " " + word
		}
	}
	return lines
}

package field

import (
	"sort"
	"unicode/utf8"
)

// places tells lines and columns of places in data. It remembers where it
// counted last, so that many errors of one long line cost no more than one.
type places struct {
	data   []byte
	starts []int // of the lines
	last   int   // place that was asked for last
	column int   // of last
}

// place returns the line and the column, in characters, of a byte offset.
func (t *places) place(at int) (line, column int) {
	if t.starts == nil {
		t.starts = append(t.starts, 0)
		for i, c := range t.data {
			if c == '\n' {
				t.starts = append(t.starts, i+1)
			}
		}
	}
	line = sort.SearchInts(t.starts, at+1)
	from, before := t.starts[line-1], 0
	if t.last >= from && t.last <= at && t.column > 0 {
		from, before = t.last, t.column-1
	}
	t.last, t.column = at, before+utf8.RuneCount(t.data[from:at])+1
	return line, t.column
}

package page

import (
	"io"

	"example.org/posology/examples/internal/document"
)

// Width is how many columns a printed page has.
const Width = document.Width

// Wrap prints text within the width, its first line behind mark and the others
// below its first word.
func Wrap(w io.Writer, mark, text string) { document.Wrap(w, mark, text) }

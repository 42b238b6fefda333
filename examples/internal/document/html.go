package document

import (
	_ "embed"
	"html/template"
	"io"
)

//go:embed page.html
var page string

var sheet = template.Must(template.New("page").Funcs(template.FuncMap{"kind": kind, "empty": empty}).Parse(page))

// HTML writes the document as one file without a script, with its style inside.
func (d Document) HTML(w io.Writer) error { return sheet.Execute(w, d) }

package document

import (
	"slices"
	"strings"
)

// A Document is one paper. Its headings begin at level 2: the title is level 1.
type Document struct {
	Title  string
	Under  []string // lines below the title, such as the day and whose the case is
	Large  bool     // big type, for clients
	Blocks []Block
}

// A Block is a part of a document: a Heading, Paragraph, List or Table.
type Block interface{ text(t *typist) }

// A Heading of level 2 or 3.
type Heading struct {
	Level int
	Text  string
}

// A Paragraph is running text.
type Paragraph string

// A List has items, and is printed without bullets where one of them has a lead.
type List []Item

// An Item is one point, behind a few words of its own line if it has any.
type Item struct{ Lead, Text string }

// A Table has a line of headers, and the first cell of each row is the row's own
// header. An empty cell is there to be written in.
type Table struct {
	Caption string
	Head    []string
	Rows    [][]string
}

// Section adds a heading of level 2, Part one of level 3 below it.
func (d *Document) Section(text string) { d.add(Heading{2, text}) }

// Part adds a heading of level 3.
func (d *Document) Part(text string) { d.add(Heading{3, text}) }

// Say adds paragraphs.
func (d *Document) Say(texts ...string) {
	for _, text := range texts {
		d.add(Paragraph(text))
	}
}

// Points adds a list of texts; nothing where there are none.
func (d *Document) Points(texts ...string) {
	list := make(List, len(texts))
	for i, text := range texts {
		list[i].Text = text
	}
	d.Items(list)
}

// Items adds a list; nothing where it is empty.
func (d *Document) Items(list List) {
	if len(list) > 0 {
		d.add(list)
	}
}

// Table adds a table.
func (d *Document) Table(t Table) { d.add(t) }

// Listed adds a section with a list, nothing where the list is empty.
func (d *Document) Listed(heading string, texts ...string) {
	if len(texts) > 0 {
		d.Section(heading)
		d.Points(texts...)
	}
}

func (d *Document) add(b Block) { d.Blocks = append(d.Blocks, b) }

// Led reports whether an item has a lead.
func (l List) Led() bool {
	return slices.ContainsFunc(l, func(i Item) bool { return i.Lead != "" })
}

// kind names a block for the template.
func kind(b Block) string {
	switch b.(type) {
	case Heading:
		return "heading"
	case Paragraph:
		return "paragraph"
	case List:
		return "list"
	}
	return "table"
}

// empty reports whether a cell is there to be written in.
func empty(cell string) bool { return strings.TrimSpace(cell) == "" }

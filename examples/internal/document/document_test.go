package document_test

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/examples/internal/document"
)

// draw draws a document of all kinds of blocks, with texts that HTML has to escape.
func draw(t *rapid.T) (document.Document, []string) {
	var texts []string
	text := func() string {
		s := strings.Join(rapid.SliceOfN(rapid.SampledFrom([]string{"a", "weight", "<b>", "&amp;", `"`, "'", "</p>", "<script>", "10 kg", "ä–×", strings.Repeat("x", 90)}), 1, 30).Draw(t, "text"), " ")
		texts = append(texts, s)
		return s
	}
	d := document.Document{Title: text(), Under: []string{text()}, Large: rapid.Bool().Draw(t, "large")}
	for range rapid.IntRange(0, 6).Draw(t, "blocks") {
		switch rapid.IntRange(0, 4).Draw(t, "kind") {
		case 0:
			d.Section(text())
		case 1:
			d.Part(text())
		case 2:
			d.Say(text())
		case 3:
			d.Items(document.List{{Text: text()}, {Lead: rapid.SampledFrom([]string{"", "Take"}).Draw(t, "lead"), Text: text()}})
		case 4:
			d.Table(document.Table{Caption: text(), Head: []string{"A", "B"}, Rows: [][]string{{text(), ""}, {text(), text()}}})
		}
	}
	return d, texts
}

// Both writers bring every text, the one wrapped, the other as well-formed HTML without
// anything that a text smuggled in.
func TestWriters(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d, texts := draw(t)
		var plain, page strings.Builder
		if err := d.Text(&plain); err != nil {
			t.Fatal(err)
		}
		if err := d.HTML(&page); err != nil {
			t.Fatal(err)
		}
		for _, line := range strings.Split(plain.String(), "\n") {
			if len([]rune(line)) > document.Width && strings.Contains(strings.TrimSpace(line), " ") && !strings.Contains(line, strings.Repeat("x", 40)) && !strings.Contains(line, strings.Repeat("X", 40)) {
				t.Fatalf("wider than the page: %q", line)
			}
		}
		read, elements := parsed(t, page.String())
		for _, text := range texts {
			if !strings.Contains(read, text) {
				t.Fatalf("%q is not in\n%s", text, page.String())
			}
		}
		if elements["script"] > 0 || elements["h1"] != 1 {
			t.Fatalf("%v", elements)
		}
	})
}

// parsed reads a page strictly, and returns its text and how many elements it has of each
// name.
func parsed(t *rapid.T, page string) (string, map[string]int) {
	decoder := xml.NewDecoder(strings.NewReader(strings.NewReplacer("<!DOCTYPE html>", "", `<meta charset="utf-8">`, "", `initial-scale=1">`, `initial-scale=1"/>`).Replace(page)))
	decoder.Entity = xml.HTMLEntity
	var text strings.Builder
	elements := map[string]int{}
	for {
		token, err := decoder.Token()
		if err == io.EOF {
			return text.String(), elements
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, page)
		}
		switch token := token.(type) {
		case xml.StartElement:
			elements[token.Name.Local]++
		case xml.CharData:
			text.Write(token)
		}
	}
}

// What a text looks like.
func TestText(t *testing.T) {
	d := document.Document{Title: "For you", Under: []string{"Monday", "(invented)"}}
	d.Section("Each time")
	d.Part("1. Row")
	d.Items(document.List{{Lead: "Take", Text: "6 kg."}, {Text: "Breathe."}, {Lead: "Do", Text: "2 sets."}})
	d.Points("a", "b")
	d.Points()
	d.Listed("Nothing")
	d.Table(document.Table{Head: []string{"Set", "Done", "More"}, Rows: [][]string{{"1", "", "–"}}})
	const want = `FOR YOU
Monday
(invented)

EACH TIME

1. ROW
   Take 6 kg.
   Breathe.
   Do   2 sets.

- a
- b

Set  Done  More
1    ____  –
`
	var got strings.Builder
	if err := d.Text(&got); err != nil || got.String() != want {
		t.Errorf("%v\n%s", err, got.String())
	}
}

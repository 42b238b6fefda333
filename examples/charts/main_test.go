package main

import (
	"bytes"
	"encoding/xml"
	"image/png"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/testdata/programtest"
)

func shipped() sources {
	return sources{demo.HomeReview(), demo.VillageHallBuild(), policiesData, benchData}
}

// figures are all pictures of what is shipped, by name.
func figures(t *testing.T) map[string]figure {
	t.Helper()
	all := map[string]figure{}
	for _, c := range charts {
		f, err := c.draw(shipped())
		if err != nil {
			t.Fatal(c.name, err)
		}
		if f.name != c.name {
			t.Errorf("%s is named %s", c.name, f.name)
		}
		all[c.name] = f
	}
	return all
}

// Every picture is an image with a title and a text, in that order, and every word of it is
// a text that can be read out, not a drawing.
func TestSVG(t *testing.T) {
	style := regexp.MustCompile(`(?:fill|stroke):(#[0-9A-F]{6})`)
	for name, f := range figures(t) {
		var b bytes.Buffer
		if err := f.svg(&b); err != nil {
			t.Fatal(err)
		}
		for _, c := range style.FindAllStringSubmatch(b.String(), -1) {
			if !strings.Contains("#FFFFFF #5A5A5A #D7D7D7 #003C82 #000000", c[1]) {
				t.Errorf("%s: colour %s", name, c[1])
			}
		}
		var order []string
		texts := map[string]bool{}
		d := xml.NewDecoder(bytes.NewReader(b.Bytes()))
		for {
			token, err := d.Token()
			if err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			start, ok := token.(xml.StartElement)
			if !ok {
				continue
			}
			order = append(order, start.Name.Local)
			if len(order) == 1 {
				checkRoot(t, name, start)
			}
			if start.Name.Local == "text" || start.Name.Local == "title" || start.Name.Local == "desc" {
				var s string
				if err := d.DecodeElement(&s, &start); err != nil {
					t.Fatal(err)
				}
				texts[s] = true
			}
		}
		if strings.Join(order[:3], " ") != "svg title desc" || !texts[f.title] || !texts[f.text()] {
			t.Errorf("%s: begins %v", name, order[:3])
		}
		for _, p := range f.panels {
			for _, s := range p.drawn {
				if word, ok := strings.CutPrefix(s.name, "label "); ok && !texts[word] {
					t.Errorf("%s: no text %q", name, word)
				}
			}
		}
	}
}

// Signs that have a meaning in SVG are written out, in the words beside a picture and on it.
func TestSigns(t *testing.T) {
	const words = `under <2 left & "no" more`
	var b bytes.Buffer
	if err := (figure{title: words, said: []string{words}, foot: words, height: 10}).svg(&b); err != nil {
		t.Fatal(err)
	}
	var read struct {
		Title string `xml:"title"`
		Desc  string `xml:"desc"`
		Face  string `xml:"g>text"`
	}
	if err := xml.Unmarshal(b.Bytes(), &read); err != nil || read.Title != words || read.Desc != words || read.Face != words {
		t.Errorf("%+v, %v", read, err)
	}
}

func checkRoot(t *testing.T, name string, root xml.StartElement) {
	t.Helper()
	have := map[string]string{}
	for _, a := range root.Attr {
		have[a.Name.Local] = a.Value
	}
	if have["role"] != "img" || have["aria-labelledby"] != name+"-title "+name+"-desc" || have["viewBox"] == "" {
		t.Errorf("%s: %v", name, have)
	}
}

// Files are written, and a PNG has ink in it.
func TestFiles(t *testing.T) {
	folder := t.TempDir()
	if status, out, errs := programtest.Run(run, "-out", folder); status != 0 || out != "" || errs != "" {
		t.Fatal(status, out, errs)
	}
	for _, c := range charts {
		if data, err := os.ReadFile(filepath.Join(folder, c.name+".svg")); err != nil || len(data) < 2000 {
			t.Errorf("%s.svg: %d bytes, %v", c.name, len(data), err)
		}
		data, err := os.ReadFile(filepath.Join(folder, c.name+".png"))
		if err != nil {
			t.Fatal(err)
		}
		picture, err := png.Decode(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		ink, size := 0, picture.Bounds()
		for x := range size.Dx() {
			for y := range size.Dy() {
				if r, _, _, _ := picture.At(x, y).RGBA(); r < 0x8000 {
					ink++
				}
			}
		}
		if size.Dx() < 1000 || ink < 2000 {
			t.Errorf("%s.png: %v, %d dark", c.name, size, ink)
		}
	}
}

// Without a folder the words are printed, which say whose data they are.
func TestWords(t *testing.T) {
	status, out, errs := programtest.Run(run)
	if status != 0 || errs != "" {
		t.Fatal(errs)
	}
	for _, want := range []string{"an invented case", "Invented people", "no promise", "none an older adult", "No guideline says how it counts"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	if status, out, _ := programtest.Run(run, "-chart", "ladder"); status != 0 || strings.Count(out, "\n") != 3 {
		t.Errorf("%d: %s", status, out)
	}
}

// The bench table is that of the published data.
func TestSameData(t *testing.T) {
	if want, err := os.ReadFile("../../testdata/published/bench-rtf.csv"); err != nil || !bytes.Equal(want, benchData) {
		t.Errorf("bench-rtf.csv differs (%v)", err)
	}
}

func TestRefused(t *testing.T) {
	file := func(text string) string {
		name := filepath.Join(t.TempDir(), "file")
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return name
	}
	const head = "kit,people,policy,week,strength,near\n"
	// of the first person to have one
	lifted := func(load string) string {
		return file(strings.Replace(string(benchData), ",MS,135,120,105,", ",MS,"+load+",120,105,", 1))
	}
	for name, test := range map[string]struct {
		args   []string
		status int
		want   string
	}{
		"no such picture":     {[]string{"-chart", "pie"}, 2, "pie"},
		"no such flag":        {[]string{"-pie"}, 2, "pie"},
		"an argument":         {[]string{"pie"}, 2, "no other arguments"},
		"no such file":        {[]string{"-bench", "none.csv"}, 1, "none.csv"},
		"no such folder":      {[]string{"-out", "none", "-chart", "ladder"}, 1, "none"},
		"no record":           {[]string{"-case", file("{}")}, 1, "strength"},
		"no week":             {[]string{"-week", file("[]")}, 1, "sets"},
		"no curve":            {[]string{"-curves", file(head)}, 1, "/1"},
		"other columns":       {[]string{"-curves", file("a,b\n1,2\n")}, 1, "/1"},
		"a ragged table":      {[]string{"-curves", file(head + "a,b\n")}, 1, "six columns"},
		"a week of NaN":       {[]string{"-curves", file(head + "k,p,q,NaN,100,0\n")}, 1, "/2/week = NaN"},
		"101 per cent":        {[]string{"-curves", file(head + "k,p,q,1,100,101\n")}, 1, "/2/near = 101"},
		"no strength":         {[]string{"-curves", file(head + "k,p,q,1,,1\n")}, 1, "/2/strength"},
		"six policies":        {[]string{"-curves", file(head + "k,p,1,1,100,0\nk,p,2,1,100,0\nk,p,3,1,100,0\nk,p,4,1,100,0\nk,p,5,1,100,0\nk,p,6,1,100,0\n")}, 1, "/policy = 6"},
		"an empty table":      {[]string{"-bench", file("")}, 1, "a table"},
		"no such column":      {[]string{"-bench", file("a\n1\n")}, 1, "/1/1RM_true(kg)"},
		"a load below nought": {[]string{"-bench", lifted("-135")}, 1, "/load90(n) = -135"},
		"a load of nought":    {[]string{"-bench", lifted("0")}, 1, "/load90(n) = 0"},
	} {
		status, _, errs := programtest.Run(run, test.args...)
		if status != test.status || !strings.Contains(errs, test.want) {
			t.Errorf("%s: status %d, %q; want %d and %q", name, status, errs, test.status, test.want)
		}
	}
}

package browser_test

import (
	"context"
	_ "embed"
	"flag"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"example.org/posology/examples/internal/papers"
)

var save = flag.String("save", "", "keep pictures and printed pages in this `folder`, to be looked at")

var pages = flag.String("pages", "", "open the pages below this `folder`, too")

//go:embed look.js
var look string

// A sight is what a page is read or printed on.
type sight struct {
	name  string
	width int64 // CSS pixels: of the telephone, or of the paper without its margins of 15 mm
	print bool
	paper chromedp.PaperSize // inches
}

// An inch has 96 CSS pixels and 25.4 mm; A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 inches.
var sights = []sight{
	{"telephone", 375, false, chromedp.PaperSize{}},
	{"A4", 680, true, chromedp.PaperSize{Width: 210 / 25.4, Height: 297 / 25.4}},
	{"Letter", 702, true, chromedp.PaperLetter},
}

// A view is what the script finds on a page.
type view struct {
	Lang     string
	Title    string
	Headings []int    // levels in order
	Cut      []string // what is wider than its place
	Pale     []string // text with a contrast below 7 to 1, the stricter ratio of WCAG 2.1
	Small    []string // text below 16 pixels or 11 points
	Wrong    []string // scripts, tables without headers, pictures without text
}

func TestPapers(t *testing.T) {
	ctx := browser(t)
	for name, all := range visits(t) {
		for _, p := range all {
			file := filepath.Join(t.TempDir(), name+"-"+p.Name+".html")
			write(t, file, p)
			for _, s := range sights {
				t.Run(name+"/"+p.Name+"/"+s.name, func(t *testing.T) { open(t, ctx, file, s) })
			}
		}
	}
}

// TestPages opens pages that another program has written.
func TestPages(t *testing.T) {
	if *pages == "" {
		return
	}
	ctx, opened := browser(t), 0
	err := filepath.WalkDir(*pages, func(file string, _ fs.DirEntry, err error) error {
		if err == nil && filepath.Ext(file) == ".html" {
			opened++
			for _, s := range sights {
				t.Run(filepath.Base(file)+"/"+s.name, func(t *testing.T) { open(t, ctx, file, s) })
			}
		}
		return err
	})
	if err != nil || opened == 0 {
		t.Errorf("%d pages, %v", opened, err)
	}
}

// browser starts a browser and returns what its pages are opened in.
func browser(t *testing.T) context.Context {
	t.Helper()
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.NoSandbox, chromedp.Flag("hide-scrollbars", true))
	started, stop := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(stop)
	ctx, done := chromedp.NewContext(started)
	t.Cleanup(done)
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("no browser, such as Debian's package chromium: %v", err)
	}
	return ctx
}

func write(t *testing.T, file string, p papers.Paper) {
	t.Helper()
	var page strings.Builder
	if err := p.HTML(&page); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(page.String()), 0o600); err != nil {
		t.Fatal(err)
	}
}

// open looks at a page.
func open(t *testing.T, ctx context.Context, file string, s sight) {
	media := "screen"
	if s.print {
		media = "print"
	}
	if _, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: media}); err != nil {
		t.Fatal(err)
	}
	if err := chromedp.Do(ctx, chromedp.EmulateViewport(s.width, 812), chromedp.Navigate((&url.URL{Scheme: "file", Path: file}).String())); err != nil {
		t.Fatal(err)
	}
	found := seen(t, ctx, chromedp.Evaluate[view](look))
	picture := seen(t, ctx, chromedp.FullScreenshot(100))
	var printed []byte
	if s.print {
		printed = seen(t, ctx, chromedp.PrintToPDF(chromedp.PDFPaper(s.paper), chromedp.PDFMargin(15/25.4), chromedp.PDFOutlineAndTagged()))
	}
	check(t, found)
	if s.print {
		checkLength(t, file, printed)
	}
	keep(t, file, s, picture, printed)
}

// seen runs an action that has to go well.
func seen[T any](t *testing.T, ctx context.Context, a chromedp.Action[T]) T {
	t.Helper()
	v, err := chromedp.Run(ctx, a)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func check(t *testing.T, v view) {
	t.Helper()
	if v.Lang != "en" || v.Title == "" {
		t.Errorf("language %q, title %q", v.Lang, v.Title)
	}
	for i, level := range v.Headings {
		if first := i == 0; first != (level == 1) || !first && level > v.Headings[i-1]+1 {
			t.Errorf("heading %d of %v", i+1, v.Headings)
		}
	}
	if len(v.Headings) < 2 {
		t.Errorf("headings %v", v.Headings)
	}
	for what, list := range map[string][]string{"cut": v.Cut, "pale": v.Pale, "small": v.Small, "wrong": v.Wrong} {
		if len(list) > 0 {
			t.Errorf("%s: %q", what, list)
		}
	}
}

var (
	pdfPage = regexp.MustCompile(`/Type\s*/Page\b`)
	// longest is how many pages a paper has at most: one that is longer is not read.
	longest = map[string]int{"handout": 7, "discharge": 9, "diary": 4, "glucose": 2, "discharge-letter": 3, "doctor": 3, "surgeon": 3, "falls-service": 3}
)

// checkLength counts printed pages.
func checkLength(t *testing.T, file string, printed []byte) {
	t.Helper()
	n := len(pdfPage.FindAll(printed, -1))
	if n == 0 {
		t.Error("nothing was printed")
	}
	most := 0
	for name, pages := range longest {
		if strings.HasSuffix(file, "-"+name+".html") {
			most = max(most, pages)
		}
	}
	if n > most {
		t.Errorf("%d pages, want %d at most", n, most)
	}
}

// keep saves what was seen, if it was asked for.
func keep(t *testing.T, file string, s sight, picture, printed []byte) {
	t.Helper()
	if *save == "" {
		return
	}
	name := filepath.Join(*save, strings.TrimSuffix(filepath.Base(file), ".html")+"-"+s.name)
	for ending, data := range map[string][]byte{".png": picture, ".pdf": printed} {
		if len(data) > 0 {
			if err := os.WriteFile(name+ending, data, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}

package house_test

import (
	"bytes"
	"go/ast"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"
)

const (
	maxLines    = 400     // of a Go file
	maxFunction = 60      // lines of a function
	maxBytes    = 1 << 20 // of any file
)

// place finds an absolute path, by where systems put people's files and what
// comes and goes. A JSON Pointer or a URL begins otherwise.
var place = regexp.MustCompile(`(^|[^A-Za-z0-9._/-])/(home|Users|root|tmp|mnt|media|opt|srv|var|run|private|Volumes|workspaces?)/[\w.~-]|\b[A-Z]:[\\/]+\w{2}|\bfile://`)

func TestFiles(t *testing.T) {
	committed(t, func(name string, text []byte) { checkFile(t, name, text) })
}

// committed visits every file of the module, by its name below the module.
func committed(t *testing.T, visit func(name string, text []byte)) {
	t.Helper()
	seen := 0
	err := filepath.WalkDir(root(), func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && d.Name() == ".git":
			return filepath.SkipDir
		case !d.Type().IsRegular() || d.Name() == ".git": // a file in a linked work tree
			return nil
		}
		seen++
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		short, err := filepath.Rel(root(), path)
		if err != nil {
			return err
		}
		visit(filepath.ToSlash(short), text)
		return nil
	})
	if err != nil || seen == 0 {
		t.Errorf("looked at %d files: %v", seen, err)
	}
}

func checkFile(t *testing.T, name string, text []byte) {
	t.Helper()
	lines := bytes.Count(text, []byte("\n"))
	if filepath.Ext(name) == ".go" && lines > maxLines {
		t.Errorf("%s has %d lines, %d are allowed", name, lines, maxLines)
	}
	if len(text) > maxBytes {
		t.Errorf("%s has %d bytes, %d are allowed", name, len(text), maxBytes)
	}
	number := 0
	for line := range bytes.Lines(text) {
		number++
		if bytes.ContainsAny(line, `/\`) && place.Match(line) { // most lines have no slash
			t.Errorf("%s:%d names a folder of somebody's machine: %q", name, number, place.Find(line))
		}
	}
}

func TestFoldersAreFound(t *testing.T) {
	for _, text := range []string{"/" + "home/a/b", "see `/" + "Users/a`", "\"/" + "root/x", "/" + "tmp/x.txt", "C" + `:\data`, "D" + ":/data", "file" + ":///x"} {
		if !place.MatchString(text) {
			t.Errorf("%s is not found", text)
		}
	}
	for _, text := range []string{"/tests/0/reps", "https://example.org/home/x", "./home/x", "#!/usr/bin/env bash", `%s:\n`, "24/12"} {
		if place.MatchString(text) {
			t.Errorf("%s is taken for a folder", text)
		}
	}
}

func TestFunctionsAreShort(t *testing.T) {
	for _, p := range packages(t) {
		p.inspect(func(n ast.Node, _ []ast.Node) {
			if f, ok := n.(*ast.FuncDecl); ok {
				lines := p.fset.Position(f.End()).Line - p.fset.Position(f.Pos()).Line + 1
				if lines > maxFunction {
					t.Errorf("%s: %s has %d lines, %d are allowed", p.where(f), f.Name.Name, lines, maxFunction)
				}
			}
		})
	}
}

// A test that skips itself tests nothing.
func TestNoTestSkipsItself(t *testing.T) {
	skips := []string{"Skip", "Skipf", "SkipNow"}
	for _, p := range packages(t) {
		for _, f := range p.tests {
			ast.Inspect(f, func(n ast.Node) bool {
				call, ok := n.(*ast.CallExpr)
				if !ok {
					return true
				}
				if s, ok := call.Fun.(*ast.SelectorExpr); ok && slices.Contains(skips, s.Sel.Name) {
					t.Errorf("%s: %s", p.where(call), s.Sel.Name)
				}
				return true
			})
		}
	}
}

package house_test

import (
	"go/ast"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// text returns a file of the module, by its name below the module.
func text(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(root(), name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// between returns what stands between two marks, "" unless both are there.
func between(text, from, to string) string {
	_, rest, _ := strings.Cut(text, from)
	inside, _, found := strings.Cut(rest, to)
	if !found {
		return ""
	}
	return inside
}

// What the README shows is compiled, and run by the test of that program.
func TestReadmeShowsHello(t *testing.T) {
	program := between(text(t, "examples/hello/main.go"), "\t// README: from here\n", "\t// README: to here\n")
	shown := between(text(t, "README.md"), "```go\n", "```\n")
	var want strings.Builder
	for line := range strings.Lines(program) {
		want.WriteString(strings.TrimPrefix(line, "\t"))
	}
	if program == "" || shown != want.String() {
		t.Errorf("the README shows\n%s\nwant what examples/hello has between its marks\n%s", shown, want.String())
	}
}

// Every Example that the README's table of questions names is there.
func TestReadmeNamesExamples(t *testing.T) {
	there := map[string]bool{}
	for _, p := range libraries(t) {
		for _, f := range p.tests {
			for _, d := range f.Decls {
				if d, ok := d.(*ast.FuncDecl); ok && d.Recv == nil {
					there[p.path+" "+d.Name.Name] = true
				}
			}
		}
	}
	rows := between(text(t, "README.md"), "| question | Example |\n|---|---|\n", "\n\n")
	row := regexp.MustCompile("^\\| [^|]+ \\| `([a-z/]+)`: `(Example\\w*)` \\|$")
	for _, line := range strings.Split(rows, "\n") {
		switch found := row.FindStringSubmatch(line); {
		case found == nil:
			t.Errorf("%q is no row of a question and an Example", line)
		case !there[found[1]+" "+found[2]]:
			t.Errorf("%s has no %s", found[1], found[2])
		}
	}
}

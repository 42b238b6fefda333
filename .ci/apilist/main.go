// Command apilist keeps the list of everything that the library exports, one
// line each, in .ci/api.txt. It compares the list with the code and fails on a
// difference; with -update it writes the list again. Run it from the root of
// the module:
//
//	go run ./.ci/apilist [-update]
package main

import (
	"cmp"
	"flag"
	"fmt"
	"go/importer"
	"go/token"
	"go/types"
	"os"
	"os/exec"
	"slices"
	"strings"
)

const file = ".ci/api.txt"

func main() {
	update := flag.Bool("update", false, "write "+file+" anew")
	flag.Parse()
	if err := run(*update); err != nil {
		fmt.Fprintln(os.Stderr, "apilist:", err)
		os.Exit(1)
	}
}

func run(update bool) error {
	lines, err := exported()
	if err != nil {
		return err
	}
	text := strings.Join(lines, "\n") + "\n"
	if update {
		return os.WriteFile(file, []byte(text), 0o644)
	}
	old, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	if string(old) == text {
		return nil
	}
	for _, line := range changes(strings.Split(strings.TrimSuffix(string(old), "\n"), "\n"), lines) {
		fmt.Println(line)
	}
	return fmt.Errorf("what the library exports is not what %s says; if that is meant, run: go run ./.ci/apilist -update", file)
}

// changes marks the lines that only was has with - and those that only is has with +.
func changes(was, is []string) []string {
	var marked []string
	only := func(mark string, a, b []string) {
		for _, line := range a {
			if !slices.Contains(b, line) {
				marked = append(marked, mark+line)
			}
		}
	}
	only("-", was, is)
	only("+", is, was)
	slices.SortStableFunc(marked, func(a, b string) int { return cmp.Compare(a[1:], b[1:]) })
	return marked
}

// exported lists what every package exports that is neither internal nor an example.
func exported() ([]string, error) {
	cmd := exec.Command("go", "list", "-f", "{{.Module.Path}} {{.ImportPath}}", "./...")
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list: %w", err)
	}
	imports := importer.ForCompiler(token.NewFileSet(), "source", nil)
	var lines []string
	for row := range strings.Lines(string(out)) {
		module, path, _ := strings.Cut(strings.TrimSpace(row), " ")
		below := strings.TrimPrefix(strings.TrimPrefix(path, module), "/")
		first, _, _ := strings.Cut(below, "/")
		if first == "examples" || slices.Contains(strings.Split(below, "/"), "internal") {
			continue
		}
		p, err := imports.Import(path)
		if err != nil {
			return nil, err
		}
		lines = append(lines, list(p, below)...)
	}
	slices.Sort(lines)
	return lines, nil
}

// list returns a line for each exported constant, variable, function, type,
// field and method of p.
func list(p *types.Package, path string) []string {
	qualifier := func(q *types.Package) string {
		if q == p {
			return ""
		}
		return q.Name()
	}
	text := func(t types.Type) string { return types.TypeString(t, qualifier) }
	var lines []string
	add := func(parts ...string) { lines = append(lines, strings.TrimSpace(path+": "+strings.Join(parts, " "))) }
	for _, name := range p.Scope().Names() {
		object := p.Scope().Lookup(name)
		if !object.Exported() {
			continue
		}
		switch o := object.(type) {
		case *types.Const:
			add("const", name, text(o.Type()), "=", o.Val().ExactString())
		case *types.Var:
			add("var", name, text(o.Type()))
		case *types.Func:
			add("func", name+signature(o, text))
		case *types.TypeName:
			listType(o, text, add)
		}
	}
	return lines
}

// signature returns the type of f without the word func.
func signature(f *types.Func, text func(types.Type) string) string {
	return strings.TrimPrefix(text(f.Type()), "func")
}

func listType(o *types.TypeName, text func(types.Type) string, add func(...string)) {
	named, ok := o.Type().(*types.Named)
	if !ok || o.IsAlias() {
		add("type", o.Name(), "=", text(types.Unalias(o.Type())))
		return
	}
	head := text(named)
	switch under := named.Underlying().(type) {
	case *types.Struct:
		add("type", head, "struct")
		for i := range under.NumFields() {
			if f := under.Field(i); f.Exported() {
				add("type", head, "struct,", f.Name(), text(f.Type()), under.Tag(i))
			}
		}
	case *types.Interface:
		add("type", head, "interface")
		for m := range under.ExplicitMethods() {
			add("type", head, "interface,", m.Name()+signature(m, text))
		}
	default:
		add("type", head, text(under))
	}
	for m := range named.Methods() {
		if m.Exported() {
			receiver := text(m.Signature().Recv().Type())
			add("method", "("+receiver+")", m.Name()+signature(m, text))
		}
	}
}

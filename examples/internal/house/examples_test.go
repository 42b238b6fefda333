package house_test

import (
	"go/ast"
	"go/token"
	"go/types"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// shownByNone are package-level functions that no Example shows, each with the reason.
var shownByNone = map[string]string{
	"units/field.Assign":     "for a package that adds a stored type: its doc says all of it",
	"units/field.AssignText": "as Assign",
	"units/field.OrZero":     "as Assign",
}

// selfEvident are names that every package has, or that say themselves what they do.
var selfEvident = []string{"Facts", "Words", "Sources", "Must", "Edition"}

// What people read of a function first is a program that calls it. One Example may
// show several; all are of the package itself.
func TestEveryFunctionIsShown(t *testing.T) {
	functions := 0
	for _, p := range libraries(t) {
		if strings.Contains(p.path, "internal/") {
			continue
		}
		shown := map[string]bool{}
		for _, f := range p.tests {
			for _, example := range examplesOf(f) {
				for name := range callsOf(f, example, p) {
					shown[name] = true
				}
			}
		}
		for _, name := range p.types.Scope().Names() {
			f, ok := p.types.Scope().Lookup(name).(*types.Func)
			if !ok || !f.Exported() || slices.Contains(selfEvident, name) || yields(f) {
				continue
			}
			functions++
			at := p.path + "." + name
			if _, excused := shownByNone[at]; excused == shown[name] {
				t.Errorf("%s: shown by an Example of its package: %v; excused: %v", at, shown[name], excused)
			}
		}
	}
	if functions < 150 {
		t.Errorf("found %d functions", functions)
	}
}

// An Example is read, and copied, alone: it uses nothing that other files of the
// tests declare. And it makes up no outcome of a screening, since whoever copies
// that trains somebody whom nobody screened.
func TestExamplesAreComplete(t *testing.T) {
	for _, p := range packages(t) {
		declared := map[string]*ast.File{}
		for _, f := range p.tests {
			for name := range topLevel(f) {
				declared[f.Name.Name+" "+name] = f
			}
		}
		for _, f := range p.tests {
			for _, example := range examplesOf(f) {
				declared := others(declared, f, example)
				ast.Inspect(example, func(n ast.Node) bool {
					switch n := n.(type) {
					case *ast.SelectorExpr:
						ast.Inspect(n.X, func(n ast.Node) bool { return outside(t, p, declared, n) })
						return false
					case *ast.CompositeLit:
						if s, ok := n.Type.(*ast.SelectorExpr); ok && s.Sel.Name == "Outcome" && len(n.Elts) > 0 {
							t.Errorf("%s: an outcome that no screening gave", p.where(n))
						}
					}
					return outside(t, p, declared, n)
				})
			}
		}
	}
}

// others are the names that other files declare, without those of the Example's own.
func others(declared map[string]*ast.File, f *ast.File, example *ast.FuncDecl) map[string]bool {
	names := map[string]bool{}
	for name, in := range declared {
		pkg, name, _ := strings.Cut(name, " ")
		names[name] = names[name] || pkg == f.Name.Name && in != f && name != "_"
	}
	ast.Inspect(example, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			for _, left := range n.Lhs {
				if id, ok := left.(*ast.Ident); ok && n.Tok == token.DEFINE {
					delete(names, id.Name)
				}
			}
		case *ast.RangeStmt:
			for _, left := range []ast.Expr{n.Key, n.Value} {
				if id, ok := left.(*ast.Ident); ok {
					delete(names, id.Name)
				}
			}
		case *ast.ValueSpec:
			for _, id := range n.Names {
				delete(names, id.Name)
			}
		case *ast.TypeSpec:
			delete(names, n.Name.Name)
		case *ast.Field:
			for _, id := range n.Names {
				delete(names, id.Name)
			}
		}
		return true
	})
	return names
}

// outside reports a name that another file of the tests declares.
func outside(t *testing.T, p *pkg, declared map[string]bool, n ast.Node) bool {
	t.Helper()
	if id, ok := n.(*ast.Ident); ok && declared[id.Name] {
		t.Errorf("%s: an Example uses %s of another file", p.where(id), id.Name)
	}
	return true
}

func examplesOf(f *ast.File) (all []*ast.FuncDecl) {
	for _, d := range f.Decls {
		if d, ok := d.(*ast.FuncDecl); ok && d.Recv == nil && strings.HasPrefix(d.Name.Name, "Example") {
			all = append(all, d)
		}
	}
	return all
}

// callsOf returns the names of p that an Example uses, in a test from outside.
func callsOf(f *ast.File, example *ast.FuncDecl, p *pkg) map[string]bool {
	names, imported := map[string]bool{}, ""
	for _, i := range f.Imports {
		if path, _ := strconv.Unquote(i.Path.Value); path == module+"/"+p.path {
			imported = p.name
		}
	}
	ast.Inspect(example, func(n ast.Node) bool {
		if s, ok := n.(*ast.SelectorExpr); ok {
			if x, ok := s.X.(*ast.Ident); ok && x.Name == imported {
				names[s.Sel.Name] = true
			}
		}
		return true
	})
	return names
}

// topLevel returns the names that a file declares.
func topLevel(f *ast.File) map[string]bool {
	names := map[string]bool{}
	for _, d := range f.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Recv == nil {
				names[d.Name.Name] = true
			}
		case *ast.GenDecl:
			for _, s := range d.Specs {
				switch s := s.(type) {
				case *ast.TypeSpec:
					names[s.Name.Name] = true
				case *ast.ValueSpec:
					for _, id := range s.Names {
						names[id.Name] = true
					}
				}
			}
		}
	}
	return names
}

// yields reports whether a function returns a sequence.
func yields(f *types.Func) bool {
	results := f.Signature().Results()
	if results.Len() != 1 {
		return false
	}
	n, ok := results.At(0).Type().(*types.Named)
	return ok && n.Obj().Pkg() != nil && n.Obj().Pkg().Path() == "iter"
}

package house_test

import (
	"go/ast"
	"go/token"
	"path/filepath"
	"strings"
	"testing"
)

func TestEveryPackageHasOnePackageComment(t *testing.T) {
	for _, p := range packages(t) {
		var in []string
		for _, f := range p.files {
			if f.Doc != nil {
				in = append(in, filepath.Base(p.fset.Position(f.Package).Filename))
			}
		}
		program := p.name == "main" && len(in) == 1 && in[0] == "main.go"
		if !program && (len(in) != 1 || in[0] != "doc.go") {
			t.Errorf("%s: package comments in %q, want one, in doc.go", p.path, in)
		}
		for _, f := range p.files {
			opening := "Package " + p.name + " "
			if p.name == "main" {
				opening = ""
			}
			if f.Doc != nil && !strings.HasPrefix(f.Doc.Text(), opening) {
				t.Errorf("%s: the package comment does not begin with %q", p.where(f.Doc), opening)
			}
		}
	}
}

// Fields count as explained by the comment of their type.
func TestEverythingExportedIsExplained(t *testing.T) {
	for _, p := range libraries(t) {
		for _, f := range p.files {
			for _, d := range f.Decls {
				switch d := d.(type) {
				case *ast.FuncDecl:
					if d.Name.IsExported() && receiverExported(d) && d.Doc.Text() == "" {
						t.Errorf("%s: %s has no comment", p.where(d), d.Name.Name)
					}
				case *ast.GenDecl:
					p.checkGroup(t, d)
				}
			}
		}
	}
}

func receiverExported(d *ast.FuncDecl) bool {
	if d.Recv == nil {
		return true
	}
	e := d.Recv.List[0].Type
	for {
		switch x := e.(type) {
		case *ast.StarExpr:
			e = x.X
		case *ast.IndexExpr:
			e = x.X
		case *ast.IndexListExpr:
			e = x.X
		case *ast.Ident:
			return x.IsExported()
		default:
			return true
		}
	}
}

// checkGroup looks at types, constants and variables. A constant or variable
// may share the comment of its group or have one at the end of its line.
func (p *pkg) checkGroup(t *testing.T, d *ast.GenDecl) {
	t.Helper()
	for _, s := range d.Specs {
		switch s := s.(type) {
		case *ast.TypeSpec:
			own := s.Doc.Text() != "" || d.Lparen == token.NoPos && d.Doc.Text() != ""
			if s.Name.IsExported() && !own {
				t.Errorf("%s: type %s has no comment", p.where(s), s.Name.Name)
			}
		case *ast.ValueSpec:
			own := s.Doc.Text()+s.Comment.Text()+d.Doc.Text() != ""
			for _, name := range s.Names {
				if name.IsExported() && !own {
					t.Errorf("%s: %s has no comment", p.where(name), name.Name)
				}
			}
		}
	}
}

package house_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
)

const module = "example.org/posology"

// A pkg is one package of the module, parsed and type-checked.
type pkg struct {
	path  string // below the module, such as "dose/onerm"
	name  string
	fset  *token.FileSet
	files []*ast.File // without tests
	tests []*ast.File
	uses  []string // import paths of files
	types *types.Package
	info  *types.Info
	err   error // the first error that the type checker met
}

// library reports whether p is something that others import.
func (p *pkg) library() bool {
	return p.path != "examples" && !strings.HasPrefix(p.path, "examples/") && !p.ofTests()
}

// ofTests reports whether p is what tests share.
func (p *pkg) ofTests() bool { return sharedByTests(p.path) }

// sharedByTests reports whether a package is what tests share: it is named after what it
// helps to test, such as dosetest.
func sharedByTests(path string) bool { return strings.HasSuffix(path, "test") }

// where prints a place as file:line, the file below the module.
func (p *pkg) where(n ast.Node) string {
	at := p.fset.Position(n.Pos())
	file, err := filepath.Rel(root(), at.Filename)
	if err != nil {
		file = at.Filename
	}
	return fmt.Sprintf("%s:%d", filepath.ToSlash(file), at.Line)
}

// root is the folder of the module.
var root = sync.OnceValue(func() string {
	out, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}").Output()
	if err != nil {
		panic(err)
	}
	return strings.TrimSpace(string(out))
})

// listed is what go list tells of a package.
type listed struct {
	ImportPath, Name, Dir, Export                                string
	GoFiles, CgoFiles, IgnoredGoFiles, TestGoFiles, XTestGoFiles []string
	Module                                                       *struct{ Main bool }
}

var load = sync.OnceValues(func() ([]*pkg, error) {
	cmd := exec.Command("go", "list", "-e", "-export", "-deps", "-json=ImportPath,Name,Dir,Export,GoFiles,CgoFiles,IgnoredGoFiles,TestGoFiles,XTestGoFiles,Module", "./...", "./testdata/dosetest", "./testdata/fieldtest", "./testdata/screentest")
	cmd.Dir = root()
	var errs bytes.Buffer
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list: %w\n%s", err, errs.Bytes())
	}
	var ours []listed
	exports := map[string]string{}
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var l listed
		if err := d.Decode(&l); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		exports[l.ImportPath] = l.Export
		if l.Module != nil && l.Module.Main {
			ours = append(ours, l)
		}
	}
	fset := token.NewFileSet()
	imports := importer.ForCompiler(fset, "gc", func(path string) (io.ReadCloser, error) { return os.Open(exports[path]) })
	var all []*pkg
	for _, l := range ours {
		p, err := check(fset, imports, l)
		if err != nil {
			return nil, err
		}
		all = append(all, p)
	}
	slices.SortFunc(all, func(a, b *pkg) int { return strings.Compare(a.path, b.path) })
	return all, nil
})

func check(fset *token.FileSet, imports types.Importer, l listed) (*pkg, error) {
	p := &pkg{path: strings.TrimPrefix(strings.TrimPrefix(l.ImportPath, module), "/"), name: l.Name, fset: fset}
	parse := func(names ...[]string) (files []*ast.File, err error) {
		for _, name := range slices.Concat(names...) {
			f, err := parser.ParseFile(fset, filepath.Join(l.Dir, name), nil, parser.ParseComments|parser.SkipObjectResolution)
			if err != nil {
				return nil, err
			}
			files = append(files, f)
		}
		return files, nil
	}
	var err error
	if p.files, err = parse(l.GoFiles, l.CgoFiles, l.IgnoredGoFiles); err != nil {
		return nil, err
	}
	if p.tests, err = parse(l.TestGoFiles, l.XTestGoFiles); err != nil {
		return nil, err
	}
	for _, f := range p.files {
		for _, i := range f.Imports {
			p.uses = append(p.uses, strings.Trim(i.Path.Value, `"`))
		}
	}
	slices.Sort(p.uses)
	p.uses = slices.Compact(p.uses)
	p.info = &types.Info{Types: map[ast.Expr]types.TypeAndValue{}, Uses: map[*ast.Ident]types.Object{}, Defs: map[*ast.Ident]types.Object{}}
	config := types.Config{Importer: imports, Error: func(err error) {
		if p.err == nil {
			p.err = err
		}
	}}
	p.types, _ = config.Check(l.ImportPath, fset, p.files[:len(l.GoFiles)], p.info)
	return p, nil
}

// packages returns every package of the module, in the order of their paths.
func packages(t *testing.T) []*pkg {
	t.Helper()
	all, err := load()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 2 {
		t.Fatalf("found %d packages", len(all))
	}
	return all
}

// libraries returns the packages that others import.
func libraries(t *testing.T) []*pkg {
	t.Helper()
	return slices.DeleteFunc(slices.Clone(packages(t)), func(p *pkg) bool { return !p.library() })
}

func TestEveryPackageCompiles(t *testing.T) {
	for _, p := range packages(t) {
		if p.err != nil {
			t.Errorf("%s: %v", p.path, p.err)
		}
	}
}

// inspect calls visit for every node of the package's files, with the nodes
// that it stands in, the outermost first.
func (p *pkg) inspect(visit func(n ast.Node, above []ast.Node)) {
	for _, f := range p.files {
		var above []ast.Node
		ast.Inspect(f, func(n ast.Node) bool {
			if n == nil {
				above = above[:len(above)-1]
				return true
			}
			visit(n, above)
			above = append(above, n)
			return true
		})
	}
}

// named reports whether t is the type of the given name in a package of the
// module, such as "units/evidence" and "ReasonCode".
func named(t types.Type, path, name string) bool {
	n, ok := types.Unalias(t).(*types.Named)
	return ok && n.Obj().Name() == name && n.Obj().Pkg() != nil && n.Obj().Pkg().Path() == module+"/"+path
}

// typeOf returns the type of e, the invalid one where the package has errors.
func (p *pkg) typeOf(e ast.Expr) types.Type {
	if t := p.info.TypeOf(e); t != nil {
		return t
	}
	return types.Typ[types.Invalid]
}

package house_test

import (
	"go/ast"
	"go/token"
	"go/types"
	"slices"
	"strings"
	"testing"
)

// bannedImports reach outside: clock, chance, files, network, databases. A path
// bans everything below it too, save what partly lists.
var bannedImports = []string{"crypto/rand", "database/sql", "io/ioutil", "log", "math/rand", "net", "os", "plugin", "syscall", "testing", "unsafe"}

func TestLibraryDoesNotReachOutside(t *testing.T) {
	for _, p := range libraries(t) {
		for _, use := range p.uses {
			banned := slices.ContainsFunc(bannedImports, func(b string) bool { return use == b || strings.HasPrefix(use, b+"/") })
			if banned && partly[use] == nil {
				t.Errorf("%s imports %s", p.path, use)
			}
		}
	}
}

// hidden are the functions of packages otherwise allowed that read the clock
// or wait for it.
var hidden = map[string][]string{
	"time": {"Now", "Since", "Until", "Sleep", "After", "AfterFunc", "Tick", "NewTimer", "NewTicker"},
	"fmt":  {"Print", "Printf", "Println", "Scan", "Scanf", "Scanln"},
}

// partly are the packages of which only these names may be used: of math/rand/v2
// those that leave the choice of source to the caller, of log/slog and
// database/sql/driver those that only make values.
var partly = map[string][]string{
	"math/rand/v2":        {"New", "NewPCG", "NewChaCha8", "NewZipf", "Source", "Rand", "PCG", "ChaCha8", "Zipf"},
	"log/slog":            {"Value", "Attr", "GroupValue", "StringValue", "String", "Int", "Bool", "Any"},
	"database/sql/driver": {"Value", "Valuer"},
}

func TestLibraryHasNoHiddenInput(t *testing.T) {
	for _, p := range libraries(t) {
		p.inspect(func(n ast.Node, _ []ast.Node) {
			id, ok := n.(*ast.Ident)
			if !ok || p.info.Uses[id] == nil || p.info.Uses[id].Pkg() == nil {
				return
			}
			from, global := p.info.Uses[id].Pkg(), p.info.Uses[id].Parent() == p.info.Uses[id].Pkg().Scope()
			if global && slices.Contains(hidden[from.Path()], id.Name) {
				t.Errorf("%s: %s.%s", p.where(n), from.Name(), id.Name)
			}
			if names := partly[from.Path()]; global && names != nil && !slices.Contains(names, id.Name) {
				t.Errorf("%s: %s.%s is none of %v", p.where(n), from.Name(), id.Name, names)
			}
		})
	}
}

func TestLibraryHasNoInit(t *testing.T) {
	for _, p := range libraries(t) {
		p.inspect(func(n ast.Node, _ []ast.Node) {
			if f, ok := n.(*ast.FuncDecl); ok && f.Recv == nil && f.Name.Name == "init" {
				t.Errorf("%s: func init", p.where(f))
			}
		})
	}
}

// Exported variables could be changed by anybody. Sentinel errors are let be.
func TestLibraryExportsNoVariables(t *testing.T) {
	for _, p := range libraries(t) {
		scope := p.types.Scope()
		for _, name := range scope.Names() {
			v, ok := scope.Lookup(name).(*types.Var)
			sentinel := strings.HasPrefix(name, "Err") && ok && types.Identical(v.Type(), types.Universe.Lookup("error").Type())
			if ok && v.Exported() && !sentinel {
				t.Errorf("%s exports the variable %s", p.path, name)
			}
		}
	}
}

// A variable of a package is set once, where it is declared.
func TestLibraryHasNoGlobalState(t *testing.T) {
	for _, p := range libraries(t) {
		p.inspect(func(n ast.Node, _ []ast.Node) {
			for _, e := range written(n) {
				id := base(e)
				v, ok := p.info.Uses[id].(*types.Var)
				if ok && v.Parent() == p.types.Scope() {
					t.Errorf("%s: writes to the package's variable %s", p.where(n), id.Name)
				}
			}
		})
	}
}

// written returns what the statement or call changes.
func written(n ast.Node) []ast.Expr {
	switch n := n.(type) {
	case *ast.AssignStmt:
		return n.Lhs
	case *ast.IncDecStmt:
		return []ast.Expr{n.X}
	case *ast.RangeStmt:
		return []ast.Expr{n.Key, n.Value}
	case *ast.CallExpr:
		if f, ok := n.Fun.(*ast.Ident); ok && slices.Contains([]string{"delete", "clear", "copy"}, f.Name) {
			return n.Args[:1]
		}
	}
	return nil
}

// base returns the identifier that e is a part of, or nil.
func base(e ast.Expr) *ast.Ident {
	for {
		switch x := e.(type) {
		case *ast.Ident:
			return x
		case *ast.ParenExpr:
			e = x.X
		case *ast.IndexExpr:
			e = x.X
		case *ast.SelectorExpr:
			e = x.X
		case *ast.StarExpr:
			e = x.X
		case *ast.SliceExpr:
			e = x.X
		default:
			return nil
		}
	}
}

// Where a product is added to or taken from something, some machines round
// once and others twice. A conversion around the product makes all round twice.
func TestLibraryBlocksFusedMultiplyAdd(t *testing.T) {
	for _, p := range libraries(t) {
		p.inspect(func(n ast.Node, _ []ast.Node) {
			switch n := n.(type) {
			case *ast.BinaryExpr:
				if (n.Op == token.ADD || n.Op == token.SUB) && (p.product(n.X) || p.product(n.Y)) {
					t.Errorf("%s: write float64(x*y) + z", p.where(n))
				}
			case *ast.AssignStmt:
				if (n.Tok == token.ADD_ASSIGN || n.Tok == token.SUB_ASSIGN) && p.product(n.Rhs[0]) {
					t.Errorf("%s: write z += float64(x*y)", p.where(n))
				}
			}
		})
	}
}

// product reports whether e is a product of floats that is worked out at run time.
func (p *pkg) product(e ast.Expr) bool {
	switch x := e.(type) {
	case *ast.ParenExpr:
		return p.product(x.X)
	case *ast.UnaryExpr:
		return p.product(x.X)
	case *ast.BinaryExpr:
		basic, ok := p.typeOf(x).Underlying().(*types.Basic)
		return x.Op == token.MUL && ok && basic.Info()&types.IsFloat != 0 && p.info.Types[x].Value == nil
	}
	return false
}

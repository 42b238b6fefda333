package house_test

import (
	"go/ast"
	"go/types"
	"slices"
	"strings"
	"testing"
)

// ownScan are types that read more than their text from a database.
var ownScan = []string{"units.Day"}

// counted are exported types that are numbers without a text: a count of years,
// and what says how to call something and is never kept.
var counted = []string{"units.Rounding", "units/field.How", "units/body.Age"}

// A clinic that hands a value to a database must not store a bare number for it:
// every type with a text form is stored as that, by the one helper, whose tests
// show that it writes text or NULL, and reads no number.
func TestEveryTextIsStoredAsText(t *testing.T) {
	found := 0
	for _, p := range libraries(t) {
		if strings.Contains(p.path, "internal/") {
			continue
		}
		for _, typ := range p.exportedTypes() {
			short := p.path + "." + typ.Obj().Name()
			if !hasMethod(typ, "MarshalText") {
				if b, ok := typ.Underlying().(*types.Basic); ok && b.Info()&types.IsInteger != 0 && !hasMethod(typ, "Value") && !slices.Contains(counted, short) {
					t.Errorf("%s is a number without a text: a database would store it as one", short)
				}
				continue
			}
			found++
			if !p.calls(typ, "Value", "field.Value") {
				t.Errorf("%s: its Value is not that of its text", short)
			}
			if !p.calls(typ, "Scan", "field.Scan") && !slices.Contains(ownScan, short) {
				t.Errorf("%s: its Scan is not that of its text", short)
			}
		}
	}
	if found < 80 {
		t.Errorf("found %d types with a text", found)
	}
}

// exportedTypes returns the exported defined types of p, generic ones left out.
func (p *pkg) exportedTypes() (all []*types.Named) {
	scope := p.types.Scope()
	for _, name := range scope.Names() {
		if t, ok := scope.Lookup(name).(*types.TypeName); ok && t.Exported() && !t.IsAlias() {
			if n, ok := t.Type().(*types.Named); ok && n.TypeParams().Len() == 0 && !types.IsInterface(n) {
				all = append(all, n)
			}
		}
	}
	return all
}

func hasMethod(typ types.Type, name string) bool {
	m, _, _ := types.LookupFieldOrMethod(typ, false, nil, name)
	_, ok := m.(*types.Func)
	return ok
}

// calls reports whether the type's own method of that name is one call of the
// function, of the receiver last.
func (p *pkg) calls(typ *types.Named, method, function string) (ok bool) {
	p.inspect(func(n ast.Node, _ []ast.Node) {
		f, is := n.(*ast.FuncDecl)
		if !is || f.Recv == nil || f.Name.Name != method || len(f.Body.List) != 1 || len(f.Recv.List[0].Names) != 1 {
			return
		}
		of := p.typeOf(f.Recv.List[0].Type)
		if pointer, is := of.(*types.Pointer); is {
			of = pointer.Elem()
		}
		back, is := f.Body.List[0].(*ast.ReturnStmt)
		if !is || len(back.Results) != 1 || !types.Identical(of, typ) {
			return
		}
		call, is := back.Results[0].(*ast.CallExpr)
		ok = ok || is && types.ExprString(call.Fun) == function && types.ExprString(call.Args[len(call.Args)-1]) == f.Recv.List[0].Names[0].Name
	})
	return ok
}

package house_test

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"iter"
	"maps"
	"path"
	"slices"
	"strings"
	"testing"

	"example.org/posology/units/evidence"
)

func ledger(t *testing.T) *evidence.Ledger {
	t.Helper()
	var all []iter.Seq[evidence.Fact]
	for _, path := range slices.Sorted(maps.Keys(allFacts)) {
		all = append(all, allFacts[path])
	}
	l, err := evidence.NewLedger(all...)
	if err != nil {
		t.Error(err)
	}
	return l
}

// Every fact can be traced, and no fact rests on itself.
func TestFactsMakeOneLedger(t *testing.T) {
	l := ledger(t)
	for f := range l.All() {
		if _, err := l.Basis(f.ID); err != nil {
			t.Error(err)
		}
	}
}

// moved are packages that came out of another: their codes and facts stand in
// records under its name, and keep it.
var moved = map[string][]string{
	"dose/strength": {"onerm", "dose"}, "dose/week": {"dose"},
	"progression/rule": {"progression"}, "progression/programme": {"progression"}, "progression/visit": {"progression"}, "progression/simulate": {"progression"},
}

// bears reports whether a code or fact begins with the name of a package, or of one
// that it came out of.
func bears[S ~string](id S, p string) bool {
	names := moved[p]
	if names == nil {
		names = []string{path.Base(p)}
	}
	return slices.ContainsFunc(names, func(name string) bool { return strings.HasPrefix(string(id), name+".") })
}

func TestFactsBearTheirPackagesName(t *testing.T) {
	for p, facts := range allFacts {
		for f := range facts {
			if !bears(f.ID, p) {
				t.Errorf("%s: the fact %q does not begin with its package's name", p, f.ID)
			}
		}
	}
}

// Facts come out in the same order each time.
func TestFactsKeepTheirOrder(t *testing.T) {
	for p, facts := range allFacts {
		ids := func() (ids []evidence.FactID) {
			for f := range facts {
				ids = append(ids, f.ID)
			}
			return ids
		}
		first := ids()
		for range 5 {
			if !slices.Equal(ids(), first) {
				t.Errorf("%s: the order of the facts changes", p)
				break
			}
		}
	}
}

// Whatever the code names as a fact is one.
func TestNamedFactsExist(t *testing.T) {
	l := ledger(t)
	for _, p := range libraries(t) {
		p.constants("FactID", func(id string, n ast.Node, _ []ast.Node) {
			if _, ok := l.Fact(evidence.FactID(id)); !ok {
				t.Errorf("%s: no fact %q", p.where(n), id)
			}
		})
	}
}

// A fact is in use if it stands in a list of what is only known, for people to
// look up, if the code names it anywhere but in a bare list of facts,
// if it is made at run time from a table, if its text is made from a number of
// the code, or if another fact rests on it.
func TestFactsAreUsed(t *testing.T) {
	listed, used := map[string]string{}, map[string]bool{}
	for f := range ledger(t).All() {
		for _, from := range f.From {
			used[string(from)] = true
		}
	}
	for _, p := range libraries(t) {
		p.constants("FactID", func(id string, n ast.Node, above []ast.Node) {
			if p.bareListing(n, above) && !within[*ast.ValueSpec](above, listsKnown) {
				listed[id] = p.where(n)
			} else {
				used[id] = true
			}
		})
	}
	for _, id := range slices.Sorted(maps.Keys(listed)) {
		if !used[id] {
			t.Errorf("%s: the fact %q is listed and never used", listed[id], id)
		}
	}
}

// constants calls visit for every constant expression of the given type of
// package evidence. Declarations of constants and mere parts of a value, which
// begin or end in a dot, are passed over.
func (p *pkg) constants(name string, visit func(value string, n ast.Node, above []ast.Node)) {
	p.inspect(func(n ast.Node, above []ast.Node) {
		e, ok := n.(ast.Expr)
		if !ok || within[*ast.GenDecl](above, declaresConst) {
			return
		}
		tv := p.info.Types[e]
		if tv.Value == nil || tv.Value.Kind() != constant.String || !named(tv.Type, "units/evidence", name) {
			return
		}
		if len(above) > 0 {
			outer, ok := above[len(above)-1].(ast.Expr)
			if ok && p.info.Types[outer].Value != nil || isSum(outer) {
				return // a part of something longer
			}
		}
		if text := constant.StringVal(tv.Value); text != "" && !strings.HasPrefix(text, ".") && !strings.HasSuffix(text, ".") {
			visit(text, n, above)
		}
	})
}

func isSum(n ast.Node) bool {
	e, ok := n.(*ast.BinaryExpr)
	return ok && e.Op == token.ADD
}

func declaresConst(d *ast.GenDecl) bool { return d.Tok == token.CONST }

func listsKnown(v *ast.ValueSpec) bool { return v.Names[0].Name == "knownFacts" }

func within[N ast.Node](above []ast.Node, is func(N) bool) bool {
	return slices.ContainsFunc(above, func(n ast.Node) bool {
		x, ok := n.(N)
		return ok && is(x)
	})
}

// bareListing reports whether n is the ID of a fact that is written out, text
// and all, as an element of a list of facts or where it is handed over: neither
// in a row with the number that the fact is about nor with that number in its
// text.
func (p *pkg) bareListing(n ast.Node, above []ast.Node) bool {
	i := len(above) - 1
	if i >= 0 {
		if kv, ok := above[i].(*ast.KeyValueExpr); ok {
			key, ok := kv.Key.(*ast.Ident)
			if !ok || key.Name != "ID" || kv.Value != n {
				return false
			}
			i--
		}
	}
	if i < 1 {
		return false
	}
	fact, ok := above[i].(*ast.CompositeLit)
	if !ok || !named(p.typeOf(fact), "units/evidence", "Fact") || p.statesNumber(fact) {
		return false
	}
	switch outer := above[i-1].(type) {
	case *ast.CompositeLit:
		switch p.typeOf(outer).Underlying().(type) {
		case *types.Slice, *types.Array:
			return true
		}
	case *ast.CallExpr, *ast.ReturnStmt:
		return true
	}
	return false
}

// statesNumber reports whether the text of a fact is made from a constant or
// variable of the package that is not itself text.
func (p *pkg) statesNumber(fact *ast.CompositeLit) bool {
	found := false
	ast.Inspect(fact, func(n ast.Node) bool {
		id, ok := n.(*ast.Ident)
		if !ok {
			return true
		}
		o := p.info.Uses[id]
		if o == nil || o.Parent() != p.types.Scope() {
			return true
		}
		switch o.(type) {
		case *types.Const, *types.Var:
			basic, ok := o.Type().Underlying().(*types.Basic)
			found = found || !ok || basic.Info()&types.IsString == 0
		}
		return true
	})
	return found
}

// Every source is cited by a fact. That every fact's source is listed is the
// ledger's own check.
func TestSourcesAreCited(t *testing.T) {
	cited := map[evidence.SourceID]bool{}
	for f := range ledger(t).All() {
		cited[f.Source] = true
		cited[evidence.SourceID(f.Via)] = true // read through another source
	}
	for s := range evidence.Sources() {
		if !cited[s.ID] {
			t.Errorf("no fact cites %s", s.ID)
		}
	}
}

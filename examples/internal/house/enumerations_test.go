package house_test

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"strconv"
	"strings"
	"testing"
)

// A vocabulary is an enumeration of the library with the texts of its values.
type vocabulary struct {
	pkg   *pkg
	at    ast.Node
	typ   *types.TypeName
	texts []string // by value; the empty text marks "not given"
}

// vocabularies returns the enumerations that p makes with field.NewVocabulary.
func (p *pkg) vocabularies(t *testing.T) (all []vocabulary) {
	t.Helper()
	p.inspect(func(n ast.Node, _ []ast.Node) {
		call, ok := n.(*ast.CallExpr)
		if !ok || !named(p.typeOf(call), "units/field", "Vocabulary") {
			return
		}
		of, ok := p.typeOf(call).(*types.Named).TypeArgs().At(0).(*types.Named)
		if !ok {
			return // the constructor itself
		}
		v := vocabulary{pkg: p, at: call, typ: of.Obj()}
		for _, arg := range call.Args[1:] {
			text := p.info.Types[arg].Value
			if text == nil {
				t.Errorf("%s: a text of %s that is no constant", p.where(arg), v.typ.Name())
				return
			}
			v.texts = append(v.texts, constant.StringVal(text))
		}
		all = append(all, v)
	})
	return all
}

// listed reports whether the package exports a function that yields the values.
func (v vocabulary) listed() bool {
	for _, name := range v.pkg.types.Scope().Names() {
		f, ok := v.pkg.types.Scope().Lookup(name).(*types.Func)
		if !ok || !f.Exported() || f.Signature().Params().Len() != 0 || f.Signature().Results().Len() != 1 {
			continue
		}
		seq, ok := types.Unalias(f.Signature().Results().At(0).Type()).(*types.Named)
		if ok && seq.Obj().Name() == "Seq" && seq.Obj().Pkg().Path() == "iter" && types.Identical(seq.TypeArgs().At(0), v.typ.Type()) {
			return true
		}
	}
	return false
}

// comments returns what go doc shows with the type, and for each value with its
// exported constant.
func (v vocabulary) comments() (typ string, constants map[int]string) {
	constants = map[int]string{}
	for _, f := range v.pkg.files {
		for _, d := range f.Decls {
			d, ok := d.(*ast.GenDecl)
			if !ok || d.Tok != token.CONST && d.Tok != token.TYPE {
				continue
			}
			for _, s := range d.Specs {
				switch s := s.(type) {
				case *ast.TypeSpec:
					if s.Name.Name == v.typ.Name() {
						typ += d.Doc.Text() + s.Doc.Text()
					}
				case *ast.ValueSpec:
					for _, name := range s.Names {
						c, ok := v.pkg.info.Defs[name].(*types.Const)
						if ok && c.Exported() && types.Identical(c.Type(), v.typ.Type()) {
							value, _ := constant.Int64Val(c.Val())
							constants[int(value)] += d.Doc.Text() + s.Doc.Text() + s.Comment.Text()
						}
					}
				}
			}
		}
	}
	return typ, constants
}

// A clinic stores the texts and shows them in lists to choose from: it must be
// able to list them, and to read them in the docs.
func TestEveryEnumerationIsListedAndItsTextsAreInItsDocs(t *testing.T) {
	found := 0
	for _, p := range libraries(t) {
		for _, v := range p.vocabularies(t) {
			if !v.typ.Exported() {
				continue
			}
			found++
			if !v.listed() {
				t.Errorf("%s: no exported function yields every %s", p.where(v.at), v.typ.Name())
			}
			typ, constants := v.comments()
			for value, text := range v.texts {
				if _, named := constants[value]; text == "" && named {
					t.Errorf("%s: a name for the %s that is not given: == 0 asks for it", p.where(v.at), v.typ.Name())
				}
				if text != "" && !strings.Contains(typ+constants[value], strconv.Quote(text)) {
					t.Errorf("%s: neither the comment of %s nor that of its constant states the text %q", p.where(v.at), v.typ.Name(), text)
				}
			}
		}
	}
	if found < 60 {
		t.Errorf("found %d enumerations", found)
	}
}

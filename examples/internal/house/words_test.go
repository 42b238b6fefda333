package house_test

import (
	"go/ast"
	"go/constant"
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/units/evidence"
)

// Every code that a package names has wording there or in a package below.
func TestCodesHaveWords(t *testing.T) {
	var tables []evidence.Words
	for _, p := range slices.Sorted(maps.Keys(allWords)) {
		tables = append(tables, allWords[p])
	}
	words, err := evidence.NewLexicon(tables...)
	if err != nil {
		t.Error(err)
	}
	for _, p := range libraries(t) {
		p.constants("ReasonCode", func(code string, n ast.Node, _ []ast.Node) {
			if w, _ := words.Wording(evidence.ReasonCode(code)); w.Clinician == "" {
				t.Errorf("%s: the code %q has no text for the clinician", p.where(n), code)
			}
		})
	}
}

func TestCodesBearTheirPackagesName(t *testing.T) {
	form := regexp.MustCompile(`^[A-Za-z0-9._-]+$`)
	for p, words := range allWords {
		for code := range words {
			if !form.MatchString(string(code)) || !bears(code, p) {
				t.Errorf("%s: the code %q does not begin with its package's name or is more than letters, digits, dots and hyphens", p, code)
			}
		}
	}
}

// A wording is an orphan if nothing outside tables of words names its code and
// no code put together at run time begins as it does.
func TestWordsHaveCodes(t *testing.T) {
	used := map[string]bool{}
	for _, p := range libraries(t) {
		p.constants("ReasonCode", func(code string, n ast.Node, above []ast.Node) {
			if !p.wordsKey(n, above) {
				used[code] = true
			}
		})
	}
	for _, p := range libraries(t) {
		made := p.madeCodes()
		for _, code := range slices.Sorted(maps.Keys(allWords[p.path])) {
			begins := slices.ContainsFunc(made, func(prefix string) bool { return strings.HasPrefix(string(code), prefix) })
			if !used[string(code)] && !begins {
				t.Errorf("%s: the code %q has words and is never given", p.path, code)
			}
		}
	}
}

// wordsKey reports whether n is a key in a table of words, or the code of a row of
// all that a reason is.
func (p *pkg) wordsKey(n ast.Node, above []ast.Node) bool {
	if len(above) < 2 {
		return false
	}
	if row, ok := above[len(above)-1].(*ast.CallExpr); ok {
		return row.Args[0] == n && named(p.typeOf(row), "progression/internal/say", "Row")
	}
	kv, ok := above[len(above)-1].(*ast.KeyValueExpr)
	if !ok || kv.Key != n {
		return false
	}
	table, ok := above[len(above)-2].(*ast.CompositeLit)
	return ok && named(p.typeOf(table), "units/evidence", "Words")
}

// madeCodes returns the constant beginnings of codes that are put together at
// run time, "" for a code that comes whole from elsewhere.
func (p *pkg) madeCodes() []string {
	var made []string
	p.inspect(func(n ast.Node, above []ast.Node) {
		e, ok := n.(ast.Expr)
		if !ok || isSum(above[len(above)-1]) || !isSum(n) && !p.converts(n) {
			return
		}
		if p.info.Types[e].Value == nil && named(p.typeOf(e), "units/evidence", "ReasonCode") {
			made = append(made, p.beginning(e))
		}
	})
	return made
}

// converts reports whether n is the conversion of a value to another type.
func (p *pkg) converts(n ast.Node) bool {
	call, ok := n.(*ast.CallExpr)
	return ok && len(call.Args) == 1 && p.info.Types[call.Fun].IsType()
}

// beginning returns the constant part that a sum of strings begins with.
func (p *pkg) beginning(e ast.Expr) string {
	if v := p.info.Types[e].Value; v != nil && v.Kind() == constant.String {
		return constant.StringVal(v)
	}
	switch e := e.(type) {
	case *ast.BinaryExpr:
		return p.beginning(e.X)
	case *ast.CallExpr:
		if p.converts(e) {
			return p.beginning(e.Args[0])
		}
	}
	return ""
}

// Words that label, alarm or promise; the last would be none of a client's business.
var unkind = []string{"safe", "cleared", "failed", "frail", "non-responder", "nonresponder"}

func TestClientsAreSpokenToKindly(t *testing.T) {
	for p, words := range allWords {
		for code, w := range words {
			for _, word := range unkind {
				if strings.Contains(strings.ToLower(w.Client), word) {
					t.Errorf("%s: %s tells the client %q", p, code, w.Client)
				}
			}
		}
	}
}

var slot = regexp.MustCompile(`\{([^{}]*)\}`)

// A {name} in a text is filled by a reason's value of that name.
func TestSlotsInWordsAreFilled(t *testing.T) {
	given := map[string]bool{}
	for _, p := range libraries(t) {
		p.argNames(func(name string) { given[name] = true })
	}
	for p, words := range allWords {
		for code, w := range words {
			for _, m := range slot.FindAllStringSubmatch(w.Client+w.Clinician, -1) {
				if !given[m[1]] {
					t.Errorf("%s: %s asks for {%s}, which no reason gives", p, code, m[1])
				}
			}
		}
	}
}

// argNames visits the names of the values that the package puts in reasons.
func (p *pkg) argNames(visit func(name string)) {
	text := func(e ast.Expr) {
		if v := p.info.Types[e].Value; v != nil && v.Kind() == constant.String {
			visit(constant.StringVal(v))
		}
	}
	p.inspect(func(n ast.Node, _ []ast.Node) {
		call, ok := n.(*ast.CallExpr)
		if !ok || !named(p.typeOf(call), "units/evidence", "Arg") {
			return
		}
		for _, e := range call.Args {
			text(e) // the name of a constructor's first argument, or of a helper's
		}
	})
}

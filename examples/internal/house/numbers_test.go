package house_test

import (
	"encoding/json"
	"go/ast"
	"go/constant"
	"maps"
	"regexp"
	"slices"
	"testing"

	"example.org/posology/units/evidence"
)

// unfounded are the codes of reasons that show a number and rest on no fact, each with
// why: the number is what somebody gave or what was looked at, and no fact of a table
// decided anything.
var unfounded = map[evidence.ReasonCode]string{
	"rota.order":   "pairs counted in the timetable that stands beside it",
	"rota.remade":  "turns counted in the timetable that stands beside it",
	"fit.expected": "what the caller knew from elsewhere, as given",
}

// wordsOnly are the values that hold no number.
var wordsOnly = []string{"Text", "ID", "Term", "Terms", "Day"}

// A reason that shows a number says which fact it goes by, wherever the library makes one.
func TestNumbersHaveFacts(t *testing.T) {
	named, seen := map[evidence.ReasonCode]bool{}, 0
	rows := map[evidence.ReasonCode]bool{}
	for _, p := range libraries(t) {
		maps.Copy(rows, p.rows())
	}
	for _, p := range libraries(t) {
		p.inspect(func(n ast.Node, _ []ast.Node) {
			with, ok := n.(*ast.CallExpr)
			if !ok || !p.showsNumber(with) {
				return
			}
			made, ok := with.Fun.(*ast.SelectorExpr).X.(*ast.CallExpr)
			if !ok || len(made.Args) == 0 {
				return // a reason made elsewhere; the papers below show it
			}
			v := p.info.Types[made.Args[0]].Value
			if v == nil || len(made.Args) > 1 {
				return
			}
			seen++
			code := evidence.ReasonCode(constant.StringVal(v))
			_, excused := unfounded[code]
			named[code] = true
			if !rows[code] && !excused {
				t.Errorf("%s: %s shows a number and rests on no fact", p.where(with), code)
			}
		})
	}
	for code := range unfounded {
		if !named[code] {
			t.Errorf("%s is excused and shows no number", code)
		}
	}
	if seen == 0 {
		t.Error("no reason was looked at")
	}
}

// showsNumber reports whether a call adds a number to a reason.
func (p *pkg) showsNumber(with *ast.CallExpr) bool {
	f, ok := with.Fun.(*ast.SelectorExpr)
	return ok && f.Sel.Name == "With" && named(p.typeOf(f.X), "units/evidence", "Reason") && slices.ContainsFunc(with.Args, func(arg ast.Expr) bool {
		call, ok := arg.(*ast.CallExpr)
		if !ok {
			return false
		}
		made, ok := call.Fun.(*ast.SelectorExpr)
		return !ok || !slices.Contains(wordsOnly, made.Sel.Name)
	})
}

// rows are the codes whose row, of all that a reason is, names a fact.
func (p *pkg) rows() map[evidence.ReasonCode]bool {
	rows := map[evidence.ReasonCode]bool{}
	p.inspect(func(n ast.Node, _ []ast.Node) {
		row, ok := n.(*ast.CallExpr)
		if !ok || !named(p.typeOf(row), "progression/internal/say", "Row") || len(row.Args) < 2 {
			return
		}
		facts, ok := row.Args[1].(*ast.CompositeLit)
		if code := p.info.Types[row.Args[0]].Value; code != nil && ok && len(facts.Elts) > 0 {
			rows[evidence.ReasonCode(constant.StringVal(code))] = true
		}
	})
	return rows
}

// shown finds a number with a unit in a value that is put together of words.
var shown = regexp.MustCompile(`\d (kg|lb|%|RM|reps?)\b`)

// checkReasons looks for reasons in what a program stores that show a number and rest
// on no fact.
func checkReasons(t *testing.T, l leaf) {
	t.Helper()
	var stored any
	if err := json.Unmarshal([]byte(l.pages["json"]), &stored); err != nil {
		t.Fatal(err)
	}
	eachReason(stored, func(r evidence.Reason) {
		_, excused := unfounded[r.Code]
		number := slices.ContainsFunc(r.Args, func(a evidence.Arg) bool { return !a.Range().IsZero() || shown.MatchString(a.Value()) })
		if number && len(r.Facts) == 0 && !excused {
			t.Errorf("%s shows a number and rests on no fact: %v", r.Code, r.Args)
		}
	})
}

// eachReason visits what has the form of a reason in any JSON.
func eachReason(v any, visit func(evidence.Reason)) {
	switch v := v.(type) {
	case []any:
		for _, e := range v {
			eachReason(e, visit)
		}
	case map[string]any:
		if _, is := v["args"]; is {
			var r evidence.Reason
			if text, err := json.Marshal(v); err == nil && json.Unmarshal(text, &r) == nil {
				visit(r)
			}
		}
		for _, e := range v {
			eachReason(e, visit)
		}
	}
}

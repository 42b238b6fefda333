package house_test

import (
	"go/ast"
	"iter"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/dose/onerm/published"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/protocol"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/simulate"
	"example.org/posology/progression/track"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units/evidence"
)

// allFacts are the facts of the packages that state any.
var allFacts = map[string]iter.Seq[evidence.Fact]{
	"dose":           dose.Facts(),
	"dose/beside":    beside.Facts(),
	"dose/choice":    choice.Facts(),
	"dose/exercise":  exercise.Facts(),
	"dose/guideline": guideline.Facts(),
	"dose/onerm":     onerm.Facts(),
	"dose/rota":      rota.Facts(),
	"dose/setlog":    setlog.Facts(),
	"dose/strength":  strength.Facts(),
	"dose/volume":    volume.Facts(),
	"dose/week":      week.Facts(),
	"progression":    progression.Facts(),
	"screening":      screening.Facts(),

	"dose/onerm/fit":        fit.Facts(),
	"dose/onerm/published":  published.Facts(),
	"progression/programme": programme.Facts(),
	"progression/protocol":  protocol.Facts(),
	"progression/rule":      rule.Facts(),
	"progression/simulate":  simulate.Facts(),
	"progression/track":     track.Facts(),
	"progression/visit":     visit.Facts(),
	"screening/function":    function.Facts(),
	"units":                 evidence.UnitFacts(),
}

// allWords are the words of the packages that give reasons.
var allWords = map[string]evidence.Words{
	"dose":          dose.Words().Copy(),
	"dose/beside":   beside.Words().Copy(),
	"dose/choice":   choice.Words().Copy(),
	"dose/exercise": exercise.Words().Copy(),
	"dose/onerm":    onerm.Words().Copy(),
	"dose/rota":     rota.Words().Copy(),
	"dose/setlog":   setlog.Words().Copy(),
	"dose/strength": strength.Words().Copy(),
	"dose/week":     week.Words().Copy(),
	"progression":   progression.Words().Copy(),
	"screening":     screening.Words().Copy(),

	"dose/onerm/fit":        fit.Words().Copy(),
	"progression/programme": programme.Words().Copy(),
	"progression/protocol":  protocol.Words().Copy(),
	"progression/rule":      rule.Words().Copy(),
	"progression/track":     track.Words().Copy(),
	"progression/visit":     visit.Words().Copy(),
	"screening/function":    function.Words().Copy(),
}

// joined is the package whose words are those of the others.
const joined = "progression/record"

// The two lists above are typed; no package may be missing from them.
func TestListsAreComplete(t *testing.T) {
	for _, p := range libraries(t) {
		_, hasFacts := allFacts[p.path]
		if declares := p.declares("Facts"); declares != (hasFacts && p.path != "units") {
			t.Errorf("%s: func Facts: %v, in the list of facts: %v", p.path, declares, hasFacts)
		}
		_, hasWords := allWords[p.path]
		if declares := p.declares("Words"); declares != (hasWords || p.path == joined) {
			t.Errorf("%s: func Words: %v, in the list of words: %v", p.path, declares, hasWords)
		}
	}
}

func (p *pkg) declares(function string) bool {
	for _, f := range p.files {
		if slices.ContainsFunc(f.Decls, func(d ast.Decl) bool {
			fn, ok := d.(*ast.FuncDecl)
			return ok && fn.Recv == nil && fn.Name.Name == function
		}) {
			return true
		}
	}
	return false
}

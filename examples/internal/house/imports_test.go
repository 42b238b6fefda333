package house_test

import (
	"slices"
	"strings"
	"testing"
)

var (
	ground = []string{"units/field", "units", "units/body", "units/evidence"}
	first  = slices.Concat(ground, []string{"screening", "screening/function"})
	// second leaves dose/onerm/fit out: it would bring gonum into every prescription.
	second = slices.Concat(first, []string{"dose/exercise", "dose/equipment", "dose/setlog", "dose/onerm", "dose/strength", "dose/volume", "dose/guideline", "dose/choice"})
)

const gonum = "gonum.org/v1/gonum"

// mayImport is the house: what each package may import beside the standard
// library. Floors import downwards only. Examples may import everything.
var mayImport = map[string][]string{
	"units/field":    {},
	"units":          {"units/field"},
	"units/body":     {"units/field", "units"},
	"units/evidence": {"units/field", "units"},

	"screening":          ground,
	"screening/function": ground,

	"screening/interview": slices.Concat(ground, []string{"screening"}),

	"dose/exercise":  ground,
	"dose/equipment": slices.Concat(ground, []string{"dose/exercise"}),
	"dose/setlog":    slices.Concat(ground, []string{"dose/exercise"}),
	"dose/onerm":     slices.Concat(ground, []string{"dose/exercise", "dose/setlog", "dose/onerm/internal/bend", "dose/onerm/internal/student", "dose/onerm/internal/shape"}),
	"dose/onerm/fit": slices.Concat(ground, []string{"dose/onerm", "dose/onerm/internal/bend", "dose/onerm/internal/student", gonum}),
	"dose/volume":    slices.Concat(ground, []string{"dose/exercise", "dose/setlog", "dose/internal/pack"}),
	// What was printed and no estimate asks.
	"dose/onerm/published": slices.Concat(ground, []string{"dose/onerm"}),
	"dose/guideline":       slices.Concat(first, []string{"dose/exercise", "dose/volume"}),
	// Many people's logs: counted as volume counts, estimated by onerm's equations.
	"dose/cohort": slices.Concat(ground, []string{"dose/exercise", "dose/setlog", "dose/volume", "dose/onerm", "dose/internal/pack"}),
	// How sums of many sets are stored.
	"dose/internal/pack": {"units/field", "units"},
	"dose/choice":        slices.Concat(first, []string{"dose/exercise", "dose/equipment", "dose/guideline"}),
	// The forms of curves: onerm evaluates them, fit needs their slopes too.
	"dose/onerm/internal/bend": {"units/field", "units"},
	// Student's t without gonum.
	"dose/onerm/internal/student": {},
	// The forms of published equations.
	"dose/onerm/internal/shape": {"units/field", "units"},

	// What stands beside lifting knows no lift: dose puts it in the week.
	"dose/beside": slices.Concat(first, []string{"dose/exercise", "dose/volume", "dose/guideline"}),

	// What a dose and a week are both asked with, and how both spell numbers.
	"dose/internal/given": slices.Concat(ground, []string{"screening"}),
	"dose/internal/say":   {},
	// What the limits of a screening rule out.
	"dose/internal/demand": slices.Concat(ground, []string{"screening", "dose/exercise"}),
	// What is known of strength, and then which tests of it count.
	"dose/strength": slices.Concat(ground, []string{"dose/exercise", "dose/equipment", "dose/setlog", "dose/onerm", "dose/internal/given", "dose/internal/say"}),

	"dose/internal/tested": slices.Concat(ground, []string{"dose/exercise", "dose/equipment", "dose/setlog", "dose/onerm", "dose/strength", "dose/internal/given"}),

	"dose":      slices.Concat(second, []string{"dose/beside", "dose/internal/demand", "dose/internal/given", "dose/internal/say", "dose/internal/tested"}),
	"dose/week": slices.Concat(second, []string{"dose", "dose/beside", "dose/internal/given", "dose/internal/say", "dose/internal/tested"}),
	"dose/rota": slices.Concat(second, []string{"dose", "dose/week"}),

	// What engine, visit and rules all need is rule's: advice and the size of a
	// step. The engine asks visit for what a visit showed, and
	// programme for attendance and the dates of a plan; neither knows the engine.
	// given holds what all ask of days, answers and sets, say the form of a
	// reason.
	"progression/internal/given": slices.Concat(second, []string{"dose"}),
	"progression/internal/say":   ground,
	"progression/internal/told":  slices.Concat(second, []string{"progression/internal/say", "progression/internal/given", "progression/rule", "progression/visit"}),
	"progression/rule":           slices.Concat(second, []string{"progression/internal/given"}),
	"progression/programme":      slices.Concat(second, []string{"dose", "dose/week", "progression/rule", "progression/internal/given"}),
	"progression/visit":          slices.Concat(second, []string{"dose", "progression/rule", "progression/internal/given", "progression/internal/say"}),
	// What the log of one exercise shows, before any frame.
	"progression/internal/history": slices.Concat(second, []string{"dose", "dose/week", "progression/rule", "progression/visit", "progression/internal/given"}),
	"progression": slices.Concat(second, []string{"dose", "dose/week", "progression/rule", "progression/programme", "progression/visit",
		"progression/internal/given", "progression/internal/history", "progression/internal/told"}),
	"progression/protocol": slices.Concat(ground, []string{"dose/equipment"}),
	"progression/simulate": slices.Concat(second, []string{"dose", "dose/week", "progression", "progression/rule", "progression/programme", "progression/visit", "progression/internal/given"}),
	// Nothing that gives a dose, or keeps a record of one, may import track: no trend,
	// likelihood or smoother reaches a dose.
	"progression/track":  slices.Concat(ground, []string{"screening/function", "dose/exercise", "dose/setlog", "dose/onerm", "dose/strength", gonum}),
	"progression/record": slices.Concat(second, []string{"dose", "dose/week", "dose/onerm/published", "dose/beside", "dose/rota", "progression", "progression/rule", "progression/programme", "progression/visit", "progression/protocol"}),
}

func TestImportsPointDown(t *testing.T) {
	for _, p := range libraries(t) {
		allowed, ok := mayImport[p.path]
		if !ok {
			t.Errorf("%q has no place in the house", p.path)
			continue
		}
		for _, use := range p.uses {
			if standard(use) || slices.ContainsFunc(allowed, func(a string) bool { return covers(a, use) }) {
				continue
			}
			t.Errorf("%s imports %s; it may import the standard library and %v", p.path, use, allowed)
		}
	}
}

// standard reports whether path belongs to the standard library: its first
// element has no dot.
func standard(path string) bool {
	first, _, _ := strings.Cut(path, "/")
	return !strings.Contains(first, ".")
}

// covers reports whether the permission for a, a package of the module or
// gonum as a whole, lets path be imported.
func covers(a, path string) bool {
	if a == gonum {
		return path == gonum || strings.HasPrefix(path, gonum+"/")
	}
	return path == module+"/"+a
}

// describing are the packages whose answers tell people something and dose nothing.
var describing = []string{"progression/track"}

// What describes reaches no dose: no package of the library, nor of what those import,
// leads to it. Only programs that make pages may ask it.
func TestNothingDosesByWhatDescribes(t *testing.T) {
	for _, p := range packages(t) {
		page := strings.HasPrefix(p.path, "examples/")
		for _, use := range p.uses {
			for _, d := range describing {
				if covers(d, use) && !page {
					t.Errorf("%s imports %s", p.path, use)
				}
			}
		}
	}
	for path, allowed := range mayImport {
		for _, d := range describing {
			if slices.Contains(allowed, d) {
				t.Errorf("%s may import %s", path, d)
			}
		}
	}
}

// The table itself must have no way up or round.
func TestHouseHasNoRing(t *testing.T) {
	var visit func(path string, above []string)
	visit = func(path string, above []string) {
		if slices.Contains(above, path) {
			t.Errorf("a ring in the house: %v", append(above, path))
			return
		}
		for _, below := range mayImport[path] {
			if _, ok := mayImport[below]; !ok && below != gonum {
				t.Errorf("%s may import %s, which is no package of the house", path, below)
			}
			visit(below, append(slices.Clone(above), path))
		}
	}
	for path := range mayImport {
		visit(path, nil)
	}
}

// What tests share is imported by tests and by its own kind, and stands on no floor.
func TestOnlyTestsUseWhatTestsShare(t *testing.T) {
	shared := 0
	for _, p := range packages(t) {
		if p.ofTests() {
			shared++
			continue
		}
		for _, use := range p.uses {
			if strings.HasPrefix(use, module) && sharedByTests(use) {
				t.Errorf("%s imports %s", p.path, use)
			}
		}
	}
	if shared == 0 {
		t.Error("tests share nothing")
	}
}

// Nobody may come to depend on an example.
func TestNothingImportsExamples(t *testing.T) {
	for _, p := range packages(t) {
		for _, use := range p.uses {
			if strings.HasPrefix(use, module+"/examples") && (p.library() || p.ofTests() || !strings.Contains(use, "/internal/")) {
				t.Errorf("%s imports %s", p.path, use)
			}
		}
	}
}

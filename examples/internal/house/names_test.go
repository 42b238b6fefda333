package house_test

import (
	"go/types"
	"maps"
	"slices"
	"strings"
	"testing"
)

// shared are the names that stand in two packages or more, each with the reason
// why nobody takes one for the other.
//
// In evidence, Mass, Day and their like make a value of a reason, as Int and String of
// log/slog make one of a line: what is made is what the word means elsewhere.
var shared = map[string]string{
	"Change":           "progression's is what is done; in evidence the constructor of a value that has a sign",
	"Condition":        "the same: a health condition, of a recommendation and as the kind of a code",
	"Day":              "the type, and in evidence the constructor of a value that is one",
	"Decode":           "each package's way from JSON, and no other thing is called so",
	"Dumbbell":         "the same: in a kit, and as what an exercise is done with",
	"Edition":          "of each package that answers, and of a record all of them in one text",
	"Effort":           "the type, and in evidence the constructor of a value that is one",
	"ErrNoConvergence": "the same: a search that ended without its best place",
	"Facts":            "each package's own facts",
	"FrailtyLevel":     "the same level of one scale, as a test and from its number",
	"Happening":        "the same: something that happened, and the kind of its codes",
	"ID":               "each package's own key in records",
	"Impact":           "the same: landing, as a demand and as work beside the sets",
	"Kilograms":        "the same unit, of a mass and a score",
	"Ledger":           "the type, and the one ledger of all packages",
	"LookUp":           "each package's own list by its key",
	"Marked":           "the type, and in evidence the constructor of a value that is one",
	"Mass":             "the type, and in evidence the constructor of a value that is one",
	"Next":             "what comes after what happened, of an exercise and of what stands beside it",
	"Options":          "how the one thing is done that a package does",
	"Plan":             "record's is a plan with what was decided; in week the function that makes a week",
	"Power":            "the same quality, as a goal and as the phase that trains it",
	"Quantity":         "a form's number with a unit, and in evidence the constructor of a value that is one",
	"Reading":          "the same: what a measurement showed, and the kind of its codes",
	"Request":          "what is asked, of one dose and of a week",
	"Reserve":          "the type, and in evidence the constructor of a value that is one",
	"Seconds":          "the same unit, of a dose and of a score",
	"Term":             "a word of a closed list, and in evidence the constructor of a value that is one",
	"Visit":            "progression's is the same type; simulate's holds one, with what came of it",
	"Words":            "the type, and each package's own words",
}

// TestOneWordOneMeaning: a reader who knows a name from one package is not misled
// by it in another.
func TestOneWordOneMeaning(t *testing.T) {
	where := map[string][]string{}
	for _, p := range packages(t) {
		if !p.library() || strings.Contains(p.path+"/", "/internal/") {
			continue
		}
		for _, name := range p.types.Scope().Names() {
			if p.types.Scope().Lookup(name).Exported() {
				where[name] = append(where[name], p.path)
			}
		}
	}
	for _, name := range slices.Sorted(maps.Keys(where)) {
		if in := where[name]; len(in) > 1 && shared[name] == "" {
			t.Errorf("%s stands in %s: give it one meaning, or say in the table why nobody is misled", name, strings.Join(in, ", "))
		}
	}
	for name := range shared {
		if len(where[name]) < 2 {
			t.Errorf("%s stands in one package at most: take it out of the table", name)
		}
	}
}

// TestNamesThatLocalsTake: where many locals hide a name of the package, a reader
// has to look each time which of the two it is.
func TestNamesThatLocalsTake(t *testing.T) {
	const most = 2
	for _, p := range packages(t) {
		if !p.library() {
			continue
		}
		hidden := map[string]int{}
		for _, o := range p.info.Defs {
			if o == nil || o.Parent() == nil || o.Parent() == p.types.Scope() {
				continue
			}
			if v, ok := o.(*types.Var); ok && !v.IsField() && p.types.Scope().Lookup(o.Name()) != nil {
				hidden[o.Name()]++
			}
		}
		for _, name := range slices.Sorted(maps.Keys(hidden)) {
			if n := hidden[name]; n > most {
				t.Errorf("%s: %d locals are called %s, as something of the package is", p.path, n, name)
			}
		}
	}
}

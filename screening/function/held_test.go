package function_test

import (
	"strings"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units/evidence"
)

// TestSaysWhatIsHeld holds that where this module has no figure nothing is said
// of what a source printed or published.
func TestSaysWhatIsHeld(t *testing.T) {
	words := function.Words().Copy()
	for _, code := range []evidence.ReasonCode{"function.no-norm", "function.no-norm.age", "function.no-norm.sex", "function.change.none-published"} {
		w := words[code]
		for _, claim := range []string{"printed", "published", "there are no", "there is no"} {
			if strings.Contains(strings.ToLower(w.Clinician+" "+w.Client), claim) {
				t.Errorf("%s says of a source what is not known: %q, %q", code, w.Client, w.Clinician)
			}
		}
		if !strings.Contains(w.Clinician, "here") {
			t.Errorf("%s: %q does not speak of what is held here", code, w.Clinician)
		}
	}
}

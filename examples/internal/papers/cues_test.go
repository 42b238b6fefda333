package papers

import (
	"regexp"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/body"
)

// held finds a cue that speaks of something to hold, floor one for the floor.
var (
	held  = regexp.MustCompile(`\bweights?\b|hold|\bit\b|bar`)
	floor = regexp.MustCompile(`get up from the floor`)
)

// Every exercise has one cue, which speaks of the floor and of a weight where the
// exercise does.
func TestCues(t *testing.T) {
	seen := map[exercise.ID]bool{}
	for _, c := range cues {
		for _, id := range c.of {
			ex, ok := exercise.Standard().Get(id)
			if !ok || seen[id] {
				t.Errorf("%s: known %v, twice %v", id, ok, seen[id])
			}
			seen[id] = true
			if floor.MatchString(c.ready) != ex.Demands.Has(body.FloorTransfer) {
				t.Errorf("%s: ready %q, and it demands %v", id, c.ready, ex.Demands)
			}
			for lies, rolls := range map[string]string{"Lie on your back on a firm bed": onBack, "Lie on your front on a firm bed": "Roll onto your front", "Lie on your side": "Stay on that side"} {
				if strings.Contains(ex.How, lies) && !strings.Contains(c.ready, rolls) {
					t.Errorf("%s: ready %q for %q", id, c.ready, ex.How)
				}
			}
			if inHand := ex.Hold == body.OneHand || ex.Hold == body.BothHandsOnOne || ex.Hold == body.OneEachHand; inHand && !held.MatchString(c.ready+c.after) {
				t.Errorf("%s: %q says nothing of the weight", id, c.ready)
			}
		}
	}
	for ex := range exercise.Standard().All() {
		if !seen[ex.ID] {
			t.Errorf("%s has no cue", ex.ID)
		}
	}
	if own := cueOf("one-of-the-clinic"); own.ready == "" || own.after == "" {
		t.Error("an exercise of the clinic's own leaves a gap")
	}
}

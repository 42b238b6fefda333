package exercise_test

import (
	"slices"
	"strings"
	"sync"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

func isDumbbell(h body.Hold) bool {
	return h == body.OneHand || h == body.OneEachHand || h == body.BothHandsOnOne
}

func TestStandardCovers(t *testing.T) {
	c := exercise.Standard()
	if c.Len() < 90 {
		t.Errorf("%d exercises, want at least 90", c.Len())
	}
	between := 0
	patterns := map[exercise.Pattern]int{}
	for e := range c.All() {
		patterns[e.Pattern]++
		if isDumbbell(e.Hold) && e.Easier != "" && e.Harder != "" {
			between++
		}
	}
	if between < 14 {
		t.Errorf("%d dumbbell exercises with an easier and a harder variant, want at least 14", between)
	}
	for p := range exercise.Patterns() {
		if patterns[p] < 2 {
			t.Errorf("%d exercises of pattern %s, want one with and one without a weight", patterns[p], p)
		}
	}
	for _, p := range []exercise.Pattern{exercise.Squat, exercise.Hinge, exercise.HorizontalPush, exercise.OverheadPush, exercise.Row,
		exercise.ShoulderRaise, exercise.Calf, exercise.Trunk, exercise.Carry, exercise.ElbowFlexion, exercise.Lunge} {
		if patterns[p] < 3 {
			t.Errorf("%d exercises of pattern %s, want at least 3", patterns[p], p)
		}
	}
}

func TestStandardComplete(t *testing.T) {
	words := exercise.Words().Copy()
	for e := range exercise.Standard().All() {
		if err := e.Validate(); err != nil {
			t.Errorf("%s: %v", e.ID, err)
		}
		if len(e.How) < 20 || !strings.HasSuffix(e.How, ".") {
			t.Errorf("%s: How is %q, want a sentence", e.ID, e.How)
		}
		if len(e.Warnings) == 0 || e.Warnings[0].Code != "exercise.pain-ends-exercise" {
			t.Errorf("%s: warnings %v, want pain first", e.ID, e.Warnings)
		}
		for _, w := range e.Warnings {
			if words.Client(w) == "" || strings.ContainsAny(words.Client(w)+words.Clinician(w), "{}") {
				t.Errorf("%s: warning %s says %q and %q", e.ID, w.Code, words.Client(w), words.Clinician(w))
			}
		}
		if e.Hold == body.Unloaded && !e.MovesBody {
			t.Errorf("%s is unloaded and yet does not move the body", e.ID)
		}
		if e.OneSided && !slices.Contains(e.Facts, "exercise.sets-per-side") {
			t.Errorf("%s is one-sided, facts %v", e.ID, e.Facts)
		}
	}
}

// TestFactsUsed holds that every fact an exercise names exists, and that every
// fact is named by an exercise or by a fact that is.
func TestFactsUsed(t *testing.T) {
	facts := ledger(t)
	used := map[evidence.FactID]bool{}
	var use func(who string, id evidence.FactID)
	use = func(who string, id evidence.FactID) {
		f, ok := facts.Fact(id)
		if !ok {
			t.Errorf("%s names no fact: %q", who, id)
		}
		used[id] = true
		for _, from := range f.From {
			use(string(id), from)
		}
	}
	codes := map[evidence.ReasonCode]bool{}
	for e := range exercise.Standard().All() {
		for _, id := range append(e.Facts, e.CountFact) {
			use(string(e.ID), id)
		}
		if !e.MovedShare.IsZero() {
			use(string(e.ID), e.MovedShareFact)
		}
		if !e.FirstMass.IsZero() {
			use(string(e.ID), e.FirstMassFact)
		}
		for _, w := range e.Muscles {
			use(string(e.ID), w.Fact)
		}
		for _, w := range e.Warnings {
			codes[w.Code] = true
			if len(w.Facts) == 0 {
				t.Errorf("%s: warning %s without a fact", e.ID, w.Code)
			}
			for _, id := range w.Facts {
				use(string(w.Code), id)
			}
		}
	}
	for f := range facts.All() {
		if !used[f.ID] {
			t.Errorf("fact %s is unused", f.ID)
		}
	}
	for code := range exercise.Words().All() {
		if !codes[code] {
			t.Errorf("wording of %s is unused", code)
		}
	}
	for range exercise.Facts() {
		break // stopping early must not panic
	}
}

// TestLaddersConsistent holds that steps point at each other, except where a
// ladder parts from another, and that ladders begin unloaded.
func TestLaddersConsistent(t *testing.T) {
	c := exercise.Standard()
	reached := map[exercise.ID]bool{} // by a step up
	for e := range c.All() {
		reached[e.Harder] = true
	}
	for e := range c.All() {
		if down, ok := c.Get(e.Easier); ok && down.Harder != e.ID && reached[e.ID] {
			t.Errorf("%s is harder than %s, whose harder step is %q", e.ID, down.ID, down.Harder)
		}
		if up, ok := c.Get(e.Harder); ok && up.Easier != e.ID {
			t.Errorf("%s is easier than %s, whose easier step is %q", e.ID, up.ID, up.Easier)
		}
		steps := c.Ladder(e.ID)
		if steps[0].Hold != body.Unloaded {
			t.Errorf("ladder of %s begins with %s, held %s, want unloaded", e.ID, steps[0].ID, steps[0].Hold)
		}
		if !slices.ContainsFunc(steps, func(s exercise.Exercise) bool { return s.ID == e.ID }) {
			t.Errorf("ladder of %s leaves it out", e.ID)
		}
		seen := map[exercise.ID]bool{}
		for i, s := range steps {
			if seen[s.ID] {
				t.Errorf("ladder of %s holds %s twice", e.ID, s.ID)
			}
			seen[s.ID] = true
			if i > 0 && s.Easier != steps[i-1].ID && steps[i-1].Harder != s.ID {
				t.Errorf("ladder of %s: %s does not follow %s", e.ID, s.ID, steps[i-1].ID)
			}
		}
	}
}

// resists says which demand follows from which muscle when it moves a weight.
var resists = map[body.Muscle]body.Demand{
	body.GluteusMaximus: body.HipResisted, body.Hamstrings: body.HipResisted, body.Adductors: body.HipResisted, body.GluteusMedius: body.HipResisted,
	body.Quadriceps: body.KneeResisted, body.Gastrocnemius: body.AnkleResisted, body.Soleus: body.AnkleResisted,
	body.AnteriorDeltoid: body.ShoulderResisted, body.LateralDeltoid: body.ShoulderResisted, body.PosteriorDeltoid: body.ShoulderResisted,
	body.PectoralisMajor: body.ShoulderResisted, body.LatissimusDorsi: body.ShoulderResisted, body.RotatorCuff: body.ShoulderResisted,
	body.BicepsBrachii: body.ElbowResisted, body.TricepsBrachii: body.ElbowResisted, body.BrachialisBrachioradialis: body.ElbowResisted,
	body.ForearmGrip: body.WristResisted, body.WristFlexors: body.WristResisted, body.WristExtensors: body.WristResisted,
	body.HipFlexors: body.HipResisted, body.DeepHipRotators: body.HipResisted, body.TensorFasciaeLatae: body.HipResisted,
	body.TibialisAnterior: body.AnkleResisted, body.TibialisPosterior: body.AnkleResisted, body.ToeExtensors: body.AnkleResisted,
}

// TestDemandsFollowMuscles: a loaded exercise demands resisted work of each
// region whose muscles move the weight.
func TestDemandsFollowMuscles(t *testing.T) {
	for e := range exercise.Standard().All() {
		for _, w := range e.Muscles {
			d, known := resists[w.Muscle]
			if known && e.Hold != body.Unloaded && w.Role != exercise.Stabiliser && !e.Demands.Has(d) {
				t.Errorf("%s trains %s as %s with a weight and does not demand %s", e.ID, w.Muscle, w.Role, d)
			}
		}
	}
}

func TestDemandsSpot(t *testing.T) {
	tests := []struct {
		id   exercise.ID
		has  body.Demands
		lack body.Demands
	}{
		{"dumbbell-floor-press", body.DemandSet(body.FloorTransfer, body.PickUpFromFloor, body.LyingSupine, body.OverFace, body.ElbowResisted), body.DemandSet(body.Overhead, body.FreeStanding)},
		{"goblet-squat", body.DemandSet(body.SpinalCompression, body.FreeStanding, body.KneeResisted, body.HipResisted, body.DeepKneeBend, body.AbdominalPressure), body.DemandSet(body.FloorTransfer, body.LoadedSpinalFlex)},
		{"dumbbell-romanian-deadlift", body.DemandSet(body.SpinalCompression, body.FirmGrip), body.DemandSet(body.LoadedSpinalFlex, body.PickUpFromFloor)},
		{"dumbbell-shoulder-press", body.DemandSet(body.Overhead, body.ShoulderResisted, body.SpinalCompression), body.DemandSet(body.FreeStanding)},
		{"standing-shoulder-press", body.DemandSet(body.Overhead, body.FreeStanding), 0},
		{"lateral-raise", body.DemandSet(body.ShoulderResisted, body.FreeStanding), body.DemandSet(body.Overhead, body.SpinalCompression)},
		{"abdominal-crunch", body.DemandSet(body.LoadedSpinalFlex), 0},
		{"farmers-carry", body.DemandSet(body.FreeStanding, body.FirmGrip, body.SpinalCompression), 0},
		{"single-leg-heel-raise", body.DemandSet(body.SingleLegStance), body.DemandSet(body.FreeStanding)},
		{"seated-calf-raise", body.DemandSet(body.AnkleResisted), body.DemandSet(body.ShoulderResisted, body.WristResisted)},
		{"conventional-deadlift", body.DemandSet(body.PickUpFromFloor, body.SpinalCompression, body.FirmGrip), body.DemandSet(body.LoadedSpinalFlex)},
		{"kettlebell-swing", body.DemandSet(body.FastMovement, body.FreeStanding), 0},
		{"lat-pulldown", body.DemandSet(body.Overhead, body.ShoulderResisted, body.ElbowResisted), body.DemandSet(body.FreeStanding, body.SpinalCompression)},
		{"crunch-machine", body.DemandSet(body.LoadedSpinalFlex), 0},
		{"band-anti-rotation-press", body.DemandSet(body.SpinalTwist), 0},
		{"knee-extension-machine", body.DemandSet(body.KneeResisted), body.DemandSet(body.WristResisted, body.FreeStanding)},
	}
	for _, tt := range tests {
		e, ok := exercise.Standard().Get(tt.id)
		if !ok || e.Demands.Both(tt.has) != tt.has || e.Demands.Both(tt.lack) != 0 {
			t.Errorf("%s demands %s, want all of %s and none of %s", tt.id, e.Demands, tt.has, tt.lack)
		}
	}
}

func countPatterns() int {
	n := 0
	for range exercise.Patterns() {
		n++
	}
	return n
}

// TestSomethingRemains: whoever must avoid one demand finds an exercise in
// every pattern that the demand is not itself the point of.
func TestSomethingRemains(t *testing.T) {
	for d := range body.EveryDemand() {
		left := map[exercise.Pattern]int{}
		for e := range exercise.Standard().All() {
			if !e.Demands.Has(d) {
				left[e.Pattern]++
			}
		}
		least := countPatterns()
		if d == body.HipResisted || d == body.KneeResisted || d == body.AnkleResisted || d == body.ShoulderResisted ||
			d == body.ElbowResisted || d == body.WristResisted {
			least -= 4
		}
		if d == body.Overhead {
			least -= 2 // the overhead push and the vertical pull are overhead themselves
		}
		if len(left) < least {
			t.Errorf("without %s %d patterns remain, want at least %d: %v", d, len(left), least, left)
		}
	}
}

// TestSeatedRemains: somebody who may neither stand free nor lie down, nor lift
// overhead, still finds an exercise in every pattern but the lunge and those
// that are overhead themselves.
func TestSeatedRemains(t *testing.T) {
	avoid := body.DemandSet(body.FreeStanding, body.SingleLegStance, body.Overhead, body.OverFace, body.FloorTransfer, body.LyingSupine, body.HeadDown)
	left, weights := map[exercise.Pattern]int{}, 0
	for e := range exercise.Standard().All() {
		if e.Demands.Both(avoid) == 0 {
			left[e.Pattern]++
			if isDumbbell(e.Hold) {
				weights++
			}
		}
	}
	if len(left) != countPatterns()-3 || left[exercise.Lunge]+left[exercise.OverheadPush]+left[exercise.VerticalPull] != 0 || weights < 5 {
		t.Errorf("%d patterns and %d exercises with a dumbbell remain, want all but three and at least 5: %v", len(left), weights, left)
	}
}

// TestEveryPatternCanBegin: whoever has nothing but dumbbells finds a
// weight for every pattern that dumbbells can load, and whoever has none an
// unloaded exercise for every pattern.
func TestEveryPatternCanBegin(t *testing.T) {
	unloaded, dumbbells := map[exercise.Pattern]bool{}, map[exercise.Pattern]bool{}
	for e := range exercise.Standard().All() {
		unloaded[e.Pattern] = unloaded[e.Pattern] || e.Hold == body.Unloaded
		dumbbells[e.Pattern] = dumbbells[e.Pattern] || slices.Contains(e.Implements, exercise.Dumbbell)
	}
	// With dumbbells alone there is no vertical pull, nor anything for what only
	// machines, cables, bands and ankle weights load.
	without := []exercise.Pattern{exercise.VerticalPull, exercise.DownwardPush, exercise.KneeExtension, exercise.KneeFlexion,
		exercise.HipAbduction, exercise.HipAdduction, exercise.HipFlexion, exercise.Dorsiflexion, exercise.Trunk}
	for p := range exercise.Patterns() {
		if !unloaded[p] || dumbbells[p] == slices.Contains(without, p) {
			t.Errorf("%s: unloaded %v, with a dumbbell %v", p, unloaded[p], dumbbells[p])
		}
	}
}

// TestMovesBody holds the exercises for which a one-repetition maximum of the
// held weight misleads.
func TestMovesBody(t *testing.T) {
	for id, want := range map[exercise.ID]bool{
		"goblet-squat": true, "dumbbell-step-up": true, "push-up": true, "lateral-raise": true, "dumbbell-calf-raise": true,
		"dumbbell-romanian-deadlift": true, "dumbbell-sit-to-stand": true, "dumbbell-glute-bridge": true,
		"one-arm-dumbbell-row": false, "dumbbell-shoulder-press": false, "biceps-curl": false, "dumbbell-bench-press": false,
		"farmers-carry": false, "seated-calf-raise": false,
	} {
		if e, ok := exercise.Standard().Get(id); !ok || e.MovesBody != want {
			t.Errorf("%s: MovesBody = %v, want %v", id, e.MovesBody, want)
		}
	}
}

func TestWarningsSpot(t *testing.T) {
	codes := func(id exercise.ID) []evidence.ReasonCode {
		e, _ := exercise.Standard().Get(id)
		var list []evidence.ReasonCode
		for _, w := range e.Warnings {
			list = append(list, w.Code)
		}
		return list
	}
	tests := []struct {
		id   exercise.ID
		want []evidence.ReasonCode
	}{
		{"dumbbell-romanian-deadlift", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.back-or-leg-pain-ends-hinge", "exercise.hinge-position", "exercise.weight-from-chair-height"}},
		{"dumbbell-shoulder-press", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.overhead-start-needs-help", "exercise.weight-from-chair-height"}},
		{"dumbbell-floor-press", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.weight-within-reach"}},
		{"dumbbell-hip-thrust", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.back-or-leg-pain-ends-hinge", "exercise.weight-within-reach"}},
		{"barbell-hip-thrust", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.back-or-leg-pain-ends-hinge"}},
		{"sit-to-stand", []evidence.ReasonCode{"exercise.pain-ends-exercise"}},
		{"barbell-back-squat", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.bar-from-rack"}},
		{"conventional-deadlift", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.back-or-leg-pain-ends-hinge"}},
		{"band-row", []evidence.ReasonCode{"exercise.pain-ends-exercise", "exercise.band-looked-over"}},
		{"leg-press", []evidence.ReasonCode{"exercise.pain-ends-exercise"}},
		{"ankle-weight-knee-extension", []evidence.ReasonCode{"exercise.pain-ends-exercise"}},
	}
	for _, tt := range tests {
		if got := codes(tt.id); !slices.Equal(got, tt.want) {
			t.Errorf("%s warns %v, want %v", tt.id, got, tt.want)
		}
	}
	// Whoever lies on the floor takes nothing from a chair or table.
	for e := range exercise.Standard().All() {
		if e.Demands.Has(body.FloorTransfer) && slices.Contains(codes(e.ID), "exercise.weight-from-chair-height") {
			t.Errorf("%s is done on the floor with weights from a chair", e.ID)
		}
	}
}

// TestConcurrent shares the catalogue among goroutines that spoil what they
// were given; the race detector and the last check must not notice.
func TestConcurrent(t *testing.T) {
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for e := range exercise.Standard().All() {
				e.Muscles[0].Role = exercise.Stabiliser
				e.Facts[0] = "spoilt"
				e.Implements[0] = exercise.Band + 1
				e.Warnings[0].Facts[0] = "spoilt"
				if len(e.Aliases) > 0 {
					e.Aliases[0] = "spoilt"
				}
				if found, err := exercise.Standard().Lookup(e.Name); err != nil || found.Facts[0] == "spoilt" {
					t.Errorf("Lookup(%q) = facts %v, %v", e.Name, found.Facts, err)
				}
			}
		})
	}
	wg.Wait()
	for e := range exercise.Standard().All() {
		if e.Muscles[0].Role == exercise.Stabiliser || e.Implements[0] > exercise.Band || e.Warnings[0].Facts[0] == "spoilt" || slices.Contains(e.Aliases, "spoilt") {
			t.Errorf("%s was spoilt through a copy", e.ID)
		}
	}
}

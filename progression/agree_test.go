package progression_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// said is all that a client may read of a decision: its reasons, and the gates that
// stand in the way of more.
func said(d progression.Decision) map[evidence.ReasonCode]string {
	texts := map[evidence.ReasonCode]string{}
	words := allWords()
	list := slices.Clone(d.Reasons)
	for _, g := range d.Gates {
		if g.Advice != rule.Raise {
			list = append(list, g.Reasons...)
		}
	}
	for _, r := range list {
		if w, ok := words[r.Code]; ok && w.Client != "" {
			texts[r.Code] = words.Client(r)
		}
	}
	return texts
}

// What asks for more is read only beside a dose that does.
var ofProgress = []evidence.ReasonCode{
	"progression.one-more-set", "progression.more-reps", "progression.more-of-it", "progression.find-on", "progression.shown", "progression.done-before", "progression.rated-twice", "progression.slower",
	"progression.pause", "progression.extra-set", "progression.large-step",
}

// disagreements lists what a client would read that the decision does not say.
func disagreements(c progression.Course, d progression.Decision) []string {
	var list []string
	searches := d.Change == progression.FindLoad && (d.Next.Feel != nil || d.Next.Finding != nil && d.Next.Finding.MaxSteps > 0)
	heavier := d.Change == progression.MoreLoad || searches
	efforts := 0
	for code, text := range said(d) {
		low := strings.ToLower(text)
		has := func(words ...string) bool {
			return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(low, w) })
		}
		out := has(" out for now", " out today", "left out", "leave this one out")
		offer := has("next weight", "add weight", "weight may go up", "heavier weight") && !has("when somebody is with you", "is still too far", "did not try", "there is no heavier")
		keeps := has("keep the weight", "same weight")
		switch {
		case out && d.Next != nil:
			list = append(list, "left out beside a dose: "+text)
		case offer && !heavier:
			list = append(list, "a weight that does not come: "+text)
		case offer && d.Change == progression.FindLoad && c.Request.Screening.Setting == screening.Alone:
			list = append(list, "a search alone: "+text)
		case keeps && d.Next != nil && d.Next.Load.Each() != last(&c).Plan.Load.Each():
			list = append(list, "kept, and another weight: "+text)
		case slices.Contains(ofProgress, code) && d.Action != progression.Progress:
			list = append(list, "more, and "+d.Action.String()+": "+text)
		case d.Action == progression.StopExercise && has("we begin"):
			list = append(list, "begun, and nothing is prescribed: "+text)
		case has("was too much") && has("weight"):
			list = append(list, "a weight, where there may be none: "+text)
		case has("we stop here") && d.Next != nil:
			list = append(list, "stopped beside a dose: "+text)
		}
		if has("how many more", "stop a little earlier", "clearly easy") {
			efforts++
		}
	}
	if efforts > 1 {
		list = append(list, "two sentences about effort")
	}
	return list
}

// Whatever the course, a client reads nothing that the decision does not say: no
// exercise left out beside its dose, no next weight where none comes.
func TestClientTextsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawClient(t)
		if !p.drawLog(t) {
			return
		}
		p.check = drawCheck(t, p.profile.Setting)
		c, err := p.today()
		if err != nil {
			t.Fatalf("screening: %v", err)
		}
		list, err := progression.NextAll([]progression.Course{c, c, c})
		if err != nil {
			return
		}
		for _, d := range list {
			for _, what := range disagreements(c, d) {
				t.Fatalf("%s\n%s", what, tell(d))
			}
		}
	})
}

// The end of the kit, where the harder variant cannot be dosed, and other ends.
func TestClientTextsAtTheEnds(t *testing.T) {
	noPair := bridged(t)
	noPair.Request.Kit.Dumbbells[0].Count = 1
	unseen := rowCourse(t, 4, 4.25)
	seenLongAgo(&unseen)
	easy := rowCourse(t, 4, 4.5)
	last(&easy).Plan.Finding = nil
	done(&easy, 4*kilo, 12, 6)
	lost := rowCourse(t, 2, 4)
	last(&lost).FormLost = screening.Yes
	last(&lost).Pain.During = score(6)
	limited := rowCourse(t, 4, 4.25)
	most(&limited, 4)
	aloneFar := rowCourse(t, 3, 5)
	aloneFar.Request.Screening.Setting = screening.Alone
	for name, c := range map[string]progression.Course{"no pair": noPair, "unseen": unseen, "easy": easy, "lost": lost, "limited": limited, "alone": aloneFar} {
		d := nextOf(t, c)
		for _, what := range disagreements(c, d) {
			t.Errorf("%s: %s\n%v", name, what, said(d))
		}
	}
}

package progression_test

import (
	"errors"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// The law through screening, the day's check and Next: of one exercise, one thing
// worse, or no longer known, never raises load, sets or steps, never lowers the
// reserve, asks for no more repetitions with the same load where more is to be
// left, makes nothing heavier that was not, and gives no dose where there was none.
func TestProfileMonotone(t *testing.T) {
	all := allSpoilings()
	neverMore(t, func(*rapid.T, *client) {}, func(t *rapid.T, p *client) (string, bool) {
		how := rapid.SampledFrom(all).Draw(t, "spoiling")
		return how.what, how.make(t, p)
	})
}

// neverMore draws clients, each prepared before anything is trained, and holds the
// law against what spoil does to them, which it names, if it can be done.
func neverMore(t *testing.T, prepare func(*rapid.T, *client), spoil func(*rapid.T, *client) (string, bool)) {
	t.Helper()
	tried(t, func(t *rapid.T) bool {
		before := drawClient(t)
		prepare(t, &before)
		if !before.drawLog(t) {
			return false
		}
		before.check = drawCheck(t, before.profile.Setting)
		after := before
		after.course.Log = cloneLog(before.course.Log)
		how, can := spoil(t, &after)
		if !can {
			return false
		}
		was, errBefore := before.next()
		is, errAfter := after.next()
		if errors.Is(errBefore, field.ErrConflict) || errors.Is(errAfter, field.ErrConflict) {
			return false // a test that says nothing any more is refused, and nothing dosed
		}
		if errBefore != nil || errAfter != nil && !errors.Is(errAfter, field.ErrMissing) {
			t.Fatalf("%s: %v, %v", how, errBefore, errAfter)
		}
		if errAfter != nil {
			return false // days were missed, and why is not known
		}
		for _, what := range breaches(before.course, was, is) {
			t.Fatalf("%s: %s\nbefore %s\nafter  %s", how, what, tell(was), tell(is))
		}
		return is.Next != nil && was.Next != nil
	})
}

func tell(d progression.Decision) string {
	if d.Next == nil {
		return fmt.Sprintf("%v, nothing\n%+v", d.Action, d.Reasons)
	}
	p := d.Next
	return fmt.Sprintf("%v, %v: %s, %v × %d × %d (%v), reserve %v, tempo %v, %+v\n%+v", d.Action, d.Change, p.Exercise, p.Load.Each(), p.Sets, p.Count, p.Span, p.Reserve, p.Tempo, p.Finding, d.Reasons)
}

// breaches lists what is harder after a worsening.
func breaches(c progression.Course, was, is progression.Decision) []string {
	id := c.Request.Exercise.ID
	var list []string
	check := func(holds bool, what string) {
		if !holds {
			list = append(list, what)
		}
	}
	check(is.Change != progression.HarderVariant || was.Change == progression.HarderVariant, "a harder variant where there was none")
	if is.Next == nil || is.Next.Exercise != id {
		return list // nothing of this exercise is prescribed any more
	}
	if was.Change == progression.HarderVariant {
		return list
	}
	if was.Next == nil || was.Next.Exercise != id {
		return append(list, "a dose where there was none")
	}
	a, b := was.Next, is.Next
	check(b.Load.Each() <= a.Load.Each(), "load rises")
	check(b.Sets <= setsAsked(*a), "sets rise")
	check(b.Reserve.Least >= a.Reserve.Least, "reserve falls")
	alike := b.Load.Each() == a.Load.Each() && b.Reserve.Least > a.Reserve.Least && b.Phase == a.Phase
	check(!alike || b.Count <= a.Count || shownBefore(c, *b), "count rises with more in reserve")
	if b.Finding != nil && a.Finding != nil {
		check(reached(c.Request.Kit, *b) <= reached(c.Request.Kit, *a), "steps lead to more")
		check(b.Finding.Ceiling == a.Finding.Ceiling || b.Finding.Ceiling > 0 && (a.Finding.Ceiling == 0 || b.Finding.Ceiling <= a.Finding.Ceiling), "ceiling rises")
	}
	check(b.Feel == nil || b.Feel.Load.Each() <= a.Load.Each() || a.Feel != nil && b.Feel.Load.Each() <= a.Feel.Load.Each() || a.Finding != nil && b.Feel.Load.Each() <= reached(c.Request.Kit, *a), "a heavier weight is felt")
	heavier := was.Change == progression.MoreLoad || was.Change == progression.FindLoad
	check(heavier || is.Change != progression.MoreLoad, "the load rises where it did not")
	check(heavier || is.Change != progression.FindLoad || b.Finding == nil, "the load is looked for where it was not")
	check(is.Action != progression.Progress || was.Action != progression.EaseOff || hasReason(was, "progression.above-limit"), "progress where it was eased")
	return list
}

// shownBefore reports whether the last visit, as it was before anything was worse,
// showed the count of p with its load in its reserve, or p is what it asked for: then it is
// no breach that a harder dose would have begun at the bottom of the range.
func shownBefore(c progression.Course, p dose.Prescription) bool {
	v := *last(&c)
	if was := v.Plan; p.Load.Each() == was.Load.Each() && p.Count <= was.Count && p.Reserve.Least >= was.Reserve.Least {
		return true
	}
	if len(v.Sets) == 0 {
		return p.Count+int(p.Reserve.Least) <= v.Plan.Count+int(v.Plan.Reserve.Least)
	}
	for _, s := range v.Sets {
		left := float64(v.Plan.Reserve.Least)
		if s.Effort.Scale() == units.ScaleRIR {
			left = s.Effort.Number()
		}
		if s.Load == p.Load.Each() && float64(s.Reps)+left < float64(p.Count)+float64(p.Reserve.Least) {
			return false
		}
	}
	return true
}

// tried checks a law, with more draws where few of them came to what it is about, so that
// none passes, or fails, for want of it.
func tried(t *testing.T, law func(*rapid.T) bool) {
	t.Helper()
	const fewest, rounds = 5, 100
	compared := 0
	for range rounds {
		rapid.Check(t, func(t *rapid.T) {
			if law(t) {
				compared++
			}
		})
		if compared >= fewest || t.Failed() {
			return
		}
	}
	t.Errorf("%d draws came to what the law is about", compared)
}

package record_test

import (
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

const floorPress, shoulderPress = "dumbbell-floor-press", "dumbbell-shoulder-press"

// twoPresses is the invented review with a second press, done as the first one is, and no pain.
func twoPresses(t *testing.T) record.Record {
	t.Helper()
	r := read(t, review)
	for i, a := range slices.Clone(r.Asked) {
		if a.Exercise == floorPress {
			r.Asked[i].Sets, a.Sets, a.Exercise = 1, 1, shoulderPress // of which more are to come
			r.Asked = append(r.Asked, a)
		}
	}
	var done []setlog.Set
	for _, s := range r.Done {
		done = append(done, s)
		if s.Exercise == floorPress {
			s.Reps, s.Effort = 10, units.Must(units.InReserve(5))
			done[len(done)-1] = s
			s.Exercise = shoulderPress
			done = append(done, s)
		}
	}
	r.Done = done
	for i := range r.Visits {
		r.Visits[i].But, r.Visits[i].Observer = nil, "Physiotherapist E"
	}
	return r
}

// hurting adds pain during one exercise of the last visit.
func hurting(r record.Record, id exercise.ID, during float64) record.Record {
	r.Visits = slices.Clone(r.Visits)
	none := 0.0
	pain := screening.Pain{Kind: screening.OrdinaryPain, Usual: &none, During: &during, After: &none, NextMorning: &none, WeeklyTrend: screening.StablePain}
	r.Visits[len(r.Visits)-1].But = []record.Exception{{Exercise: id, Noted: record.Noted{Pain: &pain}}}
	return r
}

// decisions are those on all exercises.
func decisions(t *testing.T, r record.Record) map[exercise.ID]record.Decided {
	t.Helper()
	items, err := r.Next(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	all := map[exercise.ID]record.Decided{}
	for _, item := range items {
		all[item.Exercise] = item
	}
	return all
}

// What hurts holds what is like it, and nothing else (this module's design); pain that eases
// nothing, up to 5 of 10 (Thomee 1997), holds nothing, and more of it never gives more.
func TestHurtInAnother(t *testing.T) {
	calm := twoPresses(t)
	before := decisions(t, calm)
	held := 0
	for hurt := range before {
		for score := range 11 {
			for id, is := range decisions(t, hurting(calm, hurt, float64(score))) {
				if id == hurt {
					continue
				}
				was, plan := before[id].Decision, is.Log[len(is.Log)-1].Plan
				why := slices.ContainsFunc(is.Decision.Gates[1].Reasons, func(r evidence.Reason) bool { return r.Code == "progression.hurt-in-another" })
				press := func(id exercise.ID) bool { return id == floorPress || id == shoulderPress }
				if like := press(hurt) && press(id); why != (like && score > 5) {
					t.Errorf("%d in %s: %s says so: %v", score, hurt, id, why)
				}
				n := is.Decision.Next
				switch {
				case !why && (n == nil || was.Next == nil || n.Load.Each() != was.Next.Load.Each() || n.Sets != was.Next.Sets || n.Count != was.Next.Count || is.Decision.Action != was.Action):
					t.Errorf("%d in %s: %s %v, %v; before %v, %v", score, hurt, id, is.Decision.Action, n, was.Action, was.Next)
				case why && (is.Decision.Action != progression.HoldDose || n.Load.Each() > plan.Load.Each() || n.Sets > plan.Sets || n.Count > plan.Count || n.Reserve.Least < plan.Reserve.Least):
					t.Errorf("%d in %s: %s is not held: %v, %v, %v", score, hurt, id, is.Decision.Action, is.Decision.Change, n)
				case why && was.Action == progression.Progress:
					held++
				}
			}
		}
	}
	if held == 0 {
		t.Error("nothing would have been made harder")
	}
}

// Presses, pulls, and what rises from bent knees go together, everything else by its pattern.
func TestAlike(t *testing.T) {
	group := map[exercise.Pattern]exercise.Pattern{
		exercise.OverheadPush: exercise.HorizontalPush, exercise.DownwardPush: exercise.HorizontalPush, exercise.VerticalPull: exercise.Row, exercise.Lunge: exercise.Squat,
	}
	of := func(p exercise.Pattern) exercise.Pattern {
		if g, ok := group[p]; ok {
			return g
		}
		return p
	}
	for a := range exercise.Patterns() {
		for b := range exercise.Patterns() {
			if got := record.Alike(a, b); got != (of(a) == of(b)) {
				t.Errorf("%v and %v: %v", a, b, got)
			}
		}
	}
	if record.Alike(0, 0) {
		t.Error("what has no pattern is like nothing")
	}
}

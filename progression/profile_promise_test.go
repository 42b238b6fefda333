package progression_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// What Next promises of every decision, whoever the person: no error but for days
// missed, a dose of the kit and within every limit, one thing harder and no more,
// a word for all else; and the same decision whatever the order of the sets, the
// side that is called left, and after a journey through JSON.
func TestNextPromises(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, ok := drawToday(t)
		if !ok {
			return false
		}
		d, err := progression.Next(c)
		if errors.Is(err, field.ErrConflict) {
			return false // a test that says nothing any more is refused
		}
		if err != nil {
			t.Fatalf("Next: %v", err)
		}
		least := 5
		if !c.Request.Exercise.MovesBody && d.Next != nil && d.Next.Load.Each() <= lightestOf(c.Request.Kit, c.Request.Exercise.Hold) {
			least = 3
		}
		if was := c.Log[len(c.Log)-1].Plan; d.Next != nil && d.Instead == "" && d.Action != progression.EaseOff && d.Next.Measure == was.Measure && d.Next.Measure == exercise.Repetitions && d.Next.Count < min(least, fewestPlanned(c.Log)) && d.Next.Load.Each() > 0 {
			t.Fatalf("so few without a row that lessens: %s", tell(d))
		}
		for _, what := range slices.Concat(unsound(c, d), notOneThing(c, d), fickle(t, c, d)) {
			t.Fatalf("%s: %s", what, tell(d))
		}
		return true
	})
}

// unsound lists what is wrong with the dose by itself.
func unsound(c progression.Course, d progression.Decision) []string {
	var list []string
	check := func(holds bool, what string) {
		if !holds {
			list = append(list, what)
		}
	}
	why := slices.ContainsFunc(d.Reasons, func(r evidence.Reason) bool { return r.Code != "progression.jump" })
	check(why, "nothing says why")
	check((d.Action == progression.Progress || d.Change == progression.HarderVariant) == (d.Change != progression.NoChange), "action and change do not go together")
	if d.Next == nil {
		return list
	}
	n := *d.Next
	low, _ := n.Span.Min()
	top, _ := n.Span.Max()
	check(n.Count >= 1 && n.Count <= top, "count outside the span")
	check(n.Count >= low || n.Count <= mostCount(*last(&c))+2 || n.Phase != last(&c).Plan.Phase, "count below the span and not from the last visit")
	check(n.Sets >= 1 && n.Sets <= 10, "sets")
	if n.Exercise != c.Request.Exercise.ID {
		return list
	}
	if n.Hold != body.Unloaded {
		table, err := c.Request.Kit.Compile(n.Hold)
		_, in := table.Find(n.Load.Each())
		check(err == nil && in, "a load that the kit does not make")
	}
	was := last(&c).Plan
	fell := d.Action == progression.HoldDose && n.Measure == exercise.Repetitions && n.Measure == was.Measure && was.Finding == nil && n.Load.Each() == was.Load.Each() && n.Count < min(was.Count, top)
	check(!fell || hasReason(d, "progression.fewer-reps"), "a count falls, and nothing says that it keeps the reserve")
	limits := c.Request.Screening.Limits
	for _, m := range limits.Masses {
		demand, some := m.Region.Resisted()
		if !some || c.Request.Exercise.Demands.Has(demand) && (m.Side == body.Both || m.Side == c.Request.Side || c.Request.Side == body.Both) {
			check(n.Load.Each() <= m.Max, "a load above a limit")
		}
	}
	check(n.Measure != 1 || n.Reserve.Least >= limits.MinReserve, "less reserve than the limit")
	if len(c.Request.Estimates) > 0 && limits.MaxFraction > 0 && !hasReason(d, "progression.return-anew") && !hasReason(d, "progression.return-assessed") {
		share, err := n.Load.Each().Share(showsMost(c))
		check(err == nil && share <= limits.MaxFraction+1e-9, "a share above the limit")
	}
	if limits.Lighten.AtMostLast {
		check(n.Load.Each() <= heaviestDone(*last(&c)), "heavier than the last on a lighter day")
	}
	return list
}

// showsMost is the most that any one test or set, done or at a visit without a set asked,
// shows by itself: shares are of the best of what is known, which never lies above.
func showsMost(c progression.Course) units.Mass {
	most := units.Mass(0)
	add := func(a strength.Ability) {
		if one, ok := a.OneRM(); ok {
			most = max(most, one)
		}
	}
	for _, e := range c.Request.Estimates {
		add(strength.Ability{}.Tested(e))
	}
	for _, v := range c.Log {
		sets := v.Sets
		if len(sets) == 0 {
			sets = []setOf{{Hold: body.OneHand, Load: v.Plan.Load.Each(), Reps: v.Plan.Count}}
		}
		for _, s := range sets {
			add(strength.Ability{}.Seen(1, v.Plan.Reserve.Least, s))
		}
	}
	if s := c.Request.Performed; s != nil {
		add(strength.Ability{}.Seen(1, 0, *s))
	}
	return most
}

func mostCount(v progression.Visit) int {
	most := v.Plan.Count
	for _, s := range v.Sets { // the reserve told shows more than the repetitions
		left, _ := s.Effort.RIR()
		told, _ := left.Min()
		most = max(most, s.Reps+int(told))
	}
	return most
}

func heaviestDone(v progression.Visit) units.Mass {
	most := v.Plan.Load.Each()
	for _, s := range v.Sets {
		most = max(most, s.Load)
	}
	return most
}

// setsDone counts those of a search too, of the side with fewer.
func setsDone(v *progression.Visit) int { return v.Done() }

// resumes reports a dose after a trial that is no more than one before it.
func resumes(c progression.Course, n dose.Prescription) bool {
	return slices.ContainsFunc(c.Log, func(v progression.Visit) bool {
		p := v.Plan
		return (p.Finding == nil || p.Finding.MaxSteps == 0) && p.Load.Each() == n.Load.Each() && n.Sets <= max(last(&c).Plan.Sets, setsDone(last(&c))) && n.Count <= p.Count &&
			n.Tempo.Lowering <= max(2, p.Tempo.Lowering) && n.Tempo.Pausing <= p.Tempo.Pausing
	})
}

// notOneThing compares with the last plan: progress is one thing harder, all else none.
func notOneThing(c progression.Course, d progression.Decision) []string {
	if d.Next == nil || d.Next.Exercise != c.Request.Exercise.ID {
		return nil
	}
	n, was := *d.Next, last(&c).Plan
	harder := 0
	for _, more := range []bool{
		n.Load.Each() > was.Load.Each(), n.Sets > was.Sets && !(was.Finding != nil && n.Sets <= setsDone(last(&c))), n.Load.Each() == was.Load.Each() && n.Count > was.Count,
		n.Tempo.Lowering > max(2, was.Tempo.Lowering), n.Tempo.Pausing > was.Tempo.Pausing, n.Finding != nil && d.Action == progression.Progress && n.Load.Each() == was.Load.Each(), n.Feel != nil,
	} {
		if more {
			harder++
		}
	}
	anew := hasReason(d, "progression.return-anew") || hasReason(d, "progression.return-assessed")
	found := n.Load.Each() > was.Load.Each() && n.Load.Each() <= heaviestDone(*last(&c)) && was.Finding != nil
	if was.Finding != nil && d.Action != progression.Progress && resumes(c, n) {
		return nil
	}
	switch {
	case d.Change == progression.FindLoad && n.Load.Each() < was.Load.Each() && hasReason(d, "progression.lighter-for-reserve"):
		return nil // the search begins lower: what is known bears less than what was just easy
	case hasReason(d, "progression.few-for-limit") && n.Load.Each() < heaviestDone(*last(&c)) && n.Count <= c.Request.Screening.Limits.LeastCount:
		return nil // as many as screening asks for, with less than was tried
	case d.Action == progression.Progress && harder == 0:
		return []string{"progress with nothing harder"}
	case harder > 1:
		return []string{"two things harder"}
	case d.Action != progression.Progress && harder > 0 && !found && !anew: // familiarisation has a range of its own
		return []string{"harder, and it is not called progress"}
	}
	return nil
}

// fickle decides again after what should make no difference.
func fickle(t *rapid.T, c progression.Course, d progression.Decision) []string {
	var list []string
	check := func(other progression.Course, what string) {
		again, err := progression.Next(other)
		if err != nil || !alike(t, again, d) {
			list = append(list, what)
		}
	}
	byOrder := c.Policy.Rule == rule.NameTwoForTwo || c.Policy.Rule == rule.NameRepsThenLoad || c.Policy.Rule == rule.NameTopOfRange
	if !byOrder { // those rules ask for the last set, or for three in a row
		turned := c
		turned.Log = cloneLog(c.Log)
		for i := range turned.Log {
			turned.Log[i].Sets = rapid.Permutation(turned.Log[i].Sets).Draw(t, "order")
		}
		check(turned, "the order of the sets decides")
	}
	data, err := json.Marshal(c)
	var back progression.Course
	if err == nil {
		err = field.Decode(data, &back, field.Strict)
	}
	if err != nil {
		return append(list, "JSON: "+err.Error())
	}
	check(back, "JSON decides")
	if len(c.Request.Screening.Limits.Masses) == 0 {
		check(mirrored(c), "the side decides")
	}
	for i, s := range sessionOf(t, c) {
		waits := i == 2 && d.Change == progression.MoreLoad || i >= 1 && learnt(d)
		held := s.Action == progression.HoldDose && s.Next != nil
		if d.Action == progression.ChangeVariant && d.Change == progression.NoChange {
			held = s.Action == progression.StopExercise && s.Next == nil
		}
		if i == 2 && d.Change == progression.FindLoad && (d.Next.Finding != nil || d.Next.Feel != nil) {
			if s.Next != nil && (s.Change == progression.FindLoad && s.Next.Finding != nil || s.Next.Feel != nil) {
				list = append(list, "a third load is looked for")
			}
			continue
		}
		if !waits && text(t, s) != text(t, d) || waits && !held {
			list = append(list, "the session decides otherwise")
		}
	}
	return list
}

// sessionOf decides on a visit with the course three times.
func sessionOf(t *rapid.T, c progression.Course) []progression.Decision {
	list, err := progression.NextAll([]progression.Course{c, c, c})
	if err != nil {
		t.Fatalf("Session: %v", err)
	}
	return list
}

// alike compares decisions but for the places of queried sets and the words on them.
func alike(t *rapid.T, a, b progression.Decision) bool {
	return a.Action == b.Action && a.Change == b.Change && a.Instead == b.Instead && a.RepsBefore == b.RepsBefore &&
		len(a.Queries) == len(b.Queries) && text(t, strip(a.Next)) == text(t, strip(b.Next))
}

func text(t *rapid.T, v any) string {
	data, err := json.Marshal(v)
	if err != nil {
		t.Fatalf("%v", err)
	}
	return string(data)
}

func strip(p *dose.Prescription) *dose.Prescription {
	if p == nil {
		return nil
	}
	n := *p
	n.Side, n.Reasons, n.Cautions = 0, nil, nil
	return &n
}

// mirrored calls left right.
func mirrored(c progression.Course) progression.Course {
	c.Log = cloneLog(c.Log)
	c.Request.Side = opposite(c.Request.Side)
	if len(c.Request.Estimates) > 0 {
		turned := c.Request.Estimates[0]
		turned.Side = opposite(turned.Side)
		c.Request.Estimates = []onerm.Estimate{turned}
	}
	if s := c.Request.Performed; s != nil {
		turned := *s
		turned.Side = opposite(s.Side)
		c.Request.Performed = &turned
	}
	for i := range c.Log {
		c.Log[i].Plan.Side = opposite(c.Log[i].Plan.Side)
		for j := range c.Log[i].Sets {
			s := &c.Log[i].Sets[j]
			s.Side = opposite(s.Side)
		}
	}
	return c
}

func opposite(s body.Side) body.Side {
	switch s {
	case body.Left:
		return body.Right
	case body.Right:
		return body.Left
	}
	return s
}

// lightestOf returns the lightest weight that a kit makes in a hold.
func lightestOf(k equipment.Kit, h body.Hold) units.Mass {
	t, err := k.Compile(h)
	if err != nil {
		return 0
	}
	return t.Lightest().Each()
}

// fewestPlanned returns the least count of any plan: what was eased may be gone back to.
func fewestPlanned(log []progression.Visit) int {
	least := log[0].Plan.Count
	for _, v := range log {
		least = min(least, v.Plan.Count)
	}
	return least
}

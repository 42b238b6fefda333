package dose_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// threeDays asks for three days of a week, for anybody.
func threeDays() week.Request {
	return week.Request{Day: firstDay, Days: []units.Day{firstDay, firstDay + 2, firstDay + 4}}
}

// With any outcome, tasks, kit and minutes: nothing that the limits forbid, pulls as
// often as pushes, and the same answer twice.
func TestDefaultPlansOfAnybody(t *testing.T) {
	every := slices.Collect(choice.Tasks())
	planned := 0
	rapid.Check(t, func(t *rapid.T) {
		v := drawVisit(t)
		outcome, err := screening.Assess(v.profile)
		if err != nil {
			t.Fatalf("Assess: %v", err)
		}
		r := threeDays()
		r.Screening, r.Goal, r.Kit = outcome, v.request.Goal, v.request.Kit
		r.Tasks = rapid.SliceOfNDistinct(rapid.SampledFrom(every), 0, 3, rapid.ID[choice.Task]).Draw(t, "tasks")
		r.Minutes = rapid.SampledFrom([]int{0, 0, 10, 20, 30, 45, 60}).Draw(t, "minutes")
		r.ComesLittle = rapid.Bool().Draw(t, "comes little")
		w, err := week.Plan(r)
		if err != nil {
			return // held; other tests look at why
		}
		planned++
		push, pull := 0, 0
		for _, item := range w.Sessions[0].Items {
			ex, _ := exercise.Standard().Get(item.Exercise)
			avoid := outcome.Limits.Avoid
			if ex.Seat && !faints(outcome) {
				avoid &^= body.DemandSet(body.FreeStanding)
			}
			if clash := ex.Demands.Both(avoid); clash != 0 {
				t.Fatalf("%s demands %v", item.Exercise, clash)
			}
			switch ex.Pattern {
			case exercise.HorizontalPush, exercise.OverheadPush, exercise.DownwardPush:
				push += item.Sets
			case exercise.Row, exercise.VerticalPull:
				pull += item.Sets
			}
		}
		if push > pull {
			t.Fatalf("%d sets of pushes, %d of pulls: %v", push, pull, w.Sessions[0].Items)
		}
		if again, _ := week.Plan(r); len(again.Sessions[0].Items) != len(w.Sessions[0].Items) {
			t.Fatalf("another answer")
		}
	})
	if planned == 0 {
		t.Error("nobody was planned for")
	}
}

// faints reports whether standing free is ruled out for anything but falls and frailty; alone
// with those a chair behind serves (design).
func faints(o screening.Outcome) bool {
	return slices.ContainsFunc(o.Findings, func(f screening.Finding) bool {
		return f.Limits.Avoid.Has(body.FreeStanding) && f.Code != "falls_risk" && f.Code != "frailty" && f.Code != "frailty_dose"
	})
}

// What gets worse, one more condition or less company, adds no harder exercise to a
// plan: what is new in it lies below something that was there, or is the easiest of
// its ladder and without weight.
func TestWorseAddsNothingHarder(t *testing.T) {
	every := slices.Collect(choice.Tasks())
	codes := codesOf(screening.Condition)
	compared := 0
	rapid.Check(t, func(t *rapid.T) {
		v := drawVisit(t)
		tasks := rapid.SliceOfNDistinct(rapid.SampledFrom(every), 0, 3, rapid.ID[choice.Task]).Draw(t, "tasks")
		worse := v.profile
		worse.Conditions.Asked = true
		worse.Conditions.Present = slices.Clone(worse.Conditions.Present)
		if code := rapid.SampledFrom(codes).Draw(t, "one more"); worse.Conditions.Of(code) == screening.No {
			worse.Conditions.Present = append(worse.Conditions.Present, code)
		}
		worse.Setting = screening.Setting(rapid.IntRange(1, int(v.profile.Setting)).Draw(t, "less company"))
		if !v.profile.Conditions.Asked {
			return
		}
		before, err := plannedFor(t, v.profile, v.request, tasks)
		after, worseErr := plannedFor(t, worse, v.request, tasks)
		if err != nil || worseErr != nil {
			return
		}
		compared++
		var had []exercise.ID
		for _, w := range before.Choice.Wanted {
			had = append(had, w.Exercise)
		}
		for _, item := range before.Sessions[0].Items {
			had = append(had, item.Exercise)
		}
		had = append(had, leftBy(before)...)
		for _, item := range after.Sessions[0].Items {
			if !noHarder(had, item.Exercise) {
				t.Fatalf("%s is new beside %v", item.Exercise, had)
			}
		}
	})
	if compared == 0 {
		t.Error("nothing was compared")
	}
}

func plannedFor(t *rapid.T, p screening.Profile, from dose.Request, tasks []choice.Task) (week.Week, error) {
	outcome, err := screening.Assess(p)
	if err != nil {
		t.Fatalf("Assess: %v", err)
	}
	r := threeDays()
	r.Screening, r.Goal, r.Kit, r.Tasks = outcome, from.Goal, from.Kit, tasks
	return week.Plan(r)
}

// leftBy are what a choice cut from its list.
func leftBy(w week.Week) (list []exercise.ID) {
	for _, why := range w.Choice.Reasons {
		if why.Code == "choice.left" {
			for id := range strings.SplitSeq(why.Args[0].Value(), ", ") {
				list = append(list, exercise.ID(id))
			}
		}
	}
	return list
}

// noHarder reports whether the exercise stands in for one of the list, or is the
// easiest of its ladder and without weight.
func noHarder(list []exercise.ID, id exercise.ID) bool {
	for _, have := range list {
		if have == id {
			return true
		}
		for e := range exercise.Standard().Instead(have) {
			if e.ID == id {
				return true
			}
		}
	}
	ex, _ := exercise.Standard().Get(id)
	return ex.Easier == "" && ex.Hold == body.Unloaded
}

// reached are steps that somebody has come to, or is paused on.
func reached(t *rapid.T) (list []beside.Item) {
	for _, i := range []beside.Item{{Kind: beside.Balance, Track: "stance"}, {Kind: beside.Aerobic, Track: "walking"}, {Kind: beside.Impact, Track: "impact"}} {
		if rapid.Bool().Draw(t, "going on") {
			i.Step, i.Paused = rapid.IntRange(1, 7).Draw(t, "step"), rapid.IntRange(0, 3).Draw(t, "paused") == 3
			list = append(list, i)
		}
	}
	return list
}

// Over random plans, begun and going on, against every row: balance, aerobic work and impact
// are met only where an item of the plan asks for as much as the row does, and proposed only
// where an item says no dose; how fast is lifted, which no plan counts, is never met.
func TestMetMeansDosed(t *testing.T) {
	every := slices.Collect(choice.Tasks())
	met, proposed := 0, 0
	rapid.Check(t, func(rt *rapid.T) {
		v := drawVisit(rt)
		if p := &v.profile; rapid.Bool().Draw(rt, "well") { // of others little is planned
			p.Diseases, p.Symptoms, p.RedFlags, p.Conditions = screening.AskedFor(), screening.AskedFor(), screening.AskedFor(), screening.AskedFor()
			p.Age, p.BP = max(50, p.Age), nil
		}
		r := threeDays()
		r.Screening = units.Must(screening.Assess(v.profile))
		r.Goal, r.Kit = rapid.SampledFrom([]guideline.Goal{v.request.Goal, guideline.Bone}).Draw(rt, "goal of the week"), v.request.Kit
		r.Tasks = rapid.SliceOfNDistinct(rapid.SampledFrom(every), 0, 3, rapid.ID[choice.Task]).Draw(rt, "tasks")
		r.Phase = rapid.SampledFrom([]dose.Phase{0, dose.Power}).Draw(rt, "phase")
		r.Minutes = rapid.SampledFrom([]int{0, 20, 45}).Draw(rt, "minutes")
		r.ComesLittle, r.Brief = rapid.Bool().Draw(rt, "comes little"), rapid.Bool().Draw(rt, "brief")
		if rapid.Bool().Draw(rt, "bands") {
			r.Kit.Bands, r.Kit.Dumbbells = []string{"soft", "firm"}, nil
		}
		if rapid.Bool().Draw(rt, "told") {
			r.Known = beside.Known{Stands: new(rapid.IntRange(0, 4).Draw(rt, "stands")), Brisk: new(rapid.IntRange(0, 400).Draw(rt, "brisk")), SpineFracture: screening.No, Leaks: screening.No}
		}
		r.Known.InForce = reached(rt)
		w, err := week.Plan(r)
		if err != nil {
			return // nothing is planned
		}
		for i := range w.Beside { // plans of before there were doses are among them
			if rapid.IntRange(0, 4).Draw(rt, "older plan") == 4 {
				w.Beside[i] = beside.Item{Kind: w.Beside[i].Kind, Days: w.Beside[i].Days, Amount: w.Beside[i].Amount}
			}
		}
		asks := units.Must(w.Prescribed(units.Must(r.Kit.Fit(exercise.Standard())), volume.Options{}))
		for row := range guideline.All() {
			for _, f := range units.Must(guideline.Audit(asks, row)).Findings {
				switch f.Verdict {
				case guideline.Met:
					if besideOf[f.Item] != 0 {
						met++
					}
					if !asksFor(w, f.Item, row) {
						rt.Fatalf("%s: %v is met by %+v", row.ID, f.Item, w.Beside)
					}
				case guideline.Proposed:
					proposed++
					if !slices.ContainsFunc(w.Beside, func(i beside.Item) bool { return i.Kind == besideOf[f.Item] && !i.Dosed() }) {
						rt.Fatalf("%s: %v is proposed by nothing", row.ID, f.Item)
					}
				}
			}
		}
	})
	if met == 0 || proposed == 0 {
		t.Errorf("%d met, %d proposed: the law was not tried", met, proposed)
	}
}

// besideOf are the kinds of work beside lifting that rows ask for.
var besideOf = map[guideline.Field]beside.ItemKind{guideline.FieldBalanceDays: beside.Balance, guideline.FieldAerobic: beside.Aerobic, guideline.FieldImpacts: beside.Impact}

// asksFor reports whether an item of the week asks for what the row does, counted from the
// item itself; true of what lifting gives, false of the speed of a lift.
func asksFor(w week.Week, f guideline.Field, row guideline.Recommendation) bool {
	if f == guideline.FieldLiftSeconds || f == guideline.FieldLowerSeconds {
		return false
	}
	kind, ours := besideOf[f]
	return !ours || slices.ContainsFunc(w.Beside, func(i beside.Item) bool {
		days, _ := i.Days.Min()
		if i.Kind != kind || i.Paused || i.Sets == 0 || i.Seconds+i.Count+i.Minutes == 0 || days == 0 {
			return false
		}
		return map[beside.ItemKind]bool{
			beside.Balance: row.BalanceDays.Contains(days), beside.Aerobic: row.Aerobic.Contains(days * i.Brisk * i.Minutes), beside.Impact: row.Impacts.Contains(i.Sets * i.Count),
		}[kind]
	})
}

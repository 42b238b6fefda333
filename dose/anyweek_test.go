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
			if clash := ex.Demands.Both(forbidden(outcome, ex)); clash != 0 {
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

// forbidden is what the limits forbid. Standing alone is none of it where a chair stands
// behind and nothing but falls or frailty speaks against it: who sways sits down, who
// faints does not. TestSupport holds that for one exercise, TestFrailAndAlone for a plan.
func forbidden(o screening.Outcome, ex exercise.Exercise) body.Demands {
	mayFaint := func(f screening.Finding) bool {
		return f.Limits.Avoid.Has(body.FreeStanding) && !slices.Contains([]screening.Code{"falls_risk", "frailty", "frailty_dose"}, f.Code)
	}
	if ex.Seat && !slices.ContainsFunc(o.Findings, mayFaint) {
		return o.Limits.Avoid &^ body.DemandSet(body.FreeStanding)
	}
	return o.Limits.Avoid
}

// Who is frail and alone sits down on a chair and gets up from it; who may faint does not.
func TestFrailAndAlone(t *testing.T) {
	for _, tt := range []struct {
		conditions []screening.Code
		rises      bool
	}{
		{[]screening.Code{"frailty"}, true},
		{[]screening.Code{"frailty", "falls_risk"}, true},
		{[]screening.Code{"frailty", "vertigo"}, false},
	} {
		outcome := units.Must(screening.Assess(screening.Profile{
			Day: firstDay, Age: 78, Sex: body.Female, Training: body.Novice, Setting: screening.Alone, Wanted: screening.Moderate,
			Activity: &screening.Activity{Intensity: screening.Idle}, BP: &screening.BloodPressure{Systolic: 128, Diastolic: 76},
			Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(),
			Conditions: screening.AskedFor(tt.conditions...),
		}))
		r := threeDays()
		r.Screening, r.Goal, r.Kit = outcome, guideline.Strength, hall
		w, err := week.Plan(r)
		if err != nil {
			t.Errorf("%v: %v", tt.conditions, err)
			continue
		}
		stands := slices.ContainsFunc(w.Sessions[0].Items, func(i dose.Prescription) bool {
			ex, _ := exercise.Standard().Get(i.Exercise)
			return ex.Demands.Has(body.FreeStanding)
		})
		if !outcome.Limits.Avoid.Has(body.FreeStanding) || stands != tt.rises {
			t.Errorf("%v: avoided %v, planned %v", tt.conditions, outcome.Limits.Avoid, w.Sessions[0].Items)
		}
	}
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

// Over random plans, begun and going on: what is met is dosed, and dosed to what is said.
func TestMetMeansDosed(t *testing.T) {
	var rows []guideline.Recommendation
	for r := range guideline.All() {
		if !r.BalanceDays.IsZero() || !r.Aerobic.IsZero() || !r.Impacts.IsZero() {
			rows = append(rows, r)
		}
	}
	kinds := map[guideline.Field]beside.ItemKind{guideline.FieldBalanceDays: beside.Balance, guideline.FieldAerobic: beside.Aerobic, guideline.FieldImpacts: beside.Impact}
	met := 0
	rapid.Check(t, func(rt *rapid.T) {
		v := drawVisit(rt)
		r := threeDays()
		r.Screening = units.Must(screening.Assess(v.profile))
		r.Goal, r.Kit = v.request.Goal, v.request.Kit
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
		prescribed := units.Must(w.Prescribed(exercise.Catalogue{}, volume.Options{}))
		for _, row := range rows {
			report, err := guideline.Audit(prescribed, row)
			if err != nil {
				rt.Fatal(err)
			}
			for _, f := range report.Findings {
				kind, ours := kinds[f.Item]
				if !ours || f.Verdict != guideline.Met {
					continue
				}
				met++
				if !slices.ContainsFunc(w.Beside, func(i beside.Item) bool { return i.Kind == kind && i.Dosed() }) {
					rt.Fatalf("%v is met without a dose: %+v", f.Item, w.Beside)
				}
			}
		}
	})
	if met == 0 {
		t.Error("nothing was ever met: the law was not tried")
	}
}

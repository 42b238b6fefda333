package dose_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Four exercises of 30 s with 30 s of rest on each day (the trial's abstract, row
// ses-08): ours are that many, that long and without a weight, on every day offered.
func TestBriefWeek(t *testing.T) {
	r := weekOf(0, 1, 2, 3, 4, 5, 6)
	r.Brief = true
	w := firstWeek(t, r)
	if len(w.Sessions) != 7 {
		t.Errorf("%d days", len(w.Sessions))
	}
	s := w.Sessions[0]
	if len(s.Items) != 4 || s.WarmUp != 0 || s.Minutes > 5 {
		t.Errorf("%d exercises, %d minutes of warm-up, %d in all", len(s.Items), s.WarmUp, s.Minutes)
	}
	for _, item := range s.Items {
		if item.Hold != body.Unloaded || item.Sets != 1 || item.BuildTo != 1 || item.Rest != units.Exactly(30) || !has(item.Reasons, "dose.brief") {
			t.Errorf("%+v", item)
		}
		if seconds := item.Seconds(); seconds > 30 {
			t.Errorf("%s takes %v s", item.Exercise, seconds)
		}
	}
	for code, want := range map[evidence.ReasonCode]bool{"dose.brief-days": true, "choice.brief": true, "dose.days-between": false, "dose.minutes": false, "dose.brief-alone": false} {
		if has(w.Reasons, code) != want {
			t.Errorf("%s: %v", code, !want)
		}
	}
	r.Minutes = 2
	if few := firstWeek(t, r); few.Sessions[0].Minutes > 2 || len(few.Sessions[0].Items) != 2 {
		t.Errorf("%d exercises in %d minutes", len(few.Sessions[0].Items), few.Sessions[0].Minutes)
	}
	r.Minutes, r.Exercises = 0, []exercise.ID{"goblet-squat", "dumbbell-floor-press"}
	named := firstWeek(t, r)
	if len(named.LeftOut) != 2 || !has(named.LeftOut[0].Reasons, "dose.brief-unloaded") || named.LeftOut[0].Instead != "sit-to-stand" {
		t.Errorf("%+v", named.LeftOut)
	}
}

// Who comes little is offered a few minutes a day, and given nothing of it.
func TestBriefIsOffered(t *testing.T) {
	r := weekOf(0, 2, 4)
	usual := firstWeek(t, r)
	r.ComesLittle = true
	w := firstWeek(t, r)
	if has(usual.Reasons, "dose.brief-offer") || !has(w.Reasons, "dose.brief-offer") {
		t.Errorf("offered to who comes: %v, to who comes little: %v", has(usual.Reasons, "dose.brief-offer"), has(w.Reasons, "dose.brief-offer"))
	}
	if len(w.Sessions) != len(usual.Sessions) || has(w.Reasons, "dose.brief-days") || w.Sessions[0].WarmUp == 0 {
		t.Errorf("switched on: %+v", w.Sessions)
	}
	r.Brief = true
	if has(firstWeek(t, r).Reasons, "dose.brief-offer") {
		t.Error("offered to who has it")
	}
}

// A few minutes a day never ask for more of an exercise than a session does, for
// anybody, nor for anything with a weight; going on from one adds no set.
func TestBriefIsNoMore(t *testing.T) {
	doses := 0
	rapid.Check(t, func(rt *rapid.T) {
		v := drawVisit(rt)
		r := v.request
		r.Screening = units.Must(screening.Assess(v.profile))
		r.Estimates, r.Performed, r.Done = nil, nil, nil
		if rapid.IntRange(0, 3).Draw(rt, "by itself") > 0 {
			r.Screening = waived(body.Training(rapid.IntRange(1, 3).Draw(rt, "training now")))
		}
		if rapid.Bool().Draw(rt, "without a weight") {
			r.Exercise = rapid.SampledFrom(exercises).Filter(func(e exercise.Exercise) bool { return e.Hold == body.Unloaded }).Draw(rt, "one without")
		}
		r.Kit = drawRoom(rt, r.Kit)
		r.Kit.Things = nil
		p, err := dose.Prescribe(r)
		r.Brief = true
		q, briefErr := dose.Prescribe(r)
		if err != nil && briefErr == nil {
			rt.Fatalf("%s is dosed in a few minutes alone", r.Exercise.ID)
		}
		if briefErr != nil {
			return
		}
		doses++
		top, _ := q.Span.Max()
		if q.Hold != body.Unloaded || q.Sets > p.Sets || q.Count > p.Count || q.Count > top || q.Reserve.Least < p.Reserve.Least || q.BuildTo > p.BuildTo {
			rt.Fatalf("%+v\n%+v", p, q)
		}
		f := units.Must(dose.NewFrame(r))
		on, err := f.Continue(dose.Step{Count: top, Sets: 3})
		if err != nil || on.Sets != 1 || on.Count > top {
			rt.Fatalf("%+v, %v", on, err)
		}
	})
	if doses == 0 {
		t.Error("nothing was dosed: the law was not tried")
	}
}

// The figures of the trial and of the survey, against the rows as they were read.
func TestBriefFigures(t *testing.T) {
	rows := cupboardRows(t)
	text := map[evidence.FactID]string{}
	for f := range choice.Facts() {
		text[f.ID] = f.Value
	}
	part := func(id, name string) float64 {
		for _, p := range rows[id].Parts {
			if p.Name == name {
				return p.Value
			}
		}
		t.Fatalf("%s has no part %q", id, name)
		return 0
	}
	if part("ses-08", "exercises") != 4 || !strings.HasPrefix(text["choice.four-a-day"], "four exercises") {
		t.Error("not four exercises")
	}
	for figure, fact := range map[string]evidence.FactID{
		fmt.Sprintf("of %v s with %v s of rest", part("ses-08", "each"), part("ses-08", "rest")): "choice.four-a-day",
		fmt.Sprintf("%v more chair stands", part("ses-08", "chair stand")):                       "choice.four-a-day",
		fmt.Sprintf("%v s faster", -part("ses-08", "five stands")):                               "choice.four-a-day",
		fmt.Sprintf("%v s longer", part("ses-08", "one leg")):                                    "choice.four-a-day",
		fmt.Sprintf("%v %% of the days", part("ses-08", "done on")):                              "choice.four-a-day",
		fmt.Sprintf("by %v %% of 611", part("ses-07", "all")):                                    "choice.short-liked",
		fmt.Sprintf("by %v %% of those", part("ses-07", "walk with difficulty")):                 "choice.short-liked",
	} {
		if !strings.Contains(text[fact], figure) {
			t.Errorf("%s: no %q in %q", fact, figure, text[fact])
		}
	}
}

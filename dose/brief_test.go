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

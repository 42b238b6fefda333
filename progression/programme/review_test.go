package programme_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// assessedThen is an invented assessment of the first day.
var assessedThen = units.Must(screening.Assess(screening.Profile{Day: learningDay, Age: 66}))

const reviewDay = learningDay + 10

func toldToday(list ...programme.Happening) programme.Happenings {
	return programme.Happenings{Asked: reviewDay, List: list}
}

func reviewOf(t failer, h programme.Happenings, o screening.Outcome) programme.HappeningReport {
	t.Helper()
	r, err := h.Review(o, reviewDay)
	if err != nil {
		t.Fatalf("Review: %v", err)
	}
	return r
}

// Screening's list of events ends a plan; every other kind asks for a review.
func TestEveryKindOfHappening(t *testing.T) {
	ends := map[screening.Code]bool{}
	for term := range screening.Codes() {
		if term.Kind == screening.Happening {
			ends[term.Code] = true
		}
	}
	for k := programme.Operation; k <= programme.OtherHappening; k++ {
		h := programme.Happening{Kind: k, Day: learningDay + 3, Related: screening.No}
		r := reviewOf(t, toldToday(h), assessedThen)
		want := "review first refer []"
		code, event := k.Code()
		if event {
			want = fmt.Sprintf("ended refer [%s]", code)
			if !ends[code] {
				t.Errorf("%v: screening knows no happening %s", k, code)
			}
			delete(ends, code)
		}
		if got := fmt.Sprint(r.Standing, " ", r.Advice, " ", r.Ended); got != want || r.Happenings[0].Standing != r.Standing || r.Happenings[0].Kind != k {
			t.Errorf("%v: %s, want %s", k, got, want)
		}
		e, ok := h.Event()
		if ok != event || ok && e != (screening.Event{Code: code, Day: h.Day}) {
			t.Errorf("%v: event %+v, %v", k, e, ok)
		}
	}
	if len(ends) > 0 {
		t.Errorf("screening's happenings %v have no kind here", ends)
	}
}

// What ends a plan here ends it in screening's check of the day too.
func TestEventsEndThePlanInScreeningToo(t *testing.T) {
	o, err := screening.Assess(screening.Profile{Day: learningDay, Age: 66})
	if err != nil {
		t.Fatal(err)
	}
	fall := programme.Happening{Kind: programme.Fall, Day: learningDay + 3}
	e, _ := fall.Event()
	today, err := screening.Today(screening.Check{Day: reviewDay, Events: []screening.Event{e}}, o)
	if err != nil {
		t.Fatal(err)
	}
	if r := reviewOf(t, toldToday(fall), o); !slices.Equal(r.Ended, today.Ended) {
		t.Errorf("ended by %v, in screening by %v", r.Ended, today.Ended)
	}
	if r := reviewOf(t, toldToday(), today); r.Standing != programme.PlanEnded || !slices.Equal(r.Ended, today.Ended) {
		t.Errorf("the day's check is not heeded: %+v", r)
	}
	if r := reviewOf(t, toldToday(fall), today); !slices.Equal(r.Ended, today.Ended) || len(today.Ended) != 1 {
		t.Errorf("one event counts twice: %v", r.Ended)
	}
}

func TestHappeningsBeforeAndAfterTheAssessment(t *testing.T) {
	seen := dose.Observation{Who: "a colleague", Day: reviewDay}
	for _, tt := range []struct {
		name string
		h    programme.Happening
		want string
	}{
		{"the day before", programme.Happening{Kind: programme.Fall, Day: learningDay - 1}, "stands happened-assessed"},
		{"the day before, come to light later", programme.Happening{Kind: programme.Fall, Day: learningDay - 1, Unassessed: screening.Yes}, "ended happened-ends-plan happened-in-training"},
		{"its day", programme.Happening{Kind: programme.Fall, Day: learningDay}, "ended happened-ends-plan happened-in-training"},
		{"its day, told there", programme.Happening{Kind: programme.Fall, Day: learningDay, Unassessed: screening.No}, "stands happened-assessed"},
		{"its day, not told", programme.Happening{Kind: programme.PainFlare, Day: learningDay, Unassessed: screening.Yes}, "review first happened-review happened-in-training"},
		{"the day after", programme.Happening{Kind: programme.Faint, Day: learningDay + 1}, "review first happened-faint happened-in-training"},
		{"a knock on the head", programme.Happening{Kind: programme.HeadKnock, Day: learningDay + 1}, "review first happened-head happened-in-training"},
		{"no day", programme.Happening{Kind: programme.Injury}, "review first happened-review happened-in-training"},
		{"no day, told there", programme.Happening{Kind: programme.Injury, Unassessed: screening.No}, "stands happened-assessed"},
		{"today", programme.Happening{Kind: programme.NewSymptom, Day: reviewDay}, "review first happened-review happened-in-training"},
		{"of training", programme.Happening{Kind: programme.Injury, Day: reviewDay, Related: screening.Yes}, "review first happened-review happened-in-training"},
		{"not of training", programme.Happening{Kind: programme.Injury, Day: reviewDay, Related: screening.No}, "review first happened-review"},
		{"reviewed", programme.Happening{Kind: programme.PainFlare, Day: learningDay + 1, Reviewed: seen}, "stands happened-reviewed"},
		{"reviewed the same day", programme.Happening{Kind: programme.Faint, Day: reviewDay, Reviewed: seen}, "stands happened-reviewed"},
		{"reviewed by nobody", programme.Happening{Kind: programme.PainFlare, Day: learningDay + 1, Reviewed: dose.Observation{Day: reviewDay}}, "review first happened-review happened-in-training"},
		{"reviewed on no day", programme.Happening{Kind: programme.OtherHappening, Reviewed: dose.Observation{Who: "a colleague"}}, "review first happened-review happened-in-training"},
		{"a fall, reviewed", programme.Happening{Kind: programme.Fall, Day: learningDay + 1, Reviewed: seen}, "ended happened-ends-plan happened-in-training"},
		{"medicine", programme.Happening{Kind: programme.MedicineChanged, Day: learningDay + 1, Related: screening.No}, "review first medicine-changed"},
		{"medicine, reviewed", programme.Happening{Kind: programme.MedicineChanged, Day: learningDay + 1, Reviewed: seen}, "stands happened-reviewed"},
	} {
		r := reviewOf(t, toldToday(tt.h), assessedThen)
		got := r.Standing.String()
		for _, why := range r.Happenings[0].Reasons {
			got += " " + string(why.Code[len("progression."):])
		}
		if got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
		if may := r.Advice == rule.Raise; may != (r.Standing == programme.PlanStands) {
			t.Errorf("%s: %v says %v", tt.name, r.Standing, r.Advice)
		}
		speaks(t, append(r.Reasons, r.Happenings[0].Reasons...)...)
	}
}

// Who was not asked today is asked first, which outweighs nothing that was told.
func TestNotAskedToday(t *testing.T) {
	for _, day := range []units.Day{0, reviewDay - 1} {
		r := reviewOf(t, programme.Happenings{Asked: day}, assessedThen)
		if r.Standing != programme.AskWhatHappened || r.Advice != rule.Keep || r.Reasons[0].Code != "progression.happened-not-asked" {
			t.Errorf("%v: %+v", day, r)
		}
		speaks(t, r.Reasons...)
	}
	flare := programme.Happening{Kind: programme.PainFlare, Day: reviewDay}
	if r := reviewOf(t, programme.Happenings{List: []programme.Happening{flare}}, assessedThen); r.Standing != programme.ReviewBefore {
		t.Errorf("a flare and not asked: %v", r.Standing)
	}
	if r := reviewOf(t, toldToday(), assessedThen); r.Standing != programme.PlanStands || r.Advice != rule.Raise {
		t.Errorf("nothing told: %+v", r)
	}
}

func TestHappeningsRefuse(t *testing.T) {
	bad := programme.Happenings{Asked: -1, List: []programme.Happening{
		{Day: -1, Unassessed: 9, Related: 9, Reviewed: dose.Observation{Day: -1}},
		{Kind: 99, Day: learningDay, Reviewed: dose.Observation{Day: learningDay - 1}},
	}}
	_, err := bad.Review(screening.Outcome{}, 0)
	want := "/happenings/asked /happenings/list/0/kind /happenings/list/0/day /happenings/list/0/unassessed /happenings/list/0/related " +
		"/happenings/list/0/reviewed/day /happenings/list/1/kind /happenings/list/1/reviewed/day /screening /today"
	if paths(err) != want {
		t.Errorf("%v", err)
	}
	late := programme.Happenings{Asked: reviewDay + 1, List: []programme.Happening{
		{Kind: programme.Fall, Day: reviewDay + 1}, {Kind: programme.Faint, Reviewed: dose.Observation{Who: "a colleague", Day: reviewDay + 1}}}}
	o := assessedThen
	o.Day = reviewDay + 1
	_, err = late.Review(o, reviewDay)
	if want := "/happenings/asked /happenings/list/0/day /happenings/list/1/reviewed/day /screening/day"; paths(err) != want || !errors.Is(err, field.ErrConflict) {
		t.Errorf("%v", err)
	}
	before := toldToday(programme.Happening{Kind: programme.Faint, Day: learningDay + 1, Unassessed: screening.No})
	if _, err := before.Review(assessedThen, reviewDay); paths(err) != "/happenings/list/0/unassessed" || !errors.Is(err, field.ErrConflict) {
		t.Errorf("told before it happened: %v", err)
	}
	if _, err := toldToday().Review(screening.Waived("a test", body.Person{Age: 66, Sex: body.Female, Training: body.Novice}, screening.InGroup, learningDay-1), reviewDay); paths(err) != "/screening/waived" {
		t.Errorf("a waiver: %v", err)
	}
	o.Day = 0
	if _, err := toldToday().Review(o, reviewDay); paths(err) != "/screening/day" {
		t.Errorf("no day: %v", err)
	}
}

func drawHappening(t *rapid.T) programme.Happening {
	h := programme.Happening{
		Kind:       programme.HappeningKind(rapid.IntRange(1, int(programme.HeadKnock)).Draw(t, "kind")),
		Unassessed: screening.Answer(rapid.IntRange(0, 2).Draw(t, "unassessed")),
		Related:    screening.Answer(rapid.IntRange(0, 2).Draw(t, "related")),
	}
	if rapid.Bool().Draw(t, "has a day") {
		h.Day = learningDay + units.Day(rapid.IntRange(-2, 5).Draw(t, "day"))
	}
	if h.Day > learningDay {
		h = forget(h)
	}
	if rapid.Bool().Draw(t, "reviewed") {
		h.Reviewed = dose.Observation{Who: "a colleague", Day: reviewDay}
	}
	return h
}

// forget drops that an assessment had heard of it.
func forget(h programme.Happening) programme.Happening {
	if h.Unassessed == screening.No {
		h.Unassessed = screening.Unknown
	}
	return h
}

// The law: one thing more that happened, later, graver or no longer known never
// makes the answer less cautious, and the whole is as cautious as its gravest.
func TestReviewMonotone(t *testing.T) {
	changed := 0
	rapid.Check(t, func(t *rapid.T) {
		h := toldToday(rapid.SliceOfN(rapid.Custom(drawHappening), 1, 3).Draw(t, "told")...)
		if rapid.IntRange(0, 3).Draw(t, "asked") == 0 {
			h.Asked--
		}
		was := reviewOf(t, h, assessedThen)
		one := &h.List[rapid.IntRange(0, len(h.List)-1).Draw(t, "which")]
		switch rapid.IntRange(0, 7).Draw(t, "worse") {
		case 0:
			*one = forget(*one)
			one.Day = max(one.Day, learningDay) + units.Day(rapid.IntRange(1, 5).Draw(t, "later"))
		case 1:
			one.Day = 0
		case 2:
			one.Unassessed = screening.Yes
		case 3:
			*one = forget(*one)
		case 4:
			one.Reviewed = dose.Observation{}
		case 5:
			one.Kind = programme.HospitalStay
		case 6:
			h.List = append(h.List, drawHappening(t))
		case 7:
			h.Asked = 0
		}
		is := reviewOf(t, h, assessedThen)
		if is.Standing < was.Standing || is.Advice < was.Advice {
			t.Fatalf("%v, %v after %v, %v", is.Standing, is.Advice, was.Standing, was.Advice)
		}
		for _, a := range is.Happenings {
			if a.Standing > is.Standing {
				t.Fatalf("%v alone is %v, all are %v", a.Kind, a.Standing, is.Standing)
			}
		}
		if is.Standing > was.Standing {
			changed++
		}
	})
	if changed == 0 {
		t.Error("no answer was ever changed")
	}
}

func TestHappeningsJSON(t *testing.T) {
	h := toldToday(programme.Happening{Kind: programme.PainFlare, Day: learningDay, Unassessed: screening.Yes, Related: screening.Yes,
		Reviewed: dose.Observation{Who: "a colleague", Day: reviewDay}, Note: "after gardening"}, programme.Happening{Kind: programme.Stroke})
	var again programme.Happenings
	if err := field.Decode(units.Must(json.Marshal(h)), &again, field.Strict); err != nil || !cmp.Equal(again, h) {
		t.Errorf("%v: %s", err, cmp.Diff(h, again))
	}
	r := reviewOf(t, h, assessedThen)
	var back programme.HappeningReport
	if err := field.Decode(units.Must(json.Marshal(r)), &back, field.Strict); err != nil || !cmp.Equal(back, r) {
		t.Errorf("%v: %s", err, cmp.Diff(r, back))
	}
	for _, into := range []any{&again, &back, &programme.Happening{}, &programme.HappeningAnswer{}} {
		if field.Decode([]byte(`{"when":1}`), into, field.Strict) == nil {
			t.Errorf("%T: an unknown field was read", into)
		}
	}
	roundTrips(t, programme.PlanEnded)
	roundTrips(t, programme.HeadKnock)
}

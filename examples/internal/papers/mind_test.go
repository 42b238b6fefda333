package papers_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// What a page says of a person beside the doses: the sentences are common practice, where
// they stand is held here.
func TestMinded(t *testing.T) {
	fell := &screening.FallsScreen{Fell: screening.Yes}
	const floor, spray = "carry a telephone or an alarm", "spray or tablets that you were prescribed"
	for _, tt := range []struct {
		name   string
		change func(*screening.Profile)
		want   map[string]bool
	}{
		{"alone after a fall", func(p *screening.Profile) { p.Setting, p.Falls = screening.Alone, fell }, map[string]bool{floor: true, "If you fall:": true, spray: false}},
		{"in a group after a fall", func(p *screening.Profile) { p.Setting, p.Falls = screening.InGroup, fell }, map[string]bool{floor: false}},
		{"alone", func(p *screening.Profile) { p.Setting = screening.Alone }, map[string]bool{floor: false}},
		{"angina, agreed to", func(p *screening.Profile) {
			p.Conditions = screening.AskedFor("exertional_angina")
			p.Clearances = []screening.Clearance{{Who: "Dr B", Day: p.Day - 7, Scope: []screening.Code{"exertional_angina", "cardiac"}}}
		}, map[string]bool{spray: true, floor: false}},
		{"words of a surgeon", func(p *screening.Profile) {
			p.Restrictions = []screening.Restriction{{Author: "surgeon B", Region: body.Hip, Note: "no bending past a right angle"}}
		}, map[string]bool{"These words stand above all that is printed here": true, "Surgeon B's own words come first: “no bending past a right angle”": true}},
		{"words about an arm", func(p *screening.Profile) {
			p.Restrictions = []screening.Restriction{{Author: "surgeon B", Region: body.WristHand, Note: "no twisting"}}
		}, map[string]bool{"These words stand above all": true, "SIT-TO-STAND HOLDING A DUMBBELL Surgeon B's": false}},
		{"a limit that has ended", func(p *screening.Profile) {
			p.Restrictions = []screening.Restriction{{Author: "surgeon B", Region: body.Hip, Until: p.Day - 4, Note: "no bending"}}
		}, map[string]bool{"The limit that surgeon B set you ended on": true, "Surgeon B's own words": false}},
	} {
		r := programtest.Decoded(t, demo.VillageHall())
		tt.change(&r.Profile)
		page := of(t, r, r.LastDay())["handout"]
		for text, want := range tt.want {
			if strings.Contains(page, text) != want {
				t.Errorf("%s: %q stands there: %v, in\n%s", tt.name, text, !want, page)
			}
		}
	}
}

// Whoever trained without a day between, or took more than was asked, reads so, and no
// praise; a weight that was to be looked for or felt is none.
func TestOverdone(t *testing.T) {
	const days, more, praise = "You trained without a day of rest before", "You took more weight, or did more sets, than was asked", "Well done. "
	for name, tt := range map[string]struct {
		change func(*record.Record)
		want   map[string]bool
	}{
		"as asked":         {func(*record.Record) {}, map[string]bool{days: false, more: false, praise: true}},
		"on the day after": {func(r *record.Record) { r.Visits[len(r.Visits)-2].Day = r.Visits[len(r.Visits)-1].Day - 1; move(r) }, map[string]bool{days: true, more: false, praise: false}},
		"heavier":          {func(r *record.Record) { squat(r).Load = 10 * units.Kilogram }, map[string]bool{days: false, more: true, praise: false}},
		"a set more":       {func(r *record.Record) { r.Done = append(r.Done, *squat(r)) }, map[string]bool{more: true, praise: false}},
	} {
		r := programtest.Decoded(t, demo.HomeReview())
		tt.change(&r)
		page := of(t, r, r.Review)["handout"]
		for text, want := range tt.want {
			if strings.Contains(page, text) != want {
				t.Errorf("%s: %q stands there: %v, in\n%s", name, text, !want, page)
			}
		}
	}
}

// squat is a squat of the last visit, for which 6 kg were asked, three times.
func squat(r *record.Record) *setlog.Set {
	day := r.Visits[len(r.Visits)-1].Day
	return &r.Done[slices.IndexFunc(r.Done, func(s setlog.Set) bool { return s.Day == day && s.Exercise == "goblet-squat" })]
}

// move puts the sets of the last visit but one on its day.
func move(r *record.Record) {
	was := r.Visits[len(r.Visits)-1].Day
	for i, s := range r.Done {
		if before := r.Visits[len(r.Visits)-3].Day; s.Day > before && s.Day < was {
			r.Done[i].Day = was - 1
		}
	}
}

// A reading of the day that holds everybody is no matter of what came up in training, and
// what screening would be freed by stands in its question.
func TestOfTheDay(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	r.Profile.Diseases = screening.AskedFor("diabetes_t2")
	r.Profile.Answers = map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.Yes, "retinopathy_moderate_or_worse": screening.No}
	r.Checks[0].Glucose, r.Visits[len(r.Visits)-1].But = units.Must(screening.ParseGlucose("3.4 mmol/L")), nil
	letter := of(t, r, r.Review)["doctor"]
	for text, want := range map[string]bool{"Which glucose should": true, "look at what came up in training": false, "Would be freed by": false} {
		if strings.Contains(letter, text) != want {
			t.Errorf("%q stands there: %v, in\n%s", text, !want, letter)
		}
	}
}

// Whom a sign of the heart or of the back holds reads on the first page when to call for
// help; where the emergency services are called at once, or nothing of it holds, nothing does.
func TestCallsForHelp(t *testing.T) {
	const heart, back = "if chest, arm, neck or jaw hurts", "numbness where a saddle would touch you; bladder or bowel"
	for _, tt := range []struct {
		change      func(*screening.Profile)
		heart, back bool
	}{
		{func(*screening.Profile) {}, false, false},
		{func(p *screening.Profile) { p.Symptoms = screening.AskedFor("dizziness_or_syncope") }, true, false},
		{func(p *screening.Profile) { p.Symptoms.Unsure = []screening.Code{"orthopnoea_or_pnd"} }, true, false},
		{func(p *screening.Profile) { p.Conditions = screening.AskedFor("acute_myocarditis") }, true, false},
		{func(p *screening.Profile) { p.RedFlags = screening.AskedFor("severe_midline_back_pain") }, false, true},
		{func(p *screening.Profile) { p.RedFlags = screening.AskedFor("unexplained_weight_loss") }, false, false},
		{func(p *screening.Profile) { // agreed to, and held by nothing
			p.Conditions = screening.AskedFor("exertional_angina")
			p.Clearances = []screening.Clearance{{Who: "Dr B", Day: p.Day - 7, Scope: []screening.Code{"exertional_angina", "cardiac"}}}
		}, false, false},
		{func(p *screening.Profile) {
			p.Symptoms, p.RedFlags = screening.AskedFor("ankle_oedema"), screening.AskedFor("saddle_numbness")
		}, false, false},
	} {
		r := programtest.Decoded(t, demo.VillageHall())
		tt.change(&r.Profile)
		page := of(t, r, r.LastDay())["handout"]
		if strings.Contains(page, heart) != tt.heart || strings.Contains(page, back) != tt.back {
			t.Errorf("heart %v, back %v, in\n%s", tt.heart, tt.back, page)
		}
	}
	r := programtest.Decoded(t, demo.HomeReview())
	r.Checks[0].Pain = &screening.Pain{Kind: screening.SpreadingPain, Site: body.Hip} // told at the day's check
	if page := of(t, r, r.Review)["handout"]; !strings.Contains(page, back) || strings.Contains(page, heart) {
		t.Errorf("pain that spreads:\n%s", page)
	}
}

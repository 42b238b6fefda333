package beside_test

import (
	"errors"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/beside"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// stanceAt is a log of one track, done on days counted from the first.
func stanceAt(least int, days ...int) (list []beside.Practised) {
	for _, d := range days {
		list = append(list, beside.Practised{Day: firstDay + units.Day(d), Track: "stance", Least: least})
	}
	return list
}

func moveOn(t failer, list []beside.Practised, s beside.Situation) (map[beside.TrackID]beside.Item, beside.Known) {
	t.Helper()
	items, k, err := beside.MoveOn(list, s)
	if err != nil {
		t.Fatal(err)
	}
	by := map[beside.TrackID]beside.Item{}
	for _, i := range items {
		by[i.Track] = i
	}
	return by, k
}

type failer = fieldtest.T

// A table of courses of one track, all from step 6 with nothing met, and looked at on day 40.
func TestMoveOn(t *testing.T) {
	s := free(t)
	s.Day, s.Screening.ReviewBy = firstDay+40, firstDay+400
	s.Known.InForce, s.Known.Since = []beside.Item{{Kind: beside.Balance, Track: "stance", Step: 6}}, firstDay
	fell := stanceAt(30, 30, 33, 36)
	fell[1].Troubles = []beside.Trouble{beside.Tumbled}
	hands := stanceAt(30, 36)
	hands[0].MoreHands = true
	for name, tt := range map[string]struct {
		list      []beside.Practised
		step, met int
		paused    bool
	}{
		"nothing practised":             {nil, 4, 0, false},
		"once, all that is asked":       {stanceAt(30, 12, 25, 36)[2:], 4, 1, false}, // two fortnights without before it
		"twice, all that is asked":      {stanceAt(30, 13, 26), 6, 0, false},         // a step harder, and a fortnight
		"held often":                    {stanceAt(30, 1, 4, 7, 10, 21, 30), 9, 0, false},
		"in another order of the lines": {stanceAt(30, 30, 21, 10, 7, 4, 1), 9, 0, false},
		"half of it":                    {stanceAt(1, 13, 26, 39), 3, 0, false},
		"not counted":                   {stanceAt(0, 38), 3, 0, false},
		"a hand more":                   {hands, 3, 0, false},
		"a fall":                        {fell, 4, 0, true},
		"after the day":                 {stanceAt(30, 40, 41), 4, 0, false},
		"before what is known":          {stanceAt(30, -3, -1), 4, 0, false},
	} {
		on, k := moveOn(t, tt.list, s)
		i := on["stance"]
		if i.Step != tt.step || i.Met != tt.met || i.Paused != tt.paused {
			t.Errorf("%s: step %d, met %d, paused %v; want %d, %d, %v", name, i.Step, i.Met, i.Paused, tt.step, tt.met, tt.paused)
		}
		if k.Since != s.Day || k.InForce[0].Step != i.Step {
			t.Errorf("%s: kept %+v", name, k)
		}
	}
}

// Looked at twice, or once at the end, it comes to the same: nothing is taken in twice, and no
// fortnight is lost on the way.
func TestMoveOnTwice(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := free(t)
		s.Screening.ReviewBy = firstDay + 400
		s.Known.Since = firstDay
		list := drawPractised(rt)
		s.Day = firstDay + 100
		_, once := moveOn(rt, list, s)
		s.Day = firstDay + units.Day(rapid.IntRange(0, 99).Draw(rt, "between"))
		_, s.Known = moveOn(rt, list, s)
		s.Day = firstDay + 100
		_, twice := moveOn(rt, list, s)
		for _, i := range once.InForce {
			if !slices.ContainsFunc(twice.InForce, func(o beside.Item) bool { return o.Track == i.Track && o.Step == i.Step && o.Paused == i.Paused }) {
				rt.Fatalf("%+v at once, %+v in two", once.InForce, twice.InForce)
			}
		}
	})
}

func drawPractised(t *rapid.T) (list []beside.Practised) {
	day := firstDay
	for range rapid.IntRange(1, 15).Draw(t, "lines") {
		day += units.Day(rapid.IntRange(1, 12).Draw(t, "days on"))
		p := beside.Practised{Day: day, Track: rapid.SampledFrom(trackIDs).Draw(t, "track"), Least: rapid.IntRange(0, 40).Draw(t, "least"), MoreHands: rapid.IntRange(0, 5).Draw(t, "hands") == 5}
		if rapid.IntRange(0, 5).Draw(t, "trouble") == 5 {
			p.Troubles = []beside.Trouble{rapid.SampledFrom(slices.Collect(beside.Troubles())).Draw(t, "which")}
		}
		list = append(list, p)
	}
	return list
}

// Of two logs, one of them worse in one line or without a good one, the worse never comes to more.
func TestWorseLogsNeverComeToMore(t *testing.T) {
	compared := 0
	rapid.Check(t, func(rt *rapid.T) {
		p, s := drawSituation(rt)
		s = assess(rt, p, s)
		s.Known.Since = firstDay
		s.Day = firstDay + units.Day(rapid.IntRange(1, 27).Draw(rt, "day")) // before the screening's own review
		list := drawPractised(rt)
		worse := slices.Clone(list)
		at := rapid.IntRange(0, len(list)-1).Draw(rt, "line")
		l := &worse[at]
		switch rapid.IntRange(0, 3).Draw(rt, "how") {
		case 0:
			l.Least = rapid.IntRange(0, l.Least).Draw(rt, "less")
		case 1:
			l.MoreHands = true
		case 2:
			l.Troubles = append(slices.Clone(l.Troubles), rapid.SampledFrom(slices.Collect(beside.Troubles())).Draw(rt, "one more"))
		default:
			if l.MoreHands || len(l.Troubles) > 0 || l.Least < 40 || len(list) == 1 {
				return
			}
			worse = slices.Delete(worse, at, at+1)
		}
		s2 := s
		_, s.Known = moveOn(rt, list, s)
		_, s2.Known = moveOn(rt, worse, s2)
		on, _ := start(t, s)
		then, _ := start(t, s2)
		for id, i := range then {
			compared++
			if what := more(i, on[id]); what != "" {
				rt.Fatalf("more in %s: %s\n%+v\n%+v", id, what, list, worse)
			}
		}
	})
	if compared == 0 {
		t.Error("nothing was compared")
	}
}

// The same log under a worse screening, or with less known: never more, and never less support.
func TestWorsePeopleWithTheSameLog(t *testing.T) {
	compared := 0
	rapid.Check(t, func(rt *rapid.T) {
		p, s := drawSituation(rt)
		list := drawPractised(rt)
		s.Known.Since = firstDay
		s.Day = firstDay + units.Day(rapid.IntRange(1, 27).Draw(rt, "day"))
		better := assess(rt, p, s)
		how := worsen(rt, &p, &s)
		worse := assess(rt, p, s)
		_, better.Known = moveOn(rt, list, better)
		_, worse.Known = moveOn(rt, list, worse)
		on, _ := start(t, better)
		then, _ := start(t, worse)
		for id, i := range then {
			compared++
			if what := more(i, on[id]); what != "" {
				rt.Fatalf("%s: more in %s: %s\n%+v\n%+v", how, id, what, on[id], i)
			}
		}
	})
	if compared == 0 {
		t.Error("nothing was compared")
	}
	// Who held all stances came to no hands; who did as much and falls has a hand on.
	s := free(t)
	s.Day, s.Known.Since = firstDay+9, firstDay
	list := stanceAt(30, 0, 2, 4, 6, 8)
	falls := s
	falls.Screening.Limits.Support = true
	_, s.Known = moveOn(t, list, s)
	_, falls.Known = moveOn(t, list, falls)
	on, _ := start(t, s)
	then, _ := start(t, falls)
	if on["stance"].Hands != beside.HandsNear || then["stance"].Hands == beside.HandsNear {
		t.Errorf("%s, and %s for who falls", on["stance"].Hands, then["stance"].Hands)
	}
}

// Every bad line has its place.
func TestBadLogs(t *testing.T) {
	_, _, err := beside.MoveOn([]beside.Practised{{Day: firstDay, Track: "stance"}, {Track: "stairs", Least: -1, Troubles: []beside.Trouble{99}}}, free(t))
	var bad field.Errors
	if !errors.As(err, &bad) {
		t.Fatal(err)
	}
	for _, path := range []string{"/practised/1/day", "/practised/1/track", "/practised/1/least", "/practised/1/troubles/0"} {
		if !slices.ContainsFunc(bad, func(e *field.Error) bool { return e.Path == path }) {
			t.Errorf("no error at %s: %v", path, err)
		}
	}
}

package beside_test

import (
	"fmt"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/screening"
	"pgregory.net/rapid"
)

// A person of a simulation: how much of a step can be done grows from week to week. Invented.
type person struct {
	able, gain float64                // of what the steps ask, at the first one and more each week
	trouble    map[int]beside.Trouble // by week
}

// week is what comes of an item in a week: the later the step the less of it can be done.
func (p person) week(n int, i beside.Item, of int) beside.Happened {
	can := p.able + p.gain*float64(n) - float64(i.Step-1)/float64(of)
	days, _ := i.Days.Min()
	h := beside.Happened{Days: days, Least: int(float64(asked(i)) * min(1, max(0, can)))}
	if t := p.trouble[n]; t != 0 {
		h.Troubles = []beside.Trouble{t}
	}
	return h
}

const courseWeeks = 12

// course returns the item of each week.
func course(t testing.TB, p person, s beside.Situation, id beside.TrackID) []beside.Item {
	t.Helper()
	on, _ := start(t, s)
	i, there := on[id]
	if !there {
		return nil
	}
	all := []beside.Item{i}
	for n := range courseWeeks - 1 {
		next, err := beside.Next(i, p.week(n, i, len(steps(t, id))), s)
		if err != nil {
			t.Fatal(err)
		}
		i = next
		all = append(all, i)
	}
	return all
}

// Twelve weeks of four invented people: what becomes of them is looked at as a whole.
func TestCourses(t *testing.T) {
	able, slow := person{able: 2}, person{able: 1, gain: 0.02}
	fit := free(t)
	fit.Known.Brisk = new(90)
	weak := free(t)
	weak.Screening.Limits.Support, weak.Known = true, beside.Known{Brisk: new(0)}
	for _, tt := range []struct {
		name  string
		who   person
		in    beside.Situation
		track beside.TrackID
		week  int
		want  string
	}{
		{"able", able, fit, "impact", 5, "stamps 5x10"},
		{"able", able, fit, "impact", 12, "small-jumps 2x10"},
		{"able", able, fit, "walking", 3, "walk 3x10, 3 brisk"},
		{"able", able, fit, "stance", 12, "heel-to-toe-looking 30 s, hands free"},
		{"able", able, fit, "chair-rise", 12, "fast-rise 3x8"},
		{"weak", able, weak, "stance", 12, "heel-to-toe 10 s, one hand"},
		{"weak", able, weak, "walking", 12, "walk 3x10, 0 brisk"},
		{"slow", slow, fit, "impact", 12, "low-jumps 2x10"},
		{"hurt in week 3", person{able: 2, trouble: map[int]beside.Trouble{2: beside.Hurt}}, fit, "impact", 12, "paused"},
		{"dizzy in week 3", person{able: 2, trouble: map[int]beside.Trouble{2: beside.Dizzied}}, fit, "stance", 4, "feet-together 10 s, both hands"},
	} {
		if got := brief(course(t, tt.who, tt.in, tt.track)[tt.week-1]); got != tt.want {
			t.Errorf("%s, %s in week %d: %s, want %s", tt.name, tt.track, tt.week, got, tt.want)
		}
	}
	if course(t, able, weak, "impact") != nil {
		t.Error("who is to have support lands")
	}
}

func brief(i beside.Item) string {
	switch {
	case i.Paused:
		return "paused"
	case i.Seconds > 0:
		return fmt.Sprintf("%s %d s, %s", i.Move, i.Seconds, i.Hands)
	case i.Kind == beside.Aerobic:
		return fmt.Sprintf("%s %dx%d, %d brisk", i.Move, i.Sets, i.Minutes, i.Brisk)
	}
	return fmt.Sprintf("%s %dx%d", i.Move, i.Sets, i.Count)
}

// Over drawn people: one step a week at most, and a fall ends everything but talk.
func TestCoursesLaws(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := person{able: rapid.Float64Range(0.3, 2).Draw(rt, "able"), gain: rapid.Float64Range(0, 0.1).Draw(rt, "gain"), trouble: map[int]beside.Trouble{}}
		fell := rapid.IntRange(0, 2*courseWeeks).Draw(rt, "fell")
		p.trouble[fell] = beside.Tumbled
		s := free(t)
		s.Screening.Setting = rapid.SampledFrom([]screening.Setting{screening.Alone, screening.InGroup}).Draw(rt, "setting")
		s.Screening.Limits = drawLimits(rt, "limits")
		all := course(t, p, s, rapid.SampledFrom(trackIDs).Draw(rt, "track"))
		for n := 1; n < len(all); n++ {
			if d := all[n].Step - all[n-1].Step; d > 1 || d > 0 && all[n].Paused {
				rt.Fatalf("week %d: from %+v to %+v", n, all[n-1], all[n])
			}
			if n > fell && !all[n].Paused {
				rt.Fatalf("week %d: goes on after a fall", n)
			}
			if all[n].Hands == beside.HandsNear && s.Screening.Limits.Support && all[n].Kind == beside.Balance {
				rt.Fatalf("week %d: no hand on", n)
			}
		}
	})
}

package record_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// withBands is an invented record of somebody with two bands and nothing else.
func withBands(t failing) record.Record {
	t.Helper()
	text := strings.NewReplacer(
		`{"dumbbells": [{"mass": "2 kg", "count": 2}, {"mass": "4 kg", "count": 2}]}`, `{"bands": ["soft", "wide"], "things": ["chair", "anchor", "counter"]}`,
		`"exercises": ["goblet-squat"],`, `"phase": "build",`, `"days": ["2026-11-30", "2026-12-03"]%s`, `"days": ["2026-11-30", "2026-12-03"]`,
		`"training": "novice"`, `"training": "intermediate"`,
	).Replace(client)
	r, err := record.Decode([]byte(text), field.Strict)
	if err != nil {
		t.Fatalf("%v", err)
	}
	return r
}

type failing interface {
	Helper()
	Fatalf(string, ...any)
}

// done adds a visit at which what is asked for was done, short by so many repetitions
// and with so many fewer in reserve.
func done(r record.Record, day units.Day, short int, less units.RIR) record.Record {
	a := r.Asked[len(r.Asked)-1]
	r.Visits = append(r.Visits[:len(r.Visits):len(r.Visits)], record.TrainingDay{Day: day, Noted: record.Noted{
		PainFree: true, Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No, Observer: "Instructor C",
	}})
	r.Done = r.Done[:len(r.Done):len(r.Done)]
	for range a.Sets {
		r.Done = append(r.Done, setlog.Set{
			Day: day, Exercise: a.Exercise, Side: body.Both, Hold: body.OnBand, Reps: max(1, a.Count-short), Effort: units.Must(units.InReserve(float64(max(0, *a.Reserve-less)))),
		})
	}
	return r
}

// A course with bands alone: a row is chosen with the weakest, grows by repetitions, and
// the next band in the user's order follows, from fewer repetitions; the last one ends it.
func TestCourseOfBands(t *testing.T) {
	r := withBands(t)
	p, err := r.Start(r.LastDay())
	if err != nil || p.Week == nil {
		t.Fatal(p.Stop, err)
	}
	day := p.Week.Sessions[0].Day
	for _, item := range p.Week.Sessions[0].Items {
		if item.Exercise == "band-row-soft" {
			r.Asked = []record.Asked{record.AskedFrom(item, day)}
		}
	}
	if len(r.Asked) == 0 {
		t.Fatalf("no row with a band: %+v", p.Week.Choice.Wanted)
	}
	seen := []exercise.ID{"band-row-soft"}
	for visit := 0; visit < 60; visit++ {
		r = done(r, day, 0, 0)
		if visit%8 == 7 { // the plan is made anew, before it expires
			r.Days, r.Began, r.Profile.Day = []units.Day{day + 4, day + 7}, day+4, day
			r.Checks = nil
		}
		day += 4
		if r, err = record.Decode([]byte(encoded(t, r)), field.Strict); err != nil {
			t.Fatal(err)
		}
		items, err := r.Next(day)
		if err != nil {
			t.Fatal(err)
		}
		d := items[len(items)-1].Decision
		if d.Next == nil {
			t.Fatalf("visit %d: %+v", visit, d)
		}
		last := r.Asked[len(r.Asked)-1]
		next := record.AskedFrom(*d.Next, day)
		if next.Load != 0 || d.Rise != nil || d.Jump != nil {
			t.Fatalf("a mass of a band: %+v", d)
		}
		if next.Exercise != last.Exercise {
			if next.Count > last.Count {
				t.Errorf("the next band begins with %d, after %d", next.Count, last.Count)
			}
			seen = append(seen, next.Exercise)
			r.Asked[len(r.Asked)-1].Until = day - 1
			r.Exercises = nil
		}
		r.Asked = append(r.Asked, next)
	}
	if len(seen) != 2 || seen[1] != "band-row-wide" {
		t.Errorf("%v after %d visits: %+v", seen, len(r.Visits), r.Asked[len(r.Asked)-1])
	}
}

// Fewer repetitions, or less in reserve, at any visit never bring a stronger band, more
// sets, a slower pace, or at the same pace a larger count.
func TestWorseNoStrongerBand(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r := withBands(rt)
		reserve := units.RIR(2)
		r.Asked = []record.Asked{{From: r.Days[0], Exercise: "band-row-soft", Sets: rapid.IntRange(1, 4).Draw(rt, "sets"), Count: rapid.IntRange(8, 20).Draw(rt, "count"), Span: units.Must(units.Between(8, 20)), Reserve: &reserve,
			Lowering: rapid.SampledFrom([]float64{0, 4}).Draw(rt, "lowering"), Pausing: rapid.SampledFrom([]float64{0, 2}).Draw(rt, "pausing")}}
		better, worse := r, r
		for i := range rapid.IntRange(1, 4).Draw(rt, "visits") {
			day := r.Days[0] + units.Day(4*i)
			short, less := rapid.IntRange(0, 6).Draw(rt, "short"), units.RIR(rapid.IntRange(-3, 2).Draw(rt, "less"))
			better = done(better, day, short, less)
			worse = done(worse, day, short+rapid.IntRange(0, 3).Draw(rt, "shorter"), less+units.RIR(rapid.IntRange(0, 3).Draw(rt, "lesser")))
		}
		day := better.Visits[len(better.Visits)-1].Day + 4
		was, err := better.Next(day)
		if err != nil {
			rt.Fatalf("%v", err)
		}
		is, err := worse.Next(day)
		if err != nil {
			rt.Fatalf("%v", err)
		}
		a, b := was[0].Decision.Next, is[0].Decision.Next
		switch {
		case b == nil:
		case a == nil:
			rt.Fatalf("nothing after the better, %+v after the worse", b)
		case b.Exercise == "band-row-wide" && a.Exercise != "band-row-wide":
			rt.Fatalf("a stronger band after the worse")
		case a.Exercise != b.Exercise:
		case b.Sets > a.Sets, b.Tempo.Seconds() > a.Tempo.Seconds(), b.Tempo == a.Tempo && b.Count > a.Count:
			rt.Fatalf("%d × %d after the better, %d × %d after the worse", a.Sets, a.Count, b.Sets, b.Count)
		}
	})
}

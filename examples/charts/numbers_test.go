package main

import (
	"encoding/csv"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/recorder"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/volume"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/track"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
)

// places are where something was drawn: the corners and the middle of every path.
func places(t *testing.T, p *panel) (list []vg.Point, x, y func(float64) vg.Length) {
	t.Helper()
	var c recorder.Canvas
	all := draw.NewCanvas(&c, 500, 400)
	p.Draw(all)
	data := p.DataCanvas(all)
	x, y = p.Transforms(&data)
	add := func(path vg.Path) {
		var middle vg.Point
		corners := 0
		for _, at := range path {
			if at.Type != vg.CloseComp {
				list = append(list, at.Pos)
				middle, corners = middle.Add(at.Pos), corners+1
			}
		}
		if corners > 0 {
			list = append(list, middle.Scale(1/vg.Length(corners)))
		}
	}
	for _, a := range c.Actions {
		switch a := a.(type) {
		case *recorder.Stroke:
			add(a.Path)
		case *recorder.Fill:
			add(a.Path)
		}
	}
	return list, x, y
}

// What is kept as drawn is drawn there: each point of each line and mark, within a tenth of
// a point.
func TestDrawnThere(t *testing.T) {
	for name, f := range figures(t) {
		for _, p := range f.panels {
			list, x, y := places(t, p)
			for _, s := range p.drawn {
				if strings.HasPrefix(s.name, "label ") {
					continue
				}
				for _, at := range s.points {
					want := vg.Point{X: x(at.X), Y: y(at.Y)}
					if !slices.ContainsFunc(list, func(p vg.Point) bool { return math.Hypot(float64(p.X-want.X), float64(p.Y-want.Y)) < 0.1 }) {
						t.Errorf("%s, %s: nothing at %v", name, s.name, at)
					}
				}
			}
		}
	}
}

// Lines of a picture differ by width or dashes, marks by shape: take the colours away, and all
// can be told apart.
func TestWithoutColour(t *testing.T) {
	for i, a := range patterns {
		for _, b := range patterns[i+1:] {
			if a.width == b.width && slices.Equal(a.pattern, b.pattern) {
				t.Errorf("%v twice", a)
			}
		}
	}
	for i, a := range shown {
		for _, b := range shown[i+1:] {
			if slices.Equal(a.pattern, b.pattern) {
				t.Errorf("%s and %s are drawn alike", a.name, b.name)
			}
		}
	}
}

func same(t *testing.T, what string, got plotter.XYs, want ...float64) {
	t.Helper()
	if len(got) != len(want) {
		t.Fatalf("%s: %d points, want %d", what, len(got), len(want))
	}
	for i := range got {
		if math.Abs(got[i].Y-want[i]) > 1e-9 {
			t.Errorf("%s: %v at %v, want %v", what, got[i].Y, got[i].X, want[i])
		}
	}
}

// The track is the library's: readings, level, band, look ahead, and the day from which on
// the change was clear.
func TestStrengthNumbers(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	review, err := r.Assess(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	list, err := papers.Strengths(review.Items, review.Screening.Who)
	if err != nil {
		t.Fatal(err)
	}
	s, p := list[0], figures(t)["strength"].panels[0]
	var all track.Track
	if err := all.Run(track.StrengthModel(), track.State{}, s.Readings); err != nil {
		t.Fatal(err)
	}
	var read, level, low, high []float64
	for i, reading := range s.Readings {
		read = append(read, math.Exp(reading.Value))
		best, within, err := all.Smoothed(i).OneRM(0.9, all.Width())
		if err != nil {
			t.Fatal(err)
		}
		least, _ := within.Min()
		most, _ := within.Max()
		level, low, high = append(level, best.Kilograms()), append(low, least.Kilograms()), append(high, most.Kilograms())
		if got, want := p.find("read")[i].X, float64(reading.Day-s.Readings[0].Day)/7; got != want {
			t.Errorf("reading %d in week %v, want %v", i, got, want)
		}
	}
	same(t, "read", p.find("read"), read...)
	same(t, "level", p.find("level"), level...)
	same(t, "low", p.find("low"), low...)
	same(t, "high", p.find("high"), high...)
	ahead, err := all.State().Forecast(track.StrengthModel(), s.Readings[len(s.Readings)-1].Day+42)
	if err != nil {
		t.Fatal(err)
	}
	best, _, err := ahead.OneRM(0.9, all.Width())
	if got := p.find("ahead"); err != nil || len(got) != 7 || got[6].Y != best.Kilograms() {
		t.Errorf("ahead %v, want %v (%v)", got, best, err)
	}
	clear := -1
	for n := range s.Readings {
		var then track.Track
		if err := then.Run(track.StrengthModel(), track.State{}, s.Readings[:n+1]); err != nil {
			t.Fatal(err)
		}
		if o, err := then.Since(s.Readings[0].Day, 0.05, 0.9); err == nil && o.Rose >= 0.9 && clear < 0 {
			clear = n
		}
	}
	if got := p.find("clear"); clear < 0 || len(got) != 1 || got[0].X != p.find("read")[clear].X {
		t.Errorf("clear %v, want that of reading %d", got, clear)
	}
}

// A change is marked on the first day that shows it, two days being enough for a large one, as
// what it is, rise or fall; where none is clear nothing is marked, and that is said.
func TestClear(t *testing.T) {
	const first = units.Day(740_000)
	for name, test := range map[string]struct {
		values []float64 // logarithms of kg, sixty days apart
		at     int       // reading that is marked, from 0
		word   string
	}{
		"rise": {[]float64{2, 2.6, 2.8}, 1, "clear rise"},
		"fall": {[]float64{2.6, 2, 1.9}, 1, "clear fall"},
		"same": {[]float64{2.6, 2.6, 2.6}, -1, "No change"},
	} {
		d, f := course{panel: newPanel("", "", "")}, figure{}
		for i, v := range test.values {
			d.Readings = append(d.Readings, track.Reading{Day: first + units.Day(60*i), Value: v, Variance: 0.036 * 0.036})
		}
		if err := d.clear(&f); err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(f.text(), test.word) {
			t.Errorf("%s: said %q", name, f.text())
		}
		if test.at < 0 {
			if len(d.drawn) > 0 {
				t.Errorf("%s: marked %v", name, d.drawn)
			}
			continue
		}
		if at := d.find("clear"); len(at) != 1 || at[0].X != d.week(d.Readings[test.at].Day) || d.find("label "+test.word) == nil {
			t.Errorf("%s: %v", name, d.drawn)
		}
	}
}

// The ladder has the weights of the kit, the load of the next visit and the step after it.
func TestLadderNumbers(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	review, err := r.Assess(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	f, seen := figures(t)["ladder"], 0
	for _, item := range review.Items {
		next := item.Decision.Next
		take := f.panels[0].find("take " + next.Name)
		if len(take) != 1 || take[0].X != next.Load.Each().Kilograms() {
			t.Errorf("%s: take %v, want %v", next.Name, take, next.Load.Each())
		}
		if n := len(f.panels[0].find("there " + next.Name)); n != 3 { // 2, 4, 6 and 10 kg without the one to take
			t.Errorf("%s: %d weights", next.Name, n)
		}
		if j := item.Decision.Jump; j != nil {
			seen++
			if at := f.panels[0].find("next " + next.Name); len(at) != 1 || at[0].X != j.To.Each().Kilograms() {
				t.Errorf("%s: next %v, want %v", next.Name, at, j.To)
			}
			if step := f.panels[0].find("step " + next.Name); len(step) != 2 || step[1] != f.panels[0].find("next " + next.Name)[0] || step[0].X != take[0].X {
				t.Errorf("%s: a step of %v", next.Name, step)
			}
			if !strings.Contains(f.text(), j.External.String()+" more, beyond") {
				t.Errorf("%s: no step of %v in %s", next.Name, j.External, f.text())
			}
		}
	}
	if seen == 0 {
		t.Error("no next step was looked at")
	}
}

// The sets are those of the planned week, the bounds those of the rows.
func TestSetsNumbers(t *testing.T) {
	r := programtest.Decoded(t, demo.VillageHallBuild())
	plan, err := r.Start(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	week, err := plan.Week.Prescribed(units.Must(r.Catalogue()), volume.Options{})
	if err != nil {
		t.Fatal(err)
	}
	p := figures(t)["sets"].panels[0]
	for _, m := range week.Totals.Muscles {
		name := strings.ReplaceAll(m.Muscle.String(), "_", " ")
		for word, by := range map[string]volume.Convention{"direct ": volume.DirectSets, "fractional ": volume.FractionalSets, "total ": volume.TotalSets} {
			if at := p.find(word + name); len(at) != 1 || at[0].X != m.Sets(by).Count() {
				t.Errorf("%s%s: %v, want %v", word, name, at, m.Sets(by))
			}
		}
	}
	seen := 0
	for g := range guideline.All() {
		if g.WeeklySets.IsZero() || len(g.SupersededBy) > 0 {
			continue
		}
		seen++
		at := p.find("asks " + string(g.ID))
		low, _ := g.WeeklySets.Min()
		high, closed := g.WeeklySets.Max()
		if len(at) != 2 || at[0].X != float64(low) || closed != (p.find("open "+string(g.ID)) == nil) || closed && at[1].X != float64(high) {
			t.Errorf("%s: %v, want %v", g.ID, at, g.WeeklySets)
		}
	}
	if seen < 3 {
		t.Errorf("%d rows ask for weekly sets", seen)
	}
}

// Every row of the table is a point of a line, in the panels of its kit.
func TestPoliciesNumbers(t *testing.T) {
	table := csv.NewReader(strings.NewReader(string(policiesData)))
	table.Comment = '#'
	rows, err := table.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	f := figures(t)["policies"]
	number := func(text string) float64 {
		x, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	for _, row := range rows[1:] {
		strength, near := 0, 0
		for i, p := range f.panels {
			if p.Title.Text != row[0] {
				continue
			}
			for _, at := range p.find(row[2]) {
				switch {
				case at.X != number(row[3]):
				case i%2 == 0 && at.Y == number(row[4]):
					strength++
				case i%2 == 1 && at.Y == number(row[5]):
					near++
				}
			}
		}
		if strength != 1 || near != 1 {
			t.Errorf("%v: %d and %d points", row, strength, near)
		}
	}
	if len(f.panels) != 6 {
		t.Errorf("%d panels", len(f.panels))
	}
}

// The lines are the equations', the circles as many as there are sets, and the errors those
// that the collection of evidence gives: 2.5, 4.9 and 3.9 % up to 10 repetitions.
func TestEquationNumbers(t *testing.T) {
	f := figures(t)["equation"]
	p := f.panels[0]
	for name, formula := range map[string]onerm.Formula{"O’Conner": onerm.OConner, "Epley": onerm.Epley, "Brzycki": onerm.Brzycki} {
		for _, at := range p.find(name) {
			if want := 100 * float64(units.Must(formula.Fraction(at.X))); math.Abs(at.Y-want) > 1e-9 {
				t.Errorf("%s: %v at %v, want %v", name, at.Y, at.X, want)
			}
		}
		if len(p.find(name)) == 0 {
			t.Errorf("no line of %s", name)
		}
	}
	sets, err := readBench(benchData)
	if err != nil || len(sets) != 60 {
		t.Errorf("%d sets, %v", len(sets), err)
	}
	for _, s := range sets {
		if !slices.ContainsFunc(p.drawn, func(d series) bool {
			return d.name == "sets" && d.points[0].X == float64(s.reps) && math.Abs(d.points[0].Y-100*s.share) < 1
		}) {
			t.Errorf("no circle for %v", s)
		}
	}
	for _, want := range []string{"O’Conner: 1RM wrong by 2.5 %", "Epley: 1RM wrong by 4.9 %", "Brzycki: 1RM wrong by 3.9 %", "in 37 sets"} {
		if !strings.Contains(f.text(), want) {
			t.Errorf("no %q in %s", want, f.text())
		}
	}
}

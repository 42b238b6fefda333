package main

import (
	"fmt"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/progression/record"
)

// weekly draws the weekly sets of each muscle, counted in three ways, above what each
// guideline asks for that speaks of weekly sets of a muscle.
func weekly(r record.Record) (figure, error) {
	totals, err := totalsOf(r)
	if err != nil {
		return figure{}, err
	}
	p := newPanel("Weekly sets, beside what guidelines ask for", "sets a week", "")
	f := figure{name: "sets", title: "Weekly sets of each muscle beside what guidelines ask for", panels: []*panel{p}, foot: noted(r)}
	f.said = append(f.said, f.foot, "A set counts 1 for a muscle that does most of the work; for one that helps 0 (direct), a half (fractional) or 1 (total). No guideline says how it counts.")
	asked := asking()
	floor := float64(len(asked)) * room
	n := len(totals.Muscles)
	var ticks []plot.Tick
	for i, m := range totals.Muscles {
		y := floor + float64(n-1-i)
		name := strings.ReplaceAll(m.Muscle.String(), "_", " ")
		ticks = append(ticks, plot.Tick{Value: y, Label: name})
		f.said = append(f.said, counts(p, name, y, m.Sets(volume.DirectSets).Count(), m.Sets(volume.FractionalSets).Count(), m.Sets(volume.TotalSets).Count()))
	}
	end := 0.0
	for _, g := range asked {
		low, _ := g.WeeklySets.Min()
		high, _ := g.WeeklySets.Max()
		end = max(end, float64(low)+4, float64(high)+1)
	}
	for i, g := range asked {
		y := float64(len(asked)-1-i) * room
		ticks = append(ticks, plot.Tick{Value: y, Label: short(g)})
		f.said = append(f.said, bound(p, g, y, end))
	}
	edge, top := floor-0.5, floor+float64(n)
	p.label(0, top, "○ direct  ● fractional  □ total", place{rightOf.x, rightOf.y, vg.Point{}}, dark)
	p.line("edge", plotter.XYs{{X: 0, Y: edge}, {X: end, Y: edge}}, style(dark, 0.7, dotted))
	for _, g := range asked {
		low, _ := g.WeeklySets.Min()
		p.line("from "+string(g.ID), plotter.XYs{{X: float64(low), Y: edge}, {X: float64(low), Y: top - 0.5}}, style(dark, 0.7, dotted))
	}
	p.Y.Tick.Marker, p.Y.Tick.Length, p.Y.LineStyle.Width = plot.ConstantTicks(ticks), 0, 0
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, end+2, -0.6, top+0.4
	p.X.Tick.Marker = every(2)
	f.height = vg.Length(95 + 19*top)
	return f, nil
}

// every puts a mark at each multiple.
type every float64

// Ticks returns the marks from min to max.
func (e every) Ticks(min, max float64) (list []plot.Tick) {
	for x := 0.0; x <= max; x += float64(e) {
		if x >= min {
			list = append(list, plot.Tick{Value: x, Label: fmt.Sprintf("%g", x)})
		}
	}
	return list
}

func totalsOf(r record.Record) (volume.Totals, error) {
	plan, err := r.Start(r.LastDay())
	if err != nil {
		return volume.Totals{}, err
	}
	if plan.Week == nil {
		return volume.Totals{}, fmt.Errorf("nothing is planned: the case has a stop")
	}
	catalogue, err := r.Catalogue()
	if err != nil {
		return volume.Totals{}, err
	}
	week, err := plan.Week.Prescribed(catalogue, volume.Options{})
	return week.Totals, err
}

// asking are the recommendations that state weekly sets of a muscle and are in force.
func asking() (list []guideline.Recommendation) {
	for g := range guideline.All() {
		if !g.WeeklySets.IsZero() && len(g.SupersededBy) == 0 {
			list = append(list, g)
		}
	}
	return list
}

// How much room the names at the left have, and how many rows of a muscle the bounds of a
// guideline take, whose names are longer.
const (
	names vg.Length = 120
	room  float64   = 1.9
)

// short names a recommendation and for whom it is, in few words.
func short(g guideline.Recommendation) string {
	name, _, _ := strings.Cut(string(g.ID), "-")
	return strings.Join(folded(name+": "+g.Population, inSans(black), names), "\n")
}

func counts(p *panel, name string, y, direct, fractional, total float64) string {
	p.line("span "+name, plotter.XYs{{X: direct, Y: y}, {X: total, Y: y}}, style(dark, 1, solid))
	p.dots("direct "+name, plotter.XYs{{X: direct, Y: y}}, draw.RingGlyph{}, 4, black)
	p.dots("fractional "+name, plotter.XYs{{X: fractional, Y: y}}, draw.CircleGlyph{}, 3, blue)
	p.dots("total "+name, plotter.XYs{{X: total, Y: y}}, draw.SquareGlyph{}, 5, black)
	return fmt.Sprintf("%s: %g direct, %g fractional, %g total.", name, direct, fractional, total)
}

// bound draws what a guideline asks for, with an arrow where it has no upper end.
func bound(p *panel, g guideline.Recommendation, y, end float64) string {
	low, _ := g.WeeklySets.Min()
	high, closed := g.WeeklySets.Max()
	to, words := float64(high), fmt.Sprintf("%d to %d", low, high)
	if !closed {
		to, words = end, fmt.Sprintf("%d or more", low)
		p.dots("open "+string(g.ID), plotter.XYs{{X: to + 1, Y: y}}, arrowHead{}, 6, dark)
	}
	p.line("asks "+string(g.ID), plotter.XYs{{X: float64(low), Y: y}, {X: to, Y: y}}, style(dark, 5, solid))
	p.label(float64(low), y, words, place{rightOf.x, above.y, vg.Point{Y: 4}}, black)
	return fmt.Sprintf("%s %d, for %s, %s: %s sets (%s).", g.Body, g.Year, g.Population, g.Goal, words, g.BasisOf(guideline.FieldWeeklySets))
}

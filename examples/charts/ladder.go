package main

import (
	"fmt"
	"image/color"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
)

// A rung is one exercise of the next visit: the weights there are for it, the one to take,
// and the step that comes after it.
type rung struct {
	name    string
	weights []float64 // kg of one implement
	take    float64
	after   *progression.Jump
}

// ladder draws which weights there are for each exercise, which to take, and which is next.
func ladder(r record.Record) (figure, error) {
	rungs, err := rungsOf(r)
	if err != nil {
		return figure{}, err
	}
	p := newPanel("Which weight, and which is next", "kg of one dumbbell", "")
	f := figure{name: "ladder", title: "The weights there are, the one to take, and the next step", panels: []*panel{p}, height: vg.Length(110 + 52*len(rungs)), foot: noted(r)}
	f.said = append(f.said, f.foot)
	var ticks []plot.Tick
	size := sizeOf(rungs)
	for i, one := range rungs {
		y := float64(len(rungs) - 1 - i)
		ticks = append(ticks, plot.Tick{Value: y, Label: strings.Join(folded(one.name, inSans(black), names), "\n")})
		f.said = append(f.said, one.draw(p, y, size))
	}
	p.Y.Tick.Marker, p.Y.Tick.Length, p.Y.LineStyle.Width = plot.ConstantTicks(ticks), 0, 0
	p.Y.Min, p.Y.Max, p.X.Min = -0.4, float64(len(rungs))-0.35, 0
	p.X.Max *= 1.12
	p.X.Tick.Marker = every(2)
	return f, nil
}

func rungsOf(r record.Record) ([]rung, error) {
	review, err := r.Assess(r.LastDay())
	if err != nil {
		return nil, err
	}
	catalogue, err := r.Catalogue()
	if err != nil {
		return nil, err
	}
	var list []rung
	for _, item := range review.Items {
		next := item.Decision.Next
		if next == nil || next.Mode == dose.WithoutLoad {
			continue
		}
		ex, err := catalogue.Lookup(string(next.Exercise))
		if err != nil {
			return nil, err
		}
		table, err := r.Kit.CompileFor(ex)
		if err != nil {
			return nil, err
		}
		list = append(list, rung{next.Name, weights(table), next.Load.Each().Kilograms(), item.Decision.Jump})
	}
	if len(list) == 0 {
		return nil, fmt.Errorf("no weight is prescribed")
	}
	return list, nil
}

func weights(t *equipment.Table) (list []float64) {
	for load := range t.Loads() {
		list = append(list, load.Each().Kilograms())
	}
	return list
}

// draw draws one rung, and says it.
func (r rung) draw(p *panel, y float64, size vg.Length) string {
	var all plotter.XYs
	for _, kg := range r.weights {
		if kg != r.take {
			all = append(all, plotter.XY{X: kg, Y: y})
		}
	}
	p.line("rail "+r.name, plotter.XYs{{X: r.weights[0], Y: y}, {X: r.weights[len(r.weights)-1], Y: y}}, style(pale, 1, solid))
	p.dots("there "+r.name, all, dumbbell{}, size, dark)
	p.dots("take "+r.name, plotter.XYs{{X: r.take, Y: y}}, fullDumbbell{}, size*1.4, blue)
	p.label(r.take, y, "take "+digits(r.take), place{above.x, above.y, vg.Point{Y: 11}}, blue)
	said := fmt.Sprintf("%s: there are %s kg. Take %s kg.", r.name, listed(r.weights), digits(r.take))
	if r.after == nil {
		return said + " There is nothing heavier."
	}
	to := r.after.To.Each().Kilograms()
	p.line("step "+r.name, plotter.XYs{{X: r.take, Y: y - 0.2}, {X: to, Y: y - 0.2}}, style(black, 1.2, dashed))
	p.dots("next "+r.name, plotter.XYs{{X: to, Y: y - 0.2}}, arrowHead{}, 4, black)
	p.label((r.take+to)/2, y-0.2, "+"+r.after.External.String(), below, black)
	beyond := "beyond"
	if r.after.Within {
		beyond = "within"
	}
	return fmt.Sprintf("%s The next is %s kg, %v more, %s the published 2 to 10 %%.", said, digits(to), r.after.External, beyond)
}

// sizeOf is how large marks may be that the weights stand apart.
func sizeOf(rungs []rung) vg.Length {
	const most, least, across = 7, 2, 200 // points; about what the axis is long
	size, heaviest := math.Inf(1), 0.0
	for _, r := range rungs {
		heaviest = math.Max(heaviest, slices.Max(r.weights))
		for i, kg := range r.weights[1:] {
			size = math.Min(size, kg-r.weights[i])
		}
	}
	return vg.Length(math.Max(least, math.Min(most, 0.38*size*across/heaviest)))
}

// digits prints kg with four digits, of which a weight in pounds has more.
func digits(kg float64) string { return fmt.Sprintf("%.4g", kg) }

func listed(kg []float64) string {
	text := ""
	for i, x := range kg {
		switch {
		case i > 0 && i == len(kg)-1:
			text += " and "
		case i > 0:
			text += ", "
		}
		text += digits(x)
	}
	return text
}

// dumbbell is a mark with two heads and a bar, in outline.
type dumbbell struct{}

// DrawGlyph draws the outline.
func (dumbbell) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	heads(c, s, at, color.White)
}

// fullDumbbell is the same, filled.
type fullDumbbell struct{}

// DrawGlyph draws it filled.
func (fullDumbbell) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	heads(c, s, at, s.Color)
}

func heads(c *draw.Canvas, s draw.GlyphStyle, at vg.Point, fill color.Color) {
	line := draw.LineStyle{Color: s.Color, Width: 1.2}
	c.StrokeLine2(line, at.X-s.Radius, at.Y, at.X+s.Radius, at.Y)
	for _, side := range []vg.Length{-1, 1} {
		x, half, wide := at.X+side*s.Radius*0.7, s.Radius*0.7, s.Radius*0.28
		box := []vg.Point{{X: x - wide, Y: at.Y - half}, {X: x + wide, Y: at.Y - half}, {X: x + wide, Y: at.Y + half}, {X: x - wide, Y: at.Y + half}}
		c.FillPolygon(fill, box)
		c.StrokeLines(line, append(box, box[0]))
	}
}

// arrowHead points to the right, its tip at the point.
type arrowHead struct{}

// DrawGlyph draws it.
func (arrowHead) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	c.FillPolygon(s.Color, []vg.Point{at, {X: at.X - 2*s.Radius, Y: at.Y + s.Radius}, {X: at.X - 2*s.Radius, Y: at.Y - s.Radius}})
}

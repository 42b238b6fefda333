package main

import (
	"bytes"
	"fmt"
	"html"
	"image/color"
	"io"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
	"gonum.org/v1/plot/vg/vgsvg"
)

// A figure is a picture, with what it says in words.
type figure struct {
	name, title   string
	said          []string
	panels        []*panel // row by row
	rows          int
	width, height vg.Length
}

// A panel is one plot of a figure. What is drawn is kept, in the units of the axes.
type panel struct {
	*plot.Plot
	drawn []series
}

type series struct {
	name   string
	points plotter.XYs
}

// find returns what was drawn under a name.
func (p *panel) find(name string) plotter.XYs {
	for _, s := range p.drawn {
		if s.name == name {
			return s.points
		}
	}
	return nil
}

var (
	black = color.Gray{0}
	dark  = color.Gray{90}
	pale  = color.Gray{215}
	blue  = color.RGBA{0, 60, 130, 255}

	solid, dashed, dotted []vg.Length = nil, dashes(7, 3), dashes(1.5, 2.5)
)

func dashes(list ...vg.Length) []vg.Length { return list }

const textSize = 11

var sans = font.Font{Typeface: "Liberation", Variant: "Sans", Size: textSize}

func newPanel(title, x, y string) *panel {
	p := plot.New()
	p.Title.Text, p.X.Label.Text, p.Y.Label.Text = title, x, y
	p.Title.Padding = 6
	for _, s := range []*text.Style{&p.Title.TextStyle, &p.X.Label.TextStyle, &p.Y.Label.TextStyle, &p.X.Tick.Label, &p.Y.Tick.Label} {
		s.Font = sans
	}
	p.Title.TextStyle.Font.Size, p.Title.TextStyle.Font.Weight = textSize+2, 2
	return &panel{Plot: p}
}

func (p *panel) keep(name string, points plotter.XYs) {
	p.drawn = append(p.drawn, series{name, points})
}

func style(c color.Color, width vg.Length, pattern []vg.Length) draw.LineStyle {
	return draw.LineStyle{Color: c, Width: width, Dashes: pattern}
}

// line draws points joined by a line.
func (p *panel) line(name string, points plotter.XYs, s draw.LineStyle) {
	p.Add(&plotter.Line{XYs: points, LineStyle: s})
	p.keep(name, points)
}

// dots draws a mark at each point.
func (p *panel) dots(name string, points plotter.XYs, shape draw.GlyphDrawer, radius vg.Length, c color.Color) {
	p.Add(&plotter.Scatter{XYs: points, GlyphStyle: draw.GlyphStyle{Color: c, Radius: radius, Shape: shape}})
	p.keep(name, points)
}

// band fills what lies between two lines over the same places.
func (p *panel) band(low, high plotter.XYs, c color.Color) {
	ring := append(plotter.XYs{}, low...)
	for i := range high {
		ring = append(ring, high[len(high)-1-i])
	}
	p.Add(&plotter.Polygon{XYs: []plotter.XYs{ring}, Color: c})
}

// Where a text stands beside its point.
var (
	rightOf = place{text.XLeft, text.YCenter, vg.Point{X: 6}}
	leftOf  = place{text.XRight, text.YCenter, vg.Point{X: -6}}
	above   = place{text.XCenter, text.YBottom, vg.Point{Y: 6}}
	below   = place{text.XCenter, text.YTop, vg.Point{Y: -6}}
)

type place struct {
	x      text.XAlignment
	y      text.YAlignment
	offset vg.Point
}

// label writes a text at a point.
func (p *panel) label(x, y float64, words string, at place, c color.Color) {
	p.Add(&plotter.Labels{
		XYs: plotter.XYs{{X: x, Y: y}}, Labels: []string{words}, Offset: at.offset,
		TextStyle: []text.Style{{Color: c, Font: sans, XAlign: at.x, YAlign: at.y, Handler: p.TextHandler}},
	})
	p.keep("label "+words, plotter.XYs{{X: x, Y: y}})
}

// draw draws all panels.
func (f figure) draw(c draw.Canvas) {
	c.FillPolygon(color.White, []vg.Point{c.Min, {X: c.Max.X, Y: c.Min.Y}, c.Max, {X: c.Min.X, Y: c.Max.Y}})
	columns := len(f.panels) / f.rows
	tiles := draw.Tiles{Rows: f.rows, Cols: columns, PadX: 14, PadY: 14, PadTop: 8, PadBottom: 6, PadLeft: 6, PadRight: 10}
	for i, p := range f.panels {
		p.Draw(tiles.At(c, i%columns, i/columns))
	}
}

// text is what the picture says, for who does not see it.
func (f figure) text() string { return strings.Join(f.said, " ") }

// svg writes the picture as SVG, with title and text for screen readers.
func (f figure) svg(w io.Writer) error {
	c := vgsvg.New(f.width, f.height)
	f.draw(draw.New(c))
	var b bytes.Buffer
	if _, err := c.WriteTo(&b); err != nil {
		return err
	}
	drawn := strings.ReplaceAll(b.String(), "font-family:Liberation Sans", "font-family:Liberation Sans,Arial,Helvetica,sans-serif")
	head, rest, ok := strings.Cut(drawn, "<svg ")
	tag, body, closed := strings.Cut(rest, ">")
	if !ok || !closed {
		return fmt.Errorf("%s: no SVG was drawn", f.name)
	}
	_, err := fmt.Fprintf(w, "%s<svg role=\"img\" aria-labelledby=\"%s-title %s-desc\" %s>\n<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>%s",
		head, f.name, f.name, tag, f.name, html.EscapeString(f.title), f.name, html.EscapeString(f.text()), body)
	return err
}

// png writes the picture as PNG.
func (f figure) png(w io.Writer, dpi int) error {
	c := vgimg.NewWith(vgimg.UseWH(f.width, f.height), vgimg.UseDPI(dpi))
	f.draw(draw.New(c))
	_, err := vgimg.PngCanvas{Canvas: c}.WriteTo(w)
	return err
}

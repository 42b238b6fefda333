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

// A figure is a picture, with what it says in words. Its panels stand one above the other.
type figure struct {
	name, title string
	said        []string
	foot        string // whose data it is, written below the panels
	panels      []*panel
	height      vg.Length // of the panels together
}

// wide is how wide every picture is: that of a phone, on which its texts then have their
// own size.
const wide vg.Length = 375

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

const (
	textSize = 11
	bold     = 3 // as golang.org/x/image/font counts
)

var sans = font.Font{Typeface: "Liberation", Variant: "Sans", Size: textSize}

func newPanel(title, x, y string) *panel {
	p := plot.New()
	p.X.Label.Text, p.Y.Label.Text = x, y
	p.Title.Padding = 6
	for _, s := range []*text.Style{&p.Title.TextStyle, &p.X.Label.TextStyle, &p.Y.Label.TextStyle, &p.X.Tick.Label, &p.Y.Tick.Label} {
		s.Font = sans
	}
	p.Title.TextStyle.Font.Size, p.Title.TextStyle.Font.Weight = textSize+2, bold
	p.Title.Text = strings.Join(folded(title, p.Title.TextStyle, wide-3*rim), "\n")
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

// tall is the height of the picture: of its panels, and of what stands below them.
func (f figure) tall() vg.Length {
	return f.height + lineHeight*vg.Length(len(folded(f.foot, inSans(dark), wide-2*rim))) + rim
}

const (
	lineHeight = textSize * 1.25
	rim        = 6 // that is left free around
)

// draw draws all panels, and the foot below them.
func (f figure) draw(c draw.Canvas) {
	c.FillPolygon(color.White, []vg.Point{c.Min, {X: c.Max.X, Y: c.Min.Y}, c.Max, {X: c.Min.X, Y: c.Max.Y}})
	lines := folded(f.foot, inSans(dark), wide-2*rim)
	for i, line := range lines {
		c.FillText(inSans(dark), vg.Point{X: c.Min.X + rim, Y: c.Min.Y + rim + lineHeight*vg.Length(len(lines)-1-i)}, line)
	}
	c.Min.Y = c.Max.Y - f.height
	tiles := draw.Tiles{Rows: len(f.panels), Cols: 1, PadY: 14, PadTop: 8, PadBottom: rim, PadLeft: rim, PadRight: 10}
	for i, p := range f.panels {
		p.Draw(tiles.At(c, 0, i))
	}
}

func inSans(c color.Color) text.Style {
	return text.Style{Color: c, Font: sans, Handler: plot.DefaultTextHandler}
}

// folded parts words into lines that there is room for.
func folded(words string, s text.Style, room vg.Length) (lines []string) {
	for _, word := range strings.Fields(words) {
		if n := len(lines) - 1; n >= 0 && s.Width(lines[n]+" "+word) <= room {
			lines[n] += " " + word
		} else {
			lines = append(lines, word)
		}
	}
	return lines
}

// text is what the picture says, for who does not see it.
func (f figure) text() string { return strings.Join(f.said, " ") }

// svg writes the picture as SVG, with title and text for screen readers.
func (f figure) svg(w io.Writer) error {
	c := vgsvg.New(wide, f.tall())
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
	c := vgimg.NewWith(vgimg.UseWH(wide, f.tall()), vgimg.UseDPI(dpi))
	f.draw(draw.New(c))
	_, err := vgimg.PngCanvas{Canvas: c}.WriteTo(w)
	return err
}

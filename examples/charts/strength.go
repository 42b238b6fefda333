package main

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/progression/track"
	"example.org/posology/units"
)

const (
	level units.Fraction = 0.9

	weeksOn   = 6 // that are looked ahead
	daysAWeek = 7
)

// strength draws the track of the exercise with the most days: what was read, the level with
// its band, from when on a change was clear, and a look ahead.
func strength(r record.Record) (figure, error) {
	review, err := r.Assess(r.LastDay())
	if err != nil {
		return figure{}, err
	}
	list, err := papers.Strengths(review.Items, review.Screening.Who)
	if err != nil {
		return figure{}, err
	}
	var s papers.Strength
	for _, one := range list {
		if len(one.Readings) > len(s.Readings) {
			s = one
		}
	}
	if s.Track == nil {
		return figure{}, errors.New("no exercise has two days that tell of strength")
	}
	d := course{panel: newPanel(s.Name+": what can be lifted once", "weeks since the first day that tells", "kg, by one equation"), Strength: s}
	f := figure{name: "strength", title: "Strength over the visits: " + s.Name, panels: []*panel{d.panel}, height: 300, foot: noted(r)}
	f.said = append(f.said, f.foot)
	if err := d.past(&f); err != nil {
		return figure{}, err
	}
	if err := d.future(&f); err != nil {
		return figure{}, err
	}
	d.X.Min, d.X.Tick.Marker, d.Y.Tick.Marker = -0.2, every(2), every(1)
	// Below all that is drawn, since the course may go anywhere.
	d.label(0, d.Y.Min, "○ shown on a day; grey: the level at "+level.String(), place{rightOf.x, below.y, vg.Point{Y: -16}}, black)
	return f, d.clear(&f)
}

// A course is a track that is being drawn.
type course struct {
	*panel
	papers.Strength
}

func (d course) week(day units.Day) float64 { return float64(day-d.Readings[0].Day) / daysAWeek }

// ends are the level and its interval on a day, as points.
type ends struct{ level, low, high plotter.XYs }

func (e *ends) add(x float64, b track.Belief, w track.Width) error {
	best, within, err := b.OneRM(level, w)
	if err != nil {
		return err
	}
	low, _ := within.Min()
	high, _ := within.Max()
	e.level = append(e.level, plotter.XY{X: x, Y: best.Kilograms()})
	e.low = append(e.low, plotter.XY{X: x, Y: low.Kilograms()})
	e.high = append(e.high, plotter.XY{X: x, Y: high.Kilograms()})
	return nil
}

func (e ends) last() (level, low, high float64) {
	n := len(e.level) - 1
	return e.level[n].Y, e.low[n].Y, e.high[n].Y
}

func (d course) past(f *figure) error {
	var e ends
	w := d.Track.Width()
	for i := range d.Track.Len() {
		b := d.Track.Smoothed(i)
		if err := e.add(d.week(b.Day), b, w); err != nil {
			return err
		}
	}
	d.band(e.low, e.high, pale)
	d.line("low", e.low, style(dark, 0.7, solid))
	d.line("high", e.high, style(dark, 0.7, solid))
	d.line("level", e.level, style(blue, 2, solid))
	var read plotter.XYs
	for _, r := range d.Readings {
		read = append(read, plotter.XY{X: d.week(r.Day), Y: math.Exp(r.Value)})
	}
	d.dots("read", read, draw.RingGlyph{}, 3.5, black)
	end, low, high := e.last()
	f.said = append(f.said,
		fmt.Sprintf("%d days between %s and %s tell what could be lifted once: %.1f kg on the first, %.1f kg on the last.", len(read), d.Odds.From, d.Odds.To, read[0].Y, read[len(read)-1].Y),
		fmt.Sprintf("The level is %.1f kg at the end, from %.1f to %.1f kg at %v.", end, low, high, level),
		d.Clinician())
	return nil
}

func (d course) future(f *figure) error {
	var e ends
	state, w := d.Track.State(), d.Track.Width()
	last := d.Odds.To
	for day := last; day <= last+weeksOn*daysAWeek; day += daysAWeek {
		ahead, err := state.Forecast(track.StrengthModel(), day)
		if err != nil {
			return err
		}
		if err := e.add(d.week(day), ahead.Belief, w); err != nil {
			return err
		}
	}
	d.line("ahead", e.level, style(blue, 2, dashed))
	d.line("ahead low", e.low, style(dark, 1, dotted))
	d.line("ahead high", e.high, style(dark, 1, dotted))
	level, low, high := e.last()
	x := e.level[len(e.level)-1].X
	d.label(x, level, fmt.Sprintf("%.1f kg", level), rightOf, blue)
	d.label(x, high, fmt.Sprintf("%.1f", high), rightOf, dark)
	d.label(x, low, fmt.Sprintf("%.1f", low), rightOf, dark)
	d.label(e.high[3].X, e.high[3].Y, "ahead, no promise", place{leftOf.x, above.y, vg.Point{X: -4, Y: 4}}, dark)
	d.X.Max = x + 1.1
	f.said = append(f.said, fmt.Sprintf("Ahead, if training goes on as it did, it is %.1f kg after %d weeks, from %.1f to %.1f kg: no aim and no promise.", level, weeksOn, low, high))
	return nil
}

// lowOn is the lower end of the band on a day that was read.
func (d course) lowOn(day units.Day) float64 {
	for _, at := range d.find("low") {
		if at.X == d.week(day) {
			return at.Y
		}
	}
	return 0 // every day that was read has one
}

// clear marks the first visit after which the change since the beginning was clear, with
// what was known then.
func (d course) clear(f *figure) error {
	var t track.Track
	for n := 2; n <= len(d.Readings); n++ {
		if err := t.Run(track.StrengthModel(), track.State{}, d.Readings[:n]); err != nil {
			return err
		}
		if d.Readings[n-1].Day == d.Readings[0].Day {
			continue
		}
		o, err := t.Since(d.Readings[0].Day, papers.StrengthMargin, papers.StrengthLevel)
		if err != nil {
			return err
		}
		word := "clear rise"
		if o.Fell > o.Rose {
			word = "clear fall"
		}
		if max(o.Rose, o.Fell) < papers.StrengthLevel {
			continue
		}
		x, y := d.week(o.To), d.lowOn(o.To)
		d.dots("clear", plotter.XYs{{X: x, Y: y}}, draw.PyramidGlyph{}, 5, black)
		d.label(x, y, word, place{below.x, below.y, vg.Point{Y: -9}}, black)
		f.said = append(f.said, fmt.Sprintf("A %s since the beginning, of more than %v, showed first on %s.", word, papers.StrengthMargin, o.To))
		return nil
	}
	f.said = append(f.said, "No change since the beginning is clear yet.")
	return nil
}

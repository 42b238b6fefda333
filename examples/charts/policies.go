package main

import (
	"bytes"
	"cmp"
	"encoding/csv"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"

	"example.org/posology/units/field"
)

// A curve is how people of one kind go with one kit by one policy.
type curve struct {
	kit, people, policy string
	strength, near      plotter.XYs // by week
}

// readCurves reads what examples/policies -curves writes, and its first lines. Every bad
// field is named by line and column.
func readCurves(data []byte) (list []curve, note string, err error) {
	text := string(data)
	for strings.HasPrefix(text, "#") {
		line, rest, _ := strings.Cut(text, "\n")
		note, text = note+strings.TrimSpace(strings.TrimPrefix(line, "#"))+" ", rest
	}
	rows, err := csv.NewReader(bytes.NewReader([]byte(text))).ReadAll()
	if err != nil {
		return nil, "", field.Bad(nil, "lines of six columns: "+err.Error(), field.ErrSyntax)
	}
	if len(rows) < 2 || strings.Join(rows[0], ",") != "kit,people,policy,week,strength,near" {
		return nil, "", field.New("/1", nil, "kit,people,policy,week,strength,near, and a line or more below", field.ErrSyntax)
	}
	var bad field.Errors
	for i, row := range rows[1:] {
		number := func(column int, low, high float64) float64 {
			x, err := strconv.ParseFloat(row[column], 64)
			if err != nil || !(x >= low && x <= high) {
				bad.Add("", field.New(fmt.Sprintf("/%d/%s", i+2, rows[0][column]), row[column], fmt.Sprintf("a number from %g to %g", low, high), field.ErrOutOfRange))
			}
			return x
		}
		week, strength, near := number(3, 1, 1000), number(4, 1, 10000), number(5, 0, 100)
		at := slices.IndexFunc(list, func(c curve) bool { return c.kit == row[0] && c.people == row[1] && c.policy == row[2] })
		if at < 0 {
			at, list = len(list), append(list, curve{kit: row[0], people: row[1], policy: row[2]})
		}
		list[at].strength = append(list[at].strength, plotter.XY{X: week, Y: strength})
		list[at].near = append(list[at].near, plotter.XY{X: week, Y: near})
	}
	return list, strings.TrimSpace(note), bad.Err()
}

// patterns tell the lines of policies apart.
var patterns = []struct {
	width   vg.Length
	pattern []vg.Length
}{{2.4, nil}, {1.2, dashes(7, 3)}, {1.2, dashes(1.5, 2.5)}, {1.2, dashes(9, 3, 1.5, 3)}, {0.8, nil}}

// measures are what is drawn of each kit.
var measures = []struct {
	title string
	of    func(curve) plotter.XYs
	every every
}{
	{"1RM, % of the start", func(c curve) plotter.XYs { return c.strength }, 10},
	{"% of sets under 2 left", func(c curve) plotter.XYs { return c.near }, 2},
}

func ofKit(list []curve, kit string) []curve {
	return slices.DeleteFunc(slices.Clone(list), func(c curve) bool { return c.kit != kit })
}

// compared draws strength, and nearness to failure beside it, by kit: of the first kind of
// people in the table.
func compared(data []byte) (figure, error) {
	list, note, err := readCurves(data)
	if err != nil {
		return figure{}, err
	}
	kind := list[0].people
	list = slices.DeleteFunc(list, func(c curve) bool { return c.people != kind })
	f := figure{name: "policies", title: "Policies compared on invented people (" + kind + "), by kit", said: []string{note}, foot: note}
	var kits, policies []string
	for _, c := range list {
		if !slices.Contains(kits, c.kit) {
			kits = append(kits, c.kit)
		}
		if !slices.Contains(policies, c.policy) {
			policies = append(policies, c.policy)
		}
	}
	if len(policies) > len(patterns) {
		return figure{}, field.New("/policy", len(policies), fmt.Sprintf("at most %d", len(patterns)), field.ErrOutOfRange)
	}
	made := make([][]*panel, len(measures)) // by measure, one for each kit
	for i, m := range measures {
		for _, kit := range kits {
			p := newPanel(kit, "week", m.title)
			p.Y.Tick.Marker = m.every
			for _, c := range ofKit(list, kit) {
				s := patterns[slices.Index(policies, c.policy)]
				p.line(c.policy, m.of(c), style(black, s.width, s.pattern))
			}
			made[i] = append(made[i], p)
		}
		even(made[i])
	}
	for k, kit := range kits {
		for i, m := range measures {
			made[i][k].ends(ofKit(list, kit), m.of)
			f.panels = append(f.panels, made[i][k])
		}
	}
	for _, c := range list {
		n := len(c.strength) - 1
		f.said = append(f.said, fmt.Sprintf("%s, %s: after %g weeks %.1f %% of the strength at the start; %.1f %% of the sets ended under two left.", c.kit, c.policy, c.strength[n].X, c.strength[n].Y, c.near[n].Y))
	}
	f.said = append(f.said, "What gains a little more comes nearer to failure. No policy but the module's own is for anybody to follow.")
	f.height = vg.Length(20 + 180*len(f.panels))
	return f, nil
}

// even gives panels of one measure one scale.
func even(row []*panel) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range row {
		low, high = min(low, p.Y.Min), max(high, p.Y.Max)
	}
	for _, p := range row {
		p.Y.Min, p.Y.Max, p.X.Min = low, high, 0
	}
}

// ends writes the names of the lines beside their ends, moved apart so far that they can be
// read, each with a thin line to its own.
func (p *panel) ends(lines []curve, of func(curve) plotter.XYs) {
	last := func(c curve) plotter.XY { list := of(c); return list[len(list)-1] }
	sorted := slices.Clone(lines)
	slices.SortFunc(sorted, func(a, b curve) int { return cmp.Compare(last(a).Y, last(b).Y) })
	apart := (p.Y.Max - p.Y.Min) * 0.12
	places := make([]float64, len(sorted))
	for i, c := range sorted {
		places[i] = last(c).Y
		if i > 0 {
			places[i] = max(places[i], places[i-1]+apart)
		}
	}
	for i := len(places) - 1; i >= 0; i-- { // none above the top
		most := p.Y.Max - apart*float64(len(places)-1-i)
		places[i] = min(places[i], most)
	}
	end := 0.0
	for i, c := range sorted {
		at := last(c)
		end = max(end, at.X)
		p.line("to "+c.policy, plotter.XYs{at, {X: at.X * 1.08, Y: places[i]}}, style(dark, 0.5, solid))
		p.label(at.X*1.08, places[i], c.policy, place{rightOf.x, rightOf.y, vg.Point{X: 2}}, black)
	}
	p.X.Max = end * 1.7
	p.X.Tick.Marker = until{every(8), end}
}

// until leaves out the marks beyond an end.
type until struct {
	every
	end float64
}

// Ticks returns the marks from min to the end.
func (u until) Ticks(min, max float64) []plot.Tick { return u.every.Ticks(min, math.Min(max, u.end)) }

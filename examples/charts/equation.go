package main

import (
	"bytes"
	"cmp"
	"encoding/csv"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"

	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A measured set was done to failure with a share of a 1RM that was measured.
type measured struct {
	share float64
	reps  int
}

// readBench reads the open table of bench presses: loads and repetitions at three shares of
// the 1RM, in one visit and in three. Gaps are passed over, other bad fields named.
func readBench(data []byte) ([]measured, error) {
	r := csv.NewReader(bytes.NewReader(data))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil || len(rows) < 2 {
		return nil, field.Bad(nil, fmt.Sprintf("a table with names in its first line (%v)", err), field.ErrSyntax)
	}
	var list []measured
	var bad field.Errors
	for i, row := range rows[1:] {
		number := func(name string) float64 {
			at := slices.Index(rows[0], name)
			if at < 0 {
				bad.Add("", field.New("/1/"+name, nil, "such a column", field.ErrMissing))
				return 0
			}
			x, err := strconv.ParseFloat(row[at], 64)
			if row[at] != "" && (err != nil || !(x > 0 && x <= 1000)) {
				bad.Add("", field.New(fmt.Sprintf("/%d/%s", i+2, name), row[at], "above 0 up to 1000", field.ErrOutOfRange))
			}
			return x
		}
		most := number("1RM_true(kg)")
		for _, percent := range []string{"90", "80", "70"} {
			load := number("load" + percent + "(n)")
			for _, visits := range []string{"SV", "MV"} {
				if reps := number(visits + "_reps" + percent + "(n)"); reps > 0 && most > 0 && load > 0 {
					list = append(list, measured{load / most, int(reps)})
				}
			}
		}
	}
	return list, bad.Err()
}

// Equations that are drawn, with where their names stand.
var shown = []struct {
	formula onerm.Formula
	name    string
	width   vg.Length
	pattern []vg.Length
	at      float64 // repetitions
	place   place
}{
	{onerm.OConner, "O’Conner", 2.4, solid, 20.5, rightOf},
	{onerm.Epley, "Epley", 1.3, dashed, 20.5, rightOf},
	{onerm.Brzycki, "Brzycki", 1.3, dotted, 20.5, rightOf},
}

// equation draws published equations over measured sets, larger where several meet.
func equation(data []byte) (figure, error) {
	sets, err := readBench(data)
	if err != nil {
		return figure{}, err
	}
	p := newPanel("Equations against open data: bench press to failure", "repetitions to failure", "load, % of the measured 1RM")
	f := figure{name: "equation", title: "Load–repetition equations against open data", panels: []*panel{p}, height: 300}
	f.foot = fmt.Sprintf("%d sets to failure of the bench press by trained adults of 22 to 33 years, none an older adult or with a dumbbell.", len(sets))
	f.said = append(f.said, f.foot)
	meeting := map[plotter.XY]plotter.XYs{} // by repetitions and whole percents
	for _, s := range sets {
		at := plotter.XY{X: float64(s.reps), Y: 100 * s.share}
		near := plotter.XY{X: at.X, Y: math.Round(at.Y)}
		meeting[near] = append(meeting[near], at)
	}
	for _, s := range slices.SortedFunc(maps.Values(meeting), byPlace) {
		p.dots("sets", s[:1], draw.RingGlyph{}, vg.Length(2.2*math.Sqrt(float64(len(s)))), black)
	}
	p.label(12.3, 90, "○ sets; larger where several meet", rightOf, black)
	for _, e := range shown {
		var curve plotter.XYs
		for reps := 1.0; reps <= e.at; reps += 0.5 {
			share, err := e.formula.Fraction(reps)
			if err != nil {
				return figure{}, err
			}
			curve = append(curve, plotter.XY{X: reps, Y: 100 * float64(share)})
		}
		p.line(e.name, curve, style(blue, e.width, e.pattern))
		end := curve[len(curve)-1]
		p.label(end.X, end.Y, e.name, e.place, blue)
		off, n := root(sets, e.formula)
		f.said = append(f.said, fmt.Sprintf("%s: 1RM wrong by %.1f %% (root mean square) in %d sets up to 10 repetitions.", e.name, off, n))
	}
	p.X.Min, p.X.Max, p.Y.Min, p.Y.Max = 0, 25.5, 45, 102
	p.X.Tick.Marker, p.Y.Tick.Marker = until{every(5), 21}, every(10)
	return f, nil
}

func byPlace(a, b plotter.XYs) int {
	return cmp.Or(cmp.Compare(a[0].X, b[0].X), cmp.Compare(a[0].Y, b[0].Y))
}

// root is the root mean square error of the 1RM in percent, up to 10 repetitions.
func root(sets []measured, f onerm.Formula) (float64, int) {
	sum, n := 0.0, 0
	for _, s := range sets {
		if s.reps > 10 {
			continue
		}
		one, err := f.OneRM(100*units.Kilogram, float64(s.reps))
		if err != nil {
			continue
		}
		miss := one.Kilograms()*s.share/100 - 1
		sum += miss * miss
		n++
	}
	return 100 * math.Sqrt(sum/float64(n)), n
}

package main

import (
	"fmt"
	"strings"
	"testing"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/recorder"

	"example.org/posology/dose/equipment"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
)

// A word is a text where it stands.
type word struct {
	text string
	box  vg.Rectangle
}

// words are the level texts of a picture, at its own size.
func words(f figure) (list []word) {
	var c recorder.Canvas
	f.draw(draw.NewCanvas(&c, wide, f.tall()))
	turned, stack := false, []bool{}
	for _, a := range c.Actions {
		switch a := a.(type) {
		case *recorder.Push:
			stack = append(stack, turned)
		case *recorder.Pop:
			turned, stack = stack[len(stack)-1], stack[:len(stack)-1]
		case *recorder.Rotate:
			turned = turned || a.Angle != 0
		case *recorder.FillString:
			if turned {
				continue
			}
			font := a.Font
			font.Size = a.Size
			wide := text.Style{Font: font, Handler: plot.DefaultTextHandler}.Width(a.String)
			list = append(list, word{a.String, vg.Rectangle{Min: a.Point, Max: a.Point.Add(vg.Point{X: wide, Y: a.Size * 0.7})}})
		}
	}
	return list
}

// No text runs into another, or over the edge, and none is below 11 points: on a phone of
// 375 points a picture needs no shrinking.
func TestLabelsStandApart(t *testing.T) {
	if wide > 375 {
		t.Errorf("%v points wide", wide)
	}
	for name, f := range figures(t) {
		standApart(t, name, f)
	}
}

func standApart(t *testing.T, name string, f figure) {
	t.Helper()
	all := words(f)
	if len(all) < 10 {
		t.Errorf("%s: %d texts", name, len(all))
	}
	for i, a := range all {
		if a.box.Min.X < 0 || a.box.Min.Y < 0 || a.box.Max.X > wide || a.box.Max.Y > f.tall() {
			t.Errorf("%s: %q runs over the edge: %v", name, a.text, a.box)
		}
		if a.box.Max.Y-a.box.Min.Y < 0.7*textSize-0.01 {
			t.Errorf("%s: %q is small", name, a.text)
		}
		for _, b := range all[i+1:] {
			if a.box.Min.X < b.box.Max.X && b.box.Min.X < a.box.Max.X && a.box.Min.Y < b.box.Max.Y && b.box.Min.Y < a.box.Max.Y {
				t.Errorf("%s: %q and %q meet", name, a.text, b.text)
			}
		}
	}
}

// Every picture says on its face whose data it is, for who gets the picture alone; one of a
// record without a note still says what it is not.
func TestWhose(t *testing.T) {
	for name, want := range map[string]string{
		"strength": "an invented case", "ladder": "an invented case", "sets": "an invented case", "policies": "Invented people", "equation": "none an older adult",
	} {
		var face strings.Builder
		for _, w := range words(figures(t)[name]) {
			face.WriteString(w.text + " ")
		}
		if !strings.Contains(face.String(), want) {
			t.Errorf("%s: no %q in %s", name, want, &face)
		}
		if record := want == "an invented case"; record != strings.Contains(face.String(), "No medical device") {
			t.Errorf("%s: %s", name, &face)
		}
	}
	two := figure{foot: strings.Repeat("word ", 30), height: 50}
	for i, w := range words(two) { // from the top, the last on the lower rim
		if off := w.box.Min.Y - rim - lineHeight*vg.Length(len(words(two))-1-i); off < 0 || off > 2 {
			t.Errorf("line %d is off by %v", i, off)
		}
	}
	if got := noted(record.Record{}); got != "No medical device: a licensed clinician decides." {
		t.Errorf("%q", got)
	}
}

// In a rack of many weights the marks stand apart, and so do the words.
func TestLargeRack(t *testing.T) {
	var kit equipment.Kit
	for kg := range 20 {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Must(units.ParseMarked(fmt.Sprintf("%d kg", kg+1))), Count: 2})
	}
	r := programtest.Decoded(t, demo.HomeReview())
	r.Kit = kit
	f, err := ladder(r)
	if err != nil {
		t.Fatal(err)
	}
	standApart(t, "a large rack", f)
	rungs, err := rungsOf(r)
	if err != nil {
		t.Fatal(err)
	}
	var c recorder.Canvas
	all := draw.NewCanvas(&c, wide, f.tall())
	data := f.panels[0].DataCanvas(all)
	x, _ := f.panels[0].Transforms(&data)
	if size, step := sizeOf(rungs), x(2)-x(1); 2*size > step || size < 2 {
		t.Errorf("marks of %v, %v apart", 2*size, step)
	}
	if size := sizeOf([]rung{{weights: []float64{5}}}); size != 7 {
		t.Errorf("a mark alone: %v", size)
	}
	if got := listed([]float64{4.5359237, 9.0718474}); got != "4.536 and 9.072" {
		t.Errorf("pounds: %s", got)
	}
}

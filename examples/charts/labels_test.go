package main

import (
	"testing"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/recorder"
)

// A word is a text where it stands.
type word struct {
	text string
	box  vg.Rectangle
}

// words are the level texts of a picture, at its own size.
func words(f figure) (list []word) {
	var c recorder.Canvas
	f.draw(draw.NewCanvas(&c, f.width, f.height))
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

// No text runs into another, or over the edge, and none is below 11 points.
func TestLabelsStandApart(t *testing.T) {
	for name, f := range figures(t) {
		all := words(f)
		if len(all) < 10 {
			t.Errorf("%s: %d texts", name, len(all))
		}
		for i, a := range all {
			if a.box.Min.X < 0 || a.box.Min.Y < 0 || a.box.Max.X > f.width || a.box.Max.Y > f.height {
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
}

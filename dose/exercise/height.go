package exercise

import (
	"cmp"
	"fmt"
	"slices"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// factHeights says in which order heights follow each other.
const factHeights evidence.FactID = "exercise.height-order"

// byHeight are the exercises that heights make harder: of a seat the lower, of a step
// the higher.
var byHeight = map[ID]Thing{"sit-to-stand": Chair, "step-up": LowStep, "lateral-step-up": LowStep, "step-down": LowStep}

// WithHeights returns a catalogue in which standing up has a harder variant for each
// lower seat, and stepping for each higher step, between the exercise and what stood
// above it: "sit-to-stand-42" from a seat of 42 cm. Heights are in whole centimetres, in
// any order. The exercise itself is that of the highest seat and of the lowest step, and
// what stands above still leads down to it. Which height suits whom no source that was
// read states: only their order is used. Those that the catalogue has already stay as
// they are. A height that stands twice is reported as [Catalogue.With] reports it.
func (c Catalogue) WithHeights(seats, steps []int) (Catalogue, error) {
	hardest := map[Thing][]int{Chair: slices.Clone(seats), LowStep: slices.Clone(steps)}
	slices.SortFunc(hardest[Chair], func(a, b int) int { return cmp.Compare(b, a) })
	slices.Sort(hardest[LowStep])
	n := Catalogue{listed: slices.Clone(c.listed)}
	var added []Exercise
	for i, e := range n.listed {
		of, some := byHeight[e.ID]
		heights := hardest[of]
		if !some || len(heights) < 2 || c.at(raised(e.ID, heights[1])) != nil {
			continue
		}
		rungs := e.atEach(of, heights[1:])
		n.listed[i].Harder = rungs[0].ID
		added = append(added, rungs...)
	}
	if len(added) == 0 {
		return c, nil
	}
	return Catalogue{}.With(append(n.listed, added...)...)
}

// atEach returns e at each of the heights, the easiest first.
func (e Exercise) atEach(of Thing, heights []int) []Exercise {
	list := make([]Exercise, len(heights))
	for i, cm := range heights {
		h := e.clone()
		h.ID, h.Name, h.Aliases, h.Height = raised(e.ID, cm), fmt.Sprintf("%s, %d cm", e.Name, cm), nil, cm
		h.Demands = e.Demands.Union(body.DemandSet(body.DeepKneeBend))
		h.Easier = e.ID
		if i > 0 {
			h.Easier, list[i-1].Harder = list[i-1].ID, h.ID
		}
		list[i] = h
	}
	return list
}

func raised(id ID, cm int) ID { return ID(fmt.Sprintf("%s-%d", id, cm)) }

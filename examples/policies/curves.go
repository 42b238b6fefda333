package main

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"

	"example.org/posology/progression/simulate"
	"example.org/posology/units"
)

// writeCurves writes, week by week, how much of what they began with people can lift once,
// and how near to failure they came until then.
func (o order) writeCurves(w io.Writer) error {
	_, err := fmt.Fprintf(w, "# Invented people, %d of each kind; nobody did any of it. Written by examples/policies -curves.\n"+
		"# strength: mean true 1RM at the end of the week, %% of that before the first visit. near: of all sets until then, %% that truly ended under two left.\n", o.people)
	if err != nil {
		return err
	}
	table := csv.NewWriter(w)
	table.Write([]string{"kit", "people", "policy", "week", "strength", "near"}) // Flush tells of an error
	for _, k := range o.kits {
		for _, p := range o.populations {
			for _, way := range o.policies {
				if way.bound {
					continue
				}
				points, err := o.curve(scene{kit: k, weeks: o.weeks}, p, way)
				if err != nil {
					return err
				}
				for i, c := range points {
					table.Write([]string{k.name, p.name, way.name, strconv.Itoa(i + 1), decimal(100 * c.strength / float64(o.people)), decimal(100 * float64(c.near) / float64(max(1, c.sets)))})
				}
			}
		}
	}
	table.Flush()
	return table.Error()
}

func decimal(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

// A curvePoint is the sum over people at the end of a week.
type curvePoint struct {
	strength   float64 // of the beginning
	sets, near int     // until then
}

// curve returns the sums of each week. Who is sent elsewhere stays as they were.
func (o order) curve(s scene, p population, way policy) ([]curvePoint, error) {
	points := make([]curvePoint, s.weeks)
	for i := range o.people {
		_, _, lived, err := s.live(uint64(i), p, way.choose)
		if err != nil {
			return nil, err
		}
		own, first := curvePoint{strength: 1}, units.Mass(0)
		if len(lived) > 0 {
			first = lived[0].Usual
		}
		for week := range points {
			for len(lived) > 0 && lived[0].Week <= week+1 {
				own.count(lived[0], first)
				lived = lived[1:]
			}
			points[week].strength += own.strength
			points[week].sets += own.sets
			points[week].near += own.near
		}
	}
	return points, nil
}

// count adds a planned day of somebody who began with so much.
func (c *curvePoint) count(day simulate.Lived, first units.Mass) {
	if day.Usual > 0 {
		c.strength = day.Usual.Kilograms() / first.Kilograms()
	}
	for _, set := range day.Sets {
		if set.Search {
			continue
		}
		c.sets++
		if set.Left < nearLeft {
			c.near++
		}
	}
}

const nearLeft = 2 // truly left: fewer are near to failure

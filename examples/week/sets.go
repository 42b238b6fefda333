package main

import (
	"fmt"
	"strings"

	"example.org/posology/dose/volume"
)

// printSets prints the weekly sets of each muscle, counted in three ways.
func printSets(s sheet, t volume.Totals) {
	s.Heading("Weekly sets of each muscle, prescribed")
	s.line("%-26s%10s%12s%10s", "muscle", "direct", "fractional", "total")
	for _, m := range t.Muscles {
		line := fmt.Sprintf("%-26s", plain(m.Muscle.String()))
		for _, c := range []struct {
			by    volume.Convention
			width int
		}{{volume.DirectSets, 10}, {volume.FractionalSets, 12}, {volume.TotalSets, 10}} {
			line += fmt.Sprintf("%*g", c.width, m.Sets(c.by).Count())
		}
		s.line("%s", line)
	}
	s.line("")
	s.Say("", "Three ways to count the same sets. A set counts 1 for a muscle that does most of the work. For one that helps it counts 0 (direct), a half (fractional) or 1 (total). Numbers of different columns cannot be compared.")
	s.line("")
	var idle []string
	for _, m := range t.Untrained() {
		idle = append(idle, plain(m.String()))
	}
	if len(idle) > 0 {
		s.Say("No set for: ", strings.Join(idle, ", ")+".")
	}
}

package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/rota"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// group plans for a class.
func group(file string, asJSON bool, w io.Writer) error {
	data, err := command.Case(file, demo.Class())
	if err != nil {
		return err
	}
	var c classCase
	if err := field.Decode(data, &c, field.Strict); err != nil {
		return err
	}
	result, err := classed(c)
	if err != nil {
		return err
	}
	if asJSON {
		return command.JSON(w, result)
	}
	return printClass(w, c, result)
}

func printClass(w io.Writer, c classCase, r classResult) error {
	s, err := newSheet(w)
	if err != nil {
		return err
	}
	s.line("A CLASS THAT SHARES ITS WEIGHTS")
	s.Note(r.Note)
	s.line("\n%s", r.Class)
	s.Say("On the rack: ", rack(c.Kit))
	for _, m := range r.Members {
		if m.Stop != nil {
			s.Heading(m.Client + ": not for now")
			s.because("- ", append(m.Stop.Free, m.Stop.Constraint))
		}
	}
	printGiven(s, r)
	if r.Rota == nil {
		return s.Close()
	}
	printFit(s, r, c.Minutes)
	printRota(s, *r.Rota)
	printAdvice(s, r)
	return s.Close()
}

// printGiven prints what others have asked of a member, where somebody has.
func printGiven(s sheet, r classResult) {
	first := true
	for _, m := range r.Members {
		for _, text := range page.Restrictions(m.Profile) {
			if first {
				s.Heading("Limits set by others")
				first = false
			}
			s.Say("- "+m.Client+": ", text)
		}
	}
}

func rack(k equipment.Kit) string {
	var parts []string
	for _, d := range k.Dumbbells {
		parts = append(parts, fmt.Sprintf("%d × %s", d.Count, d.Mass))
	}
	if len(k.Handles)+len(k.Bars)+len(k.Plates)+len(k.Stacks) > 0 {
		parts = append(parts, "handles, bars, plates or stacks")
	}
	return strings.Join(parts, ", ") + "."
}

// printFit prints what gave, so that the class fits its minutes.
func printFit(s sheet, r classResult, minutes int) {
	f := r.Fitted
	if f == nil {
		return
	}
	s.Heading("What gives, so that it fits")
	s.line("The class has %d minutes, %d of them to warm up. All of it would take %d.", minutes, r.WarmUp, r.Whole+r.WarmUp)
	if f.Sets == f.Whole && len(f.LeftOut) == 0 {
		s.line("- nothing has to give.")
	}
	if f.Sets < f.Whole {
		s.line("- sets: at most %d of an exercise, instead of %d", f.Sets, f.Whole)
	}
	for _, client := range f.LeftOut {
		var names []string
		for _, turn := range client.Turns {
			names = append(names, plain(string(turn.Exercise)))
		}
		s.Say("- ", fmt.Sprintf("%s leaves out: %s", client.Name, strings.Join(names, ", ")))
	}
	s.because("- ", f.Reasons)
}

// printRota prints a line for each member, a column for each turn.
func printRota(s sheet, t rota.Timetable) {
	s.Heading("Who does what, and when")
	s.line("%d turns of %s, %s to change: %d minutes without the warm-up.", t.Slots, minutes(t.Seconds), minutes(t.Change), t.Minutes)
	key := exercises(t)
	for from := 1; from <= t.Slots; from += turnsAcross {
		printTurns(s, t, key, from, min(from+turnsAcross-1, t.Slots))
	}
	s.line("")
	for i, ex := range key {
		s.line("  %-6s %s", mark(i), plain(string(ex)))
	}
	s.line("  4      one weight of 4 kg")
	s.line("  2×4    4 kg in each hand")
	s.line("  +      shared with another in this turn")
	s.line("  wait   the weight is in use")
	s.line("")
	s.because("- ", t.Reasons)
}

const turnsAcross = 10

func printTurns(s sheet, t rota.Timetable, key []exercise.ID, from, to int) {
	line := fmt.Sprintf("\n%-12s", "turn")
	for slot := from; slot <= to; slot++ {
		line += fmt.Sprintf("%-8d", slot)
	}
	s.line("%s", line)
	for _, c := range t.Clients {
		name, _, _ := strings.Cut(c.Name, ",")
		line := fmt.Sprintf("%-12.11s", name)
		for slot := from; slot <= to; slot++ {
			line += fmt.Sprintf("%-8s", doing(c, slot, key))
		}
		s.line("%s", line)
	}
}

// exercises lists those of the rota in the order of the first client's turns
// and then of others.
func exercises(t rota.Timetable) []exercise.ID {
	var list []exercise.ID
	for _, c := range t.Clients {
		for _, turn := range c.Turns {
			if !slices.Contains(list, turn.Exercise) {
				list = append(list, turn.Exercise)
			}
		}
	}
	return list
}

func minutes(seconds int) string { return fmt.Sprintf("%d:%02d min", seconds/60, seconds%60) }

// mark is the letter of an exercise in the rota.
func mark(i int) string { return strings.ToLower(letter(i)) }

// doing says what a member does in a slot, such as "b 2×4".
func doing(c rota.ClientTurns, slot int, key []exercise.ID) string {
	for _, turn := range c.Turns {
		if turn.Slot != slot {
			continue
		}
		text := mark(slices.Index(key, turn.Exercise))
		each := strings.TrimSuffix(turn.Load.Each().String(), " kg")
		switch {
		case turn.Load.Each() == 0:
			return text
		case turn.Load.Hold() == body.OneEachHand:
			text += " 2×" + each
		default:
			text += " " + each
		}
		if turn.With != "" {
			text += " +"
		}
		return text
	}
	if slices.Contains(c.Waits, slot) {
		return "wait"
	}
	return ""
}

// shownAdvice is how many purchases are printed; all are in the JSON.
const shownAdvice = 3

func printAdvice(s sheet, r classResult) {
	s.Heading("What to buy first")
	if r.Rota.Waiting > 0 {
		s.line("So that fewer wait (now %d turns of waiting):", r.Rota.Waiting)
		for _, a := range r.Advice[:min(shownAdvice, len(r.Advice))] {
			if a.Removed > 0 || a.Saved > 0 {
				s.Say("- ", fmt.Sprintf("%s: %d fewer, %d left, in %d turns instead of %d (%s)", a.Purchase, a.Removed, a.Waiting, a.Slots, r.Rota.Slots, a.Proof))
			}
		}
		s.line("")
	}
	s.Say("", "So that next weights are nearer, in sizes that are commonly sold (first weights, of which no strength is known, are soon outgrown and count for nothing):")
	for _, b := range r.Buy[:min(shownAdvice, len(r.Buy))] {
		s.Say("- ", b.Purchase.String())
		s.Each("    ", b.steps())
	}
	if len(r.Buy) == 0 {
		s.line("- no size brings one nearer.")
	}
}

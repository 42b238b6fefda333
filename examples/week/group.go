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
	s.line("")
	s.line("%s", r.Class)
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
	printRota(s, *r.Rota, c.Minutes)
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

// printRota prints a line for each member, a column for each turn.
func printRota(s sheet, t rota.Timetable, limit int) {
	s.Heading("Who does what, and when")
	s.line("%d turns of %s, %s to change: %d minutes without the warm-up.", t.Slots, minutes(t.Seconds), minutes(t.Change), t.Minutes)
	if limit > 0 && t.Minutes > limit {
		s.line("That is longer than the %d minutes that the class has, warm-up included.", limit)
	}
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
			return text + " 2×" + each
		}
		return text + " " + each
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
	s.line("So that fewer wait (now %d turns of waiting):", r.Rota.Waiting)
	helps := 0
	for _, a := range r.Advice {
		if helps == shownAdvice || a.Removed <= 0 && a.Saved <= 0 {
			break
		}
		helps++
		s.Say("- ", fmt.Sprintf("%s: %d fewer, %d left, in %d turns instead of %d (%s)", a.Purchase, a.Removed, a.Waiting, a.Slots, r.Rota.Slots, a.Proof))
	}
	if helps == 0 {
		s.line("- no single purchase changes it.")
	}
	s.line("")
	s.Say("", fmt.Sprintf("So that the next weight is near enough (steps within the largest of %s): too far now in %s.", r.StepRow, count(len(r.Stalls), "exercise")))
	for _, text := range stalled(r.Stalls) {
		s.line("- %s", text)
	}
	helps = 0
	for _, a := range r.Steps {
		if helps == shownAdvice || len(a.Removes) == 0 {
			break
		}
		helps++
		s.line("- buy %s: ends %d of them", a.Purchase, len(a.Removes))
	}
	if helps == 0 {
		s.line("- no single purchase ends one of them.")
	}
}

// stalled lists the stalls, those alike in one line with how many there are.
func stalled(list []stall) []string {
	var texts []string
	number := map[string]int{}
	for _, stall := range list {
		text := fmt.Sprintf("%s at %s", stall.Exercise, stall.Step.Present)
		if number[text] == 0 {
			texts = append(texts, text)
		}
		number[text]++
	}
	slices.Sort(texts)
	for i, text := range texts {
		texts[i] = fmt.Sprintf("%s: %d of the class", text, number[text])
	}
	return texts
}

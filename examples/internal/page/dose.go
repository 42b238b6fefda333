package page

import (
	"fmt"
	"strconv"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/strength"
	"example.org/posology/units/body"
)

// Sets says sets and repetitions: "2 sets of 10 on each side".
func Sets(item dose.Prescription) string {
	sets := item.Sets
	if item.Feel != nil {
		sets-- // the last one
	}
	text := Counted(sets, "set") + " of " + Counts(item)
	if item.Measure != exercise.Repetitions {
		text += " " + item.Measure.String()
	}
	switch {
	case item.OneSided && item.Side == body.Both:
		text += " on each side"
	case item.OneSided:
		text += fmt.Sprintf(", %s side only", item.Side)
	}
	return text
}

// Amount says the same with the tempo.
func Amount(item dose.Prescription) string {
	text := Sets(item)
	if item.Measure == exercise.Repetitions {
		pause := ""
		if item.Tempo.Pausing > 0 {
			pause = fmt.Sprintf(", %g seconds of pause", item.Tempo.Pausing)
		}
		up := fmt.Sprintf("%g seconds up", item.Tempo.Lifting)
		if item.Tempo.Fast {
			up = "up fast"
		}
		text += fmt.Sprintf(", %g seconds down%s and %s", item.Tempo.Lowering, pause, up)
	}
	return text
}

// Felt says what one of the sets is to feel: "at most 5 with 10 kg dumbbell in one
// hand, with somebody beside you".
func Felt(item dose.Prescription) string {
	return fmt.Sprintf("at most %d with %s, with somebody beside you", item.Feel.Count, item.Feel.Load)
}

// Counts says how many repetitions, up to the most that the chance allows.
func Counts(item dose.Prescription) string {
	if low, _ := item.Span.Min(); item.Chance != (strength.Chance{}) && low < item.Count {
		return fmt.Sprintf("%d to %d", low, item.Count)
	}
	return strconv.Itoa(item.Count)
}

// Dose prints for the file what an exercise is done with, below its name and amount.
func (p *Paper) Dose(item dose.Prescription) {
	if item.Mode != dose.WithoutLoad {
		p.Say("   load     ", fmt.Sprintf("%s (%s in all); %s", item.Load, item.Load.Total(), item.Mode))
	}
	if item.Share > 0 {
		p.Say("   share    ", fmt.Sprintf("%s of what is known of strength", item.Share))
	}
	if !item.Reserve.IsZero() {
		p.Say("   reserve  ", item.Reserve.String())
	}
	p.Say("   rest     ", fmt.Sprintf("%s seconds; build to %s, %s %s a set", item.Rest, Counted(item.BuildTo, "set"), item.Span, item.Measure))
}

package page

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// ClientItem prints what a client does of one exercise: first what changes, and at
// the end what to heed, but for what was said for all.
func (p *Paper) ClientItem(n int, item dose.Prescription, changes []evidence.Reason, said []string) {
	p.Line("%d. %s", n, strings.ToUpper(item.Name))
	first := p.ClientTexts(changes)
	p.Each("   ", first, said...)
	if item.Mode != dose.WithoutLoad {
		p.Say("   Take ", item.Load.String())
	}
	p.Say("   Do   ", Amount(item)+".")
	if item.Feel != nil {
		p.Say("   Last ", Felt(item)+".")
	}
	if ex, ok := exerciseOf(item); ok {
		p.Say("   How  ", how(ex, item))
	}
	p.Say("   Stop ", whenToStop(item))
	if rest, ok := item.Rest.Min(); ok && item.Sets > 1 {
		p.Say("   Rest ", fmt.Sprintf("at least %d seconds before the next set.", rest))
	}
	p.Each("   ", p.ClientTexts(slices.Concat(item.Cautions, item.Reasons)), slices.Concat(first, said)...)
	p.Line("")
}

// exerciseOf finds the exercise, or the one that it is of where a band or a height is named
// behind it.
func exerciseOf(item dose.Prescription) (exercise.Exercise, bool) {
	id := string(item.Exercise)
	for at := len(id); at > 0; at = strings.LastIndexByte(id[:at], '-') {
		if ex, ok := exercise.Standard().Get(exercise.ID(id[:at])); ok && strings.HasPrefix(item.Name, ex.Name) {
			return ex, true
		}
	}
	return exercise.Exercise{}, false
}

// oneSide takes out of an explanation what is for both sides.
var oneSide = strings.NewReplacer(" Do one side, then the other.", "", "turn, change hands and walk back", "turn and walk back", " and change sides", "")

func how(ex exercise.Exercise, item dose.Prescription) string {
	if item.OneSided && item.Side != body.Both {
		return oneSide.Replace(ex.How)
	}
	return ex.How
}

// Amount says sets and repetitions: "2 sets of 10 on each side".
func Amount(item dose.Prescription) string {
	sets := item.Sets
	if item.Feel != nil {
		sets-- // the last one
	}
	text := fmt.Sprintf("%d sets of %s", sets, Counts(item))
	if sets == 1 {
		text = "1 set of " + Counts(item)
	}
	if item.Measure != exercise.Repetitions {
		text += " " + item.Measure.String()
	}
	switch {
	case item.OneSided && item.Side == body.Both:
		text += " on each side"
	case item.OneSided:
		text += fmt.Sprintf(", %s side only", item.Side)
	}
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
	if low, _ := item.Span.Min(); item.Chance != (onerm.Chance{}) && low < item.Count {
		return fmt.Sprintf("%d to %d", low, item.Count)
	}
	return strconv.Itoa(item.Count)
}

// whenToStop says to a client when a set ends.
func whenToStop(item dose.Prescription) string {
	switch {
	case item.Measure != exercise.Repetitions:
		return "before it gets hard to keep the position."
	case !item.Reserve.Countable:
		return fmt.Sprintf("while it still feels clearly easy. It is fine to do fewer than %d.", item.Count)
	}
	return fmt.Sprintf("when you could do only about %v more. It is fine to do fewer than %d.", item.Reserve.Least, item.Count)
}

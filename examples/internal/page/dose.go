package page

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/units/body"
)

// Amount says sets and repetitions: "2 sets of 10 on each side".
func Amount(item dose.Prescription) string {
	text := fmt.Sprintf("%d sets of %d", item.Sets, item.Count)
	if item.Sets == 1 {
		text = fmt.Sprintf("1 set of %d", item.Count)
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
		text += fmt.Sprintf(", %g seconds down%s and %g seconds up", item.Tempo.Lowering, pause, item.Tempo.Lifting)
	}
	return text
}

package page

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
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
	if item.OneSided {
		text += " on each side"
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

// WhenToStop says to a client when a set ends.
func WhenToStop(item dose.Prescription) string {
	switch {
	case item.Measure != exercise.Repetitions:
		return "before it gets hard to keep the position."
	case !item.Reserve.Countable:
		return fmt.Sprintf("while it still feels clearly easy. It is fine to do fewer than %d.", item.Count)
	}
	return fmt.Sprintf("when you could do only about %v more. It is fine to do fewer than %d.", item.Reserve.Least, item.Count)
}

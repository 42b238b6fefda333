package progression

import (
	"slices"

	"example.org/posology/progression/internal/history"
	"example.org/posology/units/evidence"
)

// ofDay decides, and marks what the day's check alone makes of an exercise.
func ofDay(courses []Course, decide func([]Course) ([]Decision, error)) ([]Decision, error) {
	list, err := decide(courses)
	if err != nil || !slices.ContainsFunc(courses, func(c Course) bool { return c.Usual != nil }) {
		return list, err
	}
	without := slices.Clone(courses)
	for i := range without {
		if u := without[i].Usual; u != nil {
			without[i].Request.Screening = *u
		}
	}
	usual, err := decide(without)
	if err != nil {
		return nil, err
	}
	for i := range list {
		list[i].ofDay(&courses[i], &usual[i])
	}
	return list, nil
}

// ofDay marks what is less than without the check and than the last plan, and does not give way in any case.
func (d *Decision) ofDay(c *Course, usual *Decision) {
	left, gives := d.Action == StopExercise, usual.Instead != "" && usual.Change != HarderVariant
	switch days := history.DaysRunning(c.Log); {
	case c.Usual == nil || usual.Next == nil || gives || d.Next == nil && !left || d.Next != nil && d.Instead == usual.Instead && (d.Instead != "" || !history.Less(c.Log, d.Next, usual.Next)):
		return
	case days >= history.MostOfDay:
		d.because(because("progression.days-running").With(evidence.Count("visits", days+1)))
		return
	case left:
		d.Action = HoldDose // nobody has to look at it
	}
	d.After = history.After(c.Log, usual.Next)
	d.because(because("progression.of-the-day"))
}

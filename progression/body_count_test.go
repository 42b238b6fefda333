package progression_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Where the body moves, the count goes on from what was done: one more a visit, as many
// fewer as a set ended too near failure, less one unless none were left, and after days
// missed as many fewer as strength lost takes off. What cannot be done six times, even to failure, is made
// easier.
func TestNextBodyGoesOnFromWhatWasDone(t *testing.T) {
	for _, id := range []string{"goblet-squat", "dead-bug", "sit-to-stand"} {
		for _, tt := range []struct {
			reps   int
			left   float64
			days   units.Day
			action progression.Action
			count  int
		}{
			{10, 3, 3, progression.Progress, 11}, {10, 2, 3, progression.HoldDose, 10}, {10, 0, 3, progression.HoldDose, 7},
			{5, 2, 3, progression.HoldDose, 5}, {4, 0, 3, progression.ChangeVariant, 0}, {10, 3, 10, progression.EaseOff, 7},
		} {
			c := courseOf(t, id, 4)
			load := units.Mass(0)
			if id == "goblet-squat" {
				load = 4 * kilo
			}
			done(&c, load, tt.reps, tt.left)
			c.Day, c.Absence = firstDay+tt.days, screening.No
			if d := nextOf(t, c); d.Action != tt.action || tt.count > 0 && (d.Next.Count != tt.count || d.Next.Load.Each() != load) {
				t.Errorf("%s, %d with %v left, %d days: %s", id, tt.reps, tt.left, tt.days, told(d))
			}
		}
	}
}

// A test of another exercise or hold, or one on which no dose rests any more, says
// nothing of strength.
func TestNextFoldsUsableTestsAlone(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	set := setlog.Set{Day: firstDay, Exercise: c.Request.Exercise.ID, Side: body.Both, Hold: c.Request.Exercise.Hold, Load: 20 * kilo, Reps: 5, Effort: units.Must(units.InReserve(2))}
	e, err := onerm.FromSet(set, c.Request.Exercise, c.Request.Screening.Who)
	if err != nil {
		t.Fatal(err)
	}
	another, old := e, e
	another.Exercise, old.Day = "goblet-squat", firstDay-200
	want := told(nextOf(t, c))
	for name, list := range map[string][]onerm.Estimate{"of another": {another}, "old, and of another": {old, another}} {
		c.Request.Estimates = list
		if d, err := progression.Next(c); err == nil && told(d) != want {
			t.Errorf("%s: %s, want %s", name, told(d), want)
		}
	}
	c.Request.Phase, c.Request.Estimates = dose.Build, []onerm.Estimate{e}
	if d := nextOf(t, c); told(d) == want {
		t.Errorf("a test of the day changes nothing: %s", want)
	}
}

package record_test

import (
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/screening"
)

// Walking begins from what was told of the activity, and unknown is nothing. Design.
func TestWalkingBeginsFromWhatIsDone(t *testing.T) {
	for _, tt := range []struct {
		now          *screening.Activity
		brisk, whole int
	}{
		{nil, 0, 50},
		{&screening.Activity{Intensity: screening.Idle}, 0, 50},
		{&screening.Activity{DaysPerWeek: 5, Minutes: 20, Intensity: screening.Light, Months: 6}, 0, 100},
		{&screening.Activity{DaysPerWeek: 4, Minutes: 30, Intensity: screening.Moderate, Months: 6}, 100, 150},
	} {
		r := read(t, "version0/bone.json")
		r.Profile.Activity = tt.now
		p, err := r.Start(r.Profile.Day)
		if err != nil || p.Week == nil {
			t.Fatalf("%v: %+v", err, p.Stop)
		}
		for _, i := range p.Week.Beside {
			if i.Kind == beside.Aerobic && (i.BriskMinutes() > tt.brisk || i.WeeklyMinutes() != tt.whole) {
				t.Errorf("%+v: %d brisk of %d minutes", tt.now, i.BriskMinutes(), i.WeeklyMinutes())
			}
		}
	}
}

package beside_test

import (
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var firstDay = units.Must(units.NewDay(2026, 11, 30))

// invented is an adult without a finding, who is with somebody; what follows is changed by the tests.
func invented() screening.Profile {
	return screening.Profile{
		Day: firstDay, Age: 70, Sex: body.Female, Training: body.Novice, Setting: screening.InGroup, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 40, Intensity: screening.Moderate, Months: 12},
		BP:       &screening.BloodPressure{Systolic: 124, Diastolic: 76}, RestingPulse: 68,
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	}
}

func assessed(t testing.TB, p screening.Profile) screening.Outcome {
	t.Helper()
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

func known(stands, brisk int) beside.Known {
	return beside.Known{Stands: &stands, Brisk: &brisk, SpineFracture: screening.No, Leaks: screening.No}
}

// free is a situation in which every track is wanted and nothing bars a step.
func free(t testing.TB) beside.Situation {
	t.Helper()
	o := assessed(t, invented())
	o.Findings, o.Limits, o.Meanwhile, o.Route = nil, screening.Limits{}, screening.WithinLimits, screening.NoRoute
	return beside.Situation{Day: firstDay, Screening: o, Goal: guideline.Bone, Fast: true, Known: known(4, 0)}
}

func start(t testing.TB, s beside.Situation) (map[beside.TrackID]beside.Item, map[beside.TrackID]beside.Barred) {
	t.Helper()
	items, barred, err := beside.Start(s)
	if err != nil {
		t.Fatal(err)
	}
	on, off := map[beside.TrackID]beside.Item{}, map[beside.TrackID]beside.Barred{}
	for _, i := range items {
		on[i.Track] = i
	}
	for _, b := range barred {
		off[b.Track] = b
	}
	return on, off
}

// asked is what a step measures.
func asked(i beside.Item) int {
	if i.Seconds+i.Count == 0 {
		return i.Minutes
	}
	return i.Seconds + i.Count
}

// well is a week in which all was done as asked.
func well(i beside.Item) beside.Happened { return beside.Happened{Days: 7, Least: asked(i)} }

// steps are the items of a whole track, from the first step on, as Next gives them.
func steps(t testing.TB, track beside.TrackID) []beside.Item {
	t.Helper()
	s := free(t)
	on, _ := start(t, s)
	i := on[track]
	i.Step = 1
	s.Known.InForce = []beside.Item{i}
	on, _ = start(t, s)
	all := []beside.Item{on[track]}
	s.Known.InForce = nil
	for {
		next, err := beside.Next(all[len(all)-1], well(all[len(all)-1]), s)
		if err != nil {
			t.Fatal(err)
		}
		if next.Step == all[len(all)-1].Step {
			return all
		}
		all = append(all, next)
	}
}

// trackIDs are the tracks of more than one step.
var trackIDs = []beside.TrackID{"stance", "one-leg", "reach", "stepping", "walking", "impact", "chair-rise"}

// more says what of an item is more than the law lets it be beside a better one, "" if nothing is.
func more(worse, better beside.Item) string {
	same := worse.Move == better.Move
	switch {
	case worse.Paused:
		return ""
	case better.Paused:
		return "a dose where the better is paused"
	case worse.Step > better.Step:
		return "a later step"
	case worse.Hands < better.Hands:
		return "less support"
	case worse.Hands == better.Hands && better.Company && !worse.Company:
		return "less company"
	case worse.Force > better.Force:
		return "force"
	case worse.Height > better.Height:
		return "height"
	case worse.Effort > better.Effort:
		return "effort"
	case loadOf(worse) > loadOf(better):
		return "load"
	case worse.Brisk > better.Brisk || worse.BriskMinutes() > better.BriskMinutes():
		return "pace"
	case worse.Slower > better.Slower:
		return "a set that ends later"
	case same && worse.SecondsFree() > better.SecondsFree():
		return "seconds without support"
	case same && worse.Kind != beside.Power && (worse.Sets*worse.Count > better.Sets*better.Count || worse.Minutes > better.Minutes):
		return "amount"
	}
	return ""
}

func loadOf(i beside.Item) units.Fraction {
	most, _ := i.Load.Max()
	return most
}

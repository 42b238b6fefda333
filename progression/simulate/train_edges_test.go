package simulate_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/simulate"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// exact is a trainee without noise, growth or error.
func exact(kg float64) simulate.Trainee {
	return simulate.Trainee{OneRM: units.Must(units.Kilograms(kg))}
}

func TestSetupBounds(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(s *simulate.Setup)
		taken bool
	}{
		"as it is":                 {func(*simulate.Setup) {}, true},
		"a week":                   {func(s *simulate.Setup) { s.Weeks = 1 }, true},
		"520 weeks":                {func(s *simulate.Setup) { s.Weeks = 520 }, true},
		"521 weeks":                {func(s *simulate.Setup) { s.Weeks = 521 }, false},
		"no familiarisation":       {func(s *simulate.Setup) { s.Familiarise = 0 }, true},
		"520 of familiarisation":   {func(s *simulate.Setup) { s.Familiarise = 520 }, true},
		"521 of familiarisation":   {func(s *simulate.Setup) { s.Familiarise = 521 }, false},
		"one day":                  {func(s *simulate.Setup) { s.Days = []int{6} }, true},
		"every day":                {func(s *simulate.Setup) { s.Days = []int{0, 1, 2, 3, 4, 5, 6} }, true},
		"no day":                   {func(s *simulate.Setup) { s.Days = nil }, false},
		"a day before":             {func(s *simulate.Setup) { s.Days = []int{-1, 2} }, false},
		"a day after":              {func(s *simulate.Setup) { s.Days = []int{2, 7} }, false},
		"a day twice":              {func(s *simulate.Setup) { s.Days = []int{2, 2} }, false},
		"falling, and then rising": {func(s *simulate.Setup) { s.Days = []int{4, 2, 3} }, false},
	} {
		s := beginner(t, "biceps-curl", dumbbells(2))
		tt.spoil(&s)
		if err := s.Validate(); (err == nil) != tt.taken {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// firstVisit runs one week and returns what was done on its first day.
func firstVisit(t *testing.T, tr simulate.Trainee, s simulate.Setup) progression.Visit {
	t.Helper()
	s.Weeks = 1
	visits := runOf(t, tr, s, 1)
	if len(visits) != 2 || visits[0].Week != 1 || visits[1].Week != 1 {
		t.Fatalf("%d visits of a week of two days", len(visits))
	}
	return visits[0].Done
}

// A first dose leaves more than five undone. At 80 % of the maximum Epley's
// equation has 7.5 to failure, so two are done and 5.5 left; and so on.
func TestSetsOfAnExactTrainee(t *testing.T) {
	one := func(id string, kg ...float64) simulate.Setup { return beginner(t, id, dumbbells(kg...)) }
	omni := one("one-arm-dumbbell-row", 4)
	omni.Policy.Rule = rule.NameOMNIBelow8
	squat := one("goblet-squat", 4)
	squat.BodyMass = 70 * units.Kilogram
	told := func(n float64) units.Effort { return units.Must(units.InReserve(n)) }
	curved := exact(4 / 0.7)
	curved.Curve = onerm.Brzycki
	ending := func(share float64) simulate.Trainee { // a curve with numbers from 0.52 to 0.94 alone
		tr := exact(4 / share)
		tr.Curve = onerm.Mayhew
		return tr
	}
	unsure := exact(4.2)
	unsure.Reserve = alike(2, 0)
	for name, tt := range map[string]struct {
		tr     simulate.Trainee
		s      simulate.Setup
		reps   int
		effort units.Effort
	}{
		"80 %":                       {exact(5), one("one-arm-dumbbell-row", 4), 2, told(6)},
		"80 %, rated":                {exact(5), omni, 2, units.Must(units.OMNI(4))},
		"80 % with both hands":       {exact(10), one("biceps-curl", 4), 2, told(6)},
		"80 % with 80 % of the body": {exact(75), squat, 2, told(6)},
		"70 %, of 12.9":              {exact(4 / 0.7), one("one-arm-dumbbell-row", 4), 7, told(6)},
		"70 %, of 11.8 on the curve": {curved, one("one-arm-dumbbell-row", 4), 6, told(6)},
		"95 %, of 1.5":               {exact(4.2), one("one-arm-dumbbell-row", 4), 1, told(1)},
		"95 %, and it seems less":    {unsure, one("one-arm-dumbbell-row", 4), 1, told(0)},
		"the maximum":                {exact(4), one("one-arm-dumbbell-row", 4), 1, told(0)},
		"95 %, beyond the curve":     {ending(0.95), one("one-arm-dumbbell-row", 4), 1, told(0)},
		"50 %, below the curve":      {ending(0.5), one("one-arm-dumbbell-row", 4), 10, told(10)},
		"40 %, more than is told":    {exact(10), one("one-arm-dumbbell-row", 4), 10, told(10)},
	} {
		v := firstVisit(t, tt.tr, tt.s)
		if len(v.Sets) == 0 || v.Sets[0].Reps != tt.reps || v.Sets[0].Effort != tt.effort {
			t.Errorf("%s: %+v, want %d, %v", name, v.Sets, tt.reps, tt.effort)
		}
	}
}

// Each side is trained alike, or the one that is asked for.
func TestSidesOfARun(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(4))
	for side, want := range map[body.Side][]body.Side{body.Both: {body.Left, body.Right}, body.Right: {body.Right}} {
		s.Request.Side = side
		var got []body.Side
		for _, set := range firstVisit(t, exact(10), s).Sets {
			got = append(got, set.Side)
		}
		if !slices.Equal(slices.Compact(got), want) {
			t.Errorf("%v: %v", side, got)
		}
	}
}

// While the load is looked for it rises by the kit as often as the plan allows, up
// to its ceiling, and not from a weight that leaves no more than five: at 80.6 %
// 7.2 to failure leave 5.2.
func TestLooksForTheLoad(t *testing.T) {
	for name, tt := range map[string]struct {
		oneRM, ceiling float64
		want           []float64
	}{
		"easy":            {40, 0, []float64{2, 3, 4}},
		"with a limit":    {40, 3, []float64{2, 3}},
		"between weights": {40, 3.5, []float64{2, 3}},
		"not easy":        {2.48, 0, []float64{2}},
	} {
		s := beginner(t, "one-arm-dumbbell-row", dumbbells(2, 3, 4, 5))
		s.Request.Side = body.Left
		if tt.ceiling > 0 {
			s.Request.Screening.Limits.Masses = []screening.MassLimit{{Author: "a surgeon", Region: bindsAll, Side: body.Both, Max: units.Must(units.Kilograms(tt.ceiling))}}
		}
		var got []float64
		for _, set := range firstVisit(t, exact(tt.oneRM), s).Sets {
			got = append(got, set.Load.Kilograms())
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", name, got, tt.want)
		}
	}
}

// A slip is of a factor two or of pounds, either way, in a carry too.
func TestSlipsAreOfTheirKinds(t *testing.T) {
	for _, id := range []string{"one-arm-dumbbell-row", "suitcase-carry"} {
		tr := exact(40)
		tr.Slips = 1
		s := beginner(t, id, dumbbells(4))
		seen := map[float64]bool{}
		longest := 0
		for _, v := range runOf(t, tr, s, 1) {
			for _, set := range v.Done.Sets {
				for _, slip := range []float64{2, 0.5, 2.2, 0.4536} {
					if math.Abs(set.Load.Kilograms()/4-slip) < 1e-6 {
						seen[slip] = true
					}
				}
				if ratio := set.Load.Kilograms() / 4; ratio == 1 {
					t.Errorf("%s: no slip", id)
				}
			}
			for _, q := range v.Decision.Queries {
				longest = max(longest, q.Visit)
			}
		}
		// A policy sees the whole log: at the last of 32 visits, 31.
		if len(seen) != 4 || longest != 30 {
			t.Errorf("%s: %v, the last of %d visits", id, seen, longest+1)
		}
	}
}

// A run familiarises for so many weeks, unless the request has a phase.
func TestPhasesOfARun(t *testing.T) {
	for name, tt := range map[string]struct {
		phase dose.Phase
		weeks int
		want  []dose.Phase // of the weeks
	}{
		"one week of three": {0, 1, []dose.Phase{dose.Familiarise, dose.Build, dose.Build}},
		"none":              {0, 0, []dose.Phase{dose.Familiarise, dose.Familiarise, dose.Familiarise}}, // what a novice begins with
		"a phase is given":  {dose.Build, 2, []dose.Phase{dose.Build, dose.Build, dose.Build}},
	} {
		s := beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4))
		s.Request.Phase, s.Familiarise, s.Weeks = tt.phase, tt.weeks, len(tt.want)
		visits := runOf(t, exact(10), s, 1)
		if len(visits) != 2*s.Weeks {
			t.Fatalf("%s: %d visits", name, len(visits))
		}
		for _, v := range visits {
			if v.Done.Plan.Phase != tt.want[v.Week-1] {
				t.Errorf("%s: week %d: %v", name, v.Week, v.Done.Plan.Phase)
			}
		}
	}
}

// What goes amiss always, does so at every visit, and what never does, at none.
func TestWhatGoesAmiss(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(4))
	amiss := exact(10)
	amiss.Pain, amiss.FormLost, amiss.Unseen = 1, 1, 1
	v, well := firstVisit(t, amiss, s), firstVisit(t, exact(10), s)
	if *v.Pain.During <= 5 || *v.Pain.After <= 5 || *v.Pain.NextMorning <= *v.Pain.Usual || v.FormLost != screening.Yes || v.Observer.Made() {
		t.Errorf("%+v, %v, %+v", *v.Pain, v.FormLost, v.Observer)
	}
	if *well.Pain.During > 2 || *well.Pain.NextMorning > *well.Pain.Usual || well.FormLost != screening.No || !well.Observer.Made() || len(well.Moment.Signs) != 0 {
		t.Errorf("%+v, %v, %+v", *well.Pain, well.FormLost, well.Observer)
	}
	amiss = exact(10)
	amiss.Missed = 1
	if visits, err := simulate.Run(amiss, s, rand.NewPCG(1, 1)); err != nil || len(visits) != 2*s.Weeks {
		t.Errorf("%d planned days, %v", len(visits), err)
	}
}

// Whoever watches is at hand: alone and always watched is with a helper, and alone and
// never watched stays alone.
func TestWatchedIsAtHand(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(1, 2, 3, 4, 5))
	run := func(setting screening.Setting, unseen units.Fraction) []simulate.Lived {
		tr := typical(12)
		s.Request.Screening.Setting, tr.Unseen = setting, unseen
		return runOf(t, tr, s, 1)
	}
	looked := func(l []simulate.Lived) bool {
		return slices.ContainsFunc(l, func(v simulate.Lived) bool {
			return len(v.Done.Sets) > 0 && v.Done.Plan.Finding != nil && v.Done.Plan.Finding.MaxSteps > 0
		})
	}
	watched := run(screening.Alone, 0)
	if !reflect.DeepEqual(run(screening.WithHelper, 0), watched) || !looked(watched) || looked(run(screening.Alone, 1)) {
		t.Errorf("a load is looked for where somebody watches: %v; %+v", looked(watched), watched)
	}
}

// A dose whose first set was not easy has all its sets; a carry goes its metres, is
// rated, and goes up as long as it is rated as easy and the plan does.
func TestAllSetsOfADose(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(2, 3, 4, 5))
	s.Request.Side, s.Request.Phase = body.Left, dose.Build
	if v := firstVisit(t, exact(2.48), s); v.Plan.Sets < 2 || len(v.Sets) != v.Plan.Sets {
		t.Errorf("%d sets of %d", len(v.Sets), v.Plan.Sets)
	}
	s = beginner(t, "suitcase-carry", dumbbells(2, 3, 4, 5))
	s.Request.Side = body.Left
	v := firstVisit(t, exact(20), s)
	for i, set := range v.Sets {
		if set.Reps != v.Plan.Count || set.Effort.Scale() != units.ScaleOMNI || set.Effort.Number() >= 8 || set.Load != units.Mass(2+i)*units.Kilogram {
			t.Errorf("set %d: %+v", i, set)
		}
	}
	if v.Plan.Finding == nil || len(v.Sets) != v.Plan.Finding.MaxSteps+1 {
		t.Errorf("%d sets, %+v", len(v.Sets), v.Plan.Finding)
	}
}

// What goes amiss now and then does not always do so.
func TestAmissNowAndThen(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(4))
	tr := exact(10)
	tr.Missed = 0.5
	missed := 0
	visits := runOf(t, tr, s, 1)
	for _, v := range visits {
		if v.Missed {
			missed++
		}
	}
	if missed == 0 || missed == len(visits) {
		t.Errorf("%d of %d visits missed", missed, len(visits))
	}
}

// The numbers of a typical trainee are the published ones that Typical names, and
// the bounds are taken in.
func TestNumbersOfATrainee(t *testing.T) {
	tr := typical(10)
	told := simulate.Misjudged{Near: simulate.Misjudgement{More: 0.3, SD: 1}, Midway: simulate.Misjudgement{More: 1, SD: 1.7}, Far: simulate.Misjudgement{More: 2.5, SD: 3}} // design
	if tr.Reserve != told || tr.DaySD != 0.042 || tr.Gain != simulate.FirstYear() || tr.Stubborn || !tr.Tires || tr.Missed != 0 {
		t.Errorf("%+v", tr)
	}
	for _, more := range []float64{-5, 5} {
		tr.DaySD, tr.Reserve, tr.Missed, tr.Early = 0.2, alike(more, 5), 1, 10
		if err := tr.Validate(); err != nil {
			t.Errorf("the bounds: %v", err)
		}
	}
	tr.DaySD, tr.Reserve, tr.Early = 0.201, alike(5.01, 5.01), 11
	var all field.Errors
	if err := tr.Validate(); !errors.As(err, &all) || len(all) != 8 {
		t.Errorf("beyond the bounds: %v", err)
	}
}

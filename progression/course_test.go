package progression_test

import (
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var dumbbells = dosetest.Pairs

// firstDay is a Monday; the assessment was the day before.
const firstDay units.Day = 739950

// waived is an outcome without a caution of a person of 66 in a group.
func waived(training body.Training) screening.Outcome {
	return screening.Waived("a test", body.Person{Age: 66, Sex: body.Female, Training: training}, screening.InGroup, firstDay-1)
}

// rowCourse is an invented course of the one-arm row: one good visit with 4 kg in
// three sets of 12 on each side, three days before the day that is decided on.
func rowCourse(t failer, kg ...float64) progression.Course {
	t.Helper()
	ex, err := exercise.Standard().Lookup("one-arm-dumbbell-row")
	if err != nil {
		t.Fatalf("%v", err)
	}
	c := progression.Course{
		Request: dose.Request{
			Screening: waived(body.Novice),
			Exercise:  ex, Side: body.Both, Goal: guideline.Strength,
			Phase: dose.Build, Technique: dose.Observation{Who: "a colleague", Day: firstDay}, Kit: dumbbells(kg...),
		},
		Day: firstDay + 3,
	}
	v := goodVisit()
	v.Day, v.Plan.Sets = firstDay, 3
	v.Sets = append(v.Sets, v.Sets[0], v.Sets[2])
	c.Log = []progression.Visit{v}
	return c
}

func nextOf(t failer, c progression.Course) progression.Decision {
	t.Helper()
	d, err := progression.Next(c)
	if err != nil {
		t.Fatalf("Next: %v", err)
	}
	return d
}

// drawCourse is a course of one to three visits in which little is amiss.
func drawCourse(t *rapid.T) progression.Course {
	kits := [][]float64{{2, 4, 6, 10}, {3, 4, 5, 6, 7, 8}, {4}, {1, 2, 3, 4, 4.5, 5}, {2, 4, 4.25, 4.5}, {4, 8}}
	c := rowCourse(t, rapid.SampledFrom(kits).Draw(t, "kit")...)
	c.Policy = progression.Policy{
		Rule:         rapid.SampledFrom([]rule.Name{0, 0, 0, rule.NameOverTarget, rule.NameTwoForTwo, rule.NameRepsThenLoad}).Draw(t, "rule"),
		KeepExercise: rapid.Bool().Draw(t, "keep"), Without: drawWithout(t),
	}
	c.Request.Phase = dose.Phase(rapid.IntRange(1, 4).Draw(t, "phase"))
	c.Request.Screening.Who.Training = body.Training(rapid.IntRange(1, 3).Draw(t, "training"))
	days := rapid.IntRange(2, 7).Draw(t, "days")
	one := c.Log[0]
	c.Log = nil
	for i := range rapid.IntRange(1, 3).Draw(t, "visits") {
		v := one
		v.Day = firstDay + units.Day(i*days)
		drawVisit(t, &v)
		c.Log = append(c.Log, v)
	}
	c.Day = c.Log[len(c.Log)-1].Day + units.Day(days)
	c.Absence = screening.No
	return c
}

// drawVisit changes what was planned and done.
func drawVisit(t *rapid.T, v *progression.Visit) {
	v.Plan.Sets = rapid.IntRange(1, 3).Draw(t, "sets")
	top := rapid.SampledFrom([]int{12, 15, 20}).Draw(t, "top")
	v.Plan.Span = units.Must(units.Between(8, top))
	v.Plan.Count = rapid.IntRange(8, top).Draw(t, "count")
	v.Plan.Tempo = dose.Tempo{Lowering: rapid.SampledFrom([]float64{2, 4}).Draw(t, "lowering"), Pausing: rapid.SampledFrom([]float64{0, 2}).Draw(t, "pausing"), Lifting: 2}
	if rapid.IntRange(0, 4).Draw(t, "finding") == 0 {
		v.Plan.Finding = &dose.Search{MaxSteps: 2}
	}
	if rapid.IntRange(0, 4).Draw(t, "hurts") == 0 {
		pain := *v.Pain
		pain.During = score(7)
		v.Pain = &pain
	}
	reps, left := v.Plan.Count, float64(rapid.IntRange(1, 8).Draw(t, "left"))
	if rapid.IntRange(0, 3).Draw(t, "fewer") == 0 {
		reps = max(1, reps-rapid.IntRange(1, 8).Draw(t, "reps"))
	}
	var sets []setlog.Set
	for i := range 2 * v.Plan.Sets {
		s := v.Sets[0]
		s.Reps, s.Effort = reps, units.Must(units.InReserve(left))
		s.Side = []body.Side{body.Left, body.Right}[i%2]
		if v.Plan.Finding != nil && i >= 2 {
			s.Load = 5 * units.Kilogram
		}
		sets = append(sets, s)
	}
	v.Sets = sets
}

type setOf = setlog.Set

// signs are all that may show during a set.
var signs = signCodes()

// seenLongAgo is a last visit that nobody watched, the look before it long ago.
func seenLongAgo(c *progression.Course) {
	last(c).Observer = dose.Observation{}
	c.Request.Technique.Day = firstDay - 60
}

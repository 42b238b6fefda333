package progression_test

import (
	"slices"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/testdata/screentest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A client is a course with the person behind it: the outcome in the course
// comes from the profile and the check of the day.
type client struct {
	profile screening.Profile
	check   *screening.Check
	course  progression.Course
	overdue bool           // the review of the assessment is over
	share   units.Fraction // a limit on the share of a maximum, beside those of the screening; 0: none
	tested  setlog.Set     // of the estimate, if there is one
}

// limited adds the client's own limit to an outcome.
func (p client) limited(o screening.Outcome) screening.Outcome {
	if p.share > 0 {
		o.Limits = o.Limits.Join(screening.Limits{MaxFraction: p.share})
	}
	return o
}

// today screens, and returns the course of the day.
func (p client) today() (progression.Course, error) {
	c := p.course
	outcome, err := screening.Assess(p.profile)
	if err == nil && p.check != nil {
		check := *p.check
		check.Day = c.Day
		outcome, err = screening.Today(check, outcome)
	}
	c.Request.Screening = p.limited(outcome)
	if p.overdue {
		c.Request.Screening.ReviewBy = c.Day - 1
	}
	return c, err
}

func (p client) next() (progression.Decision, error) {
	c, err := p.today()
	if err != nil {
		return progression.Decision{}, err
	}
	return progression.Next(c)
}

var allExercises = slices.Collect(exercise.Standard().All())

// policyRules are mostly none.
var policyRules = []rule.Name{
	0, 0, 0, 0, 0, rule.NameOverTarget, rule.NameTwoForTwo, rule.NameRepsThenLoad, rule.NameOMNIBelow8, rule.NameTopOfRange,
}

// seldom is true about once in so many draws, and shrinks to false.
func seldom(t *rapid.T, what string, oneIn int) bool {
	return rapid.IntRange(0, oneIn-1).Draw(t, what) == oneIn-1
}

func between(t *rapid.T, what string, low, high int) int {
	return rapid.IntRange(low, high).Draw(t, what)
}

// drawList finds little in most people, or few would get a dose.
func drawList(t *rapid.T, kind screening.Kind) screening.Checklist {
	if seldom(t, "not asked", 30) {
		return screening.Checklist{}
	}
	if !seldom(t, "found", 6) {
		return screening.AskedFor()
	}
	drawn := rapid.SliceOfNDistinct(rapid.SampledFrom(screentest.Codes(kind)), 1, 2, rapid.ID[screening.Code]).Draw(t, "codes")
	if seldom(t, "unsure", 2) {
		return screening.Checklist{Asked: true, Present: drawn[1:], Unsure: drawn[:1]}
	}
	return screening.AskedFor(drawn...)
}

func drawProfile(t *rapid.T) screening.Profile {
	p := screening.Profile{
		Day: firstDay - 1, Age: body.Age(between(t, "age", 40, 95)), Sex: body.Sex(between(t, "sex", 0, 2)),
		Setting:    screening.Setting(4 - between(t, "less company", 0, 3)),
		Wanted:     screening.Intensity(4 - between(t, "less wanted", 0, 2)),
		Activity:   &screening.Activity{DaysPerWeek: between(t, "active days", 0, 4), Minutes: 40, Intensity: screening.Moderate, Months: 6},
		Diseases:   drawList(t, screening.Disease),
		Symptoms:   drawList(t, screening.Symptom),
		RedFlags:   drawList(t, screening.RedFlag),
		Conditions: drawList(t, screening.Condition),
	}
	if seldom(t, "pressure measured", 2) {
		systolic := between(t, "systolic", 90, 200)
		p.BP = &screening.BloodPressure{Systolic: systolic, Diastolic: systolic - between(t, "pulse pressure", 30, 60)}
	}
	if seldom(t, "cleared", 3) {
		scope := slices.Concat(p.Diseases.Present, p.Diseases.Unsure, p.Symptoms.Present, p.Conditions.Present, p.Conditions.Unsure)
		p.Clearances = []screening.Clearance{{Who: "doctor A", Day: firstDay - units.Day(between(t, "cleared before", 2, 200)), Scope: scope, Intensity: screening.Intensity(between(t, "cleared for", 2, 4))}}
	}
	if seldom(t, "restricted", 6) {
		addRestriction(t, &p)
	}
	return p
}

func addRestriction(t *rapid.T, p *screening.Profile) {
	most := units.Mass(between(t, "limit", 0, 40)) * units.Kilogram / 2
	region := rapid.SampledFrom(slices.Collect(body.Regions())).Draw(t, "region")
	p.Restrictions = append(slices.Clone(p.Restrictions), screening.Restriction{Author: "a surgeon", Day: firstDay - 2, Region: region, MaxMass: &most})
}

func drawKit(t *rapid.T) equipment.Kit {
	var kit equipment.Kit
	var masses []int
	if seldom(t, "a rack", 2) {
		least, step := between(t, "least", 2, 16), between(t, "rack step", 1, 4)
		for i := range 8 {
			masses = append(masses, least+i*step)
		}
	} else {
		masses = rapid.SliceOfNDistinct(rapid.IntRange(1, 48), 1, 8, rapid.ID[int]).Draw(t, "half kilograms")
	}
	for _, m := range masses {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: units.Mass(m) * units.Kilogram / 2}, Count: 2})
	}
	pin := units.Mass(between(t, "pin", 2, 10)) * units.Kilogram
	kit.Stacks = []equipment.Stack{{Pins: []units.Marked{{Mass: pin}, {Mass: 2 * pin}, {Mass: 3 * pin}, {Mass: 4 * pin}}}}
	if seldom(t, "add-on", 2) {
		kit.Stacks[0].AddOns = []equipment.Plate{{Mass: units.Marked{Mass: units.Kilogram}, Count: 2}}
	}
	kit.Bars = []equipment.Bar{{Mass: units.Marked{Mass: units.Mass(between(t, "bar", 4, 20)) * units.Kilogram}}}
	kit.Plates = []equipment.Plate{{Mass: units.Marked{Mass: units.Mass(between(t, "plate", 1, 10)) * units.Kilogram / 2}, Count: 4}}
	return kit
}

func drawClient(t *rapid.T) client {
	p := client{profile: drawProfile(t)}
	ex := rapid.SampledFrom(allExercises).Draw(t, "exercise")
	if ex.Hold == body.OnLimb || ex.Hold == body.OnBand { // no kit lists what they need
		ex = allExercises[0]
	}
	p.profile.Training = body.Training(between(t, "training", 1, 3))
	c := progression.Course{
		Request: dose.Request{
			Exercise: ex, Side: body.Both,
			Goal:  guideline.Goal(between(t, "goal", 1, 7)),
			Phase: dose.Phase(between(t, "phase", 0, 4)),
			Kit:   drawKit(t),
		},
		Absence: screening.No,
		Policy: progression.Policy{
			Rule:         rapid.SampledFrom(policyRules).Draw(t, "rule"),
			KeepExercise: seldom(t, "keep", 3), Without: drawWithout(t),
		},
	}
	if ex.OneSided {
		c.Request.Side = rapid.SampledFrom([]body.Side{body.Both, body.Left, body.Right}).Draw(t, "side")
	}
	if seldom(t, "most repetitions", 6) {
		c.Policy.MostReps = between(t, "most", 1, 20)
	}
	if !seldom(t, "never seen", 4) {
		c.Request.Technique = dose.Observation{Who: "a colleague", Day: firstDay - 1}
	}
	if ex.MovesBody && seldom(t, "weighed", 2) {
		c.BodyMass = units.Mass(between(t, "body mass", 45, 110)) * units.Kilogram
	}
	p.course = c
	if seldom(t, "a limited share", 4) {
		p.share = units.Fraction(between(t, "share", 2, 9)) / 10
	}
	p.drawTest(t)
	p.drawPerformed(t)
	return p
}

// drawTest gives an exercise that allows it an estimate.
func (p *client) drawTest(t *rapid.T) {
	r := &p.course.Request
	ex := r.Exercise
	if ex.MovesBody || ex.Hold == body.Unloaded || ex.Measure != exercise.Repetitions || !seldom(t, "tested", 2) {
		return
	}
	reps := between(t, "repetitions", 1, 9)
	set := setlog.Set{
		Day: firstDay - 1, Exercise: ex.ID, Side: r.Side, Hold: ex.Hold, Reps: reps,
		Load:   units.Mass(between(t, "test load", 4, 80)) * units.Kilogram / 2,
		Effort: units.Must(units.InReserve(float64(between(t, "reserve", 0, min(3, 10-reps))))),
	}
	if ex.Hold == body.OneEachHand {
		set.Stated = body.PerHand
	}
	p.tests(set)
}

// tests gives the estimate of a set, if it has one.
func (p *client) tests(set setlog.Set) bool {
	r := &p.course.Request
	e, err := onerm.FromSet(set, r.Exercise, body.Person{Age: p.profile.Age, Sex: body.Female, Training: p.profile.Training})
	if err == nil {
		r.Estimates, p.tested = []onerm.Estimate{e}, set
	}
	return err == nil
}

// drawPerformed gives a set that was done before, from which to begin.
func (p *client) drawPerformed(t *rapid.T) {
	r := &p.course.Request
	ex := r.Exercise
	if ex.Hold == body.Unloaded || !seldom(t, "done before", 2) {
		return
	}
	r.Performed = &setlog.Set{
		Day: firstDay - 1, Exercise: ex.ID, Side: r.Side, Hold: ex.Hold, Reps: between(t, "done", 5, 20),
		Load:   units.Mass(between(t, "done with", 2, 80)) * units.Kilogram / 2,
		Effort: units.Must(units.InReserve(float64(between(t, "left then", 0, 8)))),
	}
	if ex.Hold == body.OneEachHand {
		r.Performed.Stated = body.PerHand
	}
}

// drawCheck is a day on which most was asked and little found, with no less company
// than was screened for.
func drawCheck(t *rapid.T, screened screening.Setting) *screening.Check {
	if seldom(t, "no check", 4) {
		return nil
	}
	c := &screening.Check{
		Setting: max(screened, screening.Setting(4-between(t, "less company today", 0, 3))), New: screening.AskedFor(),
		Febrile: screening.No, Unwell: screening.No, InsulinOrSecretagogue: screening.No, SevereLow: screening.No, Worsening: screening.No,
	}
	if seldom(t, "pain of the last session", 4) {
		pain := calmPain()
		c.Pain = &pain
	}
	if seldom(t, "insulin", 6) {
		c.InsulinOrSecretagogue = screening.Yes
		c.Glucose = glucose(t, rapid.SampledFrom([]string{"80 mg/dL", "120 mg/dL", "200 mg/dL"}).Draw(t, "glucose"))
		c.Ketones = screening.NoKetones
	}
	if seldom(t, "unwell today", 10) {
		c.Unwell = screening.Yes
	}
	return c
}

func glucose(t failer, text string) screening.Glucose {
	t.Helper()
	var g screening.Glucose
	if err := g.UnmarshalText([]byte(text)); err != nil {
		t.Fatalf("%v", err)
	}
	return g
}

func calmPain() screening.Pain {
	return screening.Pain{Kind: screening.OrdinaryPain, Usual: score(1), During: score(1), After: score(1), NextMorning: score(1), SettledNextMorning: screening.Yes, WeeklyTrend: screening.StablePain, Osteoarthritis: screening.No}
}

// drawToday draws somebody with a log on the day of a visit, checked or not; false where
// there is no log.
func drawToday(t *rapid.T) (progression.Course, bool) {
	p := drawClient(t)
	if !p.drawLog(t) {
		return progression.Course{}, false
	}
	p.check = drawCheck(t, p.profile.Setting)
	c, err := p.today()
	if err != nil {
		t.Fatalf("screening: %v", err)
	}
	return c, true
}

// decidedToday is drawToday with the dose that comes next of the same exercise; false where
// there is none.
func decidedToday(t *rapid.T) (progression.Course, progression.Decision, bool) {
	c, ok := drawToday(t)
	if !ok {
		return c, progression.Decision{}, false
	}
	d, err := progression.Next(c)
	return c, d, err == nil && d.Next != nil && d.Instead == ""
}

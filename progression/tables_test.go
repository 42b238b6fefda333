package progression_test

import (
	"errors"
	"os"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// The package's comment prints the two tables as they are.
func TestTablesAreDocumented(t *testing.T) {
	text, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	less, more := progression.Tables()
	for _, table := range []string{less, more} {
		if !strings.Contains(string(text), "//\n"+table+"//\n") {
			t.Errorf("doc.go does not print\n%s", table)
		}
	}
}

// A rowCase is a course on which a row of a table decides.
type rowCase struct {
	row   string
	make  func(t failer) progression.Course
	waits progression.Waiting
}

// from changes a course of the row with a kit.
func from(change func(c *progression.Course), kg ...float64) func(t failer) progression.Course {
	return func(t failer) progression.Course {
		c := rowCourse(t, kg...)
		change(&c)
		return c
	}
}

// atTheEnd is a course at the end of what repetitions bridge.
func atTheEnd(lowering, pausing float64, change func(c *progression.Course), kg ...float64) func(t failer) progression.Course {
	return from(func(c *progression.Course) {
		span(c, 20, 20)
		last(c).Plan.Tempo = dose.Tempo{Lowering: lowering, Pausing: pausing, Lifting: 2}
		done(c, 4*kilo, 20, 3)
		change(c)
	}, kg...)
}

// supervised lets no more go on than light and supervised work.
func supervised(c *progression.Course) {
	c.Request.Screening.Meanwhile, c.Request.Screening.Limits.LeastSetting = screening.LightSupervised, screening.InGroup
}

func unchanged(*progression.Course) {}

// passedOver makes the last visit one whose plan was its day's alone.
func passedOver(c *progression.Course) { after := last(c).Plan; last(c).After = &after }

// sore keeps the load.
func sore(c *progression.Course) { last(c).SorenessDays = 5 }

var lessCases = []rowCase{
	{row: "missed", make: from(away, 4, 4.25)},
	{row: "above-limit", make: from(func(c *progression.Course) { most(c, 3) }, 2, 4, 6)},
	{row: "few-for-limit", make: from(func(c *progression.Course) { last(c).Plan.Count, c.Request.Screening.Limits.LeastCount = 6, 8 }, 2, 4, 6)},
	{row: "lighter-day", make: from(func(c *progression.Course) { c.Request.Screening.Limits = screening.LighterSession() }, 4, 4.25)},
	{row: "too-heavy", make: from(func(c *progression.Course) { done(c, 4*kilo, 4, 1) }, 2, 4, 6)},
	{row: "too-few", make: from(func(c *progression.Course) { c.Request.Screening.Limits.NoBreathHolding = true; done(c, 4*kilo, 6, 1) }, 4, 6)},
	{row: "below-three", make: from(func(c *progression.Course) { last(c).Sets = last(c).Sets[:5]; repeat(c, 3) }, 2, 4, 6)},
	{row: "attendance", make: from(func(c *progression.Course) { c.Sessions = sessions(*c, 8, 4) }, 4, 4.25)},
	{row: "recurring", make: twiceHurt},
	{row: "eased", make: from(func(c *progression.Course) { last(c).Pain.During = score(6) }, 4, 4.25)},
}

var harderCases = []rowCase{
	{row: "nothing-done", make: from(func(c *progression.Course) { last(c).Sets = nil }, 4, 4.25)},
	{row: "ask-first", make: from(supervised, 4, 4.25)},
	{row: "plan-expired", make: from(func(c *progression.Course) { c.Plan.Expires = c.Day - 1 }, 4, 4.25)},
	{row: "day-over", make: from(passedOver, 4, 4.25)},
	{row: "sets-first", make: from(func(c *progression.Course) { last(c).Plan.Sets = 2 }, 4, 4.25)},
	{row: "maintain", make: from(func(c *progression.Course) { c.Request.Phase = dose.Maintain }, 4, 4.25)},
	{row: "found-easy", make: lookedFor(8, 7)},
	{row: "found", make: lookedFor(8, 4)},
	{row: "two-rises", make: from(unchanged, 4, 4.25), waits: progression.Load},
	{row: "next-weight", make: from(unchanged, 4, 4.25)},
	{row: "find-on", make: from(func(c *progression.Course) {
		last(c).Plan.Finding = &dose.Search{MaxSteps: 0}
		span(c, 10, 20)
		done(c, 4*kilo, 14, 6)
	}, 4, 6)},
	{row: "tried", make: afterTrial(12)},
	{row: "resumed", make: and(afterTrial(12), sore)},
	{row: "limit-reps", make: from(func(c *progression.Course) { most(c, 4); done(c, 4*kilo, 10, 8); repeat(c, 4) }, 4, 6)},
	{row: "limit", make: from(func(c *progression.Course) { most(c, 4); span(c, 12, 12) }, 4, 6)},
	{row: "feel", make: from(func(c *progression.Course) { done(c, 4*kilo, 14, 6) }, 4, 6)},
	{row: "try", make: and(func(t failer) progression.Course { return squatCourse(t, 4, 6) }, func(c *progression.Course) { done(c, 4*kilo, 10, 6) })},
	{row: "more-reps", make: from(func(c *progression.Course) { done(c, 4*kilo, 10, 8); repeat(c, 4) }, 4, 10)},
	{row: "hold", make: from(func(c *progression.Course) { last(c).FormLost = screening.Yes }, 4, 4.25)},
	{row: "familiarising", make: from(learning, 4, 6)},
	{row: "more-reserve", make: from(func(c *progression.Course) { c.Policy.MostReps = 12 }, 4, 4.45)},
	{row: "slower", make: atTheEnd(2, 0, unchanged, 4, 10)},
	{row: "pause", make: atTheEnd(4, 0, unchanged, 4, 10)},
	{row: "beside", make: atTheEnd(4, 2, func(c *progression.Course) { c.Request.Screening.Setting = screening.Alone; done(c, 4*kilo, 20, 6) }, 4, 6)},
	{row: "extra-set", make: atTheEnd(4, 2, func(c *progression.Course) { c.Request.Guideline = "acsm2011-strength-novice-intermediate" }, 4, 10)},
	{row: "variant-waits", make: bridged, waits: progression.New},
	{row: "harder-variant", make: bridged},
	{row: "kit-ends", make: from(func(c *progression.Course) { *c = bridgedIn(c); c.Policy.KeepExercise = true }, 4)},
	{row: "too-far", make: from(func(c *progression.Course) {
		*c = bridgedIn(c)
		c.Request.Kit = dumbbells(4, 10)
		c.Policy.KeepExercise = true
	}, 4)},
}

func bridgedIn(*progression.Course) progression.Course { return bridged(quiet{}) }

// quiet stands in for a test where there is none.
type quiet struct{ failer }

func (quiet) Helper()                      {}
func (quiet) Fatalf(text string, v ...any) { panic(text) }

// lookedFor is a course in which 4 and 5 kg were tried after 3 kg, with so much left.
func lookedFor(four, five float64) func(t failer) progression.Course {
	return from(func(c *progression.Course) {
		v := last(c)
		v.Plan.Finding, v.Plan.Sets, v.Plan.Count = &dose.Search{MaxSteps: 2}, 1, 10
		v.Plan.Load, v.Sets = held(3*kilo), nil
		for _, s := range goodVisit().Sets[1:3] {
			for i, left := range []float64{8, four, five} {
				s.Load, s.Reps, s.Effort = units.Mass(3+i)*kilo, 10, units.Must(units.InReserve(left))
				v.Sets = append(v.Sets, s)
			}
		}
	}, 2, 3, 4, 5, 6)
}

// afterTrial is a course in which 4 kg were too much after so many with 3 kg, the
// weight of the visit before.
func afterTrial(reps int) func(t failer) progression.Course {
	return func(t failer) progression.Course {
		c := lookedFor(2, 2)(t)
		v := last(&c)
		for i := range v.Sets {
			if v.Sets[i].Reps = max(v.Sets[i].Reps, reps); v.Sets[i].Load > 3*kilo {
				v.Sets[i].Reps = 6
			}
		}
		v.Plan.Count = reps
		before := pastVisit(c, 3, 3*kilo, 12, 3)
		before.Plan.Finding = nil
		c.Log = []progression.Visit{before, *v}
		return c
	}
}

// Every row decides on some course, and says what it says in words.
func TestEveryRowIsReached(t *testing.T) {
	less, more := progression.Rows()
	words := allWords()
	for i, rows := range [][]progression.TableRow{less, more} {
		cases := [][]rowCase{lessCases, harderCases}[i]
		for j, r := range rows {
			if j >= len(cases) || cases[j].row != r.Name {
				t.Fatalf("no course for the row %s in its place", r.Name)
			}
			c := cases[j].make(t)
			held, first, err := progression.Holding(c, cases[j].waits)
			if err != nil || i == 0 && !slices.Contains(held, r.Name) || i == 1 && (len(first) == 0 || first[0] != r.Name) {
				t.Errorf("%s: %v and %v hold, %v", r.Name, held, first, err)
				continue
			}
			d, err := progression.Decide(c, cases[j].waits)
			if err != nil {
				t.Fatal(err)
			}
			said := false
			for _, why := range d.Reasons {
				if !slices.Contains(r.Codes, why.Code) {
					continue
				}
				said = true
				if words[why.Code].Clinician == "" {
					t.Errorf("%s: %s says nothing to the clinician", r.Name, why.Code)
				}
			}
			if !said && len(r.Codes) > 0 && !hasReason(d, "progression.plan-expired") {
				t.Errorf("%s: none of its reasons in %+v", r.Name, d.Reasons)
			}
		}
	}
}

// orderCases are courses on which a row and the next one of its table both hold,
// beside those of harderCases.
var orderCases = []rowCase{
	{row: "nothing-done", make: from(func(c *progression.Course) { supervised(c); last(c).Sets = nil }, 4, 4.25)},
	{row: "ask-first", make: from(func(c *progression.Course) { supervised(c); c.Plan.Expires = c.Day - 1 }, 4, 4.25)},
	{row: "plan-expired", make: from(func(c *progression.Course) { passedOver(c); c.Plan.Expires = c.Day - 1 }, 4, 4.25)},
	{row: "sets-first", make: from(func(c *progression.Course) { c.Request.Phase, last(c).Plan.Sets = dose.Maintain, 1 }, 4, 4.25)},
	{row: "maintain", make: and(lookedFor(8, 7), func(c *progression.Course) { c.Request.Phase = dose.Maintain })},
	{row: "found", make: and(lookedFor(8, 4), func(c *progression.Course) {
		c.Request.Kit = dumbbells(3, 4, 5, 5.4)
		for i := range last(c).Sets {
			last(c).Sets[i].Reps = 12
		}
	}), waits: progression.Load},
	{row: "next-weight", make: from(func(c *progression.Course) { last(c).Plan.Finding = &dose.Search{}; done(c, 4*kilo, 12, 8) }, 4, 4.25)},
	{row: "resumed", make: from(func(c *progression.Course) {
		done(c, 4*kilo, 10, 8)
		repeat(c, 4)
		last(c).Plan.Finding = &dose.Search{MaxSteps: 1}
		most(c, 4)
	}, 4, 6)},
	{row: "limit", make: from(func(c *progression.Course) { span(c, 12, 12); done(c, 4*kilo, 14, 6); most(c, 4) }, 4, 6)},
	{row: "try", make: and(func(t failer) progression.Course { return squatCourse(t, 4, 6) }, func(c *progression.Course) { done(c, 4*kilo, 10, 8); repeat(c, 4) })},
	{row: "hold", make: from(func(c *progression.Course) { learning(c); last(c).FormLost = screening.Yes }, 4, 6)},
	{row: "familiarising", make: from(learning, 4, 4.45)},
	{row: "pause", make: atTheEnd(4, 0, func(c *progression.Course) { c.Request.Screening.Setting = screening.Alone; done(c, 4*kilo, 20, 6) }, 4, 6)},
	{row: "beside", make: atTheEnd(4, 2, func(c *progression.Course) {
		c.Request.Screening.Setting, c.Request.Guideline = screening.Alone, "acsm2011-strength-novice-intermediate"
		done(c, 4*kilo, 34, 6)
	}, 4, 8)},
	{row: "extra-set", make: atTheEnd(4, 2, func(c *progression.Course) { c.Request.Guideline = "acsm2011-strength-novice-intermediate" }, 4, 10), waits: progression.New},
}

// apart are the rows that never hold together with the next one.
var apart = map[string]string{
	"day-over": "of a visit that is passed over nothing is known that would bring a set",
	"find-on":  "nothing is looked for on after a weight that was too much",
	"limit":    "nothing above a limit is felt",
	"feel":     "what cannot be felt is tried",
}

func and(make func(t failer) progression.Course, change func(c *progression.Course)) func(t failer) progression.Course {
	return func(t failer) progression.Course {
		c := make(t)
		change(&c)
		return c
	}
}

// Two neighbours cannot change places: each row is told from the next one by a
// course on which both hold.
func TestOrderOfRows(t *testing.T) {
	_, more := progression.Rows()
	for i, r := range more[:len(more)-1] {
		told, next := false, more[i+1].Name
		for _, k := range slices.Concat(harderCases, orderCases) {
			if k.row != r.Name {
				continue
			}
			_, held, err := progression.Holding(k.make(t), k.waits)
			if err != nil || len(held) == 0 || held[0] != r.Name {
				t.Errorf("%s: %v, %v", r.Name, held, err)
			}
			told = told || len(held) > 1 && held[1] == next
		}
		if told == (apart[r.Name] != "") {
			t.Errorf("%s and %s: told apart %v", r.Name, next, told)
		}
	}
}

// What lessens is joined in any order.
func TestLessensInAnyOrder(t *testing.T) {
	some := 0
	rapid.Check(t, func(t *rapid.T) {
		c := drawCourse(t)
		for _, all := range [][]worsening{limitsWorse, visitWorse} {
			rapid.SampledFrom(all).Draw(t, "worse").make(t, &c)
		}
		less, _, err := progression.Holding(c, progression.Nothing)
		if err != nil || len(less) < 2 {
			return
		}
		some++
		d, back := nextOf(t, c), units.Must(progression.Joined(c))
		if told(d) != told(back) {
			t.Fatalf("%v: %s, from behind %s", less, told(d), told(back))
		}
	})
	if some == 0 {
		t.Error("no course had two rows")
	}
}

// Whatever a policy takes away, a weight that was found is the one thing that is
// made harder: nothing comes on top of it.
func TestFoundStandsAlone(t *testing.T) {
	for left := range 5 { // in reserve
		c := lookedFor(8, float64(left)+3)(t)
		_, more := progression.Rows()
		for _, r := range more {
			if r.Makes {
				c.Policy.Without = append(c.Policy.Without, r.Name)
			}
		}
		d := nextOf(t, c)
		if what := notOneThing(c, d); len(what) > 0 || d.Change != progression.FindLoad {
			t.Errorf("%d left: %v, %s", left+3, what, tell(d))
		}
	}
}

// A policy may take away what makes harder, and nothing else.
func TestPolicyTakesRowsAway(t *testing.T) {
	_, more := progression.Rows()
	for i, r := range more {
		p := progression.Policy{Without: []string{r.Name}}
		if err := p.Validate(); (err == nil) != r.Makes || err != nil && (paths(err) != "/without/0" || !errors.Is(err, field.ErrUnknown)) {
			t.Errorf("%s: %v", r.Name, err)
		}
		if !r.Makes {
			continue
		}
		c := harderCases[i].make(t)
		c.Policy.Without = p.Without
		if _, held, err := progression.Holding(c, harderCases[i].waits); err != nil || held[0] == r.Name {
			t.Errorf("%s is not taken away: %v, %v", r.Name, held, err)
		}
	}
	if err := (progression.Policy{Without: []string{"eased"}}).Validate(); err == nil {
		t.Error("a row that lessens is taken away")
	}
}

// drawWithout takes rows away in half of the draws.
func drawWithout(t *rapid.T) []string {
	if rapid.Bool().Draw(t, "all rows") {
		return nil
	}
	var names []string
	_, more := progression.Rows()
	for _, r := range more {
		if r.Makes && rapid.IntRange(0, 2).Draw(t, r.Name) == 0 {
			names = append(names, r.Name)
		}
	}
	return names
}

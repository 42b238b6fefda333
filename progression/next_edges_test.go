package progression_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// An edge is a row that changes a course to where a rule begins or ends. want is
// the action, what is made harder, sets × count × kilograms, the end of the range
// and how many steps up may be tried, as told writes them.
type edge struct {
	name  string
	spoil func(c *progression.Course)
	want  string
	why   evidence.ReasonCode
}

// told writes what a decision asks for in few words.
func told(d progression.Decision) string {
	text := fmt.Sprintf("%v, %v", d.Action, d.Change)
	if d.Next == nil {
		return text
	}
	top, _ := d.Next.Span.Max()
	text += fmt.Sprintf(": %d × %d × %v to %d", d.Next.Sets, d.Next.Count, d.Next.Load.Each().Kilograms(), top)
	if f := d.Next.Finding; f != nil {
		text += fmt.Sprintf(", %d up", f.MaxSteps)
	}
	return text
}

// walk decides on each row's change of the course that make returns.
func walk(t *testing.T, make func() progression.Course, rows []edge) {
	t.Helper()
	for _, tt := range rows {
		t.Run(tt.name, func(t *testing.T) {
			c := make()
			tt.spoil(&c)
			d := nextOf(t, c)
			got := told(d)
			if d.Instead != "" {
				got = d.Action.String() // the first dose of another exercise is that of dose.Prescribe
			}
			if got != tt.want || !hasReason(d, tt.why) {
				t.Errorf("%s\nwant %s, %s\n%+v", got, tt.want, tt.why, d.Reasons)
			}
		})
	}
}

// most limits what may be lifted.
func most(c *progression.Course, kg float64) {
	c.Request.Screening.Limits.Masses = []screening.MassLimit{{Region: body.WholeBody, Side: body.Both, Max: units.Must(units.Kilograms(kg)), Author: "a surgeon"}}
}

// learning puts the course into familiarisation by a row with the range, the sets
// and the reserve of the plan: 8 to 12, two at first, at least 3.
func learning(c *progression.Course) {
	c.Request.Phase, c.Request.Guideline = dose.Familiarise, "acsm2011-strength-novice-intermediate"
	last(c).Plan.Sets, last(c).Sets = 2, last(c).Sets[:4]
}

// span makes the plan's range end at top.
func span(c *progression.Course, count, top int) {
	last(c).Plan.Span, last(c).Plan.Count = units.Must(units.Between(8, top)), count
}

// From 4 to 4.25 kg is a sixteenth: shown by 13.6 to failure on Epley's side, so by
// 12 with three in reserve, of which two surely. From 4 to 6 kg it is 31.5, beyond
// every bridge.
func TestNextEdgesOfMore(t *testing.T) {
	walk(t, func() progression.Course { return rowCourse(t, 2, 4, 4.25, 6) }, []edge{
		{"a limit that is the next weight", func(c *progression.Course) { most(c, 4.25) }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"the very day of the last visit", func(c *progression.Course) { c.Day = firstDay }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"a week is no absence, and nothing is asked", func(c *progression.Course) { c.Day = firstDay + 7 }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"of a plan below the range no more are asked for with more load", func(c *progression.Course) { last(c).Plan.Count = 6 }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"a set to come, and repetitions below the top", func(c *progression.Course) {
			last(c).Plan.Sets = 2
			done(c, 4*kilo, 11, 3)
		}, "progress, sets: 3 × 7 × 4 to 20", "progression.one-more-set"},
		{"a set to come, and the dose not done", func(c *progression.Course) {
			last(c).Plan.Sets = 2
			done(c, 4*kilo, 9, 3)
		}, "progress, sets: 3 × 6 × 4 to 20", "progression.one-more-set"},
		{"a set to come, and technique lost", func(c *progression.Course) {
			last(c).Plan.Sets, last(c).FormLost = 2, screening.Yes
		}, "hold, none: 2 × 8 × 4 to 12", "progression.hold"},
		{"a set to come, and nobody watched", func(c *progression.Course) {
			last(c).Plan.Sets = 2
			seenLongAgo(c)
		}, "hold, none: 2 × 8 × 4 to 12", "progression.show-technique"},
		{"below the dose, however easy", func(c *progression.Course) { done(c, 4*kilo, 9, 6) }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"unwell", func(c *progression.Course) { last(c).Unwell = screening.Yes }, "hold, none: 3 × 8 × 4 to 12", "progression.hold"},
		{"nothing recorded of signs", func(c *progression.Course) { last(c).Moment = nil }, "hold, none: 3 × 8 × 4 to 12", "progression.hold"},
		{"sore for long", func(c *progression.Course) { last(c).SorenessDays = 5 }, "hold, none: 3 × 8 × 4 to 12", "progression.hold"},
		{"a plan to 20 that the guideline and the step do not ask for", func(c *progression.Course) { span(c, 10, 20) }, "progress, load: 3 × 6 × 4.25 to 12", "progression.shown"},
		{"learning: the sets to begin with come first", func(c *progression.Course) {
			learning(c)
			last(c).Plan.Sets = 1
		}, "progress, sets: 2 × 8 × 4 to 12", "progression.one-more-set"},
		{"learning: then load, and no set more", learning, "progress, load: 2 × 6 × 4.25 to 12", "progression.shown"},
		{"the top of the range, and nobody watched", func(c *progression.Course) {
			span(c, 12, 12)
			seenLongAgo(c)
		}, "hold, none: 3 × 8 × 4 to 12", "progression.hold"},
		{"in maintenance a set comes back", func(c *progression.Course) {
			c.Request.Phase = dose.Maintain
			last(c).Plan.Sets = 1
		}, "progress, sets: 2 × 8 × 4 to 12", "progression.one-more-set"},
	})
}

// What stands in the way where the harder variant is not to be had: it is not in
// the catalogue, or the kit has no pair for its hold. Twenty with three left, seen once,
// allow fifteen.
func TestNextWithoutTheHarderVariant(t *testing.T) {
	bridged := func() progression.Course {
		c := rowCourse(t, 4)
		span(&c, 20, 20)
		last(&c).Plan.Tempo = dose.Tempo{Lowering: 4, Pausing: 2, Lifting: 2}
		done(&c, 4*kilo, 20, 3)
		return c
	}
	c := bridged()
	if d := nextOf(t, c); d.Change != progression.HarderVariant || d.Action != progression.ChangeVariant {
		t.Fatalf("%s", told(d))
	}
	c.Request.Kit.Dumbbells[0].Count = 1
	if d := nextOf(t, c); told(d) != "hold, none: 3 × 15 × 4 to 20" || !hasReason(d, "progression.kit-ends") || d.Instead != "" {
		t.Errorf("no pair: %s, %+v", told(d), d.Reasons)
	}
	c = bridged()
	c.Catalogue = units.Must(exercise.Catalogue{}.With(alone(c.Request.Exercise)))
	if d := nextOf(t, c); told(d) != "hold, none: 3 × 15 × 4 to 20" || !hasReason(d, "progression.kit-ends") {
		t.Errorf("not in the catalogue: %s", told(d))
	}
	// For one side, an exercise of both sides takes the place of both.
	c = bridged()
	c.Request.Side, last(&c).Plan.Side = body.Left, body.Left
	last(&c).Sets = slices.DeleteFunc(last(&c).Sets, func(s setOf) bool { return s.Side != body.Left })
	if d := nextOf(t, c); d.Change != progression.HarderVariant || d.Next.Side != body.Both {
		t.Errorf("for the left: %s, %+v", told(d), d.Reasons)
	}
	last(&c).Pain.During = score(7)
	again := *last(&c)
	again.Day += 3
	c.Log, c.Day = append(c.Log, again), again.Day+3
	if d := nextOf(t, c); d.Action != progression.ChangeVariant || d.Next.Load.Each() >= 4*kilo || d.Next.Side != body.Both && d.Next.Side != body.Left {
		t.Errorf("easier for the left: %s, %v", told(d), d.Instead)
	}
}

// The words of a large step say what share of all that is moved it is, or that
// this is not known.
func TestNextLargeStepIsNamed(t *testing.T) {
	c := rowCourse(t, 4, 6)
	done(&c, 4*kilo, 14, 6)
	for _, r := range nextOf(t, c).Reasons {
		if r.Code == "progression.large-step" && !strings.Contains(fmt.Sprint(r.Args), "not known") {
			t.Errorf("%+v", r)
		}
	}
}

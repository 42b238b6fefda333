package progression_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A worsening makes one thing of a course worse, or reports that it cannot be.
type worsening struct {
	what string
	make func(t *rapid.T, c *progression.Course) bool
}

func last(c *progression.Course) *progression.Visit { return &c.Log[len(c.Log)-1] }

// limitsWorse makes the limits of the screening tighter.
var limitsWorse = []worsening{
	{"a limit on mass", func(t *rapid.T, c *progression.Course) bool {
		most := units.Mass(rapid.IntRange(0, 24).Draw(t, "most")) * units.Kilogram / 2
		l := &c.Request.Screening.Limits
		l.Masses = append(slices.Clone(l.Masses), screening.MassLimit{Region: body.Elbow, Side: body.Both, Max: most, Author: "a surgeon"})
		return true
	}},
	{"a limit on the share", func(t *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Limits.MaxFraction = rapid.SampledFrom([]units.Fraction{.4, .5, .7}).Draw(t, "share")
		return true
	}},
	{"more reserve", func(t *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Limits.MinReserve = units.RIR(rapid.IntRange(1, 6).Draw(t, "reserve"))
		return true
	}},
	{"moderate effort at most", func(_ *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Limits.MaxIntensity = screening.Moderate
		return true
	}},
	{"a lighter day", func(_ *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Limits = c.Request.Screening.Limits.Join(screening.LighterSession())
		return true
	}},
	{"light and supervised", func(_ *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Meanwhile, c.Request.Screening.Limits.LeastSetting = screening.LightSupervised, screening.InClinic
		return true
	}},
	{"nothing may go on", func(_ *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Meanwhile = screening.Nothing
		return true
	}},
	{"an event", func(_ *rapid.T, c *progression.Course) bool {
		c.Request.Screening.Ended = []screening.Code{"fall"}
		return true
	}},
	{"days missed", func(t *rapid.T, c *progression.Course) bool {
		c.Day += units.Day(rapid.IntRange(1, 90).Draw(t, "days"))
		return true
	}},
	{"absence not known", func(_ *rapid.T, c *progression.Course) bool {
		c.Absence = screening.Unknown
		return true
	}},
	{"absence with a medical cause", func(_ *rapid.T, c *progression.Course) bool {
		c.Absence = screening.Yes
		return true
	}},
	{"technique seen by nobody", func(_ *rapid.T, c *progression.Course) bool {
		c.Request.Technique.Who = ""
		return c.Request.Phase <= dose.Build // from a later phase it is another phase, not an order
	}},
}

// visitWorse makes the last visit worse.
var visitWorse = []worsening{
	{"one repetition fewer", func(t *rapid.T, c *progression.Course) bool {
		return spoilSet(t, c, func(s *setOf) bool { s.Reps--; return s.Reps > 0 })
	}},
	{"less in reserve", func(t *rapid.T, c *progression.Course) bool {
		return spoilSet(t, c, func(s *setOf) bool {
			e, err := units.InReserve(s.Effort.Number() - 1)
			s.Effort = e
			return err == nil
		})
	}},
	{"a set fewer", func(_ *rapid.T, c *progression.Course) bool {
		v := last(c)
		v.Sets = v.Sets[:len(v.Sets)-1]
		return true
	}},
	{"effort not recorded", func(t *rapid.T, c *progression.Course) bool {
		for _, s := range last(c).Sets { // what is not known is no worse than what is bad
			if s.Effort.Number() < float64(last(c).Plan.Reserve.Least) {
				return false
			}
		}
		return spoilSet(t, c, func(s *setOf) bool { s.Effort = units.Effort{}; return true })
	}},
	{"pain", func(t *rapid.T, c *progression.Course) bool {
		p := *last(c).Pain
		more := *p.During + float64(rapid.IntRange(0, 9).Draw(t, "more"))
		p.During = score(min(10, more))
		last(c).Pain = &p
		return true
	}},
	{"pain in another exercise", func(_ *rapid.T, c *progression.Course) bool {
		last(c).HurtElsewhere = []string{"dumbbell shoulder press"}
		return true
	}},
	{"pain not recorded", func(_ *rapid.T, c *progression.Course) bool {
		if *last(c).Pain.During > 2 {
			return false
		}
		last(c).Pain = nil
		return true
	}},
	{"pain of another kind", func(t *rapid.T, c *progression.Course) bool {
		p := *last(c).Pain
		p.Kind = rapid.SampledFrom([]screening.PainKind{screening.ChestPain, screening.SpinePain}).Draw(t, "kind")
		last(c).Pain = &p
		return true
	}},
	{"range lost", func(t *rapid.T, c *progression.Course) bool {
		last(c).RangeLost = rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.Yes}).Draw(t, "range")
		return true
	}},
	{"technique gave way", func(t *rapid.T, c *progression.Course) bool {
		last(c).FormLost = rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.Yes}).Draw(t, "form")
		return true
	}},
	{"nobody watched", func(_ *rapid.T, c *progression.Course) bool {
		last(c).Observer.Who = ""
		return true
	}},
	{"a sign", func(t *rapid.T, c *progression.Course) bool {
		last(c).Moment = &screening.Moment{Signs: []screening.Code{rapid.SampledFrom(signs).Draw(t, "sign")}}
		return true
	}},
	{"nothing recorded of the sets", func(_ *rapid.T, c *progression.Course) bool { last(c).Moment = nil; return true }},
	{"sore", func(_ *rapid.T, c *progression.Course) bool { last(c).SorenessDays = 5; return true }},
	{"unwell", func(_ *rapid.T, c *progression.Course) bool { last(c).Unwell = screening.Yes; return true }},
}

// spoilSet changes one set of the last visit, in a copy.
func spoilSet(t *rapid.T, c *progression.Course, spoil func(*setOf) bool) bool {
	v := last(c)
	v.Sets = slices.Clone(v.Sets)
	return spoil(&v.Sets[rapid.IntRange(0, len(v.Sets)-1).Draw(t, "set")])
}

// The law through Next: one thing worse, or no longer known, never raises the
// load, the sets or the steps, never lowers the reserve, and never gives a dose
// of an exercise that was stopped, eased away or referred.
func TestNextMonotone(t *testing.T) {
	all := slices.Concat(limitsWorse, visitWorse)
	tried(t, func(t *rapid.T) bool {
		before := drawCourse(t)
		after := before
		after.Log = slices.Clone(before.Log)
		i := rapid.IntRange(0, len(all)-1).Draw(t, "worsening")
		was := nextOf(t, before)
		if !all[i].make(t, &after) {
			return false
		}
		is, err := progression.Next(after)
		if err != nil || is.Next == nil || is.Next.Exercise != before.Request.Exercise.ID {
			return false // nothing of this exercise is prescribed any more
		}
		gone := was.Next == nil || was.Next.Exercise != before.Request.Exercise.ID && was.Change != progression.HarderVariant
		if gone {
			t.Fatalf("%s gives a dose where there was none: %v", all[i].what, was.Action)
		}
		if was.Change == progression.HarderVariant {
			return false
		}
		compare(t, all[i].what, before.Request.Kit, was, is)
		return true
	})
}

// setsAsked counts the sets of a visit: those in which heavier weights are tried are among them.
func setsAsked(p dose.Prescription) int {
	if p.Finding != nil {
		return max(p.Sets, 1+p.Finding.MaxSteps)
	}
	return p.Sets
}

func compare(t *rapid.T, what string, kit equipment.Kit, was, is progression.Decision) {
	a, b := *was.Next, *is.Next
	check := func(holds bool, rises string) {
		if !holds {
			t.Fatalf("%s: %s\nbefore %v, %v: %v × %d × %d, reserve %v, %+v\n%+v\nafter  %v, %v: %v × %d × %d, reserve %v, %+v\n%+v", what, rises,
				was.Action, was.Change, a.Load.Each(), a.Sets, a.Count, a.Reserve, a.Finding, was.Reasons,
				is.Action, is.Change, b.Load.Each(), b.Sets, b.Count, b.Reserve, b.Finding, is.Reasons)
		}
	}
	check(b.Load.Each() <= a.Load.Each(), "load rises")
	check(b.Sets <= setsAsked(a), "sets rise")
	check(b.Reserve.Least >= a.Reserve.Least, "reserve falls")
	if b.Finding != nil && a.Finding != nil {
		check(reached(kit, b) <= reached(kit, a), "steps lead to more")
		check(b.Finding.Ceiling == a.Finding.Ceiling || b.Finding.Ceiling > 0 && (a.Finding.Ceiling == 0 || b.Finding.Ceiling <= a.Finding.Ceiling), "ceiling rises")
	}
	check(was.Change == progression.MoreLoad || was.Change == progression.FindLoad || is.Change != progression.MoreLoad, "the load rises where it did not")
	check(!(is.Action == progression.Progress && was.Action == progression.EaseOff), "progress where it was eased")
}

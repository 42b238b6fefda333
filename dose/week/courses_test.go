package week_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"pgregory.net/rapid"
)

// A course is somebody who is planned for week by week, with what they practised.
type course struct {
	profile screening.Profile
	request week.Request
	plan    week.Week
	bad     map[units.Day]bad // what went worse than in the other course
}

// A bad day of one course: less of what was asked, or something that went wrong.
type bad struct {
	part     float64
	hands    bool
	troubles []beside.Trouble
}

// next plans the week from a day on, assessed on it; false where nothing is planned.
func (c *course) next(t *rapid.T, day units.Day) bool {
	c.profile.Day, c.request.Day, c.request.Days = day, day, []units.Day{day, day + 2, day + 4}
	var err error
	if c.request.Screening, err = screening.Assess(c.profile); err != nil {
		t.Fatalf("Assess: %v", err)
	}
	c.plan, err = week.Plan(c.request)
	return err == nil
}

// live takes what was practised on the days of the week into what is known. How much was done
// is told in parts of what asked, the better of two plans, asks for.
func (c *course) live(t *rapid.T, days map[units.Day]bad, asked week.Week) {
	var log []beside.Practised
	for day, how := range days {
		if worse, some := c.bad[day]; some {
			how = bad{min(how.part, worse.part), how.hands || worse.hands, slices.Concat(how.troubles, worse.troubles)}
		}
		for _, i := range c.plan.Beside {
			k := slices.IndexFunc(asked.Beside, func(b beside.Item) bool { return b.Track == i.Track })
			if !i.Dosed() || i.Track == "lifts" {
				continue
			}
			log = append(log, beside.Practised{Day: day, Track: i.Track, Least: int(how.part * float64(measured(asked.Beside[k]))), MoreHands: how.hands, Troubles: how.troubles})
		}
	}
	day := c.request.Day + 7
	_, known, err := beside.MoveOn(log, beside.Situation{Day: day, Screening: c.request.Screening, Goal: c.request.Goal, Fast: c.request.Phase == dose.Power, Known: c.request.Known})
	if err != nil {
		t.Fatalf("MoveOn: %v", err)
	}
	c.request.Known = known
}

// measured is what an item measures: seconds, repetitions or minutes.
func measured(i beside.Item) int {
	if n := i.Seconds + i.Count; n > 0 {
		return n
	}
	return i.Minutes
}

// drawCourse is somebody invented, with some of what is known of them.
func drawCourse(t *rapid.T) course {
	some := func(kind screening.Kind, most int) []screening.Code {
		var codes []screening.Code
		for term := range screening.Codes() {
			if term.Kind == kind {
				codes = append(codes, term.Code)
			}
		}
		return rapid.SliceOfNDistinct(rapid.SampledFrom(codes), 0, most, rapid.ID[screening.Code]).Draw(t, kind.String())
	}
	p := person(rapid.SampledFrom(slices.Collect(screening.Settings())).Draw(t, "setting"), body.Age(rapid.IntRange(50, 92).Draw(t, "age")), some(screening.Condition, 1), some(screening.Disease, 1))
	p.Training = body.Training(rapid.IntRange(1, 3).Draw(t, "training"))
	r := week.Request{
		Goal:  rapid.SampledFrom([]guideline.Goal{guideline.Bone, guideline.Bone, guideline.Power, guideline.Function}).Draw(t, "goal"),
		Phase: rapid.SampledFrom([]dose.Phase{0, dose.Power}).Draw(t, "phase"),
		Tasks: rapid.SliceOfNDistinct(rapid.SampledFrom(slices.Collect(choice.Tasks())), 0, 2, rapid.ID[choice.Task]).Draw(t, "tasks"),
		Kit:   rapid.SampledFrom([]equipment.Kit{hall, {Bands: []string{"soft", "firm"}}}).Draw(t, "kit"),
		Known: beside.Known{Since: firstDay},
	}
	if rapid.Bool().Draw(t, "looked at") {
		r.Known = beside.Known{Stands: new(rapid.IntRange(0, 4).Draw(t, "stands")), Brisk: new(rapid.IntRange(0, 200).Draw(t, "brisk")), SpineFracture: screening.No, Leaks: screening.No, Since: firstDay}
	}
	return course{profile: p, request: r}
}

// worsen makes one thing of the course worse, from now on or on one day of the week.
func (c *course) worsen(t *rapid.T, days map[units.Day]bad) string {
	k := &c.request.Known
	switch rapid.IntRange(0, 9).Draw(t, "worse") {
	case 0, 1:
		var codes []screening.Code
		for term := range screening.Codes() {
			if term.Kind == screening.Condition && c.profile.Conditions.Of(term.Code) == screening.No {
				codes = append(codes, term.Code)
			}
		}
		code := rapid.SampledFrom(codes).Draw(t, "one more condition")
		c.profile.Conditions = screening.AskedFor(append(slices.Clone(c.profile.Conditions.Present), code)...)
		return string(code)
	case 2:
		c.profile.Setting = screening.Alone
		return "alone"
	case 3:
		c.profile.Falls = &screening.FallsScreen{Afraid: screening.Yes, Fell: screening.Yes, Unsteady: screening.Yes}
		return "fell"
	case 4:
		k.SpineFracture, k.Leaks = screening.Yes, screening.Yes
		return "spine and leaks"
	case 5:
		if k.Stands != nil {
			k.Stands = new(rapid.IntRange(0, *k.Stands).Draw(t, "fewer stances"))
		}
		return "stances"
	}
	day := rapid.SampledFrom(sortedDays(days)).Draw(t, "bad day")
	how := bad{rapid.SampledFrom([]float64{1, 0.5, 0}).Draw(t, "part"), rapid.Bool().Draw(t, "hands"), nil}
	if rapid.Bool().Draw(t, "in trouble") {
		how.troubles = []beside.Trouble{rapid.SampledFrom(slices.Collect(beside.Troubles())).Draw(t, "trouble")}
	}
	c.bad = map[units.Day]bad{day: how}
	return "a bad day"
}

func sortedDays(days map[units.Day]bad) (list []units.Day) {
	for day := range days {
		list = append(list, day)
	}
	slices.Sort(list)
	return list
}

// beyond says what the worse plan asks for that the better one does not, or more of it: impact,
// pace and speed, height, seconds without support, or less support.
func beyond(worse, better week.Week) string {
	for _, w := range worse.Beside {
		k := slices.IndexFunc(better.Beside, func(i beside.Item) bool { return i.Track == w.Track })
		if k < 0 {
			return "begun: " + w.Name
		}
		b := better.Beside[k]
		wl, _ := w.Load.Max()
		bl, _ := b.Load.Max()
		same := w.Move == b.Move
		for what, more := range map[string]bool{
			"a dose of ":                       w.Dosed() && !b.Dosed(),
			"more impacts, ":                   w.Kind == beside.Impact && same && w.Sets*w.Count > b.Sets*b.Count,
			"harder impacts, ":                 w.Force > b.Force || w.Effort > b.Effort,
			"higher, ":                         w.Height > b.Height,
			"brisker, ":                        w.BriskMinutes() > b.BriskMinutes(),
			"faster to a heavier load, ":       wl > bl,
			"fast for longer, ":                w.Slower > b.Slower,
			"longer without support, ":         same && w.SecondsFree() > b.SecondsFree(),
			"less support, ":                   w.Hands < b.Hands,
			"nobody at hand, as there was in ": w.Hands == b.Hands && b.Company && !w.Company,
		} {
			if more && !w.Paused {
				return what + w.Name
			}
		}
	}
	lands := func(list []dose.Prescription) (n int) {
		for _, p := range list {
			if ex, _ := exercise.Standard().Get(p.Exercise); ex.Demands.Has(body.Impact) {
				n++
			}
		}
		return n
	}
	if w, b := worse.Sessions[0].Items, better.Sessions[0].Items; lands(w) > lands(b) {
		return "an exercise that lands"
	}
	for _, w := range worse.Sessions[0].Items {
		for _, b := range better.Sessions[0].Items {
			if w.Exercise == b.Exercise && w.Tempo.Fast && !b.Tempo.Fast {
				return "fast: " + w.Name
			}
		}
	}
	return ""
}

const courseWeeks = 6

// Two courses that are alike but for one thing, which gets worse in some week: in no week of
// them does the worse one ask for more of what can hurt.
func TestCoursesAreMonotone(t *testing.T) {
	compared, moved := 0, 0
	rapid.Check(t, func(rt *rapid.T) {
		better := drawCourse(rt)
		worse := better
		turn := rapid.IntRange(0, courseWeeks-2).Draw(rt, "in week")
		how := ""
		for n := range courseWeeks {
			day := firstDay + units.Day(7*n)
			days := map[units.Day]bad{}
			for d := range rapid.IntRange(1, 5).Draw(rt, "days practised") {
				how := bad{part: rapid.SampledFrom([]float64{1, 1, 1, 1, 1, 1, 0.5}).Draw(rt, "part")}
				if rapid.IntRange(0, 40).Draw(rt, "trouble") == 40 {
					how.troubles = []beside.Trouble{rapid.SampledFrom(slices.Collect(beside.Troubles())).Draw(rt, "which")}
				}
				days[day+units.Day(d)] = how
			}
			if n == turn {
				how = worse.worsen(rt, days)
			}
			on, also := better.next(rt, day), worse.next(rt, day)
			if also && !on {
				rt.Fatalf("%s: planned for, where who is better is held", how)
			}
			if !on || !also {
				return // held
			}
			compared++
			if what := beyond(worse.plan, better.plan); what != "" {
				rt.Fatalf("%s, in week %d of one that was worse from week %d: %s\nbefore %+v\nafter %+v", how, n, turn, what, better.plan.Beside, worse.plan.Beside)
			}
			asked := better.plan
			better.live(rt, days, asked)
			worse.live(rt, days, asked)
			for _, i := range better.request.Known.InForce {
				moved += max(0, i.Step-8)
			}
		}
	})
	if compared == 0 || moved == 0 {
		t.Errorf("%d weeks compared, %d steps beyond the eighth: the law was not tried", compared, moved)
	}
}

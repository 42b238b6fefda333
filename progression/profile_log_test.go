package progression_test

import (
	"slices"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// drawLog trains p for one to five visits, each as was decided after those before
// it, and reports whether there is a log. Most people were well then, and
// what stands in the profile came later.
func (p *client) drawLog(t *rapid.T) bool {
	then := p.course
	profile := p.profile
	if !seldom(t, "ill then", 3) {
		profile = wellThen(profile)
	}
	outcome, err := screening.Assess(profile)
	if err != nil {
		t.Fatalf("Assess: %v", err)
	}
	then.Request.Screening = p.limited(outcome)
	if seldom(t, "another phase then", 4) {
		then.Request.Phase = dose.Phase(between(t, "phase then", 0, 4))
	}
	then.Request.Day = firstDay
	f, err := dose.NewFrame(then.Request)
	if err != nil {
		return false // nothing could be done, so that nothing is logged
	}
	day := firstDay
	for range between(t, "visits", 1, 5) {
		then.Day, then.Request.Day = day, day
		dropOld(&then.Request)
		plan, ok := planOf(t, then)
		if !ok {
			break
		}
		then.Log = append(then.Log, drawDone(t, day, plan, f.Table()))
		day += units.Day(drawGap(t))
	}
	p.course.Log = then.Log
	p.course.Day, p.course.Request.Day = day, day
	dropOld(&p.course.Request)
	p.course.Request.Day = 0 // that of the course, which may be spoilt
	if seldom(t, "sessions known", 3) {
		p.course.Sessions = sessions(p.course, between(t, "planned", 0, 9), between(t, "of them done", 0, 9))
	}
	if seldom(t, "assessed since", 6) && len(then.Log) > 0 {
		p.profile.Day = day
	}
	return len(then.Log) > 0
}

// dropOld drops tests that a request would refuse before long.
func dropOld(r *dose.Request) {
	if r.Day-firstDay > 30 {
		r.Estimates, r.Performed = nil, nil
	}
}

func wellThen(p screening.Profile) screening.Profile {
	p.Diseases, p.Symptoms, p.RedFlags, p.Conditions = screening.AskedFor(), screening.AskedFor(), screening.AskedFor(), screening.AskedFor()
	p.BP, p.Restrictions = nil, nil
	return p
}

func drawGap(t *rapid.T) int {
	if seldom(t, "away", 12) {
		return between(t, "days away", 8, 70)
	}
	return between(t, "days", 2, 7)
}

// planOf returns the dose of a visit: what was decided, or a first one.
func planOf(t *rapid.T, c progression.Course) (dose.Prescription, bool) {
	if len(c.Log) > 0 && !seldom(t, "planned anew", 10) {
		d, err := progression.Next(c)
		if err != nil {
			t.Fatalf("Next: %v", err)
		}
		if d.Next != nil && d.Next.Exercise == c.Request.Exercise.ID {
			return *d.Next, true
		}
		if seldom(t, "ends there", 2) {
			return dose.Prescription{}, false
		}
	}
	p, err := dose.Prescribe(c.Request)
	return p, err == nil
}

// drawDone is what was done of a plan, with little amiss.
func drawDone(t *rapid.T, day units.Day, plan dose.Prescription, table *equipment.Table) progression.Visit {
	pain := calmPain()
	v := progression.Visit{
		Day: day, Plan: plan, Moment: &screening.Moment{}, Pain: &pain, RangeLost: screening.No, FormLost: screening.No,
		Observer: dose.Observation{Who: "a colleague", Day: day},
	}
	reps, left := plan.Count, float64(plan.Reserve.Least)
	top, _ := plan.Span.Max()
	switch between(t, "went", 0, 7) {
	case 0, 1:
		reps, left = reps+between(t, "more", 0, 3), min(10, left+float64(between(t, "easier", 0, 4)))
	case 2, 3:
		left = float64(between(t, "clearly easy", 6, 8))
		reps += between(t, "many more", 0, 1) * between(t, "how many", 0, 20)
	case 6:
		reps, left = top+between(t, "beyond", 0, 5), left+float64(between(t, "easier at the top", 0, 2))
	case 7:
		reps = top
	case 4:
		reps = max(1, reps-between(t, "fewer", 0, 4))
	case 5:
		left = max(0, left-float64(between(t, "harder", 0, 3)))
	}
	sets := max(0, plan.Sets-max(0, between(t, "sets left out", -6, 3)))
	for i := range sets {
		each := plan.Load.Each()
		if plan.Finding != nil {
			each = stepsUp(table, each, *plan.Finding, i)
		} else if seldom(t, "another weight", 25) {
			each = other(t, table, each)
		}
		if f := plan.Feel; f != nil && i == plan.Sets-1 {
			v.Sets = append(v.Sets, setsOf(t, plan, day, f.Load.Each(), between(t, "felt", 1, f.Count), float64(between(t, "left of the felt", 0, 9)))...)
			continue
		}
		v.Sets = append(v.Sets, setsOf(t, plan, day, each, reps, left)...)
	}
	if plan.Finding != nil && seldom(t, "searched in one set each", 2) {
		for i := sets; i <= plan.Finding.MaxSteps; i++ {
			v.Sets = append(v.Sets, setsOf(t, plan, day, stepsUp(table, plan.Load.Each(), *plan.Finding, i), reps, left)...)
		}
	}
	drawTrouble(t, &v)
	return v
}

func stepsUp(table *equipment.Table, each units.Mass, f dose.Search, steps int) units.Mass {
	for range min(steps, f.MaxSteps) {
		gap, ok := table.Next(each)
		if !ok || f.Ceiling > 0 && gap.To.Each() > f.Ceiling {
			break
		}
		each = gap.To.Each()
	}
	return each
}

// reached is the weight that the steps of a dose lead to at most.
func reached(kit equipment.Kit, p dose.Prescription) units.Mass {
	table, err := kit.Compile(p.Hold)
	if err != nil {
		return units.MaxMass
	}
	return stepsUp(table, p.Load.Each(), *p.Finding, p.Finding.MaxSteps)
}

func other(t *rapid.T, table *equipment.Table, each units.Mass) units.Mass {
	load, err := table.Nearest(each+units.Mass(between(t, "other", -10, 10))*units.Kilogram/2, equipment.RoundingRule{})
	if err != nil {
		return each
	}
	return load.Each()
}

// setsOf is one set of each side that works by itself, not quite alike.
func setsOf(t *rapid.T, plan dose.Prescription, day units.Day, each units.Mass, reps int, left float64) []setlog.Set {
	sides := []body.Side{plan.Side}
	if plan.OneSided && plan.Side == body.Both {
		sides = []body.Side{body.Left, body.Right}
	}
	var list []setlog.Set
	for _, side := range sides {
		s := setlog.Set{Day: day, Exercise: plan.Exercise, Side: side, Hold: plan.Hold, Load: each, Reps: reps, Effort: units.Must(units.InReserve(left))}
		if s.Hold == body.OneEachHand {
			s.Stated = body.PerHand
		}
		if seldom(t, "tired", 4) {
			s.Reps = max(1, reps-between(t, "fewer in this set", 0, 3))
			s.Effort = units.Must(units.InReserve(max(0, left-float64(between(t, "nearer in this set", 0, 3)))))
		}
		if plan.Measure != exercise.Repetitions && seldom(t, "no effort", 2) || seldom(t, "effort forgotten", 30) {
			s.Effort = units.Effort{}
		}
		if seldom(t, "rated", 20) {
			s.Effort = units.Must(units.OMNI(float64(between(t, "rating", 3, 9))))
		}
		list = append(list, s)
	}
	return list
}

// drawTrouble lets something be amiss, seldom.
func drawTrouble(t *rapid.T, v *progression.Visit) {
	if !seldom(t, "trouble", 5) {
		return
	}
	switch between(t, "which", 0, 9) {
	case 0:
		v.Moment = nil
	case 1:
		if !seldom(t, "something showed", 3) {
			return
		}
		v.Moment = &screening.Moment{Signs: []screening.Code{rapid.SampledFrom(signs).Draw(t, "sign")}}
		if seldom(t, "looked at", 2) {
			v.LookedAt = dose.Observation{Who: "a doctor", Day: v.Day}
		}
	case 2:
		v.Pain.During = score(float64(between(t, "pain", 0, 9)))
		v.Pain.Site = rapid.SampledFrom([]body.Region{0, 0, body.Knee, body.Shoulder}).Draw(t, "site")
	case 3:
		v.Pain = nil
	case 4:
		v.RangeLost = screening.Answer(between(t, "range", 0, 2))
	case 5:
		v.FormLost = screening.Answer(between(t, "form", 0, 2))
	case 6:
		v.Observer = dose.Observation{}
	case 7:
		v.SorenessDays = 5
	case 8:
		v.Unwell = screening.Yes
	case 9:
		v.Pain.NextMorning = score(5)
	}
}

// cloneLog lets one visit be changed in a copy.
func cloneLog(log []progression.Visit) []progression.Visit {
	log = slices.Clone(log)
	for i := range log {
		log[i].Sets = slices.Clone(log[i].Sets)
		if log[i].Pain != nil {
			p := *log[i].Pain
			log[i].Pain = &p
		}
	}
	return log
}

package progression

import (
	"sync"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/strength"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// now is what is seen of a course on its day. Looking fills it once; choosing
// changes nothing in it.
type now struct {
	c     *Course         // without the sets that are queried
	h     history.History // its log
	waits waiting
	taken map[exercise.ID]exercise.ID // what is asked for at the visit, by which exercise
	f     *dose.Frame
	out   dose.Prescription // the frame's outline
	most  units.Mass        // per implement, by every limit

	dayOver   units.Day        // of the last visit, where what was asked at it was that day's alone
	clean     history.Cleaned  // what is queried
	strength  strength.Ability // what is known, for loads
	forCounts strength.Ability // likewise, for counts
	seen      visit.Summary    // the last visit
	ahead                      // the step up from seen.base

	back      *rule.Return // after days missed; nil: none that count
	rung      dose.Step    // the last of the ladder, where it begins anew
	attended  programme.AttendanceAnswer
	recurring bool // one of the visits before spoke for less too

	before  *dose.Prescription // the last plan, that before a trial
	step    dose.Step          // that dose again
	next    allowed            // of the weight after seen.base
	here    allowed            // of seen.base; see countHere
	fitted  fit                // within what the last visit showed
	variant func() *offer      // the harder variant, looked at once and only if it comes to that
}

// look sees a course in the frame of its day. trained is the day of the last set, one
// that is queried too.
func (n *now) look(f *dose.Frame, trained units.Day) (*now, error) {
	n.f, n.out, n.most = f, f.Outline(), f.Ceiling()
	c := n.c
	var err error
	if n.seen, err = n.last().Read(n.asked(), f.Table()); err != nil {
		return n, err
	}
	if n.ahead, err = n.above(n.seen.Base); err != nil {
		return n, err
	}
	n.next = n.ofNext()
	if err := n.byRule(); err != nil {
		return n, err
	}
	if n.clean.Open > 0 && n.gate(visit.GateReps).Advice == rule.Raise {
		n.answer(visit.GateReps, rule.Ruling{Advice: rule.Keep, Reasons: []evidence.Reason{n.clean.Of().Reason}})
	}
	if n.back, err = n.missed(trained); err != nil {
		return n, err
	}
	if len(c.Sessions) > 0 { // of none nothing is concluded
		if n.attended, err = programme.Attendance(c.Sessions, c.Day); err != nil {
			return n, err
		}
	}
	if n.seen.Gates.Advice >= rule.Ease { // what was referred then has been looked at since
		if n.recurring, err = n.h.EasedBefore(recurring); err != nil {
			return n, err
		}
	}
	n.before = n.beforeTrial()
	n.step = n.same(n.before)
	if given.Searches(&n.last().Plan) { // what was done while looking counts as sets of the visit
		n.step.Sets = max(n.step.Sets, min(n.target(), n.last().Done()))
	}
	n.here = n.countHere()
	n.fitted = n.fit(n.step)
	n.variant = sync.OnceValue(n.harderVariant)
	if n.back != nil && n.back.Anew {
		if n.rung, err = n.lastRung(); err != nil {
			return n, err
		}
		r := n.f.Request() // of somebody who begins; what visits showed still bounds the dose
		r.Phase, r.Estimates, r.Performed, r.Done = dose.Familiarise, nil, nil, nil
		return n.in(r)
	}
	return n, nil
}

// in returns what is seen in another frame.
func (n *now) in(r dose.Request) (*now, error) {
	f, err := dose.NewFrame(r)
	if err != nil {
		return n, field.At("/request", err)
	}
	other := *n
	other.f, other.out = f, f.Outline()
	other.next = other.ofNext()
	other.here = other.countHere()
	return &other, nil
}

// asked is what a weight has to leave that was tried: what the chance allows of it, too.
func (n *now) asked() visit.Trial {
	a := visit.Trial{Least: n.out.Reserve.Least, Floor: n.bottom(), Rated: n.c.Policy.Rule == rule.NameOMNIBelow8, Most: units.MaxMass}
	plan := &n.last().Plan
	if !given.Searches(plan) || !n.strength.Known() {
		return a
	}
	a.Most = plan.Load.Each()
	n.seen.Base = a.Most
	for gap, ok := n.f.Table().Next(a.Most); ok && n.lifted(gap.To.Each()); gap, ok = n.f.Table().Next(a.Most) {
		j := n.gap(gap)
		if j == nil || !n.shows(j) {
			break
		}
		a.Floor, a.Most = min(a.Floor, n.floor(j)), gap.To.Each()
	}
	return a
}

func (n *now) last() *visit.Visit { return &n.c.Log[len(n.c.Log)-1] }

// counts reports whether the exercise counts repetitions. Only then can a curve
// and a reserve be used.
func (n *now) counts() bool { return n.out.Measure == exercise.Repetitions }

// lightest returns the lightest weight of the kit.
func (n *now) lightest() units.Mass { return n.f.Table().Lightest().Each() }

// below returns the next lighter weight of the kit, and each if there is none.
func (n *now) below(each units.Mass) units.Mass {
	load, err := n.f.Table().Nearest(each-1, equipment.RoundingRule{})
	if err != nil {
		return each
	}
	return load.Each()
}

// bottom is the least count of the range.
func (n *now) bottom() int {
	low, _ := n.out.Span.Min()
	return max(1, low)
}

// dayIsLighter reports whether the day's screening asks for a lighter session.
func (n *now) dayIsLighter() bool { return n.c.Request.Screening.Limits.Lighten != screening.Lighten{} }

// same is the dose of a plan again, with the weight to go on from.
func (n *now) same(plan *dose.Prescription) dose.Step {
	s := dose.Step{Load: n.seen.Base, Last: n.seen.Base, Count: plan.Count, Sets: n.last().Plan.Sets, UpTo: n.upTo()}
	if n.counts() {
		s.Lowering, s.Pausing = plan.Tempo.Lowering, plan.Tempo.Pausing
	}
	s.Count = min(s.Count, s.UpTo)
	if n.out.Phase == dose.Maintain {
		s.Sets = min(s.Sets, n.out.Sets)
	}
	switch planned := n.last().Plan.Load.Each(); {
	case s.Load < planned:
		s.Count = n.bottom()
	case s.Load > planned: // found: no more often than it was done, or than a set is worth
		s.Count = min(s.Count, max(n.fewest(s.Load), n.seen.Reps))
	}
	return s
}

// beforeTrial returns the last plan, and after a trial the one with the same load
// before it, if there is one with no fewer repetitions.
func (n *now) beforeTrial() *dose.Prescription {
	trial := &n.last().Plan
	if !given.Searches(trial) || len(n.seen.Visit.Sets) == 0 {
		return trial
	}
	if p := n.h.PlannedBefore(len(n.c.Log)-1, n.seen.Base); p != nil && p.Count >= trial.Count {
		return p
	}
	return trial
}

// over returns how far beyond the top of the range the policy's rule asks for.
func (n *now) over() int {
	top, _ := n.out.Span.Max()
	return n.c.Policy.Rule.Past(top)
}

// byRule, a part of looking, lets the policy's rule answer for the gate of repetitions, and the rule
// that goes by rating for that of effort too.
func (n *now) byRule() error {
	if err := n.byPain(); err != nil {
		return err
	}
	name := n.c.Policy.Rule
	if name == 0 || len(n.seen.Visit.Sets) == 0 || n.seen.Base <= 0 {
		return nil
	}
	a, err := n.ask(name)
	if err != nil {
		return err
	}
	if n.seen.Visit.Met() {
		n.answer(visit.GateReps, a)
	}
	if name == rule.NameOMNIBelow8 && n.gate(visit.GateEffort).Advice == rule.Keep && !n.seen.Known {
		n.answer(visit.GateEffort, a)
	}
	return nil
}

// gate is what a gate says; the report has every one, in order.
func (n *now) gate(g visit.Gate) *visit.GateAnswer { return &n.seen.Gates.Gates[g-1] }

// answer lets a ruling speak for a gate.
func (n *now) answer(g visit.Gate, a rule.Ruling) {
	n.gate(g).Advice, n.gate(g).Reasons = a.Advice, a.Reasons
	n.seen.Gates.Join()
}

// byPain lets the policy's rule answer for pain that the model lets be and that
// only keeps the load.
func (n *now) byPain() error {
	p := n.seen.Visit.Pain
	if n.c.Policy.Pain != rule.NamePainGate || p == nil || p.Kind != screening.OrdinaryPain || p.During == nil || p.After == nil || p.NextMorning == nil || p.WeeklyTrend == 0 {
		return nil
	}
	if n.gate(visit.GatePain).Advice != rule.Keep || len(n.seen.Visit.HurtElsewhere) > 0 || screening.SorenessLasts(n.seen.Visit.SorenessDays) {
		return nil
	}
	a, err := rule.PainGate(max(*p.During, *p.After), n.seen.Visit.RangeLost, screening.No) // the target has its own gate
	if err == nil {
		n.answer(visit.GatePain, a)
	}
	return err
}

// ask puts the last visit to a rule. The target is the top of the guideline's
// range, or lower where the rule would ask for more than bridging ever does.
func (n *now) ask(name rule.Name) (rule.Ruling, error) {
	top, _ := n.out.Span.Max()
	top = min(top, n.bridgeEnd()-n.over())
	sets := n.seen.Visit.Sets
	switch name {
	case rule.NameOverTarget:
		return rule.OverTarget(n.seen.Base, top, n.seen.Reps)
	case rule.NameTwoForTwo:
		return rule.TwoForTwo(top, n.h.LastSets(n.seen.Base))
	case rule.NameRepsThenLoad:
		return rule.RepsThenLoad(n.seen.Base, units.Must(units.Between(min(n.bottom(), top), top)), n.seen.Visit.LastReps())
	case rule.NameTopOfRange:
		reps := make([]int, len(sets))
		for i, s := range sets {
			reps[i] = s.Reps
		}
		return rule.TopOfRange(reps)
	}
	hardest, all := history.Hardest(n.seen.Visit.Sets)
	if !all {
		return rule.Ruling{Rule: name, Advice: rule.Keep, Reasons: []evidence.Reason{because("progression.no-rating")}}, nil
	}
	return rule.OMNIBelow8(hardest)
}

package progression

import (
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
	offered **offer            // the harder variant once it was looked at; see variant
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
	n.offered = new(*offer)
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
func (n *now) dayIsLighter() bool {
	return n.c.Request.Screening.Limits.Lighten != screening.Lighten{}
}

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

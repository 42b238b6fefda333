package progression

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Next decides what becomes of one exercise at the visit of c.Day.
//
// It asks, in this order: whether somebody else has to look first; whether the
// day's screening, the kit or the setting rules the exercise out; whether days
// were missed; and then the gates on the last visit (see [visit.Gates]). Whatever
// speaks for less is joined, and nothing is made harder on the same day. Only
// where nothing does, one thing is made harder: a set, up to those that the
// plan builds up to; the next weight, if what was done shows that it can be
// lifted at the bottom of the range in reserve; until then repetitions, slower
// lowering, a pause, an extra set, a harder variant. While sets end with more in
// reserve than can be counted it goes on finding the load.
//
// Every dose comes from [dose.Frame.Continue], so that no limit is loosened, and
// every load-rise waits for technique that somebody saw. Alone no load is looked
// for, no step of more than half of the weight held, or a tenth of all that is
// moved, is taken, and nothing heavier than was lifted before goes over head or
// face: repetitions and pace take its place, and the decision says what waits. A
// new exercise begins with its lightest weight. Where attendance is low a set fewer
// is done than the plan builds up to; on an assessment whose review is over, nothing
// is prescribed; a plan that has expired is made no harder. The weaker side leads.
// It looks at the visits of the last twelve weeks, four at least, at those since
// the last assessment, at all from the latest at which a set was done on, at who
// watched last, and at any that ended with something for somebody else and was not
// looked at. Of older visits the order of the days alone is checked: a log needs no more.
//
// The errors are those of [Course.Validate] and [dose.NewFrame], and a
// [field.ErrMissing] at /absence where the last set lies more than a week back.
func Next(c Course) (Decision, error) { return decide(&c, nothingWaits, nil) }

// A waiting is what of an exercise waits for others of the same visit.
type waiting uint8

const (
	nothingWaits waiting = iota
	loadWaits            // enough other loads rise
	newWaits             // enough other exercises are new
	findWaits            // enough other loads are looked for
)

// decide is Next, without what waits or others have taken, of a course that is its own.
func decide(c *Course, waits waiting, taken map[exercise.ID]exercise.ID) (Decision, error) {
	n, d, err := see(c, waits, taken)
	if n == nil || err != nil {
		return d, err
	}
	if d, err = n.choose(d); d.Next == nil {
		d.Reasons = told.LeftOut(d.Reasons)
	}
	return d, err
}

// see looks at a course, in which it writes what it found, and begins its decision; n
// is nil where that is all of it.
func see(c *Course, waits waiting, taken map[exercise.ID]exercise.ID) (n *now, d Decision, err error) {
	h := c.history()
	from := h.Reach()
	if err := c.check(from); err != nil {
		return nil, d, err
	}
	refers := c.referred() // whichever visit it was
	c.Request.Day, c.Request.Technique, c.Log = c.Day, h.Technique(), h.Log[from:]
	c.Request.Screening = c.Request.Screening.Tightest()
	h.Log = c.Log
	c.Request.Done = h.Done()
	d.because(programme.Due(c.Plan, c.Day)...)
	if why := c.Request.Screening.Waived; why != "" {
		d.because(evidence.Because("dose.waived").With(evidence.Text("why", why)))
	}
	if len(refers) > 0 {
		return nil, d.refer(refers...), nil
	}
	n = new(now)
	n.c, n.h, n.waits, n.taken = c, h, waits, taken
	trained := h.LastDone()
	c.Request.Missed = max(0, int(c.Day-trained)-given.Week)
	c.Request.Kit = c.Request.Kit.Once(c.Request.Kit)
	if t, err := c.Request.Kit.Compile(c.Request.Exercise.Hold); err == nil { // else the frame says what is wrong
		n.clean = h.Clean(t, from)
		c.Log, n.h.Log = n.clean.Log, n.clean.Log
		n.strength, n.forCounts = n.h.Strength()
	}
	if !c.Request.Exercise.MovesBody {
		c.Request.Ability = n.strength
	}
	f, err := dose.FrameOf(&c.Request)
	if barred, ok := errors.AsType[*dose.ConstraintError](err); ok {
		d, err = n.barred(d, barred)
		return nil, d, err
	}
	if err != nil {
		return nil, Decision{}, field.At("/request", err)
	}
	n, err = n.look(f, trained)
	d.sees(n)
	if errors.Is(err, rule.ErrMedicalCause) {
		return nil, d.refer(because("progression.medical-absence")), nil
	}
	if err != nil {
		return nil, Decision{}, err
	}
	if left, same := n.h.SameTold(); same {
		d.because(because("progression.same-told").With(evidence.Count("visits", history.SameVisits), evidence.Number("left", left)))
	} else if n.h.FarBelow() {
		d.because(because("progression.far-below").With(evidence.Days("days", given.KnownDays)))
	}
	return n, d, nil
}

// choose joins what lessens the dose; where nothing does, the first row of harder
// that holds decides.
func (n *now) choose(d Decision) (Decision, error) {
	var asks ask
	some := false
	for i := range lessens {
		if l := &lessens[i]; l.holds(n) {
			some, asks = true, asks|l.asks
			d.because(l.says(n)...)
		}
	}
	if some {
		return n.ease(d, asks)
	}
	r, c := n.harden()
	d.because(c.why...)
	switch {
	case c.new != nil && c.new.err != nil:
		return Decision{}, c.new.err
	case c.new != nil:
		d.Change = r.change
		return d.replace(c.new.ex, *c.new.p), nil
	}
	d.Rise = c.rise
	action := Progress
	if r.change == NoChange {
		action = HoldDose
	}
	return n.say(d, action, r.change, c.step)
}

// ease doses what the rows that lessen ask for.
func (n *now) ease(d Decision, asks ask) (Decision, error) {
	e, err := n.lessen(asks)
	if err != nil {
		return Decision{}, err
	}
	if e.variant {
		d.because(because("progression.easier-variant"))
		return e.in.standIn(d, e.in.easedRequest(), true)
	}
	fitted := e.in.fit(e.step)
	if d.because(e.in.saysFit(fitted)...); !fitted.fell {
		d.because(e.why...)
	}
	return e.in.say(d, EaseOff, NoChange, fitted.step)
}

// say asks the frame for a step and looks at the weight after it.
func (n *now) say(d Decision, a Action, change Change, s dose.Step) (Decision, error) {
	was := &n.last().Plan
	hurt := len(n.last().HurtElsewhere) > 0 // so that nothing before a trial is gone back to either
	if hurt && s.Load >= was.Load.Each() {
		s.Load, s.Sets, s.Count = was.Load.Each(), min(s.Sets, was.Sets), min(s.Count, was.Count)
	}
	held, _ := n.counted(s.Load)
	s.Held = min(s.Count, held)
	p, err := n.f.Continue(s)
	if barred, ok := errors.AsType[*dose.ConstraintError](err); ok {
		return n.barred(d, barred)
	}
	if err != nil {
		return Decision{}, err
	}
	if hurt && p.Reserve.Least < was.Reserve.Least {
		p.Reserve = was.Reserve
	}
	asMuch := p.Load.Each() >= was.Load.Each() && p.Sets >= was.Sets && p.Count >= was.Count && p.Reserve.Least <= was.Reserve.Least
	switch {
	case a == HoldDose && p.Load.Each() < was.Load.Each():
		a = EaseOff
	case a == EaseOff && n.seen.Gates.Advice < rule.Ease && was.Finding == nil && was.Feel == nil && asMuch:
		a = HoldDose // nothing was left to take; what a gate eases stays eased
	}
	d.Reasons = told.Agree(d.Reasons, asMuch, p.Count)
	d.Action, d.Change, d.Next = a, change, &p
	d.because(n.saysEnd(&p)...)
	d.because(n.saysRange(&p)...)
	if p.Mode == dose.WithoutLoad {
		return d, nil
	}
	if bridges := change >= SlowerLowering && change <= ExtraSet; (a == HoldDose || bridges) && n.seen.Visit.Met() { // no weight comes of what was done
		d.because(n.f.KitFalls(p.Load.Each())...)
	}
	after, err := n.above(p.Load.Each())
	if err != nil {
		return Decision{}, err
	}
	d.Jump, d.RepsBefore = after.jump, n.repsBefore(p.Load.Each(), after)
	if after.jump != nil {
		after.jump.say()
		d.because(after.jump.Reasons...)
	}
	return d, nil
}

// sees notes what was looked at: queries, each reason for them once in a row, and
// gates.
func (d *Decision) sees(n *now) {
	d.Queries, d.Gates = n.clean.Asked, n.seen.Gates.Gates
	var asked evidence.ReasonCode
	for _, q := range n.clean.Asked {
		if q.Reason.Code != asked {
			d.because(q.Reason)
		}
		asked = q.Reason.Code
	}
}

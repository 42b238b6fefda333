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
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Next decides what becomes of one exercise at the visit of c.Day.
//
// It asks, in this order: whether somebody else has to look first; whether the
// day's screening, the kit or the setting rules the exercise out; then what lessens the
// dose, all of it joined; and only where nothing does, what makes one thing harder. Both
// tables stand in the comment of the package.
//
// Every dose comes from [dose.Frame.Continue], so that no limit is loosened, and
// every load-rise waits for technique that somebody saw. A new exercise begins with its
// lightest weight. On an assessment whose review is over nothing is prescribed. The weaker
// side leads. It looks at the visits of the last twelve weeks, four at least, at those since
// the last assessment, at all from the latest at which a set was done on, at who
// watched last, and at any that ended with something for somebody else and was not
// looked at. Of older visits the order of the days alone is checked: a log needs no more.
//
// The errors are those of [Course.Validate] and [dose.NewFrame], and a
// [field.ErrMissing] at /absence where the last set lies more than a week back.
func Next(c Course) (Decision, error) {
	was := c // decide changes its own
	d, err := decide(&c, nothingWaits, nil)
	if err != nil || was.Usual == nil {
		return d, err
	}
	c = was
	c.Request.Screening = *was.Usual
	usual, err := decide(&c, nothingWaits, nil)
	if err != nil {
		return Decision{}, err
	}
	d.ofDay(&was, &usual)
	return d, nil
}

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
		n.h.Log = n.clean.Log
		n.strength, n.forCounts = n.h.Strength()
		if n.dayOver = n.h.PassOver(&n.clean, n.dayIsLighter()); n.dayOver > 0 {
			d.because(because("progression.goes-on").With(evidence.Day("day", n.dayOver)))
		}
		c.Log = n.h.Log
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
		return e.in.standIn(d, eased(e.in.c.Request), true)
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
	held := len(n.last().HurtElsewhere) > 0 || n.dayOver > 0 // so that nothing before a trial is gone back to either
	if held && s.Load >= was.Load.Each() {
		s.Load, s.Sets, s.Count = was.Load.Each(), min(s.Sets, was.Sets), min(s.Count, was.Count)
	}
	counted, _ := n.counted(s.Load)
	s.Held = min(s.Count, counted)
	p, err := n.f.Continue(s)
	if barred, ok := errors.AsType[*dose.ConstraintError](err); ok {
		d.Reasons = told.Refused(d.Reasons)
		return n.barred(d, barred)
	}
	if err != nil {
		return Decision{}, err
	}
	if (held || a == EaseOff && n.seen.Gates.Advice >= rule.Ease) && p.Reserve.Least < was.Reserve.Least {
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
	d.Jump, d.RepsBefore = after.jump, n.repsBefore(p.Load.Each(), after.jump)
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
	for i, q := range d.Queries {
		if i == 0 || q.Reason.Code != d.Queries[i-1].Reason.Code {
			d.because(q.Reason)
		}
	}
}

// referred returns what somebody else has to look at first: an event since the
// assessment that ends the plan, or any visit that ended so and was not looked at and
// followed by an assessment.
func (c *Course) referred() []evidence.Reason {
	if ended := c.Request.Screening.Ended; len(ended) > 0 {
		return []evidence.Reason{because("progression.plan-ended").With(evidence.ID("event", ended[0]))}
	}
	h := c.history()
	if v, why := h.Refers(); v != nil {
		code := map[bool]evidence.ReasonCode{false: "progression.referred", true: "progression.looked-at"}[v.LookedAt.Made()]
		return append(why, because(code).With(evidence.Day("day", v.Day), evidence.Text("who", v.LookedAt.Who)))
	}
	return nil
}

// refer prescribes nothing.
func (d Decision) refer(why ...evidence.Reason) Decision {
	d.because(why...)
	d.Action, d.Change, d.Next = StopAndRefer, NoChange, nil
	return d
}

// barred answers what screening, kit or setting rules out.
func (n *now) barred(d Decision, err *dose.ConstraintError) (Decision, error) {
	d.because(err.Constraint)
	d.because(err.Free...)
	d.Action = HoldDose
	switch {
	case errors.Is(err, dose.ErrNoDose) && n.c.Request.Screening.Plan == screening.SettleFirst:
		d.because(because("progression.settle-first"))
	case err.Constraint.Code == "dose.review-overdue":
		d.because(because("progression.assess-anew"))
	case errors.Is(err, dose.ErrNoDose):
		d.Action = StopAndRefer
	default:
		return n.standIn(d, n.c.Request, false)
	}
	return d, nil
}

// repsMayRise reports whether the dose was done and nothing stands against more
// load but repetitions, technique that nobody saw, or effort that nobody noted.
func (n *now) repsMayRise() bool {
	for _, g := range n.seen.Gates.Gates {
		unseen := g.Gate == visit.GateTechnique && !given.Yes(n.seen.Visit.FormLost)
		unrated := g.Gate == visit.GateEffort && n.unrated()
		if g.Advice != rule.Raise && g.Gate != visit.GateReps && !unseen && !unrated {
			return false
		}
	}
	return n.seen.Visit.Met()
}

// unrated reports whether the effort of a set was not recorded, on a scale that
// the gate or the policy's rule can go by.
func (n *now) unrated() bool {
	if !n.counts() {
		return !n.seen.AllRated()
	}
	return n.gate(visit.GateEffort).Advice != rule.Raise && !n.seen.Known
}

// hints say what would let the exercise go on where it was not recorded.
func (n *now) hints() []evidence.Reason {
	if len(n.seen.Visit.Sets) == 0 {
		return nil
	}
	return told.Hints(n.seen.Visit, n.counts(), n.unrated())
}

// beyondPublished never lets a step beyond the published size pass in silence.
func (j *Jump) beyondPublished() []evidence.Reason {
	if j.Within {
		return nil
	}
	return told.Step(j.External, j.Moved, j.share(), j.From)
}

// saysEnd says that a count fell since the range ends lower than it did.
func (n *now) saysEnd(p *dose.Prescription) []evidence.Reason {
	if p.Load.Each() != n.before.Load.Each() || p.Count != n.step.UpTo || p.Count >= n.before.Count {
		return nil
	}
	return []evidence.Reason{because("progression.range-ends").With(evidence.Count("count", p.Count))}
}

// saysRange says that more repetitions than the guideline's are a bridge, and which
// weight would make them needless.
func (n *now) saysRange(p *dose.Prescription) []evidence.Reason {
	top, _ := n.out.Span.Max()
	if !n.counts() || p.Count <= top || p.Mode == dose.WithoutLoad {
		return nil
	}
	most, _ := rule.StepShare().Max()
	upTo, err := given.Plus(p.Load.Each(), most)
	if err != nil {
		return nil
	}
	return []evidence.Reason{because("progression.above-range").With(
		evidence.Count("count", p.Count), evidence.Count("range", n.out.Span), evidence.Term("goal", n.c.Request.Goal.String()), evidence.Mass("from", p.Load.Each()), evidence.Mass("up to", upTo))}
}

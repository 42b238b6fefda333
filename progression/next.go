package progression

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Next decides what becomes of one exercise at the visit of c.Day.
//
// It asks, in this order: whether somebody else has to look first; whether the
// day's screening, the kit or the setting rules the exercise out; whether days
// were missed; and then the gates on the last visit (see [Gates]). Whatever
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
// new exercise begins with its lightest weight. Where attendance is low a set is
// taken away; on an assessment whose review is over, nothing is prescribed; a plan
// that has expired is made no harder. The weaker side leads.
// It looks at the visits of the last twelve weeks, four at the least, at those since
// the last assessment, at all from the latest at which a set was done on, and at who
// watched last. Of older visits the order of the days alone is checked: a log needs
// no more, however long.
//
// The errors are those of [Course.Validate] and [dose.NewFrame], and an
// [field.ErrMissing] at /absence where the last set lies more than a week back.
func Next(c Course) (Decision, error) { return decide(c, nothingWaits) }

// A waiting is what of an exercise waits for others of the same visit.
type waiting uint8

const (
	nothingWaits waiting = iota
	loadWaits            // enough other loads rise
	newWaits             // enough other exercises are new
)

// decide is Next, without what waits.
func decide(c Course, waits waiting) (Decision, error) {
	from := c.reach()
	if err := c.check(from); err != nil {
		return Decision{}, err
	}
	c.Request.Day, c.Request.Technique, c.Log = c.Day, c.technique(), c.Log[from:]
	c.Request.Screening = c.Request.Screening.Tightest()
	c.Request.Done = c.done()
	n := next{c: c, waits: waits, passed: from}
	n.d.because(programme.Due(c.Plan, c.Day)...)
	if why := c.Request.Screening.Waived; why != "" {
		n.d.because(evidence.Because("dose.waived").With("why", why))
	}
	if why := c.referred(); len(why) > 0 {
		return n.refer(why...), nil
	}
	f, err := dose.NewFrame(c.Request)
	var barred *dose.ConstraintError
	if errors.As(err, &barred) {
		return n.barred(barred)
	}
	if err != nil {
		return Decision{}, field.At("/request", err)
	}
	if err := n.frame(f); err != nil {
		return Decision{}, err
	}
	back, missed, err := n.missed()
	switch {
	case errors.Is(err, rule.ErrMedicalCause):
		return n.refer(evidence.Because("progression.medical-absence", factMedical)), nil
	case err != nil:
		return Decision{}, err
	}
	return n.carryOn(back, missed)
}

// A next is a decision on its way.
type next struct {
	c       Course
	waits   waiting
	passed  int // visits of the log that are not looked at
	f       *dose.Frame
	out     dose.Prescription // the frame's outline
	most    units.Mass        // per implement, by every limit
	trained units.Day         // of the last visit with any set

	doubtful []int   // places of the visits with sets that are queried
	seen     reading // the last visit
	d        Decision

	// The step up from seen.base, nil at the top of the kit, and the repetitions
	// to failure that show that it can be done; infinite where nothing does.
	jump   *Jump
	needed float64
	again  bool // sets with the next weight itself show that it can be done
	vain   bool // they show that it could not

	unattended bool // a heavier weight waits for somebody beside
}

func (n *next) last() *Visit { return &n.c.Log[len(n.c.Log)-1] }

// counts reports whether the exercise counts repetitions, so that a curve and a
// reserve say something.
func (n *next) counts() bool { return n.out.Measure == exercise.Repetitions }

// frame takes the frame of the day and reads the last visit in its light.
func (n *next) frame(f *dose.Frame) error {
	n.f, n.out, n.most = f, f.Outline(), f.Ceiling()
	n.trained = n.c.lastDone()
	n.d.Queries = n.clean(f.Table())
	var asked evidence.Reason
	for _, q := range n.d.Queries {
		if asked.Code != q.Reason.Code {
			n.d.because(q.Reason)
		}
		asked = q.Reason
	}
	var err error
	if n.seen, err = n.last().read(trial{n.out.Reserve.Least, n.c.Policy.Rule == rule.NameOMNIBelow8}, f.Table()); err != nil {
		return err
	}
	if err := n.lookAhead(n.seen.base); err != nil {
		return err
	}
	n.endSooner()
	if err := n.byRule(); err != nil {
		return err
	}
	n.d.Gates = n.seen.gates.Gates
	return nil
}

// dose asks the frame for a step and looks at the weight after it.
func (n *next) dose(a Action, change Change, s dose.Step) (Decision, error) {
	p, err := n.f.Continue(s)
	var barred *dose.ConstraintError
	if errors.As(err, &barred) {
		return n.barred(barred)
	}
	if err != nil {
		return Decision{}, err
	}
	n.d.Action, n.d.Change, n.d.Next = a, change, &p
	n.noteRange(p)
	if p.Mode != dose.WithoutLoad {
		if err := n.lookAhead(p.Load.Each); err != nil {
			return Decision{}, err
		}
		n.d.Jump, n.d.RepsBefore = n.jump, n.repsBefore()
		if n.jump != nil {
			n.d.because(n.jump.Reasons...)
		}
	}
	return n.d, nil
}

func (n *next) because(code evidence.Code, facts ...evidence.FactID) {
	n.d.because(evidence.Because(code, facts...))
}

// lightest returns the lightest weight of the kit.
func (n *next) lightest() units.Mass { return n.f.Table().Lightest().Each }

// below returns the next lighter weight of the kit, and each if there is none.
func (n *next) below(each units.Mass) units.Mass {
	load, err := n.f.Table().Nearest(each-1, equipment.Policy{})
	if err != nil {
		return each
	}
	return load.Each
}

// dayIsLighter reports whether the day's screening asks for a lighter session.
func (n *next) dayIsLighter() bool {
	return n.c.Request.Screening.Limits.Lighten != screening.Lighten{}
}

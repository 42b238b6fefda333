package progression

import (
	"cmp"
	"sort"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Jump is the step from one weight to the next that can be held.
type Jump struct {
	From     units.Mass     `json:"from"` // per implement
	To       equipment.Load `json:"to"`
	Step     units.Mass     `json:"step"`              // per implement
	External units.Fraction `json:"external,omitzero"` // step over the mass held; 0 from an unloaded start
	Moved    units.Fraction `json:"moved,omitzero"`    // step over all that is moved; 0 if the moved body mass was not given
	// Within reports whether External lies within the published 2 to 10 per
	// cent. A larger step is common with dumbbells and never passed over in silence.
	Within  bool              `json:"within"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// NextJump returns the step up from the weight each in the kit's table, and
// false at the top of the kit. moved is the part of the body that is lifted
// with the weight, 0 if not given: a percentage of the dumbbell alone misleads
// where the body does most of the work.
func NextJump(t *equipment.Table, each, moved units.Mass) (Jump, bool, error) {
	if moved < 0 {
		return Jump{}, false, field.New("/moved", moved, "0 kg or more", field.ErrOutOfRange)
	}
	j, err := stepUp(t, each, moved)
	if j == nil {
		return Jump{}, false, field.At("/moved", err)
	}
	j.say()
	return *j, true, nil
}

// stepUp is NextJump, without its reasons; nil at the top of the kit.
func stepUp(t *equipment.Table, each, moved units.Mass) (*Jump, error) {
	if gap, ok := t.Next(each); ok {
		return over(gap, moved)
	}
	return nil, nil
}

// say gives a step its reasons.
func (j *Jump) say() {
	if j.Reasons == nil {
		j.Reasons = []evidence.Reason{because("progression.jump").With(evidence.Mass("from", j.From), evidence.Mass("to", j.To.Each()), evidence.Share("share", j.External))}
	}
}

// over returns the step over a gap in the kit, without its reasons: most are only looked at.
func over(gap equipment.Gap, moved units.Mass) (*Jump, error) {
	j := &Jump{From: gap.From, To: gap.To, Step: gap.Step, External: gap.Share}
	j.Within = gap.Share > 0 && rule.StepShare().Contains(gap.Share)
	if moved > 0 {
		var err error
		if j.Moved, err = history.OfMoved(gap, moved); err != nil {
			return nil, err
		}
	}
	return j, nil
}

// share returns the step as a share of all that is moved, or of the weight held
// where that is not known: the larger of the two, so the more cautious.
func (j *Jump) share() units.Fraction {
	if j.Moved > 0 {
		return j.Moved
	}
	return j.External
}

const (
	farShare  units.Fraction = 0.05 // of a step, above which fewer repetitions do
	farFloor                 = 6    // repetitions
	feelShare units.Fraction = 0.15 // of a step, above which the weight is felt
)

// over reports whether the step is larger than a share, or of a size that is not known.
func (j *Jump) over(most units.Fraction) bool { return j.share() <= 0 || j.share() > most }

// ahead is the step up from a weight, and what the log shows of it.
type ahead struct {
	jump  *Jump // nil at the top of the kit
	again bool  // sets with the next weight itself show it
	vain  bool  // they show that it could not be done
}

// above looks at the step to the next weight above each.
func (n *now) above(each units.Mass) (ahead, error) {
	a := ahead{jump: n.jump}
	if a.jump == nil || a.jump.From != each { // else it is the step that was looked at
		var err error
		if a.jump, err = stepUp(n.f.Table(), each, n.h.Moved()); a.jump == nil {
			return ahead{}, field.At("/body_mass/moved", err)
		}
	}
	a.again, a.vain = n.h.Recall(a.jump.To.Each(), feelEvery, n.bottom(), n.out.Reserve.Least)
	a.again = a.again && n.calm()
	return a, nil
}

// beyond returns the step from the present weight to the one after j, nil if
// there is none.
func (n *now) beyond(j *Jump) *Jump {
	gap, ok := n.f.Table().Next(j.To.Each())
	if !ok {
		return nil
	}
	return n.gap(equipment.Gap{From: j.From, To: gap.To})
}

// gap returns the step over a gap of which only the ends are known, nil where it
// cannot be told.
func (n *now) gap(gap equipment.Gap) *Jump {
	gap.Step = gap.To.Each() - gap.From
	var err error
	if gap.Share, err = gap.Step.Share(gap.From); err != nil {
		return nil
	}
	far, _ := over(gap, n.h.Moved())
	return far
}

// floor returns the fewest repetitions with which the weight that j leads to is taken.
func (n *now) floor(j *Jump) int {
	if n.c.Request.Exercise.MovesBody || !j.over(farShare) && n.out.Phase != dose.Familiarise {
		return n.bottom()
	}
	return n.atLeast(cmp.Or(n.c.Policy.Floor, farFloor))
}

// withinLimits reports whether there is a next weight that no limit forbids.
func (n *now) withinLimits() bool { return n.jump != nil && n.jump.To.Each() <= n.most }

// shown reports whether the chance allows the next weight; where no repetitions
// are counted, whether its own sets showed it or, of a step that is not big, the last
// visits with the present one.
func (n *now) shown() bool { return n.jump != nil && n.shows(n.jump) }

func (n *now) shows(j *Jump) bool {
	if !n.counts() {
		return j.To.Each() == n.jump.To.Each() && (n.again || !n.vain && n.ratedTwice() && (!j.big() || n.longEasy(j)))
	}
	count, ok := n.allows(j.To.Each())
	return ok && count >= n.floor(j)
}

// mayRaise reports whether the next weight is shown, lies within every limit,
// and was not just tried in vain.
func (n *now) mayRaise() bool {
	return n.withinLimits() && n.seen.Gates.Advice == rule.Raise && !n.seen.Tried && n.shown()
}

func (n *now) rises() bool {
	return n.mayRaise() && !n.barredAlone(n.jump) && !n.setsCome() && (!n.cameDown() || n.calm())
}

// cameDown reports whether the next weight was the dose not long ago: after a weight was
// eased two calm visits come first, whatever the strength.
func (n *now) cameDown() bool { return n.counts() && n.h.Asked(n.jump.To.Each(), feelEvery) }

func (n *now) riseWaits() bool { return n.waits == loadWaits && n.rises() }

// raise takes the next weight, as often as the chance allows.
func (n *now) raise() choice {
	j := n.furthest()
	s := n.step
	s.Count = min(s.Count, n.last().Plan.Count) // of a trial fewer were asked for than before it
	s.Load, s.Last, s.UpTo, s.Lowering, s.Pausing = j.To.Each(), n.lastFor(j.To.Each()), 0, 0, 0
	why := because("progression.done-before").With(evidence.Mass("next", s.Load))
	if count, ok := n.allows(s.Load); ok {
		s.Count = min(s.Count, n.countOf(count, n.floor(j))) // never more than before: one thing at a time
		why = because("progression.shown").With(evidence.Mass("next", s.Load), evidence.Count("count", count))
	} else {
		s.Count = min(n.bottom(), s.Count)
		if !n.again {
			why = because("progression.rated-twice").With(evidence.Mass("next", s.Load))
		}
	}
	return choice{step: s, why: append([]evidence.Reason{why}, j.beyondPublished()...), rise: j}
}

// countOf is the count that goes with a weight of which so many are allowed: to the
// top of the range, no further at first.
func (n *now) countOf(allowed, least int) int {
	top, _ := n.out.Span.Max()
	return max(1, min(allowed, max(top, least)))
}

// furthest returns the step to the furthest weight that is shown too and lies within
// the published size of a step, where the next one is smaller: fine steps, or a body
// that moves with the weight. Alone, and beyond twice the weight held, it is the next one.
func (n *now) furthest() *Jump {
	most, _ := rule.StepShare().Max()
	last := n.jump
	for to := n.beyond(last); to != nil; to = n.beyond(to) {
		if n.alone() || to.External <= 0 || to.External > 1 || to.share() > most || to.To.Each() > n.most || n.lifted(to.To.Each()) || n.barredAlone(to) || !n.shows(to) || !n.passes(last, to, most) {
			break
		}
		last = to
	}
	last.say()
	return last
}

// passes reports whether a step may pass over a weight: by the published size in the hand, or where the
// chance allows the whole range with the weight, so that nothing is left to work through.
func (n *now) passes(over, to *Jump, most units.Fraction) bool {
	top, _ := n.out.Span.Max()
	count, ok := n.allows(over.To.Each())
	why := because("progression.passed-over").With(evidence.Mass("passed", over.To.Each()), evidence.Mass("to", to.To.Each()), evidence.Count("count", count))
	if to.External <= most {
		why, count = because("progression.steps-at-once").With(evidence.Mass("from", to.From), evidence.Mass("to", to.To.Each()), evidence.Share("share", to.External)), top
	}
	to.Reasons = []evidence.Reason{why}
	return ok && count >= top
}

// limited reports whether a limit forbids the next weight, which nothing else does.
func (n *now) limited() bool {
	return n.seen.Gates.Advice == rule.Raise && n.jump != nil && n.jump.To.Each() > n.most
}

func (n *now) saysLimit() evidence.Reason {
	return because("progression.limit").With(evidence.Mass("next", n.jump.To.Each()), evidence.Mass("most", n.most))
}

// easiest is read of a set that was told as easier than can be counted.
const easiest = 7 // repetitions left

// beyondReach reports whether the next weight could be neither shown nor felt, however
// well all that is asked for is done. It goes by exercise, kit and row alone, so
// that nothing that went worse brings what takes the place of a weight.
func (n *now) beyondReach() bool {
	if n.jump == nil || !n.counts() {
		return n.jump == nil
	}
	near := nearlyAll
	if !n.c.Request.Exercise.MovesBody { // of which none is tried that could not be felt, again where it was in vain
		near = (1 + leastFelt/units.Fraction(epleyReps)) * (1 + feelAgain)
	}
	share, err := n.h.WithBody(n.jump.To.Each()).Share(n.h.WithBody(n.seen.Base))
	return err != nil || share*near > 1+units.Fraction(n.bridgeEnd()+easiest)/epleyReps
}

const epleyReps = history.EpleyReps // of 1RM = load × (1 + repetitions/30)

// nearlyShown reports whether the present weight, done easily enough, would show the
// next one.
func (n *now) nearlyShown() bool {
	return !n.waitsForSomebody() && !n.beyondReach() && !n.outOfReach() && (n.counts() || !n.vain)
}

func (n *now) waitForReserve() choice {
	code := evidence.ReasonCode("progression.more-reserve")
	if !n.counts() {
		if n.jump.big() && len(n.saysDeclined(NoChange)) > 0 { // which says what alone would bring it
			return n.stay()
		}
		code = "progression.once-more"
	}
	return n.stay(because(code).With(evidence.Mass("next", n.jump.To.Each())))
}

// repsBefore returns the fewest repetitions with a weight which, told with the reserve
// asked at every visit, show the one after in the end, and 0 if none do.
func (n *now) repsBefore(from units.Mass, to *Jump) int {
	if to == nil || !n.counts() || !n.strength.Known() {
		return 0
	}
	low, end := n.bottom(), n.bridgeEnd()
	more := sort.Search(max(0, end-low+1), func(i int) bool {
		a := strength.Ability{}.Seen(1, n.out.Reserve.Least, setlog.Set{Hold: body.OneHand, Load: n.h.WithBody(from), Reps: low + i})
		a.Variance = n.strength.Variance
		return n.showsBy(a, to, n.lastFor(to.To.Each()))
	})
	if low+more > end {
		return 0
	}
	return low + more
}

// showsBy reports whether the weight that j leads to would be shown by so much strength, within
// the band of the goal too, which goes by what is known.
func (n *now) showsBy(a strength.Ability, j *Jump, last units.Mass) bool {
	to, floor, p := j.To.Each(), n.floor(j), n.prospect(j.To.Each())
	a.AtLeast, a.Untold, p.Last = n.strength.AtLeast, false, n.h.WithBody(last)
	count, _ := a.Most(p, n.f.Chance())
	if count < floor || n.c.Request.Exercise.MovesBody || to > n.most {
		return count >= floor
	}
	r := n.f.Request()
	r.Ability = a
	if f, err := dose.NewFrame(r); err == nil {
		count, _ = f.Allows(to, last)
	}
	return count >= floor
}

// outOfReach reports whether no set that may be asked for would show the next weight, were
// all of it easy at every visit: neither the last of the range nor one in which it is felt.
func (n *now) outOfReach() bool {
	if n.jump == nil || !n.counts() || n.c.Request.Exercise.MovesBody || !n.strength.Known() {
		return false
	}
	easily := func(each units.Mass, reps int) bool {
		var a strength.Ability
		for range feelEvery {
			a = a.Seen(1, n.out.Reserve.Least, setlog.Set{Hold: body.OneHand, Load: each, Reps: reps, Effort: units.Must(units.InReserve(easiest))})
		}
		return n.showsBy(a, n.jump, each)
	}
	feels := n.jump.over(feelShare) && n.c.Request.Screening.Limits.LeastCount <= 1
	return !easily(n.seen.Base, n.bridgeEnd()) && !(feels && easily(n.jump.To.Each(), n.toFeel()))
}

package dose

import (
	"cmp"
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/demand"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// bound joins every limit on the mass of an implement into f.most, and says in
// the outline which there are. Restrictions are said by [Frame.massCautions].
func (f *Frame) bound() {
	f.most = units.MaxMass
	if !loaded(f.r) || f.r.Exercise.Hold == body.OnBand {
		return
	}
	tighten := func(most units.Mass, why ...evidence.Reason) {
		f.most = min(f.most, most)
		f.g.Reasons = append(f.g.Reasons, why...)
	}
	for _, limit := range f.r.massLimits() {
		tighten(f.r.each(limit))
	}
	if f.r.Bound > 0 {
		tighten(f.r.Bound, evidence.Because("dose.bound", factMost).With(evidence.Mass("most", f.r.Bound)))
	}
	if most, ok := f.r.Exercise.FirstMass.Max(); ok && f.r.Screening.Who.Training == body.Novice && !f.r.Technique.Made() {
		tighten(most, f.r.firstMassReason())
	}
	switch share := f.r.Screening.Limits.MaxFraction; {
	case share <= 0:
	case f.estimated(): // said where the load is worked out; what sets or the test show at least holds
		shown, _ := strength.Ability{}.Tested(*f.estimate).OneRM()
		tighten(share1RM(max(f.oneRM, shown, f.r.liftsSurely()), share))
	default:
		tighten(f.underShare(share))
	}
}

func (r *Request) firstMassReason() evidence.Reason {
	return evidence.Because("dose.first-mass", r.Exercise.FirstMassFact).With(evidence.Masses("first", r.Exercise.FirstMass))
}

// underShare returns the most that a limit on the share of a maximum allows
// without an estimate: that share of what the sets that were done show that can
// be lifted at least. Where nothing shows it, or the body is most of what is
// lifted, the lightest weight is left, if it is light enough to begin with unknown.
func (f *Frame) underShare(share units.Fraction) (units.Mass, evidence.Reason) {
	surely := f.r.liftsSurely()
	most, unknown := share1RM(surely, share), min(f.table.Lightest().Each(), f.r.mostUnknown())
	if most >= unknown && surely > 0 {
		return most, evidence.Because("dose.share-from-done", factShareDone).With(evidence.Share("most", share), evidence.Mass("surely", surely), evidence.Mass("ceiling", most))
	}
	return unknown, evidence.Because("dose.kept-lightest", factUnknownShare).With(evidence.Share("most", share), evidence.Mass("first", f.r.mostUnknown()))
}

// share1RM returns a share of a maximum, rounded down; none where it has no answer.
func share1RM(oneRM units.Mass, share units.Fraction) units.Mass {
	most, err := oneRM.Scale(share, units.Down)
	if err != nil {
		return 0
	}
	return most
}

// mostUnknown is the most that is taken under a limit on the share of a maximum
// of which nothing is known: the first weight of the exercise, or what is known
// of the one that it replaces.
func (r *Request) mostUnknown() units.Mass {
	first, ok := r.Exercise.FirstMass.Max()
	if !ok {
		first = leastFirstMass
	}
	return max(first, r.Bound)
}

// liftsSurely returns the one-repetition maximum that the sets that were done
// show at least, that of the weaker side for work on both, and zero where
// they show none.
func (r *Request) liftsSurely() units.Mass {
	if r.Exercise.MovesBody || r.Exercise.Measure != exercise.Repetitions {
		return 0
	}
	best := map[body.Side]units.Mass{}
	for _, s := range r.Done {
		best[s.Side] = max(best[s.Side], r.shows(s))
	}
	if r.Performed != nil {
		best[r.Performed.Side] = max(best[r.Performed.Side], r.shows(*r.Performed))
	}
	if r.Side == body.Both {
		return max(best[body.Both], min(best[body.Left], best[body.Right]))
	}
	return max(best[body.Both], best[r.Side])
}

// shows returns the maximum that one set shows at least, by the house
// equation that gives less up to 10 repetitions; zero for a set of no known
// reserve, or one that says nothing any more.
func (r *Request) shows(s setlog.Set) units.Mass {
	each, err := s.Each()
	rir, unrated := s.Effort.RIR()
	if err != nil || unrated != nil || given.StillSays(r.Day, r.Screening.TestsFrom, s.Day) != nil {
		return 0
	}
	least, _ := rir.Min()
	left := min(max(0, least-reserveError), uncountable-reserveError)
	reps := min(float64(s.Reps)+float64(left), aboutTen)
	oneRM, err := onerm.Brzycki.OneRM(each, reps)
	if err != nil {
		return 0
	}
	return oneRM
}

// massLimits are the limits of screening on work that the exercise does.
func (r *Request) massLimits() []screening.MassLimit {
	return slices.DeleteFunc(slices.Clone(r.Screening.Limits.Masses), func(l screening.MassLimit) bool { return !demand.Binds(l, &r.Exercise, r.Side) })
}

// each is the limit for one implement: one that is not on an arm is on all that is held.
func (r *Request) each(l screening.MassLimit) units.Mass {
	if r.Exercise.Hold == body.OneEachHand && !demand.OfArm(l.Region) {
		return l.Max / 2
	}
	return l.Max
}

// massCautions say which limits there are on the mass, and what they leave of
// the kit. They name the exercise: what binds one is not to be said of all.
func (f *Frame) massCautions() []evidence.Reason {
	var list []evidence.Reason
	for _, l := range f.r.massLimits() {
		list = append(list, evidence.Because("dose.restriction", "screening.restriction").With(
			evidence.ID("exercise", f.r.Exercise.ID), evidence.Text("author", cmp.Or(l.Author, "somebody unnamed")), evidence.Text("most", l.Max.Short(units.Down)+f.heldAs(l)), evidence.Text("place", place(l))))
	}
	if f.mostSaid() == 0 {
		return list
	}
	allowed, err := f.table.Nearest(f.most, equipment.RoundingRule{})
	if err != nil {
		return list // no weight at all, and no dose
	}
	return append(list, evidence.Because("dose.most", factMost).With(evidence.ID("exercise", f.r.Exercise.ID), evidence.Text("most", asTaken(allowed)), evidence.Mass("limit", f.most)))
}

// mostSaid returns the most per implement, zero where the kit ends below it.
func (f *Frame) mostSaid() units.Mass {
	if f.most > f.table.Heaviest().Each() {
		return 0
	}
	return f.most
}

// heldAs says to a reader of two weights whether a limit is on each or on both.
func (f *Frame) heldAs(l screening.MassLimit) string {
	switch {
	case f.r.Exercise.Hold != body.OneEachHand:
		return ""
	case demand.OfArm(l.Region):
		return " in each hand"
	}
	return " in both hands together"
}

// place says where a limit is, such as "right shoulder".
func place(l screening.MassLimit) string {
	region := cmp.Or(l.Region, body.WholeBody).String()
	if l.Side == body.Left || l.Side == body.Right {
		return l.Side.String() + " " + region
	}
	return region
}

// asTaken says a weight in the unit marked on it, where one is.
func asTaken(l equipment.Load) string {
	text := l.Each().Short(units.Down)
	if parts := l.Parts(); len(parts) == 1 {
		text = parts[0].Mass.String()
	}
	if l.Hold() == body.OneEachHand {
		text += " in each hand"
	}
	return text
}

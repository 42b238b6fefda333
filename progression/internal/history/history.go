package history

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A History is the log of one exercise, and what it is read by.
type History struct {
	Request  *dose.Request
	Log      []visit.Visit // the oldest first
	Day      units.Day     // of the visit that is decided on
	BodyMass units.Mass    // 0: not given
	ByRating bool          // the policy's rule goes by rating
}

// Reach returns the place of the first visit that a decision may look at: those of the
// last twelve weeks, four at least, those since the last assessment, and all from the
// latest at which a set was done on.
func (h *History) Reach() int {
	i, age, done := len(h.Log), 0, false
	for ; i > 0; i-- {
		v := &h.Log[i-1]
		age += h.GapAfter(i - 1)
		near := len(h.Log)-i < leastVisits || age <= given.KnownDays || int(h.Day-v.Day) <= shownDays
		if !near && done && v.Day < h.Request.Screening.Day {
			break
		}
		done = done || len(v.Sets) > 0
	}
	return i
}

// gravity orders where visits send somebody, by the first of their reasons.
var gravity = map[evidence.ReasonCode]int{"progression.look-first": 1, "progression.see-today": 2, "progression.help-now": 3}

// Refers returns the visit, however long ago, that ended with something for somebody else,
// and why, unless somebody has looked since and an assessment has followed; nil for none.
// Of several it is one that nobody looked at, of those the gravest, then the last.
func (h *History) Refers() (graver *visit.Visit, why []evidence.Reason) {
	outcome := &h.Request.Screening
	if worst := (screening.Pain{}); !outcome.MayBeFracture(worst) {
		outcome = nil // then no pain may be
	}
	for i := len(h.Log) - 1; i >= 0; i-- {
		told := h.Log[i].Refers(outcome)
		if len(told) == 0 { // of most
			continue
		}
		switch v := &h.Log[i]; {
		case !v.LookedAt.Made() && (graver == nil || graver.LookedAt.Made() || gravity[told[0].Code] > gravity[why[0].Code]):
			graver, why = v, told
		case v.LookedAt.Made() && graver == nil && v.Day >= h.Request.Screening.Day:
			graver, why = v, told[1:] // nobody is to be sent anywhere now
		}
	}
	return graver, why
}

const (
	leastVisits = 4
	shownDays   = 12 * given.Week // for which a set may show what can be lifted
)

// GapAfter returns the days from a visit to the next one, or to today. A break of up
// to four weeks counts as one: what it costs is the ladder's to take off.
func (h *History) GapAfter(i int) int {
	next := h.Day
	if i+1 < len(h.Log) {
		next = h.Log[i+1].Day
	}
	gap := int(next - h.Log[i].Day)
	if gap <= given.KnownDays {
		return min(gap, given.Week)
	}
	return gap
}

// LastDone returns the day of the last visit with any set, of the first visit
// where there was none.
func (h *History) LastDone() units.Day {
	for i := len(h.Log) - 1; i > 0; i-- {
		if len(h.Log[i].Sets) > 0 {
			return h.Log[i].Day
		}
	}
	return h.Log[0].Day
}

// LastRise returns the day of the last visit that was planned with more load than the one
// before, of the first visit where none was.
func (h *History) LastRise() units.Day {
	for i := len(h.Log) - 1; i > 0; i-- {
		if h.Log[i].Plan.Load.Each() > h.Log[i-1].Plan.Load.Each() {
			return h.Log[i].Day
		}
	}
	return h.Log[0].Day
}

// Technique returns who saw the technique last: what the request says, or what the
// latest visit does at which somebody watched.
func (h *History) Technique() dose.Observation {
	seen := h.Request.Technique
	for i := range h.Log {
		if o := &h.Log[len(h.Log)-1-i].Observer; o.Made() {
			if !seen.Made() || o.Day > seen.Day {
				seen = *o
			}
			break
		}
	}
	return seen
}

// A Cleaned is a log in which nothing doubtful counts for more than was asked.
type Cleaned struct {
	Log     []visit.Visit
	Without []int         // places of the visits that lack doubtful sets
	Asked   []visit.Doubt // the doubtful sets of the last visits
	// Open is 1 where every set of the last visit is doubtful, 2 where every one of that
	// before it is; 0: neither.
	Open int
}

// AskedAgain is at how many visits a doubtful set is asked about, and how many visits in a
// row are calm: one with such a set is not.
const AskedAgain = 2

// Clean takes the doubtful sets out of the log. One that was too light counts for what it
// shows against the dose, as though it was done with the planned weight, and where the
// visit has no others never for more than was asked: what was done badly would else be
// better logged with a slip. Where nobody watched
// a visit at which form was kept, by the person's own word, somebody's look within
// the four weeks before holds. The caller's log stays as it is; passed visits of it
// are not looked at.
func (h *History) Clean(t *equipment.Table, passed int) (c Cleaned) {
	c.Log = h.Log
	asked, mine := h.Request.Technique, false
	var seen dose.Observation
	change := func() {
		if !mine {
			c.Log, mine = slices.Clone(c.Log), true
		}
	}
	for i := range c.Log {
		if sets, doubtful := c.Log[i].WithoutQueried(passed+i, t); doubtful != nil {
			change()
			c.clean(i, sets, doubtful)
		}
		v := &c.Log[i]
		if asked.Made() && asked.Day <= v.Day && asked.Day > seen.Day {
			seen = asked
		}
		switch {
		case v.Looked():
			seen = v.Observer
		case v.FormLost == screening.No && seen.Made() && seen.Day <= v.Day && int(v.Day-seen.Day) <= given.KnownDays:
			change()
			c.Log[i].Observer = seen
		}
	}
	return c
}

// Of is the doubt about the visit that has no other sets.
func (c Cleaned) Of() visit.Doubt {
	if c.Open == 1 {
		return c.Asked[len(c.Asked)-1]
	}
	return c.Asked[0]
}

// clean takes what is doubtful out of a visit that has other sets, or none.
func (c *Cleaned) clean(i int, sets []setlog.Set, doubtful []visit.Doubt) {
	v, ago := &c.Log[i], len(c.Log)-i
	whole := len(sets) == 0
	for _, d := range doubtful {
		s := v.Sets[d.Set]
		less := v.Less(s)
		several := v.Plan.Feel != nil || given.Searches(&v.Plan) // it may have been another one
		if d.Load >= v.Plan.Load.Each() || !whole && (several || !less) {
			continue
		}
		if s.Load, s.Reps = v.Plan.Load.Each(), min(s.Reps, v.Plan.Count); s.Hold.Implements() > 1 {
			s.Stated = body.PerHand
		}
		if !less {
			s.Reps, s.Effort = v.Plan.Count, units.Effort{}
		}
		sets = append(sets, s)
	}
	if len(sets) < len(v.Sets) {
		c.Without = append(c.Without, i)
	}
	if v.Sets = sets; ago > AskedAgain {
		return
	}
	c.Asked = append(c.Asked, doubtful...)
	if whole {
		c.Open = ago
	}
}

// Done returns what is known to have been done, where a limit on the share of a
// maximum may rest on it: the sets of the log whose load is not doubtful.
func (h *History) Done() []setlog.Set {
	list := slices.Clip(h.Request.Done)
	if h.Request.Screening.Limits.MaxFraction <= 0 {
		return list
	}
	table, err := h.Request.Kit.CompileFor(h.Request.Exercise)
	if err != nil {
		return list // the frame says what is wrong with it
	}
	for i := range h.Log {
		sets, _ := h.Log[i].WithoutQueried(i, table)
		for _, s := range sets {
			s.Day = h.Log[i].Day
			list = append(list, s)
		}
	}
	return list
}

// Heaviest returns the heaviest weight in the log.
func (h *History) Heaviest() units.Mass {
	most := units.Mass(0)
	for i := range h.Log {
		for j := range h.Log[i].Sets {
			most = max(most, given.Each(h.Log[i].Sets[j]))
		}
	}
	return most
}

// Lifted reports whether one of the last so many visits has a set with a weight: visits
// and not days, so that nothing comes because of a gap between them.
func (h *History) Lifted(each units.Mass, visits int) bool {
	for i := max(0, len(h.Log)-visits); i < len(h.Log); i++ {
		if Lifts(&h.Log[i], each) {
			return true
		}
	}
	return false
}

// Lifts reports whether a visit has a set with a weight.
func Lifts(v *visit.Visit, each units.Mass) bool {
	for i := range v.Sets {
		s := &v.Sets[i]
		if s.Load < each { // none weighs more than all
			continue
		}
		if m, _ := s.Hold.Each(s.Load, s.Stated); m == each {
			return true
		}
	}
	return false
}

// Asked reports whether one of the last so many visits was planned with a weight or more.
func (h *History) Asked(each units.Mass, visits int) bool {
	for i := max(0, len(h.Log)-visits); i < len(h.Log); i++ {
		if h.Log[i].Plan.Load.Each() >= each {
			return true
		}
	}
	return false
}

// PlannedBefore returns the last dose with a weight, before a place, for which no other was
// looked; nil: there is none.
func (h *History) PlannedBefore(place int, each units.Mass) *dose.Prescription {
	for i := place - 1; i >= 0; i-- {
		if p := &h.Log[i].Plan; !given.Searches(p) && p.Load.Each() == each {
			return p
		}
	}
	return nil
}

// Declined reports whether at one of the last so many visits more than each, or than a
// heavier weight, was to be felt, or tried of a weight that was the dose before, and was not.
func (h *History) Declined(each units.Mass, visits int) bool {
	for i := max(0, len(h.Log)-visits); i < len(h.Log); i++ {
		v := &h.Log[i]
		at := v.Plan.Load.Each()
		more := func(m units.Mass) bool { return m > at }
		asked := v.Plan.Feel != nil || given.Searches(&v.Plan) && slices.ContainsFunc(h.Log[:i], func(v visit.Visit) bool { return v.Plan.Load.Each() == at })
		if at >= each && asked && len(v.SetsWith(more)) == 0 {
			return true
		}
	}
	return false
}

// LastSets returns the repetitions of the last set of each visit planned at a
// load, on the weaker side, the oldest first.
func (h *History) LastSets(each units.Mass) []int {
	var reps []int
	for i := range h.Log {
		v := &h.Log[i]
		if len(v.Sets) > 0 && v.Plan.Load.Each() == each {
			reps = append(reps, v.LastReps())
		}
	}
	return reps
}

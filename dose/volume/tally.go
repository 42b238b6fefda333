package volume

import (
	"fmt"
	"math"
	"math/bits"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Tally adds up sets by week. It is fed by one goroutine at a time; tallies
// of one [Counter] that were fed apart can be merged.
type Tally struct {
	counter *Counter
	weeks   map[ISOWeek]*weekSums
	week    ISOWeek   // of last
	last    *weekSums // where the last set went
}

// maxWeekSets keeps every sum of a week within its type: a set adds less than
// 2^37 of anything that is summed as an int64.
const maxWeekSets = 1 << 25

// sides are numbers for the left and the right.
type sides [2]int64

func (s sides) plus(t sides) sides { return sides{s[0] + t[0], s[1] + t[1]} }

// worked is one set: which sides did it.
func worked(s body.Side) sides {
	switch s {
	case body.Left:
		return sides{1, 0}
	case body.Right:
		return sides{0, 1}
	}
	return sides{1, 1}
}

type muscleSums struct {
	prime, synergist sides
	days             uint8
}

type liftSums struct {
	of        *counted
	sets      sides
	daily     [daysInWeek]sides
	reps      int64 // of both sides
	least     int   // repetitions, or seconds or metres, of a set that counts
	most      int
	metres    int64
	held      VolumeLoad
	moved     [2]VolumeLoad // of the body: at least and at most
	noBody    int64
	noMass    int64 // sets with a band
	tension   int64 // microseconds
	timed     int64 // repetitions with a known length
	untimed   int64
	share     int64 // millionths of 1RM, summed over repetitions
	shared    int64 // repetitions
	low, high int64 // millionths of a repetition in reserve
	rated     int64 // sets
	unrated   int64
}

type weekSums struct {
	done, counted, leftOut, noReserve int64
	days                              uint8
	daily                             [daysInWeek]VolumeLoad
	muscles                           [numMuscles]muscleSums
	lifts                             []liftSums
}

// Add adds the set s. What a set adds is known before anything is changed, so
// an error leaves t as it was: those of [setlog.Set.Validate]; a
// [field.ErrMissing] for a day not given; a [field.ErrUnknown] for an exercise
// not in the catalogue; a [field.ErrConflict] for a load above ten times the
// one-repetition maximum; a [field.ErrOverflow] beyond 33 million sets a week.
func (t *Tally) Add(s setlog.Set) error {
	if t == nil || t.counter == nil {
		return field.Bad(nil, "a tally that a counter made", field.ErrMissing)
	}
	one, week, err := t.counter.weigh(s)
	if err != nil {
		return err
	}
	if week != t.week || t.last == nil {
		if t.weeks[week] == nil {
			t.weeks[week] = &weekSums{}
		}
		t.week, t.last = week, t.weeks[week]
	}
	if t.last.done == maxWeekSets {
		return tooMany(week)
	}
	t.last.add(one)
	return nil
}

func tooMany(w ISOWeek) error {
	return field.Bad(w, "at most 33 million sets a week", field.ErrOverflow)
}

// A weighed set is what it adds.
type weighed struct {
	liftSums
	day     int // of the week, from Monday
	verdict verdict
}

func (c *Counter) weigh(s setlog.Set) (weighed, ISOWeek, error) {
	e := c.exercises[s.Exercise]
	week, err := c.check(s, e)
	if err != nil {
		return weighed{}, 0, err
	}
	each, _ := s.Hold.Each(s.Load, s.Stated) // checked
	one := weighed{liftSums: liftSums{of: e}, day: int(s.Day - week.Monday())}
	low, high, known := reserve(s.Effort)
	one.rate(low, high, known)
	one.verdict = c.rule.judge(low, high, known)
	if one.verdict == counts {
		one.sets = worked(s.Side)
		one.daily[one.day] = one.sets
		one.least, one.most = s.Reps, s.Reps
	}
	count := s.Reps
	if e.oneSided && s.Side == body.Both {
		count *= 2
	}
	one.work(s, count, each)
	return one, week, one.relate(c.oneRM[Lift{s.Exercise, s.Side, s.Hold}], each)
}

func (c *Counter) check(s setlog.Set, e *counted) (ISOWeek, error) {
	if err := s.Validate(); err != nil {
		return 0, err
	}
	week, err := ISOWeekOf(s.Day)
	if err != nil {
		return 0, field.At("/day", err)
	}
	if e == nil {
		return 0, field.New("/exercise", fmt.Sprintf("%.40q", s.Exercise), "the ID of an exercise in the catalogue", field.ErrUnknown)
	}
	return week, nil
}

const millionth = 1e6

// millionths keeps sums whole, so that their order makes no difference.
func millionths(x float64) int64 { return int64(math.Round(x * millionth)) }

func (one *weighed) rate(low, high units.RIR, known bool) {
	if !known {
		one.unrated = 1
		return
	}
	one.low, one.high, one.rated = millionths(float64(low)), millionths(float64(high)), 1
}

// work adds what the measure of the exercise counts. The products fit: masses
// are below 2^63 ng and counts at most 2000.
func (one *weighed) work(s setlog.Set, count int, each units.Mass) {
	e := one.of
	switch e.measure {
	case exercise.Metres:
		one.metres = int64(count)
	case exercise.Seconds:
		one.tension = int64(count) * millionth
	case exercise.Repetitions:
		one.reps = int64(count)
		one.held, _ = Lifted(each, count*s.Hold.Implements())
		for i, m := range e.moved {
			one.moved[i], _ = Lifted(m, count)
		}
		if e.movesBody && e.moved[1] == 0 {
			one.noBody = 1
		}
		if s.Hold == body.OnBand {
			one.noMass = 1
		}
		if s.RepSeconds == 0 {
			one.untimed = int64(count)
			return
		}
		one.timed = int64(count)
		one.tension = millionths(s.RepSeconds) * int64(count)
	}
}

// relate compares the load with the one-repetition maximum, if there is one.
func (one *weighed) relate(oneRM, each units.Mass) error {
	if oneRM == 0 || one.reps == 0 {
		return nil
	}
	if each/10 > oneRM {
		return field.New("/load", each, "at most ten times the one-repetition maximum, "+oneRM.String(), field.ErrConflict)
	}
	hi, lo := bits.Mul64(uint64(each), millionth)
	lo, carry := bits.Add64(lo, uint64(oneRM)/2, 0)
	share, _ := bits.Div64(hi+carry, lo, uint64(oneRM))
	one.share, one.shared = int64(share)*one.reps, one.reps
	return nil
}

func (w *weekSums) add(one weighed) {
	w.done++
	w.days |= 1 << one.day
	w.daily[one.day] = w.daily[one.day].plus(one.held)
	w.lift(one.of).merge(&one.liftSums)
	switch one.verdict {
	case leftOut:
		w.leftOut++
		return
	case noReserve:
		w.noReserve++
		return
	}
	w.counted++
	for _, m := range one.of.primes {
		w.muscles[m].prime = w.muscles[m].prime.plus(one.sets)
		w.muscles[m].days |= 1 << one.day
	}
	for _, m := range one.of.synergists {
		w.muscles[m].synergist = w.muscles[m].synergist.plus(one.sets)
		w.muscles[m].days |= 1 << one.day
	}
}

// lift finds the sums of an exercise. A week has few, so a search is quickest.
func (w *weekSums) lift(of *counted) *liftSums {
	for i := range w.lifts {
		if w.lifts[i].of == of {
			return &w.lifts[i]
		}
	}
	w.lifts = append(w.lifts, liftSums{of: of})
	return &w.lifts[len(w.lifts)-1]
}

// Merge adds to t what u holds; u, another tally, stays as it is. The order and the grouping
// of merges make no difference. It is a [field.ErrConflict] if u is not from
// the same [Counter], or is t itself, whose sets would count twice, and a [field.ErrOverflow] beyond 33 million sets a
// week; then t stays as it was.
func (t *Tally) Merge(u *Tally) error {
	if t == nil || u == nil || u == t || u.counter != t.counter {
		return field.Bad(nil, "another tally of the same counter", field.ErrConflict)
	}
	for week := range u.Weeks() {
		if mine := t.weeks[week]; mine != nil && mine.done+u.weeks[week].done > maxWeekSets {
			return tooMany(week)
		}
	}
	for week, theirs := range u.weeks {
		if t.weeks[week] == nil {
			t.weeks[week] = &weekSums{}
		}
		t.weeks[week].merge(theirs)
	}
	return nil
}

func (w *weekSums) merge(v *weekSums) {
	w.done += v.done
	w.counted += v.counted
	w.leftOut += v.leftOut
	w.noReserve += v.noReserve
	w.days |= v.days
	for i := range w.daily {
		w.daily[i] = w.daily[i].plus(v.daily[i])
	}
	for i := range w.muscles {
		m, n := &w.muscles[i], v.muscles[i]
		m.prime, m.synergist, m.days = m.prime.plus(n.prime), m.synergist.plus(n.synergist), m.days|n.days
	}
	for i := range len(v.lifts) {
		w.lift(v.lifts[i].of).merge(&v.lifts[i])
	}
}

func (l *liftSums) merge(m *liftSums) {
	l.sets = l.sets.plus(m.sets)
	for i := range l.daily {
		l.daily[i] = l.daily[i].plus(m.daily[i])
	}
	if m.least > 0 && (l.least == 0 || m.least < l.least) {
		l.least = m.least
	}
	l.most = max(l.most, m.most)
	l.reps += m.reps
	l.metres += m.metres
	l.held = l.held.plus(m.held)
	l.moved[0], l.moved[1] = l.moved[0].plus(m.moved[0]), l.moved[1].plus(m.moved[1])
	l.noBody, l.noMass = l.noBody+m.noBody, l.noMass+m.noMass
	l.tension, l.timed, l.untimed = l.tension+m.tension, l.timed+m.timed, l.untimed+m.untimed
	l.share, l.shared = l.share+m.share, l.shared+m.shared
	l.low, l.high = l.low+m.low, l.high+m.high
	l.rated, l.unrated = l.rated+m.rated, l.unrated+m.unrated
}

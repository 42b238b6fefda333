package volume

import (
	"cmp"
	"iter"
	"maps"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Totals are what a tally holds of one week.
type Totals struct {
	Week ISOWeek   `json:"week"`
	Kind TallyKind `json:"kind"` // performed or prescribed
	Rule Rule      `json:"rule,omitzero"`

	Days      []units.Day `json:"days,omitempty"`      // with a set
	Done      int         `json:"done"`                // all sets
	Counted   int         `json:"counted"`             // by the rule
	LeftOut   int         `json:"left_out,omitzero"`   // reserve outside the rule
	NoReserve int         `json:"no_reserve,omitzero"` // not counted, since the rule asks for a reserve that was not recorded

	Daily     []VolumeLoad   `json:"daily"`               // held weight times repetitions, Monday to Sunday
	Muscles   []MuscleWeek   `json:"muscles,omitempty"`   // those with a set that counts, from the head down
	Exercises []ExerciseWeek `json:"exercises,omitempty"` // in order of pattern, then ID
}

// SideSets are the sets of one side's muscle that count.
type SideSets struct {
	Prime     int `json:"prime"`     // direct
	Synergist int `json:"synergist"` // indirect
}

// MuscleWeek is what a week gave one muscle.
type MuscleWeek struct {
	Muscle    body.Muscle `json:"muscle"`
	Left      SideSets    `json:"left"`
	Right     SideSets    `json:"right"`
	Exercises int         `json:"exercises"` // that train it directly
	Days      []units.Day `json:"days"`
}

// Sets returns what both sides did, that is what the lesser side did, in
// convention c; the zero Sets for no convention.
func (m MuscleWeek) Sets(c Convention) Sets {
	left, right := m.SideSets(body.Left, c), m.SideSets(body.Right, c)
	left.halves = min(left.halves, right.halves)
	return left
}

// SideSets returns what one side did in convention c; both sides are
// [MuscleWeek.Sets], and no side or convention is the zero Sets.
func (m MuscleWeek) SideSets(s body.Side, c Convention) Sets {
	if c.Check() != nil {
		return Sets{}
	}
	switch s {
	case body.Left:
		return c.sets(int64(m.Left.Prime), int64(m.Left.Synergist))
	case body.Right:
		return c.sets(int64(m.Right.Prime), int64(m.Right.Synergist))
	case body.Both:
		return m.Sets(c)
	}
	return Sets{}
}

// DaySets are the sets of an exercise that count on one day.
type DaySets struct {
	Day   units.Day `json:"day"`
	Left  int       `json:"left"`
	Right int       `json:"right"`
}

// ExerciseWeek is what a week held of one exercise. Sets and Span hold the
// sets that count; all else every set.
type ExerciseWeek struct {
	Exercise exercise.ID       `json:"exercise"`
	Pattern  exercise.Pattern  `json:"pattern"`
	Measure  exercise.DoseUnit `json:"measure"`
	Left     int               `json:"left"` // sets
	Right    int               `json:"right"`
	Daily    []DaySets         `json:"daily,omitempty"`
	Span     units.Range[int]  `json:"span,omitzero"` // repetitions, seconds or metres of a set

	Reps   int64      `json:"reps"`            // of both sides
	Metres int64      `json:"metres,omitzero"` // walked
	Held   VolumeLoad `json:"held"`            // volume load of the weight
	// NoMass are the sets with a band, whose resistance is no mass.
	NoMass int `json:"no_mass,omitzero"`
	// BodyLeast and BodyMost are the volume load of the body's share, which is
	// a range. NoBody are the sets that lifted the body with no share or no
	// body mass known, of which they say nothing.
	BodyLeast VolumeLoad `json:"body_least,omitzero"`
	BodyMost  VolumeLoad `json:"body_most,omitzero"`
	NoBody    int        `json:"no_body,omitzero"`

	// Tension is the time under tension in seconds, to the microsecond a
	// repetition, of TimedReps repetitions; the length of Untimed is not known.
	Tension   float64 `json:"tension,omitzero"`
	TimedReps int64   `json:"timed_reps,omitzero"`
	Untimed   int64   `json:"untimed,omitzero"`

	// Share is the mean share of 1RM over ShareReps repetitions, to the
	// millionth a set; the others have no maximum to be compared with.
	Share     units.Fraction `json:"share,omitzero"`
	ShareReps int64          `json:"share_reps,omitzero"`

	// Reserve is the mean of repetitions in reserve over Rated sets, to the
	// millionth a set: a range, since some ratings stand for two counts.
	Reserve units.Range[units.RIR] `json:"reserve,omitzero"`
	Rated   int                    `json:"rated,omitzero"`
	Unrated int                    `json:"unrated,omitzero"` // sets without a reserve
}

// Weeks yields the weeks that have sets, in order.
func (t *Tally) Weeks() iter.Seq[ISOWeek] {
	return slices.Values(slices.Sorted(maps.Keys(field.OrZero(t).weeks)))
}

// All yields the totals of every week that has sets, in order.
func (t *Tally) All() iter.Seq[Totals] {
	return func(yield func(Totals) bool) {
		for w := range t.Weeks() {
			if !yield(t.Totals(w)) {
				return
			}
		}
	}
}

// Totals returns the totals of w, of no sets if it has none.
func (t *Tally) Totals(w ISOWeek) Totals {
	t = field.OrZero(t)
	out := Totals{Week: w, Daily: make([]VolumeLoad, daysInWeek)}
	if t.counter != nil {
		out.Kind, out.Rule = t.counter.kind, t.counter.rule
	}
	sums := t.weeks[w]
	if sums == nil {
		return out
	}
	out.Days = w.days(sums.days)
	out.Done, out.Counted, out.LeftOut, out.NoReserve = int(sums.done), int(sums.counted), int(sums.leftOut), int(sums.noReserve)
	copy(out.Daily, sums.daily[:])
	for i := range sums.lifts {
		out.Exercises = append(out.Exercises, sums.lifts[i].week(w))
	}
	slices.SortFunc(out.Exercises, func(a, b ExerciseWeek) int {
		return cmp.Or(cmp.Compare(a.Pattern, b.Pattern), cmp.Compare(a.Exercise, b.Exercise))
	})
	for muscle := range body.Muscles() {
		if m := sums.muscles[muscle]; m.days != 0 {
			out.Muscles = append(out.Muscles, MuscleWeek{muscle, m.side(0), m.side(1), sums.directly(muscle), w.days(m.days)})
		}
	}
	return out
}

func (m muscleSums) side(i int) SideSets { return SideSets{int(m.prime[i]), int(m.synergist[i])} }

// directly counts the exercises with a set that counts that train the muscle
// directly.
func (w *weekSums) directly(m body.Muscle) int {
	n := 0
	for i := range w.lifts {
		if w.lifts[i].sets != (sides{}) && slices.Contains(w.lifts[i].of.primes, m) {
			n++
		}
	}
	return n
}

func (l *liftSums) week(w ISOWeek) ExerciseWeek {
	e := ExerciseWeek{
		Exercise: l.of.id, Pattern: l.of.pattern, Measure: l.of.measure,
		Left: int(l.sets[0]), Right: int(l.sets[1]), Reps: l.reps, Metres: l.metres,
		Held: l.held, NoMass: int(l.noMass), BodyLeast: l.moved[0], BodyMost: l.moved[1], NoBody: int(l.noBody),
		Tension: float64(l.tension) / millionth, TimedReps: l.timed, Untimed: l.untimed,
		ShareReps: l.shared, Rated: int(l.rated), Unrated: int(l.unrated),
	}
	for i, s := range l.daily {
		if s != (sides{}) {
			e.Daily = append(e.Daily, DaySets{w.Monday() + units.Day(i), int(s[0]), int(s[1])})
		}
	}
	if l.most > 0 {
		e.Span = units.Must(units.Between(l.least, l.most))
	}
	if l.shared > 0 {
		e.Share = units.Fraction(float64(l.share) / float64(l.shared) / millionth)
	}
	if l.rated > 0 {
		mean := func(sum int64) units.RIR { return units.RIR(float64(sum) / float64(l.rated) / millionth) }
		e.Reserve = units.Must(units.Between(mean(l.low), mean(l.high)))
	}
	return e
}

// A Place is a week and a muscle.
type Place struct {
	Week   ISOWeek     `json:"week"`
	Muscle body.Muscle `json:"muscle"`
}

// Sets yields the sets of every muscle in every week in convention c, in order
// of week, then from the head down; muscles without a set that counts, and
// everything for no convention, are passed over.
func (t *Tally) Sets(c Convention) iter.Seq2[Place, Sets] {
	return func(yield func(Place, Sets) bool) {
		if c.Check() != nil {
			return
		}
		for w := range t.Weeks() {
			for muscle := range body.Muscles() {
				m := t.weeks[w].muscles[muscle]
				sets := MuscleWeek{Left: m.side(0), Right: m.side(1)}.Sets(c)
				if m.days != 0 && !yield(Place{w, muscle}, sets) {
					return
				}
			}
		}
	}
}

// Untrained returns the muscles without a set that counts, direct or indirect,
// from the head down.
func (t Totals) Untrained() []body.Muscle {
	var list []body.Muscle
	for muscle := range body.Muscles() {
		if !slices.ContainsFunc(t.Muscles, func(m MuscleWeek) bool { return m.Muscle == muscle }) {
			list = append(list, muscle)
		}
	}
	return list
}

// PatternSets returns the sets of exercises of some patterns that both sides did, such as
// those of all pushes ([exercise.Pattern.Pushes]); none without a choice of patterns.
func (t Totals) PatternSets(of func(exercise.Pattern) bool) int {
	n := 0
	for _, e := range t.Exercises {
		if of != nil && of(e.Pattern) {
			n += min(e.Left, e.Right)
		}
	}
	return n
}

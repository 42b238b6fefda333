package cohort

import (
	"fmt"
	"math/bits"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Cohort holds the weeks of many people. It is fed by one goroutine at a time;
// those of one [Study] that were fed apart can be merged.
type Cohort struct {
	study  *Study
	people []person
	index  map[body.Key]int32
	last   run
	next   []uint16 // by exercise, what came behind it the last time: sessions are alike
}

type person struct {
	key   body.Key
	next  int32 // who came behind the last time: logs go round the same people
	cells cells
	marks []mark // in order of exercise
}

// A run is where the last set went: most go where the one before did.
type run struct {
	person   int32
	exercise uint16
	id       exercise.ID
	week     volume.ISOWeek
	cell     *cell
	mark     *mark
}

// errTooMany: an exercise with more than 262,144 sets in a week.
var errTooMany = fmt.Errorf("cohort: more than 262,144 sets of an exercise in a week: %w", field.ErrOverflow)

// Add adds a set. An error leaves c as it was: those of [setlog.Set.Validate]; a
// [field.ErrMissing] for a day not given; a [field.ErrUnknown] for an exercise that the
// study does not know; a [field.ErrOverflow] beyond 262,144 sets of an exercise in a week.
func (c *Cohort) Add(s setlog.Set) error {
	if c == nil || c.study == nil {
		return field.Bad(nil, "a cohort that a study made", field.ErrMissing)
	}
	if err := s.Validate(); err != nil {
		return err
	}
	return c.take(&s)
}

// take adds a set that is valid.
func (c *Cohort) take(s *setlog.Set) error {
	week := volume.ISOWeek((s.Day-1)/7 + 1)
	if s.Day == 0 || week.Check() != nil {
		_, err := volume.ISOWeekOf(s.Day)
		return field.At("/day", err)
	}
	if err := c.find(s, week); err != nil {
		return err
	}
	cell, e := c.last.cell, &c.study.exercises[c.last.exercise]
	if cell.done == maxSets {
		return errTooMany
	}
	each := s.Load
	if s.Hold == body.OneEachHand && s.Stated == body.Total {
		each /= 2 // valid, so that it is even
	}
	count := s.Reps
	if e.oneSided && s.Side == body.Both {
		count *= 2
	}
	cell.done++
	cell.count += uint32(count)
	cell.days |= 1 << ((s.Day - 1) % 7)
	if c.study.counts(s.Effort) {
		if s.Side != body.Right {
			cell.left++
		}
		if s.Side != body.Left {
			cell.right++
		}
	}
	if e.measure == exercise.Repetitions {
		hi, lo := bits.Mul64(uint64(each), uint64(count*s.Hold.Implements()))
		var carry uint64
		cell.held, carry = bits.Add64(cell.held, lo, 0)
		cell.heldHi += uint16(hi + carry)
		c.estimate(e, s, each)
	}
	return nil
}

// find makes the cell of the set that of c.last. A cell that is new stays empty only for
// as long as its first set takes.
func (c *Cohort) find(s *setlog.Set, week volume.ISOWeek) error {
	l := &c.last
	samePerson := l.cell != nil && c.people[l.person].key == s.Key
	sameExercise := l.cell != nil && l.id == s.Exercise
	if samePerson && sameExercise && l.week == week {
		return nil
	}
	if !sameExercise {
		i, known := c.exerciseAfter(l.exercise, s.Exercise)
		if !known {
			return field.New("/exercise", fmt.Sprintf("%.40q", s.Exercise), "the ID of an exercise in the catalogue", field.ErrUnknown)
		}
		l.exercise, l.id = i, c.study.exercises[i].id
	}
	if !samePerson {
		l.person = c.personAfter(l.person, s.Key)
	}
	if !samePerson || !sameExercise {
		l.mark = nil
	}
	l.week = week
	l.cell = c.people[l.person].cells.at(cellKey(week, l.exercise))
	return nil
}

// exerciseAfter returns the place of an exercise that comes behind another.
func (c *Cohort) exerciseAfter(last uint16, id exercise.ID) (i uint16, known bool) {
	if int(last) < len(c.next) {
		if i = c.next[last]; c.study.exercises[i].id == id {
			return i, true
		}
	}
	if i, known = c.study.index[id]; known {
		c.next[last] = i
	}
	return i, known
}

// personAfter is person of who comes behind another.
func (c *Cohort) personAfter(last int32, key body.Key) int32 {
	if len(c.people) == 0 {
		return c.person(key)
	}
	i := c.people[last].next
	if c.people[i].key != key {
		i = c.person(key)
		c.people[last].next = i
	}
	return i
}

// person returns the place of a person, who may be new.
func (c *Cohort) person(key body.Key) int32 {
	i, known := c.index[key]
	if !known {
		i = int32(len(c.people))
		c.people = append(c.people, person{key: key})
		c.index[key] = i
	}
	return i
}

// Len returns the number of people.
func (c *Cohort) Len() int { return len(field.OrZero(c).people) }

// Merge adds to c what d holds; d, another cohort, stays as it is. The order and the grouping of merges
// make no difference. It is a [field.ErrConflict] if d does not count as c does, or is c itself, whose sets
// would count twice, and
// a [field.ErrOverflow] beyond what fits; then c stays as it was.
func (c *Cohort) Merge(d *Cohort) error {
	if c == nil || d == nil || c == d || c.study == nil || d.study == nil || c.study.digest != d.study.digest {
		return field.Bad(nil, "another cohort that counts alike", field.ErrConflict)
	}
	if !c.fits(d) {
		return errTooMany
	}
	c.last = run{}
	for i := range d.people {
		from := &d.people[i]
		to := &c.people[c.person(from.key)]
		to.cells.merge(&from.cells)
		for k := range from.marks {
			to.mark(from.marks[k].exercise).join(&from.marks[k])
		}
	}
	return nil
}

// fits reports whether the sums of c and d have room.
func (c *Cohort) fits(d *Cohort) bool {
	for i := range d.people {
		at, known := c.index[d.people[i].key]
		if !known {
			continue
		}
		for one := range d.people[i].cells.all {
			if mine := c.people[at].cells.get(one.when); mine != nil && mine.done+one.done > maxSets { // of 2^18 each
				return false
			}
		}
	}
	return true
}

// sorted returns the places of people in order of their keys.
func (c *Cohort) sorted() []int32 {
	order := make([]int32, len(c.people))
	for i := range order {
		order[i] = int32(i)
	}
	slices.SortFunc(order, func(a, b int32) int { return compareKeys(c.people[a].key, c.people[b].key) })
	return order
}

package cohort

import (
	"iter"
	"math/bits"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A PersonWeek is what a person did in a week. It is valid until the next one is
// asked for.
type PersonWeek struct {
	Person body.Key
	Week   volume.ISOWeek
	study  *Study
	cells  []cell
}

// ExerciseSets are a week's sets of one exercise.
type ExerciseSets struct {
	Exercise exercise.ID       `json:"exercise"`
	Measure  exercise.DoseUnit `json:"measure"`
	Done     int               `json:"done"` // all sets
	Left     int               `json:"left"` // sets that count, by side
	Right    int               `json:"right"`
	Count    int64             `json:"count"` // repetitions, seconds or metres of both sides, of all sets
	Days     int               `json:"days"`  // with a set
	Held     volume.VolumeLoad `json:"held"`  // volume load of the weight, of all sets
	// BodyLeast and BodyMost are the volume load of the body's share; zero where the
	// exercise states no share or the person no body mass.
	BodyLeast volume.VolumeLoad `json:"body_least,omitzero"`
	BodyMost  volume.VolumeLoad `json:"body_most,omitzero"`
}

// Weeks yields every week with a set, in order of person, then of time.
func (c *Cohort) Weeks() iter.Seq[PersonWeek] {
	c = field.OrZero(c)
	return func(yield func(PersonWeek) bool) {
		w := PersonWeek{study: c.study}
		for _, i := range c.sorted() {
			p := &c.people[i]
			w.Person = p.key
			for one := range p.cells.all {
				if len(w.cells) > 0 && w.Week != one.week() {
					if !yield(w) {
						return
					}
					w.cells = w.cells[:0]
				}
				w.Week = one.week()
				w.cells = append(w.cells, *one)
			}
			if len(w.cells) > 0 && !yield(w) {
				return
			}
			w.cells = w.cells[:0]
		}
	}
}

// Exercises yields the exercises of the week in order of the catalogue. The body's share of
// the load is that of a person of bodyMass, 0 for not known.
func (w PersonWeek) Exercises(bodyMass units.Mass) iter.Seq[ExerciseSets] {
	return func(yield func(ExerciseSets) bool) {
		for i := range w.cells {
			if !yield(w.exercise(&w.cells[i], bodyMass)) {
				return
			}
		}
	}
}

func (w PersonWeek) exercise(one *cell, bodyMass units.Mass) ExerciseSets {
	e := &w.study.exercises[one.exercise()]
	x := ExerciseSets{Exercise: e.id, Measure: e.measure, Done: int(one.done), Left: int(one.left), Right: int(one.right),
		Count: int64(one.count), Days: bits.OnesCount8(one.days), Held: one.load()}
	if e.measure == exercise.Repetitions && bodyMass > 0 {
		x.BodyLeast = lifted(e.share.Min, bodyMass, units.Down, one.count)
		x.BodyMost = lifted(e.share.Max, bodyMass, units.Up, one.count)
	}
	return x
}

// lifted returns what a share of the body comes to, rounded as volume does.
func lifted(end func() (units.Fraction, bool), bodyMass units.Mass, r units.Rounding, count uint32) volume.VolumeLoad {
	share, known := end()
	if !known {
		return volume.VolumeLoad{}
	}
	m, _ := bodyMass.Scale(share, r) // a share up to 1 fits
	load, _ := volume.Lifted(m, int(count))
	return load
}

// numMuscles is one more than the last muscle, so that a muscle is an index.
const numMuscles = int(body.ToeExtensors) + 1

// Muscles yields the sets of every muscle in convention c, from the head down, those with
// a set that counts; for no convention nothing. Of the two sides the lesser counts.
func (w PersonWeek) Muscles(c volume.Convention) iter.Seq2[body.Muscle, volume.Sets] {
	return func(yield func(body.Muscle, volume.Sets) bool) {
		if c.Check() != nil {
			return
		}
		var sums [numMuscles]volume.MuscleWeek
		for i := range w.cells {
			one := &w.cells[i]
			e := &w.study.exercises[one.exercise()]
			for _, m := range e.primes {
				sums[m].Left.Prime += int(one.left)
				sums[m].Right.Prime += int(one.right)
			}
			for _, m := range e.synergists {
				sums[m].Left.Synergist += int(one.left)
				sums[m].Right.Synergist += int(one.right)
			}
		}
		for m := range body.Muscles() {
			if s := &sums[m]; (s.Left != volume.SideSets{} || s.Right != volume.SideSets{}) && !yield(m, s.Sets(c)) {
				return
			}
		}
	}
}

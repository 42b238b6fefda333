package cohort

import (
	"fmt"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/pack"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Options say how a cohort counts.
type Options struct {
	Rule volume.Rule `json:"rule,omitzero"` // which sets count for muscles; zero: all
	// Formula makes the estimates, of sets with as many repetitions as it was studied for;
	// zero: no estimates.
	Formula onerm.Formula `json:"formula,omitzero"`
}

// maxExercises is the most that a catalogue may have: a cell has twelve bits for one.
const maxExercises = 1 << 12

// A Study says how the sets of its cohorts count. It does not change, and is safe for
// concurrent use.
type Study struct {
	options   Options
	exercises []counted // in order of the catalogue
	index     map[exercise.ID]uint16
	least     int // repetitions that the formula takes
	most      int // 0 for no formula
	digest    pack.Digest
	whole     [11]bool // whether a set with so many repetitions in reserve counts
}

// counted is what counting needs of an exercise.
type counted struct {
	id                  exercise.ID
	measure             exercise.DoseUnit
	oneSided, movesBody bool
	share               units.Range[units.Fraction] // of the body mass that is lifted
	primes, synergists  []body.Muscle
}

// NewStudy returns a study for the exercises of catalogue. It gives the errors of
// [volume.Rule.Validate], a [field.ErrOutOfRange] for a formula that is none, and a [field.ErrOverflow] for
// more than 4096 exercises.
func NewStudy(catalogue exercise.Catalogue, o Options) (*Study, error) {
	var bad field.Errors
	bad.Add("/rule", o.Rule.Validate())
	c := &Study{options: o, index: map[exercise.ID]uint16{}}
	if o.Formula != 0 {
		if _, err := o.Formula.MarshalText(); err != nil {
			bad.Add("/formula", err)
		}
		low, _ := o.Formula.Studied().Min()
		high, _ := o.Formula.Studied().Max()
		c.least, c.most = int(low), int(high)
	}
	bad.Refuse(catalogue.Len() > maxExercises, "/catalogue", catalogue.Len(), fmt.Sprintf("at most %d exercises", maxExercises), field.ErrOverflow)
	if len(bad) > 0 {
		return nil, bad.Err()
	}
	for e := range catalogue.All() {
		c.index[e.ID] = uint16(len(c.exercises))
		c.exercises = append(c.exercises, ready(e))
	}
	c.digest = c.sum()
	for n := range c.whole {
		c.whole[n] = o.Rule.Counts(units.Must(units.InReserve(float64(n))))
	}
	return c, nil
}

// counts is Counts of the rule.
func (c *Study) counts(e units.Effort) bool {
	if n := int(e.Number()); e.Scale() == units.ScaleRIR && float64(n) == e.Number() {
		return c.whole[n] // of 0 to 10
	}
	return c.options.Rule.Counts(e)
}

// ready reads off an exercise that its catalogue has checked.
func ready(e exercise.Exercise) counted {
	return counted{id: e.ID, measure: e.Measure, oneSided: e.OneSided, movesBody: e.MovesBody, share: e.MovedShare,
		primes: slices.Collect(e.MusclesAs(exercise.Prime)), synergists: slices.Collect(e.MusclesAs(exercise.Synergist))}
}

// NewCohort returns a cohort of nobody.
func (c *Study) NewCohort() *Cohort {
	return &Cohort{study: c, index: map[body.Key]int32{}, next: make([]uint16, len(field.OrZero(c).exercises))}
}

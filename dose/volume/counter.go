package volume

import (
	"cmp"
	"maps"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Lift is what a one-repetition maximum belongs to.
type Lift struct {
	Exercise exercise.ID
	Side     body.Side
	Hold     body.Hold
}

// Options say how a [Counter] counts.
type Options struct {
	Kind TallyKind // needed: performed and prescribed sets are never added up together
	Rule Rule      // which sets count; zero: all
	// BodyMass is the person's. Without it, and in exercises that state no share
	// of it, the body's part of the volume load stays unknown.
	BodyMass units.Mass
	// OneRM are one-repetition maxima of one implement, as package onerm
	// estimates them; only sets that match exercise, side and hold use them.
	OneRM map[Lift]units.Mass
}

// Validate returns every bad field of o at once.
func (o Options) Validate() error {
	var bad field.Errors
	bad.Add("/kind", o.Kind.Check())
	bad.Add("/rule", o.Rule.Validate())
	bad.Refuse(o.BodyMass < 0 || o.BodyMass > maxBody, "/body_mass", o.BodyMass, "0 to 1000 kg", field.ErrOutOfRange)
	for _, lift := range slices.SortedFunc(maps.Keys(o.OneRM), compareLifts) {
		if m := o.OneRM[lift]; m <= 0 {
			bad.Add("/one_rm/"+string(lift.Exercise), field.Bad(m, "above 0 kg", field.ErrOutOfRange))
		}
	}
	return bad.Err()
}

// maxBody is a ceiling against slips of the keyboard.
const maxBody = 1000 * units.Kilogram

func compareLifts(a, b Lift) int {
	return cmp.Or(cmp.Compare(a.Exercise, b.Exercise), cmp.Compare(a.Side, b.Side), cmp.Compare(a.Hold, b.Hold))
}

// numMuscles is one more than the last muscle, so that a muscle is an index.
const numMuscles = int(body.ToeExtensors) + 1

// counted is an exercise made ready for counting.
type counted struct {
	id         exercise.ID
	pattern    exercise.Pattern
	measure    exercise.DoseUnit
	oneSided   bool
	movesBody  bool
	moved      [2]units.Mass // of the body, a repetition: at least and at most; 0 for not known
	primes     []body.Muscle
	synergists []body.Muscle
}

// A Counter knows how sets count. It does not change, and is safe for
// concurrent use.
type Counter struct {
	kind      TallyKind
	rule      Rule
	oneRM     map[Lift]units.Mass
	exercises map[exercise.ID]*counted
}

// NewCounter returns a counter for the exercises of catalogue, or the errors
// of [Options.Validate].
func NewCounter(catalogue exercise.Catalogue, o Options) (*Counter, error) {
	if err := o.Validate(); err != nil {
		return nil, err
	}
	c := &Counter{kind: o.Kind, rule: o.Rule, oneRM: maps.Clone(o.OneRM), exercises: map[exercise.ID]*counted{}}
	for e := range catalogue.All() {
		c.exercises[e.ID] = ready(e, o.BodyMass)
	}
	return c, nil
}

// ready reads off an exercise that its catalogue has checked.
func ready(e exercise.Exercise, bodyMass units.Mass) *counted {
	c := &counted{id: e.ID, pattern: e.Pattern, measure: e.Measure, oneSided: e.OneSided, movesBody: e.MovesBody,
		primes: slices.Collect(e.MusclesAs(exercise.Prime)), synergists: slices.Collect(e.MusclesAs(exercise.Synergist))}
	if low, ok := e.MovedShare.Min(); ok {
		c.moved[0] = units.Must(bodyMass.Scale(low, units.Down)) // a share up to 1 fits
	}
	if high, ok := e.MovedShare.Max(); ok {
		c.moved[1] = units.Must(bodyMass.Scale(high, units.Up))
	}
	return c
}

// NewTally returns an empty tally.
func (c *Counter) NewTally() *Tally { return &Tally{counter: c, weeks: map[ISOWeek]*weekSums{}} }

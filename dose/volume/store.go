package volume

import (
	"cmp"
	"crypto/sha256"
	"encoding/json"
	"io"
	"maps"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/pack"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// sum is a digest of all that makes two counters count alike.
func (c *Counter) sum() pack.Digest {
	type entry struct {
		ID, Pattern, Measure string
		OneSided, MovesBody  bool
		Moved                [2]units.Mass
		Primes, Synergists   []string
	}
	type lift struct {
		Lift Lift
		Of   units.Mass
	}
	all := struct {
		Kind      TallyKind
		Rule      Rule
		OneRM     []lift
		Exercises []entry
	}{Kind: c.kind, Rule: c.rule}
	for _, l := range slices.SortedFunc(maps.Keys(c.oneRM), compareLifts) {
		all.OneRM = append(all.OneRM, lift{l, c.oneRM[l]})
	}
	for _, id := range slices.Sorted(maps.Keys(c.exercises)) {
		e := c.exercises[id]
		x := entry{ID: string(id), Pattern: e.pattern.String(), Measure: e.measure.String(), OneSided: e.oneSided, MovesBody: e.movesBody, Moved: e.moved}
		for _, m := range e.primes {
			x.Primes = append(x.Primes, m.String())
		}
		for _, m := range e.synergists {
			x.Synergists = append(x.Synergists, m.String())
		}
		all.Exercises = append(all.Exercises, x)
	}
	text, _ := json.Marshal(all) // of texts, and of options that were checked
	return sha256.Sum256(text)
}

// form is that of a stored tally: weeks in order, each with its muscles and exercises.
func (c *Counter) form() pack.Form {
	return pack.Form{Line: "posology tally 1\n", Whole: "a whole tally", Alike: "a tally of the same options and exercises", Counter: c.sum()}
}

// Encode writes t in a form that [Counter.Decode] of a counter with the same options and
// exercises reads back. Tallies that hold the same write the same bytes, whatever they were
// merged of. The errors are those of w; a tally that no counter made is a
// [field.ErrMissing], as is no writer.
func (t *Tally) Encode(w io.Writer) error {
	if t == nil || t.counter == nil || w == nil {
		return field.Bad(nil, "a writer, and a tally that a counter made", field.ErrMissing)
	}
	return t.counter.form().Write(w, func(w *pack.Writer) {
		w.Number(uint64(len(t.weeks)))
		for week := range t.Weeks() {
			w.Number(uint64(week))
			t.weeks[week].write(w)
		}
	})
}

// Decode reads what [Tally.Encode] wrote, up to its end; it can be merged with the tallies of c. It is
// a [field.ErrConflict] if that was counted by other options or of other exercises, and a
// [field.ErrSyntax] if it is no whole tally of this version; then nothing of it is returned. No
// reader is a [field.ErrMissing]; other errors are those of r.
func (c *Counter) Decode(r io.Reader) (*Tally, error) {
	if c == nil || c.exercises == nil || r == nil {
		return nil, field.Bad(nil, "a reader and a counter", field.ErrMissing)
	}
	t := c.NewTally()
	err := c.form().Read(r, func(r *pack.Reader) {
		d := decoder{r, c}
		before := ISOWeek(0)
		for n := r.Number(maxStoredWeeks); n > 0 && r.Good(); n-- {
			week := ISOWeek(r.Number(1<<31 - 1))
			if week <= before || week.Check() != nil {
				r.Refuse()
			}
			before, t.weeks[week] = week, d.week()
		}
	})
	if err != nil {
		return nil, err
	}
	return t, nil
}

// maxStoredWeeks is more than there are in ten thousand years.
const maxStoredWeeks = 1 << 20

// mostOfSet is the most that a set adds to a sum, as maxWeekSets takes it.
const mostOfSet = 1 << 37

// numbers hands on the sums of the week as a whole, those of sets and those of what they add.
func (w *weekSums) numbers(count, amount func(*int64)) {
	for _, n := range []*int64{&w.done, &w.counted, &w.leftOut, &w.noReserve} {
		count(n)
	}
	for i := range w.daily {
		amount(&w.daily[i].kg)
		amount(&w.daily[i].ng)
	}
}

func (m *muscleSums) numbers(count func(*int64)) {
	for i := range m.prime {
		count(&m.prime[i])
		count(&m.synergist[i])
	}
}

func (l *liftSums) numbers(count, amount func(*int64)) {
	for i := range l.sets {
		count(&l.sets[i])
		for day := range l.daily {
			count(&l.daily[day][i])
		}
		amount(&l.moved[i].kg)
		amount(&l.moved[i].ng)
	}
	for _, n := range []*int64{&l.noBody, &l.noMass, &l.rated, &l.unrated} {
		count(n)
	}
	for _, n := range []*int64{&l.reps, &l.metres, &l.held.kg, &l.held.ng, &l.tension, &l.timed, &l.untimed, &l.share, &l.shared, &l.low, &l.high} {
		amount(n)
	}
}

func (w *weekSums) write(to *pack.Writer) {
	put := func(n *int64) { to.Number(uint64(*n)) }
	w.numbers(put, put)
	to.Number(uint64(w.days))
	var trained []int
	for m := range w.muscles {
		if w.muscles[m] != (muscleSums{}) {
			trained = append(trained, m)
		}
	}
	to.Number(uint64(len(trained)))
	for _, m := range trained {
		to.Number(uint64(m))
		to.Number(uint64(w.muscles[m].days))
		w.muscles[m].numbers(put)
	}
	lifts := slices.SortedFunc(slices.Values(w.lifts), func(a, b liftSums) int { return cmp.Compare(a.of.id, b.of.id) })
	to.Number(uint64(len(lifts)))
	for i := range lifts {
		to.Text(string(lifts[i].of.id))
		to.Number(uint64(lifts[i].least))
		to.Number(uint64(lifts[i].most))
		lifts[i].numbers(put, put)
	}
}

// A decoder reads weeks that sets can make, so far as one sum tells of another.
type decoder struct {
	*pack.Reader
	counter *Counter
}

// counts reads numbers of sets, of so many.
func (d decoder) counts(sets int64) func(*int64) {
	return func(n *int64) { *n = int64(d.Number(uint64(sets))) }
}

// amounts reads what so many sets add.
func (d decoder) amounts(sets int64) func(*int64) {
	return d.counts(max(sets*mostOfSet, int64(units.Kilogram))) // what is below a kilogram does not grow with them
}

const everyDay = 1<<daysInWeek - 1

func (d decoder) week() *weekSums {
	w := &weekSums{}
	w.numbers(d.counts(maxWeekSets), d.amounts(maxWeekSets))
	w.days = uint8(d.Number(everyDay))
	if w.done < 1 || w.counted+w.leftOut+w.noReserve != w.done || w.days == 0 {
		d.Refuse()
	}
	for _, l := range w.daily {
		d.load(l, w.done)
	}
	before := -1
	for n := d.Number(uint64(numMuscles)); n > 0 && d.Good(); n-- {
		m := int(d.Number(uint64(numMuscles - 1)))
		one := muscleSums{days: uint8(d.Number(everyDay))}
		one.numbers(d.counts(w.counted))
		if m <= before || one == (muscleSums{}) {
			d.Refuse()
		}
		before, w.muscles[m] = m, one
	}
	sets, last := int64(0), exercise.ID("")
	for n := d.Number(uint64(len(d.counter.exercises))); n > 0 && d.Good(); n-- {
		one := d.lift(w.done)
		if !d.Good() {
			break
		}
		if one.of.id <= last {
			d.Refuse()
		}
		last, w.lifts = one.of.id, append(w.lifts, one)
		sets += one.rated + one.unrated
	}
	if sets != w.done {
		d.Refuse()
	}
	return w
}

func (d decoder) lift(sets int64) liftSums {
	l := liftSums{of: d.counter.exercises[exercise.ID(d.Text())]}
	if l.of == nil {
		d.Refuse()
	}
	l.least, l.most = int(d.Number(mostReps)), int(d.Number(mostReps))
	l.numbers(d.counts(sets), d.amounts(sets))
	if l.least > l.most || l.low > l.high {
		d.Refuse()
	}
	for _, load := range []VolumeLoad{l.held, l.moved[0], l.moved[1]} {
		d.load(load, sets)
	}
	return l
}

// mostReps is the most that a set may have, by its own check.
const mostReps = 1000

func (d decoder) load(l VolumeLoad, sets int64) {
	if l.kg > sets*mostOfSet || l.ng >= int64(units.Kilogram) {
		d.Refuse()
	}
}

package cohort

import (
	"crypto/sha256"
	"encoding/json"
	"io"
	"math"

	"example.org/posology/dose/internal/pack"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// sum is a digest of all that makes two counters count alike.
func (c *Study) sum() pack.Digest {
	type entry struct {
		ID, Measure         string
		OneSided, MovesBody bool
		Share               string
		Primes, Synergists  []string
	}
	var list []entry
	for _, e := range c.exercises {
		x := entry{ID: string(e.id), Measure: e.measure.String(), OneSided: e.oneSided, MovesBody: e.movesBody, Share: e.share.String()}
		for _, m := range e.primes {
			x.Primes = append(x.Primes, m.String())
		}
		for _, m := range e.synergists {
			x.Synergists = append(x.Synergists, m.String())
		}
		list = append(list, x)
	}
	text, _ := json.Marshal(struct { // of texts, and of options that were checked
		Options   Options
		Exercises []entry
	}{c.options, list})
	return sha256.Sum256(text)
}

// form is that of a stored cohort: people in order of their keys.
func (c *Study) form() pack.Form {
	return pack.Form{Line: "posology cohort 1\n", Whole: "a whole cohort", Alike: "a cohort of the same options and exercises", Counter: c.digest}
}

// Encode writes c in a form that [Study.Decode] of a study with the same options and
// exercises reads back. Cohorts that hold the same write the same bytes, whatever they
// were merged of. The errors are those of w; a cohort that no study made is a
// [field.ErrMissing], as is no writer.
func (c *Cohort) Encode(w io.Writer) error {
	if c == nil || c.study == nil || w == nil {
		return field.Bad(nil, "a writer, and a cohort that a study made", field.ErrMissing)
	}
	return c.study.form().Write(w, func(w *pack.Writer) {
		w.Number(uint64(len(c.people)))
		for _, i := range c.sorted() {
			c.people[i].write(w)
		}
	})
}

func (p *person) write(w *pack.Writer) {
	w.Text(string(p.key))
	n := 0
	for range p.cells.all {
		n++
	}
	w.Number(uint64(n))
	for one := range p.cells.all {
		for _, x := range one.numbers() {
			w.Number(x)
		}
	}
	w.Number(uint64(len(p.marks)))
	for i := range p.marks {
		for _, x := range p.marks[i].numbers() {
			w.Number(x)
		}
	}
}

func (c *cell) numbers() [8]uint64 {
	return [8]uint64{uint64(c.when), uint64(c.done), uint64(c.left), uint64(c.right), uint64(c.count), uint64(c.days), uint64(c.heldHi), c.held}
}

func (m *mark) numbers() [5]uint64 {
	return [5]uint64{uint64(m.exercise), uint64(m.best), uint64(m.bestOn), uint64(m.latest), uint64(m.latestOn)}
}

// Decode reads what [Cohort.Encode] wrote, up to its end. It is a [field.ErrConflict] if that was
// counted by other options or of other exercises, and a [field.ErrSyntax] if it is no whole
// cohort of this version; then nothing of it is returned. No reader is a [field.ErrMissing];
// other errors are those of r.
func (c *Study) Decode(r io.Reader) (*Cohort, error) {
	if c == nil || r == nil {
		return nil, field.Bad(nil, "a reader and a study", field.ErrMissing)
	}
	d := decoder{c: c.NewCohort()}
	if err := c.form().Read(r, d.read); err != nil {
		return nil, err
	}
	return d.c, nil
}

type decoder struct {
	*pack.Reader
	c *Cohort
}

func (d decoder) read(r *pack.Reader) {
	d.Reader = r
	before := body.Key("")
	for n := d.Number(math.MaxInt32); n > 0 && d.Good(); n-- {
		key := body.Key(d.Text())
		if len(d.c.people) > 0 && key <= before {
			d.Refuse()
		}
		before = key
		p := &d.c.people[d.c.person(key)]
		for n := d.Number(math.MaxInt32); n > 0 && d.Good(); n-- {
			d.cell(p)
		}
		for n := d.Number(maxExercises); n > 0 && d.Good(); n-- {
			d.mark(p)
		}
	}
}

// cell reads a cell that sets can make, behind those before.
func (d decoder) cell(p *person) {
	var x [8]uint64
	for i, most := range [...]uint64{math.MaxUint32, maxSets, maxSets, maxSets, math.MaxUint32, 1<<7 - 1, math.MaxUint16, math.MaxUint64} {
		x[i] = d.Number(most)
	}
	one := cell{when: uint32(x[0]), done: uint32(x[1]), left: uint32(x[2]), right: uint32(x[3]), count: uint32(x[4]), days: uint8(x[5]), heldHi: uint16(x[6]), held: x[7]}
	bad := one.week().Check() != nil || int(one.exercise()) >= len(d.c.study.exercises) || one.done == 0 || one.days == 0 ||
		max(one.left, one.right) > one.done || one.count < one.done || uint64(one.count) > 2000*uint64(one.done)
	if n := len(p.cells.leaves); bad || n > 0 && lastKey(p.cells.leaves[n-1]) >= one.when {
		d.Refuse()
	}
	if d.Good() {
		*p.cells.at(one.when) = one
	}
}

// mark reads a mark behind those before.
func (d decoder) mark(p *person) {
	var x [5]uint64
	for i, most := range [...]uint64{maxExercises - 1, math.MaxInt64, math.MaxInt32, math.MaxInt64, math.MaxInt32} {
		x[i] = d.Number(most)
	}
	m := mark{exercise: uint16(x[0]), best: units.Mass(x[1]), bestOn: units.Day(x[2]), latest: units.Mass(x[3]), latestOn: units.Day(x[4])}
	bad := int(m.exercise) >= len(d.c.study.exercises) || m.bestOn.Check() != nil || m.latestOn.Check() != nil || m.best < m.latest || m.bestOn > m.latestOn || m.latest <= 0
	if n := len(p.marks); bad || n > 0 && p.marks[n-1].exercise >= m.exercise {
		d.Refuse()
	}
	if d.Good() {
		p.marks = append(p.marks, m)
	}
}

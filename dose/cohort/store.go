package cohort

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"encoding/json"
	"io"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// sum is a digest of all that makes two counters count alike.
func (c *Study) sum() [32]byte {
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

// The form of a stored cohort: a first line, the digest of the study, people in order
// of their keys, and a checksum of all that.
const (
	form       = "posology cohort 1\n"
	longestKey = 1 << 20 // bytes; no record of a log is longer
)

// Encode writes c in a form that [Study.Decode] of a study with the same options and
// exercises reads back. Cohorts that hold the same write the same bytes, whatever they
// were merged of. The errors are those of w; a cohort that no study made is an
// [field.ErrMissing], as is no writer.
func (c *Cohort) Encode(w io.Writer) error {
	if c == nil || c.study == nil || w == nil {
		return field.Bad(nil, "a writer, and a cohort that a study made", field.ErrMissing)
	}
	sum := sha256.New()
	e := encoder{out: bufio.NewWriter(io.MultiWriter(w, sum))}
	e.out.WriteString(form)
	e.out.Write(c.study.digest[:])
	e.number(uint64(len(c.people)))
	for _, i := range c.sorted() {
		e.person(&c.people[i])
	}
	if err := e.out.Flush(); err != nil {
		return err
	}
	_, err := w.Write(sum.Sum(nil))
	return err
}

// An encoder writes numbers; its writer keeps any error.
type encoder struct {
	out  *bufio.Writer
	room [binary.MaxVarintLen64]byte
}

func (e *encoder) number(n uint64) { e.out.Write(binary.AppendUvarint(e.room[:0], n)) }

func (e *encoder) person(p *person) {
	e.number(uint64(len(p.key)))
	e.out.WriteString(string(p.key))
	n := 0
	for range p.cells.all {
		n++
	}
	e.number(uint64(n))
	for one := range p.cells.all {
		for _, x := range one.numbers() {
			e.number(x)
		}
	}
	e.number(uint64(len(p.marks)))
	for i := range p.marks {
		for _, x := range p.marks[i].numbers() {
			e.number(x)
		}
	}
}

func (c *cell) numbers() [8]uint64 {
	return [8]uint64{uint64(c.when), uint64(c.done), uint64(c.left), uint64(c.right), uint64(c.count), uint64(c.days), uint64(c.heldHi), c.held}
}

func (m *mark) numbers() [5]uint64 {
	return [5]uint64{uint64(m.exercise), uint64(m.best), uint64(m.bestOn), uint64(m.latest), uint64(m.latestOn)}
}

// Decode reads what [Cohort.Encode] wrote, up to its end. It is an [field.ErrConflict] if that was
// counted by other options or of other exercises, and an [field.ErrSyntax] if it is no whole
// cohort of this version; then nothing of it is returned. No reader is an [field.ErrMissing];
// other errors are those of r.
func (c *Study) Decode(r io.Reader) (*Cohort, error) {
	if c == nil || r == nil {
		return nil, field.Bad(nil, "a reader and a study", field.ErrMissing)
	}
	sum := sha256.New()
	d := decoder{in: bufio.NewReader(r), sum: sum, c: c.NewCohort()}
	d.read()
	want := sum.Sum(nil) // before the sum itself is read
	got := d.bytes(len(want))
	if _, more := d.in.ReadByte(); d.err == nil && (!bytes.Equal(got, want) || more != io.EOF) {
		d.fail()
	}
	if d.err != nil {
		d.fail()
		return nil, d.err
	}
	return d.c, nil
}

// A decoder reads a cohort; after an error it reads zeros.
type decoder struct {
	in  *bufio.Reader
	sum io.Writer // of all that is read
	c   *Cohort
	err error
}

// fail says that this is no cohort, unless it is known already why it cannot be read.
func (d *decoder) fail() {
	if d.err != nil && d.err != io.EOF && d.err != io.ErrUnexpectedEOF {
		return
	}
	d.err = field.Bad(nil, "a whole cohort as Encode of this version writes it", field.ErrSyntax)
}

// bytes reads so many, in pieces, since a number that is wrong may ask for any.
func (d *decoder) bytes(n int) []byte {
	if d.err != nil || n > longestKey {
		return nil
	}
	b := make([]byte, n)
	if _, err := io.ReadFull(d.in, b); err != nil {
		d.err = err
		return nil
	}
	d.sum.Write(b)
	return b
}

// number reads one up to most.
func (d *decoder) number(most uint64) uint64 {
	if d.err != nil {
		return 0
	}
	ahead, err := d.in.Peek(binary.MaxVarintLen64)
	n, size := binary.Uvarint(ahead)
	switch {
	case size <= 0 && err != nil:
		d.err = err
	case size <= 0 || n > most || size > 1 && ahead[size-1] == 0: // longer than Encode writes it
		d.fail()
	default:
		d.sum.Write(ahead[:size])
		d.in.Discard(size) // what was seen is there
		return n
	}
	return 0
}

func (d *decoder) read() {
	if string(d.bytes(len(form))) != form {
		d.fail()
	}
	digest := d.bytes(len(d.c.study.digest))
	if d.err == nil && !bytes.Equal(digest, d.c.study.digest[:]) {
		d.err = field.Bad(nil, "a cohort of the same options and exercises", field.ErrConflict)
	}
	before := body.Key("")
	for n := d.number(math.MaxInt32); n > 0 && d.err == nil; n-- {
		key := body.Key(d.bytes(int(d.number(longestKey))))
		if len(d.c.people) > 0 && key <= before {
			d.fail()
		}
		before = key
		p := &d.c.people[d.c.person(key)]
		for n := d.number(math.MaxInt32); n > 0 && d.err == nil; n-- {
			d.cell(p)
		}
		for n := d.number(maxExercises); n > 0 && d.err == nil; n-- {
			d.mark(p)
		}
	}
}

// cell reads a cell that sets can make, behind those before.
func (d *decoder) cell(p *person) {
	var x [8]uint64
	for i, most := range [...]uint64{math.MaxUint32, maxSets, maxSets, maxSets, math.MaxUint32, 1<<7 - 1, math.MaxUint16, math.MaxUint64} {
		x[i] = d.number(most)
	}
	one := cell{when: uint32(x[0]), done: uint32(x[1]), left: uint32(x[2]), right: uint32(x[3]), count: uint32(x[4]), days: uint8(x[5]), heldHi: uint16(x[6]), held: x[7]}
	bad := one.week().Check() != nil || int(one.exercise()) >= len(d.c.study.exercises) || one.done == 0 || one.days == 0 ||
		max(one.left, one.right) > one.done || one.count < one.done || uint64(one.count) > 2000*uint64(one.done)
	if n := len(p.cells.leaves); bad || n > 0 && lastKey(p.cells.leaves[n-1]) >= one.when {
		d.fail()
	}
	if d.err == nil {
		*p.cells.at(one.when) = one
	}
}

// mark reads a mark behind those before.
func (d *decoder) mark(p *person) {
	var x [5]uint64
	for i, most := range [...]uint64{maxExercises - 1, math.MaxInt64, math.MaxInt32, math.MaxInt64, math.MaxInt32} {
		x[i] = d.number(most)
	}
	m := mark{exercise: uint16(x[0]), best: units.Mass(x[1]), bestOn: units.Day(x[2]), latest: units.Mass(x[3]), latestOn: units.Day(x[4])}
	bad := int(m.exercise) >= len(d.c.study.exercises) || m.bestOn.Check() != nil || m.latestOn.Check() != nil || m.best < m.latest || m.bestOn > m.latestOn || m.latest <= 0
	if n := len(p.marks); bad || n > 0 && p.marks[n-1].exercise >= m.exercise {
		d.fail()
	}
	if d.err == nil {
		p.marks = append(p.marks, m)
	}
}

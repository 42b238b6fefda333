package cohort

import (
	"errors"
	"io"
	"iter"

	"example.org/posology/dose/setlog"
	"example.org/posology/units/field"
)

// Read adds a CSV log of so many bytes, read by 1 to 256 workers as [setlog.Reader.Scan]
// does. The sequence yields bad and doubtful rows in the order of lines; a bad row is left
// out, as is one without a day or of an exercise that the study does not know, and a
// doubtful one is taken in. When it has been followed to its end c holds the log. It holds nothing
// of it where it was left before, where the log broke off, or where it does not fit
// (a [field.ErrOverflow]): the last error says so, and names no field.
func (c *Cohort) Read(rd setlog.Reader, log io.ReaderAt, size int64, workers int) iter.Seq2[setlog.LoggedSet, error] {
	return func(yield func(setlog.LoggedSet, error) bool) {
		if c == nil || c.study == nil {
			yield(setlog.LoggedSet{}, field.Bad(nil, "a cohort that a study made", field.ErrMissing))
			return
		}
		var parts []*Cohort
		start := func(n int) (takes []func(setlog.Set) error) {
			parts = nil
			for range n {
				part := c.study.NewCohort()
				parts = append(parts, part)
				takes = append(takes, func(s setlog.Set) error { return part.take(&s) })
			}
			return takes
		}
		for row, err := range rd.Scan(log, size, workers, start) {
			if !yield(row, err) || err != nil && !ofRow(err) {
				return
			}
		}
		if err := c.join(parts); err != nil {
			yield(setlog.LoggedSet{}, err)
		}
	}
}

// ofRow reports whether err is one of a row.
func ofRow(err error) bool {
	var bad *field.Error
	return errors.As(err, &bad)
}

// join moves the parts, all or none, into c.
func (c *Cohort) join(parts []*Cohort) error {
	if len(parts) == 0 {
		return nil
	}
	sum := parts[0]
	for i, part := range parts[1:] {
		if !sum.fits(part) {
			return errTooMany
		}
		sum.absorb(part)
		parts[i+1] = nil
	}
	if len(c.people) == 0 {
		*c = *sum
		return nil
	}
	return c.Merge(sum)
}

// absorb is Merge of a cohort that fits and that nobody needs any more.
func (c *Cohort) absorb(d *Cohort) {
	c.last = run{}
	for i := range d.people {
		from := &d.people[i]
		to := &c.people[c.person(from.key)]
		to.cells.take(from.cells)
		for k := range from.marks {
			to.mark(from.marks[k].exercise).join(&from.marks[k])
		}
		*from = person{}
	}
}

package pack

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"hash"
	"io"

	"example.org/posology/units/field"
)

// A Digest is of all that makes two counters count alike.
type Digest = [sha256.Size]byte

// A Form is what is written.
type Form struct {
	Line    string // names form and version
	Whole   string // what is asked for, such as "a whole cohort"
	Alike   string // by whom, such as "a cohort of the same options and exercises"
	Counter Digest
}

// longestText in bytes; no record of a log is longer.
const longestText = 1 << 20

// A Writer writes numbers and texts; it keeps any error.
type Writer struct {
	out  *bufio.Writer
	room [binary.MaxVarintLen64]byte
}

// Number writes n.
func (w *Writer) Number(n uint64) { w.out.Write(binary.AppendUvarint(w.room[:0], n)) }

// Text writes s.
func (w *Writer) Text(s string) {
	w.Number(uint64(len(s)))
	w.out.WriteString(s)
}

// Write writes what write does. The errors are those of w.
func (f Form) Write(w io.Writer, write func(*Writer)) error {
	sum := sha256.New()
	out := &Writer{out: bufio.NewWriter(io.MultiWriter(w, sum))}
	out.out.WriteString(f.Line)
	out.out.Write(f.Counter[:])
	write(out)
	if err := out.out.Flush(); err != nil {
		return err
	}
	_, err := w.Write(sum.Sum(nil))
	return err
}

// A Reader reads what a [Writer] wrote; after an error it reads zeros.
type Reader struct {
	form Form
	in   *bufio.Reader
	sum  hash.Hash // of all that is read
	err  error
}

// Read reads r to its end by read. It is a [field.ErrConflict] if another counter wrote it, and
// a [field.ErrSyntax] if it is not whole or read refused it; other errors are those of r.
func (f Form) Read(r io.Reader, read func(*Reader)) error {
	d := &Reader{form: f, in: bufio.NewReader(r), sum: sha256.New()}
	if string(d.bytes(len(f.Line))) != f.Line {
		d.Refuse()
	}
	digest := d.bytes(len(f.Counter))
	if d.err == nil && !bytes.Equal(digest, f.Counter[:]) {
		d.err = field.Bad(nil, f.Alike, field.ErrConflict)
	}
	read(d)
	want := d.sum.Sum(nil) // before the sum itself is read
	got := d.bytes(len(want))
	if _, more := d.in.ReadByte(); d.err == nil && (!bytes.Equal(got, want) || more != io.EOF) {
		d.Refuse()
	}
	if d.err != nil {
		d.Refuse()
	}
	return d.err
}

// Good reports that nothing was wrong so far.
func (d *Reader) Good() bool { return d.err == nil }

// Refuse says that this is not what was written, unless it is known already why it cannot be read.
func (d *Reader) Refuse() {
	if d.err != nil && d.err != io.EOF && d.err != io.ErrUnexpectedEOF {
		return
	}
	d.err = field.Bad(nil, d.form.Whole+" as Encode of this version writes it", field.ErrSyntax)
}

// bytes reads so many.
func (d *Reader) bytes(n int) []byte {
	if d.err != nil || n > longestText {
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

// Text reads a text of at most a mebibyte.
func (d *Reader) Text() string { return string(d.bytes(int(d.Number(longestText)))) }

// Number reads one up to most.
func (d *Reader) Number(most uint64) uint64 {
	if d.err != nil {
		return 0
	}
	ahead, err := d.in.Peek(binary.MaxVarintLen64)
	n, size := binary.Uvarint(ahead)
	switch {
	case size <= 0 && err != nil:
		d.err = err
	case size <= 0 || n > most || size > 1 && ahead[size-1] == 0: // longer than it is written
		d.Refuse()
	default:
		d.sum.Write(ahead[:size])
		d.in.Discard(size) // what was seen is there
		return n
	}
	return 0
}

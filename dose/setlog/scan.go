package setlog

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"sync"
	"sync/atomic"

	"example.org/posology/units/field"
)

const (
	leastPart      = 256 << 10 // bytes of a log that are worth a goroutine
	partsPerWorker = 8         // so that none waits long for the others
	maxWorkers     = 256
	remarksAhead   = 2048 // that a part may have before its turn comes
)

// Scan reads the CSV log of so many bytes that r has, in parts, with 1 to 256 workers at
// once. It calls start with the number of workers first, and hands each set to the function of
// the worker that read it; each function is called by one goroutine at a time, and sets come
// in no order across them. What a function refuses is a bad row: an error that names
// fields, such as "/day"; another error ends the reading.
//
// The sequence yields what [Reader.CSV] would, in the order of lines and with the same
// line numbers, save rows without error and doubt. A double quote may hide the end of a line
// from who looks at one part: where there is one, start is called again, for one
// worker, all that the functions before took is void, and the log is read from its
// beginning; rows already yielded are not yielded again.
//
// No reader, or no functions, are a [field.ErrMissing]; workers and a size out of their
// range a [field.ErrOutOfRange].
func (rd Reader) Scan(r io.ReaderAt, size int64, workers int, start func(workers int) []func(Set) error) iter.Seq2[LoggedSet, error] {
	return func(yield func(LoggedSet, error) bool) {
		if err := checkScan(r, size, workers, start); err != nil {
			yield(LoggedSet{}, err)
			return
		}
		head, recs, err := rd.begin(io.NewSectionReader(r, 0, size))
		if err != nil {
			yield(LoggedSet{}, err)
			return
		}
		s := scan{r: r, head: head, yield: yield}
		s.plan(recs, size, workers)
		if len(recs.places) > 0 || len(s.parts) < 2 || !s.inParts(min(workers, len(s.parts)), start) {
			s.whole(recs, size, start)
		}
	}
}

func checkScan(r io.ReaderAt, size int64, workers int, start func(int) []func(Set) error) error {
	var bad field.Errors
	if r == nil || start == nil {
		bad.Add("", missing("a reader and functions that take sets"))
	}
	bad.Refuse(size < 0, "/size", size, "0 bytes or more", field.ErrOutOfRange)
	bad.Refuse(workers < 1 || workers > maxWorkers, "/workers", workers, fmt.Sprintf("1 to %d", maxWorkers), field.ErrOutOfRange)
	return bad.Err()
}

// A scan is the reading of a log in parts.
type scan struct {
	r       io.ReaderAt
	head    *parser
	yield   func(LoggedSet, error) bool
	yielded int // remarks
	lines   int // of the log before the part whose turn it is

	parts  []part
	mu     sync.Mutex
	shares []share       // of the parts, one of each worker
	quit   chan struct{} // closed when workers are to stop: a part has a quote, or nobody listens
	ended  atomic.Bool   // then
}

// A share are the parts that no worker has begun, of those that one is to read: parts that
// follow on each other, so that workers have few people and weeks in common.
type share struct{ next, end int }

// A part is some whole lines of the log.
type part struct {
	from, to int64
	remarks  chan remark // closed when the part is read
	lines    int         // then
}

// A remark is a row that is yielded; lines count from the beginning of its part.
type remark struct {
	row *LoggedSet // nil beside an error
	err error
}

// plan cuts what follows the first record at ends of lines.
func (s *scan) plan(recs *records, size int64, workers int) {
	from := recs.offset()
	s.lines = recs.lines
	n := min(int64(workers)*partsPerWorker, (size-from)/leastPart)
	if workers == 1 {
		return
	}
	for i := int64(1); i <= n && from < size; i++ {
		to := size
		if i < n {
			to = s.endOfLine(max(from, size-(size-from)/(n-i+1)*(n-i)), size)
		}
		if to > from {
			s.parts = append(s.parts, part{from: from, to: to, remarks: make(chan remark, remarksAhead)})
			from = to
		}
	}
}

// endOfLine returns where the line ends that the byte at is in; what cannot be read is
// left to who reads the part.
func (s *scan) endOfLine(at, size int64) int64 {
	room := make([]byte, 4<<10)
	for at < size {
		n, err := s.r.ReadAt(room[:min(int64(len(room)), size-at)], at)
		if i := bytes.IndexByte(room[:n], '\n'); i >= 0 {
			return at + int64(i) + 1
		}
		if at += int64(n); err != nil {
			break
		}
	}
	return size
}

// inParts reads all parts; it is false where one has a quote.
func (s *scan) inParts(workers int, start func(int) []func(Set) error) bool {
	s.quit = make(chan struct{})
	var all sync.WaitGroup
	takers := start(workers)
	for i := range takers {
		s.shares = append(s.shares, share{i * len(s.parts) / len(takers), (i + 1) * len(s.parts) / len(takers)})
	}
	for i, take := range takers {
		all.Go(func() { s.work(i, take) })
	}
	if len(takers) == 0 {
		s.yield(LoggedSet{}, noTaker())
		return true
	}
	defer all.Wait()
	defer s.stop()
	for i := range s.parts {
		for more := true; more; {
			var m remark
			select {
			case m, more = <-s.parts[i].remarks:
			case <-s.quit: // this part may never be begun
				return false
			}
			if more && (!s.say(m) || m.err != nil && !goesOn(m.err)) {
				return true
			}
		}
		if s.ended.Load() { // the part may have been left
			return false
		}
		s.lines += s.parts[i].lines
	}
	return true
}

func noTaker() error { return missing("functions that take sets") }

// stop lets the workers stop, those too that have nothing to say.
func (s *scan) stop() {
	if !s.ended.Swap(true) {
		close(s.quit)
	}
}

// A stoppable reads until the workers are to stop.
type stoppable struct {
	io.Reader
	s *scan
}

func (r stoppable) Read(p []byte) (int, error) {
	if r.s.ended.Load() {
		return 0, io.ErrClosedPipe // nobody hears it
	}
	return r.Reader.Read(p)
}

// say yields a remark with the line that it has in the log.
func (s *scan) say(m remark) bool {
	s.yielded++
	if m.row != nil {
		m.row.Line += s.lines
		return s.yield(*m.row, nil)
	}
	if bad := (*RowError)(nil); errors.As(m.err, &bad) {
		bad.Line += s.lines
	}
	return s.yield(LoggedSet{}, m.err)
}

// work reads one part after another: those of its share in their order, and then, from the
// back, those that others have not begun. So the first part that is not read is always
// being read, and nobody waits in vain.
func (s *scan) work(worker int, take func(Set) error) {
	p := s.head.fresh()
	for !s.ended.Load() {
		i := s.claim(worker)
		if i < 0 {
			return
		}
		s.part(&s.parts[i], p, take)
	}
}

// claim returns a part that no worker has begun, -1 if there is none.
func (s *scan) claim(worker int) int {
	s.mu.Lock()
	defer s.mu.Unlock()
	if own := &s.shares[worker]; own.next < own.end {
		own.next++
		return own.next - 1
	}
	longest := &s.shares[0]
	for i := range s.shares {
		if one := &s.shares[i]; one.end-one.next > longest.end-longest.next {
			longest = one
		}
	}
	if longest.next == longest.end {
		return -1
	}
	longest.end--
	return longest.end
}

func (s *scan) part(one *part, p *parser, take func(Set) error) {
	defer close(one.remarks)
	recs := newRecords(stoppable{io.NewSectionReader(s.r, one.from, one.to-one.from), s}, s.head.rd.comma(), 0)
	recs.plain = true
	p.handOn(recs, take, func(row LoggedSet, err error) bool {
		if errors.Is(err, errQuoted) {
			s.stop()
		}
		if s.ended.Load() {
			return false // the error may be that of a stoppable
		}
		m := remark{nil, err}
		if err == nil {
			m.row = &row
		}
		select {
		case one.remarks <- m:
			return true
		case <-s.quit:
			return false
		}
	})
	one.lines = recs.lines
}

// whole reads the log with one worker.
func (s *scan) whole(recs *records, size int64, start func(int) []func(Set) error) {
	rest := newRecords(io.NewSectionReader(s.r, recs.offset(), size-recs.offset()), s.head.rd.comma(), recs.lines)
	takers := start(1)
	if len(takers) == 0 {
		s.yield(LoggedSet{}, noTaker())
		return
	}
	again := s.yielded
	s.head.fresh().handOn(rest, takers[0], func(row LoggedSet, err error) bool {
		if again > 0 {
			again--
			return true
		}
		return s.yield(row, err)
	})
}

// handOn gives sets to take, and to say what is to be said of rows.
func (p *parser) handOn(recs *records, take func(Set) error, say func(LoggedSet, error) bool) {
	p.rows(recs, func(row *LoggedSet, err error) bool {
		if err == nil {
			if err = take(row.Set); err != nil {
				return say(LoggedSet{}, p.refused(recs, err)) && goesOn(err)
			}
		}
		return err == nil && len(row.Doubts) == 0 || say(*row, err)
	})
}

// refused says where a set stands that was not taken.
func (p *parser) refused(recs *records, err error) error {
	if !goesOn(err) {
		return &RowError{Line: recs.line, Column: 1, Err: err}
	}
	var bad field.Errors
	bad.Add("", err)
	return p.fault(recs, bad)
}

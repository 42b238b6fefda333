package command

import (
	"fmt"
	"io"
	"os"
	"sync"
	"time"
)

// A Progress says how far a long run is: in one line of a terminal, and nowhere
// else, so that a pipe or file gets nothing of it. Several may step at once.
type Progress struct {
	mu   sync.Mutex
	w    io.Writer // nil: nobody looks
	what string
	all  int
	done int
	last time.Time // when it was last said
	said bool
}

// between is how much time lies between two lines, and before the first: a short
// run says nothing.
const between = 300 * time.Millisecond

// NewProgress begins a run of so many steps. Only a w that is a terminal is
// written to.
func NewProgress(w io.Writer, what string, all int) *Progress {
	p := &Progress{what: what, all: all, last: time.Now()}
	if Terminal(w) {
		p.w = w
	}
	return p
}

// Terminal reports whether somebody watches w.
func Terminal(w io.Writer) bool {
	file, ok := w.(*os.File)
	if !ok {
		return false
	}
	info, err := file.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// Step takes one step.
func (p *Progress) Step() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.done++
	if p.w == nil || time.Since(p.last) < between {
		return
	}
	p.last, p.said = time.Now(), true
	fmt.Fprintf(p.w, "\r%s: %d of %d, %d %%", p.what, p.done, p.all, 100*p.done/p.all)
}

// End takes the line away again.
func (p *Progress) End() {
	if p.said {
		fmt.Fprint(p.w, "\r\033[K")
	}
}

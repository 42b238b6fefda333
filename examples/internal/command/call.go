package command

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
)

// Statuses that every program ends with; screencases alone has its own, which its
// comment names.
const (
	OK    = 0
	Bad   = 1 // a case, file or answer that cannot be used
	Wrong = 2 // it was called in a way that it does not know
)

// A Call is how a program is called: its flags, and what it does.
type Call struct {
	*flag.FlagSet
	does    string // what -h says
	readers []string
	wanted  Wanted
}

// New returns the call of the program whose file begins with this comment: "//
// Command NAME does ...". The comment is what -h says.
func New(source string) *Call {
	var does strings.Builder
	for line := range strings.Lines(source) {
		text, comment := strings.CutPrefix(line, "//")
		if !comment {
			break
		}
		does.WriteString(strings.TrimPrefix(text, " "))
	}
	name, _, _ := strings.Cut(strings.TrimPrefix(does.String(), "Command "), " ")
	c := &Call{FlagSet: flag.NewFlagSet(name, flag.ContinueOnError), does: does.String()}
	c.SetOutput(io.Discard)
	return c
}

// Papers adds the flags -for and -json of a program that writes papers, and returns
// where they stand once they were read.
func (c *Call) Papers(usual string, readers ...string) *Wanted {
	c.readers = readers
	c.StringVar(&c.wanted.Reader, "for", usual, "the `reader` or name of the paper: "+either(readers))
	c.BoolVar(&c.wanted.JSON, "json", false, "write the whole result as JSON")
	return &c.wanted
}

// VisitPapers adds those of a program that prints what a visit comes to, and -html.
func (c *Call) VisitPapers() *Wanted {
	c.BoolVar(&c.wanted.HTML, "html", false, "print the paper as one HTML file; not that for the file")
	return c.Papers(forFile, Readers...)
}

// Parse reads the flags, which may stand behind other arguments too, and returns
// those. Where it does not let the program go on, it has said why, or what the
// program does, and the status is what to end with. Each of names is an argument
// that the program may be given.
func (c *Call) Parse(args []string, stdout, stderr io.Writer, names ...string) (given []string, status int, goOn bool) {
	for {
		switch err := c.FlagSet.Parse(args); {
		case errors.Is(err, flag.ErrHelp):
			c.help(stdout)
			return nil, OK, false
		case err != nil:
			return nil, c.Refuse(stderr, "%v", err), false
		}
		if c.NArg() == 0 {
			break
		}
		given, args = append(given, c.Arg(0)), c.Args()[1:]
	}
	switch {
	case len(given) > len(names) && len(names) == 0:
		return nil, c.Refuse(stderr, "%q is one argument too many: it takes flags alone", given[0]), false
	case len(given) > len(names):
		return nil, c.Refuse(stderr, "%q is one argument too many: it takes %s", given[len(names)], strings.Join(names, " ")), false
	case c.readers != nil && !slices.Contains(c.readers, c.wanted.Reader):
		return nil, c.Refuse(stderr, "-for %q: it takes %s", c.wanted.Reader, either(c.readers)), false
	case c.wanted.HTML && (c.wanted.JSON || c.wanted.Reader == forFile):
		return nil, c.Refuse(stderr, "-html goes with -for and a paper other than that for the file"), false
	case c.wanted.JSON && c.isGiven("for"):
		return nil, c.Refuse(stderr, "-json and -for do not go together: -json writes everything, -for the paper of one reader"), false
	}
	return given, OK, true
}

func (c *Call) isGiven(name string) (is bool) {
	c.Visit(func(f *flag.Flag) { is = is || f.Name == name })
	return is
}

func (c *Call) help(w io.Writer) {
	fmt.Fprintf(w, "%s\nFlags:\n", c.does)
	c.SetOutput(w)
	c.PrintDefaults()
	fmt.Fprintln(w, "  -h\tsay this")
}

// Refuse says what is wrong with a call, and returns the status for it.
func (c *Call) Refuse(w io.Writer, format string, args ...any) int {
	fmt.Fprintf(w, "%s: %s\n(%s -h says what it does and takes)\n", c.Name(), fmt.Sprintf(format, args...), c.Name())
	return Wrong
}

func either(list []string) string {
	n := len(list) - 1
	return strings.Join(list[:n], ", ") + " or " + list[n]
}

// Main runs a program and ends with its status. What it writes comes out at the end
// and at once, so that a run which is stopped leaves no half of it.
func Main(run func(args []string, stdout, stderr io.Writer) int) {
	var out bytes.Buffer
	status := run(os.Args[1:], &out, os.Stderr)
	if _, err := os.Stdout.Write(out.Bytes()); err != nil && status == OK {
		fmt.Fprintln(os.Stderr, err)
		status = Bad
	}
	os.Exit(status)
}

package main

import (
	"bytes"
	_ "embed"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
	"time"

	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/examples/internal/planpaper"
	"example.org/posology/examples/internal/reviewpaper"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

//go:embed doc.go
var source string

// A session is one step with one person.
type session struct {
	asking.Desk
	folder folder.Folder
	person folder.Person
	r      *record.Record // the person's
	day    units.Day
	yes    bool // writes without being asked
	html   bool // writes the papers, too, as files
	diary  string

	balanced bool           // the stances were asked for beside their test in this step
	taken    []record.Asked // never done, of what was decided for a day that has not come
	changes  bool           // what is asked for, or when, is changed in this step,
	ends     []exercise.ID  // and this ends

	wanted command.Wanted
	out    io.Writer // for the paper
	said   io.Writer // for all else
}

// steps are what there is to do with one person. Those of people who are there already cannot begin one.
var steps = map[string]func(*session) error{
	"new": begin, "ask": (*session).interview, "visit": firstVisit, "week": beginWeek, "check": check, "log": logVisit,
	"change": change, "review": review, "test": test, "end": end, "show": show, "replay": replay,
}

// run returns the exit status: 0, 1 for a record or an answer that cannot be used, 2 for a wrong call.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := command.New(source)
	dir := flags.String("dir", "", "the `folder` of the records")
	when := flags.String("day", time.Now().Format(time.DateOnly), "the `day` of the step")
	file := flags.String("answers", "", "take the answers from this `file` instead of asking")
	yes := flags.Bool("yes", false, "write without asking")
	html := flags.Bool("html", false, "write all papers of the step as HTML files, too, into papers in the folder")
	diary := flags.String("diary", "", "log the days of a diary that was typed into this `file`")
	wanted := flags.Papers("file", command.Readers...)
	if len(args) == 0 {
		args = []string{"-h"}
	}
	given, status, goOn := flags.Parse(args, stdout, stderr, "STEP", "NAME")
	if !goOn {
		return status
	}
	day, err := units.ParseDay(*when)
	switch {
	case err != nil:
		return flags.Refuse(stderr, "-day %q: it takes a day such as 2026-11-25", *when)
	case *dir == "":
		return flags.Refuse(stderr, "-dir is needed: the folder of the records")
	case len(given) == 0 || len(given) == 1 && given[0] == "list":
		return list(folder.Folder(*dir), day, stdout, stderr)
	case steps[given[0]] == nil:
		return flags.Refuse(stderr, "%q is no step: there are list, new, ask, visit, week, check, log, change, review, test, end, show and replay", given[0])
	case *diary != "" && given[0] != "log":
		return flags.Refuse(stderr, "-diary goes with log alone")
	case given[0] == "end" && !slices.Contains(ofEnd, wanted.Reader):
		return flags.Refuse(stderr, "end has no paper for %s: -for takes client, file or doctor", wanted.Reader)
	case len(given) == 1:
		return flags.Refuse(stderr, "%s of whom? it takes STEP NAME", given[0])
	}
	s := session{folder: folder.Folder(*dir), day: day, yes: *yes, html: *html, diary: *diary, wanted: *wanted, out: stdout, said: stdout}
	if s.wanted.JSON {
		s.said = stderr
	}
	if err = s.sit(*file, stdin); err == nil {
		err = s.take(given[0], given[1])
	}
	if err != nil {
		fmt.Fprintln(stderr, "clinic:", err)
		status = command.Bad
	}
	if err == nil || errors.Is(err, errNothing) || errors.Is(err, errNoTest) { // a key that was misspelt
		for _, text := range s.Unused() {
			fmt.Fprintln(stderr, "clinic:", text)
		}
	}
	return status
}

// sit opens the desk.
func (s *session) sit(file string, stdin io.Reader) error {
	if file == "" {
		s.Desk = asking.Typed(stdin, s.said)
		return nil
	}
	answers, err := asking.Read(file)
	s.Desk = asking.Filed(answers)
	return err
}

// take takes a step with a person.
func (s *session) take(step, name string) (err error) {
	if s.person, err = s.folder.Read(name); err != nil {
		return err
	}
	s.r = &s.person.Record
	switch {
	case s.person.IsNew() && step != "new":
		return fmt.Errorf("there is no %s; new %s begins with somebody", s.folder.File(name), name)
	case !s.person.IsNew() && step == "new":
		return fmt.Errorf("%s is there already", s.folder.File(name))
	}
	switch {
	case !ended(*s.r) || step == "replay":
	case step == "show" || step == "end": // the papers of that day once more
		step, s.day = "end", lastDay(*s.r)
	default:
		return errors.New(s.due())
	}
	return steps[step](s)
}

// keep shows what is to be written, asks, and writes it.
func (s *session) keep() error {
	change, err := s.person.Change()
	if err != nil {
		return err
	}
	if len(change.Lines) == 0 {
		fmt.Fprintln(s.said, "\nNothing is to be written.")
		return nil
	}
	fmt.Fprintf(s.said, "\nTO BE WRITTEN to %s\n\n%s\n", s.folder.File(s.person.Name), strings.Join(change.Lines, "\n"))
	if !s.yes && !s.IsTyped() {
		fmt.Fprintln(s.said, "\nNothing is written: -yes writes it.")
		return nil
	}
	if !s.yes {
		if yes, err := s.Plainly("write", "Is this to be written?"); err != nil {
			return err
		} else if yes != screening.Yes {
			return asking.ErrStopped
		}
	}
	if err := s.folder.Write(change); err != nil {
		return err
	}
	fmt.Fprintln(s.said, "\nWritten.")
	return nil
}

// planned writes the papers of a plan that was decided on for a day.
func (s *session) planned(p record.Plan, day units.Day) error {
	return inTurn(func() error { return s.print(day, papers.OfPlan(p).All) }, func() error { return planpaper.For(s.wanted, s.out, p) })
}

// reviewed writes the papers of a review.
func (s *session) reviewed(r record.Review) error {
	also, err := s.reprint(r)
	if err != nil {
		return err
	}
	return reviewpaper.For(s.wanted, s.out, r, also...)
}

// print makes files of papers, where they are wanted: they are written with the record.
func (s *session) print(day units.Day, all func() ([]papers.Paper, error)) error {
	if !s.html {
		return nil
	}
	list, err := all()
	for _, one := range list {
		var out bytes.Buffer
		err = errors.Join(err, one.HTML(&out))
		s.person.Papers = append(s.person.Papers, folder.Page{Name: fmt.Sprintf("%s-%s-%s.html", s.person.Name, day, one.Name), Data: out.Bytes()})
	}
	return err
}

// show prints the papers of the last decision once more.
func show(s *session) error {
	if len(s.r.Entries) == 0 {
		return errors.New("nothing was decided yet: visit comes first")
	}
	if err := s.checkHeard(); err != nil {
		return err
	}
	last := s.r.Entries[len(s.r.Entries)-1]
	if news(*s.r, last) && s.stand() != "" { // which its papers do not say
		return errors.New(s.due())
	}
	if why := stale(*s.r, s.day); why != "" {
		page.Wrap(s.said, "", why+" Next: review.")
	}
	if err := s.shown(last); err != nil || !s.html {
		return err
	}
	return s.keep()
}

func (s *session) shown(last record.Entry) error {
	if last.Plan != nil {
		return s.planned(*last.Plan, last.Day)
	}
	r, err := command.Kept(*s.r, last)
	if err != nil {
		return err
	}
	return inTurn(func() error { return s.reviewed(r) }, func() error { s.sayLooked(last.Day); return nil })
}

// replay works every decision out again.
func replay(s *session) error {
	var bad []error
	for _, one := range s.r.Replay() {
		text := "the same"
		if one.Err != nil {
			text = one.Err.Error()
			bad = append(bad, fmt.Errorf("the decision of %s does not come out again", one.Stored.Day))
		}
		fmt.Fprintf(s.out, "%s: %s\n", one.Stored.Day, text)
	}
	return errors.Join(bad...)
}

// inForce returns what is asked for on a day.
func inForce(r record.Record, day units.Day) []record.Asked {
	list, _ := r.AskedOn(day)
	return list
}

// idle reports whether all of it is paused.
func idle(r record.Record, day units.Day) bool {
	list, paused := r.AskedOn(day)
	return !slices.ContainsFunc(list, func(a record.Asked) bool { return !paused[a.Exercise] })
}

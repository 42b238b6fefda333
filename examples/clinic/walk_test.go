package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/examples/internal/reviewpaper"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

var pages = flag.String("pages", "", "keep the walks, with their papers as HTML, in this `folder`")

// A way is one person's, step by step.
type way struct {
	t      *testing.T
	walker walker
	folder folder.Folder
	given  map[string]bool // keys that were answered once and for all
	last   *record.Record
	golden strings.Builder
	papers map[int]string // of reviews, by the place of their entry
	chance *rand.Rand
}

const weeks = 12

var monday = units.Must(units.NewDay(2027, 1, 4))

// once are what nobody may have to type twice.
var once = []string{"note", "client", "task", "tasks", "goal", "sex", "training", "kit", "body_mass", "minutes", "age", "setting"}

// step takes a step with answers, and returns the paper.
func (w *way) step(day units.Day, step, answers string, args ...string) string {
	w.t.Helper()
	for _, key := range once {
		if strings.Contains("\n"+answers, "\n"+key+":") {
			if w.given[key] {
				w.t.Errorf("%s: %s is typed twice", step, key)
			}
			w.given[key] = true
		}
	}
	file := filepath.Join(w.t.TempDir(), "answers.txt")
	if err := os.WriteFile(file, []byte(answers), 0o600); err != nil {
		w.t.Fatal(err)
	}
	var out, errs bytes.Buffer
	all := append([]string{"-dir", string(w.folder), step, w.walker.name, "-day", day.String(), "-answers", file, "-yes"}, args...)
	if *pages != "" && slices.Contains([]string{"visit", "week", "review", "end"}, step) {
		all = append(all, "-html")
	}
	if status := run(all, nil, &out, &errs); status != 0 || errs.Len() > 0 {
		w.t.Fatalf("%s, %s: status %d, %s\n%s", step, day, status, errs.String(), answers)
	}
	w.last = nil
	paper, wrote, _ := strings.Cut(out.String(), "\nTO BE WRITTEN")
	for _, behind := range []string{"\nThe phase ", "\nThe plan goes on without ", "begins anew on"} {
		if at := strings.Index(paper, behind); at >= 0 {
			at = strings.LastIndex(paper[:at+1], "\n")
			wrote = "~ /phase: " + strings.TrimSpace(strings.ReplaceAll(paper[at:], "\n", " ")) + "\n" + wrote
			paper = paper[:at]
		}
	}
	fmt.Fprintf(&w.golden, "%s %s\n", day, step)
	for line := range strings.Lines(wrote) {
		if strings.HasPrefix(line, "~ /phase") || strings.HasPrefix(line, "+ /phase") || strings.HasPrefix(line, "~ /began") || strings.HasPrefix(line, "+ /checks") {
			fmt.Fprint(&w.golden, "  ", line)
		}
	}
	return paper
}

// record returns what the last step left.
func (w *way) record() record.Record {
	w.t.Helper()
	if w.last == nil {
		data, err := os.ReadFile(w.folder.File(w.walker.name))
		w.last = new(record.Record)
		if err = errors.Join(err, field.Decode(data, w.last, field.Strict)); err != nil {
			w.t.Fatal(err)
		}
	}
	return *w.last
}

// asks notes what is asked for from a day on: what is new, and other weights and sets;
// of other counts, how many there are.
func (w *way) asks(before int) {
	r := w.record()
	counts := 0
	for i, a := range r.Asked[before:] {
		same := slices.ContainsFunc(inForce(record.Record{Asked: r.Asked[:before+i]}, a.From), func(b record.Asked) bool {
			return b.Exercise == a.Exercise && b.Load == a.Load && b.Sets == a.Sets
		})
		if same {
			counts++
			continue
		}
		ex, _ := exercise.Standard().Get(a.Exercise)
		fmt.Fprintf(&w.golden, "  %s from %s: %s\n", a.Exercise, a.From, wanted(a, ex))
	}
	if counts > 0 {
		fmt.Fprintf(&w.golden, "  other counts: %d\n", counts)
	}
}

// log logs a visit.
func (w *way) log(day units.Day, week int) {
	w.t.Helper()
	var answers strings.Builder
	hurt := w.walker.hurts[week]
	in := ""
	r := w.record()
	_, held := r.AskedOn(day)
	for _, a := range inForce(r, day) {
		ex, err := exercise.Standard().Lookup(string(a.Exercise))
		if err != nil {
			w.t.Fatal(err)
		}
		if text := w.walker.typed(a, ex, r.Kit, week, w.chance); text != "" && !held[a.Exercise] {
			fmt.Fprintf(&answers, "%s: %s\n", a.Exercise, text)
		}
		if !held[a.Exercise] && strings.Contains(string(a.Exercise), w.walker.hurtsIn) {
			in = string(a.Exercise)
		}
	}
	answers.WriteString("showed: none\nrange_lost: no\nform_lost: no\nobserver: Physiotherapist E\n")
	if hurt == 0 || in == "" {
		answers.WriteString("pain: no\n")
	} else {
		fmt.Fprintf(&answers, "pain: yes\npain_kind: 1\npain_site: knee\npain_usual: 1\npain_during: %g\npain_after: %g\npain_next_morning: 2\npain_trend: stable\npain_in: %s\n", hurt, hurt-1, in)
	}
	w.step(day, "log", answers.String())
}

// decides reviews, or begins a new plan, and keeps the paper.
func (w *way) decides(day units.Day, step, answers string) {
	w.t.Helper()
	was := w.record()
	if w.long(day) {
		answers += "absence: no\n"
	}
	number, happened, _ := strings.Cut(w.walker.beside, " ") // of a week, and no more than there were
	days, err := strconv.Atoi(number)
	if err != nil {
		w.t.Fatal(err)
	}
	for _, kept := range was.Beside.InForce {
		if days := min(days, (&session{r: &was, day: day}).daysSince(kept)); days > 0 {
			answers += fmt.Sprintf("beside_%s: %d %s\n", kept.Track, days, happened)
		}
	}
	_, held := was.AskedOn(day)
	for _, item := range was.Entries[len(was.Entries)-1].Items {
		if looked := w.walker.looked; looked > 0 && day >= monday+units.Day(7*looked) && held[item.Exercise] && item.Decision.Action == progression.StopExercise {
			answers += fmt.Sprintf("anew_%s: Physiotherapist E\n", item.Exercise)
		}
	}
	paper := w.step(day, step, "new: none\n"+answers)
	w.asks(len(was.Asked))
	w.papers[len(w.record().Entries)-1] = paper
}

// long reports whether an exercise that is asked for was not done for so long that it
// matters why.
func (w *way) long(day units.Day) bool {
	r := w.record()
	r.Asked = slices.Clone(r.Asked)
	s := session{r: &r, day: day, Desk: asking.Filed(asking.Answers{})}
	_, _, err := s.lookBack(forNext)
	return err != nil && strings.Contains(err.Error(), "/absence")
}

// walk takes somebody from the interview to the goodbye.
func (w *way) walk() {
	w.t.Helper()
	first := monday + units.Day(w.walker.days[0])
	w.step(monday, "new", w.walker.new)
	w.step(monday, "visit", fmt.Sprintf("%s%sdays: %s %s\n", w.walker.visit, w.walker.before, first, monday+units.Day(w.walker.days[1])))
	w.step(monday, "week", "")
	w.asks(0)
	for week := range weeks {
		start := monday + units.Day(7*week)
		if w.walker.away[week+1] {
			continue
		}
		for i, d := range w.walker.days {
			w.log(start+units.Day(d), week+1)
			if i == 0 {
				w.decides(start+units.Day(d)+1, "review", "")
			}
		}
		sunday := start + 6
		switch {
		case week+1 == w.walker.diagnosed:
			w.told(sunday)
		case week == 7 && w.walker.away[week]: // back again
			w.decides(sunday, "week", "reached: no\n")
		case week == weeks-1:
		case week == 2 || week == 6:
			answers := ""
			if week == 6 {
				w.test(sunday, week+1, "")
				answers = "reached: no\n"
			}
			if next := w.record().Phase.String(); next == "familiarise" {
				answers += "phase: build\n"
			}
			w.decides(sunday, "week", answers)
		default:
			w.decides(sunday, "review", "")
		}
	}
	last := monday + units.Day(7*weeks)
	w.test(last, weeks, w.walker.after)
	answers := "reached: yes\n"
	if w.long(last) {
		answers += "absence: no\n"
	}
	file := w.step(last, "end", answers, "-yes=false")
	paper := w.step(last, "end", answers, "-for", "client")
	fmt.Fprintf(&w.golden, "\n%s\n%s", paper, file)
}

// test tests an exercise again, with the weight that is nearest to ten repetitions to
// failure, and stops two before it.
func (w *way) test(day units.Day, week int, function string) {
	w.t.Helper()
	r := w.record()
	_, held := r.AskedOn(day)
	set, off := "", 100
	for _, a := range inForce(r, day) {
		ex, _ := exercise.Standard().Get(a.Exercise)
		for load := a.Load; load > 0 && !held[a.Exercise] && ex.Measure == exercise.Repetitions && !ex.MovesBody; load = heavier(r.Kit, ex.Hold, load) {
			able := w.walker.able(ex, load, week)
			if able < 4 || max(able-10, 10-able) >= off {
				continue
			}
			off = max(able-10, 10-able)
			if set = fmt.Sprintf("%s %d@2", load, able-2); ex.OneSided {
				set = "left " + set + " right " + set
			}
			set = string(ex.ID) + " " + set
		}
	}
	if set == "" {
		w.t.Errorf("%s: nothing could be tested again", w.walker.name)
		return
	}
	paper := w.step(day, "test", "tests: "+set+"\nseen_by: Physiotherapist E\n"+function)
	_, estimates, _ := strings.Cut(paper, "MAXIMUM\n\n")
	for line := range strings.Lines(estimates) {
		if strings.HasPrefix(line, "-") {
			w.golden.WriteString("  " + line)
		}
	}
}

// told: something new ends the plan; a new assessment, tests and a plan follow.
func (w *way) told(day units.Day) {
	paper := w.step(day, "review", "new: new diagnosis\n")
	w.papers[len(w.record().Entries)-1] = paper
	w.step(day, "ask", w.walker.again)
	w.decides(day, "week", "reached: no\nbegin: 1\n")
}

// Six invented people go from the interview to the goodbye; nothing is typed twice,
// every decision comes out again, and so does every paper.
func TestWalks(t *testing.T) {
	for i, one := range walkers {
		t.Run(one.name, func(t *testing.T) {
			t.Parallel()
			w := way{t: t, walker: one, folder: folder.Folder(kept(t, one.name)), given: map[string]bool{}, papers: map[int]string{}, chance: rand.New(rand.NewPCG(uint64(i), 1))}
			w.walk()
			w.check()
			var out, errs bytes.Buffer
			if status := run([]string{"-dir", string(w.folder), "-day", "2027-04-06"}, nil, &out, &errs); status != 0 || errs.Len() > 0 {
				t.Errorf("list: %d, %s", status, errs.String())
			}
			w.golden.WriteString("\n" + out.String())
			programtest.Golden(t, one.name+".txt", w.golden.String())
		})
	}
}

// kept is the folder of a walk.
func kept(t *testing.T, name string) string {
	t.Helper()
	if *pages == "" {
		return t.TempDir()
	}
	all := filepath.Join(*pages, name)
	if err := os.MkdirAll(all, 0o700); err != nil {
		t.Fatal(err)
	}
	return all
}

// check works everything out again, from the record alone.
func (w *way) check() {
	w.t.Helper()
	r := w.record()
	for _, one := range r.Replay() {
		if one.Err != nil {
			w.t.Errorf("%s, %s: %v", w.walker.name, one.Stored.Day, one.Err)
		}
	}
	again := 0
	for i, e := range r.Entries {
		if e.Plan != nil {
			continue
		}
		re, err := command.Kept(r, e)
		if err != nil {
			w.t.Fatalf("%s, %s: %v", w.walker.name, e.Day, err)
		}
		var paper bytes.Buffer
		if err := reviewpaper.For(command.ForFile, &paper, re); err != nil {
			w.t.Fatal(err)
		}
		if diff := cmp.Diff(w.papers[i], paper.String()); diff != "" {
			w.t.Errorf("%s: another paper for %s:\n%s", w.walker.name, re.Next, diff)
		}
		delete(w.papers, i)
		again++
	}
	if len(w.papers) > 0 || again == 0 {
		w.t.Errorf("%s: %d papers did not come again, %d did", w.walker.name, len(w.papers), again)
	}
}

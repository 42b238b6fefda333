package papers

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/document"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

var numbered = regexp.MustCompile(`^Exercises? ([\d, and]+): (.*)$`)

// What a client reads of each exercise stands there, or before them with its number, and
// nothing without a lead stands more than twice beside the exercises.
func TestSaidOnce(t *testing.T) {
	for name, change := range map[string]func(*record.Record){
		"as it is": func(*record.Record) {},
		"chosen for two tasks": func(r *record.Record) {
			r.Exercises, r.Tasks = nil, []choice.Task{choice.FloorRise, choice.Shopping}
		},
		"alone": func(r *record.Record) { r.Exercises, r.Profile.Setting = nil, screening.Alone },
	} {
		r, err := record.Decode(demo.VillageHall(), field.Strict)
		if err != nil {
			t.Fatal(err)
		}
		change(&r)
		plan, err := r.Start(r.LastDay())
		if err != nil {
			t.Fatal(err)
		}
		paper, err := OfPlan(plan).Handout()
		if err != nil {
			t.Fatal(err)
		}
		checkOnce(t, name, partsOf(plan.Week.Sessions[0].Items), paper)
	}
}

func checkOnce(t *testing.T, name string, parts []part, paper document.Document) {
	t.Helper()
	s, err := newSheet(0, "", screening.Profile{})
	if err != nil {
		t.Fatal(err)
	}
	own, before := ownLines(paper)
	times := map[string]int{}
	for i, p := range parts {
		for _, text := range own[i] {
			times[text]++
		}
		for _, reason := range p.heeded() {
			text := s.words.Client(reason)
			if text == "" || slices.Contains(own[i], text) || slices.Contains(before, text) {
				continue
			}
			if reason.Code == forTask {
				text = namedTasks(reason)
			}
			if !slices.ContainsFunc(before, func(line string) bool { return says(line, i+1, text) }) {
				t.Errorf("%s: %s does not say %q", name, p.dose.Name, text)
			}
		}
	}
	for text, n := range times {
		if n > 2 {
			t.Errorf("%s: %d times %q", name, n, text)
		}
	}
}

// says reports whether a line says a text, or something for a task of a text, of an exercise.
func says(line string, n int, text string) bool {
	if task, of, ok := strings.Cut(strings.TrimPrefix(line, "For "), ": exercise"); ok && strings.Contains(text, task) {
		return slices.Contains(regexp.MustCompile(`\d+`).FindAllString(of, -1), fmt.Sprint(n))
	}
	m := numbered.FindStringSubmatch(line)
	return m != nil && m[2] == text && slices.Contains(regexp.MustCompile(`\d+`).FindAllString(m[1], -1), fmt.Sprint(n))
}

// ownLines are the lines without a lead below each exercise, and all before the first.
func ownLines(paper document.Document) (own [][]string, before []string) {
	for _, b := range paper.Blocks {
		switch b := b.(type) {
		case document.Heading:
			if strings.HasPrefix(b.Text, fmt.Sprintf("%d. ", len(own)+1)) {
				own = append(own, nil)
			}
		case document.List:
			for _, item := range b {
				switch {
				case len(own) == 0:
					before = append(before, item.Text)
				case item.Lead == "":
					own[len(own)-1] = append(own[len(own)-1], item.Text)
				}
			}
		}
	}
	return own, before
}

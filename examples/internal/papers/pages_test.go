package papers_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/examples/internal/planpaper"
	"example.org/posology/examples/internal/reviewpaper"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
)

// people are invented, on the day of a first visit or of a review.
func people(t *testing.T) map[string]record.Record {
	all := map[string]record.Record{}
	for name, data := range map[string][]byte{"first": demo.VillageHall(), "review": demo.HomeReview(), "referred": demo.HomeReviewRefer()} {
		for what, change := range map[string]func(*record.Record){
			"as it is":      func(*record.Record) {},
			"nothing found": func(r *record.Record) { r.Profile.Conditions, r.Profile.BP.Systolic = screening.AskedFor(), 130 },
			"may fall, alone": func(r *record.Record) {
				r.Profile.Setting, r.Profile.Falls = screening.Alone, &screening.FallsScreen{Fell: screening.Yes, Afraid: screening.No, Unsteady: screening.No}
			},
			"afraid of falling": func(r *record.Record) {
				r.Profile.Conditions, r.Profile.Falls = screening.AskedFor(), &screening.FallsScreen{Afraid: screening.Yes, Fell: screening.No, Unsteady: screening.No}
			},
			"thin blood": func(r *record.Record) { r.Profile.Conditions = screening.AskedFor("anticoagulant") },
			"a sign":     func(r *record.Record) { r.Profile.Symptoms = screening.AskedFor("palpitations_or_tachycardia") },
			"not asked":  func(r *record.Record) { r.Profile.Symptoms = screening.Checklist{} },
			"fever":      func(r *record.Record) { fever(r) },
			"a chair alone": func(r *record.Record) {
				r.Exercises, r.Tests, r.Kit = nil, nil, equipment.Kit{Things: []exercise.Thing{exercise.Chair}}
			},
			"few minutes": func(r *record.Record) { r.Minutes = 12 },
			"light weights": func(r *record.Record) {
				r.Kit = equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("1 kg")), Count: 2}}}
			},
			"own choice": func(r *record.Record) { r.Exercises, r.Tests = nil, nil },
			"weeks away": func(r *record.Record) { r.Absence = screening.No; later(r, 20) },
			"weeks away, now alone": func(r *record.Record) {
				r.Absence, r.Profile.Setting, r.Profile.Falls = screening.No, screening.Alone, &screening.FallsScreen{Fell: screening.Yes, Afraid: screening.No, Unsteady: screening.No}
				later(r, 20)
			},
			"many weeks away":   func(r *record.Record) { r.Absence = screening.No; later(r, 60) },
			"a fall since then": func(r *record.Record) { fell(r) },
		} {
			r := programtest.Decoded(t, data)
			change(&r)
			if r.Validate() == nil { // not every change goes with every record
				all[name+", "+what] = r
			}
		}
	}
	return all
}

func today(r *record.Record) *screening.Check {
	if len(r.Checks) == 0 {
		r.Checks = []screening.Check{{Day: max(r.Profile.Day, r.Review), New: screening.AskedFor(), Setting: r.Profile.Setting, Febrile: screening.No, Unwell: screening.No}}
	}
	return &r.Checks[len(r.Checks)-1]
}

func fever(r *record.Record) { today(r).Febrile = screening.Yes }
func fell(r *record.Record) {
	c := today(r)
	c.Events = append(c.Events, screening.Event{Code: "fall", Day: c.Day - 1})
}

// later moves the day of the review.
func later(r *record.Record, days units.Day) {
	if r.Review > 0 {
		r.Review += days
		r.Checks = nil
	}
}

// A paged person is one with all that is printed for them.
type paged struct {
	client       document.Document
	text         map[string]string
	file         string
	coming       bool
	day, expires units.Day
}

func print(t *testing.T, name string, r record.Record) (p paged) {
	t.Helper()
	var file strings.Builder
	var v papers.Visit
	if len(r.Visits) == 0 {
		plan, err := r.Start(r.LastDay())
		if err == nil {
			err = planpaper.For(command.ForFile, &file, plan)
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		v, p.coming, p.day = papers.OfPlan(plan), plan.Week != nil, r.LastDay()
		if p.coming {
			p.expires = plan.Week.Expires
		}
	} else {
		re, err := r.Assess(r.Review)
		if err == nil {
			err = reviewpaper.For(command.ForFile, &file, re)
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		v, p.coming, p.day, p.expires = papers.OfReview(re), re.Coming != nil, re.Day, re.InForce.Expires
	}
	all, err := v.All()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	written, err := v.Letter()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	all = append(all, papers.Paper{Name: "letter", Document: written}) // also where nobody need read it
	p.text, p.file = map[string]string{}, strings.Join(strings.Fields(file.String()), " ")
	for _, paper := range all {
		var out strings.Builder
		if err := paper.Text(&out); err != nil {
			t.Fatal(err)
		}
		p.text[paper.Name] = strings.Join(strings.Fields(out.String()), " ")
		if paper.Name == "handout" {
			p.client = paper.Document
		}
	}
	return p
}

var (
	weight = regexp.MustCompile(`\d[\d.]* (kg|lb)\b`)
	iso    = regexp.MustCompile(`\d{4}-\d{2}-\d{2}`)
	code   = regexp.MustCompile(`\b[a-z]+_[a-z_]+\b`)
	one    = regexp.MustCompile(`[Ll]ay the weight (on|back)|[Tt]ake it\b`)
	limits = regexp.MustCompile(`LIMITS (KEPT TO HERE|SET BY OTHERS)`)
)

// On the page of a client nothing stands twice, the weights are those of the clinician's page,
// and no day is past or beyond the end of the plan; for nobody but whoever types is there a code.
func TestPages(t *testing.T) {
	for name, r := range people(t) {
		p := print(t, name, r)
		for _, line := range twice(p.client) {
			t.Errorf("%s: twice %q", name, line)
		}
		for _, w := range append(weight.FindAllString(p.text["handout"], -1), asked(p.client)...) {
			if !strings.Contains(p.file, w) {
				t.Errorf("%s: the clinician does not read %q", name, w)
			}
		}
		for title, text := range p.text {
			if title == "diary" {
				continue
			}
			for _, found := range append(iso.FindAllString(text, -1), code.FindAllString(text, -1)...) {
				t.Errorf("%s, %s: %q", name, title, found)
			}
			if strings.Contains(text, "limits named") && !limits.MatchString(text) {
				t.Errorf("%s, %s: no limits are named", name, title)
			}
			if strings.Count(text, "it ends clearances") > 1 {
				t.Errorf("%s, %s: what is to be assessed again stands twice", name, title)
			}
			if strings.Count(text, r.Client) > 1 {
				t.Errorf("%s, %s: the person is introduced twice", name, title)
			}
		}
		yours := p.text["handout"]
		for d := p.day; p.coming && d < p.day+100; d++ {
			if says := strings.Contains(yours, "- "+day(d)); says && d > p.expires {
				t.Errorf("%s: a session on %s, and the plan ends on %s", name, d, p.expires)
			}
		}
		for d := p.day - 400; d <= p.day; d++ {
			if strings.Contains(yours, "together again by "+day(d)) {
				t.Errorf("%s: the next look was by %s", name, d)
			}
		}
		for part := range strings.SplitSeq(yours, " Ready ") {
			ready, rest, _ := strings.Cut(part, " Take ")
			if load, _, _ := strings.Cut(rest, " Do "); strings.Contains(load, "in each hand") && one.MatchString(ready) {
				t.Errorf("%s: two weights, and %q", name, ready)
			}
		}
	}
}

func day(d units.Day) string {
	y, m, n := d.Date()
	return fmt.Sprintf("%s %d %s %d", d.Weekday(), n, m, y)
}

// asked are what to take and to do of each exercise, as the clinician's page says it.
func asked(d document.Document) (list []string) {
	for _, b := range d.Blocks {
		items, _ := b.(document.List)
		for _, item := range items {
			switch text := strings.TrimSuffix(item.Text, "."); item.Lead {
			case "Take":
				list = append(list, "load "+text+" (")
			case "Do":
				list = append(list, ": "+text)
			}
		}
	}
	return list
}

// twice are the sentences that stand on a page twice, but for what to heed while moving, which
// stands with each exercise or item.
func twice(d document.Document) (list []string) {
	part, said := false, map[string]bool{} // in a part or not
	say := func(text string, heed bool) {
		if inPart, again := said[text]; again && len(text) > 30 && !(heed && inPart) {
			list = append(list, text)
		}
		said[text] = heed
	}
	for _, b := range d.Blocks {
		switch b := b.(type) {
		case document.Heading:
			part = b.Level == 3
		case document.Paragraph:
			say(string(b), false)
		case document.List:
			for _, item := range b {
				if item.Lead == "" || item.Lead == "Ready" || item.Lead == "After" {
					say(item.Text, part && item.Lead == "")
				}
			}
		}
	}
	return list
}

// What comes first is why nothing is done, nobody is sent to a test then, and a march that is an
// exercise and stands beside lifting says so. In whose place an exercise came is named.
func TestPagesSay(t *testing.T) {
	all := people(t)
	for name, want := range map[string]string{
		"review, as it is!":          "FIRST - It is time to see",
		"first, as it is!":           "Take no more than 2 kg.",
		"review, fever":              "FIRST - With a fever, rest is the right training.",
		"first, thin blood":          "After a knock on the head call for medical help at once",
		"review, may fall, alone":    "About the goblet squat: This exercise asks for something",
		"first, a chair alone":       "MARCHING ON THE SPOT, MUCH AS IN EXERCISE",
		"review, as it is":           "Our telephone: ___",
		"review, weeks away":         "FOR ALL EXERCISES - After the break we begin a little easier",
		"review, a fall since then!": "It is time to see again how strong you are",
		"review, fever!":             "It is time to see again how strong you are",
		"first, may fall, alone!":    "We would like to ask a little more about getting up from the floor.",
	} {
		of, not := strings.CutSuffix(name, "!")
		r, ok := all[of]
		if !ok {
			t.Fatalf("nobody is %s", of)
		}
		if text := print(t, of, r).text["handout"]; strings.Contains(text, want) == not {
			t.Errorf("%s: %q in\n%s", name, want, text)
		}
	}
}

// What was lifted in an exercise in whose place another came stands on both papers of the last day.
func TestDischargeLeft(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	for i := range r.Asked {
		if r.Asked[i].Exercise == "seated-hammer-curl" {
			r.Asked[i].Until = r.Visits[len(r.Visits)-1].Day
		}
	}
	client, letter := lastDay(t, r)
	if i := slices.Index(strings.Fields(client), "hammer"); i < 0 || !strings.Contains(letter, "Seated hammer curl") {
		t.Errorf("%s\n%s", client, letter)
	}
}

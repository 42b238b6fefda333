package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	asTold   = "If anything here is other than what your doctor or therapist told you, do as they say, and tell us. Our telephone: " + blank
	noDevice = page.NoDevice
	march    = "march" // ends the names of the exercises that are much the same as that move beside lifting
	aim      = "What you want to be able to do, in your own words"
)

// A sheet is a paper for the client: short, kind and in large steps.
type sheet struct {
	document.Document
	words   evidence.Lexicon
	profile screening.Profile
	first   map[string]int // the exercise with which something was first said
}

func newSheet(day units.Day, note string, of screening.Profile) (*sheet, error) {
	words, err := record.Words()
	return &sheet{document.Document{Under: page.Under(day, note), Large: true}, words, of, map[string]int{}}, err
}

// texts returns what the reasons say to the client, each sentence once.
func (s *sheet) texts(reasons []evidence.Reason) []string { return page.Texts(s.words.Client, reasons) }

// exercises adds what is done at a visit: what goes for all or several first, then each,
// without what was said above.
func (s *sheet) exercises(parts []part, above ...string) {
	said := s.once(parts)
	s.Listed("For all exercises", without(said.all, above)...)
	s.Section("What you do each time")
	s.Points(said.several...)
	for i, p := range parts {
		s.item(i+1, p, append(said.of[i], above...))
	}
}

// asBefore names the exercise with which a text stands, where it was said already.
func (s *sheet) asBefore(text string, n int) string {
	if at, said := s.first[text]; said {
		return fmt.Sprintf("As for exercise %d.", at)
	}
	s.first[text] = n
	return text
}

// item adds what a client does of one exercise: first what changes, then how, and at
// the end what to heed, but for what was said for all.
func (s *sheet) item(n int, p part, said []string) {
	s.Part(fmt.Sprintf("%d. %s", n, upper(p.dose.Name)))
	var list document.List
	add := func(lead, text string) { list = append(list, document.Item{Lead: lead, Text: text}) }
	first := without(s.texts(p.changes), said)
	shown := first
	if p.was != "" && len(first) > 0 {
		shown = []string{fmt.Sprintf("About the %s: %s", p.was, strings.Join(first, " "))}
	}
	for _, text := range shown {
		add("", text)
	}
	ex, known := exerciseOf(p.dose)
	if strings.HasSuffix(string(ex.ID), march) {
		s.first[march] = n
	}
	c := cueOf(ex.ID)
	if p.dose.Hold == body.OneEachHand {
		c.ready, c.after = pair.Replace(c.ready), pair.Replace(c.after)
	}
	add("Ready", s.asBefore(c.ready, n))
	if p.dose.Mode != dose.WithoutLoad {
		add("Take", p.dose.Load.String()+".")
	}
	add("Do", page.Amount(p.dose)+".")
	if p.dose.Feel != nil {
		add("Last", page.Felt(p.dose)+".")
	}
	if known {
		add("How", how(ex, p.dose))
	}
	add("Stop", whenToStop(p.dose))
	if rest := restOf(p); rest != "" && !slices.Contains(said, restForAll+rest) {
		add("Rest", rest)
	}
	add("After", s.asBefore(c.after, n))
	for _, text := range page.Worded(s.profile, ex.Demands) {
		add("", text)
	}
	for _, text := range without(s.texts(p.heeded()), slices.Concat(first, said)) {
		add("", text)
	}
	s.Items(list)
}

// tests adds how the tests of function went.
func (s *sheet) tests(done []choice.Tested) {
	var texts []string
	for _, t := range done {
		text, name := strings.Join(s.texts(t.Reasons), " "), t.Test.String()+t.Trial.String()
		switch {
		case strings.HasPrefix(text, name):
			texts = append(texts, upper(text))
		case text != "":
			texts = append(texts, upper(name)+": "+text)
		}
	}
	s.Listed("How your tests went", texts...)
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// without returns the texts that were not said before.
func without(texts, said []string) []string {
	return slices.DeleteFunc(texts, func(text string) bool { return slices.Contains(said, text) })
}

// exerciseOf finds the exercise, or the one that it is of where a band or a height is named
// behind it.
func exerciseOf(item dose.Prescription) (exercise.Exercise, bool) {
	id := string(item.Exercise)
	for at := len(id); at > 0; at = strings.LastIndexByte(id[:at], '-') {
		if ex, ok := exercise.Standard().Get(exercise.ID(id[:at])); ok && strings.HasPrefix(item.Name, ex.Name) {
			return ex, true
		}
	}
	return exercise.Exercise{}, false
}

// oneSide takes out of an explanation what is for both sides.
var oneSide = strings.NewReplacer(" Do one side, then the other.", "", "turn, change hands and walk back", "turn and walk back", " and change sides", "")

func how(ex exercise.Exercise, item dose.Prescription) string {
	if item.OneSided && item.Side != body.Both {
		return oneSide.Replace(ex.How)
	}
	return ex.How
}

// whenToStop says to a client when a set ends.
func whenToStop(item dose.Prescription) string {
	switch {
	case item.Measure != exercise.Repetitions:
		return "before it gets hard to keep the position."
	case !item.Reserve.Countable:
		return fmt.Sprintf("while it still feels clearly easy. It is fine to do fewer than %d.", item.Count)
	}
	return fmt.Sprintf("when you could do only about %v more. It is fine to do fewer than %d.", item.Reserve.Least, item.Count)
}

// besideHeads are what the kinds of work beside lifting are called on a page.
var besideHeads = map[beside.ItemKind]string{
	beside.Balance: "Balance", beside.Aerobic: "Moving about", beside.Impact: "For your bones", beside.Power: "Fast on the way up",
}

// Beside returns what a client does beside lifting, without a title.
func Beside(items []beside.Item) (document.Document, error) {
	s, err := newSheet(0, "", screening.Profile{})
	if err == nil {
		s.beside(items, nil)
	}
	return s.Document, err
}

// beside adds what a client does beside lifting, kind by kind: what goes for all items
// of a kind once, before them; then each.
func (s *sheet) beside(items []beside.Item, barred []beside.Barred) {
	for kind := range beside.ItemKinds() {
		of := slices.DeleteFunc(slices.Clone(items), func(i beside.Item) bool { return i.Kind != kind })
		if len(of) == 0 {
			continue
		}
		s.Section(besideHeads[kind])
		var shared []string
		if len(of) > 1 {
			shared = page.InAll(of, func(i beside.Item) []string { return s.texts(i.Reasons) }, slices.Contains)
			s.Points(shared...)
		}
		for _, item := range of {
			head := upper(item.Name)
			if n := s.first[string(item.Move)]; n > 0 {
				head += fmt.Sprintf(", much as in exercise %d", n)
			}
			s.Part(head)
			s.Points(without(s.texts(item.Reasons), shared)...)
		}
	}
	for _, b := range barred {
		s.Points(s.texts(slices.Concat(b.Reasons, b.Free))...)
	}
}

package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units/evidence"
)

// A part is one exercise of a sheet.
type part struct {
	dose    dose.Prescription
	changes []evidence.Reason // since the last time
	was     string            // the name of the exercise in whose place it came
}

// heeded are the reasons that stand below how it is done, without a bound above the weight
// named where no heavier one is to be looked for.
func (p part) heeded() []evidence.Reason {
	stays := p.dose.Finding == nil || p.dose.Finding.MaxSteps == 0
	return slices.DeleteFunc(slices.Concat(p.dose.Cautions, p.dose.Reasons), func(r evidence.Reason) bool {
		return r.Code == "dose.most" && stays && p.dose.Most > p.dose.Load.Each()
	})
}

func partsOf(items []dose.Prescription) []part {
	list := make([]part, len(items))
	for i, item := range items {
		list[i].dose = item
	}
	return list
}

// fewest is of how many exercises a sentence is said once for all of them.
const fewest = 2

// together are the reasons that are said once, with the numbers of their exercises. They
// speak of the weights and of the plan, and none permits anything; what to heed while
// moving stays with its exercise.
var together = []evidence.ReasonCode{
	"exercise.weight-from-chair-height", "dose.no-step-unseen", "dose.no-step-alone", "dose.below-effective-learning", "dose.below-effective",
	"dose.kit-too-light",
}

// restForAll begins the line with the rest that goes for all exercises.
const restForAll = "Rest "

const forTask evidence.ReasonCode = "choice.for-task"

// once is what a sheet says once for its exercises.
type once struct {
	all     []string   // goes for each of them
	several []string   // with their numbers
	of      [][]string // what need not be said of each any more
}

// restOf says how long to rest between the sets of an exercise, "" where there is one set.
func restOf(p part) string {
	if rest, ok := p.dose.Rest.Min(); ok && p.dose.Sets > 1 {
		return fmt.Sprintf("at least %d seconds before the next set.", rest)
	}
	return ""
}

// restsOf are the rests of those that have one, each once: of one set there is none to say.
func restsOf(parts []part) []string {
	var rests []string
	for _, p := range parts {
		if rest := restOf(p); rest != "" && !slices.Contains(rests, rest) {
			rests = append(rests, rest)
		}
	}
	return rests
}

// once finds what is said once.
func (s *sheet) once(parts []part) once {
	o := once{of: make([][]string, len(parts))}
	if len(parts) == 0 {
		return o
	}
	for _, of := range []func(part) []evidence.Reason{func(p part) []evidence.Reason { return p.changes }, part.heeded} {
		o.all = append(o.all, page.InAll(parts, func(p part) []string { return s.texts(of(p)) }, slices.Contains)...)
	}
	if rests := restsOf(parts); len(rests) == 1 {
		o.all = append(o.all, restForAll+rests[0])
	}
	for i, p := range parts {
		o.of[i] = slices.Clone(o.all)
		for _, r := range p.heeded() {
			if r.Code == forTask {
				o.of[i] = append(o.of[i], s.words.Client(r))
			}
		}
	}
	for _, text := range s.candidates(parts) {
		if in := s.saying(parts, text); len(in) >= fewest && !slices.Contains(o.all, text) {
			o.several = append(o.several, upper(numbers(in))+": "+text)
			for _, n := range in {
				o.of[n-1] = append(o.of[n-1], text)
			}
		}
	}
	o.several = append(o.several, tasks(parts)...)
	return o
}

// candidates are the sentences of the reasons that are said together, in their order.
func (s *sheet) candidates(parts []part) []string {
	var list []string
	for _, p := range parts {
		for _, r := range p.heeded() {
			if text := s.words.Client(r); text != "" && slices.Contains(together, r.Code) && !slices.Contains(list, text) {
				list = append(list, text)
			}
		}
	}
	return list
}

// saying returns the numbers of the exercises that say a sentence.
func (s *sheet) saying(parts []part, text string) []int {
	var in []int
	for i, p := range parts {
		if slices.Contains(s.texts(p.heeded()), text) {
			in = append(in, i+1)
		}
	}
	return in
}

// tasks say which exercises are for which of the client's tasks.
func tasks(parts []part) []string {
	var order []string
	of := map[string][]int{}
	for i, p := range parts {
		for _, r := range p.heeded() {
			if r.Code != forTask {
				continue
			}
			for task := range strings.SplitSeq(namedTasks(r), ", ") {
				if len(of[task]) == 0 {
					order = append(order, task)
				}
				of[task] = append(of[task], i+1)
			}
		}
	}
	lines := make([]string, len(order))
	for i, task := range order {
		lines[i] = fmt.Sprintf("For %s: %s.", task, numbers(of[task]))
	}
	return lines
}

func namedTasks(r evidence.Reason) string {
	for _, a := range r.Args {
		if a.Name == "for" {
			return a.Value()
		}
	}
	return ""
}

// numbers are those of exercises, such as "exercises 1, 2 and 5".
func numbers(in []int) string {
	if len(in) == 1 {
		return fmt.Sprintf("exercise %d", in[0])
	}
	text := fmt.Sprintf("exercises %d", in[0])
	for _, n := range in[1 : len(in)-1] {
		text += fmt.Sprintf(", %d", n)
	}
	return text + fmt.Sprintf(" and %d", in[len(in)-1])
}

package main

import (
	"fmt"
	"reflect"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// also are the first doses that are asked for from the day of a decision on and were not
// decided on: what begins anew, or is asked for again. They are worked out from what
// the decision rests on, so that a paper comes out as it was.
func (s *session) also(e record.Entry) (list []dose.Prescription, err error) {
	for _, a := range s.r.Asked {
		if a.From != e.Day || dosed(e, a.Exercise) {
			continue
		}
		first, err := s.r.AsOf(e).Anew(a.Exercise, a.Looked != nil, e.Day)
		if err != nil {
			return nil, err
		}
		a.Looked, a.Until = nil, 0
		if first != nil && same(record.AskedFrom(*first, e.Day), a) {
			list = append(list, *first)
		}
	}
	return list, nil
}

// dosed reports whether a decision has a dose of an exercise.
func dosed(e record.Entry, id exercise.ID) bool {
	return slices.ContainsFunc(e.Items, func(i record.Decided) bool { return i.Decision.Next != nil && i.Decision.Next.Exercise == id })
}

// reprint makes the files of a review's papers, anew where more is asked for since; also is what.
func (s *session) reprint(re record.Review) ([]dose.Prescription, error) {
	list, err := s.also(s.r.Entries[len(s.r.Entries)-1])
	if err != nil {
		return nil, err
	}
	s.person.Papers = nil
	return list, s.print(re.Next, papers.OfReview(re, list...).All)
}

// sayLooked says who has looked at what was stopped and begins anew on a day.
func (s *session) sayLooked(day units.Day) {
	for _, a := range s.r.Asked {
		if a.From == day && a.Looked != nil {
			ex, _ := s.lookUp(string(a.Exercise)) // the record was read with it
			page.Wrap(s.said, "", fmt.Sprintf("Looked at before %s begins anew: by %s, on %s.", ex.Name, a.Looked.Who, page.Day(a.Looked.Day)))
		}
	}
}

// same reports whether two lines ask for the same; who looked is no part of it.
func same(a, b record.Asked) bool {
	a.Looked, b.Looked = nil, nil
	return reflect.DeepEqual(a, b)
}

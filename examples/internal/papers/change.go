package papers

import (
	"cmp"
	"fmt"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

type visitLog = progression.Visit

// lifts says the best set of a visit: the heaviest, and of those the longest.
func lifts(v visitLog) string {
	best := v.Sets[0]
	for _, s := range v.Sets {
		if s.Load > best.Load || s.Load == best.Load && s.Reps > best.Reps {
			best = s
		}
	}
	text := fmt.Sprint(best.Reps)
	if v.Plan.Measure != exercise.Repetitions {
		text += " " + v.Plan.Measure.String()
	}
	if each, err := best.Each(); err == nil && each > 0 {
		text = each.Short(units.Nearest) + " × " + text
		if best.Hold == body.OneEachHand {
			text += ", in each hand"
		}
	}
	return text
}

// work is what an estimate holds for.
type work struct {
	exercise exercise.ID
	side     body.Side
	hold     body.Hold
}

// strengthChanges are the first and the last estimate of each exercise, side and hold of
// which there are two days; of a test that gives none nothing is said.
func strengthChanges(r record.Record, who body.Person, tracks []Strength) [][]string {
	catalogue, err := exercise.Standard().With(r.Own...)
	if err != nil {
		return nil // the record was read, so it cannot be
	}
	var order []work
	of := map[work][]onerm.Estimate{}
	for _, set := range r.Tests {
		ex, _ := catalogue.Get(set.Exercise)
		e, err := onerm.FromSet(set, ex, who)
		if err != nil {
			continue
		}
		w := work{e.Exercise, e.Side, e.Hold}
		if len(of[w]) == 0 {
			order = append(order, w)
		}
		of[w] = append(of[w], e)
	}
	var rows [][]string
	for _, w := range order {
		list := of[w]
		slices.SortStableFunc(list, func(a, b onerm.Estimate) int { return cmp.Compare(a.Day, b.Day) })
		start, end := list[0], list[len(list)-1]
		if start.Day == end.Day {
			continue
		}
		ex, _ := catalogue.Get(w.exercise)
		name := upper(ex.Name)
		if w.side != body.Both {
			name += ", " + w.side.String()
		}
		rows = append(rows, []string{name, estimated(start), estimated(end), shownOf(tracks, w.exercise, w.side)})
	}
	return rows
}

func estimated(e onerm.Estimate) string {
	low, _ := e.Interval.Min()
	high, _ := e.Interval.Max()
	return fmt.Sprintf("%s (%s to %s) %s, %s", e.OneRM.Short(units.Nearest), low.Short(units.Down), high.Short(units.Up), e.Stated, e.Day)
}

// A tested is the first and the last result of a test, and what the difference shows.
type tested struct {
	name, before, after string
	change              function.ChangeAnswer
}

// shown says in few words what the difference shows.
func (t tested) shown() string {
	switch {
	case t.change.Shown != function.Real:
		return unclear
	case t.change.Direction == function.Better:
		return "real, for the better"
	}
	return "real, for the worse"
}

// functionChanges compares the first and the last result of each test and side.
func functionChanges(results []function.Result, p screening.Profile) ([]tested, error) {
	sorted := slices.Clone(results)
	slices.SortStableFunc(sorted, func(a, b function.Result) int {
		return cmp.Or(cmp.Compare(a.Test, b.Test), cmp.Compare(a.Side, b.Side), cmp.Compare(a.Day, b.Day))
	})
	var list []tested
	for len(sorted) > 0 {
		start, n := sorted[0], 1
		for n < len(sorted) && sorted[n].Test == start.Test && sorted[n].Side == start.Side {
			n++
		}
		end := sorted[n-1]
		sorted = sorted[n:]
		if n == 1 {
			continue
		}
		change, err := function.ChangeBetween(start, end, p.Sex, p.Age)
		if err != nil {
			return nil, field.At("/results", err)
		}
		list = append(list, tested{start.Test.String(), scored(start), scored(end), change})
	}
	return list, nil
}

func scored(r function.Result) string {
	text := r.How.String()
	if r.How == function.Done {
		text = r.Value.String()
	}
	return fmt.Sprintf("%s (%s)", text, page.Day(r.Day))
}

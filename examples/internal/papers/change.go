package papers

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

type visitLog = progression.Visit

// lifts says the best set of a visit: the heaviest, and of those the longest.
func lifts(v visitLog) string {
	best := slices.MaxFunc(v.Sets, func(a, b setlog.Set) int { return cmp.Or(cmp.Compare(a.Load, b.Load), cmp.Compare(a.Reps, b.Reps)) })
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

// results say how each test of function went last, with what has to be alike.
func results(done []choice.Tested) (list []string) {
	for _, t := range done {
		if t.Last == nil {
			continue
		}
		list = append(list, nameOf(t)+": "+Went(*t.Last)+", on "+page.Day(t.Last.Day))
	}
	return list
}

// nameOf names a test or trial, with its side.
func nameOf(t choice.Tested) string {
	name := t.Test.String() + t.Trial.String()
	if t.Side == body.Left || t.Side == body.Right {
		name += ", " + t.Side.String()
	}
	return name
}

// Went says how a test or trial went, with what has to be alike next time.
func Went(t choice.Tried) string {
	var parts []string
	if t.How != function.Done {
		parts = append(parts, t.How.String())
	}
	if !t.Value.IsZero() {
		parts = append(parts, t.Value.String())
	}
	if t.Protocol != "" {
		parts = append(parts, t.Protocol)
	}
	return strings.Join(parts, ", ")
}

// A tested is the first and the last result of a test, and what the difference shows.
type tested struct {
	name, before, after string
	change              function.ChangeAnswer
	further             function.Position // how it went, beside how it went before
}

// shown says in few words what the difference shows, or how much further it went where
// there are not two numbers.
func (t tested) shown() string {
	switch {
	case t.further == function.Better:
		return "further than before"
	case t.further == function.Worse:
		return "less far than before"
	case t.change.Shown != function.Real:
		return unclear
	case t.change.Direction == function.Better:
		return "real, for the better"
	}
	return "real, for the worse"
}

// functionChanges are the first and the last result of each test and side of which there
// are two that can be compared.
func functionChanges(done []choice.Tested) []tested {
	var list []tested
	for _, t := range done {
		if t.Change == nil {
			continue
		}
		list = append(list, tested{nameOf(t), scored(t.First.Result), scored(t.Last.Result), *t.Change, t.Last.How.Order(t.First.How)})
	}
	return list
}

func scored(r function.Result) string {
	if r.How == function.Done {
		return fmt.Sprintf("%s (%s)", r.Value, page.Day(r.Day))
	}
	return fmt.Sprintf("%s (%s)", r.How, page.Day(r.Day))
}

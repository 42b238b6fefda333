package choice

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Tested is a test with what has come of it.
type Tested struct {
	Test  function.Test `json:"test,omitzero"` // or a trial
	Trial TaskTrial     `json:"trial,omitzero"`
	Side  body.Side     `json:"side,omitzero"`
	// First is the earliest result that the last one may be compared with; nil where
	// there is none. Last is nil where nothing was tried yet.
	First *Tried `json:"first,omitempty"`
	Last  *Tried `json:"last,omitempty"`
	// Against is where the last result stands to each norm that is held for the person.
	Against []function.NormAnswer `json:"against,omitempty"`
	// Change is that from the first to the last. Of a trial none is ever real, since no
	// detectable change is held.
	Change  *function.ChangeAnswer `json:"change,omitempty"`
	Reasons []evidence.Reason      `json:"reasons"`
}

// Results puts results, the oldest first, beside the tests of c, in their order: one for
// each side that was tested. A test without a result says so; results of tests that are
// not chosen now come last. The errors are those of [Tried.Validate], each at the
// place of its result.
func (c Chosen) Results(done []Tried, who body.Person) ([]Tested, error) {
	var bad field.Errors
	for i, t := range done {
		bad.Add(fmt.Sprintf("/%d", i), t.Validate())
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	var all []Tested
	for _, k := range c.Tests {
		own := sides(done, func(t Tried) bool { return t.Test == k.Test && t.Trial == k.Trial })
		for _, list := range own {
			all = append(all, resultsOf(list, who))
		}
		if len(own) == 0 {
			name := Tried{Trial: k.Trial, Result: function.Result{Test: k.Test}}.name()
			all = append(all, Tested{Test: k.Test, Trial: k.Trial, Reasons: []evidence.Reason{because(codeUntested, name, factTests)}})
		}
	}
	rest := sides(done, func(t Tried) bool {
		return !slices.ContainsFunc(c.Tests, func(k TaskTest) bool { return t.Test == k.Test && t.Trial == k.Trial })
	})
	for _, list := range rest {
		all = append(all, resultsOf(list, who))
	}
	return all, nil
}

// sides sorts results by test, trial and side, in the order of the first of each.
func sides(done []Tried, of func(Tried) bool) (lists [][]Tried) {
	for _, t := range done {
		if !of(t) {
			continue
		}
		at := slices.IndexFunc(lists, func(l []Tried) bool { return l[0].Test == t.Test && l[0].Trial == t.Trial && l[0].Side == t.Side })
		if at < 0 {
			lists, at = append(lists, nil), len(lists)
		}
		lists[at] = append(lists[at], t)
	}
	return lists
}

// resultsOf puts together what came of one test, of one side.
func resultsOf(list []Tried, who body.Person) Tested {
	last := list[len(list)-1]
	t := Tested{Test: last.Test, Trial: last.Trial, Side: last.Side, Last: &last}
	for _, earlier := range list[:len(list)-1] {
		if change, alike := changeBetween(earlier, last, who); alike {
			t.First, t.Change = &earlier, &change
			break
		}
	}
	t.say(len(list) > 1)
	if last.Trial == 0 {
		t.stand(who)
	}
	if t.Change != nil {
		t.Reasons = append(t.Reasons, t.Change.Reasons...)
	}
	return t
}

// say tells the results themselves.
func (t *Tested) say(several bool) {
	name, last := t.Last.name(), t.Last
	result := []evidence.Arg{evidence.Text("last", last.text()), evidence.Day("day", last.Day)}
	code := codeOnce
	if t.First != nil {
		code = codeResults
		result = append(result, evidence.Text("first", t.First.text()), evidence.Day("from", t.First.Day))
	}
	if last.How != function.Done || t.First != nil && t.First.How != function.Done || last.Value.Unit() == function.Kilograms {
		code = ofFile[code]
	}
	t.Reasons = append(t.Reasons, because(code, name, factTests).With(result...))
	if several && t.First == nil {
		t.Reasons = append(t.Reasons, because(codeNotAlike, name, factAlike).With(evidence.Day("day", last.Day)))
	}
}

// stand tells where the last result stands to the norms that are held for the person.
func (t *Tested) stand(who body.Person) {
	answers, err := function.AgainstNorms(t.Last.Result, who.Sex, who.Age)
	if err != nil {
		return // of a person without an age, for whom no norm is held
	}
	var texts []string
	var facts []evidence.FactID
	for _, a := range answers {
		if a.Position <= function.NotScored {
			continue
		}
		t.Against = append(t.Against, a)
		texts = append(texts, fmt.Sprintf("%s: %s %s, %s (%s)", a.Position, a.Norm.Statistic.Words(), a.Norm.Value, a.Body, a.Norm.Basis))
		facts = append(facts, a.Norm.Fact)
	}
	switch {
	case len(texts) > 0:
		t.Reasons = append(t.Reasons, because(codeAgainst, t.Last.name(), facts...).With(evidence.Text("last", t.Last.text()), evidence.Text("answers", strings.Join(texts, "; "))))
	case t.Last.How != function.Done:
		score, _ := t.Last.Score() // it is valid
		t.Reasons = append(t.Reasons, score.Reason)
	}
}

// changeBetween compares two results, and reports whether they are alike enough for that.
func changeBetween(before, after Tried, who body.Person) (function.ChangeAnswer, bool) {
	if after.Trial == 0 {
		change, err := function.ChangeBetween(before.Result, after.Result, who.Sex, who.Age)
		return change, err == nil
	}
	if before.Protocol != after.Protocol && before.Protocol != "" && after.Protocol != "" {
		return function.ChangeAnswer{}, false
	}
	v := function.ChangeAnswer{Shown: function.NotShown, Basis: evidence.Design, Direction: after.How.Order(before.How)}
	reason := because(codeTrialOrder, after.name(), factOwnValue).With(evidence.Term("before", before.How.String()), evidence.Term("after", after.How.String()))
	if before.How == function.Done && after.How == function.Done {
		v.Difference = units.Must(function.NewAmount(after.Value.Number()-before.Value.Number(), after.Value.Unit())) // both lie within 1000
		v.Direction = directionOf(v.Difference.Number(), trialRows[after.Trial].less)
		reason = because(codeTrialChange, after.name(), factOwnValue).With(evidence.Text("difference", v.Difference.String()))
	}
	v.Reasons = []evidence.Reason{reason.With(evidence.Term("direction", directionText(v.Direction)))}
	return v, true
}

func directionOf(difference float64, less bool) function.Position {
	switch {
	case difference == 0:
		return function.Equal
	case (difference < 0) == less:
		return function.Better
	}
	return function.Worse
}

func directionText(p function.Position) string {
	if p == 0 {
		return "not ordered"
	}
	return p.String()
}

package choice

import (
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// TaskTest is a test by which the tasks are looked at: at the start, and again at
// each review. It is one of package screening/function or a [TaskTrial].
type TaskTest struct {
	Test  function.Test `json:"test,omitzero"`
	Trial TaskTrial     `json:"trial,omitzero"`
	// Norms are the figures and cut-offs that were printed for the person's sex and
	// age, Changes those above which a change is more than noise; empty: none is held,
	// and the reasons say so.
	Norms   []function.Norm   `json:"norms,omitempty"`
	Changes []function.Norm   `json:"changes,omitempty"`
	Reasons []evidence.Reason `json:"reasons"`
}

// checks are the tests of the tasks, then those of what was found, each once. Where
// neither asks for one it is the chair stand.
func (c *chooser) checks() []TaskTest {
	var list []TaskTest
	for _, t := range append(c.templates(), favoured(c.r.Screening)...) {
		if t.trial != 0 && !slices.ContainsFunc(list, func(k TaskTest) bool { return k.Trial == t.trial }) {
			list = append(list, c.trial(t))
		}
		for _, test := range t.tests {
			if !slices.ContainsFunc(list, func(k TaskTest) bool { return k.Test == test }) {
				list = append(list, c.test(test, t))
			}
		}
	}
	if len(list) == 0 {
		list = append(list, c.test(function.ChairStand30, named{term: "the strength of the legs", fact: factTests}))
	}
	return list
}

// favoured are the tests that single findings speak for; screening knows tests by their
// names alone.
func favoured(o screening.Outcome) []named {
	var list []named
	for f := range o.Favours() {
		term, _ := screening.LookUp(f.Code)
		n := named{term: term.Meaning, fact: f.Facts[0]}
		for _, name := range f.Tests {
			var test function.Test
			if err := test.UnmarshalText([]byte(name)); err == nil {
				n.tests = append(n.tests, test)
			}
		}
		list = append(list, n)
	}
	return list
}

// tells says that there are tests, and of what; it names tasks alone, since a client
// reads it.
func tells(tasks []Task) evidence.Reason {
	if len(tasks) == 0 {
		return evidence.Because(codeTestedLegs, factTests)
	}
	return evidence.Because(codeTested, factTests).With(evidence.Terms("for", textsOf(tasks)...))
}

// test returns a test of function with what is published for the person.
func (c *chooser) test(test function.Test, t named) TaskTest {
	k := TaskTest{Test: test, Reasons: []evidence.Reason{tested(test.String(), t)}}
	who := c.r.Screening.Who
	for n := range function.Norms() {
		if n.Measure != test.Measure() || !n.AppliesTo(who.Sex, who.Age) {
			continue
		}
		switch {
		case n.Statistic.ForResults():
			if n.Statistic == "ci95_low" || n.Statistic == "ci95_high" {
				continue // of the mean that stands beside it
			}
			k.Norms = append(k.Norms, n)
		case n.Statistic.ForChanges():
			k.Changes = append(k.Changes, n)
		}
	}
	k.Changes = slices.DeleteFunc(k.Changes, func(n function.Norm) bool {
		return n.Sex == 0 && slices.ContainsFunc(k.Changes, func(o function.Norm) bool { return o.Source == n.Source && o.Sex != 0 })
	})
	k.Reasons = append(k.Reasons, held(test.String(), k.Norms, k.Changes)...)
	return k
}

// trial returns a trial, with the times of others where some were printed.
func (c *chooser) trial(t named) TaskTest {
	k := TaskTest{Trial: t.trial, Reasons: []evidence.Reason{tested(t.trial.String(), t)}}
	if row, some := stairNorm(c.r.Screening.Who); some && t.trial == stairTime {
		k.Reasons = append(k.Reasons, row, because(codeNoChange, t.trial.String(), factOwnValue))
		return k
	}
	k.Reasons = append(k.Reasons, held(t.trial.String(), nil, nil)...)
	return k
}

func tested(what string, t named) evidence.Reason {
	facts := []evidence.FactID{factTests}
	if t.fact != factTests {
		facts = append(facts, t.fact)
	}
	return because(codeTest, what, facts...).With(evidence.Term("for", t.term))
}

func because(code evidence.ReasonCode, test string, facts ...evidence.FactID) evidence.Reason {
	return evidence.Because(code, facts...).With(evidence.Term("test", test))
}

// held says which figures are held for a test, or that none is.
func held(test string, norms, changes []function.Norm) []evidence.Reason {
	if len(norms)+len(changes) == 0 {
		return []evidence.Reason{because(codeNoneHeld, test, factOwnValue)}
	}
	list := []evidence.Reason{because(codeNoNorm, test, factOwnValue), because(codeNoChange, test, factOwnValue)}
	for i, of := range []struct {
		code  evidence.ReasonCode
		norms []function.Norm
	}{{codeNorm, norms}, {codeChange, changes}} {
		if len(of.norms) > 0 {
			text, facts := figures(of.norms)
			list[i] = because(of.code, test, facts...).With(evidence.Text("figures", text))
		}
	}
	return list
}

// figures says what was printed, by whom, and of whom where that is a caution.
func figures(list []function.Norm) (string, []evidence.FactID) {
	texts := make([]string, len(list))
	facts := make([]evidence.FactID, len(list))
	for i, n := range list {
		texts[i], facts[i] = n.Statistic.Words()+" "+n.Value.String()+", "+n.Body, n.Fact
		if n.People != "" {
			texts[i] += ", " + n.People
		}
	}
	return strings.Join(texts, "; "), facts
}

// A stairTimes row holds mean times, in seconds, up and down three steps as fast as was
// safe (stairtimes2011, abstract).
type stairTimes struct {
	sex      body.Sex
	from, to body.Age // years; to 0: no upper end
	up, down float64
}

var stairNorms = []stairTimes{
	{body.Male, 70, 74, 2.09, 1.98}, {body.Male, 75, 79, 2.48, 2.29}, {body.Male, 80, 84, 2.60, 2.60}, {body.Male, 85, 0, 2.83, 2.74},
	{body.Female, 70, 74, 2.91, 2.75}, {body.Female, 75, 79, 2.83, 3.00}, {body.Female, 80, 84, 2.83, 2.93}, {body.Female, 85, 0, 3.22, 3.69},
}

func stairNorm(who body.Person) (evidence.Reason, bool) {
	for _, row := range stairNorms {
		if row.sex == who.Sex && who.Age >= row.from && (row.to == 0 || who.Age <= row.to) {
			return evidence.Because(codeStairNorm, factStairTimes).With(evidence.Number("up", row.up), evidence.Number("down", row.down)), true
		}
	}
	return evidence.Reason{}, false
}

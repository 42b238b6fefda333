package fit

import (
	"fmt"
	"iter"
	"math"
	"slices"
	"strings"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Facts behind the prior and the intervals.
const (
	factOneRM     evidence.FactID = "fit.one-rm"
	factEquations evidence.FactID = "fit.prior.equations"
	factPeople    evidence.FactID = "fit.prior.people"
	factPrior     evidence.FactID = "fit.prior"
	factFloor     evidence.FactID = "fit.prior.floor"
	factSet       evidence.FactID = "fit.set-error"
	factFreedom   evidence.FactID = "fit.set-error.weight"
	factSameDay   evidence.FactID = "fit.same-day"
	factLimit     evidence.FactID = "fit.repetitions"
	factFall      evidence.FactID = "fit.fall"
	factPractised evidence.FactID = "fit.practised"

	// of package onerm
	anchorTest  evidence.FactID = "onerm.anchor.test"
	anchorBest  evidence.FactID = "onerm.anchor.best"
	anchorWomen evidence.FactID = "onerm.anchor.women"
	measured    evidence.FactID = "onerm.measured"
	openSets    evidence.FactID = "onerm.open.sets"
	openNear    evidence.FactID = "onerm.open.near"
)

// formFact names the fact that states a form; "" for no form.
func formFact(f onerm.Form) evidence.FactID {
	if f.Check() != nil {
		return ""
	}
	return evidence.FactID("fit." + f.String())
}

// Facts yields every fact behind this package. They rest on facts of package
// onerm, which a ledger must hold too.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(formFacts(), priorFacts(), otherFacts()))
}

// formFacts state the forms with the equations they contain. A form that
// contains none is this module's choice.
func formFacts() []evidence.Fact {
	var list []evidence.Fact
	for f := range onerm.Forms() {
		fact := evidence.Fact{ID: formFact(f), Value: bend.Form(f).Equation(), Basis: evidence.Computed}
		var contains []string
		for _, s := range specials {
			if s.form == bend.Form(f) {
				contains = append(contains, fmt.Sprintf("%s at shape %.4g%s", s.formula, s.shape, floorText(s.floor)))
				fact.From = append(fact.From, s.formula.Fact())
			}
		}
		if contains == nil {
			fact.Basis, fact.From = evidence.Design, []evidence.FactID{formFact(onerm.Hyperbola), formFact(onerm.ExponentialFloor)}
		} else {
			fact.Value += "; up to a constant factor it is " + strings.Join(contains, ", ")
		}
		list = append(list, fact)
	}
	return list
}

func floorText(floor float64) string {
	if floor == 0 {
		return ""
	}
	return fmt.Sprintf(" and floor %.3f", floor)
}

// percentOf prints the load at [bend.Pivot] repetitions over the 1RM, for a fall.
func percentOf(fall float64) units.Fraction { return units.Fraction(math.Exp(-fall)) }

// around prints a normal of the logarithm of a fall.
func around(n normal) string {
	return fmt.Sprintf("%v of the 1RM (%v to %v within one standard deviation of %.3f of the logarithm of the fall)",
		percentOf(math.Exp(n.mean)), percentOf(math.Exp(n.mean+n.sd)), percentOf(math.Exp(n.mean-n.sd)), n.sd)
}

func priorFacts() []evidence.Fact {
	var equations []evidence.FactID
	for _, f := range priorEquations {
		equations = append(equations, f.Fact())
	}
	between := equationFalls()
	people := personSpread(between)
	return []evidence.Fact{
		{ID: factEquations, Value: fmt.Sprintf("%d published equations, each with the load at one repetition as its 1RM, let %d repetitions be done with %s", len(priorEquations), bend.Pivot, around(between)), Basis: evidence.Computed, From: equations},
		{ID: factPeople, Value: fmt.Sprintf("people differ from an equation by a standard deviation of %.3f of the logarithm of the fall: published errors of prediction of %v and %v less %v for the test itself, taken to stand at %d repetitions", people, units.Fraction(bestError), units.Fraction(worstError), units.Fraction(testCV), errorReps), Basis: evidence.Design, From: []evidence.FactID{anchorBest, anchorWomen, anchorTest, factEquations}},
		{ID: factPrior, Value: fmt.Sprintf("before any set, %d repetitions are done with %s: the spread of the equations and that of people", bend.Pivot, around(population)), Basis: evidence.Design, From: []evidence.FactID{factEquations, factPeople}},
		{ID: factFloor, Value: fmt.Sprintf("before any set, the floor of a curve is %v of the 1RM, with a standard deviation of %v of its logit", units.Fraction(logistic(populationFloor.mean)), floorSpread), Basis: evidence.Design, From: []evidence.FactID{formFact(onerm.ExponentialFloor)}},
	}
}

func otherFacts() []evidence.Fact {
	return []evidence.Fact{
		{ID: factOneRM, Value: "the 1RM of a curve is its load at one repetition", Basis: evidence.Computed, From: []evidence.FactID{measured}},
		{ID: factSet, Value: fmt.Sprintf("the load of a set varies by %v, as a 1RM test does, where nothing else is stated", units.Fraction(setSD)), Basis: evidence.Design, From: []evidence.FactID{anchorTest}},
		{ID: factFreedom, Value: fmt.Sprintf("that error is believed as firmly as if it had been seen in %d sets", setFreedom), Basis: evidence.Design, From: []evidence.FactID{anchorTest}},
		{ID: factPractised, Value: fmt.Sprintf("in practised people with a bar the load of a set to failure varies by %v, and the 1RM is expected where O'Conner puts it, within %v", units.Fraction(practisedSD), units.Fraction(practisedExpected)), Basis: evidence.Design, From: []evidence.FactID{openSets, openNear}},
		{ID: factSameDay, Value: fmt.Sprintf("sets of one day share %v of their error variance", units.Fraction(sameDay)), Basis: evidence.Design},
		{ID: factLimit, Value: fmt.Sprintf("curves are fitted and evaluated at %v repetitions to failure", bend.Reps()), Basis: evidence.Design},
		{ID: factFall, Value: fmt.Sprintf("a curve is refused unless %d repetitions are done with %v to %v of the 1RM and one repetition more still costs %g %% of the load at the most repetitions studied", bend.Pivot, percentOf(bend.MostFall), percentOf(bend.LeastFall), 100*bend.LeastSlope), Basis: evidence.Design},
	}
}

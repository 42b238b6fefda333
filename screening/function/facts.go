package function

import (
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units/evidence"
)

// Facts that are no figures of the tables.
const (
	factNotScored     evidence.FactID = "function.not-scored"
	factNoNorm        evidence.FactID = "function.no-norm"
	factSpeed         evidence.FactID = "function.speed"
	factBest          evidence.FactID = "function.best-of-trials"
	factBetween       evidence.FactID = "function.between-limits"
	factCourseTrap    evidence.FactID = "function.trap.course"
	factNotTried      evidence.FactID = "function.battery.not-tried"
	factNotHeld       evidence.FactID = "function.battery.not-held"
	factUnableWalk    evidence.FactID = "function.battery.walk-unable"
	factUnableStands  evidence.FactID = "function.battery.stands-unable"
	factStrictlyAbove evidence.FactID = "function.change.strictly-above"
	factNoDetectable  evidence.FactID = "function.change.none-published"
	factLearning      evidence.FactID = "function.change.learning"
	factAlike         evidence.FactID = "function.change.alike"
	factGotFurther    evidence.FactID = "function.change.order"
)

// rangeFact names the fact of the plausible range of t.
func (t Test) rangeFact() evidence.FactID {
	return "function.range." + evidence.FactID(strings.ReplaceAll(t.String(), " ", "-"))
}

// ruleFacts are the rules of this package.
var ruleFacts = []evidence.Fact{
	{ID: factNotScored, Value: "where no source seen gives unable, arms used, refused or stopped a number, they are not scored, and no norm reads them as passed", Basis: evidence.Design},
	{ID: factNoNorm, Value: "outside the sexes, ages and courses that a norm was printed for there is no norm; nothing verified was found for 50 to 59 in the tests of Rikli and Jones, CDC and Bohannon", Basis: evidence.Design},
	{ID: factSpeed, Value: "a speed is the length of the course over the time, rounded down; 8 ft are 2.4384 m", Basis: evidence.CommonPractice},
	{ID: factBest, Value: "the strongest trial of a grip and the fastest of a walk counts", Basis: evidence.CommonPractice},
	{ID: factBetween, Value: "times are printed to a tenth or a hundredth; one that falls between two printed limits takes the lower score, and one beyond the slowest limit of the 3-m walk takes 1 point", Basis: evidence.Design},
	{ID: factCourseTrap, Value: "one paper prints the 3-m limits of the battery's walk under the heading of a 4-m walk: the courses are kept apart", Source: "urology2008", Basis: evidence.FromMemory},
	{ID: factNotTried, Value: "a tandem stand that is not attempted scores 0", Source: "guralnik1994", Via: "urology2008", Basis: evidence.Secondary},
	{ID: factNotHeld, Value: "an easier stand that could not be taken up, or was not tried because the one before was not held, scores 0: it was not held for the time of its point", Basis: evidence.Design, From: []evidence.FactID{factNotTried}},
	{ID: factUnableWalk, Value: "a walk that could not be done scores 0", Source: "guralnik1994", Basis: evidence.FromMemory},
	{ID: factUnableStands, Value: "five sit-to-stands that could not be done score 0", Source: "guralnik1994", Via: "urology2008", Basis: evidence.Secondary},
	{ID: factStrictlyAbove, Value: "a change is real only above the detectable change, not at it; of several that apply the largest decides", Basis: evidence.Design},
	{ID: factNoDetectable, Value: "without a detectable change published for the person's sex and age the answer is not shown, whatever the difference", Basis: evidence.Design},
	{ID: factLearning, Value: "a gain that may be the second try counts as learning up to the published practice effect, in whole counts; a larger one must stay above the detectable change with the effect taken off", Basis: evidence.Design},
	{ID: factGotFurther, Value: "unable is less than arms used and less than a test that was broken off, and each of these less than one that was done by the protocol, whatever its number; a refusal stands in no order", Basis: evidence.Design},
	{ID: factAlike, Value: "two results are compared only if test, course, side and protocol are alike", Basis: evidence.CommonPractice},
}

// Facts yields every fact behind this package: the norms, the ranges, the rules.
func Facts() iter.Seq[evidence.Fact] {
	var list []evidence.Fact
	for n := range Norms() {
		list = append(list, n.fact())
	}
	for t := range Tests() {
		list = append(list, t.plausibleFact())
	}
	return slices.Values(append(list, ruleFacts...))
}

func (n Norm) fact() evidence.Fact {
	f := evidence.Fact{ID: n.Fact, Value: n.text(), Source: n.Source, Via: n.Via, Basis: n.Basis}
	if n.Basis == evidence.Published {
		f.Locator = "abstract"
		if n.Source == "china2020" {
			f.Locator = "the table named in the citation"
		}
	}
	return f
}

func (t Test) plausibleFact() evidence.Fact {
	f := t.protocol().known
	low, high := t.Plausible()
	f.ID = t.rangeFact()
	f.Value = fmt.Sprintf("%s: values from %s to %s are taken", t, low, high)
	return f
}

package evidence_test

import (
	"fmt"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A value of a reason keeps its unit, so that it prints in any language and nothing
// has to be parsed out of a sentence.
func ExampleBecause() {
	day := units.Must(units.NewDay(2026, 11, 30))
	between := units.Must(units.Between(8, 12))
	why := evidence.Because("kettle.full", "kettle.lime").With(
		evidence.Mass("most", 2266*units.Gram), evidence.NearMass("near", 2266*units.Gram),
		evidence.Marked("marked", units.Must(units.ParseMarked("5 lb"))), evidence.Masses("masses", units.AtMost(2*units.Kilogram)),
		evidence.Count("cups", between), evidence.Change("more", 2), evidence.Number("ratio", 1.25), evidence.Tenths("about", 1.25),
		evidence.Seconds("boils", 90), evidence.Minutes("rests", 5), evidence.Days("keeps", 2), evidence.Day("on", day),
		evidence.Share("full", units.Fraction(0.725)), evidence.Quantity("holds", 1.7, "L"),
		evidence.Reserve("reserve", 3, true), evidence.Effort("rated", units.Must(units.RPE(8))),
		evidence.ID("code", evidence.ReasonCode("kettle.full")), evidence.Term("side", "left"), evidence.Terms("sides", "left", "right"), evidence.Text("note", "invented"),
	)
	for _, a := range why.Args {
		fmt.Printf("%s: %s (%s)\n", a.Name, a.Value(), a.Kind())
	}
	// Output:
	// most: 2.2 kg (mass)
	// near: 2.3 kg (mass)
	// marked: 5 lb (mass)
	// masses: at most 2 kg (mass)
	// cups: 8 to 12 (count)
	// more: +2 (change)
	// ratio: 1.25 (number)
	// about: 1.2 (tenths)
	// boils: 90 (seconds)
	// rests: 5 (minutes)
	// keeps: 2 (days)
	// on: 2026-11-30 (day)
	// full: 72.5 % (share)
	// holds: 1.7 L (quantity)
	// reserve: at least 3 (reserve)
	// rated: rpe 8 (effort)
	// code: kettle.full (code)
	// side: left (term)
	// sides: left, right (terms)
	// note: invented (text)
}

// A reason in words, and the facts below it down to what says so.
func ExampleNewLedger() {
	facts := slices.Values([]evidence.Fact{
		{ID: "kettle.lime", Value: "lime comes off in acid", Basis: evidence.CommonPractice},
		{ID: "kettle.monthly", Value: "once a month", Basis: evidence.Computed, From: []evidence.FactID{"kettle.lime"}},
	})
	ledger, err := evidence.NewLedger(facts, evidence.UnitFacts())
	if err != nil {
		fmt.Println(err)
	}
	lexicon, err := evidence.NewLexicon(evidence.Words{"kettle.descale": {Client: "Please descale it.", Clinician: "Descaling after {months} months."}})
	if err != nil {
		fmt.Println(err)
	}
	why := evidence.Because("kettle.descale", "kettle.monthly", evidence.RatingFact(8)).With(evidence.Count("months", 1))
	fmt.Println(lexicon.Clinician(why))
	for _, line := range ledger.Explain(why.Facts...) {
		fmt.Println(line)
	}
	source, ok := evidence.LookUp("zourdos2016")
	fmt.Println(source.Citation, ok)
	fmt.Println(evidence.Weaker(evidence.Published, evidence.FromMemory))
	// Output:
	// Descaling after 1 months.
	// kettle.monthly: once a month (computed, no better known than common practice)
	//   kettle.lime: lime comes off in acid (common practice)
	// units.rpe-8: a rating of 8 stands for 2 in reserve (from memory; Zourdos MC, et al. J Strength Cond Res 2016;30(1):267-275; the scale's table; doi:10.1519/JSC.0000000000001049; a DOI that was not seen)
	// Zourdos MC, et al. J Strength Cond Res 2016;30(1):267-275 true
	// from memory
}

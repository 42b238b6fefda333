package protocol

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Facts of this package.
const (
	factPrefix      evidence.FactID = "protocol."
	factDeLorme     evidence.FactID = "protocol.delorme"
	factOxfordThree evidence.FactID = "protocol.oxford-three-set"
	factOxfordTen   evidence.FactID = "protocol.oxford-ten-set-pound"
	factOxfordTenth evidence.FactID = "protocol.oxford-ten-set-tenth"
	factBulk        evidence.FactID = "protocol.macqueen-hypertrophy"
	factPower       evidence.FactID = "protocol.macqueen-power"
	factDAPRE       evidence.FactID = "protocol.dapre"
	factAPRE        evidence.FactID = "protocol.apre"
	factFailure     evidence.FactID = "protocol.to-failure"
	factPick        evidence.FactID = "protocol.cautious-pick"
	factStep        evidence.FactID = "protocol.oxford-step-unresolved"
	factReps        evidence.FactID = "protocol.delorme-ten-repetitions"
	factThirdSet    evidence.FactID = "protocol.dapre-keyed-to-third-set"
	factTopBand     evidence.FactID = "protocol.dapre-top-band"
	factColumns     evidence.FactID = "protocol.dapre-columns"
	factSame        evidence.FactID = "protocol.apre-next-session"
	factMann        evidence.FactID = "protocol.apre-trial"
	factShares      evidence.FactID = "protocol.apre-share-of-1rm"
)

// Through what the schemes were read.
const (
	laterSummaries = "later summaries of the scheme"
	knightRead     = "Millar, Action plan for arthritis; a physiotherapy teaching page of 2024 after a review in Strength Cond J 2008;30(2)"
	mannRead       = "a restatement in a trade journal of 2017"
)

// A rowSource is where the rows of a table come from.
type rowSource struct {
	source evidence.SourceID
	via    string
}

var (
	fromKnight = rowSource{"knight1979", knightRead}
	fromMann   = rowSource{"mann2010", mannRead}
)

var facts = []evidence.Fact{
	{ID: factDeLorme, Value: "three sets of 10 at 50, 75 and 100 % of the 10RM, retested weekly; the form of 1945 had 7 to 10 sets (from memory)", Source: "delorme1948", Via: laterSummaries, Basis: evidence.Secondary},
	{ID: factReps, Value: "the ten repetitions come from practice, with no firmer reason given", Source: "delorme1948", Locator: "book of 1951, p. 11", Via: "a passage of the authors' book of 1951", Basis: evidence.Secondary},
	{ID: factOxfordThree, Value: "three sets of 10 at 100, 75 and 50 % of the 10RM, as usually taught; a trial compared it with the rising form", Source: "fish2003", Via: laterSummaries, Basis: evidence.Secondary},
	{ID: factOxfordTen, Value: fmt.Sprintf("%d sets of %d, the first at the 10RM, each further one about %v lighter", tens, tens, units.Marked{Mass: poundStep, Unit: units.LB}), Source: "zinovieff1951", Basis: evidence.FromMemory},
	{ID: factOxfordTenth, Value: fmt.Sprintf("%d sets of %d, the first at the 10RM, each further one a tenth of the 10RM lighter", tens, tens), Source: "zinovieff1951", Locator: "as some textbooks have it", Basis: evidence.FromMemory},
	{ID: factStep, Value: "the original's step is unresolved: about 1 lb a set, against a tenth of the 10RM a set in some books", Source: "zinovieff1951", Basis: evidence.FromMemory},
	{ID: factBulk, Value: "3 to 4 sets of 10, all at the 10RM", Source: "macqueen1954", Basis: evidence.FromMemory},
	{ID: factPower, Value: "4 to 5 sets, load rising as repetitions fall: 10RM, 8RM, 6RM, 4RM", Source: "macqueen1954", Basis: evidence.FromMemory},
	{ID: factDAPRE, Value: "10 at 50 % and 6 at 75 % of the working weight, which starts at the 6RM; then as many as possible at 100 %, and as many as possible at an adjusted weight", Source: "knight1979", Via: knightRead, Basis: evidence.Secondary},
	{ID: factThirdSet, Value: "one book, citing the paper of 1979, reads the next session's column by the third set instead of the fourth", Source: "knight1985", Via: "Millar, Action plan for arthritis", Basis: evidence.Secondary},
	{ID: factTopBand, Value: "the top row is printed as more than 11 and as 11 or more; the row below ends at 10, so 11 belongs on top", Source: "knight1979", Via: knightRead, Basis: evidence.Secondary},
	{ID: factColumns, Value: "the kilograms restate the pounds and are no conversion: 5 lb are 2.27 kg, printed as 2.5", Source: "knight1979", Via: knightRead, Basis: evidence.Secondary},
	{ID: factAPRE, Value: "first sets on the 10RM 12 at 50 % and 10 at 75 %, on the 6RM 10 and 6, on the 3RM 6 and 3; the third as many as possible at 100 %, the fourth as many as possible at an adjusted weight", Source: "mann2010", Via: mannRead, Basis: evidence.Secondary},
	{ID: factSame, Value: "the fourth set's repetitions enter the same table for the next session", Source: "mann2010", Basis: evidence.FromMemory},
	{ID: factShares, Value: "the 10RM, 6RM and 3RM are taken as 75, 83 and 92 % of the 1RM", Source: "mann2010", Via: mannRead, Basis: evidence.Secondary},
	{ID: factMann, Value: "23 college football players, 6 weeks: bench press +93.4 N against -0.4 N with planned loading; large barbell lifts of young men", Source: "mann2010", Locator: "abstract", Basis: evidence.Published},
	{ID: factFailure, Value: "schemes that take sets to failure are off by default for people over 50", Basis: evidence.Design, From: []evidence.FactID{factMann}},
	{ID: factPick, Value: "where a range was printed the low end is picked: the larger cut, the smaller rise, the fewer sets", Basis: evidence.Design},
}

// rowFact names the fact of a row.
func (t *table) rowFact(b band) evidence.FactID {
	return factPrefix + evidence.FactID(fmt.Sprintf("%s.%d", t.name, b.from))
}

func (t *table) fact(b band) evidence.Fact {
	value := fmt.Sprintf("%v repetitions:", b.reps())
	for _, u := range t.units {
		c := t.change(b, u, fourthSet)
		value += fmt.Sprintf(" %v to %v", c.Low, c.High)
	}
	f := evidence.Fact{ID: t.rowFact(b), Value: value, Source: t.facts.source, Basis: b.basis}
	if b.basis == evidence.Secondary {
		f.Via = t.facts.via
	}
	return f
}

// Facts yields the facts behind this package: the schemes, then every printed row.
func Facts() iter.Seq[evidence.Fact] {
	list := slices.Clone(facts)
	for _, t := range tables {
		for _, row := range t.rows {
			list = append(list, t.fact(row))
		}
	}
	return slices.Values(list)
}

// A Disagreement is a point on which printings differ or a printing is silent.
type Disagreement struct {
	Text string          `json:"text"`
	Fact evidence.FactID `json:"fact"`
}

var disagreements = map[Scheme][]evidence.FactID{
	DeLorme:           {factReps},
	OxfordTenSetPound: {factStep},
	OxfordTenSetTenth: {factStep},
	DAPRE:             {factThirdSet, factTopBand, factColumns},
	APRE10:            {factSame, factShares},
	APRE6:             {factSame, factShares},
	APRE3:             {factSame, factShares},
}

// Disagreements returns where the printings of s differ or rest on little, in a
// list of the caller's own.
func (s Scheme) Disagreements() []Disagreement {
	var list []Disagreement
	for _, id := range disagreements[s] {
		for _, f := range facts {
			if f.ID == id {
				list = append(list, Disagreement{f.Value, id})
			}
		}
	}
	return list
}

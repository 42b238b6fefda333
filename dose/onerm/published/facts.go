package published

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

const factMacht evidence.FactID = "published.macht2016"

// Facts yields the fact behind each regression, its people and its error, and
// that behind each printed pair of a chart.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(regressionFacts(), chartFacts()))
}

func errorFact(g Regression) evidence.FactID { return g.Fact() + ".error" }

func regressionFacts() []evidence.Fact {
	const where = "abstract"
	var list []evidence.Fact
	for g := range Regressions() {
		l := g.line()
		list = append(list,
			evidence.Fact{ID: g.Fact(), Value: l.text(), Source: l.source, Basis: evidence.Published, Locator: where},
			evidence.Fact{ID: g.Fact() + ".people", Value: l.people, Source: l.source, Basis: evidence.Published, Locator: where},
			evidence.Fact{ID: errorFact(g), Value: l.misses, Source: l.source, Basis: evidence.Published, Locator: where})
	}
	const macht = "macht2016"
	return append(list,
		evidence.Fact{ID: factMacht, Value: machtText, Source: macht, Basis: evidence.Published, Locator: where},
		evidence.Fact{ID: Macht2016{}.Fact() + ".people", Value: "60 moderately trained men of 21.2 years, bench press", Source: macht, Basis: evidence.Published, Locator: where},
		evidence.Fact{ID: Macht2016{}.Fact() + ".error", Value: "standard error 3.5 kg, R² 0.99", Source: macht, Basis: evidence.Published, Locator: where})
}

// chartSources are where the charts were printed.
var chartSources = [...]evidence.SourceID{NSCALoadChart: "nscachart", NSCATextbook: "nscatextbook"}

func chartFacts() []evidence.Fact {
	var list []evidence.Fact
	for c := range Charts() {
		for r := range c.Rows() {
			f := evidence.Fact{ID: r.Fact, Value: fmt.Sprintf("%d repetitions to failure: %d %% of the 1RM", r.Reps, r.Percent), Source: chartSources[c], Basis: r.Basis}
			switch r.Basis {
			case evidence.Published:
				f.Locator = "a hosted copy of the chart"
			case evidence.Secondary:
				f.Via = "a certification study page that paraphrases the table"
			}
			list = append(list, f)
		}
	}
	return list
}

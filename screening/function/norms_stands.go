package function

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	layReprints = "lay reprints of the table; original not seen"
	oneHandout  = "one facility handout reprinting the table; original not seen"
	injury      = "reprint by Injury Matters (Western Australia)"
	monograph   = "summary in a clinical decision-support monograph"
	ewgsopTable = "table of cut-offs in ERJ Open Research"
	digestOnly  = "reported elsewhere; the place was not recorded"
	hipOA       = "people with hip osteoarthritis"
	chinese2020 = "Chinese adults, 2020"
)

// standTables: chair stands in 30 s, five sit-to-stands, timed up and go,
// four-stage balance.
var standTables = []table{
	{measure: ChairStands, unit: Reps, body: "Rikli and Jones 1999", source: "riklijones1999", basis: evidence.Secondary, via: layReprints, entries: []entry{
		{sex: body.Male, from: 60, to: 64, statistic: "p25", value: 14},
		{sex: body.Male, from: 60, to: 64, statistic: "p75", value: 19},
		{sex: body.Male, from: 65, to: 69, statistic: "p25", value: 12, note: "one facility handout prints 13, judged a misprint"},
		{sex: body.Male, from: 65, to: 69, statistic: "p75", value: 18},
		{sex: body.Male, from: 70, to: 74, statistic: "p25", value: 12},
		{sex: body.Male, from: 70, to: 74, statistic: "p75", value: 17},
		{sex: body.Male, from: 75, to: 79, statistic: "p25", value: 11, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Male, from: 75, to: 79, statistic: "p75", value: 17, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Male, from: 80, to: 84, statistic: "p25", value: 10},
		{sex: body.Male, from: 80, to: 84, statistic: "p75", value: 15, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Male, from: 85, to: 89, statistic: "p25", value: 8, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Male, from: 85, to: 89, statistic: "p75", value: 14, basis: evidence.FromMemory, note: "disputed: the one reprint seen with this cell prints 13"},
		{sex: body.Male, from: 90, to: 94, statistic: "p25", value: 7},
		{sex: body.Male, from: 90, to: 94, statistic: "p75", value: 12},
		{sex: body.Female, from: 60, to: 64, statistic: "p25", value: 12},
		{sex: body.Female, from: 60, to: 64, statistic: "p75", value: 17},
		{sex: body.Female, from: 65, to: 69, statistic: "p25", value: 11},
		{sex: body.Female, from: 65, to: 69, statistic: "p75", value: 16},
		{sex: body.Female, from: 70, to: 74, statistic: "p25", value: 10},
		{sex: body.Female, from: 70, to: 74, statistic: "p75", value: 15, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 75, to: 79, statistic: "p25", value: 10, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 75, to: 79, statistic: "p75", value: 15, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 80, to: 84, statistic: "p25", value: 9, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 80, to: 84, statistic: "p75", value: 14, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 85, to: 89, statistic: "p25", value: 8, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 85, to: 89, statistic: "p75", value: 13, basis: evidence.Secondary, via: oneHandout},
		{sex: body.Female, from: 90, to: 94, statistic: "p25", value: 4},
		{sex: body.Female, from: 90, to: 94, statistic: "p75", value: 11, basis: evidence.Secondary, via: oneHandout},
	}},
	{measure: ChairStands, unit: Reps, body: "CDC", source: "cdc_stand2017", basis: evidence.Secondary, via: injury, entries: []entry{
		{sex: body.Male, from: 60, to: 64, statistic: "below_average_if_less_than", value: 14},
		{sex: body.Male, from: 65, to: 69, statistic: "below_average_if_less_than", value: 12},
		{sex: body.Male, from: 70, to: 74, statistic: "below_average_if_less_than", value: 12},
		{sex: body.Male, from: 75, to: 79, statistic: "below_average_if_less_than", value: 11},
		{sex: body.Male, from: 80, to: 84, statistic: "below_average_if_less_than", value: 10},
		{sex: body.Male, from: 85, to: 89, statistic: "below_average_if_less_than", value: 8},
		{sex: body.Male, from: 90, to: 94, statistic: "below_average_if_less_than", value: 7},
		{sex: body.Female, from: 60, to: 64, statistic: "below_average_if_less_than", value: 12},
		{sex: body.Female, from: 65, to: 69, statistic: "below_average_if_less_than", value: 11},
		{sex: body.Female, from: 70, to: 74, statistic: "below_average_if_less_than", value: 10},
		{sex: body.Female, from: 75, to: 79, statistic: "below_average_if_less_than", value: 10},
		{sex: body.Female, from: 80, to: 84, statistic: "below_average_if_less_than", value: 9},
		{sex: body.Female, from: 85, to: 89, statistic: "below_average_if_less_than", value: 8},
		{sex: body.Female, from: 90, to: 94, statistic: "below_average_if_less_than", value: 4},
	}},
	{measure: ChairStands, unit: Reps, body: "China 2020", source: "china2020", basis: evidence.Published, people: chinese2020, entries: []entry{
		{sex: body.Male, from: 60, to: 64, statistic: "mean", value: 12.0, note: lowInUSA},
		{sex: body.Male, from: 65, to: 69, statistic: "mean", value: 11.7, note: lowInUSA},
		{sex: body.Female, from: 65, to: 69, statistic: "mean", value: 11.3, note: lowInUSA},
	}},
	{measure: ChairStands, unit: Reps, body: "Gill 2022", source: "gill2022", basis: evidence.Published, people: "93 people with mild knee osteoarthritis", entries: []entry{
		{statistic: "mdc_individual", value: 2.5, note: "approximately"},
		{statistic: "mdc_group_high", value: 0.4},
		{statistic: "practice_low", value: 0.5},
		{statistic: "practice_high", value: 0.8},
	}},
	{measure: ChairStands, unit: Reps, body: "Wright 2011", source: "wright2011", basis: evidence.FromMemory, people: hipOA, entries: []entry{
		{statistic: "mcii_low", value: 2.0},
		{statistic: "mcii_high", value: 2.6},
	}},

	{measure: FiveStandsTime, unit: Seconds, body: "Bohannon 2006", source: "bohannon2006_stands", basis: evidence.Published, entries: []entry{
		{from: 60, to: 69, statistic: "worse_than_average_if_greater_than", value: 11.4},
		{from: 70, to: 79, statistic: "worse_than_average_if_greater_than", value: 12.6},
		{from: 80, to: 89, statistic: "worse_than_average_if_greater_than", value: 14.8},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "Buatois 2008", source: "buatois2008", basis: evidence.Secondary, via: digestOnly, entries: []entry{
		{from: 65, statistic: "recurrent_falls_if_greater_than", value: 15},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.Secondary, via: "a trial protocol that uses it (PMC8453123)", entries: []entry{
		{from: 60, statistic: "low_strength_if_greater_than", value: 15},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "Lusardi 2017", source: "lusardi2017", basis: evidence.Secondary, via: digestOnly, entries: []entry{
		{from: 65, statistic: "fall_risk_if_ge", value: 12},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "AWGS 2019", source: "awgs2019", basis: evidence.Secondary, via: monograph, entries: []entry{
		{from: 60, statistic: "low_performance_if_ge", value: 12},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "not named", basis: evidence.FromMemory, entries: []entry{
		{from: 65, statistic: "disability_figure", value: 13.6, note: "neither its body nor the side that the limit belongs to is recorded"},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "CHARLS 2021", source: "charls2021", basis: evidence.Published, people: "Chinese adults from 40 years", entries: []entry{
		{sex: body.Male, from: 40, statistic: "mean", value: 10.13, note: "standard deviation 3.32 s"},
		{sex: body.Female, from: 40, statistic: "mean", value: 11.03, note: "standard deviation 3.54 s"},
	}},
	{measure: FiveStandsTime, unit: Seconds, body: "Goldberg 2012", source: "goldberg2012", basis: evidence.FromMemory, people: "29 women, mean age 73.6 years", entries: []entry{
		{sex: body.Female, from: 60, statistic: "mdc95", value: 2.5},
	}},

	{measure: UpAndGoTime, unit: Seconds, body: "Bohannon 2006", source: "bohannon2006_tug", basis: evidence.Published, entries: []entry{
		{from: 60, to: 69, statistic: "mean", value: 8.1},
		{from: 60, to: 69, statistic: "ci95_low", value: 7.1},
		{from: 60, to: 69, statistic: "ci95_high", value: 9.0, note: slower},
		{from: 70, to: 79, statistic: "mean", value: 9.2},
		{from: 70, to: 79, statistic: "ci95_low", value: 8.2},
		{from: 70, to: 79, statistic: "ci95_high", value: 10.2, note: slower},
		{from: 80, to: 99, statistic: "mean", value: 11.3},
		{from: 80, to: 99, statistic: "ci95_low", value: 10.0},
		{from: 80, to: 99, statistic: "ci95_high", value: 12.7, note: slower},
		{from: 60, to: 99, statistic: "mean", value: 9.4},
		{from: 60, to: 99, statistic: "ci95_low", value: 8.9},
		{from: 60, to: 99, statistic: "ci95_high", value: 9.9, note: slower},
	}},
	{measure: UpAndGoTime, unit: Seconds, body: "CDC", source: "cdc2019", basis: evidence.FromMemory, entries: []entry{
		{from: 65, statistic: "fall_risk_if_ge", value: 12},
	}},
	{measure: UpAndGoTime, unit: Seconds, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.Secondary, via: ewgsopTable, entries: []entry{
		{from: 60, statistic: "low_performance_if_ge", value: 20},
	}},
	{measure: UpAndGoTime, unit: Seconds, body: "World guidelines 2022", source: "monteroodasso2022", basis: evidence.FromMemory, entries: []entry{
		{from: 65, statistic: "fall_risk_if_greater_than", value: 15},
	}},
	{measure: UpAndGoTime, unit: Seconds, body: "Alghadir 2015", source: "alghadir2015", basis: evidence.Published, people: "65 people with knee osteoarthritis of grade 1 to 3", entries: []entry{
		{from: 45, to: 70, statistic: "mdc_intra_rater", value: 1.1},
		{from: 45, to: 70, statistic: "mdc_inter_rater", value: 1.14},
	}},
	{measure: UpAndGoTime, unit: Seconds, body: "Wright 2011", source: "wright2011", basis: evidence.FromMemory, people: hipOA, entries: []entry{
		{statistic: "mcii_high", value: 1.4},
	}},

	{measure: BalanceStages, unit: Seconds, body: "CDC", source: "cdc_balance2017", basis: evidence.Secondary, via: injury, entries: []entry{
		{from: 65, statistic: "fall_risk_if_tandem_less_than", value: 10},
	}},
}

const (
	slower   = "the body reads slower than this as worse than average"
	lowInUSA = "at or under the 25th centile of the American table of 1999"
)

package function

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// curlTables: arm curls in 30 s. No trustworthy print of the table was found.
var curlTables = []table{
	{measure: ArmCurls, unit: Reps, body: "Rikli and Jones 1999", source: "riklijones1999", basis: evidence.FromMemory,
		people: "men curl 8 lb, women 5 lb; no trustworthy print of the table was found", entries: pairs([]pair{
			{body.Male, 60, 64, 16, 22},
			{body.Male, 65, 69, 15, 21},
			{body.Male, 70, 74, 14, 21},
			{body.Male, 75, 79, 13, 19},
			{body.Male, 80, 84, 13, 19},
			{body.Male, 85, 89, 11, 17},
			{body.Male, 90, 94, 10, 14},
			{body.Female, 60, 64, 13, 19},
			{body.Female, 65, 69, 12, 18},
			{body.Female, 70, 74, 12, 17},
			{body.Female, 75, 79, 11, 17},
			{body.Female, 80, 84, 10, 16},
			{body.Female, 85, 89, 10, 15},
			{body.Female, 90, 94, 8, 13},
		})},
}

// gripTables: hand grip. Centiles by age were not reached; none is filled in.
var gripTables = []table{
	{measure: GripForce, unit: Kilograms, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.Secondary, via: ewgsopTable, entries: []entry{
		{sex: body.Male, from: 60, statistic: "low_if_less_than", value: 27},
		{sex: body.Female, from: 60, statistic: "low_if_less_than", value: 16},
	}},
	{measure: GripForce, unit: Kilograms, body: "SDOC", source: "sdoc2020", basis: evidence.Published, entries: []entry{
		{sex: body.Male, from: 65, statistic: "weak_if_less_than", value: 35.5},
		{sex: body.Female, from: 65, statistic: "weak_if_less_than", value: 20},
	}},
	{measure: GripForce, unit: Kilograms, body: "AWGS 2019", source: "awgs2019", basis: evidence.Secondary, via: monograph, entries: []entry{
		{sex: body.Male, from: 60, statistic: "low_if_less_than_awgs", value: 28},
		{sex: body.Female, from: 60, statistic: "low_if_less_than_awgs", value: 18},
	}},
	{measure: GripForce, unit: Kilograms, body: "Dodds 2014", source: "dodds2014", basis: evidence.Published, people: "twelve British studies", entries: []entry{
		{sex: body.Male, from: 29, to: 39, statistic: "median", value: 51, note: "the peak of life"},
		{sex: body.Female, from: 26, to: 42, statistic: "median", value: 31, note: "the peak of life"},
	}},
	{measure: GripForce, unit: Percent, body: "Dodds 2014", source: "dodds2014", basis: evidence.Published, people: "twelve British studies", entries: []entry{
		{sex: body.Female, from: 80, to: 80, statistic: "prevalence_weak_2.5sd", value: 27},
	}},
	{measure: GripDominant, unit: Kilograms, body: "Wang 2018", source: "wang2018", basis: evidence.Published, people: "adults in the USA", entries: []entry{
		{sex: body.Male, from: 25, to: 29, statistic: "mean", value: 49.7, note: "the highest stratum"},
	}},
	{measure: GripNonDominant, unit: Kilograms, body: "Wang 2018", source: "wang2018", basis: evidence.Published, people: "adults in the USA", entries: []entry{
		{sex: body.Female, from: 75, to: 79, statistic: "mean", value: 18.7, note: "the lowest stratum"},
	}},
	{measure: GripForce, unit: Kilograms, body: "China 2020", source: "china2020", basis: evidence.Published, people: chinese2020, entries: []entry{
		{sex: body.Male, from: 60, to: 64, statistic: "mean", value: 36.5},
		{sex: body.Female, from: 65, to: 69, statistic: "mean", value: 21.6},
	}},
	{measure: GripForce, unit: Kilograms, body: "Bohannon 2019", source: "bohannon2019_grip", basis: evidence.Published, entries: []entry{
		{statistic: "mcid_low", value: 5.0},
		{statistic: "mcid_high", value: 6.5},
	}},
	{measure: GripForce, unit: Kilograms, body: japaneseStudy, source: "japanmdc2021", basis: evidence.Published, people: needingCare, entries: []entry{
		{from: 65, statistic: "mdc95", value: 2.9},
		{sex: body.Male, from: 65, statistic: "mdc95", value: 3.2},
		{sex: body.Female, from: 65, statistic: "mdc95", value: 2.4},
	}},
}

// totalTables: totals of self-reports. Their questions belong to others.
var totalTables = []table{
	{measure: SarcopeniaTotal, unit: Points, body: "Malmstrom and Morley 2013", source: "malmstrom2013", basis: evidence.Secondary, via: monograph, entries: []entry{
		{from: 60, statistic: "screen_positive_if_ge", value: 4},
	}},
	{measure: FallsTotal, unit: Points, body: "CDC", source: "cdc2019", basis: evidence.Secondary, via: "reprint of the algorithm", entries: []entry{
		{from: 65, statistic: "fall_risk_if_ge", value: 4},
	}},
}

// otherTables: measures of muscle that belong to the same definitions and that
// no test here takes.
var otherTables = []table{
	{measure: MuscleIndex, unit: KilogramsPerSquareMetre, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.Secondary, via: ewgsopTable, entries: []entry{
		{sex: body.Male, from: 60, statistic: "low_if_less_than", value: 7.0},
		{sex: body.Female, from: 60, statistic: "low_if_less_than", value: 5.5, note: "from memory the first print said 6.0 and an erratum made it 5.5"},
	}},
	{measure: MuscleIndex, unit: KilogramsPerSquareMetre, body: "AWGS 2019", source: "awgs2019", basis: evidence.Secondary, via: monograph, entries: []entry{
		{sex: body.Male, from: 60, statistic: "low_if_less_than_awgs", value: 7.0},
		{sex: body.Female, from: 60, statistic: "low_if_less_than_awgs", value: 5.4},
	}},
	{measure: MuscleMass, unit: Kilograms, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.FromMemory, entries: []entry{
		{sex: body.Male, from: 60, statistic: "low_if_less_than", value: 20},
	}},
	{measure: CalfGirth, unit: Centimetres, body: "AWGS 2019", source: "awgs2019", basis: evidence.Secondary, via: monograph, entries: []entry{
		{sex: body.Female, from: 60, statistic: "screen_positive_if_less_than", value: 33},
	}},
}

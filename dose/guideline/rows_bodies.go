package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	nsca    = "National Strength and Conditioning Association"
	viaNSCA = "summary of the statement on a University of New Mexico teaching page"
)

// bodies are the strength and conditioning association (Fragala 2019) and the
// public health guidelines.
var bodies = []Recommendation{
	{
		ID: "nsca2019-older-healthy", Body: nsca, Year: 2019, Population: "healthy older adults", AgeMin: 65, Goal: Strength,
		Days: to(2, 3), Sets: to(2, 3), Exercises: to(8, 10), Load: to[units.Fraction](.70, .85), Rest: units.Exactly(120),
		Notes:  "Where training leads, not where it begins: one or two exercises of several joints for each large muscle group, fitted to the person and varied in phases.",
		Source: "fragala2019", Via: viaNSCA, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldDays, evidence.FromMemory}, {FieldLoad, evidence.FromMemory}},
	},
	{
		ID: "nsca2019-older-start", Body: nsca, Year: 2019, Population: "older adults new to resistance training", AgeMin: 65,
		Goal: Strength, Training: []body.Training{body.Novice},
		Sets: units.Exactly(1), Reps: to(10, 15),
		Notes:  "One set an exercise is enough at first. Begin with a load that is borne well and raise it from there.",
		Source: "fragala2019", Via: viaNSCA, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldReps, evidence.FromMemory}},
	},
	{
		ID: "nsca2019-older-power", Body: nsca, Year: 2019, Population: "healthy older adults", AgeMin: 65, Goal: Power,
		Load:   to[units.Fraction](.40, .60),
		Notes:  "A moderate load lifted fast, within the same programme.",
		Source: "fragala2019", Basis: evidence.FromMemory,
	},
	{
		ID: "nsca2019-frailty", Body: nsca, Year: 2019, Population: "older adults with frailty", Clinical: true, AgeMin: 65, Goal: Function,
		Days: to(2, 3), Sets: units.Exactly(3), Reps: to(8, 12), Load: to[units.Fraction](.20, .80), LoadStart: to[units.Fraction](.20, .30),
		Notes:  "From the first load up to 80 %. The statement's own table could not be read; a review on sarcopenia agrees on the first load.",
		Source: "fragala2019", Basis: evidence.FromMemory,
	},
	{
		ID: "who2020-older", Body: "World Health Organization", Year: 2020, Population: "adults 65+", AgeMin: 65, Goal: Health,
		Days: units.AtLeast(2), BalanceDays: units.AtLeast(3),
		Notes:  "The balance days are mixed sessions of balance and strength at moderate effort or above.",
		Source: "bull2020", Via: "summaries of the WHO 2020 text by OECD, a university course and a physiotherapy education page", Basis: evidence.Secondary,
	},
	{
		ID: "ukcmo2019-adults", Body: "UK Chief Medical Officers", Year: 2019, Population: "adults 19+", Goal: Health,
		Days:   units.AtLeast(2),
		Notes:  "From the text of the guideline's infographic.",
		Source: "ukcmo2019", Basis: evidence.Published,
	},
	{
		ID: "ukcmo2019-older", Body: "UK Chief Medical Officers", Year: 2019, Population: "adults 65+", AgeMin: 65, Goal: Health,
		Days: units.AtLeast(2), BalanceDays: units.AtLeast(2),
		Notes:  "The report names flexibility too.",
		Source: "ukcmo2019", Basis: evidence.Published,
	},
	{
		ID: "usdhhs2018-adults", Body: "US Department of Health and Human Services", Year: 2018, Population: "adults and older adults", Goal: Health,
		Days: units.AtLeast(2), Sets: to(1, 3), Reps: to(8, 12),
		Notes:  "One set works if it ends close to what can still be lifted alone; two or three may do more.",
		Source: "usdhhs2018", Via: "two public education pages quoting the guideline", Basis: evidence.Secondary,
	},
}

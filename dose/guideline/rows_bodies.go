package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	nsca    = "National Strength and Conditioning Association"
	who     = "World Health Organization"
	aha     = "American Heart Association"
	icfsr   = "International Conference on Frailty and Sarcopenia Research"
	viaWHO  = "summaries of the WHO 2020 text by OECD, a university course and a physiotherapy education page"
	viaNSCA = "summary of the statement on a University of New Mexico teaching page"
)

// bodies are the strength and conditioning association (Fragala 2019), the
// public health guidelines, the conference on frailty and the heart association
// on healthy adults.
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
		ID: "nsca2019-frailty", Body: nsca, Year: 2019, Population: "older adults with frailty", Conditions: []Condition{Frailty}, AgeMin: 65, Goal: Function,
		Days: to(2, 3), Sets: units.Exactly(3), Reps: to(8, 12), Load: to[units.Fraction](.20, .80), LoadStart: to[units.Fraction](.20, .30),
		Notes:  "From the first load up to 80 %. The statement's own table could not be read; a review on sarcopenia agrees on the first load.",
		Source: "fragala2019", Basis: evidence.FromMemory,
	},
	{
		ID: "who2020-older", Body: who, Year: 2020, Population: "adults 65+", AgeMin: 65, Goal: Health,
		Days: units.AtLeast(2), BalanceDays: units.AtLeast(3),
		Notes:  "The balance days are mixed sessions of balance and strength at moderate effort or above.",
		Source: "bull2020", Via: viaWHO, Basis: evidence.Secondary,
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
		Notes:  "Two or three sets may do more than one, which is enough if hardly a further lift is left in it.",
		Source: "usdhhs2018", Via: "two public education pages quoting the guideline", Basis: evidence.Secondary,
	},
	{
		ID: "who2020-adults", Body: who, Year: 2020, Population: "adults 18-64",
		AgeMax: 64, Goal: Health,
		Days:   units.AtLeast(2),
		Notes:  "At moderate effort or above, for every large muscle group.",
		Source: "bull2020", Via: viaWHO, Basis: evidence.Secondary,
	},
	{
		ID: "icfsr2021-prt", Body: icfsr, Year: 2021, Population: "older adults",
		AgeMin: 65, Goal: Strength,
		Days: to(2, 3), Sets: to(1, 3), Exercises: to(8, 10), Reps: to(8, 12), Load: to[units.Fraction](.70, .80),
		Effort: Effort{units.ScaleBorg, borg, to(15, 18)}, Rest: to(60, 180),
		Notes:  "Low confidence: the article was opened, but its table of doses could not be reached.",
		Source: "izquierdo2021", Basis: evidence.FromMemory,
	},
	{
		ID: "icfsr2025-consensus", Body: icfsr, Year: 2025, Population: "older adults",
		AgeMin: 65, Goal: Function,
		Notes:  "No dose stands here, since its table could not be reached.",
		Source: "izquierdo2025", Basis: evidence.FromMemory,
	},
	{
		ID: "aha2007-initial-healthy-sedentary", Body: aha, Year: 2007, Population: "healthy sedentary adults",
		Goal: Health, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: units.AtLeast(1), Exercises: to(8, 10), Reps: to(8, 12),
		Effort: Effort{units.ScaleBorg, borg, to(11, 14)},
		Notes:  "Only the abstract was reached, and it has no numbers. Add about 5 % once the highest count feels easy.",
		Source: "williams2007", Basis: evidence.FromMemory,
		SupersededBy: []ID{"aha2023-adults"},
	},
	{
		ID: "aha2023-adults", Body: aha, Year: 2023, Population: "apparently healthy adults",
		Goal: Health,
		Days: units.AtLeast(2), Sets: to(1, 3), Exercises: to(8, 10), Reps: to(8, 12),
		Notes:  "From the association's own key points. Moderate loads; go on by load, sets or days. The lowest risk went with about 30 to 60 minutes of lifting a week, by a secondary source.",
		Source: "paluch2024", Basis: evidence.Published,
	},
}

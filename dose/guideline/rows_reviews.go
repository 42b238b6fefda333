package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// reviews are systematic and narrative reviews, most of them with meta-analysis.
var reviews = []Recommendation{
	{
		ID: "borde2015-strength", Body: "meta-analysis (Borde)", Year: 2015, Population: "healthy old adults, mean age 65+", AgeMin: 65, Goal: Strength,
		Days: units.Exactly(2), Sets: to(2, 3), Reps: to(7, 9), Load: to[units.Fraction](.70, .79),
		Rest: units.Exactly(60), RestInSet: units.Exactly[float64](4), RepSeconds: units.Exactly[float64](6), Weeks: to(50, 53),
		Effects: []Effect{{"overall_smd", 1.57, SMD}, {"period_50_53_wk", 2.34, SMD}, {"intensity_70_79", 1.89, SMD}, {"tut_6_s", 3.61, SMD}, {"rest_60_s", 4.68, SMD}, {"frequency_2", 2.13, SMD}},
		Notes:   "25 trials. Each value is the best category of one variable on its own; nobody tested them together, so they are no optimum. Period, load and time under tension, which is per repetition, mattered; rest was a trend on two trials.",
		Source:  "borde2015", Basis: evidence.Published,
	},
	{
		ID: "grgic2018-rest-untrained", Body: "systematic review (Grgic)", Year: 2018, Population: "untrained adults",
		Goal: Strength, Training: []body.Training{body.Novice},
		Rest:   to(60, 120),
		Notes:  "Less than 60 s still gave clear gains.",
		Source: "grgic2018", Basis: evidence.Published,
	},
	{
		ID: "borde2015-hypertrophy", Body: "meta-analysis (Borde)", Year: 2015, Population: "healthy old adults, mean age 65+",
		AgeMin: 65, Goal: Hypertrophy,
		Days: units.Exactly(3), Sets: to(2, 3), Reps: to(7, 9), Load: to[units.Fraction](.51, .69), Rest: units.Exactly(120),
		RestInSet: units.Exactly[float64](2.5), RepSeconds: units.Exactly[float64](6), Weeks: to(50, 53),
		Notes:  "Nine trials measured size; no variable explained the effect, so the values only describe what was done.",
		Source: "borde2015", Basis: evidence.Published,
	},
	{
		ID: "peterson2010-strength", Body: "meta-analysis (Peterson)", Year: 2010, Population: "adults 50+",
		AgeMin: 50, Goal: Strength,
		Effects: []Effect{{"leg_press_pct", 29, Percent}, {"chest_press_pct", 24, Percent}, {"knee_extension_pct", 33, Percent}, {"lat_pulldown_pct", 25, Percent}, {"kg_range_min", 9.8, Kilograms}, {"kg_range_max", 31.6, Kilograms}},
		Notes:   "47 trials, 1079 people. Heavier training went with larger gains; no one dose is stated. Which share belongs to knee extension and which to the pulldown is from memory.",
		Source:  "peterson2010", Basis: evidence.Published,
	},
	{
		ID: "peterson2011-lean-mass", Body: "meta-analysis (Peterson)", Year: 2011, Population: "adults 50+",
		AgeMin: 50, Goal: Hypertrophy,
		Effects: []Effect{{"lean_mass_kg", 1.1, Kilograms}, {"ci_low", 0.9, Kilograms}, {"ci_high", 1.2, Kilograms}},
		Notes:   "49 trials, 1328 people. That more volume and a younger age went with larger gains is from memory.",
		Source:  "peterson2011", Basis: evidence.Published,
	},
	{
		ID: "steib2010-dose-response", Body: "meta-analysis (Steib)", Year: 2010, Population: "adults 65+",
		AgeMin: 65, Goal: Strength,
		Effects: []Effect{{"high_vs_low_smd", 0.88, SMD}, {"high_vs_moderate_smd", 0.62, SMD}, {"power_vs_strength_on_power_smd", 1.66, SMD}},
		Notes:   "29 trials, 1313 people. On days and volume too little is known. Function gained from fast lifting, as power did, and not from more load; maximal strength did gain from load.",
		Source:  "steib2010", Basis: evidence.Published,
	},
	{
		ID: "silva2014-duration", Body: "meta-analysis (Silva)", Year: 2014, Population: "adults 55+",
		AgeMin: 55, Goal: Strength,
		Weeks:  to(8, 52),
		Notes:  "15 trials of knee extension. Load, sets and days made no difference, against Borde and Steib; how long the programme lasted did.",
		Source: "silva2014", Basis: evidence.Published,
	},
	{
		ID: "iversen2021-time-efficient", Body: "narrative review (Iversen)", Year: 2021, Population: "healthy adults short of time",
		Goal:       Hypertrophy,
		WeeklySets: units.AtLeast(4), Exercises: units.AtLeast(3), RM: to(6, 15),
		Notes:  "Drop sets, rest-pause and supersets save about half the time, and the exercise itself serves as warm-up. How many sets a week holds matters more than how many days they fall on. Three two-sided exercises of several joints are the floor: push, pull, legs. To failure, 15 to 40 repetitions do as well.",
		Source: "iversen2021", Basis: evidence.Published,
	},
	{
		ID: "fyfe2022-minimal-dose", Body: "narrative review (Fyfe)", Year: 2022, Population: "adults",
		Goal:   Strength,
		Notes:  "No number stands in the abstract. It has two ways of doing little: short light bouts on many days with hardly any equipment, or few heavy sets on few days.",
		Source: "fyfe2022", Basis: evidence.Published,
	},
	{
		ID: "grgic2018-rest-trained", Body: "systematic review (Grgic)", Year: 2018, Population: "resistance-trained adults",
		Goal: Strength, Training: []body.Training{body.Advanced},
		Rest:   units.AtLeast(120),
		Notes:  "The source says longer than 2 minutes.",
		Source: "grgic2018", Basis: evidence.Published,
	},
	{
		ID: "singer2024-rest-hypertrophy", Body: "Bayesian meta-analysis (Singer)", Year: 2024, Population: "healthy adults",
		Goal:   Hypertrophy,
		Notes:  "Thigh and arm grew slightly more with longer rests, but the effects overlap widely.",
		Source: "singer2024", Basis: evidence.Published,
	},
	{
		ID: "schoenfeld2015-tempo", Body: "meta-analysis (Schoenfeld)", Year: 2015, Population: "healthy adults",
		Goal:       Hypertrophy,
		RepSeconds: to[float64](0.5, 8),
		Notes:      "Sets to failure. More than 10 s a repetition looks worse, on little evidence.",
		Source:     "schoenfeld2015", Basis: evidence.Published,
	},
	{
		ID: "ralston2017-strength-sets", Body: "meta-analysis (Ralston)", Year: 2017, Population: "adults (men, mean age about 23)",
		Goal:    Strength,
		Effects: []Effect{{"high_vs_low_es", 0.18, EffectSize}, {"low_es", 0.82, EffectSize}, {"high_es", 1.01, EffectSize}},
		Notes:   "Sets per exercise and week: up to 5 low, 5 to 9 medium, 10 or more high; reports differ on where 5 belongs.",
		Source:  "ralston2017", Basis: evidence.Published,
	},
	{
		ID: "bazvalle2022-hypertrophy-trained", Body: "systematic review (Baz-Valle)", Year: 2022, Population: "young trained men 18-35",
		AgeMax: 35, Goal: Hypertrophy, Training: []body.Training{body.Advanced},
		WeeklySets: to(12, 20),
		Notes:      "Men only. More than 20 weekly sets did more than 12 to 20 for triceps, and no more for biceps and quadriceps; fewer than 12 count as low.",
		Source:     "bazvalle2022", Basis: evidence.Published,
	},
}

package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// viaUnknown stands where a field is secondary and nobody noted through what.
const viaUnknown = "a publication that was not noted"

// conditions are rows for people with a condition other than of heart and bone.
var conditions = []Recommendation{
	{
		ID: "sarcopenia2022-hurst", Body: "Age and Ageing guidance (Hurst)", Year: 2022, Population: "older people with sarcopenia",
		Conditions: []Condition{Sarcopenia}, AgeMin: 65, Goal: Strength,
		Days: units.Exactly(2), Sets: to(1, 3), Reps: to(6, 12),
		Notes:  "For arms and legs, with rather high effort.",
		Source: "hurst2022", Basis: evidence.Published,
	},
	{
		ID: "sarcopenia2022-review", Body: "review table", Year: 2022, Population: "sarcopenic older adults",
		Conditions: []Condition{Sarcopenia}, AgeMin: 65, Goal: Strength,
		Days: to(1, 5), Sets: to(1, 3), Reps: to(10, 15), Load: to[units.Fraction](.20, .80), LoadStart: to[units.Fraction](.20, .30),
		Effort: Effort{units.ScaleBorg, borg, to(6, 14)}, Minutes: to(20, 75),
		Notes:  "From the first load up to 70 to 79 %. The ranges describe trials, so they are wide.",
		Source: "sarcopenia2022", Basis: evidence.Published,
	},
	{
		ID: "frailty2016-bray-frail", Body: "clinical guidance (Bray)", Year: 2016, Population: "frail older adults",
		Conditions: []Condition{Frailty}, AgeMin: 65, Goal: Function,
		Days: units.Exactly(3), Load: to[units.Fraction](.55, .80), LoadStart: units.Exactly[units.Fraction](.55),
		Minutes: to(30, 45),
		Notes:   "The first load lies far above the 20 to 30 % of other sources on frailty.",
		Source:  "bray2016", Basis: evidence.Published,
	},
	{
		ID: "frailty2016-bray-prefrail", Body: "clinical guidance (Bray)", Year: 2016, Population: "pre-frail older adults",
		Conditions: []Condition{Frailty}, AgeMin: 65, Goal: Function,
		Days: to(2, 3), Load: to[units.Fraction](.55, .80), LoadStart: units.Exactly[units.Fraction](.55), Minutes: to(45, 60),
		Source: "bray2016", Basis: evidence.Published,
	},
	{
		ID: "juhl2014-knee-oa", Body: "meta-regression (Juhl)", Year: 2014, Population: "knee osteoarthritis",
		Conditions: []Condition{Osteoarthritis}, Goal: Function,
		Days:    units.AtLeast(3),
		Effects: []Effect{{"pain_smd_3plus_per_week", 0.68, SMD}, {"pain_smd_fewer", 0.41, SMD}, {"quadriceps_specific_smd", 0.85, SMD}, {"general_lower_limb_smd", 0.39, SMD}},
		Notes:   "48 trials. Supervised, one aim per programme. Neither load nor the length of a session mattered. At least 12 supervised sessions: from memory.",
		Source:  "juhl2014", Basis: evidence.Published,
	},
	{
		ID: "lawford2024-knee-oa", Body: "systematic review (Lawford)", Year: 2024, Population: "knee osteoarthritis",
		Conditions: []Condition{Osteoarthritis}, Goal: Function,
		Notes:  "66 trials of lifting, 5231 people: those that met 60 % or more of the ACSM dose did no better for pain or function, so for symptoms the dose may be chosen freely.",
		Source: "lawford2024", Basis: evidence.Published,
	},
	{
		ID: "eular2018-arthritis", Body: "European Alliance of Associations for Rheumatology", Year: 2018, Population: "inflammatory arthritis and hip/knee osteoarthritis",
		Conditions: []Condition{Osteoarthritis, InflammatoryArthritis}, Goal: Health,
		Days:   units.AtLeast(2),
		Notes:  "The public's doses, strength included, fitted to the person. An update was presented in 2025.",
		Source: "rausch2018", Basis: evidence.FromMemory,
	},
	{
		ID: "ada2016-diabetes", Body: "American Diabetes Association", Year: 2016, Population: "adults with diabetes",
		Conditions: []Condition{Diabetes}, Goal: Health, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: to(1, 3), Exercises: to(8, 10), Reps: to(10, 15),
		Notes:  "At least two days that do not follow one another, better three; early on sets end near fatigue. About 15 RM counts as moderate, 6 to 8 RM as vigorous.",
		Source: "colberg2016", Basis: evidence.Published,
	},
	{
		ID: "prediabetes2021-review", Body: "meta-analysis table", Year: 2021, Population: "adults at risk of type 2 diabetes",
		Conditions: []Condition{DiabetesRisk}, Goal: Health,
		Days: units.AtLeast(3), Reps: to(10, 15), Load: units.AtLeast[units.Fraction](.60),
		Effort: Effort{units.ScaleBorg, borg, to(15, 18)}, Reserve: to[units.RIR](1, 3),
		Notes:  "It pairs Borg 15 to 18 with 1 to 3 repetitions in reserve.",
		Source: "prediabetes2021", Basis: evidence.Published,
	},
	{
		ID: "acsm2019-cancer", Body: "International multidisciplinary roundtable (ACSM)", Year: 2019, Population: "cancer survivors",
		Conditions: []Condition{Cancer}, Goal: Health,
		Days: units.Exactly(2), Sets: units.Exactly(2), Reps: to(8, 15), Load: units.AtLeast[units.Fraction](.60),
		Notes:  "The abstract states no dose. The commonest dose in trials was 1 to 3 sets of 8 to 12 at 60 to 70 % on two or three days.",
		Source: "campbell2019", Basis: evidence.FromMemory,
	},
	{
		ID: "achilles-hsr-2015", Body: "randomised trial (Beyer)", Year: 2015, Population: "mid-portion Achilles tendinopathy",
		Conditions: []Condition{AchillesTendinopathy}, Goal: Function,
		Days: units.Exactly(3), Sets: to(3, 4), Exercises: units.Exactly(3), RM: to(6, 15), Rest: to(120, 180),
		RestBetween: units.Exactly(300), RepSeconds: units.Exactly[float64](6), LiftSeconds: units.Exactly(3),
		LowerSeconds: units.Exactly(3), Weeks: units.Exactly(12),
		Notes:  "Week 1: 3 sets at 15 RM; weeks 2 and 3: 3 at 12 RM; weeks 4 and 5: 4 at 10 RM; weeks 6 to 8: 4 at 8 RM, from memory; weeks 9 to 12: 4 at 6 RM.",
		Source: "beyer2015", Via: "a clinical reference work's protocol table citing the trial", Basis: evidence.Secondary,
	},
	{
		ID: "achilles-eccentric-1998", Body: "clinical trial (Alfredson)", Year: 1998, Population: "mid-portion Achilles tendinopathy",
		Conditions: []Condition{AchillesTendinopathy}, Goal: Function,
		Days: units.Exactly(7), SessionsPerDay: units.Exactly(2), Sets: units.Exactly(3), Exercises: units.Exactly(2),
		Reps: units.Exactly(15), Weeks: units.Exactly(12),
		Notes:  "Heel drops with the knee straight and with the knee bent; weight is added once there is no pain. A dose for a tendon: the 48 hours between sessions do not hold.",
		Source: "alfredson1998", Via: viaUnknown, Basis: evidence.FromMemory,
		Bases: []FieldBasis{{FieldWeeks, evidence.Secondary}},
	},
}

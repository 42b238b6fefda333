package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// What the notes of the 2009 progression models have in common.
const (
	acsm       = "American College of Sports Medicine"
	later2026  = " The position stand of 2026 takes the place of these models; it speaks of healthy adults, not of frail or ill people."
	viaSummary = "teaching summaries of the ACSM progression model and of ACSM's Guidelines for Exercise Testing and Prescription (10th ed.) on a physiotherapy education page and on a lay exercise-science page"
	viaKidney  = "Table 1 of a review in Clin Kidney J 2018;11(6):822-831 (doi 10.1093/ckj/sfy054) that reproduces the ACSM and Borde doses for older adults"
)

// acsm2009 are the progression models (Ratamess 2009).
var acsm2009 = []Recommendation{
	{
		ID: "acsm2009-strength-novice", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Strength, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: to(1, 3), Reps: to(8, 12), RM: to(8, 12), Load: to[units.Fraction](.60, .70),
		Rest: to(120, 180), RestAssisting: to(60, 120), LoadStep: to[units.Fraction](.02, .10),
		LoadRule: "once 1 or 2 repetitions more than the target can be done",
		Notes:    "Other summaries print a load of 60 to 80 %. Slow to moderate speed is from memory." + later2026,
		Source:   "ratamess2009", Via: viaSummary, Basis: evidence.Published,
		Bases: []FieldBasis{{FieldSets, evidence.Secondary}, {FieldLoad, evidence.Secondary},
			{FieldRest, evidence.Secondary}, {FieldRestAssisting, evidence.Secondary}},
		SupersededBy: []ID{"acsm2026-strength"},
	},
	{
		ID: "acsm2009-strength-intermediate", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Strength, Training: []body.Training{body.Intermediate},
		Days: to(3, 4), RM: to(1, 12), RMEmphasis: to(1, 6), Load: to[units.Fraction](.60, .70),
		Rest: to(180, 300), RepSeconds: to[float64](2, 4), LiftSeconds: to(1, 2), LowerSeconds: to(1, 2), LoadStep: to[units.Fraction](.02, .10),
		Notes:  "About six months of regular training. The repetition maxima and the rest belong to phases that the summary gives for intermediate and advanced people together; the load of 60 to 70 % goes with 8 to 12 repetitions and shorter rests." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.Published,
		Bases:        []FieldBasis{{FieldLoad, evidence.Secondary}},
		SupersededBy: []ID{"acsm2026-strength"},
	},
	{
		ID: "acsm2009-strength-advanced", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Strength, Training: []body.Training{body.Advanced},
		Days: to(4, 5), RM: to(1, 12), RMEmphasis: to(1, 6), Load: to[units.Fraction](.80, 1),
		Rest: to(180, 300), RepSeconds: to[float64](2, 4), LiftSeconds: to(1, 2), LowerSeconds: to(1, 2), LoadStep: to[units.Fraction](.02, .10),
		Notes:  "Years of training. A secondary page gives 4 to 6 days a week." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.Published,
		Bases:        []FieldBasis{{FieldDays, evidence.FromMemory}, {FieldLoad, evidence.Secondary}},
		SupersededBy: []ID{"acsm2026-strength"},
	},
	{
		ID: "acsm2009-older-strength", Body: acsm, Year: 2009, Population: "healthy older adults", Goal: Strength,
		Days: to(2, 3), Sets: to(1, 3), Reps: to(8, 12), Load: to[units.Fraction](.60, .80), Rest: to(60, 180),
		Notes:  "Days that do not follow one another; free weights and machines, exercises of one and of several joints, slow to moderate speed." + later2026,
		Source: "ratamess2009", Via: viaKidney, Basis: evidence.Secondary,
		SupersededBy: []ID{"acsm2026-strength"},
	},
	{
		ID: "acsm2009-older-hypertrophy", Body: acsm, Year: 2009, Population: "healthy older adults", Goal: Hypertrophy,
		Days: to(2, 3), Sets: to(1, 3), Reps: to(8, 12), Load: to[units.Fraction](.60, .80), Rest: to(60, 180),
		Notes:  "The dose for strength and for size is the same." + later2026,
		Source: "ratamess2009", Via: viaKidney, Basis: evidence.Secondary,
		SupersededBy: []ID{"acsm2026-hypertrophy"},
	},
	{
		ID: "acsm2009-older-power", Body: acsm, Year: 2009, Population: "healthy older adults", Goal: Power,
		Days: to(2, 3), Sets: to(1, 3), Reps: to(6, 10), Load: to[units.Fraction](.30, .60), Rest: to(60, 180),
		Notes:  "Lifted fast; beside strength training, not in its place." + later2026,
		Source: "ratamess2009", Via: viaKidney, Basis: evidence.Secondary,
		SupersededBy: []ID{"acsm2026-power"},
	},
	{
		ID: "acsm2009-hypertrophy-novice-intermediate", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Hypertrophy, Training: []body.Training{body.Novice, body.Intermediate},
		Days: to(2, 4), Sets: to(1, 3), Reps: to(8, 12), Load: to[units.Fraction](.70, .85), LoadStep: to[units.Fraction](.02, .10),
		Rest:   to(60, 120),
		Notes:  "Novices two or three days for the whole body, intermediates three, or four when split; from memory." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.Secondary,
		Bases:        []FieldBasis{{FieldDays, evidence.FromMemory}, {FieldLoadStep, evidence.Published}},
		SupersededBy: []ID{"acsm2026-hypertrophy"},
	},
	{
		ID: "acsm2009-hypertrophy-advanced", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Hypertrophy, Training: []body.Training{body.Advanced},
		Days: to(4, 6), Sets: to(3, 6), Reps: to(1, 12), RMEmphasis: to(6, 12), Load: to[units.Fraction](.70, 1),
		LoadStep: to[units.Fraction](.02, .10), Rest: to(60, 180),
		Notes:  "Heavy loads rest 2 to 3 minutes, others 1 to 2. The stress on 6 to 12 RM is from memory." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.Secondary,
		Bases:        []FieldBasis{{FieldRMEmphasis, evidence.FromMemory}, {FieldLoadStep, evidence.Published}},
		SupersededBy: []ID{"acsm2026-hypertrophy"},
	},
	{
		ID: "acsm2009-power-novice-intermediate", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Power, Training: []body.Training{body.Novice, body.Intermediate},
		Days: to(2, 4), Sets: to(1, 3), Reps: to(3, 6), Load: to[units.Fraction](0, .60), LoadUpper: to[units.Fraction](.30, .60),
		LoadLower: to[units.Fraction](0, .60), Rest: to(120, 180), RestAssisting: to(60, 120),
		Notes:  "Lifted fast, not to failure, beside strength work. One account has 3 to 5 sets and 3 to 5 minutes of rest, from memory; the row keeps the lower one." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.Secondary,
		Bases:        []FieldBasis{{FieldDays, evidence.FromMemory}, {FieldLoadUpper, evidence.FromMemory}, {FieldLoadLower, evidence.FromMemory}},
		SupersededBy: []ID{"acsm2026-power"},
	},
	{
		ID: "acsm2009-power-advanced", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Power, Training: []body.Training{body.Advanced},
		Days: to(4, 5), Sets: to(3, 6), Reps: to(1, 6), Rest: to(120, 300),
		Notes:  "Light and fast (up to 60 % for the legs, 30 to 60 % for the arms) beside heavy work (85 to 100 %), by plan." + later2026,
		Source: "ratamess2009", Basis: evidence.FromMemory,
		SupersededBy: []ID{"acsm2026-power"},
	},
	{
		ID: "acsm2009-endurance-novice-intermediate", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Endurance, Training: []body.Training{body.Novice, body.Intermediate},
		Days: to(2, 4), Sets: to(2, 4), Reps: to(10, 15), Load: to[units.Fraction](.40, .60), Rest: to(30, 60),
		Notes:  "Accounts differ: 40 to 60 % with more than 15 repetitions and rests under 90 s, or under 70 % with 10 to 25 repetitions and 30 to 60 s. Take 60 to 70 % as the ceiling." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.FromMemory,
		Bases:        []FieldBasis{{FieldSets, evidence.Secondary}, {FieldRest, evidence.Secondary}},
		SupersededBy: []ID{"acsm2026-health"},
	},
	{
		ID: "acsm2009-endurance-advanced", Body: acsm, Year: 2009, Population: "healthy adults",
		Goal: Endurance, Training: []body.Training{body.Advanced},
		Days: to(4, 6), Sets: to(2, 4), Reps: to(10, 25), Rest: to(30, 120),
		Notes:  "Under 1 minute of rest for 10 to 15 repetitions, 1 to 2 minutes for 15 to 20 or more; from memory." + later2026,
		Source: "ratamess2009", Via: viaSummary, Basis: evidence.FromMemory,
		Bases:        []FieldBasis{{FieldSets, evidence.Secondary}, {FieldReps, evidence.Secondary}},
		SupersededBy: []ID{"acsm2026-health"},
	},
	{
		ID: "acsm2009-older-endurance", Body: acsm, Year: 2009, Population: "healthy older adults",
		Goal:   Endurance,
		Reps:   to(10, 15),
		Notes:  "Low to moderate loads; more than 15 repetitions are meant too." + later2026,
		Source: "ratamess2009", Basis: evidence.FromMemory,
		SupersededBy: []ID{"acsm2026-health"},
	},
}

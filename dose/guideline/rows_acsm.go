package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	viaParkinson = "Table 2 of Mov Disord Clin Pract 2020;7(1):7-15 (doi 10.1002/mdc3.12849); a university open textbook (48 h, 2-4 sets, 8-12 and 15-20 reps)"
	viaNews2026  = "summaries by the American Physical Therapy Association's guideline listing (existence and scope), a clinical news digest of the paper, and press reports of the ACSM release of March 2026"
)

// acsmOthers are the stands of 2007 (Nelson), 2011 (Garber) and 2026.
var acsmOthers = []Recommendation{
	{
		ID: "acsmaha2007-older-strengthening", Body: acsm + " / American Heart Association", Year: 2007,
		Population: "adults 65+, and adults 50-64 with a chronic illness of weight or with limited function",
		AgeMin:     50, Goal: Health,
		Days: units.AtLeast(2), Exercises: to(8, 10), Reps: to(10, 15), Effort: Effort{0, zeroToTen, to(5, 8)},
		Notes:  "Days that do not follow one another. 5 and 6 count as moderate, 7 and 8 as high.",
		Source: "nelson2007", Via: "Table 1 of EPMA J 2011;2(3):253-259 (doi 10.1007/s13167-011-0090-1) for days, exercises and moderate-to-high effort; a clinicians' prevention reference for the 10-15 repetitions",
		Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldPopulation, evidence.Published}, {FieldEffort, evidence.FromMemory}},
	},
	{
		ID: "acsm2011-strength-novice-intermediate", Body: acsm, Year: 2011, Population: "apparently healthy adults",
		Goal: Strength, Training: []body.Training{body.Novice, body.Intermediate},
		Days: to(2, 3), Sets: to(2, 4), Reps: to(8, 12), Load: to[units.Fraction](.60, .70), Rest: to(120, 180), HoursBetween: 48,
		Notes:  "Some texts give 48 to 72 hours. A set should tire the muscle and end before it is spent. One set can serve novices and older people.",
		Source: "garber2011", Via: viaParkinson, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldDays, evidence.Published}},
	},
	{
		ID: "acsm2011-older-start", Body: acsm, Year: 2011, Population: "older or sedentary adults starting resistance exercise",
		Goal: Strength, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: units.AtLeast(1), Reps: to(10, 15), Load: to[units.Fraction](.40, .50), Rest: to(120, 180), HoursBetween: 48,
		Notes:  "A load that the stand calls low, to begin with. A secondary table prints 10 to 20 repetitions.",
		Source: "garber2011", Via: viaParkinson, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldDays, evidence.Published}, {FieldSets, evidence.FromMemory}, {FieldReps, evidence.FromMemory}},
	},
	{
		ID: "acsm2011-older-power", Body: acsm, Year: 2011, Population: "older adults", Goal: Power,
		Days: to(2, 3), Reps: to(8, 12), Load: to[units.Fraction](.20, .50),
		Notes:  "A secondary table adds three sets, which was not found in the stand.",
		Source: "garber2011", Via: viaParkinson, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldDays, evidence.Published}},
	},
	{
		ID: "acsm2026-strength", Body: acsm, Year: 2026, Population: "healthy adults 18+", Goal: Strength,
		Days: units.AtLeast(2), Sets: to(2, 3), Load: units.AtLeast[units.Fraction](.80),
		Notes:  "Through the full range of motion. It speaks of healthy adults, not of frail or ill people, and takes the place of the models of 2009. Reached only through summaries.",
		Source: "acsm2026", Via: viaNews2026, Basis: evidence.Secondary,
	},
	{
		ID: "acsm2026-health", Body: acsm, Year: 2026, Population: "healthy adults 18+", Goal: Health,
		Days:   units.AtLeast(2),
		Notes:  "At least two days for each large muscle group. Circuits, bands and training at home worked too; elaborate planning, tempo, equipment and failure made no steady difference. It speaks of healthy adults, not of frail or ill people. Reached only through summaries.",
		Source: "acsm2026", Via: viaNews2026, Basis: evidence.Secondary,
	},
	{
		ID: "acsm2009-older-physical-activity", Body: acsm, Year: 2009, Population: "older adults",
		AgeMin: 65, Goal: Health,
		Days: units.AtLeast(2), Exercises: to(8, 10), Reps: to(8, 12), Effort: Effort{0, zeroToTen, to(5, 8)},
		Notes:  "Only the summary was reached, and it states no dose of lifting. Effort from moderate (5 and 6) to vigorous (7 and 8). The text of 2007 has 10 to 15 repetitions instead.",
		Source: "chodzkozajko2009", Basis: evidence.FromMemory,
	},
	{
		ID: "acsm2011-strength-experienced", Body: acsm, Year: 2011, Population: "apparently healthy adults",
		Goal: Strength, Training: []body.Training{body.Advanced},
		Days: to(2, 3), Sets: to(2, 4), Reps: to(8, 12), Load: units.AtLeast[units.Fraction](.80), Rest: to(120, 180),
		HoursBetween: 48,
		Notes:        "A secondary table gives 60 to 80 % in all; the floor of 80 % for experienced people is from memory.",
		Source:       "garber2011", Via: viaParkinson, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldDays, evidence.Published}, {FieldLoad, evidence.FromMemory}},
	},
	{
		ID: "acsm2011-endurance", Body: acsm, Year: 2011, Population: "apparently healthy adults",
		Goal: Endurance,
		Days: to(2, 3), Sets: units.AtMost(2), Reps: to(15, 20), Load: units.AtMost[units.Fraction](.50),
		Notes:  "Another secondary source prints 15 to 25 repetitions.",
		Source: "garber2011", Via: viaParkinson, Basis: evidence.Secondary,
		Bases: []FieldBasis{{FieldDays, evidence.Published}},
	},
	{
		ID: "acsm2026-hypertrophy", Body: acsm, Year: 2026, Population: "healthy adults 18+",
		Goal:       Hypertrophy,
		WeeklySets: units.AtLeast(10),
		Notes:      "More weekly sets for a muscle group go with more growth. How sets that train a muscle indirectly are counted was not seen. It speaks of healthy adults, not of frail or ill people. Reached only through summaries.",
		Source:     "acsm2026", Via: viaNews2026, Basis: evidence.Secondary,
	},
	{
		ID: "acsm2026-power", Body: acsm, Year: 2026, Population: "healthy adults 18+",
		Goal:   Power,
		Load:   to[units.Fraction](.30, .70),
		Notes:  "Lifted fast. It speaks of healthy adults, not of frail or ill people. Reached only through summaries.",
		Source: "acsm2026", Via: viaNews2026, Basis: evidence.Secondary,
	},
}

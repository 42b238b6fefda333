package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	cardiacTable = "Cardiac rehabilitation review table"
	borg         = "Borg 6-20"
	zeroToTen    = "0-10"
)

// clinical are rows for people with heart disease or osteoporosis.
var clinical = []Recommendation{
	{
		ID: "aha2007-initial-older-or-cardiac", Body: aha, Year: 2007,
		Population: "adults over about 50-60, frailer people, and cardiac patients", Conditions: []Condition{HeartDisease, Frailty},
		AgeMin: 50, Goal: Health, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: units.AtLeast(1), Exercises: to(8, 10), Reps: to(10, 15),
		LoadUpper: to[units.Fraction](.30, .40), LoadLower: to[units.Fraction](.50, .60),
		Effort: Effort{units.ScaleBorg, borg, to(11, 14)}, LoadStep: units.Exactly[units.Fraction](.05),
		Notes:  "First loads. The statement is also said to call less than 40 % low for these people; later texts print 40 to 60 %. The update of 2023 is held here for healthy adults alone.",
		Source: "williams2007", Basis: evidence.FromMemory,
		SupersededBy: []ID{"aha2023-adults"},
	},
	{
		ID: "cardiacrehab2021-stage0", Body: cardiacTable, Year: 2021, Population: "cardiac rehabilitation patients", Conditions: []Condition{HeartDisease},
		Goal: Function, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: to(1, 3), Reps: to(5, 10), Load: units.AtMost[units.Fraction](.30),
		Effort: Effort{units.ScaleBorg, borg, units.AtMost(11)}, Rest: to(60, 120),
		Notes:  "To get used to it. The table prints the load as above 30 %; below must be meant, since the next stage begins there, and the row keeps a ceiling.",
		Source: "cardiacrehab2021", Basis: evidence.Published,
	},
	{
		ID: "cardiacrehab2021-stage1", Body: cardiacTable, Year: 2021, Population: "cardiac rehabilitation patients", Conditions: []Condition{HeartDisease},
		Goal: Endurance, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: to(1, 3), Reps: to(10, 15), Load: to[units.Fraction](.30, .50),
		Effort: Effort{units.ScaleBorg, borg, to(12, 13)}, Rest: to(60, 120),
		Source: "cardiacrehab2021", Basis: evidence.Published,
	},
	{
		ID: "cardiacrehab2021-stage2", Body: cardiacTable, Year: 2021, Population: "cardiac rehabilitation patients", Conditions: []Condition{HeartDisease},
		Goal: Hypertrophy, Training: []body.Training{body.Intermediate},
		Days: to(2, 3), Sets: to(1, 3), Reps: to(8, 15), Load: to[units.Fraction](.40, .60),
		Effort: Effort{units.ScaleBorg, borg, units.AtLeast(14)}, Rest: to(60, 120),
		Notes:  "The upper end of the effort is cut off in print; 15 is presumed.",
		Source: "cardiacrehab2021", Basis: evidence.Published,
	},
	{
		ID: "cardiacrehab2021-stage3", Body: cardiacTable, Year: 2021, Population: "cardiac rehabilitation patients chosen as fit enough", Conditions: []Condition{HeartDisease},
		Goal: Hypertrophy, Training: []body.Training{body.Advanced},
		Days: to(2, 3), Sets: to(1, 3), Reps: to(8, 10), Load: to[units.Fraction](.60, .80), Rest: to(60, 120),
		Source: "cardiacrehab2021", Basis: evidence.Published,
	},
	{
		ID: "essa2017-osteoporosis", Body: "Exercise & Sports Science Australia", Year: 2017,
		Population: "people with or at risk of osteoporosis", Conditions: []Condition{Osteoporosis}, Goal: Bone,
		Days: units.AtLeast(2), Sets: to(2, 3), Exercises: units.AtLeast(8), Reps: units.Exactly(8), Load: to[units.Fraction](.80, .85),
		Notes:  "The abstract gives no numbers; the doses are from memory, to be built up over weeks under supervision and tailored to risk. It asks for impact and balance too, and advises against bending the spine under load.",
		Source: "beck2017", Basis: evidence.FromMemory,
	},
	{
		ID: "brookewavell2022-osteoporosis", Body: "UK consensus (Royal Osteoporosis Society)", Year: 2022,
		Population: "people with osteoporosis", Conditions: []Condition{Osteoporosis}, Goal: Bone,
		Days: to(2, 3), Sets: to(1, 3), Reps: to(8, 12), RM: to(8, 12), Impacts: units.AtLeast(50),
		Notes:  "Technique first, then load. The authors' summary aims at up to 3 sets of up to 8. After a fracture of the spine, or several fractures from small force, impact stays at brisk walking. No strong bending of the spine under load; extension exercises for posture.",
		Source: "brookewavell2022", Via: "the consensus authors' own summary on the British Journal of Sports Medicine blog, and a physiotherapist's summary", Basis: evidence.Secondary,
	},
	{
		ID: "giangregorio2014-osteoporosis", Body: "consensus panel (Giangregorio)", Year: 2014,
		Population: "older adults with osteoporosis or osteoporotic vertebral fracture", Conditions: []Condition{Osteoporosis, VertebralFracture}, Goal: Bone,
		Days: units.AtLeast(2), Sets: units.Exactly(2), PerMuscle: units.Exactly(1), Reps: to(8, 12), RM: to(8, 12),
		Notes:  "Table 6. More than 12 repetitions mean too light, fewer than 8 too heavy. Start lower with inactivity, other illness, high risk of fracture or no experience. Balance 15 to 20 minutes a day.",
		Source: "giangregorio2014", Basis: evidence.Published,
	},
}
